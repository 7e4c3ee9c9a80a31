/** The unit of readings: divisions of a dial, or lengths where the dial factor is 1 in the unit of the sheet. */
import { unitOf, unitText, formatOf, type System } from "../../src/specification/measures";
import { partFor } from "../../src/workbook/look/number-format";
import { lengthOfReadings } from "../../src/record/reading-unit";
import type { TestRecord } from "../../src/record/record";

/** A record whose dial factor, in the unit of the sheet, has this size in mm. */
const withFactor = (
  mm: number | undefined,
  length_unit: string | undefined,
): Pick<TestRecord, "numbers" | "words"> => ({
  numbers: mm === undefined ? {} : { dial_factor: mm },
  words: length_unit === undefined ? {} : { length_unit },
});

test.each([
  [0.002, "mm", undefined],
  [1, "mm", "mm"],
  [25.4, "in", "in"],
  [0.00254, "in", undefined],
  [10, "cm", "cm"],
  [25.4, "mm", undefined],
  [1, undefined, "mm"],
  [undefined, "mm", undefined],
])("a division of %s mm on a sheet in %s: %s", (mm, unit, expected) =>
  expect(lengthOfReadings(withFactor(mm, unit))).toBe(expected),
);

test("the sheet and the comparison by hand write the same unit beside a reading", () => {
  expect(unitOf("reading")).toEqual({ formula: '=IF({dial_factor}=1,{length_unit},"div")' });
  const under = (factor: string) => unitText("reading", (cell) => (cell === "dial_factor" ? factor : "in"));
  expect([under("1"), under("0.0001"), under("")]).toEqual(["in", "div", "div"]);
});

test.each<[System, number, string]>([
  ["SI", 1266.95, "0.0"],
  ["SI", 12.345, "0.0##"],
  ["US", 528.24, "0.0"],
  ["US", 25.401, "0.0##"],
  ["US", 0.05282, "0.0####"],
])("on an %s sheet the level %d is shown as %s", (system, level, expected) =>
  expect(partFor(formatOf("drawn", system) ?? "", level)).toBe(expected),
);
