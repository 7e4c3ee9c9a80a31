import fc from "../properties";
import { settlement, SETTLEMENT_CAUTION, type Layer } from "../../src/reduction/settlement";
import { english } from "../../src/reduction/message";
import { inEnglish } from "../in-english";

const LAYER: Layer = {
  thickness: 4,
  inSituStress: 100,
  increase: 120,
  preconsolidationStress: 150,
  compressionRatio: 0.15,
  recompressionRatio: 0.025,
};
const parts = (changes: Partial<Layer> = {}) => {
  const found = settlement({ ...LAYER, ...changes });
  if (!found.ok) throw new Error(english(found.reason));
  return found.value;
};
const remarks = (changes: Partial<Layer> = {}) => {
  const found = settlement({ ...LAYER, ...changes });
  return found.ok ? found.remarks.map(english) : [];
};

test("works below, across and above the preconsolidation stress", () => {
  expect(parts({ preconsolidationStress: 300 })).toEqual({
    recompression: 4 * 0.025 * Math.log10(2.2),
    virgin: 0,
    settlement: 4 * 0.025 * Math.log10(2.2),
  });
  expect(parts().recompression).toBeCloseTo(4 * 0.025 * Math.log10(1.5), 12);
  expect(parts().virgin).toBeCloseTo(4 * 0.15 * Math.log10(220 / 150), 12);
  for (const preconsolidationStress of [100, 95, 50])
    expect(parts({ preconsolidationStress })).toEqual({
      recompression: 0,
      virgin: 4 * 0.15 * Math.log10(2.2),
      settlement: 4 * 0.15 * Math.log10(2.2),
    });
});

test("a ratio that no part needs may be omitted, the other may not", () => {
  expect(parts({ preconsolidationStress: 100, recompressionRatio: 0 }).settlement).toBeGreaterThan(0);
  expect(parts({ preconsolidationStress: 300, compressionRatio: 0 }).settlement).toBeGreaterThan(0);
  for (const missing of ["compressionRatio", "recompressionRatio"] as const)
    expect(inEnglish(settlement({ ...LAYER, [missing]: 0 }))).toMatchObject({
      fault: "input",
      reason: expect.stringContaining("is blank or zero"),
    });
});

test("every settlement includes the caution; low OCR and steep ratios get a remark", () => {
  expect(remarks()).toEqual([english(SETTLEMENT_CAUTION)]);
  expect(remarks({ preconsolidationStress: 80 })[0]).toContain("OCR below 0.9");
  expect(remarks({ compressionRatio: 0.7 })[0]).toContain("divided by 1 + e0");
});

test.each<[Partial<Layer>, "input" | "method", RegExp]>([
  [{ thickness: 0 }, "input", /thickness is blank or zero/],
  [{ inSituStress: -5 }, "input", /in-situ stress is -5/],
  [{ increase: -20 }, "input", /increase is -20.*heave/],
  [{ increase: 0 }, "input", /increase is blank or zero/],
  [{ preconsolidationStress: 0 }, "input", /preconsolidation stress is blank or zero/],
  [{ compressionRatio: 15 }, "input", /compression ratio is 15: enter strain per log cycle as a ratio/],
  [{ compressionRatio: -0.1 }, "input", /compression ratio is -0.1/],
  [{ compressionRatio: 0.02, recompressionRatio: 0.1 }, "input", /swapped/],
  [{ increase: 1e9, compressionRatio: 0.5 }, "method", /whole thickness/],
])("%j is refused", (changes, fault, reason) => {
  expect(inEnglish(settlement({ ...LAYER, ...changes }))).toMatchObject({
    ok: false,
    fault,
    reason: expect.stringMatching(reason),
  });
});

const number = (min: number, max: number) =>
  fc.integer({ min: 0, max: 1_000_000 }).map((part) => min + ((max - min) * part) / 1_000_000);
const layer = fc.record({
  thickness: number(0.5, 30),
  inSituStress: number(5, 500),
  increase: number(1, 500),
  preconsolidationStress: number(5, 1000),
  compressionRatio: number(0.1, 0.4),
  recompressionRatio: number(0.005, 0.1),
});

test("the settlement is the sum of its parts", () => {
  fc.assert(
    fc.property(layer, (one) => {
      const { recompression, virgin, settlement: sum } = parts(one);
      expect(recompression).toBeGreaterThanOrEqual(0);
      expect(virgin).toBeGreaterThanOrEqual(0);
      expect(sum).toBe(recompression + virgin);
    }),
  );
});

test("there is no step where the final or the in-situ stress meets the preconsolidation stress", () => {
  fc.assert(
    fc.property(layer, fc.boolean(), (one, atEnd) => {
      const meets = atEnd ? one.inSituStress + one.increase : one.inSituStress;
      const near = (share: number) => parts({ ...one, preconsolidationStress: meets * share }).settlement;
      expect(Math.abs(near(1 - 1e-9) - near(1 + 1e-9))).toBeLessThan(1e-8 * one.thickness);
    }),
  );
});

test("a load applied in two parts gives the same settlement", () => {
  fc.assert(
    fc.property(layer, number(0.1, 0.9), (one, share) => {
      const first = parts({ ...one, increase: share * one.increase });
      const second = parts({
        ...one,
        inSituStress: one.inSituStress + share * one.increase,
        increase: (1 - share) * one.increase,
      });
      expect(first.settlement + second.settlement).toBeCloseTo(parts(one).settlement, 9);
    }),
  );
});

test("units of stress and of length carry through", () => {
  fc.assert(
    fc.property(layer, number(0.01, 50), number(0.001, 1000), (one, stress, length) => {
      const scaled = parts({
        ...one,
        thickness: length * one.thickness,
        inSituStress: stress * one.inSituStress,
        increase: stress * one.increase,
        preconsolidationStress: stress * one.preconsolidationStress,
      });
      expect(scaled.settlement / length).toBeCloseTo(parts(one).settlement, 9);
    }),
  );
});

const PLAIN = {
  thickness: 4,
  inSituStress: 100,
  increase: 100,
  preconsolidationStress: 50,
  compressionRatio: 0.2,
  recompressionRatio: 0,
};

test("a ratio of 1 is refused; one that no stress needs may be 0", () => {
  expect(settlement(PLAIN).ok).toBe(true);
  expect(settlement({ ...PLAIN, recompressionRatio: 1, compressionRatio: 1 }).ok).toBe(false);
  expect(settlement({ ...PLAIN, compressionRatio: 1 }).ok).toBe(false);
  expect(settlement({ ...PLAIN, compressionRatio: 0 }).ok).toBe(false);
  expect(settlement({ ...PLAIN, recompressionRatio: -0.01 }).ok).toBe(false);
});

test("a settlement of the whole thickness is refused, and a steep ratio is remarked from above 0.6", () => {
  // log10 of 100 is 2: half a ratio of strain for each log cycle makes the whole thickness.
  const steep = { ...PLAIN, inSituStress: 1, increase: 99, preconsolidationStress: 1 };
  expect(settlement({ ...steep, compressionRatio: 0.5 }).ok).toBe(false);
  expect(settlement({ ...steep, compressionRatio: 0.49 }).ok).toBe(true);
  const remarks = (compressionRatio: number): number => {
    const found = settlement({ ...PLAIN, compressionRatio, increase: 1 });
    return found.ok ? found.remarks.length : NaN;
  };
  expect(remarks(0.61) - remarks(0.6)).toBe(1);
});
