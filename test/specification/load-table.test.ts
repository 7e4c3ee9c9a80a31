import { blankSheet, fillSheet } from "../../src/datasheet";
import { calculate } from "../datasheet/sheet-in-engine";

/** The remarks of the rows of a sheet with these stresses and no readings. */
async function remarks(stresses: readonly (number | undefined)[]): Promise<string[]> {
  const sheet = await calculate(fillSheet(blankSheet("SI", { loads: 8 }), { load_stress: stresses }));
  expect(sheet.errors).toEqual([]);
  return Array.from({ length: 8 }, (_, row) => String(sheet.value("load_remark", row)));
}

const TURNS_BACK = "the stress turns back under this load alone: correct it if it was mistyped; ";

test.each([
  ["a load that falls alone on the way up", [25, 50, 20, 200, 400], ["", "", TURNS_BACK, "", "", "", "", ""]],
  ["a load that rises alone on the way down", [400, 800, 200, 500, 50], ["", "", "", TURNS_BACK, "", "", "", ""]],
  ["loading, a loop of two steps, and unloading", [25, 100, 50, 25, 100, 200, 50, 12], Array(8).fill("")],
  ["a load left standing", [25, 50, 50, 100], Array(8).fill("")],
  [
    "a stress left out",
    [25, undefined, 100],
    ["", "no stress, and the next load has one: enter it; ", "", "", "", "", "", ""],
  ],
])("%s", async (_, stresses, expected) => expect(await remarks(stresses)).toEqual(expected));
