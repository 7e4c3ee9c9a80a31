/**
 * Intrinsic properties: how a reconstituted clay compresses, from its liquid limit, and where the void ratio of the
 * natural clay lies in comparison. Source: Burland, J.B., 1990, On the compressibility and shear strength of natural
 * clays, Geotechnique 40(3), 329-378; the constants were seen second hand.
 */
import { say, digits, type Message } from "../message";
import { badInput, figure, firstNotPositive, given, notApplicable, type Outcome } from "../outcome";
import { impossibleGravity } from "../specimen";

/** Coefficients of e*100 by rising powers of the void ratio at the liquid limit; slope and intercept of C*c. */
const E_100 = [0.109, 0.679, -0.089, 0.016] as const;
const C_C = { slope: 0.256, intercept: -0.04 } as const;
/** Void ratios at the liquid limit for which the correlation was made. */
const INTRINSIC_RANGE = { least: 0.6, most: 4.5 } as const;
/** Void index of the intrinsic line: constant, factor of x, factor of x cubed; x is log10 of the stress in kPa. */
export const INTRINSIC_LINE = [2.45, -1.285, 0.015] as const;
/** Stresses, kPa, between which the intrinsic line is drawn. From memory. */
const LINE_RANGE = { least: 10, most: 10_000 } as const;
const POINTS_PER_DECADE = 10;
/** Stresses, kPa, at which the line is drawn. */
export const LINE_STRESSES: readonly number[] = Array.from(
  { length: POINTS_PER_DECADE * Math.log10(LINE_RANGE.most / LINE_RANGE.least) + 1 },
  (_, step) => LINE_RANGE.least * 10 ** (step / POINTS_PER_DECADE),
);
/**
 * No soil has a greater liquid limit, and no soil has so small a liquid limit in percent: a greater number was typed as
 * a percentage. From memory.
 */
export const GREATEST_LIQUID_LIMIT = 8;

export interface Intrinsic {
  /** Void ratio at the liquid limit. */
  readonly eL: number;
  /**
   * Intrinsic void ratio at 100 kPa, and intrinsic compression index (the void ratio at 100 kPa less the void ratio at
   * 1000 kPa).
   */
  readonly e100: number;
  readonly Cc: number;
  /** Void index of the void ratio given: 0 at e*100, -1 at the intrinsic void ratio at 1000 kPa. */
  readonly voidIndex?: number;
  /** Void index of the intrinsic compression line at the stress given. */
  readonly lineIndex?: number;
}

/**
 * The stress of a natural clay over that of the reconstituted clay at the same void index, on the sedimentation line. From
 * memory: Burland draws the line through natural clays, and no printed numbers of it were found.
 */
export const SEDIMENTATION_SENSITIVITY = 5;

/**
 * Void index of the intrinsic compression line at an effective vertical stress in kPa.
 * @example intrinsicLine(100) // 0
 */
export function intrinsicLine(stress: number): number {
  const x = Math.log10(stress);
  const [constant, linear, cubic] = INTRINSIC_LINE;
  return constant + linear * x + cubic * x ** 3;
}

/**
 * Void index of the sedimentation compression line at an effective vertical stress in kPa.
 * @example sedimentationLine(500) // 0
 */
export const sedimentationLine = (stress: number): number => intrinsicLine(stress / SEDIMENTATION_SENSITIVITY);

/**
 * e_L = w_L G_s; e*100 = 0.109 + 0.679 e_L - 0.089 e_L^2 + 0.016 e_L^3; C*c = 0.256 e_L - 0.04; I_v = (e - e*100) /
 * C*c. The liquid limit is a ratio, the stress in kPa. Refuses (input) a percentage and a specific gravity that no soil
 * has; refuses (method) a liquid limit so low that C*c is zero or less. Remarks a liquid limit outside the correlation.
 * @example intrinsic(0.6, 2.5, { voidRatio: 1.2 }).value // { eL: 1.5, e100: 0.9812, Cc: 0.344, voidIndex: 0.6359 }
 * @example intrinsic(60, 2.5) // refused: the liquid limit is 60: enter it as a ratio, 0.6 for 60 %
 */
export function intrinsic(
  liquidLimit: number,
  specificGravity: number,
  { voidRatio, stress }: { readonly voidRatio?: number; readonly stress?: number } = {},
): Outcome<Intrinsic> {
  const fault = firstNotPositive(
    [say`the liquid limit`, liquidLimit],
    [say`the specific gravity`, specificGravity],
    [say`the void ratio`, voidRatio],
    [say`the stress`, stress],
  );
  if (fault) return fault;
  if (liquidLimit > GREATEST_LIQUID_LIMIT)
    return badInput(
      say`the liquid limit is ${figure(liquidLimit)}: enter it as a ratio, ${figure(liquidLimit / 100)} for ${figure(liquidLimit)} %`,
    );
  const gravity = impossibleGravity(specificGravity);
  if (gravity) return badInput(gravity);
  const eL = liquidLimit * specificGravity;
  const e100 = E_100.reduce((sum, constant, power) => sum + constant * eL ** power, 0);
  const Cc = C_C.slope * eL + C_C.intercept;
  if (Cc <= 0)
    return notApplicable(
      say`the void ratio at the liquid limit is ${figure(eL)}: the correlation begins at ${INTRINSIC_RANGE.least}, and gives no compression index here; check the liquid limit, a ratio`,
    );
  const remarks: Message[] = [];
  if (eL < INTRINSIC_RANGE.least || eL > INTRINSIC_RANGE.most)
    remarks.push(
      say`the void ratio at the liquid limit is ${digits(eL, 3)}: the correlation was made between ${INTRINSIC_RANGE.least} and ${INTRINSIC_RANGE.most}, beyond which e*100 and C*c must be measured on reconstituted soil`,
    );
  if (stress !== undefined && (stress < LINE_RANGE.least || stress > LINE_RANGE.most))
    remarks.push(
      say`the stress ${figure(stress)} kPa lies beyond the intrinsic line, which is drawn from ${LINE_RANGE.least} to ${LINE_RANGE.most} kPa`,
    );
  return given(
    {
      eL,
      e100,
      Cc,
      voidIndex: voidRatio === undefined ? undefined : (voidRatio - e100) / Cc,
      lineIndex: stress === undefined ? undefined : intrinsicLine(stress),
    },
    remarks,
  );
}
