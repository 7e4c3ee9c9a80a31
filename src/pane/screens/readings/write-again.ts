/** Writes what is new in a file: first its lines to the sheet that keeps them, then the data sheet, then the record. */
import type { ReadBefore } from "../../../exchange/logger/again";
import { languageOfLabels } from "../../live/sheet-language";
import { AGAIN_NAMES, keptAll, LINES_AT_ONCE, linesName } from "../../../exchange/logger/file-sheet";
import { boxAddress } from "../../../workbook/address";
import { pause, Stopped, type Course } from "../../../workbook/in-slices";
import { WorkbookError, type NamedColumns, type WorkbookPort } from "../../../workbook/port";
import { asTyped } from "../../../reduction/message";
import { loadOfReadings } from "../../../specification/readings";
import { noted } from "../../live/unfinished";
import { text } from "../../text";
import { firstNotKept, NotKept, staying } from "./into-workbook";

const words = text.readAgain;

export interface AgainJob {
  readonly dataSheet: string;
  readonly fileSheet: string;
  readonly columns: NamedColumns;
  /** The line of the file sheet's list: day, hash of the file now, and what came in. */
  readonly day: string;
  readonly sha256: string;
  readonly said: string;
  readonly read: ReadBefore;
  /** All lines that are then kept, and how many of them stand there already. */
  readonly lines: readonly string[];
  readonly standing: number;
}

/** Reads the lines that a file sheet keeps. */
export async function keptLinesOf(port: WorkbookPort, sheet: string, count: number): Promise<string[]> {
  const lines: string[] = [];
  for (let from = 0; from < count; from += LINES_AT_ONCE) {
    await pause();
    const name = linesName(from / LINES_AT_ONCE);
    const { [name]: cells = [] } = await port.readNames(sheet, [name]);
    const piece = Math.min(LINES_AT_ONCE, count - from);
    for (let row = 0; row < piece; row++) lines.push(String(cells[row]?.[0] ?? ""));
  }
  return lines;
}

/** Gives the cells of further lines their names, below those that the sheet has. */
async function makeRoom(port: WorkbookPort, sheet: string, lines: number): Promise<void> {
  const names = await port.listNames(sheet);
  const first = names.find(({ name }) => name === linesName(0))?.place;
  if (!first || first === "lost") throw new NotKept(sheet, 1);
  const there = new Set(names.map(({ name }) => name));
  const missing = Array.from({ length: Math.ceil(lines / LINES_AT_ONCE) }, (_, chunk) => chunk).filter(
    (chunk) => !there.has(linesName(chunk)),
  );
  if (missing.length === 0) return;
  await port.nameAll(
    sheet,
    missing.map((chunk) => ({
      name: linesName(chunk),
      address: boxAddress({ row: first.row + chunk * LINES_AT_ONCE, col: first.col, rows: LINES_AT_ONCE, cols: 1 }),
    })),
  );
}

const firstGiven = (given: NamedColumns[string]): number => given.findIndex((cell) => cell !== null);

/** Of a new load the whole column is given; of one that goes on, the cells below those that stay. */
const isOfNewLoad = (name: string, given: NamedColumns[string]): boolean =>
  firstGiven(given) === 0 && name.startsWith("times");

/** The names whose cells get readings only if they are still blank. */
const freeIn = (columns: NamedColumns, replaced: ReadonlySet<string>): string[] =>
  Object.entries(columns).flatMap(([name, given]) =>
    loadOfReadings(name) !== undefined && !isOfNewLoad(name, given) && !replaced.has(name) ? [name] : [],
  );

/** Whether the cells that get readings are those that were looked at: blank, or the one that is written again. */
async function checkBlank(port: WorkbookPort, { dataSheet, columns }: AgainJob, replaced: ReadonlySet<string>) {
  const names = Object.keys(columns).filter((name) => loadOfReadings(name) !== undefined);
  for (const [name, cells] of Object.entries(await port.readNames(dataSheet, names))) {
    const given = columns[name] ?? [];
    const from = firstGiven(given);
    const load = loadOfReadings(name);
    if (load === undefined || isOfNewLoad(name, given)) continue;
    const filled = cells.slice(from).some(([cell]) => cell !== "" && cell !== undefined);
    if (filled && !replaced.has(name)) throw new WorkbookError(asTyped(words.filled(load, dataSheet)));
  }
}

/**
 * Adds the lines, fills the data sheet, and then records what was read: if the writing ends in between, the same
 * readings are found again, and those that stand on the sheet do not come twice. `replaced` names columns whose last
 * reading may be written over. Throws Stopped, NotKept, SheetChanged or WorkbookError; of these, none leaves
 * the data sheet half written.
 */
export const writeAgain = (
  port: WorkbookPort,
  job: AgainJob,
  replaced: ReadonlySet<string>,
  course: Course,
): Promise<void> => noted(port, "readings again", job.dataSheet, () => writeNoted(port, job, replaced, course));

async function writeNoted(
  port: WorkbookPort,
  job: AgainJob,
  replaced: ReadonlySet<string>,
  { tell, signal }: Course,
): Promise<void> {
  const { dataSheet, fileSheet, columns, lines, standing, read, day, sha256, said } = job;
  const [dataSheetStays, fileSheetStays] = [await staying(port, dataSheet), await staying(port, fileSheet)];
  const [dayName] = AGAIN_NAMES;
  const { [dayName]: days = [] } = await port.readNames(fileSheet, [dayName]);
  const row = days.findIndex(([cell]) => cell === "" || cell === undefined);
  if (row < 0) throw new WorkbookError(asTyped(words.full(fileSheet)));
  await checkBlank(port, job, replaced);
  await makeRoom(port, fileSheet, lines.length);
  // The last line that stands may have been cut short.
  const begun = Math.max(0, standing - 1);
  for (let from = begun - (begun % LINES_AT_ONCE); from < lines.length; from += LINES_AT_ONCE) {
    await pause();
    if (signal.aborted) throw new Stopped();
    tell(from / lines.length);
    await fileSheetStays();
    await port.fillNames(fileSheet, { [linesName(from / LINES_AT_ONCE)]: lines.slice(from, from + LINES_AT_ONCE) });
  }
  const differs = await firstNotKept(port, fileSheet, lines, signal);
  if (differs !== undefined) throw new NotKept(fileSheet, differs + 1);
  await dataSheetStays();
  await checkBlank(port, job, replaced);
  if (Object.keys(columns).length > 0) await port.fillNames(dataSheet, columns, [], freeIn(columns, replaced));
  const inRow = (value: string | number): (string | number | null)[] => [...new Array<null>(row).fill(null), value];
  const listed = [day, lines.length, sha256, said].map(inRow);
  await port.fillNames(fileSheet, {
    ...Object.fromEntries(AGAIN_NAMES.map((name, index) => [name, listed[index] ?? []])),
    logger_kept: [keptAll(lines.length, languageOfLabels())],
    logger_read: [JSON.stringify(read)],
  });
}
