/** @jest-environment jsdom */
import { act } from "react";
import { ResultsScreen } from "../../../../src/pane/screens/results/results-screen";
import { text } from "../../../../src/pane/text";
import type { CellValue } from "../../../../src/workbook/port";
import { FAILURES, FakePort } from "../../fake-port";
import { inPane } from "../../in-pane";
import { onPage } from "../../on-page";

const words = text.adopt;
const SHEET = "Test 7";

/** A sheet of one load; AB has adopted Cc. */
const VALUES: Record<string, CellValue[]> = {
  times_01: [0, 1, 4],
  readings_01: [100, 110, 115],
  stress_unit: ["kPa"],
  preconsolidation_stress: [45],
  adopted_constructed: [45, 0.4, 0.05, "", ""],
  adopted_value: ["", 0.45, "", "", ""],
  adopted_by: ["", "AB", "", "", ""],
  adopted_day: ["", 46_000, "", "", ""],
  adopted_reason: ["", "the field curve", "", "", ""],
};

const { place, settle, show } = onPage("made");
let port: FakePort;

beforeEach(() => {
  jest.setSystemTime(new Date(2026, 10, 29, 12));
  port = new FakePort();
  port.onlySheets(SHEET);
  port.lay(SHEET, VALUES);
});

const open = (): Promise<void> => show(inPane(ResultsScreen, port));

/** The part of the screen with the form. */
const form = (): HTMLElement => {
  const heading = [...place.querySelectorAll("h2")].find(({ textContent }) => textContent === words.title);
  return heading!.closest("section")!;
};
const field = (label: string): HTMLElement => {
  const found = [...form().querySelectorAll("label")].find(({ textContent }) => textContent?.startsWith(label));
  return place.querySelector<HTMLElement>(`[id="${found?.htmlFor}"]`)!;
};
const PROTOTYPES = { INPUT: HTMLInputElement, TEXTAREA: HTMLTextAreaElement, SELECT: HTMLSelectElement };

const type = async (label: string, value: string): Promise<void> => {
  const input = field(label);
  // The form has only fields of these three kinds.
  const { prototype } = PROTOTYPES[input.tagName as keyof typeof PROTOTYPES];
  await act(async () => {
    Object.getOwnPropertyDescriptor(prototype, "value")!.set!.call(input, value);
    input.dispatchEvent(new Event(input.tagName === "SELECT" ? "change" : "input", { bubbles: true }));
  });
};
const press = async (label: string): Promise<void> => {
  const found = [...form().querySelectorAll("button")].find(({ textContent }) => textContent === label);
  if (!found) throw new Error(`there is no button "${label}" in: ${form().textContent}`);
  await act(async () => found.click());
  await settle();
};
const row = (index: number): CellValue[] => {
  const columns = port.columns(SHEET);
  return ["value", "by", "day", "reason"].map((name) => columns[`adopted_${name}`]![index]!);
};

test("a value is written with initials, today's day and reason into the row of its quantity, and no other", async () => {
  await open();
  await type(words.entries.value, "50");
  await type(words.entries.by, "CD");
  await press(words.adopt(SHEET));
  // Outside of what the constructions give a reason is asked for, beside its field.
  expect(form().textContent).toContain(words.faults.outside(words.entries.reason));
  expect(port.filled).toEqual([]);
  await type(words.entries.reason, "aged clay");
  await press(words.adopt(SHEET));
  expect(row(0)).toEqual([50, "CD", 46_355, "aged clay"]);
  expect(row(1)).toEqual([0.45, "AB", 46_000, "the field curve"]);
  expect(form().textContent).toContain(words.done(words.quantities.preconsolidation_stress, SHEET));
  expect(form().textContent).toContain(words.stands("50 kPa", "CD", "2026-11-29", "aged clay"));
});

test("the row of another person is shown, and replaced only after the person agrees", async () => {
  await open();
  await type(words.quantity, "compression_index");
  const standing = words.stands("0.45", "AB", "2025-12-09", "the field curve");
  expect(form().textContent).toContain(standing);
  await type(words.entries.value, "0.4");
  await type(words.entries.by, "CD");
  await press(words.adopt(SHEET));
  expect(form().textContent).toContain(words.askReplace(standing));
  await press(words.no);
  expect(port.filled).toEqual([]);
  await press(words.adopt(SHEET));
  await press(words.replaceYes);
  // The reason of the earlier value does not stay beside the new one.
  expect(row(1)).toEqual([0.4, "CD", 46_355, ""]);
});

test("an adopted value is taken back after what stands there is said", async () => {
  await open();
  await type(words.quantity, "compression_index");
  await press(words.takeBack);
  expect(form().textContent).toContain("0.45; AB; 2025-12-09; the field curve");
  expect(port.filled).toEqual([]);
  await press(words.takeBackYes);
  expect(row(1)).toEqual(["", "", "", ""]);
  expect(form().textContent).toContain(words.takenBack(words.quantities.compression_index, SHEET));
});

test("a row that somebody else fills in the meantime is not overwritten", async () => {
  await open();
  await type(words.entries.value, "45");
  await type(words.entries.by, "CD");
  const read = port.readNames;
  port.readNames = (sheet, names) => {
    port.put(SHEET, "adopted_value", 0, 60);
    port.put(SHEET, "adopted_by", 0, "EF");
    return read(sheet, names);
  };
  await press(words.adopt(SHEET));
  expect(form().textContent).toContain(words.changedMeanwhile);
  expect(row(0)).toEqual([60, "EF", "", ""]);
});

test("between the reading and the writing a cell that is no longer blank is refused by the workbook", async () => {
  await open();
  await type(words.entries.value, "45");
  await type(words.entries.by, "CD");
  const fill = port.fillNames;
  port.fillNames = (...asked) => {
    port.put(SHEET, "adopted_by", 0, "EF");
    return fill(...asked);
  };
  await press(words.adopt(SHEET));
  expect(row(0)).toEqual(["", "EF", "", ""]);
  expect(form().querySelector("[role=alert]")?.textContent).toContain("was filled in the meantime");
});

test("if the workbook refuses, its sentence is shown and what was typed stays", async () => {
  await open();
  port.failing.fillNames = FAILURES.protected(SHEET);
  await type(words.entries.value, "45");
  await type(words.entries.by, "CD");
  await press(words.adopt(SHEET));
  expect(form().querySelector("[role=alert]")).not.toBeNull();
  // The entry is an input.
  expect((field(words.entries.value) as HTMLInputElement).value).toBe("45");
});

test("a sheet of an older version has no cells for cv, and the form says so with the remedy", async () => {
  await open();
  await type(words.quantity, "cv_virgin");
  expect(form().textContent).toContain("no cells named adopted_cv, adopted_cv_by");
  expect(form().textContent).toContain("Insert a new data sheet");
  expect(form().querySelectorAll("button")).toHaveLength(0);
});
