/** The pane is reloaded in the middle of a long writing: the next pane says what is half done, and what to do. */
import type { Page } from "playwright-core";
import { clickCell, eventually, paneFrame, readNames, settled, sheetNames, withBrowser } from "../page";

declare const document: { readonly querySelector: (selector: string) => { readonly contentWindow: any } };
declare const window: {
  readonly clayledger: { readonly port: any };
  listeners: number;
  isHeld: boolean;
  goOn: () => void;
};

const SHEET = "Consolidation test";
const KEPT = `Readings ${SHEET}`;

/** One load of an invented logger: one reading a minute for 100 days. */
const MINUTES = 144_000;
const TEXT = [
  "Time;Displacement",
  "min;mm",
  ...Array.from({ length: MINUTES }, (_, minute) => `${minute};${(1 + Math.log10(1 + minute) / 5).toFixed(4)}`),
].join("\r\n");
const FILE = { name: "frame-3.csv", mimeType: "text/csv", buffer: Buffer.from(TEXT) };

withBrowser("a pane that is reloaded", (openPage) => {
  let page: Page;
  let complaints: string[];
  const pane = () => page.frameLocator("#pane");

  beforeAll(async () => {
    ({ page, complaints } = await openPage());
    await pane().getByRole("tab", { name: "Data sheet" }).click();
    await pane().getByRole("button", { name: "Insert blank sheet" }).click();
    await pane().getByText("was made").waitFor();
  });

  /** How many lines of a piece the sheet has. */
  const linesOf = async (piece: string): Promise<number> => {
    const { [piece]: lines } = await readNames(page, KEPT, [piece]);
    return lines.flat().filter((value) => value !== "").length;
  };

  const reload = async (): Promise<void> => {
    await page.evaluate(() => {
      const { contentWindow } = document.querySelector("#pane");
      contentWindow.isOld = true;
      contentWindow.location.reload();
    });
    // The old pane stands until the new one begins to load.
    await page.waitForFunction(() => document.querySelector("#pane").contentWindow.isOld !== true);
    await pane().getByRole("tab", { name: "Data sheet" }).waitFor();
  };

  test("in the middle of an import: the data sheet has no reading, and the pane says that the import has not ended", async () => {
    // The tenth piece of lines waits until the test lets it go on.
    await page.evaluate((kept) => {
      const { port } = window.clayledger;
      const fill = port.fillNames.bind(port);
      let pieces = 0;
      port.fillNames = async (sheet: string, ...rest: unknown[]) => {
        if (sheet === kept && ++pieces === 10)
          await new Promise<void>((resolve) => {
            window.goOn = resolve;
            window.isHeld = true;
          });
        return fill(sheet, ...rest);
      };
    }, KEPT);
    await pane().getByRole("tab", { name: "Readings" }).click();
    await pane().locator("input[type=file]").setInputFiles(FILE);
    await pane().getByRole("button", { name: "Use these columns" }).click();
    await pane()
      .getByRole("button", { name: /^Write 1 load to/ })
      .click();
    await pane().getByRole("button", { name: "Stop" }).waitFor();
    await page.waitForFunction(() => window.isHeld);
    await clickCell(page, "A1");
    const before = await linesOf("logger_lines_009");
    expect(before).toBeGreaterThan(0);
    await page.keyboard.press("Control+z");
    await page
      .locator("#message", {
        hasText: `Not done: the pane is writing to “${SHEET}”. Wait until it has ended, or stop it`,
      })
      .waitFor();
    expect(await linesOf("logger_lines_009")).toBe(before);
    await reload();
    await pane().getByText(`Importing readings into “${SHEET}” began on`).waitFor();
    expect(await pane().getByRole("status").filter({ hasText: "Not finished" }).textContent()).toContain(
      "import the file again",
    );
    const { readings_01 } = await readNames(page, SHEET, ["readings_01"]);
    expect(readings_01.flat().every((value) => value === "")).toBe(true);
    const { logger_kept } = await readNames(page, KEPT, ["logger_kept"]);
    expect(logger_kept).toEqual([["not finished: the lines below are not all of them"]]);
  });

  test("no more lines come after the reload", async () => {
    await page.evaluate(() => window.goOn());
    // The workbook still takes the piece that it was given.
    await eventually(async () => (await linesOf("logger_lines_010")) > 0);
    await settled(paneFrame(page));
    expect(await linesOf("logger_lines_011")).toBe(0);
    expect(await linesOf("logger_lines_072")).toBe(0);
  });

  test("nobody goes on with the writing: undo takes the last piece back, and redo brings it again", async () => {
    const lines = await linesOf("logger_lines_010");
    await clickCell(page, "A1");
    await page.keyboard.press("Control+z");
    await eventually(async () => (await linesOf("logger_lines_010")) === 0);
    await page.keyboard.press("Control+y");
    await eventually(async () => (await linesOf("logger_lines_010")) === lines);
  });

  test("the next pane says it again until a person takes it out", async () => {
    await reload();
    await pane().getByText("Importing readings into").waitFor();
    await pane().getByRole("button", { name: "Done", exact: true }).click();
    await reload();
    await pane().getByRole("group", { name: "Current test" }).getByRole("combobox").waitFor();
    expect(await pane().getByText("Importing readings into").count()).toBe(0);
    expect(await sheetNames(page)).toContain(KEPT);
  });

  test("the workbook tells only the pane that is there of changes", async () => {
    await page.evaluate(() => {
      const { port } = window.clayledger;
      const follow = port.onChange.bind(port);
      window.listeners = 0;
      port.onChange = async (listener: unknown) => {
        window.listeners++;
        const leave = await follow(listener);
        return () => {
          window.listeners--;
          leave();
        };
      };
    });
    const listeners = async (): Promise<number> => {
      await reload();
      await pane().getByRole("group", { name: "Current test" }).getByRole("combobox").waitFor();
      await settled(paneFrame(page));
      return page.evaluate(() => window.listeners);
    };
    const first = await listeners();
    expect(first).toBeGreaterThan(0);
    for (let time = 0; time < 3; time++) expect(await listeners()).toBe(first);
    expect(complaints).toEqual([]);
  });
});
