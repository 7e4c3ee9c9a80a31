/**
 * The sheet on which a logger's file is kept beside the test: its name and hash, how it was read, the rows of each
 * load, the lines that were left out, and every line as it was read. The sheet also keeps the layout, which is offered
 * for the next file of the apparatus.
 */
import { lastOf } from "../../reduction/numeric/lists";
import { UNITS } from "../../reduction/units";
import { SHEET_LANGUAGES, type SheetLanguage } from "../../specification/text/language";
import { besideIn, wordsOf } from "../../specification/text/words";
import type { Box, CellKind, CellPlan, CellValue, SheetPlan } from "../../workbook/port";
import type { ReadBefore } from "./again";
import { DATE_ORDERS, DELIMITERS, LOAD_KINDS, TIME_FORMS, type Layout } from "./layout";

export interface FileRecord {
  /** The data sheet that the readings go to. */
  readonly dataSheet: string;
  /** The language of the data sheet; English if it is left out. */
  readonly language?: SheetLanguage;
  /** "" for rows that were pasted. */
  readonly file: string;
  readonly sha256: string;
  /** What the hash was calculated from: "the 4,326,828 bytes of the file". */
  readonly hashOf: string;
  readonly encoding: string;
  readonly apparatus: string;
  readonly layout: Layout;
  /** The layout in words, one line each: name and value. */
  readonly layoutWords: readonly (readonly [string, string])[];
  readonly loads: readonly {
    readonly load: number;
    readonly fromLine: number;
    readonly toLine: number;
    /** Rows of the file, and how many of them went to the sheet. */
    readonly rows: number;
    readonly kept: number;
  }[];
  /** Remarks on lines: line number and words. */
  readonly remarks: readonly (readonly [number, string])[];
  /** How many lines of the file are kept on the sheet; 0 for none. */
  readonly lines: number;
  /** How the loads were found and which lines went to them, so that the file can be read again while it grows. */
  readonly read?: ReadBefore;
}

/** This many lines have one name, and are written at once. */
export const LINES_AT_ONCE = 2000;
/**
 * The most lines that are kept: a workbook with 250,000 opens again on the page of `npm start` in 11 s (measured in
 * Chromium).
 */
export const MOST_LINES = 200_000;
const MOST_REMARKS = 500;

export const NOT_KEPT = "none";

/** Puts a text, with its values, into the language of the data sheet. */
const saidIn =
  (language: SheetLanguage = "en") =>
  (text: string, ...values: readonly (string | number)[]): string =>
    besideIn(wordsOf(language), text, ...values);
const whole = (count: number, language: SheetLanguage = "en"): string =>
  count.toLocaleString(language === "en" ? "en-US" : language);
export const keptAll = (lines: number, language?: SheetLanguage): string =>
  saidIn(language)("all {0} lines", whole(lines, language));
/** How many lines a sheet keeps, from its words in any language of a sheet; undefined if it keeps none, or not all of them yet. */
export function linesKept(words: string): number | undefined {
  const kept = Number((/\d[\d.,]*/.exec(words)?.[0] ?? "").replace(/[.,]/g, ""));
  return kept > 0 && SHEET_LANGUAGES.some((language) => keptAll(kept, language) === words) ? kept : undefined;
}
/** What the hash of a file, or of pasted text without a file name, was calculated from. */
export const hashOf = (bytes: number, isFile: boolean, language?: SheetLanguage): string =>
  saidIn(language)(
    isFile ? "the {0} bytes of the file" : "the pasted text in UTF-8, {0} bytes",
    whole(bytes, language),
  );
export const NOT_FINISHED = "not finished: the lines below are not all of them";

/** What such a sheet is called, before the workbook makes the name unique. */
export const fileSheetName = (dataSheet: string, language?: SheetLanguage): string =>
  saidIn(language)("Readings {0}", dataSheet);

/** "logger_lines_001" covers the first LINES_AT_ONCE lines, and so on. */
export const linesName = (chunk: number): string => `logger_lines_${String(chunk + 1).padStart(3, "0")}`;

/** The names that are read from such a sheet to offer its layout again. */
export const LAYOUT_NAMES = ["logger_apparatus", "logger_layout"] as const;
/** The names that are read to tell whether a file was read before, and how far. */
export const KEPT_NAMES = ["logger_file", "logger_for", "logger_sha256", "logger_kept", "logger_read"] as const;

/** The columns of the table of later readings of the file: one row for each time that lines were added. */
export const AGAIN_NAMES = [
  "logger_again_day",
  "logger_again_lines",
  "logger_again_sha256",
  "logger_again_loads",
] as const;
const AGAIN_HEADINGS = ["Read again on", "lines then", "SHA-256 then", "what came in"];
const AGAIN_COLUMN = 10;
const AGAIN_ROWS = 100;
/** The first row of the table, beside the particulars of the file. */
const AGAIN_TOP = 4;

/** A part of the sheet: its cells with the names of some of them, and the first row below it. */
interface Part {
  readonly cells: readonly CellPlan[];
  readonly names?: Readonly<Record<string, Box>>;
  readonly below: number;
}

/** The particulars of the file and how it was read, a line each; some lines have a name. */
function particulars(record: FileRecord, top: number): Part {
  const t = saidIn(record.language);
  const lines: readonly (readonly [label: string, value: string, name?: string])[] = [
    [t("File"), record.file || t("rows pasted into the pane"), "logger_file"],
    ["SHA-256", record.sha256, "logger_sha256"],
    [t("of"), record.hashOf],
    [t("Characters"), record.encoding],
    [t("Lines kept here"), t(record.lines > 0 ? NOT_FINISHED : NOT_KEPT), "logger_kept"],
    [t("Apparatus"), record.apparatus, "logger_apparatus"],
    ...record.layoutWords,
    [t("Layout, for the next file"), JSON.stringify(record.layout), "logger_layout"],
    [t("Data sheet"), record.dataSheet, "logger_for"],
    ...(record.read ? [[t("Read so far"), JSON.stringify(record.read), "logger_read"] as const] : []),
  ];
  const cells = lines.flatMap(([label, value], index): CellPlan[] => [
    { row: top + index, col: 0, kind: "label", value: label },
    { row: top + index, col: 2, kind: "label", value },
  ]);
  const names = Object.fromEntries(
    lines.flatMap(([, , name], index) => (name ? [[name, { row: top + index, col: 2, rows: 1, cols: 1 }]] : [])),
  );
  return { cells, names, below: top + lines.length };
}

/** A table with its title and headings. */
function table(
  top: number,
  [title, ...headings]: readonly [title: string, ...headings: string[]],
  rows: readonly (readonly CellValue[])[],
): Part {
  const inRow = (row: number, kind: CellKind, values: readonly CellValue[]) =>
    values.map((value, col): CellPlan => ({ row, col, kind, value }));
  return {
    cells: [
      ...inRow(top, "heading", [title]),
      ...inRow(top + 1, "heading", headings),
      ...rows.flatMap((values, index) => inRow(top + 2 + index, "label", values)),
    ],
    below: top + 2 + rows.length,
  };
}

/** The loads of the file, and what was said of its lines. */
function tables({ loads, remarks, language }: FileRecord, top: number): readonly Part[] {
  const t = saidIn(language);
  const ofLoads = table(
    top,
    [t("Loads"), t("Load"), t("from line"), t("to line"), t("rows"), t("on sheet")],
    loads.map(({ load, fromLine, toLine, rows, kept }) => [load, fromLine, toLine, rows, kept]),
  );
  if (remarks.length === 0) return [ofLoads];
  const more = remarks.length - MOST_REMARKS;
  const title =
    more > 0
      ? t("What was said of lines (the first {0}; {1} more were told)", MOST_REMARKS, more)
      : t("What was said of lines");
  return [ofLoads, table(ofLoads.below + 1, [title, t("Line"), t("Remark")], remarks.slice(0, MOST_REMARKS))];
}

/** The table of later readings of the file, beside its particulars; its rows are filled later. */
const laterReadings = (language: SheetLanguage | undefined): Part => {
  const [row, columns] = [AGAIN_TOP, AGAIN_NAMES.map((name, index) => ({ name, col: AGAIN_COLUMN + index }))];
  return {
    cells: columns.map(({ col }, index) => ({
      ...{ row: row - 1, col, kind: "heading" },
      value: saidIn(language)(AGAIN_HEADINGS[index] ?? ""),
    })),
    names: Object.fromEntries(columns.map(({ name, col }) => [name, { row, col, rows: AGAIN_ROWS, cols: 1 }])),
    below: row + AGAIN_ROWS,
  };
};

/** The names of the pieces in which the lines of the file are written from row `top` on. */
function pieces({ lines, read, language }: FileRecord, top: number): Part {
  const names: Record<string, Box> = {};
  for (let from = 0; from < lines; from += LINES_AT_ONCE)
    names[linesName(from / LINES_AT_ONCE)] = {
      row: top + from,
      col: 0,
      // A file that may grow has room in its last piece.
      rows: read ? LINES_AT_ONCE : Math.min(LINES_AT_ONCE, lines - from),
      cols: 1,
    };
  const heading = saidIn(language)("Line 1 of the file stands in row {0}", top + 1);
  return {
    cells: lines > 0 ? [{ row: top - 1, col: 0, kind: "heading", value: heading }] : [],
    names,
    below: top + (read ? Math.ceil(lines / LINES_AT_ONCE) * LINES_AT_ONCE : lines),
  };
}

const LINES_STAND =
  "The lines of the file stand below, none altered. The few that went to the data sheet were chosen from them.";
const LINES_LACK =
  "The lines of the file are not kept in this workbook. Its hash tells whether a file is the one that was read.";

/**
 * The plan of the sheet in the language of the data sheet, without the lines: they are written to its names
 * `linesName(0)`, ... later, and `logger_kept` says how many are there.
 */
export function fileSheet(record: FileRecord): SheetPlan {
  const { language } = record;
  const t = saidIn(language);
  const about = particulars(record, 3);
  const tabled = tables(record, about.below + 1);
  const later = record.read && record.lines > 0 ? laterReadings(language) : undefined;
  // A blank row, and the heading of the lines.
  const top = Math.max(lastOf(tabled).below + 2, later?.below ?? 0);
  const lines = pieces(record, top);
  const parts = [about, ...tabled, ...(later ? [later] : []), lines];
  return {
    name: fileSheetName(record.dataSheet, language),
    rows: lines.below,
    cols: record.read ? AGAIN_COLUMN + AGAIN_NAMES.length : 5,
    cells: [
      { row: 0, col: 0, kind: "title", value: t("Readings as they were read, for “{0}”", record.dataSheet) },
      { row: 1, col: 0, kind: "note", value: t(record.lines > 0 ? LINES_STAND : LINES_LACK) },
      ...parts.flatMap(({ cells }) => cells),
    ],
    names: Object.assign({}, ...parts.map(({ names }) => names)),
    columnWidths: { 0: 21 },
    merges: [],
    freezeRows: 0,
    pages: [{ row: 0, col: 0, rows: top, cols: 8 }],
    hostWords: wordsOf(language ?? "en").host,
    behind: true,
  };
}

const isColumn = (value: unknown): value is number =>
  typeof value === "number" && Number.isInteger(value) && value >= 0;

/** The layout from the cell of a file sheet; undefined if a person has changed the cell. */
export function layoutFrom(text: string): Layout | undefined {
  let read: Record<keyof Layout, unknown>;
  try {
    read = JSON.parse(text);
  } catch {
    return undefined;
  }
  const isOneOf = (value: unknown, words: readonly unknown[]): boolean => words.includes(value);
  const sound =
    read !== null &&
    typeof read === "object" &&
    isOneOf(read.delimiter, DELIMITERS) &&
    isOneOf(read.decimal, [".", ","]) &&
    Number.isInteger(read.firstLine) &&
    isColumn(read.time) &&
    isOneOf(read.timeForm, TIME_FORMS) &&
    (read.date === null || isColumn(read.date)) &&
    isOneOf(read.dateOrder, DATE_ORDERS) &&
    isOneOf(read.timesRun, ["test", "load"]) &&
    isColumn(read.reading) &&
    isOneOf(read.readingUnit, ["div", ...Object.keys(UNITS.length)]) &&
    isOneOf(read.sense, ["rise", "fall"]) &&
    (read.load === null || isColumn(read.load)) &&
    isOneOf(read.loadKind, LOAD_KINDS) &&
    isOneOf(read.loadUnit, ["", ...Object.keys(UNITS.stress), ...Object.keys(UNITS.force)]) &&
    typeof read.lever === "number" &&
    read.lever > 0 &&
    (read.temperature == null || isColumn(read.temperature)) &&
    Array.isArray(read.noReading) &&
    read.noReading.every((value) => typeof value === "number");
  // The checks above have covered every part of a layout.
  return sound ? (read as Layout) : undefined;
}
