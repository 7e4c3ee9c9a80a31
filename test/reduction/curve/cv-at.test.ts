import { cvAt } from "../../../src/reduction/curve/cv-at";
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
