/** An open workbook: the engine's, and what the port must remember beside it. */
import { Model } from "./engine";
import type { LocalNames } from "./names";

export interface OpenWorkbook {
  readonly model: Model;
  /** By sheet id: what the sheet's local names are called in the engine. */
  readonly localNames: ReadonlyMap<string, LocalNames>;
  /** By sheet id: names of its file that led to no cells. */
  readonly lost?: ReadonlyMap<string, readonly string[]>;
}

/** A workbook of one blank sheet. */
export const newWorkbook = (): OpenWorkbook => ({
  model: new Model({ sheets: [{ id: "sheet1", name: "Sheet1" }] }),
  localNames: new Map(),
});

/** The same workbook with nothing to undo, for what a person finds and did not do. */
export const freshHistory = ({ model, ...remembered }: OpenWorkbook): OpenWorkbook => {
  const fresh = new Model(model.exportData());
  const from = fresh.getters.getActiveSheetId();
  const to = model.getters.getActiveSheetId();
  if (from !== to) fresh.dispatch("ACTIVATE_SHEET", { sheetIdFrom: from, sheetIdTo: to });
  return { model: fresh, ...remembered };
};
