/**
 * The colours of the workbook, which the engine offers in its list of colours. The engine looks for them in every cell of every sheet after
 * each change: with 40 data sheets in 200,000 cells after each slice of an insertion, and after each entry of a person. It only ever adds
 * to the list, so the sheets that a command has changed are enough.
 * Casts: the engine's types do not include the inner parts of its plugins.
 */
import { registries } from "@odoo/o-spreadsheet";
import { atStart } from "../evaluation/making";

const Colours = registries.coreViewsPluginRegistry.get("custom_colors") as unknown as {
  new (...config: never[]): {
    readonly getters: any;
    /** True if a command may have brought a colour. */
    readonly shouldUpdateColors: boolean;
    handle(command: any): void;
    finalize(): void;
    computeCustomColors(): string[];
    getColorsFromCells(sheetId: string): string[];
    getFormattingColors(sheetId: string): string[];
    getTableColors(sheetId: string): string[];
  };
  readonly getters: readonly string[];
};

class ColoursOfChangedSheets extends Colours {
  static override getters = Colours.getters;
  /** The sheets that were changed since the colours were last looked for; undefined for all of them. */
  #changed: Set<string> | undefined;
  /** The colours that were found while the workbook was opened sheet by sheet. */
  readonly #found = new Set<string>();

  constructor(...config: never[]) {
    super(...config);
    const isInSteps = atStart(config, (sheetId, isSeen) => {
      if (isSeen) this.#find(sheetId);
      this.#changed?.delete(sheetId);
    });
    if (isInSteps) this.#changed = new Set();
  }

  override handle(command: any): void {
    super.handle(command);
    if (typeof command.sheetId === "string") this.#changed?.add(command.sheetId);
  }

  override finalize(): void {
    super.finalize();
    this.#changed = new Set();
  }

  override computeCustomColors(): string[] {
    const all: string[] = this.getters.getSheetIds();
    for (const sheetId of all) if (this.#changed?.has(sheetId) !== false) this.#find(sheetId);
    const found = [...this.#found];
    this.#found.clear();
    return found;
  }

  #find(sheetId: string): void {
    for (const colours of [
      this.getColorsFromCells(sheetId),
      this.getFormattingColors(sheetId),
      this.getTableColors(sheetId),
    ])
      for (const colour of colours) this.#found.add(colour);
  }
}

registries.coreViewsPluginRegistry.replace("custom_colors", ColoursOfChangedSheets as never);
