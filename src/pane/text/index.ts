/** Every text of the pane, in the language that was set before this module was loaded. */
import type { Catalogue } from "./catalogue";
import { de } from "./de";
import { en } from "./en";
import { language, type Language } from "./language";

export const CATALOGUES: Readonly<Record<Language, Catalogue>> = { en, de };

export const text: Catalogue = CATALOGUES[language()];
