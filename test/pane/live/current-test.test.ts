import { chosen, currentTest, followed } from "../../../src/pane/live/current-test";
import { DATA_SHEET_NAME } from "../../../src/specification/readings";
import type { FoundSheet } from "../../../src/workbook/port";

/** Sheets as letters, "*B": capitals are data sheets, the one after a star is in front. */
const sheets = (drawn: string): FoundSheet[] =>
  [...drawn.matchAll(/(\*?)(\w)/g)].map(([, star, letter = ""]) => ({
    id: `id of ${letter}`,
    sheet: letter,
    isActive: star !== "",
    has: letter === letter.toUpperCase() ? [DATA_SHEET_NAME] : [],
  }));
const of = (letter: string, isPinned = false) => ({ id: `id of ${letter}`, isPinned });
const NONE = { isPinned: false };

test.each([
  ["the data sheet in front", NONE, "aB*C", of("C")],
  ["the first where none is in front", NONE, "*aBC", of("B")],
  ["none where there is none", NONE, "*ab", NONE],
  ["another one that comes to the front", of("B"), "aB*C", of("C")],
  ["the one before while no data sheet is in front", of("C"), "*aBC", of("C")],
  ["the one before while a chart sheet is in front", of("C"), "aBC", of("C")],
  ["the pinned one while another is in front", of("B", true), "aB*C", of("B", true)],
  ["the one in front when the pinned one has gone, without a pin", of("D", true), "aB*C", of("C")],
  ["the one in front when the pinned one is no data sheet any more", of("D", true), "aB*Cd", of("C")],
  ["the first when the one before has gone", of("D"), "*aBC", of("B")],
])("the current test is %s", (_, before, drawn, after) => {
  expect(followed(before, sheets(drawn))).toEqual(after);
});

test("a sheet that a person chooses is pinned, unless it is the one in front", () => {
  expect(chosen("B", of("C"), sheets("aB*C"))).toEqual(of("B", true));
  expect(chosen("C", of("B", true), sheets("aB*C"))).toEqual(of("C"));
  expect(chosen("a", of("B"), sheets("a*BC"))).toEqual(of("B"));
});

test("the pane says which other sheet is in front, and whether it is a data sheet", () => {
  expect(currentTest(of("B", true), sheets("aB*C"))).toEqual({
    ...of("B", true),
    tests: ["B", "C"],
    sheet: "B",
    other: { sheet: "C", isTest: true },
  });
  expect(currentTest(of("B"), sheets("*aB")).other).toEqual({ sheet: "a", isTest: false });
  expect(currentTest(of("B"), sheets("a*B")).other).toBeUndefined();
  expect(currentTest(of("B"), sheets("aB")).other).toBeUndefined();
  expect(currentTest(NONE, sheets("*a"))).toEqual({ isPinned: false, tests: [] });
});
