/** The rule by which a load may end: that of the screen, of the sheet's choice, or of the load duration. */
import { ruleNow } from "../../../../src/pane/screens/bench/rules";
import { readRecord } from "../../../../src/record/record";
import type { CellValue } from "../../../../src/workbook/port";

const recordOf = (cells: Record<string, CellValue>) =>
  readRecord(Object.fromEntries(Object.entries(cells).map(([name, value]) => [name, [[value]]])));
const ruleOf = (cells: Record<string, CellValue>) => ruleNow(recordOf(cells), { multiple: "" });

test("without a choice the rule follows the load duration, as before", () => {
  expect(ruleOf({ test_method: "24 h loads" })).toEqual({ rule: "fixed", multiple: 1440 });
  expect(ruleOf({})).toEqual({ rule: "log time", multiple: 1 });
  expect(ruleOf({ time_method: "root time" })).toEqual({ rule: "root time", multiple: 1 });
});

test.each([
  ["fixed time", 720, { rule: "fixed", multiple: 720 }],
  ["fixed time", "", { rule: "fixed", multiple: 1440 }],
  ["t100 by log time", "", { rule: "log time", multiple: 1 }],
  ["t100 by root time", 3, { rule: "root time", multiple: 1 }],
  ["multiple of t100", 3, { rule: "multiple", multiple: 3 }],
  ["multiple of t100", "", { rule: "multiple", multiple: undefined }],
])("the sheet's choice %p with %p goes before the load duration", (choice, number, rule) =>
  expect(ruleOf({ test_method: "24 h loads", load_end_rule: choice, load_end_number: number })).toEqual(rule),
);

test("the choice on the screen goes before that of the sheet", () =>
  expect(ruleNow(recordOf({ load_end_rule: "fixed time" }), { rule: "multiple", multiple: "4" })).toEqual({
    rule: "multiple",
    multiple: 4,
  }));
