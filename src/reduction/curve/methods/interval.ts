/**
 * The range in which the points allow yield to lie, from the scatter of the values, the spacing of the loads, and the
 * laws that the curve may follow. For each law the profile likelihood of its corner gives a range, with the width of
 * the rounding fitted at each trial; the answer is the union over the laws, at about 95 percent.
 *
 * On made curves (test/reduction/curve) the range holds the corner of 95 to 100 of 100 curves of each kind. On
 * published curves (test/published/yield-range) it holds the readings of the methods, or the verdict names the methods
 * outside it.
 */
import { steepestTangent } from "./casagrande";
import type { Knee } from "../shape/knee";
import { emptyKnee, steepeningLaw, type KneeLaw } from "../shape/knee-laws";
import { bestKnee, refinedKnee, WIDTHS } from "../shape/knee-search";
import { nearYield } from "./method";
import { kneeLaw, type CurveReading, type SmoothLaw } from "./reading";
import { lineThrough } from "../shape/straight-parts";
import { firstOf, lastOf } from "../../numeric/lists";

/**
 * Widening for errors that no law describes, in log cycles to each side; more if the virgin side is held to a line
 * through few points.
 */
const MODEL = { free: 0.004, bent: 0.004, held: 0.02 };
/** 95 percent point of chi-squared on one degree of freedom. */
const CHI2 = 3.84;
/** Steps by which the profile is searched, and the tolerance of its ends, in log cycles. */
const STEP = 0.02;
const CLOSE = 0.0005;
/** Janbu's exponents of the part before yield, besides 0, which is straight on log of stress. */
const EXPONENTS = [0.5, 1];
/** Number of points at which the steepest tangent of a trial is sought. */
const TANGENTS = 20;
/** Number of constants of a straight law and of a flattening law. */
const CONSTANTS = { straight: 5, bent: 6 };

interface Law {
  readonly knee: KneeLaw;
  readonly best: Knee;
  /** log10 of the stresses between which the corner may lie. */
  readonly reach: readonly [low: number, high: number];
  /** Greatest sum of squared residuals that the points allow. */
  readonly limit: number;
  /** By how much the ends are widened. */
  readonly model: number;
  /** log10 of a second stress that may be called the yield of the law, besides its corner. */
  readonly alsoYields?: (knee: Knee) => number;
}

/** log10 of the least and of the greatest yield, over the corners and widths whose misfit stays within the limit. */
function profile({ knee, best, reach, limit, model, alsoYields }: Law): [low: number, high: number] {
  const widths = [best.width, ...WIDTHS];
  const trial = emptyKnee();
  const yields: number[] = alsoYields ? [alsoYields(best)] : [];
  const inside = (corner: number): boolean => {
    let allowed = false;
    for (const width of widths) {
      if (knee(corner, width, trial).misfit > limit) continue;
      allowed = true;
      if (!alsoYields) break;
      yields.push(alsoYields(trial));
    }
    return allowed;
  };
  const end = (stop: number): number => {
    const direction = Math.sign(stop - best.corner);
    let within = best.corner;
    let outside = within;
    while (outside !== stop) {
      outside = Math.abs(stop - within) <= STEP ? stop : within + direction * STEP;
      if (!inside(outside)) break;
      within = outside;
    }
    while (Math.abs(outside - within) > CLOSE) {
      const middle = (outside + within) / 2;
      if (inside(middle)) within = middle;
      else outside = middle;
    }
    return within;
  };
  yields.push(end(reach[0]), end(reach[1]));
  return [Math.min(...yields) - model, Math.max(...yields) + model];
}

/** Points of the curve from the part before yield up to `end`, with y taken from `plane`. */
function pointsTo({ curve, law }: CurveReading, plane: readonly number[], end: number) {
  const x = curve.x.slice(law.run.from, end + 1);
  const reach: Law["reach"] = [firstOf(x), lastOf(x)];
  return { x, y: plane.slice(law.run.from, end + 1), reach };
}

/** Variance of a value; from the misfit of a law if there are at least two more points than constants. */
const variance = (scatter: number, misfit: number, spare: number): number =>
  spare >= 2 ? Math.max(scatter ** 2, misfit / spare) : scatter ** 2;

/** ln(1 + e), or ln(1 - strain), as a compression from 0 to 1. */
function inLogarithms({ curve: { height } }: CurveReading): number[] {
  const whole = Math.log(firstOf(height) / lastOf(height));
  return height.map((one) => Math.log(firstOf(height) / one) / whole);
}

/** The form of the straight laws: held to the drawn virgin line where it has too few points of its own. */
const straightForm = ({ law, parts: { virgin } }: CurveReading): SmoothLaw["form"] =>
  law.form !== "bent" ? law.form : virgin.to - virgin.from < 2 ? "held" : "free";

/**
 * Two lines with a rounding, in void ratio and in ln(1 + e), up to the end of the virgin stretch; and laws whose part
 * before yield steepens on log of stress. A steepening law counts if its misfit is greater than the best by no more
 * than the scatter of one reading: a real curve steepens before yield, and its corner then lies higher than the corner
 * of two straight lines.
 */
function straightLaws(reading: CurveReading): Law[] {
  const { curve, parts, law, knee, scatter } = reading;
  const form = straightForm(reading);
  const model = MODEL[form];
  const allowed = (misfit: number, points: number): number =>
    CHI2 * variance(scatter, misfit, points - CONSTANTS.straight);

  const { x, y, reach } = pointsTo(reading, curve.u, parts.virgin.to);
  const ofForm = kneeLaw(form, x, y, parts.virginLine);
  const best = law.form === "bent" ? bestKnee(ofForm, ...reach) : knee;
  const straight: Law = { knee: ofForm, best, reach, model, limit: best.misfit + allowed(best.misfit, x.length) };

  const steepening = EXPONENTS.map((exponent) => {
    const steeper = steepeningLaw(x, y, exponent);
    return { knee: steeper, best: refinedKnee(steeper, ...reach, best) };
  });
  const least = Math.min(best.misfit, ...steepening.map((one) => one.best.misfit));
  const more = allowed(least, x.length);
  const asGood = steepening.filter((one) => one.best.misfit <= least + more / CHI2);

  const logs = inLogarithms(reading);
  const near = pointsTo(reading, logs, law.form === "bent" ? parts.virgin.to : nearYield(curve, parts.virgin).to);
  const onLogs = kneeLaw(form, near.x, near.y, lineThrough(curve.x, logs, parts.virgin));
  const bestOnLogs = refinedKnee(onLogs, ...near.reach, best);
  return [
    straight,
    ...asGood.map((one) => ({ ...one, reach, model, limit: least + more })),
    {
      knee: onLogs,
      best: bestOnLogs,
      reach: near.reach,
      model,
      limit: bestOnLogs.misfit + allowed(bestOnLogs.misfit, near.x.length),
    },
  ];
}

/**
 * The law of a virgin part that flattens, in void ratio and in ln(1 + e), with both places that may be called its
 * yield: its corner, and where the steepest tangent meets the part before yield, which the constructions read.
 */
function flatteningLaws(reading: CurveReading): Law[] {
  const { curve, parts, law, knee, scatter } = reading;
  return [curve.u, inLogarithms(reading)].map((plane) => {
    const { x, y, reach } = pointsTo(reading, plane, law.run.to);
    const bent = kneeLaw("bent", x, y, parts.virginLine);
    const best = plane === curve.u ? knee : refinedKnee(bent, ...reach, knee);
    const tangentMeets = (one: Knee): number => {
      const tangent = steepestTangent(one, reach[1], TANGENTS);
      return (tangent.intercept - one.start) / (one.before - tangent.slope);
    };
    const limit = best.misfit + CHI2 * variance(scatter, best.misfit, x.length - CONSTANTS.bent);
    return { knee: bent, best, reach, limit, model: MODEL.bent, alsoYields: tangentMeets };
  });
}

/**
 * Lower and upper limit of the preconsolidation stress that the points allow, at about 95 percent, in the unit of the
 * stresses.
 */
export function yieldInterval(reading: CurveReading): [low: number, high: number] {
  const laws = [...straightLaws(reading), ...(reading.law.form === "bent" ? flatteningLaws(reading) : [])];
  const ends = laws.map(profile);
  return [10 ** Math.min(...ends.map(([low]) => low)), 10 ** Math.max(...ends.map(([, high]) => high))];
}
