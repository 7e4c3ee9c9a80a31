/**
 * The interval in which yield lies, from the scatter of the values and the spacing of the loads: profile likelihood
 * of the corner of the soft knee, the width of the rounding fitted anew at each trial, for the law in void ratio and the
 * law in ln(1 + e) alike; the union of the two, widened by a share for what no law knows.
 *
 * Held on several thousand made curves (test/reduction/curve): it holds the corner in 95 to 100 percent of each kind.
 */
import { bestKnee, WIDTHS, type Knee, type Trial } from "./knee";
import { nearYield } from "./method";
import { trialOf, type CurveReading } from "./reading";
import { lineThrough } from "./straight-parts";

/** Widening for what no law knows, in log cycles each way; more where the virgin side is held to a line through few points. */
const MODEL = { free: 0.004, bent: 0.004, held: 0.02 };
/** 95 percent point of chi-squared on one degree of freedom. */
const CHI2 = 3.84;
/** Steps in which the profile is walked, and how closely its ends are found, in log cycles. */
const STEP = 0.02;
const CLOSE = 0.0005;

/** Corners, as log10 of stress, between which the misfit stays within the limit. */
function profile(trial: Trial, best: Knee, [low, high]: readonly [number, number], limit: number): [number, number] {
  const widths = [best.width, ...WIDTHS];
  const inside = (corner: number): boolean => widths.some((width) => trial(corner, width).misfit <= limit);
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
  return [end(low), end(high)];
}

/** Low and high of the preconsolidation stress at about 95 percent, in the unit of the stresses. */
export function yieldInterval({ curve, parts, law, knee, scatter }: CurveReading): [low: number, high: number] {
  const logs = curve.height.map((height) => -Math.log(height));
  const whole = logs[logs.length - 1] - logs[0];
  const { from, to } = law.run;
  const near = law.form === "bent" ? to : nearYield(curve, parts.virgin).to;
  const ends = [
    { y: curve.u, end: to, fitted: knee },
    { y: logs.map((y) => (y - logs[0]) / whole), end: near, fitted: undefined },
  ].map(({ y, end, fitted }) => {
    const x = curve.x.slice(from, end + 1);
    const trial = trialOf(law.form, x, y.slice(from, end + 1), lineThrough(curve.x, y, parts.virgin));
    const reach = [x[0], x[x.length - 1]] as const;
    const best = fitted ?? bestKnee(trial, ...reach);
    const free = x.length - (law.form === "bent" ? 6 : 5);
    const variance = free >= 2 ? Math.max(scatter ** 2, best.misfit / free) : scatter ** 2;
    return profile(trial, best, reach, best.misfit + CHI2 * variance);
  });
  return [
    10 ** (Math.min(...ends.map(([low]) => low)) - MODEL[law.form]),
    10 ** (Math.max(...ends.map(([, high]) => high)) + MODEL[law.form]),
  ];
}
