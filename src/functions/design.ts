/** Worksheet functions of design: values on the curve, design parameters, settlement of a layer, intrinsic properties. */
import { CURVE_BRANCHES, curveAt } from "../reduction/curve/curve-at";
import { cvInUse, cvOfRange, type AdoptedCv } from "../reduction/curve/cv-at";
import { DESIGN_INCREASE, designParameters, type DesignParameters } from "../reduction/curve/design";
import type { Index } from "../reduction/curve/indices";
import { intrinsic } from "../reduction/curve/intrinsic";
import { kindSeen, testCurve } from "../reduction/curve/shape/points";
import { say } from "../reduction/message";
import { told } from "../record/told";
import { badInput, given, then, type Outcome } from "../reduction/outcome";
import { settlement } from "../reduction/settlement";
import { convert } from "../reduction/units";
import { answer, isTable, itemOf, line, remarksOf, toldOrThrown, valueOf, type Item } from "./answer";
import {
  isNoWord,
  isOmitted,
  means,
  languageAsked,
  toCellOrWord,
  toChoice,
  toNumber,
  toOptionalPositive,
  toPair,
  toPositive,
  toUnit,
} from "./cells";
import { reduceTest, toCurvePicks, toKind, toLists, toTest } from "./test-cells";

/**
 * Void ratio or strain on the compression curve at a stress: the value of a load at that stress, otherwise interpolated between two loads, linearly on log of stress. Beyond the curve it is #N/A.
 * @customfunction
 * @param stresses Effective stresses at the end of each load, in test order, unloading included; any one unit.
 * @param values Void ratios, or strains as ratios with compression positive, at the end of each load.
 * @param stress Stress at which the value is wanted, in the same unit.
 * @param [branch] "loading" (default): the outer loading curve, without the loops; or "unloading": the last unloading.
 * @param [kind] What the values are: "e" or "strain"; if left out, values that fall are void ratios and values that rise are strains.
 * @returns The void ratio, or the strain.
 * @example =CLAY.CURVE_AT(C2:C18,D2:D18,62)
 * @example =CLAY.CURVE_AT(C2:C18,D2:D18,62,"unloading")
 * @refuses =CLAY.CURVE_AT(C2:C18,D2:D18,6400)
 * @source Interpolation on the logarithm of stress is common practice, without a source.
 */
export function CURVE_AT(stresses: any[][], values: any[][], stress: any, branch?: any, kind?: any): any {
  const at = toPositive(stress, say`the stress`);
  const wanted = toChoice(branch, say`the branch`, CURVE_BRANCHES, "loading");
  const rows = toLists(stresses, values);
  const [s, v] = [Array.from(rows[0]), Array.from(rows[1])];
  const test = testCurve(s, v, isNoWord(kind) ? kindSeen(s, v) : toKind(kind));
  return valueOf(then(test, (curve) => curveAt(curve, at, wanted)));
}

/** The ranges of stress with an adopted cv; a row that lacks a stress or the cv is none. */
function toAdoptedCv(from: unknown, to: unknown, adopted: unknown): AdoptedCv[] {
  if (isOmitted(adopted)) return [];
  const [low, high] = toPair(from, say`the lower stresses`, to, say`the upper stresses`);
  const [, cv] = toPair(from, say`the lower stresses`, adopted, say`the adopted values of cv`);
  return low.flatMap((lower, i) => {
    const [upper, value] = [high[i], cv[i]];
    return lower === null || !upper || !value ? [] : [{ from: lower, to: upper, cv: value }];
  });
}

/**
 * cv at a stress: the cv adopted for a range that holds it; otherwise interpolated between two loads, linearly on log of stress. Blanks, words, #N/A, reloads and unloadings are left out. Beyond the loads with a cv it is #N/A, unless a cv is adopted there.
 * @customfunction
 * @param stresses Stresses of the loads, in test order; any one unit. Give mean stresses if cv is plotted against them.
 * @param cv_values cv of each load, in any one unit; blank, a word or #N/A if a load has no cv.
 * @param stress Stress at which cv is wanted, in the unit of the stresses.
 * @param [range_from] Lower stresses of the ranges for which a cv is adopted, one a row; blank rows are left out.
 * @param [range_to] Upper stresses of these ranges.
 * @param [adopted_cv] The cv adopted for each range, in the unit of the values. Of ranges that overlap the last one counts.
 * @param [item] "cv" (default), or "from": whether the cv was adopted or lies between the loads, in words.
 * @param [refusal] "error" (default): a refusal is an error of the cell; "words": cv is blank, and "from" gives the reason.
 * @returns cv, in the unit of the values.
 * @example =CLAY.CV_AT(P2:P8,Q2:Q8,300)
 * @refuses =CLAY.CV_AT(P2:P8,Q2:Q8,3000)
 * @source Interpolation on the logarithm of stress is common practice, without a source.
 */
export function CV_AT(
  stresses: any[][],
  cv_values: any[][],
  stress: any,
  range_from?: any[][],
  range_to?: any[][],
  adopted_cv?: any[][],
  item?: any,
  refusal?: any,
): any {
  const wanted = toChoice(item, say`the item`, ["cv", "from"], "cv");
  const rows = toldOrThrown(refusal, { item: wanted === "from" ? "remark" : wanted }, () => {
    const [s, cv] = toPair(stresses, say`the stresses`, cv_values, say`the values of cv`, toCellOrWord);
    const adopted = toAdoptedCv(range_from, range_to, adopted_cv);
    const found = valueOf(cvInUse(s, cv, toPositive(stress, say`the stress`), adopted));
    return [[wanted === "cv" ? found.cv : told(found.basis, languageAsked(item, refusal))]];
  });
  return rows[0]?.[0];
}

/**
 * cv over a range of stress, such as recompression or virgin compression: the geometric mean, the least and the greatest cv of the loads of first loading that begin and end within the range; if there is none, of those that end within it.
 * @customfunction
 * @param stresses Stresses of the loads, in test order; any one unit.
 * @param cv_values cv of each load, in any one unit; blank, a word or #N/A if a load has no cv.
 * @param from Lower stress of the range; 0 is a stress.
 * @param to Upper stress of the range.
 * @param [item] One of mean, least, greatest, loads, remark; left out, the whole table spills.
 * @returns A table of label, value and unit; or the one item. cv is in the unit of the values.
 * @example =CLAY.CV_RANGE(P2:P8,Q2:Q8,100,800)
 * @example =CLAY.CV_RANGE(P2:P8,Q2:Q8,100,800,"mean")
 * @refuses =CLAY.CV_RANGE(P2:P8,Q2:Q8,3000,6000)
 * @source The geometric mean is common practice, without a source.
 */
export function CV_RANGE(stresses: any[][], cv_values: any[][], from: any, to: any, item?: any): any[][] {
  const [s, cv] = toPair(stresses, say`the stresses`, cv_values, say`the values of cv`, toCellOrWord);
  const outcome = cvOfRange(s, cv, toNumber(from, say`the lower stress`), toPositive(to, say`the upper stress`));
  const { mean, least, greatest, loads } = valueOf(outcome);
  const items: Item[] = [
    line("mean", mean, "geometric, as the values"),
    line("least", least, "as the values"),
    line("greatest", greatest, "as the values"),
    line("loads", loads, "of first loading"),
  ];
  return answer(items, remarksOf(outcome), item);
}

/**
 * Values for a settlement calculation, from the laboratory or the field curve between the in-situ stress and that stress plus an increase: void ratios, mv, M, compression, recompression and swelling ratio, modulus number.
 * @customfunction
 * @param stresses Effective stresses at the end of each load, in test order, unloading included; in the stress unit.
 * @param values Void ratios, or strains as ratios with compression positive, at the end of each load.
 * @param in_situ_stress In-situ effective vertical stress; if blank, the values that need it are blank too.
 * @param [increase] Rise of stress above it; 100 kPa, in the stress unit, if left out.
 * @param [preconsolidation_stress] Preconsolidation stress, for the remarks on which part is virgin; by Casagrande's construction if left out; "none" where it is not known.
 * @param [initial_void_ratio] Void ratio at zero strain; for void ratios, the first one if left out.
 * @param [kind] What the values are: "e" (default) or "strain".
 * @param [item] One of e_in_situ, e_final, mv, M, CR, RR, SR, modulus_number, remark; left out, the whole table spills.
 * @param [stress_unit] Unit of the stresses: kPa (default), MPa, psf, ksf, tsf, psi, kgf/cm2, bar.
 * @param [mv_unit] Unit of mv: m2/MN (default), m2/kN, 1/kPa, 1/MPa, ft2/ton, 1/tsf, 1/psf, 1/ksf, cm2/kgf.
 * @param [curve] "laboratory" (default): values from the laboratory loading curve; "field": from Schmertmann's field curve, whose slope gives CR too. SR, and RR, are those of the test.
 * @param [field_factor] Share of the initial void ratio at which field and laboratory lines meet; 0.42 if left out.
 * @param [picks] Range of two columns, names and stresses, of picks by hand, as in PRECONSOLIDATION, for the field curve.
 * @param [recompression_index] Recompression index by the kind of the values, in the place of that of the test, for the field curve.
 * @param [refusal] "error" (default): a refusal is an error of the cell; "words": the remark gives the reason, and the rest is blank.
 * @returns A table of label, value and unit; or the one item. mv is on the height at the in-situ stress, M = 1/mv in the stress unit; CR, RR and SR are strain per log cycle of stress; the modulus number is ln 10 / CR.
 * @example =CLAY.DESIGN_PARAMETERS(C2:C18,D2:D18,62)
 * @example =CLAY.DESIGN_PARAMETERS(C2:C18,D2:D18,62,200,,,,"mv")
 * @refuses =CLAY.DESIGN_PARAMETERS(C2:C18,D2:D18,62,6400)
 * @source mv, M: by definition, on the height at the in-situ stress as in BS 1377-5; over 100 kPa by British practice, from memory.
 * @source modulus_number: Janbu, N., 1963, Soil compressibility as determined by oedometer and triaxial tests, Proc. Eur. Conf. Soil Mech. Found. Eng., Wiesbaden, vol. 1, 19-25 (second hand): M = m times the stress in virgin compression, so m = ln 10 / CR.
 * @source CR, RR, SR: those of COMPRESSION_INDEX, RECOMPRESSION_INDEX and SWELLING_INDEX, over 1 + initial void ratio.
 */
export function DESIGN_PARAMETERS(
  stresses: any[][],
  values: any[][],
  in_situ_stress: any,
  increase?: any,
  preconsolidation_stress?: any,
  initial_void_ratio?: any,
  kind?: any,
  item?: any,
  stress_unit?: any,
  mv_unit?: any,
  curve?: any,
  field_factor?: any,
  picks?: any[][],
  recompression_index?: any,
  refusal?: any,
): any[][] {
  const unit = toUnit(stress_unit, "stress", "kPa");
  const inSituStress = toOptionalPositive(in_situ_stress, say`the in-situ stress`);
  const initialVoidRatio = toOptionalPositive(initial_void_ratio, say`the initial void ratio`);
  const isField = toChoice(curve, say`the curve`, ["laboratory", "field"], "laboratory") === "field";
  return toldOrThrown(refusal, { item }, () => {
    const outcome = then(toTest(stresses, values, kind), (test) =>
      designParameters({
        test,
        inSituStress,
        increase: toOptionalPositive(increase, say`the increase`) ?? convert(DESIGN_INCREASE, "stress", "kPa", unit),
        initialVoidRatio,
        preconsolidationStress: toPreconsolidation(preconsolidation_stress, () =>
          then(reduceTest([stresses, values, kind], "casagrande"), ({ stress }) => given(stress)),
        ),
        ...(isField && {
          field: {
            factor: toOptionalPositive(field_factor, say`the factor`),
            picks: toCurvePicks(picks),
            recompressionIndex: toOptionalPositive(recompression_index, say`the recompression index`),
          },
        }),
      }),
    );
    return designTable(outcome, { item, refusal }, unit, toUnit(mv_unit, "mv", "m2/MN"), isField);
  });
}

/** A preconsolidation stress; `constructed` if it is left out, and a refusal if the cell says that there is none. */
function toPreconsolidation(cell: unknown, constructed: () => Outcome<number>): Outcome<number> {
  if (isNoWord(cell)) return constructed();
  if (means(cell, "none")) return badInput(say`there is no preconsolidation stress`);
  return given(toPositive(cell, say`the preconsolidation stress`));
}

/** The table of the design values, or the one item. */
function designTable(
  outcome: Outcome<DesignParameters>,
  { item, refusal }: { readonly item: unknown; readonly refusal: unknown },
  unit: string,
  mvUnit: string,
  isField: boolean,
): any[][] {
  const { eInSitu, eFinal, mv, M, CR, RR, SR, modulusNumber, beyond } = valueOf(outcome);
  // The table and its remark are refused if the in-situ or the final stress lies beyond the curve; an item that does
  // not need that stress is given.
  if (beyond && (isTable(item) || means(item, "remark"))) valueOf(beyond);
  const perKilopascal = then(mv, (value) => given(value / convert(1, "stress", unit, "kPa")));
  const ratio = (label: string, index: Outcome<Index>): Item =>
    itemOf(
      label,
      then(index, ({ value }) => given(value)),
      index.ok ? index.value.basis : index.reason,
    );
  const curveRead = isField ? "field curve" : "laboratory loading curve";
  const items: Item[] = [
    itemOf("e_in_situ", eInSitu, curveRead),
    itemOf("e_final", eFinal, curveRead),
    itemOf(
      "mv",
      then(perKilopascal, (value) => given(convert(value, "mv", "1/kPa", mvUnit))),
      mvUnit,
    ),
    itemOf("M", M, unit),
    ratio("CR", CR),
    ratio("RR", RR),
    ratio("SR", SR),
    itemOf("modulus_number", modulusNumber, "Janbu, virgin: ln 10 / CR"),
  ];
  return answer(items, remarksOf(outcome), item, refusal);
}

/**
 * Primary settlement of one layer in one dimension: recompression up to the preconsolidation stress, virgin compression beyond it. No immediate settlement, secondary compression or three-dimensional effect.
 * @customfunction
 * @param thickness Thickness of the layer, in any length unit.
 * @param in_situ_stress Effective vertical stress at the middle of the layer; any one unit for the three stresses.
 * @param increase Its increase by the load, at the middle of the layer.
 * @param preconsolidation_stress Preconsolidation stress.
 * @param compression_ratio CR = Cc / (1 + e0), strain per log cycle of stress, as a ratio; may be blank where nothing is virgin.
 * @param recompression_ratio RR = Cr / (1 + e0), as a ratio too; may be blank where all is virgin.
 * @param [item] One of recompression, virgin, settlement, remark; left out, the whole table spills.
 * @returns A table of label, value and unit; or the one item. Settlements are in the unit of the thickness.
 * @example =CLAY.SETTLEMENT(4,100,120,150,0.15,0.025)
 * @example =CLAY.SETTLEMENT(2500,58,140,58,0.143,,"settlement")
 * @refuses =CLAY.SETTLEMENT(4,100,120,150,0.025,0.15)
 * @source One-dimensional settlement on a bilinear curve of strain against log of stress: any soil mechanics textbook, such as Das, Principles of Geotechnical Engineering.
 */
export function SETTLEMENT(
  thickness: any,
  in_situ_stress: any,
  increase: any,
  preconsolidation_stress: any,
  compression_ratio: any,
  recompression_ratio: any,
  item?: any,
): any[][] {
  const outcome = settlement({
    thickness: toNumber(thickness, say`the thickness`),
    inSituStress: toNumber(in_situ_stress, say`the in-situ stress`),
    increase: toNumber(increase, say`the increase`),
    preconsolidationStress: toNumber(preconsolidation_stress, say`the preconsolidation stress`),
    compressionRatio: toNumber(compression_ratio, say`the compression ratio`),
    recompressionRatio: toNumber(recompression_ratio, say`the recompression ratio`),
  });
  const parts = valueOf(outcome);
  const items: Item[] = [
    line("recompression", parts.recompression, "as the thickness"),
    line("virgin", parts.virgin, "as the thickness"),
    line("settlement", parts.settlement, "as the thickness"),
  ];
  return answer(items, remarksOf(outcome), item);
}

/**
 * Intrinsic void ratio at 100 kPa and intrinsic compression index from the liquid limit; void index of a natural void ratio, and void index of the intrinsic compression line at a stress. A correlation, for void ratios at the liquid limit of 0.6 to 4.5.
 * @customfunction
 * @param liquid_limit Liquid limit as a ratio, 0.65 for 65 %.
 * @param specific_gravity Specific gravity of solids.
 * @param [void_ratio] Natural void ratio, for its void index.
 * @param [stress] Effective vertical stress in kPa, for the void index of the intrinsic compression line.
 * @param [item] One of e_L, e_100, C_c, void_index, line_index, remark; left out, the whole table spills.
 * @returns A table of label, value and unit; or the one item. A text is in the language of the word that asks for it, as "remark" in English, "Bemerkung" in German; "Deutsch" asks for the whole table in German.
 * @example =CLAY.INTRINSIC(0.56,2.68,1.2,100)
 * @example =CLAY.INTRINSIC(0.56,2.68,1.2,,"void_index")
 * @refuses =CLAY.INTRINSIC(56,2.68)
 * @source Burland, J.B., 1990, On the compressibility and shear strength of natural clays, Geotechnique 40(3), 329-378; constants second hand, the range of the line from memory.
 */
export function INTRINSIC(
  liquid_limit: any,
  specific_gravity: any,
  void_ratio?: any,
  stress?: any,
  item?: any,
): any[][] {
  const outcome = intrinsic(
    toNumber(liquid_limit, say`the liquid limit`),
    toNumber(specific_gravity, say`the specific gravity`),
    {
      voidRatio: toOptionalPositive(void_ratio, say`the void ratio`),
      stress: toOptionalPositive(stress, say`the stress`),
    },
  );
  const { eL, e100, Cc, voidIndex, lineIndex } = valueOf(outcome);
  const items: Item[] = [
    line("e_L", eL, "at the liquid limit"),
    line("e_100", e100, "e*100, reconstituted, at 100 kPa"),
    line("C_c", Cc, "C*c, reconstituted"),
    line("void_index", voidIndex, "", badInput(say`the void index needs the void ratio: give it`)),
    line(
      "line_index",
      lineIndex,
      "intrinsic compression line",
      badInput(say`the intrinsic compression line needs the stress: give it in kPa`),
    ),
  ];
  return answer(items, remarksOf(outcome), item);
}
