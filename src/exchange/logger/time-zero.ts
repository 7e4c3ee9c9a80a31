/**
 * Finds when a load was applied, from its readings: at the first row of the load, or at the last row before the load.
 *
 * Early compression grows with the square root of the time since the load was applied (Terzaghi, up to half of primary;
 * any textbook). If time counts from the right moment, the first readings of a load lie on a straight line against root
 * time; if it counts from a later or an earlier moment, they lie on a bent line.
 */
import { nth } from "../../reduction/numeric/lists";
import { straightLine } from "../../reduction/numeric/straight-line";
import type { LoadStep } from "./loads";
import type { LoggerRows } from "./rows";

export interface TimeZero {
  readonly rule: "before" | "last row";
  /** Number of loads whose readings favour the rule, and number of loads with enough readings to favour one. */
  readonly loads: number;
  readonly of: number;
}

/** Readings count as early up to this share of the movement of the load. Common practice, no source. */
const EARLY = 0.5;
const LEAST_ROWS = 5;
const MOST_ROWS = 40;
/** From this natural logarithm of the likelihood ratio on, the readings of all loads together decide: about 20 to 1. */
const DECIDES = 3;

/**
 * How much more likely the last row before the load is than the first row of the load, as a natural logarithm;
 * undefined if there are too few rows.
 */
function evidence({ times, readings }: LoggerRows, { from, to }: LoadStep, resolution: number): number | undefined {
  const before = from - 1;
  const start = nth(readings, before);
  const movement = nth(readings, to - 1) - start;
  const rows: number[] = [];
  for (let row = from; row < to && rows.length < MOST_ROWS; row++)
    if ((nth(readings, row) - start) / movement <= EARLY) rows.push(row);
  if (rows.length < LEAST_ROWS) return undefined;
  const found = rows.map((row) => nth(readings, row));
  // Readings are rounded: no line can lie nearer to them than rounding allows.
  const rounding = (resolution ** 2 / 12) * rows.length;
  const misfit = (zero: number): number =>
    straightLine(
      rows.map((row) => Math.sqrt(nth(times, row) - zero)),
      found,
    ).rss + rounding;
  const [first, last] = [misfit(nth(times, from)), misfit(nth(times, before))];
  return first > 0 && last > 0 ? (rows.length / 2) * Math.log(first / last) : undefined;
}

/** The smallest step between two readings of a file; 0 if all are equal. */
function resolutionOf(readings: readonly number[]): number {
  const sorted = Float64Array.from(readings).sort();
  let least = Infinity;
  let before = Infinity;
  for (const reading of sorted) {
    if (reading > before) least = Math.min(least, reading - before);
    before = reading;
  }
  return Number.isFinite(least) ? least : 0;
}

/**
 * The time zero that the readings of all loads show together; the first row, the rule of the trade, if they do not
 * decide.
 */
export function timeZeroShown(rows: LoggerRows, steps: readonly LoadStep[]): TimeZero {
  const resolution = resolutionOf(rows.readings);
  const found = steps
    .filter(({ from }) => from > 0 && nth(rows.times, from) > nth(rows.times, from - 1))
    .flatMap((step) => evidence(rows, step, resolution) ?? []);
  const rule = found.reduce((sum, one) => sum + one, 0) > DECIDES ? "last row" : "before";
  return { rule, loads: found.filter((one) => (rule === "before" ? one < 0 : one > 0)).length, of: found.length };
}
