/** An open workbook: the model of the engine, and the data that the port keeps beside it. */
import { Model, plainData } from "./engine";
import { ONLY_COPIED } from "./evaluation/plugin";
import { settingsFor, type DecimalMark } from "./typing/locale";
import type { LocalNames } from "./names";

export interface OpenWorkbook {
  readonly model: Model;
  /** By sheet id: the engine names of the sheet's local names. */
  readonly localNames: ReadonlyMap<string, LocalNames>;
  /** By sheet id: names of its file that led to no cells. */
  readonly lost?: ReadonlyMap<string, readonly string[]>;
}

/**
 * A workbook of one blank sheet, with a decimal mark if one is given. Of a workbook that is only copied, which nobody
 * sees, no formula is calculated.
 */
export const newWorkbook = (mark?: DecimalMark, { isOnlyCopied = false } = {}): OpenWorkbook => ({
  model: new Model(
    { sheets: [{ id: "sheet1", name: "Sheet1" }], ...(mark && { settings: settingsFor(mark) }) },
    isOnlyCopied ? ONLY_COPIED : {},
  ),
  localNames: new Map(),
});

/** The same workbook without undo steps, for content that the user did not make. */
export const freshHistory = ({ model, ...remembered }: OpenWorkbook): OpenWorkbook => {
  const fresh = new Model(plainData(model));
  const from = fresh.getters.getActiveSheetId();
  const to = model.getters.getActiveSheetId();
  if (from !== to) fresh.dispatch("ACTIVATE_SHEET", { sheetIdFrom: from, sheetIdTo: to });
  return { model: fresh, ...remembered };
};
