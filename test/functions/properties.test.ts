/**
 * Every worksheet function through Excel's door, with cells of every kind, and the changes of a test whose effect on the
 * answer is known. That void ratio and strain answer the same is a property in test/reduction/curve/preconsolidation.test.ts;
 * shifted, mirrored and converted readings in test/reduction/increment/made-curves/same-curve.test.ts.
 */
import fc from "../properties";
import { SCENARIOS } from "../generators/time-curves";
import { CellError } from "../../src/functions/cells";

type WorksheetFunction = (...cells: unknown[]) => unknown;

const FUNCTIONS = new Map<string, WorksheetFunction>();
const associate = (name: string, compute: WorksheetFunction) => FUNCTIONS.set(name, compute);

beforeAll(async () => {
  Object.assign(globalThis, { CustomFunctions: { associate } });
  await import("../../src/functions");
});
afterAll(() => Reflect.deleteProperty(globalThis, "CustomFunctions"));

/** What the cell shows: a value, or an error with its message. Any other error fails the test. */
function shownBy(name: string, cells: readonly unknown[]): unknown {
  try {
    return FUNCTIONS.get(name)!(...cells);
  } catch (error) {
    if (error instanceof CellError) return { code: error.code, message: error.message };
    throw error;
  }
}

const everyCell = (value: unknown): unknown[] => (Array.isArray(value) ? value.flatMap(everyCell) : [value]);

const CELL = fc.oneof(
  { weight: 6, arbitrary: fc.double({ min: 0.001, max: 1000, noNaN: true }) },
  fc.constantFrom<unknown>(0, -1, 1, 24, 1e308, 1e-320, -0, null, "", true),
  fc.constantFrom<unknown>("casagrande", "strain", "cv", "in", "kPa", "12,5", "=A1", "#N/A", "remark", "d100"),
  fc.constant<unknown>({ type: "Error", basicType: "Error", basicValue: "#REF!" }),
);
const NUMBERS = fc.array(fc.double({ min: 0.001, max: 1000, noNaN: true }), { minLength: 5, maxLength: 9 });
const RISING = NUMBERS.map((list) => [...list].sort((a, b) => a - b));
const column = (values: readonly unknown[]): unknown[][] => values.map((value) => [value]);
const RANGE = fc.oneof(
  RISING.map(column),
  NUMBERS.map(column),
  NUMBERS.map((list) => [list]),
  fc.array(fc.array(CELL, { minLength: 2, maxLength: 2 }), { minLength: 1, maxLength: 5 }),
  fc.array(CELL, { minLength: 1, maxLength: 6 }).map(column),
);
const ARGUMENTS = fc.array(fc.oneof(RANGE, CELL), { maxLength: 10 });

test("each call ends in finite numbers, texts or an error with a message; it changes no input, and answers again the same", () => {
  expect(FUNCTIONS.size).toBeGreaterThan(60);
  for (const name of FUNCTIONS.keys())
    fc.assert(
      fc.property(ARGUMENTS, (cells) => {
        const before = structuredClone(cells);
        const shown = shownBy(name, cells);
        expect(cells).toEqual(before);
        expect(shownBy(name, cells)).toEqual(shown);
        if (typeof shown === "object" && shown !== null && "code" in shown) {
          expect(shown).toEqual({
            code: expect.stringMatching(/^#(VALUE!|N\/A)$/),
            message: expect.stringMatching(/^(?!.*failed inside).{8,}/),
          });
          return;
        }
        for (const cell of everyCell(shown))
          expect([name, typeof cell === "string" || Number.isFinite(cell), cell]).toEqual([name, true, cell]);
      }),
      { numRuns: 40 },
    );
});

/** The logger at a steady rate has up to 50,000 readings; the other kinds say the same in less time. */
const CURVE = fc
  .tuple(fc.constantFrom(...SCENARIOS.filter(({ name }) => name !== "logger at a steady rate")), fc.nat(10_000))
  .map(([scenario, seed]) => scenario.make(seed + 1));
const HEIGHT = fc.double({ min: 5, max: 50, noNaN: true });
const METHODS = ["LOG_TIME", "ROOT_TIME", "FIT_TIME"] as const;

/** The one item of a method, or its error. */
function item(method: string, times: readonly unknown[], readings: readonly unknown[], height: number, of: string) {
  const shown = shownBy(method, [column(times), column(readings), height, of]);
  return Array.isArray(shown) ? everyCell(shown)[0] : shown;
}

/** Asserts that `after` is `times` times `before`; a refusal stays the same refusal. */
function expectScaled(after: unknown, before: unknown, times: number): void {
  if (typeof before !== "number" || typeof after !== "number") {
    expect(after).toEqual(before);
    return;
  }
  expect(Math.abs(after / (times * before) - 1)).toBeLessThan(1e-9);
}

test("a specimen that is k times as high has k squared times the cv, by every method", () =>
  fc.assert(
    fc.property(CURVE, HEIGHT, fc.double({ min: 0.2, max: 5, noNaN: true }), ({ times, readings }, height, k) => {
      for (const method of METHODS)
        expectScaled(
          item(method, times, readings, k * height, "cv"),
          item(method, times, readings, height, "cv"),
          k * k,
        );
    }),
    { numRuns: 30 },
  ));

test("cv from t50 and t90 grows with the height squared, and falls as the time grows", () =>
  fc.assert(
    fc.property(
      fc.constantFrom("CV_FROM_T50", "CV_FROM_T90"),
      fc.double({ min: 0.01, max: 1e4, noNaN: true }),
      HEIGHT,
      fc.double({ min: 0.1, max: 10, noNaN: true }),
      (name, time, height, k) => {
        const cv = shownBy(name, [time, height]);
        expectScaled(shownBy(name, [time, k * height]), cv, k * k);
        expectScaled(shownBy(name, [k * time, height]), cv, 1 / k);
      },
    ),
  ));

test("blank rows between the readings, and their order, change no cv", () =>
  fc.assert(
    fc.property(CURVE, fc.nat(1000), ({ times, readings }, seed) => {
      const blanks = times.flatMap((time, i) => ((seed + i) % 3 === 0 ? [null, time] : [time]));
      const among = readings.flatMap((reading, i) => ((seed + i) % 3 === 0 ? [null, reading] : [reading]));
      const turned = times.map((_, i) => (i + 1 + seed) % times.length);
      for (const method of METHODS) {
        const cv = item(method, times, readings, 20, "cv");
        if (typeof cv !== "number") continue;
        expectScaled(item(method, blanks, among, 20, "cv"), cv, 1);
        const order = turned.map((i) => [times[i], readings[i]] as const);
        expectScaled(
          item(
            method,
            order.map(([time]) => time),
            order.map(([, reading]) => reading),
            20,
            "cv",
          ),
          cv,
          1,
        );
      }
    }),
    { numRuns: 30 },
  ));
