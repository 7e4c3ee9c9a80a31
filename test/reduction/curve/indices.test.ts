import {
  compressionIndex,
  initialVoidRatio,
  recompressionIndex,
  swellingIndex,
  valueOn,
  type Between,
} from "../../../src/reduction/curve/indices";
import type { CurvePicks } from "../../../src/reduction/curve/picks";
import { testCurve } from "../../../src/reduction/curve/shape/points";
import { then } from "../../../src/reduction/outcome";
import { english } from "../../../src/reduction/message";

/** Loading to 400, a loop down to 50 whose reload yields again on the way back to 400, loading to 1600. */
const LOOP = {
  stresses: [25, 50, 100, 200, 400, 200, 100, 50, 100, 200, 400, 800, 1600],
  voids: [1.0, 0.99, 0.97, 0.9, 0.8, 0.81, 0.82, 0.83, 0.826, 0.818, 0.79, 0.69, 0.59],
};
const UNLOADING = { stresses: [400, 100], voids: [0.62, 0.66] };

const read = (index: typeof recompressionIndex, stresses: number[], voids: number[], between?: Between) => {
  const outcome = then(testCurve(stresses, voids, "e"), (test) => index(test, between));
  if (!outcome.ok) throw new Error(english(outcome.reason));
  return { ...outcome.value, basis: english(outcome.value.basis), remarks: outcome.remarks.map(english) };
};

test("Cr of a loop is the slope between its ends: readings on the reload that yield again do not steepen it", () => {
  const { value, basis } = read(recompressionIndex, LOOP.stresses, LOOP.voids);
  // From 400 kPa, e 0.80, to 50 kPa, e 0.83. A least-squares line through the reload would give 0.043.
  expect(value).toBeCloseTo((0.83 - 0.8) / Math.log10(400 / 50), 12);
  expect(basis).toBe("reload loop 50 to 400");
});

test("a loop whose reload passes its upper end between two readings has the same ends", () => {
  const without = (cells: number[]) => cells.filter((_, i) => i !== 10);
  const { value } = read(recompressionIndex, without(LOOP.stresses), without(LOOP.voids));
  expect(value).toBeCloseTo((0.83 - 0.8) / Math.log10(400 / 50), 12);
});

test("for several loops Cr is the mean of their slopes", () => {
  const stresses = [...LOOP.stresses, 200, 1600, 3200];
  const voids = [...LOOP.voids, 0.63, 0.585, 0.49];
  const first = 0.03 / Math.log10(8);
  const { value, basis } = read(recompressionIndex, stresses, voids);
  expect(value).toBeCloseTo((first + 0.04 / Math.log10(8)) / 2, 12);
  expect(basis).toBe("reload loop 50 to 400 and 200 to 1600");
});

test("between two stresses Cr is taken on the reload or, if no reload reaches them, on first loading, and the basis says which", () => {
  const reload = read(recompressionIndex, LOOP.stresses, LOOP.voids, { from: 100, to: 200 });
  expect(reload.value).toBeCloseTo(0.008 / Math.log10(2), 12);
  expect(reload.basis).toBe("reload from 100 to 200");
  const first = read(recompressionIndex, LOOP.stresses, LOOP.voids, { from: 25, to: 50 });
  expect(first.value).toBeCloseTo(0.01 / Math.log10(2), 12);
  expect(first.basis).toBe("first loading from 25 to 50");
});

test("Cr prefers the loop to the final unloading, and the final unloading to initial loading", () => {
  const loopAndRebound = read(
    recompressionIndex,
    [...LOOP.stresses, ...UNLOADING.stresses],
    [...LOOP.voids, ...UNLOADING.voids],
  );
  expect(loopAndRebound.basis).toBe("reload loop 50 to 400");
  const stresses = [25, 50, 100, 200, 400, 800, 1600];
  const voids = [1.0, 0.99, 0.97, 0.9, 0.8, 0.69, 0.59];
  const rebound = read(recompressionIndex, [...stresses, ...UNLOADING.stresses], [...voids, ...UNLOADING.voids]);
  expect(rebound.basis).toBe("final unloading 100 to 1600");
  expect(rebound.remarks).toEqual(["Cr from the final unloading: the test has no reload loop"]);
  expect(rebound.value).toBe(
    read(swellingIndex, [...stresses, ...UNLOADING.stresses], [...voids, ...UNLOADING.voids]).value,
  );
  expect(read(recompressionIndex, stresses, voids).basis).toBe("initial loading 25 to 100");
});

test("between two stresses that no branch reaches there is no index, and the refusal names them", () => {
  const found = then(testCurve(LOOP.stresses, LOOP.voids, "e"), (test) =>
    recompressionIndex(test, { from: 1, to: 5000 }),
  );
  expect(found.ok ? found.value : english(found.reason)).toMatch(
    /branch reaches both 1 and 5000: choose stresses within/,
  );
});

describe("what the indices say and refuse", () => {
  const LOADING = { stresses: [25, 50, 100, 200, 400, 800, 1600], voids: [1.0, 0.99, 0.97, 0.9, 0.8, 0.69, 0.59] };
  type Index = typeof recompressionIndex;
  const said = (index: Index, { stresses, voids }: typeof LOADING, between?: Between, picks?: CurvePicks) => {
    const outcome = then(testCurve(stresses, voids, "e"), (test) => index(test, between, picks));
    return outcome.ok
      ? [english(outcome.value.basis), ...outcome.remarks.map(english)].join("; ")
      : `${outcome.fault}: ${english(outcome.reason)}`;
  };
  const twoLoops = { stresses: [...LOOP.stresses, 200, 1600, 3200], voids: [...LOOP.voids, 0.63, 0.585, 0.49] };

  test("Cc between two stresses is the slope on first loading, in either order", () => {
    for (const between of [
      { from: 100, to: 400 },
      { from: 400, to: 100 },
    ]) {
      const { value } = read(compressionIndex, LOADING.stresses, LOADING.voids, between);
      expect(value).toBeCloseTo(0.17 / Math.log10(4), 12);
    }
    expect(said(compressionIndex, LOADING, { from: 100, to: 400 })).toBe("first loading from 100 to 400");
    expect(said(compressionIndex, LOADING, { from: 100, to: 100 })).toBe(
      "input: the two stresses are the same: give two different ones",
    );
    expect(said(compressionIndex, LOADING, { from: 100, to: 1700 })).toBe(
      "method: no first loading branch reaches both 100 and 1700: choose stresses within the loads",
    );
    expect(said(compressionIndex, LOADING, { from: 24, to: 100 })).toMatch(/^method: no first loading branch reaches/);
  });

  test("Cs between two stresses is taken on the final unloading or, where that does not reach, on that of a loop", () => {
    const both = { stresses: [...LOOP.stresses, 400, 200], voids: [...LOOP.voids, 0.62, 0.65] };
    expect(said(swellingIndex, both, { from: 1600, to: 200 })).toBe("unloading from 1600 to 200");
    expect(read(swellingIndex, both.stresses, both.voids, { from: 1600, to: 200 }).value).toBeCloseTo(
      0.06 / Math.log10(8),
      12,
    );
    expect(read(swellingIndex, both.stresses, both.voids, { from: 50, to: 100 }).value).toBeCloseTo(
      0.01 / Math.log10(2),
      12,
    );
    expect(said(swellingIndex, both, { from: 25, to: 100 })).toMatch(/^method: no unloading branch reaches both/);
  });

  test("Cs without a final unloading is the mean of the unloadings of the loops; without an unloading it is refused", () => {
    const { value, basis } = read(swellingIndex, twoLoops.stresses, twoLoops.voids);
    // Through 400, 200, 100 and 50: 0.80, 0.81, 0.82, 0.83; through 1600 and 200: 0.59, 0.63.
    expect(value).toBeCloseTo((0.01 / Math.log10(2) + 0.04 / Math.log10(8)) / 2, 12);
    expect(basis).toBe("unloading of the loop 50 to 400 and 200 to 1600");
    expect(said(swellingIndex, LOADING)).toBe("method: the test has no unloading: there is no swelling index");
    expect(said(swellingIndex, LOOP, undefined, { unloading_from: 100 })).toBe(
      "input: an unloading line is picked, and the test has no final unloading: set the pick back to automatic",
    );
    expect(said(swellingIndex, LOOP, undefined, { unloading_to: 100 })).toMatch(/^input: an unloading line is picked/);
  });

  test("Cr without loop and unloading is that of first loading before yield, with a remark", () => {
    expect(said(recompressionIndex, LOADING)).toMatch(
      /^initial loading 25 to \d+; Cr from initial loading, which disturbance steepens: a reload loop is better$/,
    );
    expect(said(recompressionIndex, { stresses: [25, 50], voids: [1, 0.9] })).toMatch(/^method: only 2 first-loading/);
  });

  test("a loop that was never reloaded has no Cr, and one reload is enough", () => {
    const open = { stresses: [...LOADING.stresses, 400, 200], voids: [...LOADING.voids, 0.61, 0.63] };
    expect(said(recompressionIndex, open)).toMatch(/^final unloading 200 to 1600; Cr from the final unloading/);
    const closed = { stresses: [...open.stresses, 400], voids: [...open.voids, 0.62] };
    expect(said(recompressionIndex, closed)).toBe("reload loop 200 to 1600");
  });

  test("a pick on a loop: its own end within a thousandth, or a place on the reload; the first loop that reaches both", () => {
    const picked = (picks: CurvePicks) => said(recompressionIndex, twoLoops, undefined, picks);
    expect(picked({ loop_to: 400.3 })).toBe("reload loop 50 to 400; picked by hand: loop to = 400.3");
    expect(picked({ loop_from: 100 })).toBe("reload loop 100 to 400; picked by hand: loop from = 100");
    expect(picked({ loop_from: 210, loop_to: 1600 })).toMatch(/^reload loop 210 to 1600/);
    expect(picked({ loop_from: 60, loop_to: 1600 })).toBe(
      "input: no loop reaches the picked ends of its line: pick stresses within 50 to 400, 200 to 1600",
    );
    expect(picked({ loop_from: 100, loop_to: 60 })).toMatch(/^input: the pick|^input: .*must lie below/);
    expect(said(recompressionIndex, LOADING, undefined, { loop_to: 100 })).toBe(
      "input: a line through a loop is picked, and the test has no unload-reload loop: set the pick back to automatic",
    );
  });

  describe("where the specimen compressed as load was taken off", () => {
    const withoutRow = ({ stresses, voids }: typeof LOADING, ...rows: readonly number[]) => ({
      stresses: stresses.filter((_, i) => !rows.includes(i + 1)),
      voids: voids.filter((_, i) => !rows.includes(i + 1)),
    });
    const rebound = { stresses: [...LOADING.stresses, 400, 100], voids: [...LOADING.voids, 0.62, 0.65] };
    const gapIn = (row: number) =>
      `method: row ${row}: the specimen compressed as load was taken off: check the stress and the value, and whether a load is missing before it; this unloading gives no slope, unless its ends are picked`;

    test("the load before a loop is missing: Cr, and Cs of a test without a rebound, are refused with the row", () => {
      const gap = withoutRow(LOOP, 5, 6);
      expect(said(recompressionIndex, gap)).toBe(gapIn(5));
      expect(said(swellingIndex, gap)).toBe(gapIn(5));
      expect(said(recompressionIndex, gap, undefined, { loop_to: 100 })).toMatch(/^reload loop 50 to 100; /);
      expect(said(recompressionIndex, gap, { from: 50, to: 100 })).toMatch(/^reload from 50 to 100; row 5: /);
    });

    test("a picked line through a loop that is higher at its greater stress is refused with its stresses", () => {
      const gap = withoutRow(LOOP, 5, 6);
      expect(said(recompressionIndex, gap, undefined, { loop_to: 200, loop_from: 100 })).toBe(
        "method: the specimen is higher under 200 than under 100: choose other stresses",
      );
      // Less than a thousandth of the height is no fault of the row, and yet no slope.
      const creep = { stresses: [50, 100, 200, 400, 300, 400, 800], voids: [1, 0.97, 0.9, 0.8, 0.799, 0.79, 0.69] };
      expect(said(recompressionIndex, creep, undefined, { loop_to: 400 })).toBe(
        "method: the specimen is higher under 400 than under 300: choose other stresses",
      );
    });

    test("one false loop of two refuses the mean", () => {
      expect(said(recompressionIndex, withoutRow(twoLoops, 5, 6))).toBe(gapIn(5));
    });

    test("the greatest load is missing: Cs, and Cr of the rebound, are refused; a pick below the gap gives them", () => {
      const gap = withoutRow(rebound, 7);
      expect(said(swellingIndex, rebound)).toBe("final unloading 100 to 1600");
      for (const index of [swellingIndex, recompressionIndex]) {
        expect(said(index, gap)).toBe(gapIn(7));
        expect(said(index, gap, undefined, { unloading_to: 400 })).toMatch(/^final unloading 100 to 400; /);
      }
    });

    test("creep of less than a thousandth of the height as load is taken off passes", () => {
      const creep = { ...rebound, voids: [...LOADING.voids, 0.5882, 0.65] };
      expect(said(swellingIndex, creep)).toBe("final unloading 100 to 1600");
      expect(said(swellingIndex, { ...creep, voids: [...LOADING.voids, 0.587, 0.65] })).toBe(gapIn(8));
    });

    test("an unloading in which creep alone compressed the specimen gives no index, and its steps between two stresses say the same", () => {
      // From 200 to 50 the specimen loses 0.0015 of void ratio, less than a thousandth of its height, and the line of least squares rises.
      const loop = {
        stresses: [25, 50, 100, 200, 100, 50, 100, 200, 400, 800],
        voids: [1, 0.98, 0.95, 0.88, 0.8795, 0.8785, 0.876, 0.872, 0.78, 0.68],
      };
      const rising = "method: the specimen is higher under 200 than under 50: choose other stresses";
      expect(said(recompressionIndex, loop)).toBe(rising);
      expect(said(swellingIndex, loop)).toBe(rising);
      expect(said(recompressionIndex, loop, { from: 100, to: 200 })).toMatch(/^reload from 100 to 200/);
      const strains = then(
        testCurve(
          loop.stresses,
          loop.voids.map((e) => (1 - e) / 2),
          "strain",
        ),
        (test) => swellingIndex(test),
      );
      expect(strains.ok ? strains.value : english(strains.reason)).toBe(rising.slice("method: ".length));
      const end = { stresses: [...LOADING.stresses, 400, 100], voids: [...LOADING.voids, 0.5895, 0.5892] };
      for (const index of [swellingIndex, recompressionIndex])
        expect(said(index, end)).toBe(
          "method: the specimen is higher under 1600 than under 100: choose other stresses",
        );
      // Creep in the first step of a rebound that rises further on leaves its index.
      expect(said(swellingIndex, { ...end, voids: [...LOADING.voids, 0.5895, 0.6] })).toBe(
        "final unloading 100 to 1600",
      );
    });

    test("a load with too low a stress is no unloading that is steeper than the virgin line", () => {
      const low = { ...LOADING, stresses: [25, 50, 100, 200, 160, 800, 1600] };
      expect(said(compressionIndex, low)).toMatch(
        /^virgin line 200 to 1600; row 5: the specimen compressed as load was taken off: check the stress and the value/,
      );
      const stiff = { stresses: [25, 50, 100, 200, 50, 200, 400], voids: [1, 0.98, 0.96, 0.94, 0.98, 0.94, 0.92] };
      expect(said(compressionIndex, stiff)).toMatch(/^method: no bend in the curve: loading is no steeper than/);
    });

    test("between two stresses of which the greater has the less compressed specimen there is no index", () => {
      const swelled = { ...LOADING, voids: [1.0, 1.001, 0.97, 0.9, 0.8, 0.69, 0.59] };
      for (const index of [compressionIndex, recompressionIndex])
        for (const between of [
          { from: 25, to: 50 },
          { from: 50, to: 25 },
        ])
          // prettier-ignore
          expect(said(index, swelled, between)).toBe(
            "method: the specimen is higher under 50 than under 25: choose other stresses",
          );
      const strains = then(testCurve([25, 50, 100, 200], [0.01, 0.009, 0.03, 0.05], "strain"), (test) =>
        compressionIndex(test, { from: 25, to: 50 }),
      );
      expect(strains.ok).toBe(false);
      expect(said(swellingIndex, withoutRow(rebound, 7), { from: 800, to: 400 })).toMatch(
        /^method: the specimen is higher under 800 than under 400/,
      );
    });
  });

  test("the points that a slope was taken through are given, branch by branch; between two stresses none", () => {
    const rows = (index: Index, curve: typeof LOADING, between?: Between) =>
      read(index, curve.stresses, curve.voids, between).readings.map((points) => points.map(({ row }) => row));
    expect(rows(recompressionIndex, twoLoops)).toEqual([
      [5, 8],
      [13, 14],
    ]);
    expect(rows(swellingIndex, twoLoops)).toEqual([
      [5, 6, 7, 8],
      [13, 14],
    ]);
    expect(rows(compressionIndex, LOADING, { from: 100, to: 400 })).toEqual([]);
  });
});

describe("a value on a branch", () => {
  const branch = [
    { row: 1, stress: 100, value: 1 },
    { row: 2, stress: 10, value: 2 },
    { row: 3, stress: 1, value: 4 },
  ];
  test("is interpolated on log of stress, on loading and on unloading, its ends included", () => {
    for (const points of [branch, [...branch].reverse()]) {
      expect(valueOn(points, 10 ** 1.5)).toBeCloseTo(1.5, 12);
      expect(valueOn(points, 10 ** 0.25)).toBeCloseTo(3.5, 12);
      for (const { stress, value } of points) expect(valueOn(points, stress)).toBeCloseTo(value, 12);
      expect(valueOn(points, 100 * (1 + 1e-12))).toBeCloseTo(1, 9);
      expect(valueOn(points, 1 - 1e-12)).toBeCloseTo(4, 9);
    }
  });
  test("outside the branch there is none", () => {
    expect([valueOn(branch, 101), valueOn(branch, 0.99), valueOn([], 5), valueOn(branch.slice(0, 1), 100)]).toEqual(
      Array(4).fill(undefined),
    );
  });
});

test("e0 is the value given, else that before the first load, else that at the first load; strain has none", () => {
  const test = (kind: "e" | "strain", initial?: number) => {
    const curve = testCurve([25, 50], kind === "e" ? [1, 0.9] : [0.1, 0.2], kind, initial);
    if (!curve.ok) throw new Error(english(curve.reason));
    return curve.value;
  };
  expect(initialVoidRatio(test("e", 1.2), 1.3)).toBe(1.3);
  expect(initialVoidRatio(test("e", 1.2))).toBe(1.2);
  expect(initialVoidRatio(test("e"))).toBe(1);
  expect(initialVoidRatio(test("strain"))).toBeUndefined();
  expect(initialVoidRatio(test("strain"), 0.9)).toBe(0.9);
});
