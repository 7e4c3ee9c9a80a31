/**
 * A range of one cell keeps what is fixed at both ends, as Excel does: "Switch between relative, absolute, and mixed references" on
 * support.microsoft.com says which part of a reference follows a copy. That Excel keeps "A$1:A1" as typed is common practice, no source.
 */
import "../engine-in-node";
import ExcelJS from "exceljs";
import fc from "../../../properties";
import { Model } from "../../../../src/workbook/embedded/engine";
import { newWorkbook } from "../../../../src/workbook/embedded/workbook";
import { openXlsx } from "../../../../src/workbook/embedded/xlsx/open";
import { saveXlsx } from "../../../../src/workbook/embedded/xlsx/saving/save";

const ROWS = 12;

function sheetWith(cells: Readonly<Record<string, string>>) {
  const model = new Model({ sheets: [{ id: "s", name: "S", colNumber: ROWS, rowNumber: ROWS, cells }] } as object);
  const place = (xc: string) => ({ sheetId: "s", col: xc.charCodeAt(0) - 65, row: Number(xc.slice(1)) - 1 });
  const zoneOf = (from: string, to = from) => ({
    left: place(from).col,
    right: place(to).col,
    top: place(from).row,
    bottom: place(to).row,
  });
  return {
    model,
    text: (xc: string) => model.getters.getCellText(place(xc), { showFormula: true } as never),
    value: (xc: string) => model.getters.getEvaluatedCell(place(xc)).value,
    type: (xc: string, content: string) => void model.dispatch("UPDATE_CELL", { ...place(xc), content } as never),
    copy(from: string, to: string, last = to) {
      model.selection.selectZone({ cell: place(from), zone: zoneOf(from) } as never);
      model.dispatch("COPY");
      model.dispatch("PASTE", { target: [zoneOf(to, last)] } as never);
    },
  };
}

test("a running sum that is copied down sums one row more in each row", () => {
  const { copy, text, value, type } = sheetWith({ A1: "1", A2: "2", A3: "4", A4: "8" });
  type("B1", "=SUM(A$1:A1)");
  expect(text("B1")).toBe("=SUM(A$1:A1)");
  copy("B1", "B2", "B4");
  expect(["B1", "B2", "B3", "B4"].map(value)).toEqual([1, 3, 7, 15]);
  expect(text("B4")).toBe("=SUM(A$1:A4)");
});

test("it sums one row more also where it was filled with the grip, was copied to the side or up before, or lost a row", () => {
  const { copy, model, text } = sheetWith({ B1: "=SUM(A$1:A1)", D2: "=SUM(A$1:A2)" });
  copy("B1", "C1");
  copy("C1", "C3");
  expect(text("C3")).toBe("=SUM(B$1:B3)");
  copy("D2", "D1");
  copy("D1", "D3");
  expect(text("D3")).toBe("=SUM(A$1:A3)");
  model.selection.selectZone({ cell: { col: 1, row: 0 }, zone: { left: 1, right: 1, top: 0, bottom: 0 } } as never);
  model.dispatch("AUTOFILL_SELECT", { col: 1, row: 3 } as never);
  model.dispatch("AUTOFILL");
  expect(text("B4")).toBe("=SUM(A$1:A4)");
  model.dispatch("REMOVE_COLUMNS_ROWS", { dimension: "ROW", elements: [1], sheetId: "s", sheetName: "S" } as never);
  expect(text("B3")).toBe("=SUM(A$1:A3)");
});

test("every reference to one cell, on its own sheet or another, has its text after it was read and after it was copied back and forth", () => {
  const fixed = fc.constantFrom("", "$");
  fc.assert(
    fc.property(fixed, fixed, fixed, fixed, fc.constantFrom("", "S!"), (column, row, lastColumn, lastRow, prefix) => {
      fc.pre(column !== lastColumn || row !== lastRow);
      const written = `=SUM(${prefix}${column}C${row}4:${lastColumn}C${lastRow}4)`;
      const { copy, text } = sheetWith({ F6: written });
      expect(text("F6")).toBe(written);
      copy("F6", "G7");
      const [toColumn, toRow] = [column ? "C" : "D", row ? 4 : 5];
      const [toLastColumn, toLastRow] = [lastColumn ? "C" : "D", lastRow ? 4 : 5];
      // Where a copy turns the corners round, the engine writes the upper left one first, and so does Excel.
      fc.pre(toColumn <= toLastColumn && toRow <= toLastRow);
      const [first, last] = [
        `${column}${toColumn}${row}${toRow}`,
        `${lastColumn}${toLastColumn}${lastRow}${toLastRow}`,
      ];
      expect(text("G7")).toBe(`=SUM(${prefix}${first}:${last})`);
      copy("G7", "H8");
      copy("H8", "F6");
      expect(text("F6")).toBe(written);
    }),
  );
});

test("a file keeps the formula, and a new workbook that is opened from it too", async () => {
  const made = new ExcelJS.Workbook();
  const sheet = made.addWorksheet("S");
  sheet.getCell("A1").value = 3;
  sheet.getCell("B1").value = { formula: "SUM(A$1:A1)", result: 3, date1904: false };
  sheet.getCell("B2").value = { formula: "SUM(S!$A1:A1)", result: 3, date1904: false };
  const { workbook } = openXlsx(new Uint8Array(await made.xlsx.writeBuffer()));
  const saved = new ExcelJS.Workbook();
  await saved.xlsx.load((await saveXlsx(workbook)).buffer as never);
  const formula = (cell: string) => saved.getWorksheet("S")?.getCell(cell).formula;
  expect([formula("B1"), formula("B2")]).toEqual(["SUM(A$1:A1)", "SUM(S!$A1:A1)"]);
});

test("a cell, and a range of one cell whose ends have the same fixed, stay as the engine writes them", () => {
  const { text } = sheetWith({ B1: "=A$1", B2: "=SUM($A$1:$A$1)", B3: "=SUM(A1:A2)" });
  expect([text("B1"), text("B2"), text("B3")]).toEqual(["=A$1", "=SUM($A$1)", "=SUM(A1:A2)"]);
  expect(newWorkbook().model.getters.getSheetIds()).toHaveLength(1);
});
