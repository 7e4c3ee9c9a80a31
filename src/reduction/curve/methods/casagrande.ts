/**
 * Casagrande's construction (Casagrande, A., 1936, "The determination of the preconsolidation load and its practical
 * significance", Proc. 1st Int. Conf. Soil Mech. Found. Eng., Cambridge, vol. 3, pp. 60-64).
 *
 * The smooth curve is the soft knee fitted to the points; greatest curvature, tangent and bisector are found on the
 * curve drawn to a scale at which the virgin line has a stated slope.
 */
import { say } from "../../message";
import { badInput, given, notApplicable } from "../../outcome";
import { pickRemarks } from "../../increment/constructions/picks";
import { meetingPoint, type Line } from "../../numeric/straight-line";
import { valueAt } from "../shape/first-loading";
import { bendingAt, kneeAt, slopeAt, type Knee } from "../shape/knee";
import { loadingPoints, ruled, shown, smoothCurve, straightPoints, yieldGuide, type Method } from "./method";
import type { CurveReading } from "./reading";
import { firstOf, lastOf, nth } from "../../numeric/lists";

/**
 * The scale of the drawing: the slope at which the virgin line is drawn, rise over run on the paper. Greatest curvature
 * and bisector depend on the scale. Stated by the virgin line, the scale gives the same result for all units and ranges
 * of the axes, and for void ratio and strain. 1.5 (56 degrees) is a choice, no source, made by the curves of
 * test/published: at slope 2 the rounded curve reads 17 percent below its printed stress, at 1.5 13 percent. On a
 * rounded bend a flatter drawing reads higher (slope 1 by 2 to 7 percent), a steeper drawing lower.
 */
export const DRAWING_SLOPE = 1.5;

const SEARCH = 200;

/**
 * Steepest tangent of a smooth curve: at its end or, if the virgin part flattens, at one of `points` places past the
 * knee.
 */
export function steepestTangent(knee: Knee, end: number, points = SEARCH): Line {
  let at = end;
  if (knee.excess > 0)
    for (let i = 0; i <= points; i++) {
      const x = knee.corner + (i / points) * Math.max(end - knee.corner, 0);
      if (slopeAt(knee, x) > slopeAt(knee, at)) at = x;
    }
  return through(at, kneeAt(knee, at), slopeAt(knee, at));
}

/** x of the greatest curvature of a smooth curve drawn with its virgin line, of slope `virgin`, at the given slope. */
export function greatestCurvature(knee: Knee, virgin: number, drawingSlope = DRAWING_SLOPE): number {
  if (knee.width < 1e-6) return knee.corner;
  const scale = drawingSlope / virgin;
  const curvature = (x: number): number => bendingAt(knee, x) / (1 + (scale * slopeAt(knee, x)) ** 2) ** 1.5;
  // The curvature has one peak, at or before the corner: golden-section search.
  const golden = (Math.sqrt(5) - 1) / 2;
  let low = knee.corner - 8 * knee.width;
  let high = knee.corner + 0.5 * knee.width;
  while (high - low > 1e-7) {
    const a = high - golden * (high - low);
    const b = low + golden * (high - low);
    if (curvature(a) < curvature(b)) low = a;
    else high = b;
  }
  return (low + high) / 2;
}

const through = (x: number, u: number, slope: number): Line => ({ slope, intercept: u - slope * x });

/** The virgin line of the construction: where the virgin part flattens, the steepest tangent. */
const virginOf = ({ law, knee, curve, parts }: CurveReading): Line =>
  law.form === "bent" ? steepestTangent(knee, nth(curve.x, law.run.to)) : parts.virginLine;

/** Stress at the greatest curvature of a curve: the picked stress, or that of the smooth curve. */
export const greatestCurvatureOf = (reading: CurveReading): number =>
  reading.picks.greatest_curvature ?? 10 ** greatestCurvature(reading.knee, virginOf(reading).slope);

export const casagrande: Method = (reading, { drawingSlope = DRAWING_SLOPE }) => {
  const { knee, curve, parts, picks } = reading;
  const virgin = virginOf(reading);
  const [low, high] = [firstOf(curve.x), lastOf(curve.x)];
  const { greatest_curvature: picked } = picks;
  const x = picked ? Math.log10(picked) : greatestCurvature(knee, virgin.slope, drawingSlope);
  if (picked && !(x >= low && x <= high))
    return badInput(
      say`the greatest curvature picked at ${picked} lies outside the loads (${shown(10 ** low)} to ${shown(10 ** high)}): move it`,
    );
  const u = kneeAt(knee, x);
  const scale = drawingSlope / virgin.slope;
  const tangent = through(x, u, slopeAt(knee, x));
  const bisector = through(x, u, Math.tan(Math.atan(scale * tangent.slope) / 2) / scale);
  const meets = meetingPoint(bisector, virgin);
  if (!(meets > low && meets < high))
    return notApplicable(say`the bisector meets the virgin line outside the loads: there is no yield to read`);
  const reach = Math.min(high, x + 0.5);
  const foot = Math.max(low, (u - virgin.intercept) / virgin.slope - 0.05);
  return given(
    {
      stress: 10 ** meets,
      points: straightPoints(curve, parts.recompression, parts.virgin),
      lines: [
        loadingPoints(curve),
        smoothCurve(reading),
        ruled(curve, "virgin line", virgin, foot, high),
        { label: "greatest curvature", style: "points" as const, points: [[10 ** x, valueAt(curve, u)] as const] },
        ruled(curve, "horizontal", through(x, u, 0), x, reach),
        ruled(curve, "tangent", tangent, Math.max(low, x - 0.3), reach),
        ruled(curve, "bisector", bisector, x, Math.max(reach, meets)),
        yieldGuide(curve, virgin, meets),
      ],
    },
    pickRemarks(picks, ["greatest_curvature"]),
  );
};
