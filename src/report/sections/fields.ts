/** Items of the data sheet with their labels, one or two in a row. */
import { say } from "../../reduction/message";
import type { CellPlan } from "../../workbook/port";
import { toldExpression } from "../../specification/sentences/told-formula";
import { FORMATS, shownCell, unitOf, type Shown } from "../page/cells";
import { band, COLUMNS, fits, gap, paragraph, type Block } from "../page/page";
import type { DataCells } from "../page/source";

const HALF = COLUMNS / 2;
export const LABEL_COLUMNS = 3;

/** A row with one or two items, each with its unit. */
function pair(cells: DataCells, ...shown: readonly (Shown | undefined)[]): Block {
  const placed = shown.flatMap((one, side) => (one ? [{ one, col: side * HALF }] : []));
  return {
    rows: 1,
    cells: placed.flatMap(({ one, col }): CellPlan[] => [
      { row: 0, col, kind: "label", value: one.label },
      shownCell(cells, one, 0, col + LABEL_COLUMNS),
      ...unitOf(cells, one, 0, col + LABEL_COLUMNS + 1),
    ]),
    merges: placed.flatMap(({ one, col }) =>
      one.isDate ? [{ row: 0, col: col + LABEL_COLUMNS, rows: 1, cols: 2 }] : [],
    ),
  };
}

/** Items in pairs; a long text has a row of its own, and continues below if it must. */
export function fields(cells: DataCells, shown: readonly Shown[]): Block[] {
  const blocks: Block[] = [];
  let waiting: Shown | undefined;
  for (const one of shown) {
    const text = one.isText && !one.isDate && one.name !== undefined ? cells.text(one.name) : "";
    const col = LABEL_COLUMNS;
    if (!fits(text, "result", col)) blocks.push(...paragraph(text, { col, lead: one.label, kind: "result" }));
    else if (!fits(text, "result", col, HALF)) blocks.push(pair(cells, one));
    else if (waiting) {
      blocks.push(pair(cells, waiting, one));
      waiting = undefined;
    } else waiting = one;
  }
  return waiting ? [...blocks, pair(cells, waiting)] : blocks;
}

/** Two columns of items, side by side. */
export const panels = (cells: DataCells, left: readonly Shown[], right: readonly Shown[]): Block[] =>
  Array.from({ length: Math.max(left.length, right.length) }, (_, i) => pair(cells, left[i], right[i]));

/** A heading that stays on one page with the first rows of its section. */
export const section = (title: string, body: readonly Block[], options = {}): Block[] =>
  body.length === 0 ? [] : [band(title, options), ...body, gap];

export const text = (label: string, name: string): Shown => ({ label, name, isText: true });
export const date = (label: string, name: string): Shown => ({
  label,
  name,
  format: FORMATS.date,
  isText: true,
  isDate: true,
});

/** Items that only newer data sheets have: shown if the sheet has them. */
export const ifThere = (cells: DataCells, ...shown: readonly Shown[]): Shown[] =>
  shown.filter(({ name }) => name === undefined || cells.has(name));

/** A row with a text from a live formula, which is never longer than the row. */
export const told = (label: string, formula: string): Block => ({
  rows: 1,
  cells: [
    { row: 0, col: 0, kind: "label", value: label },
    { row: 0, col: LABEL_COLUMNS, kind: "result", align: "left", formula },
  ],
});

/** An expression for the text of a cell, or "not stated" if the cell is blank or missing. */
export const statedFormula = (cells: DataCells, name: string): string => {
  const reference = cells.at(name);
  const otherwise = toldExpression(cells.words(say`not stated`));
  return reference ? `IF(${reference}="",${otherwise},${reference})` : otherwise;
};
