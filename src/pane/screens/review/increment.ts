/** One load of a test record for the review screen: reduced with the picks that count, in the units of the sheet. */
import { inWords } from "../../text/messages";
import { dialSense, outcomeOf, type loadCurve } from "../../../record/load-curve";
import type { LoadRecord, TestRecord } from "../../../record/record";
import type { PlotSpec } from "../../../plots/spec";
import { logTimePlot, rootTimePlot, type TimePlotOptions } from "../../../plots/time";
import { rulesOf } from "../../../specification/versions";
import { coefficientOfConsolidation, heightAtHalf, T50, T90, type Drainage } from "../../../reduction/increment/cv";
import {
  METHOD_PICK,
  PICK_NAMES,
  TIME_METHODS,
  type PickName,
  type TimeMethod,
} from "../../../reduction/increment/constructions/picks";
import { decimalsOfLevels } from "../../../reduction/increment/level-decimals";
import { reduceIncrement, type Increment } from "../../../reduction/increment/reduce";
import { given, type Outcome } from "../../../reduction/outcome";
import { convert } from "../../../reduction/units";
import type { NumberPick, PickOf } from "./picks/pick-changes";

/** The picks that each construction uses. */
export const PICKS_OF: Readonly<Record<TimeMethod, readonly PickName[]>> = {
  "log time": ["d0", "d100", "tail_from", "tail_to", "pair_at", "tangent_from", "tangent_to"],
  "root time": ["d0", "d90", "straight_from", "straight_to"],
};

export const otherMethod = (method: TimeMethod): TimeMethod => (method === "log time" ? "root time" : "log time");

/** The construction whose cv the test reports if a load has no choice of its own. */
export const methodOfTest = ({ words }: TestRecord): TimeMethod =>
  TIME_METHODS.find((method) => method === words.time_method) ?? "log time";

/**
 * The value of a pick: the value by hand, or the value that the construction found. Both constructions have a d0;
 * `method` chooses.
 */
export function valueOf({ logTime, rootTime }: Increment, of: PickName, method: TimeMethod): number | undefined {
  const log = logTime.ok ? logTime.value : undefined;
  const root = rootTime.ok ? rootTime.value : undefined;
  switch (of) {
    case "d0":
      return method === "log time" ? log?.d0 : root?.d0;
    case "d100":
      return log?.d100;
    case "d90":
      return root?.d90;
    case "straight_from":
      return root?.straight.from;
    case "straight_to":
      return root?.straight.to;
    case "tail_from":
      return log?.tail.from;
    case "tail_to":
      return log?.tail.to;
    case "pair_at":
      return log?.pair.time;
    case "tangent_from":
      return log?.tangent.from;
    case "tangent_to":
      return log?.tangent.to;
  }
}

const isOfTimeCurve = (of: NumberPick): of is PickName => PICK_NAMES.some((name) => name === of);

/** A level of the readings to their step and one digit more; a time, or a level of readings without a step, to six digits. */
function rounded(value: number, of: PickName, { cleaned }: Increment): number {
  const decimals = /^d\d/.test(of) ? decimalsOfLevels(cleaned) : undefined;
  return decimals === undefined ? Number(value.toPrecision(6)) : Number(value.toFixed(decimals));
}

/**
 * The value that counts before a change: the value of a construction, or the method whose cv counts. d0 comes from the
 * method that counts, or from the other method if the first gives none.
 */
export const valueNow =
  (increment: Increment, method: TimeMethod) =>
  (of: PickOf): number | string | undefined => {
    if (of === METHOD_PICK) return method;
    if (!isOfTimeCurve(of)) return undefined;
    const value = valueOf(increment, of, method) ?? valueOf(increment, of, otherMethod(method));
    return value === undefined ? undefined : rounded(value, of, increment);
  };

export interface CvUnits {
  readonly unit: string;
  /**
   * The height in mm for cv from the marks of a construction, by the rules of the version of the sheet; undefined if
   * the sheet does not show it yet.
   */
  readonly height: (marks: { readonly d0: number; readonly d100: number }) => number | undefined;
  readonly drainage: Drainage;
}

export function cvUnitsOf(record: TestRecord, { results }: LoadRecord): CvUnits {
  const { words, numbers } = record;
  const { height_end: height, end_reading: reading } = results;
  const { dial_factor: factor } = numbers;
  const atHalf: CvUnits["height"] = (marks) =>
    height === undefined || reading === undefined || factor === undefined
      ? results.height_middle
      : heightAtHalf({ height, reading }, marks, dialSense(record) === "fall" ? -factor : factor);
  return {
    unit: words.cv_unit ?? "m2/yr",
    height: rulesOf(record).heightAtHalf ? atHalf : () => results.height_middle,
    drainage: words.drainage === "single" ? "single" : "double",
  };
}

/** cv by a construction, in the unit of the sheet; undefined if the construction or the height is missing. */
export function cvBy({ logTime, rootTime }: Increment, method: TimeMethod, units: CvUnits): number | undefined {
  const { unit, drainage } = units;
  const by = (T: number, time: number, marks: { readonly d0: number; readonly d100: number }) => {
    const height = units.height(marks);
    return height && convert(coefficientOfConsolidation(T, time, height, drainage), "cv", "mm2/min", unit);
  };
  if (method === "log time") return logTime.ok ? by(T50, logTime.value.t50, logTime.value) : undefined;
  return rootTime.ok ? by(T90, rootTime.value.t90, rootTime.value) : undefined;
}

/** The cv that the sheet shows for the load, in the unit of the sheet. */
export function cvOnSheet({ results }: LoadRecord, method: TimeMethod, { unit }: CvUnits): number | undefined {
  const value = method === "log time" ? results.cv_log_time : results.cv_root_time;
  return value === undefined ? undefined : convert(value, "cv", "m2/yr", unit);
}

/** The plot of a construction, from a reduction that already exists. */
export function plotOf(
  { times, readings }: ReturnType<typeof loadCurve>,
  increment: Increment,
  method: TimeMethod,
  look: Pick<TimePlotOptions, "readingLabel" | "sense">,
): Outcome<PlotSpec> {
  const draw = method === "log time" ? logTimePlot : rootTimePlot;
  const drawn = draw(times, readings, { ...look, increment, inWords });
  if (drawn.ok) return drawn;
  // If the picks contradict the readings, the readings are still drawn, so that the person can move the pick back.
  const refused = outcomeOf(increment, method);
  const plain = draw(times, readings, { ...look, increment: reduceIncrement(times, readings), inWords });
  if (!plain.ok || refused.ok) return plain;
  const readingsAlone = plain.value.series.filter(({ label }) => label === "readings");
  return given({ ...plain.value, series: readingsAlone, remarks: [], refusal: refused.reason });
}
