/** Adopted values: values that the engineer uses instead of the results of the constructions. */
import {
  ADOPTABLE,
  ALL_ADOPTABLE,
  CV_RANGES,
  type AdoptableName,
  type CvRangeName,
} from "../specification/results/adoptable";
import { holdsStress } from "../reduction/curve/cv-at";
import type { Index } from "../reduction/curve/indices";
import type { Preconsolidation } from "../reduction/curve/preconsolidation";
import type { MethodName } from "../reduction/curve/method-words";
import { digits, say, verbatim, type Message } from "../reduction/message";
import { given, type Outcome } from "../reduction/outcome";

export interface AdoptedValue {
  /** A stress in kPa, a cv in m2/yr; otherwise a ratio. */
  readonly value: number;
  /** The range of stress of an adopted cv in kPa, as the sheet has it. */
  readonly from?: number;
  readonly to?: number;
  readonly reason?: string;
  readonly by?: string;
  /** yyyy-mm-dd */
  readonly day?: string;
}

export type Adopted = Readonly<Partial<Record<AdoptableName | CvRangeName, AdoptedValue>>>;

/** The cv of each range, in the words of questions and reports. */
export const CV_SAID: Readonly<Record<CvRangeName, Message>> = {
  cv_recompression: say`cv, recompression`,
  cv_virgin: say`cv, virgin`,
  cv_another: say`cv, another range`,
};

type Rows = readonly Partial<AdoptedValue>[];

const byName = (names: readonly { readonly name: string }[], rows: Rows): [string, Partial<AdoptedValue>][] =>
  names.flatMap(({ name }, index): [string, Partial<AdoptedValue>][] => {
    const row = rows[index];
    return row?.value === undefined ? [] : [[name, row]];
  });

/** The rows of both tables by their quantity; rows without a value are left out. */
export const adoptedOf = (rows: Rows, ofCv: Rows): Adopted =>
  Object.fromEntries([...byName(ADOPTABLE, rows), ...byName(CV_RANGES, ofCv)]);

/** Whether a cv is adopted at a stress in kPa. A row without both stresses has no range. */
export const isCvAdoptedAt = (adopted: Adopted, stress: number): boolean =>
  CV_RANGES.some(({ name }) => {
    const { from, to } = adopted[name] ?? {};
    return from !== undefined && to !== undefined && holdsStress({ from, to }, stress);
  });

/** An adopted value in the list of values replaced by hand, such as "Compression index Cc, adopted". */
export const adoptedCalled = (name: AdoptableName | CvRangeName): string =>
  `${ALL_ADOPTABLE.find((one) => one.name === name)?.label ?? name}, adopted`;

const REASON_NONE = say`no reason given`;

const basisOf = ({ reason }: AdoptedValue): Message =>
  say`adopted value (${reason === undefined ? REASON_NONE : verbatim(reason)})`;

/** The index in use: the adopted index, otherwise the index from the constructions. */
export function indexInUse(constructed: Outcome<Index>, adopted: AdoptedValue | undefined): Outcome<Index> {
  return adopted ? given({ value: adopted.value, basis: basisOf(adopted), readings: [] }) : constructed;
}

/** The preconsolidation stress in use. `stress` is the adopted stress in the unit of the curve. */
export function stressInUse(
  constructed: Outcome<Preconsolidation>,
  method: MethodName,
  adopted: AdoptedValue | undefined,
  stress: number,
): Outcome<Preconsolidation> {
  if (!adopted) return constructed;
  const basis = basisOf(adopted);
  if (!constructed.ok)
    return given({ method, stress, low: stress, high: stress, points: basis, remarks: [], lines: [] });
  const gave = say`${basis}; the construction gave ${digits(constructed.value.stress, 4)}`;
  return { ...constructed, value: { ...constructed.value, stress, points: gave } };
}
