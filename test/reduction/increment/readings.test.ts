import { MOST_READINGS } from "../../../src/reduction/increment/cleaning/averages";
import { cleanReadings } from "../../../src/reduction/increment/readings";
import { english } from "../../../src/reduction/message";
import { inEnglish } from "../../in-english";

const clean = (times: (number | null)[], readings: (number | null)[]) => {
  const outcome = cleanReadings(times, readings);
  if (!outcome.ok) throw new Error(english(outcome.reason));
  const { series } = outcome.value;
  return {
    ...outcome.value,
    series: { ...series, rows: series.rows.map(english) },
    remarks: outcome.remarks.map(english),
  };
};

test("readings in order stay unchanged, without a remark", () => {
  const { series, remarks, count, step, travel, lastTime } = clean([0.1, 1, 10], [1.2, 1.4, 1.9]);
  expect(series).toEqual({
    times: [0.1, 1, 10],
    readings: [1.2, 1.4, 1.9],
    rows: ["row 1", "row 2", "row 3"],
    weights: [1, 1, 1],
  });
  expect(remarks).toEqual([]);
  expect(count).toBe(3);
  expect(lastTime).toBe(10);
  expect(step).toBeCloseTo(0.1, 9);
  expect(travel).toBeCloseTo(0.7, 9);
});

test("a row at t = 0 is kept apart, whether it is first or after blank rows", () => {
  expect(clean([0, 0.1, 1], [5, 1.2, 1.4]).zeroReading).toBe(5);
  expect(clean([null, 0, 0.1, 1], [null, 5, 1.2, 1.4]).zeroReading).toBe(5);
  expect(clean([0.1, 1], [1.2, 1.4]).zeroReading).toBeUndefined();
});

test("readings out of order are sorted, with a remark", () => {
  const { series, remarks } = clean([1, 0.1, 10], [1.4, 1.2, 1.9]);
  expect(series.times).toEqual([0.1, 1, 10]);
  expect(series.readings).toEqual([1.2, 1.4, 1.9]);
  expect(series.rows).toEqual(["row 2", "row 1", "row 3"]);
  expect(remarks).toEqual([
    "the time in row 2 (0.1 min) is before a time above it: the times are not in order and were sorted; correct it if the clock was wrong",
  ]);
});

test("times of the schedule after the last reading have no remark: nothing was read then", () => {
  expect(clean([0.1, 1, 10, 100, 1000], [1.2, 1.4, 1.9, null, 0]).remarks).toEqual([]);
});

test("equal times are averaged, and the remark names the rows", () => {
  const { series, remarks } = clean([0.1, 1, 1, 10], [1.2, 1.4, 1.5, 1.9]);
  expect(series.times).toEqual([0.1, 1, 10]);
  expect(series.readings[1]).toBeCloseTo(1.45, 12);
  expect(series.rows[1]).toBe("rows 2 and 3");
  expect(remarks).toEqual(["rows 2 (1 min) and 3 (1 min) repeat a time: readings at the same time were averaged"]);
});

test("a reading without a time and a time without a reading are left out, and the remark names the row", () => {
  const { series, remarks } = clean([0.1, 0, 1, 5, 10], [1.2, 1.3, 1.4, null, 1.9]);
  expect(series.times).toEqual([0.1, 1, 10]);
  expect(remarks).toEqual([
    "row 2 is left out: a reading without a time (a time of zero counts only in the first row)",
    "row 4 (5 min) is left out: the reading is blank or zero",
  ]);
});

test("a long list of rows is shortened", () => {
  const times = Array.from({ length: 20 }, (_, i) => i + 1);
  const { remarks } = clean(
    times,
    times.map((t) => (t % 2 ? 1 + 0.1 * t : 0)),
  );
  expect(remarks).toEqual([
    "rows 2 (2 min), 4 (4 min), 6 (6 min) and 6 more are left out: the reading is blank or zero",
  ]);
});

test("a negative time is refused with its row", () => {
  expect(inEnglish(cleanReadings([0.1, -1], [1, 2]))).toMatchObject({
    ok: false,
    fault: "input",
    reason: expect.stringMatching(/^row 2 of the times is -1/),
  });
});

test("times that cannot be minutes get a remark", () => {
  expect(clean([0.1, 0.25, 0.5, 60, 120], [1, 2, 3, 4, 5]).remarks).toEqual([
    "the time jumps from 0.5 to 60 min (row 4): are all times in minutes?",
  ]);
  const days = [0.1, 0.5, 2, 8, 30, 120, 480, 1440].map((t) => t / 1440);
  expect(clean(days, [1, 2, 3, 4, 5, 6, 7, 8]).remarks[0]).toMatch(/times look like days/);
});

describe("logger series", () => {
  const count = 20000;
  const times = Array.from({ length: count }, (_, i) => ((i + 1) * 1440) / count);
  const readings = times.map((t) => 1 + 0.1 * Math.log10(t));
  const { series } = clean(times, readings);

  test("are averaged to about twenty points a cycle, and the earliest readings stay", () => {
    expect(series.times.length).toBeLessThan(100);
    expect(series.times.slice(0, 3)).toEqual(times.slice(0, 3));
    expect(series.weights[0]).toBe(1);
    expect(series.weights[series.weights.length - 1]).toBe(10);
    expect(series.rows[series.rows.length - 1]).toMatch(/^rows 1\d{4} to 20000$/);
  });

  test("stay on their curve, within 0.1 % of a cycle's movement", () => {
    series.times.forEach((t, i) => expect(Math.abs(series.readings[i] - (1 + 0.1 * Math.log10(t)))).toBeLessThan(1e-4));
  });

  test("lose their spikes, and the remark names them", () => {
    const spiked = readings.map((r, i) => (i === 9000 ? r + 0.3 : i === 150 ? r - 0.2 : r));
    const outcome = clean(times, spiked);
    expect(outcome.remarks).toEqual([
      "rows 151 (10.87 min) and 9001 (648.1 min) are left out: far off the readings before and after",
    ]);
    outcome.series.times.forEach((t, i) =>
      expect(Math.abs(outcome.series.readings[i] - (1 + 0.1 * Math.log10(t)))).toBeLessThan(1e-3),
    );
  });

  test("count every reading once", () => {
    const few = clean(times.slice(0, MOST_READINGS), readings.slice(0, MOST_READINGS)).series;
    expect(few.times).toHaveLength(MOST_READINGS);
  });
});
