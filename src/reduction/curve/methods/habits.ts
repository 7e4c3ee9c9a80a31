/** How a method reads by its nature: what a rounded bend and a flattening virgin part do to it, and why it may read alone. */
import type { MethodName } from "../preconsolidation";

/**
 * Percent by which a method reads above (+) or below (-) the corner, in the middle of 400 made curves
 * (test/reduction/curve/habits holds these figures): `rounded` on widely rounded curves, as of a disturbed specimen, `flattening`
 * on curves whose virgin part flattens, as of a sensitive clay. Janbu's needs finer load steps than those curves have.
 */
export const HABITS: Readonly<Record<MethodName, { readonly rounded?: number; readonly flattening?: number }>> = {
  casagrande: { rounded: 9, flattening: 0 },
  work: { rounded: 15, flattening: -4 },
  bilog: { rounded: 7, flattening: -6 },
  intersection: { rounded: 1, flattening: -8 },
  pacheco_silva: { rounded: -6, flattening: -10 },
  janbu: {},
};

/** Why a method may read outside what the points allow for the corner of the curve. */
export const ALONE: Readonly<Record<MethodName, string>> = {
  casagrande: "greatest curvature depends on the scale of the drawing",
  work: "the greatest stresses weigh most, and on coarse loads or a rounded bend its lines meet late",
  bilog: "it takes the virgin part as straight on ln(1 + e)",
  intersection: "it takes both parts as straight and leaves the rounding out",
  pacheco_silva: "an approximation by construction, which reads low",
  janbu: "it reads half-way between the ends of two load steps",
};

const percent = (value: number): string =>
  value === 0 ? "neither high nor low" : `about ${Math.abs(value)} percent ${value > 0 ? "high" : "low"}`;

/** What the form of a curve does to a method, in words; undefined where it does nothing that is known. */
export function effectOn(
  method: MethodName,
  form: { readonly flattens: boolean; readonly wide: boolean },
): string | undefined {
  const { rounded, flattening } = HABITS[method];
  if (form.flattens && flattening !== undefined)
    return `where the virgin part flattens it reads ${percent(flattening)}`;
  if (form.wide && rounded !== undefined) return `on a widely rounded bend it reads ${percent(rounded)}`;
  return undefined;
}
