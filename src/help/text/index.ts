/** The help pages in every language of the pane. */
import type { Language } from "../../pane/text/language";
import { de } from "./de";
import { en } from "./en";
import type { HelpWords } from "./words";

export const HELP_WORDS: Readonly<Record<Language, HelpWords>> = { en, de };
