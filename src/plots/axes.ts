/** Domains, ticks and tick labels of axes. */
import type { ConstructionLine } from "../reduction/construction";
import { firstOf, neighbours } from "../reduction/numeric/lists";
import { CHARACTER } from "./lettering";
import type { DrawnScale, PlotAxis } from "./spec";

/** The power of ten at or below a value, and at or above it; rounding of the logarithm of 0.1 is allowed for. */
const decadeBelow = (value: number): number => Math.floor(Math.log10(value) + 1e-9);
const decadeAbove = (value: number): number => Math.ceil(Math.log10(value) - 1e-9);

/** Whole decades around the positive values; at least one decade. */
export function wholeDecades(values: readonly number[]): [number, number] {
  const positive = values.filter((value) => value > 0);
  if (positive.length === 0) return [1, 10];
  const low = decadeBelow(Math.min(...positive));
  return [10 ** low, 10 ** Math.max(decadeAbove(Math.max(...positive)), low + 1)];
}

/** The margin on both sides of the values, as a share of their extent. */
const MARGIN = 0.06;

/** The extent of the values with a margin on both sides. */
export function padded(values: readonly number[]): [number, number] {
  if (values.length === 0) return [0, 1];
  const low = Math.min(...values);
  const high = Math.max(...values);
  const pad = high > low ? (high - low) * MARGIN : Math.abs(high) * MARGIN || 1;
  return [low - pad, high + pad];
}

/** A domain of `padded` that begins at zero if only its margin lies below zero: no value is negative then. */
export const notBelowZero = ([low, high]: readonly [number, number]): readonly [number, number] =>
  low < 0 && low + ((high - low) * MARGIN) / (1 + 2 * MARGIN) >= -1e-9 * high ? [0, high] : [low, high];

/** From zero to a little beyond the largest value. */
export const fromZero = (values: readonly number[]): [number, number] => [0, Math.max(1e-9, ...values) * 1.04];

/** The powers of ten of a log axis, and the grid lines at 2 to 9 between them. */
export function logTicks([low, high]: readonly [number, number]): { decades: number[]; minor: number[] } {
  const decades: number[] = [];
  const minor: number[] = [];
  for (let power = decadeBelow(low); power <= decadeAbove(high); power++) {
    decades.push(10 ** power);
    if (power < decadeAbove(high)) for (let digit = 2; digit <= 9; digit++) minor.push(digit * 10 ** power);
  }
  return { decades, minor };
}

/** Even ticks of 1, 2 or 5 times a power of ten, about `count` of them. */
export function evenTicks([low, high]: readonly [number, number], count: number): number[] {
  const rough = (high - low) / Math.max(1, count);
  const power = 10 ** Math.floor(Math.log10(rough));
  const step = power * ([1, 2, 5].find((digit) => digit * power >= rough) ?? 10);
  const ticks: number[] = [];
  for (let n = Math.ceil(low / step - 1e-9); n * step <= high + step * 1e-9; n++) ticks.push(n * step + 0);
  return ticks;
}

/** The label of a tick, without rounding errors of binary numbers; a thin space separates thousands. */
export function tickText(value: number): string {
  const parts = String(Number(value.toPrecision(10))).split(".");
  const [whole, fraction] = [firstOf(parts), parts[1]];
  const spaced = whole.length > 4 ? whole.replace(/\B(?=(\d{3})+$)/g, "\u2009") : whole;
  return fraction === undefined ? spaced : `${spaced}.${fraction}`;
}

/** Space between the labels of two ticks, as a share of the font size. */
const BETWEEN_LABELS = 0.5;

/**
 * The labels of ticks that lie `apart` pixels apart: all of them, or every second, third and so on, so that neighbours do
 * not touch; the others are blank.
 */
export function spacedLabels(labels: readonly string[], apart: number, fontSize: number): string[] {
  const widths = labels.map((label) => fontSize * CHARACTER * label.length);
  const fits = (every: number): boolean =>
    neighbours(widths.filter((_, index) => index % every === 0)).every(
      ([one, next]) => (one + next) / 2 + BETWEEN_LABELS * fontSize <= every * apart,
    );
  let every = 1;
  while (every < labels.length && !fits(every)) every++;
  return labels.map((label, index) => (index % every === 0 ? label : ""));
}

/** Labels of ticks with as many decimals as distinguish neighbouring ticks, equally many for all. */
export function evenTickText(ticks: readonly number[]): (value: number) => string {
  const [first, second] = ticks;
  const step = first !== undefined && second !== undefined ? second - first : 1;
  const decimals = Math.max(0, -Math.floor(Math.log10(step) + 1e-9));
  return (value) => (decimals === 0 ? tickText(Math.round(value)) : (value + 0).toFixed(decimals));
}

/** The position of a value along an axis of `length`, from 0 at its low end (left, or bottom). */
export function along(axis: PlotAxis, value: number, length: number): number {
  const [low, high] = axis.domain;
  const share =
    axis.scale === "log"
      ? (Math.log10(value) - Math.log10(low)) / (Math.log10(high) - Math.log10(low))
      : (value - low) / (high - low);
  return (axis.reversed ? 1 - share : share) * length;
}

/**
 * Extends a guide to the axis that it is read from: a level to the reading axis at the left, a vertical line from the
 * curve (its first point) down to the axis below. Other lines stay unchanged.
 */
export function toAxis<L extends Omit<ConstructionLine, "label">>(line: L, x: PlotAxis, y: PlotAxis): L {
  const [start, end] = line.points;
  if (line.style !== "guide" || !start || !end || line.points.length > 2) return line;
  const [[x0, y0], [x1, y1]] = [start, end];
  if (y0 === y1)
    return {
      ...line,
      points: [
        [x.domain[0], y0],
        [Math.max(x0, x1), y1],
      ],
    };
  if (x0 === x1)
    return {
      ...line,
      points: [
        [x0, y0],
        [x1, y.domain[y.reversed ? 1 : 0]],
      ],
    };
  return line;
}

/**
 * Height over width of a frame in which the stretch has its stated slope (x is a log axis); undefined if the frame
 * would be too flat or too tall to read.
 */
export function scaledShape(x: PlotAxis, y: PlotAxis, { perCycle, slope }: DrawnScale): number | undefined {
  const cycles = Math.log10(x.domain[1] / x.domain[0]);
  const shape = (slope * (y.domain[1] - y.domain[0])) / perCycle / cycles;
  return shape >= 0.45 && shape <= 1.9 ? shape : undefined;
}
