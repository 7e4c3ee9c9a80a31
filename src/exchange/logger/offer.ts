/**
 * Finds in a logger's file what it shows of its own layout. The user confirms the offer; parts that the file does not
 * show stay undefined, and the user is asked.
 */
import { firstOf, lastOf, nth } from "../../reduction/numeric/lists";
import { UNITS, unitNamed } from "../../reduction/units";
import { LONGEST_FIGURE, numberIn, timeIn } from "./cell";
import { runsBackwards } from "./direction";
import {
  DATE_ORDERS,
  DELIMITERS,
  NO_READING,
  type DateOrder,
  type DecimalMark,
  type Delimiter,
  type Layout,
  type TimeForm,
} from "./layout";
import { cellsOf } from "./table";

/** A layout that is not yet complete. */
export type LayoutDraft = { readonly [K in keyof Layout]: Layout[K] | undefined };

/** The layout is found from at most this many lines. */
const LOOKED_AT = 20_000;
/** Readings begin at the first of this many consecutive lines of readings. */
const ROWS_IN_A_ROW = 3;
const MOST_HEADING_ROWS = 4;

const DATE_CELL = /^\d{1,4}([-/.])\d{1,2}\1\d{1,4}$/;
const CLOCK_CELL = /^(?:\d{1,4}([-/.])\d{1,2}\1\d{1,4}[ T]+)?\d+:\d{1,2}(?::\d{1,2}(?:[.,]\d+)?)?(?:\s*[ap]m)?z?$/i;

const isReading = (cell: string, decimal: DecimalMark): boolean =>
  numberIn(cell, decimal) !== undefined ||
  (cell.length <= LONGEST_FIGURE && (DATE_CELL.test(cell.trim()) || CLOCK_CELL.test(cell.trim())));

const isBlank = (cell: string): boolean => cell.trim() === "";

/** A tab or a semicolon hardly ever occurs within a figure, so these are tried before the comma. */
function offeredDelimiter(lines: readonly string[]): Delimiter {
  const begun = lines.filter((line) => /^\s*["']?[-+.\d]/.test(line));
  const looked = begun.length > 0 ? begun : lines;
  const found = (["\t", ";", ","] as const).find(
    (delimiter) => looked.filter((line) => line.includes(delimiter)).length > looked.length / 2,
  );
  return found ?? DELIMITERS[0];
}

function offeredDecimal(rows: readonly (readonly string[])[]): DecimalMark {
  let commas = 0;
  let points = 0;
  for (const row of rows)
    for (const cell of row) {
      if (/^\s*[+-]?\d*,\d+\s*$/.test(cell)) commas++;
      if (/^\s*[+-]?\d*\.\d+\s*$/.test(cell)) points++;
    }
  return commas > points ? "," : ".";
}

/**
 * Whether a row holds readings: at least two cells are figures or times, and these are at least as many as the other
 * cells.
 */
function isDataRow(row: readonly string[], decimal: DecimalMark): boolean {
  const filled = row.filter((cell) => !isBlank(cell));
  const read = filled.filter((cell) => isReading(cell, decimal)).length;
  return read >= 2 && 2 * read >= filled.length;
}

/** The line, from 1, at which readings begin; undefined where there are none. */
function offeredFirstLine(rows: readonly (readonly string[])[], decimal: DecimalMark): number | undefined {
  let run = 0;
  for (const [index, row] of rows.entries()) {
    run = isDataRow(row, decimal) ? run + 1 : 0;
    if (run === ROWS_IN_A_ROW) return index - ROWS_IN_A_ROW + 2;
  }
  const only = rows.findIndex((row) => isDataRow(row, decimal));
  return only < 0 ? undefined : only + 1;
}

/** The heading cells of each column above the line at which readings begin: names, then perhaps units. */
function headingsAbove(rows: readonly (readonly string[])[], firstLine: number, decimal: DecimalMark): string[][] {
  const data = rows.slice(firstLine - 1, firstLine + 20);
  const columns = Math.max(...data.map((row) => row.length), 0);
  // Loggers that end each row with a delimiter do not always end the headings with one.
  const least = data.every((row) => isBlank(row[columns - 1] ?? "")) ? columns - 1 : columns;
  const above: (readonly string[])[] = [];
  for (let index = firstLine - 2; index >= 0 && above.length < MOST_HEADING_ROWS; index--) {
    const row = nth(rows, index);
    if (row.every(isBlank)) continue;
    if (row.filter((cell) => !isBlank(cell)).length < 2 || row.length < least || row.length > columns) break;
    if (row.some((cell) => numberIn(cell, decimal) !== undefined)) break;
    above.unshift(row);
  }
  return Array.from({ length: columns }, (_, col) =>
    above.map((row) => (row[col] ?? "").trim()).filter((cell) => cell !== ""),
  );
}

/**
 * The unit that the headings of a column name: in brackets, as a cell of its own, or as the last word; "in" counts only
 * in brackets or as a cell of its own.
 */
function unitIn(headings: readonly string[], names: readonly string[]): string | undefined {
  const bracketed = headings.flatMap((cell) =>
    [...cell.matchAll(/[[(]([^\])]+)[\])]/g)].flatMap(([, inner]) => inner ?? []),
  );
  const last = headings.flatMap((cell) => /[\s,_]([^\s,_]+)$/.exec(cell)?.[1] ?? []).filter((word) => word !== "in");
  for (const word of [...bracketed, ...headings, ...last]) {
    const unit = unitNamed(word, names);
    if (unit !== undefined) return unit;
  }
  return undefined;
}

const TIME_WORDS: readonly [TimeForm, readonly string[]][] = [
  ["s", ["s", "sec", "secs", "second", "seconds", "sek", "sekunde", "sekunden"]],
  ["min", ["min", "mins", "minute", "minutes", "minuten"]],
  ["h", ["h", "hr", "hrs", "hour", "hours", "std", "stunde", "stunden"]],
  ["d", ["d", "day", "days", "tag", "tage"]],
];

const LENGTH_WORDS: Readonly<Record<string, string>> = {
  ...Object.fromEntries(Object.keys(UNITS.length).map((name) => [name, name])),
  inch: "in",
};
const DIVISION_WORDS = ["div", "divs", "division", "divisions", "skt", "skt.", "skalenteil", "skalenteile"];

const NUMBERED = /^\W*(?:no|nr|rec|record|index|id|line|row|point|scan)\b/i;
const ABOUT = {
  date: /\bdate|datum|fecha/i,
  time: /time|elapsed|zeit|temps|tiempo|tempo|clock/i,
  reading:
    /displ|deform|settle|dial|lvdt|reading|setzung|ablesung|messuhr|verformung|zusammendr|\bweg\b|tassement|gauge/i,
  load: /stress|pressure|load|force|spannung|auflast|\blast\b|druck|contrainte/i,
  temperature: /\btemp(?:erat\w*)?\b|°\s?c\b|\bdeg\.? ?c\b/i,
  fahrenheit: /°\s?f\b|\bdeg\.? ?f\b|fahrenheit/i,
  step: /\b(?:step|stage|load no|load number|increment|(?:last)?stufe)\b/i,
};

/** With this many cells a counter of lines can be told from the number of a load. */
const COUNTED = 10;

/** Whether a column counts lines and not loads: more than half of its cells differ from the line before. */
const countsLines = (cells: readonly string[]): boolean =>
  cells.length >= COUNTED &&
  cells.filter((cell, index) => index > 0 && cell !== cells[index - 1]).length > cells.length / 2;

/** The filled cells of one column. */
const columnOf = (rows: readonly (readonly string[])[], col: number): string[] =>
  rows.map((row) => (row[col] ?? "").trim()).filter((cell) => cell !== "");

/**
 * The orders of day, month and year in which every cell is a valid date. With points between them the day comes before the month
 * wherever dates are written so (common practice, no source).
 */
function possibleOrders(dates: readonly string[]): DateOrder[] {
  return DATE_ORDERS.filter((order) =>
    dates.every((date) => {
      const yearFirst = /^\d{4}/.test(date);
      const hasPoints = date.includes(".");
      return (
        (order === "ymd") === yearFirst &&
        !(order === "mdy" && hasPoints) &&
        timeIn("00:00:00", "clock", ".", order, date) !== undefined
      );
    }),
  );
}

function clockForm(cells: readonly string[], headings: readonly string[], dated: boolean): TimeForm | undefined {
  if (dated) return "clock";
  if (/elapsed|duration|dauer/i.test(headings.join(" ")))
    return cells.every((cell) => /^\d+:\d+:/.test(cell)) ? "h:mm:ss" : undefined;
  if (!cells.every((cell) => /^\d+:\d+:/.test(cell))) return undefined;
  if (cells.some((cell) => Number(/^\d+/.exec(cell)![0]) > 23)) return "h:mm:ss";
  return /^0+:0+:0/.test(cells[0] ?? "") ? "h:mm:ss" : "clock";
}

interface Column {
  readonly index: number;
  readonly headings: readonly string[];
  /** The headings joined. */
  readonly words: string;
  readonly cells: readonly string[];
}

export interface Offer {
  readonly draft: LayoutDraft;
  /** The name of each column: its headings joined; "" if it has none. */
  readonly columns: readonly string[];
}

/** The columns of a file by what they contain; undefined if no column was found for it. */
interface Found {
  readonly dateAlone?: Column;
  readonly time?: Column;
  readonly reading?: Column;
  readonly load?: Column;
  readonly temperature?: Column;
}

function findColumns(columns: readonly Column[]): Found {
  const hasHeadings = columns.some(({ words }) => words !== "");

  const free = new Set(columns);
  const take = (test: (column: Column) => boolean): Column | undefined => {
    const column = [...free].find(test);
    if (column !== undefined) free.delete(column);
    return column;
  };
  const dateAlone = take(({ cells }) => cells.length > 0 && cells.every((cell) => DATE_CELL.test(cell)));
  for (const column of free) if (NUMBERED.test(column.words)) free.delete(column);
  const timeNames = TIME_WORDS.flatMap(([, names]) => names);
  const time =
    take(({ cells }) => cells.length > 0 && cells.every((cell) => CLOCK_CELL.test(cell))) ??
    take(({ words }) => ABOUT.time.test(words)) ??
    take((column) => unitIn(column.headings, timeNames) !== undefined) ??
    take(() => !hasHeadings);
  const readingNames = [...Object.keys(LENGTH_WORDS), ...DIVISION_WORDS];
  const reading =
    take(({ words }) => ABOUT.reading.test(words)) ??
    take((column) => unitIn(column.headings, readingNames) !== undefined) ??
    take(() => !hasHeadings);
  const loadNames = [...Object.keys(UNITS.stress), ...Object.keys(UNITS.force)];
  const load =
    take((column) => unitIn(column.headings, loadNames) !== undefined) ??
    take(({ words }) => ABOUT.load.test(words)) ??
    take(({ words, cells }) => ABOUT.step.test(words) && !countsLines(cells));
  const temperature = take(({ words }) => ABOUT.temperature.test(words) && !ABOUT.fahrenheit.test(words));
  return { dateAlone, time, reading, load, temperature };
}

/** How the times are written: the form, the column and the order of the dates, and whether the times begin again. */
function timesOf(
  { time, dateAlone }: Found,
  decimal: DecimalMark,
): Pick<LayoutDraft, "timeForm" | "date" | "dateOrder" | "timesRun"> {
  const times = time?.cells ?? [];
  const timeHeadings = time?.headings ?? [];
  const isClock = times.some((cell) => cell.includes(":"));
  const datesWithin = times.map((cell) => firstOf(cell.split(/[ T]/))).filter((cell) => DATE_CELL.test(cell));
  const dates = dateAlone?.cells ?? datesWithin;
  const orders = possibleOrders(dates);
  const timeForm = isClock
    ? clockForm(times, timeHeadings, dates.length > 0)
    : TIME_WORDS.find(([, names]) => unitIn(timeHeadings, names) !== undefined)?.[0];
  return {
    timeForm,
    date: (timeForm === "clock" ? dateAlone?.index : undefined) ?? null,
    dateOrder: dates.length === 0 ? "ymd" : orders.length === 1 ? orders[0] : undefined,
    timesRun: timeForm === "clock" ? "test" : timesRun(times, timeForm ?? "min", decimal),
  };
}

/** The units of the readings and the loads, from the headings. */
function unitsOf({ reading, load }: Found): Pick<LayoutDraft, "readingUnit" | "loadKind" | "loadUnit"> {
  const lengthWord = reading && unitIn(reading.headings, Object.keys(LENGTH_WORDS));
  const readingUnit = lengthWord
    ? LENGTH_WORDS[lengthWord]
    : reading && unitIn(reading.headings, DIVISION_WORDS)
      ? "div"
      : undefined;
  const stressUnit = load && unitIn(load.headings, Object.keys(UNITS.stress));
  const forceUnit = load && unitIn(load.headings, Object.keys(UNITS.force));
  const loadKind = stressUnit
    ? "stress"
    : forceUnit
      ? "force"
      : load && ABOUT.step.test(load.words)
        ? "number"
        : undefined;
  return {
    readingUnit,
    loadKind: load === undefined ? "stress" : loadKind,
    loadUnit: load === undefined || loadKind === "number" ? "" : (stressUnit ?? forceUnit),
  };
}

/**
 * The layout that a file shows. A `delimiter`, `decimal` or `firstLine` that the user has set is kept, and the rest is
 * found with it.
 */
export function offerLayout(
  lines: readonly string[],
  set: { readonly delimiter?: Delimiter; readonly decimal?: DecimalMark; readonly firstLine?: number } = {},
): Offer {
  const looked = lines.slice(0, LOOKED_AT);
  const delimiter = set.delimiter ?? offeredDelimiter(looked);
  const rows = cellsOf(looked, delimiter);
  const decimal = set.decimal ?? offeredDecimal(rows);
  const firstLine = set.firstLine ?? offeredFirstLine(rows, decimal);
  const headings = headingsAbove(rows, firstLine ?? 1, decimal);
  const data = rows.slice((firstLine ?? 1) - 1).filter((row) => isDataRow(row, decimal));
  const columns = headings.map((heads, index): Column => ({
    index,
    headings: heads,
    words: heads.join(" "),
    cells: columnOf(data, index),
  }));
  const found = findColumns(columns);
  const { time, reading, load, temperature } = found;
  const ofTime = timesOf(found, decimal);
  const dates = ofTime.date === null ? undefined : found.dateAlone?.cells;
  const isBackwards = runsBackwards(
    timesIn(time?.cells ?? [], ofTime.timeForm ?? "min", decimal, { order: ofTime.dateOrder, dates }),
  );
  return {
    columns: columns.map(({ words }) => words),
    draft: {
      ...{ delimiter, decimal, firstLine },
      time: time?.index,
      ...ofTime,
      reading: reading?.index,
      sense: reading && senseOf(reading.cells, decimal, isBackwards),
      load: load?.index ?? null,
      ...unitsOf(found),
      lever: 1,
      temperature: temperature?.index ?? null,
      noReading: NO_READING,
    },
  };
}

/** The times of a column in minutes, as far as they can be read. */
const timesIn = (
  cells: readonly string[],
  form: TimeForm,
  decimal: DecimalMark,
  {
    order = "ymd",
    dates,
  }: { readonly order?: DateOrder | undefined; readonly dates?: readonly string[] | undefined } = {},
): number[] =>
  cells
    .map((cell, index) => timeIn(cell, form, decimal, order, dates?.[index])?.minutes)
    .filter((time) => time !== undefined);

/** Whether times fall back to their start. */
function timesRun(cells: readonly string[], form: TimeForm, decimal: DecimalMark): "test" | "load" {
  const times = timesIn(cells, form, decimal).filter((time) => time >= 0);
  if (runsBackwards(times)) return "test";
  const fallsBack = (time: number, index: number): boolean =>
    index > 0 && time < nth(times, index - 1) && time <= 1.5 * firstOf(times);
  return times.some(fallsBack) ? "load" : "test";
}

/**
 * Whether readings rise or fall, from their start and their end: a test loads more than it unloads. A file that begins
 * with its newest line has its start at the bottom.
 */
function senseOf(cells: readonly string[], decimal: DecimalMark, isBackwards: boolean): "rise" | "fall" | undefined {
  const readings = cells
    .map((cell) => numberIn(cell, decimal))
    .filter((reading) => reading !== undefined)
    .filter((reading) => !NO_READING.includes(reading));
  if (readings.length < 2) return undefined;
  const change = (lastOf(readings) - firstOf(readings)) * (isBackwards ? -1 : 1);
  return change === 0 ? undefined : change > 0 ? "rise" : "fall";
}

/** The layout if every part is known; otherwise the parts that are missing. */
export function finished(draft: LayoutDraft): { readonly layout: Layout } | { readonly missing: (keyof Layout)[] } {
  // Object.keys returns strings; a draft has the keys of a layout and no others.
  const missing = (Object.keys(draft) as (keyof Layout)[]).filter((key) => draft[key] === undefined);
  // No part of the draft is undefined, so it is a complete layout.
  return missing.length > 0 ? { missing } : { layout: draft as Layout };
}
