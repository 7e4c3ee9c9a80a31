/** Adopted values: what the engineer puts in the place of what the constructions give. */
import { ADOPTABLE, type AdoptableName } from "../specification/adopted";
import type { Index } from "../reduction/curve/indices";
import type { MethodName, Preconsolidation } from "../reduction/curve/preconsolidation";
import { digits, say, verbatim, type Message } from "../reduction/message";
import { given, type Outcome } from "../reduction/outcome";

export interface AdoptedValue {
  /** A stress in kPa; otherwise a ratio. */
  readonly value: number;
  readonly reason?: string;
  readonly by?: string;
  /** yyyy-mm-dd */
  readonly day?: string;
}

export type Adopted = Readonly<Partial<Record<AdoptableName, AdoptedValue>>>;

/** The rows of the table by the quantity that each is of; rows without a value are left out. */
export const adoptedOf = (rows: readonly Partial<AdoptedValue>[]): Adopted =>
  Object.fromEntries(
    ADOPTABLE.flatMap(({ name }, index) => {
      const row = rows[index];
      return row?.value === undefined ? [] : [[name, row]];
    }),
  );

/** "Compression index Cc, adopted": an adopted value in a list of those that were replaced by hand. */
export const adoptedCalled = (name: AdoptableName): string =>
  `${ADOPTABLE.find((one) => one.name === name)?.label ?? name}, adopted`;

const REASON_NONE = say`no reason given`;

const basisOf = ({ reason }: AdoptedValue): Message =>
  say`adopted value (${reason === undefined ? REASON_NONE : verbatim(reason)})`;

/** The index that is used: the adopted one, or else the one that the constructions give. */
export function indexInUse(constructed: Outcome<Index>, adopted: AdoptedValue | undefined): Outcome<Index> {
  return adopted ? given({ value: adopted.value, basis: basisOf(adopted), readings: [] }) : constructed;
}

/** The preconsolidation stress that is used. `stress` is the adopted one in the unit of the curve. */
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
