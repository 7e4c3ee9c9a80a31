/** The Tab key on a protected sheet goes over the cells that may be written. */
import "../engine-in-node";
import { nextOpen, type Cell } from "../../../../src/workbook/embedded/typing/next-open";
import type { Zone } from "../../../../src/workbook/embedded/zones";

/** Two framed cells of three and two columns in the first row, a table of two columns and three rows below. */
const OPEN: readonly Zone[] = [
  { left: 7, right: 8, top: 5, bottom: 5 },
  { left: 2, right: 4, top: 5, bottom: 5 },
  { left: 0, right: 1, top: 7, bottom: 9 },
];
/** The cells of the first row are merged. */
const isCovered = ({ col, row }: Cell): boolean => row === 5 && [3, 4, 8].includes(col);

const IN_ORDER: readonly Cell[] = [
  { col: 2, row: 5 },
  { col: 7, row: 5 },
  ...[7, 8, 9].flatMap((row) => [
    { col: 0, row },
    { col: 1, row },
  ]),
];

test("it goes along the rows, passes over the covered cells, and begins again after the last cell", () => {
  IN_ORDER.forEach((cell, index) => {
    const after = IN_ORDER[(index + 1) % IN_ORDER.length];
    expect(nextOpen(OPEN, cell, "right", isCovered)).toEqual(after);
    expect(nextOpen(OPEN, after!, "left", isCovered)).toEqual(cell);
  });
});

test("from a cell that may not be written it goes to the next that may", () => {
  expect(nextOpen(OPEN, { col: 5, row: 5 }, "right", isCovered)).toEqual({ col: 7, row: 5 });
  expect(nextOpen(OPEN, { col: 5, row: 6 }, "left", isCovered)).toEqual({ col: 7, row: 5 });
});

test("without an open cell it goes nowhere", () => {
  expect(nextOpen([], { col: 0, row: 0 }, "right", () => false)).toBeUndefined();
  expect(nextOpen(OPEN, { col: 0, row: 0 }, "right", () => true)).toBeUndefined();
});
