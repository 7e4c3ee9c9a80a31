/**
 * Compression, recompression and swelling index: change of value per log cycle of stress, in void ratio (Cc, Cr, Cs) or,
 * for strain, the strain ratios (compression ratio CR = Cc / (1 + e0), and so on). Always positive.
 */
import { say, digits, listed, type Message } from "../message";
import { badInput, given, notApplicable, then, type Outcome, type Refusal } from "../outcome";
import { straightLine } from "../numeric/straight-line";
import { branches, compressedIn, compressedRows, type Loop } from "./shape/branches";
import type { LoadPoint, TestCurve } from "./shape/points";
import { virginLineOf, readCurve } from "./methods/reading";
import { checkCurvePicks, type CurvePicks } from "./picks";
import { pickRemarks } from "../increment/constructions/picks";
import { firstOf, lastOf, nth } from "../numeric/lists";
import { ROUNDING } from "../numeric/same-number";

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

/** The greatest Cc / (1 + e0) of soils other than peat. Common practice, no source. */
export const STEEPEST_SOIL = 0.6;

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
    if (stress >= a.stress * (1 - ROUNDING) && stress <= b.stress * (1 + ROUNDING))
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

/** Why a line between two stresses gives no index. */
const higherUnder = (one: number, other: number): Refusal =>
  notApplicable(
    say`the specimen is higher under ${Math.max(one, other)} than under ${Math.min(one, other)}: choose other stresses`,
  );

/** The refusal of a line on which the specimen is higher under the greater of its stresses; undefined if it is not. */
const refusalOfLine = ({ kind }: TestCurve, high: LoadPoint, low: LoadPoint): Refusal | undefined =>
  (high.value - low.value) * (kind === "e" ? -1 : 1) < 0 ? higherUnder(high.stress, low.stress) : undefined;

/** Slope between two stresses, on the first of the branches that covers both. Refuses a branch that is higher at the greater stress. */
function slopeBetween(
  { kind }: TestCurve,
  choices: readonly Named[],
  { from, to }: Between,
  wanted: Message,
): Outcome<Index> {
  if (from === to) return badInput(say`the two stresses are the same: give two different ones`);
  for (const { name, points } of choices) {
    const [a, b] = [valueOn(points, from), valueOn(points, to)];
    if (a === undefined || b === undefined) continue;
    const value = ((b - a) / Math.log10(to / from)) * (kind === "e" ? -1 : 1);
    return value < 0
      ? higherUnder(from, to)
      : given({ value, basis: say`${name} from ${from} to ${to}`, readings: [] });
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
 * Mean slope of unloadings, through the readings that are given of each, or else through all their points. Refuses an unloading in which
 * the specimen compressed: its slope belongs to the load that is missing or to the wrong entry; or, if it compressed by creep alone, is not
 * that of a swelling.
 */
function slopeOfUnloadings(
  test: TestCurve,
  name: Message,
  unloadings: readonly (readonly LoadPoint[])[],
  readings = unloadings,
): Outcome<Index> {
  const { initial = firstOf(test.points).value } = test;
  const [row] = unloadings.flatMap((points) => compressedRows({ ...test, initial, points }));
  if (row !== undefined)
    return notApplicable(
      say`${compressedIn(row)}, and whether a load is missing before it; this unloading gives no slope, unless its ends are picked`,
    );
  const refused = readings.map((points) => refusalOfLine(test, firstOf(points), lastOf(points))).find(Boolean);
  return refused ?? given(slopeOf(name, readings));
}

/**
 * The ends of a loop: the stress at which unloading began, and the lowest stress. The readings between them are not
 * used: near its upper end a reload yields again, and is steeper there.
 */
const endsOf = (unload: readonly LoadPoint[]): LoadPoint[] => [firstOf(unload), lastOf(unload)];

/** A picked stress within this share of an end of a branch is that end. */
const AT_END = 0.001;
const isAt = (stress: number, end: number): boolean => Math.abs(stress / end - 1) <= AT_END;

/**
 * A point on a loop: an end of the loop is the reading there, any other stress is interpolated on the reload branch (on
 * the unload branch where the reload has not reached it). Undefined outside the loop.
 */
function pointOnLoop({ unload, reload }: Loop, stress: number): LoadPoint | undefined {
  const end = [firstOf(unload), lastOf(unload)].find((point) => isAt(stress, point.stress));
  if (end) return end;
  const value = valueOn(reload, stress) ?? valueOn(unload, stress);
  return value === undefined ? undefined : { row: firstOf(unload).row, stress, value };
}

/**
 * The slope of the line through the first loop that reaches both picked stresses; an end that is not picked is the loop's. Refuses a
 * line that is higher at its greater stress.
 */
function pickedLoop(
  test: TestCurve,
  closed: readonly Loop[],
  { loop_from: from, loop_to: to }: CurvePicks,
): Outcome<Index> {
  for (const loop of closed) {
    const low = pointOnLoop(loop, from ?? lastOf(loop.unload).stress);
    const high = pointOnLoop(loop, to ?? firstOf(loop.unload).stress);
    if (!low || !high || low.stress >= high.stress) continue;
    const refused = refusalOfLine(test, high, low);
    if (refused) return refused;
    const remarks = pickRemarks({ loop_from: from, loop_to: to }, ["loop_from", "loop_to"]);
    return given(slopeOf(say`reload loop`, [[high, low]]), remarks);
  }
  const reached = closed.map(({ unload }) => between([firstOf(unload), lastOf(unload)]));
  return badInput(
    reached.length
      ? say`no loop reaches the picked ends of its line: pick stresses within ${listed(reached)}`
      : say`a line through a loop is picked, and the test has no unload-reload loop: set the pick back to automatic`,
  );
}

/** The points of an unloading between its picked ends. Refuses fewer than two. */
function unloadingBetween(
  points: readonly LoadPoint[],
  { unloading_from: from, unloading_to: to }: CurvePicks,
): Outcome<readonly LoadPoint[]> {
  if (from === undefined && to === undefined) return given(points);
  const low = from ?? lastOf(points).stress;
  const high = to ?? firstOf(points).stress;
  const chosen = points.filter(({ stress }) => stress >= low * (1 - AT_END) && stress <= high * (1 + AT_END));
  return chosen.length < 2
    ? badInput(
        say`the unloading line picked from ${digits(low, 4)} to ${digits(high, 4)} has fewer than two points of the unloading: move an end`,
      )
    : given(chosen, pickRemarks({ unloading_from: from, unloading_to: to }, ["unloading_from", "unloading_to"]));
}

/**
 * Cc: the slope of the virgin line, which is the steepest consistent stretch of first loading or has picked ends; or the
 * slope between two stresses on first loading. Without the two stresses it refuses a curve that has no virgin line.
 * @example compressionIndex(clay).value.value // 0.4989
 * @example compressionIndex(clay, { from: 80, to: 300 }).value.value // 0.5052
 * @example compressionIndex(clay, undefined, { virgin_from: 80 }).value.value // 0.5048
 */
export function compressionIndex(test: TestCurve, stresses?: Between, picks: CurvePicks = {}): Outcome<Index> {
  if (stresses)
    return then(branches(test), (found) =>
      slopeBetween(test, named(say`first loading`, [found.firstLoading]), stresses, say`first loading`),
    );
  return then(virginLineOf(test, picks), ({ curve, virgin, line, doubts }) => {
    const points = curve.points.slice(virgin.from, virgin.to + 1);
    return given(
      { value: line.slope * curve.range, basis: say`virgin line ${between(points)}`, readings: [points] },
      doubts,
    );
  });
}

/**
 * Cr: the slope of the unload-reload loops between their ends (the mean of several); where the test has no loop, the
 * slope of the final unloading; where it has neither, the slope of first loading before yield, which disturbance
 * steepens. Picked ends choose the line: through a loop between two stresses, of the unloading, of first loading. With
 * two stresses: the slope between them, on a reload branch or on first loading. Refuses a test with none of these, picks
 * that the test does not reach, and a loop or an unloading in which the specimen compressed.
 *
 * It is common practice to prefer a loop to the rebound at the end, and to take the line between the ends of the loop:
 * no standard was found that states it. Schmertmann (1955) takes the mean slope of the rebound.
 * @example recompressionIndex(rebound).value.value // 0.05564
 * @example recompressionIndex(rebound, undefined, { loop_from: 40 }) // refused: a line through a loop is picked, and the test has no unload-reload loop: set the pick back to automatic
 */
export function recompressionIndex(test: TestCurve, stresses?: Between, picks: CurvePicks = {}): Outcome<Index> {
  const checked = checkCurvePicks(picks);
  if (!checked.ok) return checked;
  return then(branches(test), ({ loops, firstLoading, finalUnloading }) => {
    const closed = loops.filter(({ reload }) => reload.length > 1);
    const reloads = closed.map(({ reload }) => reload);
    if (stresses)
      return slopeBetween(
        test,
        [...named(say`reload`, reloads), ...named(say`first loading`, [firstLoading])],
        stresses,
        say`reload`,
      );
    if (picks.loop_from !== undefined || picks.loop_to !== undefined) return pickedLoop(test, closed, picks);
    if (closed.length) {
      const unloadings = closed.map(({ unload }) => unload);
      return slopeOfUnloadings(test, say`reload loop`, unloadings, unloadings.map(endsOf));
    }
    if (finalUnloading.length > 1)
      return then(unloadingBetween(finalUnloading, picks), (points) =>
        then(slopeOfUnloadings(test, say`final unloading`, [points]), (index) =>
          given(index, [say`Cr from the final unloading: the test has no reload loop`]),
        ),
      );
    return then(readCurve(test, picks), ({ curve, parts: { recompression, recompressionLine } }) => {
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
 * Cs: the slope of the line through the final unloading or, if the test has none, through the unloading of its loops;
 * picked ends choose the points of the final unloading. Refuses an unloading in which the specimen compressed.
 * @example swellingIndex(rebound).value.value // 0.05564
 * @example swellingIndex(rebound, undefined, { unloading_from: 80 }).value.value // 0.05232
 * @example swellingIndex(clay) // refused: the test has no unloading: there is no swelling index
 */
export function swellingIndex(test: TestCurve, stresses?: Between, picks: CurvePicks = {}): Outcome<Index> {
  const checked = checkCurvePicks(picks);
  if (!checked.ok) return checked;
  return then(branches(test), ({ loops, finalUnloading }) => {
    const inner = loops.map(({ unload }) => unload);
    if (stresses)
      return slopeBetween(test, named(say`unloading`, [finalUnloading, ...inner]), stresses, say`unloading`);
    if (finalUnloading.length > 1)
      return then(unloadingBetween(finalUnloading, picks), (points) =>
        slopeOfUnloadings(test, say`final unloading`, [points]),
      );
    if (picks.unloading_from !== undefined || picks.unloading_to !== undefined)
      return badInput(
        say`an unloading line is picked, and the test has no final unloading: set the pick back to automatic`,
      );
    if (inner.length) return slopeOfUnloadings(test, say`unloading of the loop`, inner);
    return notApplicable(say`the test has no unloading: there is no swelling index`);
  });
}

/** Refuses a value that cannot be had without e0. */
export const E0_NEEDED = badInput(say`this needs the initial void ratio too: give it`);

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
