/** Force to stress, schedules of loads and of readings, readings to deformation, apparatus deflection and strain. */
import { say } from "./message";
import { badInput, figure, firstNotPositive, given, notApplicable, type Outcome } from "./outcome";
import { circleArea } from "./specimen";
import { convert } from "./units";
import { firstOf, lastOf, nth } from "./numeric/lists";
import { sameNumber } from "./numeric/same-number";

/**
 * Axial stress sigma = lever x F / A, in kPa. Force at the hanger in N, diameter in mm; the lever ratio multiplies it.
 * @example axialStress(9.80665, 63.5, 10) // 30.97
 * @example axialStress(98.07, 0) // refused: the diameter is blank or zero: enter a number greater than zero
 */
export function axialStress(force: number, diameter: number, leverRatio = 1): Outcome<number> {
  const fault = firstNotPositive(
    [say`the force`, force],
    [say`the diameter`, diameter],
    [say`the lever ratio`, leverRatio],
  );
  return fault ?? given((1000 * leverRatio * force) / circleArea(diameter));
}

/**
 * Mass on the hanger, kg, for an axial stress in kPa: m = (sigma A / g - cap) / lever. Diameter in mm; `cap` is the mass in kg
 * of the cap and the ball, which rest on the specimen directly. Refuses a cap that alone is heavier than the load.
 * @example hangerMass(30.966, 63.5, 10) // 1
 * @example hangerMass(1, 63.5, 10, 0.5) // refused: the cap and the ball (0.5 kg) alone give more than this stress (0.322936 kg): take a lighter cap, or count it in the stress
 */
export function hangerMass(stress: number, diameter: number, leverRatio = 1, cap = 0): Outcome<number> {
  const fault = firstNotPositive(
    [say`the stress`, stress],
    [say`the diameter`, diameter],
    [say`the lever ratio`, leverRatio],
  );
  if (fault) return fault;
  const whole = convert((stress * circleArea(diameter)) / 1000, "force", "N", "kg");
  if (cap > whole)
    return badInput(
      say`the cap and the ball (${figure(cap)} kg) alone give more than this stress (${figure(whole)} kg): take a lighter cap, or count it in the stress`,
    );
  return given((whole - cap) / leverRatio);
}

/** No test has more loads than this: the ratio was mistyped. */
const MOST_LOADS = 100;

/**
 * Unloading goes down to a quarter at each step if no number of steps is given. Source: ASTM D2435 and EM 1110-2-1906,
 * from memory.
 */
const UNLOAD_FACTOR = 4;

export interface Schedule {
  readonly first: number;
  readonly maximum: number;
  /** Load increment ratio: each increment over the stress before it; 1 doubles. */
  readonly ratio?: number;
  readonly unloadTo?: number;
  readonly unloadSteps?: number;
}

/**
 * Stresses of a test, in the unit given. Loading: `first`, then (1 + ratio) times as much each time, never above the
 * maximum. Unloading, if asked for: to a quarter each time, with the last step shortened to end on `unloadTo`; or in
 * `unloadSteps` equal ratios (to the first stress if `unloadTo` is omitted).
 */
export function loadSchedule({ first, maximum, ratio = 1, unloadTo, unloadSteps }: Schedule): Outcome<number[]> {
  const fault = firstNotPositive(
    [say`the first stress`, first],
    [say`the maximum stress`, maximum],
    [say`the load increment ratio`, ratio],
  );
  if (fault) return fault;
  if (maximum < first)
    return badInput(
      say`the maximum stress (${figure(maximum)}) is less than the first (${figure(first)}): the two may be swapped`,
    );
  const steps = Math.floor(Math.log(maximum / first) / Math.log1p(ratio) + 1e-9);
  if (steps >= MOST_LOADS)
    return badInput(
      say`a load increment ratio of ${figure(ratio)} needs ${steps + 1} loads: enter 1 to double, 0.5 for half`,
    );
  const loads = Array.from({ length: steps + 1 }, (_, step) => first * (1 + ratio) ** step);
  // A power that misses the maximum by rounding only is set to the maximum.
  if (sameNumber(lastOf(loads), maximum)) loads[steps] = maximum;
  const top = lastOf(loads);

  if (unloadTo === undefined && unloadSteps === undefined) return given(loads);
  const end = unloadTo ?? first;
  if (!(end > 0 && end < top))
    return badInput(
      say`the stress to unload to (${figure(end)}) must be greater than zero and less than the last load (${figure(top)})`,
    );
  if (unloadSteps === undefined) {
    for (let next = top / UNLOAD_FACTOR; next > end && !sameNumber(next, end); next /= UNLOAD_FACTOR) loads.push(next);
    return given([...loads, end]);
  }
  if (!Number.isInteger(unloadSteps) || unloadSteps < 1 || unloadSteps > MOST_LOADS)
    return badInput(say`the number of unloading steps is ${figure(unloadSteps)}: enter a whole number, 1 or more`);
  const step = (end / top) ** (1 / unloadSteps);
  const unloads = Array.from({ length: unloadSteps }, (_, index) => top * step ** (index + 1));
  unloads[unloadSteps - 1] = end;
  return given([...loads, ...unloads]);
}

/** Reading times of a hand-read increment, minutes. Source: ASTM D2435's list, from memory, in round clock times. */
const CLOCK = [0.1, 0.25, 0.5, 1, 2, 4, 8, 15, 30, 60, 120, 240, 480, 1440];

/**
 * Reading times from `first` to `last` minutes, both included: the usual clock times between them, halved below the
 * shortest and doubled above the longest. A time nearer to an end than a fifth is left out.
 */
export function readingTimes(last = lastOf(CLOCK), first = firstOf(CLOCK)): Outcome<number[]> {
  const fault = firstNotPositive([say`the last time`, last], [say`the first time`, first]);
  if (fault) return fault;
  if (last <= first)
    return badInput(say`the last time (${figure(last)} min) must be after the first (${figure(first)} min)`);
  if (last > 1e7 || first < 1e-4)
    return badInput(say`reading times run from 0.0001 to 10,000,000 minutes: enter both times in minutes`);
  const times = [...CLOCK];
  while (firstOf(times) > first) times.unshift(firstOf(times) / 2);
  while (lastOf(times) < last) times.push(lastOf(times) * 2);
  return given([first, ...times.filter((time) => time >= 1.2 * first && time <= last / 1.2), last]);
}

/**
 * Deformation from readings, compression positive: (reading - zero) x factor, in the length unit of the factor; the
 * factor is per division, 1 if omitted. A dial whose figure falls under compression takes a negative factor. A missing
 * reading gives no deformation, and neither does a reading of exactly 0, since desktop Excel passes a blank cell as 0.
 * The exception is an instrument zeroed at the start (zero reading 0): its zeros before the first other reading are
 * readings.
 * @example deformations([500, 480, 450], 500, -0.01) // [0, 0.2, 0.5]
 */
export function deformations(
  readings: readonly (number | null)[],
  zero: number,
  factor = 1,
): Outcome<(number | null)[]> {
  if (!Number.isFinite(factor) || factor === 0)
    return badInput(say`the factor is zero: enter the length of one division, negative for a dial that runs backwards`);
  const begin = readings.findIndex((reading) => reading !== null && reading !== 0);
  return given(
    readings.map((reading, index) => {
      if (reading) return (reading - zero) * factor;
      return zero === 0 && index < begin ? 0 : null;
    }),
  );
}

/**
 * Axial strain (d - d_apparatus) / H0, a ratio, compression positive. All three lengths in one unit; the apparatus
 * deflection is the total at that stress, not the share of the increment.
 * @example strain(0.5, 20, 0.02) // 0.024
 */
export function strain(deformation: number, initialHeight: number, apparatus = 0): Outcome<number> {
  const fault = firstNotPositive([say`the initial height`, initialHeight]);
  if (fault) return fault;
  const value = (deformation - apparatus) / initialHeight;
  if (Math.abs(value) >= 1)
    return badInput(
      apparatus
        ? say`the deformation (${figure(deformation)} less ${figure(apparatus)} of apparatus) is not below the initial height (${figure(initialHeight)}): check that both are in one length unit`
        : say`the deformation (${figure(deformation)}) is not below the initial height (${figure(initialHeight)}): check that both are in one length unit`,
    );
  return given(value);
}

/**
 * Deflection of the apparatus at a stress, interpolated between calibrated stresses on their logarithm; it refuses a
 * stress beyond them. Stresses in one unit; the deflection is in the unit of the calibration. A row without a stress or
 * without a deflection (desktop Excel passes a blank cell as 0) is skipped; but the lowest stress without a deflection
 * counts as the zero of the calibration. Refuses two deflections at one stress: loading and unloading are two
 * calibrations.
 * @example apparatusDeflection(200, [100, 400], [0.02, 0.04]) // 0.03
 * @example apparatusDeflection(800, [100, 400], [0.02, 0.04]) // refused: the stress 800 is above the calibrated range (100 to 400):
 *   extend the calibration, and check that both are in one stress unit
 */
export function apparatusDeflection(
  stress: number,
  calibrationStresses: readonly (number | null)[],
  calibrationDeflections: readonly (number | null)[],
): Outcome<number> {
  const fault = firstNotPositive([say`the stress`, stress]);
  if (fault) return fault;
  const rows = calibrationStresses
    .map((at, index) => ({ at: at ?? 0, deflection: calibrationDeflections[index] ?? 0, row: index + 1 }))
    .filter(({ at }) => at !== 0);
  const negative = rows.find(({ at }) => at < 0);
  if (negative)
    return badInput(
      say`row ${negative.row} of the calibration stresses is ${figure(negative.at)}: it cannot be negative`,
    );
  rows.sort((a, b) => a.at - b.at);
  const points = rows.filter(({ deflection }, index) => deflection !== 0 || index === 0);
  if (!points.some(({ deflection }) => deflection !== 0))
    return badInput(say`the calibration is blank or zero throughout: enter its stresses and deflections`);
  for (let index = 1; index < points.length; index++) {
    const [a, b] = [nth(points, index - 1), nth(points, index)];
    if (sameNumber(a.at, b.at) && a.deflection !== b.deflection)
      return badInput(
        say`rows ${Math.min(a.row, b.row)} and ${Math.max(a.row, b.row)} of the calibration give two deflections at ${figure(a.at)}: choose the rows of loading or of unloading, not both`,
      );
  }

  const exact = points.find(({ at }) => sameNumber(at, stress));
  if (exact) return given(exact.deflection);
  const above = points.findIndex(({ at }) => at > stress);
  if (above <= 0) {
    const [low, high] = [firstOf(points).at, lastOf(points).at];
    return notApplicable(
      say`the stress ${figure(stress)} is ${above < 0 ? say`above` : say`below`} the calibrated range (${figure(low)} to ${figure(high)}): extend the calibration, and check that both are in one stress unit`,
    );
  }
  const [a, b] = [nth(points, above - 1), nth(points, above)];
  const share = Math.log(stress / a.at) / Math.log(b.at / a.at);
  return given(a.deflection + share * (b.deflection - a.deflection));
}
