/**
 * The meeting point of the recompression line and the virgin line, on log of stress: the oldest quick reading, and the
 * corner that settlement formulas with Cr and Cc assume (common practice, no source).
 */
import { say } from "../../message";
import { given, notApplicable } from "../../outcome";
import { meetingPoint } from "../../numeric/straight-line";
import { loadingPoints, ruled, straightPoints, yieldGuide, type Method } from "./method";
import { firstOf, lastOf } from "../../numeric/lists";

export const intersection: Method = ({ curve, parts }) => {
  const { recompressionLine, virginLine, recompression, virgin } = parts;
  const x = meetingPoint(recompressionLine, virginLine);
  const [low, high] = [firstOf(curve.x), lastOf(curve.x)];
  if (!(x > low && x < high)) return notApplicable(say`the two lines meet outside the loads`);
  return given({
    stress: 10 ** x,
    points: straightPoints(curve, recompression, virgin),
    lines: [
      loadingPoints(curve),
      ruled(curve, "recompression line", recompressionLine, low, Math.min(high, x + 0.15)),
      ruled(curve, "virgin line", virginLine, Math.max(low, x - 0.1), high),
      yieldGuide(curve, virginLine, x),
    ],
  });
};
