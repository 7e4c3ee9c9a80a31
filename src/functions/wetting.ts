/** Worksheet functions of wetting: strain on wetting, collapse, swelling pressure. */
import { say, verbatim } from "../reduction/message";
import { SWELLING_METHODS, swellingPressure } from "../reduction/swelling-pressure";
import { collapse, wettingStrain } from "../reduction/wetting";
import { convert } from "../reduction/units";
import { answer, line, remarksOf, valueOf, type Item } from "./answer";
import { badInput, notApplicable } from "../reduction/outcome";
import { toChoice, toNumber, toOptionalPositive, toPair, toUnit } from "./cells";

/**
 * Strain of a specimen that is wetted under constant stress, as a ratio: positive if it collapses, negative if it swells. It refers to the height just before wetting, unless another height is given.
 * @customfunction
 * @param height_before Height just before wetting; any one unit for the heights.
 * @param height_after Height at the end of wetting, under the same stress.
 * @param [reference_height] Height that the strain is referred to, such as the initial height; the height before wetting if left out.
 * @returns The strain as a ratio, compression positive.
 * @example =CLAY.WETTING_STRAIN(19.2,18.6)
 * @example =CLAY.WETTING_STRAIN(19.2,18.6,20)
 * @refuses =CLAY.WETTING_STRAIN(19.2,1.86)
 * @source ASTM D4546 from 2008 on refers the strain to the height just before wetting (from memory); ASTM D5333 to the initial height.
 */
export function WETTING_STRAIN(height_before: any, height_after: any, reference_height?: any): any {
  return valueOf(
    wettingStrain(
      toNumber(height_before, say`the height before wetting`),
      toNumber(height_after, say`the height after wetting`),
      toOptionalPositive(reference_height, say`the reference height`),
    ),
  );
}

/**
 * Collapse potential on wetting under constant stress, referred to the initial height; if the stress is 200 kPa (2 tsf) within 5 %, also the collapse index and its class.
 * @customfunction
 * @param height_before Height just before wetting; any one unit for the heights.
 * @param height_after Height at the end of wetting, under the same stress.
 * @param initial_height Height of the specimen at the start of the test.
 * @param [stress] Stress under which it was wetted, in the stress unit; needed for the index and the class.
 * @param [item] One of potential, index, class, remark; left out, the whole table spills.
 * @param [stress_unit] Unit of the stress: kPa (default), MPa, psf, ksf, tsf, psi, kgf/cm2, bar.
 * @returns A table of label, value and unit; or the one item. Potential and index are ratios, collapse positive; the class is none, slight, moderate, moderately severe or severe.
 * @example =CLAY.COLLAPSE(19.2,18.2,20,200)
 * @example =CLAY.COLLAPSE(19.2,18.2,20,2,"class","tsf")
 * @refuses =CLAY.COLLAPSE(19.2,18.2,20,100,"index")
 * @source ASTM D5333 (withdrawn 2012); the limits of the classes from memory: 0.1, 2, 6 and 10 %.
 */
export function COLLAPSE(
  height_before: any,
  height_after: any,
  initial_height: any,
  stress?: any,
  item?: any,
  stress_unit?: any,
): any[][] {
  const unit = toUnit(stress_unit, "stress", "kPa");
  const typed = toOptionalPositive(stress, say`the stress`);
  const outcome = collapse(
    toNumber(height_before, say`the height before wetting`),
    toNumber(height_after, say`the height after wetting`),
    toNumber(initial_height, say`the initial height`),
    typed === undefined ? undefined : convert(typed, "stress", unit, "kPa"),
  );
  const found = valueOf(outcome);
  const none =
    typed === undefined
      ? badInput(say`the index is the potential at 200 kPa: give the stress`)
      : notApplicable(say`the index, and its class, are of a wetting under 200 kPa, not ${typed} ${verbatim(unit)}`);
  const items: Item[] = [
    line("potential", found.potential, "on the initial height"),
    line("index", found.index, "on the initial height, at 200 kPa", none),
    line("class", found.class && say([found.class]), "by the index, ASTM D5333", none),
  ];
  return answer(items, remarksOf(outcome), item);
}

/**
 * Swelling pressure from strains on wetting: the stress under which the soil neither swells nor compresses. If no readings bracket it, the answer is #N/A.
 * @customfunction
 * @param stresses Stresses: of several specimens in any order, or of one specimen in test order; any one unit.
 * @param strains Strains as ratios of the first height, less the deflection of the apparatus; compression positive, swell negative.
 * @param [method] "zero strain" (default): strains on wetting of several specimens. "load back": one specimen, loaded after swelling. "constant volume": one specimen, the load raised so that it does not swell.
 * @param [item] One of pressure, low, high, remark; left out, the whole table spills. Low and high are the two stresses between which it lies.
 * @returns A table of label, value and unit; or the one item. Stresses are in the unit given.
 * @example =CLAY.SWELLING_PRESSURE(R2:R5,S2:S5)
 * @example =CLAY.SWELLING_PRESSURE(T2:T7,U2:U7,"load back","pressure")
 * @refuses =CLAY.SWELLING_PRESSURE(R2:R3,S2:S3)
 * @source "zero strain", "load back": ASTM D4546, from memory. "constant volume": EM 1110-2-1906, appendix VIIIA, seen in part.
 * @source The methods do not agree: zero strain and load back read high, constant volume slightly low (Kayabali, K., Demir, S., 2011, Measurement of swelling pressure: direct method versus indirect methods, Canadian Geotechnical Journal 48, 354-364, abstract).
 */
export function SWELLING_PRESSURE(stresses: any[][], strains: any[][], method?: any, item?: any): any[][] {
  const by = toChoice(method, say`the method`, SWELLING_METHODS, "zero strain");
  const [s, strain] = toPair(stresses, say`the stresses`, strains, say`the strains`);
  const outcome = swellingPressure(s, strain, by);
  const { pressure, low, high } = valueOf(outcome);
  const items: Item[] = [
    line("pressure", pressure, "as the stresses"),
    line("low", low, "as the stresses"),
    line("high", high, "as the stresses"),
  ];
  return answer(items, remarksOf(outcome), item);
}
