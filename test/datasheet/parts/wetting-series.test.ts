/** The sheet of a series of specimens, held against the function it calls. */
import { fillSheet, wettingSeries } from "../../../src/datasheet";
import { swellingPressure } from "../../../src/reduction/swelling-pressure";
import { checkPlan } from "../../../src/workbook/rules/plan-check";
import { calculate } from "../sheet-in-engine";

test.each(["SI", "US"] as const)("a blank series shows no error (%s)", async (system) => {
  const plan = wettingSeries(system);
  expect(() => checkPlan(plan)).not.toThrow();
  const sheet = await calculate(plan);
  expect(sheet.errors).toEqual([]);
  expect(sheet.value("series_pressure")).toBe("");
});

test("strains follow from the heights, and the pressure lies between the specimens around zero", async () => {
  const filled = fillSheet(wettingSeries("SI"), {
    series_specimen: ["a", "b", "c", "d"],
    series_stress: [25, 50, 100, 200],
    series_height_before: [20, 19.9, 19.8, 19.6],
    series_height_after: [20.8, 20.298, 19.7604, 19.012],
  });
  const sheet = await calculate(filled);
  const strains = [0, 1, 2, 3].map((row) => Number(sheet.value("series_strain", row)));
  [-0.04, -0.02, 0.002, 0.03].forEach((strain, row) => expect(strains[row]).toBeCloseTo(strain, 12));
  const held = swellingPressure([25, 50, 100, 200], strains, "zero strain");
  if (!held.ok) throw new Error("no pressure");
  expect(sheet.value("series_pressure")).toBeCloseTo(held.value.pressure, 9);
  expect([sheet.value("series_pressure_low"), sheet.value("series_pressure_high")]).toEqual([50, 100]);
  expect([0, 3].map((row) => sheet.value("series_movement", row))).toEqual(["swelled", "compressed"]);
});

test("heights typed the wrong way round give a refusal that asks for the signs", async () => {
  const sheet = await calculate(
    fillSheet(wettingSeries("SI"), {
      series_stress: [25, 200],
      series_height_before: [20.8, 19],
      series_height_after: [20, 19.6],
    }),
  );
  expect(sheet.value("series_pressure")).toBe("#VALUE!");
  expect(sheet.errors.join()).toMatch(/change the signs if they were typed the other way/);
});
