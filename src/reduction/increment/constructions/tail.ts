/**
 * The straight tail of the log-of-time plot.
 *
 * Aided: the fit to theory takes off the primary compression still to come and straightens the tail where creep is
 * still beginning; a tail too short to show its slope gets the slope of the fit. Drawn, or where a span is picked: raw
 * readings alone.
 */
import { listWord, say, digits, fixed, listed, type Message } from "../../message";
import { badInput, given, type Outcome } from "../../outcome";
import { straightLine } from "../../numeric/straight-line";
import { creep } from "../fit/model";
import type { Picks } from "./picks";
import { logTimeRefuses } from "./refusals";
import type { Procedure } from "./procedure";
import { rowWithTime } from "../cleaning/row-words";
import { indicesFrom, type CleanReadings, type Series } from "../readings";
import type { Share } from "../share";
import { degreeOfConsolidation, T_END_OF_PRIMARY } from "../fit/terzaghi";
import type { TheoryFit } from "../fit/theory-fit";
import { firstOf, lastOf, nth } from "../../numeric/lists";

/** The line: slope per log cycle, reading at t = 1 min, the span of the readings that it goes through. */
export interface Tail {
  readonly slope: number;
  readonly atOneMinute: number;
  readonly from: number;
  readonly to: number;
  /** Log cycles that the readings of the tail span. */
  readonly cycles: number;
  /** True if the readings give the slope; false if the fit gives it. */
  readonly own: boolean;
}

/** Tail readings come later than this many times the end of primary, as in the hand construction. */
const TAIL_FROM = 3;
/**
 * Where the readings follow theory, to FOLLOWS_SHARE of primary or FOLLOWS_STEP of their step, tail readings may begin
 * this early: the fit corrects them for the primary still to come.
 */
const TAIL_FROM_BY_THEORY = 2;
const FOLLOWS_SHARE = 0.005;
const FOLLOWS_STEP = 0.4;
/** Readings over fewer log cycles do not show a slope. Half a cycle is common practice: 8 h to 24 h. */
const SHORTEST_TAIL = 0.25;
const GOOD_TAIL = 0.45;

const cyclesOf = (times: readonly number[]): number => (times.length ? Math.log10(lastOf(times) / firstOf(times)) : 0);

/**
 * Log cycles that the readings past the end of primary span.
 * @example cyclesPast([1, 10, 100, 1000], 50) // 1
 */
export const cyclesPast = (times: readonly number[], end: number): number =>
  cyclesOf(times.filter((t) => t >= end * (1 - 1e-9)));

/**
 * Why readings over this many log cycles show no slope of secondary compression; undefined where they span enough.
 * @example noSlope(0.1) // "the readings past the end of primary span 0.10 of a log cycle: secondary compression needs 0.25 of a log
 *   cycle; go on reading"
 * @example noSlope(1) // undefined
 */
export function noSlope(cycles: number, of = say`the readings`): Message | undefined {
  if (cycles >= SHORTEST_TAIL * (1 - 1e-9)) return undefined;
  return cycles
    ? say`${of} past the end of primary span ${fixed(cycles, 2)} of a log cycle: secondary compression needs ${SHORTEST_TAIL} of a log cycle; go on reading`
    : say`no two of ${of} lie past the end of primary: secondary compression needs ${SHORTEST_TAIL} of a log cycle; go on reading`;
}

export function tailLine(
  clean: CleanReadings,
  used: Series,
  fit: TheoryFit,
  picks: Picks,
  procedure: Procedure,
  share: Share,
): Outcome<Tail> {
  if (picks.tail_from !== undefined || picks.tail_to !== undefined) return pickedTail(used, fit, picks);
  return procedure === "drawn" ? drawnTail(used, fit, picks) : aidedTail(clean, used, fit, picks, share);
}

const endOfPrimary = (fit: TheoryFit): number => T_END_OF_PRIMARY / fit.rate;

/**
 * The least-squares line through readings, corrected by `settled`, or through their mean with a given slope. A slope
 * against the movement is set to zero: no reading says that the soil swelled.
 */
function lineThrough(
  { times, readings, weights }: Series,
  index: readonly number[],
  fit: TheoryFit,
  settled = (i: number) => nth(readings, i),
  slope?: number,
): Tail {
  const line = straightLine(
    index.map((i) => Math.log10(nth(times, i))),
    index.map(settled),
    index.map((i) => nth(weights, i)),
  );
  const steep = slope ?? line.slope;
  const held = steep * fit.primary < 0 ? 0 : steep;
  return {
    slope: held,
    atOneMinute: line.intercept + (line.slope - held) * line.middle,
    from: nth(times, firstOf(index)),
    to: nth(times, lastOf(index)),
    cycles: cyclesOf(index.map((i) => nth(times, i))),
    own: slope === undefined,
  };
}

const lengthRemark = (cycles: number): Message =>
  say`the tail is only ${fixed(cycles, 2)} of a log cycle long: its slope is uncertain`;

function pickedTail(used: Series, fit: TheoryFit, picks: Picks): Outcome<Tail> {
  const { times } = used;
  const [from, to] = [picks.tail_from ?? TAIL_FROM * endOfPrimary(fit), picks.tail_to ?? lastOf(times)];
  const index = indicesFrom(times, from, to);
  return index.length < 2
    ? badInput(
        say`the picked tail (${digits(from, 4)} to ${digits(to, 4)} min) holds ${index.length} readings: it needs 2`,
      )
    : given({ ...lineThrough(used, index, fit), to });
}

/**
 * The readings after three times the end of primary. Where they span too little, readings before them but past the end
 * of primary are added, until the slope shows.
 */
function drawnTail(used: Series, fit: TheoryFit, picks: Picks): Outcome<Tail> {
  const { times } = used;
  const end = endOfPrimary(fit);
  const isLong = (i: number) => noSlope(cyclesOf(times.slice(i))) === undefined;
  const from = [...indicesFrom(times, TAIL_FROM * end), ...indicesFrom(times, end).reverse()].find(isLong);
  if (from === undefined) {
    const short = picks.d100 === undefined && noSlope(cyclesPast(times, end));
    return short
      ? logTimeRefuses(say`${short}, or use the procedure "${listWord("aided")}"`)
      : given(lineThrough(used, indicesFrom(times, 0).slice(-2), fit));
  }
  const remarks: Message[] = [];
  const cycles = cyclesOf(times.slice(from));
  if (cycles < GOOD_TAIL) remarks.push(lengthRemark(cycles));
  if (nth(times, from) < TAIL_FROM * end)
    remarks.push(
      say`the tail begins at ${fixed(nth(times, from) / end, 1)} times the end of primary: some of it is still primary compression`,
    );
  return given(lineThrough(used, indicesFrom(times, nth(times, from)), fit), remarks);
}

function aidedTail(clean: CleanReadings, used: Series, fit: TheoryFit, picks: Picks, share: Share): Outcome<Tail> {
  const { times, readings } = used;
  const end = endOfPrimary(fit);
  const follows = fit.misfit < Math.max(FOLLOWS_SHARE * Math.abs(fit.primary), FOLLOWS_STEP * clean.step);
  const tail = indicesFrom(times, (follows ? TAIL_FROM_BY_THEORY : TAIL_FROM) * end);
  const cycles = cyclesOf(tail.map((i) => nth(times, i)));
  const own = cycles >= SHORTEST_TAIL;
  const index = own ? tail : indicesFrom(times, 0).slice(-2);
  const change = (i: number): number => {
    const T = fit.rate * nth(times, i);
    const begun = fit.tail ? Math.log10(T / fit.onset.begins) - creep(fit.onset, T) : 0;
    return fit.primary * (1 - degreeOfConsolidation(T)) + fit.tail * begun;
  };
  const unseen = Math.max(UNSEEN_SHARE * Math.abs(fit.primary), UNSEEN_STEP * clean.step);
  const remarks = picks.d100 === undefined ? alterations(used, index, change, unseen, share) : [];
  if (picks.d100 === undefined && cycles < GOOD_TAIL)
    remarks.push(
      own
        ? lengthRemark(cycles)
        : say`the tail is too short to show its slope: d100 leans on that of the fit to theory`,
    );
  return given(
    lineThrough(used, index, fit, (i) => nth(readings, i) + change(i), own ? undefined : fit.tail),
    remarks,
  );
}

/**
 * A correction of a reading below this share of primary, or this share of a division, gets no remark: nobody sees it on
 * the plot.
 */
const UNSEEN_SHARE = 0.005;
const UNSEEN_STEP = 0.5;

/** The remark on the tail readings that the fit corrected: by how much at most, and which. */
function alterations(
  used: Series,
  index: readonly number[],
  change: (i: number) => number,
  unseen: number,
  share: Share,
): Message[] {
  const altered = index.filter((i) => Math.abs(change(i)) > unseen);
  if (!altered.length) return [];
  const most = altered.reduce((found, i) => Math.max(found, Math.abs(change(i))), 0);
  return [
    say`readings of the tail were corrected by up to ${share(most)} for primary compression still to come and creep just begun: ${listed(altered.map((i) => rowWithTime(used, i)))}`,
  ];
}
