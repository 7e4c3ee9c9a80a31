/**
 * The formulas with the functions that the engine follows by their names: it calculates those with SUBTOTAL again when rows are hidden or
 * shown, and so it does here with AGGREGATE. When a workbook starts, the engine looks for them in every formula
 * of every sheet: with 40 data sheets a sixth of a second. Here they are looked for sheet by sheet while the workbook is made in steps.
 * Casts: the engine's types do not include the inner parts of its plugins.
 */
import { registries } from "@odoo/o-spreadsheet";
import { atStart } from "./making";

/** A command that the engine follows. */
interface Told {
  readonly type: string;
  readonly content?: unknown;
}

interface Cell {
  readonly id: number;
  readonly isFormula: boolean;
  readonly compiledFormula: { readonly symbols: readonly string[] };
}

/** The parts of the engine's getters that are used here. */
interface Getters {
  getSheetIds(): readonly string[];
  getCells(sheetId: string): readonly Cell[];
  getCell(place: unknown): Cell | undefined;
  getCellPosition(id: number): { readonly sheetId: string };
  tryGetSheet(sheetId: string): object | undefined;
}

const hasAggregate = ({ isFormula, compiledFormula }: Cell): boolean =>
  isFormula && compiledFormula.symbols.some((name) => /^aggregate$/i.test(name));

const Tracker = registries.coreViewsPluginRegistry.get("formula_tracker") as unknown as {
  new (...config: never[]): {
    getters: Getters;
    readonly history: { update(...pathAndValue: unknown[]): void };
    /** By function: the cells with it. */
    readonly trackedCells: Record<string, object>;
    handle(command: Told): void;
    getCellsWithTrackedFormula(called: string): number[];
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

  override handle(command: Told): void {
    if (command.type !== "START" || !this.#isInSteps) this.#follow(command);
  }

  /** The engine keeps the places of cells whose sheet was deleted, and cannot calculate them. */
  override getCellsWithTrackedFormula(called: string): number[] {
    const { getters } = this;
    return super
      .getCellsWithTrackedFormula(called)
      .filter((id) => getters.tryGetSheet(getters.getCellPosition(id).sheetId) !== undefined);
  }

  #follow(command: Told): void {
    super.handle(command);
    const { getters } = this;
    if (command.type === "START")
      for (const sheetId of getters.getSheetIds())
        getters.getCells(sheetId).forEach((cell) => this.#noteAggregate(cell));
    else if (command.type === "UPDATE_CELL" && "content" in command) this.#noteAggregate(getters.getCell(command));
  }

  #noteAggregate(cell: Cell | undefined): void {
    if (cell && hasAggregate(cell)) this.history.update("trackedCells", "SUBTOTAL", cell.id, cell.id);
  }

  /** Adds the cells of some sheets as the engine finds those of all sheets. */
  #find(sheetIds: readonly string[]): void {
    const { getters } = this;
    const before = { ...this.trackedCells };
    this.getters = Object.create(getters, { getSheetIds: { value: () => sheetIds } });
    this.#follow({ type: "START" });
    this.getters = getters;
    for (const [called, cells] of Object.entries(before)) Object.assign(this.trackedCells[called]!, cells);
  }
}

registries.coreViewsPluginRegistry.replace("formula_tracker", TrackedBySheet as never);
