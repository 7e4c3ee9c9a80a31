/** The messages of reductions, records and checks in the pane's language. */
import { nth } from "../../reduction/numeric/lists";
import { english, templateOf, type Value } from "../../reduction/message";
import { messages as de } from "./de/messages";
import { language, type Language } from "./language";

/** By language, the templates of messages (`templateOf`) and their translations; English needs none. */
export const MESSAGES: Readonly<Partial<Record<Language, Readonly<Record<string, string>>>>> = { de };

/** Decimal sign of a language whose sign is no point. */
const DECIMAL_SIGN: Readonly<Partial<Record<Language, string>>> = { de: "," };

/** A message in a language, with cells by their labels; one that is not translated stays English. */
export function translated(value: Value, into: Language): string {
  if (typeof value === "number" || "digits" in value) return english(value).replace(".", DECIMAL_SIGN[into] ?? ".");
  if ("verbatim" in value) return value.label ?? value.verbatim;
  if ("listed" in value) return value.listed.map((one) => translated(one, into)).join(value.between);
  const template = templateOf(value);
  return (MESSAGES[into]?.[template] ?? template).replace(/\{(\d+)\}/g, (_, index) =>
    translated(nth(value.values, Number(index)), into),
  );
}

/** A message in the language of the pane. */
export const inWords = (value: Value): string => translated(value, language());
