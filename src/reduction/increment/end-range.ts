/**
 * How far the true end of primary may lie from the time that the fit to theory predicts: the uncertainty of rate and
 * creep from the noise of the readings, and the departure of real soils from theory.
 *
 * A study with known truth (test/study/progress.ts) chose the constants and counts how often the range holds the truth.
 */
import { straightLine } from "../numeric/straight-line";
import { endTime, timeOf, type EndOfPrimary, type EndRule } from "./end-of-primary";
import { allowedRise, sideOf } from "./fit/interval";
import { creep, curveAt, type Curve } from "./fit/model";
import type { Series } from "./readings";
import { CREEP_SPREAD, ORDINARY_CREEP } from "./fit/linear";
import { columnsOf, onsetsAt, trialsAt } from "./fit/search";
import { degreeOfConsolidation } from "./fit/terzaghi";
import type { TheoryFit } from "./fit/theory-fit";

/** Distances in ln t, towards earlier and later times; infinite where the readings give no limit. */
export interface EndRange {
  readonly earlier: number;
  readonly later: number;
}

/**
 * By how much real readings depart from theory beyond their noise, as a share of primary. The published curves of
 * test/published depart from their fit by 0.3 to 0.7 %.
 */
const MODEL_SHARE = 0.003;
/**
 * What the constructions add to the range, in ln t. `later` is larger than `earlier`: on the published records with a
 * tail, t100 by log time moves later as the record grows, because the tail of soils is not quite straight.
 */
const OWN_SHARE: Readonly<Record<EndRule, EndRange>> = {
  "log time": { earlier: 0.1, later: 0.2 },
  "root time": { earlier: 0.1, later: 0.15 },
};
/**
 * Values of creep that are tried, per log cycle over primary: from none to 0.4, four times that of an ordinary clay.
 */
const CREEPS = Array.from({ length: 11 }, (_, k) => 0.04 * k);

/** `foretold` is the end on the fitted curve; `used` holds the readings without those left out as wrong. */
export function endRange(used: Series, fit: TheoryFit, rule: EndRule, foretold: EndOfPrimary): EndRange {
  const { times, readings, weights } = used;
  const { noise, timeZero } = fit;
  const primary = Math.abs(fit.primary);
  const sinceLoad = times.map((t) => Math.max(t + timeZero, 0));
  const residuals = sinceLoad.map((t, i) => Math.sqrt(weights[i] ?? 0) * ((readings[i] ?? 0) - curveAt(fit, t)));
  const freedom = Math.max(times.length - 4, 1);
  const departure = MODEL_SHARE * primary;
  const rise = allowedRise(residuals, noise ** 2, freedom) + (2 * departure) ** 2;
  const lean = (noise ** 2 + departure ** 2) / (CREEP_SPREAD * primary) ** 2;
  const columns = columnsOf(used);
  const onsets = onsetsAt(fit.rate, columns.times);
  const trialAt = trialsAt(columns, Float64Array.from(weights), lean, timeZero, onsets);
  const best = trialAt(fit.rate);
  const distance = (curve: Curve): number | undefined => {
    const t100 = endTime(rule, curve);
    return t100 === undefined ? undefined : Math.log(t100 / foretold.t100);
  };

  /** How far the end moves, to one side, at the furthest rate that the readings allow. */
  const byRate = (direction: 1 | -1): number => {
    const at = (x: number) => trialAt(fit.rate * Math.exp(direction * x));
    const side = sideOf((x) => at(x).cost - best.cost < rise);
    if (side === Infinity) return Infinity;
    const moved = distance(at(side));
    return moved === undefined ? side : Math.max(-direction * moved, 0);
  };

  /** How far the end moves over every value of creep that the readings allow. */
  const byCreep = { earlier: 0, later: 0 };
  const degrees = sinceLoad.map((t) => degreeOfConsolidation(fit.rate * t));
  for (const onset of onsets) {
    const unit = sinceLoad.map((t) => creep(onset, fit.rate * t));
    for (const share of CREEPS) {
      const line = straightLine(degrees.map((U, i) => U + share * (unit[i] ?? 0)), readings, weights); // prettier-ignore
      const cost = line.rss + lean * ((share - ORDINARY_CREEP) * line.slope) ** 2;
      if (cost - best.cost > rise) continue;
      const moved = distance({
        rate: fit.rate,
        d0: line.intercept,
        primary: line.slope,
        tail: share * line.slope,
        onset,
      });
      if (moved === undefined) continue;
      byCreep.earlier = Math.max(byCreep.earlier, -moved);
      byCreep.later = Math.max(byCreep.later, moved);
    }
  }

  // The range includes a second answer that the readings fit nearly as well.
  const { otherRate } = fit;
  const other = otherRate === undefined ? 0 : (distance(trialAt(otherRate)) ?? Math.log(fit.rate / otherRate));
  const level = rule === "root time" ? byLevel(fit, foretold) : { earlier: 0, later: 0 };
  const own = OWN_SHARE[rule];
  return {
    earlier: Math.hypot(byRate(1), Math.max(-other, 0), byCreep.earlier, level.earlier, own.earlier),
    later: Math.hypot(byRate(-1), Math.max(other, 0), byCreep.later, level.later, own.later),
  };
}

/** Root time: how long the curve takes to move by the noise of d100, near its end where it is almost flat. */
function byLevel(fit: TheoryFit, { d100, t100 }: EndOfPrimary): EndRange {
  const off = 2 * Math.sign(fit.primary) * fit.noise;
  const [before, after] = [timeOf(fit, d100 - off), timeOf(fit, d100 + off)];
  return {
    earlier: before === undefined ? Infinity : Math.log(t100 / before),
    later: after === undefined ? Infinity : Math.log(after / t100),
  };
}
