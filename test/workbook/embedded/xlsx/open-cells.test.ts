/** Cells of a protected sheet that are open to entries: they are open after the sheet was saved and opened again, and no other cell is. */
import "../engine-in-node";
import { blankSheet } from "../../../../src/datasheet";
import { templateBytes } from "../../../../src/datasheet/templates";
import { openXlsx, saveXlsx, type OpenWorkbook } from "../../../../src/workbook/embedded";
import { mayWrite, protectionOf } from "../../../../src/workbook/embedded/protection";
import { cellAddress } from "../../../../src/workbook/address";
import type { SheetPlan } from "../../../../src/workbook/port";
import { opened } from "../opened";

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

test.each(Object.entries(SHEETS))("%s", async (_, plan) => {
  const { workbook } = (await opened(plan)).port;
  // A row that holds nothing but open cells is open to its end: up to the last open column it is compared.
  const cols = Math.max(...(plan.open ?? []).map(({ col, cols: wide }) => col + wide));
  const wanted = openCells(workbook, cols, plan.rows);
  expect(wanted.size).toBeGreaterThan(10);
  const again = openXlsx(await saveXlsx(workbook)).workbook;
  expect([...openCells(again, cols, plan.rows)].sort()).toEqual([...wanted].sort());
});

test("in a row that holds something, only its open cells are open, up to the last column that is used", async () => {
  const { workbook } = (await opened(SHEETS["wide open rows beside locked cells"]!)).port;
  const again = openXlsx(await saveXlsx(workbook)).workbook;
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
