/** The words of the engine's menus and sentences: what the page gives, and the engine's own English otherwise. */
import { setTranslationMethod } from "@odoo/o-spreadsheet";

type Words = Readonly<Record<string, string>>;

let words: () => Words = () => ({});

/** Sets the function that gives the words of the engine by its English ones. */
export const speakWith = (given: () => Words): void => void (words = given);

/** The word for an English one of the engine. */
export const wordFor = (english: string): string => words()[english] ?? english;

setTranslationMethod((...[text]) => wordFor(text));
