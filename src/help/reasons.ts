/**
 * The words of a language for a reason that a function gives in a cell, where it is English. The pane has the words by
 * the templates of messages; of a reason only the finished English text is known, so its template is looked for.
 */
import type { Language } from "../pane/text/language";
import { MESSAGES } from "../pane/text/messages";
import { HELP_WORDS } from "./text";

type Table = Readonly<Record<string, string>>;

/** Characters of a template without its values: a shorter one would fit texts that it does not mean. */
const FEWEST_LETTERS = 8;

const lettersOf = (template: string): number => template.replace(/\{\d+\}/g, "").length;

const PLACE = /\{(\d+)\}/g;

/** A template that can be looked for, with its words in the language. */
interface Sentence {
  readonly own: string;
  readonly pattern: RegExp;
  /** The numbers of its values, in their order in the English text. */
  readonly places: readonly string[];
}

/** The sentences of a language, those with the most letters of their own first. */
function sentencesIn(language: Language): readonly Sentence[] {
  const tables: readonly Table[] = [HELP_WORDS[language].reasons, MESSAGES[language] ?? {}];
  return tables
    .flatMap((table) => Object.entries(table).map(([english, own]) => ({ english, own, letters: lettersOf(english) })))
    .filter(({ english, letters }) => letters === english.length || letters >= FEWEST_LETTERS)
    .sort((one, other) => other.letters - one.letters)
    .map(({ english, own }) => {
      const literal = english.split(/\{\d+\}/).map((part) => part.replace(/[.*+?^${}()|[\]\\]/g, "\\$&"));
      return {
        own,
        pattern: new RegExp(`^${literal.join("(.+)")}$`, "s"),
        places: [...english.matchAll(PLACE)].map(([, number = ""]) => number),
      };
    });
}

/** Made once for a language, because a page has many reasons. */
const SENTENCES = new Map<Language, readonly Sentence[]>();

function sentencesOf(language: Language): readonly Sentence[] {
  const known = SENTENCES.get(language) ?? sentencesIn(language);
  SENTENCES.set(language, known);
  return known;
}

const NUMBER = /^-?\d+(?:\.\d+)?$/;

/** A value of a message: a text that has words too, a number with the decimal mark, or a name that every language has. */
function valueIn(language: Language, value: string): string {
  const { decimal } = HELP_WORDS[language].notation;
  return reasonIn(language, value) ?? (NUMBER.test(value) ? value.replace(".", decimal) : value);
}

/** A reason in a language; undefined in English, and if the language has no words for it. */
export function reasonIn(language: Language, reason: string): string | undefined {
  for (const { own, pattern, places } of sentencesOf(language)) {
    const found = pattern.exec(reason);
    if (found)
      return own.replace(PLACE, (_, number: string) => valueIn(language, found[places.indexOf(number) + 1] ?? ""));
  }
  return undefined;
}
