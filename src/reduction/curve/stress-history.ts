/** Overconsolidation ratio. */
import { say, type Message } from "../message";
import { given, type Outcome } from "../outcome";

/**
 * OCR = preconsolidation stress / in-situ effective stress, both in one unit.
 * @example overconsolidationRatio(80, 30) // 2.667
 */
export function overconsolidationRatio(preconsolidation: number, inSitu: number): Outcome<number> {
  const ratio = preconsolidation / inSitu;
  return given(ratio, remarksOnRatio(ratio));
}

/** Remarks on an unlikely ratio. Limits of common practice, no source. */
export const remarksOnRatio = (ratio: number): Message[] =>
  ratio < 0.9
    ? [say`OCR below 0.9: disturbance, ground still consolidating, or a wrong in-situ stress (water table?)`]
    : ratio > 20
      ? [say`OCR above 20: check the in-situ stress and its unit`]
      : [];
