import { makeCurve } from "../../../generators/compression-curves";
import { effectOn, HABITS } from "../../../../src/reduction/curve/methods/habits";
import { testCurve } from "../../../../src/reduction/curve/shape/points";
import { preconsolidationSpread } from "../../../../src/reduction/curve/preconsolidation";
import { METHOD_NAMES } from "../../../../src/reduction/curve/method-words";
import { then } from "../../../../src/reduction/outcome";
import { inEnglish } from "../../../in-english";

const effect = (...asked: Parameters<typeof effectOn>) => inEnglish(effectOn(...asked));

/** Percent by which each method reads above the corner, the median of 400 made curves. */
function middle(scenario: string): Record<string, number> {
  const read: Record<string, number[]> = {};
  for (let seed = 0; seed < 400; seed++) {
    const { stresses, values, kind, truth } = makeCurve(scenario, seed);
    const outcome = then(testCurve(stresses, values, kind), (test) => preconsolidationSpread(test));
    if (!outcome.ok) continue;
    for (const { method, result } of outcome.value.methods)
      if (result.ok) (read[method] ??= []).push(100 * (result.value.stress / truth.preconsolidation - 1));
  }
  return Object.fromEntries(
    Object.entries(read).map(([method, values]) => [method, values.sort((a, b) => a - b)[values.length >> 1]]),
  );
}

test.each([
  ["rounded", "disturbed, wide rounding"],
  ["flattening", "sensitive, virgin line bends"],
] as const)("the effect of a %s curve on each method agrees within 1.5 percent of the stress", (form, scenario) => {
  const found = middle(scenario);
  for (const method of METHOD_NAMES) {
    const said = HABITS[method][form];
    if (said === undefined) continue;
    expect(Math.abs(found[method] - said)).toBeLessThan(1.5);
  }
});

test("the effect is put into words, flattening before rounding", () => {
  expect(effect("intersection", { flattens: true, wide: true })).toBe(
    "where the virgin part flattens it reads about 8 percent low",
  );
  expect(effect("casagrande", { flattens: true, wide: false })).toContain("neither high nor low");
  expect(effect("work", { flattens: false, wide: true })).toBe(
    "on a widely rounded bend it reads about 15 percent high",
  );
  expect(effect("work", { flattens: false, wide: false })).toBeUndefined();
  expect(effect("janbu", { flattens: true, wide: true })).toBeUndefined();
});
