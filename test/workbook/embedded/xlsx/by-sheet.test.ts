/** What the engine reads of a file sheet by sheet is what it reads of the file at once. */
import "../engine-in-node";
import { strFromU8, unzipSync } from "fflate";
import { newWorkbook, saveXlsx } from "../../../../src/workbook/embedded";
import { runBatch, type Command } from "../../../../src/workbook/embedded/engine";
import { loading } from "../../../../src/workbook/embedded/xlsx/opening/by-sheet";
import { Parts } from "../../../../src/workbook/embedded/xlsx/parts";
import { atOnce } from "../../../../src/workbook/in-slices";
import { zone } from "../evaluation/sheets";

const PICTURE = "data:image/png;base64,iVBORw0KGgo=";

/** A chart of the engine's own. */
const lineOf = (dataRange: string) => ({
  ...{ type: "line", title: { text: dataRange }, legendPosition: "top", dataSetsHaveTitle: false },
  dataSource: { type: "range", dataSets: [{ dataRange, dataSetId: "0" }] },
  ...{ dataSets: [{ dataRange }], dataSetStyles: {}, labelsAsText: false, stacked: false, aggregated: false },
});

/** A sheet with a rule, a conditional format, merged cells, borders, a frozen row, a chart and a picture. */
const sheetWithAll = (number: number): Command[] => {
  const sheetId = `s${number}`;
  const place = { sheetId, col: 1, row: number, offset: { x: 3, y: 4 }, size: { width: 90, height: 60 } };
  const ranges = [{ _sheetId: sheetId, _zone: { left: 0, right: 0, top: 1, bottom: 3 } }];
  const style = { fillColor: number === 1 ? "#FF0000" : "#00FF00", bold: true };
  const rule = { type: "CellIsRule", operator: "isGreaterThan", values: [String(number)], style };
  return [
    { type: "CREATE_SHEET", sheetId, name: `Sheet of ${number}`, position: number, cols: 6, rows: 20 },
    ...[1, 2, 3].map((row) => ({ type: "UPDATE_CELL", sheetId, col: 0, row, content: String(row * number) })),
    { type: "ADD_CONDITIONAL_FORMAT", sheetId, ranges, cf: { id: "c", rule } },
    { type: "ADD_DATA_VALIDATION_RULE", sheetId, ranges, rule: { id: "r", criterion: { type: "isGreaterThan", values: [`=B${number}`] }, isBlocking: true } }, // prettier-ignore
    { type: "ADD_MERGE", sheetId, target: [zone(5, 0, number)], force: true },
    { type: "SET_ZONE_BORDERS", sheetId, target: [zone(1, 0, 2)], border: { position: "all", style: "thin", color: "#000000" } }, // prettier-ignore
    { type: "FREEZE_ROWS", sheetId, quantity: number },
    { type: "RESIZE_COLUMNS_ROWS", sheetId, dimension: "COL", elements: [2], size: 50 + number },
    {
      type: "CREATE_CHART",
      figureId: `f${number}`,
      chartId: `c${number}`,
      ...place,
      definition: lineOf(`A2:A${number + 2}`),
    },
    { type: "CREATE_IMAGE", figureId: `p${number}`, ...place, definition: { path: PICTURE, size: { width: 9, height: 9 }, mimetype: "image/png" } }, // prettier-ignore
  ];
};

/** The parts of a saved file with sheets of this kind, without the rows, which are read elsewhere. */
async function partsOf(count: number): Promise<[string, string][]> {
  const book = newWorkbook();
  expect(runBatch(book.model, Array.from({ length: count }, (_, i) => sheetWithAll(i + 1)).flat())).toEqual([]);
  const entries = Object.entries(unzipSync(await saveXlsx(book)));
  return entries
    .filter(([path]) => /\.(?:xml|rels)$/.test(path))
    .map(([path, bytes]) => [path, strFromU8(bytes).replace(/<sheetData>[^]*<\/sheetData>/, "<sheetData/>")]);
}

const PICTURES = Object.fromEntries([1, 2, 3].map((n) => [`xl/media/image${n}.png`, { imageSrc: PICTURE }]));

/** The engine makes the numbers of charts, and of figures whose number is taken, by chance. */
const withoutIds = (data: { sheets: { figures: { id: string; data: { chartId?: string } }[] }[] }) => {
  const figures = data.sheets.flatMap((sheet) => sheet.figures);
  for (const ids of [figures.map(({ id }) => id), figures.flatMap((one) => one.data.chartId ?? [])])
    expect(new Set(ids).size).toBe(ids.length);
  for (const figure of figures) {
    figure.id = "";
    delete figure.data.chartId;
  }
  return data;
};

test("three sheets with rules, formats, merges, borders, charts and pictures", async () => {
  const texts = await partsOf(3);
  const shares: number[] = [];
  const steps = loading(new Parts(texts), PICTURES, false);
  let next = steps.next();
  for (; !next.done; next = steps.next()) shares.push(next.value);
  const whole = atOnce(loading(new Parts(texts), PICTURES, true));
  expect(shares).toHaveLength(4);
  expect(whole.sheets).toHaveLength(4);
  expect(whole.sheets[2].conditionalFormats[0].rule.style.fillColor).toBe("#00FF00");
  expect(whole.sheets[3].figures.map(({ tag }: { tag: string }) => tag)).toEqual(["chart", "image"]);
  expect(withoutIds(next.value)).toEqual(withoutIds(whole));
});

test("with a table, the sheets are read together", async () => {
  const texts = await partsOf(2);
  const steps = loading(new Parts([...texts, ["xl/tables/table1.xml", "<table/>"]]), PICTURES, false);
  expect(steps.next().done).toBe(true);
});
