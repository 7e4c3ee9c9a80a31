/**
 * The results: the specimen, the compression curve, the preconsolidation stress by every method, the quality of the
 * sample.
 */
import { WETTEST } from "../../reduction/specimen";
import { when, type Field, type Spill } from "../field";
import { result } from "../form-fields";
import { adoptedOrBlank, inUse } from "./adopted";
import { cvInUse } from "./adopted-cv";
import { CV_RANGES } from "./adoptable";
import {
  asked,
  atLoad,
  byMethod,
  CURVE,
  CURVE_PICKS,
  DRY,
  HAS_CURVE,
  ofCurve,
  toldOnceOver,
  rounded,
  shown,
  SPECIMEN_CALL,
} from "../formulas";
import { hasWord, haveWord, isWord, shownWord } from "../list-words";
import type { Measure } from "../measures";

/** The row of the first load that is marked as inundated or as a stage of wetting. */
const INUNDATED = `MATCH(1,${haveWord("{load_mark}", "inundated", "wetting")},0)`;

export const INUNDATION: readonly Field[] = [
  result(
    "inundation_stress",
    "Inundated under",
    "stress",
    `=IF(${isWord("{seating_mark}", "inundated")},IF({seating_stress}="","",{seating_stress}),IFERROR(IF(INDEX({load_stress},${INUNDATED})="","",INDEX({load_stress},${INUNDATED})),""))`,
    "Stress of the load that is marked as inundated, or the seating stress where that is marked.",
  ),
  result(
    "inundation_strain",
    "  strain of that load",
    "strain",
    `=IF(${isWord("{seating_mark}", "inundated")},"",IFERROR(IF(INDEX({strain_end},${INUNDATED})="","",INDEX({strain_end},${INUNDATED})-IF(INDEX({load_number},${INUNDATED})=1,0,${atLoad("strain_end", `INDEX({load_number},${INUNDATED})-1`)})),""))`,
    "Strain at the end of the inundated load less that of the load before; negative where the specimen swelled. Inundate under a load of its own to see swell or collapse alone; blank where the water was added under the seating stress.",
  ),
];

const density = (mass: string, height: string) =>
  shown(`CLAY.DENSITY(${mass},{diameter},${height},{length_unit},{density_unit})`);

/**
 * A saturation: calculated by `formula`, or, if the pore water has salt, taken from the calculation of the whole
 * specimen.
 */
const ofPoreWater = (formula: string, item: string): string =>
  shown(`IF({salt_mass}="",${formula},${SPECIMEN_CALL},"${item}",{test_temperature},{pore_salt}))`);

/** Blank where the wet specimen is lighter than the dry one. */
const waterContent = (wet: string): string =>
  `IF(OR(${wet}<{ring_and_dry},{ring_mass}<0),"",CLAY.WATER_CONTENT(${wet},${DRY},{ring_mass}))`;

export const SPECIMEN_RESULTS: readonly Field[] = [
  result(
    "water_content_initial",
    "Water content, initial w0",
    "percent",
    when(["{dry_mass}", "{ring_and_wet_before}"], waterContent("{ring_and_wet_before}")),
    "w0 = (wet mass before - dry mass) / dry mass, of the specimen itself.",
  ),
  result(
    "water_content_final",
    "Water content, final wf",
    "percent",
    when(["{dry_mass}", "{ring_and_wet_after}"], waterContent("{ring_and_wet_after}")),
    "wf = (wet mass after - dry mass) / dry mass.",
  ),
  result(
    "density_initial",
    "Bulk density, initial",
    "density",
    when(
      ["{ring_mass}", "{ring_and_wet_before}", "{diameter}", "{initial_height}"],
      density("{ring_and_wet_before}-{ring_mass}", "{initial_height}"),
      "AND({ring_mass}>=0,{ring_and_wet_before}>{ring_mass},{diameter}>0,{initial_height}>0)",
    ),
    "Wet mass before / (A H0).",
  ),
  result(
    "dry_density_initial",
    "Dry density, initial",
    "density",
    when(
      ["{dry_mass}", "{diameter}", "{initial_height}"],
      density("{dry_mass}", "{initial_height}"),
      "AND({diameter}>0,{initial_height}>0)",
    ),
    "Dry mass / (A H0).",
  ),
  result(
    "void_ratio_initial",
    "Void ratio, initial e0",
    "ratio",
    when(
      ["{solids_height}", "{initial_height}"],
      "CLAY.VOID_RATIO({initial_height},{solids_height})",
      "{initial_height}>{solids_height}",
    ),
    "e0 = (H0 - Hs) / Hs.",
  ),
  result(
    "saturation_initial",
    "Saturation, initial S0",
    "percent",
    when(
      ["{water_content_initial}", "{void_ratio_initial}"],
      ofPoreWater("CLAY.SATURATION({water_content_initial},{specific_gravity},{void_ratio_initial})", "S0"),
      `{water_content_initial}<=${WETTEST}`,
    ),
    "S0 = w0 Gs / e0; where the pore water has salt, its greater density counts.",
  ),
  result(
    "final_height",
    "Final height",
    "length",
    `=IF(COUNT({end_reading})>0,${atLoad("height_end", "MAX(IF(ISNUMBER({end_reading}),{load_number}))")},IF({final_height_measured}="","",{final_height_measured}))`,
    "Initial height less the corrected deformation at the end of the last load; the measured height where there are no readings.",
  ),
  result(
    "void_ratio_final",
    "Void ratio, final ef",
    "ratio",
    when(
      ["{solids_height}", "{final_height}"],
      "CLAY.VOID_RATIO({final_height},{solids_height})",
      "{final_height}>{solids_height}",
    ),
    "ef = (Hf - Hs) / Hs, from the readings.",
  ),
  result(
    "void_ratio_final_by_water",
    "  by water, S = 100 %",
    "ratio",
    when(
      ["{water_content_final}", "{specific_gravity}"],
      // If the pore water has salt, Sf ef is the same product with the greater density of the pore water.
      'IF({salt_mass}="",{water_content_final}*{specific_gravity},IF({saturation_final}="","",{saturation_final}*{void_ratio_final}))',
    ),
    "ef = wf Gs where the specimen ends saturated: the second route, for comparison.",
  ),
  result(
    "saturation_final",
    "Saturation, final Sf",
    "percent",
    when(
      ["{water_content_final}", "{void_ratio_final}"],
      ofPoreWater("CLAY.SATURATION({water_content_final},{specific_gravity},{void_ratio_final})", "Sf"),
      `{water_content_final}<=${WETTEST}`,
    ),
    "Sf = wf Gs / ef; where the pore water has salt, its greater density counts.",
  ),
];

/** How far the test has gone. */
export const STATE: readonly Field[] = [
  result(
    "next_load",
    "Load to be read next",
    "count",
    '=IF(COUNT({load_stress})=0,"",IFERROR(INDEX({load_number},MATCH(1,IF(ISNUMBER({load_stress})*({load_stress}>0),IF(ISNUMBER({end_reading}),0,1),0),0)),""))',
    "The first load that has a stress and no reading.",
  ),
  result(
    "test_state",
    "Test",
    "text",
    `=IF(COUNT({end_reading})=0,"",IF(AND({next_load}="",OR(${hasWord("{load_branch}", "unloading")},AND(IFERROR(COUNT({date_ended}),0)>0,COUNT({end_reading})>5))),${shownWord("over")},${shownWord("running")}))`,
    "over: every load that has a stress is read, and there is a load of unloading, or the date of the end and more than five loads. While the test is running, a method that does not apply yet leaves its cells blank; after it, #N/A says that it does not apply.",
  ),
];

export const COMPRESSION_RESULTS: readonly Field[] = [
  result(
    "preconsolidation_stress",
    "Preconsolidation stress",
    "stress",
    inUse("preconsolidation_stress"),
    "The value adopted, or else by the method chosen on the void ratio against log stress curve.",
  ),
  result(
    "preconsolidation_low",
    "  not less than",
    "stress",
    ofCurve(byMethod("low")),
    "Lower end of the range that these points allow; the choice of method is not in it.",
  ),
  result(
    "preconsolidation_high",
    "  not more than",
    "stress",
    ofCurve(byMethod("high")),
    "Upper end of the range that these points allow; the choice of method is not in it.",
  ),
  result(
    "overconsolidation_ratio",
    "Overconsolidation ratio",
    "ratio",
    when(
      ["{preconsolidation_stress}", "{in_situ_stress}"],
      shown("CLAY.OCR({preconsolidation_stress},{in_situ_stress})"),
    ),
    "OCR = preconsolidation stress / in-situ effective stress.",
  ),
  result(
    "compression_index",
    "Compression index Cc",
    "ratio",
    inUse("compression_index"),
    "Fall of void ratio per log cycle of stress on the virgin line, unless another value is adopted.",
  ),
  result(
    "recompression_index",
    "Recompression index Cr",
    "ratio",
    inUse("recompression_index"),
    "Fall of void ratio per log cycle of stress on reloading, unless another value is adopted.",
  ),
  result(
    "swelling_index",
    "Swelling index Cs",
    "ratio",
    inUse("swelling_index"),
    "Rise of void ratio per log cycle of stress on unloading, unless another value is adopted.",
  ),
  result(
    "c_alpha_chosen",
    "C alpha-epsilon",
    "small",
    inUse("c_alpha_chosen"),
    "Strain per log cycle of time of the load chosen, on the initial height, unless another value is adopted.",
  ),
  result(
    "c_alpha_ratio",
    "C alpha / Cc",
    "ratio",
    when(
      ["{c_alpha_chosen}", "{compression_index}", "{void_ratio_initial}"],
      shown('CLAY.C_ALPHA_RATIO({c_alpha_chosen}*(1+{void_ratio_initial}),{compression_index},"ratio")'),
    ),
    "Both by void ratio: C alpha (1 + e0) / Cc. Cc is that of the virgin line, so choose a load on it.",
  ),
  ...CV_RANGES.map(({ name, label }) =>
    result(
      name,
      label,
      "cv",
      cvInUse(name),
      "Mean cv of the loads within the range, unless another is adopted; the ranges stand among the adopted values.",
    ),
  ),
];

const IN_SITU = ["{in_situ_stress}", "{preconsolidation_stress}", "{void_ratio_initial}"];
const FIELD_CALL = `CLAY.FIELD_CURVE(${CURVE},{in_situ_stress},{preconsolidation_stress},IF({field_factor}="",0.42,{field_factor}),{void_ratio_initial},"e",${CURVE_PICKS},${adoptedOrBlank("recompression_index")}`;
/** A cell of the field curve; blank if the curve is refused, and the remark gives the reason. */
export const ofField = (row: string, column: number): string =>
  when(
    IN_SITU,
    toldOnceOver((refusal) => `VLOOKUP("${row}",${FIELD_CALL}${refusal}),${column},FALSE)`),
    HAS_CURVE,
  );
const QUALITY_CALL = `CLAY.SAMPLE_QUALITY(${CURVE},{in_situ_stress},{preconsolidation_stress},{void_ratio_initial},"e"`;
/** An item of the sample's quality; blank if it is refused, and the remark gives the reason. */
export const ofQuality = (item: string): string =>
  when(
    IN_SITU,
    toldOnceOver((refusal) => `${QUALITY_CALL},${asked(item)}${refusal})`),
    HAS_CURVE,
  );
const MEETS = "meets the laboratory line";

export const FIELD: readonly Field[] = [
  result(
    "field_compression_index",
    "Field curve, Cc",
    "ratio",
    ofField("Cc", 2),
    "Slope of Schmertmann's field curve beyond the preconsolidation stress.",
  ),
  result(
    "field_recompression_index",
    "Field curve, Cr",
    "ratio",
    ofField("Cr", 2),
    "Slope of the field curve from the in-situ stress to the preconsolidation stress; the next line says which branch it was read from.",
  ),
  result(
    "field_recompression_from",
    "  Cr of the field curve from",
    "text",
    ofField("Cr", 3),
    "The branch of the test that Cr was read from: a reload loop first; the rebound at the end only where there is no loop.",
  ),
  result(
    "field_meeting_stress",
    "  meets the lab. line at",
    "stress",
    ofField(MEETS, 2),
    "Stress at which the field curve meets the laboratory curve.",
  ),
  result("field_meeting_void_ratio", "  at void ratio", "ratio", ofField(MEETS, 3), "The share of e0 chosen above."),
];

export const QUALITY: readonly Field[] = [
  result(
    "quality_change",
    "Sample quality, de / e0",
    "ratio",
    ofQuality("de_e0"),
    "Change of void ratio on loading to the in-situ stress, over e0.",
  ),
  result(
    "quality_class",
    "  class by de / e0",
    "text",
    ofQuality("class"),
    "Lunne, Berre and Strandvik (1997), for overconsolidation ratios up to 4.",
  ),
  result(
    "quality_strain",
    "Strain at in-situ stress",
    "strain",
    ofQuality("strain"),
    "Volumetric strain on loading to the in-situ stress.",
  ),
  result(
    "quality_strain_class",
    "  class by strain",
    "text",
    ofQuality("strain_class"),
    "Specimen quality designation A (best) to E, after Andresen and Kolstad (1979).",
  ),
];

export const CHECKS: readonly Field[] = [
  result(
    "final_height_difference",
    "Final height, measured - read",
    "length",
    when(["{final_height_measured}", "{final_height}"], rounded("{final_height_measured}-{final_height}", 4)),
    "More than 0.1 mm (0.004 in) either way: look at the readings and the zero (common practice, no source).",
  ),
  result(
    "void_ratio_final_difference",
    "Final void ratio, water - read",
    "ratio",
    when(
      ["{void_ratio_final}", "{void_ratio_final_by_water}"],
      rounded("{void_ratio_final_by_water}-{void_ratio_final}", 3),
    ),
    "More than 0.02 + 2 % of e either way: look at masses, readings and blotting (common practice, no source).",
  ),
  result(
    "water_content_difference",
    "Initial w, trimmings - specimen",
    "percent",
    when(
      ["{water_content_trimmings}", "{water_content_initial}"],
      rounded("{water_content_trimmings}-{water_content_initial}", 3),
    ),
    "More than 2 points either way: the trimmings may not stand for the specimen (common practice, no source).",
  ),
];

export const SPREAD: Spill = {
  name: "preconsolidation_spread",
  label: "Preconsolidation stress by every method",
  formula: ofCurve(`PRECONSOLIDATION_SPREAD(${CURVE},"e",{void_ratio_initial},${shownWord("words")})`),
  note: "One formula spills the table: every method's stress with the points it used, then median, spread and interval.",
  measure: "stress",
  spills: [...Array<Measure>(7).fill("stress"), "percent", "stress", "stress", "text", "text"],
};
