/** Rules of entry that are added in one command equal those that the engine adds one by one. */
import "../engine-in-node";
import { helpers } from "@odoo/o-spreadsheet";
import fc from "../../../properties";
import { newWorkbook } from "../../../../src/workbook/embedded";
import { plainData, runBatch, type Command, type Model } from "../../../../src/workbook/embedded/engine";
import { addRules, type NewRule } from "../../../../src/workbook/embedded/typing/rules-at-once";

const SHEET = "sheet1";

const rules = fc
  .array(
    fc.record({
      ranges: fc.array(fc.tuple(fc.nat(5), fc.nat(3), fc.nat(9), fc.nat(4)), { minLength: 1, maxLength: 3 }),
      criterion: fc.constantFrom(
        { type: "isValueInList", values: ["wet", "dry", "wet"], displayStyle: "arrow" },
        { type: "isGreaterThan", values: ["0"] },
        { type: "isBetween", values: ["0", "100"] },
        { type: "isBoolean", values: [] },
      ),
      id: fc.constantFrom("a", "b", "c", "d"),
    }),
    { minLength: 1, maxLength: 6 },
  )
  .map((list): NewRule[] =>
    list.map(({ ranges, criterion, id }) => ({
      ranges: ranges.map(([left, across, top, down]) => ({
        _sheetId: SHEET,
        _zone: { left, right: left + across, top, bottom: top + down },
      })),
      rule: { id, criterion },
    })),
  );

const oneByOne = (list: readonly NewRule[]): Command[] =>
  list.map((one) => ({ type: "ADD_DATA_VALIDATION_RULE", sheetId: SHEET, ...one }));

const made = (commands: readonly Command[]): { model: Model; refused: string[] } => {
  const { model } = newWorkbook();
  return { model, refused: runBatch(model, commands) };
};

const withoutBoxes = (list: readonly NewRule[]): NewRule[] =>
  list.filter(({ rule }) => rule.criterion.type !== "isBoolean");

const rulesIn = (model: Model): any[] => (plainData(model) as any).sheets[0].dataValidationRules;

/** Every cell of some ranges; the engine joins ranges that touch. */
const cellsOf = (ranges: readonly string[]): string[] => {
  const cells = ranges
    .map(helpers.toZone)
    .flatMap(({ left, right, top, bottom }) =>
      Array.from({ length: right - left + 1 }, (_, col) =>
        Array.from({ length: bottom - top + 1 }, (_, row) => helpers.toXC(left + col, top + row)),
      ).flat(),
    );
  return [...new Set(cells)].sort();
};

const byCells = (model: Model) => rulesIn(model).map((rule) => ({ ...rule, ranges: cellsOf(rule.ranges) }));

test("the rules are the same, and a later rule takes its cells from the earlier ones", () => {
  fc.assert(
    fc.property(rules.map(withoutBoxes), (list) => {
      expect(byCells(made(addRules(SHEET, list)).model)).toEqual(byCells(made(oneByOne(list)).model));
    }),
    { numRuns: 200 },
  );
});

test("boxes to tick are centred, as the engine's own command does", () => {
  const box: NewRule = {
    ranges: [{ _sheetId: SHEET, _zone: { left: 1, right: 1, top: 2, bottom: 3 } }],
    rule: { id: "box", criterion: { type: "isBoolean", values: [] } },
  };
  expect((plainData(made(addRules(SHEET, [box])).model) as any).sheets[0].styles).toEqual(
    (plainData(made(oneByOne([box])).model) as any).sheets[0].styles,
  );
});

test("one undo takes all rules away, and one redo brings them back", () => {
  const bound = (id: string, top: number): NewRule => ({
    ranges: [{ _sheetId: SHEET, _zone: { left: 0, right: 0, top, bottom: top } }],
    rule: { id, criterion: { type: "isGreaterThan", values: ["0"] } },
  });
  const { model } = made(addRules(SHEET, [bound("a", 0), bound("b", 1)]));
  const added = rulesIn(model);
  expect(added).toHaveLength(2);
  model.dispatch("REQUEST_UNDO");
  expect(rulesIn(model)).toEqual([]);
  model.dispatch("REQUEST_REDO");
  expect(rulesIn(model)).toEqual(added);
});

test("a rule that the engine refuses refuses all of them", () => {
  const wrong: NewRule = {
    ranges: [{ _sheetId: SHEET, _zone: { left: 0, right: 0, top: 0, bottom: 0 } }],
    rule: { id: "wrong", criterion: { type: "isBetween", values: ["0"] } },
  };
  const right: NewRule = { ...wrong, rule: { id: "right", criterion: { type: "isGreaterThan", values: ["0"] } } };
  const { model, refused } = made(addRules(SHEET, [right, wrong]));
  expect(refused).toEqual(["CLAYLEDGER_ADD_RULES (InvalidNumberOfCriterionValues)"]);
  expect(rulesIn(model)).toEqual([]);
});

test("a cell is called wrong while its value breaks a rule, and not after the value or the rule is changed", () => {
  const first = { sheetId: SHEET, col: 0, row: 0 };
  const rule = (type: string): NewRule => ({
    ranges: [{ _sheetId: SHEET, _zone: { left: 0, right: 0, top: 0, bottom: 1 } }],
    rule: { id: "rule", criterion: { type, values: ["10"] } },
  });
  const { model } = made(addRules(SHEET, [rule("isGreaterThan")]));
  const isWrong = (): boolean => (model.getters as any).isDataValidationInvalid(first);
  const type = (content: string) => model.dispatch("UPDATE_CELL", { ...first, content });
  const seen = [isWrong()];
  for (const content of ["5", "20", "5", ""]) {
    type(content);
    seen.push(isWrong());
  }
  type("5");
  runBatch(model, addRules(SHEET, [rule("isLessThan")]));
  seen.push(isWrong());
  expect(seen).toEqual([false, true, false, true, false, false]);
});
