/** @jest-environment jsdom */
import { OfficePort } from "../../../src/workbook/office";
import type { Box, ChartPlan } from "../../../src/workbook/port";
import { FakeExcel, supports } from "./fake-excel";
import { PLAN } from "./plan";

const port = new OfficePort();
const SHEET = 'Workbook.Worksheets.GetItem("{Test}")';
const CHART = "chart";

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

const GUESSED = 2;
const open = (guessed = GUESSED): FakeExcel =>
  new FakeExcel(["Data"])
    .when(/Protection$/, { Protected: false })
    .when(/Charts\..*Series$/, { Count: guessed })
    .when(/Charts\.Add\(.*"Columns"\)$/, { Id: "{chart}" });

beforeEach(() => supports(17));

/** The steps of charts, in short words. */
const linesOf = (excel: FakeExcel): string[] =>
  excel.lines
    .filter((line) => line.includes(".Charts."))
    .map((line) => {
      const short = line.replaceAll(SHEET, "sheet").replace(/^sheet\.Charts\.GetItem\("\{chart\}"\)/, CHART);
      return short.replace(/Series\.Add\("([^"]*)",?\)/, "$1");
    });

test("a native chart with explicit x and y ranges, and without the series that Excel guessed", async () => {
  const excel = open();
  await port.insertSheet({ ...PLAN, charts: [chart] });
  const lines = linesOf(excel);
  expect(excel.lines.join("\n").replaceAll(SHEET, "sheet")).toContain(
    'sheet.Charts.Add("XYScatter",sheet.GetRangeByIndexes(2,9,2,1),"Columns")',
  );
  expect(lines).toEqual(
    expect.arrayContaining([
      "chart.SetPosition(sheet.GetCell(8,0),sheet.GetCell(27,5))",
      'chart.Title.Text = "Load 3"',
      "chart.Legend.Visible = false",
      'chart.DisplayBlanksAs = "NotPlotted"',
      "chart.d0.SetXAxisValues(sheet.GetRangeByIndexes(2,10,2,1))",
      "chart.d0.SetValues(sheet.GetRangeByIndexes(2,11,2,1))",
      'chart.readings.SetXAxisValues(Workbook.Worksheets.GetItem("Data").GetRangeByIndexes(90,4,40,1))',
      'chart.readings.SetValues(Workbook.Worksheets.GetItem("Data").GetRangeByIndexes(90,5,40,1))',
    ]),
  );
  // From the last to the first, after ours: their numbers stay true while they go.
  const deleted = lines.filter((line) => line.endsWith(".Delete()"));
  expect(deleted).toEqual(["chart.Series.GetItemAt(1).Delete()", "chart.Series.GetItemAt(0).Delete()"]);
  expect(lines.indexOf(deleted[0])).toBeGreaterThan(lines.findIndex((line) => line.startsWith("chart.pick.SetValues")));
});

test("log axis on base ten with whole decades; a reversed axis with the other one at its end", async () => {
  const excel = open();
  await port.insertSheet({ ...PLAN, charts: [chart] });
  const axis = (name: string) =>
    Object.fromEntries(
      linesOf(excel)
        .filter((line) => line.startsWith(`chart.Axes.${name}.`) && line.includes(" = "))
        .map((line) => line.slice(`chart.Axes.${name}.`.length).split(" = "))
        .map(([property, value]) => [property, JSON.parse(value)]),
    );
  expect(axis("CategoryAxis")).toMatchObject({
    ScaleType: "Logarithmic",
    LogBase: 10,
    Minimum: 0.1,
    Maximum: 10000,
    ReversePlotOrder: false,
    Position: "Minimum",
    "Title.Text": "Time (min), log scale",
    "MajorGridlines.Visible": true,
    "MinorGridlines.Visible": true,
  });
  expect(axis("ValueAxis")).toMatchObject({
    ScaleType: "Linear",
    Minimum: 800,
    Maximum: 1600,
    MajorUnit: 100,
    MinorUnit: 20,
    ReversePlotOrder: true,
    Position: "Maximum",
    "Title.Text": "Dial reading",
  });
  expect(axis("ValueAxis")).not.toHaveProperty("LogBase");
});

test("lines without markers, symbols without lines, told apart in black and white", async () => {
  const excel = open();
  await port.insertSheet({ ...PLAN, charts: [chart] });
  const look = (name: string) =>
    linesOf(excel)
      .filter((line) => line.startsWith(`chart.${name}.`) && !/SetX|SetValues|Smooth/.test(line))
      .map((line) => line.slice(`chart.${name}.`.length));
  expect(look("d0")).toEqual([
    'ChartType = "XYScatterLinesNoMarkers"',
    'MarkerStyle = "None"',
    'Format.Line.Color = "#000000"',
    'Format.Line.LineStyle = "Dash"',
    "Format.Line.Weight = 0.75",
  ]);
  expect(look("steepest tangent")).toContain("Format.Line.Weight = 1.5");
  expect(look("readings")).toEqual([
    'ChartType = "XYScatter"',
    'MarkerStyle = "Circle"',
    "MarkerSize = 6",
    'MarkerForegroundColor = "#000000"',
    'MarkerBackgroundColor = "#FFFFFF"',
    "Format.Line.Clear()",
  ]);
  expect(look("many")).toEqual(expect.arrayContaining(['MarkerStyle = "Triangle"', "MarkerSize = 3"]));
  expect(look("pick")).toContain('MarkerStyle = "X"');
  const inks = linesOf(excel).flatMap((line) => /Color = "#(..)(..)(..)"/.exec(line)?.slice(1, 4).join() ?? []);
  expect(inks.length).toBeGreaterThan(10);
  for (const ink of inks) expect(new Set(ink.split(",")).size).toBe(1);
});

test("ends of lines are lettered with their names; where Excel will not, the chart has a legend and the sheet stays", async () => {
  const excel = open();
  await port.insertSheet({ ...PLAN, charts: [chart] });
  expect(linesOf(excel).filter((line) => line.includes("ShowSeriesName"))).toEqual([
    "chart.Series.GetItemAt(0).Points.GetItemAt(1).DataLabel.ShowSeriesName = true",
    "chart.Series.GetItemAt(1).Points.GetItemAt(1).DataLabel.ShowSeriesName = true",
  ]);
  expect(linesOf(excel)).not.toContain("chart.Legend.Visible = true");

  const unwilling = open().refuse(/Points\.GetItemAt\(1\)\.HasDataLabel/, "InvalidArgument");
  await expect(port.insertSheet({ ...PLAN, charts: [chart] })).resolves.toBe("Test");
  expect(linesOf(unwilling)).toContain("chart.Legend.Visible = true");
  expect(unwilling.sheets.map(({ name }) => name)).toEqual(["Data", "Test"]);
});

test("charts come before protection; a chart on cells of a sheet alone needs nothing deleted", async () => {
  const excel = open(0);
  await port.insertSheet({ ...PLAN, isProtected: true, charts: [chart, { ...chart, title: "Load 4" }] });
  const lines = excel.lines;
  const last = lines.map((line) => line.includes(".Charts.")).lastIndexOf(true);
  expect(lines.findIndex((line) => line.includes("Protection.Protect"))).toBeGreaterThan(last);
  expect(lines.filter((line) => /GetItemAt\(\d+\)\.Delete\(\)$/.test(line))).toEqual([]);
  expect(lines.filter((line) => line.includes("Title.Text") && line.includes("Load 4"))).toHaveLength(1);
});

test.each([
  [/Charts\.Add/, "AccessDenied", /could not draw the charts of the new sheet: it is protected/],
  [/SetXAxisValues/, "InvalidArgument", /could not draw the charts.*does not accept a value/],
  [/LogBase/, "NotImplemented", /could not draw the charts.*newer one is needed/],
])("a chart that is refused takes the whole sheet out again: %s", async (step, code, sentence) => {
  const excel = open().refuse(step, code);
  await expect(port.insertSheet({ ...PLAN, charts: [chart] })).rejects.toThrow(sentence);
  expect(excel.sheets.map(({ name }) => name)).toEqual(["Data"]);
});
