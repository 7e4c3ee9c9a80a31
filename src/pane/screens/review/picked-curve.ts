/** The compression curve of a test record under review: the values that its picks give, and its handles. */
import { firstOf, lastOf, nth } from "../../../reduction/numeric/lists";
import { compressionIndex, recompressionIndex, swellingIndex, type Index } from "../../../reduction/curve/indices";
import { picksOfYield, type CurvePickName, type CurvePicks } from "../../../reduction/curve/picks";
import { METHOD_PLOTS } from "../../../plots/methods";
import { preconsolidation, type Preconsolidation } from "../../../reduction/curve/preconsolidation";
import type { MethodName } from "../../../reduction/curve/method-words";
import { branches, type Branches } from "../../../reduction/curve/shape/branches";
import type { LoadPoint, TestCurve } from "../../../reduction/curve/shape/points";
import type { Outcome } from "../../../reduction/outcome";
import type { Handle, HandleSet } from "./handles";

export interface CurveValues {
  /** The stress by the method of the sheet, in the unit of the sheet. */
  readonly stress: Outcome<Preconsolidation>;
  readonly Cc: Outcome<Index>;
  readonly Cr: Outcome<Index>;
  readonly Cs: Outcome<Index>;
}

/** The values that a test gives with picks, by the method whose stress the sheet reports. */
export const curveValues = (test: TestCurve, picks: CurvePicks, method: MethodName): CurveValues => ({
  stress: preconsolidation(test, { method, picks }),
  Cc: compressionIndex(test, undefined, picks),
  Cr: recompressionIndex(test, undefined, picks),
  Cs: swellingIndex(test, undefined, picks),
});

const BESIDE = ["loop_from", "loop_to", "unloading_from", "unloading_to"] as const;

/**
 * The picks that a method uses. The lines of loop and unloading stand in the plane of void ratio against log stress
 * only; Janbu's method reads moduli, and draws no line.
 */
function picksOf(method: MethodName): readonly CurvePickName[] {
  if (method === "janbu") return [];
  return METHOD_PLOTS[method].quantity ? picksOfYield(method) : [...picksOfYield(method), ...BESIDE];
}

const stressesOf = (points: readonly LoadPoint[]): number[] =>
  [...new Set(points.map(({ stress }) => stress))].sort((a, b) => a - b);

/** The stresses at which the ends of each line may stand. */
function stopsOf({ firstLoading, loops, finalUnloading }: Branches): (name: CurvePickName) => readonly number[] {
  const loop = loops.find(({ reload }) => reload.length > 1);
  const top = loop && firstOf(loop.unload).stress;
  const ofLoop =
    loop && top !== undefined ? stressesOf([...loop.unload, ...loop.reload].filter(({ stress }) => stress <= top)) : [];
  const [ofLoading, ofUnloading] = [
    stressesOf(firstLoading),
    finalUnloading.length > 1 ? stressesOf(finalUnloading) : [],
  ];
  return (name) => (name.startsWith("loop") ? ofLoop : name.startsWith("unloading") ? ofUnloading : ofLoading);
}

/** The place of a handle if the curve shows no yield, and so offers none. */
function offered(name: CurvePickName, stops: readonly number[]): number {
  if (name === "virgin_from") return nth(stops, stops.length - 2);
  if (name === "virgin_to") return lastOf(stops);
  if (name === "recompression_from") return firstOf(stops);
  return name === "recompression_to" ? nth(stops, 1) : nth(stops, Math.floor(stops.length / 2));
}

const kindOf = (name: CurvePickName): Handle["kind"] =>
  name === "greatest_curvature" ? "point" : name.endsWith("_from") ? "from" : "to";

/**
 * The handles of a curve in the plane of a method: `standing` says where the picks stand. A line that the test does not
 * have has no handles.
 */
export function handlesOfCurve(test: TestCurve, standing: CurvePicks, method: MethodName): HandleSet {
  const known = branches(test);
  if (!known.ok) return { handles: [], step: 1 };
  const stopsFor = stopsOf(known.value);
  const handles = picksOf(method).flatMap((name): Handle[] => {
    const stops = stopsFor(name);
    if (stops.length < 2) return [];
    const value = standing[name] ?? offered(name, stops);
    const [least, most] = [Math.min(firstOf(stops), value), Math.max(lastOf(stops), value)];
    return [{ name, kind: kindOf(name), value, least, most, stops }];
  });
  return { handles, step: 1 };
}

/** The values in sight while a handle moves, and the name under which each may be adopted on the sheet. */
export const PICKED_VALUES = [
  {
    letters: "σ′p",
    unit: true,
    adoptedAs: "preconsolidation_stress",
    of: ({ stress }: CurveValues): number | undefined => (stress.ok ? stress.value.stress : undefined),
  },
  { letters: "Cc", unit: false, adoptedAs: "compression_index", of: ({ Cc }: CurveValues) => valueOf(Cc) },
  { letters: "Cr", unit: false, adoptedAs: "recompression_index", of: ({ Cr }: CurveValues) => valueOf(Cr) },
  { letters: "Cs", unit: false, adoptedAs: "swelling_index", of: ({ Cs }: CurveValues) => valueOf(Cs) },
] as const;

const valueOf = (index: Outcome<Index>): number | undefined => (index.ok ? index.value.value : undefined);
