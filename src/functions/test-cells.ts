/** Reads the cells of a whole test: its rows, the kind of its values, and the picks by hand. */
import { testCurve, type Kind, type TestCurve } from "../reduction/curve/shape/points";
import { preconsolidation, type Preconsolidation } from "../reduction/curve/preconsolidation";
import { METHOD_NAMES, type MethodName } from "../reduction/curve/method-words";
import { CURVE_PICK_NAMES, type CurvePickName, type CurvePicks } from "../reduction/curve/picks";
import { nth } from "../reduction/numeric/lists";
import { say, verbatim } from "../reduction/message";
import { then, type Outcome } from "../reduction/outcome";
import { refuseCell, toChoice, toOptionalNonZero, toOptionalPositive, toPair } from "./cells";
import { toPickValues } from "./pick-cells";
import { memoize } from "../reduction/numeric/memoize";

const KINDS = ["e", "strain"] as const;

/** The rows of a test as plain lists, blanks as 0, without the blank rows at the end. */
export function toLists(stresses: unknown, values: unknown): [Float64Array, Float64Array] {
  const [s, v] = toPair(stresses, say`the stresses`, values, say`the values`);
  let length = s.length;
  while (length > 0 && !s[length - 1]) length--;
  const plain = (cells: readonly (number | null)[]) => Float64Array.from(cells.slice(0, length), (cell) => cell ?? 0);
  return [plain(s), plain(v)];
}

export const toKind = (kind: unknown): Kind => toChoice(kind, say`the kind`, KINDS, "e");

/** The value before the first load; undefined if blank or 0. */
const toInitial = (argument: unknown): number | undefined => toOptionalNonZero(argument, say`the initial value`);

export const toTest = (stresses: unknown, values: unknown, kind: unknown, initial?: unknown): Outcome<TestCurve> => {
  const [s, v] = toLists(stresses, values);
  return testCurve(Array.from(s), Array.from(v), toKind(kind), toInitial(initial));
};

/** Picks of the curve from a range of names and stresses. */
export function toCurvePicks(argument: unknown): CurvePicks {
  const picks = toPickValues(argument, CURVE_PICK_NAMES);
  for (const name of CURVE_PICK_NAMES) {
    const stress = picks[name] ?? 0;
    if (stress < 0)
      return refuseCell(say`the pick ${verbatim(name)} is a stress of ${stress}, which cannot be: correct it`);
  }
  return picks;
}

/** One value per name, NaN for none. */
const asList = (picks: CurvePicks): Float64Array => Float64Array.from(CURVE_PICK_NAMES, (name) => picks[name] ?? NaN);

const reduced = memoize((stresses, values, options, picked): Outcome<Preconsolidation> => {
  const kind = nth(KINDS, nth(options, 0));
  const method = nth(METHOD_NAMES, nth(options, 1));
  const [, , drawingSlope, initial] = Array.from(options);
  const picks: Partial<Record<CurvePickName, number>> = {};
  CURVE_PICK_NAMES.forEach((name, i) => {
    const stress = nth(picked, i);
    if (!Number.isNaN(stress)) picks[name] = stress;
  });
  const curve = testCurve(Array.from(stresses), Array.from(values), kind, initial || undefined);
  return then(curve, (test) => preconsolidation(test, { method, picks, drawingSlope: drawingSlope || undefined }));
});

/** The cells of a test: its stresses, its values, and what the values are. */
export type TestCells = readonly [stresses: unknown, values: unknown, kind: unknown];

/** The preconsolidation stress of a test by a method; equal cells are reduced once. */
export function reduceTest(
  [stresses, values, kind]: TestCells,
  method: MethodName,
  picks?: unknown,
  drawingSlope?: unknown,
  initial?: unknown,
): Outcome<Preconsolidation> {
  const slope = toOptionalPositive(drawingSlope, say`the slope of the drawing`) ?? 0;
  const options = [KINDS.indexOf(toKind(kind)), METHOD_NAMES.indexOf(method), slope, toInitial(initial) ?? 0];
  return reduced(...toLists(stresses, values), options, asList(toCurvePicks(picks)));
}
