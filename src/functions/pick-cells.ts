/** Reads the picks by hand that a worksheet function gets as a range of names and values. */
import { pickNamed } from "../reduction/increment/constructions/picks";
import { say, type Message } from "../reduction/message";
import { firstOf } from "../reduction/numeric/lists";
import { englishWord } from "../record/cells";
import { isOmitted, refuseCell, toCell, toChoice } from "./cells";

const COLUMNS = say`the picks must be a range of two columns: names and values`;

/** A row of the table of picks in messages. LOAD_PICKS passes it on as a text. */
export const rowOfTable = (row: number): Message => say`row ${row} of the table of picks`;

/** A pick given in words by its short name; any other cell as it is. */
export const asPick = (cell: unknown): unknown => (typeof cell === "string" ? pickNamed(englishWord(cell)) : cell);

/**
 * Picks from a range of names and values; a row without a value (blank, or 0, since desktop Excel passes a blank cell
 * as 0) leaves the automatic choice. A third column, as LOAD_PICKS returns it, says where the row stands.
 */
export function toPickValues<N extends string>(
  argument: unknown,
  names: readonly N[],
): Readonly<Partial<Record<N, number>>> {
  const picks: Partial<Record<N, number>> = {};
  if (isOmitted(argument) || argument === 0) return picks;
  if (!Array.isArray(argument)) return refuseCell(COLUMNS);
  const rows: unknown[][] = Array.isArray(argument[0]) ? argument : [argument];
  rows.forEach((row, i) => {
    const place = row.length === 3 && typeof row[2] === "string" ? row[2] : undefined;
    const inTable = place === undefined ? undefined : /\d+/.exec(place);
    const where = inTable ? rowOfTable(Number(inTable[0])) : say`row ${i + 1} of the picks`;
    if (isOmitted(row[0]) || row[0] === 0) return;
    if (row.length !== 2 && place === undefined) return refuseCell(COLUMNS);
    const name = toChoice(asPick(row[0]), say`the name in ${where}`, names, firstOf(names));
    const value = toCell(row[1], where);
    if (value) picks[name] = value;
  });
  return picks;
}
