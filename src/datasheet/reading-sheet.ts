/**
 * Builds a sheet to print and to fill in by hand at the frame. For each load it shows the stress, the mass on the
 * hanger, and a box for every reading of the schedule, with the clock time if the moment of loading is known. A page
 * holds four loads if their schedules fit.
 */
import { hasTimeOfDay, loadsToRead, standingLoad, type StandingLoad } from "../record/standing-load";
import { stressText } from "../record/reduced/inputs";
import type { NamedValues, TestRecord } from "../record/record";
import { languageNamed } from "../specification/text/language";
import { besideIn, BETWEEN, wordsOf } from "../specification/text/words";
import { hangerMass } from "../reduction/loading";
import { clockOf, DAY_MINUTES, isoDay } from "../workbook/day-number";
import type { Box, CellPlan, SheetPlan } from "../workbook/port";

export interface ReadingSheetOptions {
  /** The numbers of the loads, in order; if they are left out, all loads that have a stress. */
  readonly loads?: readonly number[];
  readonly paper: "A4" | "Letter";
  /** The name of the data sheet. */
  readonly sheet: string;
}

/** The widths of the columns of a block: time, clock, reading, initials. */
const WIDTHS = [9, 11, 12, 9];
const GAP = 3;
const PER_ROW = 2;
const BLOCK_COLS = WIDTHS.length + 1;
const HEADINGS = ["Time, min", "Clock", "Reading", "By"];
/** The rows of a block above its times: load and stress, mass and date, the headings. */
const HEAD = 4;
/** The height in points of a box that is filled in by hand. */
const BOX_POINTS = 16;
/** The number of rows of this height that fit on a portrait page below its head. */
const PAGE_ROWS = { A4: 43, Letter: 40 } as const;
const TITLE_ROWS = 3;

/** Puts a text, with its values, into the language of the data sheet. */
const saidIn = ({ sheetLanguage }: TestRecord) => {
  const words = wordsOf(languageNamed(sheetLanguage));
  return (text: string, ...values: readonly (string | number)[]): string => besideIn(words, text, ...values);
};

/** The clock time, such as "14:05:30", with the number of days after loading if it is on a later day. */
function clockText(started: number, minutes: number): string {
  const { day, clock } = clockOf(started + minutes / DAY_MINUTES);
  const days = day - Math.floor(started);
  return days > 0 ? `${clock} +${days} d` : clock;
}

/**
 * The mass on the hanger, such as "32.3 kg on the hanger", or a blank to fill in if lever ratio or diameter is missing.
 */
function massText(record: TestRecord, { stress }: StandingLoad): string {
  const say = saidIn(record);
  const { diameter, lever_ratio: lever } = record.numbers;
  // A number that is missing is refused as a blank.
  const mass = hangerMass(stress ?? 0, diameter ?? 0, lever ?? 0);
  return mass.ok
    ? say("On the hanger: {0} kg, cap and ball not counted", mass.value.toFixed(3))
    : say("On the hanger: ______ kg");
}

/** The cells of the block of one load, with its upper left corner at this row and column. */
function blockOf(record: TestRecord, load: StandingLoad, row: number, col: number): CellPlan[] {
  const say = saidIn(record);
  const isClocked = hasTimeOfDay(load.started);
  const applied = load.started === undefined ? "____________" : isoDay(load.started);
  return [
    { row, col, kind: "title", value: say("Load {0}: {1}", load.number, stressText(record, load)) },
    { row: row + 1, col, kind: "label", value: massText(record, load) },
    {
      row: row + 2,
      col,
      kind: "label",
      value: say("Applied on {0} at {1}", applied, isClocked ? clockText(load.started, 0) : "________"),
    },
    ...HEADINGS.map((heading, i): CellPlan => ({
      ...{ row: row + HEAD - 1, col: col + i, kind: "heading" },
      value: say(heading),
    })),
    ...load.rows.flatMap(({ time, reading }, i): CellPlan[] => [
      { row: row + HEAD + i, col, kind: "label", value: time, align: "right" },
      { row: row + HEAD + i, col: col + 1, kind: "input", value: isClocked ? clockText(load.started, time) : "" },
      { row: row + HEAD + i, col: col + 2, kind: "input", ...(reading !== undefined && { value: reading }) },
      { row: row + HEAD + i, col: col + 3, kind: "input" },
    ]),
  ];
}

/** Two loads side by side. */
interface Band {
  readonly loads: readonly StandingLoad[];
  readonly rows: number;
}

/** Groups the loads into bands of two, and the bands into pages. */
function pagesOf(loads: readonly StandingLoad[], pageRows: number): Band[][] {
  const pages: Band[][] = [];
  let free = 0;
  for (let i = 0; i < loads.length; i += PER_ROW) {
    const pair = loads.slice(i, i + PER_ROW);
    const band = { loads: pair, rows: HEAD + Math.max(...pair.map((load) => load.rows.length)) + 1 };
    const last = pages.at(-1);
    if (last && band.rows <= free) last.push(band);
    else {
      pages.push([band]);
      free = pageRows;
    }
    free -= band.rows;
  }
  return pages;
}

/** The head of every page: the specimen, and the ring, frame and dial of the readings. */
function headOf(record: TestRecord, { sheet }: ReadingSheetOptions, row: number): CellPlan[] {
  const say = saidIn(record);
  const { project, boring, sample, specimen, ring_number, frame_number, dial_number } = record.words;
  const whose = [project, boring, sample, specimen].filter(Boolean).join(BETWEEN);
  const what = [
    ring_number && say("Ring {0}", ring_number),
    frame_number && say("Frame {0}", frame_number),
    dial_number && say("Dial {0}", dial_number),
    say("Data sheet {0}", sheet),
  ]
    .filter(Boolean)
    .join(BETWEEN);
  return [
    { row, col: 0, kind: "title", value: say("Readings of a consolidation test") },
    { row: row + 1, col: 0, kind: "label", value: whose },
    { row: row + 2, col: 0, kind: "note", value: what },
  ];
}

/** Returns the plan of the sheet; undefined if no load has a stress and a schedule. */
export function readingSheet(
  record: TestRecord,
  values: NamedValues,
  options: ReadingSheetOptions,
): SheetPlan | undefined {
  const numbers = options.loads ?? loadsToRead(record).map(({ number }) => number);
  const loads = numbers
    .flatMap((number) => standingLoad(record, values, number) ?? [])
    .filter(({ rows }) => rows.length);
  if (loads.length === 0) return undefined;
  const say = saidIn(record);
  const cols = PER_ROW * BLOCK_COLS - 1;
  const cells: CellPlan[] = [];
  const pages: Box[] = [];
  const rowHeights: Record<number, number> = {};
  let row = 0;
  for (const bands of pagesOf(loads, PAGE_ROWS[options.paper])) {
    const top = row;
    cells.push(...headOf(record, options, top));
    row += TITLE_ROWS;
    for (const band of bands) {
      band.loads.forEach((load, i) => cells.push(...blockOf(record, load, row, i * BLOCK_COLS)));
      for (let i = 0; i < band.rows; i++) rowHeights[row + i] = BOX_POINTS;
      row += band.rows;
    }
    pages.push({ row: top, col: 0, rows: row - top, cols });
  }
  const columnWidths = Object.fromEntries(
    Array.from({ length: cols }, (_, col) => [col, WIDTHS[col % BLOCK_COLS] ?? GAP]),
  );
  return {
    name: say("Readings {0}", options.sheet),
    rows: row,
    cols,
    cells,
    names: {},
    columnWidths,
    rowHeights,
    merges: [],
    freezeRows: 0,
    pages,
    paper: options.paper,
    footer: say("Filled in by hand at the frame, then entered into the data sheet"),
    hostWords: wordsOf(languageNamed(record.sheetLanguage)).host,
  };
}
