/** The decimal mark of the embedded sheet for typing, pasting and display. Cells, formulas and files always contain the point. */
import { DEFAULT_LOCALE } from "@odoo/o-spreadsheet";
import { carryOut } from "../steps/history";
import type { Model } from "../engine";

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

/** The engine's settings for a decimal mark, in the form of its data. */
export const settingsFor = (mark: DecimalMark) => ({ locale: LOCALES[mark] });

export const decimalMarkOf = ({ getters }: Pick<Model, "getters">): DecimalMark =>
  getters.getLocale().decimalSeparator === "," ? "," : ".";

/** The decimal mark chosen for a workbook; undefined if none was chosen, so that the engine's default applies. */
export const chosenMarkOf = (model: Pick<Model, "getters">): DecimalMark | undefined =>
  model.getters.getLocale().name === DEFAULT_LOCALE.name ? undefined : decimalMarkOf(model);

/** Changes the decimal mark of a workbook. Undo reverts the change. */
export function setDecimalMark(model: Model, mark: DecimalMark): void {
  if (chosenMarkOf(model) !== mark) carryOut(model, [{ type: "UPDATE_LOCALE", locale: LOCALES[mark] }]);
}

/** The decimal mark of numbers in a language ("de-DE"). */
export const decimalMarkIn = (language: string): DecimalMark =>
  new Intl.NumberFormat(language).formatToParts(1.5).some(({ type, value }) => type === "decimal" && value === ",")
    ? ","
    : ".";

interface FormulaCells {
  getCell(position: unknown): unknown;
}

/** The stored formula of a cell, with "=", decimal points, and commas between arguments. */
export function formulaAt(getters: unknown, position: { sheetId: string; col: number; row: number }): string {
  // The engine's type definitions do not include the compiled formula of a cell.
  const cell = (getters as FormulaCells).getCell(position) as
    { readonly compiledFormula?: { toFormulaString(getters: unknown): string } } | undefined;
  return cell?.compiledFormula?.toFormulaString(getters) ?? "";
}
