/** Preconsolidation stress by every method, with its interval, and the methods side by side. */
import { say, fixed, listed, joined, type Message } from "../message";
import { given, notApplicable, type Given, type Outcome } from "../outcome";
import { METHOD_NAMES, METHOD_SAID, type MethodName } from "./method-words";
import { bilogarithmic } from "./methods/bilogarithmic";
import { casagrande } from "./methods/casagrande";
import { ALONE, effectOn } from "./methods/habits";
import { intersection } from "./methods/intersection";
import { yieldInterval } from "./methods/interval";
import { janbu } from "./methods/janbu";
import { shown, type Method, type MethodOptions, type MethodReading } from "./methods/method";
import { pachecoSilva } from "./methods/pacheco-silva";
import type { TestCurve } from "./shape/points";
import { readCurve, type CurveReading } from "./methods/reading";
import type { CurvePicks } from "./picks";
import { work } from "./methods/work";
import { firstOf, lastOf, nth } from "../numeric/lists";
import { medianOfSorted } from "../numeric/median";

/** The methods by the names that a user types. */
const METHODS = {
  casagrande,
  work,
  bilog: bilogarithmic,
  intersection,
  pacheco_silva: pachecoSilva,
  janbu,
} as const satisfies Readonly<Record<MethodName, Method>>;

/** The greatest stress should be this many times the result (common practice, no source; the aim is eight). */
const REACH = 4;

/**
 * A result gets a remark if it lies above the upper end of the range times this factor, or below the lower end over it.
 * Of 1600 made curves of 27 kinds Casagrande's construction gives none such, and Pacheco Silva's gives one for most curves with a
 * steep recompression.
 */
const OUTSIDE = 1.05;

export interface Preconsolidation extends MethodReading {
  readonly method: MethodName;
  /**
   * Range that the points allow, at about 95 percent, widened to hold the reading of the method. The choice of the
   * method is not part of it.
   */
  readonly low: number;
  readonly high: number;
}

export interface PreconsolidationOptions extends MethodOptions {
  readonly method?: MethodName;
  readonly picks?: CurvePicks;
}

/** Applies one method to a curve. Refuses a result below the second load. */
function readMethod(reading: CurveReading, name: MethodName, options: MethodOptions): Outcome<MethodReading> {
  const result = METHODS[name](reading, options);
  if (!result.ok) return result;
  const { stress } = result.value;
  const { points } = reading.curve;
  if (stress < nth(points, 1).stress)
    return notApplicable(
      say`the curve bends at about ${shown(stress)}, before the second load (${shown(nth(points, 1).stress)}): yield cannot be read`,
    );
  // Compared as it is shown: a ratio that reads 4.0 is enough.
  const reach = Number((lastOf(points).stress / stress).toFixed(1));
  const short =
    reach < REACH
      ? [say`the greatest stress is only ${fixed(reach, 1)} times the result: load to ${REACH} times or more`]
      : [];
  return given(result.value, [...reading.remarks, ...result.remarks, ...short]);
}

/**
 * Preconsolidation stress of a whole test by one method (Casagrande's if omitted). Refuses a curve that shows no yield;
 * see `readCurve`.
 * @example preconsolidation(rebound).value.stress // 262.8
 * @example preconsolidation(rebound, { method: "work" }).value.stress // 274.3
 * @example preconsolidation(rebound, { picks: { greatest_curvature: 200 } }).value.stress // 264.3
 */
export function preconsolidation(test: TestCurve, options: PreconsolidationOptions = {}): Outcome<Preconsolidation> {
  const { method = "casagrande", picks = {} } = options;
  const reading = readCurve(test, picks);
  if (!reading.ok) return reading;
  const result = readMethod(reading.value, method, options);
  if (!result.ok) return result;
  const [low, high] = yieldInterval(reading.value);
  const { stress } = result.value;
  return given({ ...result.value, method, low: Math.min(low, stress), high: Math.max(high, stress) }, [
    ...result.remarks,
    ...outsideNote(method, stress, [low / OUTSIDE, high * OUTSIDE]),
  ]);
}

export interface MethodBeside {
  readonly method: MethodName;
  readonly result: Outcome<MethodReading>;
  /**
   * The points that the method used, the effect of the form of the curve, and a result outside the range; or why the
   * method does not apply.
   */
  readonly note: Message;
}

export interface Spread {
  readonly methods: readonly MethodBeside[];
  readonly median: number;
  /** (greatest - least) / median. */
  readonly spread: number;
  /** Range that the points allow, at about 95 percent. */
  readonly low: number;
  readonly high: number;
  /** How far the methods agree, and which methods lie outside the range. */
  readonly verdict: Message;
}

/**
 * Above `remark` the spread gets a remark, above `unreliable` the result is unreliable; above `range`, the greatest
 * over the least of the range, the verdict gives the range (common practice, no source).
 */
const SPREAD = { remark: 0.25, unreliable: 0.5, range: 1.5 };

/**
 * All methods on one curve, median, spread and a verdict. Refuses a curve that shows no yield, and fewer than two
 * methods that apply.
 * @example preconsolidationSpread(rebound).value.median // 248.9
 */
export function preconsolidationSpread(test: TestCurve): Outcome<Spread> {
  const reading = readCurve(test);
  if (!reading.ok) return reading;
  const read = METHOD_NAMES.map((method) => ({ method, result: readMethod(reading.value, method, {}) }));
  const found = read.flatMap(({ method, result }) => (result.ok ? [{ method, stress: result.value.stress }] : []));
  const values = found.map(({ stress }) => stress).sort((a, b) => a - b);
  if (values.length < 2)
    return notApplicable(
      firstOf(read.flatMap(({ method, result }) => (result.ok ? [] : [say`${METHOD_SAID[method]}: ${result.reason}`]))),
    );
  const median = medianOfSorted(values);
  const spread = (lastOf(values) - firstOf(values)) / median;
  const [low, high] = yieldInterval(reading.value);
  const methods = read.map(({ method, result }) => ({
    method,
    result,
    note: noteOn(method, result, reading.value, [low, high]),
  }));
  const outside = found.flatMap(({ method, stress }) =>
    sidesOf(stress, [low, high]).map((side) => say`${METHOD_SAID[method]} (${side})`),
  );
  return given(
    { methods, median, spread, low, high, verdict: verdictOn(reading, spread, [low, high], outside) },
    reading.remarks,
  );
}

/** How far the methods agree, how wide the range is, and which methods lie outside it. */
function verdictOn(
  { remarks }: Given<CurveReading>,
  spread: number,
  [low, high]: readonly [number, number],
  outside: readonly Message[],
): Message {
  const percent = Math.round(100 * spread);
  const open = high > SPREAD.range * low;
  const agreement =
    spread > SPREAD.unreliable
      ? say`unreliable: the methods spread over ${percent} percent of the median`
      : spread > SPREAD.remark
        ? say`uncertain: the methods spread over ${percent} percent of the median; look at the curve and the points each method used`
        : remarks.length
          ? say`the methods agree within ${percent} percent of the median, but see the remarks`
          : open
            ? say`the methods agree within ${percent} percent of the median`
            : say`well defined: the methods agree within ${percent} percent of the median`;
  return joined([
    agreement,
    ...(open
      ? [say`these points allow ${shown(low)} to ${shown(high)}: smaller load steps about yield would say more`]
      : []),
    ...(outside.length
      ? [say`outside the range that these points allow: ${listed(outside)}; see the row of each method`]
      : []),
  ]);
}

/** "above" or "below" a range; empty within it. */
const sidesOf = (stress: number, [low, high]: readonly [number, number]): Message[] =>
  stress > high ? [say`above`] : stress < low ? [say`below`] : [];

const outsideNote = (method: MethodName, stress: number, range: readonly [number, number]): Message[] =>
  sidesOf(stress, range).map((side) => say`${side} the range that these points allow: ${ALONE[method]}`);

function noteOn(
  method: MethodName,
  result: Outcome<MethodReading>,
  reading: CurveReading,
  range: readonly [number, number],
): Message {
  if (!result.ok) return result.reason;
  const effect = effectOn(method, reading);
  return joined([result.value.points, ...(effect ? [effect] : []), ...outsideNote(method, result.value.stress, range)]);
}
