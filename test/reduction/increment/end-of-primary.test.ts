import fc from "../../properties";
import { endOfPrimary, END_RULES, timeOf } from "../../../src/reduction/increment/end-of-primary";
import { curveAt, type Curve } from "../../../src/reduction/increment/fit/model";
import { endByLogTime, endByRootTime } from "../../generators/end-of-primary";

const TRUTH = { "log time": endByLogTime, "root time": endByRootTime };
const curve = (rate: number, creep: number, sharpness: number, d0 = 2, primary = 1, begins = 1.10135): Curve => ({
  rate,
  d0,
  primary,
  tail: creep * primary,
  onset: { sharpness, begins },
});
const truthOf = (rule: (typeof END_RULES)[number], made: Curve) =>
  TRUTH[rule]({
    exact: (t) => curveAt(made, t),
    truth: { t50: 0.19673 / made.rate, d0: made.d0, d100: made.d0 + made.primary },
  });

test("without creep, log time gives t50, t90 and t100 at T = 0.19673, 0.84809 and 1.10135", () => {
  // Sources: Terzaghi's series (test/published/terzaghi.test.ts) for the first two, the same calculation for the third.
  const end = endOfPrimary("log time", curve(0.01, 0, 3));
  expect((end?.t50 ?? 0) * 0.01).toBeCloseTo(0.19673, 4);
  expect((end?.t90 ?? 0) * 0.01).toBeCloseTo(0.84809, 4);
  expect((end?.t100 ?? 0) * 0.01).toBeCloseTo(1.10135, 3);
});

describe.each(END_RULES)("%s", (rule) => {
  test.each([
    [0, 3],
    [0.05, 2],
    [0.1, 3],
    [0.16, 7],
    [0.3, 2],
    [0.3, 4.5],
    [0.2, 2, 0.6],
  ])(
    "with creep of %d per cycle and sharpness %d the lines meet where a search in small steps finds them",
    (creep, sharpness, begins = 1.10135) => {
      const made = curve(0.02, creep, sharpness, 2, 1, begins);
      const end = endOfPrimary(rule, made);
      const truth = truthOf(rule, made);
      expect(Math.abs((end?.d100 ?? 0) - truth.d100)).toBeLessThan(0.003);
      // The curve is flat at d100 by root time: 0.3 % of primary is up to 6 % of the time.
      expect(Math.abs((end?.t100 ?? 0) / truth.t100 - 1)).toBeLessThan(rule === "log time" ? 0.01 : 0.06);
    },
  );

  test("a mirrored, shifted or slower curve has the same end, mirrored, shifted or later", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.001, max: 1, noNaN: true }),
        fc.double({ min: 0, max: 0.3, noNaN: true }),
        fc.constantFrom(2, 3, 4.5, 7),
        fc.double({ min: -5, max: 5, noNaN: true }),
        (rate, creep, sharpness, d0) => {
          const one = endOfPrimary(rule, curve(1, creep, sharpness, 0, 1));
          const other = endOfPrimary(rule, curve(rate, creep, sharpness, d0, -0.4));
          for (const t of ["t50", "t90", "t100"] as const)
            expect(((other?.[t] ?? 0) * rate) / (one?.[t] ?? 0)).toBeCloseTo(1, 5);
          expect((other?.d100 ?? 0) - d0).toBeCloseTo(-0.4 * (one?.d100 ?? 0), 6);
        },
      ),
      { numRuns: 40 },
    );
  });
});

test("a curve whose tail is as steep as the curve has no end of primary", () => {
  expect(endOfPrimary("log time", curve(0.02, 0.7, 2))).toBeUndefined();
});

test("a reading that the curve never reaches has no time", () => {
  expect(timeOf(curve(0.02, 0, 3), 3.2)).toBeUndefined();
  expect(timeOf(curve(0.02, 0, 3), 1.9)).toBeUndefined();
  expect(timeOf(curve(0.02, 0, 3), 2.5)).toBeCloseTo(9.8365, 3);
});
