/** Places a single value of the specification: a field with its unit, a typed text, a remark, a formula that spills. */
import type { Field, Spill } from "../specification/field";
import type { Section } from "../specification/main-page";
import { formatOf, isDate } from "../specification/measures";
import {
  type Draft,
  formatFor,
  heightOf,
  PAGE_COLUMNS,
  PANEL_COLUMNS,
  placeBand,
  placeUnit,
  ruleEntries,
  startValue,
} from "./draft";

/**
 * Places one field in a row: label, value, unit. A typed text takes `textColumns`; a result stays in one cell, where it
 * may spill.
 */
export function placeField(
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
export function placeTypedRemark(draft: Draft, field: Field, row: number): number {
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
export function placeRemark(draft: Draft, field: Field, row: number, left: number): number {
  const { cells, names, merges } = draft;
  const { name, label, kind, note, formula, lines = 1 } = field;
  const col = left + 2;
  cells.push({ row, col: left, kind: "label", value: label, wrap: true });
  cells.push({ row, col, kind, formula, format: formatFor(field, draft.system), note, wrap: true });
  names[name] = { row, col, rows: 1, cols: 1 };
  merges.push({ row, col: left, rows: lines, cols: 2 }, { row, col, rows: lines, cols: PAGE_COLUMNS - 2 });
  return row + lines;
}

/** Places the rows that a spilling formula fills: label, value and words. Returns the row below them. */
export function placeSpill(draft: Draft, spill: Spill, top: number, col: number): number {
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
