import fc from "../../properties";
import { axisLabels, evenStep, labelFormat, roundedDomain, stepsOf } from "../../../src/workbook/look/chart-axis";

const stretch = fc
  .tuple(fc.double({ min: -1e4, max: 1e4, noNaN: true }), fc.double({ min: -5, max: 5, noNaN: true }))
  .map(([low, power]): [number, number] => [low, low + 10 ** power])
  .filter(([low, high]) => high - low > Math.abs(low) * 1e-6);

const isWhole = (value: number): boolean => Math.abs(value - Math.round(value)) < 1e-6 * Math.max(1, Math.abs(value));

test("a domain holds its values, and its ends are whole steps of its ticks", () => {
  fc.assert(
    fc.property(stretch, (domain) => {
      const [low, high] = roundedDomain(domain);
      const step = evenStep([low, high]);
      const dust = 1e-6 * step;
      expect(low).toBeLessThanOrEqual(domain[0] + dust);
      expect(high).toBeGreaterThanOrEqual(domain[1] - dust);
      expect([isWhole(low / step), isWhole(high / step)]).toEqual([true, true]);
      const steps = (high - low) / step;
      expect(steps).toBeGreaterThan(2.9);
      expect(steps).toBeLessThan(8.1);
    }),
  );
});

test.each([
  [[389, 551], [350, 600], 50],
  [[0.62, 1.44], [0.6, 1.6], 0.2],
  [[800, 1600], [800, 1600], 100],
] as const)("%j is shown from %j in steps of %d", (domain, rounded, step) => {
  expect(roundedDomain(domain)).toEqual(rounded);
  expect(evenStep(rounded)).toBeCloseTo(step, 12);
});

test("the labels of a linear axis have equal decimals, those of a log axis are its decades", () => {
  const linear = { scale: "linear", domain: [0.4, 1.6] } as const;
  expect(axisLabels(linear)).toEqual(["0.4", "0.6", "0.8", "1.0", "1.2", "1.4", "1.6"]);
  expect(labelFormat(linear)).toBe("0.0");
  expect(axisLabels({ scale: "linear", domain: [350, 600] }, true)).toEqual(["350", "400", "450", "500", "550", "600"]);
  expect(labelFormat({ scale: "linear", domain: [350, 600] })).toBe("0");
  const log = { scale: "log", domain: [0.1, 10000] } as const;
  expect(axisLabels(log)).toEqual(["0.1", "1", "10", "100", "1000", "10000"]);
  expect(labelFormat(log)).toBe("General");
});

test("a small chart has fewer steps", () => {
  expect(roundedDomain([1580, 2480], stepsOf(true))).toEqual([1400, 2600]);
  expect(evenStep([1400, 2600], stepsOf(true))).toBe(200);
  expect(evenStep([0, 700], stepsOf(true))).toBeGreaterThan(evenStep([0, 700], stepsOf(false)));
});
