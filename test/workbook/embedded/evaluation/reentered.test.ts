/** Entering the formulas of a sheet again calculates that sheet, and what reads it, but no other sheet. */
import "../engine-in-node";
import { EmbeddedPort, newWorkbook } from "../../../../src/workbook/embedded";
import type { SheetPlan } from "../../../../src/workbook/port";
import { counted } from "./sheets";

const plan = (name: string, ...formulas: string[]): SheetPlan => ({
  ...{ name, rows: 9, cols: 3, columnWidths: {}, merges: [], freezeRows: 0, names: {} },
  cells: formulas.map((formula, row) => ({ row, col: 0, kind: "result", formula })),
});

test("formulas of the sheet and of its readers are calculated once, those of other sheets are not", async () => {
  const port = new EmbeddedPort(newWorkbook());
  await port.insertSheet(plan("One", "=COUNTED(1)", "=COUNTED(2)", "=NONE.SUCH(A1)"));
  await port.insertSheet(plan("Reader", "=COUNTED(One!A1)"));
  await port.insertSheet(plan("Other", "=COUNTED(3)", "=COUNTED(4)"));
  let done: Promise<unknown> | undefined;
  // The work is done before its promise is.
  const calls = counted(() => (done = port.reenterFormulas("One")));
  expect(await done).toEqual({ found: 1, left: 1 });
  expect(calls).toBe(3);
  const blank = await port.insertSheet(plan("Blank"));
  expect(await port.reenterFormulas(blank)).toEqual({ found: 0, left: 0 });
});
