/** @jest-environment jsdom */
import { OfficePort } from "../../../src/workbook/office";
import { LOOK } from "../../../src/workbook/office/look";
import { WorkbookError, type SheetPlan } from "../../../src/workbook/port";
import { FakeExcel, moveSelection, report, supports } from "./fake-excel";
import { PLAN } from "./plan";

const port = new OfficePort();
const UNPROTECTED = { Protected: false };
const open = (...sheets: string[]): FakeExcel => new FakeExcel(sheets).when(/Protection$/, UNPROTECTED);
const SHEET = 'Workbook.Worksheets.GetItem("{Test}")';

beforeEach(() => supports(17));

describe("insertSheet", () => {
  test("adds a sheet under a free name, and touches no other", async () => {
    const excel = open("test", "Test 2", "Notes");
    await expect(port.insertSheet(PLAN)).resolves.toBe("Test 3");
    expect(excel.sheets.map(({ name }) => name)).toEqual(["test", "Test 2", "Notes", "Test 3"]);
    const touched = excel.steps.map(({ path }) => path).filter((path) => path.includes("Worksheets.GetItem"));
    expect(touched.length).toBeGreaterThan(0);
    expect(touched.filter((path) => !path.startsWith('Workbook.Worksheets.GetItem("{Test 3}")'))).toEqual([]);
  });

  test("names, then formulas, then formats, then the look, and the sheet is shown when it is whole", async () => {
    const excel = open("Sheet1");
    await port.insertSheet(PLAN);
    const lines = excel.lines.filter((line) => line.startsWith(SHEET)).map((line) => line.slice(SHEET.length + 1));
    const order = [
      /^Names\.Add/,
      /Formulas = /,
      /NumberFormat = /,
      /SetCellProperties/,
      /Merge/,
      /PageLayout/,
      /^Activate/,
      /^GetCell\(0,0\)\.Select/,
    ].map((step) => lines.findIndex((line) => step.test(line)));
    expect(order).toEqual([...order].sort((a, b) => a - b));
    expect(order[0]).toBe(0);
  });

  test("the cells go in as one array: formulas with their local names, and texts that Excel cannot misread", async () => {
    const excel = open("Sheet1");
    await port.insertSheet(PLAN);
    const [written, ...more] = excel.steps.filter(({ name }) => name === "Formulas");
    expect(more).toEqual([]);
    expect(written.path).toBe(`${SHEET}.GetRangeByIndexes(0,0,7,4)`);
    expect(written.args[0]).toEqual([
      ["Consolidation test", null, null, null],
      ["Specimen", null, null, null],
      ["Initial height", 19.05, "mm", null],
      ["Length unit", "mm", null, null],
      ["Height after load", "=t50_*initial_height", null, null],
      ["'00123", "'=not a formula", "'Mar 3", null],
      [null, true, null, null],
    ]);
    const [formats] = excel.steps.filter(({ name }) => name === "NumberFormat");
    expect(formats.args[0]).toEqual([
      [null, null, null, null],
      [null, null, null, null],
      [null, "0.00", null, null],
      [null, "@", null, null],
      [null, "0.000", null, null],
      [null, null, null, null],
      [null, null, null, null],
    ]);
  });

  test("names are the sheet's own, on ranges", async () => {
    const excel = open("Sheet1");
    await port.insertSheet(PLAN);
    expect(excel.lines.filter((line) => line.includes("Names.Add"))).toEqual([
      `${SHEET}.Names.Add("initial_height",${SHEET}.GetRangeByIndexes(2,1,1,1),)`,
      `${SHEET}.Names.Add("t50_",${SHEET}.GetRangeByIndexes(3,1,2,1),)`,
    ]);
  });

  test("each kind has its look, over the whole of a merged box", async () => {
    const excel = open("Sheet1");
    await port.insertSheet(PLAN);
    const [{ args }] = excel.steps.filter(({ name }) => name === "SetCellProperties");
    const looks = args[0] as { format?: unknown }[][];
    expect(looks[0]).toEqual(Array(4).fill({ format: LOOK.title }));
    expect(looks[1]).toEqual([{ format: LOOK.heading }, {}, {}, {}]);
    expect(looks[2]).toEqual([{ format: LOOK.label }, { format: LOOK.input }, { format: LOOK.unit }, {}]);
    expect(looks[4][1]).toEqual({ format: LOOK.result });
  });

  test("merges, widths, choices, frozen rows and the printed page", async () => {
    const excel = open("Sheet1");
    await port.insertSheet(PLAN);
    const lines = excel.lines.map((line) => line.replaceAll(SHEET, "sheet"));
    expect(lines).toEqual(
      expect.arrayContaining([
        "sheet.GetRangeByIndexes(0,0,1,4).Merge()",
        "sheet.GetRangeByIndexes(0,0,1,1).GetEntireColumn().Format.ColumnWidth = 129.75",
        "sheet.GetRangeByIndexes(0,3,1,1).GetEntireColumn().Format.ColumnWidth = 56.25",
        'sheet.GetRangeByIndexes(3,1,1,1).DataValidation.Rule = {"list":{"inCellDropDown":true,"source":"mm,cm,in"}}',
        "sheet.FreezePanes.FreezeRows(1)",
        'sheet.PageLayout.Orientation = "Portrait"',
        'sheet.PageLayout.Zoom = {"horizontalFitToPages":1}',
        'sheet.PageLayout.SetPrintArea("$A$1:$D$7")',
        "sheet.PageLayout.SetPrintTitleRows(sheet.GetRangeByIndexes(0,0,1,1).GetEntireRow())",
      ]),
    );
  });

  test("pages that are planned are printed one by one, turned where they are wide", async () => {
    const excel = open("Sheet1");
    const pages = [
      { row: 0, col: 0, rows: 5, cols: 14 },
      { row: 5, col: 0, rows: 2, cols: 2 },
    ];
    await port.insertSheet({ ...PLAN, cols: 14, pages });
    const lines = excel.lines.map((line) => line.replaceAll(SHEET, "sheet"));
    expect(lines).toContain('sheet.PageLayout.SetPrintArea("$A$1:$N$5,$A$6:$B$7")');
    expect(lines).toContain('sheet.PageLayout.Orientation = "Landscape"');
  });

  test("text that is broken into lines, and rows of a height of their own", async () => {
    const excel = open("Sheet1");
    const cells: SheetPlan["cells"] = [{ row: 1, col: 0, kind: "note", value: "A long remark", wrap: true }];
    await port.insertSheet({ ...PLAN, cells, rowHeights: { 1: 42 } });
    const [looks] = excel.steps.filter(({ name }) => name === "SetCellProperties");
    expect((looks.args[0] as any)[1][0].format).toMatchObject({ wrapText: true, verticalAlignment: "Top" });
    const lines = excel.lines.map((line) => line.replaceAll(SHEET, "sheet"));
    expect(lines).toContain("sheet.GetRangeByIndexes(1,0,1,1).GetEntireRow().Format.RowHeight = 42");
  });

  // The library's npm build stops before ExcelApi 1.18, so `notes` is put in; its shape is checked against the types.
  test.each([
    [17, []],
    [18, [["GetRangeByIndexes", "Mean of four readings of the calliper."]]],
  ])("notes with ExcelApi 1.%d", async (version, expected) => {
    supports(version);
    const added: unknown[] = [];
    open("Sheet1");
    const notes: Pick<Excel.NoteCollection, "add"> = {
      add: (range, text) => {
        added.push([range instanceof Excel.Range && "GetRangeByIndexes", text]);
        return {} as Excel.Note;
      },
    };
    Object.defineProperty(Excel.Worksheet.prototype, "notes", { get: () => notes, configurable: true });
    await port.insertSheet(PLAN);
    expect(added).toEqual(expected);
  });

  test("a long sheet goes in pieces: few requests, each far below Excel's 5 MB, and every cell once", async () => {
    const rows = 1500;
    const cols = 20;
    const cells = Array.from({ length: rows * cols }, (_, index) => ({
      row: Math.floor(index / cols),
      col: index % cols,
      kind: "input" as const,
      value: index,
    }));
    const excel = open("Sheet1");
    await port.insertSheet({ ...PLAN, name: "Test", rows, cols, cells });
    expect(Math.max(...excel.sizes)).toBeLessThan(1e6);
    expect(excel.sizes.length).toBeLessThan(30);
    const written = excel.steps.filter(({ name }) => name === "Formulas");
    const at = written.map(({ path }) => Number(/GetRangeByIndexes\((\d+),0,/.exec(path)![1]));
    expect(at).toEqual(Array.from({ length: 20 }, (_, index) => 75 * index));
    expect(written.flatMap(({ args }) => (args[0] as number[][]).flat())).toEqual(cells.map(({ value }) => value));
  });

  test("a formula with an unknown name is refused before Excel is asked anything", async () => {
    const excel = open("Sheet1");
    const cells: SheetPlan["cells"] = [{ row: 0, col: 0, kind: "result", formula: "={nowhere}+1" }];
    await expect(port.insertSheet({ ...PLAN, cells })).rejects.toThrow("refers to {nowhere}");
    expect(excel.steps).toEqual([]);
  });

  test("a name held by a chart sheet, which Excel does not list, is passed over", async () => {
    const excel = open("Sheet1").refuse(/Worksheets\.Add\("Test"\)/, "ItemAlreadyExists");
    await expect(port.insertSheet(PLAN)).resolves.toBe("Test 2");
    expect(excel.sheets.map(({ name }) => name)).toEqual(["Sheet1", "Test 2"]);
  });

  test("page set-up that a machine without a printer refuses does not cost the sheet", async () => {
    const excel = open("Sheet1").refuse(/PageLayout/, "GeneralException");
    await expect(port.insertSheet(PLAN)).resolves.toBe("Test");
    expect(excel.lines.at(-1)).toContain("Select()");
  });
});

describe("a refused insert leaves the workbook as it was and says why in one sentence", () => {
  const refusals: [string, RegExp, string, RegExp][] = [
    ["no sheet may be added", /Worksheets\.Add/, "AccessDenied", /could not add a sheet: it is protected, or open for/],
    ["a name", /Names\.Add\("t50_/, "InvalidArgument", /could not name the cells .* does not accept a value or a name/],
    ["a formula", /Formulas =/, "InvalidArgument", /could not fill in the new sheet/],
    ["a format", /NumberFormat =/, "GeneralException", /could not fill in the new sheet: out of order/],
    ["a look", /SetCellProperties/, "UnsupportedFeature", /could not fill in .* a newer one is needed/],
    ["the choices", /DataValidation/, "InvalidOperationInCellEditMode", /a cell is being edited: press Enter or Esc/],
    ["frozen rows", /FreezeRows/, "RequestAborted", /Excel is busy/],
    ["showing it", /Activate/, "AccessDenied", /could not show the new sheet/],
  ];

  test.each(refusals)("%s", async (_, action, code, sentence) => {
    const excel = open("Sheet1", "Notes").refuse(action, code, "out of order.");
    const failure = await port.insertSheet(PLAN).catch((error: unknown) => error);
    expect(failure).toBeInstanceOf(WorkbookError);
    expect((failure as Error).message).toMatch(sentence);
    expect((failure as Error).message).toMatch(/\. The workbook is as it was\.$/);
    expect(excel.sheets.map(({ name }) => name)).toEqual(["Sheet1", "Notes"]);
  });

  test("a protected structure is met before anything is added", async () => {
    const excel = new FakeExcel(["Sheet1"]).when(/Protection$/, { Protected: true });
    await expect(port.insertSheet(PLAN)).rejects.toThrow("unprotect it (Review, Protect Workbook)");
    expect(excel.lines.filter((line) => line.includes("Add("))).toEqual([]);
  });

  test("where even the clearing up is refused, the sentence says what is left", async () => {
    const excel = open("Sheet1")
      .refuse(/Formulas =/, "GeneralException", "host fault")
      .refuse(/Delete/, "AccessDenied");
    await expect(port.insertSheet(PLAN)).rejects.toThrow(
      'Excel could not fill in the new sheet: host fault. An unfinished sheet "Test" was left behind: delete it.',
    );
    expect(excel.sheets.map(({ name }) => name)).toEqual(["Sheet1", "Test"]);
  });
});

describe("reading", () => {
  const times = [
    [0.1, 5.21],
    [0.25, ""],
    ["#N/A", true],
  ];

  test("sheetNames", async () => {
    open("Sheet1", "Notes");
    await expect(port.sheetNames()).resolves.toEqual(["Sheet1", "Notes"]);
  });

  type Place = [row: number, col: number, rows: number, cols: number];
  const areas = (...places: Place[]) => ({
    _Items: places.map(([RowIndex, ColumnIndex, RowCount, ColumnCount]) => ({
      RowIndex,
      ColumnIndex,
      RowCount,
      ColumnCount,
    })),
  });
  /** Blocks picked on a sheet, and what of them is filled in. */
  const picking = (picked: Place[], filled: Place[] = []) =>
    open("Sheet1")
      .when(/GetSelectedRanges\(\)\.Areas$/, areas(...picked))
      .when(/GetUsedRangeAreasOrNullObject\(true\)\.Areas$/, areas(...filled))
      .when(/GetUsedRangeAreasOrNullObject\(true\)$/, filled.length > 0 ? {} : null)
      .when(/GetSelectedRanges\(\)\.Worksheet$/, { Name: "Load 1!" })
      .when(/GetRangeByIndexes\((\d+,){3}\d+\)$/, (path) => {
        const [rows, cols] = path
          .match(/(\d+),(\d+)\)$/)!
          .slice(1)
          .map(Number);
        return { RowCount: rows, ColumnCount: cols };
      });
  const column = (values: unknown[]) => ({ Values: values.map((value) => [value]) });

  test("selection: sheet, address without it, values with blanks and error codes as text", async () => {
    picking([[3, 1, 3, 2]]).when(/GetRangeByIndexes\(3,1,3,2\)\.GetCell\(0,0\)\.GetResizedRange\(2,1\)$/, {
      Values: times,
    });
    await expect(port.selection()).resolves.toEqual({ sheet: "Load 1!", address: "B4:C6", values: times });
  });

  test("whole columns are cut to what is filled in", async () => {
    picking([[0, 1, 1048576, 2]], [[0, 1, 3, 2]]).when(/GetRangeByIndexes\(0,1,3,2\)\.GetCell/, { Values: times });
    await expect(port.selection()).resolves.toEqual({ sheet: "Load 1!", address: "B1:C3", values: times });
  });

  test("whole columns picked with Ctrl are cut to the same rows, though one ends sooner", async () => {
    const excel = picking(
      [
        [0, 3, 1048576, 1],
        [0, 1, 1048576, 1],
      ],
      [
        [0, 3, 2, 1],
        [1, 1, 2, 1],
      ],
    )
      .when(/GetRangeByIndexes\(0,1,3,1\)\.GetCell/, column(["", 2, 3]))
      .when(/GetRangeByIndexes\(0,3,3,1\)\.GetCell/, column([10, 20, ""]));
    await expect(port.selection()).resolves.toEqual({
      sheet: "Load 1!",
      address: "B1:B3,D1:D3",
      values: [
        ["", 10],
        [2, 20],
        [3, ""],
      ],
    });
    expect(excel.steps.some(({ path }) => path.includes("1048576"))).toBe(false);
  });

  test("whole columns with nothing in them are refused with a remedy, not read", async () => {
    picking([[0, 1, 1048576, 2]]);
    await expect(port.selection()).rejects.toThrow("The range has 2097152 cells: choose fewer than 1000000.");
  });

  test("blocks picked with Ctrl are joined side by side, in order of their columns", async () => {
    picking([
      [3, 3, 2, 1],
      [3, 1, 2, 1],
    ])
      .when(/GetRangeByIndexes\(3,1,2,1\)\.GetCell/, column([1, 2]))
      .when(/GetRangeByIndexes\(3,3,2,1\)\.GetCell/, column([10, 20]));
    await expect(port.selection()).resolves.toEqual({
      sheet: "Load 1!",
      address: "B4:B5,D4:D5",
      values: [
        [1, 10],
        [2, 20],
      ],
    });
  });

  test("blocks of different rows, or over one another, are refused with what to do", async () => {
    picking([
      [3, 1, 2, 1],
      [3, 3, 3, 1],
    ]);
    await expect(port.selection()).rejects.toThrow(
      "in different rows (4 to 5, 4 to 6): pick blocks that begin and end in the same rows, or one block.",
    );
    picking([
      [3, 1, 2, 2],
      [3, 2, 2, 1],
    ]);
    await expect(port.selection()).rejects.toThrow("picked twice: pick each column once");
  });

  test("a chart in the place of cells", async () => {
    open("Sheet1").refuse(/GetSelectedRange/, "InvalidSelection");
    await expect(port.selection()).rejects.toThrow("select cells, and try again");
  });

  test("values of an address of several blocks", async () => {
    open("Sheet1")
      .when(/GetRange\("D4:D5"\)$/, { RowIndex: 3, ColumnIndex: 3, RowCount: 2, ColumnCount: 1 })
      .when(/GetRange\("B4:B5"\)$/, { RowIndex: 3, ColumnIndex: 1, RowCount: 2, ColumnCount: 1 })
      .when(/GetRange\("B4:B5"\)\.GetCell/, column([1, 2]))
      .when(/GetRange\("D4:D5"\)\.GetCell/, column([10, 20]));
    await expect(port.values("Sheet1", "D4:D5,B4:B5")).resolves.toEqual([
      [1, 10],
      [2, 20],
    ]);
  });

  test("values of a long range come in pieces, in order", async () => {
    const excel = open("Sheet1")
      .when(/GetRange\("A1:B60000"\)$/, { RowIndex: 0, ColumnIndex: 0, RowCount: 60000, ColumnCount: 2 })
      .when(/GetCell\((\d+),0\)\.GetResizedRange/, (path: string) => {
        const [, first, rows] = /GetCell\((\d+),0\)\.GetResizedRange\((\d+),1\)/.exec(path)!.map(Number);
        return { Values: Array.from({ length: rows + 1 }, (_, row) => [first + row, -first - row]) };
      });
    const values = await port.values("Sheet1", "A1:B60000");
    expect(values).toHaveLength(60000);
    expect(values.every(([a, b], row) => a === row && b === -row)).toBe(true);
    expect(excel.sizes.length).toBeGreaterThan(3);
  });

  test("a sheet that is not there", async () => {
    open("Sheet1");
    await expect(port.values("Gone", "A1")).rejects.toThrow('There is no sheet called "Gone" in this workbook.');
    await expect(port.readNames("Gone", ["a"])).rejects.toBeInstanceOf(WorkbookError);
  });

  test("the names of a whole sheet of readings come in answers that Excel on the web can send", async () => {
    const excel = open("Sheet1")
      .when(/\.Names\./, null)
      .when(/"readings_\d+"\)$/, { Type: "Range" });
    const names = Array.from({ length: 48 }, (_, load) => `readings_${load}`);
    const values = Array.from({ length: 2000 }, (_, row) => [row]);
    excel.when(/"readings_\d+"\)\.GetRangeOrNullObject\(\)$/, { Values: values });
    const read = await port.readNames("Sheet1", names);
    expect(Object.keys(read)).toEqual(names);
    expect(Object.values(read).every((column) => column.length === 2000)).toBe(true);
    const loaded = excel.steps.filter(({ verb, path }) => verb === "load" && /GetRangeOrNullObject\(\)$/.test(path));
    const perRequest = new Map<number, number>();
    for (const { request } of loaded) perRequest.set(request, (perRequest.get(request) ?? 0) + 1);
    // One request asks for the sizes of all; of the others, none asks for more than 50,000 cells.
    expect(perRequest.size).toBe(3);
    expect([...perRequest.values()].slice(1)).toEqual([25, 23]);
  });

  test("readNames: names that are absent or have lost their cells are left out", async () => {
    open("Sheet1")
      .when(/\.Names\./, null)
      .when(/"(initial_height|t50_|gone)"\)$/, { Type: "Range" })
      .when(/"lost"\)$/, { Type: "Error" })
      .when(/"constant"\)$/, { Type: "Double" })
      .when(/"initial_height"\)\.GetRangeOrNullObject\(\)$/, { Values: [[19.05]] })
      .when(/"t50_"\)\.GetRangeOrNullObject\(\)$/, { Values: [[1], [""]] })
      .when(/"gone"\)\.GetRangeOrNullObject\(\)$/, null)
      .refuse(/"(lost|constant)"\)\.GetRangeOrNullObject/, "InvalidReference");
    const wanted = ["initial_height", "t50", "lost", "constant", "gone", "absent"];
    await expect(port.readNames("Sheet1", wanted)).resolves.toEqual({ initial_height: [[19.05]], t50: [[1], [""]] });
  });
});

describe("show", () => {
  const seen = (visibility: string) =>
    open("Sheet1").when(/GetItemOrNullObject\("Sheet1"\)$/, { Visibility: visibility });

  test("brings the sheet to the front, then selects", async () => {
    const excel = seen("Visible");
    await port.show("Sheet1", "B4:C18");
    expect(excel.lines.slice(-2)).toEqual([
      'Workbook.Worksheets.GetItemOrNullObject("Sheet1").Activate()',
      'Workbook.Worksheets.GetItemOrNullObject("Sheet1").GetRange("B4:C18").Select()',
    ]);
  });

  test.each([
    ["Hidden", "is hidden: show it (right click on a sheet's tab, Unhide)"],
    ["VeryHidden", "is hidden by a macro or another add-in"],
  ])("a sheet that is %s: said so, and nothing is moved", async (visibility, sentence) => {
    const excel = seen(visibility);
    await expect(port.show("Sheet1", "B4")).rejects.toThrow(sentence);
    expect(excel.lines.filter((line) => /Activate|Select\(/.test(line))).toEqual([]);
  });

  test("an address that is none, or a sheet that is gone", async () => {
    seen("Visible").refuse(/Select\(/, "InvalidArgument");
    await expect(port.show("Sheet1", "rubbish")).rejects.toThrow("could not show rubbish");
    await expect(port.show("Gone", "B4")).rejects.toThrow('There is no sheet called "Gone"');
  });
});

describe("readContents", () => {
  test("formulas by the plan's names, constants as they are, missing names left out", async () => {
    open("Sheet1")
      .when(/\.Names\./, null)
      .when(/"(initial_height|t50_)"\)$/, { Type: "Range" })
      .when(/"initial_height"\)\.GetRangeOrNullObject\(\)$/, { Formulas: [[19.05], ["text"], [""]] })
      .when(/"t50_"\)\.GetRangeOrNullObject\(\)$/, {
        Formulas: [[`=t50_*d100_+initial_height_+'t50_ x'!A1+CLAY.T50_(1)&"t50_"`]],
      });
    await expect(port.readContents("Sheet1", ["initial_height", "t50", "absent"])).resolves.toEqual({
      initial_height: [[19.05], ["text"], [""]],
      t50: [[`=t50*d100+initial_height_+'t50_ x'!A1+CLAY.T50_(1)&"t50_"`]],
    });
  });
});

describe("hidden", () => {
  test("rows and columns by their place on the sheet", async () => {
    open("Sheet1")
      .when(/GetUsedRangeOrNullObject\(\)$/, { RowIndex: 2, ColumnIndex: 1 })
      .when(/GetRowProperties\(\)$/, [{ rowHidden: false }, { rowHidden: true }, { rowHidden: true }])
      .when(/GetColumnProperties\(\)$/, [{ columnHidden: true }, { columnHidden: false }]);
    await expect(port.hidden("Sheet1")).resolves.toEqual({ rows: [3, 4], cols: [1] });
  });

  test("an empty sheet has none", async () => {
    open("Sheet1").when(/GetUsedRangeOrNullObject\(\)$/, null);
    await expect(port.hidden("Sheet1")).resolves.toEqual({ rows: [], cols: [] });
  });
});

describe("fillNames", () => {
  const sheet = (formulas: unknown[][]) =>
    open("Sheet1")
      .when(/\.Names\./, null)
      .when(/"(times_01|readings_01)"\)$/, { Type: "Range" })
      .when(/"times_01"\)\.GetRangeOrNullObject\(\)$/, { Formulas: [[0], [0.1], [0.25]] })
      .when(/"readings_01"\)\.GetRangeOrNullObject\(\)$/, { Formulas: formulas });
  const written = (excel: FakeExcel) =>
    excel.steps
      .filter(({ verb }) => verb === "set")
      .map(({ path, name, args }) => [/"(\w+)"\)\.Get/.exec(path)?.[1], name, args[0]]);
  const BLANK = [[""], [""], [""]];

  test("constants go in from the top; null leaves a cell, text stays text", async () => {
    const excel = sheet(BLANK);
    await port.fillNames("Sheet1", { times_01: [0, null, ""], readings_01: [1.5, "1/2"] }, ["readings_01"]);
    expect(written(excel)).toEqual([
      ["times_01", "Values", [[0], [null], [""]]],
      ["readings_01", "Values", [[1.5], ["'1/2"]]],
    ]);
  });

  test.each<[string, unknown[][], Record<string, number[]>, RegExp]>([
    ["cells that must be blank and are not", [[7], [""], [""]], { readings_01: [1] }, /holds 1 value already/],
    ["a formula in the way", [[""], ["=B2"], [""]], { readings_01: [1, 2] }, /Row 2 of "readings_01".*formula/],
    ["more values than cells", BLANK, { readings_01: [1, 2, 3, 4] }, /has 3 cells, and 4 are needed/],
    ["a name that is not there", BLANK, { readings_02: [1] }, /no cells named "readings_02"/],
  ])("%s: refused, and nothing is written", async (_, formulas, values, reason) => {
    const excel = sheet(formulas);
    const blank = formulas[0][0] === 7 ? ["readings_01"] : [];
    await expect(port.fillNames("Sheet1", values, blank)).rejects.toThrow(reason);
    await expect(port.fillNames("Sheet1", values, blank)).rejects.toThrow(/Nothing was written/);
    expect(written(excel)).toEqual([]);
  });

  describe("refused half-way", () => {
    const HELD: Record<string, unknown[]> = {
      times_01: [0, "'", "=A1"],
      readings_01: [7, "=B2", ""],
      remarks: ["1/2", "", "dry"],
    };
    /** Cells that keep what is written into them. */
    const remembering = () => {
      const excel = open("Sheet1").when(/\.Names\./, null);
      const now = (name: string): unknown[] => {
        const held = [...HELD[name]];
        for (const { path, verb, args } of excel.steps)
          if (verb === "set" && path.includes(`"${name}"`))
            (args[0] as unknown[][]).forEach(([value], i) => {
              if (value !== null) held[i] = typeof value === "string" ? value.replace(/^'(?=.)/, "") : value;
            });
        return held;
      };
      for (const name of Object.keys(HELD))
        excel
          .when(new RegExp(`"${name}"\\)$`), { Type: "Range" })
          .when(new RegExp(`"${name}"\\)\\.GetRangeOrNullObject\\(\\)$`), () => ({
            Formulas: now(name).map((content) => [content]),
          }));
      return { excel, cells: () => Object.fromEntries(Object.keys(HELD).map((name) => [name, now(name)])) };
    };
    const VALUES = { times_01: [5, 6], readings_01: [8, null, 9], remarks: ["=x", "new"] };

    test.each([
      ["the first name", /times_01.*Values = /, "AccessDenied", /protected/],
      ["the second name", /readings_01.*Values = /, "AccessDenied", /protected/],
      ["the last name", /remarks.*Values = /, "RequestPayloadSizeLimitExceeded", /too large: choose fewer cells/],
      ["the last name", /remarks.*Values = /, "InvalidOperationInCellEditMode", /press Enter or Esc/],
    ])("%s: every cell is put back, formulas and texts too (%s, %s)", async (_, action, code, sentence) => {
      const { excel, cells } = remembering();
      excel.refuse(action, code, "refused", 1);
      const failure = port.fillNames("Sheet1", VALUES);
      await expect(failure).rejects.toThrow(sentence);
      await expect(failure).rejects.toThrow(
        /could not write into the sheet "Sheet1": .*\. The cells are as they were\.$/,
      );
      expect(cells()).toEqual(HELD);
      // What was to be left alone is not touched by the putting back either: an answer may spill into it.
      const written = excel.steps.filter(({ verb, path }) => verb === "set" && path.includes("readings_01"));
      expect(written.length).toBeGreaterThan(0);
      for (const { args } of written) expect((args[0] as unknown[][])[1]).toEqual([null]);
      // A text that Excel would read as something else is put back as text.
      const remarks = excel.steps.filter(({ verb, path }) => verb === "set" && path.includes("remarks"));
      expect(remarks.at(-1)!.args[0]).toEqual([["'1/2"], [""]]);
      await port.fillNames("Sheet1", VALUES);
      expect(cells()).toEqual({
        times_01: [5, 6, "=A1"],
        readings_01: [8, "=B2", 9],
        remarks: ["=x", "new", "dry"],
      });
    });

    test("a name whose cells are locked cannot be put back, and does not keep the others", async () => {
      const { excel, cells } = remembering();
      excel.refuse(/readings_01.*Values = /, "AccessDenied");
      await expect(port.fillNames("Sheet1", VALUES)).rejects.toThrow(/protected.* The cells are as they were\.$/);
      expect(cells()).toEqual(HELD);
    });

    test("where the cells cannot be put back, the sentence does not say that they are", async () => {
      const { excel } = remembering();
      excel.refuse(/readings_01.*Values = /, "AccessDenied").refuse(/times_01.*Values = \[\[0\]/, "AccessDenied");
      await expect(port.fillNames("Sheet1", VALUES)).rejects.toThrow(/Some cells may have been written: compare them/);
    });

    test("the sheet deleted, or the connection lost, between looking and writing", async () => {
      for (const [code, sentence] of [
        ["ItemNotFound", /it is not there: it may have been renamed or deleted\. Some cells may/],
        ["InvalidOrTimedOutSession", /the connection to Excel was lost: reload the workbook, and try again\. Some/],
      ] as const) {
        const { excel } = remembering();
        excel.refuse(/Values = /, code);
        excel.when(/"times_01"\)\.GetRangeOrNullObject\(\)$/, () => ({ Formulas: [[excel.steps.length], [""], [""]] }));
        await expect(port.fillNames("Sheet1", VALUES)).rejects.toThrow(sentence);
      }
    });
  });
});

describe("the add-in loaded anew in the middle of its work", () => {
  test("a half-made sheet is told, touched no more, and does not stand in the way of the next", async () => {
    const excel = open("Sheet1")
      .refuse(/Formulas = /, "InvalidOrTimedOutSession", "gone", 1)
      .refuse(/Delete/, "InvalidOrTimedOutSession", "gone", 1);
    await expect(port.insertSheet(PLAN)).rejects.toThrow(
      /the connection to Excel was lost.* An unfinished sheet "Test" was left behind: delete it\.$/,
    );
    const before = excel.steps.length;
    await expect(new OfficePort().insertSheet(PLAN)).resolves.toBe("Test 2");
    expect(excel.sheets.map(({ name }) => name)).toEqual(["Sheet1", "Test", "Test 2"]);
    const touched = excel.steps.slice(before).filter(({ path }) => path.includes('GetItem("{Test}")'));
    expect(touched).toEqual([]);
  });

  test("listeners of the page before are not heard by the new one", async () => {
    open("Sheet1");
    const old = jest.fn();
    const stop = await port.onChange(old);
    stop();
    const listener = jest.fn();
    const leave = await new OfficePort().onChange(listener);
    await new Promise((resolve) => setTimeout(resolve, 80));
    report("changed");
    await new Promise((resolve) => setTimeout(resolve, 80));
    expect([old.mock.calls.length, listener.mock.calls.length]).toEqual([0, 1]);
    leave();
  });
});

describe("a hidden sheet", () => {
  test("is read and written by its names like any other", async () => {
    const excel = open("Sheet1")
      .when(/\.Names\./, null)
      .when(/GetItemOrNullObject\("Sheet1"\)$/, { Visibility: "VeryHidden" })
      .when(/"mass"\)$/, { Type: "Range" })
      .when(/"mass"\)\.GetRangeOrNullObject\(\)$/, { Values: [[3]], Formulas: [[3]] });
    await expect(port.readNames("Sheet1", ["mass"])).resolves.toEqual({ mass: [[3]] });
    await port.fillNames("Sheet1", { mass: [4] });
    expect(excel.lines.at(-1)).toMatch(/Values = \[\[4\]\]$/);
  });
});

test("a sheet that is to stay behind is not shown", async () => {
  const excel = open("Sheet1");
  await port.insertSheet({ ...PLAN, behind: true });
  expect(excel.lines.filter((line) => /Activate|Select\(/.test(line))).toEqual([]);
});

describe("onChange", () => {
  const settle = (): Promise<void> => new Promise((resolve) => setTimeout(resolve, 80));

  test.each([
    ["the selection", moveSelection],
    ["a value", () => report("changed")],
    ["a result", () => report("calculated")],
    ["the sheet in front", () => report("activated")],
  ])("follows %s, until it is told to stop", async (_, happen) => {
    open("Sheet1");
    const listener = jest.fn();
    const stop = await port.onChange(listener);
    await settle();
    happen();
    await settle();
    expect(listener).toHaveBeenCalledTimes(1);
    stop();
    await settle();
    happen();
    await settle();
    expect(listener).toHaveBeenCalledTimes(1);
  });

  test("one entry that fires several events is heard once", async () => {
    open("Sheet1");
    const listener = jest.fn();
    const stop = await port.onChange(listener);
    await settle();
    report("changed");
    report("calculated");
    moveSelection();
    await settle();
    expect(listener).toHaveBeenCalledTimes(1);
    stop();
  });
});

test("the object model is Excel's own: a property that was not loaded cannot be read", async () => {
  open("Sheet1").when(/GetRange/, { Values: [[1]] });
  const read = Excel.run(async (context) => {
    const range = context.workbook.worksheets.getItem("Sheet1").getRange("A1").load("values");
    await context.sync();
    expect(range.values).toEqual([[1]]);
    return range.address;
  });
  await expect(read).rejects.toMatchObject({ code: "PropertyNotLoaded" });
});
