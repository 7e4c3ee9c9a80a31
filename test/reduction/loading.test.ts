import fc from "../properties";
import {
  apparatusDeflection,
  axialStress,
  deformations,
  hangerMass,
  loadSchedule,
  readingTimes,
  strain,
} from "../../src/reduction/loading";
import type { Outcome } from "../../src/reduction/outcome";
import { english } from "../../src/reduction/message";

const value = <T>(outcome: Outcome<T>): T => {
  if (!outcome.ok) throw new Error(english(outcome.reason));
  return outcome.value;
};
const refused = (outcome: Outcome<unknown>): string =>
  outcome.ok ? `gave ${JSON.stringify(outcome.value)}` : `${outcome.fault}: ${english(outcome.reason)}`;
const between = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });

describe("stress", () => {
  test("grows with force and lever, and with the inverse square of the diameter", () => {
    fc.assert(
      fc.property(between(1, 1e4), between(30, 150), between(1, 12), (F, D, lever) => {
        const stress = value(axialStress(F, D, lever));
        expect((stress * (Math.PI / 4) * D * D) / 1000).toBeCloseTo(F * lever, 6);
        expect(value(axialStress(F, 2 * D, lever)) * 4).toBeCloseTo(stress, 6);
      }),
    );
  });
  test("the mass on the hanger gives back the stress, with the cap included", () => {
    fc.assert(
      fc.property(between(1, 3000), between(30, 150), between(1, 12), between(0, 0.05), (stress, D, lever, cap) => {
        const mass = value(hangerMass(stress, D, lever, cap));
        const force = 9.80665 * (lever * mass + cap);
        expect(value(axialStress(force, D)) / stress).toBeCloseTo(1, 9);
      }),
    );
  });
  test("1 kg on the hanger of a 10:1 beam gives 30.97 kPa over 63.5 mm (first principles, printed to four digits)", () =>
    expect(value(hangerMass(30.97, 63.5, 10))).toBeCloseTo(1, 3));
  test("refuses a cap that is heavier than the load, and a missing lever ratio", () => {
    expect(refused(hangerMass(1, 63.5, 10, 0.5))).toMatch(/input: the cap and the ball/);
    expect(refused(hangerMass(100, 63.5, 0))).toMatch(/the lever ratio is blank or zero/);
    expect(refused(hangerMass(0, 63.5))).toMatch(/the stress is blank or zero/);
    expect(refused(hangerMass(100, 0))).toMatch(/the diameter is blank or zero/);
    expect(refused(axialStress(100, 63.5, 0))).toMatch(/the lever ratio is blank or zero/);
    // A cap as heavy as the load leaves nothing to hang.
    const whole = value(hangerMass(100, 63.5));
    expect(value(hangerMass(100, 63.5, 10, whole))).toBe(0);
  });
  test("refuses a force of zero", () =>
    expect(refused(axialStress(0, 50))).toMatch(/input: the force is blank or zero/));
});

describe("load schedule", () => {
  const schedule = (...s: [number, number, number?, number?, number?]): number[] =>
    value(loadSchedule({ first: s[0], maximum: s[1], ratio: s[2], unloadTo: s[3], unloadSteps: s[4] }));

  test("doubles by default", () => {
    expect(schedule(25, 1600)).toEqual([25, 50, 100, 200, 400, 800, 1600]);
    expect(schedule(12, 1600)).toEqual([12, 24, 48, 96, 192, 384, 768, 1536]);
    expect(schedule(100, 100)).toEqual([100]);
    // 6 x 1.5^5, whose logarithm is slightly below 5 steps by rounding.
    expect(schedule(6, 45.5625, 0.5)).toEqual([6, 9, 13.5, 20.25, 30.375, 45.5625]);
  });
  test("unloads to a quarter each time, or in a number of equal ratios", () => {
    expect(schedule(25, 1600, 1, 25)).toEqual([25, 50, 100, 200, 400, 800, 1600, 400, 100, 25]);
    expect(schedule(12.5, 1600, 1, 12.5).slice(-4)).toEqual([400, 100, 25, 12.5]);
    expect(schedule(25, 1600, 1, 25, 2).slice(-2)).toEqual([200, 25]);
    expect(schedule(25, 1600, 1, undefined, 1).slice(-2)).toEqual([1600, 25]);
  });
  test("every step keeps the ratio, none is above the maximum, and one more step would be", () => {
    fc.assert(
      fc.property(between(1, 50), between(1.01, 500), between(0.25, 3), (first, times, ratio) => {
        const loads = schedule(first, first * times, ratio);
        const last = loads[loads.length - 1];
        expect(loads[0]).toBe(first);
        for (let i = 1; i < loads.length; i++) expect(loads[i] / loads[i - 1]).toBeCloseTo(1 + ratio, 8);
        expect(last).toBeLessThanOrEqual(first * times);
        expect(last * (1 + ratio)).toBeGreaterThan(first * times * (1 - 1e-8));
      }),
    );
  });
  test("unloads in equal ratios, and ends exactly at the stress asked for", () => {
    fc.assert(
      fc.property(between(1, 20), fc.integer({ min: 1, max: 8 }), (to, steps) => {
        const unloads = schedule(25, 800, 1, to, steps).slice(-steps - 1);
        for (let i = 2; i < unloads.length; i++)
          expect(unloads[i] / unloads[i - 1]).toBeCloseTo(unloads[1] / unloads[0], 8);
        expect(unloads[steps]).toBe(to);
      }),
    );
  });
  test.each<[Parameters<typeof loadSchedule>[0], RegExp]>([
    [{ first: 1600, maximum: 25 }, /maximum stress \(25\) is less than the first \(1600\): the two may be swapped/],
    [{ first: 25, maximum: 1600, ratio: 0.001 }, /ratio of 0.001 needs \d+ loads/],
    [{ first: 25, maximum: 1600, unloadTo: 3200 }, /unload to \(3200\) must be .* less than the last load \(1600\)/],
    [{ first: 25, maximum: 1600, unloadTo: 25, unloadSteps: 2.5 }, /unloading steps is 2.5: enter a whole number/],
    [{ first: 25, maximum: 1600, unloadTo: 25, unloadSteps: 0 }, /unloading steps is 0: enter a whole number/],
    [{ first: 25, maximum: 1600, unloadTo: 25, unloadSteps: 101 }, /unloading steps is 101: enter a whole number/],
    [{ first: 25, maximum: 1600, unloadTo: 1600 }, /unload to \(1600\) must be/],
    [{ first: 25, maximum: 1600, unloadTo: 0 }, /unload to \(0\) must be greater than zero/],
    [{ first: 0, maximum: 1600 }, /the first stress is blank or zero/],
    [{ first: 25, maximum: 0 }, /the maximum stress is blank or zero/],
    [{ first: 25, maximum: 1600, ratio: 0 }, /the load increment ratio is blank or zero/],
    // 100 steps of 1 % and one load more.
    [{ first: 1, maximum: 1.01 ** 100 * 1.001, ratio: 0.01 }, /ratio of 0.01 needs 101 loads/],
  ])("refuses %j", (given, message) => expect(refused(loadSchedule(given))).toMatch(message));
});

describe("reading times", () => {
  test("gives the list of the trade by default", () => {
    expect(value(readingTimes())).toEqual([0.1, 0.25, 0.5, 1, 2, 4, 8, 15, 30, 60, 120, 240, 480, 1440]);
  });
  test("takes other ends", () => {
    expect(value(readingTimes(60, 0.25))).toEqual([0.25, 0.5, 1, 2, 4, 8, 15, 30, 60]);
    expect(value(readingTimes(500)).slice(-3)).toEqual([120, 240, 500]);
    expect(value(readingTimes(4320, 0.02)).slice(0, 4)).toEqual([0.02, 0.025, 0.05, 0.1]);
    expect(value(readingTimes(4320)).slice(-3)).toEqual([1440, 2880, 4320]);
  });
  test("rises from first to last, without a gap wider than about half a log cycle", () => {
    fc.assert(
      fc.property(between(0.01, 10), between(20, 20000), (first, last) => {
        const times = value(readingTimes(last, first));
        expect([times[0], times[times.length - 1]]).toEqual([first, last]);
        for (let i = 1; i < times.length; i++) {
          expect(times[i]).toBeGreaterThan(times[i - 1]);
          expect(times[i] / times[i - 1]).toBeLessThanOrEqual(3.6);
        }
      }),
    );
  });
  test("leaves out a clock time nearer to an end than a fifth", () => {
    // 1.2 x 0.25 is 0.3, and 4 / 1.2 is 3.33.
    expect(value(readingTimes(4, 0.21))).toEqual([0.21, 0.5, 1, 2, 4]);
    expect(value(readingTimes(4.7, 0.2))).toEqual([0.2, 0.25, 0.5, 1, 2, 4.7]);
    expect(value(readingTimes(4.8, 0.2))).toEqual([0.2, 0.25, 0.5, 1, 2, 4, 4.8]);
  });
  test("refuses times that are not in minutes, and an end that is blank", () => {
    expect(value(readingTimes(1e7, 1e-4)).length).toBeGreaterThan(14);
    expect(refused(readingTimes(1.01e7, 0.1))).toMatch(/reading times run from 0.0001 to 10,000,000 minutes/);
    expect(refused(readingTimes(1440, 0.99e-4))).toMatch(/reading times run from/);
    expect(refused(readingTimes(1440, 1440))).toMatch(/must be after the first/);
    expect(refused(readingTimes(0))).toMatch(/the last time is blank or zero/);
    expect(refused(readingTimes(1440, 0))).toMatch(/the first time is blank or zero/);
  });
  test("refuses ends in the wrong order", () =>
    expect(refused(readingTimes(0.1, 1440))).toMatch(/last time \(0.1 min\) must be after the first \(1440 min\)/));
});

describe("deformation", () => {
  test("works for a dial that rises and a dial that falls", () => {
    expect(value(deformations([100, 150, 140], 100, 0.01))).toEqual([0, 0.5, 0.4]);
    expect(value(deformations([5, 4.5, 4.75], 5, -1))).toEqual([-0, 0.5, 0.25]);
  });
  test("takes one division as one if no factor is given, and refuses a factor of zero", () => {
    expect(value(deformations([5, 7], 5))).toEqual([0, 2]);
    for (const factor of [0, NaN, Infinity])
      expect(refused(deformations([5, 7], 5, factor))).toMatch(/^input: the factor is zero: enter the length/);
  });
  test("leaves a blank blank, and treats 0 from desktop Excel as a blank", () => {
    const blank = value(deformations([5, null, 4], 5, -1));
    expect(blank[1]).toBeNull();
    expect(value(deformations([5, 0, 4], 5, -1))).toEqual(blank);
    expect(value(deformations([0, 0], 5))).toEqual([null, null]);
  });
  test("if the instrument was zeroed at the start, its leading zero is a reading, and a later one a blank", () => {
    expect(value(deformations([0, 0.2, 0, 0.5], 0))).toEqual([0, 0.2, null, 0.5]);
    expect(value(deformations([null, 0.2, null, 0.5], 0))).toEqual([0, 0.2, null, 0.5]);
    expect(value(deformations([0, 0], 0))).toEqual(value(deformations([null, null], 0)));
  });
});

describe("strain", () => {
  test("is corrected for the apparatus", () => expect(value(strain(1.27, 25.4, 0.254))).toBeCloseTo(0.04, 12));
  test("is negative for swelling", () => expect(value(strain(-0.2, 20))).toBeCloseTo(-0.01, 12));
  test("refuses a deformation of more than the height", () => {
    expect(refused(strain(30, 25.4))).toMatch(/deformation \(30\) is not below the initial height \(25.4\)/);
    expect(refused(strain(1, 0))).toMatch(/initial height is blank or zero/);
    for (const deformation of [25.4, -25.4]) expect(refused(strain(deformation, 25.4))).toMatch(/is not below/);
    expect(value(strain(25.3, 25.4))).toBeLessThan(1);
    expect(refused(strain(30, 25.4, 0.5))).toMatch(/deformation \(30 less 0.5 of apparatus\) is not below/);
  });
});

describe("apparatus deflection", () => {
  const stresses = [12.5, 25, 50, 100, 200];
  const deflections = [0.002, 0.006, 0.011, 0.018, 0.026];
  const at = (stress: number, s: (number | null)[] = stresses, d: (number | null)[] = deflections): Outcome<number> =>
    apparatusDeflection(stress, s, d);

  test("is exact at calibrated stresses, in any order of rows", () => {
    stresses.forEach((stress, i) => {
      expect(value(at(stress))).toBe(deflections[i]);
      expect(value(at(stress, [...stresses].reverse(), [...deflections].reverse()))).toBe(deflections[i]);
    });
  });
  test("is half-way at the middle on log of stress", () =>
    expect(value(at(Math.sqrt(50 * 100)))).toBeCloseTo((0.011 + 0.018) / 2, 12));
  test("is exact everywhere if the calibration is straight on log of stress", () => {
    fc.assert(
      fc.property(between(12.5, 200), between(-0.01, 0.01), between(0.001, 0.02), (stress, a, b) => {
        const line = (s: number): number => a + b * Math.log10(s);
        fc.pre(stresses.slice(1).every((s) => line(s) !== 0));
        expect(value(at(stress, stresses, stresses.map(line)))).toBeCloseTo(line(stress), 12);
      }),
    );
  });
  test("refuses a stress beyond the range, but not one beyond it by rounding only", () => {
    expect(refused(at(250))).toMatch(/^method: the stress 250 is above the calibrated range \(12.5 to 200\)/);
    expect(refused(at(10))).toMatch(/^method: the stress 10 is below/);
    expect(value(at(200 * (1 + 1e-12)))).toBe(0.026);
  });
  test("skips a row without stress or deflection, blank or zero", () => {
    for (const blank of [null, 0]) {
      expect(value(at(40, [...stresses, blank], [...deflections, blank]))).toBe(value(at(40)));
      const gap = at(50, stresses, [0.002, 0.006, blank, 0.018, 0.026]);
      expect(value(gap)).toBeCloseTo(0.012, 12);
      expect(refused(at(150, stresses, [0.002, 0.006, 0.011, 0.018, blank]))).toMatch(
        /calibrated range \(12.5 to 100\)/,
      );
      expect(value(at(12.5, stresses, [blank, 0.006, 0.011, 0.018, 0.026]))).toBe(0);
    }
  });
  test("refuses two branches in one, a negative stress, and a blank calibration", () => {
    expect(refused(at(60, [50, 100, 50], [0.01, 0.02, 0.014]))).toMatch(
      /^input: rows 1 and 3 of the calibration give two deflections at 50/,
    );
    expect(refused(at(60, [50, -100], [0.01, 0.02]))).toMatch(/row 2 of the calibration stresses is -100/);
    expect(refused(at(60, [null, 0], [0, null]))).toMatch(/calibration is blank or zero throughout/);
  });
});

test("reading times outside 0.0001 to 10,000,000 minutes are refused; at these limits they are given", () => {
  const range = /reading times run from 0.0001 to 10,000,000 minutes/;
  expect(refused(readingTimes(1.01e7))).toMatch(range);
  expect(refused(readingTimes(60, 0.99e-4))).toMatch(range);
  expect(value(readingTimes(1e7, 1e-4)).at(-1)).toBe(1e7);
});

test("a dial factor of zero, or none, is refused", () => {
  for (const factor of [0, NaN, Infinity])
    expect(refused(deformations([1, 2], 0, factor))).toMatch(/the factor is zero/);
});
