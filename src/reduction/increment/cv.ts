/** Coefficient of consolidation from a time read off a construction: cv = T Hdr^2 / t. */
import { digits, say, type Message, type Value } from "../message";

/** T at U = 50 % in the log-time hand method (exact 0.19673). Source: Casagrande & Fadum (1940); ASTM D2435 and ISO 17892-5 use it. */
export const T50 = 0.197;

/** T at U = 90 % in the root-time hand method (exact 0.84809). Source: Taylor (1942); ASTM D2435 and ISO 17892-5 use it. */
export const T90 = 0.848;

/** Abscissae of the second root-time line over those of the straight part (exact 1.1546). Source: Taylor (1942), as the standards state it. */
export const LINE_FACTOR = 1.15;

export type Drainage = "double" | "single";

/**
 * Longest drainage path: half the height if both faces drain. Same unit as the height.
 * @example drainagePath(19, "double") // 9.5
 * @example drainagePath(19, "single") // 19
 */
export const drainagePath = (height: number, drainage: Drainage): number =>
  drainage === "double" ? height / 2 : height;

/**
 * Height of the specimen at 50 % of consolidation, half way between d0 and d100 of the construction, by log time or
 * root time. cv is calculated with the drainage path of this height. The mean of the heights at the two ends of a load
 * is lower where secondary compression follows, and higher where initial compression went before.
 *
 * `height` is the height at `reading`, any reading of the same load, the last for instance. `perDivision` is how much
 * the height falls when the reading rises by one division: the dial factor, negative for a dial that falls as the
 * specimen is compressed. The deflection of the apparatus does not change within a load, so a corrected height gives a
 * corrected height at 50 %.
 *
 * Source: ASTM D2435, which takes the drainage path at 50 % of consolidation for both methods (from memory).
 * @example heightAtHalf({ height: 18, reading: 200 }, { d0: 0, d100: 160 }, 0.01) // 19.2
 */
export const heightAtHalf = (
  { height, reading }: { readonly height: number; readonly reading: number },
  { d0, d100 }: { readonly d0: number; readonly d100: number },
  perDivision: number,
): number => height + perDivision * (reading - (d0 + d100) / 2);

/**
 * cv in mm2/min from the time factor, the time in minutes and the height at 50 % of consolidation in mm.
 * @example coefficientOfConsolidation(0.197, 19, 22.4, "double") // 1.301
 */
export const coefficientOfConsolidation = (T: number, time: number, height: number, drainage: Drainage): number =>
  (T * drainagePath(height, drainage) ** 2) / time;

/** A cv outside these, in m2/yr, is more likely a slip of units than a soil. Common practice, no source. */
const ORDINARY_CV = [0.01, 200] as const;

/**
 * The remark on a cv in m2/yr that is unlikely for a soil; none on an ordinary cv.
 * @example remarksOnCv(2) // []
 * @example remarksOnCv(5000) // ["cv is 5000 m2/yr, outside 0.01 to 200: check the units of time and height"]
 */
export function remarksOnCv(perYear: number): Message[] {
  const [least, most] = ORDINARY_CV;
  return perYear >= least && perYear <= most
    ? []
    : [say`cv is ${digits(perYear, 2)} m2/yr, outside ${least} to ${most}: check the units of time and height`];
}

/** Few specimens are higher, mm: they have 12 to 40 mm, in a Rowe cell up to 90 mm (BS 1377-6, from memory). */
export const USUAL_MOST_HEIGHT = 100;
/** A specimen at the middle of a load has seldom less or more, mm: peat may lose half. Common practice, no source. */
const ORDINARY_HEIGHT = [5, USUAL_MOST_HEIGHT] as const;

/**
 * The remark on a height in mm that few specimens have at the middle of a load: cv goes with its square.
 * @example remarksOnHeight(19.5) // []
 * @example remarksOnHeight(195) // ["the height is 195 mm, and few specimens have less than 5 or more than 100 mm: check the height and its unit"]
 */
export function remarksOnHeight(mm: number): Message[] {
  const [least, most] = ORDINARY_HEIGHT;
  return mm >= least && mm <= most
    ? []
    : [
        say`the height is ${digits(mm, 3)} mm, and few specimens have less than ${least} or more than ${most} mm: check the height and its unit`,
      ];
}

/** A load seldom stands for more minutes, which are 35 days; the 86,400 s of a day would be 60 days. Common practice, no source. */
export const LONGEST_LOAD = 35 * 1440;

/**
 * The remark on a load whose last time, in minutes, few loads reach.
 * @example remarksOnDuration(1440) // []
 * @example remarksOnDuration(86400) // ["check whether the times are seconds: the last one is 86400 min, which is 60 days"]
 */
export const remarksOnDuration = (last: number): Message[] =>
  last > LONGEST_LOAD ? [timesLong(last, Math.round(last / 1440))] : [];

/**
 * What the functions and the load table of the data sheet say of such a load.
 * @example timesLong(86400, 60) // "check whether the times are seconds: the last one is 86400 min, which is 60 days"
 */
export const timesLong = (last: Value, days: Value): Message =>
  say`check whether the times are seconds: the last one is ${last} min, which is ${days} days`;
