/** The coefficient of consolidation between the loads of a test. */
import { say } from "../message";
import { badInput, figure, notApplicable, type Outcome } from "../outcome";
import { readOn } from "./curve-at";
import { SAME_LOAD } from "./loads";

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
export function cvAt(
  stresses: readonly (number | null)[],
  cvs: readonly (number | null)[],
  stress: number,
): Outcome<number> {
  const rows = stresses.map((at, i) => ({ row: i + 1, stress: at ?? 0, value: cvs[i] ?? 0 }));
  for (const { row, stress: at, value } of rows) {
    if (at < 0) return badInput(say`row ${row}: the stress is ${figure(at)}, below zero: correct or clear it`);
    if (value < 0) return badInput(say`row ${row}: cv is ${figure(value)}, below zero: correct or clear it`);
  }
  const loaded = rows.filter((row) => row.stress > 0);
  if (loaded.length > 1 && loaded.every((row, i) => i === 0 || row.stress < (loaded[i - 1]?.stress ?? 0)))
    loaded.reverse();
  let greatest = 0;
  const first = loaded.filter((row) => {
    if (row.stress <= greatest * (1 + SAME_LOAD)) return false;
    greatest = row.stress;
    return true;
  });
  const line = first.filter(({ value }) => value > 0);
  if (line.length === 0)
    return notApplicable(
      say`no load of first loading has a cv: choose the columns of stress and of cv, or type the cv adopted`,
    );
  return readOn(line, stress, { line: say`the loads that have a cv`, name: say`the stress` });
}
