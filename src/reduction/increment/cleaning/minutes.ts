/** Whether the times of a load are minutes: dates, days, clock times and a change of unit among them are told by their size and their steps. */
import { say, digits, type Message } from "../../message";
import { firstOf, lastOf, nth } from "../../numeric/lists";
import type { Series } from "../readings";

/** A larger ratio of neighbouring times looks like a change of unit. Common practice, no source. */
const MOST_JUMP = 30;
/**
 * A record whose first time is below DAYS_FIRST and whose last is below DAYS_LAST is probably in days, not minutes:
 * 0.0007 of a day is 1 min.
 */
const DAYS_FIRST = 0.0015;
const DAYS_LAST = 4;
/**
 * A record whose first time is between these, min, and whose times are all whole minutes of a day, was probably typed as minutes and
 * seconds, which a sheet takes for hours and minutes: 0:30 becomes 0.0208 of a day. By hand nobody reads before 0:05. Common practice,
 * no source.
 */
const CLOCK_LEAST = 4.9 / 1440;
const CLOCK_FIRST = 0.03;
/**
 * Times that are all whole steps of 0.05 s, of which a minute has this many, are those of a logger: they may be whole minutes
 * of a day as well, as 0.25 s, which is 6/1440 min.
 */
const STEPS_OF_LOGGER = 1200;
/**
 * A logger reads in equal steps: half of its first EQUAL_STEPS steps take half of their time, within EQUAL_WITHIN because times are
 * rounded. Nobody reads a dial so often in equal steps. Common practice, no source.
 */
const EQUAL_STEPS = 12;
const EQUAL_WITHIN = 0.1;
/**
 * A logger takes a whole number of readings a second, within RATE_WITHIN of it. Multiples of SELDOM other than OFTEN do not count: few
 * loggers take so many, and a logger that reads every minute and writes days seems to take 24 a second. Common practice, no source.
 */
const RATE_WITHIN = 0.03;
const SELDOM = 12;
const OFTEN = 60;

/**
 * Times that begin above DATES_FROM and end within DATES_SPAN times the first are dates of Excel (46,000 is in 2025): no
 * record of minutes begins two weeks after loading and spans so little.
 */
const DATES_FROM = 20_000;
const DATES_SPAN = 1.02;

/** Why the times of a load, in their order, cannot be used; undefined unless they are dates. */
export function asDates(times: Float64Array): Message | undefined {
  const [first, end] = [times[0] ?? 0, times[times.length - 1] ?? 0];
  return times.length > 1 && first > DATES_FROM && end < DATES_SPAN * first
    ? say`the times (${digits(first, 7)} to ${digits(end, 7)}) look like dates with clock times: enter minutes since the load was applied, the time of the reading less that of loading, times 1440`
    : undefined;
}

/** Whether all times are whole numbers of a unit of which `inOne` make one minute. */
const areWhole = (times: readonly number[], inOne: number): boolean =>
  times.every((time) => Math.abs(((time * inOne + 0.5) % 1) - 0.5) < 1e-6);

/** Whether the times are minutes of a logger that takes a whole number of readings a second; false of fewer times. */
function areOfLogger(times: Float64Array): boolean {
  // Without so many times these are NaN, and each comparison is false.
  const all = times[EQUAL_STEPS]! - times[0]!;
  const half = times[EQUAL_STEPS / 2]! - times[0]!;
  const step = (all * 60) / EQUAL_STEPS;
  const rate = Math.round(1 / step);
  return (
    Math.abs(half / all - 0.5) < EQUAL_WITHIN / 2 &&
    Math.abs(rate * step - 1) < RATE_WITHIN &&
    (rate === OFTEN || rate % SELDOM > 0)
  );
}

/**
 * Remarks on times that look like another unit: neighbours that differ by more than MOST_JUMP times, or times in
 * days. `all` are the times before averaging.
 */
export function unitRemarks({ times, rows }: Series, all: Float64Array): Message[] {
  const remarks: Message[] = [];
  if (times.length < 2) return remarks;
  const jump = times.findIndex((time, i) => i > 0 && time > MOST_JUMP * nth(times, i - 1));
  if (jump > 0)
    remarks.push(
      say`the time jumps from ${digits(nth(times, jump - 1), 3)} to ${digits(nth(times, jump), 3)} min (${nth(rows, jump)}): are all times in minutes?`,
    );
  const first = firstOf(times);
  const areDays = first < DAYS_FIRST && lastOf(times) < DAYS_LAST;
  const areClock =
    first > CLOCK_LEAST && first < CLOCK_FIRST && areWhole(times, 1440) && !areWhole(times, STEPS_OF_LOGGER);
  if ((areDays || areClock) && !areOfLogger(all))
    remarks.push(say`the times look like days, as a sheet keeps the clock time 0:15: enter minutes`);
  return remarks;
}
