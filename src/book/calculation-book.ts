/**
 * The calculation book of a test. Each number of the results and each number of a load has a line: the formula with the
 * numbers put in, and the result, from the values of the sheet in its units. A line for a value read off a construction
 * names the construction.
 */
import { rowOfLoad } from "../checks/integrity";
import type { NamedValues, TestRecord } from "../record/record";
import { reduced } from "../record/reduced-test";
import { decimalsOfLevels } from "../reduction/increment/level-decimals";
import { listed, say, type Message, type Value } from "../reduction/message";
import { nth } from "../reduction/numeric/lists";
import { unitNamed } from "../reduction/units";
import { FIELDS, type NamedField } from "../specification/fields";
import { LOAD_TABLE } from "../specification/load-table";
import { formatOf, unitCellOf, type Measure } from "../specification/measures";
import { unitOn } from "./comparison";
import { FORMULAS, FORMULA_UNITS, type Measured } from "./formulas";
import { inNumbers, working, type Units, type Worked } from "./line";
import { APPARATUS } from "./lines/apparatus";
import { CURVE } from "./lines/curve";
import { DESIGN } from "./lines/design";
import { LOAD, type LoadSheet } from "./lines/loads";
import type { Cell, Line, Lines, Sheet } from "./lines/sheet";
import { SPECIMEN } from "./lines/specimen";
import { WETTING } from "./lines/wetting";

export interface Entry {
  readonly name: string;
  /** Number of a load. */
  readonly load?: number;
  /** Row of the number in its column, from 0. */
  readonly row: number;
  /** The formula with its numbers, or the construction that the value was read off. */
  readonly said: Value;
  /** The result of the line, in the unit of the sheet; absent if the value is read off a construction. */
  readonly result?: number;
  /** The formula and the numbers of the line, if a formula gives it. */
  readonly worked?: Worked;
  /** The value that the sheet shows. */
  readonly value: number;
  readonly unit: string;
  /** Number format of the sheet. */
  readonly format?: string;
}

type Named = Pick<NamedField, "name" | "measure">;

/** The lines of the results. A test checks that every result of the sheet has one. */
const TEST: Lines = { ...SPECIMEN, ...APPARATUS, ...WETTING, ...CURVE, ...DESIGN };

/** The units of the sheet for the measures of a formula. */
function unitsOn(values: NamedValues, id: string): Units {
  const formula = FORMULAS.find((one) => one.id === id)!;
  const onSheet: Partial<Record<Measured, Measure>> = {
    length: "length",
    stress: "stress",
    cv: "cv",
    mv: "compressibility",
    conductivity: "conductivity",
    "mass density": "density",
    "unit weight": "density",
  };
  const units: Partial<Record<Measured, string>> = {};
  for (const measures of [...formula.arguments.map((one) => one.measures), formula.result]) {
    const measure = measures && onSheet[measures];
    const cell = measure && unitCellOf(measure);
    const typed = cell && String(values[cell]?.[0]?.[0] ?? "");
    // A unit that the formula does not know is ignored: the formula keeps its own unit.
    const known = measures && typed ? unitNamed(typed, FORMULA_UNITS[measures]) : undefined;
    if (measures && known) units[measures] = known;
  }
  return units;
}

export function calculationBook(record: TestRecord, values: NamedValues): Entry[] {
  const cell = (name: string, row = 0): Cell => {
    const value = values[name]?.[row]?.[0];
    return typeof value === "number" ? value : undefined;
  };
  /** A line of a formula; undefined if a number is missing or the reduction refuses. */
  const lineWith =
    (decimalsOfReadings?: number) =>
    (id: string, cells: readonly Cell[], after?: Message): Line => {
      const numbers = cells.filter((number) => number !== undefined);
      if (numbers.length < cells.length) return undefined;
      const formula = FORMULAS.find((one) => one.id === id)!;
      const least = formula.arguments.filter(({ fallback }) => fallback === undefined).length;
      if (numbers.length < least || numbers.length > formula.arguments.length) return undefined;
      const units = unitsOn(values, id);
      const found = working(formula, numbers, units, decimalsOfReadings);
      if (!found.ok) return undefined;
      const { text, result } = found.value;
      const formulaSaid = inNumbers(text);
      const said = after ? listed([formulaSaid, after]) : formulaSaid;
      return { said, result, worked: { formula: id, values: numbers, units, result } };
    };
  const book: Sheet = { record, values, reduced: reduced(record), cell, line: lineWith() };
  /** The lines of a load show its readings, and what was read off them, to the decimals of the readings and one more. */
  const lineOfLoad = (index: number): Sheet["line"] => {
    const cleaned = book.reduced.loads[index]?.increment.cleaned;
    return lineWith(cleaned && decimalsOfLevels(cleaned));
  };
  const system = values.length_unit?.[0]?.[0] === "in" ? "US" : "SI";
  const entry = ({ name, measure }: Named, row: number, found: Line, load?: number): Entry[] => {
    const value = cell(name, row);
    if (value === undefined) return [];
    const shown = found ?? { said: say`no working: one of its numbers is not on the sheet, or the method refused` };
    return [
      {
        name,
        ...(load === undefined ? {} : { load }),
        row,
        ...shown,
        value,
        unit: unitOn(values, measure),
        format: formatOf(measure, system),
      },
    ];
  };
  const ofTest = FIELDS.flatMap((field) => {
    const workedOut = TEST[field.name];
    return field.kind === "result" && !field.column && workedOut ? entry(field, 0, workedOut(book)) : [];
  });
  const rows = record.loads.map(({ number }) => rowOfLoad(values, number));
  const ofLoads = record.loads.flatMap(({ number }, index) => {
    const [before, row] = [rows[index - 1], nth(rows, index)];
    const sheet: LoadSheet = { ...book, line: lineOfLoad(index), row, before, index };
    return LOAD_TABLE.columns.flatMap((column) => {
      const workedOut = LOAD[column.name];
      return workedOut ? entry(column, row, workedOut(sheet), number) : [];
    });
  });
  return [...ofTest, ...ofLoads];
}
