/** Workbooks as a person saves them from the page of `npm start`, made with the page's own engine. */
import { bookSheet } from "../../../src/book/book-sheet";
import { calculationBook } from "../../../src/book/calculation-book";
import { answersSheet } from "../../../src/checks/answers";
import { comparisonSheet } from "../../../src/book/comparison";
import { limitsSheet } from "../../../src/checks/limits";
import { blankSheet, demoSheet, fillSheet } from "../../../src/datasheet";
import { readingSheet } from "../../../src/datasheet/reading-sheet";
import { registerSheet } from "../../../src/datasheet/register-sheet";
import type { FileRecord } from "../../../src/exchange/logger/file-sheet";
import { chartsSheet, everyLoad, seriesOf } from "../../../src/report/charts/series";
import type { Outcome } from "../../../src/reduction/outcome";
import { openXlsx, saveXlsx, type EmbeddedPort } from "../../../src/workbook/embedded";
import { insertCharts, insertSummary } from "../../../src/pane/screens/summary/project";
import { translated } from "../../../src/pane/text/messages";
import type { SheetPlan } from "../../../src/workbook/port";
import type { ReportSource } from "../../../src/report/page/source";
import { writeReading, writeStart } from "../../../src/pane/screens/bench/enter-reading";
import { writeReadings } from "../../../src/pane/screens/readings/into-workbook";
import { emptyWorkbook, reported, sourceOf } from "../../report/report-in-engine";
import { NAMES_WITH_FORMULAS, placedFormulas } from "../../../src/specification/placed-formulas";
import { foreignFile } from "./foreign-file";
import { english } from "../../../src/reduction/message";

const saved = (port: EmbeddedPort): Promise<Uint8Array> => saveXlsx(port.workbook);

const must = <T>(outcome: Outcome<T>): T => {
  if (!outcome.ok) throw new Error(english(outcome.reason));
  return outcome.value;
};

/** Lines of a logger's file, some of which a spreadsheet would read as something else. */
export const LINES = [
  "time;reading",
  "0,1;1250",
  "=1+1",
  "'007",
  "007",
  "1/2",
  "TRUE",
  "#N/A",
  "  two spaces in front & behind  ",
  'a <tag> & "quotes"',
  "_x0041_ is no escape",
  "a tab\tand a bell\u0007",
];

const record = (dataSheet: string): FileRecord => ({
  ...{ dataSheet, file: "frame-3.csv", sha256: "ab".repeat(32), hashOf: "the 120 bytes of the file" },
  ...{ encoding: "UTF-8", apparatus: "Frame 3", layoutWords: [["Time", "column A, minutes"]] },
  layout: {
    ...{ delimiter: ";", decimal: ",", firstLine: 2, time: 0, timeForm: "min", date: null, dateOrder: "ymd" },
    ...{ timesRun: "load", reading: 1, readingUnit: "div", sense: "rise", load: null, loadKind: "stress" },
    ...{ loadUnit: "", lever: 1, noReading: [] },
  } as unknown as FileRecord["layout"],
  loads: [{ load: 1, fromLine: 2, toLine: 2, rows: 1, kept: 1 }],
  remarks: [[12, "NAN: no number, left out"]],
  lines: LINES.length,
});

/** The demonstration in a firm's own layout: its named cells stand elsewhere, with their formulas and without labels. */
function firmSheet(): SheetPlan {
  const demo = demoSheet("SI");
  const moved = <T extends { readonly row: number; readonly col: number }>(one: T): T => ({
    ...one,
    row: one.row + 3,
    col: one.col + 2,
  });
  const names = Object.fromEntries(Object.entries(demo.names).map(([name, box]) => [name, moved(box)]));
  const places = new Map(Object.entries(names));
  const formulas = NAMES_WITH_FORMULAS.flatMap((name) => placedFormulas(name, { places })?.cells ?? []);
  const inputs = demo.cells.filter(({ kind, formula }) => kind === "input" && formula === undefined);
  return {
    ...{ ...demo, name: "Firm's form", rows: demo.rows + 3, cols: demo.cols + 2, names },
    cells: [...inputs.map(moved), ...formulas.map((cell) => ({ ...cell, kind: "result" as const }))],
    ...{ merges: [], entries: [], pages: undefined, charts: [], open: [], rowHeights: {}, freezeRows: 1 },
  };
}

/** Names of the files, and how each is made. */
export const PAGE_FILES: Readonly<Record<string, () => Promise<Uint8Array>>> = {
  "blank sheets": async () => {
    const port = await emptyWorkbook();
    await port.insertSheet(blankSheet("SI"));
    await port.insertSheet(blankSheet("US", { loads: 2 }));
    return saved(port);
  },
  "the demonstration with charts, the calculation book and the tables of the checks": async () => {
    const port = await emptyWorkbook();
    const sheet = await port.insertSheet(demoSheet("SI"));
    const { names, values, record: test } = await sourceOf(port, sheet);
    const data = { sheet, names, values };
    await port.insertSheet(chartsSheet("Charts", must(everyLoad(data, "log time"))));
    await port.insertSheet(
      chartsSheet("Compression", [must(seriesOf(data, { plot: "compression", value: "e", method: "casagrande" }))]),
    );
    await port.insertSheet(bookSheet(sheet, calculationBook(test, values), names));
    for (const plan of [comparisonSheet(), limitsSheet(), answersSheet()]) await port.insertSheet(plan);
    return saved(port);
  },
  "the report": async () => saved((await reported(demoSheet("US"), { paper: "Letter" })).port),
  "a project: summary and its charts, register, sheet of readings": async () => {
    const port = await emptyWorkbook();
    const course = { tell: () => undefined, signal: new AbortController().signal, now: new Date(2026, 2, 1) };
    // A long name and one that begins like a formula become the names of series.
    const called = (boring: string) => ({ boring: [boring] });
    const sheet = await port.insertSheet(fillSheet(demoSheet("SI"), called("x".repeat(300))));
    await port.insertSheet(fillSheet(demoSheet("US"), called("=BH 1")));
    await insertSummary(port, { system: "SI", language: "en" }, course);
    await insertCharts(port, course);
    await port.insertSheet(registerSheet("SI"));
    const { values, record: test } = await sourceOf(port, sheet);
    const readings = readingSheet(test, values, { loads: [1, 2], paper: "A4", sheet });
    if (!readings) throw new Error("the demonstration has no load to read");
    await port.insertSheet(readings);
    return saved(port);
  },
  "a German sheet with its report, locked as an issue": async () => {
    const issue = { number: 1, day: "2026-03-09", by: "NN", hash: "ab".repeat(32), valuesHash: "cd".repeat(32) };
    const inWords: ReportSource["inWords"] = (value) => translated(value, "de");
    return saved((await reported(demoSheet("SI", "de"), { language: "de", inWords, issue })).port);
  },
  "a copy of the report with values": async () =>
    saveXlsx((await reported(demoSheet("SI"))).port.workbook, undefined, {
      sheet: "Values only",
      lines: ["This file is a copy with values."],
    }),
  "kept lines of a logger": async () => {
    const port = await emptyWorkbook();
    const dataSheet = await port.insertSheet(blankSheet("SI", { loads: 1 }));
    const job = { dataSheet, columns: {}, blank: [], record: record(dataSheet), lines: LINES, keptAll: "all lines" };
    await writeReadings(port, job, undefined, () => undefined, new AbortController().signal);
    return saved(port);
  },
  "a firm's own layout with its formulas, and readings of the bench": async () => {
    const port = await emptyWorkbook();
    await port.insertSheet(firmSheet());
    const bench = await port.insertSheet(blankSheet("SI", { loads: 2 }));
    await port.fillNames(bench, { load_stress: [25, 50] });
    const { times_01: times = [] } = await port.readNames(bench, ["times_01"]);
    const written = [await writeStart(port, bench, 1, 46_090.375)];
    for (const [index, reading] of [1_250, 1_262, 1_271].entries()) {
      const held = times[index]?.[0];
      const timeBefore = typeof held === "number" ? held : "";
      written.push(await writeReading(port, bench, { load: 1, row: index + 1, time: index / 10, reading, timeBefore }));
    }
    if (written.some((one) => one !== "written")) throw new Error("a reading of the bench was not written");
    return saved(port);
  },
  "a file of others, inserted": async () => {
    const port = await emptyWorkbook();
    await port.insertFile(await foreignFile());
    return saved(port);
  },
  "a file of others, opened": async () => saveXlsx(openXlsx(await foreignFile()).workbook),
};
