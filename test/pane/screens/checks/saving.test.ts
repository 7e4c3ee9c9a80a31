/** @jest-environment jsdom */
/** Files in a host that saves none, and reports while Excel calculates. */
import { say } from "../../../../src/reduction/message";
import { act, createElement } from "react";
import { createRoot, type Root } from "react-dom/client";
import { demoSheet } from "../../../../src/datasheet";
import { toAgs4 } from "../../../../src/exchange/ags4";
import { readRecord, RECORD_NAMES } from "../../../../src/record/record";
import { Ags4Part } from "../../../../src/pane/screens/checks/ags4-part";
import { newSheet } from "../../../../src/pane/live/new-sheet";
import { makeReport } from "../../../../src/pane/screens/report/make-report";
import { refuseNotYet } from "../../../../src/workbook/rules/busy";
import type { WorkbookPort } from "../../../../src/workbook/port";
import { FakePort } from "../../fake-port";
import { sheetOf } from "../../fake-workbook";

jest.mock("../../../../src/exchange/ags4", () => ({
  ...jest.requireActual("../../../../src/exchange/ags4"),
  toAgs4: jest.fn(),
}));
Object.assign(globalThis, { IS_REACT_ACT_ENVIRONMENT: true });

let root: Root;
let place: HTMLElement;
beforeEach(() => {
  place = document.body.appendChild(document.createElement("div"));
  root = createRoot(place);
});
afterEach(async () => {
  await act(async () => root.unmount());
  place.remove();
});

describe("the AGS4 file", () => {
  const make = async (saves: boolean): Promise<string[]> => {
    jest
      .mocked(toAgs4)
      .mockReturnValue({ ok: true, value: { text: '"GROUP","PROJ"', leftOut: [] }, remarks: [] } as never);
    const clicked: string[] = [];
    URL.createObjectURL = () => "blob:x";
    jest.spyOn(HTMLAnchorElement.prototype, "click").mockImplementation(function (this: HTMLAnchorElement) {
      clicked.push(this.download);
    });
    await act(async () => root.render(createElement(Ags4Part, { record: readRecord({}), saves })));
    const button = [...place.querySelectorAll("button")].at(-1)!;
    await act(async () => button.click());
    return clicked;
  };

  test("if the host saves no files, no download is tried or mentioned, and the text can be copied", async () => {
    expect(await make(false)).toEqual([]);
    expect(place.textContent).toMatch(/Copy the text into a plain text editor and save it as .*\.ags/);
    expect(place.textContent).not.toMatch(/was made|passed to the browser/);
    expect(place.querySelector("textarea")!.value).toBe('"GROUP","PROJ"');
  });

  test("otherwise the file is offered, which does not promise that it is saved, and the text can be copied too", async () => {
    expect(await make(true)).toEqual([expect.stringMatching(/\.ags$/)]);
    expect(place.textContent).toMatch(/passed to the browser to be saved\. If nothing was saved, copy its text/);
    expect(place.querySelector("textarea")!.value).toBe('"GROUP","PROJ"');
  });
});

describe("while Excel calculates", () => {
  test("no report is made; the sentence names the cells; afterwards it is made", async () => {
    const port = new FakePort();
    const plan = demoSheet("SI");
    port.workbook.sheets = [sheetOf(plan, "Test 7")];
    port.put("Test 7", "compression_index", 0, "#BUSY!");
    const made = { paper: "A4", preparedBy: "", now: new Date(0) } as const;
    await expect(makeReport(port, "Test 7", made)).rejects.toThrow(
      "Excel is still calculating compression_index: wait until no cell shows #BUSY!, and try again. Nothing was made.",
    );
    expect(port.inserted).toEqual([]);
    port.put("Test 7", "compression_index", 0, 0.4);
    await expect(makeReport(port, "Test 7", made)).resolves.toMatchObject({ remarks: [] });
    expect(RECORD_NAMES).toContain("compression_index");
  });

  test("many cells are counted, and a cell that has its value is left out", () => {
    const busy = [["#BUSY!"]];
    expect(() => refuseNotYet({ a: busy, b: [["#GETTING_DATA"]], c: busy, d: busy, e: [[1]] })).toThrow(
      "still calculating a, b, c and 1 more",
    );
    expect(() => refuseNotYet({ e: [[1]], f: [["#N/A"]] })).not.toThrow();
  });
});

test("parts of a new sheet that the host refused are listed after the name of the sheet", async () => {
  const insertSheet: WorkbookPort["insertSheet"] = async (_plan, tell) => {
    tell?.(say`Excel did not take the footer.`);
    return "Ring";
  };
  const port: WorkbookPort = Object.assign(new FakePort(), { insertSheet });
  await expect(newSheet(port, demoSheet("SI"), (sheet) => `${sheet} was made.`)).resolves.toEqual({
    sheet: "Ring",
    intent: "warning",
    sentence: "Ring was made. Excel did not take the footer.",
  });
});
