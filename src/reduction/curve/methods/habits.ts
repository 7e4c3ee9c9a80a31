/**
 * How each method errs: the effect of a rounded bend and of a flattening virgin part, and why the method may lie
 * outside the range.
 */
import { say, type Message } from "../../message";
import type { MethodName } from "../method-words";

/**
 * Percent by which a method reads above (+) or below (-) the corner, the median of 400 made curves
 * (test/reduction/curve/habits compares these figures): `rounded` on widely rounded curves, like those of a disturbed
 * specimen, `flattening` on curves whose virgin part flattens, like those of a sensitive clay. Janbu's method needs
 * finer load steps than these curves have.
 */
export const HABITS: Readonly<Record<MethodName, { readonly rounded?: number; readonly flattening?: number }>> = {
  casagrande: { rounded: 9, flattening: 0 },
  work: { rounded: 15, flattening: -4 },
  bilog: { rounded: 7, flattening: -6 },
  intersection: { rounded: 1, flattening: -8 },
  pacheco_silva: { rounded: -6, flattening: -10 },
  janbu: {},
};

/** Why a method may read outside the range that the points allow for the corner of the curve. */
export const ALONE: Readonly<Record<MethodName, Message>> = {
  casagrande: say`greatest curvature depends on the scale of the drawing`,
  work: say`the greatest stresses weigh most, and on coarse loads or a rounded bend its lines meet late`,
  bilog: say`it takes the virgin part as straight on ln(1 + e)`,
  intersection: say`it takes both parts as straight and leaves the rounding out`,
  pacheco_silva: say`an approximation by construction, which reads low`,
  janbu: say`it reads half-way between the ends of two load steps`,
};

const percent = (value: number): Message =>
  value > 0
    ? say`about ${value} percent high`
    : value < 0
      ? say`about ${-value} percent low`
      : say`neither high nor low`;

/** The effect that the form of a curve has on a method, in words; undefined if no effect is known. */
export function effectOn(
  method: MethodName,
  form: { readonly flattens: boolean; readonly wide: boolean },
): Message | undefined {
  const { rounded, flattening } = HABITS[method];
  if (form.flattens && flattening !== undefined)
    return say`where the virgin part flattens it reads ${percent(flattening)}`;
  if (form.wide && rounded !== undefined) return say`on a widely rounded bend it reads ${percent(rounded)}`;
  return undefined;
}
