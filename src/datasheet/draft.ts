/** A sheet during its layout, and what every part of it has: headings, units, formats and the rules of entry. */
import type { Box, CellPlan, CellValue, EntryRule } from "../workbook/port";
import type { Column, Field } from "../specification/field";
import { formatOf, unitOf, type Measure, type System } from "../specification/measures";
import type { PartsInLanguage } from "../specification/text/in-language";
import { formulaIn, titleIn, type SheetWords } from "../specification/text/words";
import { entryRule } from "./entry-rule";

/** The number of columns of a printed page, and of one of its three panels. */
export const PAGE_COLUMNS = 16;
export const PANEL_COLUMNS = 5;

/** A sheet during its layout. */
export interface Draft {
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
export const heightOf = (lines: number): number => Math.ceil(10.4 * lines);

export const startValue = (field: Pick<Field, "value">, system: System): CellValue | undefined =>
  typeof field.value === "object" ? field.value[system] : field.value;

/** The number format of a field. A text that a person types stays text: "12-3" must not become a date. */
export const formatFor = (
  field: Pick<Field, "measure" | "kind" | "choices" | "takesFormula"> | Column,
  system: System,
): string | undefined =>
  field.measure === "text" && field.kind === "input" && !field.choices && !field.takesFormula
    ? "@"
    : formatOf(field.measure, system);

/** Places a heading across the columns. */
export function placeBand(draft: Draft, row: number, col: number, cols: number, title: string): void {
  for (let index = 0; index < cols; index++)
    draft.cells.push({ row, col: col + index, kind: "heading", value: index === 0 ? title : undefined });
}

/**
 * Numbers are aligned under the right end of their heading, short words in the middle; long texts at the left, and the
 * words of a list, because its arrow covers the right end of the cell.
 */
export const alignOf = ({ measure, kind, choices }: Column): CellPlan["align"] =>
  measure !== "text" ? "right" : kind === "remark" || choices ? undefined : "center";

/**
 * Places a unit. Beside a number it is aligned left; in the heading of a column it is aligned right, above the numbers.
 */
export function placeUnit(
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
export function ruleEntries(draft: Draft, field: Field | Column, box: Box): void {
  const rule = field.kind === "input" && !field.choices ? entryRule(field, box, draft.loads, draft.words) : undefined;
  if (rule) draft.entries.push(rule);
}
