/** The work of the summary in the workbook and with files: it reads data sheets, writes rows, inserts the charts. */
import { BOOK_MARK } from "../../../book/book-sheet";
import { runChecks, type OtherTest, type Thresholds } from "../../../checks";
import { ANSWER_NAMES, ANSWERS_SHEET_NAME, isOpen, readAnswers, type Acknowledgement } from "../../../checks/answers";
import { LIMIT_NAMES, LIMITS_SHEET_NAME } from "../../../checks/limits";
import { LAYOUT_NAMES } from "../../../exchange/logger/file-sheet";
import { boxesByName } from "../../../record/places";
import { readRecord, RECORD_NAMES, type TestRecord } from "../../../record/record";
import { REGISTER_MARK } from "../../../record/register";
import { REPORT_OF } from "../../../report/report";
import { DATA_SHEET_NAME } from "../../../specification/readings";
import { chartsSheet, CURVE_NAMES, VOID_INDEX_NAMES, type Curve } from "../../../summary/charts";
import { COLUMN_NAMES, KEY, NEEDED_NAMES, FILE } from "../../../summary/columns";
import { namedCellsOf } from "../../../summary/file-cells";
import {
  languageOfSummary,
  SUMMARY_LANGUAGE,
  SUMMARY_SHEET_NAME,
  summarySheet,
  UNIT_NAMES,
  unitsOfSummary,
} from "../../../summary/summary-sheet";
import { twins, update, type FileSpecimen, type Specimen, type Standing, type Update } from "../../../summary/update";
import { boxAddress } from "../../../workbook/address";
import { localDayNumber } from "../../../workbook/day-number";
import {
  WorkbookError,
  type CellContent,
  type FoundSheet,
  type Looked,
  type WorkbookPort,
} from "../../../workbook/port";
import { haveMoved } from "../../../workbook/rules/moved";
import { pause, Stopped } from "../../../workbook/in-slices";
import { asTyped } from "../../../reduction/message";
import { filled, noted, notedSheet } from "../../live/unfinished";
import { inWords } from "../../text/messages";
import { sentenceOf } from "../../text/sentence";
import { text } from "../../text";
import { sha256 } from "../../ui/sha256";
import { BESIDE, limitsIn, testsAmong } from "../checks/workbook-answers";
import type { SummaryChoices } from "./summary-state";

const words = text.summary;

/** Reports the share of the work that is done, and tells the work whether to stop. */
export interface Course {
  readonly tell: (share: number) => void;
  readonly signal: AbortSignal;
  readonly now: Date;
}

export interface Project {
  readonly specimens: readonly Specimen[];
  /** Sheets that do not have the names of a data sheet, without those that only programs see: other add-ins keep data on them. */
  readonly unread: readonly string[];
}

/** The number of data sheets that are read at a time; between two groups the page can draw. */
const AT_ONCE = 4;

/** What the questions of every data sheet of a workbook need: the limits of the firm, the answers, and the data sheets to compare with. */
interface Asked {
  readonly thresholds: Thresholds;
  readonly answers: readonly Acknowledgement[];
  readonly tests: readonly OtherTest[];
}

const askedOf = (sheets: readonly Pick<Looked, "sheet" | "values" | "names">[]): Asked => ({
  thresholds: limitsIn(sheets).thresholds,
  answers: sheets.flatMap(({ values }) => readAnswers(values)),
  tests: testsAmong(sheets),
});

/** How many questions of a data sheet are open: as many as its Checks tab shows without an answer. */
function openChecks(record: TestRecord, sheet: string, { thresholds, answers, tests }: Asked): number {
  const others = tests.filter((one) => one.sheet !== sheet);
  return runChecks(record, thresholds, others).filter((one) => isOpen(answers, sheet, one)).length;
}

/** Names of the other sheets that the add-in makes: they are no tests, and nobody expects them in the summary. */
const OWN_SHEETS: readonly string[] = [
  REPORT_OF,
  BOOK_MARK,
  LAYOUT_NAMES[0],
  REGISTER_MARK,
  ANSWERS_SHEET_NAME,
  LIMITS_SHEET_NAME,
  SUMMARY_SHEET_NAME,
];

const findSheets = (port: WorkbookPort): Promise<readonly FoundSheet[]> =>
  port.findSheets([...new Set([...NEEDED_NAMES, ...CURVE_NAMES, ...VOID_INDEX_NAMES, ...OWN_SHEETS])]);

/** Reads every data sheet of the workbook. Throws `Stopped` if the person stops the work; then nothing was written. */
async function readProject(port: WorkbookPort, { tell, signal, now }: Course): Promise<Project> {
  const found = await findSheets(port);
  const isOf = (name: string) => found.filter(({ has }) => has.includes(name));
  const sheets = isOf(DATA_SHEET_NAME);
  if (sheets.length === 0) throw new WorkbookError(asTyped(words.noSheets));
  const kinds = BESIDE.map(({ mark, names }) => isOf(mark).map(({ sheet }) => ({ sheet, values: names })));
  const asked = askedOf(await port.lookAt(kinds.flat()));
  const specimens: Specimen[] = [];
  for (let first = 0; first < sheets.length; first += AT_ONCE) {
    if (signal.aborted) throw new Stopped();
    const part = sheets.slice(first, first + AT_ONCE);
    const looked = await port.lookAt(part.map(({ sheet }) => ({ sheet, values: RECORD_NAMES })));
    for (const [index, { sheet, values }] of looked.entries()) {
      const record = readRecord(values);
      const open = openChecks(record, sheet, asked);
      const has = new Set(part[index]?.has);
      specimens.push({ sheet, record, has, beside: { open, day: localDayNumber(now) } });
      tell((first + index + 1) / sheets.length);
      await pause();
    }
  }
  const others = found.filter(
    ({ has, isVeryHidden }) => !isVeryHidden && ![DATA_SHEET_NAME, ...OWN_SHEETS].some((name) => has.includes(name)),
  );
  return { specimens, unread: others.map(({ sheet }) => sheet) };
}

export interface ProjectSheets {
  /** The active sheet if it is a summary; otherwise the last summary of the workbook. */
  readonly summary: string | undefined;
  /** The data sheets. */
  readonly data: readonly string[];
}

export async function sheetsOf(port: WorkbookPort): Promise<ProjectSheets> {
  const found = await port.findSheets([SUMMARY_SHEET_NAME, DATA_SHEET_NAME]);
  const summaries = found.filter(({ has }) => has.includes(SUMMARY_SHEET_NAME));
  return {
    summary: (summaries.find(({ isActive }) => isActive) ?? summaries.at(-1))?.sheet,
    data: found.filter(({ has }) => has.includes(DATA_SHEET_NAME)).map(({ sheet }) => sheet),
  };
}

const summaryOf = async (port: WorkbookPort): Promise<string | undefined> => (await sheetsOf(port)).summary;

/** The number of columns that are searched for texts of a person: a row with any content is not free. */
const COLUMNS_LOOKED_AT = 100;

async function standingOf(port: WorkbookPort, sheet: string): Promise<Standing> {
  const [found] = await port.lookAt([
    { sheet, values: [...COLUMN_NAMES, ...UNIT_NAMES, SUMMARY_LANGUAGE], contents: COLUMN_NAMES, names: true },
  ]);
  const { names = [], values = {}, contents = {} } = found ?? {};
  const box = boxesByName(names).get(KEY);
  if (!box) throw new WorkbookError(asTyped(words.none));
  const around = { row: box.row, col: 0, rows: box.rows, cols: COLUMNS_LOOKED_AT };
  const rows = await port.values(sheet, boxAddress(around).replaceAll("$", ""));
  const filled = rows.flatMap((row, index) => (row.some((value) => value !== "") ? [box.row + index] : []));
  return { names, values, contents, filled: new Set(filled) };
}

/** The sentences about an update of a summary. */
function told(done: Update, project: Project, files: readonly FileSpecimen[]): string[] {
  const pairs = twins([
    ...project.specimens.map(({ sheet, record }) => ({ called: sheet, record })),
    ...files.map(({ record, beside }) => ({ called: beside.file, record })),
  ]);
  const given = new Set([...done.added, ...done.changed, ...done.withoutRoom]);
  const same = files.map(({ beside }) => beside.file).filter((file) => !given.has(file));
  const list: readonly (readonly [readonly unknown[], () => string])[] = [
    [done.added, () => words.added(done.added)],
    [done.changed, () => words.changed(done.changed)],
    [same, () => words.same(same)],
    [done.left, () => words.left(done.left)],
    [done.gone, () => words.gone(done.gone)],
    [done.withoutRoom, () => words.withoutRoom(done.withoutRoom)],
    [pairs, () => words.twins(pairs)],
    [project.unread, () => words.unread(project.unread)],
  ];
  return list.flatMap(([of, sentence]) => (of.length > 0 ? [sentence()] : []));
}

/** The sentences about the work; the first one says what was done. */
export interface Done {
  readonly isWhole: boolean;
  readonly sentences: readonly string[];
}

async function bring(
  port: WorkbookPort,
  sheet: string,
  project: Project,
  files: readonly FileSpecimen[],
): Promise<string[]> {
  const standing = await standingOf(port, sheet);
  const done = update(standing, project.specimens, files);
  // One writing: a row has all of its cells or none.
  const renewed = done.renewed.map((cell): CellContent => ({ ...cell, replaces: true }));
  await noted(port, "summary", sheet, () => port.writeCells(sheet, [...done.fresh, ...renewed], false, standing.names));
  return told(done, project, files);
}

export async function insertSummary(
  port: WorkbookPort,
  { system, language }: SummaryChoices,
  course: Course,
): Promise<Done> {
  const project = await readProject(port, course);
  const remarks: string[] = [];
  const plan = summarySheet(system, language);
  const { sheet, sentences } = await notedSheet(port, plan.name, async () => {
    const made = await port.insertSheet(plan, (remark) => void remarks.push(inWords(remark)));
    return { sheet: made, sentences: await filled(made, () => bring(port, made, project, [])) };
  });
  return { isWhole: remarks.length === 0, sentences: [words.inserted(sheet), ...remarks, ...sentences] };
}

export async function bringUpToDate(port: WorkbookPort, course: Course): Promise<Done> {
  const sheet = await summaryOf(port);
  if (sheet === undefined) throw new WorkbookError(asTyped(words.none));
  const project = await readProject(port, course);
  return { isWhole: true, sentences: [words.upToDate(sheet), ...(await bring(port, sheet, project, []))] };
}

/** The properties of a file that are read. */
export type ChosenFile = Pick<File, "name" | "arrayBuffer">;

/** The data sheets of a file. Throws a sentence with the reason if there are none. */
async function specimensOf(file: ChosenFile, day: number): Promise<FileSpecimen[]> {
  const bytes = new Uint8Array(await file.arrayBuffer());
  const cells = namedCellsOf(bytes, [...RECORD_NAMES, ...LIMIT_NAMES, ...ANSWER_NAMES]);
  const sheets = cells.filter(({ values }) => DATA_SHEET_NAME in values);
  if (sheets.length === 0) throw new WorkbookError(asTyped(words.noDataSheet));
  const hash = await sha256(bytes);
  const asked = askedOf(cells);
  return sheets.map(({ sheet, values }) => {
    const record = readRecord(values);
    if (Object.keys(record.results).length === 0) throw new WorkbookError(asTyped(words.noResults));
    const beside = { open: openChecks(record, sheet, asked), day, file: `${file.name}, ${sheet}`, hash };
    return { record, beside };
  });
}

/** Reads files one after the other. A file that cannot be read is listed and skipped. */
export async function addFiles(port: WorkbookPort, chosen: readonly ChosenFile[], course: Course): Promise<Done> {
  const sheet = await summaryOf(port);
  if (sheet === undefined) throw new WorkbookError(asTyped(words.none));
  const files: FileSpecimen[] = [];
  const skipped: string[] = [];
  for (const [index, file] of chosen.entries()) {
    if (course.signal.aborted) throw new Stopped();
    try {
      files.push(...(await specimensOf(file, localDayNumber(course.now))));
    } catch (error) {
      skipped.push(words.skipped(file.name, sentenceOf(error)));
    }
    course.tell((index + 1) / chosen.length);
  }
  const project = await readProject(port, { ...course, tell: () => undefined });
  const sentences = await bring(port, sheet, project, files);
  return { isWhole: skipped.length === 0, sentences: [words.upToDate(sheet), ...skipped, ...sentences] };
}

/** The name of a specimen beside its line, such as "BH-X1 U7 a". */
const calledIn = (sheet: string, { words: said }: TestRecord): string =>
  [said.boring, said.sample, said.specimen].filter(Boolean).join(" ") || sheet;

export async function insertCharts(port: WorkbookPort, course: Course): Promise<Done> {
  const summary = await summaryOf(port);
  if (summary === undefined) throw new WorkbookError(asTyped(words.none));
  const { specimens } = await readProject(port, course);
  const { names, values, contents } = await standingOf(port, summary);
  const isHeld = (name: string, index: number): boolean => (contents[name]?.[index]?.[0] ?? "") !== "";
  const rows = (contents[KEY] ?? []).flatMap((_, index) => (isHeld(KEY, index) || isHeld(FILE, index) ? [index] : []));
  const isDrawn = ({ has }: Specimen): boolean => CURVE_NAMES.every((name) => has.has(name));
  const undrawn = specimens.filter((one) => !isDrawn(one)).map(({ sheet }) => sheet);
  const curves = specimens.filter(isDrawn).map(({ sheet, record, has }): Curve => {
    const hasVoidIndex = VOID_INDEX_NAMES.every((name) => has.has(name));
    return { sheet, record, called: calledIn(sheet, record), hasVoidIndex };
  });
  const shown = (name: string): number[] =>
    rows.flatMap((row) => {
      const value = values[name]?.[row]?.[0];
      return typeof value === "number" ? [value] : [];
    });
  const drawn = { sheet: summary, boxes: boxesByName(names), rows };
  const { plan, cells } = chartsSheet(drawn, curves, shown, unitsOfSummary(values), languageOfSummary(values));
  if (plan.charts?.length === 0) throw new WorkbookError(asTyped(words.nothingToDraw));
  const remarks: string[] = [];
  const sheet = await notedSheet(port, plan.name, async () => {
    // From here on the page refuses undo; what somebody did before is seen here.
    const now = await standingOf(port, summary);
    if (JSON.stringify(now.contents) !== JSON.stringify(contents))
      throw new WorkbookError(asTyped(words.changedMeanwhile(summary)));
    const reads = { sheet: summary, names };
    const made = await port.insertSheet({ ...plan, reads }, (remark) => void remarks.push(inWords(remark)));
    await filled(made, async () => {
      await port.writeCells(made, cells);
      // From here on the cells and charts follow the rows of the summary.
      if (haveMoved(names, await port.listNames(summary)))
        throw new WorkbookError(asTyped(words.movedMeanwhile(summary)));
    });
    return made;
  });
  const told = [...remarks, ...(undrawn.length > 0 ? [words.undrawn(undrawn)] : [])];
  return { isWhole: told.length === 0, sentences: [words.chartsInserted(sheet), ...told] };
}
