/**
 * From masses and sizes to water content, void ratio, saturation, densities and height of solids.
 *
 * Masses in g, lengths in mm, densities in Mg/m3 (= g/cm3); water contents, saturations and strains are ratios. Sources
 * of the formulas: any soil mechanics textbook (Das, Principles of Geotechnical Engineering, ch. 3), ASTM D2216 and ISO
 * 17892-1 (water content), ASTM D2435 and ISO 17892-5 (height of solids). Limits marked "common practice" have no
 * single authority.
 */
import { say, verbatim, fixed, type Message } from "./message";
import { badInput, figure, firstNotPositive, given, then, type Outcome, type Refusal } from "./outcome";
import { convert } from "./units";
import { inThousands, poreWaterDensity, saltCorrection, waterDensity, WATER_DENSITY } from "./water";

/**
 * No soil has a specific gravity outside `least` to `most`; outside `low` to `high` it is unusual. Common practice, no
 * source.
 */
export const GS = { least: 1.2, low: 2.5, high: 2.9, most: 4.5 };
/** Peat reaches a water content of about 15 to 20; above it, the ratio was typed as a percentage. Common practice, no source. */
export const WETTEST = 20;
/**
 * A reviewer questions values outside these. Common practice, no source; the two sizes are from ASTM D2435 and BS
 * 1377-5, from memory.
 */
export const USUAL = {
  saturation: [0.95, 1.05],
  density: [1.2, 2.3],
  voidRatio: [0.2, 4],
  diameterOverHeight: 2.5,
  diameter: 50,
  height: 12,
  /** A ring of 2.5 by 1 in measures 63.45 by 25.40 mm: its ratio is just under 2.5, and acceptable. */
  allowance: 0.01,
} as const;

const percent = (ratio: number): Message => say`${fixed(100 * ratio, 1)} %`;
const outside = (value: number, [low, high]: readonly [number, number]): boolean => value < low || value > high;

/** Why no soil has this specific gravity; undefined if a soil may have it. */
export function impossibleGravity(Gs: number): Message | undefined {
  if (Gs >= GS.least && Gs <= GS.most) return undefined;
  const remedy = say`the specific gravity is ${figure(Gs)}, which no soil has: enter it relative to water, about 2.6 to 2.8`;
  return Gs >= 1000 * GS.least && Gs <= 1000 * GS.most ? inThousands(remedy, Gs, "kg/m3") : remedy;
}

/** Area of a circle of diameter D, in the unit of D squared. */
export const circleArea = (D: number): number => (Math.PI * D * D) / 4;

/**
 * Water content w = (M_wet - M_dry) / (M_dry - M_tare). Masses in one unit, tare 0 if the soil was weighed alone.
 * @example waterContent(150, 120, 20) // 0.3
 * @example waterContent(120, 150, 20) // refused: the wet mass (120) is less than the dry mass (150): check the two weighings, they may be
 *   swapped
 */
export function waterContent(wet: number, dry: number, tare = 0): Outcome<number> {
  const fault = firstNotPositive([say`the wet mass`, wet], [say`the dry mass`, dry]);
  if (fault) return fault;
  if (tare < 0) return badInput(say`the tare is ${figure(tare)}: a mass cannot be negative`);
  if (dry <= tare)
    return badInput(
      say`the dry mass (${figure(dry)}) must be greater than the tare (${figure(tare)}): check the two weighings, they may be swapped`,
    );
  if (wet < dry)
    return badInput(
      say`the wet mass (${figure(wet)}) is less than the dry mass (${figure(dry)}): check the two weighings, they may be swapped`,
    );
  return given((wet - dry) / (dry - tare));
}

/**
 * Height of solids H_s = M_d / (Gs rho_w A), in mm. Dry mass in g, diameter in mm, water density in Mg/m3.
 * @example solidsHeight(97.8, 2.7, 63.508) // 11.43
 */
export function solidsHeight(dryMass: number, Gs: number, diameter: number, water = WATER_DENSITY): Outcome<number> {
  const fault = firstNotPositive(
    [say`the dry mass`, dryMass],
    [say`the specific gravity`, Gs],
    [say`the diameter`, diameter],
    [say`the water density`, water],
  );
  if (fault) return fault;
  const gravity = impossibleGravity(Gs);
  if (gravity) return badInput(gravity);
  if (outside(water, [0.9, 1.3]))
    return badInput(
      say`the water density is ${figure(water)}: enter it in g/cm3 (1.000 for fresh water, about 1.02 for sea water)`,
    );
  return given((1000 * dryMass) / (Gs * water * circleArea(diameter)));
}

/**
 * Void ratio e = (H - H_s) / H_s. Both heights in one unit.
 * @example voidRatio(25.4, 11.4348) // 1.221
 * @example voidRatio(11, 11.4348) // refused: the height (11) is not above the height of solids (11.4348), which leaves no voids: check
 *   both, and that they are in one unit
 */
export function voidRatio(height: number, solids: number): Outcome<number> {
  const fault = firstNotPositive([say`the height`, height], [say`the height of solids`, solids]);
  if (fault) return fault;
  if (height <= solids)
    return badInput(
      say`the height (${figure(height)}) is not above the height of solids (${figure(solids)}), which leaves no voids: check both, and that they are in one unit`,
    );
  return given((height - solids) / solids);
}

/**
 * Void ratio at an axial strain (a ratio, compression positive): e = e0 - eps (1 + e0).
 * @example voidRatioAtStrain(0.05, 1.5) // 1.375
 */
export function voidRatioAtStrain(strain: number, e0: number): Outcome<number> {
  const fault = firstNotPositive([say`the initial void ratio`, e0]);
  if (fault) return fault;
  if (Math.abs(strain) >= 1)
    return badInput(say`the strain is ${figure(strain)}: enter it as a ratio, 0.05 for 5 %, compression positive`);
  const e = e0 - strain * (1 + e0);
  if (e <= 0)
    return badInput(
      say`a strain of ${figure(strain)} from a void ratio of ${figure(e0)} leaves no voids: check both (the strain is a ratio, 0.05 for 5 %)`,
    );
  return given(e);
}

/**
 * Degree of saturation S = w Gs / e, a ratio.
 * @example saturation(0.3, 2.7, 0.81) // 1
 */
export function saturation(w: number, Gs: number, e: number): Outcome<number> {
  const fault = firstNotPositive(
    [say`the water content`, w],
    [say`the specific gravity`, Gs],
    [say`the void ratio`, e],
  );
  if (fault) return fault;
  const gravity = impossibleGravity(Gs);
  if (gravity) return badInput(gravity);
  if (w > WETTEST)
    return badInput(say`the water content is ${figure(w)}: enter it as a ratio, ${figure(w / 100)} for ${figure(w)} %`);
  return given((w * Gs) / e);
}

/**
 * Density of a cylinder, Mg/m3. Mass in g, diameter and height in mm.
 * @example density(152.6, 63.5, 25.4) // 1.897
 */
export function density(mass: number, diameter: number, height: number): Outcome<number> {
  const fault = firstNotPositive([say`the mass`, mass], [say`the diameter`, diameter], [say`the height`, height]);
  return fault ?? given((1000 * mass) / (circleArea(diameter) * height));
}

/** The measurements of one specimen: lengths in mm, masses in g; the soil was weighed with the ring. */
export interface SpecimenMeasurements {
  readonly diameter: number;
  readonly height: number;
  readonly ring: number;
  readonly ringAndWetBefore: number;
  readonly ringAndWetAfter: number;
  readonly ringAndDry: number;
  readonly Gs: number;
  /** Height at the end of the test, unloaded; without it there is no final void ratio. */
  readonly finalHeight?: number;
  /** Temperature of the water, degrees C, for its density; 1.000 Mg/m3 without it. */
  readonly temperature?: number;
  /** Mass of salt over mass of the pore water: the salt is taken out of the dry mass. */
  readonly saltContent?: number;
}

export interface Specimen {
  readonly w0: number;
  readonly wf: number;
  readonly dryMass: number;
  /** Height of solids, mm. */
  readonly Hs: number;
  readonly e0: number;
  readonly ef?: number;
  readonly S0: number;
  readonly Sf?: number;
  /** Bulk and dry density before the test, Mg/m3. */
  readonly density: number;
  readonly dryDensity: number;
  /** If a salt content is given: the mass of salt in the dry soil, g, and the results without the correction. */
  readonly salt?: { readonly mass: number; readonly dryMass: number; readonly w0: number; readonly wf: number };
}

/** The dry soil of a specimen: masses in g, lengths in mm. */
export interface DrySoil extends Pick<SpecimenMeasurements, "diameter" | "Gs" | "temperature" | "saltContent"> {
  /** The dry soil as weighed, without the ring. */
  readonly weighed: number;
  /** The wet soil after the test, without the ring; it is needed only with a salt content. */
  readonly wetAfter: number;
}

export interface Solids {
  /** The dry mass less the salt of the pore water, g, and that salt; 0 without a salt content. */
  readonly dryMass: number;
  readonly salt: number;
  /** Height of solids, mm. */
  readonly Hs: number;
  /** Density of the water without salt, Mg/m3. */
  readonly water: number;
}

/**
 * Mass and height of the solids of a dry soil, at the temperature of its water.
 * @example solidsOf({ weighed: 97.8, wetAfter: 130, Gs: 2.7, diameter: 63.508 }).value // { dryMass: 97.8, salt: 0, Hs: 11.43, water: 1 }
 */
export const solidsOf = ({ weighed, wetAfter, Gs, diameter, temperature, saltContent }: DrySoil): Outcome<Solids> =>
  then(waterDensity(temperature), (water) =>
    then(
      saltContent === undefined ? given({ solids: weighed, salt: 0 }) : saltCorrection(wetAfter, weighed, saltContent),
      ({ solids: dryMass, salt }) =>
        then(solidsHeight(dryMass, Gs, diameter, water), (Hs) => given({ dryMass, salt, Hs, water })),
    ),
  );

/** Refuses a measurement that is not above zero, and a weighing that is not heavier than the one that it contains. */
function impossibleWeighing(m: SpecimenMeasurements): Refusal | undefined {
  const fault = firstNotPositive(
    [say`the diameter`, m.diameter],
    [say`the height`, m.height],
    [say`the ring mass`, m.ring],
    [say`the ring and wet soil before`, m.ringAndWetBefore],
    [say`the ring and wet soil after`, m.ringAndWetAfter],
    [say`the ring and dry soil`, m.ringAndDry],
    [say`the specific gravity`, m.Gs],
    [say`the final height`, m.finalHeight],
  );
  if (fault) return fault;
  const pairs = [
    [say`the ring and dry soil`, m.ringAndDry, say`the ring`, m.ring],
    [say`the ring and wet soil before`, m.ringAndWetBefore, say`the ring and dry soil`, m.ringAndDry],
    [say`the ring and wet soil after`, m.ringAndWetAfter, say`the ring and dry soil`, m.ringAndDry],
  ] as const;
  for (const [heavier, mass, lighter, least] of pairs)
    if (mass <= least)
      return badInput(
        say`${heavier} (${figure(mass)}) is ${mass < least ? say`less than` : say`the same as`} ${lighter} (${figure(least)}): check the two weighings, they may be swapped`,
      );
  return undefined;
}

/**
 * All steps from ring mass to void ratio and saturation, before and after the test. Water has 1.000 Mg/m3, or the
 * density at the temperature given. With a salt content, the dry mass is the mass of the solids alone: the soil was
 * dried with the pore water of the end of the test, and the salt of this water stayed in the soil; water contents are
 * then of the pore water with its salt, and saturations use its greater density. Refuses impossible values (a mass or
 * length not above zero, wet not heavier than dry, dry not heavier than the ring, a height not above the height of
 * solids, a specific gravity that no soil has) with the names of the two entries. Remarks values that a reviewer would
 * question: trade practice on saturation, densities, void ratio and sizes. `unit` is the length unit of the messages.
 * @example reduceSpecimen({ diameter: 63.5, height: 25.4, ring: 70, ringAndWetBefore: 222.6, ringAndWetAfter: 215, ringAndDry: 187.6, Gs:
 *   2.7 }).value // { w0: 0.2976, wf: 0.233, dryMass: 117.6, Hs: 13.75, e0: 0.8468, S0: 0.9489, density: 1.897, dryDensity: 1.462 }
 */
export function reduceSpecimen(m: SpecimenMeasurements, unit = "mm"): Outcome<Specimen> {
  const fault = impossibleWeighing(m);
  if (fault) return fault;
  const weighed = m.ringAndDry - m.ring;
  const wet = { before: m.ringAndWetBefore - m.ring, after: m.ringAndWetAfter - m.ring };
  return then(solidsOf({ ...m, weighed, wetAfter: wet.after }), ({ dryMass, salt, Hs, water }) => {
    const length = (mm: number): Message => say`${figure(convert(mm, "length", "mm", unit))} ${verbatim(unit)}`;
    for (const [name, height] of [
      [say`the height`, m.height],
      [say`the final height`, m.finalHeight ?? Infinity],
    ] as const)
      if (height <= Hs)
        return badInput(
          say`${name} (${length(height)}) is not above the height of solids (${length(Hs)}) that the dry mass, the specific gravity and the diameter give: check ${name}, the diameter, the masses and the length unit`,
        );
    // Density of water over that of the pore water: 1 without salt.
    const share = water / poreWaterDensity(water, m.saltContent ?? 0);
    const w0 = (wet.before - dryMass) / dryMass;
    const wf = (wet.after - dryMass) / dryMass;
    const e0 = (m.height - Hs) / Hs;
    const ef = m.finalHeight === undefined ? undefined : (m.finalHeight - Hs) / Hs;
    const volume = (circleArea(m.diameter) * m.height) / 1000;
    const specimen: Specimen = {
      w0,
      wf,
      dryMass,
      Hs,
      e0,
      ef,
      S0: (share * w0 * m.Gs) / e0,
      Sf: ef === undefined ? undefined : (share * wf * m.Gs) / ef,
      density: wet.before / volume,
      dryDensity: dryMass / volume,
      salt:
        m.saltContent === undefined
          ? undefined
          : {
              mass: salt,
              dryMass: weighed,
              w0: (wet.before - weighed) / weighed,
              wf: (wet.after - weighed) / weighed,
            },
    };
    return given(specimen, specimenRemarks(m, specimen, length));
  });
}

/** The remarks on one specimen, in the order in which a reviewer would ask. */
function specimenRemarks(m: SpecimenMeasurements, s: Specimen, length: (mm: number) => Message): Message[] {
  const remarks: Message[] = [];
  const ask = (when: boolean, remark: Message): void => void (when && remarks.push(remark));

  ask(
    s.S0 > USUAL.saturation[1],
    say`S0 is ${percent(s.S0)}, more water than the voids hold: check the height, the masses and the specific gravity`,
  );
  ask(
    s.S0 < USUAL.saturation[0],
    say`S0 is ${percent(s.S0)}: not saturated as placed, so cv is not valid unless water filled it later; check the height and the masses`,
  );
  if (s.ef !== undefined && s.Sf !== undefined) {
    const byWater = s.Sf * s.ef;
    ask(
      outside(s.Sf, USUAL.saturation) || Math.abs(s.ef - byWater) > 0.02 + 0.02 * s.ef,
      say`Sf is ${percent(s.Sf)}: the final void ratio is ${fixed(s.ef, 3)} from the final height but ${fixed(byWater, 3)} from the final water content; check the final height, and that free water was wiped off before weighing`,
    );
    const finalHeight = m.finalHeight ?? 0;
    ask(
      finalHeight > m.height,
      say`the final height (${length(finalHeight)}) is above the initial height (${length(m.height)}): correct only if the specimen swelled`,
    );
  }
  ask(
    outside(m.Gs, [GS.low, GS.high]),
    say`the specific gravity ${figure(m.Gs)} is unusual (most soils 2.6 to 2.8): confirm that it was measured on this soil`,
  );
  ask(
    outside(s.density, USUAL.density),
    say`the density ${fixed(s.density, 3)} Mg/m3 is outside 1.2 to 2.3: check the sizes, their unit and the masses`,
  );
  ask(
    outside(s.e0, USUAL.voidRatio),
    say`e0 ${fixed(s.e0, 3)} is outside 0.2 to 4: check the height, the dry mass and the specific gravity`,
  );
  const least = 1 - USUAL.allowance;
  ask(
    m.diameter / m.height < USUAL.diameterOverHeight * least,
    say`diameter over height is ${fixed(m.diameter / m.height, 2)}, below ${USUAL.diameterOverHeight}: ring friction counts for more`,
  );
  ask(
    m.diameter < USUAL.diameter * least,
    say`the diameter is below the usual least of ${length(USUAL.diameter)}: check it against the standard you report to`,
  );
  ask(
    m.height < USUAL.height * least,
    say`the height is below the usual least of ${length(USUAL.height)}: check it against the standard you report to`,
  );
  return remarks;
}
