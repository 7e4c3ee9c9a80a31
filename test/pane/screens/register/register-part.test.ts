/** @jest-environment jsdom */
import { act } from "react";
import { createRoot, type Root } from "react-dom/client";
import { cellBeside } from "../../../../src/record/places";
import { RegisterPart } from "../../../../src/pane/screens/register/register-part";
import { CATALOGUES } from "../../../../src/pane/text";
import type { CellValue } from "../../../../src/workbook/port";
import { FakePort } from "../../fake-port";
import { inPane } from "../../in-pane";

Object.assign(globalThis, { IS_REACT_ACT_ENVIRONMENT: true });
const words = CATALOGUES.en.register;
const SHEET = "Demonstration";
const column = (length: number, cells: readonly CellValue[] = []): CellValue[] =>
  Array.from({ length }, (_, index) => cells[index] ?? "");

const dataSheet = (): Record<string, CellValue[]> => ({
  length_unit: ["mm"],
  times_01: column(40),
  readings_01: column(40),
  stress_unit: ["kPa"],
  ring_number: ["R-7"],
  deflection_set: ["D-1"],
  deflection_set_frame: [""],
  apparatus_stress: column(12, [25, 50, 100, 200]),
  apparatus_loading: column(12, [0, 0.1, 0.2, 0.3]),
  apparatus_unloading: column(12),
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
  register_stress_unit: ["kPa"],
  register_kind: column(5, ["ring", "deflection set"]),
  register_number: column(5, ["R-7", "D-1"]),
  register_frame: column(5, ["", "LF-2"]),
  register_set: column(6, ["D-1", "D-1"]),
  register_set_stress: column(6, [50, 100]),
  register_set_loading: column(6, [0.01, 0.02]),
  register_set_unloading: column(6),
  register_set_key: column(6, ["D-1/1", "D-1/2"]),
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
  expect(said()).toContain(words.instead("25 mm"));
  expect(said()).toContain(words.line(words.cells.registered_ring_mass, "71.23 g"));
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
  expect(said()).toContain(words.unknown("dial", "D-9", cellBeside(await port.listNames(SHEET), "dial_number")));
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

test("a deflection set brings its frame; its table replaces another one only if the person selects it", async () => {
  await show(true);
  expect(said()).toContain(`${words.cells.apparatus_stress}: ${words.rows(2)} ${words.instead(words.rows(4))}`);
  await press(words.take);
  expect(cells().deflection_set_frame).toEqual(["LF-2"]);
  expect(cells().apparatus_stress!.slice(0, 4)).toEqual([25, 50, 100, 200]);
  const boxes = [...place.querySelectorAll<HTMLInputElement>("input[type=checkbox]")];
  await act(async () => boxes.at(-1)!.click());
  await press(words.take);
  expect(cells().apparatus_stress!.slice(0, 4)).toEqual([50, 100, "", ""]);
  expect(cells().apparatus_loading!.slice(0, 4)).toEqual([0.01, 0.02, "", ""]);
});
