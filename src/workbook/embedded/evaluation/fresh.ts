/**
 * Evaluates sheets that are new to the evaluator, in steps.
 * Casts: the engine's types do not include the inner parts of its evaluator.
 */
import { filledBands } from "./corrected";
import type { Evaluator, SheetRange } from "./engine-parts";
import { keepRanges } from "./range-cells";

/** Tells the evaluator of a sheet that is now in the workbook. */
export function know(evaluator: Evaluator, sheetId: string): void {
  const { getters } = evaluator;
  const Positions = evaluator.blockedArrayFormulas.constructor as new (sizes: object) => {
    readonly sheets: Record<string, unknown>;
  };
  const size = { rows: getters.getNumberRows(sheetId), cols: getters.getNumberCols(sheetId) };
  evaluator.blockedArrayFormulas.sheets[sheetId] = new Positions({ [sheetId]: size }).sheets[sheetId];
  const graph = evaluator.formulaDependencies();
  for (const cell of getters.getCells(sheetId))
    if (cell.isFormula) graph.addDependencies(getters.getCellPosition(cell.id), cell.compiledFormula.rangeDependencies);
}

/** The filled columns of a sheet, in the order in which the engine evaluates its cells. */
const columnsOf = (getters: any, sheetId: string): SheetRange[] =>
  filledBands(getters, sheetId).flatMap(({ left, right, top, bottom }) =>
    Array.from({ length: right - left + 1 }, (_, i) => ({
      sheetId,
      zone: { left: left + i, right: left + i, top, bottom },
    })),
  );

/** Evaluates a range of which no cell was evaluated, but for those that other formulas have read: these stay. */
function evaluateFresh(evaluator: Evaluator, range: SheetRange): void {
  const clear = evaluator.clearEvaluatedRanges;
  let isFirst = true;
  evaluator.clearEvaluatedRanges = (ranges) => {
    if (!isFirst) clear.call(evaluator, ranges);
    isFirst = false;
  };
  try {
    evaluator.evaluate([range]);
  } finally {
    evaluator.clearEvaluatedRanges = clear;
  }
}

/** Evaluates sheets of which the evaluator knows nothing, in steps that give the share that is done. */
export function* evaluatingSheets(evaluator: Evaluator, sheetIds: readonly string[]): Generator<number> {
  for (const [at, sheetId] of sheetIds.entries()) {
    know(evaluator, sheetId);
    yield (0.1 * (at + 1)) / sheetIds.length;
  }
  const kept = keepRanges(evaluator, sheetIds);
  try {
    for (const [at, sheetId] of sheetIds.entries()) {
      const columns = columnsOf(evaluator.getters, sheetId);
      for (const [index, column] of columns.entries()) {
        evaluateFresh(evaluator, column);
        yield 0.1 + (0.9 * (at + (index + 1) / columns.length)) / sheetIds.length;
      }
      kept.clear();
    }
  } finally {
    kept.end();
  }
}
