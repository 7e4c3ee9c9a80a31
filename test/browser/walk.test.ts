/**
 * Every screen in every look, language and width: nothing wrong for people who cannot see or point, or have little
 * room.
 */
import type { Frame, FrameLocator, Page } from "playwright-core";
import {
  paneFrame,
  paneViolations,
  paneWidths,
  setPaneWidth,
  takePicture,
  withBrowser,
  type HostPage,
  type Preferences,
} from "./page";

/** The least width that a pane of Excel can have, and a wide one. */
const WIDTHS = [320, 480];
/** Height in px of three lines of tabs; the row of the current test is below them. */
const MOST_TABS = 72;
const MOST_HEADER = 120;
/** Fields between the tabs and the screen. */
const MOST_IN_HEAD = 2;

const LOOKS: Readonly<Record<string, Preferences>> = {
  light: { colorScheme: "light", locale: "en-GB" },
  dark: { colorScheme: "dark", locale: "de-DE" },
  "high contrast": { forcedColors: "active", locale: "en-GB" },
};

/** Waits until a screen has read what it shows. */
async function settled(frame: Frame): Promise<void> {
  await frame.page().waitForTimeout(700);
  await frame.waitForFunction(
    () => (globalThis as any).document.querySelectorAll("[role=tabpanel] [role=progressbar]").length === 0,
  );
}

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

withBrowser("a walk over every screen", (openPage) => {
  describe.each(Object.entries(LOOKS))("%s", (look, preferences) => {
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

  test("without a data sheet every screen that needs one says so, and what to do", async () => {
    const { page, complaints } = await openPage("", { locale: "en-GB", reducedMotion: "reduce" });
    await page.evaluate(() => {
      const { model } = (globalThis as any).clayledger.port.workbook;
      const sheet = model.getters
        .getSheetIds()
        .find((id: string) => model.getters.getSheetName(id) === "Demonstration");
      model.dispatch("DELETE_SHEET", { sheetId: sheet, sheetName: "Demonstration" });
    });
    await setPaneWidth(page, 320);
    const frame = paneFrame(page);
    const wrong: string[] = [];
    for (const tab of ["What next", "Plots", "Review", "Results", "Checks", "By hand", "Report", "Summary"]) {
      await frame.getByRole("tab", { name: tab }).click();
      await settled(frame);
      await takePicture(page, `walk-empty-${tab}`.replaceAll(" ", "-"));
      const said = await frame.getByRole("tabpanel").innerText();
      if (!/insert|select|put one in/i.test(said)) wrong.push(`${tab}: ${said}`);
      wrong.push(...(await paneViolations(page)).map((violation) => `${tab}: ${violation}`));
      const { shown, content } = await paneWidths(page);
      if (content > shown) wrong.push(`${tab}: ${content} px wide`);
    }
    expect(wrong).toEqual([]);
    expect(complaints).toEqual([]);
  });

  describe("by keyboard", () => {
    let host: HostPage;
    let page: Page;
    let frame: Frame;
    let pane: FrameLocator;

    beforeAll(async () => {
      host = await openPage("", { locale: "en-GB", reducedMotion: "reduce" });
      page = host.page;
      frame = paneFrame(page);
      pane = page.frameLocator("#pane");
      await setPaneWidth(page, 320);
    });

    /** Numbers the elements that the Tab key must reach, in the order of the page, and returns their names. */
    const stopsOf = (): Promise<string[]> =>
      frame.evaluate(() => {
        const { document } = globalThis as any;
        const panel = document.querySelector("[role=tabpanel]");
        const groups = new Set<string>();
        const isStop = (element: any): boolean => {
          if (element.tabIndex < 0 || element.disabled || !element.checkVisibility({ visibilityProperty: true }))
            return false;
          if (element.type !== "radio") return true;
          // A group of radio buttons is one stop: the one chosen, or the first.
          const group = [...panel.querySelectorAll(`input[type=radio][name="${CSS_escape(element.name)}"]`)];
          if (groups.has(element.name) || (group.some((one: any) => one.checked) && !element.checked)) return false;
          groups.add(element.name);
          return true;
        };
        const CSS_escape = (name: string): string => (globalThis as any).CSS.escape(name);
        return [...panel.querySelectorAll("a[href], button, input, select, textarea, summary, [tabindex]")]
          .filter(isStop)
          .map((element: any, index) => {
            element.dataset.stop = String(index);
            const name = element.getAttribute("aria-label") ?? element.labels?.[0]?.textContent ?? element.textContent;
            return `${element.tagName} ${String(name).slice(0, 40)}`;
          });
      });

    /**
     * The stop that the Tab key has reached; undefined once it has left the screen. -1 is an element that only scrolls.
     */
    const here = (): Promise<number | undefined> =>
      frame.evaluate(() => {
        const { document } = globalThis as any;
        const { activeElement } = document;
        if (!activeElement?.closest("[role=tabpanel]") || activeElement.getAttribute("role") === "tabpanel")
          return undefined;
        return activeElement.dataset.stop === undefined ? -1 : Number(activeElement.dataset.stop);
      });

    /** Whether the element with the focus looks different than without it: itself, its parents, or its children. */
    const showsFocus = (): Promise<boolean> =>
      frame.evaluate(() => {
        const { document, getComputedStyle } = globalThis as any;
        const element = document.activeElement;
        const around = [element, element.parentElement, element.parentElement.parentElement];
        const looked = [...around, ...element.querySelectorAll("*"), ...(element.parentElement?.children ?? [])];
        const look = (): string =>
          looked
            .flatMap((one: any) => [undefined, "::before", "::after"].map((part) => getComputedStyle(one, part)))
            .map((style: any) =>
              [
                style.outlineStyle,
                style.outlineWidth,
                style.outlineColor,
                style.boxShadow,
                style.border,
                style.backgroundColor,
                style.textDecoration,
                style.transform,
                style.stroke,
                style.strokeWidth,
              ].join(" "),
            )
            .join("\n");
        const focused = look();
        element.blur();
        const blurred = look();
        element.focus();
        return focused !== blurred;
      });

    test("Tab reaches every field of every screen in its order, shows where it is, and leaves at the end", async () => {
      const wrong: string[] = [];
      const tabs = await pane.getByRole("tab").allTextContents();
      for (const [index, tab] of tabs.entries()) {
        await pane.getByRole("tab").nth(index).click();
        await settled(frame);
        const stops = await stopsOf();
        await pane.getByRole("tab").nth(index).focus();
        const come: number[] = [];
        let inHead = 0;
        for (let press = 0; press < 2 * stops.length + 20; press++) {
          await page.keyboard.press("Tab");
          const at = await here();
          // Before the screen come the current test and its pin.
          if (at === undefined && (come.length > 0 || ++inHead > MOST_IN_HEAD)) break;
          if (at === undefined) {
            if (!(await showsFocus())) wrong.push(`${tab}: the head does not show its focus`);
            continue;
          }
          // A date field has stops of its own inside: day, month, year.
          if (at === come[come.length - 1]) continue;
          if (at >= 0 && !(await showsFocus())) wrong.push(`${tab}: ${stops[at]} does not show its focus`);
          if (at >= 0) come.push(at);
        }
        if ((await here()) !== undefined) wrong.push(`${tab}: Tab does not leave the screen`);
        const missed = stops.filter((_, stop) => !come.includes(stop));
        if (missed.length > 0) wrong.push(`${tab}: Tab does not come to ${missed.join("; ")}`);
        if (come.some((stop, order) => order > 0 && stop <= come[order - 1]))
          wrong.push(`${tab}: the order is ${come.map((stop) => stops[stop]).join(", ")}`);
        expect([tab, stops.length]).not.toEqual([tab, 0]);
      }
      expect(wrong).toEqual([]);
    });

    test("arrows go from tab to tab and around, Home and End to the ends", async () => {
      const chosen = () => frame.locator("[role=tab][aria-selected=true]").textContent();
      await pane.getByRole("tab").first().focus();
      await page.keyboard.press("End");
      expect(await chosen()).toBe("Clayledger: About");
      await page.keyboard.press("ArrowRight");
      expect(await chosen()).toBe("What next");
      await page.keyboard.press("ArrowLeft");
      expect(await chosen()).toBe("Clayledger: About");
      await page.keyboard.press("Home");
      expect(await chosen()).toBe("What next");
    });

    test("the look follows the system's preference while the pane is open", async () => {
      const ground = () =>
        frame.evaluate(() => {
          const { document, getComputedStyle } = globalThis as any;
          return getComputedStyle(document.querySelector("#pane > *")).backgroundColor;
        });
      const light = await ground();
      await page.emulateMedia({ colorScheme: "dark" });
      await frame.waitForFunction((before) => {
        const { document, getComputedStyle } = globalThis as any;
        return getComputedStyle(document.querySelector("#pane > *")).backgroundColor !== before;
      }, light);
      await page.emulateMedia({ colorScheme: "light" });
      await frame.waitForFunction((before) => {
        const { document, getComputedStyle } = globalThis as any;
        return getComputedStyle(document.querySelector("#pane > *")).backgroundColor === before;
      }, light);
    });
  });
});
