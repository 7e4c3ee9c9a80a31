/** The functions of a formula that the sheet on this page does not have. */
import { functionRegistry } from "../../evaluation/held";

/** Texts and quoted names of sheets, in the engine's spelling. */
const QUOTED = /"(?:\\"|[^"])*"|'(?:''|[^'])*'/g;
const CALLED = /([A-Za-z_][\w.]*)\(/g;

/** LOG10 is calculated as LOG (`evaluation/log-ten.ts`); functions of the add-in may come later. */
const isOwn = (name: string): boolean => name === "LOG10" || name.startsWith("CLAY.");

/** @param formula without "=" */
export function unknownIn(formula: string): string[] {
  const names = [...formula.replace(QUOTED, "").matchAll(CALLED)].map(([, name = ""]) => name.toUpperCase());
  return names.filter((name) => !isOwn(name) && !functionRegistry.contains(name));
}
