/** Strain of a specimen that is wetted under constant stress: collapse or swell. */
import { say, type Message } from "./message";
import { badInput, figure, firstNotPositive, given, type Outcome } from "./outcome";

/**
 * If two heights of one specimen differ by more than this factor, they are in two units. Common practice, no source.
 */
const UNLIKE = 3;

type Heights = readonly (readonly [name: Message, height: number])[];

/** Why the heights cannot belong to one specimen; undefined if they can. */
function unlike(heights: Heights): Message | undefined {
  const [low, high] = [-1, 1].map((sign) => heights.reduce((a, b) => (sign * b[1] > sign * a[1] ? b : a)));
  if (!low || !high || high[1] <= UNLIKE * low[1]) return undefined;
  return say`${high[0]} (${figure(high[1])}) is more than ${UNLIKE} times ${low[0]} (${figure(low[1])}): check both, and that they are in one unit`;
}

/**
 * Strain on wetting, a ratio, compression positive: (height before - height after) / reference height. The reference is
 * the height before wetting (ASTM D4546 from 2008 on, from memory) unless another is given. Heights in one unit.
 * Refuses heights that cannot belong to one specimen.
 * @example wettingStrain(19.5, 18.5) // 0.05128
 * @example wettingStrain(19.5, 18.5, 20) // 0.05
 */
export function wettingStrain(before: number, after: number, reference = before): Outcome<number> {
  const heights: Heights = [
    [say`the height before wetting`, before],
    [say`the height after wetting`, after],
    [say`the reference height`, reference],
  ];
  const fault = firstNotPositive(...heights);
  if (fault) return fault;
  const reason = unlike(heights);
  return reason ? badInput(reason) : given((before - after) / reference);
}

/**
 * Classes of the collapse index by its upper limit in percent, as printed: 0 none, 0.1 to 2 slight, 2.1 to 6 moderate,
 * 6.1 to 10 moderately severe, above 10 severe. Source: ASTM D5333 (withdrawn 2012), limits from memory.
 */
const COLLAPSE_CLASSES = [
  { most: 0, name: "none" },
  { most: 2, name: "slight" },
  { most: 6, name: "moderate" },
  { most: 10, name: "moderately severe" },
  { most: Infinity, name: "severe" },
] as const;

export type CollapseClass = (typeof COLLAPSE_CLASSES)[number]["name"];

/** The names of the classes as messages. */
export const COLLAPSE_NAMES: Readonly<Record<CollapseClass, Message>> = {
  none: say`none`,
  slight: say`slight`,
  moderate: say`moderate`,
  "moderately severe": say`moderately severe`,
  severe: say`severe`,
};

/**
 * The index is the potential at 200 kPa, which the standard writes as 2 tsf (191.5 kPa): a stress within 5 percent of
 * 200 kPa counts.
 */
const INDEX_STRESS = { kPa: 200, share: 0.05 } as const;

/** The class of an index (a ratio), rounded to 0.1 percent like the table of the standard. */
function classOfIndex(index: number): CollapseClass | undefined {
  const percent = Math.round(1000 * index + 1e-9) / 10;
  return COLLAPSE_CLASSES.find(({ most }) => percent <= most)?.name;
}

export interface Collapse {
  /** Ic, a ratio of the initial height; negative where the specimen swelled. */
  readonly potential: number;
  /** Ie: the potential if the stress is 200 kPa, and its class. */
  readonly index?: number;
  readonly class?: CollapseClass;
}

/**
 * Collapse potential (height before - height after) / initial height, and at 200 kPa the collapse index with its class.
 * Heights in one unit, stress in kPa. Source: ASTM D5333 (withdrawn 2012). Refuses heights that cannot belong to one
 * specimen.
 * @example collapse(19.5, 18.5, 20, 200).value // { potential: 0.05, index: 0.05, class: "moderate" }
 */
export function collapse(before: number, after: number, initial: number, stress?: number): Outcome<Collapse> {
  const heights: Heights = [
    [say`the height before wetting`, before],
    [say`the height after wetting`, after],
    [say`the initial height`, initial],
  ];
  const fault = firstNotPositive(...heights, [say`the stress`, stress]);
  if (fault) return fault;
  const reason = unlike(heights);
  if (reason) return badInput(reason);
  const potential = (before - after) / initial;
  const remarks: Message[] = [];
  if (potential < 0) remarks.push(say`the specimen swelled on wetting: it did not collapse`);
  if (before > initial)
    remarks.push(say`the height before wetting is above the initial height: check both if nothing swelled before`);
  const atIndex = stress !== undefined && Math.abs(stress - INDEX_STRESS.kPa) <= INDEX_STRESS.share * INDEX_STRESS.kPa;
  return given(
    { potential, index: atIndex ? potential : undefined, class: atIndex ? classOfIndex(potential) : undefined },
    remarks,
  );
}
