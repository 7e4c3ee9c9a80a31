/** Translates the messages of reductions, records and checks into the language of the pane. */
import { english, templateOf, type Value } from "../../reduction/message";
import { messages as de } from "./de/messages";
import { language, type Language } from "./language";
import { withPower } from "./powers";

/** The translations of the templates of messages (`templateOf`) by language; English needs none. */
export const MESSAGES: Readonly<Partial<Record<Language, Readonly<Record<string, string>>>>> = { de };

/** The decimal sign of languages that do not use a point. */
const DECIMAL_SIGN: Readonly<Partial<Record<Language, string>>> = { de: "," };

/** What a sheet calls things. */
export interface OnSheet {
  /** The label of a cell by its name. */
  readonly label: (cell: string) => string;
  /** A word of a list by its English word. */
  readonly word: (english: string) => string;
}

/** The sheet that messages speak of; undefined while it is English, as the messages are. */
let sheetSpokenOf: OnSheet | undefined;

/** From now on, messages call cells and words of lists as a sheet in another language than English does. */
export function speakAs(sheet: OnSheet | undefined): void {
  sheetSpokenOf = sheet;
}

/**
 * A message in a language, with the labels of cells instead of their names and with words of lists, as the sheet has them
 * unless `sheet` gives them; a message without a translation stays English.
 */
export function translated(value: Value, into: Language, sheet = sheetSpokenOf): string {
  if (typeof value === "number" || "digits" in value) {
    return withPower(english(value).replace(".", DECIMAL_SIGN[into] ?? "."), into);
  }
  if ("verbatim" in value) {
    if (value.isListWord && sheet) return sheet.word(value.verbatim);
    return value.cell === undefined || !sheet
      ? (value.label ?? value.verbatim)
      : value.label === undefined
        ? `${sheet.label(value.cell)} (${value.cell})`
        : sheet.label(value.cell);
  }
  if ("listed" in value) return value.listed.map((one) => translated(one, into, sheet)).join(value.between);
  const template = templateOf(value);
  return (MESSAGES[into]?.[template] ?? template).replace(/\{(\d+)\}/g, (place, index) => {
    // A place without a value is a text that a person typed.
    const part = value.values[Number(index)];
    return part === undefined ? place : translated(part, into, sheet);
  });
}

/** A message in the language of the pane. */
export const inWords = (value: Value): string => translated(value, language());
