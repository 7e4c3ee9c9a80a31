/** Maintains a sheet in Excel: its names and its protection. */
import { say, verbatim } from "../../reduction/message";
import { boxAddress, cellAddress, quoted } from "../address";
import { localName, planName } from "../rules/names";
import { refuseMoved, refuseOtherEnds } from "../rules/moved";
import { checkNaming } from "../rules/naming";
import { WorkbookError, type NamedAddress, type SheetName } from "../port";
import { note, strike, strikeNow } from "./journal";
import { NAME_PROPERTIES, placeOfName, type Names } from "./reading/places";
import { boxOfRange, PLACE_OF_ONE } from "./reading/read";
import { codeOf } from "./sentence";

/**
 * Anybody may lift the protection: it has no password. While it stands, rows may be inserted and cells formatted. Rows
 * may not be deleted: Excel deletes a row of a protected sheet only if every cell of it, to the last column, is
 * unlocked (Microsoft, Protection.AllowDeletingRows), and a row of the data sheet never is.
 */
export const PROTECTION: Excel.WorksheetProtectionOptions = {
  allowFormatCells: true,
  allowFormatColumns: true,
  allowFormatRows: true,
  allowInsertRows: true,
  allowEditObjects: true,
};

/**
 * Names that Excel gives itself to the print area, the titles and the filter of a sheet. A German Excel lists them in German (office-js issue
 * 3984; the words from memory).
 */
const OWN = /^(_xlnm\.|(Print_Area|Print_Titles|_FilterDatabase|Druckbereich|Drucktitel|_FilterDatenbank)$)/i;

/**
 * The names of a sheet as the port lists them: names of the sheet, then names of the workbook that lead to it or
 * nowhere.
 */
export const sheetNamesOf = (sheet: string, { own, shared }: Names): SheetName[] =>
  [
    ...own.map((item) => ({ item, scope: "sheet" as const })),
    ...shared.map((item) => ({ item, scope: "workbook" as const })),
  ].flatMap(({ item, scope }): SheetName[] => {
    const { name } = item;
    if (OWN.test(name)) return [];
    const place = placeOfName(item);
    if (!place) return [{ name: planName(name), scope, place: "lost" }];
    // A name of the sheet that leads to another sheet counts as lost; a name of the workbook that leads to another
    // sheet is not listed.
    if (place.sheet !== sheet) return scope === "sheet" ? [{ name: planName(name), scope, place: "lost" }] : [];
    return [{ name: planName(name), scope, place: place.box }];
  });

/** Asks for the names of a sheet with the next request; the function that is returned lists them after it. */
export function askForNames(context: Excel.RequestContext, sheet: Excel.Worksheet): () => SheetName[] {
  const own = sheet.names.load(NAME_PROPERTIES);
  const shared = context.workbook.names.load(NAME_PROPERTIES);
  sheet.load("name");
  return () => sheetNamesOf(sheet.name, { own: own.items, shared: shared.items });
}

export async function listNames(context: Excel.RequestContext, sheet: Excel.Worksheet): Promise<SheetName[]> {
  const names = askForNames(context, sheet);
  await context.sync();
  return names();
}

/** Throws if a name already refers to cells, so that it is not moved. */
function refuseTaken(name: string, item: Excel.NamedItem): void {
  const present = item.isNullObject ? undefined : placeOfName(item);
  if (!present) return;
  const { row, col, rows, cols } = present.box;
  const first = cellAddress(row, col);
  const last = cellAddress(row + rows - 1, col + cols - 1);
  throw new WorkbookError(
    say`The name "${verbatim(name)}" is already at ${verbatim(first === last ? first : `${first}:${last}`)} and was left there: say that it may be moved.`,
  );
}

/**
 * Names several cells; a name that already refers to cells is moved only if it says so. If Excel refuses one of them,
 * the names made so far are deleted again. `before` are the names by which the places were found.
 */
export async function nameAll(
  context: Excel.RequestContext,
  sheet: Excel.Worksheet,
  names: readonly NamedAddress[],
  before?: readonly SheetName[],
): Promise<void> {
  if (names.length === 0) return;
  for (const { name, address } of names) checkNaming(name, address);
  const found = names.map(({ name, address, ends, replace }) => {
    const range = sheet.getRange(address).load(PLACE_OF_ONE);
    return {
      ...{ name, address, replace, range },
      item: sheet.names.getItemOrNullObject(localName(name)).load("type,value"),
      corners: ends && [range.getCell(0, 0), range.getLastCell()].map((cell) => cell.load("values")),
    };
  });
  const now = before && askForNames(context, sheet);
  sheet.load("name");
  await context.sync();
  if (now) refuseMoved(sheet.name, before, now());
  for (const [index, { corners = [] }] of found.entries()) {
    const shown = corners.map(({ values }) => values[0]?.[0]);
    refuseOtherEnds(sheet.name, names[index]?.ends, shown);
  }
  for (const { name, item, replace } of found) if (!replace) refuseTaken(name, item);
  const isNew = found.filter(({ item }) => item.isNullObject);
  // Until all names are given, a comment tells ours from names that somebody else gives in the meantime.
  const mark = `Clayledger ${Math.random().toString(36).slice(2)}`;
  try {
    const made = isNew.map(({ name, range }) => sheet.names.add(localName(name), range, mark));
    for (const { item, range } of found)
      // Changing the name keeps the formulas that use it; deleting it and making it again would break them.
      if (!item.isNullObject) item.formula = `=${quoted(sheet.name)}!${boxAddress(boxOfRange(range))}`;
    for (const item of made) item.comment = "";
    await context.sync();
  } catch (error) {
    await deleteMarked(context, sheet, isNew, mark).catch(() => undefined);
    throw error;
  }
}

/** Deletes those of these names that have the comment. */
async function deleteMarked(
  context: Excel.RequestContext,
  sheet: Excel.Worksheet,
  names: readonly NamedAddress[],
  mark: string,
): Promise<void> {
  const items = names.map(({ name }) => sheet.names.getItemOrNullObject(localName(name)).load("comment"));
  await context.sync();
  for (const item of items) if (!item.isNullObject && item.comment === mark) item.delete();
  await context.sync();
}

/** Lifts the protection of the sheet, runs a change, and restores the protection. */
export async function unprotected<T>(
  context: Excel.RequestContext,
  sheet: Excel.Worksheet,
  change: () => Promise<T>,
): Promise<T> {
  const { protection } = sheet;
  protection.load("protected,options");
  sheet.load("name");
  await context.sync();
  if (!protection.protected) return change();
  const options = protection.options;
  const noted = note(context, "protection", sheet.name);
  const isOurs = await lift(context, sheet).catch(async (error: unknown) => {
    await strikeNow(context, noted);
    throw error;
  });
  if (!isOurs) {
    await strikeNow(context, noted);
    return change();
  }
  try {
    return await change();
  } finally {
    await putBack(context, protection, options, noted);
  }
}

async function isOn(context: Excel.RequestContext, protection: Excel.WorksheetProtection): Promise<boolean> {
  protection.load("protected");
  await context.sync();
  return protection.protected;
}

/**
 * Restores a protection; if Excel refuses twice, the sentence says so first. Excel also refuses if somebody else has
 * protected the sheet in the meantime: that protection stays.
 */
async function putBack(
  context: Excel.RequestContext,
  protection: Excel.WorksheetProtection,
  options: Excel.WorksheetProtectionOptions,
  noted: string,
): Promise<void> {
  const put = async (): Promise<void> => {
    protection.protect(options);
    strike(context, noted);
    await context.sync();
  };
  await put()
    .catch(put)
    .catch(async (cause: unknown) => {
      if (await isOn(context, protection).catch(() => false)) return strikeNow(context, noted);
      throw new WorkbookError(
        say`The sheet's protection was lifted, and Excel does not put it back: protect the sheet again (Review, Protect Sheet).`,
        { cause },
      );
    });
}

/**
 * Returns false if somebody else has lifted the protection in the meantime: Excel then refuses to lift it once more
 * (office-js issue 6784).
 */
async function lift(context: Excel.RequestContext, sheet: Excel.Worksheet): Promise<boolean> {
  try {
    sheet.protection.unprotect();
    await context.sync();
    return true;
  } catch (error) {
    if (
      !["AccessDenied", "BadPassword", "InvalidArgument", "InvalidOperation", "GeneralException"].includes(
        codeOf(error),
      )
    )
      throw error;
    if (!(await isOn(context, sheet.protection))) return false;
    throw new WorkbookError(
      say`The sheet is protected with a password: lift it in Excel (Review, Unprotect Sheet), and try again. Nothing was changed.`,
      { cause: error },
    );
  }
}

export async function protect(context: Excel.RequestContext, sheet: Excel.Worksheet, on: boolean): Promise<void> {
  sheet.protection.load("protected");
  await context.sync();
  if (sheet.protection.protected === on) return;
  if (!on) return void (await lift(context, sheet));
  sheet.protection.protect(PROTECTION);
  await context.sync().catch(async (error: unknown) => {
    // Excel refuses if somebody else has protected the sheet in the meantime.
    if (!(await isOn(context, sheet.protection))) throw error;
  });
}
