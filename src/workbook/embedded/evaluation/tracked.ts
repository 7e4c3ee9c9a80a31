/**
 * The formulas with the functions that the engine follows by their names. When a workbook starts, the engine looks for them in every formula
 * of every sheet: with 40 data sheets a sixth of a second. Here they are looked for sheet by sheet while the workbook is made in steps.
 * Casts: the engine's types do not include the inner parts of its plugins.
 */
import { registries } from "@odoo/o-spreadsheet";
import { atStart } from "./making";

const Tracker = registries.coreViewsPluginRegistry.get("formula_tracker") as unknown as {
  new (...config: never[]): {
    getters: object;
    /** By function: the cells with it. */
    readonly trackedCells: Record<string, object>;
    handle(command: { readonly type: string }): void;
  };
  readonly getters: readonly string[];
};

class TrackedBySheet extends Tracker {
  static override getters = Tracker.getters;
  readonly #isInSteps: boolean;

  constructor(...config: never[]) {
    super(...config);
    this.#isInSteps = atStart(config, (sheetId, isSeen) => this.#find(isSeen ? [sheetId] : []));
  }

  override handle(command: { readonly type: string }): void {
    if (command.type !== "START" || !this.#isInSteps) super.handle(command);
  }

  /** Adds the cells of some sheets as the engine finds those of all sheets. */
  #find(sheetIds: readonly string[]): void {
    const { getters } = this;
    const before = { ...this.trackedCells };
    this.getters = Object.create(getters, { getSheetIds: { value: () => sheetIds } });
    super.handle({ type: "START" });
    this.getters = getters;
    for (const [called, cells] of Object.entries(before)) Object.assign(this.trackedCells[called]!, cells);
  }
}

registries.coreViewsPluginRegistry.replace("formula_tracker", TrackedBySheet as never);
