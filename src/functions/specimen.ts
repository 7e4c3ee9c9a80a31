/** Worksheet functions of the specimen: masses and sizes to water content, void ratio and saturation. */
import { waterContent } from "../reduction/specimen";
import { valueOf } from "./answer";
import { toNumber, toOptionalNumber } from "./cells";

/**
 * Water content of a soil, as a ratio: mass of water over mass of dry soil.
 * @customfunction
 * @helpurl https://github.com/clayledger/clayledger#functions
 * @param wet_mass Mass of wet soil, with the tare if one is given.
 * @param dry_mass Mass of dry soil, with the tare if one is given.
 * @param [tare] Mass of the empty container; 0 if left out.
 * @returns The water content as a ratio.
 */
export function WATER_CONTENT(wet_mass: any, dry_mass: any, tare?: any): any {
  const wet = toNumber(wet_mass, "the wet mass");
  const dry = toNumber(dry_mass, "the dry mass");
  return valueOf(waterContent(wet, dry, toOptionalNumber(tare, "the tare")));
}
