/** Types formulas again that Excel has not connected to the add-in. */
import { firstOf, nth } from "../../reduction/numeric/lists";
import type { CellValue } from "../port";
import { withPresentNames } from "../renamed-functions";
import { boxOfRange, PLACE_OF_ONE, rangeOf, readBoxes } from "./read";
import { bytesOf, send } from "./requests";
import { unprotected } from "./upkeep";

const UNKNOWN = "#NAME?";

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

async function unboundOf(context: Excel.RequestContext, sheet: Excel.Worksheet): Promise<Unbound[]> {
  const used = sheet.getUsedRangeOrNullObject(true).load(PLACE_OF_ONE);
  await context.sync();
  if (used.isNullObject) return [];
  const box = boxOfRange(used);
  const contents = firstOf(await readBoxes(context, [{ sheet, box }], "formulas"));
  const values = firstOf(await readBoxes(context, [{ sheet, box }], "values"));
  return contents.flatMap((line, row) =>
    line.flatMap((content, col) =>
      isUnbound(content, nth(nth(values, row), col))
        ? [{ row: box.row + row, col: box.col + col, formula: content }]
        : [],
    ),
  );
}

/** Leaves out cells that only show what spills from another cell: typing into them would block the spill. */
async function withoutSpilled(
  context: Excel.RequestContext,
  sheet: Excel.Worksheet,
  unbound: readonly Unbound[],
): Promise<readonly Unbound[]> {
  // A cell that is spilled into shows the formula of the cell that spills: the same text as its neighbour.
  const texts = new Map(unbound.map(({ row, col, formula }) => [`${row},${col}`, formula]));
  const isRepeated = ({ row, col, formula }: Unbound): boolean =>
    texts.get(`${row - 1},${col}`) === formula || texts.get(`${row},${col - 1}`) === formula;
  const doubtful = unbound.filter(isRepeated);
  if (doubtful.length === 0 || !Office.context.requirements.isSetSupported("ExcelApi", "1.12")) return unbound;
  const parents = doubtful.map((one) => ({
    one,
    parent: sheet.getCell(one.row, one.col).getSpillParentOrNullObject().load("rowIndex,columnIndex"),
  }));
  await context.sync();
  const spilled = new Set(
    parents
      .filter(
        ({ one, parent }) => !parent.isNullObject && (parent.rowIndex !== one.row || parent.columnIndex !== one.col),
      )
      .map(({ one }) => one),
  );
  return unbound.filter((one) => !spilled.has(one));
}

/** Types formulas in one request; if Excel refuses one of them, in halves, so that the others are still typed. */
async function typeAgain(
  context: Excel.RequestContext,
  sheet: Excel.Worksheet,
  unbound: readonly Unbound[],
): Promise<void> {
  try {
    await send(
      context,
      unbound.map(({ row, col, formula }) => ({
        bytes: bytesOf(formula),
        act: () => {
          rangeOf(sheet, { row, col, rows: 1, cols: 1 }).formulas = [[asTyped(formula)]];
        },
      })),
    );
  } catch {
    if (unbound.length === 1) return;
    const half = Math.ceil(unbound.length / 2);
    await typeAgain(context, sheet, unbound.slice(0, half));
    await typeAgain(context, sheet, unbound.slice(half));
  }
}

/** Returns how many formulas had to be typed again, and how many still must be. */
export async function reenterFormulas(
  context: Excel.RequestContext,
  sheet: Excel.Worksheet,
): Promise<{ found: number; left: number }> {
  const unbound = await withoutSpilled(context, sheet, await unboundOf(context, sheet));
  if (unbound.length === 0) return { found: 0, left: 0 };
  await unprotected(context, sheet, () => typeAgain(context, sheet, unbound));
  return {
    found: unbound.length,
    left: (await withoutSpilled(context, sheet, await unboundOf(context, sheet))).length,
  };
}
