/**
 * Fall of the modulus (Janbu, N., 1969, "The resistance concept applied to deformations of soils", Proc. 7th Int. Conf.
 * Soil Mech. Found. Eng., Mexico City, vol. 1, 191-196): the constrained modulus of each load step against stress on
 * arithmetic scales rises to yield, falls to a trough while the structure breaks down, and rises again. The
 * preconsolidation stress is read half-way, on log of stress, between the end of the step with the peak modulus and the
 * end of the step with the trough. Refuses load steps greater than 1.6 times about yield (a step is then wider than the
 * fall), and a modulus that does not fall.
 */
import { say, listed } from "../../message";
import { given, notApplicable } from "../../outcome";
import { shown, yieldMark, type Method } from "./method";
import { firstOf, nth } from "../../numeric/lists";

const COARSEST = 1.6;
/** The trough must be below this share of the peak. */
const FALL = 0.8;

export const janbu: Method = ({ curve, parts, scatter }) => {
  const { points, u, range, kind, height } = curve;
  const strain = range / (kind === "e" ? firstOf(height) : 1);
  const first = parts.recompression.to;
  const steps = points.slice(1).map(({ stress: end }, i) => {
    const start = nth(points, i).stress;
    const compression = Math.max(nth(u, i + 1) - nth(u, i), scatter / 2) * strain;
    return { mean: (end + start) / 2, end, ratio: end / start, modulus: (end - start) / compression };
  });
  const modulus = (i: number): number => nth(steps, i).modulus;
  const until = Math.min(parts.virgin.from + 1, steps.length - 1);
  let trough = Math.min(first, steps.length - 1);
  for (let i = trough; i <= until; i++) if (modulus(i) < modulus(trough)) trough = i;
  let peak = Math.max(0, trough - 1);
  while (peak > 0 && modulus(peak - 1) > modulus(peak)) peak--;
  const about = steps.slice(peak, trough + 1);
  if (about.some(({ ratio }) => ratio > COARSEST))
    return notApplicable(
      say`the load steps about yield are coarser than ${COARSEST} times: the fall of the modulus lies within one step`,
    );
  if (modulus(trough) > FALL * modulus(peak)) return notApplicable(say`the modulus does not fall at yield`);
  const stress = Math.sqrt(nth(steps, peak).end * nth(steps, trough).end);
  return given({
    stress,
    points: say`modulus of the steps ending at ${listed(about.map(({ end }) => shown(end)))}`,
    lines: [
      { label: "modulus", style: "points", points: steps.map(({ mean, modulus }) => [mean, modulus] as const) },
      { label: "modulus", style: "curve", points: steps.map(({ mean, modulus }) => [mean, modulus] as const) },
      yieldMark(stress, modulus(peak), 0),
    ],
  });
};
