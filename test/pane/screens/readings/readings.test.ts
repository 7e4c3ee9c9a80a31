/** @jest-environment jsdom */
import { say } from "../../../../src/reduction/message";
import { createHash, webcrypto } from "node:crypto";
import { TextDecoder, TextEncoder } from "node:util";
import { act } from "react";
import { createRoot, type Root } from "react-dom/client";
import { blankSheet } from "../../../../src/datasheet";
import { NOT_KEPT } from "../../../../src/exchange/logger/file-sheet";
import { TARGET_NAMES } from "../../../../src/exchange/logger/target";
import { ReadingsScreen } from "../../../../src/pane/screens/readings/readings-screen";
import { WorkbookError, type CellValue, type SheetPlan } from "../../../../src/workbook/port";
import { FakePort } from "../../fake-port";
import { inPane } from "../../in-pane";

Object.assign(globalThis, { IS_REACT_ACT_ENVIRONMENT: true, TextDecoder, TextEncoder });
Object.defineProperty(globalThis, "crypto", { value: webcrypto });
/** The columns of a plan's names, as a port reads them. */
function columnsOf(plan: SheetPlan, names: readonly string[]): Record<string, CellValue[]> {
  const at = new Map(plan.cells.map((cell) => [`${cell.row},${cell.col}`, cell.value ?? ""]));
  return Object.fromEntries(
    names
      .filter((name) => plan.names[name])
      .map((name) => {
        const { row, col, rows } = plan.names[name];
        return [name, Array.from({ length: rows }, (_, index) => at.get(`${row + index},${col}`) ?? "")];
      }),
  );
}

/** A workbook with one blank data sheet; inserted sheets can be read and filled. */
class Workbook extends FakePort {
  constructor() {
    super();
    this.onlySheets("Test 7");
    this.lay("Test 7", columnsOf(blankSheet("SI"), TARGET_NAMES));
  }
  column = (name: string, sheet = "Test 7"): CellValue[] => {
    const cells = this.columns(sheet)[name];
    return cells.slice(
      0,
      cells.reduce((used: number, value, index) => (value === "" ? used : index + 1), 0),
    );
  };
}

let root: Root;
let port: Workbook;
let place: HTMLElement;

beforeEach(async () => {
  jest.useFakeTimers({ doNotFake: ["queueMicrotask"] });
  port = new Workbook();
  place = document.body.appendChild(document.createElement("div"));
  root = createRoot(place);
  await act(async () => root.render(inPane(ReadingsScreen, port)));
});

afterEach(async () => {
  await act(async () => root.unmount());
  place.remove();
  jest.useRealTimers();
});

const isReading = (): boolean => place.textContent!.includes("Reading the file…");
/** Waits for promises of the platform (the hash, which takes long beside other work) and for pauses of the screen. */
const settle = async (): Promise<void> => {
  for (let turn = 0; turn < 4 || (isReading() && turn < 400); turn++)
    await act(async () => {
      await jest.advanceTimersByTimeAsync(300);
      await new Promise<void>((resolve) =>
        jest.requireActual<typeof import("node:timers")>("node:timers").setTimeout(resolve, 15),
      );
    });
};
const button = (name: string): HTMLButtonElement => {
  const found = [...place.querySelectorAll("button")].find(
    (element) => (element.getAttribute("aria-label") ?? element.textContent) === name,
  );
  if (!found) throw new Error(`there is no button "${name}" in: ${place.textContent}`);
  return found;
};
const press = async (name: string): Promise<void> => {
  await act(async () => button(name).click());
  await settle();
};
const labelled = <T extends HTMLElement>(name: string): T => {
  const label = [...place.querySelectorAll("label")].find((element) => element.textContent === name);
  const found = label ? document.getElementById(label.htmlFor) : place.querySelector(`[aria-label="${name}"]`);
  if (!found) throw new Error(`there is no field "${name}" in: ${place.textContent}`);
  return found as T;
};
const enter = async (name: string, value: string): Promise<void> => {
  const field = labelled<HTMLInputElement>(name);
  const kind =
    { SELECT: HTMLSelectElement, TEXTAREA: HTMLTextAreaElement }[field.tagName as "SELECT"] ?? HTMLInputElement;
  await act(async () => {
    Object.getOwnPropertyDescriptor(kind.prototype, "value")!.set!.call(field, value);
    field.dispatchEvent(new Event(field.tagName === "SELECT" ? "change" : "input", { bubbles: true }));
  });
  await settle();
};
const tick = async (name: string): Promise<void> => {
  await act(async () => labelled<HTMLInputElement>(name).click());
  await settle();
};
const paste = async (rows: string): Promise<void> => {
  await enter("Or paste rows here", rows);
  await press("Read the pasted rows");
};
const told = (role: "alert" | "status"): string =>
  [...place.querySelectorAll(`[role=${role}]`)].map((element) => element.textContent).join(" ");

/** Two loads whose seconds run on, after a seating; line 9 has no reading. */
const ROWS = [
  "Invented frame",
  "Time,Stress,Displacement",
  "s,kPa,mm",
  "0,0,1.000",
  "60,0,1.010",
  "70,25,1.100",
  "76,25,1.150",
  "130,25,1.200",
  "200,25,NAN",
  "310,25,1.300",
  "400,50,1.400",
  "406,50,1.450",
  "1000,50,1.600",
].join("\n");

test("pasted rows are offered, confirmed, found and written; a blank dial factor is filled in", async () => {
  await paste(ROWS);
  expect(place.textContent).toContain(createHash("sha256").update(ROWS).digest("hex"));
  expect(place.textContent).toContain("Line 4 is read as: 0 min; reading 1 mm; load 0 kPa");
  expect(labelled<HTMLSelectElement>("Time is in").value).toBe("s");
  await press("Use these columns");
  expect(place.textContent).toContain("1 line is left out");
  expect(place.textContent).toContain("Line 9: “NAN”: not a number here; left out");
  expect(labelled<HTMLSelectElement>("Stretch 1: Load on the sheet").value).toBe("none");
  expect(labelled<HTMLSelectElement>("Stretch 3: Load on the sheet").value).toBe("2");

  expect(labelled<HTMLInputElement>("Fill in Dial factor: 1").checked).toBe(true);
  await press("Write 2 loads to “Test 7”");
  expect(told("status")).toContain("2 loads were written to “Test 7”");
  // Time 0 takes the last reading before the load.
  expect(port.column("times_01")).toEqual([0, 0.1, 1, 4]);
  expect(port.column("readings_01")).toEqual([1.01, 1.15, 1.2, 1.3]);
  expect(port.column("times_02")).toEqual([0, 0.1, 10]);
  expect(port.column("readings_02")).toEqual([1.3, 1.45, 1.6]);
  expect(port.column("load_stress")).toEqual([25, 50]);
  expect(port.column("zero_reading")).toEqual([1.01]);
  expect(port.column("dial_factor")).toEqual([1]);
  expect(port.column("times_03")).toHaveLength(15);

  const file = port.inserted[0].name;
  expect(file).toBe("Readings Test 7");
  expect(port.column("logger_lines_001", file)).toEqual(ROWS.split("\n"));
  expect(port.column("logger_sha256", file)).toEqual([createHash("sha256").update(ROWS).digest("hex")]);
  expect(port.column("logger_kept", file)).toEqual(["all 13 lines"]);
});

describe("a dial factor that does not suit the file", () => {
  beforeEach(async () => {
    port.put("Test 7", "dial_factor", 0, 0.002);
    port.put("Test 7", "test_remarks", 0, "Shells.");
    await act(async () => port.tell("values"));
    await settle();
    await paste(ROWS);
    await press("Use these columns");
  });
  const write = () => button("Write 2 loads to “Test 7”");

  test("nothing is written until the person has chosen", async () => {
    expect(place.textContent).toContain("Dial factor is 0.002 on the sheet; the readings of this file need 1");
    expect(write().getAttribute("aria-disabled")).toBe("true");
    await press("Write 2 loads to “Test 7”");
    expect(port.filled).toEqual([]);
    expect(place.textContent).toContain("Nothing can be written yet: choose above what counts for Dial factor.");
  });

  test.each([
    ["Change Dial factor to 1", 1, "Shells. Dial factor was changed from 0.002 to 1 for the readings of Pasted rows."],
    [
      "Keep Dial factor at 0.002: every deformation comes out 500 times too small",
      0.002,
      "Shells. Dial factor was kept at 0.002, where the readings of Pasted rows need 1.",
    ],
  ])("%s: the choice stands among the test remarks", async (answer, factor, remark) => {
    await tick(answer);
    await press("Write 2 loads to “Test 7”");
    expect(port.column("dial_factor")).toEqual([factor]);
    expect(port.column("test_remarks")).toEqual([remark]);
  });

  test("on a German sheet the choice stands in German, with the decimal comma", async () => {
    port.put("Test 7", "sheet_language", 0, "Deutsch");
    await act(async () => port.tell("values"));
    await settle();
    await tick("Change Dial factor to 1");
    await press("Write 2 loads to “Test 7”");
    expect(port.column("test_remarks")).toEqual([
      "Shells. Uhrfaktor wurde für die Ablesungen aus „Eingefügte Zeilen“ von 0,002 auf 1 geändert.",
    ]);
  });
});

test.each([
  [
    "No: clear Dial factor, to be typed on the sheet",
    [],
    "Dial factor was 1 and was cleared, because the readings of Pasted rows are divisions.",
  ],
  ["Keep Dial factor at 1", [1], "Dial factor was kept at 1 for the divisions of Pasted rows."],
])(
  "divisions under a dial factor of 1 are not written before the person answers: %s",
  async (answer, factor, remark) => {
    port.put("Test 7", "dial_factor", 0, 1);
    await act(async () => port.tell("values"));
    await settle();
    await paste("Time (min),Reading (div)\n0,100\n1,110\n2,115\n");
    await press("Use these columns");
    expect(place.textContent).toContain(
      "Dial factor is 1 on the sheet, but the readings of this file are divisions: is one division 1 mm?",
    );
    await press("Write 1 load to “Test 7”");
    expect(port.filled).toEqual([]);
    await tick(answer);
    await press("Write 1 load to “Test 7”");
    expect(port.column("readings_01")).toEqual([100, 110, 115]);
    expect(port.column("dial_factor")).toEqual(factor);
    expect(port.column("test_remarks")).toEqual([remark]);
  },
);

test("what the file does not show has to be chosen first", async () => {
  await paste("0;1,5\n1;1,6\n2;1,7\n");
  await press("Use these columns");
  expect(told("alert")).toMatch(/Still to be chosen: time is in; reading is in/);
  expect(place.textContent).not.toContain("Loads found");
  await enter("Time is in", "min");
  await enter("Reading is in", "div");
  await press("Use these columns");
  expect(place.textContent).toContain("Loads found");
  await press("Write 1 load to “Test 7”");
  expect(port.column("readings_01")).toEqual([1.5, 1.6, 1.7]);
});

test("rows without a load are proposed for the next load without readings, and the screen says so; the proposal stays after the writing", async () => {
  port.put("Test 7", "readings_01", 0, 77);
  await act(async () => port.tell("values"));
  await settle();
  await paste("Time (min),Reading (mm)\n0,1.5\n1,1.6\n2,1.7\n");
  await press("Use these columns");
  expect(place.textContent).toContain("Load 2 is the next without readings: load 1 holds readings already");
  await press("Write 1 load to “Test 7”");
  expect(port.column("readings_01")).toEqual([77]);
  expect(port.column("readings_02")).toEqual([1.5, 1.6, 1.7]);
  expect(labelled<HTMLSelectElement>("Stretch 1: Load on the sheet").value).toBe("2");
});

test("a stress typed wrong on the sheet: the screen says where the stretch goes, and which load is passed over", async () => {
  [25, 500, 100, 50].forEach((stress, row) => port.put("Test 7", "load_stress", row, stress));
  await act(async () => port.tell("values"));
  await settle();
  await paste(ROWS);
  await press("Use these columns");
  expect(told("status") + told("alert")).toContain(
    "Goes to load 4: it is the next with 50 kPa on the sheet. Passed over: Load 2, 500 kPa; Load 3, 100 kPa.",
  );
});

test("no file is written to loads that share one column of times, and the screen says what to do", async () => {
  const { names } = port.sheet("Test 7");
  names.set("times_02", names.get("times_01")!);
  await act(async () => port.tell("values"));
  await settle();
  await paste(ROWS);
  await press("Use these columns");
  expect(told("alert")).toContain("Nothing is written to load 1, 2: the times stand in cells that other loads share");
  await press("Write 2 loads to “Test 7”");
  expect([port.filled, port.inserted]).toEqual([[], []]);
  await enter("Stretch 2: Load on the sheet", "3");
  await enter("Stretch 3: Load on the sheet", "4");
  await press("Write 2 loads to “Test 7”");
  expect(port.column("readings_04")).toEqual([1.3, 1.45, 1.6]);
});

test("a load with readings is not changed until the person agrees for that load", async () => {
  port.put("Test 7", "readings_01", 0, 77);
  port.put("Test 7", "load_stress", 0, 25);
  await act(async () => port.tell("values"));
  await settle();
  await paste(ROWS);
  await press("Use these columns");
  await press("Write 1 load to “Test 7”");
  expect(port.column("readings_01")).toEqual([77]);
  expect(port.column("readings_02")).toEqual([1.3, 1.45, 1.6]);
  await enter("Rows for the sheet", "all");
  await tick("Load 1 holds 1 reading: replace them");
  await press("Write 1 load to “Test 7”");
  expect(port.column("readings_01")).toEqual([1.01, 1.15, 1.2, 1.3]);
});

test("readings typed in between are found on the sheet, and nothing is written", async () => {
  await paste(ROWS);
  await press("Use these columns");
  port.put("Test 7", "readings_02", 3, 5);
  await press("Write 2 loads to “Test 7”");
  expect(told("alert")).toMatch(/"readings_02".*holds 1 value already.*Nothing was written/);
  expect(port.column("readings_01")).toEqual([]);
  expect(port.inserted).toEqual([]);
});

test("stretches are joined, split and numbered by hand", async () => {
  await paste(ROWS);
  await press("Use these columns");
  await press("Stretch 3: Join to the one before");
  expect(place.querySelectorAll("ol li")).toHaveLength(2);
  await enter("Begin another load at line", "8");
  await press("Split");
  expect(place.querySelectorAll("ol li")).toHaveLength(3);
  await enter("Stretch 3: Load on the sheet", "1");
  expect(told("alert")).toContain("Given to more than one stretch: load 1");
  await enter("Stretch 3: Load on the sheet", "5");
  await press("Write 2 loads to “Test 7”");
  expect(port.column("times_05")).toEqual([0, 3, 4.5, 4.6, 14.5]);
  await enter("Begin another load at line", "9");
  await press("Split");
  expect(place.textContent).toContain("Enter a line that was read");
});

test("choices are remembered for the apparatus, in the workbook", async () => {
  await paste(ROWS.replace("s,kPa,mm\n", ""));
  await enter("Time is in", "s");
  await enter("Reading is in", "mm");
  await enter("Load column holds", "stress");
  await enter("Load is in", "kPa");
  await enter("Apparatus", "Frame 3");
  await press("Use these columns");
  await press("Write 2 loads to “Test 7”");
  await press("Other file");
  await paste(ROWS.replace("s,kPa,mm\n", "one remark more\n").replace("1.600", "1.601"));
  expect(labelled<HTMLSelectElement>("Time is in").value).toBe("");
  await enter("As for an earlier file", "0");
  expect(labelled<HTMLSelectElement>("Time is in").value).toBe("s");
  expect(labelled<HTMLSelectElement>("Load is in").value).toBe("kPa");
  expect(labelled<HTMLInputElement>("Readings begin in line").value).toBe("4");
  // The choices are offered, not applied: the loads wait for the person.
  expect(place.textContent).not.toContain("Loads found");
});

test("changed columns cancel what was found with the old ones", async () => {
  await paste(ROWS);
  await press("Use these columns");
  await enter("Time is in", "min");
  expect(place.textContent).not.toContain("Loads found");
  expect(told("status")).toContain("confirm them again");
});

test("without a data sheet it says what to do, and finds one that is added", async () => {
  port.lay("Test 7", {});
  await act(async () => port.tell("values"));
  await settle();
  await paste(ROWS);
  await press("Use these columns");
  expect(told("status")).toContain("There is no data sheet in this workbook");
  port.lay("Test 7", columnsOf(blankSheet("SI"), TARGET_NAMES));
  await press("Look again");
  expect(button("Write 2 loads to “Test 7”")).toBeTruthy();
});

test("bytes that are not text are refused with a sentence", async () => {
  await paste("");
  expect(told("alert")).toContain("Paste the rows first");
});

test("a workbook that refuses says so, and the existing file sheet is used again", async () => {
  await paste(ROWS);
  await press("Use these columns");
  const fill = port.fillNames;
  let calls = 0;
  port.fillNames = async (...given) => {
    if (++calls === 3) throw new WorkbookError(say`The sheet is protected: unprotect it, then write again.`);
    return fill(...given);
  };
  await press("Write 2 loads to “Test 7”");
  expect(told("alert")).toMatch(/protected.*“Readings Test 7”.*used again/);
  expect(port.column("readings_01")).toEqual([]);
  await press("Write 2 loads to “Test 7”");
  expect(port.inserted).toHaveLength(1);
  expect(port.column("readings_01")).toHaveLength(4);
});

test("lines that are not kept are not called kept, in the pane or on the sheet of the file", async () => {
  await paste(ROWS);
  await press("Use these columns");
  await tick("Keep all 13 lines of the file in the workbook");
  expect(place.textContent).toContain("its lines are not: keep the file itself elsewhere");
  await press("Write 2 loads to “Test 7”");
  expect(told("status")).toContain("name and hash are on “Readings Test 7”; its lines are not in the workbook");
  const [{ cells }] = port.inserted;
  expect(cells.map(({ value }) => value)).toContain(NOT_KEPT);
  expect(cells.map(({ value }) => String(value)).join(" ")).not.toContain("stand below");
});

test("a column that counts bursts does not make a load of each: the file is one stretch, and the screen says why and what to do", async () => {
  const rows = Array.from({ length: 3000 }, (_, i) => `${i},${Math.floor(i / 4) + 1},${(i / 1e4).toFixed(4)}`);
  await paste(["Time s,Burst,Reading mm", ...rows].join("\n"));
  await enter("Load", "1");
  await enter("Load column holds", "number");
  await press("Use these columns");
  expect(place.querySelectorAll("ol li")).toHaveLength(1);
  expect(told("status")).toMatch(/has 750 stretches\. No test has more than 200 loads/);
  expect(labelled<HTMLSelectElement>("Stretch 1: Load on the sheet").value).toBe("none");
  await enter("Begin another load at line", "1001");
  await press("Split");
  expect(place.querySelectorAll("ol li")).toHaveLength(2);
});
