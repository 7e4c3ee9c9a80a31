/** @jest-environment jsdom */
/** The printed pages of a new sheet, in the strict stand-in for Excel. */
import { english } from "../../../../src/reduction/message";
import { OfficePort } from "../../../../src/workbook/office";
import type { SheetPlan } from "../../../../src/workbook/port";
import { StrictExcel } from "../../../excel/strict-excel";
import { PLAN } from "../plan";

const port = new OfficePort();

/** A report of `count` pages of 60 rows, with eight columns of 11 characters. */
const pagesOf = (count: number): SheetPlan => ({
  ...PLAN,
  rows: 60 * count,
  cols: 8,
  columnWidths: Object.fromEntries(Array.from({ length: 8 }, (_, col) => [col, 11])),
  paper: "A4",
  footer: "Report 1",
  pages: Array.from({ length: count }, (_, page) => ({ row: 60 * page, col: 0, rows: 60, cols: 8 })),
});

async function printed(plan: SheetPlan, prepare: (excel: StrictExcel) => void = () => undefined) {
  const excel = new StrictExcel();
  excel.switches.limitsPrintArea = true;
  prepare(excel);
  const told: string[] = [];
  const name = await port.insertSheet(plan, (sentence) => told.push(english(sentence)));
  expect(excel.faults).toEqual([]);
  const layout = Object.fromEntries(
    Object.entries(excel.sheet(name).sheet.settings).map(([path, value]) => [path.replace(/^pageLayout\./, ""), value]),
  );
  return { excel, told, layout };
}

test("few pages are areas of their own, each as wide as the paper, with titles, footer and paper", async () => {
  const { layout, told } = await printed(pagesOf(3));
  expect(told).toEqual([]);
  expect(layout).toMatchObject({
    orientation: "Portrait",
    zoom: { horizontalFitToPages: 1 },
    printArea: "$A$1:$H$60,$A$61:$H$120,$A$121:$H$180",
    titleRows: "$1:$1",
    paperSize: "A4",
    "headersFooters.defaultForAllPages.leftFooter": "&F\n&A",
    "headersFooters.defaultForAllPages.rightFooter": "Page &P of &N\nReport 1  |  Printed &D &T",
  });
});

test("where a semicolon stands between areas, as in a German region, the pages are areas of their own as well", async () => {
  const { layout, told } = await printed(pagesOf(3), (one) => (one.switches.listSeparator = ";"));
  expect(told).toEqual([]);
  expect(layout).toMatchObject({
    zoom: { horizontalFitToPages: 1 },
    printArea: "$A$1:$H$60,$A$61:$H$120,$A$121:$H$180",
    titleRows: "$1:$1",
    paperSize: "A4",
  });
});

test("an Excel that takes several areas in no form prints one area with breaks", async () => {
  const { layout, told, excel } = await printed(pagesOf(3), (one) =>
    one.failures.refuse(/setPrintArea\(".*[,;]/, "InvalidArgument"),
  );
  expect(told).toEqual([]);
  expect(layout.printArea).toBe("$A$1:$H$180");
  expect(layout.zoom).toEqual({ scale: 100 });
  expect(excel.lines.filter((line) => /horizontalPageBreaks\.add/.test(line))).toHaveLength(2);
});

test("pages beside one another are not cut by breaks: a sentence says that they were not set", async () => {
  const plan = pagesOf(2);
  const pages = [
    { row: 0, col: 0, rows: 60, cols: 4 },
    { row: 30, col: 4, rows: 90, cols: 4 },
  ];
  const { told, excel } = await printed({ ...plan, pages }, (one) =>
    one.failures.refuse(/setPrintArea\(".*[,;]/, "InvalidArgument"),
  );
  expect(told).toEqual([expect.stringMatching(/^Excel did not take the printed pages of the sheet/)]);
  expect(excel.lines.filter((line) => /PageBreaks\.add/.test(line))).toEqual([]);
});

test("21 pages would need 285 characters: they are one area with breaks, at a scale, since Excel ignores breaks of fitted pages", async () => {
  const { layout, told, excel } = await printed(pagesOf(21));
  expect(told).toEqual([]);
  expect(layout.printArea).toBe("$A$1:$H$1260");
  expect(layout.zoom).toEqual({ scale: 100 });
  const breaks = excel.lines.filter((line) => /PageBreaks\.add/.test(line));
  expect(breaks).toHaveLength(20);
  expect(breaks[0]).toContain("getRangeByIndexes(60,0,1,1)");
  expect(breaks[19]).toContain("getRangeByIndexes(1200,0,1,1)");
});

test("wide pages are in landscape; as one area they get a scale at which they fit", async () => {
  const plan = pagesOf(21);
  const { layout } = await printed({
    ...plan,
    columnWidths: Object.fromEntries(plan.pages!.map((_, col) => [col, 22])),
  });
  expect(layout.orientation).toBe("Landscape");
  // 8 columns of 22 characters: 8 x (22 x 7 + 5) pixels of 0.75 points are 954; A4 in landscape shows 741.
  expect(layout.zoom).toEqual({ scale: 77 });
});

test("without a printer the sheet is made, and a sentence says what was not set", async () => {
  const { excel, told } = await printed(pagesOf(3), (one) => (one.switches.hasNoPrinter = true));
  expect(excel.sheet("Test").cell("A1").value).toBe("Consolidation test");
  expect(told).toEqual([
    expect.stringMatching(
      /^Excel did not take the printed pages.*paper size A4 of the sheet, as where no printer is set up: look at Page Layout/,
    ),
  ]);
});

test("an Excel that does not freeze rows makes the sheet, and a sentence says how to freeze them", async () => {
  const { excel, layout, told } = await printed(pagesOf(3), (one) =>
    one.failures.refuse(/freezePanes\.freezeRows/, "GeneralException"),
  );
  expect(layout.titleRows).toBe("$1:$1");
  expect(excel.sheet("Test").sheet.frozen).toEqual({ rows: 0, cols: 0 });
  expect(told).toEqual(["Excel did not freeze the first rows of the sheet: choose View, Freeze Panes."]);
});

test("an Excel that does not fit pages to the paper prints them at a scale at which they fit", async () => {
  const { layout } = await printed(
    { ...pagesOf(3), columnWidths: Object.fromEntries(Array.from({ length: 8 }, (_, col) => [col, 22])) },
    (one) => one.failures.refuse(/zoom = \{"horizontalFitToPages/, "GeneralException"),
  );
  expect(layout.zoom).toEqual({ scale: 77 });
});

test("one refused setting does not stop the others", async () => {
  const { layout, told } = await printed(pagesOf(3), (one) => one.failures.refuse(/paperSize =/, "InvalidArgument"));
  expect(layout.printArea).toBe("$A$1:$H$60,$A$61:$H$120,$A$121:$H$180");
  expect(layout["headersFooters.defaultForAllPages.leftFooter"]).toBe("&F\n&A");
  expect(told).toEqual([expect.stringMatching(/^Excel did not take the paper size A4 of the sheet,/)]);
});
