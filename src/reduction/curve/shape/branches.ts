/**
 * First loading, unload-reload loops, final unloading and swelling at seating, found from the order of the stresses.
 */
import { say, digits, type Message } from "../../message";
import { badInput, given, notApplicable, then, type Outcome } from "../../outcome";
import { compressedOnUnloading, SAME_LOAD } from "../loads";
import type { Kind, LoadPoint, TestCurve } from "./points";
import { median } from "../../numeric/median";
import { firstOf, neighbours, nth } from "../../numeric/lists";

/**
 * The points before the end of swelling are left out, if the specimen swelled by more than this share of the whole
 * compression.
 */
const SWELLING = 0.01;
/**
 * Under a constant stress, a compression above this share of the whole compression is a collapse on wetting. A load
 * that is left standing for a further log cycle of time compresses by about C alpha / Cc, 0.04, of a log cycle of stress.
 * Common practice, no source.
 */
const COLLAPSED = 0.05;
/** Loads within which a specimen may still be swelling at seating. */
const SEATING_LOADS = 3;
/** A movement against the load by more than this share of the whole compression is a wrong entry, not soil. */
const WRONG_WAY = 0.1;
/** A movement with the load by more than this share of the whole compression is more than noise. */
const SIGNIFICANT = 0.004;
/** A load of at least this many times the load before may be a typing slip. */
const LEAP = 8;
export interface Loop {
  /** From the stress at which unloading began (first point) to the lowest. */
  readonly unload: readonly LoadPoint[];
  /** From the lowest stress (first point) upward; empty if the test ends with the unloading. */
  readonly reload: readonly LoadPoint[];
}

export interface Branches {
  /** Points with a stress above all earlier ones, from the first load or from the most swollen point on. */
  readonly firstLoading: readonly LoadPoint[];
  /**
   * The loads before first loading: those under which the specimen still swelled at seating, or those before a wetting
   * that changed the soil.
   */
  readonly seating: readonly LoadPoint[];
  /** The loads after a wetting that collapsed the specimen, if first loading is read before it. */
  readonly afterCollapse: readonly LoadPoint[];
  /** Unload-reload loops within the test. */
  readonly loops: readonly Loop[];
  /** Unloading at the end, from the greatest stress (first point); empty if there is none. */
  readonly finalUnloading: readonly LoadPoint[];
  /**
   * Steps at constant stress, where water was added or the load left standing: the point before and the point after.
   */
  readonly wetting: readonly (readonly [before: LoadPoint, after: LoadPoint])[];
}

/** Compression of a point, positive, from an arbitrary zero. */
const compression = (test: TestCurve, point: LoadPoint): number => (test.kind === "e" ? -point.value : point.value);

/** What takes one, two or three decades off a stress. */
const DECADES = [0.1, 0.01, 0.001];

/** The whole range of compression, by which movements are judged large or small. */
function range(test: TestCurve): number {
  const all = test.points.map((point) => compression(test, point));
  return Math.max(...all) - Math.min(...all);
}

/** Ratios of each stress to the stress before it, where it is greater; the stress at `without` is left out. */
const climbsOf = (stresses: readonly number[], without = -1): number[] =>
  stresses.flatMap((stress, i) => {
    const before = stresses[i - 1];
    return i !== without && before !== undefined && stress > before ? [stress / before] : [];
  });

/** How unevenly stresses climb: the greatest ratio of one load to the one before over the least. */
function unevenness(stresses: readonly number[]): number {
  const climbs = climbsOf(stresses);
  return climbs.length ? Math.max(...climbs) / Math.min(...climbs) : Infinity;
}

/**
 * Finds a stress that is wrong by one to three decades (4000 typed for 400, 0.4 MPa among kPa). It has two signs: the
 * stress falls while the specimen goes on compressing, and decades the other way put a row in order again; or the last
 * load of a rise is at least eight times the load before it, and fewer decades would give about the ratio of the other
 * loads. Common practice, no source.
 */
function typingSlip(test: TestCurve): Message | undefined {
  const { points } = test;
  const significant = SIGNIFICANT * range(test);
  const stresses = points.map(({ stress }) => stress);
  const last = points.length - 1;
  const fits = (k: number, stress: number): boolean =>
    (k === 0 || stress > nth(stresses, k - 1)) && (k === last || stress < nth(stresses, k + 1));
  for (let i = 1; i <= last; i++) {
    const [one, before] = [nth(stresses, i), nth(stresses, i - 1)];
    const squeezed = compression(test, nth(points, i)) - compression(test, nth(points, i - 1));
    const falls = one < before * (1 - SAME_LOAD) && squeezed > significant;
    const climbs = climbsOf(stresses, i);
    const greatest = i === last || nth(stresses, i + 1) < one;
    const leap = one / before;
    const leaps = greatest && climbs.length >= 3 && leap >= LEAP && leap > 4 * median(climbs);
    if (!falls && !leaps) continue;
    const even = 1.5 * (climbs.length ? median(climbs) : Infinity);
    const remedies = falls
      ? DECADES.flatMap((factor) => [
          { k: i - 1, stress: before * factor },
          { k: i, stress: one / factor },
        ]).filter(({ k, stress }) => fits(k, stress))
      : DECADES.map((factor) => ({ k: i, stress: one * factor })).filter(
          ({ stress }) => stress > 1.1 * before && stress < even * before,
        );
    if (remedies.length === 0) continue;
    const after = ({ k, stress }: { k: number; stress: number }): number =>
      unevenness(stresses.map((s, j) => (j === k ? stress : s)));
    const { k, stress } = remedies.reduce((best, next) => (after(next) < after(best) ? next : best));
    const { row } = nth(points, k);
    return {
      ...say`row ${row}: the stress ${digits(nth(stresses, k), 8)} does not fit the rows around it, where about ${digits(stress, 3)} would: check its decimal point, its zeros and its unit`,
      row,
    };
  }
  return undefined;
}

/**
 * The rows in which the specimen compressed by more than creep although load was taken off: their stress or value is
 * wrong, or a load before them is missing.
 * @example compressedRows({ ...rebound, points: [{ row: 1, stress: 50, value: 0.9 }, { row: 2, stress: 25, value: 0.8 }] }) // [2]
 */
export function compressedRows(test: TestCurve): number[] {
  const { points, initial = firstOf(points).value } = test;
  const height = test.kind === "e" ? 1 + initial : 1;
  return neighbours(points).flatMap(([before, after]) =>
    after.stress < before.stress * (1 - SAME_LOAD) &&
    compressedOnUnloading(compression(test, after) - compression(test, before), height)
      ? [after.row]
      : [],
  );
}

/** The remark on such a row. */
export const compressedIn = (row: number): Message =>
  say`row ${row}: the specimen compressed as load was taken off: check the stress and the value`;

/**
 * Whether the specimen would have swelled all the way from the first load to the greatest: then the values are of the
 * other kind.
 */
function otherKind(test: TestCurve): boolean {
  const rising = test.points.filter(({ stress }, i) => test.points.slice(0, i).every((other) => other.stress < stress));
  const u = rising.map((point) => compression(test, point));
  return u.length >= 3 && u.indexOf(Math.min(...u)) === u.length - 1;
}

/**
 * The message on a value that jumps against the load: it names the row without which the other values follow one
 * another.
 */
function wrongEntry(
  kind: Kind,
  points: readonly LoadPoint[],
  u: readonly number[],
  gross: number,
): Message | undefined {
  const i = u.findIndex((value, k) => k > 0 && value < nth(u, k - 1) - gross);
  if (i < 0) return undefined;
  const followsWithout = (k: number): boolean =>
    u.filter((_, j) => j !== k).every((value, j, rest) => j === 0 || value > nth(rest, j - 1) - gross / 2);
  const { row, value } = nth(points, followsWithout(i - 1) && !followsWithout(i) ? i - 1 : i);
  const said =
    kind === "e"
      ? say`row ${row}: the void ratio ${digits(value, 6)} does not fit the rows around it while the stress rises: check it`
      : say`row ${row}: the strain ${digits(value, 6)} does not fit the rows around it while the stress rises: check it`;
  return { ...said, row };
}

/**
 * Branches of a test from its points in test order. Refuses (input) a stress that seems wrong by decades, a value that
 * does not fit the others, and values that go the wrong way for their kind; refuses (method) fewer than two
 * first-loading points.
 * @example branches(rebound).value.finalUnloading.map(({ stress }) => stress) // [1280, 320, 80, 20]
 */
export const branches = (test: TestCurve): Outcome<Branches> =>
  then(branchesOfAny(test), (found) =>
    found.firstLoading.length < 2
      ? notApplicable(say`the test has one first-loading point only: there is no curve to read`)
      : given(found),
  );

/** The points in the order of the test, parted where the load turns; a later value at the same stress replaces the earlier one. */
function partedWhereTurned({ points }: TestCurve): {
  readonly loading: LoadPoint[];
  readonly loops: Loop[];
  /** The values before and after, where water was added or the load was left standing. */
  readonly wetting: [LoadPoint, LoadPoint][];
  readonly finalUnloading: LoadPoint[];
  readonly remarks: Message[];
} {
  const remarks: Message[] = [];
  const loading: LoadPoint[] = [];
  const loops: Loop[] = [];
  const wetting: [LoadPoint, LoadPoint][] = [];
  let unload: LoadPoint[] = [];
  let reload: LoadPoint[] = [];
  let last: LoadPoint | undefined;
  const close = (): void => {
    if (unload.length > 1) loops.push({ unload, reload });
    unload = [];
    reload = [];
  };
  for (const point of points) {
    const greatest = loading.at(-1);
    if (!last || !greatest || point.stress > greatest.stress * (1 + SAME_LOAD)) {
      close();
      loading.push(point);
    } else if (Math.abs(point.stress / last.stress - 1) <= SAME_LOAD) {
      const branch = reload.length > 1 ? reload : unload.length > 1 ? unload : loading;
      branch[branch.length - 1] = point;
      wetting.push([last, point]);
      remarks.push(
        say`row ${point.row} has the stress of the row before (water added, or the load left standing); the later value is used`,
      );
    } else if (point.stress < last.stress) {
      if (reload.length > 1) close();
      if (unload.length === 0) unload.push(last);
      unload.push(point);
    } else {
      if (reload.length === 0) reload.push(last);
      reload.push(point);
    }
    last = point;
  }
  const finalUnloading = reload.length === 0 ? unload : [];
  if (reload.length > 0) close();
  return { loading, loops, wetting, finalUnloading, remarks };
}

/** As `branches`, but one first-loading point is enough, so that rows of an unloading alone are accepted. */
export function branchesOfAny(test: TestCurve): Outcome<Branches> {
  if (otherKind(test))
    return badInput(
      test.kind === "e"
        ? say`the values rise as the stress rises: check them, or give kind "strain"`
        : say`the values fall as the stress rises: give kind "e" if they are void ratios, or compression as positive`,
    );
  const slip = typingSlip(test);
  if (slip) return badInput(slip);

  const { loading, loops, wetting, finalUnloading, remarks } = partedWhereTurned(test);
  remarks.push(...compressedRows(test).map(compressedIn));
  const u = loading.map((point) => compression(test, point));
  const whole = Math.max(...u) - Math.min(...u);
  const leading = u.slice(0, SEATING_LOADS + 1);
  const most = leading.indexOf(Math.min(...leading));
  const atSeating = most > 0 && firstOf(u) - nth(u, most) > SWELLING * whole ? most : 0;
  // Soil that swelled or collapsed when water was added is not the soil that was loaded before: first loading begins
  // after the wetting. If a collapse leaves more of the curve before it than after it, first loading ends there instead.
  const swell = ([before, after]: readonly [LoadPoint, LoadPoint]) =>
    compression(test, before) - compression(test, after);
  const wetted = wetting.filter((step) => swell(step) > SWELLING * whole);
  const swelled = Math.max(atSeating, ...wetted.map(([, after]) => loading.indexOf(after)));
  const collapse = wetting
    .filter((step) => -swell(step) > COLLAPSED * whole && loading.indexOf(step[1]) > swelled)
    .at(-1);
  const collapsed = collapse ? loading.indexOf(collapse[1]) : swelled;
  const endsThere = collapse !== undefined && collapsed - swelled >= loading.length - collapsed;
  const begins = endsThere ? swelled : collapsed;
  const seating = loading.slice(0, begins);
  const afterCollapse = endsThere ? loading.slice(collapsed) : [];
  const firstLoading = endsThere ? [...loading.slice(begins, collapsed), collapse[0]] : loading.slice(begins);
  if (swelled > 0)
    remarks.push(
      say`the specimen swelled up to stress ${nth(loading, swelled).stress}: first loading is read from there`,
    );
  if (collapse)
    remarks.push(
      endsThere
        ? say`row ${collapse[1].row}: the specimen collapsed under stress ${collapse[1].stress}: first loading is read up to there, before the collapse`
        : say`row ${collapse[1].row}: the specimen collapsed under stress ${collapse[1].stress}: first loading is read from there, after the collapse`,
    );
  const wrong = wrongEntry(
    test.kind,
    firstLoading,
    firstLoading.map((point) => compression(test, point)),
    WRONG_WAY * whole,
  );
  if (wrong) return badInput(wrong);
  return given({ firstLoading, seating, afterCollapse, loops, finalUnloading, wetting }, remarks);
}
