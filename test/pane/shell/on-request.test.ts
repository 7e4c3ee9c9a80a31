/** @jest-environment jsdom */
import { createElement } from "react";
import { act } from "react";
import { blankSheet, demoSheet, wettingSeries } from "../../../src/datasheet";
import { Pane } from "../../../src/pane/shell/pane";
import { text } from "../../../src/pane/text";
import { WorkbookError } from "../../../src/workbook/port";
import { say } from "../../../src/reduction/message";
import { FakePort } from "../fake-port";
import { onPage } from "../on-page";

const words = text.onRequest;
const { place, settle, show } = onPage("made");
let port: FakePort;

async function open(isOnRequest: boolean): Promise<void> {
  port = new FakePort();
  port.isOnRequest = isOnRequest;
  port.onlySheets("Test");
  port.lay("Test", { load_stress: [50], stress_unit: ["kPa"], times_01: [0, 1], readings_01: [100, 110] });
  await show(createElement(Pane, { port, sheets: { blankSheet, demoSheet, wettingSeries }, look: "light" }));
}

const button = (): HTMLButtonElement =>
  [...place.querySelectorAll("button")].find(({ textContent }) => textContent === words.calculate)!;

test("a workbook that is calculated at once says nothing of calculation", async () => {
  await open(false);
  expect(place.textContent).not.toContain(words.title);
});

test("a workbook that is calculated on request says so, and the button asks for a calculation", async () => {
  await open(true);
  expect(place.textContent).toContain(words.may);
  const asked = jest.spyOn(port, "calculate");
  await act(async () => button().click());
  expect(asked).toHaveBeenCalledTimes(1);
});

test("a refused calculation is told beside the button", async () => {
  await open(true);
  port.calculate = () => Promise.reject(new WorkbookError(say`a cell is being edited`));
  await act(async () => button().click());
  await settle();
  expect(place.textContent).toContain("a cell is being edited");
});
