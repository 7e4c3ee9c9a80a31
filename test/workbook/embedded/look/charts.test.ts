import "../engine-in-node";
import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import ExcelJS from "exceljs";
import { chartGetters, CHART_TAG, drawingOf } from "../../../../src/workbook/embedded/look/chart";
import { EmbeddedPort, newWorkbook, openXlsx, saveXlsx } from "../../../../src/workbook/embedded";
import { Model } from "../../../../src/workbook/embedded/engine";
import type { Box, CellPlan, ChartPlan, SheetPlan } from "../../../../src/workbook/port";

const box = (row: number, col: number, rows = 1, cols = 1): Box => ({ row, col, rows, cols });

const cells: CellPlan[] = [0, 1, 2, 3].flatMap((i): CellPlan[] => [
  { row: i, col: 8, kind: "input", value: 10 ** (i - 1) },
  i === 2
    ? { row: i, col: 9, kind: "result", formula: "=NA()" }
    : { row: i, col: 9, kind: "input", value: 700 + 50 * i },
]);
const chart: ChartPlan = {
  title: "Load 3 & <more>",
  box: box(2, 1, 10, 5),
  x: { label: "Time (min), log scale", scale: "log", domain: [0.1, 1000], reversed: false },
  y: { label: "Dial reading", scale: "linear", domain: [600, 900], reversed: true },
  series: [
    {
      name: "readings",
      x: { box: box(0, 8, 4) },
      y: { box: box(0, 9, 4) },
      style: "points",
      symbol: "open",
      shape: "triangle",
    },
    { name: "tangent", x: { box: box(0, 8, 2) }, y: { box: box(0, 9, 2) }, style: "line", lettered: true },
    {
      name: "t50",
      x: { box: box(0, 8, 2) },
      y: { box: box(0, 9, 2) },
      style: "dashed",
      lettered: true,
      isUpright: true,
    },
    { name: "test", x: { box: box(0, 8, 4) }, y: { box: box(0, 9, 4) }, style: "thin" },
    { name: "pick", x: { box: box(0, 8) }, y: { box: box(0, 9) }, style: "points", symbol: "cross" },
  ],
};
const plan: SheetPlan = {
  name: "Driller, plot",
  rows: 20,
  cols: 12,
  cells,
  names: {},
  columnWidths: { 1: 20 },
  merges: [],
  freezeRows: 0,
  charts: [chart],
};

const open = async () => {
  const port = new EmbeddedPort(newWorkbook());
  await port.insertSheet(plan);
  return port;
};
const figuresOf = (model: Model, sheet: string) => {
  const sheetId = model.getters.getSheetIdByName(sheet)!;
  return model.getters.getFigures(sheetId).filter(({ tag }: any) => tag === CHART_TAG);
};
const drawn = (model: Model, sheet = plan.name) => drawingOf(model, figuresOf(model, sheet)[0].id)!;
const dispatch = (model: Model, type: string, payload: object = {}) => (model as any).dispatch(type, payload);

describe("a chart on the embedded sheet", () => {
  test("covers its cells, and shows their values; a cell without a number is a gap", async () => {
    const { model } = (await open()).workbook;
    const [figure] = figuresOf(model, plan.name);
    const width = [1, 2, 3, 4, 5].reduce(
      (sum, col) => sum + model.getters.getColSize(figure.id.split("-chart")[0], col),
      0,
    );
    expect(figure).toMatchObject({ col: 1, row: 2, offset: { x: 0, y: 0 }, width, height: 230 });
    expect(drawn(model).series[0].points).toEqual([[0.1, 700], [1, 750], null, [100, 850]]);
    expect(drawn(model)).toMatchObject({ title: chart.title, x: chart.x, y: chart.y });
  });

  test("follows its cells and moved rows; undo restores it", async () => {
    const { model } = (await open()).workbook;
    const sheetId = model.getters.getSheetIdByName(plan.name)!;
    dispatch(model, "UPDATE_CELL", { sheetId, col: 9, row: 0, content: "555" });
    expect(drawn(model).series[0].points[0]).toEqual([0.1, 555]);
    dispatch(model, "REQUEST_UNDO");
    expect(drawn(model).series[0].points[0]).toEqual([0.1, 700]);
    dispatch(model, "ADD_COLUMNS_ROWS", {
      sheetId,
      sheetName: plan.name,
      dimension: "ROW",
      base: 0,
      position: "before",
      quantity: 3,
    });
    expect(drawn(model).series[0].points).toEqual([[0.1, 700], [1, 750], null, [100, 850]]);
    expect(figuresOf(model, plan.name)[0].row).toBe(5);
    const [figure] = figuresOf(model, plan.name);
    dispatch(model, "DELETE_FIGURE", { sheetId, figureId: figure.id });
    expect(figuresOf(model, plan.name)).toEqual([]);
    expect(chartGetters(model).getChartOf(figure.id)).toBeUndefined();
    dispatch(model, "REQUEST_UNDO");
    expect(drawn(model).series[0].points[3]).toEqual([100, 850]);
  });

  test("a copy of the sheet has its own chart of its own cells; deleting a sheet deletes its chart", async () => {
    const { model } = (await open()).workbook;
    const sheetId = model.getters.getSheetIdByName(plan.name)!;
    dispatch(model, "DUPLICATE_SHEET", { sheetId, sheetIdTo: "copy", sheetNameTo: "Copy" });
    dispatch(model, "UPDATE_CELL", { sheetId: "copy", col: 9, row: 0, content: "555" });
    expect(drawn(model, "Copy").series[0].points[0]).toEqual([0.1, 555]);
    expect(drawn(model).series[0].points[0]).toEqual([0.1, 700]);
    const [figure] = figuresOf(model, plan.name);
    dispatch(model, "DELETE_SHEET", { sheetId, sheetName: plan.name });
    expect(chartGetters(model).getChartOf(figure.id)).toBeUndefined();
    expect(drawn(model, "Copy").series).toHaveLength(5);
  });

  test("is kept in the data of the workbook", async () => {
    const { model } = (await open()).workbook;
    expect(drawn(new Model(model.exportData()))).toEqual(drawn(model));
  });

  test("shows cells of another sheet; if that sheet does not exist, no chart is made and the reason is given", async () => {
    const port = await open();
    const elsewhere: ChartPlan = {
      ...chart,
      series: [
        { ...chart.series[0], x: { sheet: plan.name, box: box(0, 8, 4) }, y: { sheet: plan.name, box: box(0, 9, 4) } },
      ],
    };
    await port.insertSheet({ ...plan, name: "Report", cells: [], charts: [elsewhere] });
    expect(drawn(port.workbook.model, "Report").series[0].points[1]).toEqual([1, 750]);
    const lost: ChartPlan = { ...chart, series: [{ ...chart.series[0], x: { sheet: "Gone", box: box(0, 0) } }] };
    await expect(port.insertSheet({ ...plan, name: "Lost", charts: [lost] })).rejects.toThrow(
      /cells of the sheet "Gone", which is not there/,
    );
    expect(await port.sheetNames()).not.toContain("Lost");
  });
});

describe("the .xlsx file", () => {
  test("holds the texts of a small chart smaller and level, the places of names, and open symbols that LibreOffice shows", async () => {
    const port = new EmbeddedPort(newWorkbook());
    const series = chart.series.map((one) => (one.name === "tangent" ? { ...one, nameAt: "right" as const } : one));
    await port.insertSheet({ ...plan, charts: [{ ...chart, series, isSmall: true }] });
    const bytes = await saveXlsx(port.workbook);
    const parts = unzipSync(bytes);
    const xml = strFromU8(parts[Object.keys(parts).find((name) => name.startsWith("xl/charts/"))!]!);
    expect(xml.match(/<c:txPr><a:bodyPr rot="0" vert="horz"\/><a:p><a:pPr><a:defRPr sz="700"\/>/g)).toHaveLength(2);
    expect([...xml.matchAll(/<c:dLblPos val="(.)"/g)].map(([, at]) => at)).toEqual(["r", "t"]);
    // Symbols of the usual size would cover a small curve, and fine lines between even steps would look grey.
    const sizes = [...xml.matchAll(/<c:size val="(\d+)"/g)].map(([, size]) => Number(size));
    expect(Math.max(...sizes)).toBeLessThanOrEqual(4);
    expect(xml.match(/<c:minorGridlines>/g)).toHaveLength(1);
    // LibreOffice draws no outline of a symbol: a white one would not be seen.
    expect(xml).not.toMatch(/<c:size val="6"\/><c:spPr><a:solidFill><a:srgbClr val="FFFFFF"/);
    const again = drawn(openXlsx(bytes).workbook.model);
    expect(again.isSmall).toBe(true);
    expect(again.series.find(({ name }) => name === "tangent")).toMatchObject({ lettered: true, nameAt: "right" });
  });

  test("holds a scatter chart with log and reversed axes, its cells by reference, in parts that are all declared", async () => {
    const bytes = await saveXlsx((await open()).workbook);
    const parts = unzipSync(bytes);
    const path = Object.keys(parts).find((name) => name.startsWith("xl/charts/"))!;
    const xml = strFromU8(parts[path]);
    expect(xml).toContain(`<c:f>'Driller, plot'!$I$1:$I$4</c:f>`);
    expect(xml.match(/<c:ser>/g)).toHaveLength(5);
    expect(xml).toMatch(/<c:logBase val="10"\/><c:orientation val="minMax"\/><c:max val="1000"\/><c:min val="0.1"\/>/);
    expect(xml).toMatch(/<c:orientation val="maxMin"\/><c:max val="900"\/><c:min val="600"\/>/);
    expect(xml).toContain("Load 3 &amp; &lt;more&gt;");
    // The name on an upright line has a ground of paper; the name beside the tangent has none.
    const grounds = [...xml.matchAll(/<c:idx val="1"\/><c:spPr>(.*?)<a:ln>/g)].map(([, ground]) => ground);
    expect(grounds).toEqual(["<a:noFill/>", '<a:solidFill><a:srgbClr val="FFFFFF"/></a:solidFill>']);
    const types = strFromU8(parts["[Content_Types].xml"]);
    for (const [name, content] of Object.entries(parts)) {
      if (name.startsWith("xl/charts/") || /drawings\/[^/]+\.xml$/.test(name)) expect(types).toContain(`"/${name}"`);
      if (!name.endsWith(".rels")) continue;
      for (const [, target] of strFromU8(content).matchAll(/Target="([^"]+)"/g)) {
        if (/^https?:/.test(target)) continue;
        const folder = name.replace(/_rels\/[^/]+$/, "");
        const full = new URL(target, `file:///${folder}`).pathname.slice(1);
        expect(Object.keys(parts)).toContain(full);
      }
    }
    const reader = new ExcelJS.Workbook();
    await reader.xlsx.load(bytes.buffer as never);
    expect(reader.getWorksheet(plan.name)!.getCell("J1").value).toBe(700);
  });

  test("gives the chart back with axes, looks, cells and place", async () => {
    const { workbook } = await open();
    const again = openXlsx(await saveXlsx(workbook)).workbook.model;
    expect(drawn(again)).toEqual(drawn(workbook.model));
    const [before, after] = [workbook.model, again].map((model) => figuresOf(model, plan.name)[0]);
    expect([after.col, after.row, after.offset]).toEqual([before.col, before.row, before.offset]);
    expect(Math.abs(after.width - before.width)).toBeLessThan(12);
    expect(after.height).toBe(before.height);
  });

  test("keeps its part for the frame of another program that shows the same chart", async () => {
    const parts = unzipSync(await saveXlsx((await open()).workbook));
    const path = Object.keys(parts).find((name) => /^xl\/drawings\/[^/]+\.xml$/.test(name))!;
    const drawing = strFromU8(parts[path]);
    const [frame] = /<xdr:twoCellAnchor[^]*<\/xdr:twoCellAnchor>/.exec(drawing)!;
    const twice = drawing.replace(frame, frame + frame.replace("Clayledger chart", "Chart"));
    const { model } = openXlsx(zipSync({ ...parts, [path]: strToU8(twice) })).workbook;
    const figures = model.getters.getFigures(model.getters.getSheetIdByName(plan.name)!);
    expect(figures.map(({ tag }: any) => tag).sort()).toEqual(["chart", CHART_TAG].sort());
  });

  test("inserted into another workbook, shows in its chart the cells of the inserted sheet", async () => {
    const bytes = await saveXlsx((await open()).workbook);
    const port = await open();
    const { sheets, remarks } = await port.insertFile(bytes);
    const name = sheets.find((one) => one.startsWith("Driller"))!;
    expect(name).not.toBe(plan.name);
    expect(remarks).toEqual([]);
    const { model } = port.workbook;
    dispatch(model, "UPDATE_CELL", { sheetId: model.getters.getSheetIdByName(name), col: 9, row: 0, content: "555" });
    expect(drawn(model, name).series[0].points[0]).toEqual([0.1, 555]);
    expect(drawn(model).series[0].points[0]).toEqual([0.1, 700]);
  });
});
