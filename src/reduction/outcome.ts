/**
 * What a reduction returns: a value with remarks, or a refusal with its reason. Bad data is never an exception.
 *
 * A refusal of fault "input" is data that cannot be used (a cell shows #VALUE!); one of fault "method" is sound data to
 * which the method does not apply (a cell shows #N/A). The reason says which row, and what to do about it.
 */
export type Outcome<T> = Given<T> | Refusal;

export interface Given<T> {
  readonly ok: true;
  readonly value: T;
  /** What a reviewer should look at, in a technician's words; empty when there is nothing to say. */
  readonly remarks: readonly string[];
}

export interface Refusal {
  readonly ok: false;
  readonly fault: "input" | "method";
  readonly reason: string;
}

export const given = <T>(value: T, remarks: readonly string[] = []): Given<T> => ({ ok: true, value, remarks });

/** The data cannot be used: name the row and the remedy. */
export const badInput = (reason: string): Refusal => ({ ok: false, fault: "input", reason });

/** The data are sound, but the method does not apply to them: say why, and what else to try. */
export const notApplicable = (reason: string): Refusal => ({ ok: false, fault: "method", reason });

/** Carries a value on to the next step, its remarks first; a refusal passes through. */
export function then<T, U>(outcome: Outcome<T>, next: (value: T) => Outcome<U>): Outcome<U> {
  if (!outcome.ok) return outcome;
  const result = next(outcome.value);
  return result.ok ? given(result.value, [...outcome.remarks, ...result.remarks]) : result;
}

/** The remark column of a sheet: "ok", or the remarks one after another. */
export const remarkText = (remarks: readonly string[]): string => (remarks.length ? remarks.join("; ") : "ok");
