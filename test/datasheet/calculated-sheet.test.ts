/**
 * The tests calculate a sheet from its contents alone, and a sheet with some other entries by typing them: the values are those of the sheet
 * that is inserted.
 */
import "../workbook/embedded/engine-in-node";
import { blankSheet, demoSheet, fillSheet, type SheetValues, type System } from "../../src/datasheet";
import { EmbeddedPort, newWorkbook } from "../../src/workbook/embedded";
import type { SheetPlan } from "../../src/workbook/port";
import { calculateAnew, calculateNow, cellsOf } from "./calculated-sheet";

const PLANS: readonly (readonly [string, (system: System) => SheetPlan])[] = [
  ["the demonstration", demoSheet],
  ["a blank data sheet", blankSheet],
];

test.each(PLANS.flatMap(([name, plan]) => (["SI", "US"] as const).map((system) => [name, system, plan] as const)))(
  "%s, %s: calculated without its look, every cell has the value or the error that it has when it is inserted",
  async (_, system, planOf) => {
    const plan = planOf(system);
    const calculated = await calculateNow(plan, null);
    const port = new EmbeddedPort(newWorkbook());
    await port.insertSheet(plan);
    expect(calculated).toEqual(cellsOf(port.workbook.model, plan));
    expect(calculated.values.length).toBeGreaterThan(500);
  },
);

const TYPED: readonly SheetValues[] = [
  {},
  { ring_and_dry: 300, specific_gravity: "abc", drainage: "nonsense" },
  { load_stress: [12.5, 25, 6, 100], load_mark: ["", "", "wetting"], times_03: [-1] },
  { pick_load: [3, 30], pick_of: ["cv by", "d100"], pick_after: ["log", 2000], readings_16: Array(15).fill(9000) },
  {},
];

test("a sheet with other entries, typed one after another, has the values and errors of the sheet that is calculated from the start", async () => {
  const contents = new Set<string>();
  for (const values of TYPED) {
    const plan = fillSheet(demoSheet("SI"), values);
    const typed = await calculateNow(plan, null);
    expect(typed).toEqual(await calculateAnew(plan));
    contents.add(JSON.stringify(typed.values));
  }
  expect(contents.size).toBe(TYPED.length - 1);
});
