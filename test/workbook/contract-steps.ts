/** Steps that several tests of the contract use. */
import { WorkbookError, type CellPlan, type CellValue, type SheetPlan } from "../../src/workbook/port";
import { box, DIFFERENCES, RING, type Bench, type Difference, type Host } from "./contract-bench";

/** Expects a sentence for a person, and a workbook in which nothing has changed. */
export async function refuses(bench: Bench, work: () => Promise<unknown>, says: RegExp): Promise<void> {
  const before = await bench.state();
  const failure: unknown = await work().then(
    () => "nothing was refused",
    (error: unknown) => error,
  );
  expect(failure).toBeInstanceOf(WorkbookError);
  expect((failure as WorkbookError).message).toMatch(says);
  expect((failure as WorkbookError).message).toMatch(/\.$/);
  expect(await bench.state()).toEqual(before);
}

/** A workbook with a blank sheet and the sheet "Ring". */
export async function withRing(host: Host, isProtected = false): Promise<Bench> {
  const bench = await host.open();
  await bench.port.insertSheet({ ...RING, isProtected });
  return bench;
}

type Side = readonly [name: string, work: (bench: Bench) => Promise<void>];

/** Runs the test for the side of a difference on which the host is. */
export function either(host: Host, difference: Difference, yes: Side, no: Side): void {
  const [name, work] = host.is[difference] ? yes : no;
  test(`${name}. ${DIFFERENCES[difference]}`, async () => work(await host.open()));
}

/** The sides of hosts that lack a feature: a test cannot use it. */
export const CANNOT_UNDO: Side = ["cannot be undone", async (bench) => expect(bench.undo).toBeUndefined()];
export const HAS_NO_PASSWORD: Side = [
  "no protection has a password",
  async (bench) => expect(bench.protectWithPassword).toBeUndefined(),
];
export const LOCKS_NO_SHEET: Side = [
  "no sheet is locked whole",
  async (bench) => expect(bench.lockSheet).toBeUndefined(),
];

/** A plan of one column of cells in column A; the name "cells" covers them all. */
export const columnPlan = (name: string, cells: readonly Omit<CellPlan, "row" | "col">[]): SheetPlan => ({
  name,
  rows: Math.max(cells.length, 1),
  cols: 2,
  cells: cells.map((cell, row) => ({ row, col: 0, ...cell })),
  names: { cells: box(0, 0, Math.max(cells.length, 1)) },
  columnWidths: {},
  merges: [],
  freezeRows: 0,
});

/** The first column behind a name. */
export const columnOf = async (bench: Bench, sheet: string, name: string): Promise<CellValue[] | undefined> =>
  (await bench.port.readNames(sheet, [name]))[name]?.map(([value]) => value);
