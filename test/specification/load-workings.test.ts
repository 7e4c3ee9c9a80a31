/** The workings of the remarks on the loads: what a remark asks of its times and readings, once in a cell of its own. */
import { blankSheet, fillSheet, workings, type SheetValues } from "../../src/datasheet";
import { boxesByName } from "../../src/record/places";
import { LOAD_WORKINGS } from "../../src/specification/load-table";
import { placedFormulas } from "../../src/specification/placed-formulas";
import { LONGEST_FORMULA } from "../../src/workbook/limits";
import { cellAddress } from "../../src/workbook/address";
import type { Box, SheetName, SheetPlan } from "../../src/workbook/port";
import { nth } from "../../src/reduction/numeric/lists";
import { calculate } from "../datasheet/sheet-in-engine";
import { random } from "../generators/time-curves";

const LOADS = 24;
const WORKINGS = LOAD_WORKINGS.columns.map(({ name }) => name);

/** The sheet with the remarks of a sheet that has no workings: each formula works everything out by itself. */
function withoutWorkings(plan: SheetPlan): SheetPlan {
  const places = new Map(Object.entries(plan.names).filter(([name]) => !WORKINGS.includes(name)));
  const formulas = new Map(
    placedFormulas("load_remark", { places })?.cells.map(({ row, col, formula }) => [cellAddress(row, col), formula]),
  );
  expect(formulas.size).toBe(LOADS);
  return {
    ...plan,
    cells: plan.cells.map((cell) => {
      const formula = formulas.get(cellAddress(cell.row, cell.col));
      return formula === undefined ? cell : { ...cell, formula };
    }),
  };
}

/** The faults that a load may have in its times and readings, besides none. */
const FAULTS = [
  "none",
  "early",
  "outside",
  "wrong reading",
  "seconds",
  "hours",
  "day",
  "text",
  "blank",
  "one",
] as const;

/** A test with a fault in most loads, in rows drawn by chance. */
function randomTest(seed: number): SheetValues {
  const { uniform } = random(seed);
  const chance = (share: number) => uniform(0, 1) < share;
  const row = () => Math.floor(uniform(0, 8));
  const values: Record<string, SheetValues[string]> = {
    ...{ zero_reading: 0, dial_factor: 0.002, initial_height: 20, ring_mass: 60, ring_and_dry: 140, diameter: 63.5 },
    ...{ specific_gravity: 2.7, ring_and_wet_before: 180, ring_and_wet_after: 175 },
  };
  const stresses = Array.from({ length: LOADS }, (_, index) => (chance(0.15) ? "" : 10 * 1.3 ** index));
  values.load_stress = chance(0.5) ? stresses.map((stress, at) => (at === 1 ? nth(stresses, 0) : stress)) : stresses;
  values.load_started = stresses.map((_, index) => (chance(0.3) ? "" : 48_000 + index + (chance(0.2) ? -3 : 0)));
  for (let load = 1; load <= LOADS; load++) {
    const fault = nth(FAULTS, load % FAULTS.length);
    const factor = fault === "seconds" ? 60 : fault === "hours" ? 1 / 60 : 1;
    const from = fault === "day" ? 540 : 0;
    const times: (number | string)[] = [0.1, 0.5, 1, 4, 15, 60, 240, 1440].map((time) => time * factor + from);
    const readings: number[] = times.map((_, index) => 20 * load + index * (chance(0.1) ? -20 : 2));
    if (fault === "early") times[row()] = -2.5;
    if (fault === "outside") times[row()] = 1e9;
    if (fault === "wrong reading") readings[row()] = chance(0.5) ? -1e13 : 1e13;
    if (fault === "text") times[2] = "1 min";
    const name = String(load).padStart(2, "0");
    const rows = fault === "blank" ? 0 : fault === "one" ? 1 : times.length;
    values[`times_${name}`] = Array.from({ length: 15 }, (_, index) => (index < rows ? nth(times, index) : ""));
    values[`readings_${name}`] = readings.slice(0, rows);
  }
  return values;
}

test.each([11, 12])("a sheet without the workings has the same remarks, seed %d", async (seed) => {
  const plan = fillSheet(blankSheet("SI", { loads: LOADS }), randomTest(seed));
  const [sheet, alone] = [await calculate(plan), await calculate(withoutWorkings(plan))];
  const remarks = (of: typeof sheet) => Array.from({ length: LOADS }, (_, row) => String(of.value("load_remark", row)));
  expect(remarks(sheet)).toEqual(remarks(alone));
  const said = remarks(sheet).join("");
  for (const part of ["is before the load", "of the times", "of the readings", "are seconds", "times of day"])
    expect(said).toContain(part);
});

test.each(["en", "de"] as const)(
  "without the workings the remark is no longer than a formula may be, %s",
  (language) => {
    const places = new Map(
      Object.entries(blankSheet("SI", { language }).names).filter(([name]) => !WORKINGS.includes(name)),
    );
    const cell = placedFormulas("load_remark", { places, language })?.cells.at(-1);
    const formula = cell?.formula.replace(/[{}]/g, "") ?? "";
    const cells = formula.match(/\$?[A-Z]{1,3}\$?\d+/g) ?? [];
    expect(cells.length).toBeGreaterThan(100);
    // On a firm's sheet the addresses may have two characters more.
    expect(formula.length + 2 * cells.length).toBeLessThanOrEqual(LONGEST_FORMULA);
  },
);

test("a remark that is too long for a cell without the workings waits for them, and they are laid out with it", () => {
  // A firm's sheet far from A1, where an address has more characters.
  const far = (box: Box): Box => ({ ...box, row: box.row + 900_000, col: box.col + 1000 });
  const names = Object.entries(blankSheet("SI", { language: "de" }).names).map(([name, box]): SheetName => {
    return { name, scope: "sheet", place: far(box) };
  });
  const without = names.filter(({ name }) => !WORKINGS.includes(name));
  const layout = (of: readonly SheetName[]) => ({ language: "de" as const, places: boxesByName(of) });
  expect(placedFormulas("load_remark", layout(names))?.lacks).toEqual([]);
  expect(new Set(placedFormulas("load_remark", layout(without))?.lacks)).toEqual(new Set(WORKINGS));
  const laidOut = workings(without, { sheet_language: [["Deutsch"]] }, far({ row: 0, col: 300, rows: 1, cols: 1 }));
  expect(laidOut.namings.map(({ name }) => name)).toEqual(WORKINGS);
  expect(laidOut.labels.map(({ value }) => value)).toContain("Ablesungen der Laststufe");
});

test("the remarks of all loads are one formula but for its cells", () => {
  const plan = blankSheet("SI", { loads: LOADS });
  const { row, col } = plan.names.load_remark;
  const formulas = plan.cells.flatMap((cell) => (cell.col === col && cell.row >= row && cell.formula ? [cell] : []));
  const forms = formulas.slice(0, LOADS).map(({ formula = "" }) => formula.replace(/\$?[A-Z]{1,3}\$?\d+/g, "#"));
  expect(new Set(forms).size).toBe(1);
  expect(forms[0]).toContain("COUNT(");
});
