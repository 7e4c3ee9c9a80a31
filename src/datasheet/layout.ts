/** Lays out the specification: gives every section, table and reading its place on the sheet, and its printed page. */
import type { Box, SheetPlan } from "../workbook/port";
import { firstOf, nth } from "../reduction/numeric/lists";
import { isSpill, isTable } from "../specification/field";
import { LOADS, MOST_LOADS } from "../specification/readings";
import type { Section } from "../specification/main-page";
import type { System } from "../specification/measures";
import { partsIn, type PartsInLanguage } from "../specification/text/in-language";
import { LANGUAGE_CELL, LANGUAGE_NAMES, type SheetLanguage } from "../specification/text/language";
import { BETWEEN, noteIn, titleIn, wordsOf } from "../specification/text/words";
import { ADD_IN_VERSION, TEMPLATE_VERSION } from "../specification/versions";
import { type Draft, heightOf, PAGE_COLUMNS, PANEL_COLUMNS, placeBand } from "./draft";
import { placeField, placeRemark, placeSpill, placeTypedRemark } from "./place-field";
import { FRAMED_READING_ROWS, placeReadings } from "./place-readings";
import { columnsFrom, placeTable, TABLE_HEAD } from "./place-table";

export interface SheetOptions {
  /** The name of the sheet; " 2", " 3", ... is added if the name is in use. */
  readonly name?: string;
  /** The number of rows of readings that the names of each load cover. */
  readonly readingRows?: number;
  /** The number of rows of the load table, each with its readings: 24 if it is left out, 48 at most. */
  readonly loads?: number;
  /** The language of the sheet's own words; English if it is left out. */
  readonly language?: SheetLanguage;
}

/** The number of rows of readings that the names of each load cover. A logger's series fits into them. */
const READING_ROWS = 2000;
/** The pages to the right of the form: the results, then the remarks. The form is page 0. */
const RESULTS_PAGE = 1;
const REMARKS_PAGE = 2;
/**
 * The widths of the form's columns in characters. In a window of 1440 pixels, the whole form is visible beside the pane
 * (the pane leaves 970 pixels).
 */
const FORM_WIDTHS = [6.8, 7.3, 11, 10.6, 8.7, 7.3, 7.4, 7.3, 8, 7.3, 5.8, 8.4, 7, 7.3, 8.4, 8.4];
/** The width of any other column in characters, except the column with the methods of preconsolidation stress. */
const WIDTH = 9.5;
const METHODS_WIDTH = 12.5;
const METHODS_COLUMN = RESULTS_PAGE * PAGE_COLUMNS + 2 * PANEL_COLUMNS;
const usualWidth = (col: number): number => FORM_WIDTHS[col] ?? (col === METHODS_COLUMN ? METHODS_WIDTH : WIDTH);

/**
 * Places a section at a row, on the page that begins at the column `left`. Returns the row below each panel of the page
 * that it has parts in.
 */
function placePanels(draft: Draft, section: Section, row: number, left: number): readonly number[] {
  const { title, panels, firstPanel = 0 } = section;
  const first = firstPanel * PANEL_COLUMNS;
  placeBand(draft, row, left + first, PAGE_COLUMNS - first, title);
  return panels.map((parts, index) => {
    const col = left + first + index * PANEL_COLUMNS;
    let line = row + 1;
    for (const part of parts)
      if (isTable(part)) line = placeTable(draft, part, line, new Map(columnsFrom(part.columns, col)));
      else if (isSpill(part)) line = placeSpill(draft, part, line, col);
      else placeField(draft, part, line++, col, section);
    return line;
  });
}

/** Places a section. Returns the row below it. */
const placeSection = (draft: Draft, section: Section, row: number, left: number): number =>
  Math.max(...placePanels(draft, section, row, left));

/** Places the form on the left page. Returns the rows at which printed pages begin, and the row below the form. */
function placeForm(
  draft: Draft,
  top: number,
): { pageTops: number[]; tops: ReadonlyMap<string, number>; below: number } {
  let row = top;
  const pageTops = [0];
  const tops = new Map<string, number>();
  let above: readonly number[] = [];
  for (const section of draft.parts.form) {
    if (section.newPage) pageTops.push(row);
    const { firstPanel } = section;
    const from = firstPanel === undefined ? row : Math.max(...above.slice(firstPanel)) + 1;
    tops.set(section.title, from);
    above = placePanels(draft, section, from, 0);
    row = Math.max(firstPanel === undefined ? 0 : row, ...above.map((below) => below + 1));
  }
  placeBand(draft, row, 0, PAGE_COLUMNS, titleIn(draft.words, "Deviations and remarks"));
  row++;
  for (const remark of draft.parts.typedRemarks) row = placeTypedRemark(draft, remark, row);
  return { pageTops, tops, below: row + 1 };
}

/** Places the results beside the form. Returns the rows of the sections, and the row below them. */
function placeResults(
  draft: Draft,
  top: number,
  tops: ReadonlyMap<string, number>,
): { sectionTops: number[]; below: number } {
  const sectionTops: number[] = [];
  const left = RESULTS_PAGE * PAGE_COLUMNS;
  let row = top;
  for (const [index, section] of draft.parts.results.entries()) {
    const from = Math.max(row, tops.get(section.beside ?? "") ?? 0);
    sectionTops.push(from);
    row = placeSection(draft, section, from, left) + 1;
    if (index > 0) continue;
    draft.parts.caution.forEach((value, line) => draft.cells.push({ row: row + line, col: left, kind: "note", value }));
    row += draft.parts.caution.length;
  }
  return { sectionTops, below: row };
}

/** Places the remarks of the reduction beside the results. Returns the row below them. */
function placeRemarks(draft: Draft, top: number): number {
  const left = REMARKS_PAGE * PAGE_COLUMNS;
  placeBand(draft, top, left, PAGE_COLUMNS, titleIn(draft.words, "Remarks"));
  return draft.parts.remarks.reduce((row, remark) => placeRemark(draft, remark, row, left), top + 1);
}

/**
 * Places the picks by hand on the page to the right of the readings; their first rows are in the same row of the sheet.
 */
function placePicks(draft: Draft, first: number, left: number): void {
  const top = first - TABLE_HEAD;
  const { pickTable } = draft.parts;
  placeBand(draft, top - 1, left, pickTable.columns.length, titleIn(draft.words, "Picks by hand"));
  placeTable(draft, pickTable, top, new Map(columnsFrom(pickTable.columns, left)));
}

/** Places the load table. Only its workings stand elsewhere: from the column `workingsLeft` on, beside all pages. */
function placeLoads(draft: Draft, top: number, workingsLeft: number): number {
  const { loadParts, loadWorkings } = draft.parts;
  const columns = [...loadParts.flatMap((part) => part.columns), ...loadWorkings.columns];
  const columnAt = new Map([
    ...loadParts.flatMap((one, part) => columnsFrom(one.columns, part * PAGE_COLUMNS)),
    ...columnsFrom(loadWorkings.columns, workingsLeft),
  ]);
  loadParts.forEach(({ title }, part) => placeBand(draft, top, part * PAGE_COLUMNS, PAGE_COLUMNS, title));
  placeBand(draft, top, workingsLeft, loadWorkings.columns.length, loadWorkings.title);
  const below = placeTable(draft, { rows: draft.loads, columns }, top + 1, columnAt);
  loadParts.forEach(({ note }, part) => {
    if (note) draft.cells.push({ row: below, col: part * PAGE_COLUMNS, kind: "note", value: note });
  });
  return below + 2;
}

/** Places the parts of the long remarks, one below the other, above the workings of the load table. */
function placeRemarkParts(draft: Draft, top: number, left: number): void {
  const { cells, names, words, parts } = draft;
  placeBand(draft, top, left, parts.loadWorkings.columns.length, titleIn(words, "Workings of the remarks"));
  parts.remarkParts.forEach(({ name, label, formula }, index) => {
    const row = top + 1 + index;
    cells.push({ row, col: left, kind: "label", value: label }, { row, col: left + 4, kind: "label", formula });
    names[name] = { row, col: left + 4, rows: 1, cols: 1 };
  });
}

/** Project, boring, sample and specimen in one line, as far as they are filled in; it stays visible when the sheet is scrolled. */
const SUMMARY = `=MID(${["{project}", "{boring}", "{sample}", "{specimen}"]
  .map((field) => `IF(${field}="","","${BETWEEN}"&${field})`)
  .join("&")},${BETWEEN.length + 1},999)`;

/** The row of what is missing, and below it that of the first section. */
const MISSING_ROW = 3;
const TOP = MISSING_ROW + 1;

const LANGUAGE_NOTE =
  "The language of the titles, labels and notes of this sheet. It is chosen when the sheet is inserted.";

/** The title, the versions, the language, the notice, and the line of what is missing. */
function placeHead({ words, parts, cells, names, merges, rowHeights }: Draft): void {
  const { missing } = parts;
  cells.push(
    { row: 0, col: 0, kind: "title", value: titleIn(words, "Consolidation test, incremental loading") },
    { row: 0, col: 9, kind: "result", formula: SUMMARY },
    {
      row: 1,
      col: 0,
      kind: "note",
      value: titleIn(
        words,
        "Framed cells are to be filled in; everything else is calculated. Blank stays blank until its inputs are there.",
      ),
    },
    { row: 1, col: 14, kind: "label", value: titleIn(words, "Data sheet"), align: "right" },
    { row: 1, col: 15, kind: "label", value: TEMPLATE_VERSION },
    { row: 2, col: 0, kind: "remark" },
    {
      row: 2,
      col: 12,
      kind: "label",
      align: "right",
      value: LANGUAGE_NAMES[words.language],
      note: noteIn(words, LANGUAGE_NOTE),
    },
    { row: 2, col: 14, kind: "label", value: "Clayledger", align: "right" },
    { row: 2, col: 15, kind: "label", value: ADD_IN_VERSION, align: "right" },
  );
  names.test_summary = { row: 0, col: 9, rows: 1, cols: 1 };
  names.template_version = { row: 1, col: 15, rows: 1, cols: 1 };
  names.addin_version = { row: 2, col: 15, rows: 1, cols: 1 };
  names[LANGUAGE_CELL] = { row: 2, col: 12, rows: 1, cols: 1 };
  names.notice = { row: 2, col: 0, rows: 1, cols: 1 };
  cells.push({ row: MISSING_ROW, col: 0, kind: missing.kind, formula: missing.formula, note: missing.note });
  names[missing.name] = { row: MISSING_ROW, col: 0, rows: 1, cols: 1 };
  merges.push({ row: MISSING_ROW, col: 0, rows: 1, cols: PAGE_COLUMNS });
  rowHeights[MISSING_ROW] = heightOf(missing.lines ?? 1);
}

/** The first rows of the parts of a sheet that begin a printed page. */
interface PageRows {
  /** Of the pages of the form. */
  readonly pageTops: readonly number[];
  /** Of the sections of the results. */
  readonly sectionTops: readonly number[];
  readonly loadsTop: number;
  readonly readingsTop: number;
  readonly readingPages: number;
  /** The row below the framed rows of readings. */
  readonly framed: number;
  readonly picks: Box;
}

/** The printed pages. Each page of the readings contains the framed rows; the page of the picks contains the whole table. */
function printedPages({ loadParts }: PartsInLanguage, rows: PageRows): Box[] {
  const { pageTops, sectionTops, loadsTop, readingsTop, readingPages, framed, picks } = rows;
  const page = (row: number, below: number, part: number): Box => ({
    ...{ row, col: part * PAGE_COLUMNS, rows: below - row, cols: PAGE_COLUMNS },
  });
  const below = [...pageTops.slice(1), loadsTop];
  // The results beside the second page of the form have a printed page of their own, which begins with their heading.
  const furtherResults = sectionTops.filter((top) => top >= firstOf(below)).slice(0, 1);
  return [
    ...pageTops.map((top, index) => page(top, nth(below, index), 0)),
    page(TOP, firstOf(below), RESULTS_PAGE),
    ...furtherResults.map((top) => page(top, loadsTop, RESULTS_PAGE)),
    page(TOP, firstOf(below), REMARKS_PAGE),
    ...loadParts.map((_, part) => page(loadsTop, readingsTop, part)),
    ...Array.from({ length: readingPages }, (_, part) => page(readingsTop, framed, part)),
    picks,
  ];
}

/** Builds a blank sheet for one test. Throws if the number of loads is not a whole number from 1 to the maximum. */
export function blankSheet(system: System, options: SheetOptions = {}): SheetPlan {
  const { loads = LOADS, language = "en" } = options;
  const words = wordsOf(language);
  const parts = partsIn(language);
  if (!Number.isInteger(loads) || loads < 1 || loads > MOST_LOADS)
    throw new Error(`a sheet has 1 to ${MOST_LOADS} loads, and not ${loads}`);
  const draft: Draft = {
    system,
    loads,
    words,
    parts,
    cells: [],
    names: {},
    merges: [],
    entries: [],
    rowHeights: {},
    widths: {},
  };
  const { cells, names, merges, entries, rowHeights, widths } = draft;
  placeHead(draft);
  const { pageTops, tops, below: formBelow } = placeForm(draft, TOP);
  const { sectionTops, below: resultsBelow } = placeResults(draft, TOP, tops);
  const remarksBelow = placeRemarks(draft, TOP);
  const loadsTop = Math.max(formBelow, resultsBelow + 1, remarksBelow + 1);
  const readingPages = Math.ceil((2 * loads) / PAGE_COLUMNS);
  const pages = Math.max(parts.loadParts.length, readingPages);
  const picksLeft = pages * PAGE_COLUMNS;
  // A person may delete the columns of the picks: nothing else stands in them.
  const workingsLeft = picksLeft + PAGE_COLUMNS;
  placeRemarkParts(draft, TOP, workingsLeft);
  const readingsTop = placeLoads(draft, loadsTop, workingsLeft);
  const readingsBelow = placeReadings(draft, readingsTop, options.readingRows ?? READING_ROWS);
  const timesTop = rowOf(names, "times_01");
  placePicks(draft, timesTop, picksLeft);
  const cols = workingsLeft + parts.loadWorkings.columns.length;
  const picksTop = timesTop - TABLE_HEAD - 1;
  const picksBelow = rowOf(names, "pick_load") + parts.pickTable.rows;
  const rows = Math.max(readingsBelow, picksBelow);

  const framed = timesTop + FRAMED_READING_ROWS;
  return {
    name: options.name ?? titleIn(words, "Consolidation test"),
    rows,
    cols,
    // Cells in rows of several lines wrap their text.
    cells: cells.map((cell) => (rowHeights[cell.row] && cell.col < PAGE_COLUMNS ? { ...cell, wrap: true } : cell)),
    names,
    merges,
    rowHeights,
    columnWidths: Object.fromEntries(Array.from({ length: cols }, (_, col) => [col, widths[col] ?? usualWidth(col)])),
    freezeRows: 1,
    pages: printedPages(parts, {
      ...{ pageTops, sectionTops, loadsTop, readingsTop, readingPages, framed },
      picks: { row: picksTop, col: picksLeft, rows: picksBelow - picksTop, cols: parts.pickTable.columns.length },
    }),
    paper: system === "US" ? "Letter" : "A4",
    footer: titleIn(words, "Data sheet {0}, Clayledger {1}", TEMPLATE_VERSION, ADD_IN_VERSION),
    ...(language !== "en" && { hostWords: words.host }),
    entries,
    isProtected: true,
    open: rows > framed ? [{ row: framed, col: 0, rows: rows - framed, cols: 2 * loads }] : [],
  };
}

/** The first row of a name. */
function rowOf(names: Readonly<Record<string, Box>>, name: string): number {
  const box = names[name];
  if (!box) throw new Error(`the sheet has no name "${name}"`);
  return box.row;
}
