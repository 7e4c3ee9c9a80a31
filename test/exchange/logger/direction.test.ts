/** A file that begins with its newest line is read from its last line to its first. */
import { linesOf } from "../../../src/exchange/logger/decode";
import { runsBackwards } from "../../../src/exchange/logger/direction";
import { findLoads } from "../../../src/exchange/logger/loads";
import { finished, offerLayout } from "../../../src/exchange/logger/offer";
import { readRows } from "../../../src/exchange/logger/rows";
import fc from "../../properties";
import { finish } from "./generated-file";

/** Two loads of eight readings; the specimen compresses. */
const ROWS = Array.from({ length: 16 }, (_, index) => {
  const [load, row] = [Math.floor(index / 8), index % 8];
  return { minutes: load * 600 + row * 7, reading: 1 + load + 0.1 * row, stress: 50 * (load + 1) };
});
const FORMS: Readonly<Record<string, { readonly head: string; readonly time: (minutes: number) => string }>> = {
  "elapsed minutes": { head: "Time (min)", time: String },
  "dates and times": {
    head: "Date/Time",
    time: (minutes) => new Date(Date.UTC(2031, 2, 3) + 60_000 * minutes).toISOString().replace("T", " ").slice(0, 19),
  },
};
const file = ({ head, time }: (typeof FORMS)[string], isBackwards: boolean) => {
  const lines = ROWS.map(({ minutes, reading, stress }) => `${time(minutes)},${reading.toFixed(3)},${stress}`);
  return linesOf([`${head},Displacement (mm),Stress (kPa)`, ...(isBackwards ? lines.reverse() : lines)].join("\n"));
};

describe.each(Object.entries(FORMS))("a file with %s", (_, form) => {
  const readOf = (isBackwards: boolean) => {
    const text = file(form, isBackwards);
    const draft = offerLayout(text.lines).draft;
    const found = finished(draft);
    if (!("layout" in found)) throw new Error(`not found: ${found.missing.join()}`);
    const rows = finish(readRows(text, found.layout)).value;
    return { draft, rows, loads: findLoads(rows, found.layout, "load") };
  };

  test("gives the same rows, loads and sense in either direction", () => {
    const [forwards, backwards] = [readOf(false), readOf(true)];
    expect([forwards.draft.sense, backwards.draft.sense]).toEqual(["rise", "rise"]);
    expect([forwards.rows.isBackwards, backwards.rows.isBackwards]).toEqual([undefined, true]);
    expect(backwards.rows.readings).toEqual(forwards.rows.readings);
    expect(backwards.rows.times).toEqual(forwards.rows.times);
    expect(backwards.rows.lines).toEqual([...forwards.rows.lines].reverse());
    expect(backwards.rows.faults).toEqual([]);
    expect(backwards.loads).toEqual(forwards.loads);
    expect(forwards.loads).toHaveLength(2);
  });
});

test("times that begin again with each load, and a few lines out of order, do not run backwards", () => {
  const again = [0, 1, 2, 4, 8, 0, 1, 2, 4, 8, 0, 1, 2, 4, 8, 0, 1, 2, 4, 8, 0, 1, 2, 4, 8, 0, 1];
  expect(runsBackwards(again)).toBe(false);
  expect(runsBackwards([0, 1, 2, 9, 3, 4, 8, 5, 6])).toBe(false);
  expect(runsBackwards([4, 3, 2, 1])).toBe(false);
});

test("rising times run backwards when they are turned round, and only then", () =>
  fc.assert(
    fc.property(fc.uniqueArray(fc.integer(), { minLength: 8, maxLength: 40 }), (numbers) => {
      const times = numbers.sort((a, b) => a - b);
      expect(runsBackwards(times)).toBe(false);
      expect(runsBackwards([...times].reverse())).toBe(true);
    }),
  ));
