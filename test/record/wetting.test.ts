/** The stage of wetting of a calculated sheet: its record, its plots, its lines in the calculation book, its AGS4 file. */
import "../workbook/embedded/engine-in-node";
import { calculationBook } from "../../src/book/calculation-book";
import { blankSheet, fillSheet } from "../../src/datasheet";
import { demoTest } from "../../src/datasheet/demo-test";
import { toAgs4 } from "../../src/exchange/ags4";
import { drawSheet, SHEET_CHOICES } from "../../src/pane/screens/plots/sheet-drawing";
import { compressionPlot } from "../../src/plots/compression";
import { swellPlot } from "../../src/plots/swell";
import { readRecord, RECORD_NAMES, type NamedValues, type TestRecord } from "../../src/record/record";
import { wettingStage, wettingStrains } from "../../src/record/wetting";
import { chartsSheet, seriesOf, type DataSheet } from "../../src/report/charts/series";
import { english } from "../../src/reduction/message";
import type { Outcome } from "../../src/reduction/outcome";
import { EmbeddedPort, newWorkbook } from "../../src/workbook/embedded";
import { registerRealFunctions } from "../workbook/embedded/real-functions";

const must = <T>(outcome: Outcome<T>): T => {
  if (!outcome.ok) throw new Error(english(outcome.reason));
  return outcome.value;
};

const TIMES = [0, 1, 2, 4, 8, 15, 30, 60, 120, 240, 480, 1440, 2880];
/** Swell of 0.9 mm of primary, then 0.05 mm per log cycle; the dial falls on compression, so it rises here. */
const swollen = TIMES.map((t) =>
  t === 0 ? 5 : 5 + 0.9 * (1 - Math.exp(-t / 40)) + 0.05 * Math.max(0, Math.log10(t / 60)),
);

let port: EmbeddedPort;
let data: DataSheet;
let values: NamedValues;
let record: TestRecord;
beforeAll(async () => {
  await registerRealFunctions({ blankAs: null });
  port = new EmbeddedPort(newWorkbook());
  const { ring_mass, ring_and_dry, specific_gravity } = demoTest("SI").cells;
  const plan = fillSheet(blankSheet("SI", { loads: 8, readingRows: 30 }), {
    ...{ diameter: 71.4, initial_height: 20, ring_mass, ring_and_dry, specific_gravity },
    ...{ dial_factor: 1, dial_sense: "fall", zero_reading: 5, seating_stress: 5, swelling_method: "load back" },
    ...{ boring: "B1", sample: "S1", specimen: "a", depth: 3, sample_top: 3, sample_type: "U", job_number: "J" },
    load_stress: [5, 25, 50, 100, 200, 400],
    load_mark: ["wetting"],
    times_01: TIMES,
    readings_01: swollen,
    ...Object.fromEntries(
      [5.6, 5.3, 4.9, 4.4, 3.8].flatMap((reading, index) => [
        [`times_0${index + 2}`, [0, 1440]],
        [`readings_0${index + 2}`, [reading + 0.2, reading]],
      ]),
    ),
  });
  const sheet = await port.insertSheet(plan);
  const names = await port.listNames(sheet);
  values = await port.readNames(sheet, RECORD_NAMES);
  data = { sheet, names, values };
  record = readRecord(values);
});

test("the record finds the stage of the sheet, and the strains of its readings end with the strain of the stage", () => {
  const stage = must(wettingStage(record));
  expect(stage.strain).toBeCloseTo(record.results.wetting_strain!, 9);
  expect([stage.stress, stage.before, stage.reference]).toEqual([5, 20, 20]);
  const { strains } = wettingStrains(record, stage);
  expect(strains[0]).toBeCloseTo(0, 9);
  expect(strains.filter((strain) => strain !== null).at(-1)).toBeCloseTo(stage.strain, 9);
});

test("the rate on the sheet is that of the curve: 0.05 mm of 20 mm per log cycle, swelling", () => {
  expect(record.results.wetting_rate! / (-0.05 / 20)).toBeCloseTo(1, 1);
});

test("the plot draws swell upward with the line of the rate, and the note says the rate", () => {
  const spec = must(drawSheet(record, { ...SHEET_CHOICES, plot: "swell" }));
  expect(spec.y.reversed).toBe(true);
  expect(spec.series.map(({ label }) => label)).toEqual(["rate at the end", "readings"]);
  expect(spec.series[1].points).toHaveLength(TIMES.length - 1);
  expect(spec.notes[0]).toMatch(/^Rate at the end: swell of 0\.2\d % per log cycle of time\.$/);
  expect(spec.title).toBe("Wetting under 5 kPa");
});

test("a native chart of the stage shows the same points, live", async () => {
  const block = must(seriesOf(data, { plot: "swell" }));
  const spec = must(drawSheet(record, { ...SHEET_CHOICES, plot: "swell" }));
  const of = await port.insertSheet(chartsSheet("Chart", [block]));
  const { getters } = port.workbook.model;
  const sheetId = getters.getSheetIdByName(of)!;
  const seen: number[] = [];
  for (let row = 0; row < 90; row++)
    for (let col = 0; col < 40; col++) {
      const { value } = getters.getEvaluatedCell({ sheetId, row, col });
      if (typeof value === "number") seen.push(value);
    }
  for (const [time, strain] of spec.series[1].points) {
    expect(seen.some((value) => Math.abs(value - time) < 1e-9)).toBe(true);
    expect(seen.some((value) => Math.abs(value - strain) < 1e-9)).toBe(true);
  }
});

test("every number of the stage has its line in the calculation book, with the result of the sheet", () => {
  const entries = calculationBook(record, values);
  for (const name of [
    "wetting_load",
    "wetting_height_before",
    "wetting_height_after",
    "wetting_strain",
    "wetting_swell",
  ]) {
    const entry = entries.find((one) => one.name === name);
    expect([name, entry?.result]).toEqual([name, expect.closeTo(Number(values[name]![0]![0]), 9)]);
  }
  expect(entries.find(({ name }) => name === "wetting_rate")!.result).toBeCloseTo(record.results.wetting_rate!, 9);
  expect(english(entries.find(({ name }) => name === "swelling_pressure_used")!.said)).toMatch(/^load back: /);
  // A number without working would say so.
  expect(
    entries.filter(({ name, said }) => /wetting|swelling_pressure/.test(name) && /no working/.test(english(said))),
  ).toEqual([]);
});

test("the AGS4 file carries the strain on saturation, the swelling pressure, and the stage", () => {
  const file = must(toAgs4(record, { issue: "1", date: "2031-03-21", producer: "A", recipient: "B", status: "Draft" }));
  const lines = file.text.split("\r\n");
  const heads = lines[lines.indexOf('"GROUP","CONG"') + 1]!.split(",");
  const row = lines[lines.indexOf('"GROUP","CONG"') + 4]!.split(",");
  const at = (heading: string) => Number(row[heads.indexOf(`"${heading}"`)]!.replaceAll('"', ""));
  expect(at("CONG_SATH")).toBeCloseTo((100 * (swollen.at(-1)! - 5)) / -20, 1);
  expect(at("CONG_SPRS") / record.results.swelling_pressure_used!).toBeCloseTo(1, 1);
  expect(file.text).toContain("Wetting under the stress of the load before");
  expect(file.leftOut.map(english)).toContain("the method of the swelling pressure");
});

test("a test without a stage of wetting has no such plot, and the refusal names the cell", () => {
  const none = readRecord({ load_stress: [[50], [100]] });
  expect(wettingStage(none).ok).toBe(false);
  const refused = drawSheet(none, { ...SHEET_CHOICES, plot: "swell" });
  expect(refused.ok ? "" : english(refused.reason)).toBe("no load is marked as wetting (load_mark)");
});

test("the compression plot draws a step at constant stress upright and dashed", () => {
  const spec = must(compressionPlot([25, 50, 100, 200, 200, 400], [0.01, 0.02, 0.03, 0.05, 0.1, 0.13], "strain"));
  const step = spec.series.find(({ label }) => label === "wetting")!;
  expect(step).toMatchObject({
    style: "guide",
    letters: "wetting",
    points: [
      [200, 0.05],
      [200, 0.1],
    ],
  });
});

test("swell without a reading after time zero is refused", () => {
  expect(swellPlot([0, null], [0, 0.1]).ok).toBe(false);
});
