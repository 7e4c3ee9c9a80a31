/** The work of the summary in a workbook and with files, without a page. */
import "../../../workbook/embedded/engine-in-node";
import ExcelJS from "exceljs";
import { blankSheet, demoSheet } from "../../../../src/datasheet";
import { registerSheet } from "../../../../src/datasheet/register-sheet";
import { bookSheet } from "../../../../src/book/book-sheet";
import { runChecks, type Answered } from "../../../../src/checks";
import { answersSheet, asKept } from "../../../../src/checks/answers";
import { limitsSheet } from "../../../../src/checks/limits";
import { readRecord, RECORD_NAMES } from "../../../../src/record/record";
import { firstOf } from "../../../../src/reduction/numeric/lists";
import { COLUMNS } from "../../../../src/summary/columns";
import { FIRST_ROW } from "../../../../src/summary/summary-sheet";
import { cellAddress } from "../../../../src/workbook/address";
import {
  addFiles,
  bringUpToDate,
  insertCharts,
  insertSummary,
  type ChosenFile,
  type Course,
} from "../../../../src/pane/screens/summary/project";
import type { SummaryChoices } from "../../../../src/pane/screens/summary/summary-state";
import { text } from "../../../../src/pane/text";
import { opened } from "../../../workbook/embedded/opened";
import { FakePort } from "../../fake-port";
import { sheetOf } from "../../fake-workbook";
import { translatesAnswers } from "../../../translates-answers";

const CHOICES: SummaryChoices = { system: "SI", language: "en" };

translatesAnswers();

const words = text.summary;
const course = (): Course => ({
  tell: () => undefined,
  signal: new AbortController().signal,
  now: new Date("2026-03-01T12:00:00Z"),
});

let port: FakePort;
beforeEach(() => {
  port = new FakePort();
  port.workbook.sheets.push(sheetOf(demoSheet("SI"), "BH-1"), sheetOf(blankSheet("SI"), "BH-2"));
});

const formulaAt = (row: number, col: number) => port.sheet("Summary").cells.get(cellAddress(row, col))?.formula;

test("a summary has a row for each data sheet, and says which sheets it did not read", async () => {
  const { sentences } = await insertSummary(port, CHOICES, course());
  expect(sentences).toEqual([words.inserted("Summary"), words.added(["BH-1", "BH-2"]), words.unread(["Sheet1"])]);
  expect(formulaAt(FIRST_ROW, 0)).toBe(`=IF(COUNT('BH-1'!times_01)>=0,"BH-1","")`);
  expect(formulaAt(FIRST_ROW + 1, 1)).toBe(`=IF('BH-2'!boring="","",'BH-2'!boring)`);
});

test("a question is open where two data sheets have the same masses, until one has its own", async () => {
  const open = () => port.columns("Summary").summary_open_checks?.slice(0, 2) as number[];
  port.workbook.sheets = [sheetOf(demoSheet("SI"), "BH-1"), sheetOf(demoSheet("SI"), "BH-2")];
  await insertSummary(port, CHOICES, course());
  const ofOneSpecimen = open();
  port.put("BH-2", "sample", 0, "U8");
  await bringUpToDate(port, course());
  expect(open()).toEqual(ofOneSpecimen.map((count) => count + 1));
  port.put("BH-2", "ring_and_wet_after", 0, 250);
  port.put("BH-2", "ring_and_dry", 0, 150);
  await bringUpToDate(port, course());
  expect(open()[0]).toBe(ofOneSpecimen[0]);
});

test("as many questions are open as the Checks tab shows: by the limits of the firm, and without those that were answered", async () => {
  const open = () => port.columns("Summary").summary_open_checks?.[0];
  await insertSummary(port, CHOICES, course());
  const record = readRecord(
    Object.fromEntries(
      (await port.lookAt([{ sheet: "BH-1", values: RECORD_NAMES }])).flatMap(({ values }) => Object.entries(values)),
    ),
  );
  const isAsked = ({ answer }: Answered) => answer.status === "stop" || answer.status === "explain";
  const usual = runChecks(record).filter(isAsked);
  expect(open()).toBe(usual.length);
  port.workbook.sheets.push(sheetOf(limitsSheet(), "Limits"), sheetOf(answersSheet(), "Answers"));
  const strict = { "Q14.explain_above": 1 };
  port.put("Limits", "limit_value", port.columns("Limits").limit_name!.indexOf("Q14, explain above"), 1);
  await bringUpToDate(port, course());
  const asked = runChecks(record, strict).filter(isAsked);
  expect(asked.length).toBe(usual.length + 1);
  expect(open()).toBe(asked.length);
  const { check, answer } = firstOf(asked);
  const row = { answer_sheet: "BH-1", answer_check: check.id, answer_found: asKept("en", answer.sentence) };
  for (const [name, value] of Object.entries(row)) port.put("Answers", name, 0, value);
  await bringUpToDate(port, course());
  expect(open()).toBe(asked.length - 1);
});

test("the sheets of the add-in itself are not named as not read: register, limits, answers, readings, report, book", async () => {
  const { sheets } = port.workbook;
  sheets.push(sheetOf(registerSheet("SI"), "Register"), sheetOf(limitsSheet(), "Limits"));
  sheets.push(sheetOf(answersSheet(), "Answers"));
  const named = (name: string) => ({ ...answersSheet(), names: { [name]: { row: 0, col: 0, rows: 1, cols: 1 } } });
  sheets.push(sheetOf(named("logger_apparatus"), "Readings BH-1"), sheetOf(named("report_of"), "Report BH-1"));
  sheets.push(sheetOf(bookSheet("BH-1", [], []), "Calculation book BH-1"));
  const { sentences } = await insertSummary(port, CHOICES, course());
  expect(sentences.at(-1)).toBe(words.unread(["Sheet1"]));
});

test("a sheet that only programs see is not named as not read, unless it is a data sheet", async () => {
  const ofAddIn = { ...sheetOf(limitsSheet(), "_settings"), names: new Map(), isVeryHidden: true };
  port.workbook.sheets.push(ofAddIn);
  port.sheet("BH-2").isVeryHidden = true;
  const { sentences } = await insertSummary(port, CHOICES, course());
  expect(sentences.slice(1)).toEqual([words.added(["BH-1", "BH-2"]), words.unread(["Sheet1"])]);
});

test("a German summary has the formulas of an English one, and an update finds its columns", async () => {
  await insertSummary(port, CHOICES, course());
  const { sentences } = await insertSummary(port, { system: "SI", language: "de" }, course());
  expect(sentences[0]).toBe(words.inserted("Übersicht"));
  const cell = (sheet: string, row: number, col: number) => port.sheet(sheet).cells.get(cellAddress(row, col));
  expect(cell("Übersicht", FIRST_ROW - 2, 1)?.value).toBe("Bohrung");
  port.workbook.sheets.push(sheetOf(demoSheet("SI"), "BH-3"));
  for (const summary of ["Summary", "Übersicht"]) {
    port.workbook.front = summary;
    const updated = await bringUpToDate(port, course());
    expect(updated.sentences.slice(0, 2)).toEqual([words.upToDate(summary), words.added(["BH-3"])]);
  }
  // What was adopted, the quality of the sample and stages of wetting are named in the words of the summary.
  const IN_WORDS: Readonly<Record<string, RegExp>> = {
    summary_adopted: /"(Kompressionsbeiwert Cc|cv, Erstbelastung); "/,
    summary_quality_class: /"gut bis befriedigend"/,
    summary_wetting_stages: /" Stufen; diese: Laststufe "/,
  };
  const wordsIn = (col: number): RegExp | undefined =>
    Object.entries(IN_WORDS).find(([start]) => COLUMNS[col].name.startsWith(start))?.[1];
  for (const [row, col] of COLUMNS.flatMap((_, at) => [0, 1, 2].map((one) => [FIRST_ROW + one, at] as const)))
    if (wordsIn(col)) expect(cell("Übersicht", row, col)?.formula).toMatch(wordsIn(col)!);
    else expect(cell("Übersicht", row, col)).toEqual(cell("Summary", row, col));
});

test("the charts of a German summary are German", async () => {
  const { port: real } = await opened(demoSheet("SI"));
  await insertSummary(real, { system: "SI", language: "de" }, course());
  const { sentences } = await insertCharts(real, course());
  expect(sentences).toEqual([words.chartsInserted("Diagramme der Übersicht")]);
});

test("an update adds new sheets, and keeps what a person typed", async () => {
  await insertSummary(port, CHOICES, course());
  port.workbook.sheets.push(sheetOf(demoSheet("SI"), "BH-3"));
  const soil = cellAddress(FIRST_ROW, 5);
  port.sheet("Summary").cells.set(soil, { value: "my own words" });
  const { sentences } = await bringUpToDate(port, course());
  expect([port.noted, port.notes]).toEqual([["sheet of Summary", "summary of Summary", "summary of Summary"], []]);
  expect(sentences).toEqual([
    words.upToDate("Summary"),
    words.added(["BH-3"]),
    words.left([soil]),
    words.twins([["BH-1", "BH-3"]]),
    words.unread(["Sheet1"]),
  ]);
  expect(port.sheet("Summary").cells.get(soil)?.value).toBe("my own words");
});

test("stopped work has written nothing", async () => {
  const stopped = new AbortController();
  stopped.abort();
  await expect(insertSummary(port, CHOICES, { ...course(), signal: stopped.signal })).rejects.toThrow();
  expect(await port.sheetNames()).toEqual(["Sheet1", "BH-1", "BH-2"]);
});

test("without a data sheet, or without a summary, the screen says what to do first", async () => {
  await expect(bringUpToDate(port, course())).rejects.toThrow(words.none);
  port.onlySheets("Sheet1");
  await expect(insertSummary(port, CHOICES, course())).rejects.toThrow(words.noSheets);
});

describe("files", () => {
  const chosen = (name: string, bytes: Uint8Array): ChosenFile => ({
    name,
    arrayBuffer: async () => Uint8Array.from(bytes).buffer,
  });
  const fileOf = async (stress: number): Promise<Uint8Array> => {
    const workbook = new ExcelJS.Workbook();
    const sheet = workbook.addWorksheet("Test");
    [
      ["times_01", 0],
      ["boring", "BH-9"],
      ["stress_unit", "MPa"],
      ["preconsolidation_stress", stress],
    ].forEach(([name, value], index) => {
      sheet.getCell(index + 1, 2).value = value!;
      workbook.definedNames.add(`Test!$B$${index + 1}`, String(name));
    });
    return new Uint8Array((await workbook.xlsx.writeBuffer()) as ArrayBuffer);
  };

  test("are read by their names and converted; damaged files and other files are listed and skipped", async () => {
    await insertSummary(port, CHOICES, course());
    const budget = new ExcelJS.Workbook();
    budget.addWorksheet("Budget");
    const other = new Uint8Array((await budget.xlsx.writeBuffer()) as ArrayBuffer);
    const files = [
      chosen("a.xlsx", await fileOf(0.15)),
      chosen("b.xlsx", new Uint8Array([1, 2, 3])),
      chosen("c.xlsx", other),
    ];
    const { isWhole, sentences } = await addFiles(port, files, course());
    expect(isWhole).toBe(false);
    expect(sentences.slice(0, 4)).toEqual([
      words.upToDate("Summary"),
      expect.stringContaining("“b.xlsx” was skipped. It is no .xlsx workbook"),
      words.skipped("c.xlsx", words.noDataSheet),
      words.added(["a.xlsx, Test"]),
    ]);
    const columns = port.columns("Summary");
    expect(columns.summary_preconsolidation_stress?.[2]).toBeCloseTo(150, 9);
    expect(columns.summary_boring?.[2]).toBe("BH-9");
    expect(columns.summary_sha256?.[2]).toMatch(/^[0-9a-f]{64}$/);
  });

  test("the questions of a file are open by its own limits and answers, as on its Checks tab", async () => {
    await insertSummary(port, CHOICES, course());
    const openIn = async (name: string, others: Readonly<Record<string, Record<string, string | number>>>) => {
      const workbook = new ExcelJS.Workbook();
      const ofTest = { times_01: 0, stress_unit: "kPa", preconsolidation_stress: 150, length_unit: "mm" };
      for (const [sheet, rows] of Object.entries({ A: { ...ofTest, diameter: 60, initial_height: 30 }, ...others })) {
        const to = workbook.addWorksheet(sheet);
        Object.entries(rows).forEach(([called, value], index) => {
          to.getCell(index + 1, 2).value = value;
          workbook.definedNames.add(`${sheet}!$B$${index + 1}`, called);
        });
      }
      const bytes = new Uint8Array((await workbook.xlsx.writeBuffer()) as ArrayBuffer);
      await addFiles(port, [chosen(name, bytes)], course());
      const { summary_file: files = [], summary_open_checks: open = [] } = port.columns("Summary");
      return open[files.indexOf(`${name}, A`)];
    };
    const usual = await openIn("usual.xlsx", {});
    expect(usual).toBeGreaterThan(0);
    const limits = { limit_name: "Q11, diameter over height", limit_value: 1.9 };
    expect(await openIn("limits.xlsx", { Limits: limits })).toBe(Number(usual) - 1);
    const found = "size: diameter over height is 2, below 2.475: check it against the standard that you report to";
    const answer = { answer_sheet: "A", answer_check: "Q11", answer_found: found };
    expect(await openIn("answered.xlsx", { Answers: answer })).toBe(Number(usual) - 1);
  });

  test("a changed file is reported and read again; an unchanged file is reported", async () => {
    await insertSummary(port, CHOICES, course());
    await addFiles(port, [chosen("a.xlsx", await fileOf(0.15))], course());
    const bytes = await fileOf(0.2);
    expect((await addFiles(port, [chosen("a.xlsx", bytes)], course())).sentences[1]).toBe(
      words.changed(["a.xlsx, Test"]),
    );
    expect(port.columns("Summary").summary_preconsolidation_stress?.[2]).toBeCloseTo(200, 9);
    expect((await addFiles(port, [chosen("a.xlsx", bytes)], course())).sentences[1]).toBe(words.same(["a.xlsx, Test"]));
  });
});

test("charts are refused while there is nothing to draw", async () => {
  await insertSummary(port, CHOICES, course());
  await expect(insertCharts(port, course())).rejects.toThrow(words.nothingToDraw);
});
