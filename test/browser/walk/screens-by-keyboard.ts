/** Every screen by keyboard. */
import type { Frame, FrameLocator, Page } from "playwright-core";
import { paneFrame, setPaneWidth, settled, type HostPage } from "../page";

/** Fields between the tabs and the screen. */
const MOST_IN_HEAD = 2;

/** Tests on a page with the demonstration in English, which stays as it is. */
export const byKeyboard = (host: () => HostPage): void =>
  describe("every screen, by keyboard", () => {
    let page: Page;
    let frame: Frame;
    let pane: FrameLocator;

    beforeAll(async () => {
      ({ page } = host());
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
