/**
 * What each load of a test does to the specimen: one rule for the sheet, the plots, the checks, the pane and the
 * report.
 */

/** Stresses within this share of each other are the same load. */
export const SAME_LOAD = 0.005;

/**
 * The share of the initial height by which a load that is taken off may compress the specimen without a remark: creep
 * goes on for a while. Common practice, no source.
 */
export const MOST_ON_UNLOADING = 0.001;

/**
 * Whether a specimen that lost height (`fall`, in the unit of the initial height) while load was taken off compressed by
 * more than creep.
 * @example [compressedOnUnloading(0.03, 20), compressedOnUnloading(0.01, 20)] // [true, false]
 */
export const compressedOnUnloading = (fall: number, initialHeight: number): boolean =>
  fall > MOST_ON_UNLOADING * initialHeight;

/**
 * "virgin": begins at the greatest stress so far, and not below the preconsolidation stress.
 * "across yield": first loading that begins below the preconsolidation stress and ends above it: part is recompression,
 * part virgin.
 * "recompression": first loading that ends at or below the preconsolidation stress.
 * "first loading": first loading where the preconsolidation stress is not known.
 * "reload": begins below the greatest stress so far, and so compresses the specimen again, even if it ends above that
 * stress.
 * "unloading": takes load off.
 * "wetting": the stress stays the same; water is added, or the load is left standing.
 */
export type LoadKind =
  "virgin" | "across yield" | "recompression" | "first loading" | "reload" | "unloading" | "wetting";

export interface LoadStep {
  /** Stress before the load and under it, in the unit of the stresses. */
  readonly from: number;
  readonly to: number;
  readonly kind: LoadKind;
}

export interface LoadStepOptions {
  /** Stress before the first row, for instance the seating stress; 0 if omitted. */
  readonly before?: number;
  readonly preconsolidationStress?: number;
}

/**
 * The steps row by row, in test order; undefined for a row without a stress. Stresses in any one unit, a blank as null
 * or 0. Only a virgin load gives coefficients of virgin compression: a load across yield mixes both. Common practice,
 * no source.
 * @example loadSteps([50, 100, 200, 50], { preconsolidationStress: 80 }).map(({ kind }) => kind) // ["recompression", "across yield",
 *   "virgin", "unloading"]
 */
export function loadSteps(
  stresses: readonly (number | null)[],
  { before = 0, preconsolidationStress }: LoadStepOptions = {},
): (LoadStep | undefined)[] {
  let from = before;
  let greatest = before;
  return stresses.map((to) => {
    if (to === null || !(to > 0)) return undefined;
    const step = { from, to, kind: kindOf(from, to, greatest, preconsolidationStress) };
    greatest = Math.max(greatest, to);
    from = to;
    return step;
  });
}

/** Whether a stress is greater than another by more than the readings of one load differ. */
const above = (stress: number, other: number): boolean => stress > other * (1 + SAME_LOAD);

/**
 * Whether two stresses are one load: within SAME_LOAD of each other.
 * @example [isSameLoad(100, 100.4), isSameLoad(100, 101)] // [true, false]
 */
export const isSameLoad = (a: number, b: number): boolean => !above(a, b) && !above(b, a);

function kindOf(from: number, to: number, greatest: number, yieldStress: number | undefined): LoadKind {
  if (from > 0 && isSameLoad(from, to)) return "wetting";
  if (to < from) return "unloading";
  if (above(greatest, from)) return "reload";
  if (yieldStress === undefined) return "first loading";
  if (!above(yieldStress, from)) return "virgin";
  return to > yieldStress ? "across yield" : "recompression";
}

/**
 * Whether a load increases the stress; an unloading takes stress off, and a wetting leaves it.
 * @example loadSteps([50, 100, 25]).map(putsLoadOn) // [true, true, false]
 */
export const putsLoadOn = ({ kind }: LoadStep): boolean => kind !== "unloading" && kind !== "wetting";
