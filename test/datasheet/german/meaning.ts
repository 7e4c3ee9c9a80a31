/** Compares an English text of a sheet with a German one by the catalogue of messages and the words of lists. */
import { everyWord } from "../../../src/specification/list-words";
import { MESSAGES } from "../../../src/pane/text/messages";

/** A template as a pattern of the whole text, with its places in their order. */
interface Pattern {
  readonly places: readonly string[];
  /** The first value of several as short as can be, and as long as can be. */
  readonly forms: readonly RegExp[];
}

function patternOf(template: string): Pattern {
  const places = [...template.matchAll(/\{(\d+)\}/g)].map(([, place = ""]) => place);
  const parts = template.split(/\{\d+\}/).map((part) => part.replace(/[.*+?^${}()|[\]\\]/g, "\\$&"));
  return { places, forms: ["(.+?)", "(.+)"].map((value) => new RegExp(`^${parts.join(value)}$`, "s")) };
}

/** Templates that are nothing but values say nothing of their own. */
const PAIRS = Object.entries(MESSAGES.de ?? {})
  .filter(([english]) => /[a-z]{2}/i.test(english.replace(/\{\d+\}/g, "")))
  .map(([english, german]) => [patternOf(english), patternOf(german)] as const);

const valuesBy = ({ places, forms }: Pattern, text: string): ReadonlyMap<string, string>[] =>
  forms.flatMap((form) => {
    const found = form.exec(text);
    return found ? [new Map(places.map((place, index) => [place, found[index + 1] ?? ""]))] : [];
  });

const withPoint = (text: string): string => text.replace(/(\d),(?=\d)/g, "$1.");

const isByTemplate = (english: string, german: string): boolean =>
  PAIRS.some(([one, other]) =>
    valuesBy(one, english).some((own) =>
      valuesBy(other, german).some((theirs) =>
        [...own].every(([place, value]) => isTranslation(value, theirs.get(place) ?? "")),
      ),
    ),
  );

/** Texts with a mark between them, one by one. */
const isByParts = (english: string, german: string, between: string): boolean => {
  const [ones, others] = [english.split(between), german.split(between)];
  return (
    ones.length > 1 &&
    ones.length === others.length &&
    ones.every((one, index) => isTranslation(one, others[index] ?? ""))
  );
};

const known = new Map<string, boolean>();

/**
 * Whether a German text is the translation of an English one: equal but for the decimal sign, the German word of a list, a
 * message of the catalogue with such values, or several of them with a line, a semicolon, a colon or a comma between them.
 */
export function isTranslation(english: string, german: string): boolean {
  if (english === german || english === withPoint(german)) return true;
  // A number or a sign alone has no translation.
  if (!/[a-z]{2}/i.test(english)) return false;
  const key = `${english}\n\n${german}`;
  const before = known.get(key);
  if (before !== undefined) return before;
  const found =
    [english, english.toLowerCase()].some((word) => everyWord(word).includes(german)) ||
    ["\n", "; ", ": ", ", "].some((between) => isByParts(english, german, between)) ||
    (!english.includes("\n") && isByTemplate(english, german));
  known.set(key, found);
  return found;
}
