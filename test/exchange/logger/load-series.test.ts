import fc from "../../properties";
import { HAND_TIMES } from "../../../src/specification/readings";
import { seriesOf, thinned, type Thinning } from "../../../src/exchange/logger/load-series";
import type { LoggerRows } from "../../../src/exchange/logger/rows";

const rowsOf = (times: readonly number[], readings: readonly number[]): LoggerRows => ({
  lines: times.map((_, index) => index + 1),
  times,
  readings,
  loads: times.map(() => NaN),
  restarts: [],
  faults: [],
});

describe("time and reading zero", () => {
  const rows = rowsOf([0, 10, 100, 110, 110.5, 112], [1, 2, 3, 3.5, 4, 5]);
  const second = { from: 3, to: 6, load: 2 };

  test("before: time 0 has the last reading before the load, and the time of the first row of the load", () =>
    expect(seriesOf(rows, second, "before", "test")).toEqual({
      times: [0, 0.5, 2],
      readings: [3, 4, 5],
      lines: [3, 5, 6],
      leftOut: 0,
    }));

  test("first: time 0 is the first row of the load", () =>
    expect(seriesOf(rows, second, "first", "test")).toMatchObject({ times: [0, 0.5, 2], readings: [3.5, 4, 5] }));

  test("last row: time 0 is the last row before the load, with its own time", () =>
    expect(seriesOf(rows, second, "last row", "test")).toMatchObject({
      times: [0, 10, 10.5, 12],
      readings: [3, 3.5, 4, 5],
    }));

  test("the first load has no row before it", () =>
    expect(seriesOf(rows, { from: 0, to: 3, load: 1 }, "before", "test")).toMatchObject({
      times: [0, 10, 100],
      readings: [1, 2, 3],
    }));

  test("if times begin again, time 0 is the file's own row at 0, or else the last reading before the load", () => {
    const again = rowsOf([0, 10, 0, 5, 0.1, 9], [1, 2, 2.1, 3, 3.5, 4]);
    expect(seriesOf(again, { from: 2, to: 4, load: 2 }, "before", "load")).toMatchObject({
      times: [0, 5],
      readings: [2.1, 3],
    });
    expect(seriesOf(again, { from: 4, to: 6, load: 3 }, "before", "load")).toMatchObject({
      times: [0, 0.1, 9],
      readings: [3, 3.5, 4],
    });
    expect(seriesOf(again, { from: 4, to: 6, load: 3 }, "first", "load")).toMatchObject({ times: [0.1, 9] });
  });

  test("rows that run back after two recordings were joined are left out and counted", () => {
    const again = rowsOf([0, 10, 0, 5, 12], [1, 2, 2.1, 3, 4]);
    expect(seriesOf(again, { from: 0, to: 5, load: 1 }, "before", "load")).toMatchObject({
      times: [0, 10, 12],
      leftOut: 2,
    });
  });
});

/** Times of a load, from 0, increasing. */
const intervals = fc.double({ min: 0.001, max: 5, noNaN: true });
const series = fc
  .oneof(
    fc.array(intervals, { minLength: 1, maxLength: 100 }),
    // More readings than are reduced one by one.
    fc.array(intervals, { minLength: 150, maxLength: 3000 }),
  )
  .map((steps) => {
    const times = [0];
    for (const interval of steps) times.push(times[times.length - 1] + interval);
    return times;
  });

const ROOM = 400;

test.each<Thinning>(["even", "hand", "all"])(
  "thinned %s: in order, no new rows, first and last row kept, no more than the room",
  (how) => {
    fc.assert(
      fc.property(series, (times) => {
        const kept = thinned(times, how, ROOM);
        expect(kept.length).toBeLessThanOrEqual(ROOM);
        expect(kept).toEqual([...new Set(kept)].sort((a, b) => a - b));
        expect(kept.every((index) => index in times)).toBe(true);
        expect(kept[0]).toBe(0);
        expect(kept[kept.length - 1]).toBe(times.length - 1);
      }),
    );
  },
);

test("thinned evenly, rows further apart than a twentieth of a cycle are all kept, as in the first minutes", () => {
  fc.assert(
    fc.property(series, (times) => {
      const kept = new Set(thinned(times, "even", ROOM));
      times.forEach((time, index) => {
        const sparse = index === 0 || time >= times[index - 1] * 10 ** (1 / 20);
        if (sparse) expect(kept.has(index)).toBe(true);
      });
      // No gap is wider than a gap of the series plus one step.
      const list = [...kept];
      for (let i = 2; i + 1 < list.length; i++)
        expect(times[list[i]]).toBeLessThanOrEqual(
          Math.max(times[list[i - 1]] * 10 ** (1 / 20), 0) + (times[list[i]] - times[list[i] - 1]) + 1e-9,
        );
    }),
  );
});

test("a day with a reading every second gives about 20 rows a cycle", () => {
  const times = Array.from({ length: 86_401 }, (_, second) => second / 60);
  const kept = thinned(times, "even", ROOM);
  expect(kept.slice(0, 8)).toEqual([0, 1, 2, 3, 4, 5, 6, 7]);
  expect(kept.length).toBeGreaterThan(60);
  expect(kept.length).toBeLessThan(110);
  const lastCycle = kept.filter((second) => second > 8640).length;
  expect(lastCycle).toBeGreaterThanOrEqual(18);
  expect(lastCycle).toBeLessThanOrEqual(22);
});

test("the hand schedule takes the row nearest to each of its times", () => {
  const times = Array.from({ length: 86_401 }, (_, second) => second / 60);
  expect(thinned(times, "hand", ROOM).map((second) => times[second])).toEqual(
    HAND_TIMES.map((time) => Math.round(time * 60) / 60),
  );
});

test('"all" keeps every row if there is room, and otherwise as many as fit', () => {
  expect(thinned([0, 1, 2, 3], "all", ROOM)).toEqual([0, 1, 2, 3]);
  const many = Array.from({ length: 5000 }, (_, i) => i / 10);
  const kept = thinned(many, "all", ROOM);
  expect(kept.length).toBeLessThanOrEqual(ROOM);
  expect(kept.length).toBeGreaterThan(ROOM / 2);
});
