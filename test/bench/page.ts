/** The page of `npm start` in Chromium, for measurements. */
import { existsSync } from "node:fs";
import path from "node:path";
import { chromium, type Page } from "playwright-core";
import type { WorkbookPort } from "../../src/workbook/port";
import { provideChromium } from "../browser/setup";

/** The access of the product to its workbook, as `clayledger` of the page. */
export interface OnPage {
  readonly port: WorkbookPort & {
    readonly workbook: { readonly model: { dispatch(command: string): unknown } };
  };
  readonly save: () => Promise<Uint8Array>;
  readonly open: (bytes: Uint8Array, name: string) => Promise<void>;
}

const PATIENCE = 300_000;

/** Opens the page and does the work on it; does nothing where there is no dist, or no Chromium. */
export async function onPage(work: (page: Page) => Promise<void>): Promise<void> {
  if (existsSync(path.join(__dirname, "../../dist/index.html"))) await provideChromium();
  const { CLAYLEDGER_CHROMIUM: executablePath, CLAYLEDGER_PAGE: address } = process.env;
  if (!executablePath || !address) return;
  const browser = await chromium.launch({ executablePath, args: ["--no-sandbox", "--disable-gpu"] });
  const page = await browser.newPage({ viewport: { width: 1440, height: 900 } });
  page.setDefaultTimeout(PATIENCE);
  await page.goto(address);
  await page.waitForFunction("'clayledger' in globalThis");
  await work(page);
  await browser.close();
}
