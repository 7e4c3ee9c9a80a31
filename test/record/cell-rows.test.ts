/**
 * The build of the worksheet functions bundles the values of `cell-rows.ts`, written as JSON: they must be plain data,
 * and say of each cell what the specification says.
 */
import * as rows from "../../src/record/cell-rows";
import { CELL_GROUPS, CELLS, labelOf } from "../../src/record/cells";
import { LOAD_RESULTS, LOAD_WORDS, NUMBERS, REMARKS, RESULTS, WORDS } from "../../src/record/names";
import { FIELDS_APART_FROM_READINGS } from "../../src/specification/fields";

test("the values stay the same when they are written as JSON", () => {
  expect(JSON.parse(JSON.stringify({ ...rows }))).toEqual({ ...rows });
});

test("the cells of a group have its names in their order", () => {
  const { others, ...groups } = CELL_GROUPS;
  const namesOf = (cells: readonly { readonly name: string }[]) => cells.map(({ name }) => name);
  expect(Object.values<readonly { readonly name: string }[]>(groups).map(namesOf)).toEqual([
    NUMBERS,
    WORDS,
    RESULTS,
    REMARKS,
    LOAD_RESULTS,
    LOAD_WORDS,
  ]);
  expect(others.length).toBeGreaterThan(0);
});

test("every cell of the specification is there once, with its measure", () => {
  const byName = (list: readonly { name: string }[]) => [...list].sort((a, b) => (a.name < b.name ? -1 : 1));
  const told = CELLS.map(({ name, measure }) => ({ name, measure }));
  expect(byName(told)).toEqual(byName(FIELDS_APART_FROM_READINGS.map(({ name, measure }) => ({ name, measure }))));
});

test("a cell with choices keeps them, but for the units, which are read by their table", () => {
  for (const { name, choices, alsoReads } of FIELDS_APART_FROM_READINGS) {
    const cell = CELLS.find((one) => one.name === name);
    expect(cell?.choices).toEqual(name.endsWith("_unit") ? undefined : choices);
    expect(cell?.alsoReads).toEqual(alsoReads);
  }
});

test.each([
  ["dial_factor", "Dial factor"],
  ["ring_mass", "Mass of the ring"],
  ["preconsolidation_low", "Preconsolidation stress, not less than"],
  ["readings_07", "Readings of load 7"],
  ["a_name_of_a_firm", "a name of a firm"],
])("the label of %s is %s", (name, label) => {
  expect(labelOf(name)).toBe(label);
});
