/**
 * What a reduction returns: a value with remarks, or a refusal with its reason. Bad data is never an exception.
 *
 * Fault "input": the data cannot be used (the cell shows #VALUE!). Fault "method": the data are sound, but the method
 * does not apply to them (the cell shows #N/A). The reason says which row, and what to do about it.
 */
import { say, digits, type Digits, type Message } from "./message";

export type Outcome<T> = Given<T> | Refusal;

export interface Given<T> {
  readonly ok: true;
  readonly value: T;
  /** Points that a reviewer should look at, in the words of a technician; empty if there are none. */
  readonly remarks: readonly Message[];
}

export interface Refusal {
  readonly ok: false;
  readonly fault: "input" | "method";
  readonly reason: Message;
}

/**
 * A result, with remarks for a reviewer.
 * @example given(0.25) // 0.25
 */
export const given = <T>(value: T, remarks: readonly Message[] = []): Given<T> => ({ ok: true, value, remarks });

/**
 * The data cannot be used: name the row and the remedy.
 * @example badInput(say`row 2 has no stress: enter it`) // refused: row 2 has no stress: enter it
 */
export const badInput = (reason: Message): Refusal => ({ ok: false, fault: "input", reason });

/**
 * The data are sound, but the method does not apply to them: say why, and what else to try.
 * @example notApplicable(say`the curve has no virgin line`) // refused: the curve has no virgin line
 */
export const notApplicable = (reason: Message): Refusal => ({ ok: false, fault: "method", reason });

/**
 * Applies the next step to a value, and puts the remarks of both steps together, the earlier ones first; a refusal is
 * returned unchanged.
 * @example then(given(2), (value) => given(3 * value)) // 6
 * @example then(notApplicable(say`no yield`), given) // refused: no yield
 */
export function then<T, U>(outcome: Outcome<T>, next: (value: T) => Outcome<U>): Outcome<U> {
  if (!outcome.ok) return outcome;
  const result = next(outcome.value);
  return result.ok ? given(result.value, [...outcome.remarks, ...result.remarks]) : result;
}

/**
 * A number as a message shows it: six significant digits, no trailing zeros.
 * @example figure(123.456789) // "123.457"
 */
export const figure = (value: number): Digits => digits(value, 6);

/**
 * Why a measurement that must be greater than zero cannot be used; undefined if it can. The message on zero says "blank
 * or zero", because desktop Excel passes a blank cell as 0.
 * @example notPositive(0, say`the height`) // "the height is blank or zero: enter a number greater than zero"
 * @example notPositive(20, say`the height`) // undefined
 */
export function notPositive(value: number, name: Message): Message | undefined {
  if (value > 0) return undefined;
  if (value === 0) return say`${name} is blank or zero: enter a number greater than zero`;
  if (value < 0) return say`${name} is ${figure(value)}: it cannot be negative`;
  return say`${name} is not a number: enter a number greater than zero`;
}

/**
 * The first refusal among named measurements that must all be greater than zero; undefined if all are. A measurement
 * without a value was left out, as it may be.
 */
export function firstNotPositive(
  ...measurements: readonly (readonly [name: Message, value: number | undefined])[]
): Refusal | undefined {
  for (const [name, value] of measurements) {
    const reason = value === undefined ? undefined : notPositive(value, name);
    if (reason) return badInput(reason);
  }
  return undefined;
}
