/** Finds English words in what a German sheet shows. */
import { MESSAGES } from "../../../src/pane/text/messages";
import { choices } from "../../../src/specification/text/de/choices";
import { wordsOf } from "../../../src/specification/text/words";

const words = (text: string): string[] => text.toLowerCase().match(/\p{L}{3,}/gu) ?? [];

const { titles, labels, notes, formulas, demo, beside } = wordsOf("de");
const TABLES: readonly Readonly<Record<string, string>>[] = [
  ...[MESSAGES.de ?? {}, titles, labels, notes],
  ...[formulas, choices, beside],
];
const GERMAN = new Set([...TABLES.flatMap((table) => Object.values(table)), ...Object.values(demo)].flatMap(words));
/** Words of an English text that no German one has. */
const ENGLISH = new Set(
  TABLES.flatMap((table) => Object.keys(table))
    .flatMap(words)
    .filter((word) => !GERMAN.has(word)),
);
/** Names of methods and names of cells, which every language repeats. */
const REPEATED = /\b(?:Casagrande|Pacheco Silva|Janbu|Schmertmann|CLAY\.\w+|\w+_\w+)\b/g;

/** The English words of a text. */
export const englishWords = (text: string): string[] =>
  words(text.replace(REPEATED, "")).filter((word) => ENGLISH.has(word));

/** Each text that has English words, with these words behind it. */
export const englishLeft = (texts: readonly string[]): string[] =>
  texts.flatMap((text) => {
    const found = englishWords(text);
    return found.length > 0 ? [`${text} (${found.join(", ")})`] : [];
  });
