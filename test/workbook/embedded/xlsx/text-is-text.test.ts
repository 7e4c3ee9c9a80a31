/**
 * A text that looks like a formula, a number, a link or markup stays that text: on the sheet, in files, in other
 * programs.
 */
import "../engine-in-node";
import ExcelJS from "exceljs";
import fc, { anyCharacter } from "../../../properties";
import { EmbeddedPort, newWorkbook, openXlsx, saveXlsx } from "../../../../src/workbook/embedded";
import type { CellPlan, SheetPlan } from "../../../../src/workbook/port";
import { bareText, bareValue, typedText } from "../../../../src/workbook/embedded/typing/text";

const TEXTS = [
  ...["=1+1", "=x", "+1", "-1", "@a", "\tx", "=cmd|' /C calc'!A0", "'", "''", "'abc", "'=x", "''=x", "'+1"],
  ...[
    "<b>bold</b>",
    "&amp;",
    "<![CDATA[x]]>",
    "]]>",
    "<script>alert(1)</script>",
    "{mass}",
    "_x0041_",
    "_xABCD",
    "a\x07b",
  ],
  ...["1e5", "0012", "1,5", "2024-01-31", "1/2", "12:30", "50%", "TRUE", "false", "#N/A", "#REF!", "$5"],
  ...["[a](http://b.org)", "[1](x)", "'[a](b)", "http://b.org", "mailto:a@b.org", "[", "]("],
  ...["שלום עולם", "\u202eabc", "😀👩‍👩‍👧", "\ud800", "é", "e\u0301", "\u00a0", " ", "  a  ", "a\nb", "a\r\nb", "\r", "\n"],
  "x".repeat(32_767),
];

const sheetOf = (texts: readonly string[]): SheetPlan => ({
  ...{ name: "Texts", rows: texts.length, cols: 4, columnWidths: {}, merges: [], freezeRows: 0 },
  names: {
    general: { row: 0, col: 0, rows: texts.length, cols: 1 },
    text: { row: 0, col: 1, rows: texts.length, cols: 1 },
  },
  cells: texts.flatMap((value, row): CellPlan[] => [
    { row, col: 0, kind: "input", value },
    { row, col: 1, kind: "input", value, format: "@" },
    // The value of a formula that refers to the text.
    { row, col: 2, kind: "result", formula: `=A${row + 1}` },
    { row, col: 3, kind: "result", formula: `=B${row + 1}` },
  ]),
});

/** The text with the one kind of line break that the sheet has. */
const kept = (text: string): string => text.replace(/\r\n?/g, "\n");
const rowsOf = (texts: readonly string[]) => texts.map((text) => [kept(text), kept(text)]);
/** A formula that refers to a text in the form of the engine's links becomes a link: the engine works so. */
const linkless = (rows: readonly (readonly unknown[])[], texts: readonly string[]) =>
  rows.filter((_, i) => !/^\[.+\]\(.+\)$/s.test(texts[i]!));

async function expectKept(texts: readonly string[]): Promise<Uint8Array> {
  const port = new EmbeddedPort(newWorkbook());
  const name = await port.insertSheet(sheetOf(texts));
  const address = `A1:B${texts.length}`;
  expect(await port.values(name, address)).toEqual(rowsOf(texts));
  const results = address.replace("A1:B", "C1:D");
  expect(linkless(await port.values(name, results), texts)).toEqual(linkless(rowsOf(texts), texts));
  await port.fillNames(name, { general: texts, text: texts });
  expect(await port.values(name, address)).toEqual(rowsOf(texts));

  const saved = await saveXlsx(port.workbook);
  const opened = new EmbeddedPort(openXlsx(saved).workbook);
  expect(await opened.values(name, address)).toEqual(rowsOf(texts));
  expect(linkless(await opened.values(name, results), texts)).toEqual(linkless(rowsOf(texts), texts));
  const other = new EmbeddedPort(newWorkbook());
  await other.insertFile(await saveXlsx(opened.workbook));
  expect(await other.values(name, address)).toEqual(rowsOf(texts));
  return saved;
}

test("odd texts stay unchanged, in cells of either format", async () => {
  const saved = await expectKept(TEXTS);
  const reader = new ExcelJS.Workbook();
  await reader.xlsx.load(saved.buffer as ArrayBuffer);
  const sheet = reader.getWorksheet("Texts")!;
  // exceljs does not join the halves of a surrogate pair.
  const found = TEXTS.map((_, row) => [1, 2].map((col) => sheet.getCell(row + 1, col).value));
  expect(found.filter((_, i) => TEXTS[i] !== "\ud800")).toEqual(rowsOf(TEXTS.filter((text) => text !== "\ud800")));
});

test("any texts stay unchanged", () =>
  fc.assert(
    fc.asyncProperty(
      fc.array(
        fc.oneof(
          fc.string({ minLength: 1 }),
          fc.string({ unit: anyCharacter, minLength: 1 }),
          fc.constantFrom(...TEXTS),
        ),
        // Most of the time goes to the workbooks, not to their texts: a few workbooks of many texts.
        { minLength: 40, maxLength: 120 },
      ),
      async (texts) => void (await expectKept(texts)),
    ),
    { numRuns: 7 },
  ));

test("a text in a cell of text format is typed with an apostrophe only if it needs one, and shows none", () =>
  fc.assert(
    fc.property(fc.oneof(fc.string(), fc.constantFrom(...TEXTS)), (text) => {
      expect(bareValue(typedText(text, "@"))).toBe(text);
      expect(bareValue(bareText(typedText(text)))).toBe(text);
    }),
  ));
