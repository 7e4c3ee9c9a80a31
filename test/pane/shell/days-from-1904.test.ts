/** @jest-environment jsdom */
import { createElement } from "react";
import { blankSheet, demoSheet, wettingSeries } from "../../../src/datasheet";
import { Pane } from "../../../src/pane/shell/pane";
import { text } from "../../../src/pane/text";
import { WorkbookError } from "../../../src/workbook/port";
import { say } from "../../../src/reduction/message";
import { FakePort } from "../fake-port";
import { onPage } from "../on-page";

const { place, show } = onPage("made");

async function shownWith(port: FakePort): Promise<string> {
  await show(createElement(Pane, { port, sheets: { blankSheet, demoSheet, wettingSeries }, look: "light" }));
  return place.textContent;
}

test.each([true, false])("the pane says that the workbook counts from 1904, and only then: %s", async (isFrom1904) => {
  const port = new FakePort();
  port.isFrom1904 = isFrom1904;
  expect((await shownWith(port)).includes(text.daysFrom1904.off)).toBe(isFrom1904);
});

test("a workbook that does not answer the question is used as one that counts from 1900", async () => {
  const port = new FakePort();
  port.countsFrom1904 = () => Promise.reject(new WorkbookError(say`a cell is being edited`));
  expect(await shownWith(port)).not.toContain(text.daysFrom1904.title);
});
