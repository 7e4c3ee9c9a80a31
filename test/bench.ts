/**
 * `npm run bench`: how long the work of a cell takes, in this process, as JSON on standard output.
 *
 * Each entry is a name, a budget in milliseconds and a function that makes the work: what it returns is timed, called with
 * the number of the run: an entry that measures a computation changes its data with it, so that nothing remembered answers. Medians, so that a pause elsewhere does not
 * count; `ratio` is the median over the budget: above 1 is too slow. To add an entry, add a line to ENTRIES.
 */
import { reduceIncrement } from "../src/reduction/increment/reduce";
import { PRECONSOLIDATION_SPREAD } from "../src/functions/curve";
import { LOG_TIME, ROOT_TIME } from "../src/functions/increment";
import { makeCurve } from "./generators/compression-curves";
import { SCENARIOS } from "./generators/time-curves";

interface Entry {
  readonly name: string;
  /** Milliseconds. */
  readonly budget: number;
  readonly runs: number;
  readonly make: () => (run: number) => unknown;
}

const curvesOf = (name: string, count: number) => {
  const scenario = SCENARIOS.find((candidate) => candidate.name === name);
  if (!scenario) throw new Error(`no scenario "${name}"`);
  return Array.from({ length: count }, (_, i) => scenario.make(i + 1));
};

const column = (values: readonly number[]): number[][] => values.map((value) => [value]);

/** 50,000 logger readings at a steady rate, drawn out from the generator's. */
function loggerSeries(): { times: number[]; readings: number[] } {
  const [curve] = curvesOf("logger at a steady rate", 1);
  const count = 50_000;
  const last = curve.times[curve.times.length - 1];
  const times = Array.from({ length: count }, (_, i) => ((i + 1) * last) / count);
  const readings = times.map((_, i) => curve.readings[Math.floor((i * curve.readings.length) / count)]);
  return { times, readings };
}

const ENTRIES: readonly Entry[] = [
  {
    name: "one increment of 14 readings by all three methods",
    budget: 2,
    runs: 400,
    make: () => {
      const curves = curvesOf("dial of 0.0001 in", 400);
      return (run) => reduceIncrement(curves[run].times, curves[run].readings);
    },
  },
  {
    name: "LOG_TIME of 50,000 readings, cells included",
    budget: 40,
    runs: 25,
    make: () => {
      const { times, readings } = loggerSeries();
      const [cells, dial] = [column(times), column(readings)];
      return () => {
        dial[dial.length - 1][0] += 0.001;
        return LOG_TIME(cells, dial, 20);
      };
    },
  },
  {
    name: "another item of the same 50,000 readings",
    budget: 10,
    runs: 50,
    make: () => {
      const { times, readings } = loggerSeries();
      const [cells, dial] = [column(times), column(readings)];
      LOG_TIME(cells, dial, 20);
      return () => ROOT_TIME(cells, dial, 20, "cv");
    },
  },
  {
    name: "preconsolidation stress of 12 points by every method, cells included",
    budget: 5,
    runs: 200,
    make: () => {
      const tests = Array.from({ length: 200 }, (_, seed) => makeCurve("twelve points", seed));
      return (run) => {
        const { stresses, values, kind } = tests[run];
        return PRECONSOLIDATION_SPREAD(column(stresses), column(values), kind);
      };
    },
  },
];

function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[sorted.length >> 1];
}

const results = ENTRIES.map(({ name, budget, runs, make }) => {
  const work = make();
  const times = Array.from({ length: runs }, (_, run) => {
    const start = performance.now();
    work(run);
    return performance.now() - start;
  });
  const milliseconds = median(times);
  return { name, runs, milliseconds, budget, ratio: milliseconds / budget };
});
console.log(
  JSON.stringify(
    { node: process.version, results },
    (_, v) => (typeof v === "number" ? Number(v.toPrecision(3)) : v),
    2,
  ),
);
