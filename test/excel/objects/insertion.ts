/** Inserts the sheets of an .xlsx file, read by exceljs, which this project did not make. */
import { unzipSync } from "fflate";
import { boxOf } from "../book/address";
import { keyOf, newSheet, sheetByName, type Sheet } from "../book/book";
import { refersTo } from "../book/names";
import { structureMustBeOpen } from "../book/sheets";
import { setLook } from "../book/looks";
import { chartsOfSheets } from "../file-charts";
import { invalidArgument, notFound, Refusal } from "../refusal";
import type { Host } from "./being";

/** Parts of a file that Excel on the web cannot insert (typings: "charts, comments, PivotTables, or slicers"). */
const NOT_ON_THE_WEB = /^xl\/(charts|comments|threadedComments|drawings\/vmlDrawing|pivotTables|slicers)/;

export async function insertFile(host: Host, base64: string, options: Record<string, unknown>): Promise<string[]> {
  structureMustBeOpen(host.book);
  const bytes = new Uint8Array(Buffer.from(base64, "base64"));
  let paths: string[];
  try {
    paths = Object.keys(unzipSync(bytes, { filter: () => true }));
  } catch {
    throw invalidArgument("The file is no workbook.");
  }
  if (host.platform === "web" && paths.some((path) => NOT_ON_THE_WEB.test(path)))
    throw new Refusal(
      "UnsupportedOperation",
      "Excel on the web inserts no sheets with charts, comments, PivotTables or slicers.",
    );
  const made = await read(host, bytes, options.sheetNamesToInsert as string[] | null | undefined);
  const { sheets } = host.book;
  const at = placeAt(host, options, sheets.length);
  sheets.splice(at, 0, ...made);
  host.recalculate();
  host.raise("added");
  return made.map(({ id }) => id);
}

function placeAt(host: Host, { positionType = "End", relativeTo }: Record<string, unknown>, count: number): number {
  if (positionType === "Beginning") return 0;
  if (positionType !== "Before" && positionType !== "After") return count;
  const index = host.book.sheets.findIndex(({ name, id }) => name === relativeTo || id === relativeTo);
  if (index < 0) throw notFound(`the sheet "${String(relativeTo)}"`);
  return positionType === "Before" ? index : index + 1;
}

async function read(host: Host, bytes: Uint8Array, wanted: string[] | null | undefined): Promise<Sheet[]> {
  const { Workbook } = await import("exceljs");
  const file = new Workbook();
  await file.xlsx.load(Buffer.from(bytes) as never);
  const chosen = file.worksheets.filter(({ name }) => !wanted || wanted.includes(name));
  if (wanted && chosen.length < wanted.length) throw notFound("a sheet of the file");
  const chartsOf = chartsOfSheets(bytes);
  return chosen.map((from) => {
    const sheet = newSheet(host.newId("sheet"), freeName(host, from.name));
    sheet.charts = Array.from({ length: chartsOf(file.worksheets.indexOf(from) + 1) }, (_, index) => ({
      id: host.newId("chart"),
      name: `Chart ${index + 1}`,
      type: "XYScatter",
      properties: {},
      series: [],
    }));
    from.eachRow((row, rowNumber) =>
      row.eachCell((cell, colNumber) => {
        const at = { row: rowNumber - 1, col: colNumber - 1, rows: 1, cols: 1 };
        setLook(sheet, at, "format.protection.locked", cell.protection?.locked !== false);
        if (cell.numFmt) setLook(sheet, at, "numberFormat", cell.numFmt);
        const { note } = cell;
        const said = typeof note === "string" ? note : note?.texts?.map(({ text }) => text).join("");
        if (said) sheet.notes.set(keyOf(at.row, at.col), { content: said });
        if (cell.isMerged && cell.master !== cell) return;
        const { formula, result, value } = cell as unknown as { formula?: string; result?: unknown; value: unknown };
        if (formula) sheet.cells.set(keyOf(at.row, at.col), { value: simple(result), formula: `=${formula}` });
        else if (value !== null && value !== undefined)
          sheet.cells.set(keyOf(at.row, at.col), { value: simple(value) });
      }),
    );
    const { merges } = from.model as unknown as { merges?: string[] };
    sheet.merges = (merges ?? []).flatMap((address) => boxOf(address) ?? []);
    for (const { name, ranges } of file.definedNames.model) {
      const own = ranges.filter(
        (range) => range.startsWith(`${from.name}!`) || range.startsWith(`'${from.name.replaceAll("'", "''")}'!`),
      );
      if (own.length === 0) continue;
      const formula = `=${own.map((range) => range.slice(range.lastIndexOf("!") + 1)).join(",")}`;
      sheet.names.push({
        name,
        refers: refersTo({ ...host.book, sheets: [sheet] }, formula, sheet.id),
        comment: "",
        visible: true,
      });
    }
    return sheet;
  });
}

function simple(value: unknown): string | number | boolean {
  if (typeof value === "string" || typeof value === "number" || typeof value === "boolean") return value;
  if (value instanceof Date) return value.getTime() / 86_400_000 + 25_569;
  const { richText, error, text } = (value ?? {}) as { richText?: { text: string }[]; error?: string; text?: string };
  return richText?.map((part) => part.text).join("") ?? error ?? text ?? "";
}

function freeName(host: Host, name: string): string {
  for (let count = 1; ; count++) {
    const candidate = count === 1 ? name : `${name.slice(0, 31 - ` (${count})`.length)} (${count})`;
    if (!sheetByName(host.book, candidate)) return candidate;
  }
}
