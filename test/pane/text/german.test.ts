/**
 * The pane in German. The screens take their words when they are loaded, so they are loaded here after the language is
 * set, as on the page.
 * @jest-environment jsdom
 */
import { webcrypto } from "node:crypto";
import { TextDecoder, TextEncoder } from "node:util";
import { act, createElement, type ReactNode } from "react";
import { createRoot, type Root } from "react-dom/client";
import { CHECKS } from "../../../src/checks";
import { blankSheet, wettingSeries } from "../../../src/datasheet";
import { setLanguage } from "../../../src/pane/text/language";
import { english } from "../../../src/reduction/message";
import { FakePort } from "../fake-port";

Object.assign(globalThis, { IS_REACT_ACT_ENVIRONMENT: true, TextDecoder, TextEncoder });
Object.defineProperty(globalThis, "crypto", { value: webcrypto });
let place: HTMLElement;
let root: Root;
beforeAll(() => setLanguage("de"));
beforeEach(() => {
  place = document.body.appendChild(document.createElement("div"));
  root = createRoot(place);
});
afterEach(async () => {
  await act(async () => root.unmount());
  place.remove();
});

const render = (screen: ReactNode): Promise<void> => act(async () => root.render(screen));

test("the pane speaks German", async () => {
  const { Pane } = await import("../../../src/pane/shell/pane");
  const sheets = { blankSheet, demoSheet: () => blankSheet("SI"), wettingSeries };
  await render(createElement(Pane, { port: new FakePort(), sheets, look: "light" }));
  expect([...place.querySelectorAll("[role=tab]")].map(({ textContent }) => textContent)).toEqual(
    expect.arrayContaining(["Datenblatt", "Ablesungen", "Ergebnisse"]),
  );
  expect(place.textContent).toContain("Zum Datenblatt");
});

test("what it writes into cells is English", async () => {
  const { ReadingsScreen } = await import("../../../src/pane/screens/readings/readings-screen");
  const { inPane } = await import("../in-pane");
  const { CATALOGUES, text } = await import("../../../src/pane/text");
  const words = text.readings;
  const port = new FakePort();
  await port.insertSheet({ ...blankSheet("SI"), name: "Test 7" });
  port.inserted.length = 0;
  await render(inPane(ReadingsScreen, port));
  const waitFor = async <T>(find: () => T | undefined | null): Promise<T> => {
    for (let turn = 0; turn < 200; turn++) {
      const found = find();
      if (found) return found;
      await act(() => new Promise((resolve) => setTimeout(resolve, 25)));
    }
    throw new Error(`it did not come in: ${place.textContent}`);
  };
  const press = async (name: string): Promise<void> => {
    const button = await waitFor(() =>
      [...place.querySelectorAll("button")].find(({ textContent }) => textContent === name),
    );
    await act(async () => button.click());
  };
  const area = place.querySelector("textarea")!;
  const set = Object.getOwnPropertyDescriptor(HTMLTextAreaElement.prototype, "value")!.set!;
  await act(async () => {
    set.call(area, "Time (min),Stress (kPa),Displacement (mm)\n0,25,1.1\n1,25,1.2\n2,25,NAN\n4,25,1.3\n");
    area.dispatchEvent(new Event("input", { bubbles: true }));
  });
  await press(words.usePasted);
  await press(words.confirm);
  await press(words.write(1, "Test 7"));
  await waitFor(() => place.querySelector("[role=status]")?.textContent?.includes(words.doneLoads(1)));

  const written = [
    port.inserted.map(({ cells }) => cells.map(({ value }) => value)),
    port.filled.map(({ values }) => values),
  ].flat(9);
  const texts = written.flatMap((one) => (typeof one === "string" ? one : JSON.stringify(one ?? "")));
  expect(texts.join("\n")).toContain(CATALOGUES.en.readings.faults.text);
  const said = (of: object): string[] =>
    Object.values(of).flatMap((one) => (typeof one === "string" ? one : typeof one === "object" ? said(one) : []));
  const english = new Set(said(CATALOGUES.en.readings));
  const german = said(words).filter((one) => !english.has(one) && one.length > 4);
  expect(german.length).toBeGreaterThan(50);
  for (const one of german) expect(texts.filter((cell) => cell.includes(one))).toEqual([]);
});

test("the stress of a load has a comma", async () => {
  const { stressInWords } = await import("../../../src/pane/screens/load-stress");
  const { readRecord } = await import("../../../src/record/record");
  const record = readRecord({ load_stress: [[12.5], [""]], stress_unit: [["kPa"]] });
  expect([12.5, undefined].map((stress) => stressInWords(record, { stress }))).toEqual(["12,5 kPa", ""]);
});

test("a result that is compared by hand is called as its sheet calls it", async () => {
  const { named } = await import("../../../src/pane/screens/by-hand/typed-values");
  const { speakOfSheet, languageOfLabels } = await import("../../../src/pane/live/sheet-language");
  const calledOn = (language: "en" | "de"): string[] => {
    speakOfSheet(language);
    return [languageOfLabels(), named({ name: "dry_mass" }), named({ name: "void_ratio_end", load: 3 })];
  };
  expect(calledOn("de")).toEqual(["de", "Trockenmasse", "Porenzahl am Ende der Laststufe, der Laststufe 3"]);
  expect(calledOn("en")).toEqual(["en", "Dry mass of soil", "Void ratio at the end of the load, der Laststufe 3"]);
});

test("questions, their answers and the remarks of the reduction are German", async () => {
  const { ChecksScreen } = await import("../../../src/pane/screens/checks/checks-screen");
  const { ResultsScreen } = await import("../../../src/pane/screens/results/results-screen");
  const { inPane } = await import("../in-pane");
  const port = new FakePort();
  port.onlySheets("Test 7");
  port.lay("Test 7", {
    length_unit: ["mm"],
    stress_unit: ["kPa"],
    load_number: [1],
    load_stress: [50],
    load_remark: [
      "not corrected for the apparatus; the time in row 3 (0.5 min) is before a time above it: the times are not in order and were sorted; correct it if the clock was wrong; 6 readings at different times are needed; there are 2",
    ],
    times_01: [0, 1, 0.5],
    readings_01: [100, 110, 115],
    ring_mass: ["7,5"],
    specific_gravity: [3.5],
  });
  const shows = async (screen: ReactNode, ...said: string[]): Promise<void> => {
    await render(screen);
    for (let turn = 0; turn < 200 && !said.every((one) => place.textContent?.includes(one)); turn++)
      await act(() => new Promise((resolve) => setTimeout(resolve, 25)));
    for (const one of said) expect(place.textContent).toContain(one);
  };
  await shows(
    inPane(ChecksScreen, port),
    "Ist die Korndichte (Gs) die eines Bodens?",
    "Korndichte (Gs): 3,5, über 2,9: bestätigen, dass sie an diesem Boden bestimmt wurde",
    "Laststufe 1 (50 kPa): Zeile 3 steht bei 0,5 min, nicht nach den 1 min der Zeile davor",
    "enthält „7,5“ als Text: als Zahl neu eingeben",
  );
  for (const { question } of CHECKS) expect(place.textContent).not.toContain(english(question));
  await shows(
    inPane(ResultsScreen, port),
    "nicht um das Gerät berichtigt; die Zeit in Zeile 3 (0,5 min) liegt vor einer Zeit darüber: die Ablesungen wurden nach der Zeit geordnet; die Zeit berichtigen, wenn die Uhr falsch ging; 6 Ablesungen zu verschiedenen Zeiten sind nötig; es gibt 2",
  );
});

test("the names of a data sheet are offered with German labels, whatever sheet is in front", async () => {
  const { NameStep } = await import("../../../src/pane/screens/data-sheet/name-step");
  await render(
    createElement(NameStep, {
      ...{ name: "ring_mass", missing: new Set(["ring_mass"]), taken: undefined, offered: undefined, isBusy: false },
      ...{ onChoose: jest.fn(), onAttach: jest.fn(), onReplace: jest.fn() },
    }),
  );
  const options = [...place.querySelectorAll("option")].map(({ textContent }) => textContent);
  expect(options).toEqual(expect.arrayContaining(["Masse des Rings (ring_mass)", "Anfangshöhe (initial_height)"]));
});
