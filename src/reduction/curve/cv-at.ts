/** The coefficient of consolidation between the loads of a test, and over a range of stress. */
import { say, type Message } from "../message";
import { badInput, figure, given, notApplicable, then, type Outcome } from "../outcome";
import { firstOf, lastOf, neighbours } from "../numeric/lists";
import { readOn } from "./curve-at";
import { SAME_LOAD } from "./loads";
import type { LoadPoint } from "./shape/points";
import { ROUNDING } from "../numeric/same-number";

type Column = readonly (number | null)[];

interface LoadWithCv extends LoadPoint {
  /** The stress of the row before; 0 for the first row. */
  readonly begin: number;
}

/** The loads above all earlier loads that have a cv, in rising order. Refuses (input) a negative stress or cv. */
function loadsWithCv(stresses: Column, cvs: Column): Outcome<readonly LoadWithCv[]> {
  const rows = stresses.map((at, i) => ({ row: i + 1, stress: at ?? 0, value: cvs[i] ?? 0 }));
  for (const { row, stress: at, value } of rows) {
    if (at < 0) return badInput(say`row ${row}: the stress is ${figure(at)}, below zero: correct or clear it`);
    if (value < 0) return badInput(say`row ${row}: cv is ${figure(value)}, below zero: correct or clear it`);
  }
  const loaded = rows.filter((row) => row.stress > 0);
  if (neighbours(loaded).every(([before, row]) => row.stress < before.stress)) loaded.reverse();
  let greatest = 0;
  const steps = loaded.map((row, i) => ({ ...row, begin: loaded[i - 1]?.stress ?? 0 }));
  const first = steps.filter((row) => {
    if (row.stress <= greatest * (1 + SAME_LOAD)) return false;
    greatest = row.stress;
    return true;
  });
  return given(first.filter(({ value }) => value > 0));
}

/**
 * cv at a stress, interpolated linearly on log of stress between loads; stresses in one unit, cv in any unit. Rows in
 * test order, a blank as null or 0; those without a stress or a cv are left out. Only loads above all earlier loads
 * count: a reload, an unloading and a load left standing have another cv. A list that begins at the greatest stress is
 * read from its end. Refuses (input) a negative stress or cv; refuses (method) a stress beyond the loads that have a
 * cv. Interpolation on log of stress is common practice, no source.
 * @example cvAt([50, 100, 200], [4, 2, 1], 141.42) // 1.5
 * @example cvAt([50, 100], [4, 2], 400) // refused: the stress (400) lies beyond the loads that have a cv, from 50 to 100: give
 *   a stress between, and check that both are in one unit
 */
export const cvAt = (stresses: Column, cvs: Column, stress: number): Outcome<number> =>
  then(loadsWithCv(stresses, cvs), (line) =>
    line.length === 0
      ? notApplicable(
          say`no load of first loading has a cv: choose the columns of stress and of cv, or type the cv adopted`,
        )
      : readOn(line, stress, { line: say`the loads that have a cv`, name: say`the stress` }),
  );

/** A cv that the engineer adopts between two stresses, both included. */
export interface AdoptedCv {
  readonly from: number;
  readonly to: number;
  readonly cv: number;
}

export interface CvInUse {
  readonly cv: number;
  /** Whether the cv was adopted, and for which stresses. */
  readonly basis: Message;
}

/**
 * Whether a stress lies in the range of an adopted cv.
 * @example holdsStress({ from: 120, to: 800 }, 800) // true
 */
export const holdsStress = ({ from, to }: Pick<AdoptedCv, "from" | "to">, stress: number): boolean =>
  stress >= from * (1 - ROUNDING) && stress <= to * (1 + ROUNDING);

/**
 * The cv in use at a stress: the adopted cv of the range that holds the stress, otherwise `cvAt`. Of several ranges that
 * hold the stress the last one counts. Refuses (input) a range whose lower stress is not below its upper stress.
 * @example cvInUse([50, 100, 200], [4, 2, 1], 150, [{ from: 120, to: 800, cv: 0.9 }]).value.cv // 0.9
 * @example cvInUse([50, 100, 200], [4, 2, 1], 100, [{ from: 120, to: 800, cv: 0.9 }]).value.cv // 2
 */
export function cvInUse(
  stresses: Column,
  cvs: Column,
  stress: number,
  adopted: readonly AdoptedCv[],
): Outcome<CvInUse> {
  const wrong = adopted.find(({ from, to }) => !(from < to));
  if (wrong)
    return badInput(
      say`the cv ${figure(wrong.cv)} is adopted from ${figure(wrong.from)} to ${figure(wrong.to)}: the lower stress comes first, correct it`,
    );
  const range = adopted.filter((one) => holdsStress(one, stress)).at(-1);
  if (range) return given({ cv: range.cv, basis: say`adopted for ${figure(range.from)} to ${figure(range.to)}` });
  return then(cvAt(stresses, cvs, stress), (cv) => given({ cv, basis: say`between the loads, on log stress` }));
}

export interface CvOfRange {
  /** The geometric mean, since cv is plotted and compared on a log scale. */
  readonly mean: number;
  readonly least: number;
  readonly greatest: number;
  readonly loads: number;
}

/**
 * cv of the loads of first loading that begin and end within a range of stress; where none does, of those that end within
 * it, with a remark: their cv is partly that of the range before. Stresses in one unit, cv in any unit, as for `cvAt`.
 * Refuses (input) a range whose lower stress is not below its upper stress; refuses (method) a range in which no load
 * that has a cv ends. The geometric mean is common practice, no source.
 * @example cvOfRange([50, 100, 200, 400], [8, 4, 2, 1], 100, 400).value // { mean: 1.4142, least: 1, greatest: 2, loads: 2 }
 * @example cvOfRange([50, 100], [8, 4], 100, 400) // refused: no load that has a cv ends above 100 and not above 400: give
 *   stresses around a load, in the unit of the loads
 */
export function cvOfRange(stresses: Column, cvs: Column, from: number, to: number): Outcome<CvOfRange> {
  if (!(from < to))
    return badInput(say`the range is ${figure(from)} to ${figure(to)}: the lower stress comes first, correct it`);
  return then(loadsWithCv(stresses, cvs), (line) => {
    const ending = line.filter(({ stress }) => stress > from * (1 + ROUNDING) && stress <= to * (1 + ROUNDING));
    const within = ending.filter(({ begin }) => begin >= from * (1 - ROUNDING));
    const found = (within.length > 0 ? within : ending).map(({ value }) => value).sort((a, b) => a - b);
    if (found.length === 0)
      return notApplicable(
        say`no load that has a cv ends above ${figure(from)} and not above ${figure(to)}: give stresses around a load, in the unit of the loads`,
      );
    const mean = Math.exp(found.reduce((sum, cv) => sum + Math.log(cv), 0) / found.length);
    return given(
      { mean, least: firstOf(found), greatest: lastOf(found), loads: found.length },
      within.length > 0 ? [] : [say`no load lies within the range: the load that ends in it begins below it`],
    );
  });
}
