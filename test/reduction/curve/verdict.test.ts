/** The sentence on how far the methods agree, on curves of straight steps (strain per doubled stress from 10 on). */
import { METHOD_SAID } from "../../../src/reduction/curve/method-words";
import { preconsolidationSpread } from "../../../src/reduction/curve/preconsolidation";
import { testCurve } from "../../../src/reduction/curve/shape/points";
import { english } from "../../../src/reduction/message";
import { then } from "../../../src/reduction/outcome";

function spreadOf(steps: readonly number[]) {
  const strains = [0];
  for (const step of steps) strains.push(Number((strains[strains.length - 1] + step).toFixed(9)));
  const stresses = strains.map((_, i) => 10 * 2 ** i);
  const found = then(testCurve(stresses, strains, "strain"), (test) => preconsolidationSpread(test));
  if (!found.ok) throw new Error(english(found.reason));
  return found;
}

const UNRELIABLE = (percent: number) => `unreliable: the methods spread over ${percent} percent of the median`;
const UNCERTAIN = (percent: number) =>
  `uncertain: the methods spread over ${percent} percent of the median; look at the curve and the points each method used`;
const REMARKS = (percent: number) => `the methods agree within ${percent} percent of the median, but see the remarks`;
const AGREE = (percent: number) => `the methods agree within ${percent} percent of the median`;
const DEFINED = (percent: number) => `well defined: the methods agree within ${percent} percent of the median`;

/** Above 25 percent the spread is uncertain, above 50 unreliable; a range wider than 1.5 times is given (src, no source). */
test.each([
  ["a sharp bend", [0.011, 0.01, 0.043, 0.063, 0.058, 0.06], DEFINED, { range: false, outside: [] }],
  [
    "one method outside",
    [0.01, 0.01, 0.01, 0.05, 0.05, 0.05],
    DEFINED,
    { range: false, outside: ["Pacheco Silva (below)"] },
  ],
  ["a wide range", [0.01, 0.01, 0.04, 0.048, 0.058, 0.051], AGREE, { range: true, outside: [] }],
  ["a remark", [0.011, 0.008, 0.012, 0.05, 0.04, 0.04], REMARKS, { range: false, outside: [] }],
  ["a spread above 25 percent", [0.012, 0.01, 0.06, 0.039, 0.064, 0.06], UNCERTAIN, { range: true, outside: [] }],
  [
    "a spread above 50 percent",
    [0.009, 0.011, 0.044, 0.055, 0.049, 0.066],
    UNRELIABLE,
    { range: true, outside: ["Work (above)"] },
  ],
] as const)("%s", (_, steps, agreement, { range, outside }) => {
  const { value } = spreadOf(steps);
  const stresses = value.methods
    .flatMap(({ result }) => (result.ok ? [result.value.stress] : []))
    .sort((a, b) => a - b);
  const middle = (stresses[(stresses.length - 1) >> 1] + stresses[stresses.length >> 1]) / 2;
  const percent = Math.round((100 * (stresses[stresses.length - 1] - stresses[0])) / middle);
  const shown = (stress: number) => String(Number(stress.toPrecision(4)));
  expect(value.high / value.low > 1.5).toBe(range);
  expect(english(value.verdict)).toBe(
    [
      agreement(percent),
      ...(range
        ? [
            `these points allow ${shown(value.low)} to ${shown(value.high)}: smaller load steps about yield would say more`,
          ]
        : []),
      ...(outside.length
        ? [`outside the range that these points allow: ${outside.join(", ")}; see the row of each method`]
        : []),
    ].join("; "),
  );
  // The row of a method outside the range says so, and why; the row of any other does not.
  for (const { method, note } of value.methods)
    expect(/(above|below) the range that these points allow: /.test(english(note))).toBe(
      outside.some((said) => said.startsWith(english(METHOD_SAID[method]))),
    );
});
