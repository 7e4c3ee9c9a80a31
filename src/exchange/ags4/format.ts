/** Writes values as AGS4 wants them: ASCII in quotes, numbers in the format of their type. */

const noMinusZero = (text: string): string => (/^-[0.]+$/.test(text) ? text.slice(1) : text);

/** A number to a count of decimal places, never with an exponent. */
const toPlaces = (value: number, places: number): string => noMinusZero(value.toFixed(places));

/** A number to a count of significant figures, never with an exponent: "0.050", "1200". */
export function toFigures(value: number, figures: number): string {
  if (value === 0) return (0).toFixed(figures - 1);
  const rounded = Number(value.toPrecision(figures));
  const exponent = Number(rounded.toExponential().split("e")[1]);
  return rounded.toFixed(Math.max(0, figures - 1 - exponent));
}

/** A number in the format of its type: nDP, nSF; other types unchanged. */
export function formatNumber(value: number, type: string): string {
  const [, digits, kind] = /^(\d)(DP|SF)$/.exec(type) ?? [];
  if (kind === "DP") return toPlaces(value, Number(digits));
  return kind === "SF" ? toFigures(value, Number(digits)) : String(value);
}

/** Letters that have a usual spelling in ASCII. */
const SPELT: Readonly<Record<string, string>> = {
  "°": " deg",
  "²": "2",
  "³": "3",
  "±": "+/-",
  "×": "x",
  "–": "-",
  "—": "-",
  "‘": "'",
  "’": "'",
  "“": '"',
  "”": '"',
  µ: "u",
  μ: "u",
  σ: "sigma",
  ε: "eps",
  ß: "ss",
  ø: "o",
  Ø: "O",
  æ: "ae",
  Æ: "AE",
  ä: "ae",
  ö: "oe",
  ü: "ue",
  Ä: "Ae",
  Ö: "Oe",
  Ü: "Ue",
};

/** Text in ASCII on one line (AGS4 rule 1); a letter that has no such spelling becomes "?". */
export const toAscii = (text: string): string =>
  text
    .replace(/\s+/g, " ")
    .replace(/[^ -~]/g, (letter) => SPELT[letter] ?? letter)
    .normalize("NFKD")
    .replace(/[\u0300-\u036f]/g, "")
    .replace(/[^ -~]/g, "?")
    .trim();

/** A line of fields in quotes, a quote within doubled (rules 5 and 6). */
export const line = (fields: readonly string[]): string =>
  fields.map((field) => `"${field.replaceAll('"', '""')}"`).join(",");
