/** C-alpha over Cc. */
import { say, type Message } from "../message";
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

export const SOIL_NAMES: Readonly<Record<CreepSoil, Message>> = {
  "granular soil": say`granular soil`,
  "shale or mudstone": say`shale or mudstone`,
  "inorganic clay or silt": say`inorganic clay or silt`,
  "organic clay or silt": say`organic clay or silt`,
  peat: say`peat`,
};

export type CreepSoil = (typeof CREEP_RATIOS)[number]["soil"];
export const CREEP_SOILS = CREEP_RATIOS.map(({ soil }) => soil);

/** How far the ratio of one kind of soil may lie from the ratio in the table. */
const SPREAD = 0.01;

/**
 * Lower and upper limit of the usual ratio of a kind of soil; of any soil if the kind is not known: 0.01 to 0.07.
 * @example usualCreepRatio("peat") // [0.05, 0.07]
 */
export function usualCreepRatio(soil?: CreepSoil): readonly [low: number, high: number] {
  const ratios = CREEP_RATIOS.filter((row) => soil === undefined || row.soil === soil).map(({ ratio }) => ratio);
  return [rounded(Math.min(...ratios) - SPREAD), rounded(Math.max(...ratios) + SPREAD)];
}

/** Rounds to the two decimals of the table, so that 0.02 - 0.01 is 0.01. */
const rounded = (ratio: number): number => Math.round(100 * ratio) / 100;

export interface CreepRatio {
  readonly ratio: number;
  /** The kind of soil whose usual ratio is nearest; undefined if none is within 0.01. */
  readonly soil?: CreepSoil;
}

/**
 * C-alpha / Cc, both on one basis (void ratio or strain) and at one stress: Cc is the local slope of the curve there. A
 * remark says if the ratio lies outside the limits of the soil, or of every soil if none is named.
 * @example creepRatio(0.02, 0.451, "inorganic clay or silt").value.ratio // 0.04435
 */
export function creepRatio(cAlpha: number, compressionIndex: number, soil?: CreepSoil): Outcome<CreepRatio> {
  const ratio = cAlpha / compressionIndex;
  const nearest = CREEP_RATIOS.reduce((best, next) =>
    Math.abs(next.ratio - ratio) < Math.abs(best.ratio - ratio) ? next : best,
  );
  const named = Math.abs(nearest.ratio - ratio) <= SPREAD * (1 + 1e-5) ? nearest.soil : undefined;
  const [low, high] = usualCreepRatio(soil);
  return given(
    { ratio, soil: named },
    ratio < low || ratio > high
      ? [
          soil
            ? say`outside ${low} to ${high}, usual for ${SOIL_NAMES[soil]}: check that both are void ratio or both strain, and taken at the same stress`
            : say`outside ${low} to ${high}: check that both are void ratio or both strain, and taken at the same stress`,
        ]
      : [],
  );
}
