/** A generated file in any dialect is read back as the test that it was made from. */
import fc from "../../properties";
import { decode } from "../../../src/exchange/logger/decode";
import { findLoads, levelOf, numbered, stressOf } from "../../../src/exchange/logger/loads";
import { finished, offerLayout } from "../../../src/exchange/logger/offer";
import { readRows } from "../../../src/exchange/logger/rows";
import { seriesOf } from "../../../src/exchange/logger/load-series";
import { DIAMETER, dialects, finish, tests, write } from "./generated-file";

const textOf = (bytes: Uint8Array) => {
  const decoded = decode(bytes);
  if (!decoded.ok) throw new Error(decoded.refused);
  return decoded.value;
};

const expectClose = (actual: readonly number[], expected: readonly number[]): void => {
  expect(actual).toHaveLength(expected.length);
  expect(actual.filter((value, index) => !(Math.abs(value - expected[index]) < 1e-6))).toEqual([]);
};

test("every reading, load and time is read back, in every dialect", () => {
  fc.assert(
    fc.property(tests, dialects, (known, dialect) => {
      const { bytes, layout } = write(known, dialect);
      const rows = finish(readRows(textOf(bytes), layout)).value;
      // A last line without a line break may look cut short: it gets a remark, and is used.
      expect(rows.faults.filter(({ kind }) => kind !== "midnight" && kind !== "maybe-cut")).toEqual([]);
      expect(rows.readings).toEqual(
        known.flatMap(({ readings }) => readings.map((reading) => (dialect.falling ? 20 - reading : reading))),
      );
      const steps = numbered(findLoads(rows, layout, dialect.timesRun === "load" ? "restart" : "load"), [], {
        stresses: Array(24).fill(undefined),
        seating: undefined,
      });
      expect(steps.map(({ load }) => load)).toEqual(known.map((_, index) => index + 1));
      steps.forEach((step, index) => {
        const series = seriesOf(rows, step, "first", layout.timesRun);
        expectClose(
          series.times,
          known[index].seconds.map((second) => second / 60),
        );
        expectClose([stressOf(levelOf(rows, step), layout, "kPa", DIAMETER)!], [known[index].stress]);
      });
    }),
    { numRuns: 300 },
  );
});

test("the parts of the layout that the file shows are offered; the others are left for the user", () => {
  fc.assert(
    fc.property(
      tests.filter((known) => known.reduce((sum, { seconds }) => sum + seconds.length, 0) > 12),
      dialects,
      (known, dialect) => {
        const { bytes, layout } = write(known, dialect);
        const { draft, columns } = offerLayout(textOf(bytes).lines);
        expect(columns.map((name) => name.split(" ")[0])).toEqual(["Time", "Load", "Displacement"]);
        const { delimiter, decimal, firstLine, time, reading, load } = layout;
        expect(draft).toMatchObject({ delimiter, firstLine, time, reading, load });
        if (decimal === ",") expect(draft.decimal).toBe(",");
        const hasUnits = dialect.unitsRow;
        expect([draft.readingUnit, draft.loadUnit]).toEqual(
          hasUnits ? ["mm", layout.loadUnit] : [undefined, undefined],
        );
        if (["s", "min", "h"].includes(dialect.time))
          expect(draft.timeForm).toBe(hasUnits ? layout.timeForm : undefined);
        else expect(draft.timeForm).toBe(layout.timeForm);
        expect("missing" in finished(draft)).toBe(!hasUnits || draft.dateOrder === undefined);
      },
    ),
    { numRuns: 200 },
  );
});
