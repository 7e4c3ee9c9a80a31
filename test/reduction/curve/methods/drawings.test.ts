/** What each method draws, and the parts that the drawings share, on curves whose corner is known by hand. */
import { METHOD_NAMES, type MethodName } from "../../../../src/reduction/curve/method-words";
import { nearYield } from "../../../../src/reduction/curve/methods/method";
import { cumulativeWork } from "../../../../src/reduction/curve/methods/work";
import { preconsolidation } from "../../../../src/reduction/curve/preconsolidation";
import { branches } from "../../../../src/reduction/curve/shape/branches";
import { firstLoading } from "../../../../src/reduction/curve/shape/first-loading";
import { testCurve } from "../../../../src/reduction/curve/shape/points";
import { english } from "../../../../src/reduction/message";
import { then, type Outcome } from "../../../../src/reduction/outcome";

const value = <T>(outcome: Outcome<T>): T => {
  if (!outcome.ok) throw new Error(english(outcome.reason));
  return outcome.value;
};

/** Stresses from 10, each 1.5 times the one before; strain 0.02 per log cycle to 75.9375, and 0.22 beyond. */
const STRESSES = Array.from({ length: 12 }, (_, i) => 10 * 1.5 ** i);
const CORNER = 10 * 1.5 ** 5;
const STRAINS = STRESSES.map((s) => 0.02 * Math.log10(s / 10) + 0.2 * Math.max(0, Math.log10(s / CORNER)));
const VOIDS = STRAINS.map((strain) => 1 - 2 * strain);
const read = (method: MethodName, values = STRAINS, kind: "strain" | "e" = "strain") =>
  value(then(testCurve(STRESSES, values, kind), (test) => preconsolidation(test, { method })));

const LINES: Record<MethodName, readonly string[]> = {
  casagrande: [
    ...["points: first loading", "curve: smooth curve", "construction: virgin line", "points: greatest curvature"],
    ...["construction: horizontal", "construction: tangent", "construction: bisector"],
    "guide: preconsolidation stress",
  ],
  work: [
    ...["points: work", "construction: line before yield", "construction: line after yield"],
    "guide: preconsolidation stress",
  ],
  bilog: [
    ...["points: first loading", "construction: line before yield", "construction: line after yield"],
    "guide: preconsolidation stress",
  ],
  intersection: [
    ...["points: first loading", "construction: recompression line", "construction: virgin line"],
    "guide: preconsolidation stress",
  ],
  pacheco_silva: [
    ...["points: first loading", "curve: smooth curve", "construction: virgin line", "construction: initial value"],
    ...["construction: vertical to the curve", "construction: horizontal to the virgin line"],
    "guide: preconsolidation stress",
  ],
  janbu: ["points: modulus", "curve: modulus", "guide: preconsolidation stress"],
};

test.each(METHOD_NAMES)("%s draws its lines by name, and its guide at the stress that it reads", (method) => {
  const { lines, stress } = read(method);
  expect(lines.map(({ style, label }) => `${style}: ${label}`)).toEqual(LINES[method]);
  for (const [x] of lines[lines.length - 1].points) expect(x / stress).toBeCloseTo(1, 12);
});

test("each method says which points it used", () => {
  const said = (method: MethodName) => english(read(method).points);
  expect(said("casagrande")).toBe("recompression 10 to 75.94, virgin 75.94 to 865");
  expect(said("intersection")).toBe("recompression 10 to 75.94, virgin 75.94 to 865");
  expect(said("pacheco_silva")).toBe("virgin 75.94 to 865, smooth curve");
  // The part of the virgin line within 0.65 log cycle of yield: three steps of 0.176.
  expect(said("work")).toBe("recompression 10 to 75.94, virgin 75.94 to 256.3");
  expect(said("bilog")).toBe("recompression 10 to 75.94, virgin 75.94 to 256.3");
  expect(said("janbu")).toBe("modulus of the steps ending at 75.94, 113.9");
});

test("the part of the virgin line nearest to yield: three points at the least, and more within 0.65 log cycle", () => {
  const near = (x: readonly number[], from = 0, to = x.length - 1) =>
    nearYield({ ...firstLoadingOf(STRAINS, "strain"), x }, { from, to });
  expect(near([0, 0.5, 1, 1.5, 2])).toEqual({ from: 0, to: 2 });
  expect(near([0, 0.5, 1, 1.5, 2], 1)).toEqual({ from: 1, to: 3 });
  expect(near([0, 0.2, 0.4, 0.65, 0.8])).toEqual({ from: 0, to: 3 });
  expect(near([0, 0.2, 0.4, 0.66, 0.8])).toEqual({ from: 0, to: 2 });
  expect(near([0, 0.5, 1, 1.5, 2], 3)).toEqual({ from: 3, to: 4 });
});

function firstLoadingOf(values: readonly number[], kind: "strain" | "e") {
  const test = value(testCurve(STRESSES, [...values], kind));
  return firstLoading(test, value(branches(test)));
}

test("the work of a step is its mean stress times its strain; a void ratio is first made a strain", () => {
  const byHand = [0];
  for (let i = 1; i < STRESSES.length; i++)
    byHand.push(byHand[i - 1] + ((STRESSES[i] + STRESSES[i - 1]) / 2) * (STRAINS[i] - STRAINS[i - 1]));
  for (const done of [cumulativeWork(firstLoadingOf(STRAINS, "strain")), cumulativeWork(firstLoadingOf(VOIDS, "e"))])
    done.forEach((one, i) => expect(one).toBeCloseTo(byHand[i], 9));
  // Strain is referred to the height before the test, also where the first load has strained the specimen already.
  cumulativeWork(
    firstLoadingOf(
      STRAINS.map((strain) => strain + 0.1),
      "strain",
    ),
  ).forEach((one, i) => expect(one).toBeCloseTo(byHand[i], 9));
});

describe("Janbu's modulus", () => {
  test("is the stress of a step over its strain, drawn at the mean stress; void ratio and strain give the same", () => {
    const drawn = (values: readonly number[], kind: "strain" | "e") => read("janbu", [...values], kind).lines[0].points;
    const later = STRAINS.map((strain) => strain + 0.1);
    for (const points of [drawn(STRAINS, "strain"), drawn(VOIDS, "e"), drawn(later, "strain")])
      points.forEach(([mean, modulus], i) => {
        expect(mean).toBeCloseTo((STRESSES[i] + STRESSES[i + 1]) / 2, 9);
        expect(modulus / ((STRESSES[i + 1] - STRESSES[i]) / (STRAINS[i + 1] - STRAINS[i]))).toBeCloseTo(1, 9);
      });
  });

  test("falls from the step ending at the corner to the next step: yield is half-way on log of stress", () => {
    expect(read("janbu").stress).toBeCloseTo(CORNER * Math.sqrt(1.5), 6);
  });

  const onSteps = (stresses: readonly number[], strains: readonly number[], picks = {}) => {
    const found = then(testCurve([...stresses], [...strains], "strain"), (test) =>
      preconsolidation(test, { method: "janbu", picks }),
    );
    return found.ok ? found.value.stress : english(found.reason);
  };

  test("is read on load steps up to 1.6 times about yield, and both of its steps must be so fine", () => {
    const COARSE =
      "the load steps about yield are coarser than 1.6 times: the fall of the modulus lies within one step";
    const strains = [0, 0.01, 0.02, 0.03, 0.04, 0.09, 0.14, 0.18, 0.21, 0.24];
    // 62.5 to 100 and 100 to 160 are 1.6 times to the last digit.
    const loads = (next: number) => [10, 15, 24, 39.0625, 62.5, 100, next, 250, 390, 600];
    expect(onSteps(loads(160), strains)).toBeCloseTo(Math.sqrt(62.5 * 100), 9);
    const at = (third: number) => [10, 16, 25, 40, 62.5, third, 160, 250, 390, 600];
    expect(onSteps(at(99), strains)).toBeCloseTo(Math.sqrt(62.5 * 99), 9);
    // The step after the peak is too coarse, the peak itself is not.
    expect(onSteps(at(101), strains)).toBe(COARSE);
  });
});
