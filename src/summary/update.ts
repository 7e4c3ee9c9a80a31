/**
 * Brings a summary up to date: it adds a row for each data sheet that has none, and constants of other files. It never
 * overwrites what a person typed. It reports what it added and what it left unchanged.
 */
import { isFormula } from "../workbook/contents";
import { boxesByName } from "../record/places";
import type { NamedValues, TestRecord } from "../record/record";
import { cellAddress } from "../workbook/address";
import type { Box, CellContent, CellValue, SheetName } from "../workbook/port";
import { referenceTo } from "../workbook/references";
import {
  COLUMNS,
  FILE,
  HASH,
  KEY,
  keyFormula,
  OPEN,
  sheetOfKey,
  type Beside,
  type SummaryColumn,
  type SummaryUnits,
} from "./columns";
import { wordsOf, type SheetWords } from "../specification/text/words";
import { languageOfSummary, unitsOfSummary } from "./summary-sheet";

/** The present state of a summary. */
export interface Standing {
  readonly names: readonly SheetName[];
  /** The values of the columns, of the unit cells and of the language. */
  readonly values: NamedValues;
  readonly contents: NamedValues;
  /** The rows of the sheet, counted from 0, that are not blank. */
  readonly filled: ReadonlySet<number>;
}

/** A data sheet of the workbook. */
export interface Specimen {
  readonly sheet: string;
  readonly record: TestRecord;
  /** The names of the data sheet that refer to cells. */
  readonly has: ReadonlySet<string>;
  readonly beside: Beside;
}

/** A data sheet of another file. */
export interface FileSpecimen {
  readonly record: TestRecord;
  readonly beside: Beside & { readonly file: string; readonly hash: string };
}

export interface Update {
  /** New contents for blank cells. */
  readonly fresh: readonly CellContent[];
  /** New contents for cells with constants that the summary itself wrote. */
  readonly renewed: readonly CellContent[];
  /** The sheets and files that got a row. */
  readonly added: readonly string[];
  /** Cells with other contents than the formula of the summary; they were left unchanged. */
  readonly left: readonly string[];
  /** Rows, counted from 1, whose data sheet no longer exists. */
  readonly gone: readonly number[];
  /** Files whose contents have changed since they were last read. */
  readonly changed: readonly string[];
  /** The sheets and files for which no row is left. */
  readonly withoutRoom: readonly string[];
}

interface Row {
  /** The index in the columns, counted from 0. */
  readonly index: number;
  readonly sheet?: string;
  readonly file?: string;
}

const isBlank = (content: CellValue | undefined): boolean => content === undefined || content === "";

/** Collects the contents for the cells of one summary, in its units and its language, and the cells left unchanged. */
class Writing {
  readonly units: SummaryUnits;
  readonly words: SheetWords;
  readonly fresh: CellContent[] = [];
  readonly renewed: CellContent[] = [];
  readonly left: string[] = [];
  readonly #boxes: ReadonlyMap<string, Box>;
  readonly #contents: NamedValues;

  constructor({ names, values, contents }: Standing) {
    this.units = unitsOfSummary(values);
    this.words = wordsOf(languageOfSummary(values));
    this.#boxes = boxesByName(names);
    this.#contents = contents;
  }

  get rows(): number {
    return this.#boxes.get(KEY)?.rows ?? 0;
  }

  rowOnSheet(index: number): number {
    return (this.#boxes.get(KEY)?.row ?? 0) + index;
  }

  contentOf(name: string, index: number): CellValue | undefined {
    return this.#contents[name]?.[index]?.[0];
  }

  /** Puts a content into a cell of a column. If a person deleted the column, nothing is written. */
  put(
    { name, format }: SummaryColumn,
    index: number,
    content: { formula: string } | { value: CellValue },
    mayRenew: boolean,
  ): void {
    const box = this.#boxes.get(name);
    if (!box || index >= box.rows) return;
    const place = { row: box.row + index, col: box.col };
    const before = this.contentOf(name, index);
    const cell = { ...place, ...content, ...(format !== undefined && { format }) };
    if (isBlank(before)) this.fresh.push(cell);
    else if (mayRenew) this.renewed.push({ ...place, ...content });
    else if (!isFormula(before)) this.left.push(cellAddress(place.row, place.col));
  }
}

const rowsOf = (writing: Writing): Row[] =>
  Array.from({ length: writing.rows }, (_, index): Row => {
    const sheet = sheetOfKey(writing.contentOf(KEY, index));
    const file = writing.contentOf(FILE, index);
    return { index, ...(sheet !== undefined && { sheet }), ...(!isBlank(file) && { file: String(file) }) };
  });

const same = (one: string, other: string | undefined): boolean => one.toLowerCase() === other?.toLowerCase();

/** Writes the row of a data sheet: formulas that refer to it, and the values that no formula gives. */
function writeSheet(on: Writing, row: Row, { sheet, record, has, beside }: Specimen): void {
  const refer = (name: string): string => referenceTo(name, sheet);
  for (const column of COLUMNS) {
    if (column.name === KEY) {
      if (!isCalled(on, row.index, sheet)) on.put(column, row.index, { formula: keyFormula(sheet, refer) }, true);
    } else if (column.formula) {
      if (column.needs.every((name) => has.has(name)))
        on.put(column, row.index, { formula: column.formula(refer, on.units, on.words) }, false);
    } else if (column.name === OPEN || column.name === "summary_day")
      on.put(column, row.index, { value: column.value(record, beside, on.units, on.words) ?? "" }, true);
  }
}

/** Writes the row of a data sheet of another file: values alone. */
function writeFile(on: Writing, row: Row, { record, beside }: FileSpecimen, mayRenew: boolean): void {
  for (const column of COLUMNS)
    on.put(column, row.index, { value: column.value(record, beside, on.units, on.words) ?? "" }, mayRenew);
}

export function update(standing: Standing, specimens: readonly Specimen[], files: readonly FileSpecimen[]): Update {
  const writing = new Writing(standing);
  const rows = rowsOf(writing);
  const free = rows.filter(({ index }) => !standing.filled.has(writing.rowOnSheet(index)));
  const said: Record<"added" | "changed" | "withoutRoom", string[]> = { added: [], changed: [], withoutRoom: [] };
  const nextFree = (called: string): Row | undefined => {
    const row = free.shift();
    (row ? said.added : said.withoutRoom).push(called);
    return row;
  };

  for (const specimen of specimens) {
    const row = rows.find((one) => same(specimen.sheet, one.sheet)) ?? nextFree(specimen.sheet);
    if (row) writeSheet(writing, row, specimen);
  }
  for (const specimen of files) {
    const { file, hash } = specimen.beside;
    const present = rows.find((one) => same(file, one.file));
    if (present && writing.contentOf(HASH, present.index) === hash) continue;
    if (present) said.changed.push(file);
    const row = present ?? nextFree(file);
    if (row) writeFile(writing, row, specimen, present !== undefined);
  }
  const gone = rows.filter(({ index, sheet, file }) =>
    sheet === undefined
      ? file === undefined && isLost(writing, index)
      : !specimens.some((one) => same(one.sheet, sheet)),
  );
  return {
    ...said,
    ...{ fresh: writing.fresh.filter(holds), renewed: writing.renewed, left: writing.left },
    gone: gone.map(({ index }) => writing.rowOnSheet(index) + 1).sort((a, b) => a - b),
  };
}

/**
 * True if the formula of a row's first cell refers to no sheet, because the data sheet was deleted together with its
 * names.
 */
const isLost = (writing: Writing, index: number): boolean =>
  /^=IF\(\s*COUNT\(.*\)\s*>=\s*0/i.test(String(writing.contentOf(KEY, index) ?? ""));

/** True if a row's first cell shows the present name of its sheet. */
const isCalled = (writing: Writing, index: number, sheet: string): boolean =>
  String(writing.contentOf(KEY, index) ?? "").includes(`"${sheet}"`);

/** Leaves out cells that are blank and stay blank. */
const holds = (cell: CellContent): boolean => "formula" in cell || cell.value !== "";

/** Pairs of sheets or files with the same boring, sample, specimen and depth. */
export function twins(
  specimens: readonly { readonly called: string; readonly record: TestRecord }[],
): [string, string][] {
  const first = new Map<string, string>();
  return specimens.flatMap(({ called, record: { words, numbers } }): [string, string][] => {
    if (words.boring === undefined && words.sample === undefined) return [];
    const key = [words.boring, words.sample, words.specimen, numbers.depth]
      .map((one) =>
        String(one ?? "")
          .trim()
          .toLowerCase(),
      )
      .join("\n");
    const before = first.get(key);
    if (before === undefined) first.set(key, called);
    return before === undefined ? [] : [[before, called]];
  });
}
