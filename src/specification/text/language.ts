/** The languages of a data sheet, and how a sheet says which it is in. */
import type { CellValue } from "../../workbook/port";

export const SHEET_LANGUAGES = ["en", "de"] as const;
export type SheetLanguage = (typeof SHEET_LANGUAGES)[number];

/** The cell of the sheet that names its language; the sheets of older versions, which lack it, are English. */
export const LANGUAGE_CELL = "sheet_language";

/** The name of each language in the language itself, as the cell has it. */
export const LANGUAGE_NAMES: Readonly<Record<SheetLanguage, string>> = { en: "English", de: "Deutsch" };

/** The language with this name; English for any other text. */
export function languageNamed(name: CellValue | undefined): SheetLanguage {
  const said = String(name ?? "")
    .trim()
    .toLowerCase();
  return SHEET_LANGUAGES.find((one) => LANGUAGE_NAMES[one].toLowerCase() === said) ?? "en";
}

/** The language of a sheet by the values of its names. */
export const languageOf = (values: Readonly<Record<string, readonly (readonly CellValue[])[]>>): SheetLanguage =>
  languageNamed(values[LANGUAGE_CELL]?.[0]?.[0]);
