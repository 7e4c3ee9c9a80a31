/** Reads boxes of cells in answers that stay below the largest answer of Excel on the web. */
import { say } from "../../../reduction/message";
import { firstOf, nth } from "../../../reduction/numeric/lists";
import { hasNotYet } from "../../rules/busy";
import { WorkbookError, type Box, type CellValue } from "../../port";
import { slices } from "../grid";
import { isTooLarge, runsOf } from "../requests";
import { MOST_CELLS } from "./places";

/**
 * Cells asked for at once: a number takes 20 bytes at most, and an answer 5 MB. If longer texts make the answer too
 * large, half is asked for.
 */
const CELLS_PER_ANSWER = 200_000;

/**
 * A sheet, or a range whose cells are counted from its first cell. A range that was used in one request of `Excel.run`
 * follows its cells when somebody inserts rows before the next (Microsoft, OfficeExtension.TrackedObjects).
 */
export type Within = Excel.Worksheet | Excel.Range;

export interface Wanted {
  readonly within: Within;
  readonly box: Box;
}

export const rangeOf = (within: Within, { row, col, rows, cols }: Box): Excel.Range =>
  "getRangeByIndexes" in within
    ? within.getRangeByIndexes(row, col, rows, cols)
    : within.getCell(row, col).getResizedRange(rows - 1, cols - 1);

/** The properties of a range that `boxOfRange` needs. */
export const PLACE_OF_ONE = "rowIndex,columnIndex,rowCount,columnCount";

export const boxOfRange = ({
  rowIndex: row,
  columnIndex: col,
  rowCount: rows,
  columnCount: cols,
}: Excel.Range): Box => ({
  row,
  col,
  rows,
  cols,
});

export type Property = "values" | "formulas";

export interface WantedProperty extends Wanted {
  readonly property: Property;
}

interface Piece extends WantedProperty {
  readonly index: number;
}

const cellsOf = ({ box }: Wanted): number => box.rows * box.cols;

const halved = <T>(list: readonly T[]): T[][] => [
  list.slice(0, Math.ceil(list.length / 2)),
  list.slice(Math.ceil(list.length / 2)),
];

const halfBoxes = ({ row, col, rows, cols }: Box): Box[] => {
  const top = Math.ceil(rows / 2);
  return [
    { row, col, rows: top, cols },
    { row: row + top, col, rows: rows - top, cols },
  ];
};

/** Reads pieces in one request; if the answer would be too large, in halves. */
async function readPieces(
  context: Excel.RequestContext,
  pieces: readonly Piece[],
  keep: (piece: Piece, cells: CellValue[][]) => void,
): Promise<void> {
  try {
    const ranges = pieces.map(({ within, box, property }) => rangeOf(within, box).load(property));
    await context.sync();
    pieces.forEach((piece, i) => keep(piece, nth(ranges, i)[piece.property]));
  } catch (error) {
    const first = firstOf(pieces);
    const isOneRow = pieces.length === 1 && first.box.rows === 1;
    if (!isTooLarge(error) || isOneRow) throw error;
    const halves = pieces.length > 1 ? halved(pieces) : halfBoxes(first.box).map((box) => [{ ...first, box }]);
    for (const half of halves) await readPieces(context, half, keep);
  }
}

async function readEach(context: Excel.RequestContext, wanted: readonly WantedProperty[]): Promise<CellValue[][][]> {
  const cells = wanted.reduce((sum, one) => sum + cellsOf(one), 0);
  if (cells > MOST_CELLS) throw new WorkbookError(say`The range has ${cells} cells: choose fewer than ${MOST_CELLS}.`);
  const pieces = wanted.flatMap(({ within, box, property }, index) =>
    slices(box, CELLS_PER_ANSWER).map((slice): Piece => ({ within, box: slice, property, index })),
  );
  const found: CellValue[][][] = wanted.map(() => []);
  for (const run of runsOf(pieces, cellsOf, CELLS_PER_ANSWER))
    await readPieces(context, run, ({ index }, rows) => rows.forEach((row) => found[index]?.push(row)));
  return found;
}

/** The content of each box, row by row. */
export const readBoxes = (
  context: Excel.RequestContext,
  wanted: readonly Wanted[],
  property: Property,
): Promise<CellValue[][][]> =>
  readEach(
    context,
    wanted.map(({ within, box }) => ({ within, box, property })),
  );

/**
 * Pauses in milliseconds before cells that show #BUSY! are read again: 1.5 s in all, which a user accepts while the
 * pane shows the rest.
 */
const PAUSES = [100, 200, 400, 800];

/**
 * The content of each box. Values that Excel is still calculating are read again a few times, and then returned as they
 * are.
 */
export async function readMixed(
  context: Excel.RequestContext,
  wanted: readonly WantedProperty[],
): Promise<CellValue[][][]> {
  const found = await readEach(context, wanted);
  for (const pause of PAUSES) {
    const busy = wanted.flatMap((one, index) =>
      one.property === "values" && hasNotYet(found[index] ?? []) ? [{ one, index }] : [],
    );
    if (busy.length === 0) break;
    await new Promise((resolve) => setTimeout(resolve, pause));
    const again = await readEach(
      context,
      busy.map(({ one }) => one),
    );
    again.forEach((cells, i) => {
      const at = busy[i];
      if (at) found[at.index] = cells;
    });
  }
  return found;
}

/** The values of each box, as `readMixed` reads them. */
export const readValues = (context: Excel.RequestContext, wanted: readonly Wanted[]): Promise<CellValue[][][]> =>
  readMixed(
    context,
    wanted.map(({ within, box }) => ({ within, box, property: "values" })),
  );
