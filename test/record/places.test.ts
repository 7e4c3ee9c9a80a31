import { loadsThatShareTimes } from "../../src/record/places";
import type { SheetName } from "../../src/workbook/port";

const times = (load: number, row: number, col: number, rows = 10): SheetName => ({
  name: `times_0${load}`,
  scope: "sheet",
  place: { row, col, rows, cols: 1 },
});

test("loads share times if the cells of their times overlap, wholly or in part", () => {
  expect(loadsThatShareTimes([times(1, 4, 0), times(2, 4, 2), times(3, 4, 0)])).toEqual([1, 3]);
  expect(loadsThatShareTimes([times(1, 4, 0), times(2, 13, 0), times(3, 14, 0, 2)])).toEqual([1, 2, 3]);
  expect(loadsThatShareTimes([times(1, 4, 0), times(2, 14, 0)])).toEqual([]);
  expect(loadsThatShareTimes([{ ...times(1, 4, 0), place: "lost" }, times(2, 4, 0)])).toEqual([]);
});
