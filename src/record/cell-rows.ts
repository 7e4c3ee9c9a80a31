/**
 * What a record knows of each cell of the data sheet, as plain data: the build of the worksheet functions runs this file
 * and bundles its values (`src/host/values-only.mjs`), so that the formulas and notes of the specification stay out.
 */
import { REQUIRED } from "../specification/required";
import { FIELDS_APART_FROM_READINGS } from "../specification/fields";
import { unitCellOf, type Measure } from "../specification/measures";
import { labelByName } from "./label-by-name";
import { LOAD_RESULTS, LOAD_WORDS, NUMBERS, REMARKS, RESULTS, WORDS } from "./names";

export type CellRow<N extends string = string> = readonly [
  name: N,
  /** Left out if it is the name in plain letters. */
  label?: string,
  /** "text" if it is left out. */
  measure?: Measure,
  choices?: readonly string[],
  /** The short names that sheets of an older version use instead of the choices. */
  alsoReads?: readonly string[],
];

/** Labels that say too little away from their place on the sheet. */
const ALONE: Readonly<Record<string, string>> = {
  laboratory: "Laboratory",
  sample_type: "Type of sample",
  sample_top: "Top of the sample",
  date_tested: "Date tested",
  date_checked: "Date checked",
  ring_mass: "Mass of the ring",
  specific_gravity_basis: "Specific gravity, measured or assumed",
  water_density: "Density of the water",
};

/** A label that begins with spaces continues the label above it: "Preconsolidation stress, not less than". */
const LABELS: ReadonlyMap<string, string> = (() => {
  const labels = new Map<string, string>();
  let above = "";
  for (const { name, label } of FIELDS_APART_FROM_READINGS) {
    const own = label.trim();
    if (!label.startsWith("  ")) above = own;
    labels.set(name, ALONE[name] ?? (label.startsWith("  ") ? `${above}, ${own}` : own));
  }
  return labels;
})();

/** The cells with a unit: a record reads them by the table of units, and not by their choices. */
const UNIT_CELLS = new Set<string | undefined>(FIELDS_APART_FROM_READINGS.map(({ measure }) => unitCellOf(measure)));

const FIELDS = new Map(FIELDS_APART_FROM_READINGS.map((field) => [field.name, field]));

const rowsOf = <N extends string>(names: readonly N[]): readonly CellRow<N>[] =>
  names.map((name): CellRow<N> => {
    const field = FIELDS.get(name);
    if (!field) throw new Error(`the data sheet has no cell ${name}`);
    const { measure, choices, alsoReads } = field;
    const own = LABELS.get(name) ?? "";
    const label = own === labelByName(name) ? "" : own;
    if (choices && !UNIT_CELLS.has(name))
      return alsoReads ? [name, label, measure, choices, alsoReads] : [name, label, measure, choices];
    if (measure !== "text") return [name, label, measure];
    return label === "" ? [name] : [name, label];
  });

const LISTED = new Set<string>([NUMBERS, WORDS, RESULTS, REMARKS, LOAD_RESULTS, LOAD_WORDS].flat());

/** Every cell and column of the sheet, but the readings of the loads. */
export const CELL_ROWS = {
  numbers: rowsOf(NUMBERS),
  words: rowsOf(WORDS),
  results: rowsOf(RESULTS),
  remarks: rowsOf(REMARKS),
  loadResults: rowsOf(LOAD_RESULTS),
  loadWords: rowsOf(LOAD_WORDS),
  others: rowsOf([...FIELDS.keys()].filter((name) => !LISTED.has(name))),
};

/** A cell that a report requires, or several of which one is enough; or a column that needs a value for each load. */
export type RequiredCell = readonly [string, ...string[]] | { readonly ofLoads: string };

/** What a report requires, in its order. */
export const REQUIRED_CELLS: readonly RequiredCell[] = REQUIRED.flatMap(({ needs, ofLoads = [] }): RequiredCell[] => [
  ...needs.flatMap((need): RequiredCell[] => {
    const [first, ...others] = typeof need === "string" ? [need] : need;
    return first === undefined ? [] : [[first, ...others]];
  }),
  ...ofLoads.map((name) => ({ ofLoads: name })),
]);
