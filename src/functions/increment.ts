/** Worksheet functions of one load increment: log of time, root of time, fit to theory, secondary compression. */
import { convert } from "../reduction/units";
import { digits, say, type Message } from "../reduction/message";
import { badInput, given, notApplicable, type Outcome } from "../reduction/outcome";
import {
  coefficientOfConsolidation,
  drainagePath,
  remarksOnCv,
  remarksOnDuration,
  remarksOnHeight,
  T50,
  T90,
  type Drainage,
} from "../reduction/increment/cv";
import { logTimeLines, rootTimeLines } from "../reduction/increment/constructions/lines";
import { constructionRemarks, type Increment } from "../reduction/increment/reduce";
import { secondarySlope } from "../reduction/increment/constructions/secondary";
import type { CleanReadings } from "../reduction/increment/readings";
import { cyclesPast, noSlope } from "../reduction/increment/constructions/tail";
import { degreeOfConsolidation, T_END_OF_PRIMARY, timeFactor } from "../reduction/increment/fit/terzaghi";
import { told } from "../record/told";
import { answer, itemOf, line, remarkIn, remarksOf, rowsOfLines, valueOf, type Item } from "./answer";
import {
  CellError,
  languageAsked,
  refuseCell,
  toChoice,
  toMillimetres,
  toNumber,
  toOptionalPositive,
  toPositive,
  toUnit,
} from "./cells";
import { reduce, toCurve } from "./reduced-curve";

const NO_HEIGHT = badInput(say`cv needs the height of the specimen at the middle of the increment`);

const NO_UPPER_LIMIT = badInput(say`the readings give no upper limit for cv`);

/** The readings of a load, those after a jump of the dial less the jump. */
const withoutJump = ({ cleaned, jump }: Increment): CleanReadings => jump?.clean ?? valueOf(cleaned);

/** The arguments that turn a time into a cv: height, drainage and units. */
function toDrained(height: unknown, drainage: unknown, cv_unit: unknown, length_unit: unknown) {
  const unit = toUnit(length_unit, "length", "mm");
  const cvUnit = toUnit(cv_unit, "cv", "m2/yr");
  const faces = toChoice<Drainage>(drainage, say`the drainage`, ["double", "single"], "double");
  const given = toOptionalPositive(height, say`the height`);
  const mm = given === undefined ? undefined : convert(given, "length", unit, "mm");
  const inUnit = (cv: number) => convert(cv, "cv", "mm2/min", cvUnit);
  return {
    unit,
    /**
     * The remarks on a height that few specimens have, on readings that move by more than the height (they are in another unit, such
     * as divisions of a dial), and on times that may be seconds.
     */
    onUnits: (increment: Increment): Message[] => {
      const { travel, lastTime } = withoutJump(increment);
      return [
        ...(mm === undefined ? [] : remarksOnHeight(mm)),
        ...(given !== undefined && travel > given
          ? [
              say`the readings move by ${digits(travel, 4)}, more than the height of ${given}: they are in another unit; cv and the times hold, and the readings of the answer are in the unit of the readings`,
            ]
          : []),
        ...remarksOnDuration(lastTime),
      ];
    },
    /**
     * An item with cv from a time factor and a time in minutes; without a height the item says that the height is
     * missing.
     */
    cv: (label: string, T: number, time: number): Item =>
      mm === undefined
        ? line(label, undefined, cvUnit, NO_HEIGHT)
        : line(label, inUnit(coefficientOfConsolidation(T, time, mm, faces)), cvUnit),
    /** An item with cv from cv / Hdr^2 per minute. */
    cvOfRate: (label: string, rate: number): Item =>
      mm !== undefined && Number.isFinite(rate)
        ? line(label, inUnit(rate * drainagePath(mm, faces) ** 2), cvUnit)
        : line(label, undefined, cvUnit, mm === undefined ? NO_HEIGHT : NO_UPPER_LIMIT),
  };
}

/** The remarks of an outcome, and one more if cv is unlikely for a soil. */
function remarksWithCv<T>(outcome: Outcome<T>, items: readonly Item[]): readonly Message[] {
  const remarks = remarksOf(outcome);
  const cv = items.find(({ label }) => label === "cv");
  if (typeof cv?.value !== "number" || typeof cv.unit !== "string") return remarks;
  return [...remarks, ...remarksOnCv(convert(cv.value, "cv", cv.unit, "m2/yr"))];
}

/**
 * Reduces a load increment by the log-of-time method (Casagrande): d0 by the parabola rule, d100 where the steepest tangent meets the secondary tail, t50 at half way, cv = 0.197 Hdr2/t50. Refuses (#N/A) where the readings do not support it.
 * @customfunction
 * @param times Times since the load was applied, in minutes.
 * @param readings Dial or transducer readings, in the length unit; either direction.
 * @param [height] Height of the specimen at the middle of the increment (50 % of consolidation); without it cv is not available.
 * @param [item] One of d0, d50, d100, t50, t100, cv, tail_slope, remark; left out, the whole table spills.
 * @param [drainage] "double" (default) or "single".
 * @param [cv_unit] Unit of cv: m2/yr (default), mm2/min, cm2/s, cm2/min, m2/s, in2/min, ft2/day, ft2/yr.
 * @param [length_unit] Unit of the readings and the height: mm (default), cm, in.
 * @param [picks] Two columns, names and values, of picks by hand: d0, d100, tail_from, tail_to, pair_at, tangent_from, tangent_to; or LOAD_PICKS.
 * @param [procedure] "aided" (default: theory helps) or "drawn" (through raw readings, as a person can repeat it with a ruler).
 * @returns A table of label, value and unit; or the one item. A text is in the language of the word that asks for it, as "remark" in English, "Bemerkung" in German; "Deutsch" asks for the whole table in German.
 * @example =CLAY.LOG_TIME(A2:A16,B2:B16,22.3)
 * @example =CLAY.LOG_TIME(A2:A16,B2:B16,22.3,"cv","double","ft2/day")
 * @example =CLAY.LOG_TIME(A2:A16,B2:B16,22.3,"cv",,,,,"drawn")
 * @example =CLAY.LOG_TIME(A2:A16,B2:B16,22.3,"remark",,,,G2:H3)
 * @refuses =CLAY.LOG_TIME(A2:A9,B2:B9,22.3)
 * @refuses =CLAY.LOG_TIME(A2:A16,B2:B15,22.3)
 * @source Casagrande and Fadum (1940); ASTM D2435 and ISO 17892-5 describe the same construction. T50 = 0.197.
 * @picture log time
 * @picture log time, drawn
 */
export function LOG_TIME(
  times: any[][],
  readings: any[][],
  height?: any,
  item?: any,
  drainage?: any,
  cv_unit?: any,
  length_unit?: any,
  picks?: any[][],
  procedure?: any,
): any[][] {
  const { unit, cv, onUnits } = toDrained(height, drainage, cv_unit, length_unit);
  const increment = reduce(times, readings, picks, procedure);
  const outcome = increment.logTime;
  const { d0, d50, d100, t50, t100, tailSlope, noTailSlope } = valueOf(outcome);
  const items: Item[] = [
    line("d0", d0, unit),
    line("d50", d50, unit),
    line("d100", d100, unit),
    line("t50", t50, "min"),
    line("t100", t100, "min"),
    cv("cv", T50, t50),
    line("tail_slope", tailSlope, `${unit}/cycle`, noTailSlope && notApplicable(noTailSlope)),
  ];
  return answer(items, [...remarksWithCv(outcome, items), ...onUnits(increment)], item);
}

/**
 * Reduces a load increment by the root-of-time method (Taylor): d0 by the straight early part, d90 where the line of 1.15 times its abscissae meets the readings, cv = 0.848 Hdr2/t90. Refuses (#N/A) where the readings do not support it.
 * @customfunction
 * @param times Times since the load was applied, in minutes.
 * @param readings Dial or transducer readings, in the length unit; either direction.
 * @param [height] Height of the specimen at the middle of the increment (50 % of consolidation); without it cv is not available.
 * @param [item] One of d0, d90, d100, t90, cv, remark; left out, the whole table spills.
 * @param [drainage] "double" (default) or "single".
 * @param [cv_unit] Unit of cv: m2/yr (default), mm2/min, cm2/s, cm2/min, m2/s, in2/min, ft2/day, ft2/yr.
 * @param [length_unit] Unit of the readings and the height: mm (default), cm, in.
 * @param [picks] Two columns, names and values, of picks by hand: d0, d90, straight_from, straight_to; or LOAD_PICKS.
 * @param [procedure] "aided" (default: theory helps) or "drawn" (through raw readings, as a person can repeat it with a ruler).
 * @returns A table of label, value and unit; or the one item. A text is in the language of the word that asks for it, as "remark" in English, "Bemerkung" in German; "Deutsch" asks for the whole table in German.
 * @example =CLAY.ROOT_TIME(A2:A16,B2:B16,22.3)
 * @example =CLAY.ROOT_TIME(A2:A16,B2:B16,22.3,"t90")
 * @example =CLAY.ROOT_TIME(A2:A16,B2:B16,22.3,"t90",,,,,"drawn")
 * @refuses =CLAY.ROOT_TIME(A2:A5,B2:B5,22.3)
 * @source Taylor (1942, 1948); ASTM D2435 and ISO 17892-5 describe the same construction. T90 = 0.848, abscissae of the second line 1.15 times those of the first.
 * @picture root time
 * @picture root time, drawn
 */
export function ROOT_TIME(
  times: any[][],
  readings: any[][],
  height?: any,
  item?: any,
  drainage?: any,
  cv_unit?: any,
  length_unit?: any,
  picks?: any[][],
  procedure?: any,
): any[][] {
  const { unit, cv, onUnits } = toDrained(height, drainage, cv_unit, length_unit);
  const increment = reduce(times, readings, picks, procedure);
  const outcome = increment.rootTime;
  const { d0, d90, d100, t90 } = valueOf(outcome);
  const items: Item[] = [
    line("d0", d0, unit),
    line("d90", d90, unit),
    line("d100", d100, unit),
    line("t90", t90, "min"),
    cv("cv", T90, t90),
  ];
  return answer(items, [...remarksWithCv(outcome, items), ...onUnits(increment)], item);
}

/**
 * Fits Terzaghi's theory with initial and secondary compression to a load increment by least squares, with a 95 % interval for cv. Refuses (#N/A) where the readings do not support it.
 * @customfunction
 * @param times Times since the load was applied, in minutes.
 * @param readings Dial or transducer readings, in the length unit; either direction.
 * @param [height] Height of the specimen at the middle of the increment (50 % of consolidation); without it cv is not available.
 * @param [item] One of d0, d100, cv, cv_low, cv_high, tail_slope, misfit, remark; left out, the whole table spills.
 * @param [drainage] "double" (default) or "single".
 * @param [cv_unit] Unit of cv: m2/yr (default), mm2/min, cm2/s, cm2/min, m2/s, in2/min, ft2/day, ft2/yr.
 * @param [length_unit] Unit of the readings and the height: mm (default), cm, in.
 * @returns A table of label, value and unit; or the one item. A text is in the language of the word that asks for it, as "remark" in English, "Bemerkung" in German; "Deutsch" asks for the whole table in German.
 * @example =CLAY.FIT_TIME(A2:A16,B2:B16,22.3)
 * @refuses =CLAY.FIT_TIME(A2:A5,B2:B5,22.3)
 * @source Terzaghi and Froehlich (1936), Taylor (1948) for the theory; least squares by Levenberg and Marquardt in the form of Moré (1978).
 */
export function FIT_TIME(
  times: any[][],
  readings: any[][],
  height?: any,
  item?: any,
  drainage?: any,
  cv_unit?: any,
  length_unit?: any,
): any[][] {
  const { unit, cvOfRate, onUnits } = toDrained(height, drainage, cv_unit, length_unit);
  const increment = reduce(times, readings);
  const outcome = increment.fit;
  const { d0, d100, rate, rateLow, rateHigh, tail, misfit } = valueOf(outcome);
  const { jump } = increment;
  const end = T_END_OF_PRIMARY / rate;
  // The size of a jump in the tail was found with the slope of the tail, as in LOG_TIME.
  const noTailSlope =
    jump && jump.time > end ? jump.said : noSlope(cyclesPast(withoutJump(increment).series.times, end));
  const items: Item[] = [
    line("d0", d0, unit),
    line("d100", d100, unit),
    cvOfRate("cv", rate),
    cvOfRate("cv_low", rateLow),
    cvOfRate("cv_high", rateHigh),
    itemOf("tail_slope", noTailSlope ? notApplicable(noTailSlope) : given(tail), `${unit}/cycle`),
    line("misfit", misfit, unit),
  ];
  return answer(items, [...remarksWithCv(outcome, items), ...onUnits(increment)], item);
}

/**
 * Secondary compression of a load increment as strain per log cycle of time (C-alpha-epsilon), positive in the direction of the movement.
 * @customfunction
 * @param times Times since the load was applied, in minutes.
 * @param readings Dial or transducer readings; either direction.
 * @param initial_height Height that the strain is referred to, in the unit of the readings.
 * @param [from_time] Start of the span, in minutes; left out, the tail that LOG_TIME found.
 * @param [to_time] End of the span, in minutes; left out, the last reading.
 * @returns Strain per log cycle, a ratio.
 * @example =CLAY.SECONDARY(A2:A16,B2:B16,25.4)
 * @example =CLAY.SECONDARY(A2:A16,B2:B16,25.4,240,1440)
 * @refuses =CLAY.SECONDARY(A2:A16,B2:B16,25.4,1440,240)
 * @source Ladd (1967); ASTM D2435: change of height per log cycle of time.
 */
export function SECONDARY(times: any[][], readings: any[][], initial_height: any, from_time?: any, to_time?: any): any {
  const height = toPositive(initial_height, say`the initial height`);
  const from = toOptionalPositive(from_time, say`the start of the span`);
  const to = toOptionalPositive(to_time, say`the end of the span`);
  const increment = reduce(times, readings);
  const slope = valueOf(secondarySlope(increment, from, to));
  const { travel } = withoutJump(increment);
  if (travel > height)
    return refuseCell(
      say`the readings move by ${travel}, more than the initial height of ${height}: give both in one unit (DEFORMATION turns divisions of a dial into a length)`,
    );
  return slope / height;
}

/** Ignores a height in the place of the picks, so that the arguments of LOG_TIME can be copied to a LINES function. */
const picksOrHeight = (argument: unknown): unknown => {
  const cell = Array.isArray(argument) && argument.length === 1 ? [argument[0]].flat() : [argument];
  return cell.length === 1 && typeof cell[0] === "number" ? undefined : argument;
};

/**
 * The log-of-time construction as series for a chart with a log time axis: rows of label, time in minutes, reading. Every line of the hand construction.
 * @customfunction
 * @param times Times since the load was applied, in minutes.
 * @param readings Dial or transducer readings; either direction.
 * @param [picks] Range of two columns, names and values, of picks by hand, as in LOG_TIME.
 * @param [procedure] "aided" (default) or "drawn", as in LOG_TIME.
 * @param [language] Language of the answer: "English" (default) or "Deutsch".
 * @returns Rows of label, x (minutes) and y (reading).
 * @example =CLAY.LOG_TIME_LINES(A2:A16,B2:B16)
 * @refuses =CLAY.LOG_TIME_LINES(A2:A9,B2:B9)
 * @source Casagrande and Fadum (1940); ASTM D2435 and ISO 17892-5 describe the same construction.
 * @picture log time
 * @picture log time, drawn
 */
export function LOG_TIME_LINES(
  times: any[][],
  readings: any[][],
  picks?: any[][],
  procedure?: any,
  language?: any,
): any[][] {
  const { cleaned, logTime, jump } = reduce(times, readings, picksOrHeight(picks), procedure);
  return rowsOfLines(logTimeLines(valueOf(cleaned), valueOf(logTime), jump), language);
}

/**
 * The root-of-time construction as series for a chart: rows of label, root of time in root minutes, reading. Every line of the hand construction.
 * @customfunction
 * @param times Times since the load was applied, in minutes.
 * @param readings Dial or transducer readings; either direction.
 * @param [picks] Range of two columns, names and values, of picks by hand, as in ROOT_TIME.
 * @param [procedure] "aided" (default) or "drawn", as in ROOT_TIME.
 * @param [language] Language of the answer: "English" (default) or "Deutsch".
 * @returns Rows of label, x (root minutes) and y (reading).
 * @example =CLAY.ROOT_TIME_LINES(A2:A16,B2:B16)
 * @refuses =CLAY.ROOT_TIME_LINES(A2:A5,B2:B5)
 * @source Taylor (1942, 1948); ASTM D2435 and ISO 17892-5 describe the same construction.
 * @picture root time
 * @picture root time, drawn
 */
export function ROOT_TIME_LINES(
  times: any[][],
  readings: any[][],
  picks?: any[][],
  procedure?: any,
  language?: any,
): any[][] {
  const { cleaned, rootTime, jump } = reduce(times, readings, picksOrHeight(picks), procedure);
  return rowsOfLines(rootTimeLines(valueOf(cleaned), valueOf(rootTime), jump), language);
}

/**
 * One load increment in one row, for a data sheet: log-time d0, d50, d100, t50, t100; root-time d0, d90, d100, t90; tail slope per log cycle; remark. A method that does not apply leaves its cells blank; the remark says why.
 * @customfunction
 * @param times Times since the load was applied, in minutes.
 * @param readings Dial or transducer readings; either direction.
 * @param [picks] Two columns, names and values, of picks by hand, as in LOG_TIME and ROOT_TIME; or LOAD_PICKS.
 * @param [procedure] "aided" (default) or "drawn", as in LOG_TIME.
 * @param [zeros] What a reading of 0 is: "blank" (default), since desktop Excel passes a blank cell as 0; or "readings", if the formula passes blanks as "".
 * @param [refusal] Where the reason stands if the times or readings cannot be used: "error" (default), the error of the first cell; or "remark", the last cell, and the others are blank.
 * @returns One row of eleven cells; all blank where there are no readings.
 * @example =CLAY.TIME_CURVE(A2:A16,B2:B16)
 * @refuses =CLAY.TIME_CURVE(A2:A16,B2:B15)
 * @source Those of LOG_TIME and ROOT_TIME.
 * @picture log time
 * @picture root time
 */
export function TIME_CURVE(
  times: any[][],
  readings: any[][],
  picks?: any[][],
  procedure?: any,
  zeros?: any,
  refusal?: any,
): any[][] {
  const wanted = toChoice(refusal, say`the place of a refusal`, ["error", "remark"], "error");
  try {
    return timeCurve(times, readings, picks, procedure, zeros, languageAsked(refusal));
  } catch (error) {
    if (wanted === "error" || !(error instanceof CellError)) throw error;
    return [[...new Array(10).fill(""), told(say`the time curve is refused: ${error.reason}`, languageAsked(refusal))]];
  }
}

function timeCurve(
  times: any[][],
  readings: any[][],
  picks: any,
  procedure: any,
  zeros: any,
  language: string,
): any[][] {
  const zerosCount = toChoice(zeros, say`the meaning of zeros`, ["blank", "readings"], "blank") === "readings";
  const [t, d] = toCurve(times, readings);
  if (t.length === 0 || d.every((reading) => reading === 0)) return [new Array(11).fill("")];
  const increment = reduce(times, readings, picks, procedure, zerosCount);
  const { cleaned, logTime, rootTime } = increment;
  valueOf(cleaned);
  const log = logTime.ok ? logTime.value : undefined;
  const root = rootTime.ok ? rootTime.value : undefined;
  return [
    [
      log?.d0 ?? "",
      log?.d50 ?? "",
      log?.d100 ?? "",
      log?.t50 ?? "",
      log?.t100 ?? "",
      root?.d0 ?? "",
      root?.d90 ?? "",
      root?.d100 ?? "",
      root?.t90 ?? "",
      log?.tailSlope ?? "",
      remarkIn(language, constructionRemarks(increment)),
    ],
  ];
}

/**
 * Average degree of consolidation at a time factor by Terzaghi's theory, exact: double drainage, uniform initial excess pressure.
 * @customfunction
 * @param time_factor Time factor T = cv t / Hdr2.
 * @returns Degree of consolidation as a ratio, 0 to 1.
 * @example =CLAY.DEGREE_OF_CONSOLIDATION(0.197)
 * @refuses =CLAY.DEGREE_OF_CONSOLIDATION(-0.1)
 * @source Terzaghi and Froehlich (1936); Taylor (1948), Fundamentals of Soil Mechanics, ch. 10.
 */
export function DEGREE_OF_CONSOLIDATION(time_factor: any): any {
  const T = toNumber(time_factor, say`the time factor`);
  return T < 0 ? refuseCell(say`the time factor is ${T}: it cannot be negative`) : degreeOfConsolidation(T);
}

/**
 * Time factor at an average degree of consolidation by Terzaghi's theory, exact (0.1967 at 50 %, 0.8481 at 90 %).
 * @customfunction
 * @param degree Degree of consolidation as a ratio, 0 to less than 1.
 * @returns Time factor T = cv t / Hdr2.
 * @example =CLAY.TIME_FACTOR(0.9)
 * @refuses =CLAY.TIME_FACTOR(1)
 * @source Terzaghi and Froehlich (1936); Taylor (1948), Fundamentals of Soil Mechanics, ch. 10.
 */
export function TIME_FACTOR(degree: any): any {
  return valueOf(timeFactor(toNumber(degree, say`the degree of consolidation`)));
}

function cvFrom(T: number, time: number, height: any, drainage: any, cv_unit: any, length_unit: any): number {
  const mm = toMillimetres(height, say`the height`, toUnit(length_unit, "length", "mm"));
  const faces = toChoice<Drainage>(drainage, say`the drainage`, ["double", "single"], "double");
  const unit = toUnit(cv_unit, "cv", "m2/yr");
  return convert(coefficientOfConsolidation(T, time, mm, faces), "cv", "mm2/min", unit);
}

/**
 * Coefficient of consolidation from a t50 read off a log-time plot: cv = 0.197 Hdr2 / t50.
 * @customfunction
 * @param t50 Time of 50 % of primary compression, in minutes.
 * @param height Height of the specimen at the middle of the increment (50 % of consolidation), in the length unit.
 * @param [drainage] "double" (default) or "single".
 * @param [cv_unit] Unit of cv: m2/yr (default), mm2/min, cm2/s, cm2/min, m2/s, in2/min, ft2/day, ft2/yr.
 * @param [length_unit] Unit of the height: mm (default), cm, in.
 * @returns The coefficient of consolidation.
 * @example =CLAY.CV_FROM_T50(9.12,22.3)
 * @example =CLAY.CV_FROM_T50(9.12,0.878,"double","ft2/day","in")
 * @refuses =CLAY.CV_FROM_T50(9.12,0)
 * @source Casagrande and Fadum (1940): T50 = 0.197, as ASTM D2435 and ISO 17892-5 use it.
 */
export function CV_FROM_T50(t50: any, height: any, drainage?: any, cv_unit?: any, length_unit?: any): any {
  return cvFrom(T50, toPositive(t50, say`t50`), height, drainage, cv_unit, length_unit);
}

/**
 * Coefficient of consolidation from a t90 read off a root-time plot: cv = 0.848 Hdr2 / t90.
 * @customfunction
 * @param t90 Time of 90 % of primary compression, in minutes.
 * @param height Height of the specimen at the middle of the increment (50 % of consolidation), in the length unit.
 * @param [drainage] "double" (default) or "single".
 * @param [cv_unit] Unit of cv: m2/yr (default), mm2/min, cm2/s, cm2/min, m2/s, in2/min, ft2/day, ft2/yr.
 * @param [length_unit] Unit of the height: mm (default), cm, in.
 * @returns The coefficient of consolidation.
 * @example =CLAY.CV_FROM_T90(42.9,22.3)
 * @refuses =CLAY.CV_FROM_T90(42.9,22.3,"both")
 * @source Taylor (1942): T90 = 0.848, as ASTM D2435 and ISO 17892-5 use it.
 */
export function CV_FROM_T90(t90: any, height: any, drainage?: any, cv_unit?: any, length_unit?: any): any {
  return cvFrom(T90, toPositive(t90, say`t90`), height, drainage, cv_unit, length_unit);
}
