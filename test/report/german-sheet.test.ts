/**
 * Report, charts, AGS4 file, calculation book and summary of a German sheet: their numbers are those of the English
 * sheet, and each is in one language.
 */
import { calculationBook } from "../../src/book/calculation-book";
import { demoSheet, FIELDS, fillSheet } from "../../src/datasheet";
import { toAgs4 } from "../../src/exchange/ags4";
import { inOneLanguage, speakOfSheet } from "../../src/pane/live/sheet-language";
import type { Language } from "../../src/pane/text/language";
import { chartOfSheet } from "../../src/pane/screens/plots/native-chart";
import { drawSheet, SHEET_CHOICES, type SheetChoices } from "../../src/pane/screens/plots/sheet-drawing";
import { readRecord } from "../../src/record/record";
import { labelOn } from "../../src/record/labels/sheet-labels";
import { reportSheet, type ReportSource } from "../../src/report/report";
import { COLUMNS } from "../../src/report/page/page";
import { STATE_COLUMNS } from "../../src/report/sections/state";
import { wordsOf } from "../../src/specification/text/words";
import type { SheetPlan } from "../../src/workbook/port";
import { footerText } from "../../src/workbook/look/footer";
import { translatesAnswers } from "../translates-answers";
import { englishLeft } from "../datasheet/german/english-words";
import { opened } from "../workbook/embedded/opened";
import { cellsOf, sourceOf, type Reported } from "./report-in-engine";

/** Without a table of deflection, each load has a remark of the sheet before those of the functions. */
const BARE = { apparatus_stress: Array(11).fill("") };
/** Cc and a cv are adopted: the sheet says so in its own words before the remarks of the functions. */
const ADOPTED = {
  adopted_value: ["", 0.5],
  adopted_by: ["", "AB"],
  adopted_cv: [0.4],
  adopted_cv_reason: ["B 7"],
};
/** What an AGS4 file needs besides. */
const ADDED = { sample_top: 7, sample_type: "UT", sample_id: "X1-7" };
/** What a person would have typed in German. */
const TYPED = wordsOf("de").demo;

type Sources = Record<Language, { readonly port: Reported["port"]; readonly source: ReportSource }>;
const sources: Partial<Sources> = {};
const of = (sheet: Language) => sources[sheet]!;

/** A report of the sheet in a language, with an issue, in the workbook. */
async function reportOf(sheet: Language, language: Language) {
  const { port, source } = of(sheet);
  const issue = { number: 1, day: "2026-03-09 14:05", by: "AN", hash: "ab12", valuesHash: "cd34" };
  const { plan, missing } = reportSheet({ ...source, issue, language, inWords: inOneLanguage(language) });
  const report = await port.insertSheet(plan);
  const cells = cellsOf({ port, sheet: source.sheet, plan, missing, report });
  // A function spills the labels of the lines that a chart draws over the cells below its formula.
  const { getters } = port.workbook.model;
  const sheetId = getters.getSheetIdByName(report)!;
  const spilled = plan.cells
    .filter(({ formula = "" }) => /CLAY\.\w+_LINES\(/.test(formula))
    .flatMap(({ row, col }) =>
      Array.from({ length: 150 }, (_, index) => getters.getEvaluatedCell({ sheetId, row: row + index, col }).value),
    );
  return { plan, missing, cells, spilled, pages: cells.filter(({ col }) => col < COLUMNS) };
}

translatesAnswers();
beforeAll(async () => {
  for (const language of ["en", "de"] as const) {
    const typedInEnglish = language === "de" ? englishTyped() : {};
    const plan = fillSheet(demoSheet("SI", language), { ...typedInEnglish, ...BARE, ...ADOPTED, ...ADDED });
    const { port, sheet } = await opened({ ...plan, name: "Test 7" });
    sources[language] = { port, source: await sourceOf(port, sheet) };
  }
  // The pane speaks of the German sheet: a report does not call cells as the pane does.
  speakOfSheet("de");
});
afterAll(() => speakOfSheet("en"));

/** The languages of the labels of blank cells that a text has. */
const labelsIn = (text: string): string[] =>
  ["checked_by", "tested_by", "date_tested"].map((name) =>
    (["en", "de"] as const).filter((language) => text.includes(labelOn(language, name))).join(),
  );

/** What the English demonstration has where the German one has German words, so that both differ in the sheet's own. */
function englishTyped() {
  const { cells, names } = demoSheet("SI");
  return Object.fromEntries(
    Object.keys(TYPED).map((name) => {
      const place = names[name];
      return [name, cells.find(({ row, col }) => row === place.row && col === place.col)?.value ?? ""];
    }),
  );
}

test("the English report of a German sheet is that of the English sheet, cell by cell, and shows no error", async () => {
  const [english, german] = [await reportOf("en", "en"), await reportOf("de", "en")];
  expect(german.pages.filter(({ text }) => /^#|NaN|Infinity/.test(text))).toEqual([]);
  expect(german.pages).toEqual(english.pages);
  expect(labelsIn(german.pages.map(({ text }) => text).join(" "))).toEqual(["en", "en", "en"]);
  // The columns before the numbers of the charts hold the lengths of texts.
  const numbers = ({ cells }: typeof english) =>
    cells.filter(({ value, col }) => typeof value === "number" && col > STATE_COLUMNS);
  expect(numbers(english).length).toBeGreaterThan(500);
  expect(numbers(german)).toEqual(numbers(english));
  expect(german.plan.charts).toEqual(english.plan.charts);
  expect(german.missing).toEqual(english.missing);
});

test("the German report is the same from either sheet, and has no English label", async () => {
  const [english, german] = [await reportOf("en", "de"), await reportOf("de", "de")];
  expect(german.pages).toEqual(english.pages);
  expect(german.plan.charts).toEqual(english.plan.charts);
  expect(footerText(german.plan)).toMatch(/Seite &P von &N[^]*Bericht .*Gedruckt &D/);
  const text = german.pages.map((cell) => cell.text).join(" ");
  expect(text).toContain("nicht um das Gerät berichtigt");
  expect(labelsIn(text)).toEqual(["de", "de", "de"]);
  expect(text).toContain("Zur Kurve: Kompressionsbeiwert Cc eingesetzt: 0,5 von AB, ohne Begründung");
  expect(text).toContain("Cc, eingesetzt: 0,5. Grund: (nicht angegeben). Von AB");
  const share = german.pages.filter(({ text }) => /, \d+ %$/.test(text)).map(({ text }) => text.replace(/\d+/, "N"));
  expect(share).toEqual(["die Korndichte (Gs), N %", "die Korndichte (Gs), N %"]);
});

/** What a person may read of the charts of a plan. */
const textsOfCharts = ({ charts = [] }: SheetPlan): string[] =>
  charts.flatMap(({ title, x, y, series }) => [title ?? "", x.label, y.label, ...series.map(({ name }) => name)]);

test("the German report of a German sheet has no English word, on its pages, beside them and in its charts", async () => {
  const { cells, plan, spilled } = await reportOf("de", "de");
  const typed = Object.values(englishTyped()).filter((value) => typeof value === "string" && value.length > 3);
  // Names of cells are the same in every language.
  const shown = [...cells.map(({ value }) => value), ...spilled].flatMap((value) =>
    typeof value === "string" &&
    !typed.some((one) => value.includes(String(one))) &&
    !FIELDS.some(({ name }) => name === value)
      ? [value]
      : [],
  );
  expect(shown.length).toBeGreaterThan(500);
  // The function spills the labels of its lines in German, and the formulas beside it find each of them.
  expect(shown).toEqual(expect.arrayContaining(["Wendetangente", "Winkelhalbierende"]));
  expect(textsOfCharts(plan).length).toBeGreaterThan(20);
  expect(englishLeft([...new Set([plan.name, ...shown, ...textsOfCharts(plan)])])).toEqual([]);
});

test("no native chart of a German sheet has an English word, whatever its plot", () => {
  const { source } = of("de");
  const { sheet, names, values } = source;
  const record = readRecord(values);
  const plots = ["compression", "field", "intrinsic", "time", "cv", "cAlpha", "all"] as const;
  const ways = plots.flatMap((plot): SheetChoices[] => [
    { ...SHEET_CHOICES, plot },
    { ...SHEET_CHOICES, plot, axis: "root", value: "strain", at: "d100", method: "work" },
  ]);
  const texts = ways.flatMap((choices) => {
    const drawn = drawSheet(record, choices);
    const chart = chartOfSheet({ sheet, names, values }, record, choices, drawn.ok ? drawn.value : undefined);
    if (!chart.ok) return [inOneLanguage("de")(chart.reason)];
    expect(footerText(chart.value)).toMatch(/Seite &P von &N[^]*Gedruckt &D/);
    const { name, cells } = chart.value;
    const headings = cells.flatMap(({ value }) => (typeof value === "string" ? [value] : []));
    return [name, ...headings, ...textsOfCharts(chart.value)];
  });
  expect(texts.length).toBeGreaterThan(100);
  expect(englishLeft([...new Set(texts)])).toEqual([]);
});

test("native charts, the AGS4 file and the calculation book are those of the English sheet", () => {
  const made = (sheet: Language) => {
    const { source } = of(sheet);
    const { names, values } = source;
    const record = readRecord(values);
    const file = { issue: "1", date: "2031-03-21", producer: "A", recipient: "B", status: "Draft" } as const;
    const drawn = drawSheet(record, SHEET_CHOICES);
    return {
      chart: drawn.ok
        ? chartOfSheet({ sheet: source.sheet, names, values }, record, SHEET_CHOICES, drawn.value)
        : drawn,
      file: toAgs4(record, file),
      book: calculationBook(record, values).map((entry) => ({ ...entry, unit: entry.unit.replace(/\/a$/, "/yr") })),
    };
  };
  const [english, german] = [made("en"), made("de")];
  expect([english.chart.ok, english.file.ok, english.book.length > 100]).toEqual([true, true, true]);
  expect(german).toEqual(english);
});
