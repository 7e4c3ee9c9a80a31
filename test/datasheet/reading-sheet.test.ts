/** The sheet to fill in by hand at the frame. */
import fc from "../properties";
import { readingSheet, type ReadingSheetOptions } from "../../src/datasheet/reading-sheet";
import { readRecord, type NamedValues } from "../../src/record/record";
import { HAND_TIMES } from "../../src/specification/readings";
import { checkPlan } from "../../src/workbook/rules/plan-check";
import type { CellValue, SheetPlan } from "../../src/workbook/port";

const column = (...cells: CellValue[]): CellValue[][] => cells.map((cell) => [cell]);
const START = 46_001.5;

const test12 = (count: number): NamedValues => ({
  stress_unit: column("kPa"),
  length_unit: column("mm"),
  diameter: column(63.5),
  lever_ratio: column(10),
  boring: column("BH-X1"),
  load_stress: column(...Array.from({ length: count }, (_, i) => 30.97 * 2 ** (i % 7))),
  load_started: column(START, 46_002),
  ...Object.fromEntries(
    Array.from({ length: count }, (_, i) => [`times_${String(i + 1).padStart(2, "0")}`, column(...HAND_TIMES, "", "")]),
  ),
  readings_01: column(400, 410),
});
const planOf = (values: NamedValues, options: Partial<ReadingSheetOptions> = {}): SheetPlan => {
  const plan = readingSheet(readRecord(values), values, { paper: "A4", sheet: "Test 1", ...options });
  if (!plan) throw new Error("no load to print");
  return plan;
};
const texts = ({ cells }: SheetPlan) => cells.map(({ value }) => value);

test("every load has its stress, the mass on the hanger and a box for every time; a time has its clock time if it is known", () => {
  const plan = planOf(test12(2));
  expect(texts(plan)).toEqual(expect.arrayContaining(["Load 1: 30.97 kPa", "Load 2: 61.94 kPa"]));
  // 1 kg on a beam of 10:1 gives 30.97 kPa over 63.5 mm, from first principles.
  expect(texts(plan)).toContain("On the hanger: 1.000 kg, cap and ball not counted");
  expect(texts(plan)).toEqual(expect.arrayContaining(["12:00:06", "12:04:00", "12:00:00 +1 d", 410]));
  expect(texts(plan).filter((value) => value === 1440)).toHaveLength(2);
  // The second load has a day, but no time of day.
  expect(texts(plan)).toContain("Applied on 2025-12-11 at ________");
});

test("an unknown value is a blank line, not a number", () => {
  const plan = planOf({ ...test12(1), lever_ratio: [], load_started: [] });
  expect(texts(plan)).toEqual(
    expect.arrayContaining(["On the hanger: ______ kg", "Applied on ____________ at ________"]),
  );
});

test.each(["A4", "Letter"] as const)(
  "four loads of the hand schedule fit on a page of %s, and every page has its head",
  (paper) => {
    const plan = planOf(test12(12), { paper });
    expect(plan.pages).toHaveLength(3);
    expect(texts(plan).filter((value) => value === "Readings of a consolidation test")).toHaveLength(3);
  },
);

test("a single load is printed on request; without a stress nothing is printed", () => {
  expect(texts(planOf(test12(5), { loads: [3] })).filter((value) => String(value).startsWith("Load "))).toEqual([
    "Load 3: 123.9 kPa",
  ]);
  const none = { ...test12(1), load_stress: column("") };
  expect(readingSheet(readRecord(none), none, { paper: "A4", sheet: "Test 1" })).toBeUndefined();
});

test("any number of loads gives a valid plan; its pages follow one another and leave nothing out", () =>
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 24 }), fc.constantFrom("A4" as const, "Letter" as const), (count, paper) => {
      const plan = planOf(test12(count), { paper });
      expect(() => checkPlan(plan)).not.toThrow();
      const pages = plan.pages ?? [];
      expect(pages.reduce((next, { row, rows }) => (expect(row).toBe(next), row + rows), 0)).toBe(plan.rows);
    }),
  ));
