/** Finds a name of the workbook without a search through all of them. */

import type { Zone } from "../zones";

/** A name of the workbook as the engine keeps it. */
export interface NamedRange {
  readonly name: string;
  readonly range?: { readonly sheetId: string; readonly zone: Zone };
}

/**
 * Finds a name of the workbook. The engine compares it with every name, for every name in every formula: with 40 data sheets
 * these are 10,000 names, and a changed reading took longer with each sheet. The place of each name is kept here, and
 * checked when it is used.
 */
export function nameFinder(all: () => readonly NamedRange[]): (name: string) => NamedRange | undefined {
  let places = new Map<string, number>();
  return (name) => {
    const [names, wanted] = [all(), name.toLowerCase()];
    const at = (): NamedRange | undefined => names[places.get(wanted) ?? -1];
    if (at()?.name.toLowerCase() === wanted) return at();
    places = new Map(names.map((one, index) => [one.name.toLowerCase(), index]));
    return at();
  };
}
