/** Finds a name of the workbook without a search through all of them. */

import type { Zone } from "../zones";

/** A name of the workbook as the engine keeps it. */
export interface NamedRange {
  readonly name: string;
  readonly range?: { readonly sheetId: string; readonly zone: Zone };
}

/**
 * Finds a name of the workbook. The engine compares it with every name, for every name in every formula: with 40 data sheets
 * these are 14,000 names, and a changed reading took longer with each sheet. `all` gives another list whenever a name changes.
 */
export function nameFinder(all: () => readonly NamedRange[]): (name: string) => NamedRange | undefined {
  let known: readonly NamedRange[] | undefined;
  let byName = new Map<string, NamedRange>();
  return (name) => {
    const names = all();
    if (names !== known) {
      known = names;
      byName = new Map(names.map((one) => [one.name.toLowerCase(), one]));
    }
    return byName.get(name.toLowerCase());
  };
}
