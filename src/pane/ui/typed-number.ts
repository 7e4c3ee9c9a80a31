/**
 * A number as a person types it, with a decimal point or comma; undefined if nothing is typed, NaN if the text is not a
 * number.
 */
export function typedNumber(typed: string): number | undefined {
  const plain = typed.trim().replace(",", ".");
  if (plain === "") return undefined;
  const value = Number(plain);
  return Number.isFinite(value) ? value : NaN;
}

/** Like `typedNumber`, but 0 and NaN give undefined: where it is used, the sheet treats 0 as blank. */
export const typedNonZero = (typed: string): number | undefined => typedNumber(typed) || undefined;
