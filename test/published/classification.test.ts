/**
 * Correlations of the compression index, against figures in print. Terzaghi & Peck (1967) and Wood & Wroth (1978) as
 * repeated in copies of manuals: 0.009 (55 - 10) and 2.7 x 30 / 200 both give 0.405. Azzouz et al. and 0.01 w: from memory.
 */
import { correlatedCc } from "../../src/reduction/curve/correlations";
import { english } from "../../src/reduction/message";

const by = (name: RegExp, soil: Parameters<typeof correlatedCc>[0]): number | undefined =>
  correlatedCc(soil).find(({ source }) => name.test(english(source)))?.Cc;

test("Terzaghi & Peck: liquid limit 55 % gives 0.405", () =>
  expect(by(/Terzaghi/, { liquidLimit: 0.55 })).toBeCloseTo(0.405, 3));

test("Wood & Wroth: plasticity index 30 % and Gs 2.7 give 0.405; PI / 74 gives 0.405 too", () => {
  const soil = { plasticityIndex: 0.3, specificGravity: 2.7 };
  expect(by(/Wood/, soil)).toBeCloseTo(0.405, 3);
  expect(by(/Kulhawy/, soil)).toBeCloseTo(0.405, 3);
});

test("void ratio and water content (from memory)", () => {
  expect(by(/Azzouz/, { voidRatio: 1.25 })).toBeCloseTo(0.4, 3);
  expect(by(/0.01 w/, { waterContent: 0.53 })).toBeCloseTo(0.53, 3);
});

test("a correlation that gives zero or less is left out", () =>
  expect(correlatedCc({ liquidLimit: 0.08, voidRatio: 0.2 })).toEqual([]));
