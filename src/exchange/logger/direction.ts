/** Whether a file begins with its newest line, as the exports of some loggers do. */
import { nth } from "../../reduction/numeric/lists";

/** This many falls of time from line to line, and this many for each rise, are no faults of single lines. */
const LEAST_FALLS = 5;
const FALLS_FOR_A_RISE = 9;

/**
 * Whether times fall from line to line nearly throughout. Times that begin again with each load rise between, and so do
 * times with a few lines out of order.
 */
export function runsBackwards(times: readonly number[]): boolean {
  const steps = times.slice(1).map((time, index) => time - nth(times, index));
  const falls = steps.filter((step) => step < 0).length;
  const rises = steps.filter((step) => step > 0).length;
  return falls >= LEAST_FALLS && falls > FALLS_FOR_A_RISE * rises;
}
