/** An index of the curve as an index of the void ratio. */
import type { Reduced } from "../../record/reduced-test";

/** A strain ratio or void-ratio index as a void-ratio index: times (1 + e0) if the curve is in strain. */
export const asVoidRatio = (reduced: Reduced, index: number): number | undefined => {
  if (!reduced.curve.ok) return undefined;
  if (reduced.curve.value.kind === "e") return index;
  return reduced.specimen.ok ? index * (1 + reduced.specimen.value.e0) : undefined;
};
