import {
  APPARATUS_DEFLECTION,
  CONVERT_UNIT,
  DEFORMATION,
  LOAD_SCHEDULE,
  READING_TIMES,
  STRAIN,
  STRESS,
} from "../../src/functions/loading";
import { refusal } from "./refusal";

const asColumn = (cells: unknown[]): any[][] => cells.map((cell) => [cell]);

test("STRESS works in every unit of force, stress and length", () => {
  const kPa = STRESS(1000, 50);
  // 1 kN on 1963.5 mm2.
  expect(kPa).toBeCloseTo(509.296, 3);
  expect(STRESS(1, 5, "kN", "MPa", "cm")).toBeCloseTo(kPa / 1000, 12);
  expect(STRESS(1000 / 9.80665, 50, "kg")).toBeCloseTo(kPa, 9);
  expect(STRESS(1000 / 4.4482216152605, 50 / 25.4, "lbf", "psi", "in")).toBeCloseTo(kPa / 6.894757293168361, 9);
  expect(STRESS(100, 50, null, null, null, 10)).toBeCloseTo(kPa, 9);
  expect(STRESS(1000, 50, 0, 0, 0, 0)).toBe(kPa);
});

test("LOAD_SCHEDULE and READING_TIMES spill columns; blanks and zeros give the defaults", () => {
  expect(LOAD_SCHEDULE(50, 400)).toEqual([[50], [100], [200], [400]]);
  expect(LOAD_SCHEDULE(50, 400, 0, 0, 0)).toEqual(LOAD_SCHEDULE(50, 400, null, null, null));
  expect(LOAD_SCHEDULE(50, 400, 1, 100, 2).slice(-2)).toEqual([[200], [100]]);
  expect(READING_TIMES()).toHaveLength(14);
  expect(READING_TIMES(0, 0)).toEqual(READING_TIMES(null, null));
  expect(READING_TIMES(1440)[13]).toEqual([1440]);
});

describe("APPARATUS_DEFLECTION", () => {
  const stresses = asColumn([25, 50, 100, 200]);
  const deflections = asColumn([0.006, 0.011, 0.018, 0.026]);
  test("is exact at a calibrated stress, and interpolates on log stress between", () => {
    expect(APPARATUS_DEFLECTION(50, stresses, deflections)).toBe(0.011);
    expect(APPARATUS_DEFLECTION(Math.sqrt(5000), stresses, deflections)).toBeCloseTo(0.0145, 12);
  });
  test("refuses a stress beyond the calibration with #N/A, and a blank stress with #VALUE!", () => {
    expect(refusal(() => APPARATUS_DEFLECTION(201, stresses, deflections))).toMatch(/^#N\/A the stress 201 is above/);
    for (const blank of [null, 0])
      expect(refusal(() => APPARATUS_DEFLECTION(blank, stresses, deflections))).toMatch(/^#VALUE! the stress is blank/);
  });
  test("skips blank rows of the calibration, as null, empty text or 0", () => {
    for (const blank of [null, "", 0])
      expect(
        APPARATUS_DEFLECTION(70, asColumn([25, 50, 100, 200, blank]), asColumn([0.006, 0.011, 0.018, 0.026, blank])),
      ).toBe(APPARATUS_DEFLECTION(70, stresses, deflections));
  });
  test("refuses lengths that differ, and text", () => {
    expect(refusal(() => APPARATUS_DEFLECTION(50, stresses, asColumn([1, 2])))).toMatch(/have 4 cells and .* have 2/);
    expect(refusal(() => APPARATUS_DEFLECTION(50, asColumn([25, "fifty"]), asColumn([1, 2])))).toMatch(
      /row 2 of the calibration stresses holds the text "fifty"/,
    );
  });
});

test("STRAIN counts a blank deformation and a blank apparatus deflection as 0", () => {
  expect(STRAIN(1.27, 25.4, 0.127)).toBeCloseTo(0.045, 12);
  expect(STRAIN(1.27, 25.4, 0)).toBe(STRAIN(1.27, 25.4, null));
  expect(STRAIN(null, 25.4)).toBe(STRAIN(0, 25.4));
  expect(refusal(() => STRAIN(1, null))).toBe(refusal(() => STRAIN(1, 0)));
});

describe("DEFORMATION", () => {
  test("gives a column for a column and a row for a row", () => {
    expect(DEFORMATION(asColumn([100, 150]), 100, 0.01)).toEqual([[0], [0.5]]);
    expect(DEFORMATION([[100, 150]], 100, 0.01)).toEqual([[0, 0.5]]);
    expect(DEFORMATION([[150]], 100, 0.01)).toEqual([[0.5]]);
  });
  test("leaves a blank reading blank, as null, empty text or 0", () => {
    for (const blank of [null, "", 0])
      expect(DEFORMATION(asColumn([5, blank, 4.5]), 5, -1)).toEqual([[expect.closeTo(0)], [""], [0.5]]);
  });
  test("takes 1 for an omitted factor, and a negative factor for a dial that runs backwards", () => {
    expect(DEFORMATION([[4.5]], 5)).toEqual([[-0.5]]);
    expect(DEFORMATION([[4.5]], 5, -1)).toEqual([[0.5]]);
    expect(DEFORMATION([[4.5]], 5, 0)).toEqual(DEFORMATION([[4.5]], 5, null));
  });
  test("names a bad reading", () =>
    expect(refusal(() => DEFORMATION(asColumn([5, "4,5"]), 5))).toMatch(/row 2 of the readings holds the text "4,5"/));
});

test("CONVERT_UNIT", () => {
  expect(CONVERT_UNIT(2, "tsf", "ksf")).toBeCloseTo(4, 12);
  expect(CONVERT_UNIT(null, "in", "mm")).toBe(CONVERT_UNIT(0, "in", "mm"));
  expect(refusal(() => CONVERT_UNIT(1, "", "mm"))).toMatch(/unit to convert from is blank: enter a unit/);
  expect(refusal(() => CONVERT_UNIT(1, "in", "kPa"))).toMatch(/"kPa" does not measure what "in" measures/);
  expect(refusal(() => CONVERT_UNIT(1, "yd", "m"))).toMatch(/"yd" is not known/);
});
