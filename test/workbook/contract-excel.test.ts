/**
 * Runs the contract on the Office adapter, with the strict stand-in for Excel, on the web and on the desktop.
 * @jest-environment jsdom
 */
import { cellAddress } from "../../src/workbook/address";
import { OfficePort } from "../../src/workbook/office";
import type { CellValue } from "../../src/workbook/port";
import { addressOf, boxOf } from "../excel/book/address";
import { sheetById, type Rule, type Series } from "../excel/book/book";
import { StrictExcel } from "../excel/strict-excel";
import { turns } from "../turns";
import { contract } from "./contract";
import type { Bench } from "./contract-bench";

/** The values of formulas in the contract, for tests that do not give a value. */
const SHOWN: Readonly<Record<string, CellValue>> = {
  "=CLAY.SEVEN()": 7,
  "=CLAY.NOTHING()": "#NAME?",
  "=B1*2": 25,
  "=Ring!B1+1": 13.5,
};

const opened: StrictExcel[] = [];

/** A bound of a rule as a number: Excel takes days as ISO dates. */
const boundOf = (bound: unknown): number =>
  typeof bound === "string" && /^\d{4}-/.test(bound) ? Date.parse(bound) / 86_400_000 + 25_569 : Number(bound);

const COMPARISONS: Readonly<Record<string, (value: number, first: number, second: number) => boolean>> = {
  Between: (value, first, second) => value >= first && value <= second,
  GreaterThan: (value, first) => value > first,
  GreaterThanOrEqualTo: (value, first) => value >= first,
};

/**
 * Whether Excel accepts a value in a cell with a rule: a value that fits is always accepted; another only if the rule
 * does not stop it.
 */
function fits(value: CellValue, { rule, errorAlert, ignoreBlanks = true }: Rule): boolean {
  if (!rule || errorAlert?.showAlert === false || (errorAlert?.style ?? "Stop") !== "Stop") return true;
  if (value === "") return ignoreBlanks;
  const [[kind, options]] = Object.entries(rule) as [string, Record<string, unknown>][];
  if (kind === "list") return String(options.source).split(",").includes(String(value));
  if (!["decimal", "date"].includes(kind)) throw new Error(`the contract knows no rule of the kind ${kind}`);
  const compare = COMPARISONS[String(options.operator)];
  if (!compare) throw new Error(`the contract knows no operator ${String(options.operator)}`);
  return typeof value === "number" && compare(value, boundOf(options.formula1), boundOf(options.formula2));
}

const byHand = (change: (sheets: Excel.WorksheetCollection) => void): Promise<void> =>
  Excel.run(async (context) => {
    change(context.workbook.worksheets);
    await context.sync();
  });

function open(platform: "web" | "desktop"): Bench {
  const shown = new Map<string, CellValue>();
  const excel = new StrictExcel({
    platform,
    evaluator: (formula, { sheet, row, col }) => shown.get(`${sheet}!${cellAddress(row, col)}`) ?? SHOWN[formula],
  });
  opened.push(excel);
  const port = new OfficePort();
  const named = (cells: Series["x"]): string =>
    cells ? `${sheetById(excel.book, cells.sheet)!.name}!${addressOf(cells.box)}` : "nothing";
  return {
    port,
    addSheet: (name) => byHand((sheets) => void sheets.add(name)),
    renameSheet: (sheet, name) => byHand((sheets) => void (sheets.getItem(sheet).name = name)),
    moveToFront: (sheet) => byHand((sheets) => void (sheets.getItem(sheet).position = 0)),
    deleteSheet: (sheet) => byHand((sheets) => sheets.getItem(sheet).delete()),
    type: (sheet, cell, content, value) => {
      if (value !== undefined) shown.set(`${sheet}!${cell}`, value);
      excel.sheet(sheet).put(cell, [[content]]);
      excel.settle();
      excel.tell("changed");
    },
    select: (sheet, ...addresses) => excel.select(sheet, addresses.join(",")),
    selectChart: (sheet) => excel.selectChart(sheet),
    hide: (sheet, { rows = [], cols = [] }) => {
      excel.sheet(sheet).hideRows(...rows);
      for (const col of cols) excel.sheet(sheet).sheet.hiddenCols.add(col);
    },
    hideSheet: (sheet) => void excel.sheet(sheet).hide(),
    nameForAll: (name, sheet, address) => void excel.sheet(sheet).name(name, address, "workbook"),
    deleteRow: (sheet, row) => void excel.sheet(sheet).deleteRow(row),
    typeUnbound: (sheet, cell, known) =>
      void excel.sheet(sheet).put(cell, [[known ? "=_xldudf_CLAY_SEVEN()" : "=_xldudf_CLAY_NOTHING()"]]),
    mayType: (sheet, cell, value) => {
      const { locked, rule } = excel.sheet(sheet).cell(cell);
      return !(locked && excel.sheet(sheet).sheet.protection.on) && (!rule || fits(value, rule));
    },
    cell: (sheet, address) => {
      const { value, format, look, note, rule } = excel.sheet(sheet).cell(address);
      const fill = look("format.fill.color");
      const align = String(look("format.horizontalAlignment")).toLowerCase();
      const list = (rule?.rule as { list?: { source: string } } | undefined)?.list;
      return {
        value,
        format: format === "General" ? "" : String(format),
        bold: look("format.font.bold") === true,
        italic: look("format.font.italic") === true,
        fill: fill === "#FFFFFF" ? undefined : String(fill),
        align: align === "general" ? undefined : align,
        wrap: look("format.wrapText") === true,
        note,
        choices: list?.source.split(","),
      };
    },
    sheet: (name) => {
      const { merges, widths, heights, frozen, charts, settings } = excel.sheet(name).sheet;
      const setting = (path: RegExp) => Object.entries(settings).find(([key]) => path.test(key))?.[1];
      const paper = setting(/paperSize$/);
      return {
        merges: merges.map((box) => addressOf(box)),
        // A character is 7 pixels wide, with 5 of margin, at 96 pixels to the inch.
        widths: Object.fromEntries([...widths].map(([col, points]) => [col, (points / 0.75 - 5) / 7])),
        heights: Object.fromEntries(heights),
        frozenRows: frozen.rows,
        charts: charts.map(({ properties, series }) => ({
          title: String(properties["title.text"]),
          series: series.map(({ name: called, x, y }) => ({ name: called, x: named(x), y: named(y) })),
        })),
        paper: paper === "A4" || paper === "Letter" ? paper : undefined,
        footer: setting(/rightFooter$/) as string | undefined,
      };
    },
    state: () => excel.picture(),
    // The stand-in reports a change in its next turn, and the adapter waits 50 ms for further changes.
    settle: () => turns(6, 20),
    lockStructure: () => excel.structure(true),
    protectWithPassword: (sheet) => void excel.sheet(sheet).protect({}, "secret"),
    nameBlocks: (sheet, name, addresses) =>
      void excel.sheet(sheet).name(name, addresses.map((one) => addressOf(boxOf(one)!)).join(",")),
  };
}

afterEach(() => {
  expect(opened.splice(0).flatMap(({ faults }) => faults)).toEqual([]);
});

for (const platform of ["web", "desktop"] as const)
  contract({
    called: `over the Office adapter in Excel, ${platform}`,
    open: () => open(platform),
    is: {
      calculates: false,
      undoes: false,
      locksStructure: true,
      locksSheets: false,
      hasPasswords: true,
      keepsApostrophes: true,
      losesNames: true,
      takesCharts: platform === "desktop",
      losesCells: true,
      namesBlocks: true,
    },
  });
