/** @jest-environment jsdom */
/**
 * Each rule of the strict stand-in is broken on purpose through the object model. Codes are those of Microsoft's
 * typings and documentation where they name one; otherwise "from memory" says so.
 */
import { StrictExcel, type Options } from "./strict-excel";

type Work = (context: Excel.RequestContext, sheet: Excel.Worksheet) => unknown;

/** Runs work on a sheet "Data" of a workbook, and returns the code of the refusal. */
async function refusal(
  work: Work,
  options: Options = {},
  prepare: (excel: StrictExcel) => void = () => undefined,
): Promise<string> {
  const excel = new StrictExcel({ sheets: ["Data", "Other"], ...options });
  prepare(excel);
  try {
    await Excel.run(async (context) => {
      await work(context, context.workbook.worksheets.getItem("Data"));
      await context.sync();
    });
    return "accepted";
  } catch (error) {
    if (error instanceof OfficeExtension.Error) return error.code;
    throw error;
  }
}

type Case = [title: string, work: Work, code: string, prepare?: (excel: StrictExcel) => void];

const refused = (cases: readonly Case[]): void =>
  cases.forEach(([title, work, code, prepare]) =>
    test(title, async () => expect(await refusal(work, {}, prepare)).toBe(code)),
  );

const text = (length: number): string => "x".repeat(length);
const NOT_ALLOWED = "InvalidArgument";
/** A value of a type that the compiler would refuse: the test checks that the host refuses it. */
const wrong = (value: unknown): never => value as never;
const rule =
  (decimal: object): Work =>
  (_, sheet) => {
    sheet.getRange("A1").dataValidation.rule = wrong({ decimal });
  };

describe("words, keys and kinds, by the typings", () => {
  test.each<[string, Work, string]>([
    ["an operator that is none", rule({ formula1: 0, operator: "GreaterThanOrEqual" }), NOT_ALLOWED],
    ["an operator of the union", rule({ formula1: 0, operator: "GreaterThanOrEqualTo" }), "accepted"],
    ["a key that is none", rule({ formula1: 0, operator: "GreaterThan", formula3: 1 }), NOT_ALLOWED],
    ["a key that is missing", rule({ formula1: 0 }), NOT_ALLOWED],
    [
      "a word in a nested record",
      (_, s) => s.getRange("A1").setCellProperties([[{ format: { horizontalAlignment: wrong("Middle") } }]]),
      NOT_ALLOWED,
    ],
    [
      "a key in a nested record",
      (_, s) => s.getRange("A1").setCellProperties([[{ format: { font: wrong({ weight: 3 }) } }]]),
      NOT_ALLOWED,
    ],
    ["a number in place of a truth", (_, s) => (s.getRange("A1").format.font.bold = wrong(1)), NOT_ALLOWED],
    ["a text in place of a number", (_, s) => (s.getRange("A1").format.columnWidth = wrong("12")), NOT_ALLOWED],
    ["a paper that is none", (_, s) => (s.pageLayout.paperSize = wrong("A0")), NOT_ALLOWED],
    ["a chart that is none", (_, s) => s.charts.add(wrong("Scatter"), s.getRange("A1:B3")), NOT_ALLOWED],
    ["an argument that is missing", (_, s) => s.getRangeByIndexes(0, 0, 1, wrong(undefined)), NOT_ALLOWED],
    ["a color that is none", (_, s) => (s.getRange("A1").format.fill.color = "#12"), NOT_ALLOWED],
    ["a property that was never there", (_, s) => s.getRange("A1").load("colour"), NOT_ALLOWED],
    ["something to be read only", (_, s) => s.load("name").getRange("A1").load("address"), "accepted"],
  ])("%s", async (_, work, code) => expect(await refusal(work)).toBe(code));

  test("a word that the typings do not have is kept as a fault, even if code catches the refusal", async () => {
    const excel = new StrictExcel();
    await Excel.run(async (context) => {
      context.workbook.worksheets.getItem("Sheet1").pageLayout.orientation = wrong("Sideways");
      await context.sync().catch(() => undefined);
    });
    expect(excel.faults).toEqual(['PageLayout.orientation has no word "Sideways"']);
  });

  test("a property that was not loaded cannot be read", async () => {
    expect(
      await refusal(async (context, sheet) => {
        const range = sheet.getRange("A1").load("values");
        await context.sync();
        expect(range.values).toEqual([[""]]);
        return range.address;
      }),
    ).toBe("PropertyNotLoaded");
  });
});

describe("requirement sets", () => {
  const insert: Work = (context) => context.workbook.insertWorksheetsFromBase64("AAAA");

  test("what this Excel lacks is not found", async () =>
    expect(await refusal(insert, { version: "1.12" })).toBe("ApiNotFound"));

  test("what the manifest does not declare must be asked for first", async () => {
    expect(await refusal(insert, { version: "1.13" })).toBe("ApiNotFound");
    const asked: Work = (context, sheet) =>
      Office.context.requirements.isSetSupported("ExcelApi", "1.13") && insert(context, sheet);
    // It is not a workbook; Excel says so after it has found that the method exists.
    expect(await refusal(asked, { version: "1.13" })).toBe(NOT_ALLOWED);
    const tooLittle: Work = (context, sheet) =>
      Office.context.requirements.isSetSupported("ExcelApi", "1.10") && insert(context, sheet);
    expect(await refusal(tooLittle, { version: "1.13" })).toBe("ApiNotFound");
  });

  test("what the manifest declares needs no question", async () =>
    expect(await refusal((_, sheet) => (sheet.pageLayout.orientation = "Landscape"), { version: "1.9" })).toBe(
      "accepted",
    ));

  test("a nested key counts too, and 1.10 is later than 1.9", async () => {
    const excel = new StrictExcel({ declared: { ExcelApi: "1.10" }, version: "1.10" });
    await Excel.run(async (context) => {
      context.workbook.worksheets.getItem("Sheet1").pageLayout.orientation = "Landscape";
      await context.sync();
    });
    expect(excel.faults).toEqual([]);
  });
});

describe("arrays and the shape of a range", () => {
  test.each<[string, Work]>([
    ["values", (_, s) => (s.getRange("A1:B2").values = [[1, 2]])],
    ["formulas", (_, s) => (s.getRange("A1:B2").formulas = [[1], [2]])],
    ["number formats", (_, s) => (s.getRange("A1:B2").numberFormat = [["0"]])],
    ["looks", (_, s) => s.getRange("A1:B2").setCellProperties([[{}, {}]])],
    ["looks with null in place of a cell", (_, s) => s.getRange("A1:B1").setCellProperties([[{}, wrong(null)]])],
    ["rows of different length", (_, s) => (s.getRange("A1:B2").values = [[1, 2], [3]])],
    ["one value for all", (_, s) => (s.getRange("A1:B2").values = wrong(1))],
    ["an address that is none", (_, s) => s.getRange("rubbish")],
    ["an address of several blocks", (_, s) => s.getRange("A1,C1")],
    ["a place beyond the grid", (_, s) => s.getRangeByIndexes(1_048_576, 0, 1, 1)],
    ["no rows", (_, s) => s.getRangeByIndexes(0, 0, 0, 1)],
    ["values of a whole row", (_, s) => (s.getRange("3:3").values = [Array(16_384).fill(1)])],
    ["formats of whole columns", (_, s) => (s.getRange("A:B").numberFormat = [["0", "0"]])],
  ])("%s", async (_, work) => expect(await refusal(work)).toBe(NOT_ALLOWED));

  test.each([
    [80, "accepted"],
    [90, "GeneralException"],
  ])("looks of %d,000 cells at once: %s", async (thousands, code) => {
    const looks = Array.from({ length: thousands }, () => Array.from({ length: 1_000 }, () => ({})));
    const set: Work = (_, sheet) => sheet.getRangeByIndexes(0, 0, thousands, 1_000).setCellProperties(looks);
    expect(await refusal(set)).toBe(code);
  });

  test("whole rows and columns return null in place of their cells", async () => {
    new StrictExcel({ sheets: ["Data"] });
    await Excel.run(async (context) => {
      const sheet = context.workbook.worksheets.getItem("Data");
      const ranges = ["1:3", "B:C"].map((address) => sheet.getRange(address).load("values,formulas,numberFormat"));
      await context.sync();
      for (const range of ranges)
        expect([range.values, range.formulas, range.numberFormat]).toEqual([null, null, null]);
    });
  });
});

describe("limits", () => {
  const alert =
    (errorAlert: Partial<Excel.DataValidationErrorAlert>): Work =>
    (_, sheet) => {
      sheet.getRange("A1").dataValidation.errorAlert = {
        showAlert: true,
        style: "Stop",
        title: "",
        message: "",
        ...errorAlert,
      };
    };
  const prompt =
    (length: number, title = ""): Work =>
    (_, sheet) => {
      sheet.getRange("A1").dataValidation.prompt = { showPrompt: true, title, message: text(length) };
    };
  const list =
    (length: number): Work =>
    (_, sheet) => {
      sheet.getRange("A1").dataValidation.rule = { list: { inCellDropDown: true, source: text(length) } };
    };
  const enter =
    (entry: string): Work =>
    (_, sheet) =>
      (sheet.getRange("A1").values = [[entry]]);
  const add =
    (name: string): Work =>
    (context) =>
      context.workbook.worksheets.add(name);
  const footer =
    (left: number, center: number, right: number): Work =>
    (_, sheet) => {
      const all = sheet.pageLayout.headersFooters.defaultForAllPages;
      all.leftFooter = text(left);
      all.centerFooter = text(center);
      all.rightFooter = text(right);
    };

  test.each<[string, Work, Work, string]>([
    ["253 line feeds in a cell", enter("a\n".repeat(253)), enter("a\n".repeat(254)), NOT_ALLOWED],
    ["a text of 255 in a formula", enter(`=A1&"${text(255)}"`), enter(`=A1&"${text(256)}"`), NOT_ALLOWED],
    ["255 arguments", enter(`=SUM(${"1,".repeat(254)}1)`), enter(`=SUM(${"1,".repeat(255)}1)`), NOT_ALLOWED],
    [
      "64 functions within one another",
      enter(`=${"ABS(".repeat(64)}1${")".repeat(64)}`),
      enter(`=${"ABS(".repeat(65)}1${")".repeat(65)}`),
      NOT_ALLOWED,
    ],
    [
      "16,384 bytes of a formula",
      enter(`=A1${`&"${text(250)}"`.repeat(31)}`),
      enter(`=A1${"&B1".repeat(1700)}`),
      NOT_ALLOWED,
    ],
    ["a text of 32,767 characters", enter(text(32_767)), enter(text(32_768)), NOT_ALLOWED],
    [
      "a formula of 8,192 characters",
      enter(`=A1+${"1".repeat(8_188)}`),
      enter(`=A1+${"1".repeat(8_189)}`),
      "FormulaLengthExceedsLimit",
    ],
    ["a message of 225", alert({ message: text(225) }), alert({ message: text(226) }), NOT_ALLOWED],
    ["its title of 32", alert({ title: text(32) }), alert({ title: text(33) }), NOT_ALLOWED],
    ["a prompt of 255", prompt(255), prompt(256), NOT_ALLOWED],
    ["its title of 32", prompt(1, text(32)), prompt(1, text(33)), NOT_ALLOWED],
    ["a typed list of 255", list(255), list(256), NOT_ALLOWED],
    ["a sheet's name of 31", add(text(31)), add(text(32)), NOT_ALLOWED],
    [
      "a row of 409 points",
      (_, s) => (s.getRange("1:1").format.rowHeight = 409),
      (_, s) => (s.getRange("1:1").format.rowHeight = 410),
      NOT_ALLOWED,
    ],
    [
      "a footer of 255 with its three sections and their codes",
      footer(100, 100, 49),
      footer(100, 100, 50),
      NOT_ALLOWED,
    ],
  ])("%s", async (_, within, beyond, code) => {
    expect(await refusal(within)).toBe("accepted");
    expect(await refusal(beyond)).toBe(code);
  });

  test("a request, and an answer, of more than 5 MB on the web are refused", async () => {
    const long: Work = (_, sheet) =>
      (sheet.getRange("A1:A200").values = Array.from({ length: 200 }, () => [text(30_000)]));
    expect(await refusal(long)).toBe("RequestPayloadSizeLimitExceeded");
    expect(await refusal(long, { platform: "desktop" })).toBe("accepted");
    const fill = (excel: StrictExcel): void =>
      void excel.sheet("Data").put(
        "A1",
        Array.from({ length: 200 }, () => [text(30_000)]),
      );
    const read: Work = (_, sheet) => sheet.getRange("A1:A200").load("values");
    expect(await refusal(read, {}, fill)).toBe("ResponsePayloadSizeLimitExceeded");
    expect(await refusal(read, { platform: "desktop" }, fill)).toBe("accepted");
  });
});

describe("sheets", () => {
  const add =
    (name: string): Work =>
    (context) =>
      context.workbook.worksheets.add(name);
  const closed = (excel: StrictExcel): void => excel.structure(true);

  refused([
    ...["a/b", "a\\b", "a[b", "a]b", "a:b", "a*b", "a?b", "'a", "a'", "History", ""].map(
      (name): [string, Work, string] => [`the name ${JSON.stringify(name)}`, add(name), NOT_ALLOWED],
    ),
    ["a taken name in another case", add("DATA"), "ItemAlreadyExists"],
    [
      "a sheet that is not there",
      (context) => context.workbook.worksheets.getItem("Gone").load("name"),
      "ItemNotFound",
    ],
    // From memory: Microsoft's typings give InvalidOperation for the deletion of a very hidden sheet only.
    [
      "a hidden sheet activated",
      (_, s) => s.activate(),
      "InvalidOperation",
      (excel) => void excel.sheet("Data").hide(),
    ],
    [
      "the only visible sheet deleted",
      (_, s) => s.delete(),
      "InvalidOperation",
      (excel) => void excel.sheet("Other").hide(),
    ],
    [
      "a very hidden sheet deleted",
      (_, s) => s.delete(),
      "InvalidOperation",
      (excel) => void excel.sheet("Data").hide("VeryHidden"),
    ],
    ["a sheet added to a protected structure", add("New"), "AccessDenied", closed],
    ["a sheet deleted from a protected structure", (_, s) => s.delete(), "AccessDenied", closed],
    ["a sheet renamed in a protected structure", (_, s) => (s.name = "New"), "AccessDenied", closed],
  ]);
});

describe("names", () => {
  const add =
    (name: string, refers = "=Data!$A$1"): Work =>
    (_, sheet) =>
      sheet.names.add(name, refers);
  test.each(["t50", "AV1", "xfd1048576", "R1C1", "r", "C", "R2", "1st", "a b", "a-b", "a!b", "", "TRUE", "_xlmass"])(
    "%j is not a name",
    async (name) => expect(await refusal(add(name))).toBe(NOT_ALLOWED),
  );
  test.each(["AV", "MV", "e0", "t50_", "XFE1", "_x", "a.b", "Wärme"])("%j is a name", async (name) =>
    expect(await refusal(add(name))).toBe("accepted"),
  );

  refused([
    [
      "a taken name in another case",
      add("MASS"),
      "ItemAlreadyExists",
      (excel) => void excel.sheet("Data").name("mass", "A1"),
    ],
    [
      "the same name of the workbook",
      add("mass"),
      "accepted",
      (excel) => void excel.sheet("Data").name("mass", "A1", "workbook"),
    ],
    ["a name for cells of a sheet that is not there", add("mass", "=Gone!$A$1"), NOT_ALLOWED],
    ["a formula without =", add("mass", "Data!$A$1"), NOT_ALLOWED],
    ["a name that is not there", (_, s) => s.names.getItem("mass").load("name"), "ItemNotFound"],
    [
      "cells of a name of several areas",
      (_, s) => s.names.getItem("mass").getRange().load("values"),
      NOT_ALLOWED,
      (excel) => void excel.sheet("Data").name("mass", "A1,C1"),
    ],
    [
      "the same, or nothing",
      (_, s) => s.names.getItem("mass").getRangeOrNullObject().load("values"),
      NOT_ALLOWED,
      (excel) => void excel.sheet("Data").name("mass", "A1,C1"),
    ],
    [
      "cells of a name that lost them",
      (_, s) => s.names.getItem("mass").getRange().load("values"),
      "ItemNotFound",
      (excel) => void excel.sheet("Data").name("mass", "=#REF!"),
    ],
    [
      "cells of a constant",
      (_, s) => s.names.getItem("mass").getRange().load("values"),
      "InvalidOperation",
      (excel) => void excel.sheet("Data").name("mass", "=5"),
    ],
  ]);

  refused([
    ["a long comment", (_, s) => s.names.add("mass", "=Data!$A$1", "x".repeat(256)), NOT_ALLOWED],
    [
      "a long comment, set later",
      (_, s) => (s.names.getItem("mass").comment = "x".repeat(256)),
      NOT_ALLOWED,
      (excel) => void excel.sheet("Data").name("mass", "A1"),
    ],
  ]);

  test.each([
    ["en-US", ["Print_Area", "Print_Titles"]],
    ["de-AT", ["Druckbereich", "Drucktitel"]],
  ])("in %s the printed pages have the names %j, which can be deleted", async (locale, called) => {
    new StrictExcel({ sheets: ["Data"], locale });
    await Excel.run(async (context) => {
      const { names, pageLayout } = context.workbook.worksheets.getItem("Data");
      pageLayout.setPrintArea("A1:B9,D1:E9");
      pageLayout.setPrintTitleRows("1:2");
      names.load("items/name,items/type,items/value");
      await context.sync();
      expect(names.items.map(({ name, type }) => [name, type])).toEqual(called.map((name) => [name, "Range"]));
      names.getItem(called[0]).delete();
      names.load("items/name");
      await context.sync();
      expect(names.items.map(({ name }) => name)).toEqual([called[1]]);
    });
  });

  test("a name holds cells, an error, a number, or a text", async () => {
    const excel = new StrictExcel({ sheets: ["Data"] });
    excel
      .sheet("Data")
      .name("cells", "A1:A3")
      .name("many", "A1,C1")
      .name("lost", "=#REF!")
      .name("number", "=5")
      .name("word", '="x"');
    const types = await Excel.run(async (context) => {
      const names = context.workbook.worksheets.getItem("Data").names.load("items/name,items/type,items/formula");
      await context.sync();
      return names.items.map(({ name, type, formula }) => [name, type, formula]);
    });
    expect(types).toEqual([
      ["cells", "Range", "=Data!$A$1:$A$3"],
      ["many", "Range", "=Data!$A$1,Data!$C$1"],
      ["lost", "Error", "=#REF!"],
      ["number", "Integer", "=5"],
      ["word", "String", '="x"'],
    ]);
  });
});

describe("entry rules", () => {
  const set =
    (wanted: Excel.DataValidationRule): Work =>
    (_, sheet) =>
      (sheet.getRange("A1:A9").dataValidation.rule = wanted);
  test.each<[string, Excel.DataValidationRule, string]>([
    ["one bound where two are needed", { decimal: { formula1: 1, operator: "Between" } }, NOT_ALLOWED],
    ["the greater bound first", { decimal: { formula1: 5, formula2: 1, operator: "Between" } }, NOT_ALLOWED],
    ["a whole number with decimals", { wholeNumber: { formula1: 1.5, operator: "GreaterThan" } }, NOT_ALLOWED],
    ["a date in another form", { date: { formula1: "31.12.2026", operator: "GreaterThan" } }, NOT_ALLOWED],
    ["a date before 1900", { date: { formula1: "1899-01-01", operator: "GreaterThan" } }, NOT_ALLOWED],
    ["a date", { date: { formula1: "1990-01-01", formula2: "2099-12-31", operator: "Between" } }, "accepted"],
    ["a formula", { decimal: { formula1: "=B1", operator: "GreaterThan" } }, "accepted"],
    [
      "two kinds at once",
      { decimal: { formula1: 1, operator: "GreaterThan" }, list: { inCellDropDown: true, source: "a,b" } },
      NOT_ALLOWED,
    ],
    ["a list without a word", { list: { inCellDropDown: true, source: "" } }, NOT_ALLOWED],
    ["a formula of one's own without =", { custom: { formula: "A1>0" } }, NOT_ALLOWED],
    ["a formula of one's own", { custom: { formula: '=FIND("a",A1)>0' } }, "accepted"],
    ["one that ends too soon", { custom: { formula: "=A1>" } }, NOT_ALLOWED],
    ["one with constants in braces", { custom: { formula: "=OR(A1={1,2})" } }, NOT_ALLOWED],
    ["one that lacks an argument", { custom: { formula: "=FIND(A1)>0" } }, NOT_ALLOWED],
    [
      "a bound of a sheet without apostrophes",
      { decimal: { formula1: "=BH1!A1", operator: "GreaterThan" } },
      NOT_ALLOWED,
    ],
    ["a list of a sheet without apostrophes", { list: { inCellDropDown: true, source: "=BH1!A1:A3" } }, NOT_ALLOWED],
  ])("%s", async (_, wanted, code) => expect(await refusal(set(wanted))).toBe(code));

  const decimal: Excel.DataValidationRule = { decimal: { formula1: 0, operator: "GreaterThan" } };
  test.each<[string, string, string]>([
    ["of the same cells", "A1:A9", "accepted"],
    ["of some of them", "A4:A5", "accepted"],
    ["of them and cells without a rule", "A4:B5", NOT_ALLOWED],
  ])("a later rule %s: %s", async (_, address, code) =>
    expect(
      await refusal((context, sheet) => {
        set(decimal)(context, sheet);
        sheet.getRange(address).dataValidation.rule = { decimal: { formula1: 7, operator: "LessThan" } };
      }),
    ).toBe(code),
  );

  test("a rule for cells with unlike messages is refused, until their rules are cleared", async () => {
    const unlike = (sheet: Excel.Worksheet): Excel.Range => {
      sheet.getRange("A2").dataValidation.prompt = { showPrompt: true, title: "", message: "one" };
      return sheet.getRange("A1:A9");
    };
    expect(await refusal((_, sheet) => (unlike(sheet).dataValidation.rule = decimal))).toBe(NOT_ALLOWED);
    const cleared: Work = (_, sheet) => {
      const range = unlike(sheet);
      range.dataValidation.clear();
      range.dataValidation.rule = decimal;
    };
    expect(await refusal(cleared)).toBe("accepted");
  });

  test("a later rule replaces the earlier one, cell by cell, where the earlier one was cleared", async () => {
    const excel = new StrictExcel({ sheets: ["Data"] });
    await Excel.run(async (context) => {
      const sheet = context.workbook.worksheets.getItem("Data");
      sheet.getRange("A1:A9").dataValidation.rule = { decimal: { formula1: 0, operator: "GreaterThan" } };
      sheet.getRange("A4:B5").dataValidation.clear();
      sheet.getRange("A4:B5").dataValidation.rule = { decimal: { formula1: 7, operator: "LessThan" } };
      await context.sync();
    });
    expect(
      ["A3", "A4", "B5", "A6", "B6"].map((at) => (excel.sheet("Data").cell(at).rule?.rule as any)?.decimal.formula1),
    ).toEqual([0, 7, 7, 0, undefined]);
  });
});

describe("formulas and entries", () => {
  const enter =
    (entry: string): Work =>
    (_, sheet) =>
      (sheet.getRange("A1").formulas = [[entry]]);
  test.each([
    "=FIND(A1)",
    "=IF(A1)",
    "=NA(1)",
    "=IFERROR(A1,1,2)",
    "=SUM(A1",
    "=SUM(A1))",
    '="x',
    "=SUM(A1;A2)",
    "={t50}*2",
    "='Data!A1",
    "=1+",
    "@x",
    "=BH1!A1",
    "=R1C1!A1",
    "=2026!A1",
    "=RC12Test!A1",
    "=TRUE!A1",
  ])("%s is refused", async (entry) => expect(await refusal(enter(entry))).toBe(NOT_ALLOWED));
  test.each([
    "=SUM(A1,A2)",
    "={1,2;3,4}",
    '="a;b(""c"',
    "='My sheet'!A1",
    "=IF(A1,,2)",
    "=-A1",
    "=A1%",
    "='BH1'!A1",
    "=Data!A1",
  ])("%s is accepted", async (entry) => expect(await refusal(enter(entry))).toBe("accepted"));

  test.each<[unknown, string, unknown, string?]>([
    ["00123", "General", 123],
    ["'00123", "General", "00123"],
    ["00123", "@", "00123"],
    ["=B1", "@", "=B1"],
    // "+", "-" and "=" begin a formula (typings, Range.values), whose value is 0 here.
    ["-5", "General", -5],
    ["- see the note", "General", 0],
    ["-A1", "General", 0],
    ["'- see the note", "General", "- see the note"],
    ["-", "General", "-"],
    ["1/2", "General", expect.any(Number)],
    ["Mar 3", "General", expect.any(Number)],
    ["true", "General", true],
    ["5%", "General", 0.05],
    ["1e3", "General", 1000],
    ["#n/a", "General", "#N/A"],
    ["sand", "General", "sand"],
    ["", "General", ""],
  ])("%j in a cell of format %s becomes %j", async (entry, format, value) => {
    const excel = new StrictExcel({ sheets: ["Data"] });
    excel
      .sheet("Data")
      .format("A1", format)
      .put("A1", [[entry as string]]);
    expect(excel.sheet("Data").cell("A1").value).toEqual(value);
  });

  test.each(["Standard", "0.00 mm", '0.0"', "0;0;0;0;0", "[Blau"])("%j is not a number format", async (format) =>
    expect(await refusal((_, s) => (s.getRange("A1").numberFormat = [[format]]))).toBe(NOT_ALLOWED),
  );
  test.each([
    "0.000",
    "0.0%",
    "0.00E+00",
    "yyyy-mm-dd",
    "@",
    "General",
    '0.0" mm"',
    "[h]:mm",
    "[Red]0;-0",
    "#,##0",
    "",
  ])("%j is a number format", async (format) =>
    expect(await refusal((_, s) => (s.getRange("A1").numberFormat = [[format]]))).toBe("accepted"),
  );
});

describe("merged cells, arrays and spills", () => {
  const merged = (excel: StrictExcel): void => void excel.sheet("Data").merge("A1:C2");
  refused([
    ["a merge over a part of another", (_, s) => s.getRange("B2:D3").merge(), "MergedRangeConflict", merged],
    ["a merge around another", (_, s) => s.getRange("A1:D3").merge(), "accepted", merged],
    ["a write into a part of merged cells", (_, s) => (s.getRange("B1").values = [[1]]), "MergedRangeConflict", merged],
    [
      "a write over merged cells that leaves the rest",
      (_, s) => (s.getRange("A1:C1").values = [[1, wrong(null), ""]]),
      "accepted",
      merged,
    ],
    // From memory: no code is documented for a part of an array.
    [
      "a write into a part of an array",
      (_, s) => (s.getRange("A2").values = [[1]]),
      "InvalidOperation",
      (excel) => void excel.sheet("Data").putArray("A1:A3", "=B1:B3"),
    ],
    [
      "a write over the whole array",
      (_, s) => (s.getRange("A1:A3").values = [[1], [2], [3]]),
      "accepted",
      (excel) => void excel.sheet("Data").putArray("A1:A3", "=B1:B3"),
    ],
    [
      "an array merged",
      (_, s) => s.getRange("A1:B1").merge(),
      "InvalidOperation",
      (excel) => void excel.sheet("Data").putArray("A1:A3", "=B1:B3"),
    ],
  ]);

  test("an answer spills, shows #SPILL! if a cell is in its way, and spills again when the cell is cleared", () => {
    const excel = new StrictExcel({
      sheets: ["Data"],
      evaluator: (formula) =>
        formula.startsWith("=CLAY.")
          ? [
              [1, 2],
              [3, 4],
            ]
          : undefined,
    });
    const data = excel.sheet("Data").put("A1", [["=CLAY.TABLE(D1)"]]);
    expect(data.values("A1:B2")).toEqual([
      [1, 2],
      [3, 4],
    ]);
    data.put("B2", [["in the way"]]);
    expect(data.values("A1:B2")).toEqual([
      ["#SPILL!", ""],
      ["", "in the way"],
    ]);
    data.put("B2", [[""]]);
    expect(data.values("A1:B2")).toEqual([
      [1, 2],
      [3, 4],
    ]);
  });
});

describe("protected sheets", () => {
  const OPTIONS = { allowFormatCells: true, allowInsertRows: true, allowDeleteRows: true };
  const closed = (excel: StrictExcel): void => void excel.sheet("Data").unlock("A1:B1").unlock("7:7").protect(OPTIONS);
  const secret = (excel: StrictExcel): void => void excel.sheet("Data").protect({}, "secret");
  refused([
    ["a locked cell written", (_, s) => (s.getRange("A1:C1").values = [[1, 2, 3]]), "AccessDenied", closed],
    ["an unlocked cell written", (_, s) => (s.getRange("A1:B1").values = [[1, 2]]), "accepted", closed],
    ["a locked cell left", (_, s) => (s.getRange("A1:C1").values = [[1, 2, wrong(null)]]), "accepted", closed],
    ["a format where formats are allowed", (_, s) => (s.getRange("C1").format.font.bold = true), "accepted", closed],
    ["a format where they are not", (_, s) => (s.getRange("C1").format.font.bold = true), "AccessDenied", secret],
    [
      "a width where widths are not allowed",
      (_, s) => (s.getRange("C:C").format.columnWidth = 60),
      "AccessDenied",
      closed,
    ],
    ["a lock opened", (_, s) => (s.getRange("C1").format.protection.locked = false), "AccessDenied", closed],
    [
      "a rule",
      (_, s) => (s.getRange("A1").dataValidation.rule = { custom: { formula: "=TRUE" } }),
      "AccessDenied",
      closed,
    ],
    ["a merge", (_, s) => s.getRange("A1:B1").merge(), "AccessDenied", closed],
    ["a chart", (_, s) => s.charts.add("XYScatter", s.getRange("A1:B3")), "AccessDenied", closed],
    ["a row put in", (_, s) => s.getRange("3:3").insert("Down"), "accepted", closed],
    ["a row with locked cells taken out", (_, s) => s.getRange("3:3").delete("Up"), "AccessDenied", closed],
    ["a row of unlocked cells taken out", (_, s) => s.getRange("7:7").delete("Up"), "accepted", closed],
    // The codes of both, and the second refusal: office-js issue 6784.
    ["protected once more", (_, s) => s.protection.protect(), "AccessDenied", closed],
    ["lifted where there is none", (_, s) => s.protection.unprotect(), "AccessDenied", () => undefined],
    ["lifted without its password", (_, s) => s.protection.unprotect(), "AccessDenied", secret],
    ["lifted with another password", (_, s) => s.protection.unprotect("guess"), "AccessDenied", secret],
    ["lifted with its password", (_, s) => s.protection.unprotect("secret"), "accepted", secret],
  ]);
});

describe("charts", () => {
  const axis =
    (change: (axis: Excel.ChartAxis) => void): Work =>
    (_, sheet) =>
      change(sheet.charts.add("XYScatter", sheet.getRange("A1:A3")).axes.categoryAxis);
  const series =
    (change: (series: Excel.ChartSeries, sheet: Excel.Worksheet) => unknown): Work =>
    (_, sheet) =>
      change(sheet.charts.add("XYScatter", sheet.getRange("A1:A3")).series.add("s"), sheet);
  test.each<[string, Work, string]>([
    ["a logarithmic axis from 0", axis((a) => ((a.scaleType = "Logarithmic"), (a.minimum = 0))), NOT_ALLOWED],
    ["an axis from 0 made logarithmic", axis((a) => ((a.minimum = 0), (a.scaleType = "Logarithmic"))), NOT_ALLOWED],
    [
      "a logarithmic axis from 0.1",
      axis((a) => ((a.scaleType = "Logarithmic"), (a.minimum = 0.1), (a.logBase = 10))),
      "accepted",
    ],
    ["a base of an axis that is not logarithmic", axis((a) => (a.logBase = 10)), "InvalidOperation"],
    ["a base of 1", axis((a) => (a.logBase = 1)), NOT_ALLOWED],
    ["a step of 0", axis((a) => (a.majorUnit = 0)), NOT_ALLOWED],
    ["a font of 32 letters", axis((a) => (a.format.font.name = text(32))), NOT_ALLOWED],
    ["a scale that is none", axis((a) => (a.scaleType = wrong("Log"))), NOT_ALLOWED],
    ["a name of 256 characters", series((s) => (s.name = text(256))), NOT_ALLOWED],
    ["a name of 255 characters", series((s) => (s.name = text(255))), "accepted"],
    ["a name that begins with =", series((s) => (s.name = "=B 1")), NOT_ALLOWED],
    ["a marker of 1 point", series((s) => (s.markerSize = 1)), NOT_ALLOWED],
    ["a marker that is none", series((s) => (s.markerStyle = wrong("Cross"))), NOT_ALLOWED],
    ["values from a block", series((s, sheet) => s.setValues(sheet.getRange("A1:B2"))), NOT_ALLOWED],
    [
      "a point beyond the last",
      series((s, sheet) => (s.setValues(sheet.getRange("A1:A3")), s.points.getItemAt(3).load("hasDataLabel"))),
      NOT_ALLOWED,
    ],
    [
      "the last point",
      series((s, sheet) => (s.setValues(sheet.getRange("A1:A3")), (s.points.getItemAt(2).hasDataLabel = true))),
      "accepted",
    ],
    ["a chart that is not there", (_, s) => s.charts.getItem("Chart 9").load("id"), "ItemNotFound"],
    [
      "a series that is not there",
      (_, s) => s.charts.add("XYScatter", s.getRange("A1:A3")).series.getItemAt(1).load("name"),
      NOT_ALLOWED,
    ],
    [
      "the last series deleted",
      (_, s) => s.charts.add("XYScatter", s.getRange("A1:A3")).series.getItemAt(0).delete(),
      "EmptyChartSeries",
    ],
  ])("%s", async (_, work, code) => expect(await refusal(work)).toBe(code));
});

describe("notes", () => {
  const add =
    (change: (note: Excel.Note) => unknown = () => undefined): Work =>
    (_, sheet) =>
      Office.context.requirements.isSetSupported("ExcelApi", "1.18") &&
      change(sheet.notes.add(sheet.getRange("A1"), "why"));
  test.each<[string, Work, string, Options]>([
    ["a note", add(), "accepted", {}],
    ["its width in Excel on the web", add((note) => (note.width = 200)), "UnsupportedOperation", {}],
    ["its width on the desktop", add((note) => (note.width = 200)), "accepted", { platform: "desktop" }],
    ["a second note at a cell", (_, s) => (add()(_, s), add()(_, s)), "ItemAlreadyExists", {}],
    [
      "a note where Excel has none yet",
      (_, s) => s.notes.add(s.getRange("A1"), "why"),
      "ApiNotFound",
      { version: "1.17" },
    ],
  ])("%s", async (_, work, code, options) => expect(await refusal(work, options)).toBe(code));
});

describe("the selection", () => {
  const one: Work = (context) => context.workbook.getSelectedRange().load("address");
  const all: Work = (context) => context.workbook.getSelectedRanges().load("address");
  const active: Work = (context) => context.workbook.worksheets.getActiveWorksheet().load("name");
  test.each<[string, (excel: StrictExcel) => void, string[]]>([
    ["a block", (excel) => excel.select("Data", "B2:C3"), ["accepted", "accepted", "accepted"]],
    ["blocks apart", (excel) => excel.select("Data", "B2:B3,D2:D3"), ["InvalidSelection", "accepted", "accepted"]],
    ["a chart", (excel) => excel.selectChart("Data"), ["InvalidSelection", "InvalidSelection", "accepted"]],
    ["nothing", (excel) => excel.selectNothing(), ["InvalidSelection", "InvalidSelection", "accepted"]],
  ])("%s: the range, the ranges, the sheet", async (_, prepare, codes) => {
    const given: string[] = [];
    for (const work of [one, all, active]) given.push(await refusal(work, {}, prepare));
    expect(given).toEqual(codes);
  });
});

describe("what add-ins keep in the workbook", () => {
  const keep =
    (size: number): Work =>
    (context) =>
      context.workbook.settings.add("notes", text(size));
  test.each([
    [1_000_000, "accepted"],
    [3_000_000, NOT_ALLOWED],
  ])("%d characters: %s", async (size, code) => expect(await refusal(keep(size), { platform: "desktop" })).toBe(code));
});

describe("page set-up", () => {
  test("a machine without a printer refuses it", async () =>
    expect(
      await refusal(
        (_, s) => (s.pageLayout.orientation = "Landscape"),
        {},
        (excel) => void (excel.switches.hasNoPrinter = true),
      ),
    ).toBe("GeneralException"));

  test("a switch refuses a print area of more than 255 characters", async () => {
    const areas = Array.from({ length: 21 }, (_, page) => `$A$${100 * page + 1}:$AV$${100 * page + 100}`).join(",");
    const set: Work = (_, sheet) => sheet.pageLayout.setPrintArea(areas);
    expect(await refusal(set)).toBe("accepted");
    expect(await refusal(set, {}, (excel) => void (excel.switches.limitsPrintArea = true))).toBe(NOT_ALLOWED);
  });

  test("a switch makes a semicolon the separator between areas, as in a German region", async () => {
    const set =
      (areas: string): Work =>
      (_, sheet) =>
        sheet.pageLayout.setPrintArea(areas);
    const german = (excel: StrictExcel): void => void (excel.switches.listSeparator = ";");
    expect(await refusal(set("A1:B2,A3:B4"))).toBe("accepted");
    expect(await refusal(set("A1:B2;A3:B4"))).toBe(NOT_ALLOWED);
    expect(await refusal(set("A1:B2,A3:B4"), {}, german)).toBe(NOT_ALLOWED);
    expect(await refusal(set("A1:B2;A3:B4"), {}, german)).toBe("accepted");
  });

  test.each<[string, Work, string]>([
    ["titles that are no whole rows", (_, s) => s.pageLayout.setPrintTitleRows(s.getRange("A1:B1")), NOT_ALLOWED],
    ["a scale of 5 per cent", (_, s) => (s.pageLayout.zoom = { scale: 5 }), NOT_ALLOWED],
    ["no row frozen", (_, s) => s.freezePanes.freezeRows(0), NOT_ALLOWED],
    ["a tab of a color that is none", (_, s) => (s.tabColor = "reddish"), NOT_ALLOWED],
    [
      "a footer with an & that is no code",
      (_, s) => (s.pageLayout.headersFooters.defaultForAllPages.leftFooter = "Q&A, Müller & Co"),
      NOT_ALLOWED,
    ],
    [
      "a footer with a doubled &",
      (_, s) => (s.pageLayout.headersFooters.defaultForAllPages.leftFooter = "Müller && Co, &P"),
      "accepted",
    ],
    ["half a page wide", (_, s) => (s.pageLayout.zoom = { horizontalFitToPages: 0.5 }), NOT_ALLOWED],
  ])("%s", async (_, work, code) => expect(await refusal(work)).toBe(code));
});

describe("switches", () => {
  const write: Work = (_, sheet) => (sheet.getRange("A1").values = [[1]]);

  test("while a cell is being edited, a request is refused at once, or waits", async () => {
    expect(await refusal(write, {}, (excel) => excel.startEdit())).toBe("InvalidOperationInCellEditMode");
    const excel = new StrictExcel();
    excel.startEdit();
    const waiting = Excel.run({ delayForCellEdit: true }, async (context) => {
      context.workbook.worksheets.getItem("Sheet1").getRange("A1").values = [[1]];
      await context.sync();
    });
    await new Promise((resolve) => setTimeout(resolve, 5));
    expect(excel.sheet("Sheet1").cell("A1").value).toBe("");
    excel.endEdit();
    await waiting;
    expect(excel.sheet("Sheet1").cell("A1").value).toBe(1);
  });

  test("a failure at a step, with any code, leaves earlier steps done", async () => {
    const excel = new StrictExcel({ sheets: ["Data"] });
    excel.failures.refuse(/"A2"\)\.values/, "GeneralException", "out of order", 1);
    const work = (): Promise<void> =>
      Excel.run(async (context) => {
        const sheet = context.workbook.worksheets.getItem("Data");
        sheet.getRange("A1").values = [[1]];
        sheet.getRange("A2").values = [[2]];
        await context.sync();
      });
    await expect(work()).rejects.toMatchObject({ code: "GeneralException", message: "out of order" });
    expect(excel.sheet("Data").values("A1:A2")).toEqual([[1], [""]]);
    await work();
    expect(excel.sheet("Data").values("A1:A2")).toEqual([[1], [2]]);
  });

  test("a failure at the n-th action happens once", async () => {
    expect(await refusal(write, {}, (excel) => excel.failures.failAt(2, "ActivityLimitReached"))).toBe(
      "ActivityLimitReached",
    );
    expect(await refusal(write, {}, (excel) => excel.failures.failAt(9, "ActivityLimitReached"))).toBe("accepted");
  });

  test("Excel closes in the middle, and answers again when it is reopened", async () => {
    const excel = new StrictExcel({ sheets: ["Data"] });
    const work = (): Promise<void> =>
      Excel.run(async (context) => {
        context.workbook.worksheets.getItem("Data").getRange("A1").values = [[1]];
        await context.sync();
      });
    excel.failures.closeAt(1);
    await expect(work()).rejects.toMatchObject({ code: "InvalidOrTimedOutSession" });
    await expect(work()).rejects.toMatchObject({ code: "InvalidOrTimedOutSession" });
    excel.failures.reopen();
    await work();
  });

  test("in another locale formulas and values stay en-US, the local formula does not", async () => {
    const excel = new StrictExcel({ sheets: ["Data"], locale: "de-DE" });
    excel.sheet("Data").put("A1", [["=SUM(B1,1.5)"]]);
    await Excel.run(async (context) => {
      const range = context.workbook.worksheets.getItem("Data").getRange("A1").load("formulas,formulasLocal");
      await context.sync();
      expect([range.formulas, range.formulasLocal]).toEqual([[["=SUM(B1,1.5)"]], [["=SUM(B1;1,5)"]]]);
    });
  });

  test("functions show #BUSY! for a while, #NAME? until the add-in is loaded, and stored prefixes until they are typed again", async () => {
    const excel = new StrictExcel({ sheets: ["Data"], evaluator: () => 7 });
    const data = excel.sheet("Data");
    excel.evaluation.busyFor = 2;
    excel.evaluation.isAddInLate = true;
    data.put("A1", [
      ["=CLAY.STRAIN(B1)"],
      ["=_xldudf_CLAY_STRAIN(B1)"],
      ["='C:\\x\\FUNCRES.XLAM'!CLAY.STRAIN(B1)"],
      ['=IFERROR(CLAY.STRAIN(B1),"")'],
      ["=SUM(B1)"],
    ]);
    const shown = (): unknown[] => data.values("A1:A5").flat();
    expect(shown()).toEqual(["#NAME?", "#NAME?", "#NAME?", "", 7]);
    excel.addInArrives();
    expect(shown()).toEqual(["#BUSY!", "#NAME?", "#NAME?", "", 7]);
    for (let batch = 0; batch < 2; batch++)
      await Excel.run((context) => (context.workbook.worksheets.load("items/name"), context.sync()));
    expect(shown()).toEqual([7, "#NAME?", "#NAME?", 7, 7]);
    data.put("A2", [["=CLAY.STRAIN(B1)"]]);
    expect(shown()).toEqual([7, 7, "#NAME?", 7, 7]);
  });
});

test("round trips and bytes are counted", async () => {
  const excel = new StrictExcel({ sheets: ["Data"] });
  const cost = await excel.cost(() =>
    Excel.run(async (context) => {
      const sheet = context.workbook.worksheets.getItem("Data").load("name");
      await context.sync();
      sheet.getRange("A1").values = [[text(1000)]];
      await context.sync();
    }),
  );
  expect(cost.trips).toBe(2);
  expect(cost.sent).toBeGreaterThan(1000);
  expect(cost.received).toBeGreaterThan(10);
  expect(excel.lines).toEqual([
    'workbook.worksheets.getItem("Data").load("name")',
    expect.stringMatching(/^workbook\.worksheets\.getItem\("Data"\)\.getRange\("A1"\)\.values = \[\["x/),
  ]);
});
