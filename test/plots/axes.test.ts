import {
  along,
  evenTicks,
  evenTickText,
  fromZero,
  logTicks,
  notBelowZero,
  padded,
  spacedLabels,
  tickText,
  wholeDecades,
  toAxis,
} from "../../src/plots/axes";
import type { PlotAxis } from "../../src/plots/spec";

describe("domains", () => {
  test("an axis begins at zero if no value is below zero, and below zero if one is", () => {
    expect(notBelowZero(padded([0, 0.36]))[0]).toBe(0);
    expect(notBelowZero(padded([0.01, 0.36]))[0]).toBe(0);
    expect(notBelowZero(padded([-0.001, 0.36]))).toEqual(padded([-0.001, 0.36]));
    expect(notBelowZero(padded([0.4, 1.5]))).toEqual(padded([0.4, 1.5]));
  });

  test("whole decades hold the values, and no further decade", () => {
    expect(wholeDecades([0.25, 1440])).toEqual([0.1, 10000]);
    expect(wholeDecades([0.1, 1000])).toEqual([0.1, 1000]);
    expect(wholeDecades([12.5, 3200])).toEqual([10, 10000]);
  });

  test("a log axis ignores zero; a single value gets one decade", () => {
    expect(wholeDecades([0, 5, 50])).toEqual([1, 100]);
    expect(wholeDecades([10])).toEqual([10, 100]);
    expect(wholeDecades([])).toEqual([1, 10]);
  });

  test("root time starts at 0", () => {
    const [low, high] = fromZero([1, 38]);
    expect(low).toBe(0);
    expect(high).toBeGreaterThan(38);
  });

  test("there is a margin on both sides, even if all readings are equal", () => {
    expect(padded([0, 100])).toEqual([-6, 106]);
    const [low, high] = padded([3, 3]);
    expect(low).toBeLessThan(3);
    expect(high).toBeGreaterThan(3);
  });
});

describe("ticks", () => {
  test("a log axis has its decades and all eight lines between two of them", () => {
    const { decades, minor } = logTicks([0.1, 100]);
    expect(decades).toEqual([0.1, 1, 10, 100].map((value) => expect.closeTo(value, 9)));
    expect(minor).toHaveLength(3 * 8);
    expect(minor).toContain(20);
  });

  test("even ticks are 1, 2 or 5 times a power of ten and stay in the domain", () => {
    expect(evenTicks([0.03, 0.34], 4)).toEqual([0.1, 0.2, 0.3].map((value) => expect.closeTo(value, 9)));
    expect(evenTicks([0, 38], 8)).toEqual([0, 5, 10, 15, 20, 25, 30, 35]);
  });

  test("tick labels show no rounding errors and have the same decimals along an axis", () => {
    expect(tickText(0.1 + 0.2)).toBe("0.3");
    expect(tickText(10000)).toBe("10\u2009000");
    const ticks = evenTicks([0.6, 1.2], 3);
    expect(ticks.map(evenTickText(ticks))).toEqual(["0.6", "0.8", "1.0", "1.2"]);
  });
});

describe("position along an axis", () => {
  const axis = (change: Partial<PlotAxis>): PlotAxis => ({
    label: "",
    scale: "linear",
    domain: [0, 10],
    reversed: false,
    ...change,
  });

  test("a log axis goes by decades, a linear axis by share, a reversed axis from the other end", () => {
    expect(along(axis({ scale: "log", domain: [1, 100] }), 10, 200)).toBeCloseTo(100);
    expect(along(axis({}), 2, 100)).toBeCloseTo(20);
    expect(along(axis({ reversed: true }), 2, 100)).toBeCloseTo(80);
  });
});

test("a vertical guide starts where it meets the curve, its first point, and ends at the axis below", () => {
  const x: PlotAxis = { label: "", scale: "log", domain: [0.1, 1000], reversed: false };
  const y: PlotAxis = { label: "", scale: "linear", domain: [400, 900], reversed: true };
  const upright = { label: "t50", style: "guide" as const, points: [[8, 600], [8, 450]] as const }; // prettier-ignore
  expect(toAxis(upright, x, y).points).toEqual([[8, 600], [8, 900]]); // prettier-ignore
});

describe("the labels of ticks", () => {
  const decades = ["0.1", "1", "10", "100", "1000", "10\u2009000"];

  test("stand at every tick where there is room", () => {
    expect(spacedLabels(decades, 60, 11)).toEqual(decades);
    expect(spacedLabels(["1"], 0, 11)).toEqual(["1"]);
    expect(spacedLabels([], 10, 11)).toEqual([]);
  });

  test("stand at every second or third tick where neighbours would touch", () => {
    expect(spacedLabels(decades, 22, 11)).toEqual(["0.1", "", "10", "", "1000", ""]);
    expect(spacedLabels(decades, 10, 11)).toEqual(["0.1", "", "", "100", "", ""]);
  });

  test("touch only below half a character of space", () => {
    // Two labels of three characters of 0.58 of the font size, and half of the font size between them: 2.24 times 10.
    expect(spacedLabels(["100", "200"], 22.5, 10)).toEqual(["100", "200"]);
    expect(spacedLabels(["100", "200"], 22.3, 10)).toEqual(["100", ""]);
  });
});
