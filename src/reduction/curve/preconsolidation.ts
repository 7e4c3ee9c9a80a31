/** Preconsolidation stress by every method, with its interval, and the methods side by side. */
import { given, notApplicable, type Outcome } from "../outcome";
import { bilogarithmic } from "./bilogarithmic";
import { casagrande } from "./casagrande";
import { intersection } from "./intersection";
import { yieldInterval } from "./interval";
import { janbu } from "./janbu";
import { shown, type Method, type MethodOptions, type MethodReading } from "./method";
import { pachecoSilva } from "./pacheco-silva";
import type { TestCurve } from "./points";
import { readCurve, type CurveReading, type Picks } from "./reading";
import { work } from "./work";

/** The methods by the names that a user types. */
export const METHODS = {
  casagrande,
  work,
  bilog: bilogarithmic,
  intersection,
  pacheco_silva: pachecoSilva,
  janbu,
} as const satisfies Record<string, Method>;

export type MethodName = keyof typeof METHODS;
export const METHOD_NAMES = Object.keys(METHODS) as MethodName[];

/** The greatest stress should be this many times the result (common practice, no source; the aim is eight). */
const REACH = 4;

export interface Preconsolidation extends MethodReading {
  readonly method: MethodName;
  /** About 95 percent interval of the yield stress; it always holds the method's own reading. */
  readonly low: number;
  readonly high: number;
}

export interface PreconsolidationOptions extends MethodOptions {
  readonly method?: MethodName;
  readonly picks?: Picks;
}

/** One method on a curve already read. Refuses a result below the second load. */
function readMethod(reading: CurveReading, name: MethodName, options: MethodOptions): Outcome<MethodReading> {
  const result = METHODS[name].read(reading, options);
  if (!result.ok) return result;
  const { stress } = result.value;
  const { points } = reading.curve;
  if (stress < points[1].stress)
    return notApplicable(
      `the curve bends at about ${shown(stress)}, before the second load (${shown(points[1].stress)}): yield cannot be read`,
    );
  const reach = points[points.length - 1].stress / stress;
  const short =
    reach < REACH
      ? [`the greatest stress is only ${reach.toFixed(1)} times the result: load to ${REACH} times or more`]
      : [];
  return given(result.value, [...reading.remarks, ...result.value.remarks, ...short]);
}

/**
 * Preconsolidation stress of a whole test by one method (Casagrande's unless said).
 * Refuses where the curve has no yield to read; see `readCurve`.
 */
export function preconsolidation(test: TestCurve, options: PreconsolidationOptions = {}): Outcome<Preconsolidation> {
  const { method = "casagrande", picks = {} } = options;
  const reading = readCurve(test, picks);
  if (!reading.ok) return reading;
  const result = readMethod(reading.value, method, options);
  if (!result.ok) return result;
  const [low, high] = yieldInterval(reading.value);
  const { stress } = result.value;
  return given({ ...result.value, method, low: Math.min(low, stress), high: Math.max(high, stress) }, result.remarks);
}

export interface Spread {
  readonly methods: readonly { readonly method: MethodName; readonly result: Outcome<MethodReading> }[];
  readonly median: number;
  /** (greatest - least) / median. */
  readonly spread: number;
  readonly low: number;
  readonly high: number;
  readonly verdict: string;
}

/** Spread above which it is a remark, and above which the result is unreliable (common practice, no source). */
const SPREAD = { remark: 0.25, unreliable: 0.5 };

/** All methods on one curve, median, spread and a verdict. Refuses where the curve has no yield, or under two methods read it. */
export function preconsolidationSpread(test: TestCurve, options: MethodOptions = {}): Outcome<Spread> {
  const reading = readCurve(test);
  if (!reading.ok) return reading;
  const methods = METHOD_NAMES.map((method) => ({ method, result: readMethod(reading.value, method, options) }));
  const values = methods.flatMap(({ result }) => (result.ok ? [result.value.stress] : [])).sort((a, b) => a - b);
  if (values.length < 2)
    return notApplicable(
      methods.map(({ method, result }) => (result.ok ? "" : `${method}: ${result.reason}`)).find(Boolean)!,
    );
  const half = values.length / 2;
  const median = values.length % 2 ? values[Math.floor(half)] : (values[half - 1] + values[half]) / 2;
  const spread = (values[values.length - 1] - values[0]) / median;
  const [low, high] = yieldInterval(reading.value);
  const percent = `${Math.round(100 * spread)} percent of the median`;
  const verdict =
    spread > SPREAD.unreliable
      ? `unreliable: the methods spread over ${percent}`
      : spread > SPREAD.remark
        ? `uncertain: the methods spread over ${percent}; look at the curve and the points each method used`
        : reading.remarks.length || reading.value.remarks.length
          ? `the methods agree within ${percent}, but see the remarks`
          : `well defined: the methods agree within ${percent}`;
  return given({ methods, median, spread, low, high, verdict }, reading.remarks);
}
