/** What the page of the first ten minutes says about the worked demonstration is true. */
import { blankSheet, demoSheet } from "../../src/datasheet";
import { DEMONSTRATION } from "../../src/help/first-minutes";
import { calculate } from "../datasheet/sheet-in-engine";

test("the demonstration shows the numbers that the page names", async () => {
  const sheet = await calculate(demoSheet("SI"));
  for (const [name, text] of Object.entries(DEMONSTRATION)) {
    const decimals = text.split(".")[1]?.length ?? 0;
    expect([name, (sheet.value(name) as number).toFixed(decimals)]).toEqual([name, text]);
  }
}, 60_000);

test("the sheets have the names that the page names", () => {
  expect([blankSheet("SI").name, demoSheet("SI").name]).toEqual(["Consolidation test", "Demonstration"]);
});
