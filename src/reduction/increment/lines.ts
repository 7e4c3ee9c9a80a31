/** The constructions as lines that a hand would draw: log time on minutes, root time on root minutes. */
import type { ConstructionLine } from "../construction";
import { LINE_FACTOR } from "./cv";
import type { LogTime } from "./log-time";
import type { CleanReadings } from "./readings";
import type { RootTime } from "./root-time";

type Point = readonly [x: number, y: number];

const readingsLine = ({ series }: CleanReadings, x: (t: number) => number): ConstructionLine => ({
  label: "readings",
  style: "points",
  points: series.times.map((t, i): Point => [x(t), series.readings[i]]),
});

/** Every line of the log-of-time construction; x in minutes (for a log axis). */
export function logTimeLines(clean: CleanReadings, log: LogTime): ConstructionLine[] {
  const { times } = clean.series;
  const first = times[0];
  const last = times[times.length - 1];
  const { tangent, tail, parabola } = log;
  const tailAt = (t: number): Point => [t, tail.atOneMinute + log.tailSlope * Math.log10(t)];
  const tangentAt = (t: number): Point => [t, tangent.reading + tangent.slope * Math.log10(t / tangent.time)];
  const reach = (d: number) => tangent.time * 10 ** ((d - tangent.reading) / tangent.slope);
  const early = Array.from({ length: 13 }, (_, i) => first * (parabola.to / first) ** (i / 12));
  const level = (label: string, d: number, to: number): ConstructionLine => ({
    label,
    style: "guide",
    points: [
      [first, d],
      [to, d],
    ],
  });
  return [
    readingsLine(clean, (t) => t),
    {
      label: "early parabola",
      style: "curve",
      points: early.map((t): Point => [t, log.d0 + parabola.root * Math.sqrt(t)]),
    },
    {
      label: "steepest tangent",
      style: "construction",
      points: [tangentAt(Math.max(reach(log.d0), first)), tangentAt(log.t100 * 1.6)],
    },
    { label: "secondary tail", style: "construction", points: [tailAt(log.t100 / 1.6), tailAt(last)] },
    level("d0", log.d0, log.t50),
    level("d50", log.d50, log.t50),
    level("d100", log.d100, log.t100),
    {
      label: "t50",
      style: "guide",
      points: [
        [log.t50, log.d50],
        [log.t50, log.d0],
      ],
    },
    {
      label: "t100",
      style: "guide",
      points: [
        [log.t100, log.d100],
        [log.t100, log.d0],
      ],
    },
  ];
}

/** Every line of the root-of-time construction; x in root minutes. */
export function rootTimeLines(clean: CleanReadings, root: RootTime): ConstructionLine[] {
  const x90 = Math.sqrt(root.t90);
  const { slope } = root.straight;
  const end = (0.98 * (root.d100 - root.d0)) / slope;
  return [
    readingsLine(clean, Math.sqrt),
    {
      label: "straight part",
      style: "construction",
      points: [
        [0, root.d0],
        [end, root.d0 + slope * end],
      ],
    },
    {
      label: `${LINE_FACTOR} line`,
      style: "construction",
      points: [
        [0, root.d0],
        [end * LINE_FACTOR, root.d0 + slope * end],
      ],
    },
    {
      label: "d0",
      style: "guide",
      points: [
        [0, root.d0],
        [x90, root.d0],
      ],
    },
    {
      label: "d90",
      style: "guide",
      points: [
        [0, root.d90],
        [x90, root.d90],
      ],
    },
    {
      label: "d100",
      style: "guide",
      points: [
        [0, root.d100],
        [x90, root.d100],
      ],
    },
    {
      label: "root t90",
      style: "guide",
      points: [
        [x90, root.d90],
        [x90, root.d0],
      ],
    },
  ];
}
