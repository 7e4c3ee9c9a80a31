/**
 * Compression, recompression and swelling index: change of value per log cycle of stress, in void ratio (Cc, Cr, Cs) or,
 * for strain, the strain ratios (compression ratio CR = Cc / (1 + e0), and so on). Always positive.
 */
import { say, digits, type Message } from "../message";
import { badInput, given, notApplicable, then, type Outcome } from "../outcome";
import { straightLine } from "../numeric/straight-line";
import { branches, type Loop } from "./shape/branches";
import type { LoadPoint, TestCurve } from "./shape/points";
import { virginLineOf, readCurve } from "./methods/reading";
import { firstOf, lastOf, nth } from "../numeric/lists";

export interface Index {
  readonly value: number;
  /** Where the index was read: "virgin line 200 to 1600", "reload loop 50 to 200", ... */
  readonly basis: Message;
  /**
   * The points that the slope was taken through, branch by branch; of a loop, its two ends. Empty if the slope was
   * asked for between two stresses.
   */
  readonly readings: readonly (readonly LoadPoint[])[];
}

/** Two stresses; the slope is taken between them. */
export interface Between {
  readonly from: number;
  readonly to: number;
}

const between = (points: readonly LoadPoint[]): Message => {
  const all = points.map(({ stress }) => stress);
  return say`${digits(Math.min(...all), 4)} to ${digits(Math.max(...all), 4)}`;
};

/** Slope of the least-squares line through points, value per log cycle, positive. */
const slopeThrough = (points: readonly LoadPoint[]): number =>
  Math.abs(
    straightLine(
      points.map(({ stress }) => Math.log10(stress)),
      points.map(({ value }) => value),
    ).slope,
  );

/**
 * The value on a branch at a stress, interpolated linearly on log of stress between points; undefined outside the
 * branch.
 */
export function valueOn(branch: readonly LoadPoint[], stress: number): number | undefined {
  for (let i = 1; i < branch.length; i++) {
    const [one, next] = [nth(branch, i - 1), nth(branch, i)];
    const [a, b] = one.stress < next.stress ? [one, next] : [next, one];
    if (stress >= a.stress * (1 - 1e-9) && stress <= b.stress * (1 + 1e-9))
      return a.value + ((b.value - a.value) * Math.log(stress / a.stress)) / Math.log(b.stress / a.stress);
  }
  return undefined;
}

/** A branch from which a slope may be read, and the name of the branch in the answer. */
interface Named {
  readonly name: Message;
  readonly points: readonly LoadPoint[];
}

const named = (name: Message, branches: readonly (readonly LoadPoint[])[]): Named[] =>
  branches.map((points) => ({ name, points }));

/** Slope between two stresses, on the first of the branches that covers both. */
function slopeBetween(choices: readonly Named[], { from, to }: Between, wanted: Message): Outcome<Index> {
  if (from === to) return badInput(say`the two stresses are the same: give two different ones`);
  for (const { name, points } of choices) {
    const [a, b] = [valueOn(points, from), valueOn(points, to)];
    if (a !== undefined && b !== undefined)
      return given({
        value: Math.abs((b - a) / Math.log10(to / from)),
        basis: say`${name} from ${from} to ${to}`,
        readings: [],
      });
  }
  return notApplicable(say`no ${wanted} branch reaches both ${from} and ${to}: choose stresses within the loads`);
}

/** Mean slope of the least-squares lines through branches. */
const slopeOf = (name: Message, readings: readonly (readonly LoadPoint[])[]): Index => ({
  value: readings.map(slopeThrough).reduce((sum, slope) => sum + slope, 0) / readings.length,
  basis: say`${name} ${readings.map(between).reduce((all, one) => say`${all} and ${one}`)}`,
  readings,
});

/**
 * The ends of a loop: the stress at which unloading began, and the lowest stress. The readings between them are not
 * used: near its upper end a reload yields again, and is steeper there.
 */
const endsOf = ({ unload }: Loop): LoadPoint[] => [firstOf(unload), lastOf(unload)];

/**
 * Cc: the slope of the virgin line, which is the steepest consistent stretch of first loading; or the slope between two
 * stresses on first loading. Without the two stresses it refuses a curve that has no virgin line.
 * @example compressionIndex(clay).value.value // 0.4989
 * @example compressionIndex(clay, { from: 80, to: 300 }).value.value // 0.5052
 */
export function compressionIndex(test: TestCurve, stresses?: Between): Outcome<Index> {
  if (stresses)
    return then(branches(test), (found) =>
      slopeBetween(named(say`first loading`, [found.firstLoading]), stresses, say`first loading`),
    );
  return then(virginLineOf(test), ({ curve, virgin, line }) => {
    const points = curve.points.slice(virgin.from, virgin.to + 1);
    return given({ value: line.slope * curve.range, basis: say`virgin line ${between(points)}`, readings: [points] });
  });
}

/**
 * Cr: the slope of the unload-reload loops between their ends (the mean of several); where the test has no loop, the
 * slope of the final unloading; where it has neither, the slope of first loading before yield, which disturbance
 * steepens. With two stresses: the slope between them, on a reload branch or on first loading. Refuses a test with none
 * of these.
 *
 * It is common practice to prefer a loop to the rebound at the end, and to take the line between the ends of the loop:
 * no standard was found that states it. Schmertmann (1955) takes the mean slope of the rebound.
 * @example recompressionIndex(rebound).value.value // 0.05564
 */
export function recompressionIndex(test: TestCurve, stresses?: Between): Outcome<Index> {
  return then(branches(test), ({ loops, firstLoading, finalUnloading }) => {
    const closed = loops.filter(({ reload }) => reload.length > 1);
    const reloads = closed.map(({ reload }) => reload);
    if (stresses)
      return slopeBetween(
        [...named(say`reload`, reloads), ...named(say`first loading`, [firstLoading])],
        stresses,
        say`reload`,
      );
    if (closed.length) return given(slopeOf(say`reload loop`, closed.map(endsOf)));
    if (finalUnloading.length > 1)
      return given(slopeOf(say`final unloading`, [finalUnloading]), [
        say`Cr from the final unloading: the test has no reload loop`,
      ]);
    return then(readCurve(test), ({ curve, parts: { recompression, recompressionLine } }) => {
      const points = curve.points.slice(recompression.from, recompression.to + 1);
      return given(
        {
          value: Math.max(0, recompressionLine.slope) * curve.range,
          basis: say`initial loading ${between(points)}`,
          readings: [points],
        },
        [say`Cr from initial loading, which disturbance steepens: a reload loop is better`],
      );
    });
  });
}

/**
 * Cs: the slope of the line through the final unloading or, if the test has none, through the unloading of its loops.
 * @example swellingIndex(rebound).value.value // 0.05564
 * @example swellingIndex(clay) // refused: the test has no unloading: there is no swelling index
 */
export function swellingIndex(test: TestCurve, stresses?: Between): Outcome<Index> {
  return then(branches(test), ({ loops, finalUnloading }) => {
    const inner = loops.map(({ unload }) => unload);
    if (stresses) return slopeBetween(named(say`unloading`, [finalUnloading, ...inner]), stresses, say`unloading`);
    if (finalUnloading.length > 1) return given(slopeOf(say`final unloading`, [finalUnloading]));
    if (inner.length) return given(slopeOf(say`unloading of the loop`, inner));
    return notApplicable(say`the test has no unloading: there is no swelling index`);
  });
}

/**
 * The initial void ratio e0, by which void ratio becomes strain: the value given; if none is given, the void ratio
 * before the first load or, without one, at the first load.
 * @example initialVoidRatio(clay) // 1.5
 * @example initialVoidRatio(clay, 1.52) // 1.52
 */
export function initialVoidRatio(test: TestCurve, given?: number): number | undefined {
  if (given !== undefined) return given;
  return test.kind === "e" ? (test.initial ?? firstOf(test.points).value) : undefined;
}
