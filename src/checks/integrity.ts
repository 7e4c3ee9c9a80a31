/**
 * Finds what happened to the cells of a data sheet, cell by cell: formulas that were lost or overwritten with
 * constants, formulas unlike the others of their column, unknown functions and names, results that do not follow
 * from the inputs, hidden rows and columns with data, and cells with unusable content (text, a number as text, a
 * date). It reads contents, shown values and the positions of names, and changes nothing.
 */
import { isFormula } from "../workbook/contents";
import { runsOf } from "../reduction/numeric/runs";
import { say, verbatim, type Message } from "../reduction/message";
import { cellAddress, columnLetters, columnNumber } from "../workbook/address";
import { isError, isUnknown } from "../workbook/cell-error";
import { addressInList, cellOfList, lengthOf, liesAcross } from "../workbook/lists";
import { FIELDS, type NamedField } from "../specification/fields";
import { LOAD_TABLE, LOAD_WORKINGS } from "../specification/load-table";
import { REMARK_PARTS } from "../specification/main-page";
import { cellNamed, type NamedValues, type TestRecord } from "../record/record";
import type { Box, CellValue, SheetName } from "../workbook/port";
import { placedFormulas, type Layout, type PlacedFormula } from "../specification/placed-formulas";
import type { SheetLanguage } from "../specification/text/language";
import { boxesByName, layoutOf } from "../record/places";
import { differing } from "./questions/record";

export interface CellFinding {
  readonly kind:
    "overwritten" | "lost formula" | "in the way" | "unlike formula" | "unknown" | "differs" | "hidden" | "cell";
  /** "H12", or "12:12" and "H:H" for hidden rows and columns. */
  readonly address: string;
  /** Names the cell, and says what is wrong and what to do. */
  readonly sentence: Message;
  /** The formulas that repair the cells. */
  readonly mend?: readonly PlacedFormula[];
}

export { boxesByName };

export interface SheetState {
  readonly names: readonly SheetName[];
  readonly values: NamedValues;
  /** The contents of the cells by name, as the port's `readContents` gives them for `CONTENT_NAMES`. */
  readonly contents: NamedValues;
  readonly hidden: { readonly rows: readonly number[]; readonly cols: readonly number[] };
  readonly record: TestRecord;
}

/** Columns that the formula of another column fills. */
const SPILLED: ReadonlyMap<string, string> = (() => {
  const by = new Map<string, string>();
  let anchor = "";
  for (const { name, spilled } of LOAD_TABLE.columns)
    if (spilled) by.set(name, anchor);
    else anchor = name;
  return by;
})();

/** A formula in the first cell of this name fills the others. */
const SPREAD = "preconsolidation_spread";

const WORKED: readonly Pick<NamedField, "name">[] = [
  ...FIELDS.filter(({ kind }) => kind !== "input"),
  ...LOAD_WORKINGS.columns,
  ...REMARK_PARTS,
];

/** The names whose contents `integrity` reads. */
export const CONTENT_NAMES: readonly string[] = WORKED.map(({ name }) => name);

const isBlank = (content: CellValue | undefined): boolean =>
  content === undefined || (typeof content === "string" && content.trim() === "");

/** The row of a load in its columns, from 0. It goes by the load number, so that a moved row is found. */
export function rowOfLoad(values: NamedValues, load: number): number {
  const row = values.load_number?.findIndex(([number]) => number === load) ?? -1;
  return row >= 0 ? row : load - 1;
}

/**
 * A formula in a form that is equal in every cell of its column: references are made relative to the cell, along the column or, if the table lies on its side, along the row, and `times_07`
 * becomes the times of the load. References fixed with "$" stay unchanged.
 */
const anyRow = (formula: string, box: Box, index: number, load: number): string =>
  formula
    .replace(/(\$?)([A-Z]{1,3})(\$?)(\d+)(?![\d(A-Z_])/g, (whole, ...[fixedCol, col, fixed, digits]: string[]) => {
      if (col === undefined || digits === undefined) return whole;
      if (liesAcross(box)) return fixedCol ? whole : `[${columnNumber(col) - box.col - index}]${fixed}${digits}`;
      return fixed ? whole : `${fixedCol}${col}[${Number(digits) - 1 - box.row - index}]`;
    })
    .replace(/\b(times|readings|picks)_(\d\d)/gi, (whole, series: string, digits: string) =>
      Number(digits) === load ? `${series}_#` : whole,
    );

const quoted = (content: CellValue | undefined): string => {
  const text = String(content);
  return text.length > 30 ? `${text.slice(0, 30)}...` : text;
};

const bare = (formula: CellValue): string =>
  String(formula)
    .replace(/[{}\s]/g, "")
    .toLowerCase();

/** The parts of the state of a sheet that are needed to check its formulas. */
type Formulas = Pick<SheetState, "names" | "values" | "contents">;

/** Formulas of one name: those that are gone, and those unlike the others of the column. `layout` is asked only for a fault. */
function faultsOfName(
  name: string,
  box: Box,
  { contents, values }: Pick<SheetState, "values" | "contents">,
  layout: () => Layout,
): CellFinding[] {
  const cells = (contents[name] ?? []).map(([content]) => content);
  const isColumn = cells.length > 1;
  const at = (row: number) => addressInList(box, row);
  const isAt = (row: number, cell: PlacedFormula): boolean => cellAddress(cell.row, cell.col) === at(row);
  const hasModel = cells.some(isFormula);
  const { usual, isUsual } = usualForm(cells, box, values);
  let placed: readonly PlacedFormula[] | undefined;
  const rightFormulas = (): readonly PlacedFormula[] => (placed ??= placedFormulas(name, layout())?.cells ?? []);
  const finding = (row: number, kind: CellFinding["kind"], sentence: Message): CellFinding => {
    const mend = rightFormulas().filter((cell) => isAt(row, cell));
    return { kind, address: at(row), sentence, ...(mend.length > 0 && { mend }) };
  };
  /** Whether the formula of this row alone needs a name that the sheet has no cells for, so that it was never written. */
  const isWaiting = (row: number): boolean =>
    rightFormulas().length > 0 && !rightFormulas().some((right) => isAt(row, right));
  if (isColumn && cells.every(isBlank)) return noFormulas(name, box, rightFormulas());
  return cells.flatMap((content, row): CellFinding[] => {
    if (isFormula(content)) {
      const isUnlike =
        isUsual &&
        formOf(content, row, box, values) !== usual &&
        !rightFormulas().some((right) => isAt(row, right) && bare(right.formula) === bare(content ?? ""));
      return isUnlike ? [finding(row, "unlike formula", unlike(at(row), name))] : [];
    }
    // A row that a person put in between the loads is not a load, and has no formula.
    if (isColumn && values.load_number && isBlank(values.load_number[row]?.[0])) return [];
    if (!isBlank(content)) return [finding(row, "overwritten", overwritten(at(row), name, content, isColumn))];
    if (isColumn && (!hasModel || isWaiting(row))) return [];
    return [finding(row, "lost formula", lost(at(row), name, isColumn))];
  });
}

/** The finding for a column of results that has a name but no formula yet. */
function noFormulas(name: string, box: Box, mend: readonly PlacedFormula[]): CellFinding[] {
  const address = addressInList(box, 0);
  const last = verbatim(addressInList(box, lengthOf(box) - 1));
  const sentence = say`${verbatim(address)} to ${last}, ${cellNamed(name)}, hold no formulas: write them (Data sheet, Sheet check)`;
  return [{ kind: "lost formula", address, sentence, ...(mend.length > 0 && { mend }) }];
}

const formOf = (content: CellValue | undefined, row: number, box: Box, values: NamedValues): string =>
  anyRow(String(content), box, row, Number(values.load_number?.[row]?.[0] ?? row + 1));

/** The most frequent formula of a column; `isUsual` is true if more than half of the cells have it. */
function usualForm(
  cells: readonly (CellValue | undefined)[],
  box: Box,
  values: NamedValues,
): { usual?: string; isUsual: boolean } {
  const counts = new Map<string, number>();
  cells.forEach((content, row) => {
    if (!isFormula(content)) return;
    const form = formOf(content, row, box, values);
    counts.set(form, (counts.get(form) ?? 0) + 1);
  });
  const [usual, most = 0] = [...counts].sort((a, b) => b[1] - a[1])[0] ?? [];
  return { usual, isUsual: most > cells.length / 2 };
}

const lost = (at: string, name: string, isColumn: boolean): Message =>
  isColumn
    ? say`${verbatim(at)}, ${cellNamed(name)}, has lost its formula: copy it from a neighbour in the column`
    : say`${verbatim(at)}, ${cellNamed(name)}, has lost its formula: take it from a newly inserted sheet`;

const overwritten = (at: string, name: string, content: CellValue | undefined, isColumn: boolean): Message =>
  isColumn
    ? say`${verbatim(at)}, ${cellNamed(name)}, holds ${verbatim(quoted(content))} where a formula belongs: it was overwritten and follows no input any more; copy the formula from a neighbour in the column`
    : say`${verbatim(at)}, ${cellNamed(name)}, holds ${verbatim(quoted(content))} where a formula belongs: it was overwritten and follows no input any more; undo, or take the formula from a newly inserted sheet`;

const unlike = (at: string, name: string): Message =>
  say`${verbatim(at)}, ${cellNamed(name)}, has a formula unlike the others of its column: copy it from a neighbour, or say why`;

/**
 * The faults of the formulas of a sheet, each with the formula that repairs it if the sheet has the names that this
 * formula needs; in `language` where neither a cell nor a formula of the sheet says its language.
 */
export function formulaFindings(state: Formulas, language?: SheetLanguage): CellFinding[] {
  const { names, values, contents } = state;
  const boxes = boxesByName(names);
  let found: Layout | undefined;
  const layout = (): Layout => (found ??= layoutOf(names, values, contents, language));
  return WORKED.flatMap(({ name }): CellFinding[] => {
    const box = boxes.get(name);
    const cells = contents[name];
    if (!box || !cells || SPILLED.has(name)) return [];
    if (name !== SPREAD) return faultsOfName(name, box, state, layout);
    return faultsOfName(name, { ...box, rows: 1 }, { values, contents: { [name]: cells.slice(0, 1) } }, layout);
  });
}

/** Constants in the cells into which a formula spills: Excel then shows an error in the formula's cell, and no values. */
function wayFindings(boxes: ReadonlyMap<string, Box>, { contents, values }: SheetState): CellFinding[] {
  const findings: CellFinding[] = [];
  for (const [name, anchor] of SPILLED) {
    const box = boxes.get(name);
    const cells = contents[name];
    if (!box || !cells) continue;
    cells.forEach(([content], row) => {
      if (isBlank(content) || isFormula(content) || !isError(values[anchor]?.[row]?.[0])) return;
      const from = boxes.get(anchor);
      findings.push({
        kind: "in the way",
        address: addressInList(box, row),
        sentence: say`${verbatim(addressInList(box, row))}, ${cellNamed(name)}, holds ${verbatim(quoted(content))} where the formula of ${from ? verbatim(addressInList(from, row)) : cellNamed(anchor)} puts its answer: clear it`,
      });
    });
  }
  const [box, cells] = [boxes.get(SPREAD), contents[SPREAD]];
  if (box && cells && isFormula(cells[0]?.[0]) && isError(values[SPREAD]?.[0]?.[0]))
    cells.forEach((line, row) =>
      line.forEach((content, col) => {
        if ((row === 0 && col === 0) || isBlank(content) || isFormula(content)) return;
        const address = cellAddress(box.row + row, box.col + col);
        findings.push({
          kind: "in the way",
          address,
          sentence: say`${verbatim(address)} holds ${verbatim(quoted(content))} where the formula of ${verbatim(cellAddress(box.row, box.col))} puts its answer: clear it`,
        });
      }),
    );
  return findings;
}

/** One finding for all results that the workbook cannot calculate, because it does not know a function or a name. */
function unknownFindings(boxes: ReadonlyMap<string, Box>, { values }: SheetState): CellFinding[] {
  const cells = WORKED.flatMap(({ name }) => {
    const box = boxes.get(name);
    if (!box) return [];
    const shown = values[name] ?? [];
    return shown.flatMap(([value], row) => (isUnknown(value) ? [{ name, address: addressInList(box, row) }] : []));
  });
  const [first] = cells;
  if (!first) return [];
  const [at, called] = [verbatim(first.address), cellNamed(first.name)];
  const sentence =
    cells.length === 1
      ? say`${at}, ${called}, has no result: a function or a name of a formula is not known; attach missing names, and enter the formulas again (Data sheet, Sheet check)`
      : say`${cells.length} results are missing, the first in ${at}, ${called}: a function or a name of a formula is not known; attach missing names, and enter the formulas again (Data sheet, Sheet check)`;
  return [{ kind: "unknown", address: first.address, sentence }];
}

/** Results that do not follow from the inputs. */
function differences(boxes: ReadonlyMap<string, Box>, { record, values }: SheetState): CellFinding[] {
  return differing(record).flatMap(({ name, load, sentence }) => {
    const box = boxes.get(name);
    if (!box) return [];
    const address = addressInList(box, load === undefined ? 0 : rowOfLoad(values, load));
    return [{ kind: "differs" as const, address, sentence: say`${verbatim(address)}, ${sentence}` }];
  });
}

const HIDDEN = {
  r: { one: say`row`, several: say`rows` },
  c: { one: say`column`, several: say`columns` },
};

/** Hidden rows and columns with content in a named cell. */
function hiddenFindings(boxes: ReadonlyMap<string, Box>, { hidden, values, contents }: SheetState): CellFinding[] {
  const holds = new Map<string, { name: string; address: string }>();
  const [rows, cols] = [new Set(hidden.rows), new Set(hidden.cols)];
  if (rows.size + cols.size === 0) return [];
  for (const { name, kind } of FIELDS) {
    const box = boxes.get(name);
    if (!box) continue;
    (values[name] ?? []).forEach(([value], index) => {
      const { row, col } = cellOfList(box, index);
      if (isBlank(value) || (kind !== "input" && isBlank(contents[name]?.[index]?.[0]))) return;
      const found = { name, address: cellAddress(row, col) };
      if (rows.has(row) && !holds.has(`r${row}`)) holds.set(`r${row}`, found);
      if (cols.has(col) && !holds.has(`c${col}`)) holds.set(`c${col}`, found);
    });
  }
  const told = (of: "r" | "c", numbers: readonly number[], called: (number: number) => string): CellFinding[] =>
    runsOf(numbers.filter((number) => holds.has(`${of}${number}`)).sort((a, b) => a - b)).map(([from, to]) => {
      const { name, address } = holds.get(`${of}${from}`)!;
      return {
        kind: "hidden",
        address: `${called(from)}:${called(to)}`,
        sentence:
          from === to
            ? say`${HIDDEN[of].one} ${verbatim(called(from))} is hidden and in use: ${verbatim(address)} holds ${cellNamed(name)}; show it before the sheet is signed`
            : say`${HIDDEN[of].several} ${verbatim(called(from))} to ${verbatim(called(to))} are hidden and in use: ${verbatim(address)} holds ${cellNamed(name)}; show them before the sheet is signed`,
      };
    });
  return [...told("r", hidden.rows, (row) => String(row + 1)), ...told("c", hidden.cols, columnLetters)];
}

/** All findings, formulas first; each cell is listed once, with its gravest finding. */
export function integrity(state: SheetState): CellFinding[] {
  const boxes = boxesByName(state.names);
  const faults = state.record.faults
    .filter(({ kind }) => kind !== "error")
    .flatMap(({ name, row, sentence }): CellFinding[] => {
      const box = boxes.get(name);
      if (!box) return [];
      const address = addressInList(box, (row ?? 1) - 1);
      return [{ kind: "cell", address, sentence: say`${verbatim(address)}, ${sentence}` }];
    });
  const seen = new Set<string>();
  return [
    ...formulaFindings(state),
    ...wayFindings(boxes, state),
    ...unknownFindings(boxes, state),
    ...differences(boxes, state),
    ...faults,
    ...hiddenFindings(boxes, state),
  ].filter(({ address }) => !seen.has(address) && seen.add(address));
}
