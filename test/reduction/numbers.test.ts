/**
 * The numbers of the reduction stay as they are, to five digits: for two printed records, and for one made record of every
 * kind (test/generators). The snapshot says nothing about what is right, as test/published does; it shows that a change of
 * the code changes a number. If the change is meant, `jest --updateSnapshot` writes the numbers anew, and the commit says why.
 */
import { designParameters } from "../../src/reduction/curve/design";
import { fieldCurve } from "../../src/reduction/curve/field-curve";
import { compressionIndex, recompressionIndex, swellingIndex } from "../../src/reduction/curve/indices";
import { preconsolidation, preconsolidationSpread } from "../../src/reduction/curve/preconsolidation";
import { sampleQuality } from "../../src/reduction/curve/sample-quality";
import { testCurve, type TestCurve } from "../../src/reduction/curve/shape/points";
import { standingPicks } from "../../src/reduction/curve/standing-picks";
import { firstOf, lastOf } from "../../src/reduction/numeric/lists";
import { logTimeLines, rootTimeLines } from "../../src/reduction/increment/constructions/lines";
import { secondarySlope } from "../../src/reduction/increment/constructions/secondary";
import { progress } from "../../src/reduction/increment/progress";
import { suggestMethod } from "../../src/reduction/increment/suggest";
import { reduceIncrement } from "../../src/reduction/increment/reduce";
import { makeCurve, RECIPES } from "../generators/compression-curves";
import { SCENARIOS } from "../generators/time-curves";
import { clay, rebound } from "./example-data";
import loads from "../published/data/time-curves.json";

/** Lists longer than this are shown by their length, ends and sum. */
const LONG = 8;

/** The numbers and names of a result in their order, numbers to five digits; of its remarks the count, no words. */
function numbersOf(value: unknown): (number | string)[] {
  if (typeof value === "number") return [Number(value.toPrecision(5))];
  if (typeof value === "string" || typeof value === "boolean") return [String(value)];
  if (typeof value !== "object" || value === null || "said" in value || "digits" in value) return [];
  if (Array.isArray(value) || ArrayBuffer.isView(value)) {
    const all = Array.from(value as Iterable<unknown>).flatMap(numbersOf);
    const numbers = all.filter((one) => typeof one === "number");
    return numbers.length > LONG
      ? [numbers.length, firstOf(numbers), lastOf(numbers), ...numbersOf(numbers.reduce((sum, one) => sum + one, 0))]
      : all;
  }
  return Object.entries(value).flatMap(([key, one]) => {
    if (key === "ok" || key === "label") return [];
    return key === "remarks" && Array.isArray(one) ? [`${one.length} remarks`] : numbersOf(one);
  });
}

/** A line for each part of a result. */
const lines = (parts: Readonly<Record<string, unknown>>): string =>
  Object.entries(parts)
    .map(([name, part]) => `${name}: ${numbersOf(part).join(" ")}`)
    .join("\n");

/** The series until the middle of its readings, and the whole, by both procedures. */
function ofLoad(times: readonly number[], readings: readonly number[]): string {
  const half = Math.ceil(0.6 * times.length);
  const early = reduceIncrement(times.slice(0, half), readings.slice(0, half));
  const whole = reduceIncrement(times, readings);
  const { cleaned, logTime, rootTime } = whole;
  const last = lastOf(times);
  return lines({
    ...whole,
    drawn: reduceIncrement(times, readings, {}, "drawn"),
    earlyByLog: progress(early, "log time"),
    earlyByRoot: progress(early, "root time"),
    byLog: progress(whole, "log time"),
    byRoot: progress(whole, "root time"),
    secondary: [secondarySlope(whole), secondarySlope(whole, last / 6, last)],
    suggested: suggestMethod(whole),
    logLines: cleaned.ok && logTime.ok && logTimeLines(cleaned.value, logTime.value),
    rootLines: cleaned.ok && rootTime.ok && rootTimeLines(cleaned.value, rootTime.value),
  });
}

function ofCurve(test: TestCurve): string {
  const stresses = test.points.map(({ stress }) => stress);
  const inSituStress = Math.sqrt((stresses[1] ?? NaN) * (stresses[2] ?? NaN));
  const e0 = 1.05 * (test.kind === "e" ? firstOf(test.points).value : 1);
  const preconsolidationStress = preconsolidation(test);
  return lines({
    spread: preconsolidationSpread(test),
    Cc: compressionIndex(test),
    Cr: recompressionIndex(test),
    Cs: swellingIndex(test),
    picks: standingPicks(test),
    field: fieldCurve({ test, inSituStress, initialVoidRatio: e0 }),
    quality: sampleQuality(test, inSituStress, e0, 1.5),
    design: designParameters({
      ...{ test, inSituStress, increase: inSituStress, initialVoidRatio: e0 },
      preconsolidationStress: preconsolidationStress.ok
        ? { ok: true, value: preconsolidationStress.value.stress, remarks: [] }
        : preconsolidationStress,
    }),
  });
}

test("of a printed load", () => expect(ofLoad(loads.das11_11.minutes, loads.das11_11.inches)).toMatchSnapshot());

test.each([
  ["without an unloading", clay],
  ["with a loop", rebound],
] as const)("of a printed curve %s", (_, test) => expect(ofCurve(test)).toMatchSnapshot());

test.each(SCENARIOS.map(({ name, make }) => [name, make] as const))("of a made load: %s", (_, make) => {
  const { times, readings } = make(7);
  expect(ofLoad(times, readings)).toMatchSnapshot();
});

test.each(Object.keys(RECIPES))("of a made curve: %s", (recipe) => {
  const { stresses, values, kind } = makeCurve(recipe, 8);
  const test = testCurve(stresses, values, kind);
  expect(test.ok && ofCurve(test.value)).toMatchSnapshot();
});
