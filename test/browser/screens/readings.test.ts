/** A person imports the readings of a logger beside the embedded sheet. */
import { createHash } from "node:crypto";
import type { Frame, FrameLocator, Page } from "playwright-core";
import {
  cutChoices,
  paneFrame,
  paneViolations,
  paneWidths,
  readNames,
  setPaneWidth,
  sheetNames,
  showSheet,
  tabIntoScreen,
  takePicture,
  withBrowser,
} from "../page";

declare const requestAnimationFrame: (then: () => void) => void;

const SHEET = "Consolidation test";
const KEPT = `Readings ${SHEET}`;

/**
 * An invented test: three loads, first with a reading every second, later every minute; semicolons, decimal commas,
 * UTF-16.
 */
const LOADS = [25, 50, 100].map((stress, index) => {
  const seconds = [...Array(60).keys(), ...Array.from({ length: 180 }, (_, minute) => 60 * (minute + 1))];
  return {
    stress,
    seconds,
    readings: seconds.map((second) => Math.round(1e4 * (1 + index + Math.log10(1 + second) / 5)) / 1e4),
  };
});
const comma = (value: number): string => String(value).replace(".", ",");
const ROWS = LOADS.flatMap(({ stress, seconds, readings }, load) =>
  seconds.map((second, index) => `${load * 20000 + second};${comma(stress)};${comma(readings[index])}`),
);
const FAULTY = [...ROWS.slice(0, 100), "NAN;25;1,3", ...ROWS.slice(100)];
const TEXT = ["Invented frame", "Time;Stress;Displacement", "s;kPa;mm", ...FAULTY].join("\r\n");
const FILE = { name: "frame-3.csv", mimeType: "text/csv", buffer: Buffer.from(`\ufeff${TEXT}`, "utf16le") };

withBrowser("bringing readings in", (openPage) => {
  let page: Page;
  let pane: FrameLocator;
  let frame: Frame;
  let complaints: string[];

  beforeAll(async () => {
    ({ page, complaints } = await openPage());
    pane = page.frameLocator("#pane");
    frame = paneFrame(page);
    await pane.getByRole("tab", { name: "Data sheet" }).click();
    await pane.getByRole("button", { name: "Insert blank sheet" }).click();
    await pane.getByText("was made").waitFor();
    await setPaneWidth(page, 320);
  });

  const column = async (name: string, sheet = SHEET) =>
    (await readNames(page, sheet, [name]))[name].map(([value]) => value).filter((value) => value !== "");
  /** axe finds nothing wrong, and nothing is cut off in 320 px. */
  const checkPane = async (): Promise<void> => {
    expect(await paneViolations(page)).toEqual([]);
    expect(await paneWidths(page)).toEqual({ shown: 320, content: 320 });
    expect(await cutChoices(frame)).toEqual([]);
  };
  const open = async (file: typeof FILE): Promise<void> => {
    const other = pane.getByRole("button", { name: "Other file" });
    if (await other.isVisible()) await other.click();
    await pane.locator("input[type=file]").setInputFiles(file);
    await pane.getByRole("heading", { name: "Columns and units" }).waitFor();
  };

  test("pasted rows are read by keyboard alone", async () => {
    await pane.getByRole("tab", { name: "Data sheet" }).focus();
    await page.keyboard.press("ArrowRight");
    await pane.getByRole("heading", { name: "Bring readings in" }).waitFor();
    await checkPane();
    await tabIntoScreen(page);
    await page.keyboard.press("Tab");
    await page.keyboard.insertText("Time (min),Reading (div)\n0,100\n1,110\n2,115\n4,119\n");
    await page.keyboard.press("Tab");
    await page.keyboard.press("Enter");
    await pane.getByText("Line 2 is read as: 0 min; reading 100 divisions").waitFor();
  });

  test("the layout that a file shows is offered, in any encoding, with the hash of the file", async () => {
    await open(FILE);
    await pane.getByText(createHash("sha256").update(FILE.buffer).digest("hex")).waitFor();
    await pane.getByText(/lines, UTF-16/).waitFor();
    expect(await pane.getByRole("combobox", { name: "Decimal mark" }).inputValue()).toBe(",");
    expect(await pane.getByRole("combobox", { name: "Time is in" }).inputValue()).toBe("s");
    expect(await pane.getByRole("combobox", { name: "Load is in" }).inputValue()).toBe("kPa");
    await pane.getByRole("textbox", { name: "Apparatus" }).fill("Frame 3");
    await checkPane();
    await takePicture(page, "readings-columns");
  });

  test("loads are found; the line that was left out is listed with its number", async () => {
    await pane.getByRole("button", { name: "Use these columns" }).click();
    await pane.getByText(/Stretch 3.*100 kPa/).waitFor();
    await pane.getByText("1 line is left out").click();
    await pane.getByText(/Line 104: .*NAN/).waitFor();
    await pane.getByRole("button", { name: /^Write 3 loads to/ }).waitFor();
    await checkPane();
    await takePicture(page, "readings-loads");
  });

  test("the data sheet is written and reduced, in one step of undo; the lines of the file are kept", async () => {
    const sheets = await sheetNames(page);
    const stood = await column("times_01");
    expect(await pane.getByRole("checkbox", { name: "Fill in Dial factor: 1" }).isChecked()).toBe(true);
    const write = async (): Promise<void> => {
      await pane.getByRole("button", { name: /^Write 3 loads to/ }).click();
      await pane.getByRole("status").filter({ hasText: "3 loads were written" }).waitFor();
    };
    await write();
    await checkPane();
    const [times, readings] = [await column("times_02"), await column("readings_02")];
    expect(times.length).toBe(readings.length);
    expect(times.slice(0, 3)).toEqual([0, 0.0166667, 0.0333333]);
    // Time 0 has the last reading of the load before, and the last row is that of the file.
    expect(readings[0]).toBe(LOADS[0].readings[LOADS[0].readings.length - 1]);
    expect([times[times.length - 1], readings[readings.length - 1]]).toEqual([180, LOADS[1].readings[239]]);
    for (const [index, reading] of readings.slice(1).entries())
      expect(reading).toBe(LOADS[1].readings[LOADS[1].seconds.indexOf(Math.round(60 * Number(times[index + 1])))]);
    expect(await column("load_stress")).toEqual([25, 50, 100]);
    expect((await column("end_reading"))[2]).toBe(LOADS[2].readings[239]);
    expect(await sheetNames(page)).toEqual([...sheets, KEPT]);
    expect(await column("logger_lines_001", KEPT)).toEqual(TEXT.split("\r\n"));
    expect(await column("logger_kept", KEPT)).toEqual([`all ${TEXT.split("\r\n").length} lines`]);

    await page.locator(".o-grid").click({ position: { x: 300, y: 300 } });
    await page.keyboard.press("Control+Z");
    expect(await column("readings_02")).toEqual([]);
    expect(await column("times_01")).toEqual(stood);
    expect(await column("dial_factor")).toEqual([]);
    expect(await column("load_stress")).toEqual([]);
    await page.keyboard.press("Control+Y");
    expect(await column("readings_02")).toEqual(readings);
  });

  test("loads with readings are not changed unless the person agrees for each", async () => {
    const before = await column("readings_01");
    await open({ ...FILE, buffer: Buffer.from(`\ufeff${TEXT.replace("s;kPa;mm", "s;kPa;in")}`, "utf16le") });
    await pane.getByRole("button", { name: "Use these columns" }).click();
    await pane.getByText(/No load is to be written/).waitFor();
    const button = pane.getByRole("button", { name: /^Write 0 loads to/ });
    expect(await button.getAttribute("aria-disabled")).toBe("true");
    await pane.getByRole("checkbox", { name: /Load 2 holds \d+ readings: replace them/ }).check();
    // This file is in inches, the factor of the sheet is for millimetres: the pane asks which counts before it writes
    // anything.
    await pane.getByRole("radio", { name: "Keep Dial factor at 1" }).check();
    await pane.getByRole("button", { name: /^Write 1 load to/ }).click();
    await pane.getByRole("status").filter({ hasText: "One load was written" }).waitFor();
    expect(await column("readings_01")).toEqual(before);
  });

  test("the choices for an apparatus are offered again, from a workbook that was saved and opened", async () => {
    await page.evaluate(async () => {
      const { save, open } = (globalThis as any).clayledger;
      await open(await save(), "again.xlsx");
    });
    await showSheet(page, SHEET);
    const bare = TEXT.replace("s;kPa;mm\r\n", "");
    await open({ ...FILE, buffer: Buffer.from(bare, "utf8") });
    const unit = pane.getByRole("combobox", { name: "Time is in" });
    expect(await unit.inputValue()).toBe("");
    await pane.getByRole("combobox", { name: "As for an earlier file" }).selectOption("Frame 3");
    expect(await unit.inputValue()).toBe("s");
    expect(await pane.getByRole("heading", { name: "Loads found" }).count()).toBe(0);
  });

  test("unfinished choices stay while another screen is shown", async () => {
    await pane.getByRole("tab", { name: "About" }).click();
    await pane.getByRole("tab", { name: "Readings" }).click();
    expect(await pane.getByRole("combobox", { name: "Time is in" }).inputValue()).toBe("s");
  });

  test("190,000 rows are read while the page stays responsive; keeping them is stopped, and the data sheet is unchanged", async () => {
    const rows = Array.from(
      { length: 190_000 },
      (_, i) => `${i},${50 * 2 ** Math.floor(i / 25_000)},${(1 + Math.log10(1 + (i % 25_000))).toFixed(4)}`,
    );
    await open({
      name: "long.csv",
      mimeType: "text/csv",
      buffer: Buffer.from(["Time,Stress,Displacement", "s,kPa,mm", ...rows].join("\n")),
    });
    await frame.evaluate(() => {
      const view = globalThis as any;
      view.frames_drawn = 0;
      requestAnimationFrame(function drawn() {
        view.frames_drawn++;
        requestAnimationFrame(drawn);
      });
    });
    await pane.getByRole("button", { name: "Use these columns" }).click();
    await pane.getByText(/Stretch 8.*6400 kPa/).waitFor();
    expect(await frame.evaluate(() => (globalThis as any).frames_drawn)).toBeGreaterThan(5);

    const before = await column("readings_04");
    await pane.getByRole("button", { name: /^Write \d loads? to/ }).click();
    await pane.getByRole("progressbar").waitFor();
    await takePicture(page, "readings-progress");
    await pane.getByRole("button", { name: "Stop" }).click();
    await pane.getByText(/Stopped\. Nothing was written to the data sheet/).waitFor();
    expect(await column("readings_04")).toEqual(before);
    const kept = (await sheetNames(page)).find((name) => name.startsWith(KEPT) && name !== KEPT)!;
    expect(kept).toBeDefined();
  });

  test("if the pane is loaded again in the middle, the data sheet is unchanged, and the sheet of the file says that it is incomplete", async () => {
    const before = await column("readings_04");
    await pane.getByRole("button", { name: /^Write \d loads? to/ }).click();
    await pane.getByRole("progressbar").waitFor();
    await frame.evaluate(() => (globalThis as any).location.reload());
    await pane.getByRole("heading", { name: "What next" }).waitFor();
    expect(await column("readings_04")).toEqual(before);
    const kept = (await sheetNames(page)).filter((name) => name.startsWith(KEPT)).pop()!;
    expect(await column("logger_kept", kept)).toEqual([expect.stringMatching(/^not finished/)]);
    await pane.getByRole("tab", { name: "Readings" }).click();
    await pane.getByRole("button", { name: "Open a text file" }).waitFor();
  });

  test("the page reports no error and sends no request elsewhere", () => expect(complaints).toEqual([]));
});
