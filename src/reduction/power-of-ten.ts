const RAISED = "⁰¹²³⁴⁵⁶⁷⁸⁹";

/**
 * A power of ten as a book prints it.
 * @example powerOfTen(-9) // "10⁻⁹"
 */
export const powerOfTen = (power: number): string =>
  `10${power < 0 ? "⁻" : ""}${Array.from(String(Math.abs(power)), (digit) => RAISED[Number(digit)]).join("")}`;
