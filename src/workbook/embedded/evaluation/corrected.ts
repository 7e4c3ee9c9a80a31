/**
 * Corrections of the engine's evaluator.
 * Casts: the engine's types do not include the inner parts of its evaluator.
 */
import { helpers } from "@odoo/o-spreadsheet";
import { bareValue, TEXT_FORMAT } from "../typing/text";
import type { Zone } from "../zones";
import { rangeOf, type Evaluated, type Evaluator, type HeldCell, type Place, type SheetRange } from "./engine-parts";
import { noteRead } from "./lacking";
import { blankAt, cellsOfRanges } from "./range-cells";
import { tellOnce } from "./told-once";
import { formsOf } from "./unread";

/** Runs of at most this many blank rows are evaluated with the cells around them. */
const GAP = 100;
/** With more bands of rows than this, the whole sheet is evaluated. */
const MOST_BANDS = 1000;

/**
 * The rows of a sheet that hold cells, as bands. The engine itself would evaluate every position, a million rows for
 * one cell at their end.
 */
export function filledBands(getters: any, sheetId: string): Zone[] {
  const whole = getters.getSheetZone(sheetId);
  const filled = new Set<number>();
  for (const { id } of getters.getCells(sheetId)) filled.add(getters.getCellPosition(id).row);
  const bands: Zone[] = [];
  for (const row of [...filled].sort((a, b) => a - b)) {
    const last = bands.at(-1);
    if (last && row - last.bottom <= GAP) bands.splice(-1, 1, { ...last, bottom: row });
    else bands.push({ ...whole, top: row, bottom: row });
  }
  return bands.length > MOST_BANDS ? [whole] : bands;
}

const overlap = (one: SheetRange, other: SheetRange): boolean =>
  one.sheetId === other.sheetId && helpers.overlap(one.zone, other.zone);

/** The blank cells of a range that a formula in another cell fills, with their values. */
function filledIn(evaluator: Evaluator, { sheetId, zone }: SheetRange): [Place, Evaluated][] {
  const { blockedArrayFormulas, evaluatedCells, getters, spreadingRelations } = evaluator;
  const found: [Place, Evaluated][] = [];
  for (const formula of spreadingRelations.searchFormulaPositionsSpreadingOn(sheetId, zone)) {
    const filled = spreadingRelations.arrayFormulasToResults.get(formula);
    if (!filled || blockedArrayFormulas.has(formula)) continue;
    for (let col = Math.max(zone.left, filled.left); col <= Math.min(zone.right, filled.right); col++)
      for (let row = Math.max(zone.top, filled.top); row <= Math.min(zone.bottom, filled.bottom); row++) {
        const place = { sheetId, col, row };
        const cell: HeldCell | undefined = getters.getCell(place);
        const isOwn = col === formula.col && row === formula.row;
        const value = isOwn || cell?.isFormula || cell?.content ? undefined : evaluatedCells.get(place);
        if (value) found.push([place, value]);
      }
  }
  return found;
}

/**
 * The engine notes which formula is evaluated, and notes the outer one again when an inner one has answered, but not when the inner one throws
 * (COUNTIF without a range): the outer one did not follow the names that it read afterwards, and kept its value.
 */
function noteOuterAgain(evaluator: Evaluator): void {
  const compute = evaluator.computeFormulaCell.bind(evaluator);
  evaluator.computeFormulaCell = (place, cell) => {
    const { evalContext } = evaluator.compilationParams;
    const { __originCellPosition, __originSheetId } = evalContext;
    try {
      return compute(place, cell);
    } finally {
      Object.assign(evalContext, { __originCellPosition, __originSheetId });
    }
  };
}

/**
 * Corrects eight things in the evaluator: which rows it evaluates, what waits when it gives up, what it keeps of blank cells, texts in cells of text
 * format, texts that look like links, formulas that read, by a name, what is to be evaluated again, formulas that read a formula which
 * ends with an error of the engine, and cells that a formula fills where another stood before.
 */
export function correct(evaluator: Evaluator): void {
  const { getters } = evaluator;
  tellOnce(evaluator);
  // The engine would show the apostrophe that keeps a text in a cell of text format from being a formula: take it off.
  const getCell = (place: Place): HeldCell | undefined => {
    const cell: HeldCell | undefined = getters.getCell(place);
    return cell && !cell.isFormula && cell.format === TEXT_FORMAT && cell.content !== bareValue(cell.content)
      ? { ...cell, content: bareValue(cell.content) }
      : cell;
  };
  evaluator.getters = Object.create(getters, {
    getCell: { value: getCell },
  });

  // A formula on a deleted sheet is not evaluated again.
  const dependingOn = evaluator.getCellsDependingOn.bind(evaluator);
  evaluator.getCellsDependingOn = (ranges) => {
    const found = dependingOn(ranges);
    for (const sheetId of Object.keys(found.setsBySheetId))
      if (getters.tryGetSheet(sheetId) === undefined) Reflect.deleteProperty(found.setsBySheetId, sheetId);
    return found;
  };

  noteOuterAgain(evaluator);

  // A text typed with an apostrophe in front is never a link, whatever it looks like.
  const compute = evaluator.computeCell.bind(evaluator);
  evaluator.computeCell = (place) => {
    const found = compute(place);
    if (!found.link) return found;
    const cell: HeldCell | undefined = getters.getCell(place);
    if (!cell || cell.isFormula || !cell.content.startsWith("'")) return found;
    const text = cell.content.slice(1);
    return { ...found, link: undefined, value: text, formattedValue: text, type: "text" };
  };

  // The engine would keep an object for each blank cell that a formula reads, 8 MB for a data sheet. A formula that was deleted may
  // have left values in other cells, which the engine takes away.
  const save = evaluator.computeAndSave.bind(evaluator);
  const read = (cell: Evaluated): Evaluated => {
    if (cell.type === "error") noteRead(cell);
    return cell;
  };
  evaluator.computeAndSave = (place) => {
    if (getters.getCell(place) !== undefined) return read(save(place));
    const spilled = evaluator.evaluatedCells.get(place);
    if (spilled) return read(spilled);
    return evaluator.spreadingRelations.isArrayFormula(place) ? read(save(place)) : blankAt(place);
  };
  const update = evaluator.updateCompilationParameters.bind(evaluator);
  evaluator.updateCompilationParameters = () => {
    update();
    const { compilationParams } = evaluator;
    compilationParams.ensureRange = cellsOfRanges(evaluator, compilationParams.ensureRange);
    compilationParams.evalContext.forms = formsOf(evaluator);
  };
  // The engine learns only when a formula asks for a name that the formula reads these cells. If some of them wait to be evaluated again,
  // the formula has to wait with them, and so have its readers: it would keep what it made of the cells as they are now.
  const addDependencies = evaluator.addDependencies.bind(evaluator);
  evaluator.addDependencies = (place, read) => {
    addDependencies(place, read);
    if (evaluator.nextRangesToUpdate.isEmpty()) return;
    const waiting = [...evaluator.nextRangesToUpdate];
    if (!waiting.some((range) => read.some((one) => overlap(one, range)))) return;
    const range = rangeOf(place);
    evaluator.nextRangesToUpdate.addMany([range, ...evaluator.getCellsDependingOn([range])]);
  };
  // Where formulas that fill cells make one another be evaluated again without an end, the engine ends after 30 rounds. What then waits for the
  // next round would stay blank, and the next entry would not look for what reads it.
  // The parameters of an evaluation hold the cells of every range that it has read.
  const evaluate = evaluator.evaluate.bind(evaluator);
  evaluator.evaluate = (ranges) => {
    evaluate(ranges);
    const waiting = [...evaluator.nextRangesToUpdate];
    for (const { sheetId, zone } of waiting)
      for (let col = zone.left; col <= zone.right; col++)
        for (let row = zone.top; row <= zone.bottom; row++) evaluator.computeAndSave({ sheetId, col, row });
    if (waiting.length > 0) evaluator.nextRangesToUpdate.clear();
    evaluator.updateCompilationParameters();
  };

  // A formula that was deleted still counts as a reader of what it read. Its cell may since be filled by another formula, which is not
  // evaluated with it and clears what it fills itself: the cell keeps its value.
  const clear = evaluator.clearEvaluatedRanges.bind(evaluator);
  evaluator.clearEvaluatedRanges = (ranges) => {
    const filled = ranges.flatMap((range) => filledIn(evaluator, range));
    clear(ranges);
    for (const [place, value] of filled) evaluator.evaluatedCells.set(place, value);
  };

  evaluator.evaluateAllCells = () => {
    const Cells = evaluator.evaluatedCells.constructor as new () => Evaluator["evaluatedCells"];
    evaluator.evaluatedCells = new Cells();
    const sheetIds: string[] = getters.getSheetIds();
    evaluator.evaluate(sheetIds.flatMap((sheetId) => filledBands(getters, sheetId).map((zone) => ({ sheetId, zone }))));
  };
}
