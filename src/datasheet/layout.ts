/** The specification laid out: where every field, table and reading stands on the sheet. */
import type { Box, CellPlan, CellValue, EntryRule, SheetPlan } from "../workbook/port";
import { cellAddress } from "../workbook/address";
import { entryRule } from "./entry-rule";
import type { Column, Field, Spill, Table } from "../specification/field";
import {
  HAND_TIMES,
  LOAD_PARTS,
  LOADS,
  loadSuffix,
  loadTable,
  MOST_LOADS,
  readingsOf,
} from "../specification/load-table";
import { CAUTION, REMARKS, SECTIONS, type Part } from "../specification/main-page";
import { formatOf, unitOf, type Measure, type System } from "../specification/measures";
import { PICK_TABLE } from "../specification/pick-table";
import { ADD_IN_VERSION, TEMPLATE_VERSION } from "../specification/versions";

export interface SheetOptions {
  /** The sheet's name; " 2", " 3", ... is added where it is taken. */
  readonly name?: string;
  /** Rows of readings that each load's names cover. */
  readonly readingRows?: number;
  /** Rows of the load table, each with its readings: 24 unless said otherwise, 48 at most. */
  readonly loads?: number;
}

/** Columns of a printed page, and of one of its three panels. */
export const PAGE_COLUMNS = 16;
const PANEL_COLUMNS = 5;
/** Rows of readings that are framed as inputs; a longer series runs on below them. */
const FRAMED_READING_ROWS = 24;
/** Rows of readings that each load's names cover: a logger's series. */
const READING_ROWS = 2000;
/** Columns a little wider than the others: labels, the loads' dates, the labels of a spilled table. */
const WIDE_COLUMNS: Readonly<Record<number, number>> = { 0: 10.5, 3: 11, 10: 12.5 };

/** What a sheet is while it is being laid out. */
interface Draft {
  readonly system: System;
  readonly loads: number;
  readonly cells: CellPlan[];
  readonly names: Record<string, Box>;
  readonly merges: Box[];
  readonly entries: EntryRule[];
  readonly rowHeights: Record<number, number>;
}

/** Points of a row with so many lines of text; one line keeps the host's own height. */
const heightOf = (lines: number): number => Math.ceil(10.4 * lines);

const isTable = (part: Part): part is Table => "columns" in part;
const isSpill = (part: Part): part is Spill => "spills" in part;

const startValue = (field: Pick<Field, "value">, system: System): CellValue | undefined =>
  typeof field.value === "object" ? field.value[system] : field.value;

/** Text that a person types stays text: "12-3" must not become a date. */
const formatFor = (field: Pick<Field, "measure" | "kind" | "choices"> | Column, system: System): string | undefined =>
  field.measure === "text" && field.kind === "input" && !field.choices ? "@" : formatOf(field.measure, system);

/** A heading that runs across the columns. */
function placeBand(draft: Draft, row: number, col: number, cols: number, title: string): void {
  for (let index = 0; index < cols; index++)
    draft.cells.push({ row, col: col + index, kind: "heading", value: index === 0 ? title : undefined });
}

/** Numbers stand right under their heading, words in the middle, long words at the left. */
const alignOf = ({ measure, kind }: Column): CellPlan["align"] =>
  measure !== "text" ? "right" : kind === "remark" ? undefined : "center";

/** Beside its number a unit stands left, in the heading of a column above the numbers, right. */
function placeUnit(draft: Draft, row: number, col: number, measure: Measure, align?: CellPlan["align"]): void {
  draft.cells.push({ row, col, kind: "unit", align, ...unitOf(measure) });
}

/** What may be typed into a field's cells; choices say it themselves. */
function ruleEntries(draft: Draft, field: Field | Column, box: Box): void {
  const rule = field.kind === "input" && !field.choices ? entryRule(field, box, draft.loads) : undefined;
  if (rule) draft.entries.push(rule);
}

/** One field on one row: label, value, unit. A typed text takes `textColumns`; an answer stays in one cell, where it may spill. */
function placeField(draft: Draft, field: Field, row: number, col: number, valueCol: number, textColumns: number): void {
  const { system, cells, names, merges } = draft;
  const { name, label, kind, note, choices, formula, measure, lines } = field;
  if (lines) draft.rowHeights[row] = heightOf(lines);
  cells.push({ row, col, kind: "label", value: label });
  const format = formatFor(field, system);
  cells.push({ row, col: valueCol, kind, value: startValue(field, system), formula, format, note, choices });
  names[name] = { row, col: valueCol, rows: 1, cols: 1 };
  ruleEntries(draft, field, names[name]);
  if (measure !== "text" && measure !== "date") placeUnit(draft, row, valueCol + 1, measure);
  else if (kind === "input" && textColumns > 1) merges.push({ row, col: valueCol, rows: 1, cols: textColumns });
}

/** A text across the page, in as many lines as it needs room for. */
function placeRemark(draft: Draft, field: Field, row: number): void {
  const { system, cells, names, merges, rowHeights } = draft;
  const { name, label, kind, note, formula, lines = 1 } = field;
  cells.push({ row, col: 0, kind: "label", value: label });
  cells.push({ row, col: 2, kind, formula, format: formatFor(field, system), note });
  names[name] = { row, col: 2, rows: 1, cols: 1 };
  merges.push({ row, col: 0, rows: 1, cols: 2 }, { row, col: 2, rows: 1, cols: PAGE_COLUMNS - 2 });
  rowHeights[row] = heightOf(lines);
}

/** Larger than any row's number: a look-up of it finds the last number of a column. */
const PAST_EVERY_ROW = 100_000;

/** Headings, units, the start row where there is one, then the rows. Gives the row below the table. */
function placeTable(draft: Draft, table: Table, top: number, columnAt: ReadonlyMap<string, number>): number {
  const { system, cells, names } = draft;
  const hasStart = table.columns.some(({ start }) => start !== undefined);
  const first = top + 3 + (hasStart ? 1 : 0);
  const at = (name: string): number => {
    const col = columnAt.get(name);
    if (col === undefined) throw new Error(`the table has no column "${name}"`);
    return col;
  };
  const counted = at(table.columns[0].name);
  // From the row of units, which holds no number: the engine of the embedded sheet wants a range of more than one cell.
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
    const { name, heading, note, kind, start, startInput, formula, choices, measure, span = 1 } = column;
    const col = at(name);
    const align = measure === "pick" ? "right" : measure === "text" && span === 1 ? alignOf(column) : undefined;
    const format = formatFor(column, system);
    heading.forEach((value, line) =>
      cells.push({
        row: top + line,
        col,
        kind: "heading",
        value,
        align: alignOf(column),
        note: line === 0 ? note : undefined,
      }),
    );
    for (let beside = 1; beside < span; beside++)
      for (const line of [0, 1]) cells.push({ row: top + line, col: col + beside, kind: "heading" });
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
      const content = formula
        ? { formula: written(formula, row) }
        : { value: kind === "label" ? index + 1 : startValue(column, system) };
      cells.push({
        row,
        col,
        kind,
        format,
        choices,
        align,
        ...content,
      });
      if (span > 1) draft.merges.push({ row, col, rows: 1, cols: span });
    }
    names[name] = { row: first, col, rows: table.rows, cols: 1 };
    ruleEntries(draft, column, names[name]);
  }
  if (table.lines)
    for (let index = 0; index < table.rows; index++) draft.rowHeights[first + index] = heightOf(table.lines);
  return first + table.rows;
}

/** The rows that a spilling formula will fill: label, value and words. Gives the row below them. */
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

/** Where each column begins, from the first on. */
function columnsFrom(columns: readonly Column[], first: number): [string, number][] {
  let next = first;
  return columns.map(({ name, span = 1 }) => {
    const col = next;
    next += span;
    return [name, col];
  });
}

/** Gives the rows where pages begin, and the row below the caution. */
function placeSections(draft: Draft, top: number): { pageTops: number[]; below: number } {
  let row = top;
  const pageTops = [0];
  for (const { title, labelColumns, textColumns, panels, newPage } of SECTIONS) {
    if (newPage) pageTops.push(row);
    placeBand(draft, row, 0, PAGE_COLUMNS, title);
    const ends = panels.map((parts, index) => {
      const col = index * PANEL_COLUMNS;
      let line = row + 1;
      for (const part of parts)
        if (isTable(part)) line = placeTable(draft, part, line, new Map(columnsFrom(part.columns, col)));
        else if (isSpill(part)) line = placeSpill(draft, part, line, col);
        else placeField(draft, part, line++, col, col + labelColumns, textColumns);
      return line;
    });
    row = Math.max(...ends) + 1;
  }
  draft.cells.push({ row, col: 0, kind: "note", value: CAUTION });
  return { pageTops, below: row + 2 };
}

/** A page of texts. Gives the row below it. */
function placeRemarks(draft: Draft, top: number): number {
  placeBand(draft, top, 0, PAGE_COLUMNS, "Remarks");
  REMARKS.forEach((remark, index) => placeRemark(draft, remark, top + 1 + index));
  return top + 1 + REMARKS.length + 1;
}

function placePicks(draft: Draft, top: number): number {
  placeBand(draft, top, 0, PAGE_COLUMNS, "Picks by hand");
  return placeTable(draft, PICK_TABLE, top + 1, new Map(columnsFrom(PICK_TABLE.columns, 0))) + 1;
}

function placeLoads(draft: Draft, top: number): number {
  const columnAt = new Map(LOAD_PARTS.flatMap(({ columns }, part) => columnsFrom(columns, part * PAGE_COLUMNS)));
  LOAD_PARTS.forEach(({ title }, part) => placeBand(draft, top, part * PAGE_COLUMNS, PAGE_COLUMNS, title));
  const below = placeTable(draft, loadTable(draft.loads), top + 1, columnAt);
  LOAD_PARTS.forEach(({ note }, part) => {
    if (note) draft.cells.push({ row: below, col: part * PAGE_COLUMNS, kind: "note", value: note });
  });
  return below + 2;
}

/** Two columns per load: time and reading. Nothing stands below, so that a long series has room. */
function placeReadings(draft: Draft, top: number, rows: number): number {
  const { system, cells, names } = draft;
  placeBand(draft, top, 0, 2 * draft.loads, "Readings");
  cells.push({
    row: top + 1,
    col: 0,
    kind: "note",
    value:
      "Minutes since the load was applied; the reading at time 0 is the last one before it. Leave out what was not read. " +
      `A logger's series is pasted over the schedule (${rows} rows for each load).`,
  });
  const first = top + 6;
  for (let load = 1; load <= draft.loads; load++) {
    const col = 2 * (load - 1);
    const stress = `INDEX({load_stress},MATCH(${load},{load_number},0))`;
    cells.push(
      {
        row: first - 3,
        col,
        kind: "result",
        formula: `=IFERROR(IF(${stress}="","",${stress}),"")`,
        format: formatOf("stress", system),
      },
      { row: first - 2, col, kind: "heading", value: "Time", align: "right" },
      { row: first - 2, col: col + 1, kind: "heading", value: "Reading", align: "right" },
    );
    placeBand(draft, first - 4, col, 2, `Load ${load}`);
    placeUnit(draft, first - 3, col + 1, "stress");
    placeUnit(draft, first - 1, col, "time", "right");
    placeUnit(draft, first - 1, col + 1, "reading", "right");
    for (let index = 0; index < Math.min(FRAMED_READING_ROWS, rows); index++) {
      cells.push({ row: first + index, col, kind: "input", value: HAND_TIMES[index] });
      cells.push({ row: first + index, col: col + 1, kind: "input" });
    }
    for (const field of readingsOf(load)) {
      names[field.name] = { row: first, col: col + Number(field.measure === "reading"), rows, cols: 1 };
      ruleEntries(draft, field, names[field.name]);
    }
  }
  return first + rows;
}

/** Job, boring, sample and depth in one line that stays in view. */
const SUMMARY =
  '={project}&IF({boring}="","","  |  "&{boring})&IF({sample}="","","  |  "&{sample})&IF({specimen}="","","  |  "&{specimen})';

/** A blank sheet for one test. Refuses a number of loads that is none, or too many. */
export function blankSheet(system: System, options: SheetOptions = {}): SheetPlan {
  const { loads = LOADS } = options;
  if (!Number.isInteger(loads) || loads < 1 || loads > MOST_LOADS)
    throw new Error(`a sheet has 1 to ${MOST_LOADS} loads, and not ${loads}`);
  const draft: Draft = { system, loads, cells: [], names: {}, merges: [], entries: [], rowHeights: {} };
  const { cells, names, merges, entries, rowHeights } = draft;
  cells.push(
    { row: 0, col: 0, kind: "title", value: "One-dimensional consolidation test, incremental loading" },
    { row: 0, col: 9, kind: "result", formula: SUMMARY },
    {
      row: 1,
      col: 0,
      kind: "note",
      value:
        "Framed cells are to be filled in; everything else is calculated. Blank stays blank until its inputs are there.",
    },
    { row: 1, col: 14, kind: "label", value: "Data sheet" },
    { row: 1, col: 15, kind: "label", value: TEMPLATE_VERSION },
    { row: 2, col: 0, kind: "remark" },
    { row: 2, col: 14, kind: "label", value: "Clayledger" },
    { row: 2, col: 15, kind: "label", value: ADD_IN_VERSION, align: "right" },
  );
  names.test_summary = { row: 0, col: 9, rows: 1, cols: 1 };
  names.template_version = { row: 1, col: 15, rows: 1, cols: 1 };
  names.addin_version = { row: 2, col: 15, rows: 1, cols: 1 };
  names.notice = { row: 2, col: 0, rows: 1, cols: 1 };
  const { pageTops, below: remarksTop } = placeSections(draft, 3);
  const loadsTop = placeRemarks(draft, remarksTop);
  const picksTop = placeLoads(draft, loadsTop);
  const readingsTop = placePicks(draft, picksTop);
  const rows = placeReadings(draft, readingsTop, options.readingRows ?? READING_ROWS);
  const readingPages = Math.ceil((2 * loads) / PAGE_COLUMNS);
  const cols = Math.max(LOAD_PARTS.length, readingPages) * PAGE_COLUMNS;
  const halfOfPicks = names.pick_load.row + PICK_TABLE.rows / 2;

  const page = (row: number, below: number, part: number): Box => ({
    row,
    col: part * PAGE_COLUMNS,
    rows: below - row,
    cols: PAGE_COLUMNS,
  });
  const framed = names.times_01.row + FRAMED_READING_ROWS;
  const below = [...pageTops.slice(1), remarksTop];
  return {
    name: options.name ?? "Consolidation test",
    rows,
    cols,
    // Rows of more than one line are read from the top.
    cells: cells.map((cell) => (rowHeights[cell.row] ? { ...cell, wrap: true } : cell)),
    names,
    merges,
    rowHeights,
    columnWidths: Object.fromEntries(Array.from({ length: cols }, (_, col) => [col, WIDE_COLUMNS[col] ?? 9.5])),
    freezeRows: 1,
    // The readings' pages hold the framed rows.
    pages: [
      ...pageTops.map((top, index) => page(top, below[index], 0)),
      page(remarksTop, loadsTop, 0),
      ...LOAD_PARTS.map((_, part) => page(loadsTop, picksTop, part)),
      page(picksTop, halfOfPicks, 0),
      page(halfOfPicks, readingsTop, 0),
      ...Array.from({ length: readingPages }, (_, part) => page(readingsTop, framed, part)),
    ],
    paper: system === "US" ? "Letter" : "A4",
    footer: `Data sheet ${TEMPLATE_VERSION}, Clayledger ${ADD_IN_VERSION}`,
    entries,
    isProtected: true,
    open: rows > framed ? [{ row: framed, col: 0, rows: rows - framed, cols: 2 * loads }] : [],
  };
}

/** Values by name: one for a cell, a list for a range, filled from its top. */
export type SheetValues = Readonly<Record<string, CellValue | readonly (CellValue | undefined)[]>>;

/** The plan with values typed into its inputs; refuses a name that is not there, or a cell that holds a formula. */
export function fillSheet(plan: SheetPlan, values: SheetValues): SheetPlan {
  const typed = new Map<string, CellValue>();
  const key = (row: number, col: number) => `${row} ${col}`;
  for (const [name, value] of Object.entries(values)) {
    const box = plan.names[name];
    if (!box) throw new Error(`the sheet has no name "${name}"`);
    const list = Array.isArray(value) ? value : [value];
    if (list.length > box.rows) throw new Error(`"${name}" has ${box.rows} rows and was given ${list.length} values`);
    list.forEach((item, index) => {
      if (item !== undefined) typed.set(key(box.row + index, box.col), item);
    });
  }
  const cells = plan.cells.map((cell) => {
    const value = typed.get(key(cell.row, cell.col));
    if (value === undefined) return cell;
    if (cell.formula) throw new Error(`row ${cell.row}, column ${cell.col} holds a formula and takes no value`);
    typed.delete(key(cell.row, cell.col));
    return { ...cell, value };
  });
  const beyond = [...typed].map(([place, value]): CellPlan => {
    const [row, col] = place.split(" ").map(Number);
    return { row, col, kind: "input", value };
  });
  return { ...plan, cells: [...cells, ...beyond] };
}
