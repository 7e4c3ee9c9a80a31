/**
 * The heights of rows that follow from their cells. When a workbook starts, the engine finds them for every row of every sheet: with 40
 * data sheets the page did not react for half a second. Here they are found sheet by sheet while the workbook is made in steps.
 * Casts: the engine's types do not include the inner parts of its plugins.
 */
import { registries } from "@odoo/o-spreadsheet";
import { atStart } from "../evaluation/making";

const Heights = registries.coreViewsPluginRegistry.get("row_size") as unknown as {
  new (...config: never[]): {
    handle(command: { readonly type: string }): void;
    initializeSheet(sheetId: string): void;
    readonly tallestCellInRow: Record<string, unknown[]>;
  };
  readonly getters: readonly string[];
};

class HeightsBySheet extends Heights {
  static override getters = Heights.getters;
  readonly #isInSteps: boolean;

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
}

registries.coreViewsPluginRegistry.replace("row_size", HeightsBySheet as never);
