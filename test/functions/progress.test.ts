import { LOG_TIME } from "../../src/functions/increment";
import { PROGRESS } from "../../src/functions/progress";
import { EXAMPLE_SHEET } from "../../src/help/example-sheet";
import { refusal } from "./refusal";

const cells = (column: number, count: number, blank: unknown = null) =>
  Array.from({ length: count }, (_, i) => [EXAMPLE_SHEET[column]?.cells[i] ?? blank]);
const times = (count: number) => cells(0, count);
const readings = (count: number) => cells(1, count);
/** Rows of the example sheet to 60 min, a little past t100, and to 24 h. */
const [SO_FAR, WHOLE] = [11, 15];
const ITEMS = ["U", "t50", "t90", "t100", "t100_low", "t100_high", "d100", "remaining", "verdict", "remark"];
const one = (item: unknown, count = SO_FAR, rule?: unknown, multiple?: unknown) =>
  PROGRESS(times(count), readings(count), item, rule, multiple)[0]?.[0];

test("the table holds every item, and an item asked for alone has the same value", () => {
  const table = PROGRESS(times(SO_FAR), readings(SO_FAR));
  expect(table.map(([label]) => label)).toEqual(ITEMS);
  expect(table.map(([, , unit]) => unit)).toEqual(["", "min", "min", "min", "min", "min", "", "min", "", ""]);
  for (const [label, value] of table) expect(one(label)).toBe(value);
});

test("a little past t100 the verdict cannot be told, at 24 h it is over", () => {
  expect([one("verdict"), one("verdict", WHOLE)]).toEqual(["cannot be told", "over"]);
  expect(one("U")).toBeGreaterThan(0.9);
  expect(one("t100_low")).toBeLessThan(one("t100"));
  expect(one("remaining", WHOLE)).toBe(0);
  expect(one("t100", WHOLE)).toBe(LOG_TIME(times(WHOLE), readings(WHOLE), null, "t100")[0]?.[0]);
});

test("blank rows that are still to be read change nothing, whatever the host passes for a blank", () => {
  const table = PROGRESS(times(SO_FAR), readings(SO_FAR));
  for (const blank of [0, null, ""]) {
    const rest = Array.from({ length: 4 }, () => [blank]);
    expect(PROGRESS([...times(SO_FAR), ...rest], [...readings(SO_FAR), ...rest])).toEqual(table);
    // The sheet already holds the times; only the readings are blank.
    expect(PROGRESS(times(WHOLE), [...readings(SO_FAR), ...rest])).toEqual(table);
    expect(one("verdict", SO_FAR, blank, blank)).toBe("cannot be told");
  }
});

test("rules are accepted by their words, in any case", () => {
  expect(one("remaining", SO_FAR, "Fixed", 1440)).toBe(1380);
  expect(one("verdict", WHOLE, "multiple", 10)).toBe("over");
  expect(one("verdict", WHOLE, "Root Time")).toBe("over");
  expect(one("t100", SO_FAR, "multiple", 3)).toBe(one("t100"));
});

test("a fixed time is answered before half of primary; the other items say why they have no value", () => {
  expect(one("verdict", 4, "fixed", 1440)).toBe("not yet");
  expect(refusal(() => one("t100", 4, "fixed", 1440))).toMatch(/^#N\/A the end of primary needs 6 readings/);
});

test("refusals", () => {
  expect(refusal(() => one("U", 4))).toMatch(/^#N\/A the end of primary needs 6 readings .* go on reading$/);
  expect(refusal(() => one("U", 7))).toMatch(/^#N\/A the end of primary cannot be foretold before half of it is over/);
  expect(refusal(() => one("t100_high", 8))).toBe("#N/A the readings give no such limit yet: go on reading");
  for (const blank of [undefined, null, "", 0])
    expect(refusal(() => one("verdict", WHOLE, "multiple", blank))).toBe(
      '#VALUE! the rule "multiple" needs the multiple of t100 after which the load may end: enter it as multiple',
    );
  expect(refusal(() => one("verdict", WHOLE, "fixed"))).toMatch(/^#VALUE! the rule "fixed" needs the fixed time/);
  expect(refusal(() => one("verdict", WHOLE, "fixed", -5))).toMatch(
    /^#VALUE! the fixed time is -5: it cannot be negative/,
  );
  expect(refusal(() => one("verdict", WHOLE, "multiple", 0.5))).toMatch(
    /^#VALUE! the multiple of t100 is 0.5: enter 1/,
  );
  expect(refusal(() => one("verdict", WHOLE, "24 h"))).toMatch(
    /^#VALUE! the rule is "24 h": use one of log time, root/,
  );
  expect(refusal(() => one("t95", WHOLE))).toMatch(/^#VALUE! the item is "t95": use one of U, t50/);
  expect(refusal(() => PROGRESS(times(9), readings(8)))).toMatch(/^#VALUE! the times have 9 cells/);
});
