/** Worksheet functions of a table of picks by hand. Each change is a row; the last row of a load and a pick counts. */
import {
  METHOD_PICK,
  PICK_NAMES,
  PROCEDURE_PICK,
  standingRows,
  TIME_METHODS,
  type PickedThing,
  type PickRow,
} from "../reduction/increment/constructions/picks";
import { CURVE_PICK_NAMES, OF_CURVE } from "../reduction/curve/picks";
import { PROCEDURES } from "../reduction/increment/constructions/procedure";
import { englishWord } from "../record/cells";
import { isNoWord, refuseCell, toCell, toChoice, toNumber } from "./cells";
import { english, say, verbatim, type Message } from "../reduction/message";
import { asPick, rowOfTable } from "./pick-cells";

/** A row of the table, with the original cell of its value, and the name of the row for messages. */
interface TableRow extends PickRow {
  readonly value: unknown;
  readonly where: Message;
}

function toColumn(range: unknown, name: Message): unknown[] {
  if (!Array.isArray(range)) return [range];
  const rows: unknown[][] = Array.isArray(range[0]) ? range : [range];
  const [first = []] = rows;
  if (rows.length > 1 && first.length > 1) return refuseCell(say`${name} must be one column or one row of cells`);
  return rows.flat();
}

/** The value that a cell shows, for a comparison: a formatted number arrives as an object, and a word may be German. */
const shownOf = (cell: unknown): unknown =>
  typeof cell === "object" && cell !== null && "basicValue" in cell ? cell.basicValue : cell;

const wordOf = (cell: unknown): string | undefined => {
  const shown = shownOf(cell);
  return typeof shown === "string" || typeof shown === "number" ? englishWord(String(shown)) : undefined;
};

const isCurve = (cell: unknown): boolean => wordOf(cell)?.trim().toLowerCase() === OF_CURVE;

/** A word picked: one of the words in English, otherwise as the cell has it. */
function wordPicked(cell: unknown, name: Message, words: readonly [string, ...string[]]): string {
  const word = toChoice<string>(cell, name, words, words[0]);
  const typed = String(shownOf(cell)).trim();
  return typed.toLowerCase() === word ? word : typed;
}

/** What a pick is of: the number of a load, or the compression curve. */
const toPicked = (cell: unknown): PickedThing => (isCurve(cell) ? OF_CURVE : toNumber(cell, say`the load number`));

function tableOf(loads: unknown, picks: unknown, values: unknown): TableRow[] {
  const ofLoads = toColumn(loads, say`the loads of the picks`);
  const names = toColumn(picks, say`the names of the picks`);
  const cells = toColumn(values, say`the values of the picks`);
  if (names.length !== ofLoads.length || cells.length !== ofLoads.length)
    return refuseCell(
      say`the picks have ${ofLoads.length} loads, ${names.length} names and ${cells.length} values: choose the same rows of each`,
    );
  return ofLoads.map((load, index) => {
    // A text is not a load number; an error may stand for any load, and is refused.
    const number = typeof load === "object" ? toCell(load, say`row ${index + 1} of the loads of the picks`) : load;
    const value = cells[index];
    return {
      load: isCurve(load) ? OF_CURVE : typeof number === "number" && number !== 0 ? number : undefined,
      of: wordOf(names[index]),
      // A value of another type (an error, TRUE) counts too: the function that uses the pick names it in its refusal.
      after: isNoWord(value) ? undefined : (wordOf(value) ?? "?"),
      value,
      where: rowOfTable(index + 1),
    };
  });
}

/**
 * A cell in a form that another function can receive: an error becomes its code, which that function names as an error.
 */
function handedOn(cell: unknown): unknown {
  const shown = shownOf(cell);
  if (typeof shown !== "object" || shown === null) return shown;
  return "code" in shown ? String(shown.code) : "#VALUE!";
}

/**
 * The picks by hand of one load, or of the compression curve, out of a table of picks, for the functions that take picks. The last row of each pick counts; "automatic" cancels the earlier rows. The columns may stand anywhere.
 * @customfunction
 * @param load Number of the load, or "curve".
 * @param loads Load numbers, one a row; "curve" for a pick of the compression curve.
 * @param picks Names of the picks, one a row: d0, d100, d90, straight_from, straight_to, tail_from, tail_to, pair_at, tangent_from, tangent_to; of the curve those of PRECONSOLIDATION.
 * @param values Values of the picks, one a row: readings, times in minutes, or stresses; blank or 0 is none.
 * @returns Rows of name, value and the place of the row in the table; one blank row if the load has no pick.
 * @example =CLAY.LOAD_PICKS(6,I2:I4,J2:J4,K2:K4)
 * @refuses =CLAY.LOAD_PICKS(6,I2:I4,J2:J4,K2:K3)
 * @source A rule of this add-in: picks by hand are kept in rows, and the last row counts.
 */
export function LOAD_PICKS(load: any, loads: any[][], picks: any[][], values: any[][]): any[][] {
  const standing = standingRows(tableOf(loads, picks, values), toPicked(load));
  standing.delete(METHOD_PICK);
  standing.delete(PROCEDURE_PICK);
  // A row that cannot be used is returned with its place: the function that uses the picks says what is wrong with it.
  const rows = [...standing].map(([name, { value, where }]) => [name, handedOn(value), english(where)]);
  return rows.length > 0 ? rows : [["", "", ""]];
}

/**
 * The value of one pick by hand of one load or of the compression curve, from the last row of a table of picks that has it. Without a row, or if the row says "automatic", it is the value given as otherwise.
 * @customfunction
 * @param load Number of the load, or "curve".
 * @param pick Name of the pick: d0, d100, d90, straight_from, straight_to, tail_from, tail_to, pair_at, tangent_from, tangent_to; or "cv by", "procedure"; of the curve those of PRECONSOLIDATION.
 * @param loads Load numbers, one a row; "curve" for a pick of the compression curve.
 * @param picks Names of the picks, one a row.
 * @param values Values of the picks, one a row; log time or root time for "cv by", aided or drawn for "procedure".
 * @param [otherwise] The value without a pick; a blank if left out.
 * @returns The value picked, or the value given as otherwise.
 * @example =CLAY.LAST_PICK(6,"d100",I2:I4,J2:J4,K2:K4)
 * @example =CLAY.LAST_PICK(6,"d90",I2:I4,J2:J4,K2:K4,"none")
 * @refuses =CLAY.LAST_PICK(6,"d75",I2:I4,J2:J4,K2:K4)
 * @source A rule of this add-in: picks by hand are kept in rows, and the last row counts.
 */
export function LAST_PICK(load: any, pick: any, loads: any[][], picks: any[][], values: any[][], otherwise?: any): any {
  const of = toPicked(load);
  const names = of === OF_CURVE ? CURVE_PICK_NAMES : [...PICK_NAMES, METHOD_PICK, PROCEDURE_PICK];
  const name = toChoice<string>(asPick(pick), say`the pick`, names, METHOD_PICK);
  const row = standingRows(tableOf(loads, picks, values), of).get(name.toLowerCase());
  if (!row) return isNoWord(otherwise) ? "" : shownOf(Array.isArray(otherwise) ? otherwise[0]?.[0] : otherwise);
  const { value, where } = row;
  if (name === METHOD_PICK) return wordPicked(value, say`"${verbatim(METHOD_PICK)}" in ${where}`, TIME_METHODS);
  if (name === PROCEDURE_PICK) return wordPicked(value, say`"${verbatim(PROCEDURE_PICK)}" in ${where}`, PROCEDURES);
  return toCell(value, where) ?? "";
}
