/**
 * The parts of an .xlsx file that the engine writes, without work that the add-in does not need.
 * Casts: the engine's types do not include the inner parts of its plugins.
 */
import { CompiledFormula, helpers, Model, registries, UIPlugin } from "@odoo/o-spreadsheet";
import { asShares, type Run } from "../../in-slices";
import type { HeldCell, Place } from "./engine-parts";

/** What the engine numbers in the data of a file: a cell names its style, its format and its borders by numbers. */
const NUMBERED = ["styles", "formats", "borders"] as const;

/** By zone, the number of a look. */
type Places = Record<string, number>;
/** The looks by their numbers. */
type Numbered = Record<number, unknown>;

/** The data of a file, as the plugins of the engine complete them. */
interface FileData<S> extends Record<(typeof NUMBERED)[number], Numbered> {
  sheets: S[];
}

/** A plugin of the engine, which adds to the data of a file. */
interface Exporting {
  exportForExcel(data: unknown): unknown;
}

/**
 * The first number of a style and of a format of the file: the engine numbers from 1 what it adds later, such as the colour of links. The
 * number of borders is their place in the list of the file.
 */
const FIRST = { styles: 1_000_000, formats: 1_000_000, borders: 1 };

/** A look as text, equal for equal looks. */
const textOf = (look: unknown): string =>
  JSON.stringify(look, (_, value: unknown) =>
    value !== null && typeof value === "object"
      ? Object.fromEntries(Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1)))
      : value,
  );

/** The looks of one kind that the sheets of a file have in common. */
class Looks {
  readonly items: Numbered = {};
  readonly #numbers = new Map<string, number>();

  constructor(readonly first: number) {}

  /** Gives the looks of a sheet, which the engine has numbered for it alone, the numbers of the file. */
  renumber(places: Places, own: Numbered): void {
    for (const [place, number] of Object.entries(places)) places[place] = this.#numberOf(own[number]);
  }

  #numberOf(look: unknown): number {
    const key = textOf(look);
    let number = this.#numbers.get(key);
    if (number === undefined) {
      number = this.first + this.#numbers.size;
      this.#numbers.set(key, number);
      this.items[number] = look;
    }
    return number;
  }
}

/** A plugin of the engine that numbers the borders. */
interface Bordering extends Exporting {
  export(data: object): void;
}

/** The same borders by the same numbers, told to the engine, so that it numbers from there what it adds later. */
function toldBorders(plugin: Exporting, borders: Numbered): Numbered {
  const list = Object.values(borders);
  const stand = Object.create(plugin, { getCellBorder: { value: ({ col }: { readonly col: number }) => list[col] } });
  const data: { sheets: object[]; borders?: Numbered } = { sheets: [{ id: "", colNumber: list.length, rowNumber: 1 }] };
  (stand as Bordering).export(data);
  return data.borders ?? {};
}

/** Tells whether a plugin is that of the engine with this key. */
const isPlugin =
  (registry: { get(key: string): unknown }, key: string) =>
  (plugin: object): boolean =>
    plugin instanceof (registry.get(key) as new () => object);

/**
 * Lets plugins of the engine complete the data of a file sheet by sheet, in steps that give the share that is done. The engine would give
 * each plugin all sheets at once: with 40 data sheets the page did not react for a second. A plugin that makes pictures of charts goes on
 * later: `waiting` gets what it promises.
 */
function* completing<S extends Record<(typeof NUMBERED)[number], Places>>(
  plugins: readonly Exporting[],
  data: FileData<S>,
  waiting: unknown[],
): Generator<number> {
  const makesSheets = isPlugin(registries.corePluginRegistry, "sheet");
  for (const [at, plugin] of plugins.entries()) {
    if (makesSheets(plugin)) {
      plugin.exportForExcel(data);
      continue;
    }
    const looks = NUMBERED.map((kind) => ({ kind, of: new Looks(FIRST[kind]) }));
    for (const [index, sheet] of data.sheets.entries()) {
      const part = { ...data, sheets: [sheet] };
      waiting.push(plugin.exportForExcel(part));
      for (const { kind, of } of looks) if (part[kind] !== data[kind]) of.renumber(sheet[kind], part[kind]);
      yield (at + (index + 1) / data.sheets.length) / plugins.length;
    }
    for (const {
      kind,
      of: { items },
    } of looks)
      if (Object.keys(items).length > 0) data[kind] = kind === "borders" ? toldBorders(plugin, items) : items;
  }
}

/** What is taken out of the data of a file before the engine writes them. */
interface Taking<T> {
  /** Takes from the data of a sheet. */
  readonly sheet: (sheet: never) => T;
  /** Is given the data without the sheets, once. */
  readonly beside: (data: object) => void;
}

/** The share of the work that is done when the engine has made its charts, and when all data are complete. */
const CHARTS_SHARE = 0.6;
const DATA_SHARE = 0.9;

/**
 * The parts of an .xlsx file as the engine writes them, with the present values, and what was taken of each sheet. `run` carries out the
 * steps of the work; in its pauses the workbook may change: then the parts are of no use.
 */
export async function exportFiles<T>(model: Model, run: Run, { sheet, beside }: Taking<T>) {
  const { handlers } = model as unknown as { readonly handlers: readonly Partial<Exporting>[] };
  const plugins = handlers.filter((one): one is Exporting => typeof one.exportForExcel === "function");
  const after = plugins.findIndex(isPlugin(registries.coreViewsPluginRegistry, "evaluation_chart")) + 1;
  const taken: T[] = [];
  function* takingAll(data: FileData<never>): Generator<number> {
    for (const [at, one] of data.sheets.entries()) {
      taken.push(sheet(one));
      yield (at + 1) / data.sheets.length;
    }
    beside({ ...data, sheets: [] });
  }
  const whole: Exporting = Object.assign(Object.create(UIPlugin.prototype), {
    async exportForExcel(data: FileData<never>): Promise<void> {
      const complete = async (some: readonly Exporting[], from: number, to: number): Promise<void> => {
        const waiting: unknown[] = [];
        await run(asShares(completing(some, data, waiting), (share) => from + (to - from) * share));
        await Promise.all(waiting);
      };
      await complete(plugins.slice(0, after), 0, CHARTS_SHARE);
      await complete(plugins.slice(after), CHARTS_SHARE, DATA_SHARE);
      await run(asShares(takingAll(data), (share) => DATA_SHARE + (1 - DATA_SHARE) * share));
    },
  });
  // The engine would evaluate all cells first, although nothing has changed.
  const asked = { dispatch: () => undefined, handlers: [whole] } as unknown as Model;
  const { files } = await Model.prototype.exportXLSX.call(asked);
  return { files, taken };
}

/** The part of a sheet with these data as the engine writes it, apart from any workbook. */
export async function writtenSheet(data: object): Promise<string> {
  const plugin = Object.assign(Object.create(UIPlugin.prototype), {
    exportForExcel: (file: { readonly sheets: readonly object[] }) => void Object.assign(file.sheets[0]!, data),
  });
  const asked = { dispatch: () => undefined, handlers: [plugin] } as unknown as Model;
  const { files } = await Model.prototype.exportXLSX.call(asked);
  const sheet = files.find(({ path }) => path === "xl/worksheets/sheet0.xml");
  return sheet && "content" in sheet ? sheet.content : "";
}

/** The positions of all formulas of a sheet. */
export const formulaPlaces = (getters: any, sheetId: string): Place[] =>
  getters
    .getCells(sheetId)
    .filter(({ isFormula }: HeldCell) => isFormula)
    .map(({ id }: { id: string }) => getters.getCellPosition(id));

interface Formula {
  readonly isBadExpression: boolean;
  readonly tokens: readonly { readonly type: string; readonly value: string }[];
  areAllFunctionsExportableToExcel(): boolean;
}

const functions = registries.functionRegistry as unknown as {
  readonly content: Readonly<Record<string, { readonly isExported?: boolean } | undefined>>;
};

/**
 * Tells whether Excel knows every function of a formula. The engine would parse each formula again for this answer, which took a fifth of the
 * export's time; a function is a word before a parenthesis.
 */
(CompiledFormula.prototype as unknown as Formula).areAllFunctionsExportableToExcel = function (this: Formula) {
  if (this.isBadExpression) return false;
  const tokens = this.tokens.filter(({ type }) => type !== "SPACE");
  return tokens.every(
    ({ type, value }, index) =>
      type !== "SYMBOL" || tokens[index + 1]?.type !== "LEFT_PAREN" || isKnownToExcel(value.toUpperCase()),
  );
};

const isKnownToExcel = (name: string): boolean => functions.content[name]?.isExported === true;

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

registries.statefulUIPluginRegistry.replace("cell_computed_style", LinksStyle as never);
