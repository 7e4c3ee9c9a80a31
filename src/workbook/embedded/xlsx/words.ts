/**
 * The messages of entry rules: the hint before an entry, and the sentence when the rule refuses it. The engine does not
 * have them; a file does.
 * Casts: the engine's types of rules lack the words that are added here.
 */
import type { Model } from "../engine";
import { heldText, plainText } from "../../file/escapes";

const WORDS = ["errorTitle", "error", "promptTitle", "prompt"] as const;

/** A rule of the engine holds the messages under this key, beside the fields of the engine. */
export type Words = Partial<Record<(typeof WORDS)[number], string>>;

interface Rule {
  readonly ranges: readonly never[];
  readonly words?: Words;
}

/** Adds the messages to the rules of a sheet's part; a rule is found by its cells. */
export function addWords(elements: readonly Element[], { getters }: Model, sheetId: string): void {
  const byCells = new Map(elements.map((element) => [element.getAttribute("sqref"), element]));
  for (const { ranges, words } of getters.getDataValidationRules(sheetId) as unknown as Rule[]) {
    const cells = ranges
      .map((range) => getters.getRangeString(range, sheetId, { useBoundedReference: true }))
      .join(" ");
    const element = byCells.get(cells);
    for (const [key, text] of Object.entries(words ?? {})) element?.setAttribute(key, heldText(text));
  }
}

/** The messages of a sheet's rules, by the cells of the rule. */
export function readWords(elements: readonly Element[]): Map<string, Words> {
  return new Map(
    elements.map((element) => [
      element.getAttribute("sqref") ?? "",
      Object.fromEntries(
        WORDS.flatMap((key) => (element.hasAttribute(key) ? [[key, plainText(element.getAttribute(key)!)]] : [])),
      ),
    ]),
  );
}
