/**
 * Which points make the straight line before yield and which the virgin line: one rule for every method, in the plane
 * of the method.
 *
 * Virgin: the stretch whose slope is surely the steepest, and its neighbours as long as they are as steep to within 5
 * percent and twice the error that the scatter of two readings gives a slope. If that is the last segment alone, the
 * segments before it join it if two or more of them are nearly as steep. Recompression: from the first point, as long as no
 * segment is surely steeper than the stretch before it by more than 15 percent of the way to the virgin slope. Points
 * between them belong to neither: they are the bend.
 */
import { straightLine, type Line } from "../../numeric/straight-line";
import { nth } from "../../numeric/lists";

/** A segment belongs to the virgin stretch if its slope is at least this share of the slope of the stretch. */
const VIRGIN = 0.95;
/**
 * The segments before a last segment that is steeper than all others join it if the slope of each is at least this share of
 * its slope, to within the same error. The last load often stands longer than the others and compresses more. (60 made
 * curves whose last load compressed the specimen by 5 percent of Cc more: with this rule the median Cc is 5 percent too high and
 * yield by Casagrande's construction 10 percent; without it 17 and 47 percent.)
 */
const ALIKE = 0.85;
/**
 * A segment belongs to the recompression stretch if its slope lies no further than this share of the way from the slope
 * of the stretch to the virgin slope.
 */
const RECOMPRESSION = 0.15;
/** A first segment that is steeper than the next ones by this factor is bedding, not soil. */
const BEDDING = 2.5;

/** A run of points, by first and last index. */
export interface Run {
  readonly from: number;
  readonly to: number;
}

export interface StraightParts {
  readonly recompression: Run;
  readonly virgin: Run;
  readonly recompressionLine: Line;
  readonly virginLine: Line;
}

export const lineThrough = (x: readonly number[], y: readonly number[], { from, to }: Run): Line =>
  straightLine(x.slice(from, to + 1), y.slice(from, to + 1));

/**
 * The straight parts in a plane where x and y both grow with load. `logStress` and `scatter` (standard deviation of one
 * reading, in the compression that gives y its slope per log cycle) say how well a slope is known.
 */
export function straightParts(
  x: readonly number[],
  y: readonly number[],
  logStress: readonly number[],
  scatter: number,
): StraightParts {
  const last = x.length - 1;
  const slope = (i: number, j: number): number => (nth(y, j) - nth(y, i)) / (nth(x, j) - nth(x, i));
  const doubt = (i: number, j: number): number => (Math.SQRT2 * scatter) / (nth(logStress, j) - nth(logStress, i));

  let from = 0;
  let to = 1;
  let steepest = -Infinity;
  for (let i = 0; i < last; i++)
    for (let j = i + 1; j <= last; j++)
      if (slope(i, j) - doubt(i, j) > steepest) {
        steepest = slope(i, j) - doubt(i, j);
        from = i;
        to = j;
      }
  const steep = (i: number, share = VIRGIN): boolean => slope(i, i + 1) + 2 * doubt(i, i + 1) >= share * steepest;
  while (from > 0 && steep(from - 1)) from--;
  while (to < last && steep(to)) to++;
  if (from === last - 1) {
    let alike = from;
    while (alike > 0 && steep(alike - 1, ALIKE)) alike--;
    if (from - alike >= 2) from = alike;
  }
  const virgin = { from, to };
  const virginLine = lineThrough(x, y, virgin);

  const recompression = beforeYield(slope, doubt, virginLine.slope, virgin.from);
  return { recompression, virgin, recompressionLine: lineThrough(x, y, recompression), virginLine };
}

/**
 * The recompression run. It leaves the first point out if that point hides the line: the specimen still swells (the
 * next segments are steeper), or beds in.
 */
function beforeYield(
  slope: (i: number, j: number) => number,
  doubt: (i: number, j: number) => number,
  virginSlope: number,
  limit: number,
): Run {
  const run = (from: number): Run => {
    let to = Math.min(from + 1, limit);
    while (to < limit) {
      const before = slope(from, to);
      if (slope(to, to + 1) - doubt(to, to + 1) > before + RECOMPRESSION * (virginSlope - before)) break;
      to++;
    }
    return { from, to };
  };
  const whole = run(0);
  const later = run(1);
  if (later.to - later.from < 2) return whole;
  const bedding = slope(0, 1) - doubt(0, 1) > BEDDING * slope(later.from, later.to);
  return bedding || later.to > whole.to ? later : whole;
}
