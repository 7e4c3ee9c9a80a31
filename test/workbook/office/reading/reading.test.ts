/** @jest-environment jsdom */
/** Reading a workbook, in the strict stand-in for Excel. */
import { OfficePort } from "../../../../src/workbook/office";
import { StrictExcel, type Options } from "../../../excel/strict-excel";
import { turns } from "../../../turns";

const port = new OfficePort();
let excel: StrictExcel;

const open = (options: Options = {}): StrictExcel => (excel = new StrictExcel(options));
afterEach(() => expect(excel.faults).toEqual([]));

/** A column of numbers from `first` on. */
const column = (count: number, first = 1): number[][] => Array.from({ length: count }, (_, i) => [first + i]);

describe("the selection", () => {
  test("has its sheet, address, values with blanks, and errors as their codes", async () => {
    open({ sheets: ["Sheet1", "Ring's"] });
    excel.sheet("Ring's").put("B2", [
      [1, "two"],
      ["#N/A", null],
    ]);
    excel.select("Ring's", "B2:C3");
    await expect(port.selection()).resolves.toEqual({
      sheet: "Ring's",
      address: "B2:C3",
      values: [
        [1, "two"],
        ["#N/A", ""],
      ],
    });
  });

  test("joins blocks selected with Ctrl side by side, in the order of their columns", async () => {
    open()
      .sheet("Sheet1")
      .put("B4", [
        [1, "x", 3],
        [2, "y", 4],
      ]);
    excel.select("Sheet1", "D4:D5,B4:B5");
    await expect(port.selection()).resolves.toMatchObject({
      address: "B4:B5,D4:D5",
      values: [
        [1, 3],
        [2, 4],
      ],
    });
  });

  test("says that another workbook may be in front, for the selection and on the Mac for the names of a sheet", async () => {
    open({ platform: "mac" });
    excel.switches.isInBackground = true;
    await expect(port.selection()).rejects.toThrow(
      "Excel could not read the selection: a chart, a picture or a button is selected, or another workbook is in front: ",
    );
    await expect(port.findSheets(["x"])).rejects.toThrow(
      /or another workbook is in front: select cells of this workbook/,
    );
    excel.switches.isInBackground = false;
    await expect(port.findSheets(["x"])).resolves.toMatchObject([{ sheet: "Sheet1" }]);
  });

  test("refuses blocks in different rows with a sentence that gives the rows and the remedy", async () => {
    open();
    excel.select("Sheet1", "B4:B5,D6:D7");
    await expect(port.selection()).rejects.toThrow(/different rows \(4 to 5, 6 to 7\): pick blocks that begin and end/);
  });

  test("values of whole rows and columns are those of the filled cells", async () => {
    open()
      .sheet("Sheet1")
      .put("B2", [
        [1, 5],
        [2, 6],
      ]);
    await expect(port.values("Sheet1", "2:3")).resolves.toEqual([
      [1, 5],
      [2, 6],
    ]);
    await expect(port.values("Sheet1", "C:C")).resolves.toEqual([[5], [6]]);
  });

  test("cuts whole columns to the filled rows; if nothing is filled, one row is read", async () => {
    open()
      .sheet("Sheet1")
      .put("B2", [
        [1, 5],
        [2, ""],
        [3, ""],
      ]);
    excel.select("Sheet1", "B:C");
    await expect(port.selection()).resolves.toMatchObject({
      address: "B2:C4",
      values: [
        [1, 5],
        [2, ""],
        [3, ""],
      ],
    });
    excel.select("Sheet1", "E:F");
    await expect(port.selection()).resolves.toMatchObject({ address: "E1:F1", values: [["", ""]] });
  });

  test("says what to select if a chart is selected; the sheet in front is known nevertheless", async () => {
    open({ sheets: ["Sheet1", "Plots"] })
      .sheet("Plots")
      .chart();
    excel.selectChart("Plots");
    await expect(port.selection()).rejects.toThrow(
      "Excel could not read the selection: a chart, a picture or a button is selected, or another workbook is in front: select cells of this workbook, and try again.",
    );
    await expect(port.activeSheet()).resolves.toBe("Plots");
    expect((await port.readSheets(["x"])).find(({ isActive }) => isActive)?.sheet).toBe("Plots");
    excel.select("Plots", "A1");
    await expect(port.selection()).resolves.toMatchObject({ sheet: "Plots", address: "A1" });
  });

  test("leaves the sheet in front known if blocks are apart", async () => {
    open();
    excel.select("Sheet1", "B4:B5,D6:D7");
    await expect(port.activeSheet()).resolves.toBe("Sheet1");
  });
});

describe("names", () => {
  const withNames = () => {
    open({ sheets: ["Test", "Other"] });
    excel
      .sheet("Test")
      .put("A1", [[1], [2], [3]])
      .put("C1", [[7]])
      .name("readings", "=Test!$A$1:$A$3")
      .name("t50_", "=Test!$C$1")
      .name("apart", "=Test!$A$1,Test!$C$1")
      .name("lost", "=#REF!")
      .name("constant", "=5")
      .name("elsewhere", "=Other!$A$1");
    excel.sheet("Other").put("A1", [[9]]);
    excel.sheet("Test").name("shared", "=Test!$A$2", "workbook").name("others", "=Other!$A$1", "workbook");
  };

  test("a bad name (several areas, lost, a constant, of another sheet) does not stop the others from being read", async () => {
    withNames();
    const wanted = ["readings", "t50", "apart", "lost", "constant", "elsewhere", "shared", "others", "absent"];
    await expect(port.readNames("Test", wanted)).resolves.toEqual({
      readings: [[1], [2], [3]],
      t50: [[7]],
      shared: [[2]],
    });
  });

  test("are read, listed and left where they are while another window of Excel is in front", async () => {
    withNames();
    const wanted = ["readings", "t50", "apart", "lost", "constant", "elsewhere", "shared", "others", "absent"];
    const seen = async () => [await port.readNames("Test", wanted), await port.listNames("Test")];
    const before = await seen();
    excel.switches.isInBackground = true;
    expect(await seen()).toEqual(before);
    await expect(port.nameAll("Test", [{ name: "t50", address: "D9" }])).rejects.toThrow(
      /"t50" is already at .* and was left there/,
    );
  });

  test.each(["R C", "Z S"] as const)(
    "are read, listed, filled and left where they are where Excel numbers its columns, with the letters %s",
    async (letters) => {
      withNames();
      const wanted = ["readings", "t50", "apart", "lost", "constant", "elsewhere", "shared", "others", "absent"];
      const seen = async () => [await port.readNames("Test", wanted), await port.listNames("Test")];
      const before = await seen();
      excel.switches.numberedColumns = letters;
      expect(await seen()).toEqual(before);
      const [found] = await port.findSheets(["readings", "absent"]);
      expect(found).toMatchObject({ sheet: "Test", has: ["readings"] });
      await expect(port.nameAll("Test", [{ name: "t50", address: "D9" }])).rejects.toThrow(
        /"t50" is already at C1 and was left there/,
      );
      await port.fillNames("Test", { readings: [4] });
      expect(excel.sheet("Test").values("A1:A3")).toEqual([[4], [2], [3]]);
    },
  );

  test("a name of whole rows or columns, or of too many cells, does not stop the others from being read or filled", async () => {
    withNames();
    excel
      .sheet("Test")
      .name("rows", "2:3")
      .name("columns", "B:C")
      .name("block", "A1:Z100000")
      .put("B2", [["a text"]]);
    const wanted = ["readings", "rows", "columns", "block", "t50"];
    await expect(port.readNames("Test", wanted)).resolves.toEqual({ readings: [[1], [2], [3]], t50: [[7]] });
    const [sheet] = (await port.readSheets(wanted)).filter((one) => one.sheet === "Test");
    expect(Object.keys(sheet.values)).toEqual(["readings", "t50"]);
    await expect(port.lookAt([{ sheet: "Test", values: wanted }])).resolves.toMatchObject([
      { values: { readings: [[1], [2], [3]], t50: [[7]] } },
    ]);
    await expect(port.fillNames("Test", { readings: [4], columns: [5] })).rejects.toThrow(
      /has no cells named "columns": choose a data sheet\. Nothing was written/,
    );
  });

  test("are listed with their places", async () => {
    withNames();
    const box = (row: number, col: number, rows = 1) => ({ row, col, rows, cols: 1 });
    await expect(port.listNames("Test")).resolves.toEqual([
      { name: "readings", scope: "sheet", place: box(0, 0, 3) },
      { name: "t50", scope: "sheet", place: box(0, 2) },
      { name: "apart", scope: "sheet", place: "lost" },
      { name: "lost", scope: "sheet", place: "lost" },
      { name: "constant", scope: "sheet", place: "lost" },
      { name: "elsewhere", scope: "sheet", place: "lost" },
      { name: "shared", scope: "workbook", place: box(1, 0) },
    ]);
  });

  test("of every sheet are read together, with the sheet in front", async () => {
    withNames();
    excel.sheet("Other").name("readings", "=Other!$A$1");
    excel.select("Other", "A1");
    await expect(port.readSheets(["readings", "t50", "absent"])).resolves.toEqual([
      { sheet: "Test", isActive: false, values: { readings: [[1], [2], [3]], t50: [[7]] } },
      { sheet: "Other", isActive: true, values: { readings: [[9]] } },
    ]);
  });

  test("give formulas with names of the plan, and constants unchanged", async () => {
    open()
      .sheet("Sheet1")
      .put("A1", [[19.05], ["text"], [`=t50_*2+'t50_ x'!A1&"t50_"`]]);
    excel.sheet("Sheet1").name("contents", "=Sheet1!$A$1:$A$3");
    await expect(port.readContents("Sheet1", ["contents", "absent"])).resolves.toEqual({
      contents: [[19.05], ["text"], [`=t50*2+'t50_ x'!A1&"t50_"`]],
    });
  });

  test("every method refuses a sheet that does not exist", async () => {
    open();
    const sentence = 'There is no sheet called "Gone" in this workbook.';
    for (const work of [
      () => port.readNames("Gone", ["a"]),
      () => port.readContents("Gone", ["a"]),
      () => port.values("Gone", "A1"),
      () => port.show("Gone", "A1"),
      () => port.hidden("Gone"),
      () => port.listNames("Gone"),
      () => port.nameAll("Gone", [{ name: "a", address: "A1" }]),
      () => port.fillNames("Gone", { a: [1] }),
      () => port.isProtected("Gone"),
      () => port.protect("Gone", true),
      () => port.reenterFormulas("Gone"),
    ])
      await expect(work()).rejects.toThrow(sentence);
  });
});

describe("cells that Excel is still calculating", () => {
  const calculating = (batches: number) => {
    open({ evaluator: () => 0.75 });
    excel.sheet("Sheet1").put("A1", [["=CLAY.VOID_RATIO(B1)", 3]]);
    excel.sheet("Sheet1").name("void_ratio", "=Sheet1!$A$1").name("mass", "=Sheet1!$B$1");
    excel.evaluation.busyFor = batches;
    excel.recalculate();
    expect(excel.sheet("Sheet1").cell("A1").value).toBe("#BUSY!");
  };

  test("are waited for", async () => {
    calculating(3);
    await expect(port.readNames("Sheet1", ["void_ratio", "mass"])).resolves.toEqual({
      void_ratio: [[0.75]],
      mass: [[3]],
    });
  });

  test("are given as they are after a limited wait", async () => {
    calculating(1000);
    await expect(port.readNames("Sheet1", ["void_ratio"])).resolves.toEqual({ void_ratio: [["#BUSY!"]] });
    expect(excel.trips.length).toBeLessThan(10);
  });
});

describe("large amounts", () => {
  test("of a column of 50,000 texts, the answer would be over 5 MB, so halves are asked for", async () => {
    open({ platform: "web" });
    const text = "x".repeat(150);
    excel.sheet("Sheet1").put(
      "A1",
      Array.from({ length: 50_000 }, (_, i) => [`${text}${i}`]),
    );
    excel.select("Sheet1", "A:A");
    const { values } = await port.selection();
    expect(values).toHaveLength(50_000);
    expect([values[0], values[24_999], values[49_999]]).toEqual([[`${text}0`], [`${text}24999`], [`${text}49999`]]);
  });

  test("of many named columns of texts are read together", async () => {
    open({ platform: "web" });
    const long = "y".repeat(3_000);
    const names = ["a", "b", "d"];
    names.forEach((name, i) => {
      const letter = "ABD"[i];
      excel.sheet("Sheet1").put(
        `${letter}1`,
        Array.from({ length: 900 }, (_, row) => [`${long}${name}${row}`]),
      );
      excel.sheet("Sheet1").name(`text_${name}`, `=Sheet1!$${letter}$1:$${letter}$900`);
    });
    const found = await port.readNames("Sheet1", ["text_a", "text_b", "text_d"]);
    expect(found.text_d[899]).toEqual([`${long}d899`]);
    expect(found.text_a).toHaveLength(900);
  });

  test("of numbers in a long range arrive in order", async () => {
    open({ platform: "web" }).sheet("Sheet1").put("A1", column(60_000));
    const values = await port.values("Sheet1", "A1:B60000");
    expect(values).toHaveLength(60_000);
    expect(values[59_999]).toEqual([60_000, ""]);
  });

  test("above what a pane can hold are refused, with the number of cells", async () => {
    open();
    await expect(port.values("Sheet1", "A1:K100000")).rejects.toThrow(/has 1100000 cells: choose fewer than 1000000/);
  });
});

describe("hidden rows and columns", () => {
  test("are given by their place on the sheet", async () => {
    open().sheet("Sheet1").put("B3", column(4)).hideRows(3, 5);
    excel.sheet("Sheet1").sheet.hiddenCols.add(1);
    await expect(port.hidden("Sheet1")).resolves.toEqual({ rows: [3, 5], cols: [1] });
  });

  test("are none on an empty sheet", async () => {
    open();
    await expect(port.hidden("Sheet1")).resolves.toEqual({ rows: [], cols: [] });
  });
});

test("findSheets says which sheets only a program can bring into sight", async () => {
  open({ sheets: ["Sheet1", "Aside", "_settings"] });
  excel.sheet("Aside").hide("Hidden");
  excel.sheet("_settings").hide("VeryHidden");
  const found = await port.findSheets([]);
  expect(found.map(({ sheet, isVeryHidden = false }) => [sheet, isVeryHidden])).toEqual([
    ["Sheet1", false],
    ["Aside", false],
    ["_settings", true],
  ]);
});

describe("show", () => {
  test("brings the sheet to the front, then selects", async () => {
    open({ sheets: ["Sheet1", "Report"] });
    await port.show("Report", "B4:C18");
    expect(excel.sheet("Report").isActive).toBe(true);
    await expect(port.selection()).resolves.toMatchObject({ sheet: "Report", address: "B4:C18" });
  });

  test.each([
    ["Hidden", "is hidden: show it (right click on a sheet's tab, Unhide)"],
    ["VeryHidden", "is hidden by a macro or another add-in"],
  ] as const)("says so if a sheet is %s, and changes nothing", async (visibility, sentence) => {
    open({ sheets: ["Sheet1", "Report"] })
      .sheet("Report")
      .hide(visibility);
    await expect(port.show("Report", "B4")).rejects.toThrow(sentence);
    expect(excel.sheet("Sheet1").isActive).toBe(true);
  });

  test("refuses text that is not an address", async () => {
    open();
    await expect(port.show("Sheet1", "rubbish")).rejects.toThrow("could not show rubbish");
  });
});

describe("onChange and onSelect", () => {
  // The adapter waits 50 ms for further changes.
  const settle = (): Promise<void> => turns(12, 10);
  const listening = async () => {
    open();
    const heard: string[] = [];
    const leave = [
      await port.onChange((change) => void heard.push(change)),
      await port.onSelect(() => void heard.push("selection")),
    ];
    await settle();
    heard.length = 0;
    return { heard, stop: () => leave.forEach((one) => one()) };
  };

  test.each([
    ["the selection", () => excel.select("Sheet1", "C3"), ["selection"]],
    ["a value", () => excel.tell("changed"), ["values"]],
    ["a result", () => excel.tell("calculated"), ["values"]],
    ["hidden rows", () => excel.tell("rowHidden"), ["values"]],
    ["the sheet in front", () => excel.tell("activated"), ["front", "selection"]],
    ["the workbook, in front again", () => excel.tell("workbookActivated"), ["front"]],
    ["a sheet that was added", () => excel.tell("added"), ["sheets"]],
    ["a sheet that was deleted", () => excel.tell("deleted"), ["sheets"]],
    ["a sheet that was renamed", () => excel.tell("renamed"), ["sheets"]],
    ["a sheet that was moved", () => excel.tell("moved"), ["sheets"]],
  ])("follow %s, until they are told to stop", async (_, happen, told) => {
    const { heard, stop } = await listening();
    happen();
    await settle();
    expect(heard).toEqual(told);
    stop();
    await settle();
    happen();
    await settle();
    expect(heard).toEqual(told);
  });

  test("report one entry that fires several events once for each kind", async () => {
    const { heard, stop } = await listening();
    excel.tell("changed");
    excel.tell("calculated");
    excel.tell("changed");
    excel.select("Sheet1", "C3");
    await settle();
    expect(heard).toEqual(["values", "selection"]);
    stop();
  });

  test("follow the other changes in an Excel that does not report renamed sheets", async () => {
    excel = new StrictExcel({ version: "1.9" });
    const heard: string[] = [];
    const leave = await port.onChange((change) => void heard.push(change));
    excel.tell("changed");
    excel.tell("renamed");
    await settle();
    expect(heard).toEqual(["values"]);
    expect(excel.faults).toEqual([]);
    leave();
  });
});
