/** The charts of a project, calculated: void index with the intrinsic line, Cc against water content and liquid limit. */
import "../workbook/embedded/engine-in-node";
import { demoSheet, fillSheet } from "../../src/datasheet";
import { boxesByName } from "../../src/record/places";
import { readRecord, RECORD_NAMES } from "../../src/record/record";
import { chartsSheet, CURVE_NAMES, VOID_INDEX_NAMES, type Curve } from "../../src/summary/charts";
import { COLUMN_NAMES, NEEDED_NAMES, SUMMARY_UNITS } from "../../src/summary/columns";
import { summarySheet, UNIT_NAMES } from "../../src/summary/summary-sheet";
import { update } from "../../src/summary/update";
import { EmbeddedPort, newWorkbook } from "../../src/workbook/embedded";
import type { Box } from "../../src/workbook/port";
import { boxAddress } from "../../src/workbook/address";
import { registerRealFunctions } from "../workbook/embedded/real-functions";

let port: EmbeddedPort;
beforeAll(() => registerRealFunctions({ blankAs: null }));
beforeEach(() => {
  port = new EmbeddedPort(newWorkbook());
});

async function drawn(hasVoidIndex = true) {
  await port.insertSheet(
    fillSheet(demoSheet("SI"), { adopted_value: [undefined, 0.6], adopted_by: [undefined, "NN"] }),
  );
  const summary = await port.insertSheet(summarySheet("US"));
  const [found] = (await port.findSheets([...NEEDED_NAMES, ...CURVE_NAMES, ...VOID_INDEX_NAMES])).filter(({ has }) =>
    has.includes("times_01"),
  );
  const [looked] = await port.lookAt([{ sheet: found!.sheet, values: RECORD_NAMES }]);
  const record = readRecord(looked!.values);
  const [standing] = await port.lookAt([{ sheet: summary, values: UNIT_NAMES, contents: COLUMN_NAMES, names: true }]);
  const done = update(
    { names: standing!.names!, values: standing!.values, contents: standing!.contents, filled: new Set() },
    [{ sheet: found!.sheet, record, has: new Set(found!.has), beside: { open: 0, day: 46_000 } }],
    [],
  );
  await port.writeCells(summary, done.fresh);
  const shown = await port.readNames(summary, COLUMN_NAMES);
  const curve: Curve = { sheet: found!.sheet, record, called: "BH-X1 U7 a", hasVoidIndex };
  const numbers = (name: string) =>
    (shown[name] ?? []).flatMap(([value]) => (typeof value === "number" ? [value] : []));
  const { plan, cells } = chartsSheet(
    { sheet: summary, boxes: boxesByName(standing!.names!), rows: [0] },
    [curve],
    numbers,
    SUMMARY_UNITS.US,
  );
  const sheet = await port.insertSheet(plan);
  await port.writeCells(sheet, cells);
  const at = async (box: Box) =>
    (await port.values(sheet, boxAddress(box).replaceAll("$", ""))).map(([value]) => value);
  const seriesOf = async (title: string, name: string) => {
    const series = plan.charts!.find((chart) => chart.title === title)?.series.find((one) => one.name === name);
    return series && { x: await at(series.x.box), y: await at(series.y.box) };
  };
  return { plan, record, shown, seriesOf };
}

test("the curves in void index stand beside the intrinsic line, in the unit of the summary", async () => {
  const { record, seriesOf } = await drawn();
  const title = "Compression curves in void index";
  const curve = await seriesOf(title, "BH-X1 U7 a");
  const { intrinsic_void_ratio: e100, intrinsic_index: Cc } = record.results;
  const [load] = record.loads;
  expect(curve!.y[0]).toBeCloseTo((load!.results.void_ratio_end! - e100!) / Cc!, 9);
  const line = await seriesOf(title, "intrinsic line");
  expect(Number(line!.x[0])).toBeCloseTo(10 / 95.76, 4);
  // Burland (1990), constants read second hand: 1.18 at 10 kPa.
  expect(Number(line!.y[0])).toBeCloseTo(1.18, 2);
  expect((await seriesOf(title, "sedimentation line"))!.y).toHaveLength(line!.y.length);
});

test("Cc is drawn against the initial water content and against the liquid limit, as adopted, and the summary names it", async () => {
  const { shown, record, seriesOf } = await drawn();
  const [byWater, byLimit] = [
    await seriesOf("Cc against initial water content", "Cc by w0"),
    await seriesOf("Cc against liquid limit", "Cc by liquid limit"),
  ];
  expect([byWater!.x[0], byWater!.y[0]]).toEqual([expect.closeTo(record.results.water_content_initial!, 9), 0.6]);
  expect([byLimit!.x[0], byLimit!.y[0]]).toEqual([0.62, 0.6]);
  expect(shown.summary_adopted![0]![0]).toBe("Compression index Cc; ");
});

test("a sheet without the names of the void index has no line in that chart", async () => {
  const { seriesOf } = await drawn(false);
  const curve = await seriesOf("Compression curves in void index", "BH-X1 U7 a");
  expect(new Set(curve!.y)).toEqual(new Set(["#N/A"]));
});
