/** Swelling pressure from strains on wetting: the stress under which the soil neither swells nor compresses. */
import { straightLine } from "./numeric/straight-line";
import { say, digits, listed, listWord, joined, type Message } from "./message";
import { badInput, figure, given, notApplicable, type Outcome } from "./outcome";
import { sameNumber } from "./numeric/same-number";

/**
 * "zero strain": several specimens, each wetted under its own stress. "load back": one specimen that swelled, and was
 * then loaded back to its first height. "constant volume": one specimen, the load raised so that it does not swell.
 */
export const SWELLING_METHODS = ["zero strain", "load back", "constant volume"] as const;
export type SwellingMethod = (typeof SWELLING_METHODS)[number];

/** Stresses in the unit given: the pressure, and the two stresses between which the readings bracket it. */
export interface SwellingPressure {
  readonly pressure: number;
  readonly low: number;
  readonly high: number;
}

/** Up to this strain the height counts as held constant. Common practice, no source. */
const HELD = 0.001;
/** The hint for a person who may have typed swell as positive. */
const SIGNS = say`swell is negative here, compression positive: change the signs if they were typed the other way`;

interface Row {
  readonly row: number;
  readonly stress: number;
  /** 0 stands for a blank. */
  readonly strain: number;
}

function toRows(stresses: readonly (number | null)[], strains: readonly (number | null)[]): Outcome<Row[]> {
  const rows: Row[] = [];
  for (const [i, cell] of stresses.entries()) {
    const [row, stress, strain] = [i + 1, cell ?? 0, strains[i] ?? 0];
    if (stress < 0) return badInput(say`row ${row}: the stress is ${figure(stress)}, below zero: correct or clear it`);
    if (stress > 0 && Math.abs(strain) >= 1)
      return badInput(
        say`row ${row}: the strain is ${figure(strain)}: enter strains as ratios, -0.05 for a swell of 5 %`,
      );
    if (stress > 0) rows.push({ row, stress, strain });
  }
  return rows.length ? given(rows) : badInput(say`no row has a stress: choose the columns of stress and of strain`);
}

/** The stress at which the least-squares line through rows, on log of stress, has zero strain. */
function zeroOf(rows: readonly Row[]): number {
  const line = straightLine(
    rows.map(({ stress }) => Math.log10(stress)),
    rows.map(({ strain }) => strain),
  );
  return line.slope > 0 ? 10 ** (-line.intercept / line.slope) : NaN;
}

/** The remarks on rows whose strain is exactly zero: desktop Excel passes a blank cell as 0. */
const remarkOnZeros = (rows: readonly Row[]): Message[] =>
  rows.map(
    ({ row, stress }) =>
      say`row ${row}: no strain, or exactly zero, left out; if zero was measured, the swelling pressure is its stress (${figure(stress)})`,
  );

/** Rows in order of stress; rows of equal stress are averaged, with a remark. */
function byStress(rows: readonly Row[]): { specimens: Row[]; remarks: Message[] } {
  const groups: Row[][] = [];
  for (const row of [...rows].sort((a, b) => a.stress - b.stress)) {
    const last = groups.at(-1);
    if (last?.[0] && sameNumber(row.stress, last[0].stress)) last.push(row);
    else groups.push([row]);
  }
  return {
    specimens: groups.flatMap((group) => {
      const [first] = group;
      return first ? [{ ...first, strain: group.reduce((sum, { strain }) => sum + strain, 0) / group.length }] : [];
    }),
    remarks: groups
      .filter((group) => group.length > 1)
      .map((group) => say`rows ${listed(group.map(({ row }) => row))}: one stress, their strains are averaged`),
  };
}

function zeroStrain(all: readonly Row[]): Outcome<SwellingPressure> {
  const { specimens, remarks } = byStress(all.filter(({ strain }) => strain !== 0));
  remarks.unshift(...remarkOnZeros(all.filter(({ strain }) => strain === 0)));
  const [first, last] = [specimens[0], specimens.at(-1)];
  if (!first || !last || first === last)
    return notApplicable(say`this method needs specimens wetted under two stresses at least, with their strains`);
  if (first.strain > 0 && last.strain < 0)
    return badInput(
      say`row ${first.row} compressed under the least stress and row ${last.row} swelled under the greatest: ${SIGNS}`,
    );
  const firstHeld = specimens.findIndex(({ strain }) => strain > 0);
  if (firstHeld < 0)
    return notApplicable(
      say`every specimen swelled, even the one under ${figure(last.stress)}: wet one under a greater stress`,
    );
  if (first.strain > 0)
    return notApplicable(
      say`the specimen under the least stress (${figure(first.stress)}) did not swell: wet one under a smaller stress, or there is no swelling pressure; ${SIGNS}`,
    );
  if (last.strain < 0)
    return notApplicable(
      say`the specimens do not agree: row ${last.row} swelled under the greatest stress, others compressed under less`,
    );
  const lastSwelled = specimens.length - 1 - [...specimens].reverse().findIndex(({ strain }) => strain < 0);
  const between = specimens.slice(firstHeld - 1, lastSwelled + 2);
  const [low, high] = [between[0] ?? first, between.at(-1) ?? last];
  const pressure = zeroOf(between);
  if (!(pressure >= low.stress && pressure <= high.stress))
    return notApplicable(
      say`the specimens between ${figure(low.stress)} and ${figure(high.stress)} do not agree: swell does not fall as the stress rises`,
    );
  if (between.length > 2)
    remarks.push(
      say`swell and compression alternate from ${figure(low.stress)} to ${figure(high.stress)}: the pressure is where a straight line through these specimens is zero`,
    );
  return given({ pressure, low: low.stress, high: high.stress }, remarks);
}

/** The rows as long as the stress does not fall; of several rows under one stress, the last. */
function rising(rows: readonly Row[]): Row[] {
  const kept: Row[] = [];
  for (const row of rows) {
    const last = kept.at(-1);
    if (last && sameNumber(row.stress, last.stress)) kept[kept.length - 1] = row;
    else if (!last || row.stress > last.stress) kept.push(row);
    else break;
  }
  return kept;
}

function loadBack(rows: readonly Row[]): Outcome<SwellingPressure> {
  const most = rows.reduce((a, b) => (b.strain < a.strain ? b : a));
  if (most.strain >= 0) return notApplicable(say`no row shows a swell, a strain below zero: ${SIGNS}`);
  const loading = rising(rows.slice(rows.indexOf(most)));
  const zeros = loading.filter(({ strain }) => strain === 0);
  const read = loading.filter(({ strain }) => strain !== 0);
  const back = read.findIndex(({ strain }) => strain > 0);
  const [low, high] = [read[back - 1], read[back]];
  if (!low || !high) {
    const before = rows.slice(0, rows.indexOf(most)).find(({ strain }) => strain !== 0);
    if (before && before.strain > 0 && most.stress > before.stress)
      return badInput(
        say`row ${most.row} is below its first height under a greater stress than row ${before.row}, above it: ${SIGNS}`,
      );
    return notApplicable(
      joined([
        say`the specimen is still above its first height under ${figure(read.at(-1)?.stress ?? most.stress)}: load it further`,
        ...remarkOnZeros(zeros),
      ]),
    );
  }
  return given(
    { pressure: zeroOf([low, high]), low: low.stress, high: high.stress },
    remarkOnZeros(zeros.filter(({ stress }) => stress < high.stress)),
  );
}

function constantVolume(rows: readonly Row[]): Outcome<SwellingPressure> {
  const raised = rising(rows);
  const top = raised.at(-1);
  const unloaded = top && rows.slice(rows.indexOf(top) + 1).find(({ strain }) => strain > top.strain + HELD);
  if (unloaded) return badInput(say`row ${unloaded.row}: the strain grows as the load is taken off: ${SIGNS}`);
  const end = raised.findIndex(({ strain }) => Math.abs(strain) > HELD);
  const held = end < 0 ? raised : raised.slice(0, end);
  const [last, next] = [held.at(-1), end < 0 ? undefined : raised[end]];
  if (next && next.strain < 0)
    return notApplicable(
      say`row ${next.row}: the specimen swelled by ${digits(-100 * next.strain, 3)} %, so its volume was not held: try "${listWord("load back")}"`,
    );
  if (!last)
    return notApplicable(
      say`row ${raised[0]?.row ?? 1}: the specimen is not at its first height when the load is raised: count strains from the height before wetting`,
    );
  // If the specimen still swells a little under the last load that held it, the pressure lies a little higher.
  if (last.strain < 0 && next) return given({ pressure: zeroOf([last, next]), low: last.stress, high: next.stress });
  const before = held.at(-2) ?? last;
  return given({ pressure: last.stress, low: before.stress, high: last.stress }, [
    ...(last.strain < 0
      ? [
          say`row ${last.row}: the specimen had swelled a little (strain ${figure(last.strain)}): the pressure reads low`,
        ]
      : []),
    ...(before === last ? [say`only one load held the volume: the readings give no lower limit of the pressure`] : []),
  ]);
}

const READ = { "zero strain": zeroStrain, "load back": loadBack, "constant volume": constantVolume } as const;

/**
 * Swelling pressure from stresses in any one unit and strains on wetting, ratios, compression positive, so that swell
 * is negative, referred to the first height, less the deflection of the apparatus. A blank is null or 0; rows without a
 * stress are left out. "zero strain" takes its specimens in any order and leaves out a strain of zero, which may be a
 * blank; the other methods take rows in test order, and "constant volume" takes a blank strain as held at zero.
 *
 * Refuses (input) strains in percent and of the wrong sign; refuses (method) where no reading brackets the pressure.
 * Sources: ASTM D4546 (zero strain, load back), EM 1110-2-1906 appendix VIIIA (constant volume), both seen in part.
 * Interpolation on log of stress: common practice, no source. The methods do not agree: "load back" and "zero strain"
 * read high, "constant volume" slightly low (Kayabali and Demir, 2011, Can. Geotech. J. 48, abstract).
 * @example swellingPressure([25, 50, 100, 200], [-0.04, -0.02, 0.002, 0.03], "zero strain").value // { pressure: 93.89, low: 50, high: 100
 *   }
 */
export function swellingPressure(
  stresses: readonly (number | null)[],
  strains: readonly (number | null)[],
  method: SwellingMethod,
): Outcome<SwellingPressure> {
  const rows = toRows(stresses, strains);
  return rows.ok ? READ[method](rows.value) : rows;
}
