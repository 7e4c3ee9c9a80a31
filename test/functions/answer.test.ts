import { answer, column, inShapeOf, remarkIn, valueOf } from "../../src/functions/answer";
import { badInput, given, notApplicable } from "../../src/reduction/outcome";
import { refusal } from "./refusal";
import { say } from "../../src/reduction/message";

const items = [
  { label: "t50", value: 3.2, unit: "min" },
  { label: "cv", value: undefined, unit: "m2/yr", missing: badInput(say`cv needs the height`) },
];

test("the whole table ends with the remark, and a missing value is blank", () => {
  const table = [
    ["t50", 3.2, "min"],
    ["cv", "", "m2/yr"],
    ["remark", "ok", ""],
  ];
  for (const leftOut of [undefined, null, "", 0]) expect(answer(items, [], leftOut)).toEqual(table);
});

test("one item is an array of one cell", () => {
  expect(answer(items, [say`look`, say`again`], "REMARK")).toEqual([["look; again"]]);
  expect(answer(items, [], "t50")).toEqual([[3.2]]);
});

test('the remark of a value without remarks is "ok"', () => {
  expect(remarkIn("en", [])).toBe("ok");
  expect(remarkIn("en", [say`one`, say`two`])).toBe("one; two");
});

test("a missing item asked for alone says why; an unknown item gets the list of items", () => {
  expect(refusal(() => answer(items, [], "cv"))).toBe("#VALUE! cv needs the height");
  expect(refusal(() => answer(items, [], "d50"))).toBe('#VALUE! the item is "d50": use one of t50, cv, remark');
});

test("a refusal becomes the error that the cell shows", () => {
  expect(valueOf(given(4))).toBe(4);
  expect(refusal(() => valueOf(badInput(say`row 2 is negative`)))).toBe("#VALUE! row 2 is negative");
  expect(refusal(() => valueOf(notApplicable(say`no inflection`)))).toBe("#N/A no inflection");
});

test("a list is laid out like the range it came from", () => {
  expect(column([1, 2])).toEqual([[1], [2]]);
  expect(inShapeOf([[9], [9], [9]], [1, null, 3])).toEqual([[1], [""], [3]]);
  expect(inShapeOf([[9, 9, 9]], [1, null, 3])).toEqual([[1, "", 3]]);
  expect(inShapeOf(9, [1])).toEqual([[1]]);
});
