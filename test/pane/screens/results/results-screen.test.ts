/** @jest-environment jsdom */
import { say } from "../../../../src/reduction/message";
import { act } from "react";
import { RECORD_NAMES } from "../../../../src/record/record";
import { ResultsScreen } from "../../../../src/pane/screens/results/results-screen";
import { text } from "../../../../src/pane/text";
import { WorkbookError, type CellValue } from "../../../../src/workbook/port";
import { FAILURES, FakePort } from "../../fake-port";
import { inPane } from "../../in-pane";
import { onPage } from "../../on-page";

const words = text.results;
const SHEET = "Test 7";

/** A sheet of two loads with a preconsolidation stress, by name. */
const VALUES: Record<string, CellValue[]> = {
  times_01: [0, 1, 4],
  readings_01: [100, 110, 115],
  times_02: [0, 1],
  readings_02: [115, 140],
  length_unit: ["mm"],
  stress_unit: ["kPa"],
  cv_unit: ["m2/yr"],
  load_number: [1, 2],
  load_stress: [50, 100],
  void_ratio_curve: [1.2, 1.1],
  cv_chosen: [1.5, ""],
  load_remark: ["", "no tail"],
  preconsolidation_stress: [45],
  preconsolidation_low: [40],
  preconsolidation_high: [52],
  compression_index: ["#N/A"],
  specific_gravity: [2.7],
  specific_gravity_basis: ["assumed"],
  test_remarks: ["an invented test"],
};

const { place, settle, render, show } = onPage("made");
let port: FakePort;

beforeEach(() => {
  port = new FakePort();
  port.onlySheets(SHEET);
  port.lay(SHEET, VALUES);
});

const open = (): Promise<void> => show(inPane(ResultsScreen, port));
const button = (words: string): HTMLButtonElement => {
  const found = [...place.querySelectorAll("button")].find((element) =>
    (element.getAttribute("aria-label") ?? element.textContent)?.includes(words),
  );
  if (!found) throw new Error(`there is no button "${words}" in: ${place.textContent}`);
  return found;
};
const told = (role: string): string =>
  [...place.querySelectorAll(`[role=${role}]`)].map((element) => element.textContent).join(" ");
/** The address of the cell of a name: A11 is the first. */
const cellOf = (name: string, row = 0): string =>
  `${String.fromCharCode(65 + Object.keys(VALUES).indexOf(name))}${11 + row}`;

test("it shows numbers, interval, remarks and assumptions; a number leads to its cell", async () => {
  await open();
  for (const said of ["45.0 kPa", "40.0 kPa", "52.0 kPa", "an invented test", "no tail", words.assumed["gs assumed"]])
    expect(place.textContent).toContain(said);
  expect(place.textContent).toContain(words.absent.error("#N/A"));
  expect(place.textContent).toContain(words.absent.noCell("Swelling index Cs"));
  await act(async () => button("45.0 kPa").click());
  expect(port.shown).toEqual([`${SHEET}!${cellOf("preconsolidation_stress")}`]);
});

test("it says beside cv that single drainage was chosen; of double drainage, the usual, it says nothing", async () => {
  port.lay(SHEET, { ...VALUES, drainage: ["single"] });
  await open();
  expect(place.textContent).toContain(words.singleDrainage);
  port.put(SHEET, "drainage", 0, "double");
  port.select([[1]]);
  await settle();
  expect(place.textContent).not.toContain(words.singleDrainage);
});

test("loads with the same remark stand in one line", async () => {
  port.lay(SHEET, { ...VALUES, load_remark: ["no tail", "no tail"] });
  await open();
  expect(place.textContent).toContain("Loads 1, 2: no tail");
  expect(place.textContent).not.toContain("Load 1: no tail");
});

test("the table of loads is one stop of the Tab key; arrows move in it, and Enter goes to the cell", async () => {
  await open();
  const grid = place.querySelector<HTMLElement>("[role=grid]")!;
  const stops = () => [...grid.querySelectorAll<HTMLElement>('[tabindex="0"]')].map((element) => element.textContent);
  expect(stops()).toEqual(["50.0"]);
  await act(async () => grid.querySelector<HTMLElement>('[tabindex="0"]')!.focus());
  const key = (name: string) =>
    act(
      async () =>
        void document.activeElement!.dispatchEvent(new KeyboardEvent("keydown", { key: name, bubbles: true })),
    );
  await key("ArrowDown");
  await key("ArrowRight");
  expect(document.activeElement?.textContent).toBe("1.100");
  expect(stops()).toEqual(["1.100"]);
  await act(async () => (document.activeElement as HTMLElement).click());
  expect(port.shown).toEqual([`${SHEET}!${cellOf("void_ratio_curve", 1)}`]);
  // A blank cell is a stop like any other, and the edge is no trap.
  await key("ArrowRight");
  expect(document.activeElement?.tagName).toBe("TD");
  await key("End");
  await key("ArrowRight");
  await key("ArrowDown");
  expect(grid.contains(document.activeElement)).toBe(true);
});

test("it follows the cells", async () => {
  await open();
  port.put(SHEET, "preconsolidation_stress", 0, 48);
  port.select([[1]]);
  await settle();
  expect(place.textContent).toContain("48.0 kPa");
});

test("without a data sheet it says what to do, and finds one that is added", async () => {
  port.lay(SHEET, {});
  await open();
  expect(place.textContent).toContain(words.emptyTitle);
  port.lay(SHEET, VALUES);
  port.select([[1]]);
  await settle();
  expect(place.textContent).toContain("45.0 kPa");
});

test("a number whose name leads to no cells any more is shown, and leads nowhere", async () => {
  await open();
  port.sheet(SHEET).names.set("preconsolidation_stress", "lost");
  port.tell("values");
  await settle();
  expect([...place.querySelectorAll("button")].map(({ textContent }) => textContent)).not.toContain("45.0 kPa");
});

test("until the workbook has answered it says that it reads", async () => {
  port.findSheets = () => new Promise(() => undefined);
  await render(inPane(ResultsScreen, port));
  expect(place.textContent).toContain(words.reading);
});

test("a sheet without readings says so", async () => {
  port.lay(SHEET, { ...VALUES, readings_01: ["", "", ""], readings_02: ["", ""], void_ratio_curve: ["", ""] });
  await open();
  expect(told("status")).toContain(words.noLoads);
});

test("if an input cannot be, the screen repeats the head of the sheet and blames no reading", async () => {
  const masses = { ring_mass: [190], ring_and_dry: [180] };
  const blank = { void_ratio_curve: ["", ""], compression_index: [""] };
  port.lay(SHEET, { ...VALUES, ...masses, ...blank, missing_in_full: [""] });
  await open();
  expect(told("status")).toMatch(
    /Ring \+ dry soil, [A-Z]+11, must be heavier than the ring, [A-Z]+11: correct one of them\./,
  );
  expect(told("status")).not.toContain(words.noLoads);
  expect(place.textContent).not.toContain(words.absent.noAnswer);
  expect(place.textContent).not.toContain(words.noSpread);
});

describe("failures of the host", () => {
  test("a workbook that cannot be read gives its sentence, and can be tried again", async () => {
    port.failure = new WorkbookError(say`Excel is busy: finish editing the cell, and try again.`);
    await open();
    expect(told("alert")).toBe(port.failure.message);
    port.failure = undefined;
    await act(async () => button(words.again).click());
    await settle();
    expect(place.textContent).toContain("45.0 kPa");
    expect(told("alert")).toBe("");
  });

  test("a sheet deleted or hidden in between gives its sentence; the numbers stay", async () => {
    for (const failure of [FAILURES.gone(SHEET), FAILURES.hidden(SHEET)]) {
      if (place.textContent === "") await open();
      port.failing.show = failure;
      await act(async () => button("45.0 kPa").click());
      expect(told("alert")).toBe(failure.message);
      expect(place.textContent).toContain("45.0 kPa");
    }
    port.failing.show = undefined;
    await act(async () => button("45.0 kPa").click());
    expect(told("alert")).toBe("");
  });

  test("reading changes nothing in the workbook, whatever fails", async () => {
    const before = port.columns(SHEET);
    await open();
    port.failure = FAILURES.halfway(SHEET);
    port.select([[1]]);
    await settle();
    expect(port.filled).toEqual([]);
    expect(port.inserted).toEqual([]);
    expect(port.columns(SHEET)).toEqual(before);
  });
});

test("its names are among those from which a record is read", () => {
  for (const name of Object.keys(VALUES)) expect(RECORD_NAMES).toContain(name);
});
