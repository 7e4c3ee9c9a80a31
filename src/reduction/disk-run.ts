/** A deflection set from a run on a metal disk, which takes the place of the specimen. */
import { isSameLoad, loadSteps } from "./curve/loads";
import { say, type Message } from "./message";
import { lastOf } from "./numeric/lists";
import { badInput, figure, given, type Outcome } from "./outcome";

/** A load of the run: its stress, and the reading at its end. */
export interface DiskLoad {
  readonly stress: number;
  readonly reading: number;
}

/** A row of the set: the deflection since the seating stress, on loading and on unloading. */
export interface SetDeflection {
  readonly stress: number;
  readonly loading?: number;
  readonly unloading?: number;
}

export interface DiskRunOptions {
  /** The stress under which the first reading was taken; without one, the set begins at the first load. */
  readonly seatingStress?: number;
  /** The reading under the seating stress. */
  readonly seatingReading: number;
  /** Length of one division, in the unit wanted. */
  readonly factor: number;
  /** Whether readings rise or fall when the apparatus is compressed. */
  readonly sense?: "rise" | "fall";
}

interface Step {
  readonly stress: number;
  readonly deflection: number;
  readonly onUnloading: boolean;
}

/** The loads with their branch; a load under the same stress stays on the branch of the load before. */
function stepsOf(loads: readonly DiskLoad[], options: DiskRunOptions): Step[] {
  const { seatingStress, seatingReading, factor, sense = "rise" } = options;
  const way = sense === "fall" ? -factor : factor;
  const steps = loadSteps(
    loads.map(({ stress }) => stress),
    { before: seatingStress },
  );
  let onUnloading = false;
  return loads.map(({ stress, reading }, index) => {
    const kind = steps[index]?.kind;
    if (kind !== "wetting") onUnloading = kind === "unloading";
    return { stress, deflection: (reading - seatingReading) * way, onUnloading };
  });
}

/** The mean deflection at each stress of one branch, with the number of loads. */
function branch(steps: readonly Step[]): { stress: number; deflection: number; count: number }[] {
  const found: { stress: number; sum: number; count: number }[] = [];
  for (const { stress, deflection } of steps) {
    const at = found.find((one) => isSameLoad(one.stress, stress));
    if (at) {
      at.sum += deflection;
      at.count++;
    } else found.push({ stress, sum: deflection, count: 1 });
  }
  return found.map(({ stress, sum, count }) => ({ stress, deflection: sum / count, count }));
}

/**
 * The deflections of frame, disks and papers from the loads of a run on a disk in test order: each reading less the
 * reading under the seating stress, times the length of a division. Stresses are in one unit, which the set keeps; the
 * disk itself counts as rigid. Rows are in order of stress and begin at the seating stress with 0. If a stress was
 * applied several times on a branch, its deflections are averaged, with a remark. Unloading begins at the greatest
 * stress with the deflection of loading. Refuses a run without two stresses, a stress that is not above zero, and
 * readings that say that the apparatus grew under load. Common practice, no source.
 * @example diskRun([{ stress: 50, reading: 20 }, { stress: 100, reading: 30 }, { stress: 50, reading: 24 }],
 *   { seatingStress: 5, seatingReading: 10, factor: 0.002 }).value[1] // { stress: 50, loading: 0.02, unloading: 0.028 }
 */
export function diskRun(loads: readonly DiskLoad[], options: DiskRunOptions): Outcome<readonly SetDeflection[]> {
  const wrong = loads.findIndex(({ stress }) => !(stress > 0));
  if (wrong >= 0) return badInput(say`load ${wrong + 1} has no stress above zero: enter the stress on the disk`);
  const steps = stepsOf(loads, options);
  const [up, down] = [false, true].map((unloading) => branch(steps.filter((one) => one.onUnloading === unloading)));
  const { seatingStress: seating = 0 } = options;
  const loading = [...(up ?? [])].sort((a, b) => a.stress - b.stress);
  if (loading.length < 2)
    return badInput(say`a deflection set needs two loads of increasing stress at least, each with a reading`);
  const top = lastOf(loading);
  if (!(top.deflection > 0))
    return badInput(
      say`under ${figure(top.stress)} the apparatus is longer than under the seating stress: check whether readings rise or fall on compression, and the zero reading`,
    );
  const unloading = down ?? [];
  const stresses = [...loading, ...unloading].map(({ stress }) => stress);
  const rows = [...(seating > 0 ? [seating] : []), ...stresses]
    .filter((stress, index, all) => all.findIndex((one) => isSameLoad(one, stress)) === index)
    .sort((a, b) => a - b)
    .map((stress): SetDeflection => {
      const isSeating = seating > 0 && isSameLoad(stress, seating);
      const at = (of: readonly { stress: number; deflection: number }[]) =>
        of.find((one) => isSameLoad(one.stress, stress))?.deflection;
      const back = unloading.length > 0 && isSameLoad(stress, top.stress) ? top.deflection : at(unloading);
      return {
        stress,
        ...(isSeating ? { loading: 0 } : at(loading) !== undefined && { loading: at(loading) }),
        ...(back !== undefined && { unloading: back }),
      };
    });
  const repeated = [...loading, ...unloading].filter(({ count }) => count > 1);
  const remarks: Message[] = repeated.map(
    ({ stress, count }) => say`${count} loads under ${figure(stress)}: their deflections are averaged`,
  );
  return given(rows, remarks);
}
