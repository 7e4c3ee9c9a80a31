import fc from "../properties";
import { swellingPressure, type SwellingMethod, type SwellingPressure } from "../../src/reduction/swelling-pressure";
import { english } from "../../src/reduction/message";

type Cells = (number | null)[];
const read = (stresses: Cells, strains: Cells, method: SwellingMethod = "zero strain"): SwellingPressure => {
  const found = swellingPressure(stresses, strains, method);
  if (!found.ok) throw new Error(english(found.reason));
  return found.value;
};
const reason = (stresses: Cells, strains: Cells, method: SwellingMethod = "zero strain"): string => {
  const found = swellingPressure(stresses, strains, method);
  if (found.ok) throw new Error(`gave ${found.value.pressure}`);
  return `${found.fault}: ${english(found.reason)}`;
};
const remarks = (stresses: Cells, strains: Cells, method: SwellingMethod = "zero strain"): string => {
  const found = swellingPressure(stresses, strains, method);
  return found.ok ? found.remarks.map(english).join("; ") : "refused";
};

describe("zero strain, of several specimens", () => {
  const S = [25, 50, 100, 200];
  const STRAIN = [-0.06, -0.03, -0.01, 0.01];

  test("is where the strain crosses zero on log of stress, between the two specimens around it", () => {
    const { pressure, low, high } = read(S, STRAIN);
    expect(pressure).toBeCloseTo(Math.sqrt(100 * 200), 9);
    expect([low, high]).toEqual([100, 200]);
    expect(remarks(S, STRAIN)).toBe("");
  });

  test("is the same for specimens in any order", () => {
    expect(read([200, 25, 100, 50], [0.01, -0.06, -0.01, -0.03])).toEqual(read(S, STRAIN));
  });

  test("averages two specimens under one stress, with a remark", () => {
    expect(read([...S, 100], [...STRAIN.slice(0, 2), -0.015, 0.01, -0.005]).pressure).toBeCloseTo(
      read(S, STRAIN).pressure,
      9,
    );
    expect(remarks([...S, 100], [-0.06, -0.03, -0.015, 0.01, -0.005])).toContain("rows 3, 5: one stress");
  });

  test("leaves out a strain that is blank or exactly zero, and the remark names its stress", () => {
    for (const blank of [null, 0]) {
      const [s, strain] = [
        [25, 50, 100, 150, 200],
        [-0.06, -0.03, -0.01, blank, 0.01],
      ];
      expect(read(s, strain)).toEqual(read(S, STRAIN));
      expect(remarks(s, strain)).toMatch(/row 4: no strain, or exactly zero, left out.*its stress \(150\)/);
      expect(read([...S, blank], [...STRAIN, 0.02])).toEqual(read(S, STRAIN));
    }
  });

  test("draws a straight line through specimens that alternate, with a remark", () => {
    const [s, strain] = [
      [10, 20, 40, 80, 160],
      [-0.04, -0.02, 0.002, -0.002, 0.02],
    ];
    const { pressure, low, high } = read(s, strain);
    expect([low, high]).toEqual([20, 160]);
    // The four strains are odd about the middle of 40 and 80 on log of stress.
    expect(pressure).toBeCloseTo(Math.sqrt(40 * 80), 9);
    expect(remarks(s, strain)).toContain("alternate from 20 to 160");
  });

  test("refuses no bracket, no agreement, wrong signs and percent, with the remedy", () => {
    expect(reason(S, [-0.06, -0.03, -0.02, -0.01])).toMatch(/^method: every specimen swelled.*greater stress/);
    expect(reason(S, [0.01, 0.03, 0.04, 0.06])).toMatch(/^method: .*\(25\) did not swell.*swell is negative/);
    expect(reason(S, [0.06, 0.03, 0.01, -0.01])).toMatch(/^input: .*change the signs/);
    expect(reason(S, [-0.03, 0.01, 0.02, -0.01])).toMatch(/^method: the specimens do not agree: row 4/);
    expect(reason(S, [-0.001, 0.05, -0.05, 0.001])).toMatch(/^method: .*do not agree/);
    expect(reason(S, [-6, -3, -1, 1])).toMatch(/^input: row 1: the strain is -6: enter strains as ratios/);
    expect(reason([25, -50, 100], [-0.03, -0.01, 0.01])).toMatch(/^input: row 2: the stress is -50/);
    expect(reason([25, 50], [-0.03, null])).toMatch(/^method: .*two stresses at least/);
    expect(reason([null, 0], [null, 0])).toMatch(/^input: no row has a stress/);
  });
});

describe("load back, of one specimen", () => {
  // Seated at 10, wetted there, then loaded; unloaded at the end.
  const S = [10, 10, 20, 40, 80, 160, 320, 40, 10];
  const STRAIN = [0.002, -0.06, -0.055, -0.045, -0.03, -0.01, 0.02, -0.01, -0.04];

  test("is where the specimen is back at its first height on loading, on log of stress", () => {
    const { pressure, low, high } = read(S, STRAIN, "load back");
    expect(pressure).toBeCloseTo(160 * 2 ** (1 / 3), 9);
    expect([low, high]).toEqual([160, 320]);
  });

  test("allows swell that continues under a light load, and ignores rows before it", () => {
    expect(read([0, 10, ...S.slice(2)], [0, -0.02, -0.061, ...STRAIN.slice(3)], "load back")).toEqual(
      read(S, STRAIN, "load back"),
    );
  });

  test("refuses a specimen that is not back, one that never swelled, and wrong signs, with the remedy", () => {
    expect(reason(S.slice(0, 6), STRAIN.slice(0, 6), "load back")).toMatch(/^method: .*under 160: load it further/);
    for (const blank of [null, 0])
      expect(reason(S.slice(0, 7), [...STRAIN.slice(0, 6), blank], "load back")).toMatch(
        /row 7: no strain, or exactly zero.*its stress \(320\)/,
      );
    expect(reason([10, 20, 40], [0.01, 0.02, 0.03], "load back")).toMatch(/^method: no row shows a swell/);
    expect(reason([10, 20, 40, 80], [0.06, 0.05, 0.02, -0.01], "load back")).toMatch(
      /^input: row 4 .*change the signs/,
    );
  });
});

describe("constant volume, of one specimen", () => {
  test("is the greatest stress under which the specimen did not swell; blank strains count as held", () => {
    for (const blank of [null, 0])
      expect(read([10, 20, 40, 80, 40, 10], [blank, blank, blank, blank, -0.02, -0.05], "constant volume")).toEqual({
        pressure: 80,
        low: 40,
        high: 80,
      });
  });

  test("lies between the last load and the one that compressed the specimen, if it still swells a little", () => {
    const { pressure, low, high } = read(
      [20, 40, 80, 160, 40],
      [0, -0.0005, -0.0005, 0.0015, -0.02],
      "constant volume",
    );
    expect(pressure).toBeCloseTo(80 * 2 ** 0.25, 9);
    expect([low, high]).toEqual([80, 160]);
    expect(remarks([20, 40, 80], [0, 0, -0.0005], "constant volume")).toContain("reads low");
  });

  test("refuses a volume that was not held, a height before the test, and wrong signs, with the remedy", () => {
    expect(reason([20, 40, 80], [0, -0.004, 0], "constant volume")).toMatch(/^method: row 2: .*swelled by 0.4 %/);
    expect(reason([20, 40, 80], [0.01, 0.01, 0.01], "constant volume")).toMatch(/^method: row 1: .*first height/);
    expect(reason([80, 40, 10], [0, 0.02, 0.05], "constant volume")).toMatch(/^input: row 2: the strain grows/);
  });
});

test("another unit of stress gives the pressure in that unit; the pressure lies from low to high", () => {
  const swell = fc.array(fc.integer({ min: 1, max: 99 }), { minLength: 1, maxLength: 5 });
  const methods = fc.constantFrom<SwellingMethod>("zero strain", "load back");
  fc.assert(
    fc.property(methods, swell, swell, fc.constantFrom(0.02088543, 20.885434), (method, swells, collapses, unit) => {
      const down = [...swells].sort((a, b) => b - a).map((part) => -part / 1000);
      const up = [...collapses].sort((a, b) => a - b).map((part) => part / 1000);
      const strains = [...down, ...up];
      const stresses = strains.map((_, i) => 10 * 2 ** i);
      const { pressure, low, high } = read(stresses, strains, method);
      expect(pressure).toBeGreaterThanOrEqual(low);
      expect(pressure).toBeLessThanOrEqual(high);
      const other = read(
        stresses.map((stress) => stress * unit),
        strains,
        method,
      );
      expect(other.pressure / unit / pressure).toBeCloseTo(1, 9);
    }),
  );
});

test("load back: a strain of exactly zero before the pressure is named, one under more stress is not", () => {
  const wet = { stresses: [10, 20, 40, 80, 160], strains: [-0.02, 0, -0.005, 0.01, 0] };
  const found = swellingPressure(wet.stresses, wet.strains, "load back");
  if (!found.ok) throw new Error(english(found.reason));
  expect(found.value.low).toBe(40);
  expect(found.value.high).toBe(80);
  const remarks = found.remarks.map(english).join(" ");
  expect(remarks).toMatch(/row 2/);
  expect(remarks).not.toMatch(/row 5/);
});
