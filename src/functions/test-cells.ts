/** Reads the cells of a whole test: its rows, the kind of its values, and the picks by hand. */
import { testCurve, type Kind, type TestCurve } from "../reduction/curve/shape/points";
import {
  METHOD_NAMES,
  preconsolidation,
  type MethodName,
  type Preconsolidation,
} from "../reduction/curve/preconsolidation";
import type { Picks } from "../reduction/curve/methods/reading";
import { firstOf, nth } from "../reduction/numeric/lists";
import { then, type Outcome } from "../reduction/outcome";
import { isOmitted, refuseCell, toCell, toChoice, toOptionalNonZero, toOptionalPositive, toPair } from "./cells";
import { memoize } from "../reduction/numeric/memoize";

const KINDS = ["e", "strain"] as const;

/** The rows of a test as plain lists, blanks as 0, without the blank rows at the end. */
export function toLists(stresses: unknown, values: unknown): [Float64Array, Float64Array] {
  const [s, v] = toPair(stresses, "the stresses", values, "the values");
  let length = s.length;
  while (length > 0 && !s[length - 1]) length--;
  const plain = (cells: readonly (number | null)[]) => Float64Array.from(cells.slice(0, length), (cell) => cell ?? 0);
  return [plain(s), plain(v)];
}

export const toKind = (kind: unknown): Kind => toChoice(kind, "the kind", KINDS, "e");

/** The value before the first load; undefined if blank or 0. */
const toInitial = (argument: unknown): number | undefined => toOptionalNonZero(argument, "the initial value");

export const toTest = (stresses: unknown, values: unknown, kind: unknown, initial?: unknown): Outcome<TestCurve> => {
  const [s, v] = toLists(stresses, values);
  return testCurve(Array.from(s), Array.from(v), toKind(kind), toInitial(initial));
};

/** The names of picks that a person may give, and the choices that they replace. */
const PICKS = {
  recompression_from: "recompressionFrom",
  recompression_to: "recompressionTo",
  virgin_from: "virginFrom",
  virgin_to: "virginTo",
  greatest_curvature: "greatestCurvature",
} as const satisfies Record<string, keyof Picks>;
/** Object.keys returns strings; these are the keys of the table above. */
const PICK_NAMES = Object.keys(PICKS) as (keyof typeof PICKS)[];

/**
 * Picks from a range of names and stresses; a blank stress leaves the automatic choice. One value per name, NaN for
 * none.
 */
function toPicks(argument: unknown): Float64Array {
  const picks = new Float64Array(PICK_NAMES.length).fill(NaN);
  if (isOmitted(argument) || argument === 0) return picks;
  const rows: unknown[] = Array.isArray(argument) && Array.isArray(argument[0]) ? argument : [argument];
  rows.forEach((row, i) => {
    if (!Array.isArray(row) || row.length !== 2)
      return refuseCell("the picks must be a range of two columns: names and stresses");
    if (isOmitted(row[0]) || row[0] === 0) return;
    const where = `row ${i + 1} of the picks`;
    const name = toChoice(row[0], `the name in ${where}`, PICK_NAMES, firstOf(PICK_NAMES));
    const stress = toCell(row[1], where);
    if (stress !== null && stress < 0) return refuseCell(`${where}: a stress of ${stress} cannot be: correct it`);
    if (stress) picks[PICK_NAMES.indexOf(name)] = stress;
  });
  return picks;
}

const reduced = memoize((stresses, values, options, picked): Outcome<Preconsolidation> => {
  const kind = nth(KINDS, nth(options, 0));
  const method = nth(METHOD_NAMES, nth(options, 1));
  const [, , drawingSlope, initial] = Array.from(options);
  const picks: Partial<Record<keyof Picks, number>> = {};
  PICK_NAMES.forEach((name, i) => {
    const stress = nth(picked, i);
    if (!Number.isNaN(stress)) picks[PICKS[name]] = stress;
  });
  const curve = testCurve(Array.from(stresses), Array.from(values), kind, initial || undefined);
  return then(curve, (test) => preconsolidation(test, { method, picks, drawingSlope: drawingSlope || undefined }));
});

/** The preconsolidation stress of a test by a method; equal cells are reduced once. */
export function reduceTest(
  stresses: unknown,
  values: unknown,
  method: MethodName,
  kind: unknown,
  picks?: unknown,
  drawingSlope?: unknown,
  initial?: unknown,
): Outcome<Preconsolidation> {
  const slope = toOptionalPositive(drawingSlope, "the slope of the drawing") ?? 0;
  const options = [KINDS.indexOf(toKind(kind)), METHOD_NAMES.indexOf(method), slope, toInitial(initial) ?? 0];
  return reduced(...toLists(stresses, values), options, toPicks(picks));
}
