/**
 * Work per unit volume (Becker, D.E., Crooks, J.H.A., Been, K., Jefferies, M.G., 1987, "Work as a criterion for
 * determining in situ and yield stresses in clays", Canadian Geotechnical Journal 24(4), 549-564).
 *
 * Cumulative work W = sum of mean stress of the step x increment of engineering strain (trapezoid rule), against stress,
 * both on arithmetic scales; yield is where the line before and the line after meet. With natural strain the reading
 * drifts high; engineering strain is used, on the height at the first load. W has the unit of stress (kPa = kJ/m3).
 */
import { say } from "../../message";
import { given, notApplicable } from "../../outcome";
import { at, meetingPoint } from "../../numeric/straight-line";
import type { FirstLoading } from "../shape/first-loading";
import { nearYield, straightPoints, yieldLine, yieldMark, type Method } from "./method";
import { lineThrough } from "../shape/straight-parts";
import { firstOf, lastOf, nth } from "../../numeric/lists";

/** Cumulative work at each first-loading point, from the first point on. */
export function cumulativeWork({ points, u, range, kind, height }: FirstLoading): number[] {
  const strain = range / (kind === "e" ? firstOf(height) : 1);
  let done = 0;
  return points.map(({ stress }, i) => {
    if (i > 0) done += ((stress + nth(points, i - 1).stress) / 2) * (nth(u, i) - nth(u, i - 1)) * strain;
    return done;
  });
}

export const work: Method = ({ curve, parts }) => {
  const stress = curve.points.map((point) => point.stress);
  const done = cumulativeWork(curve);
  const virgin = nearYield(curve, parts.virgin);
  const before = lineThrough(stress, done, parts.recompression);
  const after = lineThrough(stress, done, virgin);
  const meets = meetingPoint(before, after);
  if (!(meets > firstOf(stress) && meets < lastOf(stress)))
    return notApplicable(say`the two lines meet outside the loads`);
  const end = nth(stress, virgin.to);
  return given({
    stress: meets,
    points: straightPoints(curve, parts.recompression, virgin),
    lines: [
      { label: "work", style: "points", points: stress.map((s, i) => [s, nth(done, i)] as const) },
      yieldLine(
        "before",
        [firstOf(stress), meets * 1.2].map((s) => [s, at(before, s)] as const),
      ),
      yieldLine(
        "after",
        [meets * 0.9, end].map((s) => [s, at(after, s)] as const),
      ),
      yieldMark(meets, at(after, meets), 0),
    ],
  });
};
