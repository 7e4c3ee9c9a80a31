/** @jest-environment jsdom */
/** Sheets made from plans in the strict stand-in for Excel, read back cell by cell. */
import { english } from "../../../src/reduction/message";
import { blankSheet, demoSheet } from "../../../src/datasheet";
import { OfficePort } from "../../../src/workbook/office";
import { localName } from "../../../src/workbook/office/names";
import { WorkbookError, type SheetPlan } from "../../../src/workbook/port";
import { StrictExcel, type Options } from "../../excel/strict-excel";
import { PLAN } from "./plan";

const port = new OfficePort();

/** Faults of the stand-in are words that Excel does not know, and members newer than the manifest declares. */
const open = (options: Options = {}): StrictExcel => new StrictExcel(options);

async function make(plan: SheetPlan, options: Options = {}) {
  const excel = open(options);
  const told: string[] = [];
  const name = await port.insertSheet(plan, (sentence) => told.push(english(sentence)));
  expect(excel.faults).toEqual([]);
  return { excel, told, name, sheet: excel.sheet(name) };
}

const PLANS: [string, SheetPlan][] = [
  ["blank, SI", blankSheet("SI")],
  ["blank, US", blankSheet("US")],
  ["blank, 1 load", blankSheet("SI", { loads: 1 })],
  ["blank, 48 loads", blankSheet("US", { loads: 48 })],
  ["demonstration, SI", demoSheet("SI")],
  ["demonstration, US", demoSheet("US")],
  ["German demonstration, SI", demoSheet("SI", "de")],
];

describe.each(PLANS)("the data sheet: %s", (_, plan) => {
  test("every cell, name, format and rule is where the plan has it", async () => {
    const { sheet, told } = await make(plan, { version: "1.18", platform: "desktop" });
    expect(told).toEqual([]);
    const wrong = plan.cells.filter(({ row, col, value, formula, format, note }) => {
      const cell = sheet.at(row, col);
      const content = formula?.replace(/\{(\w+)\}/g, (_whole, name: string) => localName(name));
      const isThere = content !== undefined ? cell.formula === content : cell.value === (value ?? "");
      return !isThere || (format !== undefined && cell.format !== format) || cell.note !== note;
    });
    expect(wrong).toEqual([]);
    expect(Object.keys(sheet.names)).toHaveLength(Object.keys(plan.names).length);
    for (const { box, kind } of plan.entries ?? []) {
      const rule = sheet.at(box.row, box.col).rule?.rule;
      expect(Object.keys(rule ?? {})).toEqual([kind === "date" ? "date" : "decimal"]);
      expect(sheet.at(box.row + box.rows - 1, box.col + box.cols - 1).rule?.rule).toEqual(rule);
    }
    const lists = plan.cells.filter(({ choices }) => choices);
    const listed = lists.map(({ row, col }) => sheet.at(row, col).rule?.rule);
    expect(listed).toEqual(
      lists.map(({ choices }) => ({ list: { inCellDropDown: true, source: choices!.join(",") } })),
    );
  });

  test("it takes a handful of requests, none near 5 MB, on the web too", async () => {
    const excel = open({ platform: "web" });
    const { trips, largest } = await excel.cost(() => port.insertSheet(plan));
    expect(excel.faults).toEqual([]);
    expect(trips).toBeLessThanOrEqual(8);
    expect(largest).toBeLessThan(2_500_000);
  });
});

test("operators are Excel's own: at least, more than, between; dates are days in ISO 8601", async () => {
  const box = (row: number) => ({ row, col: 1, rows: 1, cols: 1 });
  const { sheet } = await make({
    ...PLAN,
    entries: [
      { box: box(2), kind: "number", least: 0, message: "at least 0" },
      { box: box(3), kind: "number", least: 0, above: true, message: "more than 0" },
      { box: box(4), kind: "number", least: 1, most: 5, message: "1 to 5" },
      { box: box(5), kind: "date", least: 32874, most: 73050, message: "1990 to 2099" },
    ],
  });
  expect([2, 3, 4, 5].map((row) => sheet.at(row, 1).rule?.rule)).toEqual([
    { decimal: { formula1: 0, operator: "GreaterThanOrEqualTo" } },
    { decimal: { formula1: 0, operator: "GreaterThan" } },
    { decimal: { formula1: 1, formula2: 5, operator: "Between" } },
    // Day 32874 is 1 January 1990, day 73050 is 31 December 2099 (ISO/IEC 29500-1, 18.17.4.1: day 1 is 1 January 1900).
    { date: { formula1: "1990-01-01", formula2: "2099-12-31", operator: "Between" } },
  ]);
});

test("each cell of the sheet has the font for which it was laid out, whatever the font of the workbook", async () => {
  const { sheet } = await make(PLAN);
  for (const [row, col] of [
    [0, 0],
    [2, 1],
    [6, 3],
  ])
    expect(sheet.at(row, col).look("format.font.name")).toBe("Arial");
  expect(sheet.at(2, 1).look("format.font.size")).toBe(9);
  expect(sheet.at(6, 3).look("format.font.size")).toBe(9);
  expect(sheet.at(0, 0).look("format.font.size")).toBe(14);
});

describe("the layout", () => {
  test("constants that Excel would read as something else stay unchanged", async () => {
    const { sheet } = await make(PLAN);
    const texts = [sheet.cell("A6"), sheet.cell("B6"), sheet.cell("C6")];
    expect(texts.map(({ value }) => value)).toEqual(["00123", "=not a formula", "Mar 3"]);
    expect(texts.map(({ formula }) => formula)).toEqual([undefined, undefined, undefined]);
    expect(sheet.cell("B7").value).toBe(true);
    expect(sheet.cell("B5").formula).toBe("=t50_*initial_height");
  });

  test("merged cells, widths, frozen rows, choices and local names are set", async () => {
    const { sheet } = await make(PLAN);
    expect(sheet.cell("C1").merged).toBe("A1:D1");
    // 24 characters of 7 pixels and 5 pixels of margin, 0.75 points each.
    expect(sheet.sheet.widths.get(0)).toBe(129.75);
    expect(sheet.sheet.frozen).toEqual({ rows: 1, cols: 0 });
    expect(sheet.cell("B4").rule?.rule).toEqual({ list: { inCellDropDown: true, source: "mm,cm,in" } });
    expect(sheet.names).toEqual({ initial_height: "=Test!$B$3", t50_: "=Test!$B$4:$B$5" });
  });

  test("neighbouring cells of a column with the same choices share a rule", async () => {
    const cells = [1, 2, 3, 5].map((row) => ({ row, col: 0, kind: "input" as const, choices: ["a", "b"] }));
    const { sheet } = await make({ ...PLAN, merges: [], cells });
    expect(sheet.sheet.rules.map(({ box }) => [box.row, box.rows])).toEqual([
      [1, 3],
      [5, 1],
    ]);
  });

  test("inputs are open, everything else is locked; rows may be inserted, but not deleted", async () => {
    const { sheet, excel } = await make({ ...PLAN, isProtected: true });
    expect([sheet.cell("B3").locked, sheet.cell("A3").locked]).toEqual([false, true]);
    expect(sheet.sheet.protection).toMatchObject({ on: true, options: { allowInsertRows: true } });
    expect(sheet.sheet.protection.options).not.toMatchObject({ allowDeleteRows: true });
    const take = Excel.run(async (context) => {
      context.workbook.worksheets.getItem("Test").getRange("3:3").delete("Up");
      await context.sync();
    });
    await expect(take).rejects.toMatchObject({ code: "AccessDenied" });
    expect(excel.sheet("Test").cell("A3").value).toBe("Initial height");
    await port.protect("Test", false);
    await Excel.run(async (context) => {
      context.workbook.worksheets.getItem("Test").getRange("3:3").delete("Up");
      await context.sync();
    });
    expect(excel.sheet("Test").cell("A3").value).toBe("Length unit");
  });

  test("a sheet that the plan keeps behind is not shown, another is", async () => {
    const shown = await make(PLAN);
    expect(shown.sheet.isActive).toBe(true);
    const behind = await make({ ...PLAN, behind: true });
    expect(behind.sheet.isActive).toBe(false);
  });
});

describe("notes", () => {
  test.each(["web", "desktop", "mac"] as const)("have Excel's own size (%s)", async (platform) => {
    const { sheet } = await make(PLAN, { platform });
    expect(sheet.cell("B3").note).toBe("Mean of four readings of the calliper.");
  });

  test("are left out if Excel has none", async () => {
    const { sheet, told } = await make(PLAN, { version: "1.17" });
    expect(sheet.cell("B3").note).toBeUndefined();
    expect(told).toEqual([]);
  });

  test("that are refused do not remove the sheet, and a sentence says so", async () => {
    const excel = open();
    excel.failures.refuse(/notes\.add/, "GeneralException");
    const told: string[] = [];
    await expect(port.insertSheet(PLAN, (sentence) => told.push(english(sentence)))).resolves.toBe("Test");
    expect(told).toEqual([expect.stringMatching(/^Excel did not take all notes/)]);
    expect(excel.sheet("Test").cell("A1").value).toBe("Consolidation test");
  });
});

describe("a workbook that has sheets already", () => {
  test("keeps them unchanged; the new sheet gets a free name", async () => {
    const excel = open({ sheets: ["test", "Test 2", "Notes"] });
    excel.sheet("Notes").put("A1", [["mine", 7]]);
    const before = excel.picture().sheets;
    await expect(port.insertSheet(PLAN)).resolves.toBe("Test 3");
    expect(excel.sheetNames).toEqual(["test", "Test 2", "Notes", "Test 3"]);
    expect(excel.picture().sheets.slice(0, 3)).toEqual(before);
  });

  test("with a protected structure is left unchanged, with the remedy; without the protection it works", async () => {
    const excel = open();
    excel.structure(true);
    const before = excel.picture();
    await expect(port.insertSheet(PLAN)).rejects.toThrow(/structure is protected.*Review, Protect Workbook/);
    expect(excel.picture()).toEqual(before);
    excel.structure(false);
    await expect(port.insertSheet(PLAN)).resolves.toBe("Test");
  });

  test("in which a cell is being edited waits for the person", async () => {
    const excel = open();
    excel.startEdit();
    const made = port.insertSheet(PLAN);
    await new Promise((resolve) => setTimeout(resolve, 20));
    expect(excel.sheetNames).toEqual(["Sheet1"]);
    excel.endEdit();
    await expect(made).resolves.toBe("Test");
  });
});

describe("a refusal in the middle", () => {
  const whole = { ...PLAN, isProtected: true };

  test("at any action leaves the workbook unchanged, one sentence says why, and a second try works", async () => {
    const counted = open();
    await port.insertSheet(whole);
    const actions = counted.failures.count;
    expect(actions).toBeGreaterThan(40);
    const kept: string[] = [];
    for (let at = 1; at <= actions; at++) {
      const excel = open();
      const before = excel.picture();
      excel.failures.failAt(at, "GeneralException");
      const told: string[] = [];
      const done = await port
        .insertSheet(whole, (sentence) => told.push(english(sentence)))
        .catch((error: unknown) => error);
      if (typeof done === "string") {
        // The sheet is complete without notes and pages.
        expect(excel.sheet(done).sheet.protection.on).toBe(true);
        kept.push(...told);
        continue;
      }
      expect(done).toBeInstanceOf(WorkbookError);
      expect((done as Error).message).toMatch(
        /^Excel could not (add a|fill in the new|show the new) sheet: it gives no reason: .* The workbook is as it was\.$/,
      );
      expect(excel.picture().sheets).toEqual(before.sheets);
      await expect(port.insertSheet(whole)).resolves.toBe("Test");
    }
    expect(new Set(kept.map((sentence) => sentence.slice(0, 18)))).toEqual(new Set(["Excel did not take"]));
  });

  test("if even the removal is refused, the sentence says what is left", async () => {
    const excel = open();
    excel.failures.refuse(/names\.add/, "AccessDenied");
    excel.failures.refuse(/\.delete\(\)/, "AccessDenied");
    await expect(port.insertSheet(PLAN)).rejects.toThrow(
      /it is protected.* An unfinished sheet "Test" was left behind: delete it\.$/,
    );
  });

  test("if Excel closes, the sentence says so, and the add-in makes its next sheet beside the unfinished one", async () => {
    const excel = open();
    excel.failures.closeAt(30);
    await expect(port.insertSheet(PLAN)).rejects.toThrow(
      /the connection to Excel was lost: reload the workbook, and try again\. An unfinished sheet "Test" was left behind/,
    );
    excel.failures.reopen();
    const unfinished = excel.picture().sheets[1];
    await expect(new OfficePort().insertSheet(PLAN)).resolves.toBe("Test 2");
    expect(excel.picture().sheets[1]).toEqual(unfinished);
  });
});
