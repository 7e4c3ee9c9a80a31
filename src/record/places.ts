/** Where the names of a sheet stand, as a workbook port lists them. */
import type { Layout } from "../specification/placed-formulas";
import type { Box, SheetName } from "../workbook/port";
import type { NamedValues } from "./record";

/** The cells of each name, by the name in lower case: the sheet's own before one of the workbook. */
export function boxesByName(names: readonly SheetName[]): ReadonlyMap<string, Box> {
  const boxes = new Map<string, Box>();
  for (const { name, place } of names)
    if (place !== "lost" && !boxes.has(name.toLowerCase())) boxes.set(name.toLowerCase(), place);
  return boxes;
}

/** A sheet as the formulas of its names need to know it: where they stand, and which load each row is of. */
export function layoutOf(names: readonly SheetName[], { load_number: numbers }: NamedValues): Layout {
  const loadNumbers = numbers?.map(([number]) => (typeof number === "number" ? number : 0));
  return { places: boxesByName(names), ...(loadNumbers?.some((number) => number > 0) && { loadNumbers }) };
}
