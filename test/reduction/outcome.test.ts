import {
  badInput,
  figure,
  firstNotPositive,
  given,
  notApplicable,
  notPositive,
  then,
} from "../../src/reduction/outcome";
import { english, say } from "../../src/reduction/message";
import { inEnglish } from "../in-english";

test("remarks are collected in order through a chain, and a refusal ends it", () => {
  const first = given(2, [say`looked at`]);
  expect(then(first, (value) => given(value * 3, [say`again`]))).toEqual(given(6, [say`looked at`, say`again`]));
  expect(then(first, () => notApplicable(say`flat`))).toEqual(notApplicable(say`flat`));
  const next = jest.fn();
  expect(inEnglish(then(badInput(say`row 2`), next))).toEqual({ ok: false, fault: "input", reason: "row 2" });
  expect(next).not.toHaveBeenCalled();
});

test("numbers in messages have six digits and no trailing zeros", () => {
  expect([0.1 + 0.2, 25.4, 1234567, 1 / 3].map(figure).map(english)).toEqual(["0.3", "25.4", "1234570", "0.333333"]);
});

test("the message on a value that must be greater than zero says what is wrong with it", () => {
  const mass = say`the mass`;
  expect(notPositive(1e-12, mass)).toBeUndefined();
  expect(english(notPositive(0, mass)!)).toBe("the mass is blank or zero: enter a number greater than zero");
  expect(english(notPositive(-3, mass)!)).toBe("the mass is -3: it cannot be negative");
  expect(english(notPositive(NaN, mass)!)).toMatch(/not a number/);
  expect(inEnglish(firstNotPositive([mass, 1], [say`the height`, -2], [say`the diameter`, 0]))).toEqual({
    ok: false,
    fault: "input",
    reason: "the height is -2: it cannot be negative",
  });
  expect(firstNotPositive([mass, 1])).toBeUndefined();
  expect(firstNotPositive([mass, undefined])).toBeUndefined();
  expect(firstNotPositive([say`the stress`, undefined], [mass, -2])?.fault).toBe("input");
});
