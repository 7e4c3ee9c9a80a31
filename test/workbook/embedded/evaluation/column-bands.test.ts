/** The bands of columns of a sheet hold together what the sheet holds, each cell and each look once. */
import "../engine-in-node";
import { helpers } from "@odoo/o-spreadsheet";
import { columnBands, type CellData } from "../../../../src/workbook/embedded/evaluation/column-bands";

const SHEET: CellData = {
  cells: { A1: "1", A2: "=A1", C1: "=A1+1", C2: "x", E5: "=C1", G1: "2" },
  styles: { "A1:G2": 1, E5: 2, "H1:J3": 3 },
  formats: { "B1:C9": 1 },
};

/** Each cell of some zones with its number. */
const cellsOf = (zones: Readonly<Record<string, unknown>>): string[] =>
  Object.entries(zones).flatMap(([address, of]) => {
    const { left, right, top, bottom } = helpers.toZone(address);
    return Array.from({ length: right - left + 1 }, (_, col) =>
      Array.from({ length: bottom - top + 1 }, (_, row) => `${helpers.toXC(left + col, top + row)} ${String(of)}`),
    ).flat();
  });

test.each([1, 11, 12, 30])("bands of %p values follow one another and miss nothing", (most) => {
  const bands = columnBands(SHEET, most);
  const columns = bands.map(({ cells }) => Object.keys(cells).map((address) => helpers.toCartesian(address).col));
  expect(columns.flat()).toEqual([...columns.flat()].sort((a, b) => a - b));
  expect(Object.fromEntries(bands.flatMap(({ cells }) => Object.entries(cells)))).toEqual(SHEET.cells);
  for (const look of ["styles", "formats"] as const)
    expect(bands.flatMap((band) => cellsOf(band[look])).sort()).toEqual(cellsOf(SHEET[look]).sort());
});

test("a band holds as many values as it may, and a column stays together; a formula takes as long as ten", () => {
  const addresses = (most: number) => columnBands(SHEET, most).map(({ cells }) => Object.keys(cells).join(" "));
  expect(addresses(1)).toEqual(["A1 A2", "C1 C2", "E5", "G1"]);
  expect(addresses(11)).toEqual(["A1 A2", "C1 C2", "E5 G1"]);
  expect(addresses(22)).toEqual(["A1 A2 C1 C2", "E5 G1"]);
});

test("cells that the engine has packed with their like stay together", () => {
  for (const cells of [
    { A1: "1", "C1:C2": "2", D1: "=A1" },
    { A1: "=B1", C1: { R: "+C1" }, D1: "1" },
  ])
    expect(columnBands({ ...SHEET, cells }, 1)).toEqual([{ ...SHEET, cells }]);
});
