/** What keeps a sheet whole in Excel: its names, its formulas, its protection, and sheets that come from a file. */
import { boxAddress } from "../../datasheet/address";
import { WorkbookError, type Inserted, type SheetName } from "../port";
import { withPresentNames } from "../renamed-functions";
import { isXlsx, withoutNotes } from "../xlsx-file";
import { localName } from "./names";
import { codeOf } from "./sentence";

/** Anybody may lift it: there is no password. Rows may be put in and taken out, and cells formatted, while it stands. */
export const PROTECTION: Excel.WorksheetProtectionOptions = {
  allowFormatCells: true,
  allowFormatColumns: true,
  allowFormatRows: true,
  allowInsertRows: true,
  allowDeleteRows: true,
  allowEditObjects: true,
};

/** Names that Excel keeps for itself. */
const OWN = /^(_xlnm\.|Print_Area$|Print_Titles$|_FilterDatabase$)/i;

export async function listNames(context: Excel.RequestContext, sheet: Excel.Worksheet): Promise<SheetName[]> {
  const local = sheet.names.load("items/name,items/type");
  const global = context.workbook.names.load("items/name,items/type");
  sheet.load("name");
  await context.sync();
  const all = [
    ...local.items.map((item) => ({ item, scope: "sheet" as const })),
    ...global.items.map((item) => ({ item, scope: "workbook" as const })),
  ]
    .filter(({ item }) => !OWN.test(item.name))
    .map(({ item, scope }) => {
      const range = item.getRangeOrNullObject().load("rowIndex,columnIndex,rowCount,columnCount");
      const owner = range.worksheet.load("name");
      return { name: item.name, scope, range, owner };
    });
  await context.sync();
  return all.flatMap(({ name, scope, range, owner }): SheetName[] => {
    if (range.isNullObject) return [{ name, scope, place: "lost" }];
    // A name of the sheet that leads to another sheet is as good as lost; the workbook's names of other sheets are not this one's.
    if (owner.name !== sheet.name) return scope === "sheet" ? [{ name, scope, place: "lost" }] : [];
    const { rowIndex: row, columnIndex: col, rowCount: rows, columnCount: cols } = range;
    return [{ name, scope, place: { row, col, rows, cols } }];
  });
}

export async function nameCells(
  context: Excel.RequestContext,
  sheet: Excel.Worksheet,
  name: string,
  address: string,
  replace: boolean,
): Promise<void> {
  const called = localName(name);
  const item = sheet.names.getItemOrNullObject(called).load("type");
  const range = sheet.getRange(address).load("rowIndex,columnIndex,rowCount,columnCount");
  sheet.load("name");
  await context.sync();
  if (item.isNullObject) {
    sheet.names.add(called, range);
    await context.sync();
    return;
  }
  const present = item.getRangeOrNullObject().load("address");
  await context.sync();
  if (!present.isNullObject && !replace)
    throw new WorkbookError(
      `The name "${name}" is already at ${present.address.slice(present.address.lastIndexOf("!") + 1)} and was left there: say that it may be moved.`,
    );
  const box = { row: range.rowIndex, col: range.columnIndex, rows: range.rowCount, cols: range.columnCount };
  // Formulas that use the name keep it, which they would not if it were deleted and made again.
  item.formula = `='${sheet.name.replaceAll("'", "''")}'!${boxAddress(box)}`;
  await context.sync();
}

/** Runs a change of the sheet with its protection lifted, and puts the protection back as it was. */
async function unprotected<T>(
  context: Excel.RequestContext,
  sheet: Excel.Worksheet,
  change: () => Promise<T>,
): Promise<T> {
  const { protection } = sheet;
  protection.load("protected,options");
  await context.sync();
  if (!protection.protected) return change();
  const options = protection.options;
  await lift(context, sheet);
  try {
    return await change();
  } finally {
    protection.protect(options);
    await context.sync();
  }
}

async function lift(context: Excel.RequestContext, sheet: Excel.Worksheet): Promise<void> {
  try {
    sheet.protection.unprotect();
    await context.sync();
  } catch (error) {
    if (!["AccessDenied", "InvalidArgument", "InvalidOperation", "GeneralException"].includes(codeOf(error)))
      throw error;
    throw new WorkbookError(
      "The sheet is protected with a password: lift it in Excel (Review, Unprotect Sheet), and try again. Nothing was changed.",
      { cause: error },
    );
  }
}

export async function protect(context: Excel.RequestContext, sheet: Excel.Worksheet, on: boolean): Promise<void> {
  sheet.protection.load("protected");
  await context.sync();
  if (sheet.protection.protected === on) return;
  if (!on) return lift(context, sheet);
  sheet.protection.protect(PROTECTION);
  await context.sync();
}

const CELLS_PER_PIECE = 50_000;
const UNKNOWN = "#NAME?";

interface Unbound {
  readonly cell: Excel.Range;
  readonly formula: string;
}

async function unboundOf(context: Excel.RequestContext, sheet: Excel.Worksheet): Promise<Unbound[]> {
  const used = sheet.getUsedRangeOrNullObject().load("rowCount,columnCount");
  await context.sync();
  if (used.isNullObject) return [];
  const step = Math.max(1, Math.floor(CELLS_PER_PIECE / used.columnCount));
  const found: Unbound[] = [];
  for (let top = 0; top < used.rowCount; top += step) {
    const rows = Math.min(step, used.rowCount - top);
    const piece = used
      .getCell(top, 0)
      .getResizedRange(rows - 1, used.columnCount - 1)
      .load("formulas,values");
    await context.sync();
    piece.values.forEach((line, row) =>
      line.forEach((value, col) => {
        const formula: unknown = piece.formulas[row][col];
        if (value === UNKNOWN && typeof formula === "string" && formula.startsWith("="))
          found.push({ cell: used.getCell(top + row, col), formula });
      }),
    );
  }
  return found;
}

export async function reenterFormulas(
  context: Excel.RequestContext,
  sheet: Excel.Worksheet,
): Promise<{ found: number; left: number }> {
  const unbound = await unboundOf(context, sheet);
  if (unbound.length === 0) return { found: 0, left: 0 };
  await unprotected(context, sheet, async () => {
    for (const { cell, formula } of unbound) cell.formulas = [[withPresentNames(formula)]];
    await context.sync();
  });
  return { found: unbound.length, left: (await unboundOf(context, sheet)).length };
}

const base64 = (bytes: Uint8Array): string => {
  let binary = "";
  for (let i = 0; i < bytes.length; i += 8192) binary += String.fromCharCode(...bytes.subarray(i, i + 8192));
  return btoa(binary);
};

const NOTES_LEFT_OUT =
  "This Excel cannot take notes or comments from a file: the sheet came without them. Move the sheet in desktop Excel to keep them.";

/**
 * Excel on the web refuses files with notes, comments or charts. A file that is refused and has notes is tried once more
 * without them.
 */
export async function insertFile(context: Excel.RequestContext, file: Uint8Array): Promise<Inserted> {
  if (!isXlsx(file))
    throw new WorkbookError(
      "This is no .xlsx workbook: save it from Excel as .xlsx, without a password. Nothing was inserted.",
    );
  if (!Office.context.requirements.isSetSupported("ExcelApi", "1.13"))
    throw new WorkbookError(
      "This Excel cannot insert sheets from a file: open the file, and move or copy its sheet into this workbook (right click on its tab), then check it here.",
    );
  const insert = async (bytes: Uint8Array): Promise<string[]> => {
    const ids = context.workbook.insertWorksheetsFromBase64(base64(bytes), { positionType: "End" });
    await context.sync();
    return ids.value;
  };
  let ids: string[];
  const remarks: string[] = [];
  try {
    ids = await insert(file);
  } catch (error) {
    const bare = withoutNotes(file);
    if (!bare) throw error;
    ids = await insert(bare).catch(() => {
      throw error;
    });
    remarks.push(NOTES_LEFT_OUT);
  }
  const sheets = ids.map((id) => context.workbook.worksheets.getItem(id).load("name"));
  await context.sync();
  return { sheets: sheets.map(({ name }) => name), remarks };
}
