/** A merge is hidden if all its rows are, or all its columns; rows of a folded group are not hidden ones. */
import "../engine-in-node";
import { newWorkbook } from "../../../../src/workbook/embedded";
import fc from "../../../properties";

const SHEET = "sheet1";
const spanOf = (most: number) => fc.tuple(fc.nat(most), fc.nat(3)).map(([from, more]) => [from, from + more] as const);

test("as many random merges among hidden rows and columns say", () => {
  const cases = fc.record({
    rows: spanOf(9),
    columns: spanOf(9),
    hiddenRows: fc.uniqueArray(fc.nat(12), { minLength: 1 }),
    hiddenColumns: fc.uniqueArray(fc.nat(12), { minLength: 1 }),
  });
  const seen = new Set<boolean>();
  fc.assert(
    fc.property(cases, ({ rows: [top, bottom], columns: [left, right], hiddenRows, hiddenColumns }) => {
      const { model } = newWorkbook();
      const hide = (dimension: "ROW" | "COL", elements: number[]) =>
        model.dispatch("HIDE_COLUMNS_ROWS", { sheetId: SHEET, dimension, elements });
      hide("ROW", hiddenRows);
      hide("COL", hiddenColumns);
      const within = (from: number, to: number, hidden: readonly number[]): boolean =>
        Array.from({ length: to - from + 1 }, (_, at) => from + at).every((one) => hidden.includes(one));
      const expected = within(top, bottom, hiddenRows) || within(left, right, hiddenColumns);
      seen.add(expected);
      expect(model.getters.isMergeHidden(SHEET, { id: 1, top, bottom, left, right })).toBe(expected);
    }),
    { numRuns: 150 },
  );
  expect(seen).toEqual(new Set([true, false]));
});

test("a merge in a folded group is not hidden, as in the engine", () => {
  const { model } = newWorkbook();
  model.dispatch("GROUP_HEADERS", { sheetId: SHEET, dimension: "ROW", start: 2, end: 5 });
  model.dispatch("FOLD_HEADER_GROUP", { sheetId: SHEET, dimension: "ROW", start: 2, end: 5 });
  expect(model.getters.isRowHiddenByUser(SHEET, 2)).toBe(true);
  expect(model.getters.isMergeHidden(SHEET, { id: 1, top: 2, bottom: 5, left: 0, right: 1 })).toBe(false);
});
