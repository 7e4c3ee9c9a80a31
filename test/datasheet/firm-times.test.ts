import { cellsOfLines, looksLikeTimes } from "../../src/datasheet";

test.each([
  ["a schedule that begins at zero", [0, 0.1, 0.25, 1, 1440], true],
  ["blank cells and texts between the times", ["min", 0.5, "", 1, 2], true],
  ["the same time twice", [1, 1, 8], true],
  ["a form that has no times yet", ["", "", ""], true],
  ["two numbers, which tell nothing", [700, 500], true],
  ["readings of a dial that rises", [500, 520, 610], false],
  ["readings of a dial that falls", [900, 880, 700], false],
  ["days with the time of day", [45000.1, 45000.2, 45001.1], false],
  ["a time mistyped between others", [1, 2, 40, 8, 15], false],
] as const)("%s", (_, cells, isTimes) => expect(looksLikeTimes(cells)).toBe(isTimes));

test("the cells of lines are in the order of the blocks, down columns and across rows", () => {
  const boxes = [
    { row: 3, col: 0, rows: 2, cols: 1 },
    { row: 3, col: 5, rows: 2, cols: 2 },
  ];
  const values = [
    [1, 2, 3],
    [4, 5, 6],
  ];
  expect(cellsOfLines(boxes, values, "columns")).toEqual([
    [1, 4],
    [2, 5],
    [3, 6],
  ]);
  expect(cellsOfLines(boxes, values, "rows")).toEqual([[1], [4], [2, 3], [5, 6]]);
});
