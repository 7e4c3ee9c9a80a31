/** @jest-environment jsdom */
import { createElement } from "react";
import { blankSheet, demoSheet, wettingSeries } from "../../../src/datasheet";
import { Pane } from "../../../src/pane/shell/pane";
import { text } from "../../../src/pane/text";
import { FakePort } from "../fake-port";
import { onPage } from "../on-page";

const { place, settle, show } = onPage("made");

test.each([
  ["#NAME?", true],
  ["#BAD_EXPR", true],
  ["#N/A", false],
  [0.9, false],
])("a void ratio of %s: the pane says that formulas are not known: %s", async (shown, isSaid) => {
  const port = new FakePort();
  port.onlySheets("Test");
  port.lay("Test", {
    load_stress: [50],
    stress_unit: ["kPa"],
    times_01: [0, 1],
    readings_01: [100, 110],
    void_ratio_initial: [shown],
  });
  await show(createElement(Pane, { port, sheets: { blankSheet, demoSheet, wettingSeries }, look: "light" }));
  await settle();
  expect(place.textContent.includes(text.unknown.what)).toBe(isSaid);
});
