/**
 * The interval in which yield lies, from the scatter of the values and the spacing of the loads: profile likelihood
 * of the corner of the soft knee, the width of the rounding fitted anew at each trial, for the law in void ratio and the
 * law in ln(1 + e) alike, the union of the two widened by a share for what neither law knows.
 */
import { bestKnee, kneeFor, kneeOnto, type Trial } from "./knee";
import type { CurveReading } from "./reading";
import { lineThrough } from "./straight-parts";

/** Widening for the model, in log cycles each way. */
const MODEL = 0.02;
/** 95 percent point of chi-squared on one degree of freedom. */
const CHI2 = 3.84;
const STEP = 0.01;

/** log10 of the stresses between which the corner lies, at 95 percent. */
function profile(trial: Trial, low: number, high: number, variance: (misfit: number) => number): [number, number] {
  const best = bestKnee(trial, low, high);
  const limit = best.misfit + CHI2 * variance(best.misfit);
  const inside = (corner: number): boolean => {
    for (const width of [0, 0.03, 0.06, 0.1, 0.15, 0.22]) if (trial(corner, width).misfit <= limit) return true;
    return trial(corner, best.width).misfit <= limit;
  };
  let from = best.corner;
  let to = best.corner;
  while (from - STEP > low && inside(from - STEP)) from -= STEP;
  while (to + STEP < high && inside(to + STEP)) to += STEP;
  return [from, to];
}

/** Low and high of the preconsolidation stress at about 95 percent, in the unit of the stresses. */
export function yieldInterval({ curve, parts, scatter }: CurveReading): [low: number, high: number] {
  const { from } = parts.recompression;
  const { to } = parts.virgin;
  const x = curve.x.slice(from, to + 1);
  const logs = curve.height.map((height) => -Math.log(height));
  const whole = logs[logs.length - 1] - logs[0];
  const held = to < curve.x.length - 1 || to - parts.virgin.from < 2;
  const free = x.length - 5;
  const variance = (misfit: number): number => (free >= 2 ? Math.max(scatter ** 2, misfit / free) : scatter ** 2);
  const ends = [curve.u, logs.map((y) => (y - logs[0]) / whole)].map((y) => {
    const u = y.slice(from, to + 1);
    const virgin = lineThrough(curve.x, y, parts.virgin);
    return profile(
      (corner, width) => (held ? kneeOnto(x, u, corner, width, virgin) : kneeFor(x, u, corner, width)),
      x[0],
      x[x.length - 1],
      variance,
    );
  });
  return [
    10 ** (Math.min(...ends.map(([low]) => low)) - MODEL),
    10 ** (Math.max(...ends.map(([, high]) => high)) + MODEL),
  ];
}
