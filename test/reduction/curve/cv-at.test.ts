import fc from "../../properties";
import { cvAt, cvInUse, cvOfRange } from "../../../src/reduction/curve/cv-at";
import { english } from "../../../src/reduction/message";
import { inEnglish } from "../../in-english";

const value = (...given: Parameters<typeof cvAt>): number => {
  const found = cvAt(...given);
  if (!found.ok) throw new Error(english(found.reason));
  return found.value;
};
const S = [50, 100, 200, 400];
const CV = [8, 4, 2, 1];

test("a load gives its own cv; between loads cv is linear on log of stress", () => {
  S.forEach((stress, i) => expect(value(S, CV, stress)).toBe(CV[i]));
  expect(value(S, CV, Math.sqrt(100 * 200))).toBeCloseTo(3, 12);
  expect(value(S, CV, 300)).toBeCloseTo(2 - Math.log(1.5) / Math.log(2), 12);
});

test("loads without a cv are left out, and the line joins the loads around them", () => {
  for (const blank of [null, 0]) {
    expect(value(S, [8, blank, 2, 1], 100)).toBeCloseTo(5, 12);
    expect(cvAt(S, [8, 4, 2, blank], 400)).toMatchObject({ ok: false, fault: "method" });
    expect(value([50, blank, 200, 400], CV, 100)).toBeCloseTo(5, 12);
  }
});

test("reload, unloading and a load left standing are not used", () => {
  const stresses = [50, 100, 200, 100, 50, 100, 200, 200, 400, 100];
  const cvs = [8, 4, 2, null, null, 20, 15, 9, 1, 30];
  for (const stress of [50, 70, 100, 150, 200, 300, 400])
    expect(value(stresses, cvs, stress)).toBe(value(S, CV, stress));
});

test("a list that begins at the greatest stress is read from its end", () => {
  expect(value([400, 200, 100, 50], [1, 2, 4, 8], 300)).toBe(value(S, CV, 300));
  expect(value([400, null, 200, 0, 100, 50], [1, 3, 2, 3, 4, 8], 300)).toBe(value(S, CV, 300));
  // Loads under one stress are in the order of the test: the first one counts.
  expect(value([100, 100], [4, 2], 100)).toBe(4);
});

test("a stress beyond the loads, a list without cv, and values below zero are refused with the reason", () => {
  for (const stress of [49, 401])
    expect(inEnglish(cvAt(S, CV, stress))).toMatchObject({
      fault: "method",
      reason: expect.stringContaining(", from 50 to 400"),
    });
  expect(inEnglish(cvAt(S, [null, 0, null, 0], 100))).toMatchObject({
    fault: "method",
    reason: expect.stringContaining("no load"),
  });
  expect(inEnglish(cvAt(S, [8, 4, -2, 1], 100))).toMatchObject({
    fault: "input",
    reason: expect.stringContaining("row 3: cv is -2"),
  });
  expect(inEnglish(cvAt([50, -100, 200, 400], CV, 100))).toMatchObject({
    fault: "input",
    reason: expect.stringContaining("row 2: the stress is -100"),
  });
});

const adopted = [
  { from: 60, to: 120, cv: 5 },
  { from: 120, to: 800, cv: 0.9 },
];

test("the adopted cv of the range that holds the stress is in use; elsewhere the cv between the loads", () => {
  const at = (stress: number) => inEnglish(cvInUse(S, CV, stress, adopted));
  expect(at(60)).toMatchObject({ value: { cv: 5, basis: "adopted for 60 to 120" } });
  // Both ranges hold 120: the lower row counts. An adopted cv reaches beyond the loads.
  expect(at(120)).toMatchObject({ value: { cv: 0.9 } });
  expect(at(700)).toMatchObject({ value: { cv: 0.9 } });
  expect(at(50)).toMatchObject({ value: { cv: 8, basis: "between the loads, on log stress" } });
  expect(inEnglish(cvInUse(S, CV, 900, adopted))).toMatchObject({ fault: "method" });
  expect(inEnglish(cvInUse(S, CV, 100, [{ from: 120, to: 60, cv: 5 }]))).toMatchObject({
    fault: "input",
    reason: expect.stringContaining("the cv 5 is adopted from 120 to 60"),
  });
});

describe("cv over a range", () => {
  test("is the geometric mean of the loads that begin and end within it", () => {
    const found = cvOfRange(S, CV, 100, 400);
    expect(found).toMatchObject({ ok: true, value: { least: 1, greatest: 2, loads: 2 }, remarks: [] });
    expect(found.ok && found.value.mean).toBeCloseTo(Math.SQRT2, 12);
  });

  test("is that of the loads that end within it where none lies within it, and says so", () => {
    expect(inEnglish(cvOfRange(S, CV, 60, 120))).toMatchObject({
      value: { mean: 4, loads: 1 },
      remarks: ["no load lies within the range: the load that ends in it begins below it"],
    });
    // A load across the lower stress does not count beside loads within the range.
    expect(cvOfRange(S, CV, 70, 400)).toMatchObject({ value: { loads: 2 } });
  });

  test("leaves out reloads, unloadings and loads without cv", () => {
    const stresses = [50, 100, 200, 100, 200, 400];
    expect(cvOfRange(stresses, [8, 4, null, null, 30, 1], 50, 200)).toMatchObject({ value: { loads: 1, least: 4 } });
  });

  test("refuses a range without a load, and the greater stress first", () => {
    expect(inEnglish(cvOfRange(S, CV, 400, 800))).toMatchObject({
      fault: "method",
      reason: expect.stringContaining("no load that has a cv ends above 400 and not above 800"),
    });
    expect(cvOfRange(S, CV, 200, 100)).toMatchObject({ ok: false, fault: "input" });
  });

  test("lies between the least and the greatest, and grows in proportion to cv", () => {
    const cvs = fc.array(fc.double({ min: 0.01, max: 100, noNaN: true }), { minLength: 4, maxLength: 4 });
    fc.assert(
      fc.property(cvs, fc.double({ min: 0.1, max: 10, noNaN: true }), (list, factor) => {
        const [one, other] = [list, list.map((cv) => cv * factor)].map((of) => cvOfRange(S, of, 0, 400));
        if (!one?.ok || !other?.ok) throw new Error("refused");
        expect(one.value.mean).toBeGreaterThanOrEqual(one.value.least * (1 - 1e-12));
        expect(one.value.mean).toBeLessThanOrEqual(one.value.greatest * (1 + 1e-12));
        expect(other.value.mean / one.value.mean).toBeCloseTo(factor, 9);
      }),
    );
  });
});

describe("what is refused of a range of stress, and its ends", () => {
  const said = (found: ReturnType<typeof cvAt> | ReturnType<typeof cvInUse> | ReturnType<typeof cvOfRange>): string =>
    found.ok ? "answered" : `${found.fault}: ${english(found.reason)}`;

  test("its lower stress must be below its upper one", () => {
    expect(said(cvOfRange(S, CV, 100, 100))).toBe(
      "input: the range is 100 to 100: the lower stress comes first, correct it",
    );
    expect(said(cvOfRange(S, CV, 200, 100))).toMatch(/^input: the range is 200 to 100/);
    expect(said(cvInUse(S, CV, 150, [{ from: 100, to: 100, cv: 5 }]))).toBe(
      "input: the cv 5 is adopted from 100 to 100: the lower stress comes first, correct it",
    );
    expect(said(cvOfRange(S, CV, 99.9, 100))).toBe("answered");
  });

  test("an adopted cv holds at both ends of its range, and of two ranges the last", () => {
    const ranges = [
      { from: 100, to: 200, cv: 5 },
      { from: 200, to: 300, cv: 6 },
    ];
    const at = (stress: number) => {
      const found = cvInUse(S, CV, stress, ranges);
      return found.ok ? [found.value.cv, english(found.value.basis)] : [];
    };
    expect(at(100)).toEqual([5, "adopted for 100 to 200"]);
    expect(at(200)).toEqual([6, "adopted for 200 to 300"]);
    expect(at(300)[0]).toBe(6);
    expect(at(300 * (1 + 1e-12))[0]).toBe(6);
    expect(at(100 * (1 - 1e-12))[0]).toBe(5);
    expect(at(301)).toEqual([expect.closeTo(value(S, CV, 301), 12), "between the loads, on log stress"]);
  });

  test("a load belongs to the range in which it ends, the upper end included and the lower not", () => {
    const loads = (from: number, to: number) => {
      const found = cvOfRange(S, CV, from, to);
      return found.ok
        ? [found.value.loads, found.value.least, found.value.greatest, found.remarks.length]
        : said(found);
    };
    expect(loads(50, 200)).toEqual([2, 2, 4, 0]);
    expect(loads(50 * (1 + 1e-12), 200 * (1 - 1e-12))).toEqual([2, 2, 4, 0]);
    // The load that ends at 100 begins below 60, so that only the one from 100 to 200 lies within.
    expect(loads(60, 200)).toEqual([1, 2, 2, 0]);
    expect(loads(60, 150)).toEqual([1, 4, 4, 1]);
    expect(loads(400, 800)).toBe(
      "method: no load that has a cv ends above 400 and not above 800: give stresses around a load, in the unit of the loads",
    );
  });

  test("a stress beyond the loads is named with theirs", () => {
    expect(said(cvAt(S, CV, 401))).toMatch(
      /^method: the stress \(401\) lies beyond the loads that have a cv, from 50 to 400/,
    );
    expect(said(cvAt([100], [4], 100))).toBe("answered");
    expect(said(cvAt([100], [null], 100))).toBe(
      "method: no load of first loading has a cv: choose the columns of stress and of cv, or type the cv adopted",
    );
  });
});
