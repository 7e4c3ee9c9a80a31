/** The words that the specification is written in: fields (one cell), tables (columns of cells), sections. */
import type { CellValue } from "../workbook/port";
import type { Limits, Measure, System } from "./measures";

/** One input or result of the sheet. A formula refers to others by `{name}`. */
export interface Field {
  readonly name: string;
  readonly label: string;
  readonly measure: Measure;
  readonly kind: "input" | "result" | "remark";
  /** What it is, the formula in words, and the source. */
  readonly note?: string;
  /** The words that an input may take. */
  readonly choices?: readonly string[];
  /** Short names that a sheet of an older version has in the place of its choices. */
  readonly alsoReads?: readonly string[];
  /** What a blank sheet starts with. */
  readonly value?: CellValue | Readonly<Record<System, CellValue>>;
  readonly formula?: string;
  /** What may be typed, where that is not what the measure allows; it may depend on how many loads the sheet has. */
  readonly limits?: Limits | ((loads: number) => Limits);
  /** Lines of text that it has room for, where that is more than one. */
  readonly lines?: number;
}

/**
 * A column of a table. In its formula, `[name]` is the same row of a column, `#` the row's number (01, 02, ...), `[^name]` the
 * nearest row above that has a number in the table's first column: rows may be put in or taken out between the two.
 */
export interface Column extends Omit<Field, "kind"> {
  readonly kind: Field["kind"] | "label";
  /** The heading, in two lines of at most a column's width. */
  readonly heading: readonly [string, string];
  /** The line before the first row: where the test starts from. */
  readonly start?: string;
  /** The same line as an input, with a name of its own. */
  readonly startInput?: Pick<Field, "name" | "label" | "note">;
  /** Characters; absent, what the columns of its page have. */
  readonly width?: number;
  /** Filled by the spill of the formula in an earlier column. */
  readonly spilled?: boolean;
}

/** Rows of a table that one name covers: `rows` of them, below an optional start row. */
export interface Table {
  readonly columns: readonly Column[];
  readonly rows: number;
}

/** A formula that spills a table of label, value and words; its rows are reserved, each with what its value measures. */
export interface Spill {
  readonly name: string;
  readonly label: string;
  readonly formula: string;
  readonly note: string;
  /** What the unit in its heading is of. */
  readonly measure: Measure;
  readonly spills: readonly Measure[];
}

const anyBlank = (needs: readonly string[]): string => {
  const blanks = needs.map((need) => `${need}=""`);
  return blanks.length > 1 ? `OR(${blanks.join(",")})` : blanks[0];
};

/**
 * A formula that stays blank until every cell it needs is filled, so that an unfinished sheet shows no error. Cells of its
 * own row are asked first: a fault elsewhere does not show in rows that are not used.
 */
export function when(needs: readonly string[], formula: string): string {
  const own = needs.filter((need) => /^\[\w/.test(need));
  const groups = [own, needs.filter((need) => !own.includes(need))].filter((group) => group.length > 0);
  return `=${groups.reduceRight((inner, group) => `IF(${anyBlank(group)},"",${inner})`, formula)}`;
}
