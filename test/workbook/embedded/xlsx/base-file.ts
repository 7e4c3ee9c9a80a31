/**
 * A small workbook as a file, with one of everything that a file must keep, and the parts of it that a reader must
 * find.
 */
import "../engine-in-node";
import { helpers } from "@odoo/o-spreadsheet";
import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import { EmbeddedPort, newWorkbook, saveXlsx, type OpenWorkbook } from "../../../../src/workbook/embedded";
import { noteGetters } from "../../../../src/workbook/embedded/notes";
import type { SheetPlan } from "../../../../src/workbook/port";

const box = (row: number, col: number, rows = 1, cols = 1) => ({ row, col, rows, cols });

const sheet = (name: string, factor: number): SheetPlan => ({
  ...{ name, rows: 20, cols: 5, columnWidths: { 0: 12 }, merges: [box(8, 0, 1, 3)], freezeRows: 1 },
  names: { mass: box(1, 0), readings: box(2, 0, 4) },
  cells: [
    { row: 0, col: 0, kind: "title", value: `${name} <&> 'quoted'` },
    { row: 1, col: 0, kind: "input", value: 61.25 * factor, format: "0.00", note: "weighed twice" },
    ...[2360, 1e-7, -3, 12].map((value, i) => ({ row: 2 + i, col: 0, kind: "input" as const, value: value * factor })),
    { row: 1, col: 1, kind: "input", choices: ["rise", "fall"], value: "rise" },
    { row: 2, col: 1, kind: "input", value: "0012", format: "@" },
    { row: 3, col: 1, kind: "input", value: " spaces  " },
    { row: 4, col: 1, kind: "input", value: true },
    { row: 1, col: 2, kind: "result", formula: "={mass}*2+A3" },
    { row: 2, col: 2, kind: "result", formula: "=TRANSPOSE(A3:A4)" },
    { row: 3, col: 2, kind: "result", formula: '=IF(A3>1,"yes","no")' },
    { row: 8, col: 0, kind: "note", value: "over three cells" },
  ],
  entries: [{ box: box(2, 0, 4), kind: "number", least: -1e6, message: "A reading." }],
});

export async function baseFile(sheets = 2): Promise<Uint8Array> {
  const port = new EmbeddedPort(newWorkbook());
  for (const name of ["First", "Second"].slice(0, sheets))
    await port.insertSheet(sheet(name, name === "First" ? 1 : 2));
  return saveXlsx(port.workbook);
}

/**
 * Everything that must be read back: contents, values, formats, notes, merged cells, names and rules, sheet by sheet.
 */
export function contentsOf({ model }: OpenWorkbook) {
  const { getters } = model;
  return getters.getSheetIds().map((sheetId) => ({
    name: getters.getSheetName(sheetId),
    cells: Object.fromEntries(
      Object.values(getters.getCells(sheetId)).flatMap(({ id }) => {
        const position = getters.getCellPosition(id);
        const { value, format } = getters.getEvaluatedCell(position);
        const formula = getters.getCellText(position, { showFormula: true });
        if (formula === "") return [];
        return [[helpers.toXC(position.col, position.row), [formula, value, format ?? ""]]];
      }),
    ),
    notes: noteGetters(model).getNotes(sheetId),
    merges: getters.getMerges(sheetId),
    rules: getters
      .getDataValidationRules(sheetId)
      .map(({ ranges, criterion }) =>
        [ranges.map((range) => getters.getRangeString(range, sheetId)), criterion.type, criterion.values]
          .flat()
          .join(" "),
      )
      .sort(),
    names: getters
      .getNamedRanges()
      .filter(({ range }) => range.sheetId === sheetId)
      .map(({ name, range }) => [name, getters.getRangeString(range)]),
  }));
}

export type Texts = Record<string, string>;

export const textsOf = (bytes: Uint8Array): Texts =>
  Object.fromEntries(Object.entries(unzipSync(bytes)).map(([path, part]) => [path, strFromU8(part)]));

export const fileOf = (texts: Texts): Uint8Array =>
  zipSync(Object.fromEntries(Object.entries(texts).map(([path, text]) => [path, strToU8(text)])));
