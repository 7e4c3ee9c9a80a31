import { rowBands } from "../../../src/workbook/look/row-bands";

test("neighbouring rows of the same height form one band; a gap or another height begins the next band", () =>
  expect(rowBands({ 0: 18, 1: 12, 2: 12, 5: 12, 6: 6 })).toEqual([
    { first: 0, rows: 1, points: 18 },
    { first: 1, rows: 2, points: 12 },
    { first: 5, rows: 1, points: 12 },
    { first: 6, rows: 1, points: 6 },
  ]));
