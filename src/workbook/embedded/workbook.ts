/** An open workbook: the model of the engine, and the data that the port keeps beside it. */
import { Model, plainData } from "./engine";
import { ONLY_COPIED } from "./evaluation/plugin";
import { settingsFor, type DecimalMark } from "./typing/locale";
import type { LocalNames } from "./names";
import type { Calculation } from "./xlsx/calculation";

export interface OpenWorkbook {
  readonly model: Model;
  /** By sheet id: the engine names of the sheet's local names. */
  readonly localNames: ReadonlyMap<string, LocalNames>;
  /** By sheet id: names of its file that led to no cells. */
  readonly lost?: ReadonlyMap<string, readonly string[]>;
  /** How its file wants to be calculated in Excel. */
  readonly calculation?: Calculation;
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

/** A workbook as JSON, without undo steps. */
export function asText({ model, localNames }: OpenWorkbook): string {
  const names = [...localNames].map(([sheetId, local]) => [sheetId, [...local]]);
  return JSON.stringify({ data: plainData(model), names, front: model.getters.getActiveSheetId() });
}

/** What `asText` writes. */
interface Kept {
  readonly data: object;
  readonly names: readonly (readonly [string, readonly (readonly [string, string])[]])[];
  readonly front: string;
}

/** The workbook of a text by `asText`, with a decimal mark if one is given. */
export function fromText(text: string, mark?: DecimalMark): OpenWorkbook {
  const { data, names, front }: Kept = JSON.parse(text);
  const model = new Model({ ...data, ...(mark && { settings: settingsFor(mark) }) });
  const from = model.getters.getActiveSheetId();
  if (from !== front) model.dispatch("ACTIVATE_SHEET", { sheetIdFrom: from, sheetIdTo: front });
  return { model, localNames: new Map(names.map(([sheetId, local]) => [sheetId, new Map(local)])) };
}
