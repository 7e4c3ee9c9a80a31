/**
 * Casagrande's construction (Casagrande, A., 1936, "The determination of the preconsolidation load and its practical
 * significance", Proc. 1st Int. Conf. Soil Mech. Found. Eng., Cambridge, vol. 3, pp. 60-64).
 *
 * The smooth curve is the soft knee fitted to the points; greatest curvature, tangent and bisector are taken on it as
 * it is drawn, with the virgin line at a declared slope.
 */
import { given, notApplicable, type Outcome } from "../outcome";
import { at, meetingPoint, type Line } from "../numeric/line";
import { valueAt } from "./first-loading";
import { kneeAt, ramped, slopeAt, type Knee } from "./knee";
import {
  loadingPoints,
  ruled,
  smoothCurve,
  straightPoints,
  type Method,
  type MethodOptions,
  type MethodReading,
} from "./method";
import type { CurveReading } from "./reading";

/**
 * The scale of the drawing: the slope at which the virgin line is drawn, rise over run on the paper. Greatest
 * curvature and bisector depend on the scale; saying it by the virgin line makes the result the same whatever the
 * units, the range of the axes, and whether void ratio or strain is drawn. 2 is 63 degrees; a flatter drawing reads
 * higher.
 */
export const DRAWING_SLOPE = 2;

/** x of the greatest curvature of a knee drawn with the virgin line at the given slope. */
export function greatestCurvature(knee: Knee, drawingSlope = DRAWING_SLOPE): number {
  if (knee.width < 1e-6) return knee.corner;
  const scale = drawingSlope / (knee.before + knee.rise);
  const curvature = (z: number): number => {
    const p = ramped(z, 1);
    return (p * (1 - p)) / (1 + (scale * (knee.before + knee.rise * p)) ** 2) ** 1.5;
  };
  // One peak, at or before the corner: golden-section search, in widths from the corner.
  const golden = (Math.sqrt(5) - 1) / 2;
  let low = -8;
  let high = 0.5;
  while (high - low > 1e-6) {
    const a = high - golden * (high - low);
    const b = low + golden * (high - low);
    if (curvature(a) < curvature(b)) low = a;
    else high = b;
  }
  return knee.corner + (knee.width * (low + high)) / 2;
}

const through = (x: number, u: number, slope: number): Line => ({ slope, intercept: u - slope * x });

function read(reading: CurveReading, { drawingSlope = DRAWING_SLOPE }: MethodOptions): Outcome<MethodReading> {
  const { knee, parts, curve, picks } = reading;
  const virgin = parts.virginLine;
  const [low, high] = [curve.x[0], curve.x[curve.x.length - 1]];
  const x = picks.greatestCurvature ? Math.log10(picks.greatestCurvature) : greatestCurvature(knee, drawingSlope);
  const u = kneeAt(knee, x);
  const scale = drawingSlope / virgin.slope;
  const tangent = through(x, u, slopeAt(knee, x));
  const bisector = through(x, u, Math.tan(Math.atan(scale * tangent.slope) / 2) / scale);
  const meets = meetingPoint(bisector, virgin);
  if (!(meets > low && meets < high))
    return notApplicable("the bisector meets the virgin line outside the loads: there is no yield to read");
  const yields = at(virgin, meets);
  const reach = Math.min(high, x + 0.5);
  const foot = Math.max(low, (u - virgin.intercept) / virgin.slope - 0.05);
  const remarks = picks.greatestCurvature ? ["greatest curvature picked by hand"] : [];
  return given({
    stress: 10 ** meets,
    points: straightPoints(curve, parts.recompression, parts.virgin),
    remarks,
    lines: [
      loadingPoints(curve),
      smoothCurve(reading),
      ruled(curve, "virgin line", virgin, foot, high),
      { label: "greatest curvature", style: "points" as const, points: [[10 ** x, valueAt(curve, u)] as const] },
      ruled(curve, "horizontal", through(x, u, 0), x, reach),
      ruled(curve, "tangent", tangent, Math.max(low, x - 0.3), reach),
      ruled(curve, "bisector", bisector, x, Math.max(reach, meets)),
      {
        label: "preconsolidation stress",
        style: "guide" as const,
        points: [
          [10 ** meets, valueAt(curve, yields)] as const,
          [10 ** meets, valueAt(curve, curve.u[curve.u.length - 1])] as const,
        ],
      },
    ],
  });
}

export const casagrande: Method = {
  axes: ["stress", "value"],
  logarithmic: true,
  source: "Casagrande (1936)",
  read,
};
