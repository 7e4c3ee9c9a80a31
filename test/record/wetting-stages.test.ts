/** A test with two stages of wetting: each has its plot, its figure and line in the report, its line in AGS4 and in the calculation book. */
import "../workbook/embedded/engine-in-node";
import { calculationBook } from "../../src/book/calculation-book";
import { blankSheet, fillSheet } from "../../src/datasheet";
import { demoTest } from "../../src/datasheet/demo-test";
import { toAgs4 } from "../../src/exchange/ags4";
import { chartOfSheet } from "../../src/pane/screens/plots/native-chart";
import { drawSheet, SHEET_CHOICES, stageDrawn, stagesOf } from "../../src/pane/screens/plots/sheet-drawing";
import type { PlotSpec } from "../../src/plots/spec";
import { readRecord, RECORD_NAMES, type TestRecord } from "../../src/record/record";
import { wettingRate, wettingStage } from "../../src/record/wetting";
import { reportSheet } from "../../src/report/report";
import { chartsSheet, seriesOf, type DataSheet } from "../../src/report/charts/series";
import { english } from "../../src/reduction/message";
import type { Outcome } from "../../src/reduction/outcome";
import { EmbeddedPort, newWorkbook } from "../../src/workbook/embedded";
import type { CellValue } from "../../src/workbook/port";
import { registerRealFunctions } from "../workbook/embedded/real-functions";

const must = <T>(outcome: Outcome<T>): T => {
  if (!outcome.ok) throw new Error(english(outcome.reason));
  return outcome.value;
};
const refusal = (outcome: Outcome<unknown>): string => (outcome.ok ? "" : english(outcome.reason));

const TIMES = [0, 1, 2, 4, 8, 15, 30, 60, 120, 240, 480, 1440, 2880];
/** Collapse by so many mm, then 0.02 mm per log cycle of time. The dial falls on compression. */
const collapsing = (from: number, by: number): number[] =>
  TIMES.map((t) => (t === 0 ? from : from - by * (1 - Math.exp(-t / 40)) - 0.02 * Math.max(0, Math.log10(t / 60))));
const FIRST = collapsing(4.8, 0.4);
const SECOND = collapsing(4.1, 1);
/** mm: the ring is 20 mm high, and the dial read 5 at the start. */
const heightAt = (reading: number): number => 15 + reading;
const STRAINS = {
  3: (4.8 - FIRST.at(-1)!) / heightAt(4.8),
  5: (4.1 - SECOND.at(-1)!) / heightAt(4.1),
} as const;

let port: EmbeddedPort;
let data: DataSheet;
let record: TestRecord;
beforeAll(async () => {
  await registerRealFunctions({ blankAs: null });
  port = new EmbeddedPort(newWorkbook());
  const { ring_mass, ring_and_dry, specific_gravity } = demoTest("SI").cells;
  const loads = [[4.9], [4.8], FIRST, [4.1], SECOND];
  const sheet = await port.insertSheet(
    fillSheet(blankSheet("SI", { loads: 8, readingRows: 30 }), {
      ...{ diameter: 71.4, initial_height: 20, ring_mass, ring_and_dry, specific_gravity },
      ...{ dial_factor: 1, dial_sense: "fall", zero_reading: 5, seating_stress: 5 },
      ...{ boring: "B1", sample: "S1", specimen: "a", depth: 3, sample_top: 3, sample_type: "U", job_number: "J" },
      load_stress: [50, 100, 100, 200, 200],
      load_mark: [undefined, undefined, "wetting", undefined, "wetting"],
      ...Object.fromEntries(
        loads.flatMap((readings, index) => [
          [`times_0${index + 1}`, readings.length === 1 ? [1440] : TIMES],
          [`readings_0${index + 1}`, readings],
        ]),
      ),
    }),
  );
  data = { sheet, names: await port.listNames(sheet), values: await port.readNames(sheet, RECORD_NAMES) };
  record = readRecord(data.values);
});

/** The values of a sheet, row by row. */
function valuesOf(sheet: string): CellValue[][] {
  const { getters } = port.workbook.model;
  const sheetId = getters.getSheetIdByName(sheet)!;
  const { bottom, right } = getters.getSheetZone(sheetId);
  return Array.from({ length: bottom + 1 }, (_, row) =>
    Array.from(
      { length: right + 1 },
      // The engine's type of a value also has the blank cell, which is null like ours.
      (__, col) => getters.getEvaluatedCell({ sheetId, row, col }).value as CellValue,
    ),
  );
}

const drawn = (stage?: number): PlotSpec => must(drawSheet(record, { ...SHEET_CHOICES, plot: "swell", stage }));

test("the plot draws the stage of the results, or the stage that is chosen, with its own rate", () => {
  expect(stagesOf(record).map(({ number }) => number)).toEqual([3, 5]);
  expect([undefined, 3, 5].map((stage) => drawn(stage).title)).toEqual([
    "Wetting under 100 kPa, load 3",
    "Wetting under 100 kPa, load 3",
    "Wetting under 200 kPa, load 5",
  ]);
  for (const stage of [3, 5] as const) {
    const { points } = drawn(stage).series.find(({ label }) => label === "readings")!;
    expect(points).toHaveLength(TIMES.length - 1);
    expect(points.at(-1)![1]).toBeCloseTo(100 * STRAINS[stage], 9);
  }
  // 0.02 mm per log cycle, on the height before the stage.
  expect(wettingRate(record, must(wettingStage(record, 5)))! / (0.02 / heightAt(4.1))).toBeCloseTo(1, 1);
  expect(wettingRate(record, must(wettingStage(record)))).toBeCloseTo(record.results.wetting_rate!, 12);
});

test("if the chosen load is a stage no more, the stage of the results is drawn", () => {
  expect(stageDrawn(record, { ...SHEET_CHOICES, stage: 4 })?.number).toBe(3);
});

test("a load that is no stage of wetting is refused by its number", () => {
  expect(refusal(wettingStage(record, 4))).toBe("load 4 is no stage of wetting (load_mark)");
  for (const load of [4, 7, 99])
    expect(refusal(seriesOf(data, { plot: "swell", load }))).toBe(
      `load ${load} is no stage of wetting that has been read (load_mark)`,
    );
});

test.each([3, 5] as const)(
  "the chart of the stage under load %d shows the points and the line of its rate",
  async (load) => {
    const block = must(seriesOf(data, { plot: "swell", load }));
    const spec = drawn(load);
    expect(block.title).toBe(`${spec.title}, B1, S1`);
    const seen = valuesOf(await port.insertSheet(chartsSheet("Chart", [block]))).flat();
    const points = spec.series.flatMap((series) => series.points);
    expect(points).toHaveLength(TIMES.length + 1);
    const missing = points
      .flat()
      .filter((value) => !seen.some((one) => typeof one === "number" && Math.abs(one - value) < 1e-9));
    expect(missing).toEqual([]);
  },
);

test("the chart that the plots screen inserts is of the chosen stage", () => {
  const plan = must(chartOfSheet(data, record, { ...SHEET_CHOICES, plot: "swell", stage: 5 }, drawn(5)));
  expect(plan.charts?.map(({ title }) => title)).toEqual(["Wetting under 200 kPa, load 5, B1, S1"]);
});

test("the report has a figure and a line for each stage, with its strain", async () => {
  const source = { ...data, record, answered: [], paper: "A4", preparedBy: "A", now: new Date(2031, 2, 21) } as const;
  const { plan } = reportSheet(source);
  expect(plan.charts?.map(({ title }) => title).filter((title) => title.startsWith("Wetting"))).toEqual([
    "Wetting under 100 kPa, load 3, B1, S1",
    "Wetting under 200 kPa, load 5, B1, S1",
  ]);
  const rows = valuesOf(await port.insertSheet(plan));
  for (const load of [3, 5] as const) {
    const row = rows.find((cells) => cells.includes(`Strain on wetting, load ${load}`))!;
    expect(
      row.slice(row.indexOf(`Strain on wetting, load ${load}`)).find((cell) => typeof cell === "number"),
    ).toBeCloseTo(STRAINS[load], 9);
  }
});

test("the AGS4 file has the strain of each stage at its increment, and of the first as strain on saturation", () => {
  const file = must(toAgs4(record, { issue: "1", date: "2031-03-21", producer: "A", recipient: "B", status: "Draft" }));
  const lines = file.text.split("\r\n").map((line) => line.slice(1, -1).split('","'));
  const group = (name: string): Record<string, string>[] => {
    const from = lines.findIndex(([tag, of]) => tag === "GROUP" && of === name);
    const heads = lines[from + 1]!;
    const end = lines.findIndex(([tag], index) => index > from + 1 && tag === "");
    return lines
      .slice(from + 4, end < 0 ? undefined : end)
      .map((row) => Object.fromEntries(heads.map((head, col) => [head, row[col] ?? ""])));
  };
  const remarks = group("CONS").map((row) => row.CONS_REM ?? "");
  expect(remarks.map((remark) => /Strain on wetting ([-\d.]+) %/.exec(remark)?.[1])).toEqual([
    undefined,
    undefined,
    (100 * STRAINS[3]).toFixed(2),
    undefined,
    (100 * STRAINS[5]).toFixed(2),
  ]);
  // The dictionary: a percentage of the original height, here of 20 mm.
  expect(Number(group("CONG")[0]!.CONG_SATH)).toBeCloseTo((100 * (4.8 - FIRST.at(-1)!)) / 20, 1);
});

test("the calculation book works out the strain of each stage", () => {
  const lines = calculationBook(record, data.values).filter(({ name }) => name === "load_wetting_strain");
  expect(lines.map(({ result }) => result)).toEqual([expect.closeTo(STRAINS[3], 9), expect.closeTo(STRAINS[5], 9)]);
  for (const { said } of lines) expect(english(said)).not.toMatch(/no working/);
});
