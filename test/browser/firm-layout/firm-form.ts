/**
 * The form of another firm for the test of the demonstration, written by exceljs. It has other labels and other cells,
 * landscape format, the table of loads beside the specimen and the readings below, and no names. Its cells contain the
 * inputs of the demonstration.
 */
import ExcelJS from "exceljs";
import { demoSheet } from "../../../src/datasheet";
import { FIELDS } from "../../../src/specification/fields";
import { cellAddress } from "../../../src/workbook/address";
import type { CellValue } from "../../../src/workbook/port";

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
  /** The columns or rows with the readings of all loads, times and readings beside each other. */
  readonly readings: string;
  /** A free cell with free cells to its left, to its right and below it. */
  readonly free: string;
}

/** The results that the form has a cell for. */
const SINGLE_RESULTS = ["void_ratio_initial", "water_content_initial", "preconsolidation_stress", "compression_index"];
const COLUMN_RESULTS = ["void_ratio_end", "cv_chosen", "volume_compressibility"];

/**
 * The form of a firm. If its tables lie across, each load has a column, and each series of times or readings a row.
 */
export async function firmForm(lies: "down" | "across" = "down"): Promise<FirmForm> {
  const isAcross = lies === "across";
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

  /** A cell of a table, `line` being the number of the list and `index` the place in it. */
  const inTable = (top: number, left: number, line: number, index: number): [row: number, col: number] =>
    isAcross ? [top + line, left + index] : [top + index, left + line];
  const addressed = (from: readonly [number, number], to: readonly [number, number]): string =>
    `${cellAddress(...from)}:${cellAddress(...to)}`;

  // The loads start at column G.
  const top = 5;
  const table = ["load_number", "load_stress", "load_started", "load_mark", "load_temperature", ...COLUMN_RESULTS];
  const items = table.filter(
    (name) => !["load_started", "load_mark", "load_temperature"].includes(name) || typedInto(name).length > 0,
  );
  items.forEach((name, line) => {
    const at = (index: number) => inTable(top, 6, line, index);
    const [row, col] = at(0);
    put(...(isAcross ? ([row, col - 1] as const) : ([row - 1, col] as const)), `Item ${line + 1}`);
    const values = name === "load_number" ? Array.from({ length: loads }, (_, load) => load + 1) : typedInto(name);
    values.slice(0, loads).forEach((value, index) => put(...at(index), value));
    cells.push({ name, address: addressed(at(0), at(loads - 1)) });
  });

  // The readings stand below the loads.
  const first = top + (isAcross ? items.length + 2 : loads + 6);
  const length = Math.max(...series.map(({ name }) => typedInto(name).length)) + 2;
  const atReading = (line: number, index: number) => inTable(first, 6, line, index);
  series.forEach(({ name }, line) => typedInto(name).forEach((value, index) => put(...atReading(line, index), value)));
  const readings = addressed(atReading(0, 0), atReading(series.length - 1, length - 1));
  const free = isAcross ? cellAddress(first + series.length + 2, 6) : cellAddress(top, 6 + series.length + 2);
  const file = Buffer.from((await workbook.xlsx.writeBuffer()) as ArrayBuffer);
  return { file, sheet: "Oedometer form", cells, readings, free };
}
