/** A workbook of others with forms of contents that programs for spreadsheets often write wrong. */
import ExcelJS from "exceljs";

const FORMATS = [
  "[$-407]dd. mmmm yyyy;@",
  "# ?/?",
  '0.00" mm"',
  "0.00\\ \\m\\m",
  '_-* #,##0.00\\ "€"_-;\\-* #,##0.00\\ "€"_-;_-* "-"??\\ "€"_-;_-@_-',
  "[Red][<0]-0.0;[>=0]0.0",
  "[h]:mm:ss",
  "mm:ss.0",
  "##0.0E+0",
  "0.0%;;;@",
];

export async function richFile(): Promise<Uint8Array> {
  const workbook = new ExcelJS.Workbook();
  const name = "Bohrloch 1's Prüfung & <Notiz>";
  const sheet = workbook.addWorksheet(name, {
    properties: { tabColor: { argb: "FF00AA00" }, outlineLevelRow: 3 },
    headerFooter: { firstHeader: "&LErste", oddFooter: '&L&"Arial,Bold"&9Seite &P&CA && B&R&D', differentFirst: true },
    pageSetup: { fitToPage: true, fitToWidth: 1, fitToHeight: 0, printTitlesRow: "1:1", printTitlesColumn: "A:A" },
  });
  FORMATS.forEach((format, i) => {
    sheet.getCell(i + 2, 1).value = i - 3.25;
    sheet.getCell(i + 2, 1).numFmt = format;
  });
  sheet.getCell("B2").value = {
    richText: [{ text: "  leading" }, { text: " and trailing  ", font: { italic: true } }],
  };
  sheet.getCell("B3").value = "\ttab and _x0041_ and \u{1F4A7}\r\nnew line ";
  sheet.getCell("B4").value = "x".repeat(32_767);
  sheet.getCell("B5").value = { text: "a link", hyperlink: `https://example.org/${"a".repeat(200)}`, tooltip: "tip" };
  sheet.getCell("B6").value = { text: "within", hyperlink: "#'Second'!A1" };
  sheet.getCell("B7").value = { error: "#DIV/0!" };
  sheet.getCell("B8").value = 1e-300;
  sheet.getCell("B9").value = -0;
  sheet.getCell("B10").value = new Date(Date.UTC(1899, 11, 31));
  sheet.getCell("C2").value = { formula: "_xlfn.STDEV.S(A2:A9)", result: 2 };
  sheet.getCell("C3").value = { formula: '_xlfn.TEXTJOIN(",",TRUE,A2:A4)', result: "a" };
  sheet.getCell("C4").value = { formula: "_xlfn.XLOOKUP(1,A2:A9,A2:A9)", result: 1 };
  sheet.getCell("C5").value = { formula: "_xlfn._xlws.FILTER(A2:A9,A2:A9>0)", result: 1 };
  sheet.getCell("C6").value = { formula: "_xlfn.LET(_xlpm.a,2,_xlpm.a*3)", result: 6 };
  sheet.getCell("C7").value = { formula: "SUM(share*2,'Second'!A1:A3)", result: 1 };
  sheet.getCell("C8").value = { formula: 'IFERROR(1/0,"n/a")', result: "n/a" };
  sheet.getCell("C9").value = { formula: 'HYPERLINK("https://example.org","a")', result: "a" };
  sheet.getCell("D2").value = { formula: "TRANSPOSE(A2:D2)", ref: "D2:D5", shareType: "array", result: 1 } as never;
  sheet.getCell("E2").note = {
    texts: [{ text: "  a note\n", font: { bold: true } }, { text: "of two runs " }],
    margins: { insetmode: "auto" },
  };
  const validations: Record<string, ExcelJS.DataValidation> = {
    F2: { type: "whole", operator: "between", formulae: [1, 5], allowBlank: false },
    F3: { type: "textLength", operator: "lessThan", formulae: [15] },
    F4: { type: "custom", formulae: ["COUNTIF($F$2:$F$9,F4)=1"], showErrorMessage: true, error: "x".repeat(225) },
    F5: { type: "list", formulae: [`"${"abc,".repeat(63)}z"`], promptTitle: "t", prompt: "p".repeat(255) },
    F6: { type: "decimal", operator: "notBetween", formulae: [-1, 1e-7] },
  };
  for (const [at, rule] of Object.entries(validations)) sheet.getCell(at).dataValidation = rule;
  sheet.addConditionalFormatting({
    ref: "A2:A11",
    rules: [
      { type: "expression", priority: 3, formulae: ["$A2>0"], style: { font: { color: { argb: "FFFF0000" } } } },
      {
        ...{ type: "colorScale", priority: 2, color: [{ argb: "FFF8696B" }, { argb: "FF63BE7B" }] },
        cfvo: [{ type: "min" }, { type: "max" }],
      },
      { type: "containsText", operator: "containsText", text: "x", priority: 1, style: { font: { bold: true } } },
      { type: "top10", rank: 3, percent: false, bottom: false, priority: 5, style: { font: { italic: true } } },
    ],
  } as never);
  for (let row = 12; row <= 20; row++) sheet.getRow(row).outlineLevel = Math.min(7, row - 11);
  sheet.getColumn(8).outlineLevel = 2;
  sheet.getColumn(9).width = 255;
  sheet.getRow(21).height = 409;
  sheet.mergeCells("H2:J4");
  sheet.getCell("H2").value = { formula: "A2*2", result: 1 };
  sheet.autoFilter = "A1:F11";
  const second = workbook.addWorksheet("Second", { views: [{ state: "split", xSplit: 2000, ySplit: 3000 }] });
  second.getCell("A1").value = 1;
  second.addTable({
    ...{ name: "Werte", ref: "C3", headerRow: true, totalsRow: true, style: { theme: "TableStyleLight1" } },
    columns: [
      { name: "Name", totalsRowLabel: "Sum" },
      { name: "Masse in g", totalsRowFunction: "sum" },
    ],
    rows: [
      ["a", 1],
      ["b", 2],
    ],
  });
  workbook.addWorksheet("x".repeat(31)).state = "veryHidden";
  workbook.definedNames.add("Second!$A$1", "share");
  workbook.definedNames.add("Second!$A$1:$A$3", "e0");
  await sheet.protect("secret", { formatCells: true });
  return new Uint8Array((await workbook.xlsx.writeBuffer()) as ArrayBuffer);
}
