import fc from "../properties";
import { collapse, wettingStrain } from "../../src/reduction/wetting";
import { english, type Message } from "../../src/reduction/message";
import { inEnglish } from "../in-english";

const value = <T>(found: { ok: true; value: T } | { ok: false; reason: Message }): T => {
  if (!found.ok) throw new Error(english(found.reason));
  return found.value;
};

test("collapse is positive, swell negative; the height before wetting is the reference unless another is given", () => {
  expect(value(wettingStrain(20, 19))).toBeCloseTo(0.05, 12);
  expect(value(wettingStrain(20, 21))).toBeCloseTo(-0.05, 12);
  expect(value(wettingStrain(20, 19, 25))).toBeCloseTo(0.04, 12);
});

test("heights in two units, blank or below zero are refused by name", () => {
  expect(inEnglish(wettingStrain(20, 1.9))).toMatchObject({
    fault: "input",
    reason: expect.stringContaining("in one unit"),
  });
  expect(inEnglish(wettingStrain(0.787, 19))).toMatchObject({
    fault: "input",
    reason: expect.stringContaining("in one unit"),
  });
  expect(inEnglish(wettingStrain(20, 0))).toMatchObject({
    reason: expect.stringContaining("height after wetting is blank"),
  });
  expect(inEnglish(collapse(20, 19, -20))).toMatchObject({ reason: expect.stringContaining("initial height is -20") });
});

test("the index is the potential at 200 kPa, or 2 tsf, and at no other stress", () => {
  for (const stress of [200, 191.52, 205])
    expect(value(collapse(19, 18, 20, stress))).toEqual({ potential: 0.05, index: 0.05, class: "moderate" });
  for (const stress of [100, 180, 215, 400, undefined])
    expect(value(collapse(19, 18, 20, stress))).toEqual({ potential: 0.05, index: undefined, class: undefined });
});

test.each([
  [-1, "none"],
  [0, "none"],
  [0.04, "none"],
  [0.06, "slight"],
  [2.04, "slight"],
  [2.06, "moderate"],
  [6, "moderate"],
  [6.1, "moderately severe"],
  [10, "moderately severe"],
  [10.1, "severe"],
  [30, "severe"],
])("an index of %s percent, rounded to 0.1 as the printed limits are, is %s", (percent, name) => {
  expect(value(collapse(100, 100 - percent, 100, 200)).class).toBe(name);
});

test("a specimen that swelled on wetting, or before it, gets a remark", () => {
  expect(inEnglish(collapse(19, 19.5, 20, 200))).toMatchObject({
    remarks: [expect.stringContaining("did not collapse")],
  });
  expect(inEnglish(collapse(20.5, 19.5, 20, 200))).toMatchObject({
    remarks: [expect.stringContaining("above the initial height")],
  });
});

test("heights in another unit give the same", () => {
  const height = fc.integer({ min: 1500, max: 2500 }).map((part) => part / 100);
  fc.assert(
    fc.property(height, height, height, fc.constantFrom(0.1, 1 / 25.4, 25.4), (a, b, c, unit) => {
      expect(value(wettingStrain(a * unit, b * unit, c * unit))).toBeCloseTo(value(wettingStrain(a, b, c)), 12);
      const potential = value(collapse(a * unit, b * unit, c * unit, 200)).potential;
      expect(potential).toBeCloseTo(value(collapse(a, b, c, 200)).potential, 12);
    }),
  );
});

test("heights may differ by a factor of 3, and a collapse of nothing has no remark", () => {
  expect(wettingStrain(30, 10).ok).toBe(true);
  expect(wettingStrain(30, 9.99).ok).toBe(false);
  const remarks = (before: number, after: number, initial: number): number => {
    const found = collapse(before, after, initial);
    return found.ok ? found.remarks.length : NaN;
  };
  expect(remarks(19, 19, 20)).toBe(0);
  expect(remarks(19, 19.001, 20)).toBe(1);
  expect(remarks(20, 19, 20)).toBe(0);
  expect(remarks(20.001, 19, 20)).toBe(1);
});

test("the index stands for stresses within 5 percent of 200 kPa, with the class of its rounded percent", () => {
  const of = (percent: number, stress: number) => value(collapse(20, 20 - percent / 5, 20, stress));
  for (const [stress, counts] of [
    [190, true],
    [210, true],
    [189.9, false],
    [210.1, false],
  ] as const)
    expect(of(5, stress).index === undefined).toBe(!counts);
  for (const [percent, name] of [
    [0.04, "none"],
    [0.06, "slight"],
    [2.04, "slight"],
    [2.06, "moderate"],
    [6.04, "moderate"],
    [6.06, "moderately severe"],
    [10.04, "moderately severe"],
    [10.06, "severe"],
  ] as const)
    expect(of(percent, 200).class).toBe(name);
  expect(value(collapse(20, 19, 20)).class).toBeUndefined();
});
