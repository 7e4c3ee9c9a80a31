/** An index of the curve as an index of the void ratio. */
import type { Reduced } from "../../record/reduced-test";

/** An index in void ratio: the index of a curve in strain is multiplied by (1 + e0), another is returned unchanged. */
export const asVoidRatio = (reduced: Reduced, index: number): number | undefined => {
  if (!reduced.curve.ok) return undefined;
  if (reduced.curve.value.kind === "e") return index;
  return reduced.specimen.ok ? index * (1 + reduced.specimen.value.e0) : undefined;
};
