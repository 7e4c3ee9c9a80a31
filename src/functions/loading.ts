/** Worksheet functions of loading: force to stress, schedules, readings to deformation and strain. */
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
 * @helpurl https://github.com/clayledger/clayledger#functions
 * @param force Force, or mass on the hanger of a lever frame, in the force unit.
 * @param diameter Diameter of the specimen, in the length unit.
 * @param [force_unit] "N" (default), "kN", "kg" (its weight at standard gravity) or "lbf".
 * @param [stress_unit] "kPa" (default), "MPa", "psf", "ksf", "tsf" (2000 lbf), "psi", "kgf/cm2" or "bar".
 * @param [length_unit] "mm" (default), "cm", "m", "in" or "ft".
 * @param [lever_ratio] Lever ratio of the beam, such as 10; 1 if left out.
 * @returns The stress in the stress unit.
 */
export function STRESS(
  force: any,
  diameter: any,
  force_unit?: any,
  stress_unit?: any,
  length_unit?: any,
  lever_ratio?: any,
): any {
  const newtons = convert(toPositive(force, "the force"), "force", toUnit(force_unit, "force", "N"), "N");
  const stress = reduce.axialStress(
    newtons,
    toMillimetres(diameter, "the diameter", toUnit(length_unit, "length", "mm")),
    toOptionalPositive(lever_ratio, "the lever ratio"),
  );
  return convert(valueOf(stress), "stress", "kPa", toUnit(stress_unit, "stress", "kPa"));
}

/**
 * Stresses of a test, loading and unloading, as a column. Loading stops at the last stress that is not above the maximum.
 * @customfunction
 * @helpurl https://github.com/clayledger/clayledger#functions
 * @param first First stress, in any unit.
 * @param maximum Greatest stress, in the same unit; never exceeded.
 * @param [ratio] Load increment ratio: 1 (default) doubles the stress, 0.5 adds half of it.
 * @param [unload_to] Stress at the end of unloading; left out, there is no unloading.
 * @param [unload_steps] Number of unloading steps, in equal ratios; left out, each step is a quarter of the one before.
 * @returns The stresses, one in each row.
 */
export function LOAD_SCHEDULE(first: any, maximum: any, ratio?: any, unload_to?: any, unload_steps?: any): any[][] {
  const stresses = reduce.loadSchedule({
    first: toPositive(first, "the first stress"),
    maximum: toPositive(maximum, "the maximum stress"),
    ratio: toOptionalPositive(ratio, "the load increment ratio"),
    unloadTo: toOptionalPositive(unload_to, "the stress to unload to"),
    unloadSteps: toOptionalPositive(unload_steps, "the number of unloading steps"),
  });
  return column(valueOf(stresses));
}

/**
 * Reading times of one increment, in minutes, spaced nearly evenly on a log scale, as a column.
 * @customfunction
 * @helpurl https://github.com/clayledger/clayledger#functions
 * @param [last] Last reading, minutes; 1440 (24 hours) if left out.
 * @param [first] First reading, minutes; 0.1 (6 seconds) if left out.
 * @returns The times in minutes, one in each row.
 */
export function READING_TIMES(last?: any, first?: any): any[][] {
  const times = reduce.readingTimes(
    toOptionalPositive(last, "the last time"),
    toOptionalPositive(first, "the first time"),
  );
  return column(valueOf(times));
}

/**
 * Deflection of the apparatus at a stress, interpolated on the logarithm of stress between calibrated stresses.
 * Outside the calibrated range it is #N/A. Rows without a stress or a deflection are skipped.
 * @customfunction
 * @helpurl https://github.com/clayledger/clayledger#functions
 * @param stress Stress, in the unit of the calibration.
 * @param calibration_stresses Stresses of the calibration run, loading only or unloading only.
 * @param calibration_deflections Deflections at those stresses.
 * @returns The deflection in the unit of the calibration.
 */
export function APPARATUS_DEFLECTION(
  stress: any,
  calibration_stresses: any[][],
  calibration_deflections: any[][],
): any {
  const at = toPositive(stress, "the stress");
  const [stresses, deflections] = toPair(
    calibration_stresses,
    "the calibration stresses",
    calibration_deflections,
    "the calibration deflections",
  );
  return valueOf(reduce.apparatusDeflection(at, stresses, deflections));
}

/**
 * Axial strain as a ratio, compression positive: deformation, less that of the apparatus, over the initial height.
 * @customfunction
 * @helpurl https://github.com/clayledger/clayledger#functions
 * @param deformation Deformation since the start of the test, compression positive; a blank cell counts as 0.
 * @param initial_height Height of the specimen at the start, in the same unit.
 * @param [apparatus_deflection] Deflection of the apparatus at this stress, in the same unit; 0 if left out.
 * @returns The strain as a ratio.
 */
export function STRAIN(deformation: any, initial_height: any, apparatus_deflection?: any): any {
  return valueOf(
    reduce.strain(
      toNumber(deformation, "the deformation"),
      toPositive(initial_height, "the initial height"),
      toOptionalNonZero(apparatus_deflection, "the apparatus deflection"),
    ),
  );
}

/**
 * Dial or transducer readings to deformation, compression positive: (reading - zero reading) times factor.
 * Spills in the shape of the readings; a blank reading stays blank.
 * @customfunction
 * @helpurl https://github.com/clayledger/clayledger#functions
 * @param readings A column or a row of readings.
 * @param zero_reading Reading at the start of the test, before any compression; a blank cell counts as 0.
 * @param [factor] Length of one division; negative for a dial whose reading falls as the specimen compresses; 1 if left out.
 * @returns The deformations.
 */
export function DEFORMATION(readings: any[][], zero_reading: any, factor?: any): any[][] {
  const deformations = reduce.deformations(
    toSeries(readings, "the readings"),
    toNumber(zero_reading, "the zero reading"),
    toOptionalNonZero(factor, "the factor"),
  );
  return inShapeOf(readings, valueOf(deformations));
}

/**
 * A value from one unit to another: stress, length, cv, density, mv or force.
 * @customfunction
 * @helpurl https://github.com/clayledger/clayledger#functions
 * @param value The value; a blank cell counts as 0.
 * @param from Its unit, such as "tsf", "in", "ft2/day", "pcf" or "1/tsf".
 * @param to The unit wanted, such as "kPa", "mm", "m2/yr", "Mg/m3" or "m2/MN".
 * @returns The value in the unit wanted.
 */
export function CONVERT_UNIT(value: any, from: any, to: any): any {
  const unit = (argument: unknown, name: string): string =>
    toOptionalWord(argument, name) ?? refuseCell(`${name} is blank: enter a unit, such as "kPa"`);
  const given = toNumber(value, "the value");
  return valueOf(convertUnit(given, unit(from, "the unit to convert from"), unit(to, "the unit to convert to")));
}
