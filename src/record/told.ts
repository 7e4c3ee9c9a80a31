/**
 * Words for what worksheet functions answer. functions.js works alone, and then answers in English. The page in which it
 * runs has the texts of the other languages, and gives it a translator; the two are separate files, so the translator is
 * a property of the global object.
 */
import { english, type Value } from "../reduction/message";

/** A message in the language with this tag, as a sheet in that language shows it; without a tag, in the language of the user's program. */
export type Translator = (message: Value, language?: string) => string;

// The property is this module's own: nothing else declares or sets it. A host may run functions.js where there is no global object.
const PAGE = globalThis as { clayledgerTranslator?: Translator | undefined } | undefined;

/** Gives the worksheet functions of this page their translator, and returns the one before; undefined takes it away. */
export function translateBy(translator: Translator | undefined): Translator | undefined {
  const before = PAGE?.clayledgerTranslator;
  if (PAGE) PAGE.clayledgerTranslator = translator;
  return before;
}

/** A message in the language with this tag, or without a tag in the language of the user's program; English without a translator. */
export const told = (message: Value, language?: string): string =>
  (language !== "en" && PAGE?.clayledgerTranslator?.(message, language)) || english(message);
