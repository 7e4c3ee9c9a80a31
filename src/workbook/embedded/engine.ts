/**
 * Additions to the engine, made before the first workbook: error codes, and many commands as one step.
 * Casts: the engine's types do not include the inner parts of its plugins, nor the plugins and commands that are added here.
 */
import { EvaluationError, helpers, Model, registries, UIPlugin } from "@odoo/o-spreadsheet";

import "./chart";
import "./engine-words";
import "./notes";
import "./print";
import "./rules";
import { shownBySize } from "./formats";
import { whileLifted } from "./protection";
import { bareValue, TEXT_FORMAT } from "./text";
import type { Zone } from "./zones";

export { EvaluationError, Model };

/** A command of the engine: its type and the fields that the type needs. */
export interface Command {
  readonly type: string;
  readonly [key: string]: unknown;
}

/**
 * The types of the engine list every command in one union, which plain data cannot satisfy: they are loosened once,
 * here.
 */
export interface Dispatching {
  dispatch(type: string, payload?: object): { readonly isSuccessful: boolean; readonly reasons: readonly string[] };
}

const BATCH = "CLAYLEDGER_BATCH";

/**
 * The refusals of the batch being carried out. The engine copies the payload of a command, so the payload cannot return
 * them.
 */
let refusals: string[] = [];

/** Carries out a list of commands as one step of undo and one recalculation. */
class BatchPlugin extends UIPlugin {
  override handle(command: any): void {
    if (command.type !== BATCH) return;
    for (const { type, ...payload } of command.commands as Command[]) {
      // An exception that is not caught would leave the engine in the middle of a command for ever.
      try {
        const { isSuccessful, reasons } = (this as unknown as Dispatching).dispatch(type, payload);
        if (!isSuccessful) refusals.push(`${type} (${reasons.join(", ")})`);
      } catch (error) {
        refusals.push(`${type} (${String(error)})`);
      }
    }
  }
}

interface Evaluated {
  readonly value: unknown;
  readonly formattedValue?: string;
  readonly type?: string;
  readonly format?: string;
}

interface Place {
  readonly sheetId: string;
  readonly col: number;
  readonly row: number;
}

interface HeldCell {
  readonly isFormula: boolean;
  readonly content: string;
  readonly format?: string;
}

/** The part of the engine's evaluator that is corrected; it is not part of the public interface of the engine. */
interface Evaluator {
  getters: any;
  evaluatedCells: object;
  getEvaluatedPositions(): Iterable<Place>;
  evaluate(ranges: readonly { readonly sheetId: string; readonly zone: Zone }[]): void;
  evaluateAllCells(): void;
  computeCell(place: Place): Evaluated & { readonly link?: unknown };
}

const Evaluation = registries.coreViewsPluginRegistry.get("evaluation") as unknown as {
  new (...config: never[]): {
    readonly evaluator: Evaluator;
    getEvaluatedCell(position: unknown): Evaluated;
    handle(command: { readonly type: string }): void;
    exportForExcel(data: unknown): void;
  };
  readonly getters: readonly string[];
};

/** Runs of at most this many blank rows are evaluated with the cells around them. */
const GAP = 100;
/** With more bands of rows than this, the whole sheet is evaluated. */
const MOST_BANDS = 1000;

/**
 * The rows of a sheet that hold cells, as bands. The engine itself would evaluate every position, a million rows for
 * one cell at their end.
 */
function filledBands(getters: any, sheetId: string): Zone[] {
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

/** A name of the workbook as the engine keeps it. */
interface NamedRange {
  readonly name: string;
}

/**
 * Finds a name of the workbook. The engine compares it with every name, for every name in every formula: with 40 data sheets
 * these are 10,000 names, and a changed reading took longer with each sheet. The place of each name is kept here, and
 * checked when it is used.
 */
export function nameFinder(all: () => readonly NamedRange[]): (name: string) => NamedRange | undefined {
  let places = new Map<string, number>();
  return (name) => {
    const [names, wanted] = [all(), name.toLowerCase()];
    const at = (): NamedRange | undefined => names[places.get(wanted) ?? -1];
    if (at()?.name.toLowerCase() === wanted) return at();
    places = new Map(names.map((one, index) => [one.name.toLowerCase(), index]));
    return at();
  };
}

/**
 * Corrects four things in the evaluator: how fast it finds a name, which rows it evaluates, texts in cells of text format, and texts that look
 * like links.
 */
function correct(evaluator: Evaluator): void {
  const { getters } = evaluator;
  // The engine would show the apostrophe that keeps a text in a cell of text format from being a formula: take it off.
  const getCell = (place: Place): HeldCell | undefined => {
    const cell: HeldCell | undefined = getters.getCell(place);
    return cell && !cell.isFormula && cell.format === TEXT_FORMAT && cell.content !== bareValue(cell.content)
      ? { ...cell, content: bareValue(cell.content) }
      : cell;
  };
  evaluator.getters = Object.create(getters, {
    getCell: { value: getCell },
    getNamedRange: { value: nameFinder(() => getters.getNamedRanges()) },
  });

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

  evaluator.evaluateAllCells = () => {
    const Cells = evaluator.evaluatedCells.constructor as new () => object;
    evaluator.evaluatedCells = new Cells();
    const sheetIds: string[] = getters.getSheetIds();
    evaluator.evaluate(sheetIds.flatMap((sheetId) => filledBands(getters, sheetId).map((zone) => ({ sheetId, zone }))));
  };
}

/** True while a file is made; otherwise the engine would evaluate all cells again, although nothing has changed. */
let isExporting = false;

/** The parts of an .xlsx file as the engine writes them, with the present values. */
export async function exportFiles(model: Model) {
  isExporting = true;
  try {
    return (await model.exportXLSX()).files;
  } finally {
    isExporting = false;
  }
}

/** The positions of all formulas. */
function formulaPlaces(getters: any): Place[] {
  return getters.getSheetIds().flatMap((sheetId: string) =>
    getters
      .getCells(sheetId)
      .filter(({ isFormula }: HeldCell) => isFormula)
      .map(({ id }: { id: string }) => getters.getCellPosition(id)),
  );
}

/** Shows numbers with a format that follows their size; calculated and stored values do not change. */
class BySizeEvaluation extends Evaluation {
  static override getters = Evaluation.getters;

  constructor(...config: never[]) {
    super(...config);
    correct(this.evaluator);
  }

  override handle(command: { readonly type: string }): void {
    if (!(isExporting && command.type === "EVALUATE_CELLS")) super.handle(command);
  }

  /** The engine exports the formulas only; the add-in writes all other cells of a file itself. */
  override exportForExcel(data: unknown): void {
    const places = formulaPlaces(this.evaluator.getters);
    this.evaluator.getEvaluatedPositions = () => places;
    super.exportForExcel(data);
    Reflect.deleteProperty(this.evaluator, "getEvaluatedPositions");
  }

  override getEvaluatedCell(position: unknown): Evaluated {
    const cell = super.getEvaluatedCell(position);
    const format = shownBySize(cell.format, cell.value);
    return format === undefined
      ? cell
      : ({
          ...cell,
          formattedValue: helpers.formatValue(cell.value as number, {
            format,
            locale: this.evaluator.getters.getLocale(),
          }),
        } as Evaluated);
  }
}

interface LinkedSheet {
  readonly id: string;
  cells: Record<string, unknown>;
}

const ComputedStyle = registries.statefulUIPluginRegistry.get("cell_computed_style") as unknown as {
  new (...config: never[]): { readonly getters: any; exportForExcel(data: unknown): void };
  readonly getters: readonly string[];
};

/** The engine gives links a colour in a file. It would compute the style of every cell to find them; here it sees the links only. */
class LinksStyle extends ComputedStyle {
  static override getters = ComputedStyle.getters;

  override exportForExcel(data: { readonly sheets: readonly LinkedSheet[] }): void {
    const all = data.sheets.map(({ cells }) => cells);
    for (const sheet of data.sheets) {
      const isLink = (xc: string): boolean =>
        this.getters.getEvaluatedCell({ sheetId: sheet.id, ...helpers.toCartesian(xc) }).link !== undefined;
      sheet.cells = Object.fromEntries(Object.entries(sheet.cells).filter(([xc]) => isLink(xc)));
    }
    super.exportForExcel(data);
    data.sheets.forEach((sheet, index) => (sheet.cells = all[index]!));
  }
}

/** Error codes of Excel; the engine would take them for plain text. */
const EXCEL_ERRORS = ["#VALUE!", "#REF!", "#NUM!", "#NULL!", "#BUSY!"];

for (const code of EXCEL_ERRORS) registries.errorTypes.add(code);
registries.coreViewsPluginRegistry.replace("evaluation", BySizeEvaluation as never);
registries.statefulUIPluginRegistry.replace("cell_computed_style", LinksStyle as never);
registries.featurePluginRegistry.add("clayledger_batch", BatchPlugin as never);

/**
 * The data of a workbook as plain objects. The engine's own `exportData` packs similar cells together, and makes the
 * whole workbook a second time to check that: for a data sheet 0.17 s and not 0.03 s.
 */
export const plainData = (model: Model): object => ({
  ...(model as unknown as { _exportData(packed: boolean): object })._exportData(false),
  isNotSquishable: true,
});

/** Carries out the commands as one step, in protected cells too. Returns the refusals; empty if there were none. */
export function runBatch(model: Model, commands: readonly Command[]): string[] {
  refusals = [];
  whileLifted(() => (model as unknown as Dispatching).dispatch(BATCH, { commands }));
  return refusals;
}
