/**
 * A merge is hidden if all its rows are, or all its columns; rows of a folded group are not hidden ones. A zone grows by the merges that
 * it touches.
 */
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

const within = (most: number) =>
  fc
    .tuple(spanOf(most), spanOf(most))
    .map(([[left, right], [top, bottom]]) => ({ left, right: Math.min(right, 20), top, bottom }));

test("a zone grows by every merge that it touches, and by those that it then touches", () => {
  let grown = 0;
  fc.assert(
    fc.property(fc.array(within(12), { maxLength: 8 }), within(12), (zones, asked) => {
      const { model } = newWorkbook();
      // The engine refuses a merge of one cell, and takes merges away that a new one covers.
      for (const zone of zones) model.dispatch("ADD_MERGE", { sheetId: SHEET, target: [zone], force: true });
      const merges = model.getters.getMerges(SHEET);
      const touched = () =>
        merges.filter(
          (one) =>
            one.left <= expected.right &&
            expected.left <= one.right &&
            one.top <= expected.bottom &&
            expected.top <= one.bottom,
        );
      let expected = { ...asked };
      // As many rounds as merges are enough.
      for (let round = 0; round < merges.length; round++) {
        const all = [expected, ...touched()];
        expected = {
          left: Math.min(...all.map(({ left }) => left)),
          right: Math.max(...all.map(({ right }) => right)),
          top: Math.min(...all.map(({ top }) => top)),
          bottom: Math.max(...all.map(({ bottom }) => bottom)),
        };
      }
      if (JSON.stringify(expected) !== JSON.stringify(asked)) grown++;
      expect(model.getters.expandZone(SHEET, asked)).toEqual(expected);
    }),
    { numRuns: 150 },
  );
  expect(grown).toBeGreaterThan(20);
});

test("a zone grows by a merge that it touches only with a later one", () => {
  const { model } = newWorkbook();
  for (const zone of [
    { left: 2, right: 4, top: 2, bottom: 2 },
    { left: 0, right: 2, top: 0, bottom: 0 },
  ])
    model.dispatch("ADD_MERGE", { sheetId: SHEET, target: [zone] });
  expect(model.getters.expandZone(SHEET, { left: 0, right: 0, top: 0, bottom: 2 })).toEqual({
    left: 0,
    right: 4,
    top: 0,
    bottom: 2,
  });
});
