import fc from "../../properties";
import type { Layout } from "../../../src/exchange/logger/layout";
import {
  findLoads,
  givenTwice,
  joinToBefore,
  levelOf,
  numbered,
  passings,
  splitAt,
  stressOf,
  type LoadStep,
} from "../../../src/exchange/logger/loads";
import type { LoggerRows } from "../../../src/exchange/logger/rows";

const LAYOUT = { load: 2, loadKind: "stress", loadUnit: "kPa", timesRun: "test", lever: 1 } as unknown as Layout;

const rowsOf = (times: readonly number[], loads: readonly number[], restarts: readonly number[] = []): LoggerRows => ({
  lines: times.map((_, index) => index + 1),
  times,
  readings: times.map((_, index) => index / 1000),
  loads,
  restarts,
  faults: [],
});

/** The record of a load cell: a ramp of some rows to each load, then the load with scatter; one row every 5 s. */
const recorded = fc
  .record({
    factors: fc.array(fc.constantFrom(2, 1.5, 1.25, 0.5, 0.25, 4), { minLength: 1, maxLength: 8 }),
    ramp: fc.nat(6),
    noise: fc.double({ min: 0, max: 0.008, noNaN: true }),
    seed: fc.array(fc.double({ min: -1, max: 1, noNaN: true }), { minLength: 97, maxLength: 97 }),
    length: fc.integer({ min: 20, max: 60 }),
  })
  .map(({ factors, ramp, noise, seed, length }) => {
    const loads: number[] = [];
    const starts = [0];
    const levels = [50];
    let load = 50;
    const hold = (): void => {
      for (let i = 0; i < length; i++) loads.push(load * (1 + noise * seed[loads.length % seed.length]));
    };
    hold();
    for (const factor of factors) {
      starts.push(loads.length);
      for (let i = 1; i <= ramp; i++) loads.push(load * (1 + ((factor - 1) * i) / (ramp + 1)));
      load *= factor;
      levels.push(load);
      hold();
    }
    return {
      rows: rowsOf(
        loads.map((_, index) => index / 12),
        loads,
      ),
      starts,
      levels,
      ramp,
    };
  });

test("the loads of a load cell with ramps and scatter are found", () => {
  fc.assert(
    fc.property(recorded, ({ rows, starts, levels, ramp }) => {
      const found = findLoads(rows, LAYOUT, "load");
      expect(found).toHaveLength(starts.length);
      found.forEach((step, index) => {
        // A slow ramp is found when it has left the scatter of the load before.
        expect(step.from).toBeGreaterThanOrEqual(starts[index]);
        expect(step.from - starts[index]).toBeLessThanOrEqual(ramp);
        expect(Math.abs(levelOf(rows, step)! / levels[index] - 1)).toBeLessThan(0.02);
      });
    }),
    { numRuns: 500 },
  );
});

test("a single row of another load is a spike and begins no load; neither does a missing load", () => {
  const loads = [...Array(10).fill(50), 400, ...Array(10).fill(50), NaN, ...Array(10).fill(100)];
  expect(
    findLoads(
      rowsOf(
        loads.map((_, i) => i),
        loads,
      ),
      LAYOUT,
      "load",
    ).map(({ from }) => from),
  ).toEqual([0, 22]);
});

test("the last row of a ramp, just below the load, does not set the level of the load", () => {
  const loads = [...Array(10).fill(50), 75, 96, ...Array(20).fill(100), 101.5, 101.5, 101.5, ...Array(20).fill(100)];
  expect(
    findLoads(
      rowsOf(
        loads.map((_, i) => i / 60),
        loads,
      ),
      LAYOUT,
      "load",
    ).map(({ from }) => from),
  ).toEqual([0, 10]);
});

test("if the file numbers the loads, a load begins where the number changes", () => {
  const loads = [1, 1, 2, 3, 3, 3];
  const layout = { ...LAYOUT, loadKind: "number" } as Layout;
  const rows = rowsOf([0, 1, 2, 3, 4, 5], loads);
  expect(findLoads(rows, layout, "load").map(({ from }) => from)).toEqual([0, 2, 3]);
});

test("a load begins where the interval between rows becomes much shorter", () => {
  const one = [0, 0.1, 0.25, 0.5, 1, 2, 4, 8, 15, 30, 60];
  const times = [...one, ...one.map((time) => 90 + time), ...one.map((time) => 180 + time)];
  const rows = rowsOf(
    times,
    times.map(() => NaN),
  );
  expect(findLoads(rows, { ...LAYOUT, load: null } as Layout, "interval").map(({ from }) => from)).toEqual([0, 11, 22]);
});

describe("corrections", () => {
  const steps: LoadStep[] = [
    { from: 0, to: 5, load: 1 },
    { from: 5, to: 9, load: 2 },
    { from: 9, to: 12, load: 3 },
  ];
  const covers = (some: readonly LoadStep[]) => some.flatMap(({ from, to }) => [from, to]);

  test("joining and splitting lose no row, and undo each other", () => {
    expect(covers(joinToBefore(steps, 1))).toEqual([0, 9, 9, 12]);
    expect(splitAt(joinToBefore(steps, 1), 5)[1]).toEqual({ from: 5, to: 9, load: null });
    expect(splitAt(steps, 5)).toEqual(steps);
    expect(joinToBefore(steps, 1)[0].load).toBe(1);
  });

  test("a number given to two stretches is listed", () => {
    expect(givenTwice(steps)).toEqual([]);
    expect(givenTwice([...steps, { from: 12, to: 14, load: 2 }, { from: 14, to: 15, load: null }])).toEqual([2]);
  });
});

describe("numbers of loads", () => {
  const steps = [0, 1, 2, 3].map((i): LoadStep => ({ from: i, to: i + 1, load: null }));
  const blank = { stresses: Array(24).fill(undefined), seating: undefined };
  const loadsOf = (some: readonly LoadStep[]) => some.map(({ load }) => load);

  test("loads are numbered one after another if the sheet is blank; a first stretch without stress is the seating", () => {
    expect(loadsOf(numbered(steps, [25, 50, 100, 50], blank))).toEqual([1, 2, 3, 4]);
    expect(loadsOf(numbered(steps, [0, 50, 100, 50], blank))).toEqual([null, 1, 2, 3]);
    expect(loadsOf(numbered(steps, [5.1, 50, 100, 50], { ...blank, seating: 5 }))).toEqual([null, 1, 2, 3]);
  });

  test("loads are numbered by the stresses of the sheet, in test order: a reload is not taken for the first loading", () => {
    const sheet = { stresses: [25, 50, 100, 50, 25, 50, 100, 200], seating: undefined };
    expect(loadsOf(numbered(steps, [49.5, 101, 51, 199], sheet))).toEqual([2, 3, 4, 8]);
    expect(loadsOf(numbered(steps, [25, 75, 100, 50], sheet))).toEqual([1, null, 3, 4]);
  });

  test("a load whose stress is not on the sheet yet takes the next load with a blank stress", () => {
    const stresses = [undefined, 50, undefined, 25, ...Array(20).fill(undefined)];
    expect(loadsOf(numbered(steps, [30, 50, 100, 25], { stresses, seating: undefined }))).toEqual([1, 2, 3, 4]);
    expect(loadsOf(numbered(steps.slice(0, 2), [25, 400], { stresses, seating: undefined }))).toEqual([4, 5]);
  });

  test("without stresses, loads that hold readings are passed over, and the stretch says which", () => {
    const held = [12, 9, 0, 4, 0];
    const sheet = { stresses: Array(5).fill(undefined), seating: undefined, held };
    const given = numbered(steps.slice(0, 3), [], sheet);
    expect(loadsOf(given)).toEqual([3, 5, null]);
    expect(passings(given, [], sheet.stresses, held)).toEqual([
      { is: "readings", passed: [1, 2] },
      { is: "readings", passed: [4] },
      undefined,
    ]);
  });

  test("a stress typed wrong on the sheet: the stretch that goes to a later load, or to none, says which loads it passes", () => {
    const stresses = [25, 500, 100, 50];
    const sheet = { stresses, seating: undefined };
    const given = numbered(steps.slice(0, 3), [25, 50, 100], sheet);
    expect(loadsOf(given)).toEqual([1, 4, null]);
    expect(passings(given, [25, 50, 100], stresses, [])).toEqual([
      undefined,
      { is: "stress", passed: [2, 3] },
      { is: "none", after: 4 },
    ]);
    const first = numbered(steps.slice(0, 1), [50], sheet);
    expect(passings(first, [50], stresses, [7, 7, 7])).toEqual([undefined]);
  });

  test("the numbers of the file are taken; a number beyond the sheet is not a load", () => {
    expect(loadsOf(numbered(steps, [], blank, [3, 4, 25, undefined]))).toEqual([3, 4, null, null]);
  });
});

test("a force becomes a stress by the lever and the ring; without a ring the stress stays unknown", () => {
  const layout = { ...LAYOUT, loadKind: "force", loadUnit: "kg", lever: 10 } as Layout;
  // 1 kgf x 10 on 20 cm2 (50.463 mm): 98.0665 N / 2000 mm2 = 49.03 kPa.
  expect(stressOf(1, layout, "kPa", Math.sqrt((4 * 2000) / Math.PI))).toBeCloseTo(49.03325, 6);
  expect(stressOf(1, layout, "kPa")).toBeUndefined();
  expect(stressOf(2, LAYOUT, "tsf")).toBeCloseTo(2 / 95.7605, 5);
});
