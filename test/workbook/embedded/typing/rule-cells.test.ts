/** The rule of a cell is the first of the sheet's rules with the cell, whatever changed the sheet before. */
import "../engine-in-node";
import fc from "../../../properties";
import { newWorkbook } from "../../../../src/workbook/embedded";
import { runBatch, type Command, type Dispatching, type Model } from "../../../../src/workbook/embedded/engine";
import { addRules, type NewRule } from "../../../../src/workbook/embedded/typing/rules-at-once";

const SHEETS = ["sheet1", "sheet2", "copy"];

/** A zone of at most 6 x 6 cells. */
const zone = fc
  .tuple(fc.nat(4), fc.nat(2), fc.nat(6), fc.nat(3))
  .map(([left, across, top, down]) => ({ left, right: left + across, top, bottom: top + down }));
const sheetId = fc.constantFrom(...SHEETS);
const rule = fc.record({
  id: fc.constantFrom("a", "b", "c", "d"),
  criterion: fc.constantFrom(
    { type: "isValueInList", values: ["wet", "dry"], displayStyle: "arrow" },
    { type: "isGreaterThan", values: ["0"] },
    { type: "isBoolean", values: [] },
  ),
});
const newRule = fc.record({ sheetId, zones: fc.array(zone, { minLength: 1, maxLength: 3 }), rule });

const added = (sheet: string, zones: readonly any[], made: NewRule["rule"]): Command[] =>
  addRules(sheet, [{ ranges: zones.map((_zone) => ({ _sheetId: sheet, _zone })), rule: made }]);

const dimension = fc.constantFrom("ROW", "COL");
const step = fc.oneof(
  { weight: 4, arbitrary: newRule.map(({ sheetId, zones, rule }) => added(sheetId, zones, rule)) },
  fc
    .record({ sheetId, dimension, base: fc.nat(4), quantity: fc.integer({ min: 1, max: 2 }) })
    .map((given): Command[] => [{ type: "ADD_COLUMNS_ROWS", position: "before", ...given, sheetName: given.sheetId }]),
  fc
    .record({ sheetId, dimension, elements: fc.uniqueArray(fc.nat(4), { minLength: 1, maxLength: 2 }) })
    .map((given): Command[] => [{ type: "REMOVE_COLUMNS_ROWS", ...given, sheetName: given.sheetId }]),
  fc.record({ sheetId, target: fc.tuple(zone) }).map((given): Command[] => [{ type: "DELETE_CONTENT", ...given }]),
  fc
    .record({ sheetId, id: rule.map(({ id }) => id) })
    .map((given): Command[] => [{ type: "REMOVE_DATA_VALIDATION_RULE", ...given }]),
  fc
    .record({ sheetId, target: fc.tuple(zone), col: fc.nat(5), row: fc.nat(5) })
    .map((given): Command[] => [
      { type: "MOVE_RANGES", targetSheetId: given.sheetId, sheetName: given.sheetId, ...given },
    ]),
  fc.constantFrom<Command[]>(
    [{ type: "DELETE_SHEET", sheetId: "sheet2", sheetName: "sheet2" }],
    [{ type: "DUPLICATE_SHEET", sheetId: "sheet1", sheetIdTo: "copy", sheetNameTo: "copy" }],
  ),
  { weight: 4, arbitrary: fc.constantFrom<"undo" | "redo">("undo", "redo") },
);

const inSheets = (model: Model): string[] => SHEETS.filter((sheet) => model.getters.tryGetSheet(sheet));

/** The rule of each cell that is asked about, by its number among the rules of the sheet. */
const asked = (model: Model): readonly (readonly [number, number])[] =>
  inSheets(model).flatMap((sheet) => {
    const rules = model.getters.getDataValidationRules(sheet);
    return Array.from({ length: 14 * 12 }, (_, at) => {
      const [row, col] = [Math.floor(at / 12), at % 12];
      const found = model.getters.getValidationRuleForCell({ sheetId: sheet, row, col });
      const expected = rules.findIndex(({ ranges }) =>
        ranges.some(({ zone }) => zone.left <= col && col <= zone.right && zone.top <= row && row <= zone.bottom),
      );
      return [found === undefined ? -1 : rules.indexOf(found), expected] as const;
    });
  });

test("after added and removed rules, rows, columns and sheets, undo and redo", () => {
  let withRule = 0;
  fc.assert(
    fc.property(fc.array(step, { minLength: 4, maxLength: 14 }), (steps) => {
      const { model } = newWorkbook();
      runBatch(model, [{ type: "CREATE_SHEET", sheetId: "sheet2", name: "sheet2", position: 1 }]);
      for (const one of steps) {
        if (one === "undo" || one === "redo")
          (model as unknown as Dispatching).dispatch(one === "undo" ? "REQUEST_UNDO" : "REQUEST_REDO");
        else runBatch(model, one);
        const found = asked(model);
        expect(found.map(([rule]) => rule)).toEqual(found.map(([, expected]) => expected));
        withRule += found.filter(([, expected]) => expected >= 0).length;
      }
    }),
    { numRuns: 100 },
  );
  expect(withRule).toBeGreaterThan(1000);
});
