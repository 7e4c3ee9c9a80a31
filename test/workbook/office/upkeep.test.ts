/** @jest-environment jsdom */
/** Maintenance of a sheet, in the strict stand-in for Excel. */
import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import { OfficePort } from "../../../src/workbook/office";
import { asTyped } from "../../../src/workbook/office/reenter";
import { withoutNotes } from "../../../src/workbook/file/xlsx-file";
import { StrictExcel, type Options } from "../../excel/strict-excel";

const port = new OfficePort();
let excel: StrictExcel;
const open = (options: Options = {}): StrictExcel => (excel = new StrictExcel(options));
afterEach(() => expect(excel?.faults ?? []).toEqual([]));

describe("nameAll", () => {
  test("a name that does not exist is added to the sheet", async () => {
    open();
    await port.nameAll("Sheet1", [{ name: "t50", address: "D4:D9" }]);
    expect(excel.sheet("Sheet1").names).toEqual({ t50_: "=Sheet1!$D$4:$D$9" });
  });

  test("a name with cells is refused, and moved only with `replace`; formulas keep it", async () => {
    open({ sheets: ["Ring's"] });
    excel.sheet("Ring's").name("ring_mass", "='Ring''s'!$B$7");
    await expect(port.nameAll("Ring's", [{ name: "ring_mass", address: "D4" }])).rejects.toThrow(
      /"ring_mass" is already at B7 and was left there/,
    );
    expect(excel.sheet("Ring's").names).toEqual({ ring_mass: "='Ring''s'!$B$7" });
    await port.nameAll("Ring's", [{ name: "ring_mass", address: "D4", replace: true }]);
    expect(excel.sheet("Ring's").names).toEqual({ ring_mass: "='Ring''s'!$D$4" });
    expect(excel.lines.filter((line) => /\.delete\(|names\.add/.test(line))).toEqual([]);
  });

  test.each(["=#REF!", "=Sheet1!$A$1,Sheet1!$C$1", "=5"])(
    "a bad name (%s) is corrected without `replace`",
    async (refers) => {
      open().sheet("Sheet1").name("ring_mass", refers);
      await port.nameAll("Sheet1", [{ name: "ring_mass", address: "D4" }]);
      expect(excel.sheet("Sheet1").names).toEqual({ ring_mass: "=Sheet1!$D$4" });
    },
  );
});

test.each(["en-US", "de-DE"])(
  "the names that Excel gives to the printed pages are not listed in %s",
  async (locale) => {
    open({ locale });
    excel.sheet("Sheet1").name("ring_mass", "B7");
    await Excel.run(async (context) => {
      const { pageLayout } = context.workbook.worksheets.getItem("Sheet1");
      pageLayout.setPrintArea("A1:H60,A61:H120");
      pageLayout.setPrintTitleRows("1:1");
      await context.sync();
    });
    expect((await port.listNames("Sheet1")).map(({ name }) => name)).toEqual(["ring_mass"]);
  },
);

describe("protection", () => {
  test("is put on and lifted; nothing happens if it is already so", async () => {
    open();
    await port.protect("Sheet1", true);
    await expect(port.isProtected("Sheet1")).resolves.toBe(true);
    await port.protect("Sheet1", true);
    await port.protect("Sheet1", false);
    await port.protect("Sheet1", false);
    await expect(port.isProtected("Sheet1")).resolves.toBe(false);
    expect(excel.lines.filter((line) => /rotect\(/.test(line))).toHaveLength(2);
  });

  describe("somebody else at the same time", () => {
    const data = () => excel.sheet("Sheet1");
    const isOn = (): boolean => data().sheet.protection.on;
    const begin = (): StrictExcel => {
      open({ evaluator: () => 7 });
      data()
        .put("A1", [["=_xldudf_CLAY_STRAIN(B5)"]])
        .protect({ allowSort: true });
      return excel;
    };

    test.each<[string, () => Promise<unknown>]>([
      ["lifting it", () => port.protect("Sheet1", false)],
      ["entering formulas again", () => port.reenterFormulas("Sheet1")],
    ])("lifts it: %s leaves it lifted", async (_, work) => {
      const { trips } = await begin().cost(work);
      for (let n = 1; n <= trips; n++) {
        let wasOn = false;
        begin().beforeRequest(n, () => {
          wasOn = isOn();
          data().unprotect();
        });
        await work();
        if (wasOn) expect([n, isOn()]).toEqual([n, false]);
        await expect(port.unfinishedWork()).resolves.toEqual([]);
      }
    });

    test("puts it on while it is lifted: it stays, and nothing is said", async () => {
      const { trips } = await begin().cost(() => port.reenterFormulas("Sheet1"));
      const ends: unknown[] = [];
      for (let n = 1; n <= trips; n++) {
        begin().beforeRequest(n, () => {
          if (isOn() || data().cell("A1").formula !== "=CLAY.STRAIN(B5)") return;
          data().protect({ allowInsertRows: true });
        });
        await port.reenterFormulas("Sheet1");
        expect([n, isOn()]).toEqual([n, true]);
        await expect(port.unfinishedWork()).resolves.toEqual([]);
        ends.push(data().sheet.protection.options.allowInsertRows);
      }
      expect(ends).toContain(true);
    });
  });

  test("with a password gives a sentence with the remedy, and the sheet is unchanged; without the password it works", async () => {
    open().sheet("Sheet1").protect({}, "secret");
    await expect(port.protect("Sheet1", false)).rejects.toThrow(
      /password: lift it in Excel \(Review, Unprotect Sheet\)/,
    );
    await expect(port.isProtected("Sheet1")).resolves.toBe(true);
    excel.sheet("Sheet1").unprotect();
    await port.protect("Sheet1", true);
    await expect(port.isProtected("Sheet1")).resolves.toBe(true);
  });
});

describe("a formula as a person types it", () => {
  test.each([
    ["=_xldudf_CLAY_STRAIN(A1,B1)", "=CLAY.STRAIN(A1,B1)"],
    // office-js issue 4811: the file of the Analysis ToolPak stands before a function of an add-in.
    [
      "='C:\\Program Files\\Microsoft Office\\Root\\Office16\\LIBRARY\\Analysis\\FUNCRES.XLAM'!_xldudf_CLAY_LOG_TIME(A1:A9,B1:B9)",
      "=CLAY.LOG_TIME(A1:A9,B1:B9)",
    ],
    ["=FUNCRES.XLAM!_xldudf_CLAY_OCR(A1,B1)", "=CLAY.OCR(A1,B1)"],
    ["='FUNCRES.XLAM'!CLAY.OCR(A1,B1)", "=CLAY.OCR(A1,B1)"],
    ["=CLAY.MV(A1,B1)+_xldudf_CLAY_AV(A1)", "=CLAY.VOLUME_COMPRESSIBILITY(A1,B1)+CLAY.COMPRESSIBILITY(A1)"],
    [`=IF(A1="_xldudf_CLAY_MV(1)",'CLAY.MV (x)'!A1,"it''s")`, `=IF(A1="_xldudf_CLAY_MV(1)",'CLAY.MV (x)'!A1,"it''s")`],
    ["=SUM('Ring''s'!A1:A3)", "=SUM('Ring''s'!A1:A3)"],
  ])("%s", (stored, typed) => expect(asTyped(stored)).toBe(typed));
});

describe("formulas that are not connected to the add-in", () => {
  const STORED = "_xldudf_CLAY_STRAIN(C1,C2)";
  /** A workbook that was opened before the add-in was loaded. */
  const opened = () => {
    open({ evaluator: (formula) => (/STRAIN/.test(formula) ? 0.5 : 3) });
    excel.evaluation.isAddInLate = true;
    excel.sheet("Sheet1").put("A1", [
      [`=${STORED}`, "=SUM(C1)"],
      ["text", "'#NAME?"],
      [`=IFERROR(${STORED},"")`, `=IFERROR('C:\\x\\FUNCRES.XLAM'!${STORED},"none")`],
      ["=CLAY.MV(C1,C2)", null],
    ]);
    excel.addInArrives();
  };
  const formulas = () => ["A1", "B1", "A2", "B2", "A3", "B3", "A4"].map((at) => excel.sheet("Sheet1").cell(at).formula);
  const BOUND = [
    "=CLAY.STRAIN(C1,C2)",
    "=SUM(C1)",
    undefined,
    undefined,
    '=IFERROR(CLAY.STRAIN(C1,C2),"")',
    '=IFERROR(CLAY.STRAIN(C1,C2),"none")',
    "=CLAY.VOLUME_COMPRESSIBILITY(C1,C2)",
  ];

  test("are typed again whatever they show: #NAME?, nothing, or the text of an IFERROR", async () => {
    opened();
    expect([excel.sheet("Sheet1").cell("A3").value, excel.sheet("Sheet1").cell("B3").value]).toEqual(["", "none"]);
    await expect(port.reenterFormulas("Sheet1")).resolves.toEqual({ found: 4, left: 0 });
    expect(formulas()).toEqual(BOUND);
    expect(excel.sheet("Sheet1").cell("B3").value).toBe(0.5);
    await expect(port.reenterFormulas("Sheet1")).resolves.toEqual({ found: 0, left: 0 });
  });

  test("one that Excel refuses does not stop the others, and is counted as left", async () => {
    opened();
    excel.failures.refuse(/formulas = \[\["=IFERROR\(CLAY\.STRAIN\(C1,C2\),\\"\\"\)"\]\]/, "InvalidArgument");
    await expect(port.reenterFormulas("Sheet1")).resolves.toEqual({ found: 4, left: 1 });
    expect(formulas()).toEqual(BOUND.map((formula, i) => (i === 4 ? `=IFERROR(${STORED},"")` : formula)));
  });

  test("an old array formula, of which no part can be changed, does not stop the others", async () => {
    opened();
    excel.sheet("Sheet1").putArray("E1:E2", `=${STORED}`);
    const { found, left } = await port.reenterFormulas("Sheet1");
    expect(found - left).toBe(4);
    expect(formulas()).toEqual(BOUND);
  });

  test("cells that only show what spills from another are not typed into", async () => {
    open({ evaluator: () => [[1], [2], [3]] });
    excel.sheet("Sheet1").put("A1", [["=CLAY.MV(C1,C2)"]]);
    await expect(port.reenterFormulas("Sheet1")).resolves.toEqual({ found: 1, left: 0 });
    expect(excel.sheet("Sheet1").values("A1:A3")).toEqual([[1], [2], [3]]);
  });

  test("on a protected sheet the protection is lifted for them, and restored", async () => {
    opened();
    excel.sheet("Sheet1").protect({ allowInsertRows: true, allowSort: true });
    await port.reenterFormulas("Sheet1");
    expect(formulas()).toEqual(BOUND);
    expect(excel.sheet("Sheet1").sheet.protection).toMatchObject({
      on: true,
      options: { allowInsertRows: true, allowSort: true },
    });
  });

  test("with a password nothing is changed, and a sentence says so", async () => {
    opened();
    const before = formulas();
    excel.sheet("Sheet1").protect({}, "secret");
    await expect(port.reenterFormulas("Sheet1")).rejects.toThrow(/protected with a password: lift it in Excel/);
    expect(formulas()).toEqual(before);
  });
});

describe("the sheets of a file", () => {
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

  test("without notes: only parts that belong to notes are removed", () => {
    open();
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
    expect(withoutNotes(zipSync({ "a.xml": strToU8("<a/>") }))).toBeUndefined();
  });

  test("of another kind of file, and an older Excel, give a sentence with the remedy, and no request", async () => {
    open();
    await expect(port.insertFile(new Uint8Array([0xd0, 0xcf, 1]))).rejects.toThrow(/no \.xlsx workbook/);
    open({ version: "1.12" });
    await expect(port.insertFile(file)).rejects.toThrow(/move or copy its sheet into this workbook/);
    expect(excel.lines).toEqual([]);
  });

  test.each([
    ["xl/charts/chart1.xml", /takes no file with charts: .*desktop Excel\. Nothing was inserted\.$/],
    ["xl/pivotTables/pivotTable1.xml", /takes no file with PivotTables or slicers: .*Nothing was inserted\.$/],
    ["xl/slicers/slicer1.xml", /takes no file with PivotTables or slicers: .*Nothing was inserted\.$/],
  ])("of a file with %s are not inserted on the web, and the sentence says what to do", async (path, said) => {
    open({ platform: "web" });
    const before = excel.sheetNames;
    await expect(port.insertFile(zipSync({ ...unzipSync(file), [path]: strToU8("<a/>") }))).rejects.toThrow(said);
    expect(excel.sheetNames).toEqual(before);
  });

  test("of a file too large for Excel on the web give a sentence with its size and the remedy", async () => {
    open({ platform: "web" });
    // Bytes without a pattern, so that the package does not shrink.
    const filler = Uint8Array.from({ length: 4_500_000 }, (_, i) => (i * 2654435761) >>> 13);
    const large = zipSync({ "xl/media/photograph.bin": [filler, { level: 0 }] });
    const before = excel.sheetNames;
    await expect(port.insertFile(large)).rejects.toThrow(
      /^The file has 4\.5 MB, and Excel on the web takes at most about 3\.5 MB at once: .*desktop Excel\. Nothing was inserted\.$/,
    );
    expect(excel.sheetNames).toEqual(before);
  });
});
