/**
 * Which cells of a sheet are in view, found for the sheet in front. After each entry the engine would find them for every sheet of the
 * workbook, and the places of all their rows with them. A sheet that waits is looked at when it comes to the front.
 * Casts: the engine's types do not include the inner parts of its plugins.
 */
import { registries } from "@odoo/o-spreadsheet";

const Views = registries.statefulUIPluginRegistry.get("viewport") as unknown as {
  new (...config: never[]): {
    readonly getters: any;
    /** The sheets that are to be looked at, and whether the cell of the cursor is to be brought into view. */
    sheetsWithDirtyViewports: Set<string>;
    shouldAdjustViewports: boolean;
    finalize(): void;
  };
  readonly getters: readonly string[];
};

class FrontView extends Views {
  static override getters = Views.getters;
  /** The sheets whose cell of the cursor is to be brought into view. */
  readonly #adjusting = new Set<string>();

  override finalize(): void {
    const waiting = this.sheetsWithDirtyViewports;
    const front: string = this.getters.getActiveSheetId();
    if (this.shouldAdjustViewports) for (const sheetId of waiting) this.#adjusting.add(sheetId);
    this.shouldAdjustViewports = this.#adjusting.delete(front);
    this.sheetsWithDirtyViewports = new Set(waiting.delete(front) ? [front] : []);
    super.finalize();
    this.sheetsWithDirtyViewports = waiting;
  }
}

registries.statefulUIPluginRegistry.replace("viewport", FrontView as never);
