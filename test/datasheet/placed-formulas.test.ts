/**
 * A sheet in another layout, calculated with the formulas that its names get, shows the results of the demonstration.
 */
import { demoSheet } from "../../src/datasheet";
import { FIELDS } from "../../src/specification/fields";
import { loadSuffix } from "../../src/specification/readings";
import { neededFirst, NAMES_WITH_FORMULAS, placedFormulas, spillOf } from "../../src/specification/placed-formulas";
import { addressInList, cellOfList, lengthOf } from "../../src/workbook/lists";
import type { Box, CellPlan, SheetPlan } from "../../src/workbook/port";
import { calculate } from "./sheet-in-engine";

const DEMO = demoSheet("SI");
const LOADS_OF_FIRM = 18;

/** The input of the demonstration in the cell of a name, `index` rows below its first cell. */
const typedInto = (name: string): (CellPlan["value"] | undefined)[] => {
  const box = DEMO.names[name]!;
  const cells = new Map(DEMO.cells.filter(({ col }) => col === box.col).map((cell) => [cell.row, cell]));
  return Array.from({ length: box.rows }, (_, index) => cells.get(box.row + index)?.value);
};

const COLUMN_OF_LOADS = (name: string): boolean =>
  name === "load_number" || DEMO.names[name]?.row === DEMO.names.load_number!.row;

/** Whether the tables of the firm lie as those of the data sheet do, or on their side. */
type Lies = "down" | "across";

/** The cells of a table with the rows of each list as columns. */
const onItsSide = (name: string, box: Box): Box =>
  spillOf(name) || box.rows === 1 ? box : { row: box.col, col: box.row, rows: 1, cols: box.rows };

/**
 * The names in another order and in other cells: single cells in one column, the table of loads backwards, the readings
 * to the right.
 */
function otherPlaces(without: ReadonlySet<string>, lies: Lies): Map<string, Box> {
  const places = new Map<string, Box>();
  const names = ["load_number", ...FIELDS.map(({ name }) => name)].filter((name) => name in DEMO.names);
  let [row, tableCol, readingsCol] = [2, 120, 130];
  for (const name of names) {
    if (without.has(name)) continue;
    const box = DEMO.names[name]!;
    const series = /^(times|readings)_(\d\d)$/.exec(name);
    if (series) {
      if (Number(series[2]) <= LOADS_OF_FIRM) places.set(name, { row: 5, col: readingsCol++, rows: 60, cols: 1 });
    } else if (COLUMN_OF_LOADS(name)) places.set(name, { row: 8, col: tableCol--, rows: LOADS_OF_FIRM, cols: 1 });
    else {
      places.set(name, { row, col: 3, rows: box.rows, cols: box.cols });
      row += box.rows + 1;
    }
  }
  if (lies === "down") return places;
  // The single cells stand in the first columns; the lists on their side begin far to the right of them and below.
  return new Map(
    [...places].map(([name, box]) => [name, onItsSide(name, { ...box, row: box.row + 300, col: box.col + 300 })]),
  );
}

function firmSheet(
  without: readonly string[] = [],
  lies: Lies = "down",
): { plan: SheetPlan; lacks: Record<string, readonly string[]> } {
  const places = otherPlaces(new Set(without), lies);
  const cells: CellPlan[] = [];
  const lacks: Record<string, readonly string[]> = {};
  for (const [name, box] of places) {
    const placed = placedFormulas(name, { places });
    if (placed && placed.lacks.length > 0) lacks[name] = placed.lacks;
    if (placed) placed.cells.forEach((cell) => cells.push({ ...cell, kind: "result" }));
    else
      typedInto(name)
        .slice(0, lengthOf(box))
        .forEach((value, index) => {
          if (value !== undefined) cells.push({ ...cellOfList(box, index), kind: "input", value });
        });
  }
  return {
    lacks,
    plan: {
      ...DEMO,
      cells,
      names: Object.fromEntries(places),
      rows: 1300,
      cols: 1300,
      merges: [],
      entries: [],
      pages: [],
      charts: [],
    },
  };
}

const RESULTS = NAMES_WITH_FORMULAS.filter((name) => name in DEMO.names);

test.each(["down", "across"] as const)(
  "all results of the demonstration are the same in another layout whose tables lie %s",
  async (lies) => {
    const { plan, lacks } = firmSheet([], lies);
    expect(lacks).toEqual({});
    const [firm, demo] = [await calculate(plan), await calculate(DEMO)];

    const differ: unknown[] = [];
    for (const name of RESULTS) {
      const [own, box] = [DEMO.names[name]!, plan.names[name]!];
      const length = Math.min(own.rows, lengthOf(box));
      const of = (sheet: typeof firm, from: Box) =>
        Array.from({ length }, (_, index) => sheet.values.get(addressInList(from, index)) ?? "");
      if (JSON.stringify(of(firm, box)) !== JSON.stringify(of(demo, own)))
        differ.push([name, of(firm, box), of(demo, own)]);
    }
    expect(differ).toEqual([]);
  },
);

test("in a table on its side, the head of the sheet names the cell that is impossible", async () => {
  const { plan } = firmSheet([], "across");
  const at = plan.names.load_stress!;
  const cells = plan.cells.map((cell) =>
    cell.row === at.row && cell.col === at.col + 4 ? { ...cell, value: -5 } : cell,
  );
  const sheet = await calculate({ ...plan, cells });
  const said = String(sheet.values.get(addressInList(plan.names.missing_in_full!, 0)));
  expect(said).toContain(`${addressInList(at, 4)}: enter a number greater than 0`);
});

test("an input that a test can do without counts as blank if the sheet has no cell for it", async () => {
  const without = ["pore_salt", "salt_mass", "test_temperature", "water_density", "pick_load", "pick_of", "pick_after"];
  const more = ["time_method", "time_procedure", "curve_from", "final_height_measured", "load_mark", "seating_mark"];
  const gone = [
    "final_height_difference",
    "pick_remark",
    "water_content_initial_weighed",
    "water_content_final_weighed",
  ];
  const { plan, lacks } = firmSheet([...without, ...more, ...gone]);
  expect(lacks).toEqual({});
  const [firm, demo] = [await calculate(plan), await calculate(DEMO)];
  expect(firm.errors.filter((error) => /#NAME|#BAD/.test(error))).toEqual([]);
  for (const name of ["preconsolidation_stress", "compression_index", "cv_chosen", "void_ratio_final", "quality_class"])
    expect([name, firm.value(name, 0)]).toEqual([name, demo.value(name, 0)]);
});

test("a formula waits for the names that it needs, and lists them", () => {
  const places = new Map<string, Box>([["void_ratio_initial", { row: 0, col: 0, rows: 1, cols: 1 }]]);
  expect(placedFormulas("void_ratio_initial", { places })).toEqual({
    cells: [],
    lacks: ["solids_height", "initial_height"],
  });
  expect(neededFirst("void_ratio_initial", { places })).toEqual(
    expect.arrayContaining(["solids_height", "initial_height", "dry_mass", "ring_mass", "diameter"]),
  );
  expect(placedFormulas("ring_mass", { places })).toBeUndefined();
  expect(placedFormulas("dry_mass", { places })).toBeUndefined();
});

test("a table that spills fills its rows and columns from the selected cell on", () => {
  expect(spillOf("preconsolidation_spread")).toEqual({ rows: 12, cols: 3 });
  expect(spillOf("dry_mass")).toBeUndefined();
});

test("rows of loads that have readings get formulas, each with the readings of its own load", () => {
  const { plan } = firmSheet();
  const places = new Map(Object.entries(plan.names));
  const layout = { places, loadNumbers: [3, 2, 1, ...Array.from({ length: 15 }, (_, index) => index + 40)] };
  const cells = placedFormulas("end_reading", layout)!.cells;
  expect(cells.map(({ formula }) => /readings_(\d\d)/.exec(formula)?.[1])).toEqual([3, 2, 1].map(loadSuffix));
});
