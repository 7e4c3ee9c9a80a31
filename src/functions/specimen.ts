/** Worksheet functions of the specimen: masses and sizes to water content, void ratio and saturation. */
import { say } from "../reduction/message";
import { convert } from "../reduction/units";
import * as reduce from "../reduction/specimen";
import { saltCorrection, waterDensity } from "../reduction/water";
import { answer, line, remarksOf, valueOf, type Item } from "./answer";
import { badInput } from "../reduction/outcome";
import {
  toMillimetres,
  toNumber,
  toOptionalMillimetres,
  toOptionalNumber,
  toOptionalPositive,
  toPositive,
  toUnit,
} from "./cells";

/**
 * Water content of a soil, as a ratio: mass of water over mass of dry soil.
 * @customfunction
 * @param wet_mass Mass of wet soil, with the tare if one is given.
 * @param dry_mass Mass of dry soil, with the tare if one is given.
 * @param [tare] Mass of the empty container; 0 if left out.
 * @returns The water content as a ratio.
 * @example =CLAY.WATER_CONTENT(152.4,121.9,31.2)
 * @refuses =CLAY.WATER_CONTENT(121.9,152.4,31.2)
 * @source By definition: mass of water over mass of dry soil. ASTM D2216 and ISO 17892-1 weigh for it.
 */
export function WATER_CONTENT(wet_mass: any, dry_mass: any, tare?: any): any {
  const wet = toPositive(wet_mass, say`the wet mass`);
  const dry = toPositive(dry_mass, say`the dry mass`);
  return valueOf(reduce.waterContent(wet, dry, toOptionalNumber(tare, say`the tare`)));
}

/**
 * Height of solids: the height that the dry soil would have in the ring without voids.
 * @customfunction
 * @param dry_mass Mass of the dry soil alone, g.
 * @param specific_gravity Specific gravity of the solids (particle density in Mg/m3).
 * @param diameter Inside diameter of the ring, in the length unit.
 * @param [length_unit] "mm" (default), "cm", "m", "in" or "ft".
 * @param [water_density] Density of water, g/cm3; 1.000 if left out. WATER_DENSITY gives it for a temperature.
 * @returns The height of solids in the length unit.
 * @example =CLAY.SOLIDS_HEIGHT(89.31,2.72,63.5)
 * @example =CLAY.SOLIDS_HEIGHT(89.31,2.72,2.5,"in")
 * @refuses =CLAY.SOLIDS_HEIGHT(89.31,,63.5)
 * @source ASTM D2435 and ISO 17892-5: Hs = Md / (Gs rho_w A).
 */
export function SOLIDS_HEIGHT(
  dry_mass: any,
  specific_gravity: any,
  diameter: any,
  length_unit?: any,
  water_density?: any,
): any {
  const unit = toUnit(length_unit, "length", "mm");
  const height = reduce.solidsHeight(
    toPositive(dry_mass, say`the dry mass`),
    toPositive(specific_gravity, say`the specific gravity`),
    toMillimetres(diameter, say`the diameter`, unit),
    toOptionalPositive(water_density, say`the water density`),
  );
  return convert(valueOf(height), "length", "mm", unit);
}

/**
 * Void ratio of a specimen from its height and its height of solids: (height - solids) / solids.
 * @customfunction
 * @param height Height of the specimen.
 * @param solids_height Height of solids, in the same unit.
 * @returns The void ratio.
 * @example =CLAY.VOID_RATIO(22.3,10.367)
 * @refuses =CLAY.VOID_RATIO(10.367,22.3)
 * @source ASTM D2435 and ISO 17892-5: e = (H - Hs) / Hs.
 */
export function VOID_RATIO(height: any, solids_height: any): any {
  return valueOf(
    reduce.voidRatio(toPositive(height, say`the height`), toPositive(solids_height, say`the height of solids`)),
  );
}

/**
 * Void ratio at an axial strain: initial void ratio less strain times (1 + initial void ratio).
 * @customfunction
 * @param strain Axial strain as a ratio, compression positive; a blank cell counts as 0.
 * @param initial_void_ratio Void ratio at zero strain.
 * @returns The void ratio.
 * @example =CLAY.VOID_RATIO_AT_STRAIN(0.121,1.45)
 * @refuses =CLAY.VOID_RATIO_AT_STRAIN(12.1,1.45)
 * @source By definition: e = e0 - strain (1 + e0).
 */
export function VOID_RATIO_AT_STRAIN(strain: any, initial_void_ratio: any): any {
  return valueOf(
    reduce.voidRatioAtStrain(
      toNumber(strain, say`the strain`),
      toPositive(initial_void_ratio, say`the initial void ratio`),
    ),
  );
}

/**
 * Degree of saturation, as a ratio: water content times specific gravity over void ratio.
 * @customfunction
 * @param water_content Water content as a ratio, 0.352 for 35.2 %.
 * @param specific_gravity Specific gravity of the solids.
 * @param void_ratio Void ratio.
 * @returns The degree of saturation as a ratio.
 * @example =CLAY.SATURATION(0.5304,2.72,1.45)
 * @refuses =CLAY.SATURATION("53 %",2.72,1.45)
 * @source By definition: S = w Gs / e, as in any textbook of soil mechanics (Das, Principles of Geotechnical Engineering, ch. 3).
 */
export function SATURATION(water_content: any, specific_gravity: any, void_ratio: any): any {
  return valueOf(
    reduce.saturation(
      toPositive(water_content, say`the water content`),
      toPositive(specific_gravity, say`the specific gravity`),
      toPositive(void_ratio, say`the void ratio`),
    ),
  );
}

/**
 * Density, or unit weight at standard gravity, of a cylinder of soil.
 * @customfunction
 * @param mass Mass of the soil alone, g: wet for the bulk density, dry for the dry density.
 * @param diameter Diameter, in the length unit.
 * @param height Height, in the length unit.
 * @param [length_unit] "mm" (default), "cm", "m", "in" or "ft".
 * @param [density_unit] "Mg/m3" (default), "g/cm3", "kg/m3", "kN/m3" or "pcf".
 * @returns The density in the density unit.
 * @example =CLAY.DENSITY(136.68,63.5,25.4)
 * @example =CLAY.DENSITY(136.68,63.5,25.4,"mm","kN/m3")
 * @refuses =CLAY.DENSITY(136.68,63.5,25.4,"mm","t/m3")
 * @source By definition: mass over volume; unit weight at standard gravity, 9.80665 m/s2.
 */
export function DENSITY(mass: any, diameter: any, height: any, length_unit?: any, density_unit?: any): any {
  const unit = toUnit(length_unit, "length", "mm");
  const value = reduce.density(
    toPositive(mass, say`the mass`),
    toMillimetres(diameter, say`the diameter`, unit),
    toMillimetres(height, say`the height`, unit),
  );
  return convert(valueOf(value), "density", "Mg/m3", toUnit(density_unit, "density", "Mg/m3"));
}

/**
 * Density of water without salt or air at a temperature, by Kell (1975). For SOLIDS_HEIGHT, where the specific gravity is relative to water; a particle density in Mg/m3 needs none.
 * @customfunction
 * @param temperature Temperature of the water, degrees Celsius, above 0 and up to 60.
 * @param [density_unit] "Mg/m3" (default), "g/cm3", "kg/m3", "kN/m3" or "pcf".
 * @returns The density in the density unit.
 * @example =CLAY.WATER_DENSITY(20)
 * @example =CLAY.WATER_DENSITY(20,"kN/m3")
 * @refuses =CLAY.WATER_DENSITY(95)
 * @source Kell, G.S., 1975, J. Chem. Eng. Data 20(1), 97-105.
 */
export function WATER_DENSITY(temperature: any, density_unit?: any): any {
  const density = valueOf(waterDensity(toNumber(temperature, say`the temperature`)));
  return convert(density, "density", "Mg/m3", toUnit(density_unit, "density", "Mg/m3"));
}

/**
 * Takes the salt of the pore water, which stays in the soil when it is dried, out of the dry mass (IODP Proceedings 330, Table T9). Water content with and without the correction.
 * @customfunction
 * @param wet_mass Mass of wet soil, g, with the tare if one is given.
 * @param dry_mass Mass of dry soil, g, with the tare if one is given.
 * @param salt_content Salt content (salinity) of the pore water as a ratio, mass of salt over mass of pore water: 0.035 for sea water.
 * @param [tare] Mass of the empty container, g; 0 if left out.
 * @param [item] solids, salt, pore_water, w, w_uncorrected or remark; left out, all of them. w is pore water, its salt included, over solids.
 * @returns A table of label, value and unit, or the one value.
 * @example =CLAY.SALT_CORRECTION(152.4,121.9,0.035,31.2)
 * @refuses =CLAY.SALT_CORRECTION(152.4,121.9,3.5,31.2)
 * @source IODP Proceedings 330, Table T9.
 */
export function SALT_CORRECTION(wet_mass: any, dry_mass: any, salt_content: any, tare?: any, item?: any): any[][] {
  const wet = toPositive(wet_mass, say`the wet mass`);
  const dry = toPositive(dry_mass, say`the dry mass`);
  const salt = toPositive(salt_content, say`the salt content`);
  const empty = toOptionalNumber(tare, say`the tare`) ?? 0;
  // The weighings are judged like those of a water content.
  valueOf(reduce.waterContent(wet, dry, empty));
  const outcome = saltCorrection(wet - empty, dry - empty, salt);
  const found = valueOf(outcome);
  return answer(
    [
      line("solids", found.solids, "g"),
      line("salt", found.salt, "g"),
      line("pore_water", found.poreWater, "g"),
      line("w", found.w),
      line("w_uncorrected", found.wUncorrected),
    ],
    remarksOf(outcome),
    item,
  );
}

/**
 * All values of a specimen, from ring mass to void ratio and saturation before and after the test, with water of 1.000
 * g/cm3 unless its temperature is given. Spills a table, or gives one item.
 * @customfunction
 * @param diameter Inside diameter of the ring, in the length unit.
 * @param height Height of the specimen before the test, in the length unit.
 * @param ring_mass Mass of the empty ring, g.
 * @param ring_and_wet_before Mass of the ring and the wet soil before the test, g.
 * @param ring_and_wet_after Mass of the ring and the wet soil after the test, g.
 * @param ring_and_dry Mass of the ring and the oven-dry soil, g.
 * @param specific_gravity Specific gravity of the solids (particle density in Mg/m3).
 * @param [final_height] Height of the specimen at the end of the test, in the length unit; without it there is no ef and no Sf.
 * @param [length_unit] "mm" (default), "cm", "m", "in" or "ft".
 * @param [item] w0, wf, dry_mass, Hs, e0, ef, S0, Sf, density, dry_density or remark; left out, all of them. With a salt content also salt, dry_mass_uncorrected, w0_uncorrected, wf_uncorrected.
 * @param [temperature] Temperature of the water that the specific gravity is relative to (20 as a rule), degrees Celsius, for its density; 1.000 g/cm3 if left out.
 * @param [salt_content] Salt content of the pore water at the end of the test, mass of salt over mass of pore water: 0.035 for sea water. The salt is taken out of the dry mass; no salt if left out.
 * @returns A table of label, value and unit, or the one value.
 * @example =CLAY.SPECIMEN(63.5,25.4,74.36,211.04,185.95,163.67,2.72,17.4)
 * @example =CLAY.SPECIMEN(63.5,25.4,74.36,211.04,185.95,163.67,2.72,17.4,"mm","e0")
 * @refuses =CLAY.SPECIMEN(63.5,25.4,74.36,211.04,185.95,263.67,2.72,17.4)
 * @source ASTM D2435 and ISO 17892-5 (height of solids); definitions of phase relations as in Das, Principles of Geotechnical Engineering, ch. 3.
 */
export function SPECIMEN(
  diameter: any,
  height: any,
  ring_mass: any,
  ring_and_wet_before: any,
  ring_and_wet_after: any,
  ring_and_dry: any,
  specific_gravity: any,
  final_height?: any,
  length_unit?: any,
  item?: any,
  temperature?: any,
  salt_content?: any,
): any[][] {
  const unit = toUnit(length_unit, "length", "mm");
  const outcome = reduce.reduceSpecimen(
    {
      diameter: toMillimetres(diameter, say`the diameter`, unit),
      height: toMillimetres(height, say`the height`, unit),
      ring: toPositive(ring_mass, say`the ring mass`),
      ringAndWetBefore: toPositive(ring_and_wet_before, say`the ring and wet soil before`),
      ringAndWetAfter: toPositive(ring_and_wet_after, say`the ring and wet soil after`),
      ringAndDry: toPositive(ring_and_dry, say`the ring and dry soil`),
      Gs: toPositive(specific_gravity, say`the specific gravity`),
      finalHeight: toOptionalMillimetres(final_height, say`the final height`, unit),
      temperature: toOptionalPositive(temperature, say`the temperature`),
      saltContent: toOptionalPositive(salt_content, say`the salt content`),
    },
    unit,
  );
  const specimen = valueOf(outcome);
  return answer(
    [
      line("w0", specimen.w0),
      line("wf", specimen.wf),
      line("dry_mass", specimen.dryMass, "g"),
      line("Hs", convert(specimen.Hs, "length", "mm", unit), unit),
      line("e0", specimen.e0),
      line(
        "ef",
        specimen.ef,
        "",
        badInput(say`ef needs the final height: enter the height of the specimen at the end of the test`),
      ),
      line("S0", specimen.S0),
      line(
        "Sf",
        specimen.Sf,
        "",
        badInput(say`Sf needs the final height: enter the height of the specimen at the end of the test`),
      ),
      line("density", specimen.density, "Mg/m3"),
      line("dry_density", specimen.dryDensity, "Mg/m3"),
      ...uncorrected(specimen),
    ],
    remarksOf(outcome),
    item,
  );
}

/** The results with the salt left in the dry soil, beside the results without it. */
const uncorrected = ({ salt }: reduce.Specimen): Item[] =>
  salt
    ? [
        line("salt", salt.mass, "g"),
        line("dry_mass_uncorrected", salt.dryMass, "g"),
        line("w0_uncorrected", salt.w0),
        line("wf_uncorrected", salt.wf),
      ]
    : [];
