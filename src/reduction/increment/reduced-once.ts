/**
 * Keeps the reductions of the increments used last, because cells, plots, checks and the report ask for the same
 * increment.
 */
import { nth } from "../numeric/lists";
import { memoize } from "../numeric/memoize";
import { PICK_NAMES, type PickName, type Picks } from "./constructions/picks";
import { PROCEDURES, type Procedure } from "./constructions/procedure";
import { columnOf } from "./readings";
import { reduceIncrement, type Increment } from "./reduce";

const reduced = memoize((times, readings, picked, way): Increment => {
  const picks: Partial<Record<PickName, number>> = {};
  PICK_NAMES.forEach((name, i) => {
    const value = picked[i];
    if (value !== undefined && !Number.isNaN(value)) picks[name] = value;
  });
  // As a function of its own the reduction is parsed at its first call; here it would be when the file is loaded (0.5 ms).
  return /*#__NOINLINE__*/ reduceIncrement(times, readings, picks, nth(PROCEDURES, way[0] ?? 0), way[1] === 1);
});

/**
 * Like `reduceIncrement`, but reduces each distinct input only once while it is among the inputs used last. Typed
 * columns are kept as they are: do not write to them afterwards.
 * @example reducedOnce([0, 1, 2], [0, 5, 8]) === reducedOnce([0, 1, 2], [0, 5, 8]) // true
 */
export const reducedOnce = (
  times: ArrayLike<number | null>,
  readings: ArrayLike<number | null>,
  picks: Picks = {},
  procedure: Procedure = "aided",
  zerosCount = false,
): Increment =>
  reduced(
    columnOf(times),
    columnOf(readings),
    Float64Array.from(PICK_NAMES, (name) => picks[name] ?? NaN),
    [PROCEDURES.indexOf(procedure), Number(zerosCount)],
  );
