import fc from "../../../../properties";
import { PICK_COLUMNS } from "../../../../../src/record/picks";
import {
  cellsOfChanges,
  cellsWithout,
  lastChange,
  changesOf,
  dayNumber,
  freeRows,
  looksLikeFormula,
  methodWith,
  NONE,
  picksWith,
  sameRows,
  savedOf,
  tableOf,
  withPick,
  type Change,
  type Draft,
} from "../../../../../src/pane/screens/review/picks/pick-changes";
import { OF_CURVE } from "../../../../../src/reduction/curve/picks";
import { AUTOMATIC, METHOD_PICK, PICK_NAMES } from "../../../../../src/reduction/increment/constructions/picks";
import type { CellValue, NamedColumns } from "../../../../../src/workbook/port";

type Columns = Record<string, CellValue[][]>;

const ROWS = 5;
const blank = (): Columns =>
  Object.fromEntries(PICK_COLUMNS.map((name) => [name, Array.from({ length: ROWS }, () => [""])]));

/** Fills named columns as a workbook does: null leaves a cell unchanged. */
function filled(columns: Columns, cells: NamedColumns): Columns {
  return Object.fromEntries(
    Object.entries(columns).map(([name, rows]) => [name, rows.map(([cell], index) => [cells[name]?.[index] ?? cell])]),
  );
}

const SIGNED = { reason: "bedding", by: "AB", when: dayNumber(new Date(2026, 10, 25, 12, 30)) };
const add = (columns: Columns, load: number, ...changes: Change[]): Columns =>
  filled(columns, cellsOfChanges(tableOf(columns), load, changes, SIGNED));

test("a change is added below the last row, and is read back with reason, initials and time", () => {
  const once = add(blank(), 3, { of: "d0", before: 12.5, after: 14 });
  const twice = add(once, 4, { of: "cv by", before: "log time", after: "root time" });
  expect(tableOf(twice).rows).toEqual([
    expect.objectContaining({ row: 1, load: 3, of: "d0", before: 12.5, after: 14, reason: "bedding", by: "AB" }),
    expect.objectContaining({ row: 2, load: 4, of: "cv by", before: "log time", after: "root time" }),
  ]);
  expect(tableOf(twice).rows[0].when).toBe("2026-11-25 12:30");
  expect(freeRows(tableOf(twice))).toBe(ROWS - 2);
});

test("rows that no record can read are not overwritten either", () => {
  const columns = blank();
  columns.pick_load[3] = ["see note"];
  const { pick_load: loads } = cellsOfChanges(tableOf(columns), 1, [{ of: "d0", before: 1, after: 2 }], SIGNED);
  expect(loads).toEqual([null, null, null, null, 1]);
});

test("the last row of a load and pick counts; automatic cancels earlier rows", () => {
  let columns = add(blank(), 3, { of: "d0", before: 12.5, after: 14 });
  columns = add(columns, 3, { of: "d100", before: 120, after: 118 }, { of: "d0", before: 14, after: 13 });
  expect(savedOf(tableOf(columns).rows, 3)).toEqual({
    picks: { d0: 13, d100: 118 },
    method: undefined,
    standing: new Set([2, 3]),
  });
  expect(savedOf(tableOf(columns).rows, 2).picks).toEqual({});
  columns = add(columns, 3, { of: "d0", before: 13, after: AUTOMATIC });
  expect(savedOf(tableOf(columns).rows, 3).picks).toEqual({ d100: 118 });
});

test("a method chosen for one load is distinguished from that of the test", () => {
  const columns = add(blank(), 3, { of: "cv by", before: "log time", after: "root time" });
  const [saved, other] = [3, 2].map((load) => savedOf(tableOf(columns).rows, load));
  expect([saved.method, other.method]).toEqual(["root time", undefined]);
  expect(methodWith(saved, {}, "log time")).toBe("root time");
  expect(methodWith(saved, { "cv by": AUTOMATIC }, "log time")).toBe("log time");
  expect(methodWith(other, {}, "log time")).toBe("log time");
});

test("a pick of the compression curve is kept under its words, apart from the picks of loads", () => {
  const columns = filled(
    add(blank(), 3, { of: "d0", before: 1, after: 2 }),
    cellsOfChanges(
      tableOf(add(blank(), 3, { of: "d0", before: 1, after: 2 })),
      "curve",
      [
        { of: "virgin_from", before: 200, after: 400 },
        { of: "greatest_curvature", before: 95.5, after: 90 },
      ],
      SIGNED,
    ),
  );
  expect(columns.pick_load.flat().slice(0, 3)).toEqual([3, "curve", "curve"]);
  expect(columns.pick_of.flat().slice(1, 3)).toEqual(["virgin from", "greatest curvature"]);
  const { rows } = tableOf(columns);
  expect(savedOf(rows, "curve")).toEqual({
    picks: { virgin_from: 400, greatest_curvature: 90 },
    method: undefined,
    standing: new Set([2, 3]),
  });
  expect(savedOf(rows, 3).picks).toEqual({ d0: 2 });
  expect(lastChange(rows).map(({ row }) => row)).toEqual([2, 3]);
});

test("cancelling a row clears that row and leaves every other cell", () => {
  const changes = fc.record({
    of: fc.constantFrom(...PICK_NAMES),
    before: fc.integer({ min: 1, max: 99 }),
    after: fc.integer({ min: 1, max: 99 }),
  });
  fc.assert(
    fc.property(fc.array(changes, { minLength: 1, maxLength: ROWS }), (list) => {
      const before = list.slice(0, -1).reduce((columns, change) => add(columns, 1, change), blank());
      const after = add(before, 1, list[list.length - 1]);
      expect(filled(after, cellsWithout(list.length))).toEqual(before);
    }),
  );
});

test("the last change consists of the rows saved together: same load, person, time and reason, no pick twice", () => {
  const row = (number: number, of: string, more = {}) => ({
    row: number,
    load: 2,
    of,
    after: 1,
    reason: "bend",
    by: "EF",
    when: "2026-03-01 14:05",
    ...more,
  });
  const last = (...rows: ReturnType<typeof row>[]) => lastChange(rows).map((one) => one.row);
  expect(last()).toEqual([]);
  expect(last(row(1, "d0"), row(2, "tail_from"), row(3, "tail_to"))).toEqual([1, 2, 3]);
  expect(last(row(1, "d0"), row(2, "d0"))).toEqual([2]);
  expect(last(row(1, "d0"), row(3, "d100"))).toEqual([3]);
  for (const other of [{ load: 3 }, { by: "CD" }, { reason: "other" }, { when: "2026-03-01 14:06" }])
    expect(last(row(1, "d0", other), row(2, "d100"))).toEqual([2]);
  expect(last(row(1, "d0", { by: undefined }), row(2, "d100", { by: undefined }))).toEqual([2]);
});

test("a draft is the difference from the sheet: restoring a pick leaves nothing to save", () => {
  const saved = savedOf(tableOf(add(blank(), 1, { of: "d0", before: 1, after: 2 })).rows, 1);
  const draft = withPick(withPick({}, saved, "d100", 50), saved, "d0", AUTOMATIC);
  expect(draft).toEqual({ d100: 50, d0: AUTOMATIC });
  expect(picksWith(saved, draft)).toEqual({ d100: 50 });
  expect(withPick(draft, saved, "d0", 2)).toEqual({ d100: 50 });
  expect(withPick(draft, saved, "d100", AUTOMATIC)).toEqual({ d0: AUTOMATIC });
  expect(withPick(draft, saved, "d100", undefined)).toEqual({ d0: AUTOMATIC });
});

test("a change says what counted before, or that nothing did", () => {
  const draft: Draft = { d100: 50, d90: 40, "cv by": "root time" };
  const now = { d100: 49.5, "cv by": "log time" } as Record<string, number | string>;
  expect(changesOf(draft, (of) => now[of])).toEqual([
    { of: "d100", before: 49.5, after: 50 },
    { of: "d90", before: "none", after: 40 },
    { of: "cv by", before: "log time", after: "root time" },
  ]);
});

test("a sheet without one of the columns names it", () => {
  const columns = blank();
  delete columns.pick_reason;
  expect(tableOf(columns).missing).toEqual(["pick_reason"]);
  expect(tableOf({}).missing).toEqual(PICK_COLUMNS);
  expect(tableOf({})).toMatchObject({ rows: [], capacity: 0, lastUsed: 0 });
});

test("a table that was changed in between is noticed", () => {
  const seen = tableOf(add(blank(), 1, { of: "d0", before: 1, after: 2 }));
  const now = add(blank(), 1, { of: "d0", before: 1, after: 3 });
  expect(sameRows(seen, tableOf(now))).toBe(false);
  expect(sameRows(seen, tableOf(add(blank(), 1, { of: "d0", before: 1, after: 2 })))).toBe(true);
});

test("a moment is the day number of local time, to the minute", () => {
  // 2026-11-25 is day 46351 in the calendar of spreadsheets, counted from 1899-12-30.
  expect(dayNumber(new Date(2026, 10, 25, 12, 30, 20))).toBeCloseTo(46_351 + 12.5 / 24, 9);
  expect(dayNumber(new Date(1899, 11, 31, 6))).toBeCloseTo(1.25, 9);
});

test.each(["=1+1", " +49", "-", "@x"])("%s would become a formula", (text) =>
  expect(looksLikeFormula(text)).toBe(true),
);
test("a sentence would not become a formula", () => expect(looksLikeFormula("bedding error - dial = 0")).toBe(false));

test("on a German sheet a change is written in German words, and read back as the same change", () => {
  const german = { ...blank(), sheet_language: [["Deutsch"]] };
  const written = cellsOfChanges(
    tableOf(german),
    OF_CURVE,
    [
      { of: "virgin_from", before: NONE, after: 200 },
      { of: METHOD_PICK, before: "log time", after: "root time" },
      { of: "virgin_to", before: 800, after: AUTOMATIC },
    ],
    SIGNED,
  );
  expect(written).toMatchObject({
    pick_load: ["Kurve", "Kurve", "Kurve"],
    pick_of: ["Erstbelastung ab", "cv nach", "Erstbelastung bis"],
    pick_before: ["keines", "log t", 800],
    pick_after: [200, "Wurzel t", "automatisch"],
  });
  expect(tableOf(filled(german, written)).rows).toMatchObject([
    { load: OF_CURVE, of: "virgin_from", before: NONE, after: 200 },
    { load: OF_CURVE, of: METHOD_PICK, before: "log time", after: "root time" },
    { load: OF_CURVE, of: "virgin_to", before: 800, after: AUTOMATIC },
  ]);
});
