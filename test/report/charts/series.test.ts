import "../../workbook/embedded/engine-in-node";
import { demoSheet } from "../../../src/datasheet";
import { RECORD_NAMES } from "../../../src/record/record";
import { fieldCurvePlot } from "../../../src/plots/field";
import { intrinsicPlot } from "../../../src/plots/intrinsic";
import { compressionPlot } from "../../../src/plots/compression";
import { cvPlot, cAlphaPlot } from "../../../src/plots/coefficients";
import { logTimePlot, rootTimePlot } from "../../../src/plots/time";
import type { PlotSpec } from "../../../src/plots/spec";
import { METHOD_NAMES } from "../../../src/reduction/curve/method-words";
import type { Outcome } from "../../../src/reduction/outcome";
import {
  chartsSheet,
  everyLoad,
  seriesOf,
  seriesOfRange,
  seriesSheet,
  type DataPlot,
  type DataSheet,
} from "../../../src/report/charts/series";
import type { EmbeddedPort } from "../../../src/workbook/embedded";
import type { CellValue, ChartCells, ChartPlan, SheetPlan } from "../../../src/workbook/port";
import { opened } from "../../workbook/embedded/opened";
import { english } from "../../../src/reduction/message";
import { inEnglish } from "../../in-english";

let port: EmbeddedPort;
let data: DataSheet;
let sheet: string;

async function demo(): Promise<void> {
  ({ port, sheet } = await opened(demoSheet("SI")));
  const [names, values] = await Promise.all([port.listNames(sheet), port.readNames(sheet, RECORD_NAMES)]);
  data = { sheet, names, values };
}

// The tests add sheets to one workbook; one that changes the data sheet opens its own.
beforeAll(demo);

const numbers = (name: string): (number | null)[] =>
  data.values[name].map(([cell]) => (typeof cell === "number" ? cell : null));

const must = <T>(outcome: Outcome<T>): T => {
  if (!outcome.ok) throw new Error(english(outcome.reason));
  return outcome.value;
};

const cellsAt = (of: string, { sheet: named, box }: ChartCells): CellValue[] => {
  const { getters } = port.workbook.model;
  const sheetId = getters.getSheetIdByName(named ?? of)!;
  return Array.from(
    { length: box.rows },
    (_, i) => (getters.getEvaluatedCell({ sheetId, row: box.row + i, col: box.col }).value ?? "") as CellValue,
  );
};

/** The points of a chart by the names of its series: pairs of numbers. */
function shown(of: string, { series }: Omit<ChartPlan, "box">): Record<string, [number, number][]> {
  const found: Record<string, [number, number][]> = {};
  for (const { name, x, y } of series) {
    const [xs, ys] = [cellsAt(of, x), cellsAt(of, y)];
    for (const value of xs) if (typeof value !== "number") throw new Error(`${name}: x holds ${value}`);
    const pairs = xs.flatMap((value, i) => (typeof ys[i] === "number" ? [[value, ys[i]] as [number, number]] : []));
    found[name] = [...(found[name] ?? []), ...pairs];
  }
  return found;
}

async function drawn(plot: DataPlot): Promise<Record<string, [number, number][]>> {
  const plan = chartsSheet("Charts", [must(seriesOf(data, plot))]);
  const name = await port.insertSheet(plan);
  return shown(name, plan.charts![0]);
}

const near = (found: [number, number][], wanted: readonly (readonly [number, number])[]): void => {
  expect(found).toHaveLength(wanted.length);
  found.forEach(([x, y], i) => {
    expect(x).toBeCloseTo(wanted[i][0], 8);
    expect(y).toBeCloseTo(wanted[i][1], 8);
  });
};

/**
 * Checks that the chart shows what the plot of the pane draws, except for the ends of guides at axes with round ends.
 */
function expectPlot(
  found: Record<string, [number, number][]>,
  spec: PlotSpec,
  names: Record<string, string> = {},
): void {
  for (const { label, points, style, letters } of spec.series) {
    const name = names[label] ?? label;
    if (style !== "guide") near(found[name], spec.x.scale === "log" ? points.filter(([x]) => x > 0) : points);
    else {
      const [[x0, y0], [x1, y1]] = points;
      const [[a0, b0], [a1, b1]] = found[name];
      expect(a1).toBeCloseTo(x1, 8);
      expect(b0).toBeCloseTo(y0, 8);
      if (y0 === y1) expect(b1).toBeCloseTo(y1, 8);
      else expect(Math.abs(b1 - b0)).toBeGreaterThanOrEqual(Math.abs(y1 - y0) - 1e-9);
      if (x0 === x1) expect(a0).toBeCloseTo(x0, 8);
    }
    expect(letters === undefined || found[name].length > 0).toBe(true);
  }
}

describe("a chart of the demonstration shows the plot of the pane", () => {
  test.each([1, 3, 5])("log time and root time of load %d", async (load) => {
    const [times, readings] = [`times_0${load}`, `readings_0${load}`].map(numbers);
    for (const [plot, draw] of [
      ["log time", logTimePlot],
      ["root time", rootTimePlot],
    ] as const) {
      const spec = must(draw(times, readings));
      const found = await drawn({ plot, load });
      if (spec.refusal === undefined) expect(Object.keys(found).length).toBeGreaterThan(6);
      expectPlot(found, spec);
    }
  });

  test.each(METHOD_NAMES)("compression curve with the construction of %s, in e and in strain", async (method) => {
    const stresses = numbers("load_stress");
    for (const [value, name] of [
      ["e", "void_ratio_curve"],
      ["strain", "strain_end"],
    ] as const) {
      // Void ratios begin at e0, which Pacheco Silva's construction needs.
      const initial = value === "e" ? numbers("void_ratio_initial")[0]! : undefined;
      const spec = must(compressionPlot(stresses, numbers(name), value, { method, initial }));
      // The load steps of the demonstration are too coarse for Janbu's method.
      expect(spec.refusal === undefined).toBe(method !== "janbu");
      const found = await drawn({ plot: "compression", value, method });
      expectPlot(found, spec, { "preconsolidation stress": "σ′p" });
      const [inSitu] = numbers("in_situ_stress");
      expect(found["σ′v0"].map(([x]) => x)).toEqual([inSitu, inSitu]);
    }
  });

  test("the field curve, with both yields and the in-situ point", async () => {
    const [inSituStress, initialVoidRatio, preconsolidationStress] = [
      "in_situ_stress",
      "void_ratio_initial",
      "preconsolidation_stress",
    ].map((name) => numbers(name)[0]!);
    const options = { inSituStress, initialVoidRatio, preconsolidationStress };
    const spec = must(fieldCurvePlot(numbers("load_stress"), numbers("void_ratio_curve"), options));
    const found = await drawn({ plot: "field" });
    expect(spec.series).toHaveLength(7);
    for (const { label, points } of spec.series) near(found[label], points);
  });

  test("the void index, with the intrinsic and the sedimentation line and the in-situ point", async () => {
    const [inSituStress, initialVoidRatio, liquidLimit, specificGravity] = [
      "in_situ_stress",
      "void_ratio_initial",
      "liquid_limit",
      "specific_gravity",
    ].map((name) => numbers(name)[0]!);
    const options = { inSituStress, initialVoidRatio, liquidLimit, specificGravity };
    const spec = must(intrinsicPlot(numbers("load_stress"), numbers("void_ratio_curve"), options));
    const found = await drawn({ plot: "intrinsic" });
    expect(spec.series).toHaveLength(5);
    for (const { label, points } of spec.series) near(found[label], points);
  });

  test("cv and C alpha against stress", async () => {
    const stresses = numbers("load_stress");
    const [before, yieldStress] = ["seating_stress", "preconsolidation_stress"].map((name) => numbers(name)[0]!);
    const cv = must(cvPlot(stresses, numbers("cv_log_time"), numbers("cv_root_time"), { before, yieldStress }));
    const found = await drawn({ plot: "cv", by: "both" });
    const symbols = cv.series.filter(({ style }) => style === "points");
    expect(symbols.length).toBeGreaterThan(2);
    for (const { label, points } of symbols) near(found[label], points);
    const alpha = must(cAlphaPlot(stresses, numbers("c_alpha"), { before, yieldStress }));
    const shownAlpha = await drawn({ plot: "c alpha" });
    for (const { label, points } of alpha.series.filter(({ style }) => style === "points"))
      near(shownAlpha[label], points);
    expect(found["σ′p"].map(([x]) => x)).toEqual([yieldStress, yieldStress]);
  });
});

test("a changed reading moves the series, and a load that no method can reduce shows only its readings", async () => {
  await demo();
  const [block] = [must(seriesOf(data, { plot: "log time", load: 5 }))];
  const plan = chartsSheet("Charts", [block]);
  const name = await port.insertSheet(plan);
  const chart = plan.charts![0];
  const before = shown(name, chart);
  expect(before.d100).toHaveLength(2);
  const readings = numbers("readings_05");
  const moved = readings.map((reading) => (reading === null ? null : reading + 100));
  await port.fillNames(sheet, { readings_05: moved });
  const after = shown(name, chart);
  near(
    after.readings,
    before.readings.map(([x, y]) => [x, y + 100]),
  );
  expect(after.d100[1][1]).toBeCloseTo(before.d100[1][1] + 100, 6);
  await port.fillNames(sheet, {
    readings_05: readings.map((reading, i) => (reading === null ? null : i < 4 ? reading : "")),
  });
  const few = shown(name, chart);
  expect(few.readings).toHaveLength(3);
  expect(few.d100).toEqual([]);
  expect(few["early parabola"]).toEqual([]);
  await demo();
});

test("all loads as small charts, on one sheet, in rows of three", async () => {
  const blocks = must(everyLoad(data, "root time"));
  const plan = chartsSheet("All loads", blocks);
  expect(plan.charts).toHaveLength(blocks.length);
  expect(blocks.length).toBeGreaterThan(9);
  expect(new Set(plan.charts!.map(({ box }) => box.col)).size).toBe(3);
  const name = await port.insertSheet(plan);
  for (const [index, chart] of plan.charts!.entries())
    expect([index, shown(name, chart).readings.length > 5]).toEqual([index, true]);
});

test("series on a sheet of their own, with a name that needs quotes", async () => {
  const { plan, charts } = seriesSheet("Driller's series", [must(seriesOf(data, { plot: "root time", load: 5 }))]);
  const name = await port.insertSheet({ ...plan, behind: true });
  const [chart] = charts(name);
  expect(chart.series.every(({ x, y }) => x.sheet === name && y.sheet === name)).toBe(true);
  expect(shown("elsewhere", chart).readings.length).toBeGreaterThan(5);
});

test("two columns of any sheet", async () => {
  const box = (name: string) =>
    data.names.find((one) => one.name === name)!.place as { row: number; col: number; rows: number; cols: number };
  const [x, y] = [box("times_05"), box("readings_05")];
  const [xs, ys] = [numbers("times_05"), numbers("readings_05")];
  const block = must(
    seriesOfRange({ plot: "log time", sheet, x: { ...x, rows: 40 }, y: { ...y, rows: 40 }, xs, ys, title: "Selected" }),
  );
  const plan = chartsSheet("Charts", [block]);
  const name = await port.insertSheet(plan);
  expectPlot(shown(name, plan.charts![0]), must(logTimePlot(xs, ys)));
  const curve = must(
    seriesOfRange({
      plot: "compression e",
      sheet,
      x: box("load_stress"),
      y: box("void_ratio_curve"),
      xs: numbers("load_stress"),
      ys: numbers("void_ratio_curve"),
      method: "casagrande",
    }),
  );
  const second: SheetPlan = chartsSheet("Curve", [curve]);
  const found = shown(await port.insertSheet(second), second.charts![0]);
  expectPlot(
    found,
    must(compressionPlot(numbers("load_stress"), numbers("void_ratio_curve"), "e", { method: "casagrande" })),
    { "preconsolidation stress": "σ′p" },
  );
});

test("C alpha stands over an even stress axis, or over decades if that was chosen", () => {
  const scaleOf = (stressScale?: "log" | "linear") => {
    const block = seriesOf(data, { plot: "c alpha", stressScale });
    return block.ok && block.value.x.scale;
  };
  expect([scaleOf(), scaleOf("linear"), scaleOf("log")]).toEqual(["linear", "linear", "log"]);
});

test("a load without readings, and a sheet without the cells, are refused with a reason", () => {
  expect(inEnglish(seriesOf(data, { plot: "log time", load: 24 }))).toMatchObject({
    ok: false,
    reason: expect.stringMatching(/reading/),
  });
  const bare = { ...data, names: data.names.filter(({ name }) => name !== "c_alpha") };
  expect(inEnglish(seriesOf(bare, { plot: "c alpha" }))).toMatchObject({
    ok: false,
    reason: expect.stringMatching(/no cells named c_alpha/),
  });
});

test("on a dial that falls, compression is drawn downward in the charts of every load, and swelling upward", async () => {
  const { names, values } = data;
  const falling: Record<string, CellValue[][]> = {
    ...(values as Record<string, CellValue[][]>),
    dial_sense: [["fall"]],
  };
  for (const name of Object.keys(values).filter((one) => one.startsWith("readings_")))
    falling[name] = values[name].map(([cell]) => [typeof cell === "number" ? 10_000 - cell : cell]);
  for (const load of [6, 7])
    for (const plot of ["log time", "root time"] as const) {
      expect(must(seriesOf(data, { plot, load })).y.reversed).toBe(true);
      expect(must(seriesOf({ sheet, names, values: falling }, { plot, load })).y.reversed).toBe(false);
    }
});
