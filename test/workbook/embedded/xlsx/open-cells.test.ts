/** Cells of a protected sheet that are open to entries: they are open after the sheet was saved and opened again, and no other cell is. */
import "../engine-in-node";
import { blankSheet } from "../../../../src/datasheet";
import { templateBytes } from "../../../../src/datasheet/templates";
import { openXlsx, saveXlsx, type OpenWorkbook } from "../../../../src/workbook/embedded";
import { mayWrite, protectionOf } from "../../../../src/workbook/embedded/protection";
import { cellAddress } from "../../../../src/workbook/address";
import type { SheetPlan } from "../../../../src/workbook/port";
import { opened } from "../opened";
import { fileOf, textsOf } from "./base-file";

/** The addresses of the open cells of the last sheet, among its first columns and rows. */
function openCells({ model }: OpenWorkbook, cols: number, rows: number): Set<string> {
  const { getters } = model;
  const protection = protectionOf(model, getters.getSheetIds().at(-1)!);
  expect(protection.on).toBe(true);
  const found = new Set<string>();
  for (let row = 0; row < rows; row++)
    for (let col = 0; col < cols; col++) if (mayWrite(protection, col, row)) found.add(cellAddress(row, col));
  return found;
}

const PLAIN: Omit<SheetPlan, "name" | "cells"> = {
  ...{ rows: 12, cols: 60, columnWidths: {}, merges: [], freezeRows: 0, names: {}, isProtected: true },
};

const SHEETS: Readonly<Record<string, SheetPlan>> = {
  "a data sheet, with its readings beside and below the picks": blankSheet("SI"),
  "wide open rows beside locked cells": {
    ...{ ...PLAIN, name: "Wide", open: [{ row: 4, col: 2, rows: 5, cols: 50 }] },
    cells: [{ row: 5, col: 55, kind: "label", value: "locked" }],
  },
  "a few open columns without a look": {
    ...{ ...PLAIN, name: "Narrow", open: [{ row: 4, col: 2, rows: 5, cols: 3 }] },
    cells: [{ row: 5, col: 8, kind: "label", value: "locked" }],
  },
};

/** A workbook of each sheet, and its first file: more than one test looks at them, and none changes them. */
const madeOf = new Map<SheetPlan, Promise<{ workbook: OpenWorkbook; bytes: Uint8Array; again: OpenWorkbook }>>();

function savedOnce(plan: SheetPlan) {
  const make = async () => {
    const { workbook } = (await opened(plan)).port;
    const bytes = await saveXlsx(workbook);
    return { workbook, bytes, again: openXlsx(bytes).workbook };
  };
  const made = madeOf.get(plan) ?? make();
  madeOf.set(plan, made);
  return made;
}

afterAll(() => madeOf.clear());

test.each(Object.entries(SHEETS))("%s", async (_, plan) => {
  const { workbook, again } = await savedOnce(plan);
  // A row that holds nothing but open cells is open to its end: up to the last open column it is compared.
  const cols = Math.max(...(plan.open ?? []).map(({ col, cols: wide }) => col + wide));
  const wanted = openCells(workbook, cols, plan.rows);
  expect(wanted.size).toBeGreaterThan(10);
  expect([...openCells(again, cols, plan.rows)].sort()).toEqual([...wanted].sort());
});

/** The cells of the last sheet as they stand in the file, each with its style, and the length of all of its rows. */
function inFile(bytes: Uint8Array): { cells: Set<string>; length: number } {
  const sheets = Object.entries(textsOf(bytes)).filter(([path]) => /^xl\/worksheets\/sheet\d+\.xml$/.test(path));
  const rows = /<sheetData>.*<\/sheetData>/s.exec(sheets.sort().at(-1)![1])![0];
  return { cells: new Set(rows.match(/(?<=<c )r="[A-Z]+\d+"(?: s="\d+")?/g)), length: rows.length };
}

test.each(Object.entries(SHEETS))("saved and opened three times, the file has no more cells: %s", async (_, plan) => {
  const { bytes, again } = await savedOnce(plan);
  const secondBytes = await saveXlsx(again);
  const thirdBytes = await saveXlsx(openXlsx(secondBytes).workbook);
  const [first, second, third] = [bytes, secondBytes, thirdBytes].map(inFile);
  expect(first!.cells.size).toBeGreaterThan(2);
  const added = (later: typeof first): string[] => [...later!.cells].filter((cell) => !first!.cells.has(cell));
  expect([added(second), added(third)]).toEqual([[], []]);
  expect(third!.length).toBe(second!.length);
});

test("columns that a firm has unlocked as a whole are open, but for their locked cells", async () => {
  const { workbook } = (
    await opened({
      ...{ ...PLAIN, name: "Firm", cols: 8, open: [{ row: 4, col: 0, rows: 1, cols: 1 }] },
      cells: [{ row: 5, col: 2, kind: "label", value: "locked" }],
    })
  ).port;
  const texts = textsOf(await saveXlsx(workbook));
  const path = Object.keys(texts)
    .filter((one) => one.startsWith("xl/worksheets/sheet"))
    .sort()
    .at(-1)!;
  const unlocked = /<c r="A5" s="(\d+)"/.exec(texts[path]!)![1]!;
  const columns = `<cols><col min="3" max="3" width="9" style="${unlocked}"/><col min="4" max="4" width="9" style="${unlocked}"/></cols>`;
  const lockedRow = '<row r="9" s="0" customFormat="1"/></sheetData>';
  texts[path] = texts[path]!.replace(/<cols>.*<\/cols>/s, columns).replace("</sheetData>", lockedRow);
  const firm = openXlsx(fileOf(texts)).workbook;
  const rows = [1, 2, 3, 4, 5, 6, 7, 8, 10, 11, 12];
  const wanted = ["A5", ...rows.flatMap((row) => (row === 6 ? ["D6"] : [`C${row}`, `D${row}`]))].sort();
  expect([...openCells(firm, 8, 12)].sort()).toEqual(wanted);
  const again = openXlsx(await saveXlsx(firm)).workbook;
  expect([...openCells(again, 8, 12)].sort()).toEqual(wanted);
});

test("in a row that holds something, only its open cells are open, up to the last column that is used", async () => {
  const { again } = await savedOnce(SHEETS["wide open rows beside locked cells"]!);
  const open = openCells(again, 60, 12);
  expect([open.has("C6"), open.has("AZ6"), open.has("BA6"), open.has("BC6"), open.has("B6")]).toEqual([
    ...[true, true],
    ...[false, false, false],
  ]);
});

test("a template has the cells of its readings open in every row", async () => {
  const plan = blankSheet("SI");
  const { workbook } = openXlsx(await templateBytes("SI"));
  const open = openCells(workbook, 60, plan.rows);
  const { times_01: box } = plan.names;
  const locked = Array.from({ length: box!.rows }, (_, row) => cellAddress(box!.row + row, box!.col)).filter(
    (address) => !open.has(address),
  );
  expect(locked).toEqual([]);
});
