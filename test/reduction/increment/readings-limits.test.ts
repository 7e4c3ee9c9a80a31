/** Limits of cleaning readings, each on both sides; and what counts as blank. */
import { MOST_READINGS } from "../../../src/reduction/increment/cleaning/averages";
import { cleanReadings, indicesFrom, usedReadings } from "../../../src/reduction/increment/readings";
import { english } from "../../../src/reduction/message";

const clean = (times: readonly (number | null)[], readings: readonly (number | null)[], zerosCount = false) => {
  const outcome = cleanReadings([...times], [...readings], zerosCount);
  if (!outcome.ok) throw new Error(english(outcome.reason));
  return { ...outcome.value, said: outcome.remarks.map(english) };
};
const rows = ({ series }: ReturnType<typeof clean>) => series.rows.map(english);

test("dates with clock times in the place of minutes are refused; late minutes are not", () => {
  const said = (times: number[]) => {
    const outcome = cleanReadings(times, times.map((_, i) => 5 + i)); // prettier-ignore
    return outcome.ok ? "accepted" : english(outcome.reason);
  };
  expect(said([46_000, 46_000.01, 46_000.5, 46_001])).toBe(
    "the times (46000 to 46001) look like dates with clock times: enter minutes since the load was applied, the time of the reading less that of loading, times 1440",
  );
  expect(said([20_001, 20_401])).not.toBe("accepted");
  expect(said([20_001, 20_402])).toBe("accepted");
  expect(said([19_999, 20_000])).toBe("accepted");
});

describe("blank cells", () => {
  test("a reading of 0 is blank, unless zeros count; NaN and null are blank always", () => {
    expect(clean([1, 2, 3], [5, 0, 6]).series.times).toEqual([1, 3]);
    expect(clean([1, 2, 3], [5, 0, 6], true).series.times).toEqual([1, 2, 3]);
    for (const blank of [null, NaN]) expect(clean([1, 2, 3], [5, blank, 6], true).series.times).toEqual([1, 3]);
    expect(clean([0, 1, 2], [0, 5, 6], true).zeroReading).toBe(0);
    expect(clean([0, 1, 2], [0, 5, 6]).zeroReading).toBeUndefined();
  });

  test("a time of 0 is the reading before the load in the first row, and blank in a later one", () => {
    expect(clean([0, 1, 0, 2], [4, 5, 9, 6])).toMatchObject({
      zeroReading: 4,
      count: 2,
      said: ["row 3 is left out: a reading without a time (a time of zero counts only in the first row)"],
    });
    expect(clean([1, null, 2], [5, null, 6]).said).toEqual([]);
    // A row with a time and no reading was seen: the next time of 0 is blank.
    expect(clean([1, 0, 2], [null, 9, 6]).zeroReading).toBeUndefined();
  });

  test("one row, up to four rows, and more are listed", () => {
    const blanks = (...blank: number[]) => {
      const times = Array.from({ length: 12 }, (_, i) => i + 1);
      return clean(times, times.map((t) => (blank.includes(t) ? null : 1 + 0.1 * t))).said; // prettier-ignore
    };
    expect(blanks(2)).toEqual(["row 2 (2 min) is left out: the reading is blank or zero"]);
    expect(blanks(2, 4)).toEqual(["rows 2 (2 min) and 4 (4 min) are left out: the reading is blank or zero"]);
    expect(blanks(2, 4, 6, 8)).toEqual([
      "rows 2 (2 min), 4 (4 min), 6 (6 min) and 8 (8 min) are left out: the reading is blank or zero",
    ]);
    expect(blanks(2, 4, 6, 8, 10)).toEqual([
      "rows 2 (2 min), 4 (4 min), 6 (6 min) and 2 more are left out: the reading is blank or zero",
    ]);
    // Nothing was read after the last reading.
    expect(blanks(11, 12)).toEqual([]);
  });

  test("without a single reading there is none to speak of", () => {
    expect(clean([], [])).toMatchObject({ count: 0, lastTime: 0, travel: 0, said: [] });
    expect(clean([1, 2], [null, null])).toMatchObject({ count: 0, said: [] });
  });
});

describe("times", () => {
  test("rows that repeat a time are named in the order of the sheet", () => {
    expect(clean([2, 1, 2, 1, 3], [20, 10, 21, 11, 30]).said).toContain(
      "rows 1 (2 min), 2 (1 min), 3 (2 min) and 4 (1 min) repeat a time: readings at the same time were averaged",
    );
  });

  test("out of order are sorted, the first row that goes back is named, and equal ones keep their order", () => {
    const found = clean([1, 4, 2, 3, 2], [10, 40, 20, 30, 22]);
    expect(found.series.times).toEqual([1, 2, 3, 4]);
    expect(found.series.readings).toEqual([10, 21, 30, 40]);
    expect(rows(found)).toEqual(["row 1", "rows 3 and 5", "row 4", "row 2"]);
    expect(found.lastTime).toBe(4);
    expect(found.said).toEqual([
      "the time in row 3 (2 min) is before a time above it: the times are not in order and were sorted; correct it if the clock was wrong",
      "rows 3 (2 min) and 5 (2 min) repeat a time: readings at the same time were averaged",
    ]);
  });

  test("repeated at the end are averaged, and weigh as two", () => {
    const { series, travel } = clean([1, 2, 2], [10, 20, 24]);
    expect(series).toMatchObject({ times: [1, 2], readings: [10, 22], weights: [1, 2] });
    expect(travel).toBe(14);
  });

  test("that grow more than thirtyfold are remarked", () => {
    expect(clean([1, 30, 60], [1, 2, 3]).said).toEqual([]);
    expect(clean([1, 30.1, 60], [1, 2, 3]).said).toEqual([
      "the time jumps from 1 to 30.1 min (row 2): are all times in minutes?",
    ]);
  });

  const DAYS = "the times look like days, as a sheet keeps the clock time 0:15: enter minutes";

  test("that begin below 2 s and end before 4 min look like days", () => {
    const times = (first: number, last: number) => [first, 0.02, 0.3, last];
    const said = (first: number, last: number) => clean(times(first, last), [1, 2, 3, 4]).said;
    expect(said(0.0014, 3.9)).toEqual([DAYS]);
    expect(said(0.0016, 3.9)).toEqual([]);
    expect(said(0.0014, 4.1)).toEqual([]);
    expect(clean([0.001], [5]).said).toEqual([]);
  });

  /** Minutes and seconds as a sheet keeps them that takes them for hours and minutes. */
  const asHours = (...seconds: number[]) => seconds.map((second) => second / 1440);

  test.each([
    ["typed as minutes and seconds, which the sheet took for hours and minutes", asHours(6, 15, 30, 60), [DAYS]],
    ["the same with other first times", asHours(10, 20, 40, 80), [DAYS]],
    ["the same from 30 s on, and with 45 s", asHours(30, 45, 60, 120), [DAYS]],
    ["of a sheet read from 0.1 min on", [0.1, 0.25, 0.5, 1], []],
    ["of a logger with four readings a second", [0.25, 0.5, 1, 2].map((second) => second / 60), []],
    ["of a logger with ten readings a second", [0.1, 0.5, 1, 2].map((second) => second / 60), []],
    ["with one time that is no whole minute of a day", [...asHours(6, 15, 30), 0.0305], []],
    ["from 45 s on, which may be minutes", asHours(45, 60, 120, 240), []],
  ])("%s", (_, times, said) => {
    expect(clean(times, [1, 2, 3, 4]).said).toEqual(said);
  });

  /** The times of a logger in minutes: so many readings a second, from the first step on or later. */
  const perSecond = (rate: number, count: number, from = 1, decimals = 8) =>
    Array.from({ length: count }, (_, index) => Number(((from + index) / rate / 60).toFixed(decimals)));
  const saidOf = (times: readonly number[]) =>
    clean(
      times,
      times.map((_, index) => 1 + index),
    ).said;

  test.each([1, 2, 3, 4, 5, 6, 8, 10, 16, 20, 25, 30, 32, 40, 50, 60, 64, 80, 100])(
    "of a logger with %d readings a second are minutes, however long it reads",
    (rate) => {
      for (const count of [13, 40, 100, 119, 121, 150, 1000])
        for (const from of [1, 2, 5]) expect(saidOf(perSecond(rate, count, from))).toEqual([]);
    },
  );

  test.each([8, 20, 100])("of a logger with %d readings a second are minutes with four decimals too", (rate) => {
    expect(saidOf(perSecond(rate, 100, 2, 4)).filter((one) => one === DAYS)).toEqual([]);
  });

  test.each([5, 10, 30, 60, 120, 300, 900])(
    "of a logger that reads every %d s look like days if they are",
    (seconds) => {
      const days = Array.from({ length: 100 }, (_, index) => ((index + 1) * seconds) / 86_400);
      const isSeen = days[0] < 0.0015;
      expect(saidOf(days)).toEqual(isSeen || Number.isInteger(seconds / 60) ? [DAYS] : []);
    },
  );

  test("kept of eight readings a second at doubled times are minutes", () => {
    expect(saidOf([0.125, 0.25, 0.5, 1, 2, 4].map((second) => second / 60))).toEqual([]);
  });

  test("before the load are refused with their row", () => {
    const refused = cleanReadings([1, -0.5], [5, 6]);
    expect(!refused.ok && english(refused.reason)).toBe(
      "row 2 of the times is -0.5: a time before the load cannot be used; correct or clear that row",
    );
  });
});

describe("long records", () => {
  const evenly = (count: number) => Array.from({ length: count }, (_, i) => i + 1);
  const line = (t: number) => 100 + t / 10;

  test("are averaged from 121 readings on", () => {
    expect(clean(evenly(MOST_READINGS), evenly(MOST_READINGS).map(line)).series.times).toHaveLength(MOST_READINGS);
    const longer = clean(evenly(MOST_READINGS + 1), evenly(MOST_READINGS + 1).map(line));
    expect(longer.series.times.length).toBeLessThan(50);
    expect(longer.count).toBe(121);
  });

  const found = clean(evenly(990), evenly(990).map(line));

  test("keep every reading in one average: times and readings are means, weights count up to ten", () => {
    const { times, readings, weights } = found.series;
    times.forEach((t, i) => expect(readings[i]).toBeCloseTo(line(t), 9));
    // In steps of a twentieth of a log cycle the first readings stand alone; the last step holds those from 892 on.
    expect(times.slice(0, 8)).toEqual([1, 2, 3, 4, 5, 6, 7, 8]);
    expect(times.at(-1)).toBeGreaterThan(930);
    expect(Math.max(...weights)).toBe(10);
    expect(weights[0]).toBe(1);
    expect(rows(found)[0]).toBe("row 1");
    expect(rows(found).at(-1)).toMatch(/^rows \d+ to 990$/);
    // Neighbouring averages lie a step or more of readings apart, and no step holds more than a twentieth of a cycle.
    for (const row of rows(found)) {
      const [, from, to] = /^rows (\d+) to (\d+)$/.exec(row) ?? [];
      if (from) expect(Number(to) / Number(from)).toBeLessThan(10 ** 0.05);
    }
  });

  test("lose a spike: one far off the median of five readings or more, ten times their scatter and the step", () => {
    const spiked = (by: number, at = 950) => clean(evenly(1000), evenly(1000).map((t) => line(t) + (t === at ? by : 0))); // prettier-ignore
    expect(spiked(100).said).toEqual(["row 950 (950 min) is left out: far off the readings before and after"]);
    expect(spiked(-100).said).toEqual(["row 950 (950 min) is left out: far off the readings before and after"]);
    expect(spiked(5).said).toEqual([]);
    // Of fewer readings nobody can say which is the spike.
    expect(spiked(100, 20).said).toEqual([]);
    const { series } = spiked(100);
    series.times.forEach((t, i) => expect(series.readings[i]).toBeCloseTo(line(t), 1));
  });
});

test("readings that were found wrong are taken out of every column", () => {
  const found = clean([1, 2, 3], [10, 20, 30]);
  expect(usedReadings(found, { leftOut: [] })).toBe(found.series);
  expect(usedReadings(found, { leftOut: [1] })).toMatchObject({ times: [1, 3], readings: [10, 30], weights: [1, 1] });
  expect(usedReadings(found, { leftOut: [1] }).rows.map(english)).toEqual(["row 1", "row 3"]);
});

test("the indices of a span of times hold both ends", () => {
  expect(indicesFrom([1, 2, 4, 8], 2, 4)).toEqual([1, 2]);
  expect(indicesFrom([1, 2, 4, 8], 3)).toEqual([2, 3]);
});
