import fc from "../../properties";
import { curveAt, type CurveBranch } from "../../../src/reduction/curve/curve-at";
import { kindSeen, testCurve, type Kind } from "../../../src/reduction/curve/shape/points";
import { then } from "../../../src/reduction/outcome";
import { english } from "../../../src/reduction/message";
import { inEnglish } from "../../in-english";

const read = (stresses: number[], values: number[], stress: number, branch?: CurveBranch, kind: Kind = "e") =>
  then(testCurve(stresses, values, kind), (test) => curveAt(test, stress, branch));
const value = (...given: Parameters<typeof read>): number => {
  const found = read(...given);
  if (!found.ok) throw new Error(english(found.reason));
  return found.value;
};

// First loading to 400, a loop down to 50, on to 800, and unloading at the end.
const S = [25, 50, 100, 200, 400, 200, 50, 200, 400, 800, 200, 50];
const E = [1.2, 1.18, 1.15, 1.05, 0.9, 0.91, 0.94, 0.915, 0.895, 0.74, 0.77, 0.8];

test("at the stress of a load the value is exactly that of the load", () => {
  [25, 50, 100, 200, 400, 800].forEach((stress) => expect(value(S, E, stress)).toBe(E[S.indexOf(stress)]));
  [800, 200, 50].forEach((stress) => expect(value(S, E, stress, "unloading")).toBe(E[S.lastIndexOf(stress)]));
});

test("between two loads the value is linear on log of stress: half-way on log of stress is half-way in value", () => {
  expect(value(S, E, Math.sqrt(100 * 200))).toBeCloseTo((1.15 + 1.05) / 2, 12);
  // Calculated by hand: 1.05 - 0.15 log(300/200) / log(2).
  expect(value(S, E, 300)).toBeCloseTo(1.05 - (0.15 * Math.log10(1.5)) / Math.log10(2), 12);
  expect(value(S, E, 100, "unloading")).toBeCloseTo((0.77 + 0.8) / 2, 12);
});

test("the loop is not part of the loading curve, which continues from its own point", () => {
  // Without the loop the curve is the same.
  const keep = [0, 1, 2, 3, 4, 9];
  const [s, e] = [S.filter((_, i) => keep.includes(i)), E.filter((_, i) => keep.includes(i))];
  for (const stress of [30, 60, 150, 399, 401, 790]) expect(value(S, E, stress)).toBe(value(s, e, stress));
});

test("if the test ends on a reload, the last unloading is that of its last loop", () => {
  expect(value(S.slice(0, 10), E.slice(0, 10), 100, "unloading")).toBeCloseTo((0.91 + 0.94) / 2, 12);
  expect(inEnglish(read(S.slice(0, 5), E.slice(0, 5), 100, "unloading"))).toMatchObject({
    ok: false,
    fault: "method",
    reason: expect.stringContaining("no unloading"),
  });
});

test("the rows of the unloading alone are enough for the unloading branch", () => {
  expect(value([800, 200, 50], [0.74, 0.77, 0.8], 100, "unloading")).toBeCloseTo(0.785, 12);
});

test.each<[number, CurveBranch]>([
  [24, "loading"],
  [801, "loading"],
  [49, "unloading"],
  [801, "unloading"],
])("a stress of %s is beyond the %s curve: the refusal names its ends", (stress, branch) => {
  const found = read(S, E, stress, branch);
  expect(found).toMatchObject({ ok: false, fault: "method" });
  expect(found.ok ? found : english(found.reason)).toMatch(
    branch === "loading" ? /, from 25 to 800/ : /, from 50 to 800/,
  );
});

test("where water is added under a load, lower stresses use the value before, and this stress and higher ones the value after", () => {
  // Collapse at 100: 1.15 before, 1.05 after.
  const [s, e] = [
    [25, 50, 100, 100, 200, 400],
    [1.2, 1.18, 1.15, 1.05, 1.0, 0.9],
  ];
  expect(value(s, e, Math.sqrt(50 * 100))).toBeCloseTo((1.18 + 1.15) / 2, 12);
  expect(value(s, e, 100)).toBe(1.05);
  expect(value(s, e, Math.sqrt(100 * 200))).toBeCloseTo((1.05 + 1.0) / 2, 12);
});

test("the curve of a specimen that swelled at seating is read there too", () => {
  const [s, e] = [
    [5, 10, 20, 40, 80, 160],
    [1.1, 1.15, 1.14, 1.1, 1.0, 0.85],
  ];
  expect(value(s, e, 5)).toBe(1.1);
  expect(value(s, e, 10)).toBe(1.15);
});

test("the kind is found from the direction: void ratios fall as the stress rises, strains rise", () => {
  expect(kindSeen(S, E)).toBe("e");
  const strains = E.map((e) => (1.2 - e) / 2.2);
  expect(strains[0]).toBe(0);
  expect(kindSeen(S, strains)).toBe("strain");
  expect(kindSeen([10, 100], [0, 0.05])).toBe("strain");
  // A blank void ratio in the first row is 0 on the desktop, and does not turn the others into strains.
  expect(kindSeen(S, [0, ...E.slice(1)])).toBe("e");
  expect(kindSeen([null, 0], [null, 0])).toBe("e");
  expect(value(S, strains, 300, "loading", "strain")).toBeCloseTo((1.2 - value(S, E, 300)) / 2.2, 12);
});

/** Loads that double, with void ratios that fall by random steps. */
const curve = fc
  .tuple(fc.integer({ min: 1, max: 100 }), fc.array(fc.integer({ min: 1, max: 100 }), { minLength: 3, maxLength: 9 }))
  .map(([first, falls]) => ({
    from: first,
    span: 2 ** (falls.length - 1),
    stresses: falls.map((_, i) => first * 2 ** i),
    values: falls.map((_, i) => 3 - falls.slice(0, i).reduce((sum, fall) => sum + fall / 1000, 0)),
  }));
const share = fc.integer({ min: 0, max: 1_000_000 }).map((part) => part / 1_000_000);

test("a falling curve gives falling values, each within those of the two loads around it", () => {
  fc.assert(
    fc.property(curve, share, share, ({ from, span, stresses, values }, a, b) => {
      const low = from * span ** Math.min(a, b);
      const above = value(stresses, values, low);
      const below = value(stresses, values, from * span ** Math.max(a, b));
      expect(below).toBeLessThanOrEqual(above + 1e-12);
      const k = Math.max(
        1,
        stresses.findIndex((stress) => stress >= low),
      );
      expect(above).toBeLessThanOrEqual((values[k - 1] ?? NaN) + 1e-12);
      expect(above).toBeGreaterThanOrEqual((values[k] ?? NaN) - 1e-12);
    }),
  );
});

test("stresses all in another unit give the same value", () => {
  fc.assert(
    fc.property(
      curve,
      share,
      fc.constantFrom(0.001, 0.02088543, 20.885434, 47.88),
      ({ from, span, stresses, values }, part, unit) => {
        const at = from * span ** part;
        const other = value(
          stresses.map((stress) => stress * unit),
          values,
          at * unit,
        );
        expect(Math.abs(other - value(stresses, values, at))).toBeLessThan(1e-9);
      },
    ),
  );
});

test("a collapse on wetting is a step: the curve comes down to it from the load before, and goes on from below", () => {
  const [s, e] = [
    [25, 50, 100, 200, 200, 400],
    [0.8, 0.79, 0.77, 0.74, 0.64, 0.6],
  ];
  expect(value(s, e, Math.sqrt(100 * 200))).toBeCloseTo((0.77 + 0.74) / 2, 12);
  expect(value(s, e, 200)).toBe(0.64);
  expect(value(s, e, Math.sqrt(200 * 400))).toBeCloseTo((0.64 + 0.6) / 2, 12);
});
