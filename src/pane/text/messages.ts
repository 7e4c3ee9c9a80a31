/** Translates the messages of reductions, records and checks into the language of the pane. */
import { nth } from "../../reduction/numeric/lists";
import { english, templateOf, type Value } from "../../reduction/message";
import { messages as de } from "./de/messages";
import { language, type Language } from "./language";

/** The translations of the templates of messages (`templateOf`) by language; English needs none. */
export const MESSAGES: Readonly<Partial<Record<Language, Readonly<Record<string, string>>>>> = { de };

/** The decimal sign of languages that do not use a point. */
const DECIMAL_SIGN: Readonly<Partial<Record<Language, string>>> = { de: "," };

/** The label of a cell as the sheet has it; undefined while the sheet is English, as the messages are. */
let labelOnSheet: Labelled | undefined;

/** Gives the label of a cell by its name. */
type Labelled = (cell: string) => string;

/** From now on, messages call cells as a sheet in another language than English does. */
export function callCells(labelled: Labelled | undefined): void {
  labelOnSheet = labelled;
}

/**
 * A message in a language, with the labels of cells instead of their names, as the sheet has them unless `labelled` gives
 * them; a message without a translation stays English.
 */
export function translated(value: Value, into: Language, labelled = labelOnSheet): string {
  if (typeof value === "number" || "digits" in value) return english(value).replace(".", DECIMAL_SIGN[into] ?? ".");
  if ("verbatim" in value)
    return value.cell === undefined || !labelled
      ? (value.label ?? value.verbatim)
      : value.label === undefined
        ? `${labelled(value.cell)} (${value.cell})`
        : labelled(value.cell);
  if ("listed" in value) return value.listed.map((one) => translated(one, into, labelled)).join(value.between);
  const template = templateOf(value);
  return (MESSAGES[into]?.[template] ?? template).replace(/\{(\d+)\}/g, (_, index) =>
    translated(nth(value.values, Number(index)), into, labelled),
  );
}

/** A message in the language of the pane. */
export const inWords = (value: Value): string => translated(value, language());
