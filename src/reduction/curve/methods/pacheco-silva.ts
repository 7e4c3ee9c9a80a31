/**
 * Pacheco Silva's construction (Pacheco Silva, F., 1970, "A new graphical construction for determination of the
 * pre-consolidation stress of a soil sample", Proc. 4th Brazilian Conf. Soil Mech. Found. Eng., Rio de Janeiro, vol. 2,
 * 225-232): the virgin line is extended up to the horizontal at the initial void ratio; from there a vertical line goes
 * down to the curve, and from the curve a horizontal line to the virgin line, where the stress is the answer. The
 * answer does not depend on the scale of the drawing. The initial value is the value before the first load if the test
 * gives it, otherwise the first value.
 */
import type { LineLabel } from "../../construction";
import { say } from "../../message";
import { given, notApplicable } from "../../outcome";
import { valueAt } from "../shape/first-loading";
import { kneeAt } from "../shape/knee";
import { loadingPoints, ruled, smoothCurve, stresses, yieldGuide, type Method } from "./method";
import { firstOf, lastOf } from "../../numeric/lists";

export const pachecoSilva: Method = (reading) => {
  const { curve, knee, parts } = reading;
  const { virginLine, virgin } = parts;
  const atVirgin = (u: number): number => (u - virginLine.intercept) / virginLine.slope;
  const top = atVirgin(curve.initial);
  const [low, high] = [firstOf(curve.x), lastOf(curve.x)];
  if (!(top > low)) return notApplicable(say`the virgin line meets the initial value before the first load`);
  const u = kneeAt(knee, top);
  const x = atVirgin(u);
  if (!(x < high)) return notApplicable(say`the construction ends beyond the loads`);
  const level = (label: LineLabel, value: number, from: number, to: number) =>
    ruled(curve, label, { slope: 0, intercept: value }, from, to);
  return given({
    stress: 10 ** x,
    points: say`virgin ${stresses(curve, virgin)}, smooth curve`,
    lines: [
      loadingPoints(curve),
      smoothCurve(reading),
      ruled(curve, "virgin line", virginLine, top, high),
      level("initial value", curve.initial, low, top),
      {
        label: "vertical to the curve",
        style: "construction",
        points: [curve.initial, u].map((v) => [10 ** top, valueAt(curve, v)] as const),
      },
      level("horizontal to the virgin line", u, top, x),
      yieldGuide(curve, virginLine, x),
    ],
  });
};
