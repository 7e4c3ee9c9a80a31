import fc from "../../properties";
import type { LoadStep } from "../../../src/exchange/logger/loads";
import type { LoggerRows } from "../../../src/exchange/logger/rows";
import { timeZeroShown } from "../../../src/exchange/logger/time-zero";
import { degreeOfConsolidation } from "../../../src/reduction/increment/fit/terzaghi";

interface Made {
  /**
   * Minutes after the start of each load at which the logger writes a row; the row before the load is `pause` earlier.
   */
  readonly offsets: readonly number[];
  /** Minutes from the last row before the load to the load. */
  readonly pause: number;
  readonly t90: number;
  readonly noise: number;
  /** Initial compression when the load is applied. */
  readonly jump?: number;
}

/** Three loads by Terzaghi's curve; readings have three decimals. */
function rowsOf({ offsets, pause, t90, noise, jump = 0 }: Made): { rows: LoggerRows; steps: LoadStep[] } {
  const times = [0];
  const readings = [1];
  const steps: LoadStep[] = [{ from: 0, to: 1, load: null }];
  let at = pause;
  for (let load = 1; load <= 3; load++) {
    const start = readings[readings.length - 1];
    const from = times.length;
    offsets.forEach((offset, i) => {
      times.push(at + offset);
      const dust = noise * Math.sin(7 * i * i + load);
      readings.push(
        Number(
          (start + (offset > 0 ? jump : 0) + 0.4 * degreeOfConsolidation((0.848 * offset) / t90) + dust).toFixed(3),
        ),
      );
    });
    steps.push({ from, to: times.length, load });
    at = times[times.length - 1] + pause;
  }
  const loads = times.map(() => NaN);
  return { rows: { lines: times.map((_, i) => i + 1), times, readings, loads, restarts: [], faults: [] }, steps };
}

const geometric = (first: number): number[] => Array.from({ length: 22 }, (_, i) => first * 1.6 ** i);

test("if rows stand at the load and 4 s after it, time counts from the last row before", () => {
  const { rows, steps } = rowsOf({ offsets: geometric(4 / 60), pause: 0, t90: 3, noise: 0.0005 });
  // The logger writes a row when the load is applied: this row is the last one before the load.
  expect(timeZeroShown(rows, steps)).toMatchObject({ rule: "last row", loads: 3, of: 3 });
});

test("if a row stands at the load, and the last row before it long ago, time counts from the first row", () => {
  const { rows, steps } = rowsOf({ offsets: [0, ...geometric(0.1)], pause: 15, t90: 5, noise: 0.0005 });
  expect(timeZeroShown(rows, steps)).toMatchObject({ rule: "before", loads: 3, of: 3 });
});

test("readings that are too coarse or too few decide nothing: time counts from the first row", () => {
  expect(
    timeZeroShown(
      ...(Object.values(rowsOf({ offsets: [1, 60, 1440], pause: 0.1, t90: 3, noise: 0 })) as [LoggerRows, LoadStep[]]),
    ),
  ).toEqual({
    rule: "before",
    loads: 0,
    of: 0,
  });
});

test("the answer is right, or the first row, for every rate and schedule", () =>
  fc.assert(
    fc.property(
      fc.double({ min: 0.5, max: 60, noNaN: true }),
      fc.double({ min: 0.02, max: 0.3, noNaN: true }),
      fc.double({ min: 0, max: 0.05, noNaN: true }),
      fc.boolean(),
      (t90, first, jump, atLoad) => {
        const offsets = atLoad ? [0, ...geometric(first)] : geometric(first);
        const { rows, steps } = rowsOf({ offsets, pause: atLoad ? 10 : 0, t90, noise: 0.001, jump });
        const { rule } = timeZeroShown(rows, steps);
        return rule === "before" || !atLoad;
      },
    ),
  ));
