/**
 * Values for design, from the laboratory loading curve or the field curve, as chosen: at the in-situ stress and over an increase of stress. The ratios follow
 * from the indices in use, and need no in-situ stress.
 */
import { DESIGN_INCREASE } from "../../reduction/curve/design";
import { ADOPTED_CV_ARGUMENTS } from "./adopted-cv";
import { adoptedOrBlank } from "./adopted";
import type { AdoptableName } from "./adoptable";
import { DESIGN_CURVE } from "../form/choices";
import { english } from "../../reduction/message";
import { when, type Field } from "../field";
import { NO_CV_THERE } from "../sentences/of-remarks";
import { inFormula } from "../sentences/told-formula";
import { result } from "../form-fields";
import { asked, CURVE, CURVE_PICKS, HAS_CURVE, shown, toldOnceOver } from "../formulas";
import { isWord, shownWord } from "../list-words";

/** The increase of stress that was typed, or the usual one. */
const INCREASE = `IF(IFERROR({design_increase},"")="",CLAY.CONVERT_UNIT(${DESIGN_INCREASE},"kPa",{stress_unit}),{design_increase})`;

/** True if the values are to be read from the field curve. */
const ON_FIELD = `IFERROR(${isWord(`{${DESIGN_CURVE}}`, "field")},FALSE)`;

/** The constructions may refuse the preconsolidation stress: e, mv and M are given without it, and the remark says so. */
const DESIGN_CALL = `CLAY.DESIGN_PARAMETERS(${CURVE},{in_situ_stress},${INCREASE},IF(COUNT({preconsolidation_stress})=0,${shownWord("none")},{preconsolidation_stress}),{void_ratio_initial},"e"`;

/** An item of the design values; blank if it is refused, and the remark gives the reason. */
const item = (name: string): string =>
  when(
    ["{in_situ_stress}", "{void_ratio_initial}"],
    `IF(${HAS_CURVE},${toldOnceOver(
      (refusal) =>
        `${DESIGN_CALL},${asked(name)},{stress_unit},{mv_unit},IF(${ON_FIELD},"field",""),{field_factor},${CURVE_PICKS},${adoptedOrBlank("recompression_index")}${refusal})`,
    )},"")`,
  );

/** Blank where an input on which it depends shows an error: the line at the head of the sheet names that input. */
export const DESIGN_REMARK = `=IFERROR(${item("remark").slice(1)},"")`;

const overHeight = (index: string): string =>
  when([`{${index}}`, "{void_ratio_initial}"], `{${index}}/(1+{void_ratio_initial})`).slice(1);

/** An index in use as strain. */
const ratioOf = (index: AdoptableName): string => `=${overHeight(index)}`;

/** CR: of the index in use; with the field curve, of its slope unless an index is adopted. */
const COMPRESSION_RATIO = `=IF(AND(${ON_FIELD},${adoptedOrBlank("compression_index")}=""),${overHeight("field_compression_index")},${overHeight("compression_index")})`;

/** An item of cv at the in-situ stress and half the increase; cv is blank where the loads have none. */
const cvInMiddle = (what: "cv" | "from"): string =>
  toldOnceOver(
    (refusal) =>
      `CLAY.CV_AT({load_stress},{cv_chosen},{in_situ_stress}+${INCREASE}/2,${ADOPTED_CV_ARGUMENTS},${asked(what)}${refusal})`,
  );

const RANGE = "from the in-situ stress over the increase";

export const DESIGN: readonly (readonly Field[])[] = [
  [
    result(
      "design_e_in_situ",
      "e at the in-situ stress",
      "ratio",
      item("e_in_situ"),
      "On the laboratory loading curve, interpolated on log stress.",
    ),
    result(
      "design_e_final",
      "e after the increase",
      "ratio",
      item("e_final"),
      "On the laboratory loading curve, at the in-situ stress and the increase.",
    ),
    result(
      "design_mv",
      "mv over the increase",
      "compressibility",
      item("mv"),
      `Strain on the height at the in-situ stress per unit of stress, ${RANGE}.`,
    ),
    result("design_modulus", "Constrained modulus M", "stress", item("M"), `M = 1 / mv, ${RANGE}.`),
  ],
  [
    result(
      "design_cr",
      "Compression ratio CR",
      "ratio",
      COMPRESSION_RATIO,
      "CR = Cc / (1 + e0), of the index in use; with the field curve, of its slope unless Cc is adopted.",
    ),
    result(
      "design_rr",
      "Recompression ratio RR",
      "ratio",
      ratioOf("recompression_index"),
      "RR = Cr / (1 + e0), of the index in use.",
    ),
    result(
      "design_sr",
      "Swelling ratio SR",
      "ratio",
      ratioOf("swelling_index"),
      "SR = Cs / (1 + e0), of the index in use.",
    ),
    result(
      "design_modulus_number",
      "Modulus number (Janbu)",
      "ratio",
      when(["{design_cr}"], "2.302585/{design_cr}"),
      "m = ln 10 / CR, of virgin compression; Janbu (1963).",
    ),
  ],
  [
    result(
      "design_cv",
      "cv in the middle of it",
      "cv",
      when(["{in_situ_stress}"], `IF(AND(COUNT({cv_chosen},{adopted_cv})>0,${HAS_CURVE}),${cvInMiddle("cv")},"")`),
      "At the in-situ stress and half the increase: the cv adopted for the range that holds it, otherwise interpolated between the loads on log stress.",
    ),
    result(
      "design_cv_from",
      "  cv is",
      "text",
      `=IF(OR({in_situ_stress}="",COUNT({cv_chosen},{adopted_cv})=0),"",IF({design_cv}="",${inFormula(english(NO_CV_THERE))},${cvInMiddle("from")}))`,
      "Whether the cv was adopted for a range of stress, or lies between the loads.",
    ),
    result(
      "design_k",
      "k from cv and mv",
      "conductivity",
      when(
        ["{design_cv}", "{design_mv}"],
        shown("CLAY.CONDUCTIVITY({design_cv},{design_mv},{cv_unit},{mv_unit},{conductivity_unit})"),
      ),
      "k = cv mv x unit weight of water. No substitute for a direct test.",
    ),
    result(
      "design_c_alpha",
      "C alpha-epsilon",
      "small",
      when(["{c_alpha_chosen}"], "{c_alpha_chosen}"),
      "The value in use.",
    ),
    result(
      "design_from",
      "From",
      "text",
      `=IF(COUNT({void_ratio_curve})=0,"",IF({in_situ_stress}="",IF(${ON_FIELD},"no in-situ stress: RR and SR only","no in-situ stress: ratios only"),IF(COUNT({design_e_in_situ},{design_e_final})<2,"beyond the curve: see Remarks",IF(${ON_FIELD},"field curve","lab. curve")&" over "&IFERROR(ROUND(${INCREASE},3),"?")&" "&{stress_unit})))`,
      "The curve that the values were read from with the increase in stress, or that the in-situ stress is missing: it stands among the choices.",
    ),
  ],
];
