/** The beginning of a load, straight on root time: where it ends, which first readings are left out, and what is said. */
import {
  disturbedRemark,
  pickedBeginning,
  straightBeginning,
} from "../../../../src/reduction/increment/constructions/beginning";
import type { Series } from "../../../../src/reduction/increment/readings";
import { shareOf } from "../../../../src/reduction/increment/share";
import { english } from "../../../../src/reduction/message";
import { BY_HAND } from "../../../generators/time-curves";
import { exact, FIT, seriesOf, timeAt } from "./exact-load";

/** A line on root time: 1000 at time 0, 50 a root minute. */
const LINE = (t: number) => 1000 + 50 * Math.sqrt(t);
const SIXTY = timeAt(0.6);
/** Eleven readings up to 60 % of primary, and later ones. */
const EARLY = [0.1, 0.25, 0.5, 1, 1.5, 2, 3, 4, 6, 8, 10];
const TIMES = [...EARLY, ...BY_HAND.filter((t) => t > SIXTY)];
const off = (...moved: number[]): Series => seriesOf(TIMES, (t, i) => LINE(t) + (moved[i] ?? 0));

test("it goes to the last reading up to 60 % of primary, as common practice has it", () => {
  const edge = seriesOf([1, 2, 4, SIXTY * 0.9999, SIXTY * 1.0001, 100], LINE);
  const found = straightBeginning(edge, FIT)!;
  expect([found.start, found.end, found.disturbed]).toEqual([0, 4, 0]);
  expect([found.line.intercept, found.line.slope].map((one) => Number(one.toFixed(9)))).toEqual([1000, 50]);
  // A record that stops before goes to its end.
  expect(straightBeginning(seriesOf([1, 2, 4], LINE), FIT)?.end).toBe(3);
});

test("on exact theory it leaves nothing out", () => expect(straightBeginning(exact(), FIT)?.disturbed).toBe(0));

test("with fewer than two readings there is none", () => {
  expect(straightBeginning(seriesOf([1, 100, 200], LINE), FIT)).toBeUndefined();
  expect(straightBeginning(seriesOf([1, 2, 100, 200], LINE), FIT)?.end).toBe(2);
});

test("first readings off the line are left out, up to three at once, and the line is that of the others", () => {
  expect(EARLY.at(-1)).toBeLessThan(SIXTY);
  for (const [moved, count] of [
    [[-20], 1],
    [[-20, -9], 2],
    [[-20, -9, -4], 3],
  ] as const) {
    const found = straightBeginning(off(...moved), FIT)!;
    expect([found.start, found.disturbed]).toEqual([count, count]);
    expect(found.line.slope).toBeCloseTo(50, 9);
  }
  // One that hides behind four others is not looked for.
  expect(straightBeginning(off(-20, -20, -20, -20), FIT)?.disturbed).toBe(0);
  // Of seven readings up to 60 % two are the most: 40 % of them, rounded up, less one.
  const seven = (...moved: number[]) => seriesOf(EARLY.slice(0, 7), (t, i) => LINE(t) + (moved[i] ?? 0));
  expect(straightBeginning(seven(-20, -9), FIT)?.disturbed).toBe(2);
  expect(straightBeginning(seven(-20, -9, -4), FIT)?.disturbed).toBeLessThan(3);
});

test("at least three readings stay", () => {
  const few = (count: number) => seriesOf(EARLY.slice(-count), (t, i) => LINE(t) - (i === 0 ? 20 : 0));
  expect(straightBeginning(few(4), FIT)?.disturbed).toBe(1);
  expect(straightBeginning(few(3), FIT)?.disturbed).toBe(0);
});

test("a reading within the noise stays", () => {
  const noisy = { ...FIT, noise: 20 };
  expect(straightBeginning(off(-20), noisy)?.disturbed).toBe(0);
});

test("a picked beginning goes through the readings of the span, ends included, and leaves none out", () => {
  expect(pickedBeginning(off(-20), 0.25, 4)).toMatchObject({ start: 1, end: 8, disturbed: 0 });
  expect(pickedBeginning(off(-20), 0.25, 4)?.line.slope).toBeCloseTo(50, 9);
  expect(pickedBeginning(off(-20), undefined, 4)).toMatchObject({ start: 0, end: 8 });
  expect(pickedBeginning(off(), 480)).toMatchObject({ start: TIMES.length - 2, end: TIMES.length });
  expect(pickedBeginning(off(), 500)).toBeUndefined();
});

test("the remark gives the largest distance from the line and the rows", () => {
  const said = (...moved: number[]) => {
    const series = off(...moved);
    return disturbedRemark(series, straightBeginning(series, FIT)!, shareOf(2, FIT.primary)).map(english);
  };
  expect(said()).toEqual([]);
  expect(said(-20)).toEqual([
    "the first reading, row 1 (0.1 min), stands off the straight part on root time by up to 20 in the readings, 5 % of primary and is left out of the beginning: bedding, slow loading or a late start of the clock",
  ]);
  expect(said(9, 20)).toEqual([
    "the first 2 readings, row 1 (0.1 min), row 2 (0.25 min), stand off the straight part on root time by up to 20 in the readings, 5 % of primary and are left out of the beginning: bedding, slow loading or a late start of the clock",
  ]);
});
