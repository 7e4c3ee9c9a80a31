/** Parts of formulas that several fields share. */
import { METHOD_WORDS } from "../reduction/curve/method-words";
import {
  CURVE_PICK_WORDS,
  OF_CURVE,
  picksOfYield,
  YIELD_LINE_PICKS,
  type CurvePickName,
} from "../reduction/curve/picks";
import { INTRINSIC_LINE, SEDIMENTATION_SENSITIVITY } from "../reduction/curve/intrinsic";
import { ASKING_WORDS, hasWord, isWord, shownWord } from "./list-words";

/** The names of the cells with what cannot be: among the numbers, among the words of lists, and of the points of the curve. */
export const INPUT_REMARK = "input_remark";
export const CHOICE_REMARK = "choice_remark";
/** The remark on entries from which no result follows. */
export const ENTRY_REMARK = "entry_remark";
export const CURVE_GAP = "curve_gap";
/** The remarks on numbers that no oedometer test has in the unit beside them, and on numbers that few tests have. */
export const SIZE_REMARK = "size_remark";
export const UNUSUAL_REMARK = "unusual_remark";

export const DRY_MASS = ["{ring_mass}", "{ring_and_dry}"];
/** Whether the ring with dry soil is heavier than the ring. Where it is not, nothing follows from the masses. */
export const HAS_SOIL = "{ring_mass}>=0,{ring_and_dry}>{ring_mass}";
/** The mass of the ring and the dry soil, without the salt that drying left in the soil. */
export const DRY = '{ring_and_dry}-IF({salt_mass}="",0,{salt_mass})';
export const SOLIDS = ["{dry_mass}", "{specific_gravity}", "{diameter}"];

/**
 * Rounds a difference to the digits that the cell shows, so that a very small difference does not show as -0.0. No
 * formula uses the rounded value.
 */
export const rounded = (formula: string, digits: number): string => `ROUND(${formula},${digits})+0`;

/** The value of a column in the row of the load with this number, wherever that row is on the sheet. */
export const atLoad = (column: string, number: string): string => `INDEX({${column}},MATCH(${number},{load_number},0))`;

/** Larger than the number of any row: a look-up of it finds the last number of a column. */
export const PAST_EVERY_ROW = 100_000;

/** The call that calculates the whole specimen; the caller appends the item and closes the bracket. */
export const SPECIMEN_CALL =
  "CLAY.SPECIMEN({diameter},{initial_height},{ring_mass},{ring_and_wet_before},{ring_and_wet_after},{ring_and_dry},{specific_gravity},{final_height},{length_unit}";

/** True if the test is finished. A sheet without a cell for this counts as finished. */
const IS_OVER = `NOT(IFERROR(${isWord("{test_state}", "running")},FALSE))`;

/** True if every input can be. A sheet without cells for these remarks counts as such. */
export const IS_POSSIBLE = `IFERROR({${INPUT_REMARK}}&{${CHOICE_REMARK}},"")=""`;

/** A calculation that is blank, and shows no error, while an input cannot be; the head of the sheet names the input. */
export const shown = (call: string): string => `IF(${IS_POSSIBLE},${call},IFERROR(${call},""))`;

/** What a method gives; blank, and not #N/A, while the test is running or an input cannot be. */
export const onceOver = (call: string): string => `IF(AND(${IS_OVER},${IS_POSSIBLE}),${call},IFERROR(${call},""))`;

/**
 * As `onceOver`, of a call that takes "words" or "error" as its last argument: once the test is over, a refusal leaves the
 * cell blank, and the remark of the same call gives its reason. Texts are in the language of the word.
 */
export const toldOnceOver = (call: (refusal: string) => string): string =>
  `IF(AND(${IS_OVER},${IS_POSSIBLE}),${call(`,${shownWord("words")}`)},IFERROR(${call(`,${shownWord("error")}`)},""))`;

/** True if the curve has points, and lacks none of a load that was read. */
export const HAS_CURVE = `AND(COUNT({void_ratio_curve})>0,IFERROR({${CURVE_GAP}},"")="")`;

/** A formula over the compression curve; it is blank until the curve has points. */
export const ofCurve = (call: string) => `=IF(${HAS_CURVE},${onceOver(`CLAY.${call}`)},"")`;
export const CURVE = "{load_stress},{void_ratio_curve}";

/** 1 if the readings rise on compression, -1 if they fall. */
export const SENSE = `IF(${isWord("{dial_sense}", "fall")},-1,1)`;

/** The construction on the time curve that the person chose for all loads. */
export const TIME_METHOD = `IF(${isWord("{time_method}", "root time")},${shownWord("root time")},${shownWord("log time")})`;

/** The chosen method of preconsolidation stress; Casagrande's if none was chosen or the cell was lost. */
export const METHOD = 'IF(IFERROR({preconsolidation_method},"")="","Casagrande",{preconsolidation_method})';

/** Whether the table of picks has a row of the compression curve. */
const HAS_CURVE_PICKS = hasWord("{pick_load}", OF_CURVE);
/**
 * The picks of the compression curve that count; blank if there is none. A row with a number that says itself that it cannot be
 * used has a pick of no list: the head of the sheet names it, and no result shows an error for it.
 */
export const CURVE_PICKS = `IF(${HAS_CURVE_PICKS},CLAY.LOAD_PICKS("${OF_CURVE}",IF(({pick_remark}="cannot be used")*ISNUMBER({pick_after})*(1-ISERROR({pick_load})),"",{pick_load}),{pick_of},{pick_after}),"")`;

/** An item that a formula asks for: a text in the language of the sheet. */
export const asked = (item: string): string =>
  ASKING_WORDS.some((one) => one === item) ? shownWord(item) : `"${item}"`;

/** An item of the preconsolidation stress by the chosen method; e0 is for the method that begins at e0. */
export const byMethod = (item: string, refusal = ""): string =>
  `PRECONSOLIDATION(${CURVE},${METHOD},${asked(item)},"e",${CURVE_PICKS},,{void_ratio_initial}${refusal})`;

/** True if a value of the curve cannot be used; false if only the method does not apply to the curve. */
export const CURVE_IS_WRONG = `ISERR(CLAY.${byMethod("stress")})`;

/** The remark on the curve; once the test is over, and where a value of the curve cannot be used, the reason of a refusal. */
export const ON_CURVE = `IF(OR(${IS_OVER},${CURVE_IS_WRONG}),CLAY.${byMethod("remark", `,${shownWord("words")}`)},IFERROR(CLAY.${byMethod("remark")},""))`;

/** The arguments of an index: the curve, no two stresses, void ratios, the picks. */
export const INDEX_OF = `${CURVE},,,"e",${CURVE_PICKS}`;

/** The picks of the compression curve with these names that count, one behind the other; blank if there is none. */
const standing = (names: readonly CurvePickName[]): string =>
  names
    .map((name) => `CLAY.LAST_PICK("${OF_CURVE}","${CURVE_PICK_WORDS[name]}",{pick_load},{pick_of},{pick_after})`)
    .join("&");

/** A text that says that a pick counts for the stress by the chosen method; blank without one, or without a stress. */
export const STRESS_PICKED =
  `IF(${HAS_CURVE_PICKS},IF(ISERROR(CLAY.${byMethod("stress")}),"",` +
  `IF(IF(${METHOD}="${METHOD_WORDS.casagrande}",${standing(picksOfYield("casagrande"))},${standing(YIELD_LINE_PICKS)})="","",", by a pick")),"")`;

/** A text that says that an end of a line was picked; otherwise blank. */
export const linePicked = (line: "virgin" | "loop" | "unloading"): string =>
  `IF(${HAS_CURVE_PICKS},IF(IFERROR(${standing([`${line}_from`, `${line}_to`])},"")="","",", by a pick"),"")`;

/** The void index of the intrinsic line at a stress in kPa, an expression. */
export function intrinsicLineAt(stress: string): string {
  const [constant, linear, cubic] = INTRINSIC_LINE;
  return `${constant}${linear}*LOG(${stress},10)+${cubic}*LOG(${stress},10)^3`;
}

/** The void index of the sedimentation line at a stress in kPa, an expression. */
export const sedimentationLineAt = (stress: string): string =>
  intrinsicLineAt(`(${stress}/${SEDIMENTATION_SENSITIVITY})`);
