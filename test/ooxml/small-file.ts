/** A small workbook, saved as from the page, with one of everything that the rules examine. */
import "../workbook/embedded/engine-in-node";
import { EmbeddedPort, openXlsx, saveXlsx } from "../../src/workbook/embedded";
import type { Box, CellPlan, SheetPlan } from "../../src/workbook/port";
import { foreignFile } from "./files/foreign-file";

const box = (row: number, col: number, rows = 1, cols = 1): Box => ({ row, col, rows, cols });

const cells: CellPlan[] = [
  { row: 0, col: 0, kind: "title", value: "Small" },
  { row: 1, col: 0, kind: "input", value: 1, note: "a number" },
  { row: 2, col: 0, kind: "input", value: 10, note: "another" },
  { row: 3, col: 0, kind: "input", choices: ["rise", "fall"] },
  { row: 1, col: 1, kind: "result", formula: "={mass}*2" },
  { row: 2, col: 1, kind: "result", formula: "=TRANSPOSE(A2:A3)" },
  { row: 5, col: 0, kind: "result", formula: "={mass}*3" },
];
const axis = { label: "x", scale: "log", domain: [1, 100], reversed: false } as const;
const series = { x: { box: box(1, 0, 2) }, y: { box: box(1, 1, 2) } };

const SMALL: SheetPlan = {
  ...{ name: "Small", rows: 40, cols: 6, cells, columnWidths: {}, freezeRows: 1 },
  names: { mass: box(1, 0), number: box(2, 0) },
  merges: [box(5, 0, 1, 3), box(6, 0, 1, 3)],
  entries: [
    { box: box(1, 0), kind: "number", least: 0, message: "A mass." },
    { box: box(2, 0), kind: "date", least: 32_874, most: 73_050, message: "A day." },
  ],
  pages: [box(0, 0, 10, 3), box(10, 0, 10, 3), box(20, 0, 10, 3), box(20, 3, 10, 3)],
  isProtected: true,
  charts: [
    {
      title: "Chart",
      box: box(8, 1, 12, 4),
      x: axis,
      y: { ...axis, scale: "linear" },
      series: [
        { name: "a", style: "points", symbol: "open", ...series },
        { name: "b", style: "line", ...series },
      ],
    },
  ],
};

export async function smallFile(): Promise<Uint8Array> {
  const port = new EmbeddedPort(openXlsx(await foreignFile()).workbook);
  await port.insertSheet(SMALL);
  return saveXlsx(port.workbook);
}
