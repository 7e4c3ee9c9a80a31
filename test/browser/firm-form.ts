/**
 * The form of another firm for the test of the demonstration, written by exceljs. It has other labels and other cells,
 * landscape format, the table of loads beside the specimen and the readings below, and no names. Its cells contain the
 * inputs of the demonstration.
 */
import ExcelJS from "exceljs";
import { demoSheet } from "../../src/datasheet";
import { FIELDS } from "../../src/specification/fields";
import { cellAddress } from "../../src/workbook/address";
import type { CellValue } from "../../src/workbook/port";

const DEMO = demoSheet("SI");

const CONTENT = new Map(DEMO.cells.map((cell) => [cellAddress(cell.row, cell.col), cell]));

/** The inputs of the demonstration in the cells of a name, from top to bottom. */
const typedInto = (name: string): CellValue[] => {
  const box = DEMO.names[name];
  if (!box) return [];
  const values = Array.from({ length: box.rows }, (_, index) => {
    const cell = CONTENT.get(cellAddress(box.row + index, box.col));
    return cell?.formula === undefined ? (cell?.value ?? "") : "";
  });
  while (values.at(-1) === "") values.pop();
  return values;
};

/** A name with the cells that a person selects for it. */
export interface Selected {
  readonly name: string;
  readonly address: string;
}

export interface FirmForm {
  readonly file: Buffer;
  readonly sheet: string;
  /** The inputs, and the results that the form has cells for. */
  readonly cells: readonly Selected[];
  /** The columns with the readings of all loads, times and readings side by side. */
  readonly readings: string;
  /** A free cell with free cells to its right and below it. */
  readonly free: string;
}

/** The results that the form has a cell for. */
const SINGLE_RESULTS = ["void_ratio_initial", "water_content_initial", "preconsolidation_stress", "compression_index"];
const COLUMN_RESULTS = ["void_ratio_end", "cv_chosen", "volume_compressibility"];

export async function firmForm(): Promise<FirmForm> {
  const workbook = new ExcelJS.Workbook();
  const sheet = workbook.addWorksheet("Oedometer form", { pageSetup: { orientation: "landscape" } });
  const cells: Selected[] = [];
  const put = (row: number, col: number, value: CellValue): void => {
    if (value !== "") sheet.getCell(row + 1, col + 1).value = value;
  };
  put(0, 0, "Soils laboratory: oedometer, stepwise");

  const loads = typedInto("load_stress").length;
  const series = FIELDS.filter(({ name }) => /^(times|readings)_\d\d$/.test(name)).slice(0, 2 * loads);
  const isOfReadings = ({ name }: { readonly name: string }): boolean => /^(times|readings)_/.test(name);
  const isOfLoads = (name: string): boolean => DEMO.names[name]?.row === DEMO.names.load_stress?.row;

  // Columns B and D contain the specimen, one item in each row.
  let row = 2;
  const line = (name: string, values: readonly CellValue[], rows = 1): void => {
    put(row, 1, `No. ${row}`);
    values.forEach((value, index) => put(row + index, 3, value));
    const last = rows > 1 ? `:${cellAddress(row + rows - 1, 3)}` : "";
    cells.push({ name, address: `${cellAddress(row, 3)}${last}` });
    row += rows;
  };
  for (const field of FIELDS) {
    const values = typedInto(field.name);
    if (field.kind === "input" && values.length > 0 && !isOfReadings(field) && !isOfLoads(field.name))
      line(field.name, values, field.column ? Math.max(values.length, 2) : 1);
  }
  for (const name of SINGLE_RESULTS) {
    sheet.getCell(row + 1, 4).numFmt = "0.0000";
    line(name, []);
  }

  // The loads start at column G.
  const top = 5;
  const table = ["load_number", "load_stress", "load_started", "load_mark", "load_temperature", ...COLUMN_RESULTS];
  table
    .filter((name) => !["load_started", "load_mark", "load_temperature"].includes(name) || typedInto(name).length > 0)
    .forEach((name, index) => {
      const col = 6 + index;
      put(top - 1, col, `Col. ${index + 1}`);
      const values = name === "load_number" ? Array.from({ length: loads }, (_, load) => load + 1) : typedInto(name);
      values.slice(0, loads).forEach((value, down) => put(top + down, col, value));
      cells.push({ name, address: `${cellAddress(top, col)}:${cellAddress(top + loads - 1, col)}` });
    });

  // The readings stand below the loads.
  const first = top + loads + 6;
  const rows = Math.max(...series.map(({ name }) => typedInto(name).length)) + 2;
  series.forEach(({ name }, index) => typedInto(name).forEach((value, down) => put(first + down, 6 + index, value)));
  const readings = `${cellAddress(first, 6)}:${cellAddress(first + rows - 1, 6 + series.length - 1)}`;
  const free = cellAddress(top, 6 + series.length + 2);
  const file = Buffer.from((await workbook.xlsx.writeBuffer()) as ArrayBuffer);
  return { file, sheet: "Oedometer form", cells, readings, free };
}
