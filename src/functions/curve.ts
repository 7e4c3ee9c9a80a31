/** Worksheet functions of the whole test: compression curve, preconsolidation stress, indices, field curve, quality. */
import { branches } from "../reduction/curve/shape/branches";
import { creepRatio, CREEP_SOILS, SOIL_NAMES } from "../reduction/curve/creep-ratio";
import { fieldCurve } from "../reduction/curve/field-curve";
import {
  compressionIndex,
  E0_NEEDED,
  initialVoidRatio,
  recompressionIndex,
  swellingIndex,
  type Between,
  type Index,
} from "../reduction/curve/indices";
import { shown } from "../reduction/curve/methods/method";
import { voidsOfNoSoil, type TestCurve } from "../reduction/curve/shape/points";
import {
  methodNamed,
  SPREAD_WORDS,
  METHOD_NAMES,
  type MethodName,
  type SpreadRow,
} from "../reduction/curve/method-words";
import { preconsolidationSpread } from "../reduction/curve/preconsolidation";
import { LUNNE_NAMES, sampleQuality, SWELLED } from "../reduction/curve/sample-quality";
import * as stiffness from "../reduction/curve/stiffness";
import { overconsolidationRatio } from "../reduction/curve/stress-history";
import { temperatureFactor } from "../reduction/curve/viscosity";
import { asTyped, distinct, say, verbatim } from "../reduction/message";
import { firstOf } from "../reduction/numeric/lists";
import { badInput, given, notApplicable, then, type Outcome } from "../reduction/outcome";
import { convert } from "../reduction/units";
import { englishWord, wordElsewhere } from "../record/cells";
import { told } from "../record/told";
import { answer, line, type Item, remarksOf, rowsOfLines, toldOrThrown, valueOf } from "./answer";
import {
  isNoWord,
  languageAsked,
  refuseCell,
  toChoice,
  toNumber,
  toOptionalPositive,
  toPositive,
  toUnit,
} from "./cells";
import { reduceTest, toCurvePicks, toKind, toTest } from "./test-cells";

/** Accepts the short name of a method, or its name in words on a data sheet. */
const toMethod = (method: unknown): MethodName =>
  toChoice(
    (typeof method === "string" && methodNamed(englishWord(method))) || method,
    say`the method`,
    METHOD_NAMES,
    "casagrande",
  );

/**
 * Preconsolidation (yield) stress of a whole test. Refuses (#N/A) a curve that shows no yield.
 * @customfunction
 * @param stresses Effective stresses at the end of each load, in test order, unloading included; any one unit.
 * @param values Void ratios, or strains as ratios with compression positive, at the end of each load.
 * @param [method] "casagrande" (default), "work", "bilog", "intersection", "pacheco_silva" or "janbu".
 * @param [item] One of stress, low, high, remark; left out, the whole table spills. Low and high bound the range that these points allow, at about 95 %; the choice of method is not part of it.
 * @param [kind] What the values are: "e" (default) or "strain".
 * @param [picks] Range of two columns, names and stresses, of picks by hand, or the answer of LOAD_PICKS for the curve: recompression_from, recompression_to, virgin_from, virgin_to, greatest_curvature, and of the indices loop_from, loop_to, unloading_from, unloading_to.
 * @param [drawing_slope] Slope at which the virgin line is drawn in Casagrande's construction, rise over run on the paper: 1.5 (56 degrees) if left out. Flatter drawings read higher.
 * @param [initial_value] Value before the first load (e0, or a strain), for Pacheco Silva's construction; left out, the value of a first row without stress, or the first value.
 * @param [refusal] "error" (default): a refusal is an error of the cell; "words": the remark gives the reason, and the rest is blank.
 * @returns A table of label, value and unit; or the one item. Stresses are in the unit of the stresses given.
 * @example =CLAY.PRECONSOLIDATION(C2:C18,D2:D18)
 * @example =CLAY.PRECONSOLIDATION(C2:C18,D2:D18,"work","stress")
 * @refuses =CLAY.PRECONSOLIDATION(C2:C5,D2:D5)
 * @refuses =CLAY.PRECONSOLIDATION(C2:C18,D2:D18,"guess")
 * @source casagrande: Casagrande, A., 1936, The determination of the preconsolidation load and its practical significance, Proc. 1st Int. Conf. Soil Mech. Found. Eng., Cambridge, vol. 3, 60-64.
 * @source work: Becker, D.E., Crooks, J.H.A., Been, K., Jefferies, M.G., 1987, Work as a criterion for determining in situ and yield stresses in clays, Canadian Geotechnical Journal 24(4), 549-564.
 * @source bilog: Butterfield, R., 1979, A natural compression law for soils, Geotechnique 29(4), 469-480; Oikawa, H., 1987, Compression curve of soft soils, Soils and Foundations 27(3), 99-104.
 * @source intersection: common practice, without a source.
 * @source pacheco_silva: Pacheco Silva, F., 1970, A new graphical construction for determination of the pre-consolidation stress of a soil sample, Proc. 4th Brazilian Conf. Soil Mech. Found. Eng., Rio de Janeiro, vol. 2, 225-232.
 * @source janbu: Janbu, N., 1969, The resistance concept applied to deformations of soils, Proc. 7th Int. Conf. Soil Mech. Found. Eng., Mexico City, vol. 1, 191-196.
 * @picture casagrande
 */
export function PRECONSOLIDATION(
  stresses: any[][],
  values: any[][],
  method?: any,
  item?: any,
  kind?: any,
  picks?: any[][],
  drawing_slope?: any,
  initial_value?: any,
  refusal?: any,
): any[][] {
  return toldOrThrown(refusal, { item, rows: ["stress", "low", "high"] }, () => {
    const outcome = reduceTest([stresses, values, kind], toMethod(method), picks, drawing_slope, initial_value);
    const { stress, low, high } = valueOf(outcome);
    const items: Item[] = [line("stress", stress), line("low", low), line("high", high)];
    return answer(items, remarksOf(outcome), item, refusal);
  });
}

/**
 * Preconsolidation stress by every method side by side, with the points that each used and how it errs on such a curve; median, spread, the range that these points allow, and a verdict.
 * @customfunction
 * @param stresses Effective stresses at the end of each load, in test order, unloading included; any one unit.
 * @param values Void ratios, or strains as ratios with compression positive, at the end of each load.
 * @param [kind] What the values are: "e" (default) or "strain".
 * @param [initial_value] Value before the first load (e0, or a strain), for Pacheco Silva's construction; left out, the value of a first row without stress, or the first value.
 * @param [labels] "codes" (default), or "words": labels for people, as a data sheet shows them; verdict and remark then stand in the third column. "Deutsch": the table of codes in German.
 * @returns Rows of label, value and note: one row per method (its stress, the points used, the effect of the form of the curve, and whether the stress lies outside the range; or why the method does not apply), then median, spread (greatest less least over the median), low, high, verdict, remark.
 * @example =CLAY.PRECONSOLIDATION_SPREAD(C2:C18,D2:D18)
 * @refuses =CLAY.PRECONSOLIDATION_SPREAD(C2:C5,D2:D5)
 * @source Those of the methods, as in PRECONSOLIDATION.
 */
export function PRECONSOLIDATION_SPREAD(
  stresses: any[][],
  values: any[][],
  kind?: any,
  initial_value?: any,
  labels?: any,
): any[][] {
  const outcome = then(toTest(stresses, values, kind, initial_value), (test) => preconsolidationSpread(test));
  const { methods, median, spread, low, high, verdict } = valueOf(outcome);
  const language = languageAsked(labels);
  const range = told(say`range that these points allow, about 95 percent`, language);
  const rows: Item[] = [
    ...methods.map(({ method, result, note }) =>
      line(method, result.ok ? result.value.stress : undefined, told(note, language)),
    ),
    line("median", median),
    line("spread", spread, told(say`greatest less least, over the median`, language)),
    line("low", low, range),
    line("high", high, range),
    line("verdict", verdict),
  ];
  const form = toChoice(labels, say`the labels`, ["codes", "words", "English"], "codes");
  const table = answer(rows, remarksOf(outcome), form === "English" ? labels : undefined, labels);
  return form === "words" ? table.map((row) => inWords(row, language)) : table;
}

/** Puts a row of the table of methods into words. A text is in the third column, where it has room to overflow. */
function inWords([label, value, note]: readonly any[], language: string): any[] {
  // The labels of the table are the names of its rows.
  const words = wordElsewhere(language, SPREAD_WORDS[label as SpreadRow]);
  return label === "verdict" || label === "remark" ? [words, "", value] : [words, value, note];
}

/**
 * Casagrande's construction as series for a chart with a log stress axis: rows of label, stress, value. Every line of the hand construction.
 * @customfunction
 * @param stresses Effective stresses at the end of each load, in test order, unloading included; any one unit.
 * @param values Void ratios, or strains as ratios with compression positive, at the end of each load.
 * @param [kind] What the values are: "e" (default) or "strain".
 * @param [picks] Range of two columns, names and stresses, of picks by hand, as in PRECONSOLIDATION.
 * @param [drawing_slope] Slope at which the virgin line is drawn, rise over run on the paper: 1.5 if left out.
 * @param [language] Language of the answer: "English" (default) or "Deutsch".
 * @returns Rows of label, x (stress) and y (value).
 * @example =CLAY.CASAGRANDE_LINES(C2:C18,D2:D18)
 * @refuses =CLAY.CASAGRANDE_LINES(C2:C5,D2:D5)
 * @source Casagrande, A., 1936, The determination of the preconsolidation load and its practical significance, Proc. 1st Int. Conf. Soil Mech. Found. Eng., Cambridge, vol. 3, 60-64.
 * @picture casagrande
 */
export function CASAGRANDE_LINES(
  stresses: any[][],
  values: any[][],
  kind?: any,
  picks?: any[][],
  drawing_slope?: any,
  language?: any,
): any[][] {
  return rowsOfLines(valueOf(reduceTest([stresses, values, kind], "casagrande", picks, drawing_slope)).lines, language);
}

/**
 * The work method's construction as series for a chart with arithmetic axes: rows of label, stress, work per unit volume (in the unit of the stresses).
 * @customfunction
 * @param stresses Effective stresses at the end of each load, in test order, unloading included; any one unit.
 * @param values Void ratios, or strains as ratios with compression positive, at the end of each load.
 * @param [kind] What the values are: "e" (default) or "strain".
 * @param [picks] Range of two columns, names and stresses, of picks by hand, as in PRECONSOLIDATION.
 * @param [language] Language of the answer: "English" (default) or "Deutsch".
 * @returns Rows of label, x (stress) and y (work).
 * @example =CLAY.WORK_LINES(C2:C18,D2:D18)
 * @refuses =CLAY.WORK_LINES(C2:C5,D2:D5)
 * @source Becker, D.E., Crooks, J.H.A., Been, K., Jefferies, M.G., 1987, Work as a criterion for determining in situ and yield stresses in clays, Canadian Geotechnical Journal 24(4), 549-564.
 * @picture work
 */
export function WORK_LINES(stresses: any[][], values: any[][], kind?: any, picks?: any[][], language?: any): any[][] {
  return rowsOfLines(valueOf(reduceTest([stresses, values, kind], "work", picks)).lines, language);
}

/**
 * The construction of any preconsolidation method as series for a chart: rows of label, stress, and the y of the method's plot (value; work; ln(1+e); modulus).
 * @customfunction
 * @param stresses Effective stresses at the end of each load, in test order, unloading included; any one unit.
 * @param values Void ratios, or strains as ratios with compression positive, at the end of each load.
 * @param [method] "casagrande" (default), "work", "bilog", "intersection", "pacheco_silva" or "janbu".
 * @param [kind] What the values are: "e" (default) or "strain".
 * @param [picks] Range of two columns, names and stresses, of picks by hand, as in PRECONSOLIDATION.
 * @param [initial_value] Value before the first load (e0, or a strain), for Pacheco Silva's construction; left out, the value of a first row without stress, or the first value.
 * @param [language] Language of the answer: "English" (default) or "Deutsch".
 * @returns Rows of label, x (stress) and y.
 * @example =CLAY.PRECONSOLIDATION_LINES(C2:C18,D2:D18,"pacheco_silva")
 * @refuses =CLAY.PRECONSOLIDATION_LINES(C2:C18,D2:D18,"guess")
 * @source Those of the methods, as in PRECONSOLIDATION.
 * @picture bilog
 * @picture intersection
 * @picture pacheco_silva
 */
export function PRECONSOLIDATION_LINES(
  stresses: any[][],
  values: any[][],
  method?: any,
  kind?: any,
  picks?: any[][],
  initial_value?: any,
  language?: any,
): any[][] {
  return rowsOfLines(
    valueOf(reduceTest([stresses, values, kind], toMethod(method), picks, undefined, initial_value)).lines,
    language,
  );
}

/** Two stresses; undefined if neither is given. */
function toBetween(from: unknown, to: unknown): Between | undefined {
  const [low, high] = [toOptionalPositive(from, say`the first stress`), toOptionalPositive(to, say`the second stress`)];
  if (low === undefined && high === undefined) return undefined;
  if (low === undefined || high === undefined)
    return refuseCell(say`a slope between two stresses needs both: give the other stress too, or neither`);
  return { from: low, to: high };
}

/** An index of the curve, of its own stretch or between two stresses. It has no remark, so void ratios of no soil are refused. */
const indexOf = (
  read: typeof compressionIndex,
  test: Outcome<TestCurve>,
  from: unknown,
  to: unknown,
  picks?: any[][],
): number =>
  valueOf(
    then(test, (curve) => {
      const tooMany = voidsOfNoSoil(curve);
      return tooMany ? badInput(tooMany) : read(curve, toBetween(from, to), toCurvePicks(picks));
    }),
  ).value;

/**
 * Compression index: slope of the virgin line (the steepest consistent stretch of first loading) per log cycle of stress, or the slope between two stresses. From strain it is the compression ratio.
 * @customfunction
 * @param stresses Effective stresses at the end of each load, in test order, unloading included; any one unit.
 * @param values Void ratios, or strains as ratios with compression positive, at the end of each load.
 * @param [from] First of two stresses between which the slope is wanted, on first loading.
 * @param [to] Second of the two stresses.
 * @param [kind] What the values are: "e" (default) gives Cc; "strain" gives Cc / (1 + e0).
 * @param [picks] Range of two columns, names and stresses, of picks by hand, as in PRECONSOLIDATION: virgin_from and virgin_to choose the points of the line.
 * @returns The index, positive.
 * @example =CLAY.COMPRESSION_INDEX(C2:C18,D2:D18)
 * @example =CLAY.COMPRESSION_INDEX(C2:C18,D2:D18,400,1600)
 * @refuses =CLAY.COMPRESSION_INDEX(C2:C18,D2:D18,400)
 * @source By definition: change of void ratio per log cycle of stress on the virgin line.
 */
export function COMPRESSION_INDEX(
  stresses: any[][],
  values: any[][],
  from?: any,
  to?: any,
  kind?: any,
  picks?: any[][],
): any {
  return indexOf(compressionIndex, toTest(stresses, values, kind), from, to, picks);
}

/**
 * Recompression index per log cycle of stress: slope of the reload loops between their ends; without a loop, of the final unloading; without either, of initial loading (COMPRESSION_INDICES says which). Or the slope between two stresses.
 * @customfunction
 * @param stresses Effective stresses at the end of each load, in test order, unloading included; any one unit.
 * @param values Void ratios, or strains as ratios with compression positive, at the end of each load.
 * @param [from] First of two stresses between which the slope is wanted, on a reload branch or on first loading.
 * @param [to] Second of the two stresses.
 * @param [kind] What the values are: "e" (default) gives Cr; "strain" gives Cr / (1 + e0).
 * @param [picks] Range of two columns, names and stresses, of picks by hand, as in PRECONSOLIDATION: loop_from and loop_to choose the line through a loop.
 * @returns The index, positive.
 * @example =CLAY.RECOMPRESSION_INDEX(C2:C18,D2:D18)
 * @refuses =CLAY.RECOMPRESSION_INDEX(C2:C18,D2:D18,400)
 * @source By definition: change of void ratio per log cycle of stress on reloading. No standard was found that states which stretch of a loop to take.
 */
export function RECOMPRESSION_INDEX(
  stresses: any[][],
  values: any[][],
  from?: any,
  to?: any,
  kind?: any,
  picks?: any[][],
): any {
  return indexOf(recompressionIndex, toTest(stresses, values, kind), from, to, picks);
}

/**
 * Swelling index: slope of the final unloading per log cycle of stress; if the test has none, slope of the unloading of its loops. Or the slope between two stresses.
 * @customfunction
 * @param stresses Effective stresses at the end of each load, in test order, unloading included; any one unit.
 * @param values Void ratios, or strains as ratios with compression positive, at the end of each load.
 * @param [from] First of two stresses between which the slope is wanted, on an unloading branch.
 * @param [to] Second of the two stresses.
 * @param [kind] What the values are: "e" (default) gives Cs; "strain" gives Cs / (1 + e0).
 * @param [picks] Range of two columns, names and stresses, of picks by hand, as in PRECONSOLIDATION: unloading_from and unloading_to choose the points of the line.
 * @returns The index, positive.
 * @example =CLAY.SWELLING_INDEX(C2:C18,D2:D18)
 * @refuses =CLAY.SWELLING_INDEX(C2:C8,D2:D8)
 * @source By definition: change of void ratio per log cycle of stress on unloading. Schmertmann (1955) takes the mean slope of the rebound.
 */
export function SWELLING_INDEX(
  stresses: any[][],
  values: any[][],
  from?: any,
  to?: any,
  kind?: any,
  picks?: any[][],
): any {
  return indexOf(swellingIndex, toTest(stresses, values, kind), from, to, picks);
}

/**
 * Compression, recompression and swelling index together, each as void ratio and as strain per log cycle, with the points that each was taken through.
 * @customfunction
 * @param stresses Effective stresses at the end of each load, in test order, unloading included; any one unit.
 * @param values Void ratios, or strains as ratios with compression positive, at the end of each load.
 * @param [item] One of Cc, Cr, Cs, Cc_ratio, Cr_ratio, Cs_ratio, remark; left out, the whole table spills.
 * @param [kind] What the values are: "e" (default) or "strain".
 * @param [initial_void_ratio] Void ratio at zero strain; for void ratios, the first one if left out.
 * @param [picks] Range of two columns, names and stresses, of picks by hand, as in PRECONSOLIDATION.
 * @returns A table of label, value and basis; or the one item. The ratios are over 1 + initial void ratio.
 * @example =CLAY.COMPRESSION_INDICES(C2:C18,D2:D18)
 * @refuses =CLAY.COMPRESSION_INDICES(C2:C8,D2:D8,"Cs")
 * @source Those of COMPRESSION_INDEX, RECOMPRESSION_INDEX and SWELLING_INDEX.
 */
export function COMPRESSION_INDICES(
  stresses: any[][],
  values: any[][],
  item?: any,
  kind?: any,
  initial_void_ratio?: any,
  picks?: any[][],
): any[][] {
  const cells = toTest(stresses, values, kind);
  const test = valueOf(cells);
  valueOf(branches(test));
  const byHand = toCurvePicks(picks);
  const e0 = initialVoidRatio(test, toOptionalPositive(initial_void_ratio, say`the initial void ratio`));
  const found: readonly (readonly [string, Outcome<Index>])[] = [
    ["Cc", compressionIndex(test, undefined, byHand)],
    ["Cr", recompressionIndex(test, undefined, byHand)],
    ["Cs", swellingIndex(test, undefined, byHand)],
  ];
  const per = { e: test.kind === "e" ? 1 : e0 && 1 + e0, strain: test.kind === "e" ? e0 && 1 / (1 + e0) : 1 };
  const items = (suffix: string, scale: number | undefined): Item[] =>
    found.map(([label, index]) =>
      line(
        label + suffix,
        index.ok && scale ? index.value.value * scale : undefined,
        index.ok ? index.value.basis : index.reason,
        badInput(index.ok ? say`give the initial void ratio` : index.reason),
      ),
    );
  const remarks = distinct([
    ...remarksOf(cells),
    ...found.flatMap(([label, index]) => (index.ok ? index.remarks : [say`no ${verbatim(label)}: ${index.reason}`])),
  ]);
  return answer([...items("", per.e), ...items("_ratio", per.strain)], remarks, item);
}

function toLoad(from: any, to: any, valueFrom: any, valueTo: any, kind: any, e0?: any): stiffness.Load {
  const of = toKind(kind);
  const [before, after] =
    of === "e"
      ? [say`the void ratio before`, say`the void ratio after`]
      : [say`the strain before`, say`the strain after`];
  const toValue = of === "e" ? toPositive : toNumber;
  return {
    stress: [toNumber(from, say`the stress before`), toPositive(to, say`the stress after`)],
    value: [toValue(valueFrom, before), toValue(valueTo, after)],
    kind: of,
    initialVoidRatio: toOptionalPositive(e0, say`the initial void ratio`),
  };
}

/**
 * Coefficient of compressibility av over one load: fall of void ratio over rise of stress.
 * @customfunction
 * @param stress_from Effective stress before the load.
 * @param stress_to Effective stress after it.
 * @param value_from Void ratio (or strain) before the load.
 * @param value_to Void ratio (or strain) after it.
 * @param [kind] What the values are: "e" (default) or "strain".
 * @param [initial_void_ratio] Void ratio at zero strain; needed for strain.
 * @returns av, per unit of the stresses given.
 * @example =CLAY.COMPRESSIBILITY(200,400,1.2361,1.0675)
 * @refuses =CLAY.COMPRESSIBILITY(200,200,1.2361,1.0675)
 * @source By definition: av = fall of void ratio over rise of stress.
 */
export function COMPRESSIBILITY(
  stress_from: any,
  stress_to: any,
  value_from: any,
  value_to: any,
  kind?: any,
  initial_void_ratio?: any,
): any {
  const load = toLoad(stress_from, stress_to, value_from, value_to, kind, initial_void_ratio);
  return valueOf(stiffness.coefficientOfCompressibility(load));
}

const REFERENCES = ["start", "initial"] as const;
const toReference = (reference: unknown) => toChoice(reference, say`the reference height`, REFERENCES, "start");

/**
 * Coefficient of volume compressibility mv over one load: strain of the load over rise of stress. The strain is referred to the height at the start of the load (British practice) unless the initial height is asked for.
 * @customfunction
 * @param stress_from Effective stress before the load.
 * @param stress_to Effective stress after it.
 * @param value_from Void ratio (or strain) before the load.
 * @param value_to Void ratio (or strain) after it.
 * @param [kind] What the values are: "e" (default) or "strain".
 * @param [reference] Height that the strain is referred to: "start" of the load (default) or "initial" height of the specimen.
 * @param [initial_void_ratio] Void ratio at zero strain; needed for void ratios on the initial height.
 * @param [stress_unit] Unit of the stresses: kPa (default), MPa, psf, ksf, tsf, psi, kgf/cm2, bar.
 * @param [mv_unit] Unit of mv: m2/MN (default), m2/kN, 1/kPa, 1/MPa, ft2/ton, 1/tsf, 1/psf, 1/ksf, cm2/kgf.
 * @returns mv in the mv unit.
 * @example =CLAY.VOLUME_COMPRESSIBILITY(200,400,1.2361,1.0675)
 * @example =CLAY.VOLUME_COMPRESSIBILITY(200,400,1.2361,1.0675,"e","initial",1.45)
 * @refuses =CLAY.VOLUME_COMPRESSIBILITY(200,400,1.2361,1.3)
 * @source By definition: mv = strain over rise of stress; on the height at the start of the load as in BS 1377-5.
 */
export function VOLUME_COMPRESSIBILITY(
  stress_from: any,
  stress_to: any,
  value_from: any,
  value_to: any,
  kind?: any,
  reference?: any,
  initial_void_ratio?: any,
  stress_unit?: any,
  mv_unit?: any,
): any {
  const load = toLoad(stress_from, stress_to, value_from, value_to, kind, initial_void_ratio);
  const mv = valueOf(stiffness.volumeCompressibility(load, toReference(reference)));
  const inKilopascal = mv / convert(1, "stress", toUnit(stress_unit, "stress", "kPa"), "kPa");
  return convert(inKilopascal, "mv", "1/kPa", toUnit(mv_unit, "mv", "m2/MN"));
}

/**
 * Constrained modulus M = 1 / mv over one load, in the unit of the stresses. The strain is referred to the height at the start of the load unless the initial height is asked for.
 * @customfunction
 * @param stress_from Effective stress before the load.
 * @param stress_to Effective stress after it.
 * @param value_from Void ratio (or strain) before the load.
 * @param value_to Void ratio (or strain) after it.
 * @param [kind] What the values are: "e" (default) or "strain".
 * @param [reference] Height that the strain is referred to: "start" of the load (default) or "initial" height of the specimen.
 * @param [initial_void_ratio] Void ratio at zero strain; needed for void ratios on the initial height.
 * @returns The modulus, in the unit of the stresses.
 * @example =CLAY.CONSTRAINED_MODULUS(200,400,1.2361,1.0675)
 * @refuses =CLAY.CONSTRAINED_MODULUS(200,400,1.2361,1.0675,"e","initial")
 * @source By definition: M = 1 / mv.
 */
export function CONSTRAINED_MODULUS(
  stress_from: any,
  stress_to: any,
  value_from: any,
  value_to: any,
  kind?: any,
  reference?: any,
  initial_void_ratio?: any,
): any {
  const load = toLoad(stress_from, stress_to, value_from, value_to, kind, initial_void_ratio);
  return valueOf(stiffness.constrainedModulus(load, toReference(reference)));
}

/**
 * Hydraulic conductivity from consolidation: k = cv mv times the unit weight of water (9.807 kN/m3). cv and mv must be of the same load. No substitute for a direct test.
 * @customfunction
 * @param cv Coefficient of consolidation, in the cv unit.
 * @param mv Coefficient of volume compressibility, in the mv unit.
 * @param [cv_unit] Unit of cv: m2/yr (default), mm2/min, cm2/s, cm2/min, m2/s, in2/min, ft2/day, ft2/yr.
 * @param [mv_unit] Unit of mv: m2/MN (default), m2/kN, 1/kPa, 1/MPa, ft2/ton, 1/tsf, 1/psf, 1/ksf, cm2/kgf.
 * @param [conductivity_unit] Unit of the result: m/s (default), cm/s, m/yr, ft/day, ft/yr.
 * @returns The hydraulic conductivity.
 * @example =CLAY.CONDUCTIVITY(1.4,0.377)
 * @refuses =CLAY.CONDUCTIVITY(1.4,0.377,"m2/week")
 * @source Terzaghi's theory: k = cv mv times the unit weight of water.
 */
export function CONDUCTIVITY(cv: any, mv: any, cv_unit?: any, mv_unit?: any, conductivity_unit?: any): any {
  const k = stiffness.conductivity(
    convert(toPositive(cv, say`cv`), "cv", toUnit(cv_unit, "cv", "m2/yr"), "m2/s"),
    convert(toPositive(mv, say`mv`), "mv", toUnit(mv_unit, "mv", "m2/MN"), "m2/kN"),
  );
  return convert(k, "conductivity", "m/s", toUnit(conductivity_unit, "conductivity", "m/s"));
}

/**
 * Overconsolidation ratio: preconsolidation stress over in-situ effective vertical stress.
 * @customfunction
 * @param preconsolidation_stress Preconsolidation stress.
 * @param in_situ_stress In-situ effective vertical stress, in the same unit.
 * @returns The ratio.
 * @example =CLAY.OCR(120,62)
 * @refuses =CLAY.OCR(120,0)
 * @source By definition: preconsolidation stress over in-situ effective vertical stress.
 */
export function OCR(preconsolidation_stress: any, in_situ_stress: any): any {
  return valueOf(
    overconsolidationRatio(
      toPositive(preconsolidation_stress, say`the preconsolidation stress`),
      toPositive(in_situ_stress, say`the in-situ stress`),
    ),
  );
}

/** The initial void ratio of a test, given or read from the test; for strain it must be given. */
function neededVoidRatio(test: TestCurve, argument: unknown): number {
  const e0 = initialVoidRatio(test, toOptionalPositive(argument, say`the initial void ratio`));
  return e0 ?? refuseCell(say`strains need the initial void ratio too: give it`);
}

/**
 * Field compression curve by Schmertmann (1955): from the in-situ point parallel to the recompression (reload loop, else final unloading) to the preconsolidation stress, then straight to the laboratory virgin line at a share of e0.
 * @customfunction
 * @param stresses Effective stresses at the end of each load, in test order, unloading included; any one unit.
 * @param values Void ratios, or strains as ratios with compression positive, at the end of each load.
 * @param in_situ_stress In-situ effective vertical stress.
 * @param [preconsolidation_stress] Preconsolidation stress; by Casagrande's construction if left out.
 * @param [factor] Share of the initial void ratio at which field and laboratory lines meet; 0.42 if left out.
 * @param [initial_void_ratio] In-situ void ratio; for void ratios, the first one if left out.
 * @param [kind] What the values are: "e" (default) or "strain".
 * @param [picks] Range of two columns, names and stresses, of picks by hand, as in PRECONSOLIDATION: the virgin line and the recompression follow them.
 * @param [recompression_index] Recompression index by the kind of the values, in the place of that of the test.
 * @param [refusal] "error" (default): a refusal is an error of the cell; "words": the remark gives the reason, and the rest is blank.
 * @param [language] Language of the answer: "English" (default) or "Deutsch".
 * @returns Rows of label, stress and void ratio along the field curve; then Cc and Cr of the field curve, with the branch that Cr was read from, and the remark.
 * @example =CLAY.FIELD_CURVE(C2:C18,D2:D18,62)
 * @refuses =CLAY.FIELD_CURVE(C2:C18,D2:D18,0)
 * @source Schmertmann, J.H., 1955, The undisturbed consolidation behavior of clay, Trans. ASCE 120, 1201-1233; 0.42 is his share of the initial void ratio, some manuals use 0.40.
 */
export function FIELD_CURVE(
  stresses: any[][],
  values: any[][],
  in_situ_stress: any,
  preconsolidation_stress?: any,
  factor?: any,
  initial_void_ratio?: any,
  kind?: any,
  picks?: any[][],
  recompression_index?: any,
  refusal?: any,
  language?: any,
): any[][] {
  const rows = ["Cc", "Cr", "meets the laboratory line"];
  return toldOrThrown(refusal, { item: language, rows }, () => {
    const test = valueOf(toTest(stresses, values, kind));
    const outcome = fieldCurve({
      test,
      picks: toCurvePicks(picks),
      recompressionIndex: toOptionalPositive(recompression_index, say`the recompression index`),
      inSituStress: toPositive(in_situ_stress, say`the in-situ stress`),
      initialVoidRatio: neededVoidRatio(test, initial_void_ratio),
      preconsolidationStress: toOptionalPositive(preconsolidation_stress, say`the preconsolidation stress`),
      factor: toOptionalPositive(factor, say`the factor`),
    });
    const { points, compressionIndex: Cc, recompression: Cr } = valueOf(outcome);
    return [
      ...rowsOfLines(
        points.map(({ label, stress, voidRatio }) => ({ label, points: [[stress, voidRatio]] })),
        language,
      ),
      ["Cc", Cc, ""],
      ["Cr", Cr?.value ?? "", Cr ? told(Cr.basis, languageAsked(language, refusal)) : ""],
      ...answer([], remarksOf(outcome), language, refusal),
    ];
  });
}

/**
 * Sample quality from the volume change on reloading to the in-situ stress: class by Lunne et al. (1997) from the change of void ratio, and specimen quality designation A to E by volumetric strain.
 * @customfunction
 * @param stresses Effective stresses at the end of each load, in test order, unloading included; any one unit.
 * @param values Void ratios, or strains as ratios with compression positive, at the end of each load.
 * @param in_situ_stress In-situ effective vertical stress.
 * @param [preconsolidation_stress] Preconsolidation stress, for the overconsolidation ratio; by Casagrande's construction if left out.
 * @param [initial_void_ratio] Void ratio before loading; for void ratios, the first one if left out.
 * @param [kind] What the values are: "e" (default) or "strain".
 * @param [item] One of de_e0, class, strain, strain_class, OCR, remark; left out, the whole table spills.
 * @param [refusal] "error" (default): a refusal is an error of the cell; "words": the remark gives the reason, and the rest is blank.
 * @returns A table of label, value and unit; or the one item. A text is in the language of the word that asks for it, as "remark" in English, "Bemerkung" in German; "Deutsch" asks for the whole table in German.
 * @example =CLAY.SAMPLE_QUALITY(C2:C18,D2:D18,62)
 * @example =CLAY.SAMPLE_QUALITY(C2:C18,D2:D18,62,,,,"class")
 * @refuses =CLAY.SAMPLE_QUALITY(C2:C18,D2:D18,1)
 * @source By change of void ratio: Lunne, T., Berre, T., Strandvik, S., 1997, Sample disturbance effects in soft low plastic Norwegian clay, Table 1.
 * @source By volumetric strain: Andresen and Kolstad (1979), as in Terzaghi, Peck and Mesri (1996), from memory.
 */
export function SAMPLE_QUALITY(
  stresses: any[][],
  values: any[][],
  in_situ_stress: any,
  preconsolidation_stress?: any,
  initial_void_ratio?: any,
  kind?: any,
  item?: any,
  refusal?: any,
): any[][] {
  return toldOrThrown(refusal, { item }, () => {
    const inSitu = toPositive(in_situ_stress, say`the in-situ stress`);
    const test = valueOf(toTest(stresses, values, kind));
    const typed = toOptionalPositive(preconsolidation_stress, say`the preconsolidation stress`);
    const read = typed ? given({ stress: typed }) : reduceTest([stresses, values, kind], "casagrande");
    const yieldStress = read.ok && read.value.stress;
    const e0 = initialVoidRatio(test, toOptionalPositive(initial_void_ratio, say`the initial void ratio`));
    const ocr = yieldStress ? yieldStress / inSitu : undefined;
    const outcome = sampleQuality(test, inSitu, e0, ocr);
    const { change, lunneClass, strain, strainClass } = valueOf(outcome);
    const noYield = read.ok ? E0_NEEDED : badInput(read.reason);
    const noClass = strainClass ? noYield : notApplicable(SWELLED);
    const items: Item[] = [
      line("de_e0", change, "", E0_NEEDED),
      line("class", lunneClass && LUNNE_NAMES[lunneClass], "Lunne et al. (1997)", noClass),
      line("strain", strain),
      line("strain_class", strainClass && asTyped(strainClass), "A to E by volumetric strain", noClass),
      line("OCR", ocr, yieldStress ? say`preconsolidation stress ${shown(yieldStress)}` : "", noYield),
    ];
    return answer(items, remarksOf(outcome), item, refusal);
  });
}

/**
 * Ratio C-alpha / Cc, with the kind of soil whose usual ratio is nearest (Mesri and Godlewski 1977).
 * @customfunction
 * @param c_alpha Secondary compression per log cycle of time.
 * @param compression_index Slope of the compression curve at the same stress, on the same basis: both void ratio, or both strain.
 * @param [item] One of ratio, soil, remark; left out, the whole table spills.
 * @param [soil] Kind of the soil tested, whose usual ratio the remark compares with: "granular soil", "shale or mudstone", "inorganic clay or silt", "organic clay or silt" or "peat"; all kinds if left out.
 * @returns A table of label, value and unit; or the one item. A text is in the language of the word that asks for it, as "remark" in English, "Bemerkung" in German; "Deutsch" asks for the whole table in German.
 * @example =CLAY.C_ALPHA_RATIO(0.022,0.56)
 * @refuses =CLAY.C_ALPHA_RATIO(0.022,0)
 * @source Mesri and Godlewski (1977), as tabulated in UFC 3-220-10 (2022), Table 5-6.
 */
export function C_ALPHA_RATIO(c_alpha: any, compression_index: any, item?: any, soil?: any): any[][] {
  const kind = isNoWord(soil) ? undefined : toChoice(soil, say`the soil`, CREEP_SOILS, firstOf(CREEP_SOILS));
  const outcome = creepRatio(
    toPositive(c_alpha, say`C-alpha`),
    toPositive(compression_index, say`the compression index`),
    kind,
  );
  const { ratio, soil: nearest } = valueOf(outcome);
  const items: Item[] = [
    line("ratio", ratio),
    line("soil", nearest && SOIL_NAMES[nearest], "", badInput(say`no soil has a ratio near this one`)),
  ];
  return answer(items, remarksOf(outcome), item);
}

/**
 * Factor that turns cv at the test temperature into cv at 20 C: viscosity of water at the temperature over viscosity at 20 C.
 * @customfunction
 * @param temperature Temperature of the test, degrees Celsius, above 0 and up to 60.
 * @returns cv at 20 C over cv at the temperature.
 * @example =CLAY.TEMPERATURE_FACTOR(24)
 * @refuses =CLAY.TEMPERATURE_FACTOR(75)
 * @source Viscosity of water by Kestin, Sokolov and Wakeham, 1978, J. Phys. Chem. Ref. Data 7(3), 941-948, formula from memory.
 */
export function TEMPERATURE_FACTOR(temperature: any): any {
  return valueOf(temperatureFactor(toNumber(temperature, say`the temperature`)));
}
