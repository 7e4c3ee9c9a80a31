/** Worksheet functions of uncertainty: first order, after JCGM 100 (GUM). */
import { convert } from "../reduction/units";
import { say, type Message } from "../reduction/message";
import { firstOf } from "../reduction/numeric/lists";
import { then, type Outcome } from "../reduction/outcome";
import {
  cvUncertainty,
  strainUncertainty,
  stressUncertainty,
  timeUncertainty,
  voidRatioUncertainty,
  type HandMethod,
  type Stated,
  type Uncertain,
} from "../reduction/uncertainty";
import { T50, T90 } from "../reduction/increment/cv";
import { answer, line, remarksOf, valueOf } from "./answer";
import { isOmitted, refuseCell, toChoice, toNumber, toOptionalPositive, toPositive, toUnit } from "./cells";

/** A standard uncertainty; a blank or 0 states none. */
function toStated(value: number, u: unknown, name: Message): Stated {
  if (isOmitted(u)) return { value };
  const given = toNumber(u, say`the uncertainty of ${name}`);
  if (given < 0) return refuseCell(say`the uncertainty of ${name} is ${given}: enter a standard deviation, 0 or more`);
  return given === 0 ? { value } : { value, u: given };
}

/** A measured number with its standard uncertainty. */
const toMeasured = (value: unknown, u: unknown, name: Message, read = toPositive): Stated =>
  toStated(read(value, name), u, name);

/** The answer in the unit of the arguments, which is `scale` times the unit of the reduction. */
function laidOut(outcome: Outcome<Uncertain>, label: string, unit: string, item: unknown, scale = 1): any[][] {
  const { value, u, low, high, contributions } = valueOf(outcome);
  const first = firstOf(contributions);
  return answer(
    [
      line(label, value * scale, unit),
      line("u", u * scale, unit),
      line("low", low * scale, unit),
      line("high", high * scale, unit),
      line("largest", say`${first.input}, ${Math.round(100 * first.share)} %`),
    ],
    remarksOf(outcome),
    item,
  );
}

/**
 * Uncertainty of a void ratio, e = H A Gs rho_w / Md - 1, from standard uncertainties of its inputs (GUM, first order, independent inputs).
 * @customfunction
 * @param height Height of the specimen, in the length unit.
 * @param diameter Inside diameter of the ring, in the length unit.
 * @param ring_mass Mass of the ring, g.
 * @param ring_and_dry Mass of ring and dry soil, g.
 * @param specific_gravity Specific gravity of solids.
 * @param [u_height] Standard uncertainty of the height, in the length unit; blank states none.
 * @param [u_diameter] Standard uncertainty of the diameter, in the length unit.
 * @param [u_mass] Standard uncertainty of each weighing, g.
 * @param [u_specific_gravity] Standard uncertainty of the specific gravity.
 * @param [coverage] Coverage factor, 2 if left out.
 * @param [item] One of e, u, low, high, largest, remark; left out, the table spills.
 * @param [length_unit] "mm" (default), "cm" or "in".
 * @param [temperature] Temperature of the water, degrees Celsius, for its density; 1.000 g/cm3 if left out.
 * @returns A table of label, value and unit; or the one item. A text is in the language of the word that asks for it, as "remark" in English, "Bemerkung" in German; "Deutsch" asks for the whole table in German.
 * @example =CLAY.VOID_RATIO_UNCERTAINTY(25.4,63.5,74.36,163.67,2.72,0.01,0.02,0.01,0.01)
 * @refuses =CLAY.VOID_RATIO_UNCERTAINTY(25.4,63.5,74.36,163.67,2.72)
 * @source JCGM 100:2008 (GUM), 5.1.2 and 6.3.3.
 */
export function VOID_RATIO_UNCERTAINTY(
  height: any,
  diameter: any,
  ring_mass: any,
  ring_and_dry: any,
  specific_gravity: any,
  u_height?: any,
  u_diameter?: any,
  u_mass?: any,
  u_specific_gravity?: any,
  coverage?: any,
  item?: any,
  length_unit?: any,
  temperature?: any,
): any[][] {
  const unit = toUnit(length_unit, "length", "mm");
  const length = (value: unknown, u: unknown, name: Message): Stated => {
    const stated = toMeasured(value, u, name);
    const mm = (one: number) => convert(one, "length", unit, "mm");
    return stated.u === undefined ? { value: mm(stated.value) } : { value: mm(stated.value), u: mm(stated.u) };
  };
  const outcome = voidRatioUncertainty(
    {
      height: length(height, u_height, say`the height`),
      diameter: length(diameter, u_diameter, say`the diameter`),
      ring: toStated(toPositive(ring_mass, say`the ring`), u_mass, say`a weighing`),
      ringAndDry: toStated(toPositive(ring_and_dry, say`the ring and dry soil`), u_mass, say`a weighing`),
      specificGravity: toMeasured(specific_gravity, u_specific_gravity, say`the specific gravity`),
      temperature: toOptionalPositive(temperature, say`the temperature`),
    },
    toOptionalPositive(coverage, say`the coverage factor`),
  );
  return laidOut(outcome, "e", "", item);
}

/**
 * Uncertainty of a strain, (deformation - apparatus deflection) / initial height, from standard uncertainties of its inputs (GUM, first order, independent inputs).
 * @customfunction
 * @param deformation Measured deformation, compression positive, in the unit of the height.
 * @param initial_height Initial height of the specimen.
 * @param [u_deformation] Standard uncertainty of the deformation: the uncertainty of one reading times the root of 2, since it is the difference of two readings.
 * @param [u_height] Standard uncertainty of the initial height.
 * @param [apparatus_deflection] Deflection of the apparatus, 0 if left out.
 * @param [u_apparatus] Standard uncertainty of that deflection.
 * @param [coverage] Coverage factor, 2 if left out.
 * @param [item] One of strain, u, low, high, largest, remark; left out, the table spills.
 * @returns A table of label, value and unit; or the one item. A text is in the language of the word that asks for it, as "remark" in English, "Bemerkung" in German; "Deutsch" asks for the whole table in German.
 * @example =CLAY.STRAIN_UNCERTAINTY(4.014,25.4,0.003,0.01,0.048,0.002)
 * @refuses =CLAY.STRAIN_UNCERTAINTY(4.014,25.4,-0.003)
 * @source JCGM 100:2008 (GUM), 5.1.2 and 6.3.3.
 */
export function STRAIN_UNCERTAINTY(
  deformation: any,
  initial_height: any,
  u_deformation?: any,
  u_height?: any,
  apparatus_deflection?: any,
  u_apparatus?: any,
  coverage?: any,
  item?: any,
): any[][] {
  const apparatus = isOmitted(apparatus_deflection)
    ? undefined
    : toMeasured(apparatus_deflection, u_apparatus, say`the apparatus deflection`, toNumber);
  const outcome = strainUncertainty(
    {
      deformation: toMeasured(deformation, u_deformation, say`the deformation`, toNumber),
      initialHeight: toMeasured(initial_height, u_height, say`the initial height`),
      ...(apparatus && (apparatus.u !== undefined || apparatus.value !== 0) ? { apparatus } : {}),
    },
    toOptionalPositive(coverage, say`the coverage factor`),
  );
  return laidOut(outcome, "strain", "", item);
}

/**
 * Uncertainty of an axial stress, force / area, from the uncertainty of the force (lever included) and of the diameter (GUM, first order, independent inputs).
 * @customfunction
 * @param stress Axial stress, any unit.
 * @param diameter Diameter of the specimen, any unit.
 * @param [u_force_ratio] Relative standard uncertainty of the force, as a ratio: 0.003 for 0.3 %.
 * @param [u_diameter] Standard uncertainty of the diameter, in the unit of the diameter.
 * @param [coverage] Coverage factor, 2 if left out.
 * @param [item] One of stress, u, low, high, largest, remark; left out, the table spills.
 * @returns A table of label, value and unit, in the unit of the stress; or the one item.
 * @example =CLAY.STRESS_UNCERTAINTY(400,63.5,0.003,0.02)
 * @refuses =CLAY.STRESS_UNCERTAINTY(400,63.5)
 * @source JCGM 100:2008 (GUM), 5.1.2 and 6.3.3.
 */
export function STRESS_UNCERTAINTY(
  stress: any,
  diameter: any,
  u_force_ratio?: any,
  u_diameter?: any,
  coverage?: any,
  item?: any,
): any[][] {
  const value = toPositive(stress, say`the stress`);
  // A force of 1 N stands for any force: the calculation is relative.
  const outcome = stressUncertainty(
    {
      force: toStated(1, u_force_ratio, say`the force`),
      diameter: toMeasured(diameter, u_diameter, say`the diameter`),
    },
    toOptionalPositive(coverage, say`the coverage factor`),
  );
  return laidOut(outcome, "stress", "", item, outcome.ok ? value / outcome.value.value : 1);
}

/**
 * Uncertainty of cv by a hand construction: from the readings (the 95 % interval of FIT_TIME on the same readings, widened for the method) and from the height. The interval is cv divided and multiplied by a factor.
 * @customfunction
 * @param cv cv by the construction, any unit.
 * @param method "log time" (default) or "root time".
 * @param fit_low FIT_TIME's cv_low on the same readings.
 * @param fit_high FIT_TIME's cv_high on the same readings.
 * @param height Height of the specimen at the middle of the increment, any unit.
 * @param [u_height] Standard uncertainty of that height, in the unit of the height.
 * @param [coverage] Coverage factor, 2 if left out.
 * @param [item] One of cv, u, low, high, largest, remark; left out, the table spills.
 * @returns A table of label, value and unit, in the unit of cv; or the one item.
 * @example =CLAY.CV_UNCERTAINTY(1.4,"log time",1.35,1.45,22.3,0.02)
 * @refuses =CLAY.CV_UNCERTAINTY(1.4,"log time",1.45,1.35,22.3)
 * @source JCGM 100:2008 (GUM), 5.1.2 and 6.3.3; the uncertainty from the readings is the 95 % interval of FIT_TIME.
 */
export function CV_UNCERTAINTY(
  cv: any,
  method: any,
  fit_low: any,
  fit_high: any,
  height: any,
  u_height?: any,
  coverage?: any,
  item?: any,
): any[][] {
  const value = toPositive(cv, say`cv`);
  const by = toChoice<HandMethod>(method, say`the method`, ["log time", "root time"], "log time");
  const low = toPositive(fit_low, say`the low end of the fit's interval`);
  const high = toPositive(fit_high, say`the high end of the fit's interval`);
  const thickness = toMeasured(height, u_height, say`the height`);
  const outcome = then(timeUncertainty(by, low, high), (u) =>
    // A time of 1 min stands for any time: the calculation is relative.
    cvUncertainty(
      { timeFactor: by === "log time" ? T50 : T90, time: { value: 1, u }, height: thickness, drainage: "double" },
      toOptionalPositive(coverage, say`the coverage factor`),
    ),
  );
  return laidOut(outcome, "cv", "", item, outcome.ok ? value / outcome.value.value : 1);
}
