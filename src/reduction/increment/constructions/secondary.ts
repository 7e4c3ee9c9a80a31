/**
 * Secondary compression: the slope of the tail on the log-time plot. The caller divides by a height, and says which
 * one; as strain per log cycle the slope is C-alpha-epsilon (Ladd, 1967; ASTM D2435).
 */
import { say, digits, fixed } from "../../message";
import { given, notApplicable, type Outcome } from "../../outcome";
import { indicesFrom, lineOnLogTime, usedReadings } from "../readings";
import type { Increment } from "../reduce";
import { cyclesPast, noSlope } from "./tail";
import { T_END_OF_PRIMARY } from "../fit/terzaghi";
import { firstOf, lastOf, nth } from "../../numeric/lists";

/** A shorter span is remarked, log cycles. Common practice wants half to one. */
const GOOD = 0.5;

/**
 * Reading per log cycle, positive in the direction of the movement, over a span of times (minutes): by least squares
 * through the readings of a span that is given, or the tail of the log-time construction. Refuses where the readings of the
 * span that lie past the end of primary span less than a quarter of a log cycle, where the dial jumped within the span, and
 * where log time itself refuses.
 * @example secondarySlope(load, 300, 1440) // 0.0067
 * @example secondarySlope(load, 900, 1440) // refused: the readings of the span past the end of primary span 0.18 of a log cycle:
 *   secondary compression needs 0.25 of a log cycle; go on reading
 */
export function secondarySlope(increment: Increment, from?: number, to?: number): Outcome<number> {
  const { cleaned, fit, logTime, jump } = increment;
  if (!cleaned.ok) return cleaned;
  if (from === undefined && to === undefined) {
    if (!logTime.ok) return logTime;
    const { tailSlope, noTailSlope } = logTime.value;
    if (noTailSlope) return notApplicable(noTailSlope);
    return given(Math.abs(tailSlope ?? 0), logTime.remarks);
  }
  const used = usedReadings(jump?.clean ?? cleaned.value, fit.ok ? fit.value : { leftOut: [] });
  const { times, readings } = used;
  const start = from ?? (logTime.ok ? logTime.value.tail.from : firstOf(times));
  const end = to ?? cleaned.value.lastTime;
  const index = indicesFrom(times, start * (1 - 1e-9), end * (1 + 1e-9));
  if (index.length < 2)
    return notApplicable(
      index.length === 1
        ? say`secondary compression needs 2 readings in its span (${digits(start, 3)} to ${digits(end, 3)} min); there is 1`
        : say`secondary compression needs 2 readings in its span (${digits(start, 3)} to ${digits(end, 3)} min); there are none`,
    );
  const span = index.map((i) => nth(times, i));
  const cycles = cyclesPast(span, endOfPrimary(increment));
  const short = noSlope(cycles, say`the readings of the span`);
  if (short) return notApplicable(short);
  if (jump && span.indexOf(jump.time) > 0) return notApplicable(jump.said);
  const line = lineOnLogTime(used, index);
  const sense = Math.sign(lastOf(readings) - firstOf(readings)) || 1;
  return given(
    line.slope * sense,
    cycles < GOOD ? [say`the tail is only ${fixed(cycles, 2)} of a log cycle long`] : [],
  );
}

/** t100 of the construction, or of the fit where the construction refuses; 0 where both refuse. */
const endOfPrimary = ({ fit, logTime }: Increment): number =>
  logTime.ok ? logTime.value.t100 : fit.ok ? T_END_OF_PRIMARY / fit.value.rate : 0;
