/** Runs after the real-browser tests: ends the browser that all files shared. */
import type { BrowserServer } from "playwright-core";

// Jest loads this module once for the setup and once more for the teardown.
const kept = globalThis as { clayledgerBrowser?: BrowserServer };

/** Keeps the browser that the teardown ends. */
export function endBrowserWith(browser: BrowserServer): void {
  kept.clayledgerBrowser = browser;
}

export default async function teardown(): Promise<void> {
  await kept.clayledgerBrowser?.close();
}
