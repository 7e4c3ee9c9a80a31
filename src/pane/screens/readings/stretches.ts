/** The stretches of a file that are its loads, and the numbers calculated from each. */
import { conditionsOf, type Conditions } from "../../../exchange/logger/dates-temperatures";
import type { Layout } from "../../../exchange/logger/layout";
import { seriesOf, thinned, type LoadSeries, type Thinning, type ZeroRule } from "../../../exchange/logger/load-series";
import {
  findLoads,
  levelOf,
  MOST_STRETCHES,
  numbered,
  passings,
  stressOf,
  waysFor,
  type LoadStep,
  type Passing,
  type WayToFind,
} from "../../../exchange/logger/loads";
import type { LoggerRows } from "../../../exchange/logger/rows";
import type { Target } from "../../../exchange/logger/target";
import { timeZeroShown } from "../../../exchange/logger/time-zero";
import { firstOf, nth } from "../../../reduction/numeric/lists";
import { LOADS } from "../../../specification/readings";

/** How loads are found and taken. If the person edited the stretches, they replace the ones that were found. */
export interface LoadChoices {
  readonly way: WayToFind;
  readonly rule: ZeroRule;
  readonly thinning: Thinning;
  readonly edited?: readonly LoadStep[];
}

/** The choices that fit the file best: the way to find its loads, and the rule for their time 0. */
export function firstChoices(rows: LoggerRows, layout: Layout): LoadChoices {
  const way = firstOf(waysFor(rows, layout));
  return { way, rule: timeZeroShown(rows, findLoads(rows, layout, way)).rule, thinning: "even" };
}

/** A stretch of rows with the numbers calculated from it. */
export interface Stretch extends LoadStep {
  readonly fromLine: number;
  readonly toLine: number;
  /** The duration in minutes. */
  readonly lasts: number;
  /** The stress in the unit of the sheet. */
  readonly stress?: number;
  /** The dates and the temperature of its rows. */
  readonly conditions?: Conditions;
  readonly series: LoadSeries;
  /** Why the proposed load is not the next one; undefined if it is, or if a person or the file numbers the loads. */
  readonly passing?: Passing | undefined;
  /** The indices of the values of the series that are written to the sheet. */
  readonly kept: readonly number[];
}

/** Used without a data sheet: stretches are numbered one after another. */
export const NO_SHEET = {
  loads: Array.from({ length: LOADS }, () => ({ held: 0, used: 0 })),
  room: 400,
  stressUnit: "kPa",
};

/**
 * The stretches of a file. If the file has more stretches than a test can have loads, they become one stretch without a
 * load, and `tooMany` is their number.
 */
export interface Found {
  readonly stretches: readonly Stretch[];
  readonly tooMany?: number;
}

/**
 * `held` has the number of readings of each load before anything of the file was written, so that the proposed loads stay
 * the same after the writing.
 */
export function stretchesOf(
  rows: LoggerRows,
  layout: Layout,
  { way, rule, thinning, edited }: LoadChoices,
  target: Target | undefined,
  held: readonly number[] = (target ?? NO_SHEET).loads.map((load) => load.held),
): Found {
  const sheet: Pick<Target, "loads" | "room" | "stressUnit" | "seating" | "diameter"> = target ?? NO_SHEET;
  const all = edited ?? findLoads(rows, layout, way);
  const tooMany = edited === undefined && all.length > MOST_STRETCHES ? all.length : undefined;
  const found = tooMany === undefined ? all : [{ from: 0, to: rows.lines.length, load: null }];
  const levels = found.map((step) => levelOf(rows, step));
  const stresses = levels.map((level) => stressOf(level, layout, sheet.stressUnit, sheet.diameter));
  const numbers = layout.load !== null && layout.loadKind === "number" ? levels : undefined;
  const isProposed = edited === undefined && tooMany === undefined;
  const onSheet = {
    stresses: sheet.loads.map(({ stress }) => stress),
    seating: sheet.seating,
    held,
  };
  const steps = isProposed ? numbered(found, stresses, onSheet, numbers) : found;
  const passing = isProposed && !numbers ? passings(steps, stresses, onSheet.stresses, held) : [];
  const stretches = steps.map((step, index) => {
    const series = seriesOf(rows, step, rule, layout.timesRun);
    return {
      ...step,
      fromLine: nth(rows.lines, step.from),
      toLine: nth(rows.lines, step.to - 1),
      lasts: series.times.at(-1) ?? 0,
      stress: stresses[index],
      conditions: conditionsOf(rows, step),
      passing: passing[index],
      series,
      kept: thinned(series.times, thinning, sheet.room),
    };
  });
  return { stretches, tooMany };
}
