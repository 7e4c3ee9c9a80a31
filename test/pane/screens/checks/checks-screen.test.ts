/** @jest-environment jsdom */
import { say } from "../../../../src/reduction/message";
import { act, type ComponentType } from "react";
import { createRoot, type Root } from "react-dom/client";
import { COMPARISON_NAMES } from "../../../../src/book/comparison";
import { ANSWER_NAMES } from "../../../../src/checks/answers";
import { demoSheet } from "../../../../src/datasheet";
import { cellAddress } from "../../../../src/workbook/address";
import { ByHandScreen } from "../../../../src/pane/screens/by-hand/by-hand-screen";
import { ChecksScreen } from "../../../../src/pane/screens/checks/checks-screen";
import { text } from "../../../../src/pane/text";
import { WorkbookError, type CellValue, type WorkbookPort } from "../../../../src/workbook/port";
import { turns } from "../../../turns";
import { FakePort } from "../../fake-port";
import { inPane } from "../../in-pane";
import { sheetOf } from "../../fake-workbook";

Object.assign(globalThis, { IS_REACT_ACT_ENVIRONMENT: true });
const SHEET = "Demonstration";
const plan = demoSheet("SI");
let root: Root;
let place: HTMLElement;
let port: FakePort;

const formulaOf = (name: string): string | undefined => {
  const { row, col } = plan.names[name];
  return plan.cells.find((cell) => cell.row === row && cell.col === col)?.formula;
};

/** The demonstration as typed, with formulas not calculated except for some results. */
function fill(results: Record<string, number>): void {
  port.workbook.sheets = [sheetOf(plan, SHEET)];
  port.workbook.front = SHEET;
  for (const [name, value] of Object.entries(results)) port.put(SHEET, name, 0, value, formulaOf(name));
}

async function show(Screen: ComponentType<{ port: WorkbookPort }>): Promise<void> {
  await act(async () => root.render(inPane(Screen, port)));
  await act(() => turns(10, 5));
}

beforeEach(() => {
  port = new FakePort();
  place = document.body.appendChild(document.createElement("div"));
  root = createRoot(place);
});
afterEach(async () => {
  await act(async () => root.unmount());
  place.remove();
});

const said = (): string => place.textContent ?? "";
const field = (label: RegExp): HTMLInputElement | HTMLSelectElement => {
  const all = [...place.querySelectorAll<HTMLInputElement | HTMLSelectElement>("input, select")];
  const found = all.find((one) => label.test(one.getAttribute("aria-label") ?? one.labels?.[0]?.textContent ?? ""));
  if (!found) throw new Error(`there is no field ${label} in: ${said()}`);
  return found;
};
const enter = (label: RegExp, value: string): Promise<void> =>
  act(async () => {
    const one = field(label);
    const select = one instanceof HTMLSelectElement;
    const prototype = select ? HTMLSelectElement.prototype : HTMLInputElement.prototype;
    Object.getOwnPropertyDescriptor(prototype, "value")!.set!.call(one, value);
    one.dispatchEvent(new Event(select ? "change" : "input", { bubbles: true }));
  });
const press = (name: RegExp): Promise<void> =>
  act(async () => {
    const found = [...place.querySelectorAll("button")].find((one) =>
      name.test(one.getAttribute("aria-label") ?? one.textContent ?? ""),
    );
    if (!found) throw new Error(`there is no button ${name} in: ${said()}`);
    found.click();
    await turns(10, 5);
  });

describe.each([
  ["checks", ChecksScreen, text.checks.empty],
  ["by hand", ByHandScreen, text.byHand.empty],
] as const)("the screen %s", (_, Screen, empty) => {
  test("says what to do if there is no data sheet", async () => {
    await show(Screen);
    expect(said()).toContain(empty);
  });

  test("says why if the workbook cannot be read", async () => {
    port.failure = new WorkbookError(say`The workbook is busy: press Escape in the sheet.`);
    await show(Screen);
    expect(place.querySelector("[role=alert]")?.textContent).toContain("press Escape in the sheet");
  });
});

test("an overwritten cell is named first, and shown on demand", async () => {
  fill({});
  const { row, col } = plan.names.dry_mass;
  port.put(SHEET, "dry_mass", 0, 89.3);
  await show(ChecksScreen);
  const cell = cellAddress(row, col);
  expect(said()).toMatch(new RegExp(`${cell}, Dry mass of soil, holds 89.3 where a formula belongs`));
  await press(new RegExp(`^${text.checks.showCell(cell)}$`));
  expect(port.shown).toEqual([`${SHEET}!${cell}`]);
});

test.each([
  ["too", {}, /Sheet “Second”: number of equal masses is 3, above 1: correct them on the sheet where they were left/],
  ["not", { ring_and_wet_after: 250, ring_and_dry: 150 }, /Sheet “Second”: number of equal masses is 1, not above 1/],
] as const)(
  "masses that another data sheet has %s are compared; a sheet of the same specimen is not",
  async (_, of, found) => {
    fill({});
    port.workbook.sheets.push(sheetOf(plan, "Second"), sheetOf(plan, "Same specimen"));
    for (const [name, value] of Object.entries({ sample: "U8", ...of })) port.put("Second", name, 0, value);
    await show(ChecksScreen);
    await enter(/^Show questions/, "all");
    expect(said()).toMatch(found);
    expect(said()).not.toContain("“Same specimen”");
  },
);

test("an answer needs a sentence and initials, and is added below the others", async () => {
  fill({ compression_index: 4 });
  const blank = new Array<CellValue>(5).fill("");
  port.lay("Answers", Object.fromEntries(ANSWER_NAMES.map((name) => [name, ["before", ...blank]])));
  await show(ChecksScreen);
  const [, id] = /\b(Q\d\d) /.exec(said().slice(said().indexOf(text.checks.groups.stop)))!;
  await press(new RegExp(`\\(${id}\\)$`));
  expect(said()).toContain(text.checks.needBoth);
  expect(port.filled).toEqual([]);
  await enter(new RegExp(`^Answer \\(${id}\\)`), "It is the soil.");
  await enter(new RegExp(`^Initials \\(${id}\\)`), "RV");
  await press(new RegExp(`\\(${id}\\)$`));
  const [{ sheet, values }] = port.filled;
  expect(sheet).toBe("Answers");
  expect(values.answer_check).toEqual([null, id]);
  expect(values.answer_reason).toEqual([null, "It is the soil."]);
  expect(port.columns("Answers").answer_by.slice(0, 2)).toEqual(["before", "RV"]);
});

test("a comparison is signed in a row below the others; without initials nothing is written", async () => {
  fill({ compression_index: 0.5 });
  port.lay("Signed", Object.fromEntries(COMPARISON_NAMES.map((name) => [name, ["before", "", ""]])));
  await show(ByHandScreen);
  await enter(/^Quantity/, "compression_index");
  await press(/^Add$/);
  await enter(/^Compression index Cc, by hand/, "0.52");
  expect(said()).toMatch(/agrees: difference −0.020, −3.8%/);
  await enter(/^Tolerance, %/, "1");
  expect(said()).toMatch(/differs: difference/);
  await press(/^Sign/);
  expect(said()).toContain(text.byHand.needBy);
  expect(port.filled).toEqual([]);
  await enter(/^Initials/, "RV");
  await press(/^Sign/);
  expect(port.filled[0].values).toMatchObject({
    compare_quantity: [null, "Compression index Cc"],
    compare_hand: [null, 0.52],
    compare_tolerance: [null, 0.01],
    compare_by: [null, "RV"],
  });
});

test("the tolerance follows the digits typed, and is signed with the value", async () => {
  fill({ void_ratio_initial: 0.5749 });
  port.lay("Signed", Object.fromEntries(COMPARISON_NAMES.map((name) => [name, ["before", "", ""]])));
  await show(ByHandScreen);
  await enter(/^Quantity/, "void_ratio_initial");
  await press(/^Add$/);
  expect(field(/^Tolerance, %/).value).toBe("0.17");
  await enter(/^Void ratio, initial e0, by hand/, "0.57");
  expect(field(/^Tolerance, %/).value).toBe("0.88");
  expect(said()).toMatch(/agrees: difference 0.0049, 0.86%/);
  await enter(/^Initials/, "RV");
  await press(/^Sign/);
  expect(port.filled[0].values).toMatchObject({ compare_hand: [null, 0.57], compare_tolerance: [null, 0.005 / 0.57] });
});

test("values by hand are taken from the selected cells in the order of the list", async () => {
  fill({ compression_index: 0.5, swelling_index: 0.1 });
  await show(ByHandScreen);
  for (const name of ["compression_index", "swelling_index"]) {
    await enter(/^Quantity/, name);
    await press(/^Add$/);
  }
  port.lay("Notes", {});
  port.workbook.front = "Notes";
  await act(async () => port.select([["Cc"], [0.49], ["0.110"]], "B2:B4"));
  await press(/^Take/);
  expect([/^Compression index Cc, by hand/, /^Swelling index Cs, by hand/].map((one) => field(one).value)).toEqual([
    "0.49",
    "0.110",
  ]);
});
