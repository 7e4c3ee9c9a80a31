/** Inserts the sheets of a file. */
import { fixed, say, type Message } from "../../reduction/message";
import { WorkbookError, type Inserted } from "../port";
import { hasCharts, hasPivots, isXlsx, withoutNotes } from "../file/xlsx-file";
import { isTooLarge } from "./requests";
import { codeOf } from "./sentence";

const base64 = (bytes: Uint8Array): string => {
  let binary = "";
  for (let i = 0; i < bytes.length; i += 8192) binary += String.fromCharCode(...bytes.subarray(i, i + 8192));
  return btoa(binary);
};

const NOTES_LEFT_OUT = say`This Excel cannot take notes or comments from a file: the sheet came without them. Move the sheet in desktop Excel to keep them.`;

const CHARTS_REFUSED = say`Excel on the web takes no file with charts: open the file in Excel and move or copy its sheet into this workbook (right click on its tab), or insert it in desktop Excel. Nothing was inserted.`;

const PIVOTS_REFUSED = say`Excel on the web takes no file with PivotTables or slicers: open the file in Excel and move or copy its sheet into this workbook (right click on its tab), or insert it in desktop Excel. Nothing was inserted.`;

const isUnsupported = (error: unknown): boolean => /^(Unsupported|NotImplemented)/.test(codeOf(error));

/** The part of 5 MB that is left for a file in base64, which takes four characters for three bytes. */
const MB_ON_THE_WEB = 3.5;

const tooLarge = (bytes: number): WorkbookError =>
  new WorkbookError(
    say`The file has ${fixed(bytes / 1_000_000, 1)} MB, and Excel on the web takes at most about ${MB_ON_THE_WEB} MB at once: open the file in Excel and move or copy its sheet into this workbook (right click on its tab), or insert it in desktop Excel. Nothing was inserted.`,
  );

const noXlsx = (): WorkbookError =>
  new WorkbookError(
    say`This is no .xlsx workbook: save it from Excel as .xlsx, without a password. Nothing was inserted.`,
  );

/** The file without its notes; undefined if it cannot be unpacked. */
function bareOf(file: Uint8Array): Uint8Array | undefined {
  try {
    return withoutNotes(file);
  } catch (error) {
    throw error instanceof WorkbookError ? new WorkbookError(say`${error.said} Nothing was inserted.`) : noXlsx();
  }
}

/**
 * Excel on the web refuses files with notes, comments, charts, PivotTables or slicers. If a file with notes is refused, it is tried once more
 * without them.
 */
export async function insertFile(context: Excel.RequestContext, file: Uint8Array): Promise<Inserted> {
  if (!isXlsx(file)) throw noXlsx();
  if (!Office.context.requirements.isSetSupported("ExcelApi", "1.13"))
    throw new WorkbookError(
      say`This Excel cannot insert sheets from a file: open the file, and move or copy its sheet into this workbook (right click on its tab), then check it here.`,
    );
  const insert = async (bytes: Uint8Array): Promise<string[]> => {
    const ids = context.workbook.insertWorksheetsFromBase64(base64(bytes), { positionType: "End" });
    await context.sync();
    return ids.value;
  };
  let ids: string[];
  const remarks: Message[] = [];
  try {
    ids = await insert(file);
  } catch (error) {
    const bare = bareOf(file);
    const refusal = isTooLarge(error)
      ? tooLarge(file.length)
      : isUnsupported(error) && hasCharts(file)
        ? new WorkbookError(CHARTS_REFUSED)
        : isUnsupported(error) && hasPivots(file)
          ? new WorkbookError(PIVOTS_REFUSED)
          : error;
    if (!bare) throw refusal;
    ids = await insert(bare).catch(() => {
      throw refusal;
    });
    remarks.push(NOTES_LEFT_OUT);
  }
  try {
    const sheets = ids.map((id) => context.workbook.worksheets.getItem(id).load("name"));
    await context.sync();
    return { sheets: sheets.map(({ name }) => name), remarks };
  } catch (error) {
    // If the names of the new sheets cannot be read, the sheets are deleted again: a second try would insert them
    // twice.
    for (const id of ids) context.workbook.worksheets.getItem(id).delete();
    await context.sync();
    throw error;
  }
}
