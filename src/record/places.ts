/** Finds the positions of the names of a sheet in the list of a workbook port. */
import { addressInList, asColumn, lengthOf } from "../workbook/lists";
import type { Layout } from "../specification/placed-formulas";
import { MOST_LOADS, timesName } from "../specification/readings";
import { languageOfFormulas } from "../specification/placed-language";
import { LANGUAGE_CELL, languageOf, type SheetLanguage } from "../specification/text/language";
import type { Box, SheetName } from "../workbook/port";
import type { NamedValues } from "./record";

/**
 * The cells of each name, by the name in lower case. A name that belongs to the sheet itself replaces a name of the
 * workbook.
 */
export function boxesByName(names: readonly SheetName[]): ReadonlyMap<string, Box> {
  const boxes = new Map<string, Box>();
  for (const { name, place } of names)
    if (place !== "lost" && !boxes.has(name.toLowerCase())) boxes.set(name.toLowerCase(), place);
  return boxes;
}

const overlap = (a: Box, b: Box): boolean =>
  a.row < b.row + b.rows && b.row < a.row + a.rows && a.col < b.col + b.cols && b.col < a.col + a.cols;

/** The loads that have times in cells in which another load has its times too: a time written for one counts for both. */
export function loadsThatShareTimes(names: readonly SheetName[]): readonly number[] {
  const boxes = boxesByName(names);
  const times = Array.from({ length: MOST_LOADS }, (_, index) => boxes.get(timesName(index + 1)));
  return times.flatMap((box, index) =>
    box && times.some((other, at) => at !== index && other && overlap(box, other)) ? [index + 1] : [],
  );
}

/** The address of the cell of a name in a row, counted from 1; undefined if the sheet has none there. */
export function cellBeside(names: readonly SheetName[], name: string, row = 1): string | undefined {
  const box = boxesByName(names).get(name);
  return box && row <= lengthOf(box) ? addressInList(box, row - 1) : undefined;
}

/**
 * The layout of a sheet for the formulas of its names: the positions of the names, the load number of each row, and the
 * language. A sheet that names no language has that of the texts in the formulas of `contents`, and without such a text
 * the one given as `otherwise`.
 */
export function layoutOf(
  names: readonly SheetName[],
  values: NamedValues,
  contents: NamedValues = {},
  otherwise: SheetLanguage = "en",
): Layout {
  const { load_number: numbers } = values;
  const loadNumbers = numbers && asColumn(numbers).map(([number]) => (typeof number === "number" ? number : 0));
  const layout: Layout = {
    places: boxesByName(names),
    ...(loadNumbers?.some((number) => number > 0) && { loadNumbers }),
  };
  const isNamed = layout.places.has(LANGUAGE_CELL);
  return {
    ...layout,
    language: isNamed ? languageOf(values) : (languageOfFormulas(layout, contents) ?? otherwise),
  };
}
