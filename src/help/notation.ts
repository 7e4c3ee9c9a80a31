/** Formulas, numbers and errors as Excel in a language writes them. */
import type { Cell } from "./example-sheet";
import type { Notation } from "./text/words";

/** Texts in quotation marks stay; so does the point after CLAY. */
const TO_CHANGE = /"(?:[^"]|"")*"|,|(?<=\d)\.(?=\d)/g;

/** '=CLAY.LOG_TIME(A2:A16,B2:B16,22.3,"cv")' is '=CLAY.LOG_TIME(A2:A16;B2:B16;22,3;"cv")' in German. */
export const formulaIn = ({ separator, decimal }: Notation, formula: string): string =>
  formula.replace(TO_CHANGE, (found) => (found === "," ? separator : found === "." ? decimal : found));

const MOST_DIGITS = 6;

const numberIn = ({ decimal }: Notation, number: number): string =>
  String(Number(number.toPrecision(MOST_DIGITS))).replace(".", decimal);

/** A cell as a page shows it. */
export const cellIn = (notation: Notation, cell: Cell): string =>
  typeof cell === "number" ? numberIn(notation, cell) : cell;

export const errorIn = ({ errors }: Notation, code: string): string => errors[code] ?? code;
