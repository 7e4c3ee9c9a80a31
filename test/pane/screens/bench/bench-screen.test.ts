/** @jest-environment jsdom */
import { act } from "react";
import { createRoot, type Root } from "react-dom/client";
import { BenchScreen } from "../../../../src/pane/screens/bench/bench-screen";
import { cellBeside } from "../../../../src/record/places";
import { CATALOGUES } from "../../../../src/pane/text";
import { localDayNumber } from "../../../../src/workbook/day-number";
import type { CellValue } from "../../../../src/workbook/port";
import printed from "../../../published/data/time-curves.json";
import { FAILURES, FakePort } from "../../fake-port";
import { inPane } from "../../in-pane";

Object.assign(globalThis, { IS_REACT_ACT_ENVIRONMENT: true });
const words = CATALOGUES.en.bench;
const SHEET = "Demonstration";
/** Das, Example 11.11, in ten thousandths of an inch. */
const { minutes, inches } = printed.das11_11;
const divisions = inches.map((inch) => Math.round(1e4 * inch));
const column = (length: number, cells: readonly CellValue[] = []): CellValue[] =>
  Array.from({ length }, (_, index) => cells[index] ?? "");

/** A sheet with a load that was applied `ago` minutes ago and has `count` readings. */
const sheet = (count: number, ago?: number): Record<string, CellValue[]> => ({
  stress_unit: ["kPa"],
  time_method: ["log time"],
  test_method: ["to end of primary"],
  load_stress: column(24, [50]),
  load_started: column(24, ago === undefined ? [] : [localDayNumber(new Date()) - ago / 1440]),
  times_01: column(40, minutes),
  readings_01: column(40, divisions.slice(0, count)),
});

let root: Root;
let port: FakePort;
let place: HTMLElement;

async function settle(): Promise<void> {
  await act(async () => void (await new Promise((resolve) => setTimeout(resolve, 0))));
}
async function show(columns: Record<string, CellValue[]>): Promise<void> {
  port = new FakePort();
  port.onlySheets(SHEET);
  port.lay(SHEET, columns);
  place = document.body.appendChild(document.createElement("div"));
  root = createRoot(place);
  await act(async () => root.render(inPane(BenchScreen, port)));
  await settle();
}
afterEach(async () => {
  await act(async () => root.unmount());
  place.remove();
});

const readings = () => port.columns(SHEET).readings_01;
const times = () => port.columns(SHEET).times_01;
const field = () => place.querySelector<HTMLInputElement>("form input:not([type=radio])")!;
async function type(text: string): Promise<void> {
  await act(async () => {
    Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, "value")!.set!.call(field(), text);
    field().dispatchEvent(new Event("input", { bubbles: true }));
  });
}
async function enter(text: string): Promise<void> {
  await type(text);
  await submit();
}
async function submit(): Promise<void> {
  await act(async () => place.querySelector("form")!.requestSubmit());
  await settle();
}
async function press(label: string | RegExp): Promise<void> {
  const button = [...place.querySelectorAll("button")].find(({ textContent }) =>
    typeof label === "string" ? textContent === label : label.test(textContent),
  );
  await act(async () => button!.click());
  await settle();
}
const said = () => place.textContent;

test("Enter writes a reading beside the scheduled time that the clock has reached, and clears the field", async () => {
  await show(sheet(10, 60.5));
  expect(said()).toContain(words.field("1 h"));
  await enter("1936");
  expect(readings().slice(9, 12)).toEqual([divisions[9], 1936, ""]);
  expect(times()[10]).toBe(60);
  expect(field().value).toBe("");
  expect(said()).toContain(words.wrote(SHEET, 1, "1 h", "1936"));
});

test("a decimal comma is accepted", async () => {
  await show(sheet(10, 60.5));
  await enter("1936,5");
  expect(readings()[10]).toBe(1936.5);
});

test("the screen asks about a reading that lies off the curve; a second Enter writes it", async () => {
  await show(sheet(10, 60.5));
  await enter("1396");
  expect(readings()[10]).toBe("");
  expect(said()).toContain("lies off the curve");
  await submit();
  expect(readings()[10]).toBe(1396);
});

test("the last reading can be undone; it is then in the field to be corrected", async () => {
  await show(sheet(10, 60.5));
  await enter("1935");
  await press(/^Undo the reading/);
  expect(readings()[10]).toBe("");
  expect(field().value).toBe("1935");
});

test("a reading far from the schedule gets the time of the clock; undoing it restores the scheduled time", async () => {
  await show(sheet(10, 80));
  await enter("1950");
  expect(readings()[10]).toBe(1950);
  expect(times()[10]).toBeCloseTo(80, 1);
  await press(/^Undo the reading/);
  expect([times()[10], readings()[10]]).toEqual([60, ""]);
});

test("a time of its own is not written to a load whose times other loads share; a reading at a time of the schedule is", async () => {
  await show(sheet(10, 80));
  const { names } = port.sheet(SHEET);
  names.set("times_02", names.get("times_01")!);
  // The pane reads names anew when it gets the focus.
  await act(async () => void window.dispatchEvent(new Event("focus")));
  await settle();
  const before = times();
  await enter("1950");
  expect(said()).toContain(words.timesShared(1));
  expect([times(), readings()[10]]).toEqual([before, ""]);
  await act(async () => place.querySelector<HTMLInputElement>("input[type=radio][value=schedule]")!.click());
  await enter("1950");
  expect([times(), readings()[10]]).toEqual([before, 1950]);
});

test("a cell that got a reading in the meantime is not changed", async () => {
  await show(sheet(10, 60.5));
  await type("1936");
  await port.fillNames(SHEET, { readings_01: [...new Array<null>(10).fill(null), 1900] });
  await submit();
  expect(readings()[10]).toBe(1900);
  expect(said()).toContain(words.changedMeanwhile);
});

test.each([
  ["12a", words.notNumber("12a", undefined)],
  ["", words.notNumber("", undefined)],
])("“%s” is not written", async (typed, why) => {
  await show(sheet(10, 60.5));
  await enter(typed);
  expect(said()).toContain(why);
  expect(readings()[10]).toBe("");
});

test("a reading of 0 counts as blank on a sheet of the first version, and is not written", async () => {
  await show({ ...sheet(10, 60.5), template_version: [1] });
  await enter("0");
  expect(said()).toContain(words.zero);
  expect(readings()[10]).toBe("");
});

test("a reading that was taken in time can be entered into its own row later", async () => {
  await show(sheet(10, 500));
  const link = place.querySelector<HTMLButtonElement>(`[aria-label="${words.enterAt("1 h")}"]`);
  await act(async () => link!.click());
  await enter("1936");
  expect([times()[10], readings()[10]]).toEqual([60, 1936]);
});

test("if the sheet is protected, the typed reading stays in the field", async () => {
  await show(sheet(10, 60.5));
  port.failing.fillNames = FAILURES.protected(SHEET);
  await enter("1936");
  expect(said()).toContain("it is protected");
  expect(field().value).toBe("1936");
});

/** The address of the moment of loading of load 1. */
const momentCell = async () => cellBeside(await port.listNames(SHEET), "load_started");

test("a clock that goes back is told with the cell of the moment; the readings stay, and another can be written", async () => {
  await show(sheet(10, 5));
  expect(said()).toContain(words.clockBehind(await momentCell()));
  expect(await momentCell()).toMatch(/^[A-Z]+\d+$/);
  await enter("1936");
  expect(readings().slice(0, 11)).toEqual([...divisions.slice(0, 10), 1936]);
});

test("a load that is applied later than the clock is told with its cell", async () => {
  await show(sheet(0, -30));
  expect(said()).toContain(words.future(await momentCell()));
});

test("the screen asks before a second reading is written for the same time; a second Enter writes it below", async () => {
  // The clock stands at the time of the last row, which has its reading.
  await show({ ...sheet(0, 100.02), times_01: column(40, [0, 50, 100]), readings_01: column(40, [1500, 1800, 1900]) });
  await enter("1901");
  expect(said()).toContain("has a reading at 100 min already, in row 3");
  expect(readings()[3]).toBe("");
  await submit();
  expect(readings().slice(2, 4)).toEqual([1900, 1901]);
});

test("“Applied now” writes the moment into the load table", async () => {
  await show(sheet(1));
  expect(said()).toContain(words.noStart(await momentCell()));
  const before = localDayNumber(new Date());
  await press(words.appliedNow);
  const started = Number(port.columns(SHEET).load_started[0]);
  expect(Math.abs(started - before) * 86_400).toBeLessThan(5);
  expect(said()).toContain(words.standing);
});

test("a load without a reading asks for the first one, and not to go on", async () => {
  await show(sheet(0, 5));
  expect(place.textContent).toContain(words.noReading);
  expect(place.textContent).toContain("There are no readings yet: enter a time and a reading");
  expect(place.textContent).not.toMatch(/go on reading/i);
});

test("the verdict follows the readings: primary is over at the end of the printed record, but not after an hour", async () => {
  await show(sheet(16, 1450));
  expect(said()).toContain(words.verdicts.over);
  await act(async () => root.unmount());
  await show(sheet(11, 65));
  expect(said()).not.toContain(words.verdicts.over);
});

test("the mass on the hanger, and the mass to add for the next load, follow from lever ratio and diameter", async () => {
  await show({
    ...sheet(3, 5),
    load_stress: column(24, [30.97, 61.94]),
    length_unit: ["mm"],
    diameter: [63.5],
    lever_ratio: [10],
  });
  // 1 kg on a beam of 10:1 gives 30.97 kPa over 63.5 mm, from first principles.
  expect(said()).toContain(words.massNow("30.97 kPa", "1.000"));
  expect(said()).toContain(words.massNext(2, "61.94 kPa", "2.000", words.add("1.000")));
});

test("without a lever ratio or a diameter, the screen names the one that is missing", async () => {
  await show({ ...sheet(3, 5), length_unit: ["mm"], diameter: [63.5], lever_ratio: [] });
  expect(said()).toContain("Enter the lever ratio on the data sheet");
  await act(async () => root.unmount());
  await show({ ...sheet(3, 5), diameter: [], lever_ratio: [10] });
  expect(said()).toContain("Enter the diameter on the data sheet");
  await act(async () => root.unmount());
  await show({ ...sheet(3, 5), diameter: [], lever_ratio: [] });
  expect(said()).toContain("Enter the lever ratio and the diameter on the data sheet");
});

/** Types into the field with a label. */
async function typeIn(label: string, typed: string): Promise<void> {
  const found = [...place.querySelectorAll("label")].find(({ textContent }) => textContent === label)!;
  const input = place.querySelector<HTMLInputElement>(`[id="${found.htmlFor}"]`)!;
  await act(async () => {
    Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, "value")!.set!.call(input, typed);
    input.dispatchEvent(new Event("input", { bubbles: true }));
  });
}
const onLever = () => ({
  ...sheet(3, 5),
  load_stress: column(24, [30.97, 61.94]),
  length_unit: ["mm"],
  diameter: [63.5],
  lever_ratio: [10],
});

test("the masses of the frame: the nearest that can be made, its stress, and what to put on and take off", async () => {
  await show(onLever());
  await typeIn(words.frameMasses, "1 0.5 1,6 0.2");
  // 2 kg are wanted: 1.6 + 0.5 = 2.1 is 0.1 off, 1.6 + 0.2 = 1.8 is 0.2 off. 2.1 kg give 2.1 x 30.97 kPa.
  expect(said()).toContain(words.nearest(1, "1", "1", "30.97 kPa"));
  expect(said()).toContain(words.nearest(2, "1.6 + 0.5", "2.1", "65.03 kPa"));
  expect(said()).toContain(words.changeMasses("1.6 + 0.5", "1"));
  await typeIn(words.hanging, "0.5 2x0.2");
  expect(said()).toContain(words.hangingGives("0.5 + 2x0.2", "27.87 kPa"));
  expect(said()).toContain(words.changeMasses("1.6", "2x0.2"));
  await typeIn(words.frameMasses, "1 two");
  expect(said()).toContain(words.notMasses);
});

test("the masses of the register are taken when the person asks, and not before", async () => {
  await show(onLever());
  port.lay("Register", {
    register_length_unit: ["mm"],
    register_kind: ["mass", "mass", "ring"],
    register_number: ["M-1", "M-2", "R-1"],
    register_mass: [1000, 500, 71],
  });
  await press(words.fromRegister);
  expect(said()).toContain(words.massesRegistered(2));
  expect(said()).toContain(words.nearest(2, "1 + 0.5", "1.5", "46.45 kPa"));
});

test("the stress of a load cell follows from its output, zero and factor, beside that of the load", async () => {
  await show(onLever());
  await typeIn(words.cellFactor, "0.5");
  await typeIn(words.cellZero, "50");
  await typeIn(words.cellOutput, "246");
  // 98 N over 3166.92 mm2.
  expect(said()).toContain(words.cellGives("30.94 kPa", "30.97 kPa", "-0.1 %"));
  await typeIn(words.cellOutput, "40");
  expect(said()).toContain("is not above its zero");
});

test("the sheet to fill in by hand is a new sheet of the workbook; the data sheet does not change", async () => {
  await show(sheet(3, 5));
  const before = JSON.stringify(port.columns(SHEET));
  await press(words.printAll);
  expect(await port.sheetNames()).toEqual([SHEET, `Readings ${SHEET}`]);
  expect(said()).toContain(words.inserted(`Readings ${SHEET}`));
  expect(JSON.stringify(port.columns(SHEET))).toBe(before);
});

test("without a load that has a stress, the screen says what to enter", async () => {
  await show({ ...sheet(0), load_stress: column(24) });
  expect(said()).toContain(words.noLoads);
});
