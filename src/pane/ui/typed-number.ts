/**
 * Numbers as a person types them. The decimal mark is that of the pane's language; the other mark is taken as a decimal
 * mark too where it cannot be a mark of thousands, and is asked about where it can.
 */
import { decimalMark } from "../text/number";

const EITHER = /^[-+]?[1-9]\d{0,2}([.,])\d{3}$/;

/** True for a text such as "1,500" where the point is the decimal mark: it may be 1.5 or 1500. */
export const isDoubtful = (typed: string): boolean => {
  const mark = EITHER.exec(typed.trim())?.[1];
  return mark !== undefined && mark !== decimalMark();
};

/** The two numbers that a doubtful text may be. */
export const eitherOf = (typed: string): readonly [decimal: number, thousands: number] => [
  Number(typed.trim().replace(",", ".")),
  Number(typed.trim().replace(/[.,]/, "")),
];

/** The number typed; undefined if nothing is typed, NaN if the text is not a number or is doubtful. */
export function typedNumber(typed: string): number | undefined {
  const plain = typed.trim().replace(",", ".");
  if (plain === "") return undefined;
  if (isDoubtful(typed)) return NaN;
  const value = Number(plain);
  return Number.isFinite(value) ? value : NaN;
}

/** Like `typedNumber`, but 0 and NaN give undefined: where it is used, the sheet treats 0 as blank. */
export const typedNonZero = (typed: string): number | undefined => typedNumber(typed) || undefined;
