/**
 * Water of the test: its density by temperature, and the salt of the pore water, which stays in the soil when it is
 * dried.
 */
import { say, verbatim, type Message } from "./message";
import { badInput, figure, firstNotPositive, given, type Outcome, type Refusal } from "./outcome";

/**
 * Density of water, Mg/m3, as hand calculations use it (0.9982 at 20 C is exact; functions take the density as an
 * argument).
 */
export const WATER_DENSITY = 1.0;

/** Refuses a number that is not a temperature of a laboratory, degrees C; undefined if it is one. */
export const notLaboratory = (temperature: number): Refusal | undefined =>
  temperature > 0 && temperature <= 60
    ? undefined
    : badInput(say`the temperature is ${temperature}: give degrees Celsius above 0 and up to 60`);

/**
 * Kell's constants: the coefficients of the powers of t above the fraction line, and the one below it. Densities in
 * kg/m3, t in degrees C.
 */
const KELL = {
  above: [999.83952, 16.945176, -7.9870401e-3, -46.170461e-6, 105.56302e-9, -280.54253e-12],
  below: 16.87985e-3,
} as const;

/**
 * Density of water free of air at atmospheric pressure, Mg/m3, from its temperature in degrees C. Source: Kell, G.S.
 * (1975), "Density, thermal expansivity, and compressibility of liquid water from 0 to 150 C", J. Chem. Eng. Data
 * 20(1), 97-105. One public page prints the constant below the line with two digits swapped (16.897850e-3), which gives
 * 997.94 kg/m3 at 20 C. Without a temperature WATER_DENSITY. Refuses a temperature that no laboratory has: it must be above 0
 * and up to 60 C.
 * @example waterDensity(20) // 0.9982
 * @example waterDensity(100) // refused: the temperature is 100: give degrees Celsius above 0 and up to 60
 */
export function waterDensity(temperature: number | undefined): Outcome<number> {
  if (temperature === undefined) return given(WATER_DENSITY);
  const fault = notLaboratory(temperature);
  if (fault) return fault;
  const above = KELL.above.reduce((sum, constant, power) => sum + constant * temperature ** power, 0);
  return given(above / (1 + KELL.below * temperature) / 1000);
}

/** No pore water holds a greater share of salt, by mass: a saturated solution of common salt (from memory). */
const SATURATED = 0.26;

/**
 * By how much salt raises the density of water, Mg/m3 per unit of salt content. Source: sea water of salt content 0.035
 * has 1.024 Mg/m3 at laboratory temperature (IODP Proceedings 330, Table T9), water without salt 0.9975 at 23 C (Kell
 * 1975).
 */
const HEAVIER = (1.024 - 0.9975) / 0.035;

/**
 * Density of pore water, Mg/m3, from the density of water without salt and the salt content, a ratio by mass of pore
 * water.
 */
export const poreWaterDensity = (water: number, saltContent: number): number => water + HEAVIER * saltContent;

/** Refuses a number that is not a salt content; undefined if it is one. */
export function notSaltContent(saltContent: number): Refusal | undefined {
  if (saltContent > 0 && saltContent <= SATURATED) return undefined;
  const remedy = say`the salt content is ${figure(saltContent)}: enter the mass of salt over that of the pore water as a ratio, 0.035 for sea water`;
  return badInput(saltContent > 1 ? inThousands(remedy, saltContent, "g/kg") : remedy);
}

/** A remedy for a number that was typed in a unit a thousand times as small, with what to enter. */
export const inThousands = (remedy: Message, typed: number, unit: string): Message =>
  say`${remedy}, so ${figure(typed / 1000)} for ${figure(typed)} ${verbatim(unit)}`;

/** The parts of a wet soil whose pore water holds salt, masses in one unit. */
export interface SaltCorrection {
  /** Pore water with its salt. */
  readonly poreWater: number;
  /** Salt, which stays in the soil when it is dried. */
  readonly salt: number;
  /** Solids: the dry soil without the salt. */
  readonly solids: number;
  /** Pore water over solids. */
  readonly w: number;
  /** Loss of mass over dry soil, as weighed. */
  readonly wUncorrected: number;
}

/**
 * Takes the salt out of the dry mass: pore water = (wet - dry) / (1 - s), salt = pore water - (wet - dry), solids = wet
 * - pore water, with s the salt content by mass of pore water. Source: IODP Proceedings 330, Table T9. Masses of the
 * soil alone. Refuses a wet mass not above the dry mass, an impossible salt content, and more salt than dry soil.
 * @example saltCorrection(60, 40, 0.035).value // { poreWater: 20.73, salt: 0.7254, solids: 39.27, w: 0.5277, wUncorrected: 0.5 }
 */
export function saltCorrection(wet: number, dry: number, saltContent: number): Outcome<SaltCorrection> {
  const fault = firstNotPositive([say`the wet mass`, wet], [say`the dry mass`, dry]) ?? notSaltContent(saltContent);
  if (fault) return fault;
  const lost = wet - dry;
  if (lost <= 0)
    return badInput(
      say`the wet mass (${figure(wet)}) is not above the dry mass (${figure(dry)}): check the two weighings, they may be swapped`,
    );
  const poreWater = lost / (1 - saltContent);
  const salt = poreWater - lost;
  const solids = wet - poreWater;
  if (solids <= 0)
    return badInput(
      say`the pore water would hold ${figure(salt)} of salt, more than the dry mass (${figure(dry)}): check the masses and the salt content`,
    );
  return given({ poreWater, salt, solids, w: poreWater / solids, wUncorrected: lost / dry });
}
