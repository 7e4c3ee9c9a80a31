/** @jest-environment jsdom */
import { say } from "../../../src/reduction/message";
import { act, createElement } from "react";
import { blankSheet, demoSheet, wettingSeries } from "../../../src/datasheet";
import { Pane } from "../../../src/pane/shell/pane";
import { Stopped } from "../../../src/workbook/in-slices";
import { WorkbookError, type WorkbookPort } from "../../../src/workbook/port";
import { timeCurve } from "../../plots/curves";
import { FakePort } from "../fake-port";
import { onPage } from "../on-page";

const { place, settle, render } = onPage("made");
let port: FakePort;

beforeEach(async () => {
  port = new FakePort();
  await render(createElement(Pane, { port, sheets: { blankSheet, demoSheet, wettingSeries }, look: "light" }));
});

const named = (role: string, name: string): HTMLElement => {
  const found = [...place.querySelectorAll<HTMLElement>(role)].find((element) => element.textContent?.includes(name));
  if (!found) throw new Error(`there is no ${role} "${name}" in: ${place.textContent}`);
  return found;
};
const press = (role: string, name: string): Promise<void> => act(async () => named(role, name).click());
const choose = (value: string): Promise<void> =>
  act(async () => place.querySelector<HTMLInputElement>(`input[value="${value}"]`)!.click());
const rows = (readings = timeCurve.readings) => timeCurve.times.map((time, index) => [time, readings[index]]);
const numbers = (): Record<string, string> =>
  Object.fromEntries(
    [...place.querySelectorAll("tbody tr")].map((row) => [
      row.querySelector("th")!.textContent,
      row.querySelector("td")!.textContent,
    ]),
  );

describe("data sheet", () => {
  beforeEach(() => press('[role="tab"]', "Data sheet"));

  test("the blank sheet is inserted as a plan of a new sheet, in the chosen units, and the pane names it", async () => {
    port.addSheets(blankSheet("US").name);
    await choose("US");
    await press("button", "Insert blank sheet");
    expect(port.inserted).toEqual([blankSheet("US")]);
    expect(place.querySelector('[role="status"]')?.textContent).toContain(`${blankSheet("US").name} 2`);
  });

  test("the demonstration is the worked one", async () => {
    await press("button", "Insert worked demonstration");
    expect(port.inserted).toEqual([demoSheet("SI")]);
  });

  test("a sheet that takes long has a progress bar and a stop, which leaves the workbook as it was", async () => {
    const slow: WorkbookPort = port;
    slow.insertSheet = async (_plan, _tell, course) => {
      course!.tell(0.4);
      await new Promise((resolve) => course!.signal.addEventListener("abort", resolve));
      throw new Stopped();
    };
    await press("button", "Insert blank sheet");
    expect(place.querySelector('[role="progressbar"]')?.getAttribute("aria-valuenow")).toBe("0.4");
    await press("button", "Stop");
    await settle();
    expect(place.querySelector('[role="alert"]')?.textContent).toBe("Stopped. The workbook is as it was.");
  });

  test("a failure of the workbook is shown in its own words, and the pane keeps working", async () => {
    port.failure = new WorkbookError(say`The workbook's structure is protected: unprotect it, then insert again.`);
    await press("button", "Insert blank sheet");
    expect(place.querySelector('[role="alert"]')?.textContent).toBe(port.failure.message);
    port.failure = undefined;
    await press("button", "Insert blank sheet");
    expect(place.querySelector('[role="alert"]')).toBeNull();
    expect(port.inserted).toHaveLength(1);
  });
});

describe("plot", () => {
  const open = async (values: (number | string)[][], address?: string): Promise<void> => {
    await press('[role="tab"]', "Plots");
    port.select(values, address);
    await settle();
  };

  test("with nothing to plot, it says what to select", async () => {
    await open([[""]]);
    expect(place.querySelector("svg[role=img]")).toBeNull();
    expect(place.textContent).toContain("Select what to plot");
  });

  test("two columns of a time curve are drawn with the construction, and reduced", async () => {
    await open([["Time (min)", "Reading (mm)"], ...rows()]);
    expect(place.querySelector("svg[role=img]")?.textContent).toContain("d100");
    expect(Object.keys(numbers())).toEqual(expect.arrayContaining(["d0", "t50", "d100"]));
    expect(Number(numbers().t50)).toBeGreaterThan(0);
    expect(numbers().Remark).toBeTruthy();
  });

  test("root of time replaces log of time", async () => {
    await open(rows());
    await choose("root");
    expect(place.querySelector("svg[role=img]")?.textContent).toContain("1.15 line");
    expect(numbers()).toHaveProperty("t90");
    expect(numbers()).not.toHaveProperty("t50");
  });

  test("the plot follows a change of a cell", async () => {
    await open(rows());
    const drawn = place.querySelector("svg[role=img]")!.outerHTML;
    const before = numbers();
    port.select(rows(timeCurve.readings.map((reading) => reading * 2)));
    await settle();
    expect(place.querySelector("svg[role=img]")!.outerHTML).not.toBe(drawn);
    expect(Number(numbers().d100)).toBeCloseTo(2 * Number(before.d100), 2);
  });

  test("while one cell is selected, as when a reading is corrected, the plot stays and follows its cells", async () => {
    await open(rows(), "A1:B15");
    const before = numbers();
    port.select([[rows()[6][1]]], "B7");
    await settle();
    expect(numbers()).toEqual(before);
    port.change(rows(timeCurve.readings.map((reading) => reading + 1)), "A1:B15");
    await settle();
    expect(Number(numbers().d100)).toBeCloseTo(1 + Number(before.d100), 3);
  });

  test("when the sheet of the plot is gone, it asks for a selection again", async () => {
    await open(rows(), "A1:B15");
    port.onlySheets("Another");
    port.select([[1.5]], "B7");
    await settle();
    expect(place.textContent).toContain("Select what to plot");
  });

  test("many changes at once are read once", async () => {
    await open(rows());
    const read = jest.spyOn(port, "selection");
    for (let change = 0; change < 20; change++) port.select(rows());
    await settle();
    expect(read).toHaveBeenCalledTimes(1);
  });

  test("text among the readings is named by its cell; correcting it brings the plot back", async () => {
    const bad: (number | string)[][] = rows();
    bad[3] = [bad[3][0], "0,5o"];
    await open(bad, "C10:D24");
    expect(place.querySelector('[role="alert"]')?.textContent).toContain('D13 holds the text "0,5o"');
    port.select(rows(), "C10:D24");
    await settle();
    expect(place.querySelector('[role="alert"]')).toBeNull();
    expect(place.querySelector("svg[role=img]")).not.toBeNull();
  });

  test("if the method does not apply, the readings stay and the reason stands beside them", async () => {
    const times = [0.25, 0.5, 1, 2, 4, 8, 15, 30];
    await open(times.map((time) => [time, 1 + 0.1 * Math.log10(time)]));
    expect(place.querySelectorAll("svg[role=img] circle")).toHaveLength(times.length);
    expect(place.querySelector('[role="status"]')?.textContent).toMatch(/log-of-time method does not apply/);
    expect(place.querySelector("table")).toBeNull();
  });

  test("a workbook that cannot be read says so and can be read again", async () => {
    await open(rows());
    port.failure = new WorkbookError(say`The range is too large: select fewer rows.`);
    port.select(rows());
    await settle();
    expect(place.querySelector('[role="alert"]')?.textContent).toBe(port.failure.message);
    port.failure = undefined;
    await press("button", "Read again");
    await settle();
    expect(place.querySelector("svg[role=img]")).not.toBeNull();
  });

  test("while another screen is shown the workbook is not read; changes are read on coming back", async () => {
    await open(rows());
    await press('[role="tab"]', "About");
    const read = jest.spyOn(port, "selection");
    port.select(rows(timeCurve.readings.map((reading) => reading + 1)));
    await settle();
    expect(read).not.toHaveBeenCalled();
    await press('[role="tab"]', "Plots");
    await settle();
    expect(read).toHaveBeenCalled();
  });
});

test("the About page gives the version, the cautions, and says that nothing is sent, and where a copy is kept", async () => {
  await press('[role="tab"]', "About");
  expect(place.textContent).toMatch(/Version \d+\.\d+\.\d+/);
  expect(place.textContent).toMatch(
    /Nothing is sent anywhere.*keeps a copy of changes that are not saved in the storage of the browser/,
  );
  expect(place.textContent).toContain("unsaturated");
});

describe("work that an earlier pane left half done", () => {
  const comesUp = async (): Promise<void> => {
    const sheets = { blankSheet, demoSheet, wettingSeries };
    await render(createElement(Pane, { key: "next", port, sheets, look: "light" }));
    await settle();
  };
  const said = (): string => place.querySelector("main")!.textContent!;

  test("is said when the pane comes up, with its remedy, until a person takes it out", async () => {
    port.addSheets("Report");
    await port.noteWork("sheet", "Report");
    await comesUp();
    expect(said()).toContain("Making the sheet “Report” began on 2026-03-09 14:05 and has not ended");
    expect(said()).toContain("delete it, and make it again");
    await press("button", "Done");
    expect(said()).not.toContain("Report");
    expect(port.notes).toEqual([]);
  });

  test("nothing is said of a workbook without it", async () => {
    await comesUp();
    expect(said()).not.toContain("Not finished");
  });
});
