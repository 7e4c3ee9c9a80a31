import fc from "../properties";
import type { Outcome } from "../../src/reduction/outcome";
import {
  density,
  reduceSpecimen,
  saturation,
  solidsHeight,
  voidRatio,
  voidRatioAtStrain,
  waterContent,
  type SpecimenMeasurements,
} from "../../src/reduction/specimen";
import { strain } from "../../src/reduction/loading";
import { english } from "../../src/reduction/message";
import { inEnglish } from "../in-english";

const value = <T>(outcome: Outcome<T>): T => {
  if (!outcome.ok) throw new Error(english(outcome.reason));
  return outcome.value;
};
const between = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });
const close = (a: number, b: number): void => expect(Math.abs(a - b)).toBeLessThan(1e-9 * Math.max(1, Math.abs(b)));

/** A specimen made from its phases, so that the truth is known. */
const phases = fc.record({
  diameter: between(35, 150),
  height: between(12, 40),
  e0: between(0.25, 4),
  S0: between(0.3, 1),
  wf: between(0.1, 1),
  Gs: between(2.3, 3),
  ring: between(20, 400),
  compression: between(0.01, 0.1),
});

function measured({ diameter, height, e0, S0, wf, Gs, ring, compression }: Record<string, number>) {
  const dry = (Gs * ((Math.PI / 4) * diameter ** 2 * height)) / 1000 / (1 + e0);
  const w0 = (S0 * e0) / Gs;
  const measurements: SpecimenMeasurements = {
    diameter,
    height,
    ring,
    ringAndWetBefore: ring + dry * (1 + w0),
    ringAndWetAfter: ring + dry * (1 + wf),
    ringAndDry: ring + dry,
    Gs,
    finalHeight: height * (1 - compression),
  };
  return { measurements, dry, w0 };
}

test("masses made from phases give the phases back", () => {
  fc.assert(
    fc.property(phases, (truth) => {
      const { measurements, dry, w0 } = measured(truth);
      const found = value(reduceSpecimen(measurements));
      close(found.e0, truth.e0);
      close(found.S0, truth.S0);
      close(found.w0, w0);
      close(found.wf, truth.wf);
      close(found.dryMass, dry);
      close(found.density, found.dryDensity * (1 + found.w0));
      close(found.dryDensity, truth.Gs / (1 + truth.e0));
      close(found.Sf! * found.ef!, found.wf * truth.Gs);
    }),
  );
});

test("all steps together agree with the single steps", () => {
  fc.assert(
    fc.property(phases, (truth) => {
      const { measurements: m } = measured(truth);
      const found = value(reduceSpecimen(m));
      const dry = m.ringAndDry - m.ring;
      const Hs = value(solidsHeight(dry, m.Gs, m.diameter));
      close(found.Hs, Hs);
      close(found.e0, value(voidRatio(m.height, Hs)));
      close(found.w0, value(waterContent(m.ringAndWetBefore, m.ringAndDry, m.ring)));
      close(found.S0, value(saturation(found.w0, m.Gs, found.e0)));
      close(found.density, value(density(m.ringAndWetBefore - m.ring, m.diameter, m.height)));
      const eps = value(strain(m.height - m.finalHeight!, m.height));
      close(found.ef!, value(voidRatioAtStrain(eps, found.e0)));
    }),
  );
});

test("void ratio from strain, and back, for compression and swelling", () => {
  fc.assert(
    fc.property(between(0.3, 4), between(-0.2, 0.2), (e0, eps) => {
      const e = value(voidRatioAtStrain(eps, e0));
      close((e0 - e) / (1 + e0), eps);
    }),
  );
});

const sound: SpecimenMeasurements = {
  diameter: 63.5,
  height: 25.4,
  ring: 110.3,
  ringAndWetBefore: 259.2,
  ringAndWetAfter: 253.9,
  ringAndDry: 218.7,
  Gs: 2.71,
  finalHeight: 24.0,
};
const remarks = (change: Partial<SpecimenMeasurements>): string => {
  const outcome = reduceSpecimen({ ...sound, ...change });
  return outcome.ok ? outcome.remarks.map(english).join("; ") : `refused: ${english(outcome.reason)}`;
};

describe("remarks", () => {
  test("none on a sound specimen", () => expect(remarks({})).toBe(""));
  test("on a specimen that is too wet or too dry as placed", () => {
    expect(remarks({ ringAndWetBefore: 262.5 })).toMatch(/^S0 is 10[5-9]\.\d %, more water than the voids hold/);
    expect(remarks({ ringAndWetBefore: 254 })).toMatch(/^S0 is 8\d\.\d %: not saturated/);
  });
  test("on a final height that contradicts the final water content", () => {
    expect(remarks({ finalHeight: 25.3 })).toMatch(
      /^Sf is \d+\.\d %: the final void ratio is .* from the final height but/,
    );
    // Sf of 95.6 % is acceptable by itself, but the two void ratios differ by 0.041.
    expect(remarks({ finalHeight: 24.257 })).toMatch(/^Sf is 95.6 %: .* is 0.921 from the final height but 0.880 from/);
    expect(remarks({ finalHeight: 25.6 })).toMatch(/final height \(25.6 mm\) is above the initial height \(25.4 mm\)/);
  });
  test("on an unusual specific gravity", () => expect(remarks({ Gs: 2.95 })).toMatch(/gravity 2.95 is unusual/));
  test("on diameter over height: nominal 2.5 by 1 in as measured passes, 2.4 does not", () => {
    expect(remarks({ diameter: 63.45 })).not.toMatch(/diameter over height/);
    expect(remarks({ height: 26.4 })).toMatch(/diameter over height is 2.41, below 2.5/);
  });
  test("on a small specimen", () => {
    const small = {
      diameter: 35.7,
      height: 10,
      ringAndDry: 125.7,
      ringAndWetBefore: 131.5,
      ringAndWetAfter: 131,
      finalHeight: undefined,
    };
    expect(remarks(small)).toMatch(
      /diameter is below the usual least of 50 mm.*height is below the usual least of 12 mm/,
    );
  });
  test("not on a value at a limit, but on the next value beyond it", () => {
    const gravity = (Gs: number) => /gravity .* unusual/.test(remarks({ Gs }));
    expect([2.499, 2.5, 2.9, 2.901].map(gravity)).toEqual([true, false, false, true]);
    // 2.5 less 1 %, 50 mm less 1 %, 12 mm less 1 %.
    const flat = (diameter: number) => /diameter over height/.test(remarks({ diameter }));
    expect([62.86, 62.87].map(flat)).toEqual([true, false]);
    const narrow = (diameter: number) => /diameter is below/.test(remarks({ diameter, height: 50 }));
    expect([49.49, 49.51].map(narrow)).toEqual([true, false]);
    const low = (height: number) =>
      /height is below/.test(remarks({ height, ringAndDry: 150, finalHeight: undefined }));
    expect([11.87, 11.89].map(low)).toEqual([true, false]);
    expect(remarks({ finalHeight: sound.height })).not.toMatch(/swelled/);
  });
  test("on the density, the saturation and the void ratio, from specimens made with them", () => {
    const phase = { diameter: 63.5, height: 20, e0: 0.8, S0: 1, wf: 0.28, Gs: 2.7, ring: 100, compression: 0.02 };
    const found = (change: Partial<typeof phase>, remark: RegExp) => {
      const outcome = reduceSpecimen(measured({ ...phase, ...change }).measurements);
      return outcome.ok && remark.test(outcome.remarks.map(english).join("; "));
    };
    const e0 = (value: number) => found({ e0: value }, /^(.*; )?e0 .* is outside 0.2 to 4/);
    expect([0.199, 0.201, 3.999, 4.001].map(e0)).toEqual([true, false, false, true]);
    const S0 = (value: number) => found({ S0: value }, /S0 is/);
    expect([0.949, 0.951, 1.049, 1.051].map(S0)).toEqual([true, false, false, true]);
    // Dry soil: the density is Gs / (1 + e0).
    const density = (value: number) => found({ e0: 2.7 / value - 1, S0: 1e-9 }, /the density .* is outside 1.2 to 2.3/);
    expect([1.199, 1.201, 2.24].map(density)).toEqual([true, false, false]);
    expect([2.299, 2.301].map((value) => found({ e0: 2.9 / value - 1, S0: 1e-9, Gs: 2.9 }, /the density/))).toEqual([
      false,
      true,
    ]);
  });
  test("on sizes in the wrong unit", () => {
    expect(remarks({ diameter: 635, height: 254, finalHeight: undefined })).toMatch(
      /density 0.002 .*check the sizes, their unit/,
    );
  });
});

describe("refusals name the two entries and the remedy", () => {
  test.each<[Partial<SpecimenMeasurements>, RegExp]>([
    [{ ringAndDry: 103.1 }, /ring and dry soil \(103.1\) is less than the ring \(110.3\): check the two weighings/],
    [{ ringAndWetBefore: 210 }, /ring and wet soil before \(210\) is less than the ring and dry soil \(218.7\)/],
    [{ ringAndWetAfter: 218.7 }, /ring and wet soil after \(218.7\) is the same as the ring and dry soil \(218.7\)/],
    [{ height: 12 }, /the height \(12 mm\) is not above the height of solids \(12.6\d+ mm\).*length unit/],
    [{ finalHeight: 2.4 }, /the final height \(2.4 mm\) is not above the height of solids/],
    [{ ring: -110.3 }, /the ring mass is -110.3: it cannot be negative/],
    [{ diameter: 0 }, /the diameter is blank or zero/],
    [{ Gs: 2710 }, /specific gravity is 2710, which no soil has: .*so 2.71 for 2710 kg\/m3/],
    [{ Gs: 0.9 }, /specific gravity is 0.9, which no soil has: enter it relative to water, about 2.6 to 2.8$/],
  ])("%j", (change, message) => expect(remarks(change)).toMatch(message));

  test("begin beyond the limit, or at it where the value would be impossible", () => {
    const ok = (outcome: Outcome<unknown>): boolean => outcome.ok;
    expect([1.19, 1.2, 4.5, 4.51].map((Gs) => ok(solidsHeight(10, Gs, 63.5)))).toEqual([false, true, true, false]);
    expect([0.89, 0.9, 1.3, 1.31].map((water) => ok(solidsHeight(10, 2.7, 63.5, water)))).toEqual([
      false,
      true,
      true,
      false,
    ]);
    expect([20, 20.1].map((w) => ok(saturation(w, 2.7, 54)))).toEqual([true, false]);
    expect([-1, -0.99, 0.99, 1].map((eps) => ok(voidRatioAtStrain(eps, 1000)))).toEqual([false, true, true, false]);
    // No voids are left: e0 1 and a strain of one half.
    expect([0.5, 0.499].map((eps) => ok(voidRatioAtStrain(eps, 1)))).toEqual([false, true]);
    expect([10, 10.1].map((height) => ok(voidRatio(height, 10)))).toEqual([false, true]);
    expect(ok(waterContent(70, 60, 60))).toBe(false);
    expect(waterContent(60, 60, 20)).toMatchObject({ ok: true, value: 0 });
    expect(ok(saturation(0.3, 5, 0.8))).toBe(false);
  });

  test("name the first measurement of a single step that is blank", () => {
    const reason = (outcome: Outcome<number>): string => (outcome.ok ? "" : english(outcome.reason));
    expect(reason(solidsHeight(0, 2.7, 63.5))).toMatch(/^the dry mass is blank/);
    expect(reason(solidsHeight(100, 0, 63.5))).toMatch(/^the specific gravity is blank/);
    expect(reason(solidsHeight(100, 2.7, 0))).toMatch(/^the diameter is blank/);
    expect(reason(solidsHeight(100, 2.7, 63.5, 0))).toMatch(/^the water density is blank/);
    expect(reason(waterContent(0, 60))).toMatch(/^the wet mass is blank/);
    expect(reason(waterContent(60, 0))).toMatch(/^the dry mass is blank/);
    expect(reason(voidRatio(0, 10))).toMatch(/^the height is blank/);
    expect(reason(voidRatio(10, 0))).toMatch(/^the height of solids is blank/);
    expect(reason(voidRatioAtStrain(0.1, 0))).toMatch(/^the initial void ratio is blank/);
    expect(reason(saturation(0, 2.7, 0.8))).toMatch(/^the water content is blank/);
    expect(reason(saturation(0.3, 0, 0.8))).toMatch(/^the specific gravity is blank/);
    expect(reason(saturation(0.3, 2.7, 0))).toMatch(/^the void ratio is blank/);
    expect(reason(density(100, 0, 20))).toMatch(/^the diameter is blank/);
    expect(reason(density(100, 63.5, 0))).toMatch(/^the height is blank/);
  });

  test("give the specific gravity in kg/m3 as a ratio, where it can be one", () => {
    const hint = (Gs: number): boolean => /kg\/m3/.test(remarks({ Gs }));
    expect([1199, 1200, 4500, 4501].map(hint)).toEqual([false, true, true, false]);
  });

  test("are in the unit that was typed", () => {
    const outcome = reduceSpecimen({ ...sound, height: 12.7 * 0.9 }, "in");
    expect(inEnglish(outcome)).toMatchObject({ ok: false, reason: expect.stringMatching(/the height \(0.45 in\)/) });
  });

  test("are given by each single step", () => {
    const reason = (outcome: Outcome<number>): string =>
      outcome.ok ? `gave ${outcome.value}` : english(outcome.reason);
    expect(reason(waterContent(50, 60, 20))).toMatch(/wet mass \(50\) is less than the dry mass \(60\)/);
    expect(reason(waterContent(70, 20, 60))).toMatch(/dry mass \(20\) must be greater than the tare \(60\)/);
    expect(reason(waterContent(70, 60, -1))).toMatch(/tare is -1/);
    expect(reason(voidRatio(10, 12))).toMatch(/height \(10\) is not above the height of solids \(12\)/);
    expect(reason(voidRatioAtStrain(5, 1))).toMatch(/strain is 5: enter it as a ratio, 0.05 for 5 %/);
    expect(reason(voidRatioAtStrain(0.7, 0.5))).toMatch(/leaves no voids/);
    expect(reason(saturation(35.2, 2.7, 0.95))).toMatch(/water content is 35.2: enter it as a ratio, 0.352/);
    expect(reason(solidsHeight(108, 2.7, 63.5, 998))).toMatch(/water density is 998: enter it in g\/cm3/);
    expect(reason(density(-5, 63.5, 20))).toMatch(/the mass is -5/);
  });
});

describe("a specimen by its measurements", () => {
  // A solid volume of 40 cm3 under 31.67 cm2 (63.5 mm): dry mass 108 g, e0 1, all voids full at 40 g of water.
  const good: SpecimenMeasurements = {
    ...{ diameter: 63.5, height: (2 * 40_000) / ((Math.PI / 4) * 63.5 ** 2), ring: 70, Gs: 2.7 },
    ...{ ringAndWetBefore: 70 + 108 + 39.5, ringAndWetAfter: 70 + 108 + 32, ringAndDry: 70 + 108 },
    finalHeight: (1.8 * 40_000) / ((Math.PI / 4) * 63.5 ** 2),
  };
  const said = (more: Partial<SpecimenMeasurements>, unit?: string) => {
    const found = reduceSpecimen({ ...good, ...more }, unit);
    return found.ok ? found.remarks.map(english) : [`${found.fault}: ${english(found.reason)}`];
  };

  test("a good one has no remark", () => {
    expect(said({})).toEqual([]);
    expect(value(reduceSpecimen(good))).toMatchObject({
      e0: expect.closeTo(1, 9),
      ef: expect.closeTo(0.8, 9),
      salt: undefined,
    });
  });

  test.each([
    ["diameter", "the diameter"],
    ["height", "the height"],
    ["ring", "the ring mass"],
    ["ringAndWetBefore", "the ring and wet soil before"],
    ["ringAndWetAfter", "the ring and wet soil after"],
    ["ringAndDry", "the ring and dry soil"],
    ["Gs", "the specific gravity"],
    ["finalHeight", "the final height"],
  ] as const)("a blank %s is named", (name, called) => {
    expect(said({ [name]: 0 })).toEqual([`input: ${called} is blank or zero: enter a number greater than zero`]);
  });

  test("two masses that are equal or swapped are named with their values", () => {
    const swapped = "check the two weighings, they may be swapped";
    expect(said({ ringAndDry: 60 })).toEqual([
      `input: the ring and dry soil (60) is less than the ring (70): ${swapped}`,
    ]);
    expect(said({ ringAndDry: 70 })[0]).toMatch(/^input: the ring and dry soil \(70\) is the same as the ring \(70\)/);
    expect(said({ ringAndWetBefore: 178 })[0]).toMatch(
      /^input: the ring and wet soil before \(178\) is the same as the ring and dry soil/,
    );
    expect(said({ ringAndWetAfter: 170 })[0]).toMatch(
      /^input: the ring and wet soil after \(170\) is less than the ring and dry soil \(178\)/,
    );
  });

  test("a height that the solids fill is refused, in the unit of the sheet", () => {
    const Hs = 40_000 / ((Math.PI / 4) * 63.5 ** 2);
    expect(said({ height: Hs * 0.999 })[0]).toMatch(
      /^input: the height \(12.6179 mm\) is not above the height of solids \(12.6306 mm\)/,
    );
    expect(said({ finalHeight: 10 })[0]).toMatch(
      /^input: the final height \(10 mm\) is not above .*: check the final height, the diameter/,
    );
    expect(said({ finalHeight: 10 }, "in")[0]).toMatch(/^input: the final height \(0.393701 in\) is not above/);
  });

  test("without a final height there is no final void ratio, saturation or remark on them", () => {
    const found = value(reduceSpecimen({ ...good, finalHeight: undefined }));
    expect([found.ef, found.Sf]).toEqual([undefined, undefined]);
    expect(said({ finalHeight: undefined, ringAndWetAfter: 70 + 108 + 100 })).toEqual([]);
  });

  test("a final height above the initial one is remarked", () => {
    expect(said({ finalHeight: good.height * 1.1, ringAndWetAfter: 70 + 108 + 48 })).toEqual([
      "the final height (27.7872 mm) is above the initial height (25.2611 mm): correct only if the specimen swelled",
    ]);
  });

  test("the final void ratio by water may differ from that by height by 0.02 and a fiftieth of it", () => {
    // e by height 0.8: 0.036 either way, 1.333 g of water for each tenth of the solid volume.
    const withWater = (byWater: number) => said({ ringAndWetAfter: 70 + 108 + 40 * byWater });
    expect(withWater(0.835)).toEqual([]);
    expect(withWater(0.837)).toEqual([
      expect.stringMatching(
        /^Sf is 104.6.*: the final void ratio is 0.800 from the final height but 0.837 from the final water content/,
      ),
    ]);
    expect(withWater(0.765)).toEqual([]);
    expect(withWater(0.763)).toHaveLength(1);
  });

  test("water has the density of its temperature; a temperature that water does not have is refused", () => {
    const warm = value(reduceSpecimen({ ...good, temperature: 20 }));
    // 0.99821 Mg/m3 at 20 C (CRC Handbook, from memory).
    expect(warm.Hs / value(reduceSpecimen(good)).Hs).toBeCloseTo(1 / 0.99821, 4);
    expect(said({ temperature: 200 })[0]).toMatch(/^input: /);
  });

  test("salt in the pore water is taken out of the dry mass; the results without the correction stand beside it", () => {
    const { dryMass, w0, wf, salt } = value(reduceSpecimen({ ...good, saltContent: 0.035 }));
    // 140 g wet after; pore water p = 140 - solids, salt 0.035 p, and 108 = solids + salt.
    const solids = (108 - 0.035 * 140) / (1 - 0.035);
    expect(dryMass).toBeCloseTo(solids, 9);
    expect(salt).toMatchObject({ mass: expect.closeTo(108 - solids, 9), dryMass: 108, w0: 39.5 / 108, wf: 32 / 108 });
    expect([w0, wf]).toEqual([
      expect.closeTo((147.5 - solids) / solids, 9),
      expect.closeTo((140 - solids) / solids, 9),
    ]);
    expect(said({ saltContent: 2 })[0]).toMatch(/^input: /);
  });
});
