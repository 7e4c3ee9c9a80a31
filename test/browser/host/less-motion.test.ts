/** A value that follows a changed cell fades in, but not for somebody who asks the system for less motion. */
import type { Page } from "playwright-core";
import { eventually, fillNames, withBrowser } from "../page";

const SHEET = "Demonstration";

/** Changes the name of the project, and returns the names that the page draws in the head of the sheet until the new one stands alone. */
async function drawnWhile(page: Page, before: string, after: string): Promise<string[]> {
  const drawn = (): Promise<string[]> => page.evaluate(() => (globalThis as any).drawn);
  await fillNames(page, SHEET, { project: [before] });
  await eventually(async () => (await drawn()).at(-1) === before);
  await page.evaluate(() => ((globalThis as any).drawn = []));
  await fillNames(page, SHEET, { project: [after] });
  await eventually(async () => (await drawn()).at(-1) === after);
  return drawn();
}

withBrowser("a value that follows a changed cell", (openPage) => {
  test("fades in where the person has not asked for less motion, and is there at once where they have", async () => {
    const { page, complaints } = await openPage("", { reducedMotion: "reduce" });
    await page.evaluate(() => {
      const view = globalThis as any;
      const { prototype } = view.CanvasRenderingContext2D;
      const { fillText } = prototype;
      view.drawn = [];
      prototype.fillText = function (text: string, ...place: number[]) {
        // The typed cell has the name alone, and does not fade.
        const [, name] = /^.+(\w{4} harbour)|(\w{4} harbour).+$/.exec(text)?.filter(Boolean) ?? [];
        if (name) view.drawn.push(name);
        return fillText.call(this, text, ...place);
      };
    });
    expect(await drawnWhile(page, "East harbour", "West harbour")).not.toContain("East harbour");
    await page.emulateMedia({ reducedMotion: "no-preference" });
    expect(await drawnWhile(page, "Near harbour", "Long harbour")).toContain("Near harbour");
    expect(complaints).toEqual([]);
  });
});
