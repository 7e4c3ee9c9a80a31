/** @jest-environment jsdom */
/** The language of a new sheet: each screen that makes one begins with the language that the person chose last. */
import { act, createElement } from "react";
import { SheetScreen } from "../../../src/pane/screens/data-sheet/insert-sheet";
import { SummaryScreen } from "../../../src/pane/screens/summary/summary-screen";
import { text } from "../../../src/pane/text";
import { FakePort } from "../fake-port";
import { inPane } from "../in-pane";
import { onPage } from "../on-page";

const { place, show, clear } = onPage("real");
afterEach(() => window.localStorage.clear());

const radioOf = (label: string): HTMLInputElement =>
  [...place.querySelectorAll("label")].find((one) => one.textContent === label)!.control as HTMLInputElement;
const isGerman = (): boolean => radioOf(text.sheet.languages.de).checked;
const SCREENS = {
  "a data sheet": () => inPane(({ port }) => createElement(SheetScreen, { port, sheets: {} as never }), new FakePort()),
  "a summary": () => inPane(SummaryScreen, new FakePort()),
};

test.each(Object.entries(SCREENS))(
  "the choice for %s is that of the next sheet and of the next summary",
  async (_, screen) => {
    await show(screen());
    expect(isGerman()).toBe(false);
    await act(async () => radioOf(text.sheet.languages.de).click());
    for (const next of Object.values(SCREENS)) {
      await clear();
      await show(next());
      expect(isGerman()).toBe(true);
    }
  },
);

test("a screen that stands already follows the choice on another one", async () => {
  const both = ({ port }: { port: FakePort }) =>
    createElement(
      "div",
      {},
      createElement(SheetScreen, { port, sheets: {} as never }),
      createElement(SummaryScreen, { port }),
    );
  await show(inPane(both as never, new FakePort()));
  const [ofSheet, ofSummary] = [...place.querySelectorAll("label")].flatMap((one) =>
    one.textContent === text.sheet.languages.de ? [one.control as HTMLInputElement] : [],
  );
  await act(async () => ofSheet!.click());
  expect([ofSheet!.checked, ofSummary!.checked]).toEqual([true, true]);
});

test("what is stored and no language counts as no choice", async () => {
  window.localStorage.setItem("clayledger.sheet-language", "klingon");
  await show(SCREENS["a data sheet"]());
  expect(radioOf(text.sheet.languages.en).checked).toBe(true);
});
