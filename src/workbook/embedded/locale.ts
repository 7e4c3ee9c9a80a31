/** The decimal mark of the embedded sheet: for typing, pasting and showing. Cells, formulas and files always hold the point. */
import { DEFAULT_LOCALE } from "@odoo/o-spreadsheet";
import { carryOut } from "./history";
import type { Model } from "./engine";

export type DecimalMark = "." | ",";

/** With a decimal comma, arguments of a formula are separated by a semicolon, and thousands by a narrow space, which nobody types by mistake. */
const LOCALES = {
  ".": { ...DEFAULT_LOCALE, name: "Decimal point" },
  ",": {
    ...DEFAULT_LOCALE,
    ...{ name: "Decimal comma", code: "de_DE", thousandsSeparator: "\u202f", decimalSeparator: "," },
    ...{ formulaArgSeparator: ";", weekStart: 1, dateFormat: "dd/mm/yyyy", timeFormat: "hh:mm:ss" },
  },
} as const;

/** The engine's settings for a decimal mark, as its data hold them. */
export const settingsFor = (mark: DecimalMark) => ({ locale: LOCALES[mark] });

export const decimalMarkOf = ({ getters }: Pick<Model, "getters">): DecimalMark =>
  getters.getLocale().decimalSeparator === "," ? "," : ".";

/** The mark that was chosen for a workbook; undefined if none was, and the engine's own stands. */
export const chosenMarkOf = (model: Pick<Model, "getters">): DecimalMark | undefined =>
  model.getters.getLocale().name === DEFAULT_LOCALE.name ? undefined : decimalMarkOf(model);

/** Changes the decimal mark of a workbook. Undo takes it back. */
export function setDecimalMark(model: Model, mark: DecimalMark): void {
  if (chosenMarkOf(model) !== mark) carryOut(model, [{ type: "UPDATE_LOCALE", locale: LOCALES[mark] }]);
}

/** The decimal mark of a language ("de-DE"), as its numbers are written. */
export const decimalMarkIn = (language: string): DecimalMark =>
  new Intl.NumberFormat(language).formatToParts(1.5).some(({ type, value }) => type === "decimal" && value === ",")
    ? ","
    : ".";

interface FormulaCells {
  getCell(position: unknown): unknown;
}

/** The formula of a cell, with "=", as it is stored: with decimal points, and commas between arguments. */
export function formulaAt(getters: unknown, position: { sheetId: string; col: number; row: number }): string {
  // The engine's typings do not say that the cell of a formula holds it compiled.
  const cell = (getters as FormulaCells).getCell(position) as
    { readonly compiledFormula?: { toFormulaString(getters: unknown): string } } | undefined;
  return cell?.compiledFormula?.toFormulaString(getters) ?? "";
}
