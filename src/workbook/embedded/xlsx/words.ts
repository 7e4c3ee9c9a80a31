/** What a host says to a person who types what a rule refuses, and before: the engine has none of it, a file does. */
import type { Model } from "../engine";
import { heldText, plainText } from "./escapes";

const WORDS = ["errorTitle", "error", "promptTitle", "prompt"] as const;

/** Carried by a rule of the engine under this key, beside what the engine knows of it. */
export type Words = Partial<Record<(typeof WORDS)[number], string>>;

interface Rule {
  readonly ranges: readonly never[];
  readonly words?: Words;
}

/** Puts the words into the rules of a sheet's part, which the file tells apart by their cells. */
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

/** The words of a sheet's rules, by their cells. */
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
