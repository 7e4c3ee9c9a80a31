/**
 * The engine's evaluation with the corrections that the add-in needs.
 * Casts: the engine's types do not include the inner parts of its plugins.
 */
import { helpers, registries } from "@odoo/o-spreadsheet";
import { shownBySize } from "../look/formats";
import type { Zone } from "../zones";
import { correct } from "./corrected";
import {
  Evaluation,
  rangeOf,
  type EngineCommand,
  type Evaluated,
  type Evaluator,
  type HeldCell,
  type Place,
  type SheetRange,
} from "./engine-parts";
import { rangesOfEntries } from "./entry-ranges";
import { formulaPlaces } from "./export";
import { evaluateStep, Missed } from "./evaluate-step";
import { evaluatingSheets } from "./fresh";
import { leftForLater, type Later } from "./making";
import { Step } from "./step";
import { formOf, formsOf, noteForm, type Form, type UnreadCell } from "./unread";

/** Settings of a workbook whose cells are copied and never shown: no formula of it is calculated. */
export const ONLY_COPIED = { custom: { isOnlyCopied: true } };

/** Blank rows of values by their length: equal ones are one list, so that a reading is quickly compared with the one before. */
const blankRows = new Map<number, readonly unknown[]>();
/** A row of a whole sheet is not kept. */
const LONGEST = 100;

function blankRow(length: number): readonly unknown[] {
  const known = blankRows.get(length);
  if (known) return known;
  const made: readonly unknown[] = Object.freeze(new Array<unknown>(length).fill(""));
  if (length <= LONGEST) blankRows.set(length, made);
  return made;
}

/** By the getters of a model: its evaluation. */
const evaluations = new WeakMap<object, BySizeEvaluation>();

/** The evaluation of a workbook. */
export function evaluationOf({ getters }: { readonly getters: object }): BySizeEvaluation {
  const found = evaluations.get(getters);
  if (!found) throw new Error("the workbook has no evaluation");
  return found;
}

/** The formulas of a sheet that give an error, to their own cell or to one that they spill into. */
function errorsOn({ getters, evaluatedCells }: Evaluator, sheetId: string): Place[] {
  return Object.entries(evaluatedCells.getSheet(sheetId) ?? {}).flatMap(([col, cells = {}]) =>
    Object.entries(cells).flatMap(([row, cell]) => {
      if (cell?.type !== "error") return [];
      const place: Place = { sheetId, col: Number(col), row: Number(row) };
      const spilling: Place | undefined = getters.getArrayFormulaSpreadingOn(place);
      return [spilling ?? place];
    }),
  );
}

/** Shows numbers with a format that follows their size; calculated and stored values do not change. */
class BySizeEvaluation extends Evaluation {
  static override getters = [...Evaluation.getters, "getValuesIn"];
  readonly #missed: Missed;
  readonly #step = new Step();
  readonly #isOnlyCopied: boolean;
  readonly #later: Later | undefined = leftForLater();
  #isHeld = false;
  /** The sheets that were copied in the step, each with its copy. */
  #copied: { readonly from: string; readonly to: string }[] = [];
  /** The sheets of the step that are evaluated already. */
  #evaluated: ReadonlySet<string> = new Set();
  /** The ranges of entries of the step that are evaluated already; the formulas that read them are not. */
  #entries: readonly SheetRange[] = [];

  constructor(...config: never[]) {
    super(...config);
    const [{ custom, getters }] = config as unknown as [
      { readonly custom: { readonly isOnlyCopied?: boolean }; readonly getters: object },
    ];
    evaluations.set(getters, this);
    this.#isOnlyCopied = custom.isOnlyCopied === true;
    correct(this.evaluator);
    this.#missed = new Missed(this.evaluator);
    if (this.#later) this.#later.evaluation = () => this.#evaluatingAll();
  }

  override allowDispatch(command: EngineCommand): string | readonly string[] {
    // A model that is made in steps starts when its cells are read and evaluated.
    return command.type === "START" && this.#later?.isStarted === false
      ? "CancelledForUnknownReason"
      : super.allowDispatch(command);
  }

  /** Evaluates every cell for the first time, in steps that give the share that is done. */
  *#evaluatingAll(): Generator<number> {
    if (this.#isOnlyCopied) return;
    yield* evaluatingSheets(this.evaluator, this.evaluator.getters.getSheetIds());
    this.shouldRebuildDependenciesGraph = false;
    this.#step.keepNames(this.evaluator.getters.getNamedRanges());
  }

  /** From now on nothing is evaluated, until `release`: a step is made in slices. */
  hold(): void {
    this.#isHeld = true;
  }

  /**
   * Evaluates the sheets that were made since `hold`, or the entries that were written since then, in steps that give the share that is
   * done. A sheet whose rows or columns moved has values from before: `release` lets them be forgotten first.
   */
  *evaluatingHeld(): Generator<number> {
    const { evaluator, shouldRebuildDependenciesGraph: isWhole } = this;
    if (this.#isOnlyCopied || isWhole) return;
    const sheetIds = [...this.#step.sheets].filter(
      (id) =>
        evaluator.getters.tryGetSheet(id) !== undefined && evaluator.blockedArrayFormulas.sheets[id] === undefined,
    );
    yield* evaluatingSheets(evaluator, sheetIds);
    this.#evaluated = new Set(sheetIds);
    const entries = this.#step.isEmpty ? rangesOfEntries(evaluator, this.positionsToUpdate) : undefined;
    if (!entries) return;
    for (const [at, range] of entries.entries()) {
      evaluator.evaluate([range]);
      yield (at + 1) / entries.length;
    }
    this.positionsToUpdate = [];
    this.#entries = entries;
  }

  /** Lets the end of the step evaluate what it changed besides; all of it, if the step is taken back. */
  release(isTakenBack: boolean): void {
    this.#isHeld = false;
    if (!isTakenBack) return;
    this.#evaluated = new Set();
    this.#entries = [];
  }

  /**
   * Evaluates the errors again, and no other cell: what an error says is in the language that the page had when it was evaluated. A
   * formula that passes an error on shows it too, so it is among them.
   */
  evaluateErrors(): void {
    const { evaluator } = this;
    const places = evaluator.getters.getSheetIds().flatMap((sheetId: string) => errorsOn(evaluator, sheetId));
    evaluator.evaluate(places.map(rangeOf));
  }

  /** Notes how the file has formulas that cannot be read, and shows their errors in all the cells that they fill. */
  fillWithErrors(formulas: Iterable<readonly [Place, Form]>): void {
    const { evaluator } = this;
    const places: Place[] = [];
    for (const [place, form] of formulas) {
      const cell: UnreadCell | undefined = evaluator.getters.getCell(place);
      if (!cell) continue;
      noteForm(evaluator, cell, form);
      if (form.fills) places.push(place);
    }
    const ranges = places.map(rangeOf);
    if (ranges.length > 0 && !this.#isOnlyCopied)
      evaluator.evaluate([...ranges, ...evaluator.getCellsDependingOn(ranges)]);
  }

  /** Takes what `fillWithErrors` noted of the sheets of another workbook, which were copied; `sheetIds` gives their ids here. */
  takeForms(from: BySizeEvaluation, sheetIds: ReadonlyMap<string, string>): void {
    const { getters } = from.evaluator;
    this.fillWithErrors(
      [...formsOf(from.evaluator)].map(([id, form]): [Place, Form] => {
        const place: Place = getters.getCellPosition(id);
        return [{ ...place, sheetId: sheetIds.get(place.sheetId) ?? "" }, form];
      }),
    );
  }

  /** Whether the formula of a cell that cannot be read is one of arrays in its file; undefined if it is none of a file. */
  isArrayFormula(place: Place): boolean | undefined {
    const { evaluator } = this;
    const cell: UnreadCell | undefined = evaluator.getters.getCell(place);
    return cell && formOf(evaluator, cell)?.isArray;
  }

  /** Notes of the formulas of a copied sheet what the file says of those of the original. */
  #noteCopy(from: string, to: string): void {
    const { evaluator } = this;
    const { getters } = evaluator;
    if (formsOf(evaluator).size === 0 || !getters.tryGetSheet(from) || !getters.tryGetSheet(to)) return;
    for (const cell of getters.getCells(from) as UnreadCell[]) {
      const form = formOf(evaluator, cell);
      if (!form) continue;
      const copy: UnreadCell | undefined = getters.getCell({ ...getters.getCellPosition(cell.id), sheetId: to });
      if (copy) noteForm(evaluator, copy, form);
    }
  }

  override beforeHandle(command: EngineCommand): void {
    if (this.shouldRebuildDependenciesGraph || !this.#step.adds(command)) super.beforeHandle(command);
  }

  override handle(command: EngineCommand): void {
    if (command.type === "DUPLICATE_SHEET") this.#copied.push({ from: command.sheetId, to: command.sheetIdTo });
    if (this.#isHeld && command.type === "EVALUATE_CELLS") return;
    // The cells of a new sheet are evaluated together at the end.
    if (command.type === "UPDATE_CELL" && this.#step.sheets.has(command.sheetId)) return;
    super.handle(command);
  }

  override finalize(): void {
    // By now the formulas of a copy have the names of the copy.
    for (const { from, to } of this.#copied.splice(0)) this.#noteCopy(from, to);
    if (this.#isOnlyCopied || this.#isHeld) return;
    const isWhole = this.shouldRebuildDependenciesGraph;
    if (isWhole) this.#missed.clear();
    else if (!this.#step.isEmpty) {
      this.positionsToUpdate = this.positionsToUpdate.filter(({ sheetId }) => !this.#step.sheets.has(sheetId));
      evaluateStep(this.evaluator, this.#step, this.#missed, this.#evaluated);
    }
    if (!isWhole && this.#entries.length > 0)
      this.evaluator.evaluate([...this.evaluator.getCellsDependingOn(this.#entries)]);
    this.#entries = [];
    if (isWhole || this.#step.changesNames) this.#step.keepNames(this.evaluator.getters.getNamedRanges());
    this.#step.clear();
    this.#evaluated = new Set();
    super.finalize();
  }

  /** The engine exports the formulas only; the add-in writes all other cells of a file itself. */
  override exportForExcel(data: { readonly sheets: readonly { readonly id: string }[] }): void {
    const { evaluator } = this;
    const places = data.sheets.flatMap(({ id }) => formulaPlaces(evaluator.getters, id));
    evaluator.getEvaluatedPositions = () => places;
    try {
      super.exportForExcel(data);
    } finally {
      Reflect.deleteProperty(evaluator, "getEvaluatedPositions");
    }
  }

  /**
   * The values of a zone by rows; "" in blank cells. Cell by cell, reading a data sheet took ten times as long. A list that grows by
   * `push` has room for 17 values at once: the rows of one column took four times the memory. Blank rows are one frozen list: of the
   * 2,000 rows for the readings of a load a person fills a few dozen, and the pane keeps several readings of a data sheet.
   */
  getValuesIn(sheetId: string, { left, right, top, bottom }: Zone): readonly (readonly unknown[])[] {
    const columns = this.evaluator.evaluatedCells.getSheet(sheetId) ?? {};
    const blank = blankRow(right - left + 1);
    const rows = new Array<readonly unknown[]>(bottom - top + 1);
    for (let row = top; row <= bottom; row++) {
      let values: unknown[] | undefined;
      for (let col = left; col <= right; col++) {
        const value = columns[col]?.[row]?.value ?? "";
        if (value === "") continue;
        values ??= blank.slice();
        values[col - left] = value;
      }
      rows[row - top] = values ?? blank;
    }
    return rows;
  }

  override getEvaluatedCell(position: unknown): Evaluated {
    const found = super.getEvaluatedCell(position);
    // The engine forgets the format of a cell that a formula no longer fills: a 5 typed there into a percentage became 500 %.
    const held: HeldCell | undefined =
      found.type === "empty" && found.format === undefined ? this.evaluator.getters.getCell(position) : undefined;
    const cell = held?.format === undefined ? found : { ...found, format: held.format };
    const format = shownBySize(cell.format, cell.value);
    return format === undefined
      ? cell
      : ({
          ...cell,
          // The grid draws the value in this format, and not the text.
          format,
          formattedValue: helpers.formatValue(cell.value as number, {
            format,
            locale: this.evaluator.getters.getLocale(),
          }),
        } as Evaluated);
  }
}

registries.coreViewsPluginRegistry.replace("evaluation", BySizeEvaluation as never);
