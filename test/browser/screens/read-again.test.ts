/** A logger's file that is still being written is read, and read again as it grows, in a narrow pane. */
import type { FrameLocator, Page } from "playwright-core";
import { paneViolations, paneWidths, readNames, setPaneWidth, takePicture, withBrowser } from "../page";

const SHEET = "Consolidation test";
const KEPT = `Readings ${SHEET}`;

const row = (minute: number): string =>
  `${minute};${minute < 200 ? 25 : 50};${(1 + Math.log10(1 + (minute % 200)) / 10).toFixed(4)}`;
const linesTo = (minutes: number): string[] => [
  "Time;Stress;Displacement",
  "min;kPa;mm",
  ...Array.from({ length: minutes }, (_, minute) => row(minute)),
];
const file = (text: string) => ({ name: "frame-4.csv", mimeType: "text/csv", buffer: Buffer.from(text, "utf8") });
/** The file as the logger has written it so far: the last line is cut. */
const cut = (minutes: number): string => `${linesTo(minutes).join("\n")}\n${row(minutes).slice(0, 4)}`;

withBrowser("a growing file", (openPage) => {
  let page: Page;
  let pane: FrameLocator;
  let complaints: string[];

  beforeAll(async () => {
    ({ page, complaints } = await openPage());
    pane = page.frameLocator("#pane");
    await pane.getByRole("tab", { name: "Data sheet" }).click();
    await pane.getByRole("button", { name: "Insert blank sheet" }).click();
    await pane.getByText("was made").waitFor();
    await setPaneWidth(page, 320);
    await pane.getByRole("tab", { name: "Readings" }).click();
  });

  const column = async (name: string, sheet = SHEET) =>
    (await readNames(page, sheet, [name]))[name]!.map(([value]) => value).filter((value) => value !== "");
  const open = async (text: string): Promise<void> => {
    const other = pane.getByRole("button", { name: "Other file" });
    if (await other.isVisible()) await other.click();
    await pane.locator("input[type=file]").setInputFiles(file(text));
    await pane.getByRole("heading", { name: "Columns and units" }).waitFor();
  };
  const checkPane = async (): Promise<void> => {
    expect(await paneViolations(page)).toEqual([]);
    expect(await paneWidths(page)).toEqual({ shown: 320, content: 320 });
  };

  test("the first reading is written as ever", async () => {
    await open(`${linesTo(120).join("\n")}\n`);
    await pane.getByRole("button", { name: "Use these columns" }).click();
    await pane.getByRole("button", { name: /^Write 1 load to/ }).click();
    await pane.getByRole("status").filter({ hasText: "One load was written" }).waitFor();
    expect((await column("times_01")).at(-1)).toBe(119);
  });

  test("read again, the load goes on below its readings, the next begins, and the kept lines grow", async () => {
    const stood = await column("readings_01");
    await open(cut(260));
    await pane.getByText(/Load 1 goes on: 80 new rows/).waitFor();
    await pane.getByText(/Load 2 begins: /).waitFor();
    await checkPane();
    await takePicture(page, "read-again");
    const write = pane.getByRole("button", { name: /^Write what is new to/ });
    await write.focus();
    await page.keyboard.press("Enter");
    await pane.getByRole("status").filter({ hasText: "were added to" }).waitFor();
    const [times, readings] = [await column("times_01"), await column("readings_01")];
    expect(readings.slice(0, stood.length)).toEqual(stood);
    expect(times.at(-1)).toBe(199);
    expect(new Set(times).size).toBe(times.length);
    expect(await column("load_stress")).toEqual([25, 50]);
    expect((await column("times_02")).at(-1)).toBe(256 - 200);
    expect(await column("logger_lines_001", KEPT)).toEqual(linesTo(257));
    expect(await column("logger_again_lines", KEPT)).toEqual([259]);
  });

  test("finished, the rows that waited come in; the same file again has nothing new", async () => {
    await open(linesTo(260).join("\n"));
    await pane.getByRole("checkbox", { name: /The file is finished/ }).check();
    await pane.getByText(/Load 2 goes on: 3 new rows/).waitFor();
    await pane.getByRole("button", { name: /^Write what is new to/ }).click();
    await pane.getByRole("status").filter({ hasText: "3 readings were added" }).waitFor();
    expect((await column("times_02")).at(-1)).toBe(59);
    await pane.getByText(/Nothing is new in the file/).waitFor();
  });

  test("a line that changed is told by its number, and nothing is written", async () => {
    const before = await column("readings_01");
    await open(linesTo(300).join("\n").replace(row(50), "50;25;9.9999"));
    await pane.getByText(/Line 53 of the file changed since it was read/).waitFor();
    expect(await pane.getByRole("button", { name: /^Write what is new to/ }).count()).toBe(0);
    await checkPane();
    expect(await column("readings_01")).toEqual(before);
  });

  test("the page reports no error", () => expect(complaints).toEqual([]));
});
