/**
 * The cells of a range as the engine's functions take them, with an object for each blank cell that is quickly made: a changed reading made
 * the columns of 2,000 rows of every load anew, of which most rows are blank, and took twice as long.
 * Casts: the engine's types do not include the inner parts of its evaluator.
 */
import { helpers } from "@odoo/o-spreadsheet";
import type { Zone } from "../zones";
import type { Evaluated, Evaluator, Place, SheetRange } from "./engine-parts";
import { withSize } from "./full-size";
import { looked, noteRange, withoutNotes } from "./lacking";

/** A range of the engine by columns. */
type Matrix = Evaluated[][];

/** A range, as a formula or a name has it; one that is no longer in the workbook has the name of its sheet instead. */
interface Read extends SheetRange {
  readonly invalidSheetName?: string;
}

/** The sheet of the engine; blank cells are missing in its rows. */
interface Sheet {
  readonly numberOfCols: number;
  readonly rows: readonly ({ readonly cells: Readonly<Record<number, unknown>> } | undefined)[];
}

/** A blank cell without a format, as the engine gives it. */
export const blankAt = (position: Place): Evaluated => ({
  value: null,
  format: undefined,
  formattedValue: "",
  type: "empty",
  isAutoSummable: true,
  defaultAlign: "left",
  position,
});

/** An evaluator keeps the blank cells of at most so many rows of ranges, about 6 MB. */
const MOST_ROWS = 60_000;

/** Blank cells of ranges from one evaluation to the next: formulas only read the cells of a range. */
class Blanks {
  readonly #columns = new Map<string, Evaluated[]>();
  #room = MOST_ROWS;

  /** The blank cells of a column of a range that were needed so far, by row from the top of the range. */
  of({ sheetId, zone: { top, bottom } }: SheetRange, col: number): Evaluated[] {
    const key = `${col} ${top} ${bottom} ${sheetId}`;
    const known = this.#columns.get(key);
    if (known) return known;
    const rows = bottom - top + 1;
    const made = new Array<Evaluated>(rows);
    if (rows > MOST_ROWS) return made;
    if (rows > this.#room) {
      this.#columns.clear();
      this.#room = MOST_ROWS;
    }
    this.#room -= rows;
    this.#columns.set(key, made);
    return made;
  }
}

const blanksOf = new WeakMap<Evaluator, Blanks>();

const isIn = ({ numberOfCols, rows }: Sheet, { left, right, top, bottom }: SheetRange["zone"]): boolean =>
  left >= 0 && top >= 0 && left <= right && top <= bottom && right < numberOfCols && bottom < rows.length;

/** False for a reference that leads nowhere, as to a deleted row or sheet. */
const isThere = ({ invalidSheetName, zone: { left, right, top, bottom } }: Read): boolean =>
  !invalidSheetName && left >= 0 && top >= 0 && left <= right && top <= bottom;

/**
 * The cells of ranges that do not change while new sheets are evaluated: those of other sheets, and those of the new sheets without
 * formulas. The engine lists the cells of all ranges anew for each column of a sheet: 5 MB for a data sheet or a report.
 */
class KeptRanges {
  readonly #byPlace = new Map<string, { readonly range: SheetRange; readonly matrix: Matrix }>();

  constructor(
    readonly evaluator: Evaluator,
    readonly fresh: ReadonlySet<string>,
  ) {}

  get(key: string): Matrix | undefined {
    return this.#byPlace.get(key)?.matrix;
  }

  /** Keeps the cells of a range, if they do not change. */
  add(key: string, range: SheetRange, sheet: Sheet, matrix: Matrix): void {
    const { sheetId, zone } = range;
    if (!this.fresh.has(sheetId) || !this.#hasFormula(sheetId, zone, sheet)) this.#byPlace.set(key, { range, matrix });
  }

  /** Forgets ranges with cells that were blank and that the answer of a formula takes, or that it leaves. */
  forget(sheetId: string, zone: Zone | undefined): void {
    if (zone)
      for (const [key, { range }] of this.#byPlace)
        if (range.sheetId === sheetId && helpers.overlap(range.zone, zone)) this.#byPlace.delete(key);
  }

  /** Forgets all: the next sheet reads other ranges. */
  clear(): void {
    this.#byPlace.clear();
  }

  #hasFormula(sheetId: string, { left, right, top, bottom }: SheetRange["zone"], { rows }: Sheet): boolean {
    for (let col = left; col <= right; col++)
      for (let row = top; row <= bottom; row++) {
        if (rows[row]?.cells[col] === undefined) continue;
        if (this.evaluator.getters.getCell({ sheetId, col, row })?.isFormula) return true;
      }
    return false;
  }
}

const keptRanges = new WeakMap<Evaluator, KeptRanges>();

/**
 * Keeps the cells of ranges from now on, while the sheets `fresh` are evaluated and nothing else changes the workbook. Returns the
 * functions that forget them, and that end it.
 */
export function keepRanges(evaluator: Evaluator, fresh: readonly string[]): { clear(): void; end(): void } {
  const kept = new KeptRanges(evaluator, new Set(fresh));
  const { spreadingRelations } = evaluator;
  const { addRelation, removeNode } = spreadingRelations;
  spreadingRelations.addRelation = function (relation) {
    kept.forget(relation.arrayFormulaPosition.sheetId, relation.resultZone);
    addRelation.call(this, relation);
  };
  spreadingRelations.removeNode = function (place) {
    kept.forget(place.sheetId, this.arrayFormulasToResults.get(place));
    removeNode.call(this, place);
  };
  keptRanges.set(evaluator, kept);
  return {
    clear: () => kept.clear(),
    end() {
      keptRanges.delete(evaluator);
      Object.assign(spreadingRelations, { addRelation, removeNode });
    },
  };
}

function columnOf(evaluator: Evaluator, sheet: Sheet, range: SheetRange, col: number, blanks: Blanks): Evaluated[] {
  const { sheetId, zone } = range;
  const { evaluatedCells } = evaluator;
  const { arrayFormulasToResults } = evaluator.spreadingRelations;
  const { top, bottom } = zone;
  const cells = new Array<Evaluated>(bottom - top + 1);
  const blank = blanks.of(range, col);
  let known = evaluatedCells.getSheet(sheetId)?.[col];
  let spilled = arrayFormulasToResults.getSheet(sheetId)?.[col];
  for (let row = top; row <= bottom; row++) {
    const found = known?.[row];
    if (found?.position && !found.link) cells[row - top] = found;
    else {
      if (!found && sheet.rows[row]?.cells[col] === undefined && !spilled?.[row])
        cells[row - top] = blank[row - top] ??= blankAt({ sheetId, col, row });
      else {
        const position = { sheetId, col, row };
        const computed = evaluator.computeAndSave(position);
        cells[row - top] = computed.position ? computed : { ...computed, position };
        // The formula may be the first cell of its column that was evaluated, or that fills others.
        known = evaluatedCells.getSheet(sheetId)?.[col];
        spilled = arrayFormulasToResults.getSheet(sheetId)?.[col];
      }
    }
  }
  return cells;
}

/**
 * A function that gives the cells of a range, each range once. `others` gives those of a range that does not lie in its sheet as a whole.
 */
export function cellsOfRanges(evaluator: Evaluator, others: (range: Read) => Matrix): (range: Read) => Matrix {
  const blanks = blanksOf.get(evaluator) ?? new Blanks();
  blanksOf.set(evaluator, blanks);
  const byRange = new Map<Read, { readonly cells: Matrix; sized?: Matrix }>();
  const byPlace = new Map<string, Matrix>();
  const read = (range: Read): Matrix => {
    const { sheetId, zone } = range;
    const sheet = evaluator.getters.tryGetSheet(sheetId) as Sheet | undefined;
    if (range.invalidSheetName || !sheet || !isIn(sheet, zone)) return looked(others(range));
    const { left, right, top, bottom } = zone;
    const key = `${left} ${top} ${right} ${bottom} ${sheetId}`;
    const kept = keptRanges.get(evaluator);
    const before = byPlace.get(key) ?? kept?.get(key);
    if (before) return before;
    const matrix = Array.from({ length: right - left + 1 }, (_, index) =>
      columnOf(evaluator, sheet, range, left + index, blanks),
    );
    byPlace.set(key, matrix);
    looked(matrix);
    kept?.add(key, range, sheet, matrix);
    return matrix;
  };
  return (range) => {
    const known = byRange.get(range) ?? { cells: withoutNotes(() => read(range)) };
    byRange.set(range, known);
    noteRange(known.cells);
    return (known.sized ??= isThere(range) ? withSize(known.cells, range) : known.cells);
  };
}
