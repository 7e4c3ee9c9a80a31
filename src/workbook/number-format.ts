/** Number formats that follow the size of the number. A format cannot follow a unit; the size of the number does. */

/**
 * Three significant figures from 0.1 to 10 and below 0.1, and two decimals above, whatever the unit: 4.40E-08, 0.0432 as 4.32E-02,
 * 0.432, 1.40, 11.35. Excel takes two conditions in a format and no more.
 */
export const THREE_FIGURES = "[<0.1]0.00E+00;[<1]0.000;0.00";

/** The part of a format that shows a number: the first whose condition the number meets, else the one without a condition. */
export function partFor(format: string, value: number): string {
  if (!/^\[[<>]/.test(format)) return format;
  for (const part of format.split(";")) {
    const [, sign, bound, rest] = /^\[([<>]=?)([\d.]+)\](.*)$/.exec(part) ?? [];
    if (sign === undefined) return part;
    const isMet = sign.startsWith("<") ? value < Number(bound) : value > Number(bound);
    if (isMet || (sign.endsWith("=") && value === Number(bound))) return rest;
  }
  return "General";
}
