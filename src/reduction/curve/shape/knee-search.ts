/** The best corner and width of a law of the soft knee: a search over a grid of both, then a refinement. */
import type { Knee } from "./knee";
import { emptyKnee, type KneeLaw } from "./knee-laws";

/** Widths tried, in log cycles. */
export const WIDTHS = [0, 0.025, 0.05, 0.08, 0.12, 0.17, 0.24];
const WIDEST = 0.3;
/** Corners tried per log cycle. */
const CORNERS = 25;

/**
 * Moves of the refinement in corner and width; the diagonal moves follow the valley along which corner and width
 * compensate each other.
 */
const DIRECTIONS: readonly (readonly [corner: number, width: number])[] = (
  [
    [1, 0],
    [0, 1],
    [1, 1],
    [1, -1],
    [2, 1],
    [2, -1],
    [1, 2],
    [1, -2],
  ] as const
).flatMap(([c, w]) => [[c, w] as const, [-c, -w] as const]);

/**
 * Where loads are too few to show the rounding, laws of many widths fit equally well. A width that departs from the
 * usual one by a tenth of a cycle costs as much as a misfit of 0.02 percent of the compression, so that the search
 * chooses one.
 */
const USUAL = { width: 0.05, weight: (0.0002 / 0.1) ** 2 };
const cost = (knee: Knee): number => knee.misfit + USUAL.weight * (knee.width - USUAL.width) ** 2;

/** Fits that differ by less than this are equal: a thousandth of a thousandth of the compression, squared. */
const SAME_FIT = 1e-12;

/** The best knee of a law over corners between two x and all widths: a grid, refined by halving steps. */
export function bestKnee(law: KneeLaw, low: number, high: number): Knee {
  const count = Math.max(1, Math.ceil((high - low) * CORNERS));
  let best = law(low, 0);
  let least = cost(best);
  let next = emptyKnee();
  for (let i = 0; i <= count; i++)
    for (const width of WIDTHS) {
      law(low + ((high - low) * i) / count, width, next);
      const value = cost(next);
      if (value < least - SAME_FIT) {
        [best, next] = [next, best];
        least = value;
      }
    }
  return refinedKnee(law, low, high, best);
}

/** The best knee of a law near a corner and a width, by halving steps. */
export function refinedKnee(law: KneeLaw, low: number, high: number, near: Pick<Knee, "corner" | "width">): Knee {
  let best = law(Math.min(high, Math.max(low, near.corner)), near.width);
  let least = cost(best);
  let next = emptyKnee();
  for (let step = 0.5 / CORNERS; step > 2e-5;) {
    const { corner, width } = best;
    let moved = false;
    for (const [c, w] of DIRECTIONS) {
      const [to, wide] = [corner + c * step, Math.max(0, width + w * step)];
      if (wide > WIDEST || to < low || to > high) continue;
      law(to, wide, next);
      const value = cost(next);
      if (value < least - SAME_FIT) {
        [best, next] = [next, best];
        least = value;
        moved = true;
      }
    }
    if (!moved) step /= 2;
  }
  return best;
}
