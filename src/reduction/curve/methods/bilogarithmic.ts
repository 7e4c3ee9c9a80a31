/**
 * Two lines on ln(1 + e) against log of stress (Butterfield, R., 1979, "A natural compression law for soils",
 * Geotechnique 29(4), 469-480; Oikawa, H., 1987, "Compression curve of soft soils", Soils and Foundations 27(3),
 * 99-104, who uses log(1 + e), which differs by a constant factor and gives the same stress).
 *
 * 1 + e is the height of the specimen over that of the solids, so ln(1 - strain) gives the same answer.
 */
import { say } from "../../message";
import { given, notApplicable } from "../../outcome";
import { at, meetingPoint } from "../../numeric/straight-line";
import { nearYield, straightPoints, yieldLine, yieldMark, type Method } from "./method";
import { lineThrough } from "../shape/straight-parts";
import { firstOf, lastOf, nth } from "../../numeric/lists";

export const bilogarithmic: Method = ({ curve, parts }) => {
  const { x, points, height } = curve;
  const y = height.map(Math.log);
  const virgin = nearYield(curve, parts.virgin);
  const before = lineThrough(x, y, parts.recompression);
  const after = lineThrough(x, y, virgin);
  const meets = meetingPoint(before, after);
  if (!(meets > firstOf(x) && meets < lastOf(x))) return notApplicable(say`the two lines meet outside the loads`);
  return given({
    stress: 10 ** meets,
    points: straightPoints(curve, parts.recompression, virgin),
    lines: [
      {
        label: "first loading",
        style: "points",
        points: points.map(({ stress }, i) => [stress, nth(y, i)] as const),
      },
      yieldLine(
        "before",
        [firstOf(x), meets + 0.1].map((v) => [10 ** v, at(before, v)] as const),
      ),
      yieldLine(
        "after",
        [meets - 0.05, nth(x, virgin.to)].map((v) => [10 ** v, at(after, v)] as const),
      ),
      yieldMark(10 ** meets, at(after, meets), lastOf(y)),
    ],
  });
};
