/**
 * Values of the laboratory or the field curve from which a settlement is calculated: void ratio, mv and M over an increase
 * of stress from the in-situ stress, and the slopes of the curve as strain per log cycle of stress.
 */
import { say, digits, distinct, type Message } from "../message";
import { badInput, given, notApplicable, then, type Outcome, type Refusal } from "../outcome";
import { voidRatioAtStrain } from "../specimen";
import { curveAt, readOn } from "./curve-at";
import { fieldCurve, type FieldCurve, type FieldCurveInput } from "./field-curve";
import {
  compressionIndex,
  E0_NEEDED,
  initialVoidRatio,
  recompressionIndex,
  swellingIndex,
  type Index,
} from "./indices";
import { branches, type Branches } from "./shape/branches";
import type { TestCurve } from "./shape/points";
import { constrainedModulus, volumeCompressibility, type Load } from "./stiffness";
import { remarksOnRatio } from "./stress-history";

/** The increase of stress in kPa where none was typed: mv is usually given over it. */
export const DESIGN_INCREASE = 100;

export interface DesignInput {
  readonly test: TestCurve;
  /** Without it, the values that need it are refused, and the others are given. */
  readonly inSituStress?: number;
  /** Rise of stress above the in-situ stress. */
  readonly increase: number;
  /** For void ratios: the first void ratio of the test if omitted. */
  readonly initialVoidRatio?: number;
  /** Entered or read from the curve; the remarks say with it which part of the increase is virgin. */
  readonly preconsolidationStress: Outcome<number>;
  /** Reads e, mv, M, CR and the modulus number from Schmertmann's field curve, in the place of the laboratory curve. */
  readonly field?: Pick<FieldCurveInput, "factor" | "picks" | "recompressionIndex">;
}

/** Stresses in the unit of the test; mv per unit of stress; ratios are strain per log cycle of stress. */
export interface DesignParameters {
  readonly eInSitu: Outcome<number>;
  readonly eFinal: Outcome<number>;
  /** mv refers to the height at the in-situ stress. */
  readonly mv: Outcome<number>;
  readonly M: Outcome<number>;
  readonly CR: Outcome<Index>;
  readonly RR: Outcome<Index>;
  readonly SR: Outcome<Index>;
  readonly modulusNumber: Outcome<number>;
  /** The refusal, if the in-situ or the final stress lies beyond the curve. */
  readonly beyond?: Refusal;
}

/**
 * Janbu's modulus number of virgin compression: m = ln 10 / CR, so that M = m times the stress (stress exponent 0, as for
 * clay). Source: Janbu, N., 1963, Soil compressibility as determined by oedometer and triaxial tests, Proc. Eur. Conf. Soil
 * Mech. Found. Eng., Wiesbaden, vol. 1, 19-25 (seen second hand). `compressionRatio` by strain, above zero.
 */
export const modulusNumber = (compressionRatio: number): number => Math.LN10 / compressionRatio;

/** Below this ratio of mv on the reload to mv on first loading there is a remark. Common practice, no source. */
const SOFTENED = 0.7;

const NO_IN_SITU = badInput(say`the in-situ stress is blank or zero: enter a number greater than zero`);

/** The field curve, if the values are to be read from it; undefined if they are those of the laboratory curve. */
function fieldOf({ test, field, inSituStress, preconsolidationStress }: DesignInput, e0: number | undefined) {
  if (!field) return undefined;
  if (inSituStress === undefined) return NO_IN_SITU;
  if (e0 === undefined) return E0_NEEDED;
  return then(preconsolidationStress, (stress) =>
    fieldCurve({ ...field, test, inSituStress, initialVoidRatio: e0, preconsolidationStress: stress }),
  );
}

/** The void ratio of the field curve at a stress, interpolated linearly on log of stress. */
const onField = (curve: FieldCurve, stress: number, name: Message): Outcome<number> =>
  readOn(
    curve.points.map((point, index) => ({ row: index + 1, stress: point.stress, value: point.voidRatio })),
    stress,
    { line: say`the field curve`, name },
  );

/**
 * Refuses everything only if the rows make no curve. Each value has its own outcome: without an in-situ stress the
 * slopes are still given; a value at a stress beyond the curve is refused (method), and the refusal names the stress.
 * @example designParameters({ test: clay, inSituStress: 30, increase: 100, preconsolidationStress: given(80) }).value.mv // 0.0008911
 */
export function designParameters(input: DesignInput): Outcome<DesignParameters> {
  const found = branches(input.test);
  if (!found.ok) return found;
  const { test, inSituStress, increase } = input;
  const e0 = initialVoidRatio(test, input.initialVoidRatio);
  const final = inSituStress === undefined ? undefined : inSituStress + increase;
  const field = fieldOf(input, e0);
  const kind = field ? "e" : test.kind;
  const onCurve = (stress: number | undefined, name: Message): Outcome<number> =>
    stress === undefined
      ? NO_IN_SITU
      : field
        ? then(field, (curve) => onField(curve, stress, name))
        : curveAt(test, stress, "loading", name);
  const before = onCurve(inSituStress, say`the in-situ stress`);
  const after = onCurve(final, say`the in-situ stress plus the increase`);
  const load = then(before, (from) =>
    then(after, (to): Outcome<Load> => given({ stress: [inSituStress ?? 0, final ?? 0], value: [from, to], kind })),
  );
  const mv = then(load, (one) => volumeCompressibility(one));
  const asVoidRatio = (value: Outcome<number>): Outcome<number> =>
    kind === "e" ? value : then(value, (strain) => (e0 === undefined ? E0_NEEDED : voidRatioAtStrain(strain, e0)));
  const asStrain = (index: Outcome<Index>): Outcome<Index> =>
    test.kind === "strain"
      ? index
      : then(index, (one) => (e0 === undefined ? E0_NEEDED : given({ ...one, value: one.value / (1 + e0) })));
  const CR = field
    ? then(field, ({ compressionIndex: Cc }) =>
        e0 === undefined
          ? E0_NEEDED
          : given<Index>({ value: Cc / (1 + e0), basis: say`the field curve`, readings: [] }),
      )
    : asStrain(compressionIndex(test));
  const parameters: DesignParameters = {
    eInSitu: asVoidRatio(before),
    eFinal: asVoidRatio(after),
    mv,
    M: then(load, (one) => constrainedModulus(one)),
    CR,
    RR: asStrain(recompressionIndex(test)),
    SR: asStrain(swellingIndex(test)),
    modulusNumber: then(CR, ({ value }) =>
      value > 0 ? given(modulusNumber(value)) : notApplicable(say`the virgin line is flat: it has no modulus number`),
    ),
    beyond: [before, after].find((one): one is Refusal => !one.ok && one.fault === "method"),
  };
  const said = [parameters.CR, parameters.RR, parameters.SR].flatMap((one) => (one.ok ? one.remarks : []));
  const range =
    inSituStress === undefined || final === undefined
      ? [say`no in-situ stress: e_in_situ, e_final, mv and M are not given`]
      : remarksOnRange(input, [inSituStress, final], mv, found.value);
  return given(parameters, distinct([...found.remarks, ...said, ...range]));
}

/** Remarks on which part of the increase is virgin; if all of it is recompression, also mv on the reload loop. */
function remarksOnRange(
  { test, preconsolidationStress, field }: DesignInput,
  [from, to]: readonly [number, number],
  mv: Outcome<number>,
  { loops }: Branches,
): Message[] {
  if (!preconsolidationStress.ok)
    return [
      say`the preconsolidation stress is not known, nor which part of ${digits(from, 4)} to ${digits(to, 4)} is virgin: adopt or give one`,
    ];
  const yieldStress = preconsolidationStress.value;
  const at = digits(yieldStress, 3);
  const remarks = remarksOnRatio(yieldStress / from);
  if (from < yieldStress && yieldStress < to)
    remarks.push(
      say`the increase passes the preconsolidation stress (${at}): mv and M mix recompression and virgin compression`,
    );
  if (to > yieldStress) return remarks;
  remarks.push(
    say`the increase stays below the preconsolidation stress (${at}): RR applies, CR and the modulus number do not`,
  );
  if (field) return remarks;
  const reload = loops.at(-1)?.reload ?? [];
  const words = { line: say`the reload`, name: say`the stress` };
  const onReload =
    reload.length > 1
      ? then(readOn(reload, from, words), (a) => then(readOn(reload, to, words), (b) => given([a, b] as const)))
      : undefined;
  const stiffer = onReload?.ok && volumeCompressibility({ stress: [from, to], value: onReload.value, kind: test.kind });
  if (stiffer && stiffer.ok && mv.ok && stiffer.value < SOFTENED * mv.value)
    remarks.push(
      say`on the reload mv is ${digits(stiffer.value / mv.value, 2)} times that of first loading, which disturbance may have softened`,
    );
  return remarks;
}
