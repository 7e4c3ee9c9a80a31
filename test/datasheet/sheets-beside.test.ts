/** The sheets that the add-in writes beside a German data sheet are German, and nothing of them is cut off. */
import { bookSheet } from "../../src/book/book-sheet";
import type { Entry } from "../../src/book/calculation-book";
import { comparisonSheet } from "../../src/book/comparison";
import { inNumbers } from "../../src/book/line";
import { answersSheet } from "../../src/checks/answers";
import { limitsSheet } from "../../src/checks/limits";
import { demoSheet } from "../../src/datasheet";
import { readingSheet } from "../../src/datasheet/reading-sheet";
import { registerSheet } from "../../src/datasheet/register-sheet";
import { wettingSeries } from "../../src/datasheet/wetting-series";
import { fileSheet } from "../../src/exchange/logger/file-sheet";
import { inOneLanguage } from "../../src/pane/live/sheet-language";
import { readRecord, type TestRecord } from "../../src/record/record";
import { charactersToPixels } from "../../src/workbook/embedded/look/styles";
import { wordIn } from "../../src/specification/list-words";
import type { SheetLanguage } from "../../src/specification/text/language";
import { wordsOf } from "../../src/specification/text/words";
import { chartsSheet } from "../../src/summary/charts";
import { SUMMARY_UNITS } from "../../src/summary/columns";
import { summarySheet } from "../../src/summary/summary-sheet";
import type { CellPlan, SheetPlan } from "../../src/workbook/port";
import { namedValues } from "./read-sheet";
import { textWidth } from "./text-width";

/** The texts that a language words: no entry, and no unit without words, such as "mm". */
const isWorded = ({ kind, value }: CellPlan): boolean =>
  kind !== "input" && (kind !== "unit" || /[a-z]{5}/.test(String(value)));
const textsOf = ({ cells }: SheetPlan): string[] =>
  cells.filter(isWorded).flatMap(({ value }) => (typeof value === "string" && value !== "" ? [value] : []));

/** Headings that are wider than their column. */
const cut = ({ cells, columnWidths }: SheetPlan): string[] =>
  cells.flatMap(({ kind, col, value }) =>
    kind === "heading" &&
    typeof value === "string" &&
    textWidth(value, "bold") > charactersToPixels(columnWidths[col]) - 8
      ? [value]
      : [],
  );

/** One line of a calculation book on cv of load 3. */
const ENTRY: Entry = {
  ...{ name: "cv_log_time", load: 3, row: 2, value: 1, unit: "m2/yr" },
  said: inNumbers("c_v = 1.25"),
};
const bookOf = (language: SheetLanguage = "en"): SheetPlan =>
  bookSheet("T", [ENTRY], [], language, inOneLanguage(language));

const SHEETS: Record<string, (language?: SheetLanguage) => SheetPlan> = {
  register: (language) => registerSheet("SI", language),
  series: (language) => wettingSeries("SI", language),
  "sheet of answers": answersSheet,
  "sheet of comparisons": comparisonSheet,
  "sheet of limits": (language = "en") => limitsSheet(language, inOneLanguage(language)),
};

describe.each(Object.entries(SHEETS))("the %s", (_, make) => {
  const [english, german] = [make(), make("de")];

  test("has every text in German, and the same cells, lists and names", () => {
    expect(textsOf(german).filter((text) => textsOf(english).includes(text))).toEqual([]);
    expect(german.name).not.toBe(english.name);
    expect(german.names).toEqual(english.names);
    expect(german.cells.map(({ choices }) => choices)).toEqual(
      english.cells.map(({ choices }) => choices?.map((word) => wordIn("de", word))),
    );
    expect(cut(german)).toEqual([]);
  });
});

test("a calculation book has German labels, and a comma in its numbers", () => {
  const [english, german] = [bookOf(), bookOf("de")];
  expect(german).toMatchObject({ name: "Rechenbuch", names: english.names });
  expect(textsOf(german).filter((text) => textsOf(english).includes(text))).toEqual([]);
  expect(textsOf(german)).toEqual(expect.arrayContaining(["Rechenbuch von T", "c_v = 1,25"]));
  expect(cut(german)).toEqual([]);
});

test("the sheet to fill in by hand follows the language of the data sheet", async () => {
  const values = await namedValues(demoSheet("SI", "de"));
  const plan = readingSheet(readRecord(values), values, { paper: "A4", sheet: "Versuch 1" })!;
  expect(plan.name).toBe("Ablesungen Versuch 1");
  const texts = textsOf(plan).join("\n");
  expect(texts).toContain("Ablesungen eines Ödometerversuchs");
  expect(texts).toMatch(/Laststufe 1: /);
  expect(texts).toContain("Belastet am 2031-03-03");
  expect(texts).not.toMatch(/\b(Load|Reading|Clock|Applied|hanger|Data sheet|Frame|Dial)\b/);
  expect(plan.hostWords?.page).toBe("Seite &P von &N");
  expect(cut(plan)).toEqual([]);
});

/** The texts of the charts of a summary: the sheet, the charts, their axes and series, and the headings of the numbers. */
const textsOfCharts = (record: TestRecord, language?: SheetLanguage): string[] => {
  const curve = { sheet: "Test 1", called: "a", record, hasVoidIndex: true };
  const drawn = { sheet: "S", boxes: new Map(), rows: [0] };
  const { plan, cells } = chartsSheet(drawn, [curve], () => [1, 2], SUMMARY_UNITS.SI, language);
  const ofCharts = plan.charts!.flatMap(({ title, x, y, series }) => [
    title,
    ...[x.label, y.label].map((label) => label.split(", ")[0]),
    ...series.map(({ name }) => name),
  ]);
  const headings = cells.flatMap((cell) => ("value" in cell && typeof cell.value === "string" ? [cell.value] : []));
  return [plan.name, ...textsOf(plan), ...ofCharts, ...headings.map((text) => text.replace(/: x$/, ""))];
};

test("the charts of a German summary are German", async () => {
  const record = readRecord(await namedValues(demoSheet("SI")));
  const english = textsOfCharts(record);
  expect(english.length).toBeGreaterThan(40);
  const same = textsOfCharts(record, "de").filter((text, index) => text === english[index]);
  expect([...new Set(same)].sort()).toEqual(["Cc", "Iv", "a", "cv", "e", "e / e0", "e/e0", "w0", "y"]);
});

/** The sheets of a file whose lines are kept, and of pasted rows that are not. */
const FILE = {
  ...{ dataSheet: "T", sha256: "ab", hashOf: "", encoding: "UTF-8", apparatus: "F", layoutWords: [], loads: [] },
  // The layout and the way of reading only travel through this test.
  ...{ layout: {} as never, read: {} as never, remarks: [[1, "x"]] as const },
};
const FILE_SHEETS = [fileSheet({ ...FILE, file: "a.csv", lines: 7 }), fileSheet({ ...FILE, file: "", lines: 0 })];

test("no text stands in the table that no sheet has", async () => {
  const plans = [...Object.values(SHEETS).map((make) => make()), summarySheet("SI"), bookOf(), ...FILE_SHEETS];
  const record = readRecord(await namedValues(demoSheet("SI")));
  const all = [...plans.flatMap((plan) => [plan.name, ...textsOf(plan)]), ...textsOfCharts(record)];
  const ofReadings = /\{0\}|hanger|Readings of a|Time, min|Clock|Reading|By|Filled|Language of this sheet/;
  const { beside } = wordsOf("de");
  expect(Object.keys(beside).filter((text) => !all.includes(text) && !ofReadings.test(text))).toEqual([]);
});
