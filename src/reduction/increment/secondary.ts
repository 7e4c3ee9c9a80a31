/**
 * Secondary compression: the slope of the tail on the log-time plot. As strain per log cycle it is C-alpha-epsilon
 * (Ladd, 1967; ASTM D2435): whoever divides says by which height.
 */
import { given, notApplicable, type Outcome } from "../outcome";
import { straightLine } from "../numeric/straight-line";
import type { Increment } from "./reduce";

/** Shortest span that shows a slope of its own, log cycles. Common practice wants half to one; half is remarked. */
const SHORTEST = 0.25;
const GOOD = 0.5;

/**
 * Reading per log cycle, positive in the direction of the movement, over a span of times (minutes): by least squares
 * through the readings of a span that is given, or the tail of the log-time construction. Refuses where the span holds
 * fewer than 2 readings or is shorter than a quarter of a log cycle, and where log time itself refuses.
 */
export function secondarySlope({ cleaned, fit, logTime }: Increment, from?: number, to?: number): Outcome<number> {
  if (!cleaned.ok) return cleaned;
  if (from === undefined && to === undefined)
    return logTime.ok ? given(Math.abs(logTime.value.tailSlope), logTime.remarks) : logTime;
  const { times, readings, weights } = cleaned.value.series;
  const leftOut = fit.ok ? fit.value.leftOut : [];
  const start = from ?? (logTime.ok ? logTime.value.tail.from : times[0]);
  const end = to ?? cleaned.value.lastTime;
  const index = times
    .map((_, i) => i)
    .filter((i) => times[i] >= start * (1 - 1e-9) && times[i] <= end * (1 + 1e-9) && !leftOut.includes(i));
  if (index.length < 2)
    return notApplicable(
      `secondary compression needs 2 readings in its span (${shown(start)} to ${shown(end)} min); there ${index.length === 1 ? "is 1" : "are none"}`,
    );
  const cycles = Math.log10(times[index[index.length - 1]] / times[index[0]]);
  if (cycles < SHORTEST)
    return notApplicable(
      `the span of secondary compression is ${cycles.toFixed(2)} of a log cycle long: at least ${SHORTEST} is needed; go on reading`,
    );
  const line = straightLine(
    index.map((i) => Math.log10(times[i])),
    index.map((i) => readings[i]),
    index.map((i) => weights[i]),
  );
  const sense = Math.sign(readings[readings.length - 1] - readings[0]) || 1;
  return given(line.slope * sense, cycles < GOOD ? [`the tail is only ${cycles.toFixed(2)} of a log cycle long`] : []);
}

const shown = (t: number): string => String(Number(t.toPrecision(3)));
