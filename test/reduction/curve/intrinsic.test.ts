import fc from "../../properties";
import { intrinsic, intrinsicLine, sedimentationLine } from "../../../src/reduction/curve/intrinsic";
import { english } from "../../../src/reduction/message";
import { inEnglish } from "../../in-english";

const value = (...given: Parameters<typeof intrinsic>) => {
  const found = intrinsic(...given);
  if (!found.ok) throw new Error(english(found.reason));
  return found.value;
};

test("the void index is 0 at e*100, and -1 one intrinsic compression index lower", () => {
  const { e100, Cc, voidIndex, lineIndex } = value(0.6, 2.7);
  expect([voidIndex, lineIndex]).toEqual([undefined, undefined]);
  expect(value(0.6, 2.7, { voidRatio: e100 }).voidIndex).toBeCloseTo(0, 12);
  expect(value(0.6, 2.7, { voidRatio: e100 - Cc }).voidIndex).toBeCloseTo(-1, 12);
});

test("a void ratio at the liquid limit outside 0.6 to 4.5 gets a remark, and no other does", () => {
  const remarks = (eL: number, stress?: number) => {
    const found = intrinsic(eL / 2.5, 2.5, { stress });
    return found.ok ? found.remarks.map(english) : [];
  };
  expect(remarks(0.61, 100)).toEqual([]);
  expect(remarks(4.49, 100)).toEqual([]);
  expect(remarks(0.55)).toEqual([expect.stringMatching(/liquid limit is 0.55: .* between 0.6 and 4.5/)]);
  expect(remarks(4.6)).toEqual([expect.stringMatching(/liquid limit is 4.6: /)]);
  // The line is drawn from 10 to 10,000 kPa.
  for (const stress of [10, 10_000]) expect(remarks(1.5, stress)).toEqual([]);
  for (const stress of [5, 10_001])
    expect(remarks(1.5, stress)).toEqual([
      expect.stringMatching(RegExp(`stress ${stress} kPa lies beyond the intrinsic line`)),
    ]);
});

test.each([
  [65, 2.7, {}, "input", /0.65 for 65 %/],
  [0, 2.7, {}, "input", /liquid limit is blank or zero/],
  [0.65, 2700, {}, "input", /so 2.7 for 2700 kg\/m3/],
  [0.65, 2.7, { voidRatio: -1 }, "input", /void ratio is -1/],
  [0.65, 2.7, { stress: -1 }, "input", /stress is -1/],
  [0.05, 2.7, {}, "method", /0.135: the correlation begins at 0.6/],
])("liquid limit %s, specific gravity %s, %j: refused", (limit, gravity, more, fault, reason) => {
  expect(inEnglish(intrinsic(limit, gravity, more))).toMatchObject({
    ok: false,
    fault,
    reason: expect.stringMatching(reason),
  });
});

test("within the correlation a greater liquid limit gives more voids and more compression, and the line falls", () => {
  const eL = fc.integer({ min: 600, max: 4500 }).map((part) => part / 1000);
  fc.assert(
    fc.property(eL, eL, (a, b) => {
      const low = value(Math.min(a, b) / 2.7, 2.7);
      const high = value((Math.max(a, b) + 0.001) / 2.7, 2.7);
      expect(high.e100).toBeGreaterThan(low.e100);
      expect(high.Cc).toBeGreaterThan(low.Cc);
    }),
  );
  fc.assert(
    fc.property(fc.integer({ min: 10, max: 9999 }), (stress) => {
      expect(intrinsicLine(stress + 1)).toBeLessThan(intrinsicLine(stress));
    }),
  );
});

test("the sedimentation line has the void index of the intrinsic line at a fifth of the stress", () => {
  expect(sedimentationLine(500)).toBe(intrinsicLine(100));
  expect(sedimentationLine(500)).toBeCloseTo(0, 12);
});
