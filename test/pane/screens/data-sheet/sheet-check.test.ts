/** @jest-environment jsdom */
import { say } from "../../../../src/reduction/message";
import { act, createElement } from "react";
import { createRoot, type Root } from "react-dom/client";
import { blankSheet, demoSheet, wettingSeries } from "../../../../src/datasheet";
import { placedFormulas } from "../../../../src/specification/placed-formulas";
import { cellAddress } from "../../../../src/workbook/address";
import { Pane } from "../../../../src/pane/shell/pane";
import { text } from "../../../../src/pane/text";
import { WorkbookError, type SheetName } from "../../../../src/workbook/port";
import { FAILURES, FakePort } from "../../fake-port";
import { sheetOf } from "../../fake-workbook";

Object.assign(globalThis, { IS_REACT_ACT_ENVIRONMENT: true });
const words = text.check;
const WHOLE: SheetName[] = Object.entries(blankSheet("SI").names).map(([name, place]) => ({
  name,
  scope: "sheet",
  place,
}));

const WITHOUT_RING = WHOLE.filter(({ name }) => name !== "ring_mass");
const RING = cellAddress(blankSheet("SI").names.ring_mass.row, blankSheet("SI").names.ring_mass.col);

let root: Root;
let port: FakePort;
let place: HTMLElement;

beforeEach(async () => {
  port = new FakePort();
  port.workbook.sheets = [{ ...sheetOf(blankSheet("SI"), "Sheet1"), protection: "none" }];
  place = document.body.appendChild(document.createElement("div"));
  root = createRoot(place);
  await act(async () =>
    root.render(createElement(Pane, { port, sheets: { blankSheet, demoSheet, wettingSeries }, look: "light" })),
  );
  await act(async () => place.querySelector<HTMLButtonElement>("#tab-sheet")!.click());
});

afterEach(async () => {
  await act(async () => root.unmount());
  place.remove();
});

const button = (name: string): HTMLButtonElement => {
  const found = [...place.querySelectorAll<HTMLButtonElement>("button")].find(
    ({ textContent }) => textContent === name,
  );
  if (!found) throw new Error(`there is no button "${name}" in: ${place.textContent}`);
  return found;
};
const press = (name: string): Promise<void> => act(async () => button(name).click());
const open = (): Promise<void> => act(async () => button(words.look).click());
const items = (): string[] =>
  [...place.querySelectorAll('ul[role="list"] li')].map(({ textContent }) => textContent ?? "");
const status = (): string =>
  [...place.querySelectorAll('[role="status"], [role="alert"]')].map(({ textContent }) => textContent).join(" ");

async function chooseName(name: string): Promise<void> {
  const select = place.querySelector("select")!;
  const set = Object.getOwnPropertyDescriptor(HTMLSelectElement.prototype, "value")!.set!;
  await act(async () => {
    set.call(select, name);
    select.dispatchEvent(new Event("change", { bubbles: true }));
  });
}

test("a sound sheet is called sound", async () => {
  await open();
  expect(status()).toContain(words.whole);
  expect(items()).toEqual([]);
});

test("a missing name is named with the values lost, and stands first in the list of names to give", async () => {
  port.nameSheet("Sheet1", WITHOUT_RING);
  await open();
  expect(place.textContent).toContain(words.stop(1));
  expect(items()).toEqual([
    expect.stringMatching(/Mass of the ring \(ring_mass\) is missing\. Without it there is no answer for: /),
  ]);
  const group = place.querySelector("optgroup")!;
  expect([group.label, group.querySelectorAll("option").length]).toEqual([words.missingGroup, 1]);
});

test("a German sheet in front is spoken of by its own labels, while the current test is an English one", async () => {
  const german = sheetOf(blankSheet("SI", { language: "de" }), "Blatt");
  german.names.delete("ring_mass");
  port.workbook.sheets.push({ ...german, protection: "none" });
  port.workbook.front = "Blatt";
  await open();
  expect(items()).toEqual([expect.stringMatching(/^Masse des Rings \(ring_mass\) is missing/)]);
});

test("a sheet of another kind is called so", async () => {
  port.nameSheet("Sheet1", [{ name: "budget", scope: "sheet", place: { row: 0, col: 0, rows: 1, cols: 1 } }]);
  await open();
  expect(items()).toEqual([expect.stringContaining("sheet of another kind")]);
  expect(port.asked).toEqual([]);
});

test("the selected cell gets the chosen name, and the sheet is checked again", async () => {
  await open();
  await chooseName("ring_mass");
  port.select([[74.36]], "D9");
  port.nameSheet("Sheet1", WITHOUT_RING);
  await press(words.give);
  expect(port.asked).toEqual(["name ring_mass Sheet1!D9"]);
  expect(status()).toContain(words.attached("ring_mass", "D9", port.workbook.front));
});

test("the chosen name stands in full under the list where a narrow pane would cut it off", async () => {
  await open();
  await chooseName("ring_and_wet_before");
  const hint = document.getElementById(place.querySelector("select")!.getAttribute("aria-describedby")!);
  expect(hint?.textContent).toBe("Ring + wet soil, before (ring_and_wet_before)");
  await chooseName("depth");
  expect(place.querySelector("select")!.getAttribute("aria-describedby")).toBeNull();
});

test("a name with cells stays until the person agrees to move it", async () => {
  await open();
  await chooseName("ring_mass");
  port.select([[1]], "D9");
  await press(words.give);
  expect(status()).toContain(`already at ${RING} and was left there`);
  expect(port.asked).toEqual([]);
  await press(words.move("ring_mass"));
  expect(port.asked).toEqual(["name ring_mass Sheet1!D9 in place of another"]);
});

test("more than one block, or too many values for one cell, are refused with a sentence", async () => {
  await open();
  await chooseName("ring_mass");
  port.select([[1]], "D9,F9");
  await press(words.give);
  expect(status()).toContain(words.oneBlock);
  port.select([[1], [2]], "D9:D10");
  await press(words.give);
  expect(status()).toContain("select one cell");
  expect(port.asked).toEqual([]);
});

test("a firm's file is inserted, and parts that could not be kept are listed", async () => {
  await open();
  port.insertFile = async (file) => {
    port.asked.push(`insert ${file.length} bytes`);
    port.addSheets("Our form");
    return { sheets: ["Our form"], remarks: [say`Notes were left out.`] };
  };
  const input = place.querySelector<HTMLInputElement>('input[type="file"]')!;
  const file = { name: "form.xlsx", arrayBuffer: async () => new ArrayBuffer(9) };
  Object.defineProperty(input, "files", { value: [file], configurable: true });
  await act(async () => void input.dispatchEvent(new Event("change", { bubbles: true })));
  expect(port.asked).toEqual(["insert 9 bytes"]);
  expect(status()).toContain(`${words.inserted(["Our form"])} Notes were left out.`);
  expect(place.textContent).toContain(words.of("Our form"));
});

test("formulas are entered again, and those that still fail are named", async () => {
  await open();
  const cells = port.sheet("Sheet1").cells;
  for (let row = 1; row <= 12; row++) cells.set(`Z${row}`, { value: "#NAME?", formula: `=F${row}()` });
  for (let row = 1; row <= 9; row++) port.functions.set(`=F${row}()`, row);
  await press(words.reenter);
  expect(status()).toContain(words.reentered(12, 3));
  expect(port.asked).toEqual(["re-enter Sheet1"]);
});

test("protection is lifted and restored with one button", async () => {
  port.sheet("Sheet1").protection = "without password";
  await open();
  await press(words.lift);
  expect(status()).toContain(words.lifted("Sheet1"));
  await press(words.protect);
  expect(port.asked).toEqual(["open Sheet1", "protect Sheet1"]);
});

test("a workbook that cannot be read says so, and can be read again", async () => {
  port.failure = new WorkbookError(say`The workbook is busy.`);
  await open();
  expect(place.querySelector('[role="alert"]')?.textContent).toBe("The workbook is busy.");
  port.failure = undefined;
  await press(words.look);
  expect(status()).toContain(words.whole);
});

describe("a firm's own cells", () => {
  const typeInto = async (label: string, value: string): Promise<void> => {
    const input = [...place.querySelectorAll("input")].find(({ labels }) => labels?.[0]?.textContent === label)!;
    const set = Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, "value")!.set!;
    await act(async () => {
      set.call(input, value);
      input.dispatchEvent(new Event("input", { bubbles: true }));
    });
  };
  const contentOf = (cell: string) => {
    const { formula, value } = port.sheet("Sheet1").cells.get(cell) ?? {};
    return formula ?? value;
  };
  /** The formula of the dry mass, with the names of the plan. */
  const RING_AND_DRY = placedFormulas("dry_mass", {
    places: new Map(Object.entries(blankSheet("SI").names)),
  })!.cells[0]!.formula.replace(/[{}]/g, "");

  test("a result gets its name, and its formula if its cell is blank", async () => {
    port.nameSheet(
      "Sheet1",
      WHOLE.filter(({ name }) => name !== "dry_mass"),
    );
    await open();
    await chooseName("dry_mass");
    port.select([[""]], "ZA9");
    await press(words.give);
    expect(contentOf("ZA9")).toBe(RING_AND_DRY);
    expect(status()).toContain(words.formulaWritten("dry_mass"));
  });

  test("a filled cell keeps its content until the person agrees to replace it", async () => {
    port.nameSheet(
      "Sheet1",
      WHOLE.filter(({ name }) => name !== "dry_mass"),
    );
    await open();
    await chooseName("dry_mass");
    port.select([[55.1]], "ZA9");
    await press(words.give);
    expect(contentOf("ZA9")).toBe(55.1);
    expect(status()).toContain(words.formulaHeld("ZA9"));
    await press(words.replace("ZA9"));
    expect(contentOf("ZA9")).toBe(RING_AND_DRY);
    expect(status()).toContain(words.mended("ZA9", "Sheet1"));
  });

  test("a result whose inputs have no cells is named, and the names that it waits for are listed", async () => {
    port.nameSheet("Sheet1", []);
    await open();
    await chooseName("dry_mass");
    port.select([[""]], "ZA9");
    await press(words.give);
    expect(contentOf("ZA9")).toBe("");
    expect(status()).toContain(words.formulaWaits("Mass of the ring (ring_mass), Ring + dry soil (ring_and_dry)"));
  });

  test("all missing formulas are written; filled cells stay and are reported", async () => {
    const [dry, solids] = ["dry_mass", "solids_height"].map((name) => {
      const { row, col } = blankSheet("SI").names[name]!;
      return { row, col, address: cellAddress(row, col) };
    });
    port.sheet("Sheet1").cells.set(dry!.address, { value: "" });
    port.sheet("Sheet1").cells.set(solids!.address, { value: 7 });
    await open();
    expect(place.textContent).toContain(words.faulty(2));
    await press(words.writeMissing(1));
    expect(contentOf(dry!.address)).toBe(RING_AND_DRY);
    expect(contentOf(solids!.address)).toBe(7);
    expect(status()).toContain(words.leftHeld(solids!.address));
    const mend = place.querySelector<HTMLButtonElement>(`[aria-label="${words.mendAt(solids!.address)}"]`)!;
    await act(async () => mend.click());
    expect(contentOf(solids!.address)).toMatch(/^=IF\(.*CLAY\.SOLIDS_HEIGHT\(/);
    expect(status()).toContain(words.mended(solids!.address, "Sheet1"));
    expect(items()).toEqual([]);
  });

  test("selected columns get the names of readings, from a load on", async () => {
    port.nameSheet(
      "Sheet1",
      WHOLE.filter(({ name }) => !/^(times|readings)_/.test(name)),
    );
    await open();
    port.select(
      [
        ["", "", "", ""],
        ["", "", "", ""],
      ],
      "ZA4:ZD5",
    );
    await typeInto(words.fromLoad, "3");
    await press(words.nameReadings.columns);
    expect(port.asked).toEqual([
      "name times_03 Sheet1!ZA4:ZA5",
      "name readings_03 Sheet1!ZB4:ZB5",
      "name times_04 Sheet1!ZC4:ZC5",
      "name readings_04 Sheet1!ZD4:ZD5",
    ]);
    expect(status()).toContain(words.readingsNamed(3, 4, "Sheet1"));
    port.select([[1, 2, 3]], "ZA4:ZC4");
    await press(words.nameReadings.columns);
    expect(status()).toContain("Selected: 3 columns. Every load has two");
    expect(port.asked).toHaveLength(4);
  });

  test("one column of times that all loads share gets the names of the times of each load", async () => {
    port.nameSheet(
      "Sheet1",
      WHOLE.filter(({ name }) => !/^(times|readings)_/.test(name)),
    );
    await open();
    const box = [...place.querySelectorAll<HTMLInputElement>("input[type=checkbox]")].find(
      ({ labels }) => labels?.[0]?.textContent === words.sharedTimes,
    );
    await act(async () => box!.click());
    expect(place.textContent).toContain(words.sharedTimesHint);
    port.select([["", "", "", ""]], "ZA4:ZA9,ZC4:ZD9");
    await press(words.nameReadings.columns);
    expect(port.asked).toEqual([
      "name times_01 Sheet1!ZA4:ZA9",
      "name readings_01 Sheet1!ZC4:ZC9",
      "name times_02 Sheet1!ZA4:ZA9",
      "name readings_02 Sheet1!ZD4:ZD9",
    ]);
    expect(status()).toContain(words.readingsNamed(1, 2, "Sheet1"));
    port.select([[""]], "ZA4:ZA9");
    await press(words.nameReadings.columns);
    expect(status()).toContain("Selected: 1 column. Select the times, and the readings of each load.");
    expect(port.asked).toHaveLength(4);
  });

  test.each([
    [
      "readings that rise on the dial",
      [
        [0, 500, 700, 900],
        [1, 510, 720, 930],
        [4, 530, 760, 980],
      ],
      "ZC4:ZC6",
      2,
      "times_02",
    ],
    [
      "readings that fall",
      [
        [1, 9, 900, 3],
        [4, 8, 700, 2],
        [9, 7, 500, 1],
      ],
      "ZC4:ZC6",
      2,
      "times_02",
    ],
    [
      "days in place of minutes",
      [
        [45000.1, 9, 0, 3],
        [45000.2, 8, 1, 2],
        [45000.3, 7, 4, 1],
      ],
      "ZA4:ZA6",
      1,
      "times_01",
    ],
  ] as const)("%s get no name of times, and the pane says what to do", async (_, values, cells, load, name) => {
    port.nameSheet(
      "Sheet1",
      WHOLE.filter(({ name: one }) => !/^(times|readings)_/.test(one)),
    );
    await open();
    port.select(values, "ZA4:ZD6");
    await press(words.nameReadings.columns);
    expect(status()).toContain(words.noTimes(cells, load, name));
    expect(port.asked).toEqual([]);
  });

  test("readings keep names that they already have", async () => {
    await open();
    port.select([["", ""]], "ZA4:ZB4");
    await press(words.nameReadings.columns);
    expect(status()).toMatch(/times_01.*already at/);
    expect(port.asked).toEqual([]);
  });

  test("results without a cell are laid out over blank cells only", async () => {
    const results = new Set(["dry_mass", "height_end"]);
    port.nameSheet(
      "Sheet1",
      WHOLE.filter(({ name }) => !results.has(name)),
    );
    await open();
    const { row, rows } = blankSheet("SI").names.load_stress!;
    port.select([[""]], "ZA1");
    port.sheet("Sheet1").cells.set(`ZA${row + 3}`, { value: "in the way" });
    await press(words.workings);
    expect(status()).toContain(words.workingsHeld(`ZA${row + 3}`));
    expect(port.asked).toEqual([]);
    port.sheet("Sheet1").cells.delete(`ZA${row + 3}`);
    await press(words.workings);
    expect(status()).toContain(words.laidOut(2, "Sheet1"));
    expect([port.noted, port.notes]).toEqual([["layout of Sheet1"], []]);
    expect(contentOf(`ZA${row}`)).toBe("Height at the end of the load");
    expect(contentOf(`ZA${row + rows}`)).toMatch(/^=IF\(/);
    expect(contentOf(`ZB${row + rows + 2}`)).toBe(RING_AND_DRY);
  });
});

describe("failures of the host", () => {
  test("protection with a password stays, and the pane says so", async () => {
    port.sheet("Sheet1").protection = "with password";
    await open();
    await press(words.lift);
    expect(status()).toContain(FAILURES.password().message);
    expect(port.sheet("Sheet1").protection).toBe("with password");
    expect(port.asked).toEqual([]);
  });

  test("a name that cannot be given is not given, and can be tried again", async () => {
    port.nameSheet("Sheet1", WITHOUT_RING);
    port.select([[12]], "C21");
    await open();
    await chooseName("ring_mass");
    port.failing.nameAll = FAILURES.protected("Sheet1");
    await press(words.give);
    expect(status()).toContain(FAILURES.protected("Sheet1").message);
    expect(port.asked).toEqual([]);
    port.failing.nameAll = undefined;
    await press(words.give);
    expect(port.asked).toEqual(["name ring_mass Sheet1!C21"]);
  });

  test("a file that cannot be inserted leaves the workbook unchanged", async () => {
    const before = await port.sheetNames();
    const input = place.querySelector<HTMLInputElement>("input[type=file]")!;
    Object.defineProperty(input, "files", { value: [{ arrayBuffer: async () => new ArrayBuffer(3) }] });
    await act(async () => void input.dispatchEvent(new Event("change", { bubbles: true })));
    expect(status()).toContain("This is no .xlsx workbook");
    expect(await port.sheetNames()).toEqual(before);
  });

  test("if the workbook is busy, the sentence stands, and nothing was asked for twice", async () => {
    await open();
    port.failing.reenterFormulas = FAILURES.halfway("Sheet1");
    await press(words.reenter);
    expect(status()).toContain(FAILURES.halfway("Sheet1").message);
    expect(port.asked).toEqual(["re-enter Sheet1"]);
  });
});
