/** Loads as masses: the stress of what hangs, the nearest stress that the frame's masses make, and that of a load cell. */
import { circleArea } from "./specimen";
import { axialStress } from "./loading";
import { say } from "./message";
import { badInput, figure, firstNotPositive, given, type Outcome } from "./outcome";
import { convert } from "./units";

/** The force of a mass in kg, in N. */
const weightOf = (mass: number): number => convert(mass, "force", "kg", "N");

/**
 * Axial stress, kPa, of a mass on the hanger (kg) under a lever, with the mass of cap and ball (kg), which rest on the
 * specimen directly. Diameter in mm.
 * @example hangingStress(1, 63.5, 10) // 30.97
 * @example hangingStress(0, 63.5, 10, 0.5) // 1.548
 */
export function hangingStress(mass: number, diameter: number, leverRatio = 1, cap = 0): Outcome<number> {
  if (mass < 0) return badInput(say`the mass on the hanger is ${figure(mass)}, below zero: correct it`);
  const fault = firstNotPositive([say`the diameter`, diameter], [say`the lever ratio`, leverRatio]);
  return fault ?? given((1000 * weightOf(mass * leverRatio + cap)) / circleArea(diameter));
}

/**
 * Axial stress, kPa, from the output of a load cell: (output - zero) x calibration factor / area. The factor is in N per unit of
 * the output; diameter in mm. The cell measures the force on the specimen, so that no lever counts. Refuses an output at or below
 * its zero.
 * @example cellStress(1250, 50, 0.5, 63.5) // 189.5
 * @example cellStress(50, 50, 0.5, 63.5) // refused: the output (50) is not above its zero (50): no load is on the cell, or its sign is turned
 */
export function cellStress(output: number, zero: number, factor: number, diameter: number): Outcome<number> {
  const fault = firstNotPositive([say`the calibration factor`, factor], [say`the diameter`, diameter]);
  if (fault) return fault;
  if (!(output > zero))
    return badInput(
      say`the output (${figure(output)}) is not above its zero (${figure(zero)}): no load is on the cell, or its sign is turned`,
    );
  return axialStress((output - zero) * factor, diameter);
}

/** Frames have fewer masses; more were typed by mistake. */
const MOST_MASSES = 40;
/** Sums that agree to a gram are the same sum. */
const GRAMS = 1000;

export interface Combination {
  /** The masses that hang, in kg, from the greatest. */
  readonly masses: readonly number[];
  /** Their sum, kg. */
  readonly sum: number;
}

interface Reached {
  readonly sum: number;
  readonly count: number;
  readonly last?: number;
  readonly before?: Reached;
}

/**
 * The combination of available masses (kg, each once for every piece there is) whose sum is nearest to a wanted mass; of
 * several equally near to a gram, the one of the fewest masses. Refuses a mass that is not above zero, and more than 40
 * masses.
 * @example nearestMasses(7.4, [5, 2, 2, 1, 0.5]).value // { masses: [5, 2, 0.5], sum: 7.5 }
 * @example nearestMasses(0.1, [5, 2]).value // { masses: [], sum: 0 }
 */
export function nearestMasses(wanted: number, available: readonly number[]): Outcome<Combination> {
  const wrong = available.find((mass) => !(mass > 0));
  if (wrong !== undefined)
    return badInput(say`a mass of ${figure(wrong)} kg cannot hang: enter masses greater than zero`);
  if (available.length > MOST_MASSES)
    return badInput(say`${available.length} masses are more than a frame has: enter ${MOST_MASSES} at most`);
  const falling = [...available].sort((a, b) => b - a);
  const most = wanted + (falling[0] ?? 0);
  const reached = new Map<number, Reached>([[0, { sum: 0, count: 0 }]]);
  for (const mass of falling)
    for (const before of [...reached.values()]) {
      const sum = before.sum + mass;
      const key = Math.round(GRAMS * sum);
      const known = reached.get(key);
      if (sum > most || (known && known.count <= before.count + 1)) continue;
      reached.set(key, { sum, count: before.count + 1, last: mass, before });
    }
  let best: Reached = { sum: 0, count: 0 };
  const off = ({ sum }: Reached): number => Math.round(GRAMS * Math.abs(sum - wanted));
  for (const one of reached.values())
    if (off(one) < off(best) || (off(one) === off(best) && one.count < best.count)) best = one;
  const masses: number[] = [];
  for (let at: Reached | undefined = best; at?.last !== undefined; at = at.before) masses.push(at.last);
  return given({ masses: masses.reverse(), sum: best.sum });
}

/**
 * The masses to put on and to take off, in kg, to change one hanging set into another.
 * @example changeOfMasses([5, 2, 2], [5, 2, 1]) // { on: [1], off: [2] }
 */
export function changeOfMasses(
  from: readonly number[],
  to: readonly number[],
): { readonly on: readonly number[]; readonly off: readonly number[] } {
  const without = (these: readonly number[], others: readonly number[]): number[] => {
    const left = [...others];
    return these.filter((mass) => {
      const at = left.indexOf(mass);
      if (at >= 0) left.splice(at, 1);
      return at < 0;
    });
  };
  return { on: without(to, from), off: without(from, to) };
}
