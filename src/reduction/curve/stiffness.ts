/** Stiffness over one load: av, mv, constrained modulus; and conductivity from cv and mv. */
import { say } from "../message";
import { badInput, given, notApplicable, type Outcome } from "../outcome";
import type { Kind } from "./shape/points";

/**
 * The height that a strain refers to: at the start of the load (British practice, BS 1377-5), or the initial height of
 * the specimen (the slope of the strain curve, US practice). The two differ more as strain grows.
 */
export type ReferenceHeight = "start" | "initial";

/** One load: stress and value before and after it. */
export interface Load {
  readonly stress: readonly [from: number, to: number];
  readonly value: readonly [from: number, to: number];
  readonly kind: Kind;
  /** Needed for av from strain, and for mv from void ratio on the initial height. */
  readonly initialVoidRatio?: number;
}

/**
 * Refuses a load left standing, for instance where water is added, and a load under which the specimen swelled: they
 * have no stiffness.
 */
function checked({ stress, value, kind }: Load): Outcome<{ dStress: number; squeeze: number }> {
  if (stress[0] === stress[1])
    return notApplicable(
      say`the stress is the same before and after (water added, or the load left standing), so the load has no stiffness; if a load was put on, correct one of the two stresses`,
    );
  const dStress = stress[1] - stress[0];
  const squeeze = kind === "e" ? value[0] - value[1] : value[1] - value[0];
  if (squeeze / dStress < 0)
    return notApplicable(
      dStress > 0
        ? say`the specimen swelled under the load, so it has no compressibility; check the values if no water was added`
        : say`the specimen compressed as the load was taken off, so it has no compressibility; check the values`,
    );
  return given({ dStress, squeeze });
}

/**
 * av = -de / d stress, per unit of stress. From strain it needs the initial void ratio.
 * @example coefficientOfCompressibility({ stress: [100, 200], value: [0.845, 0.808], kind: "e" }) // 0.00037
 */
export function coefficientOfCompressibility(load: Load): Outcome<number> {
  const found = checked(load);
  if (!found.ok) return found;
  const { dStress, squeeze } = found.value;
  if (load.kind === "e") return given(squeeze / dStress);
  if (load.initialVoidRatio === undefined) return badInput(say`av from strain needs the initial void ratio: give it`);
  return given((squeeze * (1 + load.initialVoidRatio)) / dStress);
}

/**
 * mv = strain of the load / d stress, per unit of stress; the strain refers to the height `reference`.
 * @example volumeCompressibility({ stress: [100, 200], value: [0.845, 0.808], kind: "e" }) // 0.0002005
 * @example volumeCompressibility({ stress: [100, 200], value: [0.01, 0.03], kind: "strain" }) // 0.000202
 */
export function volumeCompressibility(load: Load, reference: ReferenceHeight = "start"): Outcome<number> {
  const found = checked(load);
  if (!found.ok) return found;
  const { dStress, squeeze } = found.value;
  const before = load.value[0];
  if (reference === "start") return given(squeeze / (load.kind === "e" ? 1 + before : 1 - before) / dStress);
  if (load.kind === "strain") return given(squeeze / dStress);
  if (load.initialVoidRatio === undefined)
    return badInput(say`mv on the initial height needs the initial void ratio: give it`);
  return given(squeeze / (1 + load.initialVoidRatio) / dStress);
}

/**
 * Constrained modulus M = 1 / mv, in the unit of the stresses. Refuses a load without compression.
 * @example constrainedModulus({ stress: [100, 200], value: [0.845, 0.808], kind: "e" }) // 4986
 */
export function constrainedModulus(load: Load, reference: ReferenceHeight = "start"): Outcome<number> {
  const mv = volumeCompressibility(load, reference);
  if (!mv.ok) return mv;
  if (mv.value === 0) return notApplicable(say`the load did not compress the specimen: the modulus has no value`);
  return given(1 / mv.value);
}

/** Unit weight of water, kN/m3: 1.000 Mg/m3 at standard gravity. */
export const WATER_UNIT_WEIGHT = 9.80665;

/**
 * k = cv mv gamma_w, m/s, from cv in m2/s and mv in m2/kN. It has the error of cv, and does not replace a direct test.
 * @example conductivity(1e-8, 2e-4) // 1.961e-11
 */
export const conductivity = (cv: number, mv: number): number => cv * mv * WATER_UNIT_WEIGHT;
