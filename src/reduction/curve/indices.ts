/**
 * Compression, recompression and swelling index: change of value per log cycle of stress, in void ratio (Cc, Cr, Cs) or,
 * for strain, the strain ratios (compression ratio CR = Cc / (1 + e0), and so on). Always positive.
 */
import { badInput, given, notApplicable, then, type Outcome } from "../outcome";
import { straightLine } from "../numeric/straight-line";
import { branches } from "./branches";
import type { LoadPoint, TestCurve } from "./points";
import { virginLineOf, readCurve } from "./reading";

export interface Index {
  readonly value: number;
  /** Where it was read: "virgin line 200 to 1600", "reload loop 50 to 200", ... */
  readonly basis: string;
}

/** Two stresses between which a slope is asked for. */
export interface Between {
  readonly from: number;
  readonly to: number;
}

const between = (points: readonly LoadPoint[]): string => {
  const all = points.map(({ stress }) => stress);
  return `${Number(Math.min(...all).toPrecision(4))} to ${Number(Math.max(...all).toPrecision(4))}`;
};

/** Slope of the best line through points, value per log cycle, positive. */
const slopeThrough = (points: readonly LoadPoint[]): number =>
  Math.abs(
    straightLine(
      points.map(({ stress }) => Math.log10(stress)),
      points.map(({ value }) => value),
    ).slope,
  );

/** The value on a branch at a stress, straight between points on log of stress; undefined outside the branch. */
export function valueOn(branch: readonly LoadPoint[], stress: number): number | undefined {
  for (let i = 1; i < branch.length; i++) {
    const [a, b] = branch[i - 1].stress < branch[i].stress ? [branch[i - 1], branch[i]] : [branch[i], branch[i - 1]];
    if (stress >= a.stress * (1 - 1e-9) && stress <= b.stress * (1 + 1e-9))
      return a.value + ((b.value - a.value) * Math.log(stress / a.stress)) / Math.log(b.stress / a.stress);
  }
  return undefined;
}

/** Slope between two stresses on the first of the branches that holds both. */
function slopeBetween(choices: readonly (readonly LoadPoint[])[], { from, to }: Between, name: string): Outcome<Index> {
  if (from === to) return badInput("the two stresses are the same: give two different ones");
  for (const branch of choices) {
    const [a, b] = [valueOn(branch, from), valueOn(branch, to)];
    if (a !== undefined && b !== undefined)
      return given({ value: Math.abs((b - a) / Math.log10(to / from)), basis: `${name} from ${from} to ${to}` });
  }
  return notApplicable(`no ${name} branch reaches both ${from} and ${to}: choose stresses within the loads`);
}

/**
 * Cc: the virgin line, the steepest consistent stretch of first loading; or the slope between two stresses on first
 * loading. Refuses (without the two stresses) a curve that has no virgin line.
 */
export function compressionIndex(test: TestCurve, stresses?: Between): Outcome<Index> {
  if (stresses) return then(branches(test), (found) => slopeBetween([found.firstLoading], stresses, "first loading"));
  return then(virginLineOf(test), ({ curve, virgin, line }) =>
    given({
      value: line.slope * curve.range,
      basis: `virgin line ${between(curve.points.slice(virgin.from, virgin.to + 1))}`,
    }),
  );
}

/**
 * Cr: mean slope of the reload branches, each from its lowest stress to where it began to unload; where the test has no
 * loop, the line of initial loading before yield, which disturbance steepens. Refuses where there is neither.
 */
export function recompressionIndex(test: TestCurve, stresses?: Between): Outcome<Index> {
  return then(branches(test), ({ loops, firstLoading }) => {
    const reloads = loops.map(({ reload }) => reload).filter((reload) => reload.length > 1);
    if (stresses) return slopeBetween([...reloads, firstLoading], stresses, "reload");
    if (reloads.length) {
      const value = reloads.map(slopeThrough).reduce((sum, slope) => sum + slope, 0) / reloads.length;
      return given({ value, basis: `reload loop ${reloads.map(between).join(" and ")}` });
    }
    return then(readCurve(test), ({ curve, parts: { recompression, recompressionLine } }) =>
      given(
        {
          value: Math.max(0, recompressionLine.slope) * curve.range,
          basis: `initial loading ${between(curve.points.slice(recompression.from, recompression.to + 1))}`,
        },
        ["Cr from initial loading, which disturbance steepens: a reload loop is better"],
      ),
    );
  });
}

/** Cs: the line through the final unloading, or, where the test has none, through the unloading of its loops. */
export function swellingIndex(test: TestCurve, stresses?: Between): Outcome<Index> {
  return then(branches(test), ({ loops, finalUnloading }) => {
    const inner = loops.map(({ unload }) => unload);
    if (stresses) return slopeBetween([finalUnloading, ...inner], stresses, "unloading");
    if (finalUnloading.length > 1)
      return given({ value: slopeThrough(finalUnloading), basis: `final unloading ${between(finalUnloading)}` });
    if (inner.length) {
      const value = inner.map(slopeThrough).reduce((sum, slope) => sum + slope, 0) / inner.length;
      return given({ value, basis: `unloading of the loop ${inner.map(between).join(" and ")}` });
    }
    return notApplicable("the test has no unloading: there is no swelling index");
  });
}

/** 1 + e0 for turning void ratio into strain: the void ratio before the first load, or at it. */
export function initialVoidRatio(test: TestCurve, given?: number): number | undefined {
  if (given !== undefined) return given;
  return test.kind === "e" ? (test.initial ?? test.points[0].value) : undefined;
}
