import { changesOf, isWithoutValues, WITHOUT_VALUES } from "../../../src/workbook/embedded/changes";
import { ADD_NAMES } from "../../../src/workbook/embedded/named-ranges";

test("a command after which nothing is evaluated is not told as a change of values", () => {
  expect([...WITHOUT_VALUES].filter((type) => changesOf(type).includes("values"))).toEqual([]);
});

test("the add-in's own commands change no value, except that of names, which formulas use", () => {
  expect(isWithoutValues("CLAYLEDGER_ANY")).toBe(true);
  expect(isWithoutValues(ADD_NAMES)).toBe(false);
  expect(changesOf(ADD_NAMES)).toEqual(["sheets"]);
});

test("a command that is not known may change any value", () => {
  expect(isWithoutValues("NEW_COMMAND")).toBe(false);
});
