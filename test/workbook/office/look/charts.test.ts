/** @jest-environment jsdom */
/** Native charts, in the strict stand-in for Excel. */
import { OfficePort } from "../../../../src/workbook/office";
import type { Box, ChartPlan } from "../../../../src/workbook/port";
import { StrictExcel, type Options } from "../../../excel/strict-excel";
import { PLAN } from "../plan";

const port = new OfficePort();

const box = (row: number, col: number, rows = 1, cols = 1): Box => ({ row, col, rows, cols });
const chart: ChartPlan = {
  title: "Load 3",
  box: box(8, 0, 20, 6),
  x: { label: "Time (min), log scale", scale: "log", domain: [0.1, 10000], reversed: false },
  y: { label: "Dial reading", scale: "linear", domain: [800, 1600], reversed: true },
  series: [
    { name: "steepest tangent", x: { box: box(2, 8, 2) }, y: { box: box(2, 9, 2) }, style: "line", lettered: true },
    { name: "d0", x: { box: box(2, 10, 2) }, y: { box: box(2, 11, 2) }, style: "dashed", lettered: true },
    { name: "test", x: { box: box(2, 12, 40) }, y: { box: box(2, 13, 40) }, style: "thin" },
    {
      name: "readings",
      x: { sheet: "Data", box: box(90, 4, 40) },
      y: { sheet: "Data", box: box(90, 5, 40) },
      style: "points",
      symbol: "open",
    },
    { name: "many", x: { box: box(2, 8, 400) }, y: { box: box(2, 9, 400) }, style: "points", shape: "triangle" },
    { name: "pick", x: { box: box(2, 8) }, y: { box: box(2, 9) }, style: "points", symbol: "cross" },
  ],
};

const PLOTS = { ...PLAN, charts: [chart] };

async function drawn(plan = PLOTS, options: Options = {}) {
  const excel = new StrictExcel({ sheets: ["Data"], ...options });
  await port.insertSheet(plan);
  expect(excel.faults).toEqual([]);
  const { charts } = excel.sheet("Test").sheet;
  return { excel, charts, seriesOf: (name: string) => charts[0].series.find((one) => one.name === name)! };
}

test("each series has the planned x and y cells, and no series that Excel guessed is left", async () => {
  const { excel, charts, seriesOf } = await drawn();
  expect(charts).toHaveLength(1);
  expect(charts[0]).toMatchObject({
    type: "XYScatter",
    properties: { "title.text": "Load 3", "legend.visible": false },
  });
  expect(charts[0].series.map(({ name }) => name)).toEqual(chart.series.map(({ name }) => name));
  const data = excel.sheet("Data").sheet.id;
  expect(seriesOf("readings")).toMatchObject({
    x: { sheet: data, box: box(90, 4, 40) },
    y: { sheet: data, box: box(90, 5, 40) },
  });
  expect(seriesOf("d0")).toMatchObject({ x: { box: box(2, 10, 2) }, y: { box: box(2, 11, 2) } });
});

test("a name of a series that Excel would refuse is made valid", async () => {
  const [first, second] = chart.series;
  const named = {
    ...chart,
    series: [
      { ...first, name: "x".repeat(256) },
      { ...second, name: "=BH 1" },
    ],
  };
  const { charts } = await drawn({ ...PLAN, charts: [named] });
  expect(charts[0].series.map(({ name }) => name)).toEqual([`${"x".repeat(252)}...`, "BH 1"]);
});

test("a log axis has base ten and whole decades; a reversed axis has the other axis at its end", async () => {
  const { charts } = await drawn();
  const axis = (name: string) =>
    Object.fromEntries(
      Object.entries(charts[0].properties)
        .filter(([path]) => path.startsWith(`axes.${name}.`))
        .map(([path, value]) => [path.slice(`axes.${name}.`.length), value]),
    );
  expect(axis("categoryAxis")).toMatchObject({
    scaleType: "Logarithmic",
    logBase: 10,
    minimum: 0.1,
    maximum: 10000,
    reversePlotOrder: false,
    position: "Minimum",
    "title.text": "Time (min), log scale",
    "majorGridlines.visible": true,
    "minorGridlines.visible": true,
  });
  expect(axis("valueAxis")).toMatchObject({
    scaleType: "Linear",
    minimum: 800,
    maximum: 1600,
    majorUnit: 100,
    minorUnit: 20,
    reversePlotOrder: true,
    position: "Maximum",
    "title.text": "Dial reading",
  });
  expect(axis("valueAxis")).not.toHaveProperty("logBase");
});

test("a small chart has smaller texts, and numbers that are not turned; a name stands where the plan says, that of an upright line on paper", async () => {
  const [first, second, ...others] = chart.series;
  const small = {
    ...chart,
    isSmall: true,
    series: [{ ...first!, nameAt: "right" as const, isUpright: true }, second!, ...others],
  };
  const { charts, seriesOf } = await drawn({ ...PLAN, charts: [small] });
  expect(charts[0].properties).toMatchObject({
    "title.format.font.size": 9,
    "axes.categoryAxis.format.font.size": 7,
    "axes.categoryAxis.title.format.font.size": 7,
    "axes.valueAxis.minorGridlines.visible": false,
    "axes.categoryAxis.textOrientation": 0,
  });
  expect(seriesOf("readings").properties).toMatchObject({ markerSize: 3 });
  const nameOf = (name: string) => seriesOf(name).points[1];
  const ground = "dataLabel.format.fill.solidColor";
  expect(nameOf("steepest tangent")).toMatchObject({ "dataLabel.position": "Right", [ground]: "#FFFFFF" });
  expect(nameOf("d0")).toMatchObject({ "dataLabel.position": "Top" });
  expect(nameOf("d0")).not.toHaveProperty([ground]);
  const { charts: usual } = await drawn();
  expect(usual[0].properties).toMatchObject({ "axes.categoryAxis.format.font.size": 9 });
  expect(usual[0].properties).not.toHaveProperty(["axes.categoryAxis.textOrientation"]);
});

test("lines have no markers and symbols no lines, distinguished in black and white", async () => {
  const { seriesOf, charts } = await drawn();
  expect(seriesOf("d0").properties).toMatchObject({
    chartType: "XYScatterLinesNoMarkers",
    markerStyle: "None",
    "format.line.color": "#000000",
    "format.line.lineStyle": "Dash",
    "format.line.weight": 0.75,
  });
  expect(seriesOf("steepest tangent").properties).toMatchObject({ "format.line.weight": 1.5 });
  expect(seriesOf("readings").properties).toMatchObject({
    chartType: "XYScatter",
    markerStyle: "Circle",
    markerSize: 6,
    markerForegroundColor: "#000000",
    markerBackgroundColor: "#FFFFFF",
  });
  expect(seriesOf("many").properties).toMatchObject({ markerStyle: "Triangle", markerSize: 3 });
  expect(seriesOf("pick").properties).toMatchObject({ markerStyle: "X" });
  const inks = [charts[0].properties, ...charts[0].series.map(({ properties }) => properties)].flatMap((one) =>
    Object.entries(one).flatMap(([path, ink]) => (/color$/i.test(path) && /^#/.test(String(ink)) ? [String(ink)] : [])),
  );
  expect(inks.length).toBeGreaterThan(8);
  for (const ink of inks) expect(new Set(/^#(..)(..)(..)$/.exec(ink)!.slice(1)).size).toBe(1);
});

test("the line of symbols is cleared before the symbols are coloured, since clearing may clear their borders", async () => {
  const { excel } = await drawn();
  const own = excel.lines.filter((line) => line.includes('series.add("readings")'));
  const at = (part: RegExp): number => own.findIndex((line) => part.test(line));
  expect(at(/format\.line\.clear\(\)/)).toBeGreaterThan(-1);
  expect(at(/format\.line\.clear\(\)/)).toBeLessThan(at(/markerForegroundColor =/));
});

test("the ends of lines are labelled with their names; if Excel refuses, the chart has a legend and the sheet stays", async () => {
  const { seriesOf, charts } = await drawn();
  for (const name of ["steepest tangent", "d0"])
    expect(seriesOf(name).points[1]).toMatchObject({ hasDataLabel: true, "dataLabel.showSeriesName": true });
  expect(seriesOf("test").points).toEqual({});
  expect(charts[0].properties["legend.visible"]).toBe(false);

  const unwilling = new StrictExcel({ sheets: ["Data"] });
  unwilling.failures.refuse(/hasDataLabel/, "InvalidArgument");
  await expect(port.insertSheet(PLOTS)).resolves.toBe("Test");
  expect(unwilling.sheet("Test").sheet.charts[0].properties["legend.visible"]).toBe(true);
});

test("all charts of a sheet need no more requests than one", async () => {
  const many = { ...PLAN, charts: Array.from({ length: 12 }, (_, i) => ({ ...chart, title: `Load ${i + 1}` })) };
  const tripsOf = async (plan: typeof PLOTS) => (await drawn(plan)).excel.trips.length;
  expect(await tripsOf(many)).toBeLessThanOrEqual((await tripsOf(PLOTS)) + 1);
});

test("charts are drawn on a sheet that is protected afterwards", async () => {
  const { excel, charts } = await drawn({ ...PLOTS, isProtected: true } as typeof PLOTS);
  expect(charts).toHaveLength(1);
  expect(excel.sheet("Test").sheet.protection.on).toBe(true);
});

test.each([
  [/charts\.add/, "AccessDenied", /could not draw the charts of the new sheet: it is protected/],
  [/setXAxisValues/, "InvalidArgument", /could not draw the charts.*does not accept a value/],
  [/logBase/, "NotImplemented", /could not draw the charts.*newer one is needed/],
])("a refused chart removes the whole sheet again: %s", async (step, code, sentence) => {
  const excel = new StrictExcel({ sheets: ["Data"] });
  excel.failures.refuse(step, code, "refused", 1);
  await expect(port.insertSheet(PLOTS)).rejects.toThrow(sentence);
  expect(excel.sheetNames).toEqual(["Data"]);
  await expect(port.insertSheet(PLOTS)).resolves.toBe("Test");
});
