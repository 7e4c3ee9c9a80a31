/** The language of the sheet that the pane speaks of: sentences quote its labels and the words of its lists as it has them. */
import { translateBy } from "../../record/told";
import { labelOn } from "../../record/labels/sheet-labels";
import type { Value } from "../../reduction/message";
import { wordIn } from "../../specification/list-words";
import { SHEET_LANGUAGES, type SheetLanguage } from "../../specification/text/language";
import type { CellValue } from "../../workbook/port";
import { language } from "../text/language";
import { inWords, speakAs, translated, type OnSheet } from "../text/messages";

const sheetIn = (language: SheetLanguage): OnSheet => ({
  label: (cell) => labelOn(language, cell),
  word: (english) => wordIn(language, english),
});

let current: SheetLanguage = "en";

/** Call this when a sheet was read, before anything is said of it. */
export function speakOfSheet(language: SheetLanguage): void {
  current = language;
  speakAs(language === "en" ? undefined : sheetIn(language));
}

/** The language of the sheet, as the value of `lang` of an element that quotes its labels. */
export const languageOfLabels = (): SheetLanguage => current;

/** The label of a cell as the sheet has it. */
export const labelOnSheet = (name: string): string => labelOn(current, name);

/** A unit as the sheet writes it: "m2/a" for "m2/yr" on a German sheet. */
export const unitOnSheet = (unit: string): string => wordIn(current, unit);

/** The content of a cell that the program knows by the English word of a list, as the sheet has it. */
export const contentOnSheet = (content: CellValue): CellValue =>
  typeof content === "string" ? wordIn(current, content) : content;

/** A message all in one language, with the labels of cells and the words of lists too, whatever the language of the sheet: for a report. */
export const inOneLanguage =
  (language: SheetLanguage) =>
  (value: Value): string =>
    translated(value, language, sheetIn(language));

/** A message in the language of the pane, with the labels and the words of lists of a sheet in this language: of a sheet that is not the current test. */
export const inWordsOfSheet =
  (ofSheet: SheetLanguage) =>
  (value: Value): string =>
    translated(value, language(), sheetIn(ofSheet));

/**
 * Words what worksheet functions of this page answer: in the language that the formula asks with, all in one language; what
 * they say of an error, in the language of the pane. A label or a unit of a table may be a word of a list.
 */
export function translateAnswers(): void {
  translateBy((message, tag) => {
    const asked = SHEET_LANGUAGES.find((one) => one === tag);
    return asked ? wordIn(asked, inOneLanguage(asked)(message)) : inWords(message);
  });
}
