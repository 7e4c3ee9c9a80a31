/** Settlement of one layer by primary consolidation in one dimension, from strain per log cycle of stress. */
import { STEEPEST_SOIL } from "./curve/indices";
import { remarksOnRatio } from "./curve/stress-history";
import { say } from "./message";
import { badInput, figure, firstNotPositive, given, notApplicable, notPositive, type Outcome } from "./outcome";

export interface Layer {
  /** In any length unit; the settlement is in the same unit. */
  readonly thickness: number;
  /** Effective vertical stress at the middle of the layer, its increase, and the preconsolidation stress, in one unit. */
  readonly inSituStress: number;
  readonly increase: number;
  readonly preconsolidationStress: number;
  /** CR = Cc / (1 + e0), RR = Cr / (1 + e0); zero stands for a ratio that was omitted because no stress needs it. */
  readonly compressionRatio: number;
  readonly recompressionRatio: number;
}

export interface Settlement {
  /** Settlement up to the preconsolidation stress. */
  readonly recompression: number;
  /** Settlement beyond the preconsolidation stress. */
  readonly virgin: number;
  readonly settlement: number;
}

/** Every settlement carries this remark. */
export const SETTLEMENT_CAUTION = say`one layer in one dimension, stresses at its middle, primary consolidation only: immediate settlement, secondary compression and three-dimensional effects are not in it; split a thick layer`;

/**
 * S = H (RR log10(min(final, p) / in situ) + CR log10(final / max(in situ, p))): whether the stresses lie below, across
 * or above the preconsolidation stress p. Source: any soil mechanics textbook (Das, Principles of Geotechnical
 * Engineering, ch. 11).
 *
 * A ratio that no part of the increase needs may be omitted. Refuses (input) an unloading, an index in place of a
 * ratio, and ratios that are swapped; refuses (method) a settlement of the whole thickness.
 * @example settlement({ thickness: 4, inSituStress: 100, increase: 120, preconsolidationStress: 150, compressionRatio: 0.15,
 *   recompressionRatio: 0.025 }).value // { recompression: 0.01761, virgin: 0.0998, settlement: 0.1174 }
 */
export function settlement(layer: Layer): Outcome<Settlement> {
  const { thickness, inSituStress, increase, preconsolidationStress, compressionRatio, recompressionRatio } = layer;
  const fault = firstNotPositive([say`the thickness`, thickness], [say`the in-situ stress`, inSituStress]);
  if (fault) return fault;
  if (increase < 0)
    return badInput(
      say`the increase is ${figure(increase)}: this is the settlement under a load; heave on unloading is another calculation`,
    );
  const further = firstNotPositive(
    [say`the increase`, increase],
    [say`the preconsolidation stress`, preconsolidationStress],
  );
  if (further) return further;

  const final = inSituStress + increase;
  const bend = Math.min(Math.max(inSituStress, preconsolidationStress), final);
  for (const [name, ratio, needed] of [
    [say`the compression ratio`, compressionRatio, bend < final],
    [say`the recompression ratio`, recompressionRatio, bend > inSituStress],
  ] as const) {
    const reason = needed || ratio !== 0 ? notPositive(ratio, name) : undefined;
    if (reason) return badInput(reason);
    if (ratio >= 1)
      return badInput(
        say`${name} is ${figure(ratio)}: enter strain per log cycle as a ratio, 0.2 for 20 %; from an index, divide by 1 + e0`,
      );
  }
  if (compressionRatio > 0 && recompressionRatio > compressionRatio)
    return badInput(
      say`the recompression ratio (${figure(recompressionRatio)}) is above the compression ratio (${figure(compressionRatio)}): the two may be swapped`,
    );

  const recompression = thickness * recompressionRatio * Math.log10(bend / inSituStress);
  const virgin = thickness * compressionRatio * Math.log10(final / bend);
  if (recompression + virgin >= thickness)
    return notApplicable(
      say`the layer would settle by its whole thickness: the stresses may be in two units, or strain per log cycle does not hold so far`,
    );
  const remarks = remarksOnRatio(preconsolidationStress / inSituStress);
  if (compressionRatio > STEEPEST_SOIL)
    remarks.push(
      say`a compression ratio above ${STEEPEST_SOIL} is rare outside peat: check that the index was divided by 1 + e0`,
    );
  return given({ recompression, virgin, settlement: recompression + virgin }, [...remarks, SETTLEMENT_CAUTION]);
}
