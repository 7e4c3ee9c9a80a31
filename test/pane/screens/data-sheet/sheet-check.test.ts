/** @jest-environment jsdom */
import { act, createElement } from "react";
import { createRoot, type Root } from "react-dom/client";
import { blankSheet, demoSheet } from "../../../../src/datasheet";
import { cellAddress } from "../../../../src/workbook/address";
import { Pane } from "../../../../src/pane/shell/pane";
import { text } from "../../../../src/pane/text";
import { WorkbookError, type SheetName } from "../../../../src/workbook/port";
import { FAILURES, FakePort } from "../../fake-port";
import { sheetOf } from "../../fake-workbook";

Object.assign(globalThis, { IS_REACT_ACT_ENVIRONMENT: true });
jest.setTimeout(20_000);

const words = text.check;
const WHOLE: SheetName[] = Object.entries(blankSheet("SI").names).map(([name, place]) => ({
  name,
  scope: "sheet",
  place,
}));

const WITHOUT_RING = WHOLE.filter(({ name }) => name !== "ring_mass");
const RING = cellAddress(blankSheet("SI").names.ring_mass.row, blankSheet("SI").names.ring_mass.col);

let root: Root;
let port: FakePort;
let place: HTMLElement;

beforeEach(async () => {
  port = new FakePort();
  port.workbook.sheets = [{ ...sheetOf(blankSheet("SI"), "Sheet1"), protection: "none" }];
  place = document.body.appendChild(document.createElement("div"));
  root = createRoot(place);
  await act(async () => root.render(createElement(Pane, { port, sheets: { blankSheet, demoSheet }, look: "light" })));
});

afterEach(async () => {
  await act(async () => root.unmount());
  place.remove();
});

const button = (name: string): HTMLButtonElement => {
  const found = [...place.querySelectorAll<HTMLButtonElement>("button")].find(
    ({ textContent }) => textContent === name,
  );
  if (!found) throw new Error(`there is no button "${name}" in: ${place.textContent}`);
  return found;
};
const press = (name: string): Promise<void> => act(async () => button(name).click());
const open = (): Promise<void> => act(async () => button(words.look).click());
const items = (): string[] => [...place.querySelectorAll("li")].map(({ textContent }) => textContent ?? "");
const status = (): string =>
  [...place.querySelectorAll('[role="status"], [role="alert"]')].map(({ textContent }) => textContent).join(" ");

async function chooseName(name: string): Promise<void> {
  const select = place.querySelector("select")!;
  const set = Object.getOwnPropertyDescriptor(HTMLSelectElement.prototype, "value")!.set!;
  await act(async () => {
    set.call(select, name);
    select.dispatchEvent(new Event("change", { bubbles: true }));
  });
}

test("a whole sheet is called whole", async () => {
  await open();
  expect(status()).toContain(words.whole);
  expect(items()).toEqual([]);
});

test("a missing name is told with what is lost, and heads the list of names to attach", async () => {
  port.nameSheet("Sheet1", WITHOUT_RING);
  await open();
  expect(place.textContent).toContain(words.stop(1));
  expect(items()).toEqual([
    expect.stringMatching(/Ring \(ring_mass\) is missing\. Without it there is no answer for: /),
  ]);
  const group = place.querySelector("optgroup")!;
  expect([group.label, group.querySelectorAll("option").length]).toEqual([words.missingGroup, 1]);
});

test("a sheet of another kind is called so", async () => {
  port.nameSheet("Sheet1", [{ name: "budget", scope: "sheet", place: { row: 0, col: 0, rows: 1, cols: 1 } }]);
  await open();
  expect(items()).toEqual([expect.stringContaining("sheet of another kind")]);
  expect(port.asked).toEqual([]);
});

test("the selected cell gets the name chosen, and the sheet is looked at again", async () => {
  await open();
  await chooseName("ring_mass");
  port.select([[74.36]], "D9");
  port.nameSheet("Sheet1", WITHOUT_RING);
  await press(words.give);
  expect(port.asked).toEqual(["name ring_mass Sheet1!D9"]);
  expect(status()).toContain(words.attached("ring_mass", "D9", port.workbook.front));
});

test("a good name stays until it is said that it may be moved", async () => {
  await open();
  await chooseName("ring_mass");
  port.select([[1]], "D9");
  await press(words.give);
  expect(status()).toContain(`already at ${RING} and was left there`);
  expect(port.asked).toEqual([]);
  await press(words.move("ring_mass"));
  expect(port.asked).toEqual(["name ring_mass Sheet1!D9 in place of another"]);
});

test("more than one block, or too many values for one cell, is refused in words", async () => {
  await open();
  await chooseName("ring_mass");
  port.select([[1]], "D9,F9");
  await press(words.give);
  expect(status()).toContain(words.oneBlock);
  port.select([[1], [2]], "D9:D10");
  await press(words.give);
  expect(status()).toContain("select one cell");
  expect(port.asked).toEqual([]);
});

test("a firm's file is inserted, and what could not be kept is told", async () => {
  await open();
  port.insertFile = async (file) => {
    port.asked.push(`insert ${file.length} bytes`);
    port.addSheets("Our form");
    return { sheets: ["Our form"], remarks: ["Notes were left out."] };
  };
  const input = place.querySelector<HTMLInputElement>('input[type="file"]')!;
  const file = { name: "form.xlsx", arrayBuffer: async () => new ArrayBuffer(9) };
  Object.defineProperty(input, "files", { value: [file], configurable: true });
  await act(async () => void input.dispatchEvent(new Event("change", { bubbles: true })));
  expect(port.asked).toEqual(["insert 9 bytes"]);
  expect(status()).toContain(`${words.inserted(["Our form"])} Notes were left out.`);
  expect(place.textContent).toContain(words.of("Our form"));
});

test("formulas are entered again, and what still does not work is told", async () => {
  await open();
  const cells = port.sheet("Sheet1").cells;
  for (let row = 1; row <= 12; row++) cells.set(`Z${row}`, { value: "#NAME?", formula: `=F${row}()` });
  for (let row = 1; row <= 9; row++) port.functions.set(`=F${row}()`, row);
  await press(words.reenter);
  expect(status()).toContain(words.reentered(12, 3));
  expect(port.asked).toEqual(["re-enter Sheet1"]);
});

test("protection is lifted and put back with one button", async () => {
  port.sheet("Sheet1").protection = "without password";
  await open();
  await press(words.lift);
  expect(status()).toContain(words.lifted("Sheet1"));
  await press(words.protect);
  expect(port.asked).toEqual(["open Sheet1", "protect Sheet1"]);
});

test("a workbook that cannot be read says so, and can be asked again", async () => {
  port.failure = new WorkbookError("The workbook is busy.");
  await open();
  expect(place.querySelector('[role="alert"]')?.textContent).toBe("The workbook is busy.");
  port.failure = undefined;
  await press(words.look);
  expect(status()).toContain(words.whole);
});

describe("failures of the host", () => {
  test("protection with a password stays, and the pane says so", async () => {
    port.sheet("Sheet1").protection = "with password";
    await open();
    await press(words.lift);
    expect(status()).toContain(FAILURES.password().message);
    expect(port.sheet("Sheet1").protection).toBe("with password");
    expect(port.asked).toEqual([]);
  });

  test("a name that cannot be given is not given, and may be tried again", async () => {
    port.nameSheet("Sheet1", WITHOUT_RING);
    port.select([[12]], "C21");
    await open();
    await chooseName("ring_mass");
    port.failing.nameCells = FAILURES.protected("Sheet1");
    await press(words.give);
    expect(status()).toContain(FAILURES.protected("Sheet1").message);
    expect(port.asked).toEqual([]);
    port.failing.nameCells = undefined;
    await press(words.give);
    expect(port.asked).toEqual(["name ring_mass Sheet1!C21"]);
  });

  test("a file that cannot be inserted leaves the workbook as it was", async () => {
    const before = await port.sheetNames();
    const input = place.querySelector<HTMLInputElement>("input[type=file]")!;
    Object.defineProperty(input, "files", { value: [{ arrayBuffer: async () => new ArrayBuffer(3) }] });
    await act(async () => void input.dispatchEvent(new Event("change", { bubbles: true })));
    expect(status()).toContain("This is no .xlsx workbook");
    expect(await port.sheetNames()).toEqual(before);
  });

  test("the workbook is in the middle of something: the sentence stands, and nothing was asked for twice", async () => {
    await open();
    port.failing.reenterFormulas = FAILURES.halfway("Sheet1");
    await press(words.reenter);
    expect(status()).toContain(FAILURES.halfway("Sheet1").message);
    expect(port.asked).toEqual(["re-enter Sheet1"]);
  });
});
