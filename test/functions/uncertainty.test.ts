/**
 * Compares uncertainties with a simulation of their inputs and with derivatives by mathjs: the project made neither.
 */
import { derivative, evaluate } from "mathjs";
import {
  CV_UNCERTAINTY,
  STRAIN_UNCERTAINTY,
  STRESS_UNCERTAINTY,
  VOID_RATIO_UNCERTAINTY,
} from "../../src/functions/uncertainty";
import { refusal } from "./refusal";

/** Normal random numbers from a fixed seed, so that every run is equal (mulberry32; Box and Muller). */
function normal(seed: number): () => number {
  let a = seed;
  const uniform = () => {
    a = (a + 0x6d2b79f5) | 0;
    let t = Math.imul(a ^ (a >>> 15), 1 | a);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return (((t ^ (t >>> 14)) >>> 0) + 0.5) / 4294967296;
  };
  return () => Math.sqrt(-2 * Math.log(uniform())) * Math.cos(2 * Math.PI * uniform());
}

type Inputs = Readonly<Record<string, readonly [value: number, u: number]>>;

/** Standard deviation of a formula when its inputs scatter. */
function simulated(formula: (of: Record<string, number>) => number, inputs: Inputs, draws = 40_000): number {
  const scatter = normal(7);
  const values = Array.from({ length: draws }, () =>
    formula(Object.fromEntries(Object.entries(inputs).map(([name, [value, u]]) => [name, value + u * scatter()]))),
  );
  const mean = values.reduce((sum, value) => sum + value, 0) / draws;
  return Math.sqrt(values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / (draws - 1));
}

/** The standard uncertainty, with the derivatives that mathjs finds from the text of the formula. */
const byDerivatives = (formula: string, inputs: Inputs): number => {
  const at = Object.fromEntries(Object.entries(inputs).map(([name, [value]]) => [name, value]));
  return Math.sqrt(
    Object.entries(inputs).reduce((sum, [name, [, u]]) => sum + (derivative(formula, name).evaluate(at) * u) ** 2, 0),
  );
};

const E = "H * (pi * D^2 / 4000) * Gs / (Mrd - Mr) - 1";
const SPECIMEN: Inputs = {
  H: [25.4, 0.012],
  D: [63.5, 0.012],
  Mr: [74.36, 0.006],
  Mrd: [163.66, 0.006],
  Gs: [2.72, 0.012],
};

describe("void ratio", () => {
  const u = VOID_RATIO_UNCERTAINTY(25.4, 63.5, 74.36, 163.66, 2.72, 0.012, 0.012, 0.006, 0.012, null, "u")[0][0];

  test("agrees with mathjs's derivatives", () => {
    expect(u).toBeCloseTo(byDerivatives(E, SPECIMEN), 10);
    const e = VOID_RATIO_UNCERTAINTY(25.4, 63.5, 74.36, 163.66, 2.72, 0.012, 0, 0, 0, 1, "e")[0][0];
    expect(e).toBeCloseTo(evaluate(E, { H: 25.4, D: 63.5, Gs: 2.72, Mrd: 163.66, Mr: 74.36 }), 12);
  });

  test("agrees with a simulation, within the scatter of the simulation", () => {
    const of = simulated(({ H, D, Gs, Mrd, Mr }) => (H * ((Math.PI * D ** 2) / 4000) * Gs) / (Mrd - Mr) - 1, SPECIMEN);
    expect(Math.abs(u / of - 1)).toBeLessThan(0.02);
  });

  test("the interval is k times u to both sides, and the largest contribution is named", () => {
    const table = Object.fromEntries(
      VOID_RATIO_UNCERTAINTY(25.4, 63.5, 74.36, 163.66, 2.72, 0.012, 0.012, 0.006, 0.012, 3).map(([label, value]) => [
        label,
        value,
      ]),
    );
    expect((table.high - table.low) / 2).toBeCloseTo(3 * u, 12);
    expect(table.largest).toMatch(/^the specific gravity, \d\d %$/);
  });

  test("inches give the same ratio as millimetres", () => {
    const inches = VOID_RATIO_UNCERTAINTY(
      1,
      2.5,
      74.36,
      163.66,
      2.72,
      0.012 / 25.4,
      0.012 / 25.4,
      0.006,
      0.012,
      null,
      "u",
      "in",
    )[0][0];
    expect(inches).toBeCloseTo(u, 10);
  });

  test("an input without an uncertainty gets a remark; a negative one is refused", () => {
    expect(VOID_RATIO_UNCERTAINTY(25.4, 63.5, 74.36, 163.66, 2.72, 0.01, null, 0, "", null, "remark")[0][0]).toMatch(
      /no uncertainty is stated for the specific gravity/,
    );
    expect(refusal(() => VOID_RATIO_UNCERTAINTY(25.4, 63.5, 74.36, 163.66, 2.72, -1))).toMatch(
      /-1: enter a standard deviation/,
    );
    expect(refusal(() => VOID_RATIO_UNCERTAINTY(25.4, 63.5, 74.36, 163.66, 2.72))).toMatch(/no uncertainty is stated/);
  });
});

test("strain, with the apparatus", () => {
  const inputs: Inputs = { d: [3.2, 0.0008], H: [25.4, 0.012], a: [0.05, 0.0012] };
  const u = STRAIN_UNCERTAINTY(3.2, 25.4, 0.0008, 0.012, 0.05, 0.0012, null, "u")[0][0];
  expect(u).toBeCloseTo(byDerivatives("(d - a) / H", inputs), 12);
  expect(Math.abs(u / simulated(({ d, H, a }) => (d - a) / H, inputs) - 1)).toBeLessThan(0.02);
});

test("stress, in any unit", () => {
  const inputs: Inputs = { F: [1, 0.003], D: [63.5, 0.012] };
  const relative = byDerivatives("F / (pi * D^2 / 4)", inputs) / (1 / ((Math.PI * 63.5 ** 2) / 4));
  expect(STRESS_UNCERTAINTY(400, 63.5, 0.003, 0.012, null, "u")[0][0]).toBeCloseTo(400 * relative, 9);
  expect(STRESS_UNCERTAINTY(4.2, 63.5, 0.003, 0.012, null, "u")[0][0]).toBeCloseTo(4.2 * relative, 11);
});

describe("cv", () => {
  const of = (method: string, item: string) => CV_UNCERTAINTY(1.4, method, 1.3, 1.5, 20, 0.02, 2, item)[0][0];

  test("the interval is a factor, from the interval of the fit and the height", () => {
    const relative = Math.sqrt((1.5 * (Math.log(1.5 / 1.3) / 4)) ** 2 + 0.015 ** 2 + (2 * (0.02 / 20)) ** 2);
    expect(of("log time", "u")).toBeCloseTo(1.4 * relative, 10);
    expect(of("log time", "low") * of("log time", "high")).toBeCloseTo(1.4 ** 2, 10);
    expect(of("log time", "high") / 1.4).toBeCloseTo(Math.exp(2 * relative), 10);
    expect(of("root time", "u")).toBeGreaterThan(1.8 * of("log time", "u"));
  });

  test("an impossible interval of the fit is refused", () =>
    expect(refusal(() => CV_UNCERTAINTY(1.4, "log time", 1.5, 1.3, 20))).toMatch(/must have two ends/));
});
