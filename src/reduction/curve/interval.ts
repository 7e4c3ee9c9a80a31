/**
 * The interval in which yield lies, from the scatter of the values and the spacing of the loads: profile likelihood
 * of the corner of the soft knee, the width of the rounding fitted anew at each trial, for the law in void ratio and the
 * law in ln(1 + e) alike, the union of the two widened by a share for what neither law knows.
 */
import { bestKnee, type Trial } from "./knee";
import { nearYield } from "./method";
import { trialOf, type CurveReading } from "./reading";
import { lineThrough } from "./straight-parts";

/** Widening for what no law knows, in log cycles each way; more where the virgin side is held to a line through few points. */
const MODEL = { free: 0.01, bent: 0.01, held: 0.03 };
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
export function yieldInterval({ curve, parts, law, scatter }: CurveReading): [low: number, high: number] {
  const logs = curve.height.map((height) => -Math.log(height));
  const whole = logs[logs.length - 1] - logs[0];
  const { from } = law.run;
  const laws = [
    { y: curve.u, end: law.run.to },
    {
      y: logs.map((y) => (y - logs[0]) / whole),
      end: law.form === "bent" ? law.run.to : nearYield(curve, parts.virgin).to,
    },
  ];
  const ends = laws.map(({ y, end }) => {
    const x = curve.x.slice(from, end + 1);
    const virgin = lineThrough(curve.x, y, { from: parts.virgin.from, to: parts.virgin.to });
    const free = x.length - (law.form === "bent" ? 6 : 5);
    return profile(trialOf(law.form, x, y.slice(from, end + 1), virgin), x[0], x[x.length - 1], (misfit) =>
      free >= 2 ? Math.max(scatter ** 2, misfit / free) : scatter ** 2,
    );
  });
  return [
    10 ** (Math.min(...ends.map(([low]) => low)) - MODEL[law.form]),
    10 ** (Math.max(...ends.map(([, high]) => high)) + MODEL[law.form]),
  ];
}
