/** Types formulas again that Excel has not connected to the add-in. */
import { asWritten } from "./meantime";
import { firstOf, nth } from "../../reduction/numeric/lists";
import { Stopped, type Course } from "../in-slices";
import type { CellValue } from "../port";
import { withPresentNames } from "../renamed-functions";
import { boxOfRange, PLACE_OF_ONE, readBoxes } from "./reading/read";
import { bytesOf, goOn, runsOf, send } from "./requests";
import { unprotected } from "./upkeep";

const UNKNOWN = "#NAME?";
const PLACE = "rowIndex,columnIndex";

/**
 * Parts of a formula that are not code: a text, or a name in apostrophes; also the file of another add-in that Excel
 * has put before one of our functions.
 */
const NOT_CODE = /"(?:[^"]|"")*"|(?:'(?:[^']|'')*'|[\w.]+\.xlam)!(?=_xldudf_CLAY_|CLAY\.)|'(?:[^']|'')*'/gi;

/**
 * A formula as a person would type it. In a file, Excel stores the functions of an add-in as `_xldudf_CLAY_...`; if
 * another add-in was loaded first, its file may come before them: `'C:\...\FUNCRES.XLAM'!_xldudf_CLAY_...` (office-js
 * issues 4811, 3872, 2568).
 */
export function asTyped(formula: string): string {
  const kept: string[] = [];
  const code = formula.replace(NOT_CODE, (found) => {
    if (found.endsWith("!")) return "";
    kept.push(found);
    return `"${kept.length - 1}"`;
  });
  return withPresentNames(code).replace(/"(\d+)"/g, (_, index: string) => nth(kept, Number(index)));
}

interface Unbound {
  readonly row: number;
  readonly col: number;
  readonly formula: string;
}

/**
 * Whether a formula must be typed again: it shows #NAME?, or it has the form of a file, whatever it shows (an empty
 * text, or the alternative of IFERROR).
 */
const isUnbound = (content: CellValue, value: CellValue): content is string =>
  typeof content === "string" &&
  content.startsWith("=") &&
  (value === UNKNOWN || asTyped(content).toUpperCase() !== content.toUpperCase());

/** The cells of a sheet that hold anything, with the formulas to be typed again, by their place in these cells. */
interface Found {
  readonly used: Excel.Range;
  readonly unbound: readonly Unbound[];
}

async function unboundOf(context: Excel.RequestContext, sheet: Excel.Worksheet): Promise<Found> {
  const used = sheet.getUsedRangeOrNullObject(true).load(PLACE_OF_ONE);
  await context.sync();
  if (used.isNullObject) return { used, unbound: [] };
  const box = boxOfRange(used);
  const all = [{ within: used, box: { ...box, row: 0, col: 0 } }];
  const contents = firstOf(await readBoxes(context, all, "formulas"));
  const values = firstOf(await readBoxes(context, all, "values"));
  used.load(PLACE_OF_ONE);
  await context.sync();
  // Somebody inserted rows while the cells were read.
  if (used.rowCount !== box.rows || used.rowIndex !== box.row) return unboundOf(context, sheet);
  const unbound = contents.flatMap((line, row) =>
    line.flatMap((content, col) =>
      isUnbound(content, nth(nth(values, row), col)) ? [{ row, col, formula: content }] : [],
    ),
  );
  return { used, unbound: await withoutSpilled(context, used, unbound) };
}

/** Leaves out cells that only show what spills from another cell: typing into them would block the spill. */
async function withoutSpilled(
  context: Excel.RequestContext,
  used: Excel.Range,
  unbound: readonly Unbound[],
): Promise<readonly Unbound[]> {
  // A cell that is spilled into shows the formula of the cell that spills: the same text as its neighbour.
  const texts = new Map(unbound.map(({ row, col, formula }) => [`${row},${col}`, formula]));
  const isRepeated = ({ row, col, formula }: Unbound): boolean =>
    texts.get(`${row - 1},${col}`) === formula || texts.get(`${row},${col - 1}`) === formula;
  const doubtful = unbound.filter(isRepeated);
  if (doubtful.length === 0 || !Office.context.requirements.isSetSupported("ExcelApi", "1.12")) return unbound;
  const asked = doubtful.map((one) => {
    const cell = used.getCell(one.row, one.col).load(PLACE);
    return { one, cell, parent: cell.getSpillParentOrNullObject().load(PLACE) };
  });
  await context.sync();
  const spilled = new Set(
    asked
      .filter(
        ({ cell, parent }) =>
          !parent.isNullObject && (parent.rowIndex !== cell.rowIndex || parent.columnIndex !== cell.columnIndex),
      )
      .map(({ one }) => one),
  );
  return unbound.filter((one) => !spilled.has(one));
}

/** A cell that follows its place when rows are inserted. */
interface Cell {
  readonly range: Excel.Range;
  readonly formula: string;
}

/** Cells asked for in one request. */
const CELLS_PER_REQUEST = 1_000;

/** The cells that still hold these formulas: somebody may have inserted rows since they were read. */
async function cellsOf(
  context: Excel.RequestContext,
  { used, unbound }: Found,
  course: Course | undefined,
): Promise<Cell[]> {
  const cells: Cell[] = [];
  for (const part of runsOf(unbound, () => 1, CELLS_PER_REQUEST)) {
    goOn(course, 0);
    const asked = part.map(({ row, col, formula }) => ({ range: used.getCell(row, col).load("formulas"), formula }));
    await context.sync();
    cells.push(...asked.filter(({ range, formula }) => range.formulas[0]?.[0] === formula));
  }
  return cells;
}

/** Types formulas in one request; if Excel refuses one of them, in halves, so that the others are still typed. */
async function typeAgain(
  context: Excel.RequestContext,
  cells: readonly Cell[],
  course: Course | undefined,
): Promise<void> {
  // What a cell holds just before it is written: somebody else may have typed there.
  const taken: { readonly cell: Cell; readonly held: Excel.Range }[] = [];
  try {
    await send(
      context,
      cells.map((cell) => ({
        bytes: bytesOf(cell.formula),
        act: () => {
          taken.push({ cell, held: cell.range.getCell(0, 0).load("formulas,values") });
          cell.range.formulas = [[asTyped(cell.formula)]];
        },
      })),
      course,
    );
    const typed = taken.filter(({ cell, held }) => held.formulas[0]?.[0] !== cell.formula);
    for (const { cell, held } of typed)
      cell.range.formulas = [[asWritten(held.formulas[0]?.[0] ?? "", held.values[0]?.[0])]];
    if (typed.length > 0) await context.sync();
  } catch (error) {
    if (error instanceof Stopped) throw error;
    if (cells.length === 1) return;
    const half = Math.ceil(cells.length / 2);
    await typeAgain(context, cells.slice(0, half), course);
    await typeAgain(context, cells.slice(half), course);
  }
}

/** Returns how many formulas had to be typed again, and how many still must be. */
export async function reenterFormulas(
  context: Excel.RequestContext,
  sheet: Excel.Worksheet,
  course?: Course,
): Promise<{ found: number; left: number }> {
  const found = await unboundOf(context, sheet);
  if (found.unbound.length === 0) return { found: 0, left: 0 };
  await unprotected(context, sheet, async () => typeAgain(context, await cellsOf(context, found, course), course));
  return { found: found.unbound.length, left: (await unboundOf(context, sheet)).unbound.length };
}
