/**
 * The values that a file holds for formulas which the sheet on this page cannot calculate, and for formulas that read these. They are
 * written again when the workbook is saved, as long as the formula stands where it stood and every cell that it reads holds what it held: a
 * reader that does not calculate shows them, and Excel is asked to calculate them.
 * Casts: the engine's types do not tell what a compiled formula reads.
 */
import { helpers } from "@odoo/o-spreadsheet";
import { verbatim, say, type Message } from "../../../reduction/message";
import { boxOf, cellAddress } from "../../address";
import { isUnknown } from "../../cell-error";
import type { Model } from "../engine";
import type { Place, SheetRange } from "../evaluation/engine-parts";
import { evaluationOf } from "../evaluation/plugin";
import { isUnread } from "../evaluation/unread";
import { formulaAt } from "../typing/locale";
import type { Zone } from "../zones";
import { unknownIn } from "./opening/unknown-functions";

/** A value as the file holds it: the kind of the cell (`t`), and the text of `<v>`. */
export interface FileValue {
  readonly kind: string;
  readonly text: string;
}

/** A formula of a file: its value, and the cells that its answer fills, if it is a formula of arrays. */
export interface FileFormula extends Partial<FileValue> {
  readonly fills?: Zone;
}

/** What a file holds of a sheet for the cells of formulas, and for the cells that they fill: by address. */
export interface FileValues {
  readonly formulas: ReadonlyMap<string, FileFormula>;
  readonly filled: ReadonlyMap<string, FileValue>;
}

interface Kept {
  readonly formula: string;
  readonly value: FileValue;
  /** The cells that the formula fills beside its own. */
  readonly filled: ReadonlyMap<string, FileValue>;
  /** What the cells held that the formula reads, by their range. */
  readonly read: ReadonlyMap<string, string>;
}

/** By the getters of a model: the values by sheet and place. */
const values = new WeakMap<object, ReadonlyMap<string, Kept>>();

const keyOf = ({ sheetId, row, col }: Place): string => `${sheetId} ${row} ${col}`;

interface Formula {
  readonly rangeDependencies: readonly SheetRange[];
  readonly execute: never;
  getNamedRangesInFormula(getters: unknown): readonly { readonly range: SheetRange }[];
}

interface FormulaCell {
  readonly id: string;
  readonly isFormula: boolean;
  readonly compiledFormula: Formula;
}

/** What this page does not see a formula read, or what changes by itself. */
const OUT_OF_SIGHT =
  /\b(?:INDIRECT|OFFSET|CELL|INFO|FORMULATEXT|NOW|TODAY|RAND|RANDBETWEEN|RANDARRAY)\(|\[|\b[A-Z]{1,3}\$?\d+#/i;

function compiledAt({ getters }: Model, place: Place): Formula | undefined {
  const cell = getters.getCell(place) as FormulaCell | undefined;
  return cell?.isFormula ? cell.compiledFormula : undefined;
}

/** Looks into the cells that formulas read, each range once. */
class Reading {
  readonly #texts = new Map<string, string>();
  readonly #isChanged = new Map<string, boolean>();

  constructor(
    readonly model: Model,
    readonly kept: ReadonlyMap<string, Kept>,
  ) {}

  /** The ranges that a formula reads, by a text for each. */
  rangesOf(place: Place): Map<string, SheetRange> {
    const { getters } = this.model;
    const formula = compiledAt(this.model, place);
    if (!formula) return new Map();
    const named = formula.getNamedRangesInFormula(getters).map(({ range }) => range);
    return new Map(
      [...formula.rangeDependencies, ...named].map((range) => {
        const { left, right, top, bottom } = range.zone;
        return [`${range.sheetId} ${left} ${right} ${top} ${bottom}`, range];
      }),
    );
  }

  /** The places with a value in a range, each with its value. */
  *cellsIn({ sheetId, zone }: SheetRange): Generator<[Place, unknown]> {
    const columns = evaluationOf(this.model).evaluator.evaluatedCells.getSheet(sheetId) ?? {};
    for (const [column, cells = {}] of Object.entries(columns)) {
      const col = Number(column);
      if (col < zone.left || col > zone.right) continue;
      for (const [line, cell] of Object.entries(cells)) {
        const row = Number(line);
        if (row >= zone.top && row <= zone.bottom && cell && cell.value !== null)
          yield [{ sheetId, row, col }, cell.value];
      }
    }
  }

  /** What the cells of a range hold. */
  textOf(key: string, range: SheetRange): string {
    const known = this.#texts.get(key);
    if (known !== undefined) return known;
    const text = JSON.stringify([...this.cellsIn(range)].map(([{ row, col }, value]) => [row, col, value]));
    this.#texts.set(key, text);
    return text;
  }

  /** Whether a cell that the formula of a place reads holds something else than when the file was opened. */
  isChanged(place: Place): boolean {
    const key = keyOf(place);
    const known = this.#isChanged.get(key);
    if (known !== undefined) return known;
    // A formula in a circle with itself.
    this.#isChanged.set(key, false);
    const kept = this.kept.get(key);
    const isChanged =
      kept === undefined ||
      kept.formula !== formulaAt(this.model.getters, place) ||
      [...this.rangesOf(place)].some(
        ([text, range]) =>
          this.textOf(text, range) !== kept.read.get(text) ||
          [...this.cellsIn(range)].some(([one, value]) => isUnknown(value) && this.#isAnswerChanged(one)),
      );
    this.#isChanged.set(key, isChanged);
    return isChanged;
  }

  /** Whether the formula is changed that gives a cell its error; a typed error has none. */
  #isAnswerChanged(place: Place): boolean {
    const formula = this.model.getters.getArrayFormulaSpreadingOn(place) ?? place;
    return compiledAt(this.model, formula) !== undefined && this.isChanged(formula);
  }
}

/** Whether a value of the page is that of the file, as far as programs calculate alike. */
function isSame(shown: unknown, { kind = "n", text = "" }: FileFormula): boolean {
  if (typeof shown === "number")
    return kind === "n" && text !== "" && Math.abs(shown - Number(text)) <= 1e-9 * Math.abs(shown);
  if (typeof shown === "boolean") return kind === "b" && text === String(Number(shown));
  if (helpers.isEvaluationError(String(shown))) return kind === "e";
  return (kind === "str" || text === "") && String(shown ?? "") === text;
}

/** The formulas of a workbook, in the cells that the file says have some. */
function* formulasIn(
  { getters }: Model,
  bySheet: Iterable<readonly [sheet: string, values: FileValues]>,
): Generator<{ place: Place; of: FileFormula; filled: FileValues["filled"] }> {
  for (const [sheet, { formulas, filled }] of bySheet) {
    const sheetId = getters.getSheetIdByName(sheet);
    for (const [at, of] of sheetId === undefined ? [] : formulas) {
      const box = boxOf(at);
      if (sheetId !== undefined && box) yield { place: { sheetId, row: box.row, col: box.col }, of, filled };
    }
  }
}

const isPlural = ({ left, right, top, bottom }: Zone): boolean => right > left || bottom > top;

/** The cells of a file with formulas. */
type Formulas = readonly { readonly place: Place; readonly of: FileFormula; readonly filled: FileValues["filled"] }[];

/** Of the cells that a formula fills in the file, the values by place. */
function valuesFilled({ place, of: { fills }, filled }: Formulas[number]): Map<string, FileValue> {
  const cells = new Map<string, FileValue>();
  for (let row = fills?.top ?? 0; fills && row <= fills.bottom; row++)
    for (let col = fills.left; col <= fills.right; col++) {
      const value = filled.get(cellAddress(row, col));
      if (value) cells.set(keyOf({ ...place, row, col }), value);
    }
  return cells;
}

/** The values of the formulas that this page cannot calculate, as long as these read no cell whose value is another than in the file. */
function heldValues(model: Model, formulas: Formulas): Map<string, Kept> {
  const { getters } = model;
  const held = new Map<string, Kept>();
  const reading = new Reading(model, held);
  const valueAt = (place: Place): unknown => getters.getEvaluatedCell(place).value;
  const others = new Set(
    formulas.flatMap(({ place, of }) => {
      const value = valueAt(place);
      return isUnknown(value) || isSame(value, of) ? [] : [keyOf(place)];
    }),
  );
  for (const one of formulas) {
    const { place, of } = one;
    const { kind, text } = of;
    const formula = formulaAt(getters, place);
    if (kind === undefined || text === undefined || !isUnknown(valueAt(place)) || OUT_OF_SIGHT.test(formula)) continue;
    const ranges = [...reading.rangesOf(place)];
    if (ranges.some(([, range]) => [...reading.cellsIn(range)].some(([cell]) => others.has(keyOf(cell))))) continue;
    const read = new Map(ranges.map(([key, range]) => [key, reading.textOf(key, range)]));
    held.set(keyOf(place), { value: { kind, text }, formula, filled: valuesFilled(one), read });
  }
  return held;
}

/**
 * Keeps the values of an opened file. A formula that cannot be read shows its error in all the cells that it fills in the file: what reads
 * them would otherwise find them blank. Returns what is to be said of such formulas.
 */
export function keepFileValues(
  model: Model,
  bySheet: readonly (readonly [sheet: string, values: FileValues])[],
): Message[] {
  const { getters } = model;
  const all = [...formulasIn(model, bySheet)];
  const unread = all.filter(({ place }) => {
    const formula = compiledAt(model, place);
    return formula !== undefined && isUnread(formula);
  });
  if (unread.length === 0) return [];
  evaluationOf(model).fillWithErrors(
    unread.map(({ place, of: { fills } }) => [
      place,
      { isArray: fills !== undefined, ...(fills && isPlural(fills) && { fills }) },
    ]),
  );
  const held = heldValues(model, all);
  if (held.size === 0) return told(model, unread);
  values.set(getters, held);
  return [
    ...told(model, unread),
    say`The value of the file is saved with a formula that cannot be calculated here until a cell that it reads changes; then an error is saved.`,
  ];
}

/** What is said of the formulas that cannot be read: of those whose function this page lacks, and of others. */
function told({ getters }: Model, unread: readonly { readonly place: Place }[]): Message[] {
  return [...new Set(unread.map(({ place }) => place.sheetId))].flatMap((sheetId) => {
    const sheet = verbatim(getters.getSheetName(sheetId));
    const lacking = unread
      .filter(({ place }) => place.sheetId === sheetId)
      .map(({ place }) => unknownIn(formulaAt(getters, place).slice(1)));
    const known = lacking.filter((names) => names.length === 0).length;
    const names = [...new Set(lacking.flat())].sort().join(", ");
    return [
      ...(names === ""
        ? []
        : [
            say`The sheet on this page does not have ${verbatim(names)}: formulas of "${sheet}" with it show an error here (${lacking.length - known}), and so do the cells that read them. They are saved as they stand, and Excel calculates them.`,
          ]),
      ...(known === 0
        ? []
        : [
            say`The sheet on this page cannot read formulas of "${sheet}": they show an error here (${known}), and so do the cells that read them. They are saved as they stand, and Excel calculates them.`,
          ]),
    ];
  });
}

/** A function that gives the value of the file for a cell, as long as it holds; the workbook may not change while it is used. */
export function fileValuesOf(model: Model): (place: Place) => FileValue | undefined {
  const kept = values.get(model.getters);
  if (!kept) return () => undefined;
  const reading = new Reading(model, kept);
  return (place) => {
    const formula = model.getters.getArrayFormulaSpreadingOn(place) ?? place;
    const found = kept.get(keyOf(formula));
    if (!found || reading.isChanged(formula)) return undefined;
    return keyOf(formula) === keyOf(place) ? found.value : found.filled.get(keyOf(place));
  };
}
