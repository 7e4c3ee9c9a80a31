/** Printed pages as areas and breaks, and the scale at which they fit the paper. */
import fc from "../../properties";
import { pagesOf, printingOf, scaleOf } from "../../../src/workbook/look/pages";
import type { Box } from "../../../src/workbook/port";

const box = (row: number, col: number, rows: number, cols: number): Box => ({ row, col, rows, cols });

test("pages below one another are one area with row breaks, pages side by side one area with column breaks", () => {
  const pages = [box(0, 0, 40, 16), box(40, 0, 30, 16), box(40, 16, 30, 16), box(40, 32, 30, 16), box(70, 0, 9, 16)];
  expect(printingOf(pages)).toEqual({
    areas: [box(0, 0, 70, 16), box(40, 16, 30, 32), box(70, 0, 9, 16)],
    rowBreaks: [40],
    colBreaks: [32],
  });
});

test("if a break would cut another page, each page is an area of its own", () => {
  const pages = [box(0, 0, 10, 4), box(10, 0, 10, 4), box(5, 8, 10, 4)];
  expect(printingOf(pages)).toEqual({ areas: pages, rowBreaks: [], colBreaks: [] });
});

test("any pages are read back in their order", () => {
  const some = fc.array(
    fc.record({
      row: fc.nat(4),
      col: fc.nat(4),
      rows: fc.integer({ min: 1, max: 3 }),
      cols: fc.integer({ min: 1, max: 3 }),
    }),
    { maxLength: 6 },
  );
  fc.assert(
    fc.property(some, (pages) => {
      expect(pagesOf(printingOf(pages))).toEqual(pages);
    }),
  );
});

// A4 is 210 by 297 mm, 595.3 by 841.9 points (ISO 216); 0.4 inches are left free at each side, and 2 % for fonts and
// printers.
test("the widest page decides the scale, and a page slightly too high makes it smaller", () => {
  expect(scaleOf([{ width: 500, height: 100 }], "A4", false)).toBe(100);
  expect(
    scaleOf(
      [
        { width: 1000, height: 100 },
        { width: 500, height: 100 },
      ],
      "A4",
      true,
    ),
  ).toBe(76);
  expect(scaleOf([{ width: 1000, height: 740 }], "A4", true)).toBe(68);
});

test("a page of several sheets of paper continues on them: it does not shrink", () => {
  expect(scaleOf([{ width: 500, height: 9000 }], "A4", false)).toBe(100);
});
