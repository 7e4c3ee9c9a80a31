/** The page of `npm start` in a real browser, and the actions of a person on it. */
import { mkdirSync, mkdtempSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import {
  chromium,
  type Browser,
  type BrowserContext,
  type CDPSession,
  type Download,
  type Frame,
  type Page,
} from "playwright-core";
import type { EmbeddedPort } from "../../src/workbook/embedded/port";
import type { NamedColumns, Selection } from "../../src/workbook/port";
import { violations } from "./axe";
import { giveBack, PATIENCE, startPage, type HostPage, type Preferences } from "./started-page";

export { violations } from "./axe";
export { giveBack, watchPolicy, type HostPage } from "./started-page";

const ARTIFACTS = path.join(__dirname, "../../artifacts");

interface HostWindow {
  readonly clayledger: {
    readonly port: EmbeddedPort;
    readonly open: (bytes: Uint8Array, name: string) => Promise<void>;
    readonly save: () => Promise<Uint8Array>;
  };
}
declare const window: HostWindow;

/**
 * The person of a test asks the system for less motion, unless the test says otherwise, so that pages can be given back to each other and
 * nothing is looked at while it fades. The whole walk, the page of npm start and the keys after an undo are tried with motion.
 */
const WITHOUT_MOTION: Preferences = { reducedMotion: "reduce" };

type OpenPage = (query?: string, preferences?: Preferences) => Promise<HostPage>;

/** The browser of the run, which test/browser/setup.ts started. */
export const sharedBrowser = (endpoint = process.env.CLAYLEDGER_BROWSER!): Promise<Browser> =>
  chromium.connect(endpoint, { timeout: PATIENCE }).catch((error: unknown) => {
    throw new Error(
      `The browser that all files of this run share has ended, by a crash or by a signal: run the tests again. The first ` +
        `file that failed was open when it ended. ${String(error)}`,
    );
  });

let isShared = false;
let shared: Browser | undefined;

/** Lets the test files that follow in this file use one connection to the browser, and pages that were given back. */
export function sharePages(): void {
  isShared = true;
  afterAll(() => shared?.close());
}

/** Tests with a browser. If there is none they fail with the reason, or are skipped if that was asked for. */
export function withBrowser(
  title: string,
  body: (openPage: OpenPage, newContext: () => Promise<BrowserContext>) => void,
): void {
  const missing = process.env.CLAYLEDGER_BROWSER_MISSING;
  if (missing?.startsWith("CLAYLEDGER_NO_BROWSER")) {
    const none = () => Promise.reject(new Error(missing));
    describe.skip(title, () => body(none, none));
    return;
  }
  describe(title, () => {
    let browser: Browser | undefined;
    const opened: HostPage[] = [];
    beforeAll(async () => {
      if (missing) throw new Error(missing);
      browser = shared ?? (await sharedBrowser());
      if (isShared) shared = browser;
      mkdirSync(ARTIFACTS, { recursive: true });
    });
    afterAll(async () => {
      if (isShared) for (const one of opened) await giveBack(one);
      // Closes the contexts of this file; the browser itself goes on.
      else await browser?.close();
    });
    const noBrowser = () => Promise.reject(new Error(missing ?? "there is no browser: the first failure says why"));
    body(
      async (query = "", preferences = {}) => {
        const asked = { ...WITHOUT_MOTION, ...preferences };
        const host = await (browser ? startPage(browser, query, asked) : noBrowser());
        opened.push(host);
        return host;
      },
      async () => {
        const context = await (browser ? browser.newContext() : noBrowser());
        context.setDefaultTimeout(PATIENCE);
        return context;
      },
    );
  });
}

export const sheetNames = (page: Page): Promise<string[]> => page.evaluate(() => window.clayledger.port.sheetNames());

/** Waits until the pane says that a sheet was made, and returns the name of the sheet that was not there before. */
export async function sheetMade(page: Page, before: readonly string[], said: string): Promise<string> {
  await page.frameLocator("#pane").getByRole("status").filter({ hasText: said }).first().waitFor();
  const made = (await sheetNames(page)).find((name) => !before.includes(name));
  if (made === undefined) throw new Error(`the pane says “${said}”, and there is no new sheet`);
  return made;
}

export const valuesOf = (page: Page, sheet: string, address: string): Promise<Selection["values"]> =>
  page.evaluate(([sheet, address]) => window.clayledger.port.values(sheet, address), [sheet, address]);

export const readNames = (page: Page, sheet: string, names: string[]): Promise<Record<string, Selection["values"]>> =>
  page.evaluate(([sheet, names]) => window.clayledger.port.readNames(sheet, names), [sheet, names] as const);

/** Writes values into named cells and columns of a sheet. */
export const fillNames = (page: Page, sheet: string, values: NamedColumns): Promise<void> =>
  page.evaluate(([sheet, values]) => window.clayledger.port.fillNames(sheet, values), [sheet, values] as const);

/** Shows a sheet, like a click on its tab. */
export async function showSheet(page: Page, sheet: string): Promise<void> {
  await page.locator(".o-sheet", { hasText: new RegExp(`^\\s*${sheet}\\s*$`) }).click();
}

interface Zone {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

const zoneOf = (address: string): Zone => {
  const [from, to = from] = address.split(":").map((xc) => {
    const [, letters, row] = /^([A-Z]+)(\d+)$/.exec(xc)!;
    return {
      col: [...letters].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0) - 1,
      row: Number(row) - 1,
    };
  });
  return { left: from.col, right: to.col, top: from.row, bottom: to.row };
};

/**
 * The middle of a cell of the shown sheet on the page. The cell is selected first, so that it is scrolled into view.
 */
export async function placeOf(page: Page, cell: string): Promise<{ x: number; y: number }> {
  const zone = zoneOf(cell);
  const rect = await page.evaluate(async ({ left, top }) => {
    const { model } = window.clayledger.port.workbook;
    model.selection.selectCell(left, top);
    // Until the page has drawn, the editor of the last entry still covers its cell, and would take a click.
    const { requestAnimationFrame } = globalThis as any;
    for (let frame = 0; frame < 2; frame++) await new Promise(requestAnimationFrame);
    return model.getters.getVisibleRect({ left, right: left, top, bottom: top });
  }, zone);
  const grid = (await page.locator(".o-grid").boundingBox())!;
  return {
    x: grid.x + rect.x + rect.width / 2,
    y: grid.y + rect.y + rect.height / 2,
  };
}

export async function clickCell(page: Page, cell: string): Promise<void> {
  const { x, y } = await placeOf(page, cell);
  await page.mouse.click(x, y);
}

/** Selects a range of the shown sheet ("B4:C18"), like dragging over it. */
export async function selectRange(page: Page, address: string): Promise<void> {
  await page.evaluate(({ left, right, top, bottom }) => {
    const { selection } = window.clayledger.port.workbook.model;
    selection.selectZone({ cell: { col: left, row: top }, zone: { left, right, top, bottom } });
  }, zoneOf(address));
}

/** Types into a cell by keyboard. */
export async function typeInCell(page: Page, cell: string, text: string, lastKey = "Enter"): Promise<void> {
  await clickCell(page, cell);
  await page.keyboard.type(text);
  if (lastKey) await page.keyboard.press(lastKey);
}

const sessions = new WeakMap<Page, Promise<CDPSession>>();

/**
 * Saves a picture of the page beside the test's other results. Chromium compresses it quickly, which takes half of the time of a
 * screenshot by Playwright for a file that is a fifth larger.
 */
export async function takePicture(page: Page, name: string): Promise<void> {
  const session = sessions.get(page) ?? page.context().newCDPSession(page);
  sessions.set(page, session);
  const { data } = await (await session).send("Page.captureScreenshot", { format: "png", optimizeForSpeed: true });
  writeFileSync(path.join(ARTIFACTS, `${name}.png`), data, "base64");
}

/** The file of a download, in a folder of its own. (The browser of the run belongs to another process.) */
export async function fileOf(download: Download): Promise<string> {
  const file = path.join(mkdtempSync(path.join(tmpdir(), "download-")), download.suggestedFilename());
  await download.saveAs(file);
  return file;
}

/** The document of the pane. */
export const paneFrame = (page: Page): Frame => page.frame({ url: /pane\.html/ })!;

/** Waits for an effect that follows a change after a moment; fails if it does not come. */
export async function eventually(comes: () => Promise<boolean>): Promise<void> {
  for (const end = Date.now() + PATIENCE; Date.now() < end; await new Promise((resolve) => setTimeout(resolve, 100)))
    if (await comes()) return;
  throw new Error(`in two minutes it did not come that ${comes}`);
}

/**
 * Presses Tab from the tabs on, past the current test and its pin, until the first field of the screen has the focus.
 */
export async function tabIntoScreen(page: Page): Promise<void> {
  const isIn = () =>
    paneFrame(page).evaluate(() => (globalThis as any).document.activeElement.closest("[role=tabpanel]") !== null);
  for (let press = 0; press < 5; press++) {
    await page.keyboard.press("Tab");
    if (await isIn()) return;
  }
  throw new Error("the Tab key does not come from the tabs to the screen");
}

/** The most choices of a list in the pane's own words; a longer one has the labels of the cells, of whatever length. */
const MOST_CHOICES = 12;

/** The lists of a document in which a choice is wider than the room for it: what is cut off, and both widths in px. */
export const cutChoices = (frame: Frame): Promise<string[]> =>
  frame.evaluate((most) => {
    const { document, getComputedStyle } = globalThis as any;
    const pen = document.createElement("canvas").getContext("2d");
    const isLooked = (list: any): boolean =>
      list.options.length <= most && list.checkVisibility({ visibilityProperty: true });
    return [...document.querySelectorAll("select")].filter(isLooked).flatMap((list: any) => {
      const { font, paddingLeft, paddingRight } = getComputedStyle(list);
      pen.font = font;
      const given = list.clientWidth - parseFloat(paddingLeft) - parseFloat(paddingRight);
      return [...list.options].flatMap(({ text }: any) => {
        const needed = Math.ceil(pen.measureText(text).width);
        return needed > given ? [`"${text}" needs ${needed} px and has ${given}`] : [];
      });
    });
  }, MOST_CHOICES);

/** Sets the width of the pane, px. */
export async function setPaneWidth(page: Page, width: number): Promise<void> {
  await page.locator(".desk").evaluate((desk, px) => desk.style.setProperty("--pane-width", `${px}px`), width);
}

/**
 * Waits until a screen has read what it shows: nothing is being read, nothing moves or fades, and the page stays the same
 * for a while.
 */
export const settled = (frame: Frame): Promise<void> =>
  frame.evaluate(async () => {
    const page = globalThis as any;
    const turn = () => new Promise((resolve) => page.setTimeout(resolve, 50));
    let changes = 0;
    const observer = new page.MutationObserver(() => changes++);
    observer.observe(page.document.body, { subtree: true, childList: true, attributes: true, characterData: true });
    const isReading = () => page.document.querySelector("[role=tabpanel] [role=progressbar]") !== null;
    // A sign of waiting turns for ever; what ends is waited for.
    const isMoving = () =>
      page.document
        .getAnimations()
        .some((one: any) => one.playState === "running" && one.effect.getComputedTiming().endTime !== Infinity);
    // Turns are counted, not time: while the page is busy no turn comes.
    for (let quiet = 0; quiet < 4; quiet++) {
      const before = changes;
      await turn();
      if (changes !== before || isReading() || isMoving()) quiet = -1;
    }
    observer.disconnect();
  });

/** The look that the system asks for. */
export type Look = Pick<Preferences, "colorScheme" | "forcedColors">;

export const LOOKS: Readonly<Record<"light" | "dark" | "high contrast", Look>> = {
  light: { colorScheme: "light" },
  dark: { colorScheme: "dark" },
  "high contrast": { forcedColors: "active" },
};

/** Changes the look of the system while the page is open. */
export const setLook = (page: Page, { colorScheme = "light", forcedColors = "none" }: Look): Promise<void> =>
  page.emulateMedia({ colorScheme, forcedColors });

/** Chooses the language on the last screen, as a person does, and waits until the pane has come again in it. */
export async function chooseLanguage(page: Page, language: "en" | "de"): Promise<void> {
  const pane = page.frameLocator("#pane");
  if ((await pane.locator("html").getAttribute("lang")) === language) return;
  await pane.locator("#tab-about").click();
  // Screens that were left stay in the page, hidden.
  const inFront = (what: string) => pane.locator(`[role=tabpanel] ${what}`).filter({ visible: true });
  await inFront("select").selectOption(language);
  await inFront("button").first().click();
  await pane.locator(`html[lang=${language}] [role=tab]`).first().waitFor();
  await page.locator(`html[lang=${language}]`).waitFor();
}

/** The width of the pane, and of its content, px. */
export const paneWidths = (page: Page): Promise<{ shown: number; content: number }> =>
  paneFrame(page).evaluate(() => ({
    shown: (globalThis as any).document.documentElement.clientWidth,
    content: (globalThis as any).document.documentElement.scrollWidth,
  }));

/** Waits until nothing fades: a colour between two colours has the contrast of neither. */
const noFading = (frame: Frame) =>
  frame.waitForFunction(() =>
    (globalThis as any).document
      .getAnimations()
      .every((one: any) => one.playState !== "running" || one.effect.getComputedTiming().endTime === Infinity),
  );

export async function paneViolations(page: Page, preferences: Preferences = {}): Promise<string[]> {
  const frame = paneFrame(page);
  await noFading(frame);
  return violations(frame, preferences);
}
