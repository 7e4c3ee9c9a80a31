/** Number formats that follow the size of the number. A format cannot follow the unit, but it can follow the size. */

/**
 * Three significant figures from 0.1 to 10 and below 0.1, and two decimals above, for every unit: 4.40E-08, 0.0432 as
 * 4.32E-02, 0.432, 1.40, 11.35. Excel allows two conditions in a format.
 */
export const THREE_FIGURES = "[<0.1]0.00E+00;[<1]0.000;0.00";

/** Levels of readings: one decimal from 100 up; below, up to three, and on a US sheet up to five below 2, which may be inches. */
export const LEVELS = { SI: "[>=100]0.0;0.0##", US: "[>=100]0.0;[>=2]0.0##;0.0####" } as const;

/**
 * The section of a format that shows a number: the first whose condition the number meets, otherwise the one without a
 * condition.
 */
export function partFor(format: string, value: number): string {
  if (!/^\[[<>]/.test(format)) return format;
  for (const part of format.split(";")) {
    const [, sign, bound, rest] = /^\[([<>]=?)([\d.]+)\](.*)$/.exec(part) ?? [];
    if (sign === undefined || rest === undefined) return part;
    const isMet = sign.startsWith("<") ? value < Number(bound) : value > Number(bound);
    if (isMet || (sign.endsWith("=") && value === Number(bound))) return rest;
  }
  return "General";
}
