/**
 * What the formulas of a data sheet themselves say in cells of remarks, before what worksheet functions answer there. The
 * formulas put expressions into the places of these sentences (`live`), and a record the values of the cells
 * (`record/sheet-remarks`).
 */
import { say, type Message, type Value } from "../../reduction/message";

/** In the load table. */
export const NO_STRESS: Message = say`no stress, and the next load has one: enter it`;
export const READINGS_WITHOUT_STRESS: Message = say`readings and no stress: enter it`;
export const STRESS_NOT_POSITIVE: Message = say`the stress is not a number greater than 0: enter the stress of the load`;
export const STRESS_TURNS: Message = say`the stress turns back under this load alone: correct it, or that of the load above, if it was mistyped`;
/** LEAP of `specification/readings` is the number of times (`load-table.test.ts`). */
export const STRESS_LEAPS: Message = say`check whether the stress was mistyped: it is more than 8 times that of the load before`;
export const timeBeforeLoad = (row: Value, time: Value): Message =>
  say`the time in row ${row} (${time} min) is before the load: correct or clear it`;
/** A row of readings with a number beyond its limits. It begins with OUTSIDE_BEGINS of the sentences at the head. */
export const timeOutside = (row: Value): Message => say`enter a number that can be in row ${row} of the times`;
export const readingOutside = (row: Value): Message => say`enter a number that can be in row ${row} of the readings`;
/** What looks like a slip of a load. Each begins with SLIP_BEGINS of the sentences at the head, which repeats the first of them. */
export const timesShort = (last: Value): Message =>
  say`check whether the times are hours: the last one is ${last} min, and the next load was applied 60 times as long after this one`;
export const timesOfDay = (first: Value): Message =>
  say`check whether the times are times of day, or count from the start of the test: they begin at ${first} min, and the next follows within a fiftieth of it`;
export const halfDay = (last: Value, next: Value): Message =>
  say`check whether a moment of loading is half a day off, as 1:30 for 13:30, or lacks its time: the last time is ${last} min, and the next load was applied ${next} min after this one`;
export const MOMENT_BACK: Message = say`check whether a moment of loading is half a day off, as 1:30 for 13:30, or lacks its time: applied before the load above it`;
export const MOMENT_SAME: Message = say`check whether the moment of loading was mistyped: it is that of the load above`;
export const NOT_MARKED: Message = say`check whether this stress is an increment, as it is that of load 1 and no water is marked: the sheet takes total stresses`;
export const SEATING_AS_LOAD: Message = say`check whether the seating stress is smaller than load 1, as the two are equal and no water is marked: enter the stress under which the zero was read`;
export const SWELLED_FIRST: Message = say`check whether load was taken off, the dial passed its zero or was read backwards: the specimen swelled under the greatest stress so far`;
export const NO_MOMENT: Message = say`the moment of loading is blank, and other loads have one: enter it`;
export const NOT_CORRECTED: Message = say`not corrected for the apparatus`;
export const SEATING_BEYOND_TABLE: Message = say`the deflection table does not reach the seating stress: enter a row for it`;
export const STRESS_BEYOND_TABLE: Message = say`the deflection table does not reach this stress: correct the stress or extend the table`;
export const HEIGHT_TOO_LOW: Message = say`the height at the end is not above the height of solids: correct the readings`;
export const NOT_WETTING: Message = say`marked as wetting, but the stress is not that of the load before: enter the stress that was kept`;
export const WETTING: Message = say`wetting: no cv, mv, k or C alpha`;
export const SWELLED: Message = say`the specimen swelled under the load: no cv, mv, k or C alpha`;
export const COMPRESSED: Message = say`the specimen compressed while load was taken off: check this stress, that of the load before, and the readings`;
export const ROSE: Message = say`the specimen rose above its initial height: check the readings, unless the soil swells`;
export const NO_D100: Message = say`no d100: the curve shows the end of the load`;
export const CURVE_REFUSED: Message = say`the time curve is refused: its first cell says why`;

/** Where the cv of the design values comes from, if there is none. */
export const NO_CV_THERE: Message = say`no load with a cv there`;

/** On an adopted value, and on a cv that was adopted for a range of stress. */
export const adoptedSaid = (label: Value, value: Value, by: Value, reason: Value, given: Value): Message =>
  say`${label} adopted: ${value} by ${by}, ${reason} (the constructions gave ${given})`;
export const adoptedCvSaid = (label: Value, value: Value, from: Value, to: Value, by: Value, reason: Value): Message =>
  say`${label} adopted: ${value} from ${from} to ${to} by ${by}, ${reason}`;
export const NO_INITIALS: Message = say`no initials`;
export const NO_REASON: Message = say`no reason`;
export const NO_VALUE: Message = say`no value`;
