/**
 * Evaluates what a step has changed, and every formula that reads it.
 * Casts: the engine's types do not include the inner parts of its evaluator.
 */
import { filledBands } from "./corrected";
import { rangeOf, type Evaluator, type Place, type SheetRange } from "./engine-parts";
import { know } from "./fresh";
import type { Step } from "./step";

/** The names that formulas asked for and that the workbook did not have. References in a text (INDIRECT) are among them. */
export class Missed {
  readonly #places = new Map<string, Map<string, Place>>();

  constructor(evaluator: Evaluator) {
    const { getters } = evaluator;
    evaluator.getters = Object.create(getters, {
      getNamedRange: {
        value: (name: string): unknown => {
          const found: unknown = getters.getNamedRange(name);
          const asks = evaluator.compilationParams.evalContext.__originCellPosition;
          if (found === undefined && asks) this.#add(name.toLowerCase(), asks);
          return found;
        },
      },
    });
  }

  #add(name: string, place: Place): void {
    const places = this.#places.get(name) ?? new Map<string, Place>();
    places.set(`${place.sheetId} ${place.col} ${place.row}`, place);
    this.#places.set(name, places);
  }

  clear(): void {
    this.#places.clear();
  }

  /** Forgets the formulas of a sheet, which will ask again. */
  forget(sheetId: string): void {
    for (const places of this.#places.values())
      for (const [key, place] of places) if (place.sheetId === sheetId) places.delete(key);
  }

  of(isWanted: (name: string) => boolean): Place[] {
    return [...this.#places].flatMap(([name, places]) => (isWanted(name) ? [...places.values()] : []));
  }
}

/** Removes all that the evaluator knows of a sheet. Returns the formulas of other sheets that read it, without those that read these. */
function forget(evaluator: Evaluator, sheetId: string): SheetRange[] {
  const { forest } = evaluator.formulaDependencies();
  const whole = { top: 0, bottom: Number.MAX_SAFE_INTEGER };
  const readers = Object.values(forest[sheetId] ?? {}).flatMap((column) =>
    column.query(whole).flatMap(({ dependents }) => (dependents.sheetId === sheetId ? [] : [dependents])),
  );
  const { resultsToArrayFormulas, arrayFormulasToResults } = evaluator.spreadingRelations;
  for (const known of [forest, evaluator.blockedArrayFormulas.sheets, resultsToArrayFormulas.rTrees])
    Reflect.deleteProperty(known, sheetId);
  arrayFormulasToResults.clearSheet(sheetId);
  evaluator.evaluatedCells.clearSheet(sheetId);
  return readers;
}

/** The formulas of other sheets that read one of these sheets. */
function readersOf(evaluator: Evaluator, sheets: ReadonlySet<string>): Place[] {
  const { getters } = evaluator;
  const graph = evaluator.formulaDependencies();
  const places: Place[] = [];
  for (const sheetId of getters.getSheetIds()) {
    if (sheets.has(sheetId)) continue;
    for (const { id, isFormula, compiledFormula } of getters.getCells(sheetId)) {
      const read: readonly SheetRange[] = isFormula ? compiledFormula.rangeDependencies : [];
      if (!read.some((range) => sheets.has(range.sheetId))) continue;
      const place: Place = getters.getCellPosition(id);
      graph.addDependencies(place, read);
      places.push(place);
    }
  }
  return places;
}

/** Functions that find a sheet, or show a reference, by a text. */
const BY_TEXT = /^(?:INDIRECT|CELL|FORMULATEXT)$/i;

/** The formulas that may show another value because a sheet is called otherwise. */
function readersByName(evaluator: Evaluator, renamed: ReadonlySet<string>): Place[] {
  const { getters } = evaluator;
  const graph = evaluator.formulaDependencies();
  const places: Place[] = [];
  for (const sheetId of getters.getSheetIds())
    for (const { id, isFormula, compiledFormula } of getters.getCells(sheetId)) {
      if (!isFormula) continue;
      const read: readonly (SheetRange & { readonly prefixSheet: boolean; readonly invalidSheetName?: string })[] =
        compiledFormula.rangeDependencies;
      const names = read.some((one) => one.invalidSheetName || (one.prefixSheet && renamed.has(one.sheetId)));
      const tokens: readonly { readonly value: string }[] = compiledFormula.tokens;
      if (!names && !tokens.some(({ value }) => BY_TEXT.test(value))) continue;
      const place: Place = getters.getCellPosition(id);
      graph.addDependencies(place, read);
      places.push(place);
    }
  return places;
}

/** Tells the evaluator what the formulas in a range read now. Returns the formulas that spill, or would spill, into the range. */
function changedCells(evaluator: Evaluator, { sheetId, zone }: SheetRange): SheetRange[] {
  const { getters } = evaluator;
  const graph = evaluator.formulaDependencies();
  for (let col = zone.left; col <= zone.right; col++)
    for (let row = zone.top; row <= zone.bottom; row++) {
      const cell = getters.getCell({ sheetId, col, row });
      if (cell?.isFormula) graph.addDependencies({ sheetId, col, row }, cell.compiledFormula.rangeDependencies);
    }
  return [...evaluator.spreadingRelations.searchFormulaPositionsSpreadingOn(sheetId, zone)].map(rangeOf);
}

/**
 * What reads the former ranges of the names that changed or went away, and the formulas that missed a name that is there now. `forget`
 * gives the readers of a sheet that is forgotten: its own formulas, which mostly read one another, need not be gone through.
 */
function changedNames(
  evaluator: Evaluator,
  { changesNames, namesBefore: before }: Step,
  missed: Missed,
  forgotten: ReadonlySet<string>,
): SheetRange[] {
  if (!changesNames) return [];
  const now = new Map<string, SheetRange>();
  for (const { name, range } of evaluator.getters.getNamedRanges()) now.set(name.toLowerCase(), range);
  const former = [...before].flatMap(([name, { range }]) =>
    range && now.get(name) !== range && !forgotten.has(range.sheetId) ? [range] : [],
  );
  const added = missed.of((name) => now.has(name) && !before.has(name)).map(rangeOf);
  return [...evaluator.getCellsDependingOn(former), ...added];
}

/** Evaluates what the step has changed, but for the cells of the sheets that are evaluated already. */
export function evaluateStep(
  evaluator: Evaluator,
  step: Step,
  missed: Missed,
  evaluated: ReadonlySet<string> = new Set(),
): void {
  const { getters } = evaluator;
  const isThere = ({ sheetId }: { readonly sheetId: string }): boolean => getters.tryGetSheet(sheetId) !== undefined;
  const sheets = [...step.sheets].filter((sheetId) => !evaluated.has(sheetId));
  const ranges = changedNames(evaluator, step, missed, new Set(sheets));
  // The lists may be longer than a call takes arguments.
  const add = (more: readonly SheetRange[]): void => more.forEach((one) => ranges.push(one));
  const readers = sheets.flatMap((sheetId) => forget(evaluator, sheetId));
  for (const sheetId of sheets) missed.forget(sheetId);
  const cells = sheets
    .filter((sheetId) => isThere({ sheetId }))
    .flatMap((sheetId) => {
      know(evaluator, sheetId);
      return filledBands(getters, sheetId).map((zone) => ({ sheetId, zone }));
    });
  // Former places of a sheet that is evaluated whole mean nothing.
  const isOther = ({ sheetId }: SheetRange): boolean => evaluated.has(sheetId) || !step.sheets.has(sheetId);
  // A formula that was written in this step may read a sheet that the same step added.
  for (const range of [...readers, ...step.cells].filter((one) => isThere(one) && isOther(one)))
    add([range, ...changedCells(evaluator, range)]);
  if (step.returned.size > 0) add(readersOf(evaluator, step.returned).map(rangeOf));
  if (step.renamed.size > 0) add(readersByName(evaluator, step.renamed).map(rangeOf));
  if (step.sheets.size > 0) add(missed.of((name) => name.includes("!")).map(rangeOf));
  const changed = ranges.filter((range) => isThere(range) && isOther(range));
  evaluator.evaluate([...cells, ...changed, ...evaluator.getCellsDependingOn(changed)]);
}
