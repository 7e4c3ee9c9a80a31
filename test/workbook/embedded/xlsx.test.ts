import "./engine-in-node";
import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import ExcelJS from "exceljs";
import { helpers } from "@odoo/o-spreadsheet";
import { demoSheet } from "../../../src/datasheet";
import { Model } from "../../../src/workbook/embedded/engine";
import { noteGetters } from "../../../src/workbook/embedded/notes";
import { EmbeddedPort } from "../../../src/workbook/embedded/port";
import { newWorkbook, type OpenWorkbook } from "../../../src/workbook/embedded/workbook";
import type { SheetPlan } from "../../../src/workbook/port";
import { openXlsx } from "../../../src/workbook/embedded/xlsx/open";
import { saveXlsx } from "../../../src/workbook/embedded/xlsx/save";
import { registerRealFunctions } from "./real-functions";

// Two whole sheets through Node's stand-in for the browser's XML parser take their time.
jest.setTimeout(180_000);

beforeAll(() => registerRealFunctions({ blankAs: null }));

const workbookOf = (sheets: object[], namedRanges: Record<string, string> = {}): OpenWorkbook => ({
  model: new Model({ sheets, namedRanges } as never),
  localNames: new Map(),
});

/** Everything of a workbook that a round trip must keep, cell by cell. */
function contents({ model }: OpenWorkbook) {
  const { getters } = model;
  return Object.fromEntries(
    getters.getSheetIds().map((sheetId) => {
      const cells: Record<string, unknown> = {};
      for (const { id } of Object.values(getters.getCells(sheetId))) {
        const position = getters.getCellPosition(id);
        if (getters.isInMerge(position) && !helpers.deepEquals(getters.getMainCellPosition(position), position))
          continue;
        const { value, formattedValue, format } = getters.getEvaluatedCell(position);
        const formula = getters.getCellText(position, { showFormula: true });
        const choices = getters.getValidationRuleForCell(position)?.criterion.values;
        const { bold, italic, fillColor } = getters.getCellStyle(position);
        const sides = getters.getCellBorder(position) ?? {};
        const border = Object.keys(sides)
          .filter((side) => sides[side as "top"])
          .sort()
          .join();
        cells[helpers.toXC(position.col, position.row)] = {
          value: value ?? "",
          formattedValue,
          format: format ?? "",
          formula: formula.startsWith("=") ? formula : "",
          choices,
          bold: !!bold,
          italic: !!italic,
          fillColor,
          // A merged box has its right and lower lines on the cells that it covers.
          border: getters.isInMerge(position) ? "merged" : border,
        };
      }
      return [
        getters.getSheetName(sheetId),
        {
          cells,
          notes: noteGetters(model).getNotes(sheetId),
          merges: getters.getMerges(sheetId),
          frozen: getters.getPaneDivisions(sheetId),
        },
      ];
    }),
  );
}

/** A blank cell that only its neighbours' lines touch is not kept as a cell. */
const worthKeeping = (book: ReturnType<typeof contents>) =>
  Object.fromEntries(
    Object.entries(book).map(([name, sheet]) => [
      name,
      {
        ...sheet,
        cells: Object.fromEntries(
          Object.entries(sheet.cells).filter(
            ([, cell]: any) => cell.value !== "" || cell.formula || cell.choices || cell.fillColor,
          ),
        ),
      },
    ]),
  );

const namesOf = ({ model }: OpenWorkbook) =>
  Object.fromEntries(
    model.getters.getNamedRanges().map(({ name, range }) => [name, model.getters.getRangeString(range)]),
  );

const textsOf = (bytes: Uint8Array) =>
  Object.fromEntries(Object.entries(unzipSync(bytes)).map(([path, part]) => [path, strFromU8(part)]));
const reopen = async (workbook: OpenWorkbook) => openXlsx(await saveXlsx(workbook)).workbook;
const parts = async (workbook: OpenWorkbook) => textsOf(await saveXlsx(workbook));

describe("the demonstration, twice in one workbook", () => {
  let port: EmbeddedPort;
  let saved: Uint8Array;
  let again: OpenWorkbook;

  beforeAll(async () => {
    port = new EmbeddedPort(newWorkbook());
    await port.insertSheet(demoSheet("SI"));
    await port.insertSheet(demoSheet("US"));
    saved = await saveXlsx(port.workbook);
    again = openXlsx(saved).workbook;
  });

  test("has no error cell", () => {
    const errors = Object.values(contents(port.workbook)).flatMap(({ cells }) =>
      Object.entries(cells).filter(([, { value }]: any) => helpers.isEvaluationError(value)),
    );
    expect(errors).toEqual([]);
  });

  test("keeps every formula, value, format, choice, look and name through a file", () => {
    expect(worthKeeping(contents(again))).toEqual(worthKeeping(contents(port.workbook)));
    expect(namesOf(again)).toEqual(namesOf(port.workbook));
  });

  test("is read by its local names after reopening", async () => {
    const reopened = new EmbeddedPort(again);
    for (const sheet of (await port.sheetNames()).slice(1)) {
      const names = Object.keys(demoSheet("SI").names);
      const read = await port.readNames(sheet, names);
      expect(Object.keys(read)).toHaveLength(names.length);
      expect(await reopened.readNames(sheet, names)).toEqual(read);
    }
  });

  test("is in Excel's own form in the file", () => {
    const files = textsOf(saved);
    const sheets = [files["xl/worksheets/sheet1.xml"], files["xl/worksheets/sheet2.xml"]];
    for (const sheet of sheets) {
      expect(sheet).toMatch(/<f[^>]*>[^<]*_xldudf_CLAY_/);
      expect(sheet).not.toContain("CLAY.");
      expect(sheet).not.toContain('errorStyle=""');
      expect(sheet).not.toMatch(/\w_2\b/);
    }
    expect(files["xl/workbook.xml"]).toMatch(/<definedName [^>]*localSheetId="1"/);
    expect(files["xl/workbook.xml"]).toMatch(/<definedName [^>]*localSheetId="2"/);
  });

  test("is read by another library, local names and all", async () => {
    const other = new ExcelJS.Workbook();
    await other.xlsx.load(saved as never);
    const [, name] = await port.sheetNames();
    const plan = demoSheet("SI");
    const noted = plan.cells.find(({ note }) => note)!;
    expect(other.getWorksheet(name)!.getCell(noted.row + 1, noted.col + 1).note).toBe(noted.note);
    expect(other.worksheets.map((sheet) => sheet.name)).toEqual(await port.sheetNames());
    const result = plan.cells.find(({ formula }) => formula?.includes("CLAY."))!;
    const cell = other.getWorksheet(name)!.getCell(result.row + 1, result.col + 1);
    expect(cell.formula ?? (cell.value as any).formula).toContain("_xldudf_CLAY_");
  });
});

describe("what the engine alone would lose", () => {
  const small = (sheet: Partial<SheetPlan>): SheetPlan => ({
    ...{ name: "Small", rows: 9, cols: 3, cells: [], names: {}, columnWidths: {}, merges: [], freezeRows: 0 },
    ...sheet,
  });
  /** Cells, kind, title and sentence of each rule of a sheet of the file. */
  const rulesOf = (bytes: Uint8Array, sheet: number) =>
    [...strFromU8(unzipSync(bytes)[`xl/worksheets/sheet${sheet}.xml`]).matchAll(/<dataValidation [^>]*>/g)]
      .map(([tag]) =>
        ["sqref", "type", "errorTitle", "error"].map((key) => new RegExp(` ${key}="([^"]*)"`).exec(tag)?.[1]),
      )
      .sort();

  test("the words of its rules, through a file, and into another workbook", async () => {
    const port = new EmbeddedPort(newWorkbook());
    const box = (row: number) => ({ row, col: 1, rows: 2, cols: 1 });
    await port.insertSheet(
      small({
        cells: [{ row: 0, col: 1, kind: "input", choices: ["SI", "US"] }],
        entries: [
          { box: box(2), kind: "number", least: 0, message: "The mass in grams." },
          { box: box(4), kind: "number", least: 0, message: "The height, not less than 0." },
          { box: box(6), kind: "date", least: 36526, message: "A day of this century." },
        ],
      }),
    );
    const saved = await saveXlsx(port.workbook);
    const rules = [
      ["B1", "list", "Not in the list", "Choose one of: SI, US."],
      ["B3:B4", "decimal", "Not a number that fits", "The mass in grams."],
      ["B5:B6", "decimal", "Not a number that fits", "The height, not less than 0."],
      ["B7:B8", "date", "Not a date", "A day of this century."],
    ];
    expect(rulesOf(saved, 1)).toEqual(rules);
    expect(rulesOf(await saveXlsx(openXlsx(saved).workbook), 1)).toEqual(rules);
    const other = new EmbeddedPort(newWorkbook());
    await other.insertFile(saved);
    expect(rulesOf(await saveXlsx(other.workbook), 2)).toEqual(rules);
  });

  test("what a rule of another program says before an entry", async () => {
    const made = new ExcelJS.Workbook();
    made.addWorksheet("Firm").getCell("B2").dataValidation = {
      ...{ type: "decimal", operator: "between", formulae: [0, 10], showErrorMessage: true, showInputMessage: true },
      ...{ errorTitle: "No", error: "0 & 10 <at most>", promptTitle: "Mass", prompt: "In grams" },
    };
    const opened = openXlsx(new Uint8Array((await made.xlsx.writeBuffer()) as ArrayBuffer)).workbook;
    const again = new ExcelJS.Workbook();
    await again.xlsx.load((await saveXlsx(opened)).buffer as ArrayBuffer);
    expect(again.worksheets[0].getCell("B2").dataValidation).toMatchObject({
      ...{ errorTitle: "No", error: "0 & 10 <at most>", promptTitle: "Mass", prompt: "In grams" },
    });
  });

  test("lines that are broken to fit, and heights of rows", async () => {
    const port = new EmbeddedPort(newWorkbook());
    const text = "A long remark that is to be broken into lines";
    const name = await port.insertSheet(
      small({ cells: [{ row: 1, col: 0, kind: "note", value: text, wrap: true }], rowHeights: { 1: 42 } }),
    );
    const check = ({ model: { getters } }: OpenWorkbook) => {
      const sheetId = getters.getSheetIdByName(name)!;
      expect(getters.getCellStyle({ sheetId, row: 1, col: 0 })).toMatchObject({
        wrapping: "wrap",
        verticalAlign: "top",
      });
      expect(getters.getRowSize(sheetId, 1)).toBe(56);
      expect(getters.getRowSize(sheetId, 2)).toBeLessThan(30);
    };
    check(port.workbook);
    const saved = await saveXlsx(port.workbook);
    const other = new ExcelJS.Workbook();
    await other.xlsx.load(saved.buffer as ArrayBuffer);
    expect(other.getWorksheet(name)!.getRow(2).height).toBeCloseTo(42, 1);
    expect(other.getWorksheet(name)!.getCell("A2").alignment).toMatchObject({ wrapText: true, vertical: "top" });
    check(openXlsx(saved).workbook);
  });

  test("a sheet's apostrophe becomes ’, in references and names too, and is told", async () => {
    const made = new ExcelJS.Workbook();
    const sheet = made.addWorksheet("O'Brien & Co's");
    sheet.getCell("A1").value = 7;
    sheet.getCell("A2").value = { formula: "'O''Brien & Co''s'!A1*2", result: 14 };
    made.addWorksheet("Other").getCell("A1").value = {
      formula: `'O''Brien & Co''s'!A1&"O'Brien's"`,
      result: "7O'Brien's",
    };
    made.definedNames.add("'O''Brien & Co''s'!$A$1", "mass");
    const { workbook, remarks } = openXlsx(new Uint8Array((await made.xlsx.writeBuffer()) as ArrayBuffer));
    const port = new EmbeddedPort(workbook);
    expect(remarks).toEqual([expect.stringMatching(/^The sheet "O'Brien & Co's" is called "O’Brien & Co’s" here/)]);
    expect(await port.sheetNames()).toEqual(["O’Brien & Co’s", "Other"]);
    expect(await port.values("O’Brien & Co’s", "A1:A2")).toEqual([[7], [14]]);
    expect(await port.values("Other", "A1")).toEqual([["7O'Brien's"]]);
    expect(await port.readNames("O’Brien & Co’s", ["mass"])).toEqual({ mass: [[7]] });
    expect(await new EmbeddedPort(newWorkbook()).insertSheet(small({ name: "O'Brien" }))).toBe("O’Brien");
  });

  test("hidden rows and columns, and frozen ones", async () => {
    const port = new EmbeddedPort(newWorkbook());
    const name = await port.insertSheet(small({ cells: [{ row: 7, col: 2, kind: "note", value: 1 }], freezeRows: 2 }));
    const sheetId = port.workbook.model.getters.getSheetIdByName(name)!;
    const dispatch = (type: string, payload: object) =>
      (port.workbook.model as any).dispatch(type, { sheetId, ...payload });
    dispatch("HIDE_COLUMNS_ROWS", { dimension: "ROW", elements: [3, 4, 12] });
    dispatch("HIDE_COLUMNS_ROWS", { dimension: "COL", elements: [1] });
    dispatch("FREEZE_COLUMNS", { quantity: 1 });
    expect(await port.hidden(name)).toEqual({ rows: [3, 4, 12], cols: [1] });
    const saved = await saveXlsx(port.workbook);
    const again = new EmbeddedPort(openXlsx(saved).workbook);
    const inserted = new EmbeddedPort(newWorkbook());
    await inserted.insertFile(saved);
    for (const other of [again, inserted]) {
      const { getters } = other.workbook.model;
      expect(await other.hidden(name)).toEqual({ rows: [3, 4, 12], cols: [1] });
      expect(getters.getPaneDivisions(getters.getSheetIdByName(name)!)).toEqual({ xSplit: 1, ySplit: 2 });
    }
  });

  test("text that looks like something else stays text", async () => {
    const texts = ["'00123", "'1/2", "'=SUM(1)", "''quoted'", "'TRUE", "'#N/A", "plain", "'-5", "'+x", "'1e3", "'50%"];
    const cells = Object.fromEntries(texts.map((text, i) => [`A${i + 1}`, text]));
    const workbook = workbookOf([{ id: "s", name: "S", cells }]);
    const again = contents(await reopen(workbook)).S.cells as any;
    expect(texts.map((_, i) => again[`A${i + 1}`].value)).toEqual(texts.map((text) => text.replace(/^'/, "")));
    expect((await parts(workbook))["xl/sharedStrings.xml"]).toContain("<t>00123</t>");
  });

  test("powers of ten keep their format", async () => {
    const workbook = workbookOf([{ id: "s", name: "S", cells: { A1: "1234" }, formats: { A1: 1 } }]);
    workbook.model.dispatch("SET_FORMATTING", {
      sheetId: "s",
      target: [{ left: 0, right: 0, top: 0, bottom: 0 }],
      format: "0.00e",
    } as never);
    expect((await parts(workbook))["xl/styles.xml"]).toContain('formatCode="0.00E+00"');
    expect((contents(await reopen(workbook)).S.cells as any).A1.formattedValue).toBe("1.23e+03");
  });

  test("names of the workbook, a formula on another sheet, and a text that looks like a date", async () => {
    const cells = { A1: "4", A2: "=load*2", A3: '=CONCAT("1/2",load)', A4: '="say load"&CHAR(34)' };
    const workbook = workbookOf(
      [
        { id: "s", name: "Part one", cells },
        { id: "t", name: "Two", cells: { B1: "=load+'Part one'!A2" } },
      ],
      { load: "'Part one'!A1" },
    );
    const again = await reopen(workbook);
    expect(contents(again)).toEqual(contents(workbook));
    expect((contents(again)["Part one"].cells as any).A3.value).toBe("1/24");
    expect(namesOf(again)).toEqual(namesOf(workbook));
  });

  test("a spill, a reference to it, and the values that Excel shows without the add-in", async () => {
    const cells = { A1: "=CLAY.LOAD_SCHEDULE(12.5,100)", C1: "=SUM(A1#)" };
    const workbook = workbookOf([{ id: "s", name: "S", cells }]);
    const sheet = (await parts(workbook))["xl/worksheets/sheet0.xml"];
    expect(sheet).toContain("_xlfn.ANCHORARRAY(A1)");
    expect(sheet.replace(/\s+/g, " ")).toMatch(/<c r="A4" t="n"> <v>100<\/v>/);
    expect(contents(await reopen(workbook))).toEqual(contents(workbook));
  });

  test("a formula of an unknown function and one that is unfinished", async () => {
    const cells = { A1: "=CLAY.NO_SUCH(1)", A2: "=SUM(1", A3: "=1/0", A4: "=CLAY.WATER_CONTENT(-1,2)" };
    const workbook = workbookOf([{ id: "s", name: "S", cells }]);
    const sheet = (await parts(workbook))["xl/worksheets/sheet0.xml"].replace(/\s+/g, " ");
    expect(sheet).toMatch(/<c r="A3" [^>]*t="e"> <f[^>]*>1\/0<\/f> <v>#DIV\/0!<\/v>/);
    expect(contents(await reopen(workbook))).toEqual(contents(workbook));
  });
});

describe("files of others", () => {
  test("one written by another library opens, with names of sheets and of the workbook", async () => {
    const other = new ExcelJS.Workbook();
    const sheet = other.addWorksheet("Lab 1");
    sheet.getCell("A1").value = "0012";
    sheet.getCell("A2").value = 12.5;
    sheet.getCell("A2").numFmt = "0.00E+00";
    sheet.getCell("A3").value = { formula: "_xldudf_CLAY_WATER_CONTENT(first_mass,10)", result: 0.25 };
    sheet.getCell("A4").value = { formula: "CLAY.WATER_CONTENT(A2,10)", result: 0.25 };
    sheet.getCell("A5").value = { richText: [{ text: "1" }, { text: "/2", font: { bold: true } }] };
    sheet.getCell("A6").value = { formula: '_xlfn.IFS(A2>1,"say ""yes""",TRUE,"no")' };
    sheet.getCell("A2").note = "weighed twice";
    other.definedNames.add("'Lab 1'!$A$2", "first_mass");
    other.definedNames.add("'Lab 1'!$B$1:$B$400", "times");
    const { workbook, remarks } = openXlsx(new Uint8Array((await other.xlsx.writeBuffer()) as ArrayBuffer));
    const cells = contents(workbook)["Lab 1"].cells as any;
    expect(remarks).toEqual([]);
    expect(contents(workbook)["Lab 1"].notes).toEqual([{ row: 1, col: 0, text: "weighed twice" }]);
    expect((await new EmbeddedPort(workbook).readNames("Lab 1", ["times"])).times).toHaveLength(400);
    expect(cells.A1.value).toBe("0012");
    expect(cells.A2.formattedValue).toBe("1.25e+01");
    expect(cells.A3).toMatchObject({ formula: "=CLAY.WATER_CONTENT(first_mass,10)", value: expect.closeTo(0.25, 12) });
    expect(cells.A4.value).toBeCloseTo(0.25, 12);
    expect(cells.A5.value).toBe("1/2");
    expect(cells.A6.value).toBe('say "yes"');
  });

  test("the same local name on two sheets gets one suffix, and a name that is no range is told", async () => {
    const first = new EmbeddedPort(newWorkbook());
    const plan = {
      name: "Test",
      rows: 3,
      cols: 2,
      cells: [
        { row: 0, col: 0, kind: "input", value: 5 },
        { row: 1, col: 0, kind: "result", formula: "={ring}*2" },
      ],
      names: { ring: { row: 0, col: 0, rows: 1, cols: 1 } },
      columnWidths: {},
      merges: [],
      freezeRows: 0,
    } as const;
    await first.insertSheet(plan);
    await first.insertSheet(plan);
    const files = unzipSync(await saveXlsx(first.workbook));
    const edit = (path: string, change: (text: string) => string) => {
      files[path] = strToU8(change(strFromU8(files[path])));
    };
    edit("xl/workbook.xml", (text) =>
      text.replace(
        "<definedNames>",
        '<definedNames><definedName name="factor">2.5</definedName><definedName name="_xlnm.Print_Area" localSheetId="1">Test!$A$1:$B$2</definedName>',
      ),
    );
    edit("xl/worksheets/sheet0.xml", (text) =>
      text.replace(
        "<sheetData>",
        '<sheetData><row r="1"><c r="A1"><f>\'Test 2\'!RING+Test!ring</f><v>0</v></c><c r="B1" t="inlineStr"><is><t>007</t></is></c></row>',
      ),
    );
    const { workbook, remarks } = openXlsx(zipSync(files));
    expect(remarks).toEqual(["Names that are not one range of cells were left out: factor."]);
    expect(namesOf(workbook)).toEqual({ ring: "Test!A1", ring_2: "'Test 2'!A1" });
    const { Sheet1, Test, "Test 2": second } = contents(workbook) as any;
    expect(Test.cells.A2.formula).toBe("=ring*2");
    expect(second.cells.A2.formula).toBe("=ring_2*2");
    expect(Sheet1.cells.A1).toMatchObject({ formula: "=ring_2+ring", value: 10 });
    expect(Sheet1.cells.B1.value).toBe("007");
  });

  test.each<[string, Uint8Array, RegExp]>([
    ["text", strToU8("time,reading\n1,2"), /damaged, or not an \.xlsx/],
    ["nothing", new Uint8Array(), /damaged, or not an \.xlsx/],
    ["a zip of something else", zipSync({ "a.txt": strToU8("x") }), /damaged, or not an \.xlsx/],
    ["an old or locked workbook", new Uint8Array([0xd0, 0xcf, 0x11, 0xe0]), /old \.xls kind, or one locked/],
  ])("%s is refused with a sentence", (_, bytes, sentence) => {
    jest.spyOn(console, "error").mockImplementation(() => undefined);
    expect(() => openXlsx(bytes)).toThrow(sentence);
  });

  test("a workbook cut short, or with a broken part, is refused with a sentence", async () => {
    const bytes = await saveXlsx(workbookOf([{ id: "s", name: "S", cells: { A1: "1" } }]));
    expect(() => openXlsx(bytes.slice(0, bytes.length / 2))).toThrow(/could not be opened/);
    const files = unzipSync(bytes);
    files["xl/worksheets/sheet0.xml"] = strToU8("<worksheet><sheetData>");
    expect(() => openXlsx(zipSync(files))).toThrow(/could not be opened/);
  });
});
