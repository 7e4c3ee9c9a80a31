/** Maintains a sheet in the embedded workbook: its names and its formulas. */
import { say, verbatim } from "../../reduction/message";
import { isUnknown } from "../cell-error";
import { WorkbookError, type SheetName } from "../port";
import { withPresentNames } from "../renamed-functions";
import type { Command, Model } from "./engine";
import type { LocalNames } from "./names";
import { formulaAt } from "./typing/locale";
import { addressOf, toBox, type Zone } from "./zones";

/**
 * The names of the sheet, then the names of the workbook that lead to it; `lost` are names of the file that led
 * nowhere.
 */
export function namesOf(
  { getters }: Model,
  sheetId: string,
  local: LocalNames | undefined,
  lost: readonly string[],
): SheetName[] {
  const own: SheetName[] = [];
  const called = new Set<string>();
  for (const [name, engineName] of local ?? []) {
    const range = getters.getNamedRange(engineName)?.range;
    if (!range) continue;
    called.add(engineName.toLowerCase());
    const isHere = range.sheetId === sheetId && !range.invalidXc;
    own.push({ name, scope: "sheet", place: isHere ? toBox(range.zone) : "lost" });
  }
  const found = new Set(own.map(({ name }) => name.toLowerCase()));
  const gone = lost
    .filter((name) => !found.has(name.toLowerCase()))
    .map((name): SheetName => ({ name, scope: "sheet", place: "lost" }));
  const global = getters
    .getNamedRanges()
    .filter(({ name, range }) => range.sheetId === sheetId && !called.has(name.toLowerCase()))
    .map(({ name, range }): SheetName => ({
      name,
      scope: "workbook",
      place: range.invalidXc ? "lost" : toBox(range.zone),
    }));
  return [...own, ...gone, ...global];
}

/** The command that gives a zone a name; a name that already leads to cells is moved only with `replace`. */
export function nameCommand(
  model: Model,
  sheetId: string,
  name: string,
  engineName: string,
  zone: Zone,
  replace: boolean,
): Command {
  const present = model.getters.getNamedRange(engineName)?.range;
  const ranges = [{ _sheetId: sheetId, _zone: zone }];
  if (!present) return { type: "CREATE_NAMED_RANGE", sheetId, name: engineName, ranges };
  if (present.sheetId === sheetId && !present.invalidXc && !replace)
    throw new WorkbookError(
      say`The name "${verbatim(name)}" is already at ${verbatim(addressOf(present.zone))} and was left there: say that it may be moved.`,
    );
  return { type: "UPDATE_NAMED_RANGE", sheetId, oldRangeName: engineName, newRangeName: engineName, ranges };
}

/** The commands that add rows and columns to a sheet if it is too small for the cells. */
export function roomCommands(
  { getters }: Model,
  sheetId: string,
  cells: readonly { readonly row: number; readonly col: number }[],
): Command[] {
  const grown = (dimension: "ROW" | "COL", has: number, last: number): Command[] =>
    last < has
      ? []
      : [
          {
            type: "ADD_COLUMNS_ROWS",
            ...{ sheetId, sheetName: getters.getSheetName(sheetId), dimension, base: has - 1 },
            ...{ position: "after", quantity: last - has + 1 },
          },
        ];
  // The list may be longer than a call takes arguments.
  const last = { row: 0, col: 0 };
  for (const { row, col } of cells) Object.assign(last, { row: Math.max(last.row, row), col: Math.max(last.col, col) });
  return [
    ...grown("ROW", getters.getNumberRows(sheetId), last.row),
    ...grown("COL", getters.getNumberCols(sheetId), last.col),
  ];
}

interface Unbound {
  readonly command: Command;
  readonly isChanged: boolean;
}

/** The formulas of a sheet that show an unknown function or name, with the commands that type them correctly. */
export function unboundFormulas({ getters }: Model, sheetId: string): Unbound[] {
  return Object.values(getters.getCells(sheetId)).flatMap(({ id, isFormula }) => {
    if (!isFormula) return [];
    const position = getters.getCellPosition(id);
    const { value } = getters.getEvaluatedCell(position);
    if (!isUnknown(value)) return [];
    const formula = formulaAt(getters, position);
    const content = withPresentNames(formula);
    return [{ command: { type: "UPDATE_CELL", ...position, content }, isChanged: content !== formula }];
  });
}
