import {
  badInput,
  figure,
  firstNotPositive,
  given,
  notApplicable,
  notPositive,
  remarkText,
  then,
} from "../../src/reduction/outcome";

test("remarks add up in order through a chain, and a refusal ends it", () => {
  const first = given(2, ["looked at"]);
  expect(then(first, (value) => given(value * 3, ["again"]))).toEqual(given(6, ["looked at", "again"]));
  expect(then(first, () => notApplicable("flat"))).toEqual(notApplicable("flat"));
  const next = jest.fn();
  expect(then(badInput("row 2"), next)).toEqual({ ok: false, fault: "input", reason: "row 2" });
  expect(next).not.toHaveBeenCalled();
});

test("the remark of a value with nothing to say is ok", () => {
  expect(remarkText([])).toBe("ok");
  expect(remarkText(["one", "two"])).toBe("one; two");
});

test("figures in messages carry six digits and no tail", () => {
  expect([0.1 + 0.2, 25.4, 1234567, 1 / 3].map(figure)).toEqual(["0.3", "25.4", "1234570", "0.333333"]);
});

test("what must be greater than zero says what is wrong with it", () => {
  expect(notPositive(1e-12, "the mass")).toBeUndefined();
  expect(notPositive(0, "the mass")).toBe("the mass is blank or zero: enter a number greater than zero");
  expect(notPositive(-3, "the mass")).toBe("the mass is -3: it cannot be negative");
  expect(notPositive(NaN, "the mass")).toMatch(/not a number/);
  expect(firstNotPositive({ "the mass": 1, "the height": -2, "the diameter": 0 })).toEqual(
    badInput("the height is -2: it cannot be negative"),
  );
  expect(firstNotPositive({ "the mass": 1 })).toBeUndefined();
});
