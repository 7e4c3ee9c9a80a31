/**
 * The heights of rows that follow from their cells. When a workbook starts, the engine finds them for every row of every sheet: with 40
 * data sheets the page did not react for half a second. Here they are found sheet by sheet while the workbook is made in steps. The engine
 * measures the text of every number, a fifth of the time in which readings are written: here a number on one line is as high as its font.
 * Casts: the engine's types do not include the inner parts of its plugins.
 */
import { registries } from "@odoo/o-spreadsheet";
import type { HeldCell, Place } from "../evaluation/engine-parts";
import { atStart } from "../evaluation/making";

interface Cell extends HeldCell {
  readonly style?: {
    readonly fontSize?: number;
    readonly bold?: boolean;
    readonly italic?: boolean;
    readonly wrapping?: string;
    readonly rotation?: number;
  };
}

const Heights = registries.coreViewsPluginRegistry.get("row_size") as unknown as {
  new (...config: never[]): {
    handle(command: { readonly type: string }): void;
    initializeSheet(sheetId: string): void;
    getCellHeight(place: Place): number;
    isInMultiRowMerge(place: Place): boolean;
    readonly getters: { getCell(place: Place): Cell | undefined };
    readonly tallestCellInRow: Record<string, unknown[]>;
  };
  readonly getters: readonly string[];
};

const NUMBER = /^-?\d+(?:\.\d+)?(?:E[+-]?\d+)?$/i;

/** The font of a cell with a number that stands on one line, and is not turned; undefined for any other cell. */
function fontOfNumber({ isFormula, content, format, style = {} }: Cell): string | undefined {
  const { fontSize, bold, italic, wrapping, rotation } = style;
  const isOnOneLine = wrapping !== "wrap" && !rotation && !format?.includes("\n");
  return !isFormula && isOnOneLine && NUMBER.test(content) ? `${fontSize} ${bold} ${italic}` : undefined;
}

class HeightsBySheet extends Heights {
  static override getters = Heights.getters;
  readonly #isInSteps: boolean;
  /** The heights of cells with a number on one line, by their font. */
  readonly #ofNumbers = new Map<string, number>();

  constructor(...config: never[]) {
    super(...config);
    this.#isInSteps = atStart(config, (sheetId, isSeen) => {
      if (isSeen) this.initializeSheet(sheetId);
      else this.tallestCellInRow[sheetId] = [];
    });
  }

  override handle(command: { readonly type: string }): void {
    if (command.type !== "START" || !this.#isInSteps) super.handle(command);
  }

  override getCellHeight(place: Place): number {
    const cell = this.getters.getCell(place);
    const font = cell && fontOfNumber(cell);
    if (font === undefined || this.isInMultiRowMerge(place)) return super.getCellHeight(place);
    const height = this.#ofNumbers.get(font) ?? super.getCellHeight(place);
    this.#ofNumbers.set(font, height);
    return height;
  }
}

registries.coreViewsPluginRegistry.replace("row_size", HeightsBySheet as never);
