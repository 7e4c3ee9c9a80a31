/** Sheets that grow and shrink: more loads, inserted rows or deleted rows, in the embedded workbook. */
import { english } from "../../src/reduction/message";
import "../workbook/embedded/engine-in-node";
import { blankSheet, checkSheet, CHECKED_NAMES, demoSheet, fillSheet } from "../../src/datasheet";
import { demoTest } from "../../src/datasheet/demo-test";
import { columnsFor, TARGET_NAMES, targetOf } from "../../src/exchange/logger/target";
import { readRecord } from "../../src/record/record";
import { LOAD_RESULTS, RESULTS } from "../../src/record/names";
import { PICK_TABLE } from "../../src/specification/pick-table";
import { toXlsx } from "../../src/datasheet/xlsx";
import { EmbeddedPort, newWorkbook } from "../../src/workbook/embedded";
import type { Box, SheetPlan } from "../../src/workbook/port";
import { opened } from "../workbook/embedded/opened";
import { haveRealFunctions } from "../workbook/embedded/real-functions";

beforeAll(haveRealFunctions);

async function open(plan: SheetPlan) {
  const { port, sheet } = await opened(plan);
  const sheetId = port.workbook.model.getters.getActiveSheetId();
  const dispatch = (type: string, payload: object) =>
    (port.workbook.model as any).dispatch(type, { sheetId, sheetName: sheet, dimension: "ROW", ...payload });
  return {
    port,
    sheet,
    putIn: (row: number, quantity = 1) => dispatch("ADD_COLUMNS_ROWS", { base: row, quantity, position: "before" }),
    takeOut: (first: number, count = 1, dimension: "ROW" | "COL" = "ROW") =>
      dispatch("REMOVE_COLUMNS_ROWS", {
        dimension,
        elements: Array.from({ length: count }, (_, index) => first + index),
      }),
    named: (names: readonly string[]) => port.readNames(sheet, names),
    findings: async () =>
      checkSheet(await port.listNames(sheet), await port.readNames(sheet, CHECKED_NAMES)).findings.map(({ sentence }) =>
        english(sentence),
      ),
    boxOfName: async (name: string) => (await port.listNames(sheet)).find((one) => one.name === name)!.place as Box,
  };
}

const LOADS = 30;
const { loads, readings, cells, columns } = demoTest("SI");

/**
 * The demonstration followed by small loops of unloading and reloading: each moves 150 divisions in the shape of load
 * 6.
 */
function longTest(): SheetPlan {
  const stresses = [...loads];
  const series = readings.map((values) => [...values]);
  const shape = readings[5].map((value) => (value - readings[5][0]) / (readings[5][14] - readings[5][0]));
  for (let load = loads.length + 1; load <= LOADS; load++) {
    const reloads = load % 2 === 1;
    const from = series[series.length - 1][14];
    stresses.push(reloads ? 100 : 50);
    series.push(shape.map((share) => Math.round(from + (reloads ? 150 : -150) * share)));
  }
  const named = series.map((values, index) => [`readings_${String(index + 1).padStart(2, "0")}`, values] as const);
  const { notice, ...typed } = cells;
  expect(notice).toBeDefined();
  return fillSheet(blankSheet("SI", { loads: LOADS, readingRows: 60 }), {
    ...typed,
    ...columns,
    load_stress: stresses,
    ...Object.fromEntries(named),
    pick_load: [29],
    pick_of: ["cv by"],
    pick_after: ["root time"],
    pick_reason: ["as agreed"],
    pick_by: ["XY"],
  });
}

describe("a sheet of 30 loads", () => {
  const plan = longTest();

  test("is calculated, read, checked and offered to a logger up to the last load", async () => {
    const { sheet, named, findings, port } = await open(plan);
    expect(await findings()).toEqual([]);
    const record = readRecord(await named(CHECKED_NAMES));
    expect([record.missing, record.faults]).toEqual([[], []]);
    expect(record.loads.map(({ number }) => number)).toEqual(Array.from({ length: LOADS }, (_, index) => index + 1));
    const last = record.loads[29];
    expect(last.readings).toHaveLength(15);
    expect(last.results.end_reading).toBe(readings[15][14]);
    // The shape is that of load 6, in steps of one division in 150.
    expect(last.results.log_t50! / record.loads[5].results.log_t50!).toBeCloseTo(1, 1);
    // Load 29 compresses the specimen, load 30 takes the load off again and has no cv.
    const reloaded = record.loads[28].results;
    expect(reloaded.cv_chosen).toBe(reloaded.cv_root_time);
    expect(reloaded.cv_chosen).toBeGreaterThan(0);
    expect(last.results.cv_chosen).toBeUndefined();
    expect(record.results.final_height).toBeCloseTo(last.results.height_end!, 9);
    expect(record.remarks.remarks_on_loads).toMatch(/\b30\b/);
    const whole = await open(demoSheet("SI"));
    const { preconsolidation_stress } = await whole.named(["preconsolidation_stress"]);
    expect(record.results.preconsolidation_stress).toBeCloseTo(preconsolidation_stress[0][0] as number, 9);

    const target = targetOf(await named(TARGET_NAMES));
    expect(target.loads).toHaveLength(LOADS);
    expect(target.loads[29]).toMatchObject({ stress: 50, held: 15 });
    await port.fillNames(sheet, columnsFor(target, [{ load: 30, times: [0, 1, 2], readings: [900, 901, 902] }]));
    expect((await named(["end_reading"])).end_reading[29]).toEqual([902]);
  });

  test("is kept completely in a file", async () => {
    const port = new EmbeddedPort(newWorkbook());
    const { sheets } = await port.insertFile(await toXlsx(plan));
    const values = await port.readNames(sheets[0], CHECKED_NAMES);
    expect(checkSheet(await port.listNames(sheets[0]), values).findings).toEqual([]);
    expect(readRecord(values).loads[28].results.cv_chosen).toBeGreaterThan(0);
  });

  test("names a load whose readings have lost their name", async () => {
    const { findings, port } = await open(plan);
    (port.workbook.model as any).dispatch("DELETE_NAMED_RANGE", { name: "readings_28" });
    // COUNT of a name that is missing is 0, and the results of a load without readings are blank; its remark asks how large they are.
    expect(await findings()).toEqual([
      expect.stringMatching(/^Readings of load 28 \(readings_28\) is missing\./),
      expect.stringMatching(/^1 result shows #NAME\?: .* or a name is missing\. Attach missing names/),
    ]);
  });

  test("names a load whose times have lost their name, and counts the results that show it", async () => {
    const { findings, port } = await open(plan);
    (port.workbook.model as any).dispatch("DELETE_NAMED_RANGE", { name: "times_28" });
    expect(await findings()).toEqual([
      expect.stringMatching(/\(times_28\) is missing\./),
      expect.stringMatching(/^2 results show #NAME\?: .* or a name is missing\. Attach missing names/),
    ]);
  });
});

test.each([0, 49, 2.5])("a sheet of %p loads is refused", (number) => {
  expect(() => blankSheet("SI", { loads: number })).toThrow(/1 to 48 loads/);
});

test("a sheet of a few loads is complete too, and prints what it has", () => {
  const plan = blankSheet("US", { loads: 6 });
  expect(plan.names.load_stress.rows).toBe(6);
  expect(plan.names.readings_06).toBeDefined();
  expect(plan.names.readings_07).toBeUndefined();
});

describe("inserted and deleted rows", () => {
  const filled = fillSheet(demoSheet("SI"), {
    pick_load: [6, 6, 7],
    pick_of: ["d100", "cv by", "tail_from"],
    pick_after: [2270, "root time", 480],
    pick_reason: ["a", "b", "c"],
    pick_by: ["XY", "XY", "XY"],
  });
  const results = [...RESULTS, ...LOAD_RESULTS, "load_method", "pick_remark", "remarks_on_loads"];
  /** The results apart from blanks and the order of rows: an inserted row is one more blank row. */
  const told = (values: Record<string, readonly (readonly unknown[])[]>) =>
    Object.fromEntries(Object.entries(values).map(([name, rows]) => [name, rows.flat().filter((cell) => cell !== "")]));

  /** One sheet for all insertions, one after another, with what it told before the first. */
  let grown: Awaited<ReturnType<typeof open>>;
  let before: ReturnType<typeof told>;
  beforeAll(async () => {
    grown = await open(filled);
    before = told(await grown.named(results));
  });

  test.each([
    ["the tins", "tin_mass", 1],
    ["the deflection table", "apparatus_stress", 4],
    ["the table of picks", "pick_load", 1],
    ["the load table", "load_stress", 5],
    ["the readings", "readings_06", 3],
    ["the page of remarks", "remarks_on_loads", 0],
    ["the results", "preconsolidation_stress", 0],
  ])("a row inserted into %s changes no result", async (_, name, down) => {
    const { putIn, named, boxOfName } = grown;
    const { row, rows } = await boxOfName(name);
    putIn(row + down, 2);
    expect(told(await named(results))).toEqual(before);
    expect((await boxOfName(name)).rows).toBe(down > 0 ? rows + 2 : rows);
  });

  test("a pick typed into an inserted row counts", async () => {
    const { putIn, named, boxOfName, port, sheet } = await open(filled);
    putIn((await boxOfName("pick_load")).row + 1);
    await port.protect(sheet, false);
    await port.fillNames(sheet, {
      pick_load: [null, 5],
      pick_of: [null, "cv by"],
      pick_after: [null, "root time"],
    });
    expect((await named(["load_method"])).load_method[4]).toEqual(["root time"]);
  });

  test("unused rows deleted from the tables change no result", async () => {
    const { takeOut, named, boxOfName, findings } = await open(filled);
    for (const [name, from, rows] of [
      ["pick_load", 20, 8],
      ["apparatus_stress", 11, 1],
      ["load_stress", 20, 2],
      ["readings_06", 18, 4],
    ] as const)
      takeOut((await boxOfName(name)).row + from, rows);
    expect(told(await named(results))).toEqual(before);
    expect(await findings()).toEqual([]);
  });

  test("if the columns of the picks are deleted, the readings decide, and the check says what is missing", async () => {
    const { takeOut, named, boxOfName, findings } = await open(filled);
    takeOut((await boxOfName("pick_load")).col, PICK_TABLE.columns.length, "COL");
    const curve = ["log_d100", "root_d90", "load_method", "cv_chosen", "load_remark"];
    const bare = await open(demoSheet("SI"));
    expect(await named(curve)).toEqual(await bare.named(curve));
    expect(await findings()).toContainEqual(expect.stringContaining("(pick_load)"));
  });
});
