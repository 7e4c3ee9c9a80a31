/** Die Wörter der eingebetteten Tabelle, nach den englischen Wörtern ihrer Entwickler. */
import { errors } from "./errors";
import { menus } from "./menus";
import { panels } from "./panels";

export const engine: Readonly<Record<string, string>> = { ...menus, ...panels, ...errors };
