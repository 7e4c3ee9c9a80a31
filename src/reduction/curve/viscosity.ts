/** The effect of temperature on cv, through the viscosity of the pore water. */
import { given, type Outcome } from "../outcome";
import { notLaboratory } from "../water";

/**
 * Dynamic viscosity of water at a temperature over that at 20 C. Source: Kestin, Sokolov and Wakeham (1978), J. Phys.
 * Chem. Ref. Data 7(3), 941-948 (formula from memory; within 1 percent of handbook values, see test/published).
 */
export function viscosityRatio(temperature: number): number {
  const d = 20 - temperature;
  return 10 ** ((d / (temperature + 96)) * (1.2364 - 1.37e-3 * d + 5.7e-6 * d * d));
}

/**
 * cv at 20 C over cv at the test temperature (degrees C). Refuses a temperature that no laboratory has: it must be
 * above 0 and up to 60 C.
 * @example temperatureFactor(20) // 1
 * @example temperatureFactor(10) // 1.304
 * @example temperatureFactor(75) // refused: the temperature is 75: give degrees Celsius above 0 and up to 60
 */
export function temperatureFactor(temperature: number): Outcome<number> {
  return notLaboratory(temperature) ?? given(viscosityRatio(temperature));
}
