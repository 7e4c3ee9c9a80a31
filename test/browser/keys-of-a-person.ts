/** A person who works with the keys alone: what is pressed and typed on the page, and where the focus is. */
import type { Page } from "playwright-core";
import { paneFrame, settled } from "./page";

/** As many presses of a key as somebody makes before giving up. */
const MOST_PRESSES = 150;

/** Where a name of the data sheet is found, row and column from 0. */
interface Place {
  readonly row: number;
  readonly col: number;
}

export function keyboard(page: Page) {
  const press = (key: string): Promise<void> => page.keyboard.press(key);
  /** Holds a key down, which presses it `count` times: the page draws once for several, in a fifth of the time. */
  const hold = async (key: string, count: number): Promise<void> => {
    await Promise.all(Array.from({ length: count }, () => page.keyboard.down(key)));
    await page.keyboard.up(key);
  };
  const isInPane = () => page.evaluate(() => (globalThis as any).document.activeElement.id === "pane");

  /** What has the focus in the pane: its role, and the name that a screen reader reads. */
  const focused = () =>
    paneFrame(page).evaluate(() => {
      const one = (globalThis as any).document.activeElement;
      const label = one.getAttribute("aria-label") ?? one.labels?.[0]?.textContent ?? one.textContent;
      return { role: one.getAttribute("role") ?? one.tagName.toLowerCase(), name: String(label).trim() };
    });

  const toPane = async (): Promise<void> => {
    if (!(await isInPane())) await press("F6");
  };
  const toSheet = async (): Promise<void> => {
    if (await isInPane()) await press("F6");
  };

  /** Presses the Tab key until the control with this name has the focus. */
  async function tabTo(name: string | RegExp, key: "Tab" | "Shift+Tab" = "Tab"): Promise<void> {
    await toPane();
    for (let count = 0; count < MOST_PRESSES; count++) {
      const found = await focused();
      if (found.role !== "tab" && (typeof name === "string" ? found.name.startsWith(name) : name.test(found.name)))
        return;
      await press(key);
    }
    throw new Error(`the Tab key does not reach ${String(name)}`);
  }

  /** Goes to the tabs of the pane, and with the arrow keys to a screen. */
  async function screen(name: string): Promise<void> {
    await toPane();
    for (let count = 0; (await focused()).role !== "tab"; count++) {
      if (count > MOST_PRESSES) throw new Error("Shift+Tab does not reach the tabs");
      await press("Shift+Tab");
    }
    for (let count = 0; (await focused()).name !== name; count++) {
      if (count > 20) throw new Error(`the arrow keys do not reach the tab ${name}`);
      await press("ArrowRight");
    }
    await settled(paneFrame(page));
  }

  const at = (): Promise<Place & { readonly sheet: string }> =>
    page.evaluate(() => {
      const { getters } = (globalThis as any).clayledger.port.workbook.model;
      const { row, col, sheetId } = getters.getActivePosition();
      return { row, col, sheet: getters.getSheetName(sheetId) };
    });

  /**
   * Goes with the arrow keys to a cell of the sheet in front: up or down with the key held, then looks where the cursor is, and
   * goes back if it went too far, because a merged cell is passed with one press.
   */
  async function goTo(wanted: Place): Promise<void> {
    await toSheet();
    for (let attempt = 0; attempt < 100; attempt++) {
      const { row, col } = await at();
      const [down, right] = [wanted.row - row, wanted.col - col];
      if (down === 0 && right === 0) return;
      const key = down > 0 ? "ArrowDown" : down < 0 ? "ArrowUp" : right > 0 ? "ArrowRight" : "ArrowLeft";
      await hold(key, Math.max(1, Math.abs(down)));
    }
    throw new Error(`the arrow keys do not reach row ${wanted.row + 1}, column ${wanted.col + 1}`);
  }

  /** Goes with Shift+F6 to the header of the page, on to a field, and presses the first letter of the wanted choice. */
  async function chooseInHeader(id: string, choice: string): Promise<void> {
    await press("Shift+F6");
    const focus = () => page.evaluate(() => (globalThis as any).document.activeElement.id);
    for (let count = 0; (await focus()) !== id; count++) {
      if (count > 10) throw new Error(`the Tab key does not reach the field “${id}” of the header`);
      await press("Tab");
    }
    await press(choice.slice(0, 1));
  }

  /** Reaches a group of radio buttons, and goes with the arrow key to the wanted one. */
  async function pick(wanted: string, other: string): Promise<void> {
    const isOne = ({ name }: { readonly name: string }) => name.startsWith(wanted) || name.startsWith(other);
    await toPane();
    for (let count = 0; !isOne(await focused()); count++) {
      if (count > MOST_PRESSES) throw new Error(`the Tab key does not reach ${wanted}`);
      await press("Tab");
    }
    if (!(await focused()).name.startsWith(wanted)) await press("ArrowDown");
  }

  return {
    press,
    screen,
    tabTo,
    goTo,
    chooseInHeader,
    pick,
    at,
    toSheet,
    /** Reaches a control, and presses Enter. */
    async push(name: string | RegExp): Promise<void> {
      await tabTo(name);
      await press("Enter");
    },
    /** Reaches a field, and types over what it holds. */
    async fill(name: string | RegExp, text: string): Promise<void> {
      await tabTo(name);
      await press("Control+a");
      await page.keyboard.insertText(text);
    },
    /** Types into a cell, and presses Enter. */
    async type(text: string): Promise<void> {
      await page.keyboard.type(text);
      await press("Enter");
    },
    /** Waits until the pane says this, as a status or an alert. */
    told: (text: string | RegExp): Promise<void> =>
      page
        .frameLocator("#pane")
        .getByRole("status")
        .or(page.frameLocator("#pane").getByRole("alert"))
        .filter({ hasText: text })
        .first()
        .waitFor(),
  };
}
