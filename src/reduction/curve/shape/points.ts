/** The rows of a whole test as points: load by load, in test order, stress and void ratio or strain. */
import { digits, say, listed, type Message } from "../../message";
import { badInput, given, type Outcome } from "../../outcome";
import { firstOf } from "../../numeric/lists";

/** What the values are: void ratio, or engineering strain as a ratio of the initial height, compression positive. */
export type Kind = "e" | "strain";

export interface LoadPoint {
  /** Position in the ranges given, from 1. */
  readonly row: number;
  /** Effective vertical stress at the end of the load, in the user's unit. */
  readonly stress: number;
  /** Void ratio or strain at the end of the load. */
  readonly value: number;
}

export interface TestCurve {
  readonly kind: Kind;
  readonly points: readonly LoadPoint[];
  /** The value before the first load, if the first row gives one at zero stress. */
  readonly initial?: number;
}

/** Fibrous peats reach void ratios of about 25 (Mesri and Ajlouni, 2007, from memory). */
const MOST_VOIDS = 30;
/**
 * Heights in mm stay above `least` and within the ratio `within` of each other. A peat with void ratios above 10 loses
 * more than that over `loads` loads (common practice, no source).
 */
const HEIGHTS = { least: 10, within: 1.5, loads: 5 };

/**
 * What is said of void ratios that no soil has: a remark, or the refusal of a function that gives one number alone.
 * @example voidsOfNoSoil({ kind: "e", points: [{ row: 1, stress: 50, value: 1.2 }] }) // undefined
 */
export function voidsOfNoSoil({ kind, points }: TestCurve): Message | undefined {
  const values = points.map(({ value }) => value);
  const [least, most] = [Math.min(...values), Math.max(...values)];
  const heights = values.length >= HEIGHTS.loads && least > HEIGHTS.least && most < HEIGHTS.within * least;
  return kind === "e" && (most > MOST_VOIDS || heights)
    ? say`void ratios of ${digits(least, 4)} to ${digits(most, 4)} are those of no soil: void ratios are ratios, 0.85 for 85 percent; check that the values are no percentages or heights`
    : undefined;
}

/** A test at a constant rate of strain may log thousands of rows; with these points a preconsolidation stress takes a second. */
const MOST_POINTS = 1_000;

const list = (rows: readonly number[]): Message =>
  rows.length === 1 ? say`row ${firstOf(rows)}` : say`rows ${listed(rows)}`;

/**
 * Stresses and values, paired by position, in test order; a blank is null, or 0 (desktop Excel passes a blank cell as
 * 0).
 *
 * A row without a stress is skipped, with a remark if it has a value; the first such row gives the value before loading. A value that is blank or zero
 * under a real stress is left out with a remark; but a strain of zero in the first loaded row counts, since strain is
 * measured from there. `initial`, where it is given, is the value before loading, whatever the rows say. Refuses a
 * negative stress, strains in percent, and more than 1,000 points; remarks a void ratio below zero, or greater than that of any soil.
 * @example testCurve([25, 50, 100], [0.91, 0.9, 0.85], "e").value.points.length // 3
 * @example testCurve([25, -50], [0.91, 0.9], "e") // refused: row 2: the stress is -50, below zero: correct or clear it
 */
export function testCurve(
  stresses: readonly (number | null)[],
  values: readonly (number | null)[],
  kind: Kind,
  initial?: number,
): Outcome<TestCurve> {
  const points: LoadPoint[] = [];
  const missing: number[] = [];
  const negative: number[] = [];
  const unstressed: number[] = [];
  let ofRows: number | undefined;
  for (let i = 0; i < stresses.length; i++) {
    const row = i + 1;
    const stress = stresses[i] ?? 0;
    const value = values[i] ?? 0;
    if (stress < 0)
      return badInput({ ...say`row ${row}: the stress is ${stress}, below zero: correct or clear it`, row });
    if (kind === "e" && value < 0) negative.push(row);
    if (kind === "strain" && value >= 1)
      return badInput({
        ...say`row ${row}: a strain of ${value} cannot be: strains are ratios, 0.12 for 12 percent; give kind "e" for void ratios`,
        row,
      });
    const first = points.length === 0 && missing.length === 0;
    if (stress === 0) {
      if (first && ofRows === undefined && (value !== 0 || kind === "strain")) ofRows = value;
      else if (value !== 0) unstressed.push(row);
    } else if (value !== 0 || (kind === "strain" && first)) points.push({ row, stress, value });
    else missing.push(row);
  }
  const remarks = missing.length
    ? [
        kind === "e"
          ? say`${list(missing)}: no void ratio against the stress, left out`
          : say`${list(missing)}: no strain against the stress, left out`,
      ]
    : [];
  if (negative.length)
    remarks.push(
      say`${list(negative)}: a void ratio below zero cannot be: check the dry mass and the specific gravity`,
    );
  if (unstressed.length)
    remarks.push(say`${list(unstressed)}: a value without a stress, left out: log of stress has no zero`);
  if (points.length > MOST_POINTS)
    return badInput(
      say`${points.length} points, and at most ${MOST_POINTS} are read: choose the rows of one test, or one row in ${Math.ceil(points.length / MOST_POINTS)}`,
    );
  const tooMany = voidsOfNoSoil({ kind, points });
  if (tooMany) remarks.push(tooMany);
  if (points.length === 0)
    return badInput(
      say`there is no row with both a stress and a value: enter them, or choose the two columns that hold them`,
    );
  return given({ kind, points, initial: initial ?? ofRows }, remarks);
}

/**
 * The kind of the values, from their direction: void ratios fall from the least loaded row to the most loaded row,
 * strains rise. A blank value is null or 0; "e" if the rows do not show it.
 * @example kindSeen([50, 100, 200], [1.2, 1.1, 0.9]) // "e"
 * @example kindSeen([50, 100, 200], [0.01, 0.03, 0.06]) // "strain"
 */
export function kindSeen(stresses: readonly (number | null)[], values: readonly (number | null)[]): Kind {
  const loaded = stresses.flatMap((stress, i) => (stress && stress > 0 ? [{ stress, value: values[i] ?? 0 }] : []));
  const known = loaded.filter(({ value }) => value !== 0);
  // Strain is measured from 0 in the first loaded row; this row counts only if no other row can be compared.
  const [first] = known.length > 1 ? known : loaded;
  if (!first) return "e";
  const rows = known.length > 1 ? known : loaded;
  const least = rows.reduce((a, b) => (b.stress < a.stress ? b : a), first);
  const most = rows.reduce((a, b) => (b.stress > a.stress ? b : a), first);
  return most.value > least.value ? "strain" : "e";
}
