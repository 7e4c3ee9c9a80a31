/** The loads of a sheet and their readings: how many loads, and the names of the two columns of each. */
import type { Column } from "./field";

/** The usual number of loads of a sheet, and the largest. */
export const LOADS = 24;
export const MOST_LOADS = 48;

/**
 * The schedule of readings by hand in minutes. The intervals grow almost geometrically, as in ASTM D2435 (from memory;
 * check the edition that applies).
 */
export const HAND_TIMES = [0, 0.1, 0.25, 0.5, 1, 2, 4, 8, 15, 30, 60, 120, 240, 480, 1440] as const;

/** Readings begin with small times; a step of less than this part of the first time shows that the times began elsewhere. Common practice, no source. */
export const LEAST_STEP = 1 / 50;
/**
 * A moment of loading may be half a day off, or a date without its time: the load is then read until this many minutes after the next
 * load was applied, at least and at most (on sheets of version 11: `mostUntil11`). Common practice, no source.
 */
export const READ_BEYOND = { least: 60, most: 25 * 60, mostUntil11: 13 * 60 } as const;
/** Only times that begin later than this many minutes began elsewhere: a fast logger may begin seconds after the load. Common practice, no source. */
export const LATE_BEGIN = 0.2;

/** A stress of more than this many times that of the load before was probably mistyped (2000 for 200). Common practice, no source. */
export const LEAP = 8;

/** The words before and behind the number of a row, where the refusal of a curve names the stress of that row. */
export const STRESS_OF_ROW = ["row ", ": the stress "] as const;

/** The number of a load in the names of its readings: "07" in times_07 and readings_07. */
export const loadSuffix = (load: number): string => String(load).padStart(2, "0");

export const timesName = (load: number): string => `times_${loadSuffix(load)}`;
export const readingsName = (load: number): string => `readings_${loadSuffix(load)}`;

/** The load whose times or readings have this name; undefined for any other name. */
export function loadOfReadings(name: string): number | undefined {
  const [, digits] = /^(?:times|readings)_(\d\d)$/.exec(name) ?? [];
  return digits === undefined ? undefined : Number(digits);
}

/** A sheet that has this name is a data sheet. */
export const DATA_SHEET_NAME = timesName(1);

/** The two columns with the readings of a load. */
export const readingsOf = (load: number): readonly [Column, Column] => [
  {
    name: timesName(load),
    label: `Times of load ${load}`,
    heading: ["Time", ""],
    measure: "time",
    kind: "input",
  },
  {
    name: readingsName(load),
    label: `Readings of load ${load}`,
    heading: ["Reading", ""],
    measure: "reading",
    kind: "input",
  },
];

/** The columns with the readings of the loads `first` to `last`. */
export const readingsOfLoads = (first: number, last: number): readonly Column[] =>
  Array.from({ length: Math.max(0, last - first + 1) }, (_, index) => readingsOf(first + index)).flat();
