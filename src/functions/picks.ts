/** Worksheet functions of a table of picks by hand: a row per change, of which the last one of a load and pick counts. */
import {
  METHOD_PICK,
  PICK_NAMES,
  PROCEDURE_PICK,
  standingRows,
  TIME_METHODS,
  type PickRow,
} from "../reduction/increment/constructions/picks";
import { PROCEDURES } from "../reduction/increment/constructions/procedure";
import { isNoWord, refuseCell, toCell, toChoice, toNumber } from "./cells";

/** A row of the table, with the cell of its value as it came, and where it stands for whoever reads a message. */
interface TableRow extends PickRow {
  readonly value: unknown;
  readonly where: string;
}

function toColumn(range: unknown, name: string): unknown[] {
  if (!Array.isArray(range)) return [range];
  const rows = (Array.isArray(range[0]) ? range : [range]) as unknown[][];
  if (rows.length > 1 && rows[0].length > 1) return refuseCell(`${name} must be one column or one row of cells`);
  return rows.flat();
}

/** What a cell shows, for a comparison: a formatted number comes as an object. */
const shownOf = (cell: unknown): unknown =>
  typeof cell === "object" && cell !== null && "basicValue" in cell ? cell.basicValue : cell;

const wordOf = (cell: unknown): string | undefined => {
  const shown = shownOf(cell);
  return typeof shown === "string" || typeof shown === "number" ? String(shown) : undefined;
};

function tableOf(loads: unknown, picks: unknown, values: unknown): TableRow[] {
  const ofLoads = toColumn(loads, "the loads of the picks");
  const names = toColumn(picks, "the names of the picks");
  const cells = toColumn(values, "the values of the picks");
  if (names.length !== ofLoads.length || cells.length !== ofLoads.length)
    return refuseCell(
      `the picks have ${ofLoads.length} loads, ${names.length} names and ${cells.length} values: choose the same rows of each`,
    );
  return ofLoads.map((load, index) => {
    // A text is no load; an error might be any, and is refused.
    const number = typeof load === "object" ? toCell(load, `row ${index + 1} of the loads of the picks`) : load;
    const value = cells[index];
    return {
      load: typeof number === "number" && number !== 0 ? number : undefined,
      of: wordOf(names[index]),
      // A cell of another kind is a value too: it is named where it is used.
      after: isNoWord(value) ? undefined : (wordOf(value) ?? "?"),
      value,
      where: `row ${index + 1} of the table of picks`,
    };
  });
}

/** A cell as it may be handed on to another function: an error as its code, which that function names as one. */
function handedOn(cell: unknown): unknown {
  const shown = shownOf(cell);
  if (typeof shown !== "object" || shown === null) return shown;
  return "code" in shown ? String(shown.code) : "#VALUE!";
}

/**
 * The picks by hand of one load out of a table of picks, for the picks of LOG_TIME, ROOT_TIME, their LINES and TIME_CURVE. The last row of each pick counts; "automatic" takes earlier ones back. Columns may stand anywhere.
 * @customfunction
 * @param load Number of the load.
 * @param loads Load numbers, one a row.
 * @param picks Names of the picks, one a row: d0, d100, d90, straight_from, straight_to, tail_from, tail_to, pair_at, tangent_from, tangent_to.
 * @param values Values of the picks, one a row: readings, or times in minutes; blank or 0 is none.
 * @returns Rows of name, value and where it stands; one blank row where there is none.
 * @example =CLAY.LOAD_PICKS(6,I2:I4,J2:J4,K2:K4)
 * @refuses =CLAY.LOAD_PICKS(6,I2:I4,J2:J4,K2:K3)
 * @source The tool's own: what was picked by hand is kept in rows, and the last row counts.
 */
export function LOAD_PICKS(load: any, loads: any[][], picks: any[][], values: any[][]): any[][] {
  const standing = standingRows(tableOf(loads, picks, values), toNumber(load, "the load number"));
  standing.delete(METHOD_PICK);
  standing.delete(PROCEDURE_PICK);
  // A row that cannot be used is handed on with its place: whoever takes the picks says what is wrong with it.
  const rows = [...standing].map(([name, { value, where }]) => [name, handedOn(value), where]);
  return rows.length > 0 ? rows : [["", "", ""]];
}

/**
 * The value of one pick by hand of one load: that of the last row of a table of picks that has it; otherwise, or where that row says "automatic", what stands otherwise.
 * @customfunction
 * @param load Number of the load.
 * @param pick Name of the pick: d0, d100, d90, straight_from, straight_to, tail_from, tail_to, pair_at, tangent_from, tangent_to; or "cv by", "procedure".
 * @param loads Load numbers, one a row.
 * @param picks Names of the picks, one a row.
 * @param values Values of the picks, one a row; log time or root time for "cv by", aided or drawn for "procedure".
 * @param [otherwise] What there is without a pick; left out, a blank.
 * @returns The value picked, or what there is otherwise.
 * @example =CLAY.LAST_PICK(6,"d100",I2:I4,J2:J4,K2:K4)
 * @example =CLAY.LAST_PICK(6,"d90",I2:I4,J2:J4,K2:K4,"none")
 * @refuses =CLAY.LAST_PICK(6,"d75",I2:I4,J2:J4,K2:K4)
 * @source The tool's own: what was picked by hand is kept in rows, and the last row counts.
 */
export function LAST_PICK(load: any, pick: any, loads: any[][], picks: any[][], values: any[][], otherwise?: any): any {
  const name = toChoice(pick, "the pick", [...PICK_NAMES, METHOD_PICK, PROCEDURE_PICK], METHOD_PICK);
  const row = standingRows(tableOf(loads, picks, values), toNumber(load, "the load number")).get(name.toLowerCase());
  if (!row) return isNoWord(otherwise) ? "" : shownOf(Array.isArray(otherwise) ? otherwise[0]?.[0] : otherwise);
  const { value, where } = row;
  if (name === METHOD_PICK) return toChoice(value, `"${METHOD_PICK}" in ${where}`, TIME_METHODS, TIME_METHODS[0]);
  if (name === PROCEDURE_PICK) return toChoice(value, `"${PROCEDURE_PICK}" in ${where}`, PROCEDURES, PROCEDURES[0]);
  return toCell(value, where) ?? "";
}
