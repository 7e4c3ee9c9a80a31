/** Worksheet functions of loading: force to stress, schedules, readings to deformation and strain. */
import { say, type Message } from "../reduction/message";
import { convert, convertUnit } from "../reduction/units";
import * as reduce from "../reduction/loading";
import { column, inShapeOf, valueOf } from "./answer";
import {
  refuseCell,
  toMillimetres,
  toNumber,
  toOptionalNonZero,
  toOptionalPositive,
  toOptionalWord,
  toPair,
  toPositive,
  toSeries,
  toUnit,
} from "./cells";

/**
 * Axial stress from a force, or from a mass on the hanger: lever ratio times force over the area of the specimen.
 * @customfunction
 * @param force Force, or mass on the hanger of a lever frame, in the force unit.
 * @param diameter Diameter of the specimen, in the length unit.
 * @param [force_unit] "N" (default), "kN", "kg" (its weight at standard gravity) or "lbf".
 * @param [stress_unit] "kPa" (default), "MPa", "psf", "ksf", "tsf" (2000 lbf), "psi", "kgf/cm2" or "bar".
 * @param [length_unit] "mm" (default), "cm", "m", "in" or "ft".
 * @param [lever_ratio] Lever ratio of the beam, such as 10; 1 if left out.
 * @returns The stress in the stress unit.
 * @example =CLAY.STRESS(10,63.5,"kg","kPa","mm",10)
 * @refuses =CLAY.STRESS(10,63.5,"stone")
 * @source By definition: force over area; standard gravity is 9.80665 m/s2.
 */
export function STRESS(
  force: any,
  diameter: any,
  force_unit?: any,
  stress_unit?: any,
  length_unit?: any,
  lever_ratio?: any,
): any {
  const newtons = convert(toPositive(force, say`the force`), "force", toUnit(force_unit, "force", "N"), "N");
  const stress = reduce.axialStress(
    newtons,
    toMillimetres(diameter, say`the diameter`, toUnit(length_unit, "length", "mm")),
    toOptionalPositive(lever_ratio, say`the lever ratio`),
  );
  return convert(valueOf(stress), "stress", "kPa", toUnit(stress_unit, "stress", "kPa"));
}

/**
 * Stresses of a test, loading and unloading, as a column. Loading stops at the last stress that is not above the maximum.
 * @customfunction
 * @param first First stress, in any unit.
 * @param maximum Greatest stress, in the same unit; never exceeded.
 * @param [ratio] Load increment ratio: 1 (default) doubles the stress, 0.5 adds half of it.
 * @param [unload_to] Stress at the end of unloading; left out, there is no unloading.
 * @param [unload_steps] Number of unloading steps, in equal ratios; left out, each step is a quarter of the one before.
 * @returns The stresses, one in each row.
 * @example =CLAY.LOAD_SCHEDULE(12.5,800,1,50)
 * @refuses =CLAY.LOAD_SCHEDULE(800,12.5)
 * @source ASTM D2435 and EM 1110-2-1906, from memory: each stress doubles the one before; unloading in quarters.
 */
export function LOAD_SCHEDULE(first: any, maximum: any, ratio?: any, unload_to?: any, unload_steps?: any): any[][] {
  const stresses = reduce.loadSchedule({
    first: toPositive(first, say`the first stress`),
    maximum: toPositive(maximum, say`the maximum stress`),
    ratio: toOptionalPositive(ratio, say`the load increment ratio`),
    unloadTo: toOptionalPositive(unload_to, say`the stress to unload to`),
    unloadSteps: toOptionalPositive(unload_steps, say`the number of unloading steps`),
  });
  return column(valueOf(stresses));
}

/**
 * Reading times of one increment, in minutes, spaced nearly evenly on a log scale, as a column.
 * @customfunction
 * @param [last] Last reading, minutes; 1440 (24 hours) if left out.
 * @param [first] First reading, minutes; 0.1 (6 seconds) if left out.
 * @returns The times in minutes, one in each row.
 * @example =CLAY.READING_TIMES(60)
 * @refuses =CLAY.READING_TIMES(60,120)
 * @source The list of ASTM D2435, from memory, in round clock times.
 */
export function READING_TIMES(last?: any, first?: any): any[][] {
  const times = reduce.readingTimes(
    toOptionalPositive(last, say`the last time`),
    toOptionalPositive(first, say`the first time`),
  );
  return column(valueOf(times));
}

/**
 * Deflection of the apparatus at a stress, interpolated on the logarithm of stress between calibrated stresses.
 * Outside the calibrated range it is #N/A. Rows without a stress or a deflection are skipped.
 * @customfunction
 * @param stress Stress, in the unit of the calibration.
 * @param calibration_stresses Stresses of the calibration run, loading only or unloading only.
 * @param calibration_deflections Deflections at those stresses.
 * @returns The deflection in the unit of the calibration.
 * @example =CLAY.APPARATUS_DEFLECTION(150,E2:E7,F2:F7)
 * @refuses =CLAY.APPARATUS_DEFLECTION(800,E2:E7,F2:F7)
 * @source Interpolation on the logarithm of stress is common practice, without a source.
 */
export function APPARATUS_DEFLECTION(
  stress: any,
  calibration_stresses: any[][],
  calibration_deflections: any[][],
): any {
  const at = toPositive(stress, say`the stress`);
  const [stresses, deflections] = toPair(
    calibration_stresses,
    say`the calibration stresses`,
    calibration_deflections,
    say`the calibration deflections`,
  );
  return valueOf(reduce.apparatusDeflection(at, stresses, deflections));
}

/**
 * Axial strain as a ratio, compression positive: deformation, less the deflection of the apparatus, over the initial height.
 * @customfunction
 * @param deformation Deformation since the start of the test, compression positive; a blank cell counts as 0.
 * @param initial_height Height of the specimen at the start, in the same unit.
 * @param [apparatus_deflection] Deflection of the apparatus at this stress, in the same unit; 0 if left out.
 * @returns The strain as a ratio.
 * @example =CLAY.STRAIN(4.014,25.4,0.048)
 * @refuses =CLAY.STRAIN(4.014,"25,4")
 * @source By definition: change of height over the initial height.
 */
export function STRAIN(deformation: any, initial_height: any, apparatus_deflection?: any): any {
  return valueOf(
    reduce.strain(
      toNumber(deformation, say`the deformation`),
      toPositive(initial_height, say`the initial height`),
      toOptionalNonZero(apparatus_deflection, say`the apparatus deflection`),
    ),
  );
}

/**
 * Dial or transducer readings to deformation, compression positive: (reading - zero reading) times factor.
 * Spills in the shape of the readings; a blank reading stays blank.
 * @customfunction
 * @param readings A column or a row of readings.
 * @param zero_reading Reading at the start of the test, before any compression; a blank cell counts as 0.
 * @param [factor] Length of one division; negative for a dial whose reading falls as the specimen compresses; 1 if left out.
 * @returns The deformations.
 * @example =CLAY.DEFORMATION(B2:B5,0.8)
 * @example =CLAY.DEFORMATION(B2:B5,5,-1)
 * @refuses =CLAY.DEFORMATION(A2:B5,0.8)
 * @source By definition: the difference of two readings, times the length of a division.
 */
export function DEFORMATION(readings: any[][], zero_reading: any, factor?: any): any[][] {
  const deformations = reduce.deformations(
    toSeries(readings, say`the readings`),
    toNumber(zero_reading, say`the zero reading`),
    toOptionalNonZero(factor, say`the factor`),
  );
  return inShapeOf(readings, valueOf(deformations));
}

/**
 * Converts a value from one unit to another: stress, length, cv, density, mv or force.
 * @customfunction
 * @param value The value; a blank cell counts as 0.
 * @param from Its unit, such as "tsf", "in", "ft2/day", "pcf" or "1/tsf".
 * @param to The unit wanted, such as "kPa", "mm", "m2/yr", "Mg/m3" or "m2/MN".
 * @returns The value in the unit wanted.
 * @example =CLAY.CONVERT_UNIT(1,"tsf","kPa")
 * @example =CLAY.CONVERT_UNIT(1.4,"m2/yr","ft2/day")
 * @refuses =CLAY.CONVERT_UNIT(1,"tsf","mm")
 * @source Definitions: inch of 25.4 mm, pound-force, standard gravity, year of 365.25 days; the US ton per square foot is of 2000 lbf.
 */
export function CONVERT_UNIT(value: any, from: any, to: any): any {
  const unit = (argument: unknown, name: Message): string =>
    toOptionalWord(argument, name) ?? refuseCell(say`${name} is blank: enter a unit, such as "kPa"`);
  const given = toNumber(value, say`the value`);
  return valueOf(convertUnit(given, unit(from, say`the unit to convert from`), unit(to, say`the unit to convert to`)));
}
