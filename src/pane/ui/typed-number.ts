/** A number as a person types it, with a decimal point or comma; undefined where nothing is typed, NaN where it is no number. */
export function typedNumber(typed: string): number | undefined {
  const plain = typed.trim().replace(",", ".");
  if (plain === "") return undefined;
  const value = Number(plain);
  return Number.isFinite(value) ? value : NaN;
}

/** The same where 0 is no value either, because the sheet takes it for a blank; undefined in place of NaN. */
export const typedNonZero = (typed: string): number | undefined => typedNumber(typed) || undefined;
