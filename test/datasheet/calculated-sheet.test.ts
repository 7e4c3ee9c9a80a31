/** The tests calculate a sheet from its contents alone: the values are those of the sheet that is inserted. */
import "../workbook/embedded/engine-in-node";
import { blankSheet, demoSheet, type System } from "../../src/datasheet";
import { EmbeddedPort, newWorkbook } from "../../src/workbook/embedded";
import type { SheetPlan } from "../../src/workbook/port";
import { calculateNow, cellsOf } from "./calculated-sheet";

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
  60_000,
);
