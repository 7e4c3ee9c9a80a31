/** Damage to the cells of a sheet, done to the demonstration in the embedded engine, is found and named by address. */
import { demoSheet } from "../../src/datasheet";
import { cellAddress } from "../../src/workbook/address";
import "../workbook/embedded/engine-in-node";
import type { EmbeddedPort } from "../../src/workbook/embedded";
import type { SheetPlan } from "../../src/workbook/port";
import { opened } from "../workbook/embedded/opened";
import { integrityOfSheet } from "./integrity-of-sheet";

let port: EmbeddedPort;
let sheet: string;
let plan: SheetPlan;

const demonstration = async () => {
  plan = demoSheet("SI");
  ({ port, sheet } = await opened(plan));
};

const look = () => integrityOfSheet(port, sheet);

/** Types over a cell as a person would on a sheet without protection. */
function type(name: string, row: number, content: string): string {
  const { model } = port.workbook;
  const box = plan.names[name];
  const sheetId = model.getters.getActiveSheetId();
  model.dispatch("UPDATE_CELL", { sheetId, col: box.col, row: box.row + row, content });
  return cellAddress(box.row + row, box.col);
}

describe("the demonstration", () => {
  beforeEach(demonstration);

  test("gives no finding", async () => expect(await look()).toEqual([]));

  test("a formula overwritten by a constant is named by its cell, alone and in a column", async () => {
    await port.protect(sheet, false);
    const one = type("void_ratio_initial", 0, "1.234");
    const two = type("strain_end", 3, "0.05");
    const three = type("load_last_time", 2, "99");
    const found = await look();
    expect(found.filter(({ kind }) => kind === "overwritten").map(({ address }) => address)).toEqual([one, two, three]);
    expect(found[0].sentence).toMatch(
      new RegExp(`^${one}, Void ratio, initial e0 \\(void_ratio_initial\\), holds 1.234 where a formula belongs`),
    );
  });

  test("a lost formula is found, and a formula unlike the others of its column", async () => {
    await port.protect(sheet, false);
    const lost = type("height_end", 2, "");
    const unlike = type("void_ratio_end", 4, "=1.1+0.1");
    const found = await look();
    expect(found.find(({ address }) => address === lost)?.kind).toBe("lost formula");
    expect(found.find(({ address }) => address === unlike)?.kind).toBe("unlike formula");
  });

  test("a result from another formula is found when it does not follow from the inputs", async () => {
    await port.protect(sheet, false);
    const cell = type("solids_height", 0, "=10.5");
    const found = (await look()).find(({ address }) => address === cell);
    expect(found?.kind).toBe("differs");
    expect(found?.sentence).toMatch(/\(solids_height\) on the sheet is 10.5 mm, recalculated/);
  });

  test("a constant in the way of a formula that fills a row is found", async () => {
    await port.protect(sheet, false);
    const cell = type("log_t50", 2, "3.3");
    const found = (await look()).find(({ address }) => address === cell);
    expect(found?.kind).toBe("in the way");
  });

  test("text, a number stored as text and a date are found in cells for numbers", async () => {
    const text = type("ring_mass", 0, "'61.2");
    const date = type("specific_gravity", 0, "45000");
    const reading = type("readings_02", 4, "'n/a");
    const found = await look();
    expect(found.find(({ address }) => address === text)?.sentence).toMatch(/stored as text: re-enter it as a number/);
    expect(found.find(({ address }) => address === date)?.sentence).toMatch(/looks like a date \(2023-03-15\)/);
    expect(found.find(({ address }) => address === reading)?.sentence).toMatch(/row 5, holds "n\/a"/);
  });

  test("hidden rows and columns with data are named, those without are not", async () => {
    const { model } = port.workbook;
    const sheetId = model.getters.getActiveSheetId();
    const loads = plan.names.load_stress;
    const hide = (dimension: "ROW" | "COL", elements: number[]) =>
      model.dispatch("HIDE_COLUMNS_ROWS", { sheetId, dimension, elements });
    hide("ROW", [loads.row + 2, loads.row + 3, loads.row + 23]);
    const found = (await look()).filter(({ kind }) => kind === "hidden");
    expect(found.map(({ address }) => address)).toEqual([`${loads.row + 3}:${loads.row + 4}`]);
    expect(found[0].sentence).toMatch(/rows \d+ to \d+ are hidden and in use/);
  });
});
