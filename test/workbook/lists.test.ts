/** A list of cells is counted along its axis, down a column or across a row. */
import {
  addressInList,
  asColumn,
  cellOfList,
  indexInList,
  isIn,
  lengthOf,
  liesAcross,
  partOfList,
} from "../../src/workbook/lists";

const DOWN = { row: 3, col: 1, rows: 4, cols: 1 };
const ACROSS = { row: 3, col: 1, rows: 1, cols: 4 };
const ONE = { row: 3, col: 1, rows: 1, cols: 1 };

test("a list of one row lies across; one cell and a column do not", () => {
  expect([DOWN, ACROSS, ONE].map(liesAcross)).toEqual([false, true, false]);
  expect([DOWN, ACROSS, ONE].map(lengthOf)).toEqual([4, 4, 1]);
});

test("cells, parts and places follow the axis", () => {
  expect(cellOfList(DOWN, 2)).toEqual({ row: 5, col: 1 });
  expect(cellOfList(ACROSS, 2)).toEqual({ row: 3, col: 3 });
  expect([DOWN, ACROSS].map((list) => addressInList(list, 2))).toEqual(["B6", "D4"]);
  expect(partOfList(ACROSS, 1, 2)).toEqual({ row: 3, col: 2, rows: 1, cols: 2 });
  expect(partOfList(DOWN, 1, 2)).toEqual({ row: 4, col: 1, rows: 2, cols: 1 });
  for (const list of [DOWN, ACROSS]) expect(indexInList(list, cellOfList(list, 3))).toBe(3);
});

test("a cell is in a box from its first to its last row and column", () => {
  const box = { row: 3, col: 1, rows: 2, cols: 2 };
  const cells = [2, 3, 4, 5].flatMap((row) => [0, 1, 2, 3].map((col) => ({ row, col })));
  expect(cells.filter((cell) => isIn(cell, box))).toEqual([
    { row: 3, col: 1 },
    { row: 3, col: 2 },
    { row: 4, col: 1 },
    { row: 4, col: 2 },
  ]);
});

test("the values of a row become a column; a column, a block and one cell stay as they are", () => {
  expect(asColumn([[1, 2, 3]])).toEqual([[1], [2], [3]]);
  for (const values of [
    [[1], [2]],
    [[1]],
    [
      [1, 2],
      [3, 4],
    ],
    [],
  ])
    expect(asColumn(values)).toBe(values);
});
