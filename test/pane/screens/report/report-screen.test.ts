/** @jest-environment jsdom */
import { act } from "react";
import { runChecks } from "../../../../src/checks";
import { blankSheet } from "../../../../src/datasheet";
import { readRecord } from "../../../../src/record/record";
import { ReportScreen } from "../../../../src/pane/screens/report/report-screen";
import { text } from "../../../../src/pane/text";
import { WorkbookError, type CellValue, type SheetPlan } from "../../../../src/workbook/port";
import { FakePort } from "../../fake-port";
import { inPane } from "../../in-pane";
import { onPage } from "../../on-page";
import { sheetOf } from "../../fake-workbook";
import { english, say } from "../../../../src/reduction/message";

const { place, settle, show } = onPage("made");
let port: FakePort;

const words = text.report;

beforeEach(() => {
  port = new FakePort();
});

const open = (): Promise<void> => show(inPane(ReportScreen, port));
const button = (name: string): HTMLElement => {
  const found = [...place.querySelectorAll("button")].find((one) => one.textContent === name);
  if (!found) throw new Error(`there is no button "${name}" in: ${place.textContent}`);
  return found;
};
const press = async (name: string): Promise<void> => {
  await act(async () => button(name).click());
  await settle();
};

/** A blank data sheet in inches, with a few entries. */
function dataSheet(sheet: string, typed: Record<string, CellValue> = {}): void {
  const blank = blankSheet("US");
  port.workbook.sheets = [sheetOf({ ...blank, cells: blank.cells.filter(({ formula }) => formula) }, sheet)];
  for (const [name, value] of Object.entries({ length_unit: "in", stress_unit: "tsf", ...typed }))
    port.put(sheet, name, 0, value);
}

/** The texts of a report; a line of a list begins with blanks in the place of its mark. */
const textOf = ({ cells }: SheetPlan): string =>
  cells
    .map(({ value }) => String(value ?? ""))
    .join(" ")
    .replaceAll(/\s+/g, " ");

const asRows = (columns: Record<string, CellValue[]>): Record<string, CellValue[][]> =>
  Object.fromEntries(Object.entries(columns).map(([name, column]) => [name, column.map((value) => [value])]));

test("without a data sheet it says what to do", async () => {
  await open();
  expect(place.textContent).toContain(words.none);
  expect([...place.querySelectorAll("button")].map(({ textContent }) => textContent)).not.toContain(
    words.make("Sheet1"),
  );
});

test("a workbook that cannot be read says so, and is read again on request", async () => {
  port.failure = new WorkbookError(say`Excel is busy: wait a moment.`);
  await open();
  expect(place.querySelector('[role="alert"]')!.textContent).toContain("Excel is busy");
  port.failure = undefined;
  dataSheet("Sheet1");
  await press(words.again);
  expect(button(words.make("Sheet1"))).toBeDefined();
});

test("it says what is missing with its cell, before anything is made", async () => {
  dataSheet("Sheet1", { project: "Invented" });
  await open();
  const items = [...place.querySelectorAll("li")].map(({ textContent }) => textContent!);
  expect(items).toContain("Laboratory, cell C7. (Item 1)");
  expect(items.some((item) => item.includes("Specific gravity, measured or assumed, cell "))).toBe(true);
  expect(items.some((item) => item.startsWith("Project"))).toBe(false);
  expect(port.inserted).toEqual([]);
});

test("it makes one sheet, on the paper of the sheet's units, and says where it is", async () => {
  dataSheet("Sheet1");
  await open();
  await press(words.make("Sheet1"));
  expect(port.inserted).toHaveLength(1);
  expect(port.inserted[0]).toMatchObject({ name: "Report Sheet1", paper: "Letter" });
  expect(place.querySelector('[role="status"]')!.textContent).toBeTruthy();
  expect(place.textContent).toContain(words.made("Sheet1", "Report Sheet1"));
});

test.each([
  ["English", "en"],
  ["Deutsch", "de"],
])("the report of a sheet in %s begins with that language", async (called, language) => {
  dataSheet("Sheet1", { sheet_language: called });
  await open();
  const choice = [...place.querySelectorAll("select")].find(({ options }) =>
    [...options].some((one) => one.value === "de"),
  );
  expect(choice!.value).toBe(language);
});

test("paper and the name of the person who prepares it are chosen", async () => {
  dataSheet("Sheet1");
  await open();
  await act(async () => place.querySelector<HTMLInputElement>('input[value="A4"]')!.click());
  const name = place.querySelector<HTMLInputElement>('input:not([type="radio"])')!;
  await act(async () => {
    Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, "value")!.set!.call(name, "AB");
    name.dispatchEvent(new Event("input", { bubbles: true }));
  });
  await press(words.make("Sheet1"));
  const [plan] = port.inserted;
  expect(plan.paper).toBe("A4");
  const { row, col } = plan.names.report_prepared_by;
  expect(plan.cells.find((cell) => cell.row === row && cell.col === col)!.value).toBe("AB");
});

test("a report that cannot be made leaves nothing, and the sentence says why", async () => {
  dataSheet("Sheet1");
  await open();
  port.failing.insertSheet = new WorkbookError(say`The workbook's structure is protected. The workbook is as it was.`);
  await press(words.make("Sheet1"));
  expect(place.querySelector('[role="alert"]')!.textContent).toContain("The workbook is as it was.");
  expect(port.inserted).toEqual([]);
  expect(port.filled).toEqual([]);
});

test("limits of error that were changed on the last report are kept, with who and why; an older report is shown", async () => {
  dataSheet("Sheet1");
  port.lay("Report Sheet1", {
    report_of: ["Sheet1"],
    limit_mass: [0.1],
    limit_mass_by: ["CD"],
    limit_mass_why: ["coarse balance"],
    limit_height: [0.5],
  });
  port.addSheets("Other");
  await open();
  await press(words.show("Report Sheet1"));
  expect(port.shown).toEqual(["Report Sheet1!A1"]);
  await press(words.make("Sheet1"));
  const [plan] = port.inserted;
  const value = (name: string) => {
    const { row, col } = plan.names[name];
    return plan.cells.find((cell) => cell.row === row && cell.col === col)!.value;
  };
  expect([value("limit_mass"), value("limit_mass_by"), value("limit_mass_why")]).toEqual([0.1, "CD", "coarse balance"]);
  // Changed without a name or a reason: it is not kept.
  expect(value("limit_height")).toBe(0.001);
  expect(place.textContent).toContain(words.carried("Report Sheet1"));
});

test("masses that another data sheet has too stand in the report among the checks", async () => {
  const masses = { ring_and_wet_before: 190, ring_and_dry: 150 };
  dataSheet("Sheet1", { boring: "A", ...masses });
  port.lay("Second", { boring: ["B"], ring_and_wet_before: [190], ring_and_dry: [150], times_01: [0] });
  await open();
  await press(words.make("Sheet1"));
  const printed = textOf(port.inserted[0]);
  expect(printed).toMatch(/sheet “Second”: number of equal masses is 2, above 1: correct them/i);
});

test("limits of the firm, answers to checks and overwritten cells are printed", async () => {
  dataSheet("Sheet1", { specific_gravity: 3.9 });
  const { check, answer } = runChecks(readRecord(asRows(port.columns("Sheet1")))).find(({ answer }) =>
    ["stop", "explain"].includes(answer.status),
  )!;
  port.lay("Limits", {
    limit_name: ["Q05.explain"],
    limit_value: [0.9],
    limit_by: ["EF"],
    limit_why: ["our soils"],
  });
  port.lay("Answers", {
    answer_sheet: ["Sheet1"],
    answer_check: [check.id],
    answer_status: [answer.status],
    answer_found: [english(answer.sentence)],
    answer_reason: ["weighed again"],
    answer_by: ["CD"],
    answer_when: ["2026-03-01 14:05"],
  });
  port.put("Sheet1", "void_ratio_initial", 0, 1.2);
  await open();
  await press(words.make("Sheet1"));
  const printed = textOf(port.inserted[0]);
  expect(printed).toContain("weighed again (CD, 2026-03-01 14:05)");
  expect(printed).toContain("Limit of the firm: “Q05, explain beyond” is 0.9");
  expect(printed).toContain("(EF: our soils)");
  expect(printed).toContain("Void ratio, initial e0, holds 1.2 where a formula belongs");
});
