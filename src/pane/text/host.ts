/**
 * The words of the page of `npm start`, in the language of the pane. They are apart from the pane's catalogue, because
 * Excel never loads them.
 */
import type { Said } from "./catalogue";
import { engine as deEngine } from "./de/engine";
import { host as de } from "./de/host";
import { engine as enEngine } from "./en/engine";
import { host as en } from "./en/host";
import { language, type Language } from "./language";

export type HostWords = Said<typeof en>;

const HOST: Readonly<Record<Language, HostWords>> = { en, de };

/** The words of the embedded sheet's menus and sentences by the engine's own English words; others stay English. */
export type EngineWords = Readonly<Record<string, string>>;

const ENGINE: Readonly<Record<Language, EngineWords>> = { en: enEngine, de: deEngine };

export const hostWords = (): HostWords => HOST[language()];

export const engineWords = (): EngineWords => ENGINE[language()];
