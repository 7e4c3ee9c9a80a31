/**
 * Opens an .xlsx file as a workbook. Parts that the engine's own reader would drop or misread are corrected before and
 * after it reads.
 */
import { say, verbatim, listed, type Message } from "../../../reduction/message";
import { nth } from "../../../reduction/numeric/lists";
import { asShares, atOnce } from "../../in-slices";
import { WorkbookError } from "../../port";
import { openArchive, type Archive } from "../../file/zip";
import { Model } from "../engine";
import { making } from "../evaluation/making";
import { settingsFor, type DecimalMark } from "../typing/locale";
import type { OpenWorkbook } from "../workbook";
import { renameApostrophes } from "./apostrophes";
import { calculationOf, toldCalculation } from "./calculation";
import { workLimit } from "./cells";
import { plainText, runsText } from "../../file/escapes";
import { noArchive, noWorkbook } from "./kinds";
import { patchStyles } from "./looks";
import { dataOf } from "./opening/data";
import { withWhatGoes } from "./opening/left-out";
import { readNames, type Names } from "./opening/names";
import { keepScatterCharts } from "./engine-charts";
import { addedDaysOf, notKeptBeside, toldDays, toldNotKept } from "./opening/not-kept";
import { readSheet, type Kept, type OfFile } from "./opening/sheet";
import { DECIMAL_MARK, readPackage, STRINGS, STYLES, WORKBOOK, workbookPath, type Package } from "./package";
import type { Parts } from "./parts";
import { PRINT_AREA } from "./print";
import { openStyles } from "./protection";
import { all, childrenOf } from "../../file/xml";
import { keepFileValues } from "./values-of-file";

export interface Opened {
  readonly workbook: OpenWorkbook;
  /** Parts of the file that could not be kept, in sentences. */
  readonly remarks: readonly Message[];
}

function archiveOf(bytes: Uint8Array): { archive: Archive; main: string } {
  const other = noArchive(bytes);
  if (other !== undefined) throw new WorkbookError(other);
  const archive = openArchive(bytes);
  const main = workbookPath(archive);
  if (main === undefined) throw new WorkbookError(noWorkbook(archive));
  return { archive, main };
}

/** The shared texts of the cells. */
function stringsOf(parts: Parts): string[] {
  if (!parts.has(STRINGS)) return [];
  const strings = [...childrenOf(parts.document(STRINGS).documentElement)];
  return strings.filter(({ localName }) => localName === "si").map(runsText);
}

/** The shares of the work that are done after the parts are read, after the cells are read, and after the engine has read the rest. */
const PARTS_SHARE = 0.2;
const CELLS_SHARE = 0.5;
const DATA_SHARE = 0.6;

/** The decimal mark with which a workbook was saved. */
function markOf(workbook: Document): DecimalMark | undefined {
  const kept = all(workbook, "definedName").find((name) => name.getAttribute("name") === DECIMAL_MARK)?.textContent;
  return kept === '","' ? "," : kept === '"."' ? "." : undefined;
}

/** Shows the sheet that was active when the file was saved. */
function bringForward({ getters, dispatch }: Model, front: number | undefined): void {
  const sheetIdFrom = getters.getActiveSheetId();
  const sheetIdTo = front === undefined ? undefined : getters.getSheetIds()[front];
  if (sheetIdTo !== undefined && sheetIdTo !== sheetIdFrom && getters.isSheetVisible(sheetIdTo))
    dispatch("ACTIVATE_SHEET", { sheetIdFrom, sheetIdTo });
}

/** What the parts beside the sheets say of all sheets. */
function ofFile({ parts }: Package, workbook: Document): OfFile {
  const sheetNames = all(workbook, "sheet").map((sheet) => sheet.getAttribute("name")!);
  const areas = all(workbook, "definedName")
    .filter((name) => name.getAttribute("name") === PRINT_AREA)
    .map((name) => [sheetNames[Number(name.getAttribute("localSheetId") ?? 0)], plainText(name.textContent)] as const);
  const names = readNames(workbook, sheetNames);
  const styles = parts.document(STYLES);
  const isOpen = openStyles(styles);
  const strings = stringsOf(parts);
  return {
    ...{ parts, sheetNames, names, areas: new Map(areas), isOpen, strings },
    ...{ styles: patchStyles(styles), addedDays: addedDaysOf(workbook), isLight: workLimit() },
  };
}

/** The names of the file by the ids of the sheets in the model. */
function namesIn({ getters }: Model, { local, lost }: Names): Omit<OpenWorkbook, "model"> {
  const byId = <T>(bySheet: ReadonlyMap<string, T>): Map<string, T> =>
    new Map([...bySheet].map(([sheet, of]) => [getters.getSheetIdByName(sheet)!, of]));
  return { localNames: byId(local), lost: byId(lost) };
}

function* read(bytes: Uint8Array, usual: DecimalMark | undefined, settings: object): Generator<number, Opened> {
  const { archive, main } = archiveOf(bytes);
  const whole = yield* asShares(readPackage(archive, main), (share) => PARTS_SHARE * share);
  const { parts, pictures, sheets, front } = whole;
  const remarks = [...whole.remarks, ...renameApostrophes(parts, parts.document(WORKBOOK))];
  const workbook = parts.document(WORKBOOK);
  const about = ofFile(whole, workbook);
  const { names } = about;
  const notKept = notKeptBeside(archive, parts, workbook, parts.get(STRINGS) ?? "");
  const mark = markOf(workbook) ?? usual;
  // The engine's reader would parse the texts and the names with every sheet, and needs neither.
  parts.delete(STRINGS);
  for (const element of all(workbook, "definedNames")) element.remove();
  const kept = new Map<string, Kept>();
  let moved = 0;
  const shareOf = (at: number): number => PARTS_SHARE + ((CELLS_SHARE - PARTS_SHARE) * at) / sheets.length;
  for (const [at, sheet] of sheets.entries()) {
    const name = nth(about.sheetNames, at);
    const one = yield* asShares(readSheet(sheet, name, about), () => shareOf(at));
    remarks.push(...one.remarks);
    moved += one.read.moved;
    notKept.push(...one.notKept);
    kept.set(name, one);
    yield shareOf(at + 1);
  }
  notKept.push(...keepScatterCharts(parts));
  const { made, left } = yield* withWhatGoes(parts.entries(), function* (rest) {
    const { data, cut } = yield* asShares(
      dataOf(rest, pictures, kept, names),
      (share) => CELLS_SHARE + (DATA_SHARE - CELLS_SHARE) * share,
    );
    if (mark) data.settings = settingsFor(mark);
    const model = yield* asShares(
      making(() => new Model(data, settings)),
      (share) => DATA_SHARE + (1 - DATA_SHARE) * share,
    );
    return { model, cut };
  });
  const { model, cut } = made;
  yield 1;
  remarks.push(...cut);
  if (left.length > 0) remarks.push(say`The file's ${listed(left)} were left out: they could not be read.`);
  remarks.push(
    ...keepFileValues(
      model,
      [...kept].map(([name, { read: cells }]) => [name, cells.fileValues] as const),
    ),
  );
  bringForward(model, front);
  const calculation = calculationOf(workbook);
  remarks.push(...toldNotKept(notKept), ...toldDays(about.addedDays, moved), ...toldCalculation(calculation));
  if (names.dropped.length > 0)
    remarks.push(say`Names that are not one range of cells were left out: ${listed(names.dropped.map(verbatim))}.`);
  return { workbook: { model, ...namesIn(model, names), calculation }, remarks };
}

/**
 * Opens the bytes of an .xlsx file in steps; each step gives the share of the work that is done. Refuses a file that cannot be read with a
 * sentence. `settings` are those of the engine.
 */
export function* opening(bytes: Uint8Array, usual?: DecimalMark, settings: object = {}): Generator<number, Opened> {
  try {
    return yield* read(bytes, usual, settings);
  } catch (error) {
    if (error instanceof WorkbookError)
      throw new WorkbookError(say`${error.said} The workbook on the page is as it was.`);
    throw new WorkbookError(
      say`The file could not be opened: something in it cannot be read. Open it in Excel or LibreOffice, save it anew as .xlsx, and try that. The workbook on the page is as it was.`,
    );
  }
}

/** Opens the bytes of an .xlsx file without a pause. */
export const openXlsx = (bytes: Uint8Array): Opened => atOnce(opening(bytes));
