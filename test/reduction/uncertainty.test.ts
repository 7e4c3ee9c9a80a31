/** Compares the closed-form derivatives of first-order uncertainty with numerical derivatives of the reduction. */
import fc from "../properties";
import { coefficientOfConsolidation, T50 } from "../../src/reduction/increment/cv";
import { axialStress, strain } from "../../src/reduction/loading";
import type { Outcome } from "../../src/reduction/outcome";
import { solidsHeight, voidRatio } from "../../src/reduction/specimen";
import {
  cvUncertainty,
  interpretationSpread,
  strainUncertainty,
  timeUncertainty,
  stressUncertainty,
  voidRatioUncertainty,
  type Stated,
  type Uncertain,
} from "../../src/reduction/uncertainty";
import { english } from "../../src/reduction/message";

const valueOf = <T>(outcome: Outcome<T>): T => {
  if (!outcome.ok) throw new Error(english(outcome.reason));
  return outcome.value;
};
const number = (min: number, max: number) => fc.nat(1_000_000).map((part) => min + ((max - min) * part) / 1_000_000);

interface Case {
  /** Values of the inputs, in the order of `names`. */
  readonly inputs: fc.Arbitrary<number[]>;
  readonly names: readonly string[];
  readonly value: (...inputs: number[]) => number;
  readonly uncertain: (inputs: readonly Stated[]) => Outcome<Uncertain>;
}

const CASES: Record<string, Case> = {
  "void ratio": {
    // Height, diameter, ring, ring and dry soil, Gs: the soil fills less than the height.
    inputs: fc
      .tuple(number(12, 50), number(35, 120), number(20, 300), number(0.2, 0.9), number(1.5, 4))
      .map(([H, D, ring, full, Gs]) => [H, D, ring, ring + (full * Gs * H * Math.PI * D * D) / 4000, Gs]),
    names: ["the height", "the diameter", "the ring", "the ring and dry soil", "the specific gravity"],
    value: (H, D, ring, dry, Gs) => valueOf(voidRatio(H, valueOf(solidsHeight(dry - ring, Gs, D)))),
    uncertain: ([height, diameter, ring, ringAndDry, specificGravity]) =>
      voidRatioUncertainty({ height, diameter, ring, ringAndDry, specificGravity }),
  },
  strain: {
    inputs: fc.tuple(number(0.5, 8), number(12, 50), number(0.01, 0.3)),
    names: ["the deformation", "the initial height", "the apparatus deflection"],
    value: (d, H0, a) => valueOf(strain(d, H0, a)),
    uncertain: ([deformation, initialHeight, apparatus]) =>
      strainUncertainty({ deformation, initialHeight, apparatus }),
  },
  stress: {
    inputs: fc.tuple(number(1, 1e4), number(35, 120), number(1, 12)),
    names: ["the force", "the diameter", "the lever ratio"],
    value: (F, D, L) => valueOf(axialStress(F, D, L)),
    uncertain: ([force, diameter, leverRatio]) => stressUncertainty({ force, diameter, leverRatio }),
  },
  cv: {
    inputs: fc.tuple(number(0.1, 500), number(10, 50)),
    names: ["the time", "the height"],
    value: (t, H) => coefficientOfConsolidation(T50, t, H, "double"),
    uncertain: ([time, height]) => cvUncertainty({ timeFactor: T50, time, height, drainage: "double" }),
  },
};

describe.each(Object.entries(CASES))("%s", (_, { inputs, names, value, uncertain }) => {
  test("each sensitivity is the numerical derivative of the function of the reduction", () => {
    fc.assert(
      fc.property(inputs, (values) => {
        const { contributions } = valueOf(uncertain(values.map((one) => ({ value: one, u: 0.001 * Math.abs(one) }))));
        names.forEach((name, index) => {
          const h = 1e-5 * Math.abs(values[index]);
          const at = (step: number) => value(...values.map((one, i) => (i === index ? one + step : one)));
          const numerical = (at(h) - at(-h)) / (2 * h);
          const { sensitivity } = contributions.find(({ input }) => english(input) === name)!;
          expect(Math.abs(sensitivity - numerical)).toBeLessThanOrEqual(1e-6 * Math.abs(numerical) + 1e-12);
        });
      }),
    );
  });

  test("inputs add in quadrature: u is the root of the sum, shares sum to one, largest first", () => {
    fc.assert(
      fc.property(inputs, number(0.0005, 0.01), (values, share) => {
        const found = valueOf(uncertain(values.map((one, i) => ({ value: one, u: share * (i + 1) * Math.abs(one) }))));
        const { u, contributions } = found;
        // As a ratio: u may be of any size, and both sides are rounded in their last digits.
        expect(Math.hypot(...contributions.map((part) => part.u)) / u).toBeCloseTo(1, 12);
        expect(contributions.reduce((sum, part) => sum + part.share, 0)).toBeCloseTo(1, 12);
        for (let i = 1; i < contributions.length; i++)
          expect(contributions[i].share).toBeLessThanOrEqual(contributions[i - 1].share);
        expect(found.low).toBeLessThan(found.value);
        expect(found.high).toBeGreaterThan(found.value);
      }),
    );
  });
});

const dry = { height: { value: 25.4 }, diameter: { value: 63.5 }, ring: { value: 74.36 } };
/** Mass of ring and dry soil for a void ratio. */
const at = (e: number, Gs: number) => 74.36 + (25.4 * Gs * Math.PI * 63.5 ** 2) / 4000 / (1 + e);

test.each([
  [0.5, 0.0167],
  [1, 0.0222],
  [2, 0.0333],
])("0.03 of specific gravity moves a void ratio of %d by %d: (1 + e) u(Gs) / Gs", (e, u) => {
  const found = valueOf(
    voidRatioUncertainty({ ...dry, ringAndDry: { value: at(e, 2.7) }, specificGravity: { value: 2.7, u: 0.03 } }),
  );
  expect(found.value).toBeCloseTo(e, 9);
  expect(found.u).toBeCloseTo(u, 4);
  expect(found.high - found.low).toBeCloseTo(4 * found.u, 12);
});

test("ordinary weighing and measuring add little compared with the specific gravity", () => {
  const { contributions } = valueOf(
    voidRatioUncertainty({
      height: { value: 25.4, u: 0.02 },
      diameter: { value: 63.5, u: 0.02 },
      ring: { value: 74.36, u: 0.01 },
      ringAndDry: { value: at(1.45, 2.72), u: 0.01 },
      specificGravity: { value: 2.72, u: 0.03 },
    }),
  );
  expect(english(contributions[0].input)).toBe("the specific gravity");
  expect(contributions[0].share).toBeGreaterThan(0.9);
});

test("agrees with a simulation of ten thousand weighings within 3 %", () => {
  // A linear congruential generator and the method of Box and Muller: the same numbers each time.
  let state = 1;
  const uniform = () => (state = (state * 48_271) % 2_147_483_647) / 2_147_483_647;
  const normal = () => Math.sqrt(-2 * Math.log(uniform())) * Math.cos(2 * Math.PI * uniform());
  const [H, D, ring, soil, Gs] = [25.4, 63.5, 74.36, at(1.45, 2.72), 2.72];
  const us = [0.05, 0.05, 0.02, 0.02, 0.03];
  const values = Array.from({ length: 10_000 }, () =>
    CASES["void ratio"].value(...[H, D, ring, soil, Gs].map((value, i) => value + us[i] * normal())),
  );
  const mean = values.reduce((a, b) => a + b, 0) / values.length;
  const deviation = Math.sqrt(values.reduce((sum, e) => sum + (e - mean) ** 2, 0) / (values.length - 1));
  const found = valueOf(CASES["void ratio"].uncertain([H, D, ring, soil, Gs].map((value, i) => ({ value, u: us[i] }))));
  expect(Math.abs(deviation / found.u - 1)).toBeLessThan(0.03);
});

test("the interval of cv is a factor: as far below as above, and above zero however wide", () => {
  const found = valueOf(
    cvUncertainty({ timeFactor: T50, time: { value: 2, u: 1.5 }, height: { value: 24, u: 0.1 }, drainage: "double" }),
  );
  expect(found.low).toBeGreaterThan(0);
  expect(found.value / found.low).toBeCloseTo(found.high / found.value, 9);
  expect(found.high / found.value).toBeCloseTo(Math.exp(2 * Math.hypot(0.75, (2 * 0.1) / 24)), 9);
});

test("remarks say what is assumed, and which inputs have no stated uncertainty", () => {
  const found = voidRatioUncertainty({
    ...dry,
    ringAndDry: { value: at(1, 2.7), u: 0.01 },
    specificGravity: { value: 2.7, u: 0.03, assumed: true },
  });
  expect(found.ok && found.remarks.map(english)).toEqual([
    "the specific gravity is assumed: its uncertainty is an estimate",
    "no uncertainty is stated for the height, the diameter, the ring: it counts as zero",
  ]);
});

test("refusals", () => {
  const reason = (outcome: Outcome<unknown>) => (outcome.ok ? "" : english(outcome.reason));
  const whole = { ...dry, ringAndDry: { value: at(1, 2.7) }, specificGravity: { value: 2.7 } };
  expect(reason(voidRatioUncertainty(whole))).toMatch(/no uncertainty is stated/);
  expect(reason(voidRatioUncertainty({ ...whole, height: { value: 25.4, u: -1 } }))).toMatch(/of the height is -1/);
  expect(reason(voidRatioUncertainty({ ...whole, height: { value: 5, u: 0.1 } }))).toMatch(/leaves no voids/);
  expect(reason(stressUncertainty({ force: { value: 1, u: 0.1 }, diameter: { value: 60 } }, 0))).toMatch(/coverage/);
  expect(
    reason(cvUncertainty({ timeFactor: T50, time: { value: 0, u: 1 }, height: { value: 20 }, drainage: "single" })),
  ).toMatch(/the time is 0/);
});

test("the spread of constructions is a range without a probability", () => {
  expect(valueOf(interpretationSpread([120, 131, 118]))).toEqual({ least: 118, greatest: 131, median: 120, count: 3 });
  expect(valueOf(interpretationSpread([4, 1, 2, 3])).median).toBe(2.5);
  expect(interpretationSpread([120]).ok).toBe(false);
});

test("an interval of the fit without two ends above zero gives no uncertainty of a time", () => {
  const wanted = /must have two ends above zero/;
  for (const [low, high] of [
    [0, 1],
    [2, 1],
    [1, Infinity],
    [NaN, 1],
  ]) {
    const found = timeUncertainty("log time", low, high);
    expect(found.ok ? found.value : english(found.reason)).toMatch(wanted);
  }
});

describe("at the edges", () => {
  const reason = (found: { ok: boolean; reason?: unknown }) =>
    found.ok ? "answered" : english((found as { reason: Parameters<typeof english>[0] }).reason);

  test("an interval of the fit needs two ends above zero", () => {
    const words = (low: number, high: number) =>
      `the interval of the fit is ${low} to ${high}: it must have two ends above zero`;
    expect(reason(timeUncertainty("log time", 0, 1))).toBe(words(0, 1));
    expect(reason(timeUncertainty("log time", 1, 1))).toBe(words(1, 1));
    expect(reason(timeUncertainty("root time", 0.5, Infinity))).toBe(words(0.5, Infinity));
    expect(reason(timeUncertainty("root time", 1, 1.0001))).toBe("answered");
  });

  test("the time of a construction is as uncertain as half the interval of the fit, over its coverage of 2, widened", () => {
    const ofFit = Math.log(1.1 / 0.9) / 4;
    expect(valueOf(timeUncertainty("log time", 0.9, 1.1))).toBeCloseTo(Math.hypot(1.5 * ofFit, 0.015), 12);
    expect(valueOf(timeUncertainty("root time", 0.9, 1.1))).toBeCloseTo(Math.hypot(3 * ofFit, 0.015), 12);
  });

  test("an input that is not given is no input, and has no remark", () => {
    const strained = strainUncertainty({
      deformation: { value: 0.5, u: 0.002 },
      initialHeight: { value: 20, u: 0.02 },
    });
    const stressed = stressUncertainty({ force: { value: 100, u: 1 }, diameter: { value: 63.5, u: 0.05 } });
    for (const found of [strained, stressed]) {
      expect(valueOf(found).contributions).toHaveLength(2);
      expect(found.ok && found.remarks).toEqual([]);
    }
  });

  test("two constructions are a spread, and one is not", () => {
    expect(interpretationSpread([120, 100])).toMatchObject({
      ok: true,
      value: { least: 100, greatest: 120, median: 110, count: 2 },
    });
    expect(reason(interpretationSpread([100]))).toBe("a spread needs the results of two constructions at least");
  });

  const inputs = { height: { value: 25.4, u: 0 }, diameter: { value: 63.5 }, ring: { value: 70 }, ringAndDry: { value: 168 }, specificGravity: { value: 2.7 } }; // prettier-ignore
  test("an uncertainty of 0 is stated: nothing is added, and its share is 0", () => {
    const found = voidRatioUncertainty(inputs);
    if (!found.ok) throw new Error(reason(found));
    expect([found.value.u, found.value.low - found.value.value]).toEqual([0, 0]);
    expect(found.value.contributions.map(({ share }) => share)).toEqual([0]);
    expect(found.remarks).toHaveLength(1);
    expect(reason(voidRatioUncertainty({ ...inputs, height: { value: 25.4, u: -0.1 } }))).toMatch(
      /^the uncertainty of .* is -0.1: enter a standard deviation, 0 or more$/,
    );
  });

  test("where every input states one, no remark says that one is silent", () => {
    const all = voidRatioUncertainty({ height: { value: 25.4, u: 0.02 }, diameter: { value: 63.5, u: 0.02 }, ring: { value: 70, u: 0.01 }, ringAndDry: { value: 168, u: 0.01 }, specificGravity: { value: 2.7, u: 0.01 } }); // prettier-ignore
    expect(all.ok && all.remarks).toEqual([]);
  });

  test("warm water is lighter: the void ratio is smaller by its density", () => {
    const [cold, warm] = [voidRatioUncertainty(inputs), voidRatioUncertainty({ ...inputs, temperature: 30 })];
    if (!cold.ok || !warm.ok) throw new Error("no void ratio");
    // 0.99565 Mg/m3 at 30 C (CRC Handbook, from memory).
    expect((1 + warm.value.value) / (1 + cold.value.value)).toBeCloseTo(0.99565, 4);
  });
});
