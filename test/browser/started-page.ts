/**
 * A page of `npm start` that has started. A page that is given back starts again for the next who asks for a page with the same
 * preferences: its Chromium has the code compiled already, which takes a third of a start.
 */
import type { Browser, BrowserContext, BrowserContextOptions, Page } from "playwright-core";
import { slowDown } from "./slow-page";

/** How long a test waits for one thing to come, ms: long enough for a machine that is slow, or busy with other work. */
export const PATIENCE = 120_000;
const WINDOW = { width: 1440, height: 900 };

/**
 * A page that has started, with all its complaints: console errors, exceptions, requests that failed or went elsewhere,
 * and refusals by a content security policy. `requests` are the addresses that the page, its frame and pages opened
 * from it loaded.
 */
export interface HostPage {
  readonly page: Page;
  readonly complaints: string[];
  readonly requests: string[];
}

/** Preferences of the system. */
export type Preferences = Pick<BrowserContextOptions, "colorScheme" | "forcedColors" | "locale" | "reducedMotion">;

/** A context with its page, and who hears what its pages report. */
interface Place {
  readonly page: Page;
  readonly preferences: Preferences;
  hear: (complaint: string) => void;
}

/** Places that are in use. */
const taken = new WeakMap<Page, Place>();
/** Places that were given back, by the browser that they are in. */
const free = new WeakMap<Browser, Place[]>();

/** Reports every refusal by a content security policy in any page or frame of a context. */
export async function watchPolicy(context: BrowserContext, refused: (violation: string) => void): Promise<void> {
  await context.exposeBinding("clayledgerRefused", (_, violation: string) => refused(violation));
  await context.addInitScript(() => {
    const page = globalThis as any;
    page.addEventListener("securitypolicyviolation", (event: any) =>
      page.clayledgerRefused(`${page.location.pathname}: ${event.effectiveDirective} refused ${event.blockedURI}`),
    );
  });
}

/** Reports every promise that nobody caught, in any page or frame of a context. */
async function watchRejections(context: BrowserContext, rejected: (reason: string) => void): Promise<void> {
  await context.exposeBinding("clayledgerRejected", (_, reason: string) => rejected(reason));
  await context.addInitScript(() => {
    const page = globalThis as any;
    page.addEventListener("unhandledrejection", (event: any) =>
      page.clayledgerRejected(`${page.location.pathname}: ${String(event.reason?.stack ?? event.reason)}`),
    );
  });
}

/** A new context with a blank page. */
async function newPlace(browser: Browser, preferences: Preferences): Promise<Place> {
  const context = await browser.newContext({ viewport: WINDOW, acceptDownloads: true, ...preferences });
  // Also for the pages that are opened from this one.
  context.setDefaultTimeout(PATIENCE);
  const page = await context.newPage();
  await slowDown(context, page);
  const place: Place = { page, preferences, hear: () => undefined };
  await watchPolicy(context, (violation) => place.hear(`policy of ${violation}`));
  await watchRejections(context, (reason) => place.hear(`rejection in ${reason}`));
  return place;
}

/** Takes a place with these preferences that was given back, or makes a new one. */
async function takePlace(browser: Browser, preferences: Preferences): Promise<Place> {
  const all = free.get(browser) ?? [];
  const at = all.findIndex((one) => JSON.stringify(one.preferences) === JSON.stringify(preferences));
  const place = (at < 0 ? undefined : all.splice(at, 1)[0]) ?? (await newPlace(browser, preferences));
  taken.set(place.page, place);
  return place;
}

/** Hears what a place reports, as one page of `npm start`. */
async function hear(place: Place, address: string): Promise<HostPage> {
  const { page } = place;
  const context = page.context();
  const complaints: string[] = [];
  const requests: string[] = [];
  place.hear = (complaint) => complaints.push(complaint);
  context.on("request", (request) => requests.push(request.url()));
  page.on("console", (message) => {
    if (message.type() === "error") complaints.push(`console: ${message.text()}`);
  });
  page.on("pageerror", (error) => complaints.push(`exception: ${error.stack ?? error.message}`));
  page.on("requestfailed", (request) => complaints.push(`request failed: ${request.url()}`));
  await context.route(
    (url) => !url.href.startsWith(address) && !/^(?:data|blob):/.test(url.href),
    (route) => {
      complaints.push(`request to elsewhere: ${route.request().url()}`);
      return route.abort();
    },
  );
  return { page, complaints, requests };
}

export async function startPage(browser: Browser, query: string, preferences: Preferences): Promise<HostPage> {
  const address = process.env.CLAYLEDGER_PAGE!;
  const host = await hear(await takePlace(browser, preferences), address);
  const { page } = host;
  await page.goto(address + query);
  await page.waitForFunction(() => "clayledger" in globalThis);
  await page.frameLocator("#pane").locator("#pane *").first().waitFor();
  return host;
}

/** What a test file may have asked a page or its context to report. */
const OF_PAGE = ["console", "pageerror", "requestfailed", "dialog", "download", "filechooser", "popup"] as const;

/**
 * Gives a page back as a new one: nobody hears it, other pages of its context are closed, nothing is stored, and window, look and
 * pointer are those of the start. If the page is closed, its context is closed too; if it was given back before, nothing happens.
 */
export async function giveBack({ page }: HostPage): Promise<void> {
  const place = taken.get(page);
  const context = page.context();
  const browser = context.browser();
  if (!place || !browser) return;
  taken.delete(page);
  if (page.isClosed()) return context.close();
  for (const event of OF_PAGE) page.removeAllListeners(event);
  context.removeAllListeners("request");
  await context.unrouteAll();
  for (const other of context.pages()) if (other !== page) await other.close();
  // A page of the same origin without code, so that nothing is stored again after it was cleared.
  await page.goto(`${process.env.CLAYLEDGER_PAGE!}licences.txt`);
  await page.evaluate(() => {
    const { indexedDB, localStorage, sessionStorage } = globalThis as any;
    localStorage.clear();
    sessionStorage.clear();
    return new Promise((resolve) => {
      const deleting = indexedDB.deleteDatabase("clayledger");
      deleting.onsuccess = deleting.onerror = deleting.onblocked = resolve;
    }).then(() => undefined);
  });
  await context.clearCookies();
  const { colorScheme = "light", forcedColors = "none", reducedMotion = "no-preference" } = place.preferences;
  await page.emulateMedia({ media: null, colorScheme, forcedColors, reducedMotion });
  await page.setViewportSize(WINDOW);
  await page.mouse.move(0, 0);
  free.set(browser, [...(free.get(browser) ?? []), place]);
}
