import {
  asTyped,
  digits,
  distinct,
  english,
  fixed,
  joined,
  listed,
  namedIn,
  replaced,
  say,
  templateOf,
  verbatim,
  without,
} from "../../src/reduction/message";

test("a message in English has its values in their places", () => {
  expect(english(say`row ${2} of ${verbatim("BH1")} is ${digits(0.0123456, 3)}, not ${fixed(1.5, 2)}`)).toBe(
    "row 2 of BH1 is 0.0123, not 1.50",
  );
  expect(english(say`rows ${listed([2, 5, 7])}; ${listed([say`a`, say`b`], "; ")}`)).toBe("rows 2, 5, 7; a; b");
  expect(english(joined([say`one`, say`two`]))).toBe("one; two");
  expect(english(asTyped("blue clay"))).toBe("blue clay");
  expect(english(say``)).toBe("");
});

test("the template of a message numbers its places", () => {
  expect(templateOf(say`row ${2} is ${3}`)).toBe("row {0} is {1}");
  expect(templateOf(say`no values`)).toBe("no values");
});

test("digits are significant and without trailing zeros, decimals are fixed", () => {
  expect([digits(1200, 2), digits(0.5, 4), digits(99.996, 4)].map(english)).toEqual(["1200", "0.5", "100"]);
  expect([fixed(2, 1), fixed(-0.256, 2)].map(english)).toEqual(["2.0", "-0.26"]);
});

test("of messages with equal text the first is kept, and those of another list can be left out", () => {
  const list = [say`row ${1}`, say`row ${2}`, say`row ${1}`];
  expect(distinct(list)).toEqual([say`row ${1}`, say`row ${2}`]);
  expect(without(list, [say`row ${verbatim("1")}`])).toEqual([say`row ${2}`]);
  expect(without(list, [])).toEqual(list);
});

test("a message names its cells and loads, each once and however deep they stand", () => {
  const cell = { verbatim: "Height", cell: "initial_height" };
  const inner = { ...say`load 3 at ${cell}`, load: 3 };
  const list = listed([inner, { ...say`load 5`, load: 5 }, { verbatim: "Ring", cell: "ring_mass" }]);
  expect(namedIn(say`${cell}: ${inner}, ${list}, ${2}, ${digits(1, 2)}, ${verbatim("kPa")}`)).toEqual({
    cells: ["initial_height", "ring_mass"],
    loads: [3, 5],
  });
  expect(namedIn({ ...say`load 0`, load: 0 })).toEqual({ cells: [], loads: [0] });
});

test("a part of a message is replaced wherever it stands, also in its cause; an equal text is another part", () => {
  const advice = say`read on`;
  const cause = say`too short; ${advice}`;
  const message = { ...say`row ${2}: ${cause}, ${say`read on`}`, cause, load: 3 };
  const other = replaced(message, advice, say`pick d0`);
  expect(english(other)).toBe("row 2: too short; pick d0, read on");
  expect([other.load, english(other.cause!)]).toEqual([3, "too short; pick d0"]);
  expect(replaced(other, advice, say`none`)).toBe(other);
  expect(english(replaced(replaced(message, say`none`, say`one`), advice, say`pick d0`))).toBe(english(other));
});
