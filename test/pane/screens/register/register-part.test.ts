/** @jest-environment jsdom */
import { act } from "react";
import { createRoot, type Root } from "react-dom/client";
import { RegisterPart } from "../../../../src/pane/screens/register/register-part";
import { CATALOGUES } from "../../../../src/pane/text";
import type { CellValue } from "../../../../src/workbook/port";
import { FakePort } from "../../fake-port";
import { inPane } from "../../in-pane";

Object.assign(globalThis, { IS_REACT_ACT_ENVIRONMENT: true });
jest.setTimeout(30_000);

const words = CATALOGUES.en.register;
const SHEET = "Demonstration";
const column = (length: number, cells: readonly CellValue[] = []): CellValue[] =>
  Array.from({ length }, (_, index) => cells[index] ?? "");

const dataSheet = (): Record<string, CellValue[]> => ({
  length_unit: ["mm"],
  times_01: column(40),
  readings_01: column(40),
  ring_number: ["R-7"],
  dial_number: ["D-9"],
  registered_diameter: [""],
  registered_height: [25],
  registered_ring_mass: [""],
  register_source: [""],
  register_mode: ["frozen"],
  register_state: [""],
});
const register = (): Record<string, CellValue[]> => ({
  register_length_unit: ["mm"],
  register_kind: column(5, ["ring"]),
  register_number: column(5, ["R-7"]),
  register_diameter: column(5, [63.5]),
  register_height: column(5, [25.4]),
  register_mass: column(5, [71.23]),
});

let root: Root;
let port: FakePort;
let place: HTMLElement;

async function settle(): Promise<void> {
  await act(async () => void (await new Promise((resolve) => setTimeout(resolve, 0))));
}
async function show(withRegister: boolean): Promise<void> {
  port = new FakePort();
  port.onlySheets(SHEET, ...(withRegister ? ["Register"] : []));
  port.lay(SHEET, dataSheet());
  if (withRegister) port.lay("Register", register());
  place = document.body.appendChild(document.createElement("div"));
  root = createRoot(place);
  await act(async () => root.render(inPane(RegisterPart, port)));
  await settle();
  await press(words.open);
}
afterEach(async () => {
  await act(async () => root.unmount());
  place.remove();
});
async function press(label: string): Promise<void> {
  const button = [...place.querySelectorAll("button")].find(({ textContent }) => textContent === label);
  await act(async () => button?.click());
  await settle();
}
const said = () => place.textContent;
const cells = () => port.columns(SHEET);

test("a blank register can be inserted into a workbook without one", async () => {
  await show(false);
  await press(words.insert);
  expect(await port.sheetNames()).toEqual([SHEET, "Register"]);
  expect(said()).toContain(words.inserted("Register"));
});

test("blank cells get the values of the register and the day; a different value stays unless it is selected", async () => {
  await show(true);
  expect(said()).toContain(words.instead("25"));
  await press(words.take);
  expect(cells().registered_diameter).toEqual([63.5]);
  expect(cells().registered_ring_mass).toEqual([71.23]);
  expect(cells().registered_height).toEqual([25]);
  expect(cells().register_source?.[0]).toMatch(/^Register, \d{4}-\d\d-\d\d$/);
});

test("a different value is replaced if the person selects it", async () => {
  await show(true);
  const box = [...place.querySelectorAll<HTMLInputElement>("input[type=checkbox]")][1];
  await act(async () => box?.click());
  await press(words.take);
  expect(cells().registered_height).toEqual([25.4]);
});

test("a dial that the register does not contain is reported", async () => {
  await show(true);
  expect(said()).toContain(words.unknown("dial", "D-9"));
});

test("live values are formulas with the value of today, and frozen again they are constants with the day", async () => {
  await show(true);
  const choose = async (label: string): Promise<void> => {
    const found = [...place.querySelectorAll("label")].find(({ textContent }) => textContent === label)!;
    await act(async () => found.click());
  };
  await choose(words.modes.live);
  await press(words.take);
  expect(cells().register_mode).toEqual(["live"]);
  const contents = await port.readContents(SHEET, ["registered_diameter", "register_state"]);
  expect(String(contents.registered_diameter![0]![0])).toMatch(/^=IF\(AND\(COUNTIFS\(.*63\.5\)$/);
  expect(String(contents.register_state![0]![0])).toContain("its values were kept");
  await choose(words.modes.frozen);
  await press(words.take);
  expect((await port.readContents(SHEET, ["registered_diameter"])).registered_diameter).toEqual([[63.5]]);
  expect(cells().register_state).toEqual([""]);
});
