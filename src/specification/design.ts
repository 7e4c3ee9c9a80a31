/**
 * Values for design, from the laboratory loading curve: at the in-situ stress and over an increase of stress. The ratios follow
 * from the indices in use, and need no in-situ stress.
 */
import { DESIGN_INCREASE } from "../reduction/curve/design";
import { ADOPTED_CV_ARGUMENTS } from "./adopted-cv";
import { when, type Field } from "./field";
import { result } from "./form-fields";
import { CURVE, HAS_CURVE, onceOver, shown } from "./formulas";

/** The increase of stress that was typed, or the usual one. */
const INCREASE = `IF(IFERROR({design_increase},"")="",CLAY.CONVERT_UNIT(${DESIGN_INCREASE},"kPa",{stress_unit}),{design_increase})`;

const item = (name: string): string =>
  when(
    ["{in_situ_stress}", "{void_ratio_initial}"],
    `IF(${HAS_CURVE},${onceOver(
      `CLAY.DESIGN_PARAMETERS(${CURVE},{in_situ_stress},${INCREASE},{preconsolidation_stress},{void_ratio_initial},"e","${name}",{stress_unit},{mv_unit})`,
    )},"")`,
  );

const ratioOf = (index: string): string =>
  when([`{${index}}`, "{void_ratio_initial}"], `{${index}}/(1+{void_ratio_initial})`);

/** An item of cv at the in-situ stress and half the increase. */
const cvInMiddle = (what: "cv" | "from"): string =>
  when(
    ["{in_situ_stress}"],
    `IF(AND(COUNT({cv_chosen},{adopted_cv})>0,${HAS_CURVE}),${onceOver(`CLAY.CV_AT({load_stress},{cv_chosen},{in_situ_stress}+${INCREASE}/2,${ADOPTED_CV_ARGUMENTS},"${what}")`)},"")`,
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
      ratioOf("compression_index"),
      "CR = Cc / (1 + e0), of the index in use.",
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
      cvInMiddle("cv"),
      "At the in-situ stress and half the increase: the cv adopted for the range that holds it, otherwise interpolated between the loads on log stress.",
    ),
    result(
      "design_cv_from",
      "  cv is",
      "text",
      cvInMiddle("from"),
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
      `=IF(COUNT({void_ratio_curve})=0,"",IF({in_situ_stress}="","no in-situ stress: ratios only","lab. curve over "&IFERROR(ROUND(${INCREASE},3),"?")&" "&{stress_unit}))`,
      "The curve that the values were read from with the increase in stress, or that the in-situ stress is missing: it stands among the choices.",
    ),
  ],
];
