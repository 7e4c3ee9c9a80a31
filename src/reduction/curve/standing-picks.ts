/** Where every pick of a compression curve stands: the picked stress, or the stress that the constructions choose. */
import { branches } from "./shape/branches";
import type { TestCurve } from "./shape/points";
import { greatestCurvatureOf } from "./methods/casagrande";
import { readCurve } from "./methods/reading";
import type { CurvePicks } from "./picks";
import { firstOf, lastOf, nth } from "../numeric/lists";
import type { Run } from "./shape/straight-parts";

/**
 * Stresses of the picks; a pick is absent if the curve has no such line, or shows no yield. A pick that the curve
 * refuses stands where the person put it, and the others as without picks.
 * @example standingPicks(rebound).unloading_to // 1280
 * @example standingPicks(rebound, { virgin_from: 640 }).virgin_from // 640
 */
export function standingPicks(test: TestCurve, picks: CurvePicks = {}): CurvePicks {
  const withPicks = readCurve(test, picks);
  const reading = withPicks.ok ? withPicks : readCurve(test);
  const known = branches(test);
  const ends = (run: Run, points: readonly { readonly stress: number }[]) =>
    [nth(points, run.from).stress, nth(points, run.to).stress] as const;
  const [recompression_from, recompression_to] = reading.ok
    ? ends(reading.value.parts.recompression, reading.value.curve.points)
    : [];
  const [virgin_from, virgin_to] = reading.ok ? ends(reading.value.parts.virgin, reading.value.curve.points) : [];
  const loop = known.ok ? known.value.loops.find(({ reload }) => reload.length > 1) : undefined;
  const unloading = known.ok && known.value.finalUnloading.length > 1 ? known.value.finalUnloading : undefined;
  return {
    greatest_curvature: reading.ok ? greatestCurvatureOf(reading.value) : undefined,
    recompression_from,
    recompression_to,
    virgin_from,
    virgin_to,
    loop_from: loop && lastOf(loop.unload).stress,
    loop_to: loop && firstOf(loop.unload).stress,
    unloading_from: unloading && lastOf(unloading).stress,
    unloading_to: unloading && firstOf(unloading).stress,
    ...picks,
  };
}
