/** The plot of the field curve: overconsolidated and normally consolidated clay, both yields, the in-situ point, the factor. */
import { FIELD_LABELS, fieldCurvePlot, type FieldPlotOptions } from "../../src/plots/field";
import type { PlotSpec } from "../../src/plots/spec";
import type { Outcome } from "../../src/reduction/outcome";

const valueOf = <T>(outcome: Outcome<T>): T => {
  if (!outcome.ok) throw new Error("refused");
  return outcome.value;
};

/**
 * A virgin line e = 0.65 - 0.32 log10(s / 800) beyond a recompression of slope 0.04, e0 = 1.0: figures computed by hand from
 * Schmertmann's construction (no outside witness). Source of the construction: Schmertmann, J.H., 1955, Trans. ASCE 120.
 */
const virgin = (stress: number): number => 0.65 - 0.32 * Math.log10(stress / 800);
const YIELD = 250;
const recompression = (stress: number): number => virgin(YIELD) + 0.04 * Math.log10(YIELD / stress);
const stresses = [12.5, 25, 50, 100, 200, 400, 800, 1600, 3200, 800, 200, 50];
const voidRatios = stresses.map((stress, index) =>
  index > 8 ? virgin(3200) + 0.04 * Math.log10(3200 / stress) : stress < YIELD ? recompression(stress) : virgin(stress),
);

const drawn = (options: Partial<FieldPlotOptions> = {}): PlotSpec =>
  valueOf(
    fieldCurvePlot(stresses, voidRatios, {
      inSituStress: 100,
      initialVoidRatio: 1,
      preconsolidationStress: YIELD,
      ...options,
    }),
  );
const pointsOf = (spec: PlotSpec, label: string) => spec.series.find((one) => one.label === label)?.points ?? [];

test("overconsolidated clay: the in-situ point, the yield at e = 0.98408, and the laboratory line at 0.42 e0 and 4186", () => {
  const spec = drawn();
  const [inSitu, bend, meeting] = pointsOf(spec, FIELD_LABELS.field);
  expect(inSitu).toEqual([100, 1]);
  expect(bend![0]).toBe(YIELD);
  expect(bend![1]).toBeCloseTo(0.98408, 5);
  expect(meeting![0]).toBeCloseTo(4186, -1);
  expect(meeting![1]).toBeCloseTo(0.42, 12);
  expect(pointsOf(spec, FIELD_LABELS.inSitu)).toEqual([inSitu]);
  expect(pointsOf(spec, FIELD_LABELS.fieldYield)).toEqual([bend]);
  expect(spec.notes.join()).toContain("0.42 e0; its Cc is 0.461");
});

test("the laboratory yield is on the laboratory curve, below the field yield", () => {
  const [[stress, voidRatio]] = pointsOf(drawn(), FIELD_LABELS.laboratoryYield) as [[number, number]];
  expect(stress).toBe(YIELD);
  // Between the loads of 200 and 400, on log stress.
  const share = Math.log10(250 / 200) / Math.log10(2);
  expect(voidRatio).toBeCloseTo(recompression(200) + share * (virgin(400) - recompression(200)), 9);
  expect(voidRatio).toBeLessThan(0.98408);
});

test("normally consolidated clay: a straight line from the in-situ point, Cc 0.3576", () => {
  const spec = drawn({ preconsolidationStress: 100 });
  expect(pointsOf(spec, FIELD_LABELS.field)).toHaveLength(2);
  expect(pointsOf(spec, FIELD_LABELS.fieldYield)).toEqual([]);
  expect(spec.notes.join()).toContain("its Cc is 0.358");
  expect(spec.notes.join()).toContain("Normally consolidated");
});

test("the factor is an argument: 0.40 meets the line lower, beyond 4186", () => {
  const [, , meeting] = pointsOf(drawn({ factor: 0.4 }), FIELD_LABELS.field);
  expect(meeting![1]).toBeCloseTo(0.4, 12);
  expect(meeting![0]).toBeGreaterThan(4186);
});

test("the frame contains the laboratory curve and the whole field curve", () => {
  const { x, y, series } = drawn();
  expect(x.domain).toEqual([10, 10_000]);
  for (const [, voidRatio] of series.flatMap(({ points }) => points)) {
    expect(voidRatio).toBeGreaterThanOrEqual(y.domain[0]);
    expect(voidRatio).toBeLessThanOrEqual(y.domain[1]);
  }
});
