/** A workbook as an .xlsx file: the engine's own export, with what it leaves out or gets wrong put right. */
import { say, verbatim } from "../../../../reduction/message";
import { boxAddress, quoted } from "../../../address";
import { localName } from "../../../rules/names";
import { asShares, atOnce, inSlices, restful, Stopped, unwatched, type Run } from "../../../in-slices";
import { printingOf } from "../../../look/pages";
import { WorkbookError } from "../../../port";
import { toExcelFormat } from "../../look/formats";
import { exportFiles } from "../../evaluation/export";
import { withoutHeldGroups } from "../../evaluation/tight-minus";
import { momentOf } from "../../steps/moment";
import { isBusy, stepEnd } from "../../steps/long-step";
import { chosenMarkOf, type DecimalMark } from "../../typing/locale";
import { noteGetters } from "../../notes";
import type { OpenWorkbook } from "../../workbook";
import { toBox, toZone, type Zone } from "../../zones";
import { printOf } from "../../look/print";
import { protectionOf } from "../../protection";
import { addCalculation } from "../calculation";
import { addCharts } from "../charts";
import { orderCharts } from "../engine-charts";
import { addComments } from "../comments";
import { heldText } from "../../../file/escapes";
import { checkXml } from "../../../file/light-xml";
import { Packing } from "../../../file/packing";
import { DECIMAL_MARK } from "../package";
import { Parts } from "../parts";
import { addPrint, PRINT_AREA } from "../print";
import { addProtection, openedStyles } from "../protection";
import { DEEPEST, heightsOf, SharedStrings, writtenRows } from "./rows";
import { patchConditions, patchFormulas } from "./conditions";
import { putRules, writtenRules } from "./rules";
import { spellings } from "./spelling";
import { patchTables } from "./tables";
import { stylesOf, TAKING, type TakenSheet } from "./taken";
import { addValuesSheet, type ValuesNotice } from "./values-sheet";
import { fileValuesOf } from "../values-of-file";
import { addWords } from "../words";
import { all, append, first } from "../../../file/xml";

/** A name as in the file, with the position of its sheet if it is local. */
interface FileName {
  readonly name: string;
  readonly sheetIndex?: number;
  readonly range: string;
}

const fixed = (sheet: string, zone: Zone): string => `${quoted(sheet)}!${boxAddress(toBox(zone))}`;

/**
 * The names of the workbook, and a function that gives the name in the file for each engine name in the formulas of a
 * sheet.
 */
function fileNames({ model, localNames }: OpenWorkbook) {
  const { getters } = model;
  const sheetIds = getters.getSheetIds();
  const localOf = new Map<string, { sheetId: string; local: string }>();
  for (const [sheetId, names] of localNames)
    for (const [local, called] of names) localOf.set(called.toLowerCase(), { sheetId, local: localName(local) });

  const names: FileName[] = getters.getNamedRanges().map(({ name, range }) => {
    const local = localOf.get(name.toLowerCase());
    const isLocal = local?.sheetId === range.sheetId;
    return {
      name: isLocal ? local.local : name,
      sheetIndex: isLocal ? sheetIds.indexOf(range.sheetId) : undefined,
      range: fixed(getters.getSheetName(range.sheetId), range.zone),
    };
  });
  sheetIds.forEach((sheetId, sheetIndex) => {
    const { areas } = printingOf((printOf(model, sheetId)?.pages ?? []).map(toBox));
    const range = areas.map((area) => fixed(getters.getSheetName(sheetId), toZone(area))).join(",");
    if (range) names.push({ name: PRINT_AREA, sheetIndex, range });
  });
  const renameOn = (sheetId: string) => (name: string) => {
    const local = localOf.get(name.toLowerCase());
    if (!local || getters.getNamedRange(name)?.range.sheetId !== local.sheetId) return name;
    return local.sheetId === sheetId ? local.local : `${quoted(getters.getSheetName(local.sheetId))}!${local.local}`;
  };
  return { names, renameOn };
}

function addNames(document: Document, names: readonly FileName[], mark: DecimalMark | undefined): void {
  if (names.length === 0 && !mark) return;
  const list = append(document.documentElement, "definedNames");
  for (const { name, sheetIndex, range } of names)
    append(
      list,
      "definedName",
      sheetIndex === undefined ? { name } : { name, localSheetId: String(sheetIndex) },
      heldText(range),
    );
  if (mark) append(list, "definedName", { name: DECIMAL_MARK, hidden: "1" }, `"${mark}"`);
}

/** The engine writes colours without opacity, for which the schema requires two more digits. */
function patchColours(document: Document): void {
  for (const name of ["color", "fgColor", "bgColor", "tabColor"])
    for (const colour of all(document, name)) {
      const rgb = colour.getAttribute("rgb");
      if (rgb?.length === 6) colour.setAttribute("rgb", `FF${rgb}`);
    }
}

/** Adds the view that every sheet needs, with the sheet in front selected: the engine leaves views out. */
function addView(document: Document, activeTab: number): void {
  const views = append(document.documentElement, "bookViews");
  append(views, "workbookView", { activeTab: String(activeTab) });
  first(document, "sheets")!.before(views);
}

/** The widest column in characters (Microsoft, "Excel specifications and limits"), and the most levels of groups (ISO/IEC 29500-1, 18.3.1.13). */
const COLUMN_LIMITS = { width: 255, outlineLevel: DEEPEST } as const;

function patchColumns(document: Document): void {
  for (const column of all(document, "col"))
    for (const [name, most] of Object.entries(COLUMN_LIMITS))
      if (Number(column.getAttribute(name)) > most) column.setAttribute(name, String(most));
}

function patchStyles(document: Document): void {
  patchColours(document);
  for (const format of all(document, "numFmt"))
    format.setAttribute("formatCode", toExcelFormat(format.getAttribute("formatCode") ?? ""));
  const formats = first(document, "numFmts");
  if (formats && formats.children.length === 0) formats.remove();
}

/** Completes the part of the sheet, except its rows. */
function patchSheet(
  { parts, rules: lists }: Exported,
  index: number,
  sheetId: string,
  { model }: OpenWorkbook,
  taken: TakenSheet,
): void {
  const document = parts.document(sheetPath(index));
  patchColours(document);
  patchColumns(document);
  patchConditions(document);
  const rules = putRules(document, lists[index]);
  for (const rule of rules) if (rule.getAttribute("errorStyle") === "") rule.removeAttribute("errorStyle");
  patchFormulas(document);
  addWords(rules, model, sheetId);
  addComments(parts, index, noteGetters(model).getNotes(sheetId));
  addProtection(document, protectionOf(model, sheetId));
  addPrint(document, printOf(model, sheetId), heightsOf(taken));
  addCharts(parts, index, model, sheetId);
  patchTables(parts, sheetPath(index), model, sheetId);
}

const sheetPath = (index: number): string => `xl/worksheets/sheet${index}.xml`;
const STRINGS = "xl/sharedStrings.xml";

/** The share of the work that is done when the rows are written. */
const ROWS_SHARE = 0.95;

/** The engine's export of the workbook at one moment. */
interface Exported {
  readonly parts: Parts;
  readonly pictures: Readonly<Record<string, Uint8Array>>;
  /** The sheets that are not written yet: each is let go when it is written. */
  readonly taken: TakenSheet[];
  /** The spelling of each formula for Excel. */
  readonly formula: ReadonlyMap<string, string>;
  /** The rules of entry of each sheet. */
  readonly rules: readonly (Element | undefined)[];
}

/** The parts and the pictures of the engine's export. */
async function partsOf(
  files: Awaited<ReturnType<typeof exportFiles>>["files"],
): Promise<Pick<Exported, "parts" | "pictures">> {
  const texts: [string, string][] = [];
  const pictures: Record<string, Uint8Array> = {};
  for (const file of files)
    if ("imageSrc" in file) pictures[file.path] = await imageBytes(file.imageSrc);
    else texts.push([file.path, withoutHeldGroups(file.content)]);
  return { parts: new Parts(texts), pictures };
}

const formulasOf = (taken: readonly TakenSheet[]): string[] => taken.flatMap(({ formulas }) => [...formulas.values()]);

/** What the sheets of a file are written with. */
interface Writing {
  readonly workbook: OpenWorkbook;
  readonly exported: Exported;
  readonly renameOn: ReturnType<typeof fileNames>["renameOn"];
  readonly opened: ReturnType<typeof openedStyles>;
  readonly strings: SharedStrings;
  readonly zip: Packing;
  readonly asValues: boolean;
  readonly fileValue: ReturnType<typeof fileValuesOf>;
  readonly onUnknown: () => void;
}

/** Writes the part of a sheet in steps; each gives the share of it that is done. */
function* writingSheet(writing: Writing, index: number, sheetId: string): Generator<number> {
  const { workbook, exported, renameOn, zip, ...rest } = writing;
  const { model } = workbook;
  const { parts, taken, formula } = exported;
  const path = sheetPath(index);
  const sheet = taken.shift()!;
  const answered = { style: stylesOf(parts.document(path)), formula };
  patchSheet(exported, index, sheetId, workbook, sheet);
  const part = zip.part(path);
  const [head = "", tail = ""] = parts.take(path).split(/<sheetData\s*\/>|<sheetData><\/sheetData>/);
  checkAgain(path, head + tail);
  part.add(`${head}<sheetData>`);
  yield 0;
  const source = { ...rest, model, sheetId, taken: sheet, answered, rename: renameOn(sheetId) };
  for (const { text, done, of } of writtenRows({ ...source, open: protectionOf(model, sheetId).open })) {
    checkAgain(path, text);
    part.add(text);
    yield done / of;
  }
  part.end(`</sheetData>${tail}`);
}

/** Writes the texts of the cells and then all other parts, in steps that give the share of all work that is done. */
function* writingOthers({ parts, pictures }: Exported, strings: SharedStrings, zip: Packing): Generator<number> {
  const shared = zip.part(STRINGS);
  for (const piece of strings.written()) {
    shared.add(piece);
    yield ROWS_SHARE;
  }
  shared.end("");
  for (const path of parts.paths()) {
    const text = parts.take(path);
    checkAgain(path, text);
    zip.part(path).end(text);
    yield ROWS_SHARE;
  }
  for (const [path, bytes] of Object.entries(pictures)) zip.part(path).endBytes(bytes);
}

/** Makes the file from what the engine exported, in steps; each gives the share of this work that is done. */
function* making(
  workbook: OpenWorkbook,
  exported: Exported,
  valuesOnly: ValuesNotice | undefined,
): Generator<number, Uint8Array<ArrayBuffer>> {
  const { model } = workbook;
  const { parts } = exported;
  const { names, renameOn } = fileNames(workbook);
  yield 0;
  const sheetIds = model.getters.getSheetIds();
  addView(parts.document("xl/workbook.xml"), sheetIds.indexOf(model.getters.getActiveSheetId()));
  addNames(parts.document("xl/workbook.xml"), names, chosenMarkOf(model));
  yield 0;
  const styles = parts.document("xl/styles.xml");
  patchStyles(styles);
  orderCharts(parts);
  yield 0;
  const [strings, zip] = [new SharedStrings(), new Packing()];
  parts.delete(STRINGS);
  let hasUnknown = false;
  const writing: Writing = {
    ...{ workbook, exported, renameOn, strings, zip },
    opened: openedStyles(styles),
    asValues: valuesOnly !== undefined,
    fileValue: fileValuesOf(model),
    onUnknown: () => void (hasUnknown = true),
  };
  for (const [index, sheetId] of sheetIds.entries())
    for (const share of writingSheet(writing, index, sheetId)) yield (ROWS_SHARE * (index + share)) / sheetIds.length;
  if (valuesOnly) addValuesSheet(parts, valuesOnly);
  addCalculation(parts.document("xl/workbook.xml"), workbook.calculation ?? {}, hasUnknown);
  yield* writingOthers(exported, strings, zip);
  return zip.file();
}

/** Checks that a part, or some of its rows, can be read again, before the file is offered. */
function checkAgain(path: string, text: string): void {
  try {
    checkXml(text);
  } catch {
    throw new WorkbookError(
      say`The workbook was not saved: its part ${verbatim(path)} could not be read again, so the file could not be opened. The workbook is as it was. Please report this; a new workbook takes the sheets one by one meanwhile.`,
    );
  }
}

/**
 * The number of times that the file is begun again because the workbook was changed. After that it is made without a
 * pause.
 */
const MOST_CHANGED = 2;

/** Thrown when the workbook was changed while a file of it was made. */
class Changed extends Error {}

/** Steps that go on only while the workbook is as it was at a moment. */
function* whileSame<T>(
  model: OpenWorkbook["model"],
  moment: string,
  steps: Generator<number, T>,
): Generator<number, T> {
  try {
    for (;;) {
      if (momentOf(model) !== moment) throw new Changed();
      const { done, value } = steps.next();
      if (done) return value;
      yield value;
    }
  } finally {
    // Steps that are not run to their end are ended here.
    steps.return(undefined as never);
  }
}

/** A function for work that is not given as steps: it lets the page react, and throws what `run` throws when the work is to end. */
function resting(run: Run): () => Promise<void> {
  const rest = restful();
  return async () => {
    await rest();
    await run(
      (function* () {
        yield 0;
      })(),
    );
  };
}

/** The share of the work that is done when the engine has exported the workbook. */
const EXPORTED_SHARE = 0.4;

/** The bytes of the workbook as an .xlsx file; undefined, soon after, if it is changed meanwhile. Without `run`, it is made without a pause. */
async function madeOnce(
  workbook: OpenWorkbook,
  run: Run | undefined,
  valuesOnly?: ValuesNotice,
): Promise<Uint8Array<ArrayBuffer> | undefined> {
  const { model } = workbook;
  const moment = momentOf(model);
  const within =
    (from: number, to: number): Run =>
    async (steps) =>
      (run ?? atOnce)(asShares(whileSame(model, moment, steps), (share) => from + (to - from) * share));
  try {
    const rest = run ? resting(within(EXPORTED_SHARE, 1)) : async () => undefined;
    const { files, taken } = await exportFiles(model, within(0, EXPORTED_SHARE), TAKING);
    await rest();
    const parts = await partsOf(files);
    const formula = await spellings(formulasOf(taken), rest);
    const rules = await writtenRules(
      taken.map((sheet) => sheet.rules),
      rest,
    );
    return await within(EXPORTED_SHARE, 1)(making(workbook, { ...parts, taken, formula, rules }, valuesOnly));
  } catch (error) {
    // Parts of two moments may not go together.
    if (momentOf(model) === moment || error instanceof Stopped) throw error;
    return undefined;
  }
}

/**
 * Returns the bytes of the workbook as an .xlsx file. If the workbook is changed during a pause, the file is made
 * again, so that it contains the change. With `valuesOnly`, a copy with values: each formula is replaced by the value
 * that it shows, and a last sheet with this notice says so.
 */
export async function saveXlsx(
  workbook: OpenWorkbook,
  run: Run = async (steps) => atOnce(steps),
  valuesOnly?: ValuesNotice,
): Promise<Uint8Array<ArrayBuffer>> {
  const { model } = workbook;
  for (let round = 0; ; round++) {
    while (isBusy(model)) await stepEnd(model);
    const file = await madeOnce(workbook, round <= MOST_CHANGED ? run : undefined, valuesOnly);
    if (file) return file;
  }
}

/** The bytes of the workbook as an .xlsx file, made in slices; undefined, soon after, if the workbook is changed meanwhile. */
export async function saveUnlessChanged(workbook: OpenWorkbook): Promise<Uint8Array<ArrayBuffer> | undefined> {
  const { tell, signal } = unwatched();
  return isBusy(workbook.model) ? undefined : madeOnce(workbook, (steps) => inSlices(steps, tell, signal));
}

/** The bytes of an image that the engine stores as a data address. */
async function imageBytes(source: string): Promise<Uint8Array> {
  if (!source.startsWith("data:"))
    throw new WorkbookError(say`A picture in the workbook is not held in it and cannot be saved: remove it.`);
  return new Uint8Array(await (await fetch(source)).arrayBuffer());
}
