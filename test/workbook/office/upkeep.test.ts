/** @jest-environment jsdom */
/** What Excel is asked to do to keep a sheet whole. */
import { unzipSync, zipSync, strToU8, strFromU8 } from "fflate";
import { blankSheet } from "../../../src/datasheet";
import { OfficePort } from "../../../src/workbook/office";
import { withoutNotes } from "../../../src/workbook/xlsx-file";
import { FakeExcel, supports } from "./fake-excel";
import { PLAN } from "./plan";

const port = new OfficePort();

beforeEach(() => supports(17));

const box = (row: number, col: number, rows = 1, cols = 1) => ({
  RowIndex: row,
  ColumnIndex: col,
  RowCount: rows,
  ColumnCount: cols,
});

describe("a new sheet", () => {
  const open = () => new FakeExcel(["Sheet1"]).when(/Protection$/, { Protected: false });

  test("is protected last, without a password, its inputs and the rows for readings open", async () => {
    const excel = open();
    await port.insertSheet(blankSheet("SI"));
    const protect = excel.steps.filter(({ name }) => name === "Protect");
    expect(protect).toHaveLength(1);
    expect(protect[0].args[0]).toMatchObject({ allowInsertRows: true, allowFormatCells: true });
    expect(protect[0].args.slice(1).filter(Boolean)).toEqual([]);
    const after = excel.lines.slice(excel.lines.findIndex((line) => line.includes("Protect(")) + 1);
    expect(after.filter((line) => /Formulas|SetCellProperties|Notes|PageLayout/.test(line))).toEqual([]);
    expect(excel.lines).toContainEqual(
      expect.stringMatching(/GetRangeByIndexes\(\d+,0,1976,48\)\.Format\.Protection\.Locked = false/),
    );
  });

  test("asks for numbers where numbers belong, and says what is wanted; prints with file, page and versions", async () => {
    const excel = open();
    const plan = blankSheet("US");
    await port.insertSheet(plan);
    const rules = excel.steps
      .filter(({ path, name }) => path.endsWith("DataValidation") && name === "Rule")
      .map(({ args }) => args[0] as any);
    expect(rules.filter((rule) => rule.decimal || rule.date)).toHaveLength(plan.entries!.length);
    expect(rules).toContainEqual({ decimal: { formula1: 1, formula2: 5, operator: "Between" } });
    expect(rules).toContainEqual({ date: { formula1: "1990-01-01", formula2: "2099-12-31", operator: "Between" } });
    const alerts = excel.steps.filter(({ name }) => name === "ErrorAlert").map(({ args }) => (args[0] as any).message);
    expect(alerts).toContainEqual(expect.stringMatching(/^Ring: enter a number greater than 0/));
    expect(Math.max(...alerts.map((message) => message.length))).toBeLessThanOrEqual(255);
    const lines = excel.lines.join("\n");
    expect(lines).toMatch(/PaperSize = "Letter"/);
    expect(lines).toMatch(/LeftFooter = "&F {2}\| {2}&A"/);
    expect(lines).toMatch(/RightFooter = "Data sheet \d+, Clayledger/);
  });

  test("a plan without protection stays open", async () => {
    const excel = open();
    await port.insertSheet(PLAN);
    expect(excel.steps.filter(({ name }) => name === "Protect")).toEqual([]);
  });
});

describe("names", () => {
  test("are listed with where they lead: the sheet's own, then the workbook's that lead to it", async () => {
    new FakeExcel(["Test", "Other"])
      .when(/GetRangeOrNullObject\(\)\.Worksheet$/, (path) => ({ Name: path.includes("elsewhere") ? "Other" : "Test" }))
      .when(/GetRangeOrNullObject\(\)$/, (path) =>
        path.includes("lost") ? null : box(path.includes("ring_mass") ? 3 : 9, 3),
      )
      .when(/^Workbook\.Names$/, {
        _Items: [
          { Id: "ring_mass", Name: "ring_mass", Type: "Range" },
          { Id: "elsewhere", Name: "elsewhere", Type: "Range" },
          { Id: "Print_Area", Name: "Print_Area", Type: "Range" },
        ],
      })
      .when(/\("Test"\)\.Names$/, {
        _Items: [
          { Id: "ring_mass", Name: "ring_mass", Type: "Range" },
          { Id: "lost", Name: "lost", Type: "Error" },
        ],
      })
      .when(/\("Test"\)$/, { Name: "Test" });
    expect(await port.listNames("Test")).toEqual([
      { name: "ring_mass", scope: "sheet", place: { row: 3, col: 3, rows: 1, cols: 1 } },
      { name: "lost", scope: "sheet", place: "lost" },
      { name: "ring_mass", scope: "workbook", place: { row: 3, col: 3, rows: 1, cols: 1 } },
    ]);
  });

  const excelWith = (present: object | null) =>
    new FakeExcel(["Test"])
      .when(/\("Test"\)$/, { Name: "Test" })
      .when(/GetRange\("D4"\)$/, box(3, 3))
      .when(/Names\.GetItemOrNullObject\("ring_mass"\)$/, present && { Type: "Range" })
      .when(/Names\.GetItemOrNullObject\("ring_mass"\)\.GetRangeOrNullObject\(\)$/, present);

  test("a name that is not there is added to the sheet itself", async () => {
    const excel = excelWith(null);
    await port.nameCells("Test", "ring_mass", "D4");
    expect(excel.lines).toContainEqual(expect.stringMatching(/\("Test"\)\.Names\.Add\("ring_mass",/));
  });

  test("a good name is refused, and moved only on a second word, by its reference so that formulas keep it", async () => {
    const excel = excelWith({ Address: "Test!B7" });
    await expect(port.nameCells("Test", "ring_mass", "D4")).rejects.toThrow(
      /"ring_mass" is already at B7 and was left there/,
    );
    expect(excel.lines.filter((line) => /Formula = |Names\.Add/.test(line))).toEqual([]);
    await port.nameCells("Test", "ring_mass", "D4", true);
    expect(excel.lines).toContainEqual(expect.stringContaining(`.Formula = "='Test'!$D$4"`));
    expect(excel.lines.filter((line) => /Delete|Names\.Add/.test(line))).toEqual([]);
  });
});

describe("formulas that show #NAME?", () => {
  const excelWith = (isProtected: boolean) =>
    new FakeExcel(["Test"])
      .when(/Protection$/, { Protected: isProtected, Options: { allowInsertRows: true } })
      .when(/GetUsedRangeOrNullObject\(\)$/, { RowCount: 2, ColumnCount: 2 })
      .when(/GetResizedRange/, {
        Formulas: [
          ["=_xldudf_CLAY_STRAIN(A1,B1)", "=SUM(A1)"],
          ["text", "=IF(A1,CLAY.MV(A1,A2,B1,B2),clay.av(A1,A2,B1,B2))"],
        ],
        Values: [
          ["#NAME?", 3],
          ["text", "#NAME?"],
        ],
      });

  test("are typed again as a person would type them today, and nothing else is", async () => {
    const excel = excelWith(false);
    expect(await port.reenterFormulas("Test")).toEqual({ found: 2, left: 2 });
    const typed = excel.steps.filter(({ name }) => name === "Formulas").map(({ path, args }) => [path, args[0]]);
    expect(typed).toEqual([
      [expect.stringMatching(/GetCell\(0,0\)$/), [["=CLAY.STRAIN(A1,B1)"]]],
      [
        expect.stringMatching(/GetCell\(1,1\)$/),
        [["=IF(A1,CLAY.VOLUME_COMPRESSIBILITY(A1,A2,B1,B2),CLAY.COMPRESSIBILITY(A1,A2,B1,B2))"]],
      ],
    ]);
  });

  test("on a protected sheet, the protection is lifted for it and put back as it was", async () => {
    const excel = excelWith(true);
    await port.reenterFormulas("Test");
    const order = excel.lines
      .filter((line) => /[Pp]rotect\(|Formulas = /.test(line))
      .map((line) => /(Unprotect|Protect)(?=\()|Formulas/.exec(line)![0]);
    expect(order).toEqual(["Unprotect", "Formulas", "Formulas", "Protect"]);
    expect(excel.steps.find(({ name }) => name === "Protect")!.args[0]).toMatchObject({ allowInsertRows: true });
  });

  test("a password is told, and nothing is changed", async () => {
    const excel = excelWith(true).refuse(/Unprotect/, "AccessDenied");
    await expect(port.reenterFormulas("Test")).rejects.toThrow(/protected with a password: lift it in Excel/);
    expect(excel.steps.filter(({ name }) => name === "Formulas")).toEqual([]);
  });
});

describe("a file's sheets", () => {
  const file = zipSync({
    "[Content_Types].xml": strToU8(
      '<Types><Default Extension="xml"/><Override PartName="/xl/comments1.xml" ContentType="x"/><Override PartName="/xl/workbook.xml" ContentType="y"/></Types>',
    ),
    "xl/comments1.xml": strToU8("<comments/>"),
    "xl/drawings/vmlDrawing1.vml": strToU8("<xml/>"),
    "xl/worksheets/_rels/sheet1.xml.rels": strToU8(
      '<Relationships><Relationship Id="a" Type="http://x/relationships/comments" Target="../comments1.xml"/><Relationship Id="b" Type="http://x/relationships/drawing" Target="../drawings/drawing1.xml"/></Relationships>',
    ),
    "xl/worksheets/sheet1.xml": strToU8('<worksheet><drawing r:id="b"/><legacyDrawing r:id="c"/></worksheet>'),
  });
  const excelWith = () =>
    new FakeExcel(["Sheet1"])
      .when(/GetItem\("\{new\}"\)$/, { Name: "Oedometer" })
      .when(/InsertWorksheetsFromBase64\(\)$/, ["{new}"]);

  test("without notes: only what leads to notes is taken out", () => {
    const parts = unzipSync(withoutNotes(file)!);
    const textOf = (path: string) => strFromU8(parts[path]);
    expect(Object.keys(parts)).toEqual([
      "[Content_Types].xml",
      "xl/worksheets/_rels/sheet1.xml.rels",
      "xl/worksheets/sheet1.xml",
    ]);
    expect(textOf("xl/worksheets/sheet1.xml")).toBe('<worksheet><drawing r:id="b"/></worksheet>');
    expect(textOf("xl/worksheets/_rels/sheet1.xml.rels")).not.toContain("comments");
    expect(textOf("xl/worksheets/_rels/sheet1.xml.rels")).toContain("drawing1.xml");
    expect(textOf("[Content_Types].xml")).toContain("/xl/workbook.xml");
    expect(withoutNotes(unzipSync(file) && zipSync({ "a.xml": strToU8("<a/>") }))).toBeUndefined();
  });

  test("an older Excel and a file of another kind are told what to do, before anything is asked", async () => {
    const excel = excelWith();
    await expect(port.insertFile(new Uint8Array([0xd0, 0xcf, 1]))).rejects.toThrow(/no \.xlsx workbook/);
    supports(12);
    await expect(port.insertFile(file)).rejects.toThrow(/move or copy its sheet into this workbook/);
    expect(excel.steps.filter(({ name }) => name === "InsertWorksheetsFromBase64")).toEqual([]);
  });

  const inserted = (excel: FakeExcel) =>
    excel.steps.filter(({ name }) => name === "InsertWorksheetsFromBase64").map(({ args }) => args as [string, object]);

  test("come in at the end, and their names are told", async () => {
    const excel = excelWith();
    await expect(port.insertFile(file)).resolves.toEqual({ sheets: ["Oedometer"], remarks: [] });
    const [[bytes, options], ...more] = inserted(excel);
    expect(more).toEqual([]);
    expect(Buffer.from(bytes, "base64").equals(Buffer.from(file))).toBe(true);
    expect(options).toMatchObject({ positionType: "End" });
  });

  test("that are refused with notes are tried once more without, and that is told", async () => {
    const excel = excelWith().refuse(/InsertWorksheetsFromBase64/, "UnsupportedFeature", "no", 1);
    const { sheets, remarks } = await port.insertFile(file);
    expect(sheets).toEqual(["Oedometer"]);
    expect(remarks).toEqual([expect.stringContaining("the sheet came without them")]);
    const [[bytes]] = inserted(excel);
    expect(Object.keys(unzipSync(new Uint8Array(Buffer.from(bytes, "base64"))))).not.toContain("xl/comments1.xml");
  });

  test("that are refused again are told by the first reason", async () => {
    excelWith().refuse(/InsertWorksheetsFromBase64/, "AccessDenied");
    await expect(port.insertFile(file)).rejects.toThrow(/insert the sheets of the file: it is protected/);
  });
});
