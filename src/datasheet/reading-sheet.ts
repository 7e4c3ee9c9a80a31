/**
 * A sheet to be printed and filled in by hand at the frame: for each load its stress, the mass on the hanger, and a box for every reading
 * of its schedule, with the clock time where the moment of loading is known. Four loads stand on a page where their schedules fit.
 */
import type { StandingLoad } from "../record/standing-load";
import { loadsToRead, standingLoad } from "../record/standing-load";
import { inSheetStress } from "../record/reduced-test";
import type { NamedValues, TestRecord } from "../record/record";
import { hangerMass } from "../reduction/loading";
import { isoDay } from "../workbook/day-number";
import type { Box, CellPlan, CellValue, SheetPlan } from "../workbook/port";

export interface ReadingSheetOptions {
  /** Numbers of the loads, in order; all that have a stress, if it is left out. */
  readonly loads?: readonly number[];
  readonly paper: "A4" | "Letter";
  /** Name of the data sheet. */
  readonly sheet: string;
}

/** Columns of a block: time, clock, reading, initials. */
const WIDTHS = [9, 11, 12, 9];
const GAP = 3;
const PER_ROW = 2;
const BLOCK_COLS = WIDTHS.length + 1;
const HEADINGS = ["Time, min", "Clock", "Reading", "By"];
/** Rows of a block above its times: load and stress, mass and date, a line of headings. */
const HEAD = 4;
/** Height of a box that is filled in by hand, points. */
const BOX_POINTS = 16;
/** Rows of that height that a page in portrait holds below its head. */
const PAGE_ROWS = { A4: 43, Letter: 40 } as const;
const TITLE_ROWS = 3;

const text = (value: CellValue | undefined): string => (value === undefined ? "" : String(value));

/** "14:05:30" of a moment, with the number of days after loading where it is another day. */
function clockText(started: number, minutes: number): string {
  const moment = started + minutes / 1440;
  const seconds = Math.round((moment % 1) * 86_400) % 86_400;
  const [h, m, s] = [Math.floor(seconds / 3600), Math.floor(seconds / 60) % 60, seconds % 60];
  const day = Math.floor(moment + 0.5 / 86_400) - Math.floor(started);
  const clock = [h, m, s].map((part) => String(part).padStart(2, "0")).join(":");
  return day > 0 ? `${clock} +${day} d` : clock;
}

/** "32.3 kg on the hanger", or a blank to be filled in where lever and diameter do not tell. */
function massText(record: TestRecord, { stress }: StandingLoad): string {
  const { diameter, lever_ratio: lever } = record.numbers;
  if (stress === undefined || diameter === undefined || lever === undefined) return "On the hanger: ______ kg";
  const mass = hangerMass(stress, diameter, lever);
  return mass.ok ? `On the hanger: ${mass.value.toFixed(3)} kg, cap and ball not counted` : "On the hanger: ______ kg";
}

function stressText(record: TestRecord, { stress }: StandingLoad): string {
  if (stress === undefined) return "";
  const shown = Number(inSheetStress(record, stress).toPrecision(4));
  return `${shown} ${record.words.stress_unit ?? "kPa"}`;
}

/** The cells of one load, its upper left corner at a row and a column. */
function blockOf(record: TestRecord, load: StandingLoad, row: number, col: number): CellPlan[] {
  const isClocked = load.started !== undefined && load.started % 1 !== 0;
  const applied = load.started === undefined ? "____________" : isoDay(load.started);
  return [
    { row, col, kind: "title", value: `Load ${load.number}: ${stressText(record, load)}` },
    { row: row + 1, col, kind: "label", value: massText(record, load) },
    {
      row: row + 2,
      col,
      kind: "label",
      value: `Applied on ${applied} at ${isClocked ? clockText(load.started, 0) : "________"}`,
    },
    ...HEADINGS.map((value, i): CellPlan => ({ row: row + HEAD - 1, col: col + i, kind: "heading", value })),
    ...load.rows.flatMap(({ time, reading }, i): CellPlan[] => [
      { row: row + HEAD + i, col, kind: "label", value: time, align: "right" },
      { row: row + HEAD + i, col: col + 1, kind: "input", value: isClocked ? clockText(load.started, time) : "" },
      { row: row + HEAD + i, col: col + 2, kind: "input", ...(reading !== undefined && { value: reading }) },
      { row: row + HEAD + i, col: col + 3, kind: "input" },
    ]),
  ];
}

/** Bands of two loads each, and on which page each band stands. */
function bandsOf(loads: readonly StandingLoad[], pageRows: number) {
  const bands: { readonly loads: readonly StandingLoad[]; readonly rows: number; readonly page: number }[] = [];
  let page = 0;
  let used = 0;
  for (let i = 0; i < loads.length; i += PER_ROW) {
    const pair = loads.slice(i, i + PER_ROW);
    const rows = HEAD + Math.max(...pair.map((load) => load.rows.length)) + 1;
    if (used > 0 && used + rows > pageRows) {
      page++;
      used = 0;
    }
    bands.push({ loads: pair, rows, page });
    used += rows;
  }
  return bands;
}

/** What every page says at its head: whose readings these are, and with which ring, frame and dial they are taken. */
function headOf(record: TestRecord, { sheet }: ReadingSheetOptions, row: number): CellPlan[] {
  const { project, boring, sample, specimen, ring_number, frame_number, dial_number } = record.words;
  const whose = [project, boring, sample, specimen].filter(Boolean).join("  |  ");
  const what = [
    ring_number && `Ring ${ring_number}`,
    frame_number && `Frame ${frame_number}`,
    dial_number && `Dial ${dial_number}`,
    `Data sheet ${sheet}`,
  ]
    .filter(Boolean)
    .join("  |  ");
  return [
    { row, col: 0, kind: "title", value: "Readings of a consolidation test" },
    { row: row + 1, col: 0, kind: "label", value: text(whose) },
    { row: row + 2, col: 0, kind: "note", value: what },
  ];
}

/** The plan of the sheet; undefined where no load has a stress and a schedule. */
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
  const cols = PER_ROW * BLOCK_COLS - 1;
  const cells: CellPlan[] = [];
  const pages: Box[] = [];
  const rowHeights: Record<number, number> = {};
  let row = 0;
  let page = -1;
  for (const band of bandsOf(loads, PAGE_ROWS[options.paper])) {
    if (band.page !== page) {
      page = band.page;
      cells.push(...headOf(record, options, row));
      pages.push({ row, col: 0, rows: TITLE_ROWS, cols });
      row += TITLE_ROWS;
    }
    band.loads.forEach((load, i) => cells.push(...blockOf(record, load, row, i * BLOCK_COLS)));
    for (let i = 0; i < band.rows; i++) rowHeights[row + i] = BOX_POINTS;
    row += band.rows;
    const last = pages.pop();
    if (last) pages.push({ ...last, rows: row - last.row });
  }
  const columnWidths = Object.fromEntries(
    Array.from({ length: cols }, (_, col) => [col, WIDTHS[col % BLOCK_COLS] ?? GAP]),
  );
  return {
    name: `Readings ${options.sheet}`.slice(0, 31),
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
    footer: "Filled in by hand at the frame, then entered into the data sheet",
  };
}
