/**
 * Field compression curve (Schmertmann, J.H., 1955, "The undisturbed consolidation behavior of clay", Trans. ASCE 120,
 * 1201-1233): from the in-situ stress and void ratio, parallel to the recompression of the test up to the
 * preconsolidation stress, then straight to the laboratory virgin line at 0.42 times the initial void ratio. Where the
 * clay is normally consolidated the line starts at the in-situ point. Its recompression index is that of
 * `recompressionIndex`: from a reload loop, or from the rebound at the end (Schmertmann's choice) if there is no loop.
 */
import { say, digits, without, type Message } from "../message";
import { badInput, given, notApplicable, type Outcome } from "../outcome";
import { remarksOnRatio } from "./stress-history";
import { recompressionIndex, type Index } from "./indices";
import { preconsolidation } from "./preconsolidation";
import type { CurvePicks } from "./picks";
import type { TestCurve } from "./shape/points";
import { virginLineOf } from "./methods/reading";
import { firstOf, lastOf } from "../numeric/lists";

/**
 * Share of the initial void ratio at which the laboratory line and the field line meet (Schmertmann 1955; some manuals
 * use 0.40).
 */
export const FIELD_FACTOR = 0.42;
/** Up to this ratio of preconsolidation stress to in-situ stress the clay counts as normally consolidated. */
const NORMAL = 1.05;

export interface FieldCurve {
  /** In-situ point, preconsolidation point (absent in normally consolidated clay), meeting point with the laboratory line. */
  readonly points: readonly { readonly label: string; readonly stress: number; readonly voidRatio: number }[];
  /** Compression index of the field virgin line. */
  readonly compressionIndex: number;
  /**
   * Cr by void ratio, and where in the test it was read; absent if the clay is normally consolidated, so that the field
   * curve has no recompression.
   */
  readonly recompression?: Index;
}

export interface FieldCurveInput {
  readonly test: TestCurve;
  readonly inSituStress: number;
  readonly initialVoidRatio: number;
  /** The preconsolidation stress; by Casagrande's construction if it is left out. */
  readonly preconsolidationStress?: number;
  /** The share of the initial void ratio at which the field curve meets the laboratory line. */
  readonly factor?: number;
  /** Ends of the lines by hand, for the virgin line and the recompression. */
  readonly picks?: CurvePicks;
  /** Cr by the kind of the values, in the place of the recompression of the test. */
  readonly recompressionIndex?: number;
}

/**
 * Refuses where the curve has no virgin line, or the two lines do not meet beyond yield.
 * @example fieldCurve({ test: clay, inSituStress: 30, initialVoidRatio: 1.5, preconsolidationStress: 80 }).value.compressionIndex //
 *   0.6009
 */
export function fieldCurve(input: FieldCurveInput): Outcome<FieldCurve> {
  const { test, inSituStress, initialVoidRatio: e0, factor = FIELD_FACTOR, picks = {} } = input;
  if (!(factor > 0 && factor < 1))
    return badInput(say`the factor is ${factor}: it must lie between 0 and 1; 0.42 is usual`);
  const laboratory = virginLineOf(test, picks);
  if (!laboratory.ok) return laboratory;
  const { curve, line } = laboratory.value;
  const remarks: Message[] = [...laboratory.remarks];

  let yieldStress = input.preconsolidationStress;
  if (yieldStress === undefined) {
    const read = preconsolidation(test, { picks });
    if (!read.ok) return read;
    yieldStress = read.value.stress;
    remarks.push(...without(read.remarks, remarks));
  }
  remarks.push(...remarksOnRatio(yieldStress / inSituStress));

  // The laboratory virgin line in void ratio: e = top - Cc log10(stress).
  const perShare = curve.range * (test.kind === "e" ? 1 : 1 + e0);
  const firstVoidRatio = test.kind === "e" ? firstOf(curve.points).value : e0 - firstOf(curve.points).value * (1 + e0);
  const Cc = line.slope * perShare;
  const top = firstVoidRatio - line.intercept * perShare;
  const meetingVoidRatio = factor * e0;
  const meetingStress = 10 ** ((top - meetingVoidRatio) / Cc);

  const read: Outcome<Index> =
    input.recompressionIndex === undefined
      ? recompressionIndex(test, undefined, picks)
      : given({ value: input.recompressionIndex, basis: say`the value given`, readings: [] });
  const overconsolidated = yieldStress > NORMAL * inSituStress;
  if (overconsolidated && !read.ok) return read;
  const recompression = read.ok
    ? { ...read.value, value: read.value.value * (test.kind === "e" ? 1 : 1 + e0) }
    : undefined;
  if (overconsolidated && read.ok) remarks.push(...without(read.remarks, remarks));
  const Cr = recompression?.value ?? 0;

  const start = { label: "in situ", stress: inSituStress, voidRatio: e0 };
  const bend = overconsolidated
    ? { label: "preconsolidation", stress: yieldStress, voidRatio: e0 - Cr * Math.log10(yieldStress / inSituStress) }
    : undefined;
  const from = bend ?? start;
  if (!(meetingStress > from.stress && from.voidRatio > meetingVoidRatio))
    return notApplicable(
      say`the laboratory virgin line reaches ${factor} e0 at stress ${digits(meetingStress, 4)}, before yield: check e0 and the in-situ stress`,
    );
  const greatest = lastOf(curve.points).stress;
  if (meetingStress > greatest * 1.001)
    remarks.push(
      say`the meeting point lies beyond the greatest load (${digits(greatest, 6)}): the virgin line is extended`,
    );
  const end = { label: "meets the laboratory line", stress: meetingStress, voidRatio: meetingVoidRatio };
  return given(
    {
      points: bend ? [start, bend, end] : [start, end],
      compressionIndex: (from.voidRatio - meetingVoidRatio) / Math.log10(meetingStress / from.stress),
      recompression,
    },
    remarks,
  );
}
