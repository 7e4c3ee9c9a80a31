/** Reads the sheets of an .xlsx file for the fake workbook, with exceljs. */
import { say, verbatim, type Message } from "../../src/reduction/message";
import type { CellValue as FileValue } from "exceljs";
import { boxOf, quoted } from "../../src/workbook/address";
import type { CellValue } from "../../src/workbook/port";
import { chartsOfSheets } from "../excel/file-charts";
import { blankSheet, type Cell, type Sheet } from "./fake-workbook";

const DAY = 86_400_000;

function plain(value: FileValue | undefined): CellValue {
  if (value === null || value === undefined) return "";
  if (value instanceof Date) return value.getTime() / DAY + 25_569;
  if (typeof value !== "object") return value;
  if ("result" in value) return plain(value.result);
  if ("error" in value) return value.error;
  if ("richText" in value) return value.richText.map(({ text }) => text).join("");
  return "text" in value ? plain(value.text) : "";
}

/** The formula with the present names of the file's sheets. */
const onSheets = (formula: string, called: ReadonlyMap<string, string>): string =>
  formula.replace(/'((?:[^']|'')+)'!|([\p{L}_][\p{L}\p{N}_.]*)!/gu, (whole, inQuotes?: string, bare?: string) => {
    const now = called.get(inQuotes?.replaceAll("''", "'") ?? bare!);
    return now === undefined ? whole : `${quoted(now)}!`;
  });

/** Sheets of a file, and the parts of them that were not kept. */
export interface FileSheets {
  readonly sheets: readonly Sheet[];
  readonly remarks: readonly Message[];
}

/**
 * The sheets of the file, each with the name that `nameFor` gives; charts are left out. Throws if the bytes are not an
 * .xlsx file.
 */
export async function sheetsOfFile(bytes: Uint8Array, nameFor: (name: string) => string): Promise<FileSheets> {
  const { default: ExcelJS } = await import("exceljs");
  const file = new ExcelJS.Workbook();
  await file.xlsx.load(Uint8Array.from(bytes).buffer);
  if (file.worksheets.length === 0) throw new Error("there is no sheet in it");
  const called = new Map(file.worksheets.map(({ name }) => [name, nameFor(name)]));
  const names = file.definedNames.model.flatMap(({ name, ranges }) => ranges.map((range) => ({ name, range })));
  const chartsOf = chartsOfSheets(bytes);
  const remarks = file.worksheets.flatMap(({ name }, index) => {
    const count = chartsOf(index + 1);
    if (count === 0) return [];
    return count === 1
      ? [say`1 chart of "${verbatim(name)}" did not come along.`]
      : [say`${count} charts of "${verbatim(name)}" did not come along.`];
  });
  const sheets = file.worksheets.map((from): Sheet => {
    const cells = new Map<string, Cell>();
    from.eachRow({ includeEmpty: false }, (row) =>
      row.eachCell({ includeEmpty: false }, (cell) => {
        const note = typeof cell.note === "string" ? cell.note : cell.note?.texts?.map(({ text }) => text).join("");
        cells.set(cell.address, {
          value: plain(cell.value),
          ...(cell.formula && { formula: `=${onSheets(cell.formula, called)}` }),
          ...(note && { note }),
          isInput: cell.protection?.locked === false,
        });
      }),
    );
    const own = names.flatMap(({ name, range }) => {
      const [, inQuotes, bare, address] = /^(?:'((?:[^']|'')+)'|([^'!]+))!(.+)$/.exec(range) ?? [];
      const box = address && boxOf(address.replaceAll("$", ""));
      return box && (inQuotes?.replaceAll("''", "'") ?? bare) === from.name ? [[name, box] as const] : [];
    });
    const isProtected = Boolean((from as unknown as { sheetProtection?: { sheet?: boolean } }).sheetProtection?.sheet);
    return {
      ...blankSheet(called.get(from.name)!),
      cells,
      names: new Map(own),
      protection: isProtected ? "without password" : "none",
    };
  });
  return { sheets, remarks };
}
