import { blankSheet, demoSheet } from "../../../src/datasheet";
import {
  columnsFor,
  inputChanges,
  misreading,
  TARGET_NAMES,
  targetOf,
  type InputChange,
} from "../../../src/exchange/logger/target";
import type { Layout } from "../../../src/exchange/logger/layout";
import type { CellValue, SheetPlan } from "../../../src/workbook/port";

/** The constants of a plan, as readNames gives them. */
function namesOf(plan: SheetPlan): Record<string, CellValue[][]> {
  const at = new Map(plan.cells.map((cell) => [`${cell.row},${cell.col}`, cell.value ?? ""]));
  return Object.fromEntries(
    TARGET_NAMES.filter((name) => name in plan.names).map((name) => {
      const { row, col, rows } = plan.names[name];
      return [name, Array.from({ length: rows }, (_, index) => [at.get(`${row + index},${col}`) ?? ""])];
    }),
  );
}

const LAYOUT = { readingUnit: "mm", sense: "fall" } as Layout;

test("a blank sheet has room for 24 loads, its time schedule counts as no readings, and its units are read", () => {
  const target = targetOf(namesOf(blankSheet("US")));
  expect(target.loads).toHaveLength(24);
  expect(target.loads.every(({ held, stress }) => held === 0 && stress === undefined)).toBe(true);
  expect(target).toMatchObject({
    room: blankSheet("US").names.times_01.rows,
    lengthUnit: "in",
    stressUnit: "tsf",
    dialFactor: "",
  });
});

test("a filled sheet reports its readings; its diameter is given in mm", () => {
  const target = targetOf(namesOf(demoSheet("US")));
  expect(target.loads[0]).toMatchObject({ held: 15, stress: 0.125 });
  expect(target.diameter).toBeCloseTo(63.5, 1);
});

test("the cells that must change for the file are reported, not changed", () => {
  const target = targetOf(namesOf(blankSheet("US")));
  expect(inputChanges(target, LAYOUT, 1.25)).toEqual(
    [
      { name: "dial_factor", now: "", wanted: 1 / 25.4 },
      { name: "dial_sense", now: "rise", wanted: "fall" },
      { name: "zero_reading", now: "", wanted: 1.25 },
    ].map((change) => ({
      ...change,
      wanted: typeof change.wanted === "number" ? expect.closeTo(change.wanted, 12) : change.wanted,
    })),
  );
  expect(inputChanges(target, { ...LAYOUT, readingUnit: "div", sense: "rise" })).toEqual([]);
});

test("divisions of a dial under a dial factor of a whole millimetre or inch are asked about; 0.002 mm or 0.0001 in may stand", () => {
  const divisions = { ...LAYOUT, readingUnit: "div", sense: "rise" } as Layout;
  const under = (dialFactor: number, lengthUnit: string) =>
    inputChanges({ ...targetOf(namesOf(blankSheet("SI"))), dialFactor, lengthUnit }, divisions);
  expect(under(1, "mm")).toEqual([{ name: "dial_factor", now: 1, wanted: "" }]);
  expect(under(1, "in")).toEqual([{ name: "dial_factor", now: 1, wanted: "" }]);
  expect([under(0.01, "mm"), under(0.002, "mm"), under(0.001, "in"), under(0.0001, "in")]).toEqual([[], [], [], []]);
});

test("on a German sheet the sense of the readings is read and written in German", () => {
  const target = targetOf(namesOf(blankSheet("SI", { language: "de" })));
  const changes = inputChanges(target, LAYOUT);
  expect(changes).toContainEqual({ name: "dial_sense", now: "rise", wanted: "fall" });
  expect(columnsFor(target, [], changes).dial_sense).toEqual(["fällt"]);
  expect(inputChanges(target, { ...LAYOUT, readingUnit: "div", sense: "rise" })).toEqual([]);
});

test("the columns of a load replace everything that they held; stresses are written only where the sheet has none", () => {
  const target = targetOf(namesOf(demoSheet("SI")));
  const blank = { ...target, loads: target.loads.map((load, index) => (index === 2 ? { held: 0, used: 0 } : load)) };
  const columns = columnsFor(blank, [
    { load: 1, times: [0, 1], readings: [5, 6], stress: 12.4 },
    { load: 3, times: [0], readings: [7], stress: 50.123456789 },
  ]);
  expect(Object.keys(columns).sort()).toEqual(["load_stress", "readings_01", "readings_03", "times_01", "times_03"]);
  // The rest of a longer series that stood below is cleared.
  expect(columns.times_01).toEqual([0, 1, ...Array(13).fill("")]);
  expect(columns.readings_01).toEqual([5, 6, ...Array(13).fill("")]);
  expect(columns.readings_03).toEqual([7]);
  expect(columns.load_stress).toEqual([null, null, 50.1235]);
});

test("a row put into the load table moves the loads below it: stresses are read and written beside their load number", () => {
  const found = namesOf(demoSheet("SI"));
  const moved = (name: string) => [...found[name].slice(0, 2), [""], ...found[name].slice(2)];
  const target = targetOf({ ...found, load_number: moved("load_number"), load_stress: moved("load_stress") });
  expect(target.loads.slice(0, 4).map(({ stress }) => stress)).toEqual([12.5, 25, 50, 100]);
  const { load_stress } = columnsFor(target, [{ load: 17, times: [0], readings: [7], stress: 75 }]);
  expect(load_stress).toEqual([...Array(17).fill(null), 75]);
});

test.each<[string, InputChange, ReturnType<typeof misreading>]>([
  [
    "lengths in mm under a dial of 0.002 mm",
    { name: "dial_factor", now: 0.002, wanted: 1 },
    { what: "too small", times: 500 },
  ],
  [
    "lengths in mm on a sheet in inches",
    { name: "dial_factor", now: 1, wanted: 0.04 },
    { what: "too large", times: 25 },
  ],
  ["another zero reading", { name: "zero_reading", now: 400, wanted: 412.5 }, { what: "shifted", by: 12.5 }],
  ["the other direction", { name: "dial_sense", now: "rise", wanted: "fall" }, { what: "turned round" }],
  ["divisions, whose length no file shows", { name: "dial_factor", now: 1, wanted: "" }, undefined],
  ["a blank cell", { name: "dial_factor", now: "", wanted: 1 }, undefined],
])("%s: the misreading of a cell that is kept", (_, change, expected) => expect(misreading(change)).toEqual(expected));
