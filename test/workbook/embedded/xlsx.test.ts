import { english } from "../../../src/reduction/message";
import "./engine-in-node";
import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import ExcelJS from "exceljs";
import { helpers } from "@odoo/o-spreadsheet";
import { demoSheet } from "../../../src/datasheet";
import { Model } from "../../../src/workbook/embedded/engine";
import { noteGetters } from "../../../src/workbook/embedded/notes";
import { EmbeddedPort } from "../../../src/workbook/embedded/port";
import { newWorkbook, type OpenWorkbook } from "../../../src/workbook/embedded/workbook";
import { openXlsx } from "../../../src/workbook/embedded/xlsx/open";
import { saveXlsx } from "../../../src/workbook/embedded/xlsx/saving/save";
import { registerRealFunctions } from "./real-functions";

beforeAll(() => registerRealFunctions({ blankAs: null }));

const workbookOf = (sheets: object[], namedRanges: Record<string, string> = {}): OpenWorkbook => ({
  model: new Model({ sheets, namedRanges } as never),
  localNames: new Map(),
});

/** Everything in a workbook that must survive a file, cell by cell. */
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
          // The right and lower borders of a merged box are on the cells that it covers.
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

/** A blank cell that only the borders of its neighbours touch is not kept as a cell. */
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

  test("keeps every formula, value, format, choice, look and name in a file", () => {
    expect(worthKeeping(contents(again))).toEqual(worthKeeping(contents(port.workbook)));
    expect(namesOf(again)).toEqual(namesOf(port.workbook));
  });

  test("can be read by its local names after reopening", async () => {
    const reopened = new EmbeddedPort(again);
    for (const sheet of (await port.sheetNames()).slice(1)) {
      const names = Object.keys(demoSheet("SI").names);
      const read = await port.readNames(sheet, names);
      expect(Object.keys(read)).toHaveLength(names.length);
      expect(await reopened.readNames(sheet, names)).toEqual(read);
    }
  });

  test("has Excel's own form in the file", () => {
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

  test("can be read by another library, with its local names", async () => {
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
  test("a text that looks like something else stays a text", async () => {
    const texts = ["'00123", "'1/2", "'=SUM(1)", "''quoted'", "'TRUE", "'#N/A", "plain", "'-5", "'+x", "'1e3", "'50%"];
    const cells = Object.fromEntries(texts.map((text, i) => [`A${i + 1}`, text]));
    const workbook = workbookOf([{ id: "s", name: "S", cells }]);
    const again = contents(await reopen(workbook)).S.cells as any;
    expect(texts.map((_, i) => again[`A${i + 1}`].value)).toEqual(texts.map((text) => text.replace(/^'/, "")));
    expect((await parts(workbook))["xl/sharedStrings.xml"]).toContain("<t>00123</t>");
  });

  test("cells of text format hold what was put in, without an apostrophe: inserted, filled, saved and opened", async () => {
    const texts = ["2026-03-09 14:05", "00123", "12-3", "plain", "=sum", "1e3"];
    const port = new EmbeddedPort(newWorkbook());
    const cells = texts.map((value, row) => ({ row, col: 0, kind: "input" as const, value, format: "@" }));
    const blank = texts.map((_, row) => ({ row, col: 1, kind: "input" as const, format: "@" }));
    const sheet = await port.insertSheet({
      name: "Texts",
      rows: texts.length,
      cols: 2,
      cells: [...cells, ...blank],
      names: { filled: { row: 0, col: 1, rows: texts.length, cols: 1 } },
      columnWidths: {},
      merges: [],
      freezeRows: 0,
    });
    await port.fillNames(sheet, { filled: texts });
    const shown = texts.map((text) => [text, text]);
    expect(await port.values(sheet, `A1:B${texts.length}`)).toEqual(shown);
    port.attach(await reopen(port.workbook));
    expect(await port.values(sheet, `A1:B${texts.length}`)).toEqual(shown);
    const { getters } = port.workbook.model;
    const sheetId = getters.getSheetIdByName(sheet)!;
    expect(texts.map((_, row) => getters.getEvaluatedCell({ sheetId, row, col: 0 }).formattedValue)).toEqual(texts);
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

  test("names of the workbook, a formula on another sheet, and a text that looks like a date are kept", async () => {
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

  test("a spill, a reference to it, and the values that Excel shows without the add-in are kept", async () => {
    const cells = { A1: "=CLAY.LOAD_SCHEDULE(12.5,100)", C1: "=SUM(A1#)" };
    const workbook = workbookOf([{ id: "s", name: "S", cells }]);
    const sheet = (await parts(workbook))["xl/worksheets/sheet0.xml"];
    expect(sheet).toContain("_xlfn.ANCHORARRAY(A1)");
    expect(sheet.replace(/\s+/g, " ")).toMatch(/<c r="A4" t="n"><v>100<\/v>/);
    expect(contents(await reopen(workbook))).toEqual(contents(workbook));
  });

  test("a formula with an unknown function, and an unfinished one, are kept", async () => {
    const cells = { A1: "=CLAY.NO_SUCH(1)", A2: "=SUM(1", A3: "=1/0", A4: "=CLAY.WATER_CONTENT(-1,2)" };
    const workbook = workbookOf([{ id: "s", name: "S", cells }]);
    const sheet = (await parts(workbook))["xl/worksheets/sheet0.xml"].replace(/\s+/g, " ");
    expect(sheet).toMatch(/<c r="A3" [^>]*t="e"><f[^>]*>1\/0<\/f><v>#DIV\/0!<\/v>/);
    expect(contents(await reopen(workbook))).toEqual(contents(workbook));
  });
});

describe("files of other programs", () => {
  test("a file written by another library opens, with names of sheets and of the workbook", async () => {
    const other = new ExcelJS.Workbook();
    const sheet = other.addWorksheet("Lab 1");
    sheet.getCell("A1").value = "0012";
    sheet.getCell("A2").value = 12.5;
    sheet.getCell("A2").numFmt = "0.00E+00";
    sheet.getCell("A3").value = { formula: "_xldudf_CLAY_WATER_CONTENT(first_mass,10)", result: 0.25 };
    sheet.getCell("A4").value = { formula: "CLAY.WATER_CONTENT(A2,10)", result: 0.25 };
    sheet.getCell("A5").value = { richText: [{ text: "1" }, { text: "/2", font: { bold: true } }] };
    sheet.getCell("A6").value = { formula: '_xlfn.IFS(A2>1,"say ""yes""",TRUE,"no")' };
    sheet.getCell("A7").value = {
      formula: "_xldudf_CLAY_MV(100,200,0.9,0.85)+CLAY.AV(100,200,0.9,0.85)",
      result: 0.2637,
    };
    sheet.getCell("A8").value = { formula: '"CLAY.MV("&A1', result: "CLAY.MV(0012" };
    sheet.getCell("A2").note = "weighed twice";
    other.definedNames.add("'Lab 1'!$A$2", "first_mass");
    other.definedNames.add("'Lab 1'!$B$1:$B$400", "times");
    const { workbook, remarks } = openXlsx(new Uint8Array((await other.xlsx.writeBuffer()) as ArrayBuffer));
    const cells = contents(workbook)["Lab 1"].cells as any;
    // One of the texts has a word of its own look.
    expect(remarks.map(english)).toEqual([
      expect.stringMatching(/does not keep these contents of the file: the look of single words in a cell\./),
    ]);
    expect(contents(workbook)["Lab 1"].notes).toEqual([{ row: 1, col: 0, text: "weighed twice" }]);
    expect((await new EmbeddedPort(workbook).readNames("Lab 1", ["times"])).times).toHaveLength(400);
    expect(cells.A1.value).toBe("0012");
    expect(cells.A2.formattedValue).toBe("1.25e+01");
    expect(cells.A3).toMatchObject({ formula: "=CLAY.WATER_CONTENT(first_mass,10)", value: expect.closeTo(0.25, 12) });
    expect(cells.A4.value).toBeCloseTo(0.25, 12);
    expect(cells.A5.value).toBe("1/2");
    expect(cells.A6.value).toBe('say "yes"');
    // By hand: 1000 * 0.05 / 1.9 / 100 + 0.05 / 100. The functions have other names now; a text that looks like one
    // stays unchanged.
    expect(cells.A7).toMatchObject({
      formula: "=CLAY.VOLUME_COMPRESSIBILITY(100,200,0.9,0.85)+CLAY.COMPRESSIBILITY(100,200,0.9,0.85)",
      value: expect.closeTo(0.263658, 6),
    });
    expect(cells.A8.value).toBe("CLAY.MV(0012");
  });

  test("an equal local name on two sheets gets one suffix, and a remark lists a name that is not a range", async () => {
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
    expect(remarks.map(english)).toEqual(["Names that are not one range of cells were left out: factor."]);
    expect(namesOf(workbook)).toEqual({ ring: "Test!A1", ring_2: "'Test 2'!A1" });
    const { Sheet1, Test, "Test 2": second } = contents(workbook) as any;
    expect(Test.cells.A2.formula).toBe("=ring*2");
    expect(second.cells.A2.formula).toBe("=ring_2*2");
    expect(Sheet1.cells.A1).toMatchObject({ formula: "=ring_2+ring", value: 10 });
    expect(Sheet1.cells.B1.value).toBe("007");
  });

  test.each<[string, Uint8Array, RegExp]>([
    ["text", strToU8("time,reading\n1,2"), /not an \.xlsx workbook.* The workbook on the page is as it was\.$/],
    ["nothing", new Uint8Array(), /not an \.xlsx workbook.* The workbook on the page is as it was\.$/],
    [
      "a zip of something else",
      zipSync({ "a.txt": strToU8("x") }),
      /not an \.xlsx workbook.* The workbook on the page is as it was\.$/,
    ],
    ["an old or locked workbook", new Uint8Array([0xd0, 0xcf, 0x11, 0xe0]), /old \.xls kind, or one locked/],
  ])("%s is refused with a sentence", (_, bytes, sentence) => {
    jest.spyOn(console, "error").mockImplementation(() => undefined);
    expect(() => openXlsx(bytes)).toThrow(sentence);
  });

  test("a truncated workbook, and one with a broken part, are refused with a sentence", async () => {
    const bytes = await saveXlsx(workbookOf([{ id: "s", name: "S", cells: { A1: "1" } }]));
    expect(() => openXlsx(bytes.slice(0, bytes.length / 2))).toThrow(/damaged: its end is missing/);
    const files = unzipSync(bytes);
    files["xl/worksheets/sheet0.xml"] = strToU8("<worksheet><sheetData>");
    expect(() => openXlsx(zipSync(files))).toThrow(/damaged: its part xl\/worksheets\/sheet0\.xml is not valid XML/);
  });
});
