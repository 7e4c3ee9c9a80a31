/**
 * Where the columns and rows of a sheet begin, found when somebody asks. After each change the engine would find them anew for every sheet:
 * with 40 data sheets these are 90,000 rows after each slice of an insertion, and after each entry of a person.
 * Casts: the engine's types do not include the inner parts of its plugins.
 */
import { registries } from "@odoo/o-spreadsheet";

/** The places in pixels, by number of the column and of the row. */
type Places = Readonly<Record<"COL" | "ROW", Readonly<Record<number, number>>>>;

interface HeaderPlugin {
  headerPositions: Record<string, Places | undefined>;
  isDirty: boolean;
  getColDimensions(sheetId: string, col: number): unknown;
  getRowDimensions(sheetId: string, row: number): unknown;
  getColRowOffset(dimension: "COL" | "ROW", from: number, to: number, sheetId: string): number;
  computeHeaderPositionsOfSheet(sheetId: string): Places;
}

const Headers = registries.statefulUIPluginRegistry.get("header_positions") as unknown as {
  new (...config: never[]): HeaderPlugin & { finalize(): void };
  readonly getters: readonly string[];
};

class AskedHeaders extends Headers {
  static override getters = Headers.getters;

  override finalize(): void {
    if (this.isDirty) this.headerPositions = {};
    this.isDirty = false;
  }

  override getColDimensions(sheetId: string, col: number): unknown {
    this.#find(sheetId);
    return super.getColDimensions(sheetId, col);
  }

  override getRowDimensions(sheetId: string, row: number): unknown {
    this.#find(sheetId);
    return super.getRowDimensions(sheetId, row);
  }

  override getColRowOffset(dimension: "COL" | "ROW", from: number, to: number, sheetId: string): number {
    this.#find(sheetId);
    return super.getColRowOffset(dimension, from, to, sheetId);
  }

  #find(sheetId: string): void {
    this.headerPositions[sheetId] ??= this.computeHeaderPositionsOfSheet(sheetId);
  }
}

registries.statefulUIPluginRegistry.replace("header_positions", AskedHeaders as never);
