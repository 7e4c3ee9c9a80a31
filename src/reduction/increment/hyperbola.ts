/**
 * The rectangular hyperbola: with d the movement since d0, t/d against t is nearly straight while U goes from 60 to 90
 * %. Its slope m and intercept c give d100 = 0.828 / m and cv = 0.290 m H2 / c, where H is the drainage path.
 *
 * Source: Sridharan, Murthy and Prakash (1987), by the abstract. The constants are calculated: T/U = 0.240 + 0.828 T is
 * the line through the points of 60 and 90 % in Terzaghi's theory. On exact theory a least-squares line gives cv 2 %
 * low and d100 1 % high.
 */
import { straightLine } from "../numeric/straight-line";

/** The movement from d0 to d100 is this over m. */
export const HYPERBOLA_END = 0.828;
/** cv / Hdr^2 is this times m/c. */
export const HYPERBOLA_RATE = 0.29;
/** Degrees of consolidation between which the hyperbola agrees with theory. */
export const HYPERBOLA_FROM = 0.6;
export const HYPERBOLA_TO = 0.9;

export interface Hyperbola {
  /** Slope and intercept of t/d on t. */
  readonly slope: number;
  readonly intercept: number;
  /** d100 less d0, with the sense of the readings. */
  readonly primary: number;
  /** cv / Hdr^2, per minute. */
  readonly rate: number;
}

const FEWEST = 3;

/**
 * The hyperbola through movements since d0 at times in minutes; undefined with fewer than three, or where t/d does not
 * rise with t.
 */
export function hyperbola(times: readonly number[], movements: readonly number[]): Hyperbola | undefined {
  if (times.length < FEWEST) return undefined;
  const ratios = times.map((t, i) => t / (movements[i] ?? NaN));
  const { slope, intercept } = straightLine(times, ratios);
  return slope * intercept > 0
    ? { slope, intercept, primary: HYPERBOLA_END / slope, rate: (HYPERBOLA_RATE * slope) / intercept }
    : undefined;
}
