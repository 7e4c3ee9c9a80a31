/**
 * A report in another language: it is complete in that language, with the same numbers; one choice puts strain first.
 */
import { demoSheet } from "../../src/datasheet";
import { LANGUAGES, type Language } from "../../src/pane/text/language";
import { inOneLanguage } from "../../src/pane/live/sheet-language";
import { translated } from "../../src/pane/text/messages";
import { cellCalled, RECORD_NAMES } from "../../src/record/record";
import { COLUMN_WIDTH, COLUMNS } from "../../src/report/page/page";
import type { ReportSource } from "../../src/report/page/source";
import { REPORT_CURVE, REPORT_LANGUAGE, reportSheet } from "../../src/report/report";
import type { SheetPlan } from "../../src/workbook/port";
import { charactersToPixels } from "../../src/workbook/embedded/look/styles";
import { textWidth } from "../datasheet/text-width";
import { opened } from "../workbook/embedded/opened";
import { cellsOf, sourceOf } from "./report-in-engine";
import type { EmbeddedPort } from "../../src/workbook/embedded";

let port: EmbeddedPort;
let sheet: string;
let source: ReportSource;

beforeAll(async () => {
  ({ port, sheet } = await opened(demoSheet("SI")));
  source = await sourceOf(port, sheet);
});

const inLanguage = (language: Language): Partial<ReportSource> => ({
  language,
  inWords: (value) => translated(value, language),
});

/** The texts of the report that a reader sees: cells of the pages, titles, axes and names of the charts. */
const textsOf = ({ cells, charts = [] }: SheetPlan): string[] => [
  ...cells.flatMap(({ col, value, formula }) =>
    col >= COLUMNS ? [] : [...(typeof value === "string" ? [value] : []), ...(formula ? quotedIn(formula) : [])],
  ),
  ...charts.flatMap(({ title, x, y, series }) => [title, x.label, y.label, ...series.map(({ name }) => name)]),
];

/** The texts that a formula shows, without texts that the formula only compares or passes to functions. */
function quotedIn(formula: string): string[] {
  return [...formula.matchAll(/(=)?"((?:[^"]|"")*)"/g)].flatMap(([, compared, text]) => (compared ? [] : [text ?? ""]));
}

/** English words that are common in sentences, and no German words. */
const ENGLISH =
  /\b(the|of|and|is|are|was|were|which|with|by|from|at|to|each|every|where|because|shows?|stands?|said|says|given|than|not|load|loads|stress|strain|curve|specimen|methods?|readings?|before|after|line|range|point|points)\b/gi;

/** The labels of the cells of the data sheet, which the report repeats unchanged. */
const LABELS = RECORD_NAMES.map((name) => cellCalled(name).replace(/ \([a-z_0-9]+\)$/, "")).filter(
  (label) => label.length > 3,
);

/** Texts of the test and labels of cells, which are repeated unchanged; listed at first use, when MADE is complete. */
let repeated: readonly string[] | undefined;
const repeatedTexts = (): readonly string[] =>
  (repeated ??= [
    ...new Set(
      [...LABELS, ...Object.values(source.values).flat(2)].filter(
        (cell): cell is string => typeof cell === "string" && cell.length > 2 && !MADE.has(cell),
      ),
    ),
  ]);

/** A text without the parts that are repeated unchanged. */
const own = (text: string): string =>
  repeatedTexts()
    .reduce((left, cell) => left.replaceAll(cell, ""), text)
    // A cell of the data sheet is called by its label there: "Dial factor (dial_factor)".
    .replace(/[A-Z][^().:;]*\([a-z_0-9]+\)/g, "");

/** The words that formulas of the data sheet produce; the report must translate them. */
const MADE = new Set<string>();

describe.each(LANGUAGES.filter((language) => language !== "en"))("in %s", (language) => {
  let plan: SheetPlan;
  let english: SheetPlan;

  beforeAll(() => {
    for (const name of ["load_remark", "preconsolidation_verdict", "specimen_remark", "field_remark", "quality_remark"])
      for (const [cell] of source.values[name] ?? []) if (typeof cell === "string") MADE.add(cell);
    for (const row of source.values.preconsolidation_spread ?? [])
      for (const cell of row) if (typeof cell === "string") MADE.add(cell);
    english = reportSheet(source).plan;
    plan = reportSheet({ ...source, ...inLanguage(language) }).plan;
  });

  test("no sentence of the demonstration's report is left in English", () => {
    const left = textsOf(plan)
      .filter((text) => (text.match(/\p{L}{2,}/gu)?.length ?? 0) >= 3)
      .filter((text) => (own(text).match(ENGLISH)?.length ?? 0) >= 2);
    expect(left).toEqual([]);
  });

  test("no text of three words or more equals the English one, except texts of the laboratory", () => {
    const typed = new Set(Object.values(source.values).flat(2));
    const inEnglish = new Set(textsOf(english).filter((text) => (text.match(/\p{L}{3,}/gu)?.length ?? 0) >= 3));
    expect(textsOf(plan).filter((text) => inEnglish.has(text) && !typed.has(text))).toEqual([]);
  });

  test("no heading of the tables of loads is cut off, and none in English", () => {
    const room = charactersToPixels(COLUMN_WIDTH) - 4;
    for (const one of [english, plan]) {
      const headings = one.cells.filter(({ kind, align, col }) => kind === "heading" && align && col < COLUMNS);
      expect(headings.length).toBeGreaterThan(40);
      const cut = headings.filter(({ value }) => textWidth(String(value ?? ""), "bold") > room);
      expect(cut.map(({ value }) => value)).toEqual([]);
    }
  });

  test("the report has the same parts: the same charts, the same names, the same live references", () => {
    const references = ({ cells }: SheetPlan) =>
      [
        ...new Set(
          cells.flatMap(({ formula, col }) =>
            formula && col < COLUMNS ? (formula.match(/\$[A-Z]+\$\d+/g) ?? []) : [],
          ),
        ),
      ].sort();
    expect(plan.charts).toHaveLength(english.charts!.length);
    expect(Object.keys(plan.names).sort()).toEqual(Object.keys(english.names).sort());
    // The basis of the indices is a live text in English, and a snapshot in other languages: it refers to stresses, void
    // ratios, the unit, and the three columns of picks.
    const lost = references(english).filter((one) => !references(plan).includes(one));
    expect(lost.length).toBeLessThanOrEqual(8);
    expect(references(plan).filter((one) => !references(english).includes(one))).toEqual([]);
  });

  test("no cell of its pages shows an error in the workbook, and numbers stay numbers", async () => {
    const report = await port.insertSheet(plan);
    const shown = cellsOf({ port, sheet, plan, report, missing: [] }).filter(({ col }) => col < COLUMNS);
    expect(shown.filter(({ text }) => /^#|NaN|Infinity/.test(text))).toEqual([]);
    const texts = shown.map(({ text }) => text).filter((text) => (own(text).match(ENGLISH)?.length ?? 0) >= 2);
    expect(texts).toEqual([]);
    const beforeIt = await port.insertSheet(english);
    const numbers = (cells: typeof shown) => cells.filter(({ value }) => typeof value === "number").length;
    const inEnglish = cellsOf({ port, sheet, plan: english, report: beforeIt, missing: [] });
    expect(numbers(shown)).toBe(numbers(inEnglish.filter(({ col }) => col < COLUMNS)));
  });
});

const valueOf = (plan: SheetPlan, name: string) => {
  const place = plan.names[name];
  return plan.cells.find(({ row, col }) => row === place?.row && col === place.col)?.value;
};

test("a value picked by hand is named as a German sheet has it, and the words of the person stay", () => {
  const pick = { row: 1, load: 3, of: "cv by", before: "log time", after: "root time", reason: "none", by: "AB" };
  const picks = [pick, { ...pick, row: 2, of: "d100", before: 512.3, after: 515 }];
  const plan = reportSheet({
    ...source,
    record: { ...source.record, picks },
    language: "de",
    inWords: inOneLanguage("de"),
  }).plan;
  const said = textsOf(plan).join("\n");
  expect(said).toContain("cv nach: log t wurde durch Wurzel t ersetzt");
  expect(said).toContain("d100: 512,3 wurde durch 515 ersetzt. Grund: none.");
});

test("the report keeps its language and the ordinate of its first curve", () => {
  const plain = reportSheet(source).plan;
  expect([valueOf(plain, REPORT_LANGUAGE), valueOf(plain, REPORT_CURVE)]).toEqual(["en", "e"]);
  const chosen = reportSheet({ ...source, ...inLanguage("de"), curve: "strain" }).plan;
  expect([valueOf(chosen, REPORT_LANGUAGE), valueOf(chosen, REPORT_CURVE)]).toEqual(["de", "strain"]);
});

test("one choice draws the first curve in strain and puts strain first in the table; the other ordinate stays among the plots", () => {
  const axes = (curve: "e" | "strain") =>
    reportSheet({ ...source, curve })
      .plan.charts!.filter(({ title }) => title.startsWith("Compression curve"))
      .map(({ y }) => y.label);
  expect(axes("e")).toEqual(["Void ratio e", "Axial strain"]);
  expect(axes("strain")).toEqual(["Axial strain", "Void ratio e"]);
  const columns = (curve: "e" | "strain") => {
    const { names } = reportSheet({ ...source, curve }).plan;
    return [names.report_strain!.col, names.report_void_ratio!.col];
  };
  expect(columns("e")).toEqual([6, 4]);
  expect(columns("strain")).toEqual([4, 6]);
});
