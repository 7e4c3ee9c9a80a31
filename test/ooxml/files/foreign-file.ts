/** A workbook written by a general-purpose library, with most of what people have in their files. */
import ExcelJS from "exceljs";

/** A black dot of one pixel. */
const PICTURE = "iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNkYPhfDwAChwGA60e6kgAAAABJRU5ErkJggg==";

export async function foreignFile(): Promise<Uint8Array> {
  const workbook = new ExcelJS.Workbook();
  const sheet = workbook.addWorksheet("Firm's list & <more>", {
    views: [{ state: "frozen", xSplit: 1, ySplit: 2 }],
    pageSetup: { paperSize: 9, orientation: "landscape", printArea: "A1:F12", printTitlesRow: "1:2" },
    headerFooter: { oddHeader: "&LFirm & Co", oddFooter: "&CPage &P" },
  });
  sheet.getCell("A1").value = "  two spaces in front & behind  ";
  sheet.getCell("A2").value = { richText: [{ text: "bold ", font: { bold: true } }, { text: "and not" }] };
  sheet.getCell("A3").value = new Date(Date.UTC(2026, 2, 9));
  sheet.getCell("A3").numFmt = "yyyy-mm-dd";
  sheet.getCell("A4").value = 0.1234;
  sheet.getCell("A4").numFmt = "0.0%";
  sheet.getCell("A5").value = { text: "an address", hyperlink: "https://example.org/?a=1&b=2" };
  sheet.getCell("A6").value = { error: "#N/A" };
  sheet.getCell("A7").value = true;
  sheet.getCell("A8").value = "two\nlines, \u00b5m and \u{1F4A7}";
  sheet.getCell("A9").value = { formula: 'IF(A4>0,"say ""yes""",A1)', result: 'say "yes"' };
  sheet.getCell("B3").value = { formula: "A4*2", result: 0.2468 };
  sheet.fillFormula("C3:C8", "ROW()*2", [6, 8, 10, 12, 14, 16]);
  sheet.mergeCells("D3:E4");
  sheet.getCell("D3").value = "over four cells";
  sheet.getCell("D3").border = { top: { style: "medium" }, left: { style: "dashed" }, bottom: { style: "double" } };
  sheet.getCell("F3").note = "a note & <more>";
  sheet.getCell("F4").dataValidation = { type: "list", allowBlank: true, formulae: ['"yes,no"'] };
  sheet.getCell("F5").dataValidation = {
    ...{ type: "date", operator: "between", allowBlank: true, showErrorMessage: true },
    formulae: [new Date(Date.UTC(2020, 0, 1)), new Date(Date.UTC(2030, 0, 1))],
  };
  sheet.getCell("F6").dataValidation = { type: "decimal", operator: "greaterThan", formulae: [-1.5] };
  sheet.getCell("F7").dataValidation = { type: "list", formulae: ["$B$3:$B$8"] };
  sheet.addConditionalFormatting({
    ref: "C3:C8",
    rules: [
      {
        ...{ type: "cellIs", operator: "greaterThan", priority: 1, formulae: [10] },
        style: { font: { bold: true }, fill: { type: "pattern", pattern: "solid", bgColor: { argb: "FFFFC7CE" } } },
      },
    ],
  });
  sheet.getColumn(7).hidden = true;
  sheet.getRow(11).hidden = true;
  sheet.getRow(12).height = 40;
  sheet.getCell("A12").alignment = { wrapText: true, textRotation: 45, indent: 1 };
  sheet.getCell("A12").value = "turned";
  sheet.getCell("A13").fill = {
    type: "gradient",
    gradient: "angle",
    degree: 0,
    stops: [
      { position: 0, color: { argb: "FF0000FF" } },
      { position: 1, color: { argb: "FFFFFFFF" } },
    ],
  };
  sheet.addImage(workbook.addImage({ base64: PICTURE, extension: "png" }), "H2:I4");
  workbook.definedNames.add("'Firm''s list & <more>'!$A$4", "share");
  workbook.definedNames.add("'Firm''s list & <more>'!$C$3:$C$8", "rows_of_two");

  const table = workbook.addWorksheet("Table");
  table.addTable({
    ...{ name: "masses", ref: "B2", headerRow: true, totalsRow: false },
    columns: [
      { name: "Tin", filterButton: true },
      { name: "Mass", filterButton: false },
    ],
    rows: [
      ["T1", 12.5],
      ["T2", 13.25],
    ],
  });
  table.autoFilter = "G2:H9";
  table.getCell("J1").value = { formula: "SUM('Firm''s list & <more>'!C3:C8)", result: 66 };
  await table.protect("secret", { selectLockedCells: true });
  return new Uint8Array((await workbook.xlsx.writeBuffer()) as ArrayBuffer);
}
