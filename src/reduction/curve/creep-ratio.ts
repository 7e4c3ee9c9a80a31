/** C-alpha over Cc. */
import { given, type Outcome } from "../outcome";

/**
 * Ratio by kind of soil: Mesri and Godlewski (1977), as tabulated in UFC 3-220-10 (2022), Table 5-6; each plus or minus
 * 0.01 (Terzaghi, Peck and Mesri, 1996, from memory).
 */
export const CREEP_RATIOS = [
  { soil: "granular soil", ratio: 0.02 },
  { soil: "shale or mudstone", ratio: 0.03 },
  { soil: "inorganic clay or silt", ratio: 0.04 },
  { soil: "organic clay or silt", ratio: 0.05 },
  { soil: "peat", ratio: 0.06 },
] as const;

export interface CreepRatio {
  readonly ratio: number;
  /** The kind of soil whose usual ratio is nearest, or undefined where none is within 0.01. */
  readonly soil?: string;
}

/**
 * C-alpha / Cc, both on one basis (void ratio or strain) and at the same stress: Cc is then the local slope of the curve.
 * A ratio outside 0.01 to 0.07 is remarked.
 */
export function creepRatio(cAlpha: number, compressionIndex: number): Outcome<CreepRatio> {
  const ratio = cAlpha / compressionIndex;
  const nearest = CREEP_RATIOS.reduce((best, next) =>
    Math.abs(next.ratio - ratio) < Math.abs(best.ratio - ratio) ? next : best,
  );
  const soil = Math.abs(nearest.ratio - ratio) <= 0.0100001 ? nearest.soil : undefined;
  return given(
    { ratio, soil },
    ratio < 0.01 || ratio > 0.07
      ? ["outside 0.01 to 0.07: check that both are void ratio or both strain, and taken at the same stress"]
      : [],
  );
}
