/** Reads boxes of cells in answers that stay below the largest answer of Excel on the web. */
import { say } from "../../../reduction/message";
import { firstOf, nth } from "../../../reduction/numeric/lists";
import { hasNotYet } from "../../rules/busy";
import { WorkbookError, type Box, type CellValue } from "../../port";
import { slices } from "../grid";
import { isTooLarge, runsOf } from "../requests";
import { codeOf } from "../sentence";
import { MOST_CELLS, type Named } from "./places";

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
  /** Cells of a name are asked for anew with each request: a range of a request that failed is of no use in the next. */
  readonly within: Within | (() => Excel.Range);
  readonly box: Box;
  /** True if `within` is the range of exactly these cells. */
  readonly isAll?: boolean;
}

/**
 * The cells of a name. They are asked for by the name, and not by the place that it had in the request before: rows may have been
 * inserted above it in between. With a sheet, they are asked for by their place on it.
 */
export const namedCells = ({ item, box }: Named<Excel.NamedItem>, sheet: Excel.Worksheet | undefined): Wanted =>
  sheet
    ? { within: sheet, box }
    : { within: () => item.getRange(), box: { row: 0, col: 0, rows: box.rows, cols: box.cols }, isAll: true };

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

function rangeWanted({ within, box, isAll = false }: Wanted): Excel.Range {
  const cells = typeof within === "function" ? within() : within;
  return isAll && !("getRangeByIndexes" in cells) ? cells : rangeOf(cells, box);
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
    const ranges = pieces.map((piece) => rangeWanted(piece).load(piece.property));
    await context.sync();
    pieces.forEach((piece, i) => keep(piece, nth(ranges, i)[piece.property]));
  } catch (error) {
    const first = firstOf(pieces);
    const isOneRow = pieces.length === 1 && first.box.rows === 1;
    if (!isTooLarge(error) || isOneRow) throw error;
    const halves =
      pieces.length > 1 ? halved(pieces) : halfBoxes(first.box).map((box) => [{ ...first, box, isAll: false }]);
    for (const half of halves) await readPieces(context, half, keep);
  }
}

async function readEach(context: Excel.RequestContext, wanted: readonly WantedProperty[]): Promise<CellValue[][][]> {
  const cells = wanted.reduce((sum, one) => sum + cellsOf(one), 0);
  if (cells > MOST_CELLS) throw new WorkbookError(say`The range has ${cells} cells: choose fewer than ${MOST_CELLS}.`);
  const pieces = wanted.flatMap((one, index) => {
    const cut = slices(one.box, CELLS_PER_ANSWER);
    return cut.map((box): Piece => ({ ...one, box, index, isAll: one.isAll && cut.length === 1 }));
  });
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
    wanted.map((one) => ({ ...one, property })),
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
    wanted.map((one) => ({ ...one, property: "values" })),
  );

/**
 * Reads named cells once more, and by their places, if Excel does not give the cells of a name: it was deleted after the request that
 * looked for it.
 */
export const withNamesThere = <T>(read: (byPlace: boolean) => Promise<T>): Promise<T> =>
  read(false).catch((error: unknown) => {
    if (!NO_NAME.includes(codeOf(error))) throw error;
    return read(true);
  });

/** What Excel answers if a name is gone, or leads to no cells any more. */
const NO_NAME: readonly string[] = ["ItemNotFound", "InvalidReference", "InvalidArgument"];
