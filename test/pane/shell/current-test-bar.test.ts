/** @jest-environment jsdom */
import { act, createElement } from "react";
import { blankSheet, demoSheet, wettingSeries } from "../../../src/datasheet";
import { Pane } from "../../../src/pane/shell/pane";
import { text } from "../../../src/pane/text";
import type { CellValue } from "../../../src/workbook/port";
import { FakePort } from "../fake-port";
import { onPage } from "../on-page";

const words = text.test;
const CELLS: Record<string, CellValue[]> = {
  times_01: [0, 1],
  readings_01: [100, 110],
  load_stress: [50],
  stress_unit: ["kPa"],
};

const { place, settle, show } = onPage("made");
let port: FakePort;

async function open(...tests: readonly string[]): Promise<void> {
  port.onlySheets("Notes", ...tests);
  tests.forEach((test, index) => port.lay(test, { ...CELLS, preconsolidation_stress: [40 + index] }));
  await show(createElement(Pane, { port, sheets: { blankSheet, demoSheet, wettingSeries }, look: "light" }));
}

beforeEach(() => {
  port = new FakePort();
});

const bar = (): HTMLElement => place.querySelector(`[role=group][aria-label="${words.group}"]`)!;
const pin = (): HTMLButtonElement => bar().querySelector("button")!;
const chooser = (): HTMLSelectElement | null => bar().querySelector("select");
const front = async (sheet: string): Promise<void> => {
  await act(async () => port.bringForward(sheet));
  await settle();
};
const press = async (element: HTMLElement): Promise<void> => {
  await act(async () => element.click());
  await settle();
};
const tab = (name: string): HTMLElement =>
  [...place.querySelectorAll<HTMLElement>("[role=tab]")].find(({ textContent }) => textContent === name)!;
const panel = (): string => place.querySelector("[role=tabpanel]")!.textContent!;

test("without a data sheet there is no test and nothing to pin", async () => {
  await open();
  expect(bar().textContent).toContain(words.none);
  expect(bar().querySelector("button, select")).toBeNull();
});

test("the name of the test stands at the top of every screen, once", async () => {
  await open("Test 1");
  for (const one of place.querySelectorAll<HTMLElement>("[role=tab]")) {
    await press(one);
    expect(bar().textContent).toContain("Test 1");
    expect(bar().closest("header")).not.toBeNull();
    expect(place.querySelectorAll(`[aria-label="${words.group}"]`)).toHaveLength(1);
  }
});

test("every screen follows the sheet in front, and keeps the last test if that sheet is not a data sheet", async () => {
  await open("Test 1", "Test 2");
  await press(tab(text.tabs.results));
  expect(panel()).toContain("40.0 kPa");
  await front("Test 2");
  expect(chooser()!.value).toBe("Test 2");
  expect(panel()).toContain("41.0 kPa");
  await front("Notes");
  expect(bar().textContent).toContain(words.noTest("Notes"));
  expect(panel()).toContain("41.0 kPa");
  await press(tab(text.tabs.byHand));
  await front("Test 1");
  await press(tab(text.tabs.results));
  expect(panel()).toContain("40.0 kPa");
});

test("the pin has a name, says whether it is pressed, and holds the test on every screen", async () => {
  await open("Test 1", "Test 2");
  expect(pin().getAttribute("aria-label")).toBe(words.pinLong);
  expect(words.pinLong.toLowerCase()).toContain(words.pin.toLowerCase());
  expect(document.getElementById(pin().getAttribute("aria-describedby")!)?.textContent).toBe(words.pinHint);
  expect(pin().getAttribute("aria-pressed")).toBe("false");
  await press(pin());
  expect(pin().getAttribute("aria-pressed")).toBe("true");
  await front("Test 2");
  expect(chooser()!.value).toBe("Test 1");
  expect(bar().textContent).toContain(words.pinned("Test 2"));
  await press(tab(text.tabs.results));
  expect(panel()).toContain("40.0 kPa");
  await press(pin());
  expect(chooser()!.value).toBe("Test 2");
  expect(panel()).toContain("41.0 kPa");
});

test("another test can be chosen while a sheet is in front; it is pinned then", async () => {
  await open("Test 1", "Test 2");
  await front("Test 1");
  await act(async () => {
    Object.getOwnPropertyDescriptor(HTMLSelectElement.prototype, "value")!.set!.call(chooser(), "Test 2");
    chooser()!.dispatchEvent(new Event("change", { bubbles: true }));
  });
  await settle();
  expect(pin().getAttribute("aria-pressed")).toBe("true");
  expect(bar().textContent).toContain(words.pinned("Test 1"));
  expect(port.shown).toEqual([]);
});

test("a change of the test is read aloud", async () => {
  await open("Test 1", "Test 2");
  const live = bar().querySelector("[aria-live=polite]")!;
  await front("Test 2");
  expect(live.textContent).toContain(words.now("Test 2"));
});

test("unfinished entries for one test are there again when that test is", async () => {
  await open("Test 1", "Test 2");
  await front("Test 1");
  await press(tab(text.tabs.byHand));
  await press([...place.querySelectorAll("button")].find(({ textContent }) => textContent === text.byHand.add)!);
  const listed = () => place.querySelectorAll("[role=tabpanel] li").length;
  expect(listed()).toBe(1);
  await front("Test 2");
  expect(listed()).toBe(0);
  await front("Test 1");
  expect(listed()).toBe(1);
});

test("a hidden screen reads nothing, and stays as it was until it has read again", async () => {
  await open("Test 1");
  await press(tab(text.tabs.byHand));
  await press(place.querySelector<HTMLElement>("#tab-about")!);
  const read = jest.spyOn(port, "lookAt");
  await act(async () => port.tell("values"));
  await settle();
  expect(read).not.toHaveBeenCalled();
  await press(tab(text.tabs.byHand));
  expect(read).toHaveBeenCalledTimes(1);
});

test("a person who comes to the pane sees changes that no event reported", async () => {
  await open("Test 1");
  port.lay("Test 2", CELLS);
  await settle();
  expect(chooser()).toBeNull();
  await act(async () => void window.dispatchEvent(new Event("focus")));
  await settle();
  expect(chooser()!.options).toHaveLength(2);
});
