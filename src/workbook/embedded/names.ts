/**
 * Names. The port's names are local to their sheet, the engine's belong to the whole workbook: the first sheet keeps them
 * bare, each later one gets one suffix for all of its names ("ring_mass_2"). A name that the engine would read as a cell ("t50")
 * is called as in Excel ("t50_").
 */

import { tokenize } from "@odoo/o-spreadsheet";
import { localName } from "../names";

export type Rename = (name: string) => string;

/** What a sheet's local names are called in the engine: local name to engine's name. */
export type LocalNames = ReadonlyMap<string, string>;

/** What a sheet's name is called in the engine; names do not know capitals. */
export function calledIn(names: LocalNames | undefined, name: string): string | undefined {
  const wanted = name.toLowerCase();
  return names?.get(name) ?? [...(names ?? [])].find(([local]) => local.toLowerCase() === wanted)?.[1];
}

/** Engine names for a sheet's local names, with the first suffix under which none of them is taken. */
export function freeNames(local: readonly string[], taken: readonly string[]): Map<string, string> {
  const used = new Set(taken.map((name) => name.toLowerCase()));
  for (let count = 1; ; count++) {
    const called = local.map((name) => (count === 1 ? localName(name) : `${name}_${count}`));
    if (called.every((name) => !used.has(name.toLowerCase())))
      return new Map(local.map((name, i) => [name, called[i]]));
  }
}

const NAMED = /"(?:[^"]|"")*"|'(?:[^']|'')*'|\{([A-Za-z_][\w.]*)\}/g;

/** Puts engine names in the place of `{name}` outside texts and sheets' names; a name that the plan does not define is refused. */
export function resolveNames(formula: string, names: LocalNames): string {
  return formula.replace(NAMED, (whole, name: string | undefined) => {
    if (name === undefined) return whole;
    const called = names.get(name);
    if (called === undefined) throw new Error(`the formula ${formula} refers to the unknown name ${name}`);
    return called;
  });
}

/** The formula (without "=") with each bare name, that is no function, reference or text, put through `rename`. */
export function renameIn(formula: string, rename: Rename): string {
  const tokens = tokenize(`=${formula}`).slice(1);
  return tokens
    .map(({ type, value }, i) => (type === "SYMBOL" && tokens[i + 1]?.type !== "LEFT_PAREN" ? rename(value) : value))
    .join("");
}
