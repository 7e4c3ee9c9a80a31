/** Swelling pressure: the edges of each method, by hand arithmetic on log of stress. */
import { swellingPressure, type SwellingMethod, type SwellingPressure } from "../../src/reduction/swelling-pressure";
import { english } from "../../src/reduction/message";

type Rows = readonly (readonly [stress: number | null, strain: number | null])[];
type Found = Partial<SwellingPressure & { readonly said: string[]; readonly refused: string }>;
const of = (method: SwellingMethod, rows: Rows): Found => {
  const found = swellingPressure(rows.map(([stress]) => stress), rows.map(([, strain]) => strain), method); // prettier-ignore
  return found.ok
    ? { ...found.value, said: found.remarks.map(english) }
    : { refused: `${found.fault}: ${english(found.reason)}` };
};
const CHECK = /check the sign|compression .*positive/i;

describe("rows", () => {
  test("without a stress are left out; none with one is refused", () => {
    expect(of("load back", [[null, 0.5], [0, 0.2], [10, -0.01], [20, 0.01]])).toMatchObject({ low: 10, high: 20 }); // prettier-ignore
    expect(of("load back", [[null, 0.5], [0, -0.2]])).toEqual({ refused: "input: no row has a stress: choose the columns of stress and of strain" }); // prettier-ignore
  });
  test("with a stress below zero, or a strain of 1 and more, are refused", () => {
    expect(of("zero strain", [[-1, 0]]).refused).toMatch(/^input: row 1: the stress is -1, below zero/); // prettier-ignore
    expect(of("zero strain", [[10, -1], [20, 0.1]]).refused).toMatch(/^input: row 1: the strain is -1: enter strains as ratios/); // prettier-ignore
    expect(
      of("zero strain", [
        [10, -0.99],
        [20, 0.99],
      ]).pressure,
    ).toBeCloseTo(10 * Math.SQRT2, 9);
    // A row that is left out may hold anything.
    expect(of("zero strain", [[0, 5], [10, -0.1], [20, 0.1]]).pressure).toBeCloseTo(10 * Math.SQRT2, 9); // prettier-ignore
  });
});

describe("zero strain", () => {
  test("is half way on log of stress between a swell and as much compression, in any order of rows", () => {
    for (const rows of [
      [
        [50, -0.02],
        [200, 0.02],
      ],
      [
        [200, 0.02],
        [50, -0.02],
      ],
    ] as const)
      // prettier-ignore
      expect(of("zero strain", rows)).toEqual({ pressure: expect.closeTo(100, 9), low: 50, high: 200, said: [] });
    expect(of("zero strain", [[25, -0.04], [50, -0.02], [200, 0.02], [400, 0.05]])).toMatchObject({ low: 50, high: 200 }); // prettier-ignore
  });
  test("needs two stresses with a strain", () => {
    const needs = "method: this method needs specimens wetted under two stresses at least, with their strains";
    expect(of("zero strain", [[50, -0.02]])).toEqual({ refused: needs });
    expect(of("zero strain", [[50, -0.02], [50, 0.02]])).toEqual({ refused: needs }); // prettier-ignore
    expect(of("zero strain", [[50, -0.02], [100, 0], [200, null]])).toEqual({ refused: needs }); // prettier-ignore
  });
  test("averages specimens under one stress, and leaves out a strain of zero, with remarks", () => {
    expect(
      of("zero strain", [
        [50, -0.03],
        [50, -0.01],
        [100, 0],
        [200, 0.02],
      ]),
    ).toEqual({
      // prettier-ignore
      ...{ pressure: expect.closeTo(100, 9), low: 50, high: 200 },
      said: [
        "row 3: no strain, or exactly zero, left out; if zero was measured, the swelling pressure is its stress (100)",
        "rows 1, 2: one stress, their strains are averaged",
      ],
    });
  });
  test("where swell and compression alternate is read off a line through those specimens, with a remark", () => {
    // On log2 of stress 0, 1, 2, 3: strains -2, 1, -1, 2: slope 1, zero in the middle.
    const rows: Rows = [[50, -0.02], [100, 0.01], [200, -0.01], [400, 0.02]]; // prettier-ignore
    expect(of("zero strain", [[25, -0.1], ...rows, [800, 0.1]])).toEqual({
      ...{ pressure: expect.closeTo(50 * 2 ** 1.5, 9), low: 50, high: 400 },
      said: [
        "swell and compression alternate from 50 to 400: the pressure is where a straight line through these specimens is zero",
      ],
    });
  });
  test("is refused where no two stresses bracket it, and says which to try", () => {
    expect(
      of("zero strain", [
        [50, -0.02],
        [100, -0.01],
      ]).refused,
    ).toBe("method: every specimen swelled, even the one under 100: wet one under a greater stress");
    expect(
      of("zero strain", [
        [50, 0.01],
        [100, 0.02],
      ]).refused,
    ).toMatch(/^method: the specimen under the least stress \(50\) did not swell: wet one under a smaller stress/);
    expect(
      of("zero strain", [
        [50, -0.02],
        [100, 0.03],
        [200, -0.01],
      ]).refused,
    ).toBe("method: the specimens do not agree: row 3 swelled under the greatest stress, others compressed under less");
    expect(
      of("zero strain", [
        [50, 0.02],
        [100, -0.02],
      ]).refused,
    ).toMatch(/^input: row 1 compressed under the least stress and row 2 swelled under the greatest/);
  });
  test("is refused where the line through alternating specimens is zero outside them", () => {
    expect(
      of("zero strain", [
        [50, -0.001],
        [100, 0.1],
        [200, -0.1],
        [400, 0.001],
      ]).refused,
    ).toBe("method: the specimens between 50 and 400 do not agree: swell does not fall as the stress rises");
  });
});

describe("load back", () => {
  test("is where the line from the last swell to the first compression is zero, from the greatest swell on", () => {
    const rows: Rows = [[5, 0.01], [5, -0.04], [20, -0.03], [50, -0.01], [100, 0.01], [200, 0.05]]; // prettier-ignore
    expect(of("load back", rows)).toEqual({
      pressure: expect.closeTo(50 * Math.SQRT2, 9),
      low: 50,
      high: 100,
      said: [],
    });
  });
  test("ends where the stress falls; of two rows under one stress the later counts", () => {
    expect(
      of("load back", [
        [5, -0.04],
        [50, -0.02],
        [50, -0.01],
        [100, 0.01],
        [20, -0.005],
        [400, 0.3],
      ]),
    ).toMatchObject({
      // prettier-ignore
      ...{ pressure: expect.closeTo(50 * Math.SQRT2, 9), low: 50, high: 100 },
    });
    expect(
      of("load back", [
        [5, -0.04],
        [50, -0.01],
        [20, -0.02],
        [100, 0.01],
      ]).refused,
    ).toBe(
      // prettier-ignore
      "method: the specimen is still above its first height under 50: load it further",
    );
  });
  test("leaves out a strain of zero, and remarks it where it lies below the first compression", () => {
    const zero = (stress: number) =>
      `row 2: no strain, or exactly zero, left out; if zero was measured, the swelling pressure is its stress (${stress})`;
    expect(
      of("load back", [
        [5, -0.04],
        [60, 0],
        [100, 0.04],
      ]),
    ).toEqual({
      // prettier-ignore
      ...{ pressure: expect.closeTo(Math.sqrt(500), 9), low: 5, high: 100, said: [zero(60)] },
    });
    expect(of("load back", [[5, -0.04], [60, 0.04], [100, 0]]).said).toEqual([]); // prettier-ignore
    expect(
      of("load back", [
        [5, -0.04],
        [60, 0],
      ]).refused,
    ).toBe(
      // prettier-ignore
      `method: the specimen is still above its first height under 5: load it further; ${zero(60)}`,
    );
  });
  test("without a swell is refused; a swell under a greater load than a compression has the wrong sign", () => {
    expect(of("load back", [[5, 0.01], [10, 0.02]]).refused).toMatch(/^method: no row shows a swell, a strain below zero/); // prettier-ignore
    expect(of("load back", [[5, 0], [10, 0.02]]).refused).toMatch(/^method: no row shows a swell/); // prettier-ignore
    const wrong = of("load back", [[5, 0.03], [50, -0.02], [100, -0.01]]).refused; // prettier-ignore
    expect(wrong).toMatch(/^input: row 2 is below its first height under a greater stress than row 1, above it/);
    expect(wrong).toMatch(CHECK);
    expect(of("load back", [[50, 0.03], [50, -0.02], [100, -0.01]]).refused).toMatch(/^method: .*still above/); // prettier-ignore
    expect(of("load back", [[5, -0.01], [50, -0.02], [100, -0.01]]).refused).toMatch(/^method: .*still above/); // prettier-ignore
  });
});

describe("constant volume", () => {
  test("is the last stress that held the volume, and the one before it the lower limit", () => {
    const rows: Rows = [[10, 0], [20, null], [40, 0.0001], [80, 0.02], [160, 0.05]]; // prettier-ignore
    expect(of("constant volume", rows)).toEqual({ pressure: 40, low: 20, high: 40, said: [] });
    // Without a load beyond it too.
    expect(of("constant volume", rows.slice(0, 3))).toEqual({ pressure: 40, low: 20, high: 40, said: [] });
  });
  test("holds the volume up to a strain of a thousandth", () => {
    const at = (strain: number) => of("constant volume", [[10, 0], [40, strain], [80, 0.02]]); // prettier-ignore
    expect([at(0.001).pressure, at(0.0011).pressure]).toEqual([40, 10]);
    expect(of("constant volume", [[10, 0], [40, 0.02], [10, 0.021]]).pressure).toBe(10); // prettier-ignore
    expect(of("constant volume", [[10, 0], [40, 0.02], [10, 0.0211]]).refused).toMatch(/^input: row 3/); // prettier-ignore
  });
  test("of a single load has no lower limit, with a remark", () => {
    expect(
      of("constant volume", [
        [40, 0],
        [80, 0.02],
      ]),
    ).toEqual({
      // prettier-ignore
      ...{ pressure: 40, low: 40, high: 40 },
      said: ["only one load held the volume: the readings give no lower limit of the pressure"],
    });
  });
  test("of a specimen that still swelled a little lies between that load and the next", () => {
    const swelled: Rows = [[10, 0], [20, -0.0002], [80, 0.0202]]; // prettier-ignore
    const { pressure = NaN, low, high } = of("constant volume", swelled);
    expect([low, high]).toEqual([20, 80]);
    expect(pressure).toBeCloseTo(20 * 4 ** (0.0002 / 0.0204), 9);
    expect(of("constant volume", swelled.slice(0, 2))).toEqual({
      ...{ pressure: 20, low: 10, high: 20 },
      said: ["row 2: the specimen had swelled a little (strain -0.0002): the pressure reads low"],
    });
  });
  test("is refused where the volume was not held, and where nothing was", () => {
    expect(
      of("constant volume", [
        [10, 0],
        [20, -0.013],
      ]).refused,
    ).toBe(
      // prettier-ignore
      'method: row 2: the specimen swelled by 1.3 %, so its volume was not held: try "load back"',
    );
    expect(
      of("constant volume", [
        [10, 0.02],
        [20, 0.03],
      ]).refused,
    ).toBe(
      // prettier-ignore
      "method: row 1: the specimen is not at its first height when the load is raised: count strains from the height before wetting",
    );
  });
  test("a strain that grows as the load is taken off has the wrong sign", () => {
    const wrong = of("constant volume", [[10, 0], [40, -0.02], [10, 0.01]]).refused; // prettier-ignore
    expect(wrong).toMatch(/^input: row 3: the strain grows as the load is taken off/);
    expect(of("constant volume", [[10, 0], [40, 0.02], [10, -0.01]])).toMatchObject({ pressure: 10 }); // prettier-ignore
  });
});
