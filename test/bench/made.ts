/** The data of the bench: made curves, so that every run measures the same. */
import { SCENARIOS, type TimeCurve } from "../generators/time-curves";

export function curvesOf(name: string, count: number): TimeCurve[] {
  const scenario = SCENARIOS.find((candidate) => candidate.name === name);
  if (!scenario) throw new Error(`no scenario "${name}"`);
  return Array.from({ length: count }, (_, i) => scenario.make(i + 1));
}

export const column = (values: readonly number[]): number[][] => values.map((value) => [value]);

/** Cells of `count` logger readings at a steady rate, stretched from a curve of the generator. */
export function loggerColumns(count: number): [times: number[][], readings: number[][]] {
  const [curve] = curvesOf("logger at a steady rate", 1);
  if (!curve) throw new Error("no curve was made");
  const last = curve.times[curve.times.length - 1] ?? NaN;
  const times = Array.from({ length: count }, (_, i) => ((i + 1) * last) / count);
  const readings = times.map((_, i) => curve.readings[Math.floor((i * curve.readings.length) / count)] ?? NaN);
  return [column(times), column(readings)];
}

export const LOADS_OF_LOGGER = 12;

/** A logger's file of so many lines: time in seconds, stress, and reading, for twelve loads. */
export function loggerLines(count: number): string {
  const lines = Array.from({ length: count }, (_, line) => {
    const load = Math.floor((line * LOADS_OF_LOGGER) / count);
    const reading = load / 5 + Math.log10(1 + (line % (count / LOADS_OF_LOGGER))) / 50;
    return `${line};${12.5 * 2 ** load};${reading.toFixed(4)}`;
  });
  return ["Time (s);Stress (kPa);Reading (mm)", ...lines].join("\n");
}
