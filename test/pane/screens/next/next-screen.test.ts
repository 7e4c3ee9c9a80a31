/** @jest-environment jsdom */
/** The first screen of a test that is half finished, and the targets of its buttons. */
import { createHash } from "node:crypto";
import { TextEncoder } from "node:util";
import { act, createElement } from "react";
import { demoSheet } from "../../../../src/datasheet";
import { NextScreen } from "../../../../src/pane/screens/next/next-screen";
import { readingsHash } from "../../../../src/pane/screens/report/issues";
import { text } from "../../../../src/pane/text";
import { ISSUE_HASH } from "../../../../src/report/issue";
import { REPORT_OF } from "../../../../src/report/report";
import type { CellValue } from "../../../../src/workbook/port";
import { FAILURES, FakePort } from "../../fake-port";
import { sheetOf } from "../../fake-workbook";
import { inPane } from "../../in-pane";
import { onPage } from "../../on-page";

const words = text.next;
const SHEET = "Test 7";

/** A test with part of its identification and with one load without readings. */
const VALUES: Record<string, CellValue[]> = {
  project: ["A road"],
  report_number: [""],
  boring: [""],
  sample: ["U7"],
  diameter: [""],
  stress_unit: ["kPa"],
  load_number: [1, 2],
  load_stress: [50, 100],
  times_01: [0, 1, 4],
  readings_01: [100, 110, 115],
  times_02: ["", ""],
  readings_02: ["", ""],
};

const OTHERS = {
  depth: [7.3],
  specimen_orientation: ["vertical"],
  condition: ["intact"],
  specific_gravity_basis: ["measured"],
  diameter: [63.5],
  initial_height: [20],
  ring_mass: [74],
  ring_and_wet_before: [190],
  specific_gravity: [2.7],
};
const TYPED_BEFORE_LOADS = [
  ...["laboratory", "project", "boring", "sample", "preparation", "sample_type"],
  ...["soil_description", "standard", "ring_number"],
];

const { place, settle, show } = onPage("made");
let port: FakePort;
let opened: string[];

beforeEach(() => {
  port = new FakePort();
  port.onlySheets(SHEET);
  port.lay(SHEET, VALUES);
  opened = [];
});

const open = async (): Promise<void> => {
  const Screen = () => createElement(NextScreen, { port, onOpen: (screen) => void opened.push(screen) });
  await show(inPane(Screen, port));
};
const button = (said: string): HTMLButtonElement => {
  const found = [...place.querySelectorAll("button")].find((element) =>
    (element.getAttribute("aria-label") ?? element.textContent)?.includes(said),
  );
  if (!found) throw new Error(`there is no button "${said}" in: ${place.textContent}`);
  return found;
};
const stage = (name: keyof typeof words.stages): HTMLElement =>
  [...place.querySelectorAll("li")].find((li) => li.querySelector("h2")?.textContent === words.stages[name])!;
const press = (said: string): Promise<void> => act(async () => button(said).click());
/** The cell of a name: the first is A11. */
const cellOf = (name: string): string => `${String.fromCharCode(65 + Object.keys(VALUES).indexOf(name))}11`;

test("the next stage lists what it lacks with the cells, and the other stages have one line", async () => {
  await open();
  const next = stage("received");
  expect(next.getAttribute("aria-current")).toBe("step");
  expect(next.textContent).toContain(`Boring${cellOf("boring")}`);
  expect(stage("sized").textContent).toBe(`${words.stages.sized}${words.states["not begun"]}${words.notBegun.sized}`);
  expect(stage("loaded").textContent).not.toContain("Readings of load 2");
  await press(`${words.goToCell(cellOf("boring"))}`);
  expect(port.shown).toEqual([`${SHEET}!${cellOf("boring")}`]);
});

test("the screen shows what another stage lacks when a person opens it", async () => {
  await open();
  const more = stage("loaded").querySelector("button")!;
  await act(async () => more.click());
  expect(stage("loaded").textContent).toContain(words.noReadings(2));
  expect(stage("loaded").textContent).toContain(cellOf("readings_02"));
});

test("the number to do is that of the items listed: results that follow from them are none", async () => {
  port.lay(SHEET, { ...VALUES, void_ratio_initial: [1.2], preconsolidation_stress: [""] });
  await open();
  const reduced = stage("reduced");
  await act(async () => reduced.querySelector("button")!.click());
  expect(reduced.textContent).toMatch(/results? follows? when/);
  const listed = reduced.querySelectorAll("li").length;
  expect(listed).toBeGreaterThan(1);
  expect(reduced.textContent).toContain(words.open(listed));
});

test.each([
  ["are to do in the check", "U8", true],
  ["are not to do if that sheet is of the same specimen", "U7", false],
])("masses that another data sheet has too %s", async (_, sample, isToDo) => {
  const plan = demoSheet("SI");
  port.workbook.sheets = [sheetOf(plan, SHEET), sheetOf(plan, "Second")];
  port.workbook.front = SHEET;
  port.put("Second", "sample", 0, sample);
  port.put(SHEET, "compression_index", 0, 0.5);
  port.put(SHEET, "checked_by", 0, "CD");
  await open();
  await act(async () => stage("checked").querySelector("button")!.click());
  const question = "Are the masses this specimen's own, not left from another test?";
  expect(stage("checked").textContent).toContain("Q33 ");
  expect(stage("checked").textContent.includes(question)).toBe(isToDo);
});

test("a part of the sheet leads to its first missing cell", async () => {
  await open();
  await press(words.toPart("Identification", 15).slice(0, 20));
  expect(port.shown).toHaveLength(1);
  expect(port.shown[0]).toMatch(new RegExp(`^${SHEET}!(${cellOf("report_number")}|${cellOf("boring")})$`));
});

test("the screen reports an error if it cannot select a cell", async () => {
  await open();
  port.failing.show = FAILURES.gone(SHEET);
  await press(words.goToCell(cellOf("boring")));
  await settle();
  expect(place.querySelector("[role=alert]")?.textContent).toContain("There is no sheet called");
});

test("in a workbook without a data sheet, the screen says so and leads to the screen that inserts one", async () => {
  port = new FakePort();
  port.onlySheets("Notes");
  await open();
  expect(place.textContent).toContain(words.empty);
  await press(words.openSheet);
  expect(opened).toEqual(["sheet"]);
});

test("a stage that has a screen of its own opens it", async () => {
  const filled = TYPED_BEFORE_LOADS.map((name) => [name, ["yes"]] as const);
  port.lay(SHEET, { ...VALUES, length_unit: ["mm"], depth_unit: ["m"], ...Object.fromEntries(filled), ...OTHERS });
  await open();
  expect(stage("loaded").getAttribute("aria-current")).toBe("step");
  expect(stage("loaded").textContent).toContain(words.noReadings(2));
  await press(words.screens.readings);
  expect(opened).toEqual(["readings"]);
});

test("an overwritten formula is to do, with its cell, and more than one with the first", async () => {
  port.lay(SHEET, { ...VALUES, void_ratio_initial: [1.2] });
  await open();
  await act(async () => stage("reduced").querySelector("button")!.click());
  expect(stage("reduced").textContent).toMatch(/M11.*(overwritten|constant|formula)/);
  port.lay(SHEET, { ...VALUES, void_ratio_initial: [1.2], preconsolidation_stress: [120] });
  await open();
  await act(async () => stage("reduced").querySelector("button")!.click());
  expect(stage("reduced").textContent).toContain("2 formulas were overwritten, lost or changed");
});

/** jsdom has no digest of bytes. This one is there at once: Node's own comes from another thread, after the screen settled if the machine is busy. */
const digest = (_: string, bytes: Uint8Array): Promise<ArrayBuffer> =>
  Promise.resolve(new Uint8Array(createHash("sha256").update(bytes).digest()).buffer);
const LENT = { TextEncoder, crypto: { subtle: { digest } } };
const own = Object.keys(LENT).map((name) => [name, Object.getOwnPropertyDescriptor(globalThis, name)] as const);
const lend = (): void => {
  for (const [name, value] of Object.entries(LENT))
    Object.defineProperty(globalThis, name, { value, configurable: true, writable: true });
};
const giveBack = (): void => {
  for (const [name, descriptor] of own)
    if (descriptor) Object.defineProperty(globalThis, name, descriptor);
    else Reflect.deleteProperty(globalThis, name);
};
afterAll(giveBack);

test("readings that are not those of the last issue are to do in the report, and those of the last issue are not", async () => {
  lend();
  const issue = async (hash: string): Promise<void> => {
    port.lay("Report", {
      [REPORT_OF]: [SHEET],
      ...{ issue_number: [2], issue_day: ["2031-06-01 10:00"], issue_by: ["EF"], [ISSUE_HASH]: [hash] },
    });
    await open();
    await settle();
    await act(async () => stage("reported").querySelector("button")?.click());
  };
  const said = words.readingsChanged(2, "Report", "2031-06-01 10:00");
  await issue("0".repeat(64));
  expect(stage("reported").textContent).toContain(said);
  await issue(await readingsHash(await port.readNames(SHEET, Object.keys(VALUES))));
  expect(stage("reported").textContent).not.toContain(said);
});
