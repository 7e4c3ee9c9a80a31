/** @jest-environment jsdom */
import { act } from "react";
import { speakOfSheet } from "../../../../src/pane/live/sheet-language";
import { PlotScreen } from "../../../../src/pane/screens/plots/plot-screen";
import type { CellValue } from "../../../../src/workbook/port";
import { FAILURES, FakePort } from "../../fake-port";
import { inPane } from "../../in-pane";
import { onPage } from "../../on-page";
import { inputsOfDemo } from "./plot-sheets";

const SHEET = "Test 7";
const { place, settle, show: showOnPage } = onPage("made");
let port: FakePort;

async function show(named: Record<string, CellValue[]> | undefined): Promise<void> {
  port = new FakePort();
  port.addSheets(SHEET);
  if (named) port.lay(SHEET, named);
  await showOnPage(inPane(PlotScreen, port));
}
const choose = (value: string): Promise<void> =>
  act(async () => place.querySelector<HTMLInputElement>(`input[value="${value}"]`)!.click());
const press = (name: string): Promise<void> =>
  act(async () => {
    const found = [...place.querySelectorAll("button")].find(({ textContent }) => textContent?.includes(name));
    if (!found) throw new Error(`there is no button "${name}" in: ${place.textContent}`);
    found.click();
  });
const drawing = (): SVGElement => place.querySelector('svg[role="img"]')!;
const selectOf = (label: string): HTMLSelectElement => {
  const found = [...place.querySelectorAll("label")].find(({ textContent }) => textContent === label)!;
  return place.querySelector<HTMLSelectElement>(`#${found.htmlFor}`)!;
};
const select = (label: string, value: string): Promise<void> =>
  act(async () => {
    const list = selectOf(label);
    Object.getOwnPropertyDescriptor(HTMLSelectElement.prototype, "value")!.set!.call(list, value);
    list.dispatchEvent(new Event("change", { bubbles: true }));
  });

describe("without a data sheet", () => {
  test("the selected range comes first; asked for the data sheet, it says what to do", async () => {
    await show(undefined);
    expect(place.textContent).toContain("Select what to plot");
    await choose("sheet");
    await settle();
    expect(place.textContent).toContain("Insert one on the screen “Data sheet”");
  });
});

describe("of a data sheet", () => {
  beforeEach(() => show(inputsOfDemo()));

  test("the compression curve comes first, and follows a change of a reading", async () => {
    expect(drawing().getAttribute("aria-label")).toContain("Compression curve");
    const before = drawing().innerHTML;
    port.put(SHEET, "readings_06", 14, Number(port.columns(SHEET).readings_06[14]) + 30);
    await act(async () => port.tell("values"));
    await settle();
    expect(drawing().innerHTML).not.toBe(before);
  });

  test("steps through the loads; the first has none before it", async () => {
    await choose("time");
    const shown = () => selectOf("Load").value;
    expect(shown()).toBe("1");
    await press("Previous");
    expect(shown()).toBe("1");
    await press("Next");
    expect(shown()).toBe("2");
    await select("Load", "5");
    expect(drawing().textContent).toContain("d100");
    await select("Time axis", "root");
    expect(drawing().textContent).toContain("d90");
  });

  test("of several stages of wetting, the one that is chosen is drawn", async () => {
    const inputs = inputsOfDemo();
    const stresses = inputs.load_stress.map((stress, row, all) => (row === 2 || row === 4 ? all[row - 1] : stress));
    await show({ ...inputs, load_stress: stresses, load_mark: ["", "", "wetting", "", "wetting"] });
    await choose("swell");
    expect([...selectOf("Stage of wetting").options].map(({ value }) => value)).toEqual(["3", "5"]);
    expect(drawing().getAttribute("aria-label")).toMatch(/^Wetting under .*, load 3/);
    await select("Stage of wetting", "5");
    expect(drawing().getAttribute("aria-label")).toMatch(/^Wetting under .*, load 5/);
  });

  test("of all loads, one that is opened is drawn large, and has the keyboard", async () => {
    await choose("all");
    const small = [...place.querySelectorAll("ul li button")];
    expect(small).toHaveLength(inputsOfDemo().load_stress.filter((stress) => stress !== "").length);
    expect(small[4].textContent).toContain("Load 5, 200 kPa");
    expect(small[0].textContent).toMatch(/no inflection/i);
    await press("Load 5, 200 kPa");
    expect(selectOf("Load").value).toBe("5");
    expect(document.activeElement).toBe(selectOf("Load"));
  });

  test("a chart is made on a sheet of its own, and the pane names it", async () => {
    port.addSheets(`Chart of ${SHEET}`);
    await choose("time");
    await select("Load", "5");
    await press("Insert chart");
    expect(port.inserted).toHaveLength(1);
    expect(port.inserted[0].name).toBe(`Chart of ${SHEET}`);
    expect(port.inserted[0].charts).toHaveLength(1);
    expect(port.filled).toEqual([]);
    expect(place.querySelector('[role="status"]')!.textContent).toContain(`Chart of ${SHEET} 2`);
  });

  test("the chart of a German sheet is called in German, and has its words", async () => {
    await choose("time");
    await select("Load", "5");
    speakOfSheet("de");
    await press("Insert chart");
    speakOfSheet("en");
    const [plan] = port.inserted;
    expect(plan.name).toBe(`Diagramm ${SHEET}`);
    expect(plan.charts![0]!.x.label).toContain("Zeit");
  });

  test("charts of all loads are made at once", async () => {
    await choose("all");
    await press("Insert charts of all loads");
    expect(port.inserted[0].charts!.length).toBe(place.querySelectorAll("ul li button").length);
  });

  test("a chart that cannot be made says why, in the words of the workbook", async () => {
    await choose("time");
    port.failing.insertSheet = FAILURES.protected(SHEET);
    await press("Insert chart");
    expect(place.querySelector('[role="alert"]')!.textContent).toContain(port.failing.insertSheet.message);
    expect(port.inserted).toEqual([]);
  });

  test("if copying is not allowed, the text of the SVG file can be copied by hand", async () => {
    await press("Copy SVG");
    expect(place.querySelector("textarea")!.value).toMatch(/^<\?xml[\s\S]*<\/svg>\s*$/);
  });
});
