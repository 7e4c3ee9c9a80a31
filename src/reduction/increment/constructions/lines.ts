/** The constructions as the lines that a person draws by hand: log time on minutes, root time on root minutes. */
import type { ConstructionLine, LineLabel } from "../../construction";
import { LINE_FACTOR } from "../cv";
import type { LogTime } from "./log-time";
import type { DialJump } from "../dial-jump";
import type { CleanReadings } from "../readings";
import type { RootTime } from "./root-time";
import { firstOf, lastOf, nth } from "../../numeric/lists";

type Point = readonly [x: number, y: number];

/** The tangent and the tail are drawn past their crossing, by this ratio of times. */
const OVERSHOOT = 1.6;

const guide = (label: LineLabel, from: Point, to: Point): ConstructionLine => ({
  label,
  style: "guide",
  points: [from, to],
});

/** A length or a level that a person marks by hand, without a line to an axis. */
const mark = (label: LineLabel, ...points: Point[]): ConstructionLine => ({ label, style: "curve", points });

const construction = (label: LineLabel, from: Point, to: Point): ConstructionLine => ({
  label,
  style: "construction",
  points: [from, to],
});

const readingsLine = ({ series }: CleanReadings, x: (t: number) => number): ConstructionLine => ({
  label: "readings",
  style: "points",
  points: series.times.map((t, i): Point => [x(t), nth(series.readings, i)]),
});

/** The readings after a jump of the dial less the jump, as the construction uses them; none without a jump. */
const movedLine = (jump: DialJump | undefined, x: (t: number) => number): ConstructionLine[] =>
  jump
    ? [
        {
          label: "readings less the jump",
          style: "points",
          points: readingsLine(jump.clean, x).points.filter(([at]) => at >= x(jump.time)),
        },
      ]
    : [];

/**
 * Every line and mark of the log-of-time construction; x in minutes (for a log axis). The offset is the distance from
 * the first reading of the 4:1 pair to the second; laid off from the first reading to the other side, it ends at d0.
 * @example logTimeLines(load.cleaned.value, load.logTime.value).map(({ label }) => label) // ["readings", "early parabola", "4:1 pair",
 *   "offset", "same offset", "steepest tangent", "secondary tail", "d0", "d50", "d100", "half distance", "t50", "t100"]
 */
export function logTimeLines(clean: CleanReadings, log: LogTime, jump?: DialJump): ConstructionLine[] {
  const { times } = clean.series;
  const first = firstOf(times);
  const last = lastOf(times);
  const { d0, d50, d100, t50, t100, tangent, tail, parabola, pair } = log;
  const tailAt = (t: number): Point => [t, tail.atOneMinute + tail.slope * Math.log10(t)];
  const tangentAt = (t: number): Point => [t, tangent.reading + tangent.slope * Math.log10(t / tangent.time)];
  const tangentReaches = (d: number) => tangent.time * 10 ** ((d - tangent.reading) / tangent.slope);
  const early = Array.from({ length: 13 }, (_, i) => parabola.from * (parabola.to / parabola.from) ** (i / 12));
  return [
    readingsLine(clean, (t) => t),
    {
      label: "early parabola",
      style: "curve",
      points: early.map((t): Point => [t, parabola.d0 + parabola.root * Math.sqrt(t)]),
    },
    {
      label: "4:1 pair",
      style: "points",
      points: [
        [pair.time, pair.reading],
        [pair.fourTimes, pair.readingAtFour],
      ],
    },
    mark("offset", [pair.time, pair.readingAtFour], [pair.time, pair.reading]),
    mark("same offset", [pair.time, pair.reading], [pair.time, parabola.d0]),
    construction("steepest tangent", tangentAt(Math.max(tangentReaches(d0), first)), tangentAt(t100 * OVERSHOOT)),
    construction("secondary tail", tailAt(t100 / OVERSHOOT), tailAt(last)),
    guide("d0", [first, d0], [t50, d0]),
    guide("d50", [first, d50], [t50, d50]),
    guide("d100", [first, d100], [t100, d100]),
    mark("half distance", [first, d0], [first, d50], [first, d100]),
    guide("t50", [t50, d50], [t50, d0]),
    guide("t100", [t100, d100], [t100, d0]),
    ...movedLine(jump, (t) => t),
  ];
}

/**
 * Every line and mark of the root-of-time construction; x in root minutes. The marks of the 1.15 abscissae stand at the
 * end of the straight part.
 * @example rootTimeLines(load.cleaned.value, load.rootTime.value).map(({ label }) => label) // ["readings", "straight part", "1.15 line",
 *   "1.15 abscissae", "d0", "d90", "d100", "root t90"]
 */
export function rootTimeLines(clean: CleanReadings, root: RootTime, jump?: DialJump): ConstructionLine[] {
  const { d0, d90, d100, t90, straight } = root;
  const x90 = Math.sqrt(t90);
  // Both lines are drawn almost to d100, so that they pass the crossing.
  const x = (0.98 * (d100 - d0)) / straight.slope;
  const y = d0 + straight.slope * x;
  const end = Math.sqrt(straight.to);
  const level = d0 + straight.slope * end;
  return [
    readingsLine(clean, Math.sqrt),
    construction("straight part", [0, d0], [x, y]),
    construction(`${LINE_FACTOR} line`, [0, d0], [LINE_FACTOR * x, y]),
    mark(`${LINE_FACTOR} abscissae`, [0, level], [end, level], [LINE_FACTOR * end, level]),
    guide("d0", [0, d0], [x90, d0]),
    guide("d90", [0, d90], [x90, d90]),
    guide("d100", [0, d100], [x90, d100]),
    guide("root t90", [x90, d90], [x90, d0]),
    ...movedLine(jump, Math.sqrt),
  ];
}
