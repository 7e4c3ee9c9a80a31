/** The types that describe the data sheet: fields (one cell), tables (columns of cells) and sections. */
import type { CellValue } from "../workbook/port";
import type { Limits, Measure, System } from "./measures";

/** One input or result of the sheet. A formula refers to other fields by `{name}`. */
export interface Field {
  readonly name: string;
  readonly label: string;
  readonly measure: Measure;
  readonly kind: "input" | "result" | "remark";
  /** Explains the field: its meaning, the formula in words, and the source. */
  readonly note?: string;
  /** The texts that the input accepts. */
  readonly choices?: readonly string[];
  /** The short names that sheets of an older version use instead of the choices. */
  readonly alsoReads?: readonly string[];
  /** The value in a blank sheet. */
  readonly value?: CellValue | Readonly<Record<System, CellValue>>;
  readonly formula?: string;
  /**
   * The values that a person may type, if they differ from the limits of the measure. They may depend on the number of
   * loads.
   */
  readonly limits?: Limits | ((loads: number) => Limits);
  /** True for the stress of a load: the refusal of a 0 says what to enter for a load that was taken off. */
  readonly isOfLoad?: boolean;
  /** The number of lines of text that the cell has room for, if it is more than one. */
  readonly lines?: number;
  /**
   * True if a formula of the register may stand in the input: its cell has no format of text, in which a formula stays a
   * text, and "" is a blank there.
   */
  readonly takesFormula?: boolean;
}

/**
 * A part of the formula of a long remark, in a cell of its own, because a formula has a limited number of characters and
 * words are longer in some languages. The remark refers to it by `{name}`.
 */
export interface RemarkPart extends Field {
  /** The name of the remark. */
  readonly of: string;
  readonly formula: string;
}

export const remarkPart = (of: string, part: string, label: string, expression: string): RemarkPart => ({
  ...{ name: `${of}_${part}`, label, measure: "text", kind: "remark", of },
  formula: `=${expression}`,
});

/**
 * A column of a table. In its formula, `[name]` refers to the same row of another column, `#` stands for the number of
 * the row (01, 02, ...), and `[^name]` refers to the nearest row above that has a number in the first column of the
 * table: a person may insert or delete rows between the two.
 */
export interface Column extends Omit<Field, "kind"> {
  readonly kind: Field["kind"] | "label";
  /** The heading in two lines; each fits into the width of the column. */
  readonly heading: readonly [string, string];
  /** The formula of the start row, which stands above the first row and holds the state before the first load. */
  readonly start?: string;
  /** Makes the cell of the start row an input with its own name. */
  readonly startInput?: Pick<Field, "name" | "label" | "note">;
  /** The width in characters; if it is left out, the column has the width of the other columns of its page. */
  readonly width?: number;
  /** The number of sheet columns from the first column of the table; if it is left out, the next free column. */
  readonly at?: number;
  /** The number of sheet columns that are merged for each cell; if it is left out, one. */
  readonly span?: number;
  /** For rows that differ: the content of each row, and the measure of its value. */
  readonly byRow?: readonly { readonly value?: CellValue; readonly formula?: string; readonly measure?: Measure }[];
  /**
   * True if only formulas of the table read the column. On a sheet without the column, they have its formula in the place of its
   * cell.
   */
  readonly isWorking?: boolean;
  /** True if the formula of an earlier column spills into this column. */
  readonly spilled?: boolean;
}

/** A table with one name for each column; the name covers `rows` cells. An optional start row stands above them. */
export interface Table {
  readonly columns: readonly Column[];
  readonly rows: number;
}

/**
 * A formula that spills a table of label, value and words. The sheet reserves its rows; `spills` lists the measure of
 * the value in each.
 */
export interface Spill {
  readonly name: string;
  readonly label: string;
  readonly formula: string;
  readonly note: string;
  /** The measure whose unit stands in the heading. */
  readonly measure: Measure;
  readonly spills: readonly Measure[];
}

export type Part = Field | Table | Spill;

export const isTable = (part: Part): part is Table => "columns" in part;
export const isSpill = (part: Part): part is Spill => "spills" in part;

/**
 * Returns a formula that stays blank until every cell that it needs has a number, so that a sheet that is unfinished, or
 * has an input that cannot be, shows no error. `also` is a condition on these numbers.
 */
export const when = (needs: readonly string[], formula: string, also?: string): string =>
  `=IF(COUNT(${needs.join(",")})<${needs.length},"",${also === undefined ? formula : `IF(${also},${formula},"")`})`;
