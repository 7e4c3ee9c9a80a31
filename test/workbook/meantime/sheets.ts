/** The small sheets on which the operations work that somebody else disturbs. */
import { ANSWER_NAMES } from "../../../src/checks/answers";
import { COMPARISON_NAMES } from "../../../src/book/comparison";
import { fileSheet, type FileRecord } from "../../../src/exchange/logger/file-sheet";
import { READ_NAMES } from "../../../src/pane/screens/register/source";
import { cellNames, cellsToAdopt } from "../../../src/pane/screens/results/adopt-rows";
import { PICK_COLUMNS } from "../../../src/record/picks";
import { CURVE_NAMES } from "../../../src/summary/charts";
import { columnLetters } from "../../../src/workbook/address";
import type { CellValue, SheetPlan } from "../../../src/workbook/port";

const ROWS = 6;

/** A sheet on which each name is a column of inputs, from row 2 on. */
function columnsOf(name: string, columns: Readonly<Record<string, readonly (CellValue | null)[]>>): SheetPlan {
  const entries = Object.entries(columns);
  const cells = entries.flatMap(([, values], col) =>
    Array.from({ length: ROWS }, (_, row) => {
      const value = values[row] ?? undefined;
      return { row: row + 1, col, kind: "input" as const, ...(value !== undefined && { value }) };
    }),
  );
  return {
    ...{ name, rows: ROWS + 3, cols: entries.length, columnWidths: {}, merges: [], freezeRows: 0 },
    names: Object.fromEntries(entries.map(([of], col) => [of, { row: 1, col, rows: ROWS, cols: 1 }])),
    cells: [{ row: 0, col: 0, kind: "title", value: name }, ...cells],
  };
}

/** The address of the cell of a name of a sheet, in the row counted from 1. */
export function cellOf(plan: SheetPlan, name: string, row = 1): string {
  const box = plan.names[name]!;
  return `${columnLetters(box.col)}${box.row + row}`;
}

/** The quantity that is adopted, and the cells that adopt it. */
export const ADOPTED = "preconsolidation_stress";
export const adoptedBy = (by: string) => cellsToAdopt(ADOPTED, { value: 150, reason: "aged", by, day: 46_355 });
export const ADOPTED_ROW = adoptedBy("AB").adopted_value!.length;

const COLUMNS: Readonly<Record<string, readonly CellValue[]>> = {
  times_01: [0, 0.1],
  readings_01: [1, 2],
  load_started: [46_000],
  lever_ratio: [10],
  frame_number: ["F 1"],
  length_unit: ["mm"],
  ...Object.fromEntries(PICK_COLUMNS.map((name, col) => [name, [[1, "t50", 2, 3, "why", "AB", 46_000][col] ?? ""]])),
};
const BLANK = Object.fromEntries(cellNames(ADOPTED).map((name) => [name, []]));

/** A sheet with those cells of a test that the operations need. */
export const DATA = columnsOf("Data", { ...COLUMNS, ...BLANK });
/** The same with an adopted value. */
export const WITH_ADOPTED = columnsOf("Data", { ...COLUMNS, ...adoptedBy("AB") });
/** A test with a compression curve. */
export const WITH_CURVE = columnsOf("Data", {
  ...Object.fromEntries(CURVE_NAMES.map((name) => [name, [100, 200, 400]])),
  times_01: [0, 0.1],
  stress_unit: ["kPa"],
});
export const NOTES = columnsOf("Notes", { own: ["a person's own"] });
export const both = (): SheetPlan[] => [NOTES, DATA];

/** A sheet in a firm's own layout: a result has cells and no formula. */
export const FIRM = columnsOf("Data", { ring_mass: [70], ring_and_dry: [190], dry_mass: [] });
/** The same without cells for the result; columns D and E are free. */
export const UNNAMED: SheetPlan = {
  ...columnsOf("Data", { ring_mass: [70], ring_and_dry: [190], free: [], times: [0, 1], readings: [2, 3] }),
  names: { ring_mass: { row: 1, col: 0, rows: 1, cols: 1 }, ring_and_dry: { row: 1, col: 1, rows: 1, cols: 1 } },
};
/** A sheet with a formula whose function was not known when it was typed. */
export const UNBOUND: SheetPlan = {
  ...DATA,
  cells: [...DATA.cells, { row: ROWS + 1, col: 0, kind: "result", formula: "=_xldudf_CLAY_STRAIN({lever_ratio})" }],
};
export const UNBOUND_CELL = `A${ROWS + 2}`;

export const ANSWERS = columnsOf("Answers", Object.fromEntries(ANSWER_NAMES.map((name) => [name, ["Data"]])));
export const COMPARED = columnsOf("Compared", Object.fromEntries(COMPARISON_NAMES.map((name) => [name, ["Data"]])));

const REGISTERED: Readonly<Record<string, CellValue>> = {
  ...{ register_kind: "frame", register_number: "F 1", register_lever_ratio: 11 },
  ...{ register_length_unit: "mm", register_stress_unit: "kPa" },
};
export const REGISTER = columnsOf(
  "Register",
  Object.fromEntries(READ_NAMES.map((name) => [name, name in REGISTERED ? [REGISTERED[name]!] : []])),
);

/** The record of a logger's file of three lines. */
export const RECORD_OF_FILE: FileRecord = {
  ...{ dataSheet: "Data", file: "a.csv", sha256: "0f", hashOf: "the 9 bytes of the file", encoding: "UTF-8" },
  ...{ apparatus: "", remarks: [], loads: [], layoutWords: [], lines: 3 },
  // The layout and what was read only travel through these tests.
  ...{ layout: {} as never, read: {} as never },
};
export const LINES = ["0;1,5", "1;1,6", "2;1,7"];

/** The sheet that keeps two lines of the file. */
export function keptSheet(): SheetPlan {
  const plan = fileSheet({ ...RECORD_OF_FILE, lines: 2 });
  const lines = plan.names.logger_lines_001!;
  const at = (row: number, col: number, value: CellValue) => ({ row, col, kind: "input" as const, value });
  const kept = plan.names.logger_kept!;
  const isOther = ({ row, col }: { row: number; col: number }) => row !== kept.row || col !== kept.col;
  const cells = [
    at(kept.row, kept.col, "all 2 lines"),
    ...LINES.slice(0, 2).map((line, row) => at(lines.row + row, lines.col, line)),
  ];
  return { ...plan, name: "Kept", cells: [...plan.cells.filter(isOther), ...cells] };
}
