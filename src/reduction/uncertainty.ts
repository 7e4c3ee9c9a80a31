/**
 * Uncertainty of void ratio, strain, stress and cv from the stated uncertainties of the measurements: first order,
 * inputs independent, expanded by a coverage factor. Source: JCGM 100:2008 (GUM), 5.1.2; the derivatives follow from
 * the formulas.
 *
 * Not included: the disturbance of the sample, the variability of the ground, and the choice of a construction. The
 * spread of methods is interpretation, and is never part of an uncertainty: see `interpretationSpread`.
 */
import { strain, axialStress } from "./loading";
import { say, listed, type Message } from "./message";
import { badInput, figure, given, then, type Outcome } from "./outcome";
import { solidsHeight, voidRatio } from "./specimen";
import { waterDensity } from "./water";
import { coefficientOfConsolidation, type Drainage } from "./increment/cv";
import { firstOf, lastOf } from "./numeric/lists";
import { medianOfSorted } from "./numeric/median";

/**
 * A measured number with its standard uncertainty (one standard deviation), both in one unit; no `u` if it is not
 * stated.
 */
export interface Stated {
  readonly value: number;
  readonly u?: number;
}

export interface Contribution {
  readonly input: Message;
  /** Change of the result per unit of the input. */
  readonly sensitivity: number;
  /** The contribution of the input to the standard uncertainty. */
  readonly u: number;
  /** The share of the input in the variance, 0 to 1. */
  readonly share: number;
}

export interface Uncertain {
  readonly value: number;
  /** Standard uncertainty. */
  readonly u: number;
  readonly coverage: number;
  /** The value minus and plus coverage times u; for cv the value divided and multiplied by a factor. */
  readonly low: number;
  readonly high: number;
  /** Largest first. */
  readonly contributions: readonly Contribution[];
}

/** About 95 % if no single input dominates. Source: JCGM 100:2008, 6.3.3. */
const COVERAGE = 2;

type Term = readonly [input: Message, stated: Stated, sensitivity: number];

/** The interval value -+ k u. */
const symmetric = (value: number, expanded: number): [number, number] => [value - expanded, value + expanded];
/** The interval as a factor, for a number that is known by its ratio to the truth. */
const asFactor = (value: number, expanded: number): [number, number] => [
  value / Math.exp(expanded / value),
  value * Math.exp(expanded / value),
];

/** Adds the inputs in quadrature. An input without a stated uncertainty adds nothing, and gets a remark. */
function combine(value: number, terms: readonly Term[], k: number, interval = symmetric): Outcome<Uncertain> {
  for (const [input, { u }] of terms)
    if (u !== undefined && !(u >= 0 && Number.isFinite(u)))
      return badInput(say`the uncertainty of ${input} is ${u}: enter a standard deviation, 0 or more`);
  if (!(k > 0)) return badInput(say`the coverage factor is ${k}: enter 2 for about 95 %`);
  const parts = terms.flatMap(([input, { u }, sensitivity]) =>
    u === undefined ? [] : [{ input, sensitivity, u: Math.abs(sensitivity) * u }],
  );
  if (parts.length === 0) return badInput(say`no uncertainty is stated: enter one for an input at least`);
  const variance = parts.reduce((sum, part) => sum + part.u ** 2, 0);
  const u = Math.sqrt(variance);
  const contributions = parts
    .map((part) => ({ ...part, share: variance > 0 ? part.u ** 2 / variance : 0 }))
    .sort((a, b) => b.share - a.share);
  const [low, high] = interval(value, k * u);
  const silent = terms.filter(([, one]) => one.u === undefined).map(([input]) => input);
  const remarks = silent.length ? [say`no uncertainty is stated for ${listed(silent)}: it counts as zero`] : [];
  return given({ value, u, coverage: k, low, high, contributions }, remarks);
}

/** Adds a remark in front. */
const remarked = <T>(outcome: Outcome<T>, remark: Message | undefined): Outcome<T> =>
  outcome.ok && remark !== undefined ? given(outcome.value, [remark, ...outcome.remarks]) : outcome;

export interface VoidRatioInputs {
  /** Height of the specimen and diameter of the ring, mm. */
  readonly height: Stated;
  readonly diameter: Stated;
  /** Masses, g. */
  readonly ring: Stated;
  readonly ringAndDry: Stated;
  readonly specificGravity: Stated & { readonly assumed?: boolean };
  /** Temperature of the water, degrees C, for its density; 1.000 Mg/m3 without it. */
  readonly temperature?: number;
}

/**
 * Void ratio at a height, e = H A Gs rho_w / Md - 1: the relative error of each input is the relative error of 1 + e,
 * that of the diameter counts twice. Remarks an assumed specific gravity.
 * @example voidRatioUncertainty({ height: { value: 25.4, u: 0.02 }, diameter: { value: 63.508, u: 0.02 }, ring: { value: 70, u: 0.01 },
 *   ringAndDry: { value: 167.8, u: 0.01 }, specificGravity: { value: 2.7, u: 0.01 } }).value // { value: 1.221, u: 0.008532, low: 1.204,
 *   high: 1.238 }
 */
export function voidRatioUncertainty(inputs: VoidRatioInputs, k = COVERAGE): Outcome<Uncertain> {
  const { height, diameter, ring, ringAndDry, specificGravity: Gs, temperature } = inputs;
  const Md = ringAndDry.value - ring.value;
  const solids = then(waterDensity(temperature), (density) => solidsHeight(Md, Gs.value, diameter.value, density));
  const e = then(solids, (Hs) => voidRatio(height.value, Hs));
  const outcome = then(e, (value) => {
    const whole = 1 + value;
    return combine(
      value,
      [
        [say`the specific gravity`, Gs, whole / Gs.value],
        [say`the height`, height, whole / height.value],
        [say`the diameter`, diameter, (2 * whole) / diameter.value],
        [say`the ring and dry soil`, ringAndDry, -whole / Md],
        [say`the ring`, ring, whole / Md],
      ],
      k,
    );
  });
  return remarked(
    outcome,
    Gs.assumed ? say`the specific gravity is assumed: its uncertainty is an estimate` : undefined,
  );
}

export interface StrainInputs {
  /** Lengths in one unit. */
  readonly deformation: Stated;
  readonly initialHeight: Stated;
  readonly apparatus?: Stated;
}

/**
 * Strain (d - d_a) / H0.
 * @example strainUncertainty({ deformation: { value: 0.5, u: 0.002 }, initialHeight: { value: 20, u: 0.02 } }).value // { value: 0.025, u:
 *   0.0001031, low: 0.02479, high: 0.02521 }
 */
export function strainUncertainty(inputs: StrainInputs, k = COVERAGE): Outcome<Uncertain> {
  const { deformation, initialHeight, apparatus } = inputs;
  return then(strain(deformation.value, initialHeight.value, apparatus?.value), (value) =>
    combine(
      value,
      [
        [say`the deformation`, deformation, 1 / initialHeight.value],
        [say`the initial height`, initialHeight, -value / initialHeight.value],
        ...(apparatus ? [[say`the apparatus deflection`, apparatus, -1 / initialHeight.value] as const] : []),
      ],
      k,
    ),
  );
}

export interface StressInputs {
  /** Force, N, on the specimen or on the hanger. */
  readonly force: Stated;
  /** mm */
  readonly diameter: Stated;
  readonly leverRatio?: Stated;
}

/**
 * Stress L F / A, kPa.
 * @example stressUncertainty({ force: { value: 98.0665, u: 0.5 }, diameter: { value: 63.5, u: 0.05 } }).value // { value: 30.97, u:
 *   0.1652, low: 30.64, high: 31.3 }
 */
export function stressUncertainty(inputs: StressInputs, k = COVERAGE): Outcome<Uncertain> {
  const { force, diameter, leverRatio } = inputs;
  return then(axialStress(force.value, diameter.value, leverRatio?.value), (value) =>
    combine(
      value,
      [
        [say`the force`, force, value / force.value],
        [say`the diameter`, diameter, (-2 * value) / diameter.value],
        ...(leverRatio ? [[say`the lever ratio`, leverRatio, value / leverRatio.value] as const] : []),
      ],
      k,
    ),
  );
}

export interface CvInputs {
  /** 0.197 or 0.848, according to the construction: exact by convention. */
  readonly timeFactor: number;
  /** t50 or t90, minutes, with the uncertainty from the interval of the fit or from a pick. */
  readonly time: Stated;
  /** Height at the middle of the load, mm. */
  readonly height: Stated;
  readonly drainage: Drainage;
}

/**
 * cv = T Hdr^2 / t, mm2/min; its interval is a factor, since cv is known by its ratio to the truth.
 * @example cvUncertainty({ timeFactor: 0.197, time: { value: 19, u: 1 }, height: { value: 22.4, u: 0.1 }, drainage: "double" }).value // {
 *   value: 1.301, u: 0.06943, low: 1.169, high: 1.447 }
 */
export function cvUncertainty(inputs: CvInputs, k = COVERAGE): Outcome<Uncertain> {
  const { timeFactor, time, height, drainage } = inputs;
  for (const [name, { value }] of [
    [say`the time`, time],
    [say`the height`, height],
  ] as const)
    if (!(value > 0)) return badInput(say`${name} is ${figure(value)}: it must be greater than zero`);
  const value = coefficientOfConsolidation(timeFactor, time.value, height.value, drainage);
  return combine(
    value,
    [
      [say`the time`, time, -value / time.value],
      [say`the height`, height, (2 * value) / height.value],
    ],
    k,
    asFactor,
  );
}

/**
 * The interval of a hand construction is wider than the interval of the fit on the same readings by this factor: the
 * construction uses fewer readings. With HAND_MODEL_SHARE, such intervals held the truth in 94 % (log time) and 91 %
 * (root time) of simulated curves with noise (uncertainty-coverage.test.ts).
 */
const HAND_WIDENING = { "log time": 1.5, "root time": 3 } as const;
/** The share of the model in the uncertainty of ln cv, one standard deviation. */
const HAND_MODEL_SHARE = 0.015;

export type HandMethod = keyof typeof HAND_WIDENING;

/**
 * Relative standard uncertainty of t50 or t90 by a hand construction, from the 95 % interval that the fit to theory gives
 * for cv on the same readings. Refuses an interval without an end.
 * @example timeUncertainty("log time", 0.9, 1.1) // 0.07673
 */
export function timeUncertainty(method: HandMethod, low: number, high: number): Outcome<number> {
  if (!(low > 0 && high > low && Number.isFinite(high)))
    return badInput(
      say`the interval of the fit is ${figure(low)} to ${figure(high)}: it must have two ends above zero`,
    );
  const ofFit = Math.log(high / low) / 2 / COVERAGE;
  return given(Math.hypot(HAND_WIDENING[method] * ofFit, HAND_MODEL_SHARE));
}

/**
 * The results of several constructions: interpretation, without a probability. It is shown beside an uncertainty, never
 * added to it.
 */
export interface InterpretationSpread {
  readonly least: number;
  readonly greatest: number;
  readonly median: number;
  readonly count: number;
}

/**
 * The range of the results of several constructions on the same readings. Refuses fewer than two.
 * @example interpretationSpread([100, 120, 110]) // { least: 100, greatest: 120, median: 110, count: 3 }
 * @example interpretationSpread([100]) // refused: a spread needs the results of two constructions at least
 */
export function interpretationSpread(values: readonly number[]): Outcome<InterpretationSpread> {
  if (values.length < 2) return badInput(say`a spread needs the results of two constructions at least`);
  const sorted = [...values].sort((a, b) => a - b);
  return given({
    least: firstOf(sorted),
    greatest: lastOf(sorted),
    median: medianOfSorted(sorted),
    count: sorted.length,
  });
}
