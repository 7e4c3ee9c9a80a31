/** The slope of secondary compression, over the tail or over a span of times. */
import { secondarySlope } from "../../../../src/reduction/increment/constructions/secondary";
import { cleanReadings } from "../../../../src/reduction/increment/readings";
import type { Increment } from "../../../../src/reduction/increment/reduce";
import { english, say } from "../../../../src/reduction/message";
import { given, notApplicable } from "../../../../src/reduction/outcome";
import { BY_HAND } from "../../../generators/time-curves";
import { END, FIT } from "./exact-load";

/** 12 a log cycle, after a primary of 400; a fit whose primary ends at 44 min, and no log-time construction. */
const READING = (t: number) => 1400 + 12 * Math.log10(t);
const REFUSED = notApplicable(say`the log-of-time method does not apply: too few readings`);
function load(sense = 1, more: Partial<Increment> = {}, times: readonly number[] = BY_HAND): Increment {
  const cleaned = cleanReadings(times, times.map((t) => 3000 + sense * READING(t))); // prettier-ignore
  const fit = given({ ...FIT, primary: sense * 400 });
  return { cleaned, theory: fit, fit, logTime: REFUSED, rootTime: REFUSED, ...more };
}
const of = (increment: Increment, from?: number, to?: number) => {
  const found = secondarySlope(increment, from, to);
  return found.ok ? [found.value, ...found.remarks.map(english)] : `${found.fault}: ${english(found.reason)}`;
};
/** A log-time construction as far as this function asks for it. */
const logTime = (parts: object) => ({ logTime: given(parts, [say`look`]) }) as unknown as Partial<Increment>;

test("over a span it is the least-squares slope of the readings, ends included, positive in the sense of the movement", () => {
  expect(of(load(), 120, 480)).toEqual([expect.closeTo(12, 9)]);
  expect(of(load(-1), 120, 480)).toEqual([expect.closeTo(12, 9)]);
  const bent = load(1, { cleaned: cleanReadings(BY_HAND, BY_HAND.map((t) => READING(t) + (t > 480 ? 90 : 0))) }); // prettier-ignore
  expect(of(bent, 120, 480)).toEqual([expect.closeTo(12, 9)]);
  expect(of(bent, 120)).not.toEqual([expect.closeTo(12, 9)]);
});

test("a reading that the fit found wrong does not count", () => {
  const cleaned = cleanReadings(BY_HAND, BY_HAND.map((t) => READING(t) + (t === 240 ? 50 : 0))); // prettier-ignore
  const fit = given({ ...FIT, leftOut: [BY_HAND.indexOf(240)] });
  expect(of(load(1, { cleaned, fit }), 120)).toEqual([expect.closeTo(12, 9)]);
  expect(of(load(1, { cleaned, fit: REFUSED }), 120)).not.toEqual([expect.closeTo(12, 9)]);
});

test("without a start the span begins with the tail, or the first reading; without an end it ends with the last", () => {
  const withTail = load(1, logTime({ tail: { from: 240 }, t100: END }));
  expect(of(withTail, undefined, 480)).toEqual([expect.closeTo(12, 9), "the tail is only 0.30 of a log cycle long"]);
  expect(of(load(), undefined, 480)).toEqual([expect.closeTo(12, 9)]);
  expect(of(load(), 480)).toEqual([expect.closeTo(12, 9), "the tail is only 0.48 of a log cycle long"]);
});

test("a span of half a log cycle and more has no remark on its length", () => {
  const times = (last: number) => [...BY_HAND.filter((t) => t < 100), 100, last];
  expect(of(load(1, {}, times(316.3)), 100)).toEqual([expect.closeTo(12, 9)]);
  expect(of(load(1, {}, times(315)), 100)).toEqual([
    expect.closeTo(12, 9),
    "the tail is only 0.50 of a log cycle long",
  ]);
});

test("readings of the span before the end of primary do not make it long enough", () => {
  const short = "secondary compression needs 0.25 of a log cycle; go on reading";
  const until = (last: number) => BY_HAND.filter((t) => t <= last);
  expect(of(load(1, {}, [...until(60), 80]), 8)).toBe(
    `method: the readings of the span past the end of primary span 0.12 of a log cycle: ${short}`,
  );
  expect(of(load(1, {}, until(30)), 8)).toBe(
    `method: no two of the readings of the span lie past the end of primary: ${short}`,
  );
  // t100 of the construction goes before the end of primary of the fit; without both all readings count.
  expect(of(load(1, logTime({ tail: { from: 8 }, t100: 4 }), until(30)), 8)).toEqual([expect.closeTo(12, 9)]);
  expect(of(load(1, { fit: REFUSED }, until(30)), 8)).toEqual([expect.closeTo(12, 9)]);
});

test("a span with fewer than two readings is refused", () => {
  const needs = "method: secondary compression needs 2 readings in its span";
  expect(of(load(), 500)).toBe(`${needs} (500 to 1440 min); there is 1`);
  expect(of(load(), 500, 600)).toBe(`${needs} (500 to 600 min); there are none`);
  expect(of(load(), 480, 1440)).toHaveLength(2);
});

test("without a span it is the tail of the construction, with its remarks, or why there is none", () => {
  expect(of(load(1, logTime({ tailSlope: -7 })))).toEqual([7, "look"]);
  expect(of(load(1, logTime({ noTailSlope: say`too short` })))).toBe("method: too short");
  expect(of(load())).toBe("method: the log-of-time method does not apply: too few readings");
  const bad = cleanReadings([-1], [5]);
  expect(of(load(1, { cleaned: bad }))).toMatch(/^input: row 1 of the times is -1/);
  expect(of(load(1, { cleaned: bad }), 100, 200)).toMatch(/^input: row 1 of the times is -1/);
});
