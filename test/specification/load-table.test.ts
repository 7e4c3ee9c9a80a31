import { blankSheet, demoSheet, fillSheet } from "../../src/datasheet";
import { LEAP } from "../../src/specification/readings";
import { STRESS_LEAPS } from "../../src/specification/sentences/of-remarks";
import { shownOnSheet, wordsOf } from "../../src/specification/text/words";
import { calculate } from "../datasheet/sheet-in-engine";

/** The remarks of the rows of a sheet with these stresses and no readings. */
async function remarks(stresses: readonly (number | undefined)[]): Promise<string[]> {
  const sheet = await calculate(fillSheet(blankSheet("SI", { loads: 8 }), { load_stress: stresses }));
  expect(sheet.errors).toEqual([]);
  return Array.from({ length: 8 }, (_, row) => String(sheet.value("load_remark", row)));
}

const TURNS_BACK =
  "the stress turns back under this load alone: correct it, or that of the load above, if it was mistyped";

const LEAPS = "check whether the stress was mistyped: it is more than 8 times that of the load before";
const NO_STRESS = "no stress, and the next load has one: enter it";

test.each([
  ["a load that falls alone on the way up", [25, 50, 20, 200, 400], ["", "", TURNS_BACK, "", "", "", "", ""]],
  ["a load that rises alone on the way down", [400, 800, 200, 500, 50], ["", "", "", TURNS_BACK, "", "", "", ""]],
  ["a second load that leaps (0.8, 16, 3.2, 6.4)", [0.8, 16, 3.2, 6.4], ["", LEAPS, "", "", "", "", "", ""]],
  ["a second load that leaps, the last one typed", [0.8, 16], ["", LEAPS, "", "", "", "", "", ""]],
  ["a seating load of 1 kPa before the others", [1, 12.5, 25], Array(8).fill("")],
  [
    "a second load that leaps, and a first without a stress",
    [undefined, 16, 3.2],
    [NO_STRESS, "", "", "", "", "", "", ""],
  ],
  ["loading, a loop of two steps, and unloading", [25, 100, 50, 25, 100, 200, 50, 12], Array(8).fill("")],
  ["a load left standing", [25, 50, 50, 100], Array(8).fill("")],
  [
    "a stress left out",
    [25, undefined, 100],
    ["", "no stress, and the next load has one: enter it", "", "", "", "", "", ""],
  ],
])("%s", async (_, stresses, expected) => expect(await remarks(stresses)).toEqual(expected));

test("a stress that is no number above 0 is called so, with what to do", async () => {
  const [below] = await remarks([-5, 50]);
  expect(below).toMatch(/^the stress is not a number greater than 0: enter the stress of the load$/);
});

test("ok stands alone in a remark, and not behind another one", async () => {
  const said = async (changed: Parameters<typeof fillSheet>[1]): Promise<string[]> => {
    const sheet = await calculate(fillSheet(demoSheet("SI"), changed));
    return Array.from({ length: 12 }, (_, row) => String(sheet.value("load_remark", row)));
  };
  const [whole, uncorrected] = [await said({}), await said({ apparatus_stress: Array(11).fill("") })];
  expect(whole).toContain("ok");
  expect(uncorrected).toContain("not corrected for the apparatus");
  expect([...whole, ...uncorrected].filter((text) => /; ok|; ?$|~/.test(text))).toEqual([]);
});

test("the remark on a stress that leaps names the number of times that counts, in both languages", () => {
  expect(shownOnSheet(wordsOf("en"), STRESS_LEAPS)).toContain(` ${LEAP} times `);
  expect(shownOnSheet(wordsOf("de"), STRESS_LEAPS)).toContain(` ${LEAP}-Fache `);
});
