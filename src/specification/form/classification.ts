/**
 * The classification of the soil: limits, grading, organic content and sensitivity as numbers, and what follows from
 * them. The limits and contents are those of the sample; the tests for them are not part of this sheet.
 */
import { GREATEST_LIQUID_LIMIT } from "../../reduction/curve/intrinsic";
import { when, type Part } from "../field";
import { input, result } from "../form-fields";
import { shown } from "../formulas";
import { MOST } from "../measures";

const SHARE = { limits: { least: 0, most: 1 } } as const;
const LIMIT = { limits: { least: 0, above: true, most: GREATEST_LIQUID_LIMIT } } as const;

const ofLiquidLimit = (item: string): string =>
  shown(`CLAY.INTRINSIC({liquid_limit},{specific_gravity},{void_ratio_initial},,"${item}")`);
const NEEDS_LIQUID_LIMIT = ["{liquid_limit}", "{specific_gravity}", "{void_ratio_initial}"];

const INPUTS: readonly Part[] = [
  input("liquid_limit", "Liquid limit", "percent", "Water content in percent: type 62%.", LIMIT),
  input(
    "plastic_limit",
    "Plastic limit",
    "percent",
    "Water content in percent; blank where the soil is not plastic: say so in the remarks.",
    LIMIT,
  ),
  input("fines_content", "Fines", "percent", "Share by mass finer than 0.063 mm (0.075 mm in US practice).", SHARE),
  input("clay_content", "Clay", "percent", "Share by mass finer than 0.002 mm.", SHARE),
  input("organic_content", "Organic content", "percent", "Share by mass; the remarks say by which method.", SHARE),
  input("sensitivity", "Sensitivity", "typed", "Undrained strength intact over remoulded.", {
    limits: { least: 1, most: MOST.ratio },
  }),
];

const RESULTS: readonly Part[] = [
  result(
    "plasticity_index",
    "Plasticity index",
    "percent",
    when(["{liquid_limit}", "{plastic_limit}"], "{liquid_limit}-{plastic_limit}"),
    "Liquid limit - plastic limit.",
  ),
  result(
    "liquidity_index",
    "Liquidity index",
    "ratio",
    when(
      ["{plasticity_index}", "{water_content_initial}"],
      'IF({plasticity_index}<=0,"",({water_content_initial}-{plastic_limit})/{plasticity_index})',
    ),
    "(w0 - plastic limit) / plasticity index.",
  ),
  result(
    "activity",
    "Activity",
    "ratio",
    when(["{plasticity_index}", "{clay_content}"], 'IF({clay_content}=0,"",{plasticity_index}/{clay_content})'),
    "Plasticity index / clay; Skempton (1953).",
  ),
  result(
    "void_index",
    "Void index at e0",
    "ratio",
    when(NEEDS_LIQUID_LIMIT, ofLiquidLimit("void_index")),
    "(e0 - e*100) / C*c; Burland (1990).",
  ),
  result(
    "intrinsic_void_ratio",
    "  e*100, reconstituted",
    "ratio",
    when(NEEDS_LIQUID_LIMIT, ofLiquidLimit("e_100")),
    "Void ratio of the reconstituted soil at 100 kPa, by correlation with the liquid limit; Burland (1990).",
  ),
  result(
    "intrinsic_index",
    "  C*c, reconstituted",
    "ratio",
    when(NEEDS_LIQUID_LIMIT, ofLiquidLimit("C_c")),
    "Compression index of the reconstituted soil, by correlation with the liquid limit; Burland (1990).",
  ),
];

export const CLASSIFICATION: readonly (readonly Part[])[] = [INPUTS, RESULTS];
