/**
 * The root-of-time construction: the straight early part of the curve on sqrt t, its intercept d0, the line with abscissae
 * 1.15 times as large, d90 where that line meets the curve.
 *
 * On exact theory it gives cv 1.5 % high and d100 0.35 % of primary low: that is the convention's (1.15 for 1.1546, and the
 * curve's own departure from a straight line by U = 60 %), and is kept.
 *
 * Sources: Taylor (1942, 1948); ASTM D2435 and ISO 17892-5 describe the same construction.
 */
import { badInput, given, notApplicable, type Outcome } from "../outcome";
import { straightLine } from "../numeric/straight-line";
import { LINE_FACTOR } from "./cv";
import { pickRemarks, type Picks } from "./picks";
import type { CleanReadings } from "./readings";
import { judge, ROOT_TIME_LIMITS, type Limits, type Signals } from "./signals";
import { smoothCurve } from "./smooth-curve";
import { degreeOfConsolidation } from "./terzaghi";
import type { TheoryFit } from "./theory-fit";

export interface RootTime {
  readonly d0: number;
  readonly d90: number;
  readonly d100: number;
  /** Minutes. */
  readonly t90: number;
  /** The straight part: reading per root minute, and the span of times that it goes through. */
  readonly straight: { readonly slope: number; readonly from: number; readonly to: number };
}

/** The curve is straight on sqrt t up to this U (to 0.5 % of primary). */
const STRAIGHT_U = 0.6;
/** Leaving out the earliest readings must lower the residual sum per degree of freedom by this factor. */
const TRIM_GAIN = 4;

const ADVICE = "try LOG_TIME or FIT_TIME";

export function rootTime(clean: CleanReadings, fit: TheoryFit, signals: Signals, picks: Picks = {}): Outcome<RootTime> {
  const byHand = picks.straight_from !== undefined || picks.straight_to !== undefined;
  const limits: Limits = {
    ...ROOT_TIME_LIMITS,
    ...(picks.d90 !== undefined ? { steepness: [0, 0], bend: [0, 0], lastT: [0, 0] } : {}),
    ...(picks.d0 !== undefined || byHand ? { firstU: [1, 1], early: [0, 0] } : {}),
  };
  const { refusal, remarks } = judge(signals, limits, ADVICE);
  if (refusal) return notApplicable(`the root-of-time method does not apply: ${refusal}`);

  const { times, readings } = clean.series;
  const weights = clean.series.weights.map((w, i) => (fit.leftOut.includes(i) ? 0 : w));
  const used = times.map((_, i) => i).filter((i) => weights[i] > 0);
  const curve = smoothCurve(clean.series, weights, fit);
  const last = times[times.length - 1];

  // The straight part: readings up to 60 % of primary; the earliest are left out while they stand off the line of the others.
  let straight = byHand
    ? used.filter((i) => times[i] >= (picks.straight_from ?? 0) && times[i] <= (picks.straight_to ?? last))
    : used.filter((i) => degreeOfConsolidation(fit.rate * times[i]) <= STRAIGHT_U);
  const through = (index: readonly number[]) =>
    straightLine(
      index.map((i) => Math.sqrt(times[i])),
      index.map((i) => readings[i]),
      index.map((i) => weights[i]),
    );
  if (straight.length < 2) {
    if (byHand) return badInput(`the picked straight part holds ${straight.length} readings: at least 2 are needed`);
    return notApplicable(
      `the root-of-time method does not apply: fewer than 2 readings in the straight part; read earlier`,
    );
  }
  let line = through(straight);
  if (!byHand) {
    const all = straight.length;
    while (straight.length > 3 && straight.length > 0.6 * all) {
      const fewer = straight.slice(1);
      const trial = through(fewer);
      const floor = fit.noise ** 2;
      const before = line.rss / (straight.length - 2);
      const after = Math.max(trial.rss / (fewer.length - 2), floor);
      if (before < TRIM_GAIN * after) break;
      straight = fewer;
      line = trial;
    }
    if (straight.length < all)
      remarks.push(
        `the first ${all - straight.length === 1 ? "reading stands" : `${all - straight.length} readings stand`} off the straight part and ${all - straight.length === 1 ? "was" : "were"} left out of it`,
      );
  }
  const d0 = picks.d0 ?? line.intercept;
  let slope = line.slope;
  if (picks.d0 !== undefined) {
    // Through the picked d0: the slope that fits best.
    let xx = 0,
      xy = 0;
    for (const i of straight) {
      xx += weights[i] * times[i];
      xy += weights[i] * Math.sqrt(times[i]) * (readings[i] - d0);
    }
    slope = xy / xx;
  }
  if (slope * fit.primary <= 0)
    return picks.d0 !== undefined || byHand
      ? badInput("the picked straight part runs against the readings: check the picks")
      : notApplicable("the root-of-time method does not apply: there is no straight part at the beginning; " + ADVICE);

  const end = times[straight[straight.length - 1]];
  const t90 =
    picks.d90 === undefined
      ? curve.crossing((t, reading) => reading - d0 - (slope / LINE_FACTOR) * Math.sqrt(t), end, last)
      : curve.crossing((_, reading) => reading - (picks.d90 as number), times[0], last);
  if (t90 === undefined || t90 <= end * (1 + 1e-9)) {
    if (picks.d90 !== undefined)
      return badInput(
        `the picked d90 (${picks.d90}) is not reached by the readings after the straight part: check the pick`,
      );
    return notApplicable(
      `the root-of-time method does not apply: the 1.15 line does not meet the curve within the readings; ${ADVICE}`,
    );
  }
  const d90 = picks.d90 ?? d0 + (slope / LINE_FACTOR) * Math.sqrt(t90);
  return given({ d0, d90, d100: d0 + (d90 - d0) / 0.9, t90, straight: { slope, from: times[straight[0]], to: end } }, [
    ...remarks,
    ...pickRemarks(picks, ["d0", "d90", "straight_from", "straight_to"]),
  ]);
}
