/**
 * Every screen in one look and language, in two widths: nothing wrong for people who cannot see or point, or have little
 * room.
 */
import type { Frame, FrameLocator, Page } from "playwright-core";
import {
  paneFrame,
  paneViolations,
  paneWidths,
  setPaneWidth,
  settled,
  takePicture,
  withBrowser,
  type HostPage,
  type Preferences,
} from "../page";

/** The least width that a pane of Excel can have, and a wide one. */
const WIDTHS = [320, 480];
/** Height in px of three lines of tabs; the row of the current test is below them. */
const MOST_TABS = 72;
const MOST_HEADER = 120;
/** Tabs whose name is cut off. */
const clippedTabs = (frame: Frame): Promise<string[]> =>
  frame.evaluate(() =>
    [...(globalThis as any).document.querySelectorAll("[role=tab]")]
      .filter((tab: any) => tab.scrollWidth > tab.clientWidth)
      .map((tab: any) => tab.textContent),
  );

/** Texts with a colour that is none of those forced by the system. */
const ownColours = (frame: Frame): Promise<string[]> =>
  frame.evaluate(() => {
    const { document, getComputedStyle } = globalThis as any;
    const probe = document.body.appendChild(document.createElement("span"));
    const system = new Set(
      ["CanvasText", "LinkText", "ButtonText", "GrayText", "HighlightText", "SelectedItemText", "FieldText"].map(
        (name) => {
          probe.style.color = name;
          return getComputedStyle(probe).color;
        },
      ),
    );
    probe.remove();
    return [...document.querySelectorAll("#pane *")]
      .filter((element: any) => [...element.childNodes].some((node: any) => node.nodeType === 3 && node.data.trim()))
      .filter((element: any) => !system.has(getComputedStyle(element).color))
      .map((element: any) => `${element.textContent.slice(0, 30)} is ${getComputedStyle(element).color}`);
  });

export const walk = (look: string, preferences: Preferences): void =>
  withBrowser(`a walk over every screen, ${look}`, (openPage) => {
    let host: HostPage;
    let page: Page;
    let frame: Frame;
    let pane: FrameLocator;
    let tabs: string[];

    beforeAll(async () => {
      // Without transitions of colours: the look of an element is read once.
      host = await openPage("", { ...preferences, reducedMotion: "reduce" });
      page = host.page;
      frame = paneFrame(page);
      pane = page.frameLocator("#pane");
      tabs = await pane.getByRole("tab").allTextContents();
    });
    afterAll(() => host.page.context().close());

    const show = async (index: number): Promise<void> => {
      await pane.getByRole("tab").nth(index).click();
      await settled(frame);
    };

    test("there are twelve screens, in the person's language", async () => {
      expect(tabs).toHaveLength(12);
      const lang = await frame.evaluate(() => (globalThis as any).document.documentElement.lang);
      expect(preferences.locale).toMatch(new RegExp(`^${lang}`));
    });

    test.each(WIDTHS)(
      "axe finds nothing and nothing is cut off in %i px; the tabs stand in three lines",
      async (width) => {
        await setPaneWidth(page, width);
        const wrong: string[] = [];
        for (const [index, tab] of tabs.entries()) {
          await show(index);
          await takePicture(page, `walk ${look} ${width} ${index + 1} ${tab}`.replace(/[: ]+/g, "-"));
          wrong.push(...(await paneViolations(page, preferences)).map((violation) => `${tab}: ${violation}`));
          if (preferences.forcedColors) wrong.push(...(await ownColours(frame)).map((colour) => `${tab}: ${colour}`));
          const { shown, content } = await paneWidths(page);
          expect(shown).toBe(width);
          if (content > shown) wrong.push(`${tab}: ${content} px wide`);
          const heightOf = (what: string) => frame.locator(what).evaluate((element) => element.clientHeight);
          const [list, header] = [await heightOf("[role=tablist]"), await heightOf("header")];
          if (list > MOST_TABS) wrong.push(`${tab}: the tabs are ${list} px high`);
          if (header > MOST_HEADER) wrong.push(`${tab}: the header is ${header} px high`);
          wrong.push(...(await clippedTabs(frame)).map((clipped) => `${clipped} is wider than its tab`));
        }
        expect(wrong).toEqual([]);
      },
    );

    test("the page reports no error and sends no request elsewhere", () => expect(host.complaints).toEqual([]));
  });
