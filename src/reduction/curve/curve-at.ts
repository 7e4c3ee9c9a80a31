/** The value on the compression curve of a test at a stress between its loads. */
import { say, type Message } from "../message";
import { figure, given, notApplicable, then, type Outcome } from "../outcome";
import { valueOn } from "./indices";
import { branchesOfAny, type Branches } from "./shape/branches";
import type { LoadPoint, TestCurve } from "./shape/points";
import { sameNumber } from "../numeric/same-number";

/** "loading": the outer loading curve, without the loops; "unloading": the last unloading of the test. */
export const CURVE_BRANCHES = ["loading", "unloading"] as const;
export type CurveBranch = (typeof CURVE_BRANCHES)[number];

/**
 * The value at a stress: the value of a point of the line at that stress (the later of two points), or interpolated
 * between two points, linearly on log of stress. `line` and `name` are the words of the refusal (method) beyond the
 * ends of the line.
 */
export function readOn(
  line: readonly LoadPoint[],
  stress: number,
  words: { line: Message; name: Message },
): Outcome<number> {
  const point = line.filter((one) => sameNumber(one.stress, stress)).at(-1);
  const value = point ? point.value : valueOn(line, stress);
  if (value !== undefined) return given(value);
  const all = line.map((one) => one.stress);
  return notApplicable(
    say`${words.name} (${figure(stress)}) lies beyond ${words.line}, from ${figure(Math.min(...all))} to ${figure(Math.max(...all))}: give a stress between, and check that both are in one unit`,
  );
}

/**
 * Points of a branch with its steps at constant stress, where water was added or a load left standing: the curve
 * arrives at the point before the step, and continues from the point after it.
 */
function withSteps(points: readonly LoadPoint[], wetting: Branches["wetting"]): LoadPoint[] {
  const arrival = (point: LoadPoint): LoadPoint[] => {
    const step = wetting.find(([, after]) => after === point);
    return step ? [...arrival(step[0]), point] : [point];
  };
  return points.flatMap(arrival);
}

/** The points of a branch; empty if the test has none. Refuses the rows that `branches` refuses. */
const branchOf = (test: TestCurve, branch: CurveBranch): Outcome<readonly LoadPoint[]> =>
  then(branchesOfAny(test), ({ seating, firstLoading, afterCollapse, finalUnloading, loops, wetting }) => {
    // A collapse that first loading ends before brings its own point before the step.
    const outer = [...seating, ...(afterCollapse.length ? firstLoading.slice(0, -1) : firstLoading), ...afterCollapse];
    if (branch === "loading") return given(withSteps(outer, wetting));
    const [top, ...down] = finalUnloading.length > 1 ? finalUnloading : (loops.at(-1)?.unload ?? []);
    return given(top ? [top, ...withSteps(down, wetting)] : []);
  });

/**
 * Void ratio or strain at a stress, in the unit of the stresses of the test. Refuses (method) a stress beyond the branch, and
 * an unloading that the test does not have. Interpolation on log of stress is common practice, no source.
 * @example curveAt(clay, 130) // 1.218
 * @example curveAt(clay, 1000) // refused: the stress (1000) lies beyond the loading curve, from 5 to 500: give a stress
 *   between, and check that both are in one unit
 */
export const curveAt = (
  test: TestCurve,
  stress: number,
  branch: CurveBranch = "loading",
  name = say`the stress`,
): Outcome<number> =>
  then(branchOf(test, branch), (points) =>
    points.length === 0
      ? notApplicable(say`the test has no unloading: leave the branch out, or give "loading"`)
      : readOn(points, stress, {
          line: branch === "loading" ? say`the loading curve` : say`the unloading curve`,
          name,
        }),
  );
