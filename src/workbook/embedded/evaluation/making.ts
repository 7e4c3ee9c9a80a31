/**
 * Makes the model of a workbook in steps. The constructor of the engine reads every cell and evaluates every formula at
 * once: with 13 data sheets the page did not react for 2 s. While a model is made here, the constructor leaves out the cells
 * and the borders, and its plugins are not started; then the cells and borders are read some columns at a time, the formulas are
 * evaluated column by column, the heights of rows, the colours in use and the formulas with some functions are found sheet by sheet, and
 * the plugins are started.
 * Casts: the engine's types do not include the inner parts of its plugins.
 */
import { registries, type Model } from "@odoo/o-spreadsheet";
import { columnBands, type CellData } from "./column-bands";

/** The data of a workbook, as the engine takes it. */
interface Data {
  readonly sheets: readonly (Record<string, unknown> & CellData)[];
}

/** What the plugins of the model that is being made leave for later. */
export interface Later {
  data?: Data;
  readonly readers: ((data: Data) => void)[];
  /** Evaluates every cell in steps that give the share that is done. */
  evaluation?: () => Generator<number>;
  /** What plugins look for in each sheet when the model starts. */
  readonly starters: ((sheetId: string) => void)[];
  isStarted: boolean;
}

let later: Later | undefined;

/** What is left for later by the model that is being made now; undefined if none is. */
export const leftForLater = (): Later | undefined => later;

/**
 * Lets a plugin, given by its configuration, look at each sheet by `look` when its model starts; `isSeen` is false in a model that is only
 * copied, which nobody sees. Returns false for a model that is made at once.
 */
export function atStart(config: readonly unknown[], look: (sheetId: string, isSeen: boolean) => void): boolean {
  if (!later) return false;
  const [{ custom }] = config as readonly [{ readonly custom: { readonly isOnlyCopied?: boolean } }];
  later.starters.push((sheetId) => look(sheetId, custom.isOnlyCopied !== true));
  return true;
}

/** What the plugins leave out of the data of a workbook that is taken sheet by sheet; undefined if it is taken whole. */
let leftOut: ((data: Data) => void)[] | undefined;

type Reading = new (...config: never[]) => { import(data: Data): void; export(data: Data, isPacked?: boolean): void };

/** The plugin, with its reading of the sheets left for later, and their data given sheet by sheet. */
function readingLater(key: string): void {
  const Plugin = registries.corePluginRegistry.get(key) as unknown as Reading;
  class ReadingLater extends Plugin {
    override export(data: Data, isPacked?: boolean): void {
      if (leftOut) leftOut.push((part) => super.export(part, isPacked));
      else super.export(data, isPacked);
    }

    override import(data: Data): void {
      if (!later) return super.import(data);
      later.data = data;
      later.readers.push((part) => super.import(part));
    }
  }
  registries.corePluginRegistry.replace(key, ReadingLater as never);
}

readingLater("cell");
readingLater("borders");

/** Makes a model by `make`, which calls the constructor of the engine, in steps that give the share that is done. */
export function* making(make: () => Model): Generator<number, Model> {
  const left: Later = { readers: [], starters: [], isStarted: false };
  later = left;
  let model: Model;
  try {
    model = make();
  } finally {
    later = undefined;
  }
  const { data, readers, evaluation } = left;
  if (!data || !evaluation) throw new Error("the engine has made a workbook without its cells");
  for (const [at, sheet] of data.sheets.entries()) {
    const bands = columnBands(sheet);
    for (const [index, band] of bands.entries()) {
      // The borders of the whole sheet, and those of its merges, are read with its first band.
      const part = index === 0 ? band : { ...band, borders: {}, merges: [] };
      for (const read of readers) read({ ...data, sheets: [part] });
      yield (at + (index + 1) / bands.length) / data.sheets.length / 2;
    }
    // The model has them now: with 40 data sheets the page has no room for both.
    Object.assign(sheet, { cells: {}, styles: {}, formats: {}, borders: {} });
  }
  for (const share of evaluation()) yield (1 + share) / 2;
  for (const sheetId of model.getters.getSheetIds()) {
    for (const start of left.starters) start(sheetId);
    yield 1;
  }
  left.isStarted = true;
  model.dispatch("START" as never);
  return model;
}

/** The data of a workbook without the cells and borders of its sheets, and a function that gives the data of one sheet with them. */
interface BySheet<T extends Data> {
  readonly data: T;
  /** The styles, formats and borders of the sheet are numbered for it alone. */
  withCells(sheet: T["sheets"][number]): T;
}

/**
 * The data of a workbook sheet by sheet; `whole` asks the engine for all of it. The engine would go through every cell at once: with 40 data
 * sheets the page did not react for a second.
 */
export function dataBySheet<T extends Data>(whole: () => T): BySheet<T> {
  const writers: typeof leftOut = [];
  leftOut = writers;
  let data: T;
  try {
    data = whole();
  } finally {
    leftOut = undefined;
  }
  return {
    data,
    withCells(sheet) {
      const part = { ...data, sheets: [sheet] };
      for (const write of writers) write(part);
      return part;
    },
  };
}
