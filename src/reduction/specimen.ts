/** Masses and sizes to water content, void ratio, saturation, densities and height of solids. */
import { badInput, given, type Outcome } from "./outcome";

/** Water content w = (M_wet - M_dry) / (M_dry - M_tare), a ratio. Source: ASTM D2216, ISO 17892-1 (definition). */
export function waterContent(wet: number, dry: number, tare = 0): Outcome<number> {
  if (tare < 0) return badInput(`the tare is ${tare}: a mass cannot be negative`);
  if (dry <= tare)
    return badInput(`the dry mass (${dry}) must be greater than the tare (${tare}): check the two weighings`);
  if (wet < dry) return badInput(`the wet mass (${wet}) is less than the dry mass (${dry}): the two may be swapped`);
  return given((wet - dry) / (dry - tare));
}
