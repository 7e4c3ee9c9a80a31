/** A German sheet with remarks shows no English: every text of its formulas is looked at, word by word. */
import { demoSheet, fillSheet, type SheetValues } from "../../../src/datasheet";
import { cellAddress } from "../../../src/workbook/address";
import type { SheetPlan } from "../../../src/workbook/port";
import { calculate } from "../sheet-in-engine";
import { englishLeft } from "./english-words";

/** "H12: text" of each cell that no person types and that shows an English word. */
async function left(plan: SheetPlan): Promise<string[]> {
  const { values } = await calculate(plan);
  const typed = new Set(plan.cells.filter(({ kind }) => kind === "input").map(({ row, col }) => cellAddress(row, col)));
  return [...values].flatMap(([address, value]) => {
    if (typed.has(address) || typeof value !== "string" || value.startsWith("#")) return [];
    return englishLeft([`${address}: ${value}`]);
  });
}

test("the words of an English sheet are seen", async () => {
  expect((await left(demoSheet("SI"))).length).toBeGreaterThan(100);
});

test.each<[string, SheetValues]>([
  ["as the demonstration is", {}],
  ["with times that cannot be used", { times_03: ["nass"], times_04: [-1], readings_05: ["x"] }],
  [
    "with picks that cannot be used",
    { pick_load: [5, 6], pick_of: ["Kriechast ab", "d100"], pick_after: ["nass", 9e9] },
  ],
  [
    "with a stage of wetting that collapses",
    { load_stress: [12.5, 25, 25], load_mark: ["", "", "Wässern"], swelling_method: "Rückbelastung" },
  ],
  ["with an in-situ stress beyond the loads", { in_situ_stress: 9e5 }],
  [
    "with a curve that has no virgin line",
    { load_stress: [12.5, 25, 50, "", "", "", "", "", "", "", "", "", "", "", "", ""] },
  ],
  ["with an impossible mass", { ring_and_dry: 1 }],
  ["with a void ratio that rises", { dial_sense: "fällt" }],
  ["with points at d100, and drawn", { curve_from: "d100", time_procedure: "gezeichnet" }],
  ["with values of the field curve", { design_curve: "Feldkurve", design_increase: 4e4 }],
])("%s", async (_, values) => {
  expect(await left(fillSheet(demoSheet("SI", "de"), values))).toEqual([]);
});
