/** A deflection set from a run on a disk. */
import fc from "../properties";
import { diskRun, type DiskLoad } from "../../src/reduction/disk-run";
import { english } from "../../src/reduction/message";

const run = (loads: readonly (readonly [number, number])[], sense?: "rise" | "fall") =>
  diskRun(
    loads.map(([stress, reading]): DiskLoad => ({ stress, reading })),
    { seatingStress: 5, seatingReading: 100, factor: 0.002, sense },
  );
const rows = (outcome: ReturnType<typeof run>) => (outcome.ok ? outcome.value : english(outcome.reason));

test("readings less the reading under seating, on loading and on unloading, in order of stress", () => {
  const found = run([
    [50, 110],
    [100, 118],
    [200, 130],
    [100, 122],
    [50, 113],
  ]);
  expect(rows(found)).toEqual([
    { stress: 5, loading: 0 },
    { stress: 50, loading: expect.closeTo(0.02, 12), unloading: expect.closeTo(0.026, 12) },
    { stress: 100, loading: expect.closeTo(0.036, 12), unloading: expect.closeTo(0.044, 12) },
    { stress: 200, loading: expect.closeTo(0.06, 12), unloading: expect.closeTo(0.06, 12) },
  ]);
});

test("a dial that falls on compression gives the same set", () =>
  expect(
    rows(
      run(
        [
          [50, 90],
          [100, 82],
        ],
        "fall",
      ),
    ),
  ).toEqual(
    rows(
      run([
        [50, 110],
        [100, 118],
      ]),
    ),
  ));

test("two cycles are averaged, and the remark says so", () => {
  const found = run([
    [50, 110],
    [100, 118],
    [50, 113],
    [100, 120],
    [50, 115],
  ]);
  expect(rows(found)).toEqual([
    { stress: 5, loading: 0 },
    { stress: 50, loading: expect.closeTo(0.02, 12), unloading: expect.closeTo(0.028, 12) },
    { stress: 100, loading: expect.closeTo(0.038, 12), unloading: expect.closeTo(0.038, 12) },
  ]);
  expect(found.ok && found.remarks.map(english)).toEqual([
    "2 loads under 100: their deflections are averaged",
    "2 loads under 50: their deflections are averaged",
  ]);
});

test.each([
  [[[50, 110]], "a deflection set needs two loads of increasing stress at least, each with a reading"],
  [
    [
      [50, 110],
      [0, 112],
    ],
    "load 2 has no stress above zero: enter the stress on the disk",
  ],
  [
    [
      [50, 95],
      [100, 90],
    ],
    /^under 100 the apparatus is longer than under the seating stress: check whether/,
  ],
] as const)("%j is refused", (loads, why) => expect(rows(run(loads))).toEqual(expect.stringMatching(why)));

test("the zero of the dial does not matter, and a factor twice as large doubles each deflection", () =>
  fc.assert(
    fc.property(
      fc.integer({ min: -500, max: 500 }),
      fc.array(fc.integer({ min: 1, max: 40 }), { minLength: 2, maxLength: 8 }),
      (zero, grows) => {
        let sum = zero;
        const loads = grows.map((by, index): DiskLoad => ({ stress: 10 * 2 ** index, reading: (sum += by) }));
        const of = (shift: number, factor: number) => {
          const found = diskRun(
            loads.map((one) => ({ ...one, reading: one.reading + shift })),
            { seatingReading: zero + shift, factor },
          );
          return found.ok ? found.value.map(({ loading }) => loading!) : [];
        };
        expect(of(0, 0.002)).toHaveLength(grows.length);
        of(77, 0.004).forEach((deflection, index) => expect(deflection).toBeCloseTo(2 * of(0, 0.002)[index]!, 9));
      },
    ),
  ));

test("rows come in order of stress also where the unloading has stresses of its own, and loading went by leaps", () => {
  const found = run([
    [100, 118],
    [400, 140],
    [200, 134],
    [25, 112],
  ]);
  expect(rows(found)).toEqual([
    { stress: 5, loading: 0 },
    { stress: 25, unloading: expect.closeTo(0.024, 12) },
    { stress: 100, loading: expect.closeTo(0.036, 12) },
    { stress: 200, unloading: expect.closeTo(0.068, 12) },
    { stress: 400, loading: expect.closeTo(0.08, 12), unloading: expect.closeTo(0.08, 12) },
  ]);
});
