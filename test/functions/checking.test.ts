import { COMPARE } from "../../src/functions/checking";
import { refusal } from "./refusal";

test("one pair: difference, relative difference, verdict", () => {
  expect(COMPARE([[1.005]], [[1]])).toEqual([[expect.closeTo(0.005, 12), expect.closeTo(0.005, 12), "agrees"]]);
  expect(COMPARE([[1.02]], [[1]])[0][2]).toBe("differs");
  expect(COMPARE([[1.02]], [[1]], 0.05)[0][2]).toBe("agrees");
  expect(COMPARE([[-2]], [[-4]])).toEqual([[2, 0.5, "differs"]]);
});

test("a difference of exactly the tolerance agrees", () => {
  expect(COMPARE([[1.1]], [[1]], 0.1)[0][2]).toBe("agrees");
  expect(COMPARE([[0.9]], [[1]], 0.1)[0][2]).toBe("agrees");
});

test("a column of pairs; a row without a hand value stays blank, one without ours differs", () => {
  for (const blank of [null, "", 0])
    expect(COMPARE([[2], [3], [blank]], [[2], [blank], [5]])).toEqual([
      [0, 0, "agrees"],
      ["", "", ""],
      [-5, -1, "differs"],
    ]);
});

test("refusals", () => {
  for (const blank of [null, 0])
    expect(refusal(() => COMPARE([[2]], [[blank]]))).toMatch(/value by hand is blank or zero: enter it/);
  expect(refusal(() => COMPARE([[2]], [[2]], 5))).toMatch(/tolerance is 5: enter it as a ratio, 0.05 for 5 %/);
  expect(refusal(() => COMPARE([["#N/A"]], [[2]]))).toMatch(/cell 1 of the reduced values holds the error #N\/A/);
});
