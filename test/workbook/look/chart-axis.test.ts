import fc from "../../properties";
import { evenStep, roundedDomain } from "../../../src/workbook/look/chart-axis";

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
