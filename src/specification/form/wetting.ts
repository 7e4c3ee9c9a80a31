/**
 * The stage of wetting: strain under the stress that was kept, collapse, and the swelling pressure from this specimen.
 * Strains are positive for collapse, negative for swell.
 */
import { when, type Field } from "../field";
import { input, result } from "../form-fields";
import { asked, atLoad, onceOver, SENSE } from "../formulas";
import { haveWord, isWord } from "../list-words";

/** The heights that a strain on wetting may be referred to. */
const WETTING_REFERENCES = ["height before", "initial height"] as const;
/** How the swelling pressure is found; "measured" and "zero strain" take the value that a person typed. */
const PRESSURE_METHODS = ["measured", "load back", "constant volume", "zero strain"] as const;

/** The choices, among those of the engineer. */
export const WETTING_CHOICES: readonly Field[] = [
  input(
    "wetting_reference",
    "Strain on wetting on",
    "text",
    "The height that the strain on wetting is divided by: that just before wetting (ASTM D4546), or the initial height (ASTM D5333).",
    { choices: WETTING_REFERENCES, value: WETTING_REFERENCES[0] },
  ),
  input(
    "swelling_method",
    "Swelling pressure by",
    "text",
    "measured: as typed among sizes and masses. load back, constant volume: from the loads after the wetting. zero strain: of several specimens, typed from the sheet of the series.",
    { choices: PRESSURE_METHODS, value: PRESSURE_METHODS[0] },
  ),
];

/** Stands between the number of stages of wetting and the load that the results are of. */
export const STAGES = " stages; these results: load ";

const STAGE = "{wetting_load}";
const [BEFORE, AFTER] = ["{wetting_height_before}", "{wetting_height_after}"];
const ofStage = (formula: string): string => when([STAGE], formula);
const afterBoth = (formula: string): string => when([BEFORE, AFTER], formula, `AND(${BEFORE}>0,${AFTER}>0)`);

const REFERENCE = `IF(IFERROR(${isWord("{wetting_reference}", "initial height")},FALSE),{initial_height},${BEFORE})`;
const COLLAPSE_CALL = `CLAY.COLLAPSE(${BEFORE},${AFTER},{initial_height},{wetting_stress}`;

/** The rows from the wetting on that were read: other rows count as blank. */
const fromWetting = (column: string): string =>
  `IF(ISNUMBER({height_end}),IF({load_number}>=${STAGE},${column},""),"")`;
const PRESSURE_CALL = `CLAY.SWELLING_PRESSURE(${fromWetting("{load_stress}")},${fromWetting(`(${BEFORE}-{height_end})/${BEFORE}`)},{swelling_method}`;
const IS_READ = isWord("{swelling_method}", "load back", "constant volume");
const pressure = (item: string, otherwise = '""'): string =>
  `=IF(IFERROR(${IS_READ},FALSE),IF(OR(${BEFORE}="",${AFTER}=""),"",${onceOver(`${PRESSURE_CALL},${asked(item)})`)}),${otherwise})`;

export const WETTING: readonly (readonly Field[])[] = [
  [
    result(
      "wetting_load",
      "Wetting stage, load",
      "count",
      `=IFERROR(INDEX({load_number},MATCH(1,${haveWord("{load_mark}", "wetting")},0)),IFERROR(INDEX({load_number},MATCH(1,(${haveWord("{load_mark}", "inundated")})*(${haveWord("{load_branch}", "wetting")}),0)),""))`,
      'The first load marked "wetting", or the first marked "inundated" whose stress is that of the load before.',
    ),
    result("wetting_stress", "  stress kept", "stress", ofStage(atLoad("load_stress", STAGE)), "Stress of that load."),
    result(
      "wetting_height_before",
      "  height before",
      "length",
      ofStage(`IF(${STAGE}=1,IF({initial_height}="","",{initial_height}),${atLoad("height_end", `${STAGE}-1`)})`),
      "Height at the end of the load before; the initial height where the stage is the first load.",
    ),
    result(
      "wetting_height_after",
      "  height after",
      "length",
      ofStage(atLoad("height_end", STAGE)),
      "Height at the end of the stage.",
    ),
    result(
      "wetting_strain",
      "Strain on wetting",
      "strain",
      afterBoth(`CLAY.WETTING_STRAIN(${BEFORE},${AFTER},${REFERENCE})`),
      "(height before - height after) / the height chosen among the choices: positive for collapse, negative for swell.",
    ),
  ],
  [
    result(
      "wetting_swell",
      "Free swell",
      "strain",
      when(["{wetting_strain}"], 'IF({wetting_strain}<0,-{wetting_strain},"")'),
      "The same as a positive number; blank where the specimen did not swell.",
    ),
    result(
      "wetting_rate",
      "  rate at the end",
      "small",
      ofStage(
        `IFERROR(IF(ISNUMBER(${atLoad("tail_slope", STAGE)}),${SENSE}*${atLoad("tail_slope", STAGE)}*{dial_factor}/${REFERENCE},""),"")`,
      ),
      "Strain per log cycle of time on the straight tail of the stage, on the height of the strain; negative while the specimen swells.",
    ),
    result(
      "collapse_potential",
      "Collapse potential",
      "strain",
      afterBoth(`IF(${AFTER}<${BEFORE},${COLLAPSE_CALL},"potential",{stress_unit}),"")`),
      "On the initial height (ASTM D5333); blank where the specimen did not collapse.",
    ),
    result(
      "collapse_index",
      "  index, at 200 kPa",
      "strain",
      afterBoth(`IF(${AFTER}<${BEFORE},IFERROR(${COLLAPSE_CALL},"index",{stress_unit}),""),"")`),
      "The potential if the specimen was wetted under 200 kPa (2 tsf) within 5 %.",
    ),
    result(
      "collapse_class",
      "  class by the index",
      "text",
      afterBoth(`IF(${AFTER}<${BEFORE},IFERROR(${COLLAPSE_CALL},${asked("class")},{stress_unit}),""),"")`),
      "ASTM D5333: none, slight, moderate, moderately severe, severe.",
    ),
  ],
  [
    result(
      "swelling_pressure_used",
      "Swelling pressure",
      "stress",
      pressure("pressure", 'IF(IFERROR({swelling_pressure},"")="","",{swelling_pressure})'),
      "By the method chosen among the choices. The methods do not agree: state the method with the value.",
    ),
    result("swelling_pressure_low", "  not less than", "stress", pressure("low"), "The stress below it that was read."),
    result(
      "swelling_pressure_high",
      "  not more than",
      "stress",
      pressure("high"),
      "The stress above it that was read.",
    ),
    result(
      "swelling_pressure_remark",
      "  remark",
      "text",
      pressure("remark"),
      "Remarks on the swelling pressure by that method.",
    ),
    result(
      "wetting_stages",
      "Stages of wetting",
      "text",
      `=IF(COUNT({load_wetting_strain})<2,"",COUNT({load_wetting_strain})&"${STAGES}"&{wetting_load})`,
      "Where the specimen was wetted in several stages: each has its strain among the coefficients of the loads; strain, collapse, class and swelling pressure here are of the stage named.",
    ),
  ],
];
