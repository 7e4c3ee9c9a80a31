/**
 * The values of formulas. The stand-in is not a spreadsheet: a test gives an evaluator, or each formula shows 0. The
 * behaviour of Excel around custom functions is modelled here: #NAME? while the add-in is not loaded, #BUSY! for a
 * while, spills and #SPILL!.
 */
import { keyOf, placeOf, type Book, type Cell, type Sheet, type Value } from "./book";
import { inside } from "./address";

/** Returns the value of a formula; rows of values spill. Undefined leaves the formula at 0. */
export type Evaluator = (
  formula: string,
  at: { readonly sheet: string; readonly row: number; readonly col: number },
) => Value | Value[][] | undefined;

export interface Evaluation {
  evaluator: Evaluator;
  /** True while the add-in is not loaded: its functions show #NAME?. */
  isAddInLate: boolean;
  /** For this many more batches the functions of the add-in show #BUSY!. */
  busyFor: number;
  /** Manual calculation: a formula that is there keeps its value until the workbook is calculated. */
  isManual: boolean;
}

/** A function of the add-in as a person types it. */
const TYPED = /(?<![\w.!'])CLAY\.\w+\s*\(/i;
/** A function of the add-in as a file stores it; Excel does not know it until it is typed again. */
const STORED = /_xldudf_|\.XLAM'?!/i;

/** The cells that were calculated since their formula was entered. */
const CALCULATED = new WeakSet<Cell>();

/** Calculates every formula; with manual calculation, unless it is asked for, only those just entered. */
export function evaluate(book: Book, evaluation: Evaluation, isAsked = false): void {
  const keeps = (cell: Cell): boolean => evaluation.isManual && !isAsked && CALCULATED.has(cell);
  for (const sheet of book.sheets) {
    const isKept = (at: readonly [number, number]): boolean => keeps(sheet.cells.get(keyOf(...at)) ?? { value: "" });
    // All cells are gone through after every write, so once, and without a list of them: most are blank or typed.
    const formulas: [number, Cell][] = [];
    for (const [key, cell] of sheet.cells)
      if (cell.formula !== undefined) formulas.push([key, cell]);
      else if (cell.filledFrom && !isKept(cell.filledFrom)) sheet.cells.delete(key);
    for (const [key, cell] of formulas) {
      if (keeps(cell)) continue;
      show(sheet, key, cell, evaluation);
      CALCULATED.add(cell);
    }
  }
}

function show(sheet: Sheet, key: number, cell: Cell, evaluation: Evaluation): void {
  const [row, col] = placeOf(key);
  const shown = shownBy(cell.formula!, { sheet: sheet.name, row, col }, evaluation);
  delete cell.spill;
  if (!Array.isArray(shown)) {
    cell.value = shown;
    return;
  }
  const rows = shown.length;
  const cols = shown[0]?.length ?? 1;
  const isInTheWay =
    rows * cols > 1 && (isBlocked(sheet, row, col, rows, cols) || sheet.merges.some((one) => inside(one, row, col)));
  cell.value = isInTheWay ? "#SPILL!" : (shown[0]?.[0] ?? "");
  if (isInTheWay || rows * cols === 1) return;
  cell.spill = { rows, cols };
  shown.forEach((line, r) =>
    line.forEach((value, c) => {
      if (r + c > 0) sheet.cells.set(keyOf(row + r, col + c), { value, filledFrom: [row, col] });
    }),
  );
}

function isBlocked(sheet: Sheet, row: number, col: number, rows: number, cols: number): boolean {
  for (let r = row; r < row + rows; r++)
    for (let c = col; c < col + cols; c++) {
      if (r === row && c === col) continue;
      if (sheet.cells.has(keyOf(r, c)) || sheet.merges.some((one) => inside(one, r, c))) return true;
    }
  return false;
}

interface Kind {
  /** Shows a text of its own in place of an error. */
  readonly guarded: boolean;
  readonly isOwn: boolean;
  readonly isStored: boolean;
}

/** By the formula: what is calculated anew after every write is read once. */
const KINDS = new Map<string, Kind>();

function kindOf(formula: string): Kind {
  const known = KINDS.get(formula);
  if (known) return known;
  const guarded = /^=IFERROR\(/i.test(formula);
  const kind = { guarded, isOwn: TYPED.test(formula), isStored: STORED.test(formula) };
  KINDS.set(formula, kind);
  return kind;
}

function shownBy(
  formula: string,
  at: { sheet: string; row: number; col: number },
  evaluation: Evaluation,
): Value | Value[][] {
  const { guarded, isOwn, isStored } = kindOf(formula);
  if (isStored || (isOwn && evaluation.isAddInLate)) return guarded ? (fallback(formula) ?? "#NAME?") : "#NAME?";
  if (isOwn && evaluation.busyFor > 0) return guarded ? (fallback(formula) ?? "#BUSY!") : "#BUSY!";
  return evaluation.evaluator(formula, at) ?? 0;
}

/** The text that an IFERROR around a whole formula shows in place of an error. */
const fallback = (formula: string): string | undefined =>
  /,\s*"((?:[^"]|"")*)"\s*\)$/.exec(formula)?.[1].replaceAll('""', '"');
