/** Lays out the specification: gives every field, table and reading its cells on the sheet. */
import type { Box, CellPlan, CellValue, EntryRule, SheetPlan } from "../workbook/port";
import { firstOf, nth } from "../reduction/numeric/lists";
import { cellAddress } from "../workbook/address";
import { entryRule } from "./entry-rule";
import { isSpill, isTable, type Column, type Field, type Spill, type Table } from "../specification/field";
import { atLoad, PAST_EVERY_ROW } from "../specification/formulas";
import { HAND_TIMES, LOADS, loadSuffix, MOST_LOADS, readingsOf } from "../specification/readings";
import type { Section } from "../specification/main-page";
import { formatOf, isDate, unitOf, type Measure, type System } from "../specification/measures";
import { partsIn, type PartsInLanguage } from "../specification/text/in-language";
import { LANGUAGE_CELL, LANGUAGE_NAMES, type SheetLanguage } from "../specification/text/language";
import { type SheetWords, formulaIn, labelIn, noteIn, titleIn, wordsOf } from "../specification/text/words";
import { ADD_IN_VERSION, TEMPLATE_VERSION } from "../specification/versions";

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

/** The number of columns of a printed page, and of one of its three panels. */
const PAGE_COLUMNS = 16;
const PANEL_COLUMNS = 5;
/** The number of rows of readings that have the frame of an input; a longer series continues below them. */
const FRAMED_READING_ROWS = 24;
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

/** A sheet during its layout. */
interface Draft {
  readonly system: System;
  readonly loads: number;
  readonly words: SheetWords;
  readonly parts: PartsInLanguage;
  readonly cells: CellPlan[];
  readonly names: Record<string, Box>;
  readonly merges: Box[];
  readonly entries: EntryRule[];
  readonly rowHeights: Record<number, number>;
  /** The widths, in characters, of columns that have a width of their own. */
  readonly widths: Record<number, number>;
}

/** The height in points of a row with this number of lines. A row of one line keeps the default height of the host. */
const heightOf = (lines: number): number => Math.ceil(10.4 * lines);

const startValue = (field: Pick<Field, "value">, system: System): CellValue | undefined =>
  typeof field.value === "object" ? field.value[system] : field.value;

/** The number format of a field. A text that a person types stays text: "12-3" must not become a date. */
const formatFor = (
  field: Pick<Field, "measure" | "kind" | "choices" | "takesFormula"> | Column,
  system: System,
): string | undefined =>
  field.measure === "text" && field.kind === "input" && !field.choices && !field.takesFormula
    ? "@"
    : formatOf(field.measure, system);

/** Places a heading across the columns. */
function placeBand(draft: Draft, row: number, col: number, cols: number, title: string): void {
  for (let index = 0; index < cols; index++)
    draft.cells.push({ row, col: col + index, kind: "heading", value: index === 0 ? title : undefined });
}

/**
 * Numbers are aligned under the right end of their heading, short words in the middle; long texts at the left, and the
 * words of a list, because its arrow covers the right end of the cell.
 */
const alignOf = ({ measure, kind, choices }: Column): CellPlan["align"] =>
  measure !== "text" ? "right" : kind === "remark" || choices ? undefined : "center";

/**
 * Places a unit. Beside a number it is aligned left; in the heading of a column it is aligned right, above the numbers.
 */
function placeUnit(
  { words, cells }: Draft,
  row: number,
  col: number,
  measure: Measure,
  align?: CellPlan["align"],
): void {
  const unit = unitOf(measure);
  const said = "value" in unit ? { value: titleIn(words, unit.value) } : { formula: formulaIn(words, unit.formula) };
  cells.push({ row, col, kind: "unit", align, ...said });
}

/**
 * Adds the rule for the values that a person may type. A field with choices needs no rule, because the choices restrict
 * it.
 */
function ruleEntries(draft: Draft, field: Field | Column, box: Box): void {
  const rule = field.kind === "input" && !field.choices ? entryRule(field, box, draft.loads, draft.words) : undefined;
  if (rule) draft.entries.push(rule);
}

/**
 * Places one field in a row: label, value, unit. A typed text takes `textColumns`; a result stays in one cell, where it
 * may spill.
 */
function placeField(
  draft: Draft,
  field: Field,
  row: number,
  col: number,
  { labelColumns, textColumns }: Section,
): void {
  const valueCol = col + labelColumns;
  const { system, cells, names, merges } = draft;
  const { name, label, kind, note, choices, formula, measure, lines } = field;
  if (lines) draft.rowHeights[row] = heightOf(lines);
  cells.push({ row, col, kind: "label", value: label });
  // A wrapped text does not overflow into the next cell; therefore the label is merged across its columns.
  if (textColumns > 2 && labelColumns > 1) merges.push({ row, col, rows: 1, cols: labelColumns });
  const format = formatFor(field, system);
  cells.push({ row, col: valueCol, kind, value: startValue(field, system), formula, format, note, choices });
  names[name] = { row, col: valueCol, rows: 1, cols: 1 };
  ruleEntries(draft, field, names[name]);
  if (measure !== "text" && !isDate(measure)) placeUnit(draft, row, valueCol + 1, measure);
  else if (kind === "input" && textColumns > 1) merges.push({ row, col: valueCol, rows: 1, cols: textColumns });
}

/** Places a typed text across the form, in a row with the height of its lines. */
function placeTypedRemark(draft: Draft, field: Field, row: number): number {
  const { cells, names, merges, rowHeights } = draft;
  const { name, label, kind, note, lines = 1 } = field;
  cells.push({ row, col: 0, kind: "label", value: label });
  cells.push({ row, col: 2, kind, format: formatFor(field, draft.system), note });
  names[name] = { row, col: 2, rows: 1, cols: 1 };
  merges.push({ row, col: 0, rows: 1, cols: 2 }, { row, col: 2, rows: 1, cols: PAGE_COLUMNS - 2 });
  rowHeights[row] = heightOf(lines);
  return row + 1;
}

/**
 * Places a calculated text across its page, in as many rows as it needs lines, because its rows are also rows of the
 * form.
 */
function placeRemark(draft: Draft, field: Field, row: number, left: number): number {
  const { cells, names, merges } = draft;
  const { name, label, kind, note, formula, lines = 1 } = field;
  const col = left + 2;
  cells.push({ row, col: left, kind: "label", value: label, wrap: true });
  cells.push({ row, col, kind, formula, format: formatFor(field, draft.system), note, wrap: true });
  names[name] = { row, col, rows: 1, cols: 1 };
  merges.push({ row, col: left, rows: lines, cols: 2 }, { row, col, rows: lines, cols: PAGE_COLUMNS - 2 });
  return row + lines;
}

/** The rows above the rows of a table: two of headings, one of units. */
const TABLE_HEAD = 3;

/**
 * Places the headings, the units, the start row if the table has one, and the rows. Returns the row below the table.
 */
function placeTable(draft: Draft, table: Table, top: number, columnAt: ReadonlyMap<string, number>): number {
  const { system, cells, names } = draft;
  const hasStart = table.columns.some(({ start }) => start !== undefined);
  const first = top + TABLE_HEAD + (hasStart ? 1 : 0);
  const at = (name: string): number => {
    const col = columnAt.get(name);
    if (col === undefined) throw new Error(`the table has no column "${name}"`);
    return col;
  };
  const counted = at(firstOf(table.columns).name);
  // The range starts at the row of units, which contains no number, because the engine of the embedded sheet needs
  // more than one cell.
  const above = (row: number, col: number): string => {
    const column = (of: number) =>
      `${cellAddress(top + 2, of).replace(/(\D+)(\d+)/, "$$$1$$$2")}:${cellAddress(row - 1, of)}`;
    return `LOOKUP(${PAST_EVERY_ROW},${column(counted)},${column(col)})`;
  };
  const written = (formula: string, row: number): string =>
    formula
      .replace(/\[(\^?)(\w+)\]/g, (_, up: string, name: string) =>
        up ? above(row, at(name)) : cellAddress(row, at(name)),
      )
      .replaceAll("#", loadSuffix(row - first + 1));

  for (const column of table.columns) {
    const { name, heading, note, kind, start, startInput, formula, choices, measure, width, byRow, span = 1 } = column;
    const col = at(name);
    const isWords = measure === "text" && byRow !== undefined;
    const align =
      measure === "pick"
        ? "right"
        : measure === "text" && width === undefined && !isWords
          ? alignOf(column)
          : undefined;
    if (width !== undefined) draft.widths[col] = width;
    const format = formatFor(column, system);
    heading.forEach((value, line) =>
      cells.push({
        row: top + line,
        col,
        kind: "heading",
        value,
        align: isWords ? undefined : alignOf(column),
        note: line === 0 ? note : undefined,
      }),
    );
    placeUnit(draft, top + 2, col, measure, "right");
    if (start !== undefined) {
      const fixed = start.startsWith("=") ? { formula: start } : { value: Number(start) };
      cells.push({ row: first - 1, col, kind: kind === "label" ? "label" : "result", format, ...fixed });
    }
    if (startInput) {
      cells.push({ row: first - 1, col, kind: "input", format, choices, align, note: startInput.note });
      names[startInput.name] = { row: first - 1, col, rows: 1, cols: 1 };
    }
    for (let index = 0; index < table.rows; index++) {
      const row = first + index;
      const own = byRow?.[index];
      const worked = own?.formula ?? formula;
      const content = worked
        ? { formula: written(worked, row) }
        : { value: own ? own.value : kind === "label" ? index + 1 : startValue(column, system) };
      if (span > 1) draft.merges.push({ row, col, rows: 1, cols: span });
      cells.push({
        row,
        col,
        kind,
        format: own?.measure ? formatOf(own.measure, system) : format,
        choices,
        align,
        ...content,
      });
    }
    names[name] = { row: first, col, rows: table.rows, cols: 1 };
    ruleEntries(draft, column, names[name]);
  }
  const columns = table.columns.flatMap(({ name, isWorking }) => (isWorking ? [] : [at(name)]));
  for (let col = Math.min(...columns); col < Math.max(...columns); col++)
    for (const line of columns.includes(col) ? [] : [0, 1]) cells.push({ row: top + line, col, kind: "heading" });
  return first + table.rows;
}

/** Places the rows that a spilling formula fills: label, value and words. Returns the row below them. */
function placeSpill(draft: Draft, spill: Spill, top: number, col: number): number {
  const { system, cells, names } = draft;
  const { name, label, formula, note, measure: unit, spills } = spill;
  placeBand(draft, top, col, PANEL_COLUMNS - 1, label);
  placeUnit(draft, top, col + PANEL_COLUMNS - 1, unit);
  spills.forEach((measure, index) => {
    const row = top + 1 + index;
    cells.push({ row, col, kind: "label", ...(index === 0 ? { formula, note } : {}) });
    cells.push({ row, col: col + 1, kind: "result", format: formatOf(measure, system) });
    cells.push({ row, col: col + 2, kind: "remark" });
  });
  names[name] = { row: top + 1, col, rows: spills.length, cols: 3 };
  return top + 1 + spills.length;
}

/** The column number of each column, counted from `first`. */
const columnsFrom = (columns: readonly Column[], first: number): [string, number][] =>
  columns.map(({ name, at }, index) => [name, first + (at ?? index)]);

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

const READINGS_NOTE =
  "Minutes since the load was applied; the reading at time 0 is the last one before it. Leave out what was not read. " +
  "A logger's series is pasted over the schedule ({0} rows for each load).";

/** Places two columns per load: time and reading. The cells below them stay blank, so that a long series has room. */
function placeReadings(draft: Draft, top: number, rows: number): number {
  const { system, words, cells, names } = draft;
  // Each printed page begins with the title.
  for (let col = 0; col < 2 * draft.loads; col += PAGE_COLUMNS)
    placeBand(draft, top, col, Math.min(PAGE_COLUMNS, 2 * draft.loads - col), titleIn(words, "Readings"));
  cells.push({
    row: top + 1,
    col: 0,
    kind: "note",
    value: titleIn(words, READINGS_NOTE, rows),
  });
  const first = top + 6;
  for (let load = 1; load <= draft.loads; load++) {
    const col = 2 * (load - 1);
    const stress = atLoad("load_stress", String(load));
    cells.push(
      {
        row: first - 3,
        col,
        kind: "result",
        formula: `=IFERROR(IF(${stress}="","",${stress}),"")`,
        format: formatOf("stress", system),
      },
      { row: first - 2, col, kind: "heading", value: titleIn(words, "Time"), align: "right" },
      { row: first - 2, col: col + 1, kind: "heading", value: titleIn(words, "Reading"), align: "right" },
    );
    placeBand(draft, first - 4, col, 2, titleIn(words, "Load {0}", load));
    placeUnit(draft, first - 3, col + 1, "stress");
    placeUnit(draft, first - 1, col, "time", "right");
    placeUnit(draft, first - 1, col + 1, "reading", "right");
    for (let index = 0; index < Math.min(FRAMED_READING_ROWS, rows); index++) {
      cells.push({ row: first + index, col, kind: "input", value: HAND_TIMES[index] });
      cells.push({ row: first + index, col: col + 1, kind: "input" });
    }
    for (const field of readingsOf(load)) {
      const box = { row: first, col: col + Number(field.measure === "reading"), rows, cols: 1 };
      names[field.name] = box;
      ruleEntries(draft, { ...field, label: labelIn(words, field.label) }, box);
    }
  }
  return first + rows;
}

/** Job, boring, sample and depth in one line, which stays visible when the sheet is scrolled. */
const SUMMARY =
  '={project}&IF({boring}="","","  |  "&{boring})&IF({sample}="","","  |  "&{sample})&IF({specimen}="","","  |  "&{specimen})';

/** The row of what is missing, and below it that of the first section. */
const MISSING_ROW = 3;
const TOP = MISSING_ROW + 1;

const LANGUAGE_NOTE =
  "The language of the titles, labels and notes of this sheet. It is chosen when the sheet is inserted.";

/** The title, the versions, the language, the notice, and the line of what is missing. */
function placeHead({ words, parts, cells, names, merges, rowHeights }: Draft): void {
  const { missing } = parts;
  cells.push(
    { row: 0, col: 0, kind: "title", value: titleIn(words, "One-dimensional consolidation test, incremental loading") },
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
  const picksBelow = rowOf(names, "pick_load") + parts.pickTable.rows;
  const rows = Math.max(readingsBelow, picksBelow);

  const page = (row: number, below: number, part: number): Box => ({
    row,
    col: part * PAGE_COLUMNS,
    rows: below - row,
    cols: part === pages ? parts.pickTable.columns.length : PAGE_COLUMNS,
  });
  const framed = timesTop + FRAMED_READING_ROWS;
  const below = [...pageTops.slice(1), loadsTop];
  // The results beside the second page of the form have a printed page of their own, which begins with their heading.
  const furtherResults = sectionTops.filter((top) => top >= firstOf(below)).slice(0, 1);
  const widthOf = (col: number): number =>
    widths[col] ?? FORM_WIDTHS[col] ?? (col === METHODS_COLUMN ? METHODS_WIDTH : WIDTH);
  return {
    name: options.name ?? titleIn(words, "Consolidation test"),
    rows,
    cols,
    // Cells in rows of several lines wrap their text.
    cells: cells.map((cell) => (rowHeights[cell.row] && cell.col < PAGE_COLUMNS ? { ...cell, wrap: true } : cell)),
    names,
    merges,
    rowHeights,
    columnWidths: Object.fromEntries(Array.from({ length: cols }, (_, col) => [col, widthOf(col)])),
    freezeRows: 1,
    // Each page of the readings contains the framed rows; the page of the picks contains the whole table.
    pages: [
      ...pageTops.map((top, index) => page(top, nth(below, index), 0)),
      page(TOP, firstOf(below), RESULTS_PAGE),
      ...furtherResults.map((top) => page(top, loadsTop, RESULTS_PAGE)),
      page(TOP, firstOf(below), REMARKS_PAGE),
      ...parts.loadParts.map((_, part) => page(loadsTop, readingsTop, part)),
      ...Array.from({ length: readingPages }, (_, part) => page(readingsTop, framed, part)),
      page(timesTop - TABLE_HEAD - 1, picksBelow, pages),
    ],
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

/** Values by name: one value for a cell, a list for a range, which is filled from its top. */
export type SheetValues = Readonly<Record<string, CellValue | readonly (CellValue | undefined)[]>>;

/**
 * Writes values into the inputs of the plan. Throws for a name that the plan does not have, or for a cell that contains
 * a formula.
 */
export function fillSheet(plan: SheetPlan, values: SheetValues): SheetPlan {
  const typed = new Map<string, { readonly row: number; readonly col: number; readonly value: CellValue }>();
  const key = (row: number, col: number) => `${row} ${col}`;
  for (const [name, value] of Object.entries(values)) {
    const box = plan.names[name];
    if (!box) throw new Error(`the sheet has no name "${name}"`);
    const list = Array.isArray(value) ? value : [value];
    if (list.length > box.rows) throw new Error(`"${name}" has ${box.rows} rows and was given ${list.length} values`);
    list.forEach((item, index) => {
      const [row, col] = [box.row + index, box.col];
      if (item !== undefined) typed.set(key(row, col), { row, col, value: item });
    });
  }
  const cells = plan.cells.map((cell) => {
    const entered = typed.get(key(cell.row, cell.col));
    if (entered === undefined) return cell;
    if (cell.formula) throw new Error(`row ${cell.row}, column ${cell.col} holds a formula and takes no value`);
    typed.delete(key(cell.row, cell.col));
    return { ...cell, value: entered.value };
  });
  const beyond = [...typed.values()].map((one): CellPlan => ({ ...one, kind: "input" }));
  return { ...plan, cells: [...cells, ...beyond] };
}
