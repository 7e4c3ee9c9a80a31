/** Sheets that the add-in writes beside a German data sheet show no English word: looked at word by word. */
import { comparisonRow, comparisonSheet, quantities } from "../../../src/book/comparison";
import { LIMITS, limitsSheet } from "../../../src/checks/limits";
import { answersSheet } from "../../../src/checks/answers";
import { demoSheet, workings } from "../../../src/datasheet";
import { registerSheet } from "../../../src/datasheet/register-sheet";
import { wettingSeries } from "../../../src/datasheet/wetting-series";
import { fileSheet } from "../../../src/exchange/logger/file-sheet";
import { inOneLanguage } from "../../../src/pane/live/sheet-language";
import { CATALOGUES } from "../../../src/pane/text";
import { readRecord } from "../../../src/record/record";
import { summarySheet } from "../../../src/summary/summary-sheet";
import type { SheetName, SheetPlan } from "../../../src/workbook/port";
import { footerText } from "../../../src/workbook/look/footer";
import { charactersToPixels } from "../../../src/workbook/embedded/look/styles";
import { namedValues } from "../read-sheet";
import { textWidth } from "../text-width";
import { englishLeft } from "./english-words";

const textsOf = ({ name, cells }: SheetPlan): string[] => [
  name,
  ...cells.flatMap(({ value, choices = [] }) => [...choices, ...(typeof value === "string" ? [value] : [])]),
];

/** The kept lines of a file, the lines of which are here or not. */
const kept = (lines: number, file: string): SheetPlan =>
  fileSheet({
    ...{ dataSheet: "T", sha256: "ab", hashOf: "", encoding: "UTF-8", apparatus: "F", layoutWords: [], loads: [] },
    // The layout and the way of reading only travel through this test.
    ...{ layout: {} as never, read: {} as never, remarks: [], lines, file },
    language: "de",
  });

test.each<[string, () => SheetPlan]>([
  ["limits", () => limitsSheet("de", inOneLanguage("de"))],
  ["answers", () => answersSheet("de")],
  ["comparison by hand", () => comparisonSheet("de")],
  ["register", () => registerSheet("SI", "de")],
  ["series of wetted specimens", () => wettingSeries("SI", "de")],
  ["summary", () => summarySheet("SI", "de")],
  ["kept lines of a file", () => kept(7, "a.csv")],
  ["pasted rows whose lines are not kept", () => kept(0, "")],
])("the sheet of %s", (_, make) => {
  const plan = make();
  const texts = textsOf(plan);
  expect(texts.length).toBeGreaterThan(5);
  expect(englishLeft(texts)).toEqual([]);
  expect(footerText(plan)).toMatch(/Seite &P von &N[^]*Gedruckt &D/);
});

test("the sentences that refuse an entry on a data sheet", () => {
  const refused = (demoSheet("SI", "de").entries ?? []).map(({ message }) => message);
  expect(refused.length).toBeGreaterThan(50);
  expect(englishLeft(refused)).toEqual([]);
});

test("the sheet of limits names every limit and every unit in German", () => {
  const texts = textsOf(limitsSheet("de", inOneLanguage("de")));
  expect(texts.length).toBeGreaterThan(3 * LIMITS.length);
  expect(texts.filter((text) => /\/(yr|day)\b/.test(text))).toEqual([]);
});

test("no name and no unit of a limit is cut off, in English and in German", () => {
  for (const plan of [limitsSheet(), limitsSheet("de", inOneLanguage("de"))]) {
    const cut = plan.cells.filter(
      ({ row, col, kind, value }) =>
        row > 3 &&
        (kind === "unit" || col === 0) &&
        textWidth(String(value ?? ""), "regular") > charactersToPixels(plan.columnWidths[col]) - 4,
    );
    expect(cut.map(({ value }) => value)).toEqual([]);
  }
});

test("no label of a sheet with kept lines is cut off by what stands two columns on", () => {
  // A column without a width of its own has Excel's standard width.
  const widths = [kept(7, "a.csv").columnWidths[0] ?? 0, 8.43];
  const room = widths.reduce((sum, width) => sum + charactersToPixels(width), 0);
  const labels = (["en", "de"] as const).flatMap((language) => {
    const { noReading, sense, rule, delimiter, firstLine, way, thinning } = CATALOGUES[language].readings;
    return [noReading, sense, rule, delimiter, firstLine, way, thinning];
  });
  expect(labels.filter((label) => textWidth(label, "regular") > room - 4)).toEqual([]);
});

test("each quantity that is compared by hand is called as the sheet calls it", async () => {
  const values = await namedValues(demoSheet("SI", "de"));
  const rows = quantities(readRecord(values), values).map((quantity) =>
    comparisonRow("T", { quantity, byHand: 1, tolerance: 0.1 }, "AB", "2031-03-07", "de"),
  );
  expect(rows.length).toBeGreaterThan(100);
  expect(englishLeft(rows.flatMap((row) => row.filter((cell) => typeof cell === "string")))).toEqual([]);
});

test("the labels of results that get free cells in a firm's layout", () => {
  const names = Object.entries(demoSheet("SI", "de").names).map(([name, place]): SheetName => ({
    name,
    scope: "sheet",
    place,
  }));
  const inputs = names.filter(({ name }) => /^(load_(number|stress)|ring|initial|diameter|times|readings)/.test(name));
  const { labels } = workings(inputs, {}, { row: 300, col: 60, rows: 1, cols: 1 }, "de");
  const texts = labels.flatMap(({ value }) => (typeof value === "string" ? [value] : []));
  expect(texts.length).toBeGreaterThan(20);
  expect(englishLeft(texts)).toEqual([]);
});
