/**
 * Finds what happened to the cells of a data sheet, cell by cell: formulas that were lost or overwritten with
 * constants, formulas unlike the others of their column, results that do not follow from the inputs, hidden rows and
 * columns with data, and cells with unusable content (text, a number as text, a date). It reads contents, shown values
 * and the positions of names, and changes nothing.
 */
import { runsOf } from "../reduction/numeric/runs";
import { say, verbatim, type Message } from "../reduction/message";
import { cellAddress, columnLetters } from "../workbook/address";
import { FIELDS, type NamedField } from "../specification/fields";
import { LOAD_TABLE } from "../specification/load-table";
import { cellNamed, type NamedValues, type TestRecord } from "../record/record";
import type { Box, CellValue, SheetName } from "../workbook/port";
import { differing } from "./questions/record";

export interface CellFinding {
  readonly kind: "overwritten" | "lost formula" | "in the way" | "unlike formula" | "differs" | "hidden" | "cell";
  /** "H12", or "12:12" and "H:H" for hidden rows and columns. */
  readonly address: string;
  /** Names the cell, and says what is wrong and what to do. */
  readonly sentence: Message;
}

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

const WORKED: readonly NamedField[] = FIELDS.filter(({ kind }) => kind !== "input");

/** The names whose contents `integrity` reads. */
export const CONTENT_NAMES: readonly string[] = WORKED.map(({ name }) => name);

const isFormula = (content: CellValue | undefined): boolean => typeof content === "string" && content.startsWith("=");
const isBlank = (content: CellValue | undefined): boolean =>
  content === undefined || (typeof content === "string" && content.trim() === "");
const isError = (value: CellValue | undefined): boolean => typeof value === "string" && /^#[A-Z]/i.test(value);

/** The position of each name; a name of the sheet comes before one of the workbook. */
export function boxesByName(names: readonly SheetName[]): ReadonlyMap<string, Box> {
  const boxes = new Map<string, Box>();
  for (const { name, place } of names)
    if (place !== "lost" && !boxes.has(name.toLowerCase())) boxes.set(name.toLowerCase(), place);
  return boxes;
}

/** The row of a load in its columns, from 0. It goes by the load number, so that a moved row is found. */
export function rowOfLoad(values: NamedValues, load: number): number {
  const row = values.load_number?.findIndex(([number]) => number === load) ?? -1;
  return row >= 0 ? row : load - 1;
}

/**
 * A formula in a form that is equal in every row of its column: references are made relative to the row, and `times_07`
 * becomes the times of the load. References fixed with "$" stay unchanged.
 */
const anyRow = (formula: string, row: number, load: number): string =>
  formula
    .replace(/(\$?[A-Z]{1,3})(\$?)(\d+)(?![\d(A-Z_])/g, (whole, col: string, fixed: string, digits: string) =>
      fixed ? whole : `${col}[${Number(digits) - 1 - row}]`,
    )
    .replace(/\b(times|readings|picks)_(\d\d)/gi, (whole, series: string, digits: string) =>
      Number(digits) === load ? `${series}_#` : whole,
    );

const quoted = (content: CellValue | undefined): string => {
  const text = String(content);
  return text.length > 30 ? `${text.slice(0, 30)}...` : text;
};

/** The lost formulas of one name, and formulas unlike the others of the column. */
function formulaFindings(name: string, box: Box, state: SheetState): CellFinding[] {
  const { contents, values } = state;
  const cells = (contents[name] ?? []).map(([content]) => content);
  const at = (row: number) => cellAddress(box.row + row, box.col);
  const model = cells.find(isFormula);
  const findings: CellFinding[] = [];
  const forms = cells.map((content, row) => {
    const load = Number(values.load_number?.[row]?.[0] ?? row + 1);
    return isFormula(content) ? anyRow(String(content), box.row + row, load) : undefined;
  });
  const counts = new Map<string, number>();
  for (const form of forms) if (form) counts.set(form, (counts.get(form) ?? 0) + 1);
  const [usual, most = 0] = [...counts].sort((a, b) => b[1] - a[1])[0] ?? [];
  cells.forEach((content, row) => {
    if (!isFormula(content)) {
      // A row that a person put in between the loads is not a load, and has no formula.
      if (cells.length > 1 && values.load_number && isBlank(values.load_number[row]?.[0])) return;
      if (isBlank(content)) {
        if (model !== undefined || cells.length === 1)
          findings.push({
            kind: "lost formula",
            address: at(row),
            sentence:
              cells.length > 1
                ? say`${verbatim(at(row))}, ${cellNamed(name)}, has lost its formula: copy it from a neighbour in the column`
                : say`${verbatim(at(row))}, ${cellNamed(name)}, has lost its formula: take it from a newly inserted sheet`,
          });
        return;
      }
      findings.push({
        kind: "overwritten",
        address: at(row),
        sentence:
          cells.length > 1
            ? say`${verbatim(at(row))}, ${cellNamed(name)}, holds ${verbatim(quoted(content))} where a formula belongs: it was overwritten and follows no input any more; copy the formula from a neighbour in the column`
            : say`${verbatim(at(row))}, ${cellNamed(name)}, holds ${verbatim(quoted(content))} where a formula belongs: it was overwritten and follows no input any more; undo, or take the formula from a newly inserted sheet`,
      });
      return;
    }
    if (forms[row] !== usual && most > cells.length / 2)
      findings.push({
        kind: "unlike formula",
        address: at(row),
        sentence: say`${verbatim(at(row))}, ${cellNamed(name)}, has a formula unlike the others of its column: copy it from a neighbour, or say why`,
      });
  });
  return findings;
}

/** Constants in cells that a formula wants to fill: the formula then shows an error, and its row has no values. */
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
        address: cellAddress(box.row + row, box.col),
        sentence: say`${verbatim(cellAddress(box.row + row, box.col))}, ${cellNamed(name)}, holds ${verbatim(quoted(content))} where the formula of ${from ? verbatim(cellAddress(from.row + row, from.col)) : cellNamed(anchor)} puts its answer: clear it`,
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

/** Results that do not follow from the inputs. */
function differences(boxes: ReadonlyMap<string, Box>, { record, values }: SheetState): CellFinding[] {
  return differing(record).flatMap(({ name, load, sentence }) => {
    const box = boxes.get(name);
    if (!box) return [];
    const address = cellAddress(box.row + (load === undefined ? 0 : rowOfLoad(values, load)), box.col);
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
      const row = box.row + index;
      if (isBlank(value) || (kind !== "input" && isBlank(contents[name]?.[index]?.[0]))) return;
      const found = { name, address: cellAddress(row, box.col) };
      if (rows.has(row) && !holds.has(`r${row}`)) holds.set(`r${row}`, found);
      if (cols.has(box.col) && !holds.has(`c${box.col}`)) holds.set(`c${box.col}`, found);
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
  const formulas = WORKED.flatMap(({ name }): CellFinding[] => {
    const box = boxes.get(name);
    if (!box || !(name in state.contents) || SPILLED.has(name)) return [];
    if (name !== SPREAD) return formulaFindings(name, box, state);
    const first = { ...state, contents: { [name]: state.contents[name].slice(0, 1) } };
    return formulaFindings(name, box, first);
  });
  const faults = state.record.faults
    .filter(({ kind }) => kind !== "error")
    .flatMap(({ name, row, sentence }): CellFinding[] => {
      const box = boxes.get(name);
      if (!box) return [];
      const address = cellAddress(box.row + (row ?? 1) - 1, box.col);
      return [{ kind: "cell", address, sentence: say`${verbatim(address)}, ${sentence}` }];
    });
  const seen = new Set<string>();
  return [
    ...formulas,
    ...wayFindings(boxes, state),
    ...differences(boxes, state),
    ...faults,
    ...hiddenFindings(boxes, state),
  ].filter(({ address }) => !seen.has(address) && seen.add(address));
}
