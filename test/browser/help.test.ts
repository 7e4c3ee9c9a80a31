/** The help pages, opened from the pane, in every look and width, and printed. */
import type { Page } from "playwright-core";
import { paneFrame, takePicture, violations, withBrowser, type Preferences } from "./page";

const LOOKS: Readonly<Record<string, Preferences>> = {
  light: { colorScheme: "light", locale: "en-GB" },
  dark: { colorScheme: "dark", locale: "en-GB" },
  "high contrast": { forcedColors: "active", locale: "en-GB" },
};
const WIDTHS = [320, 900];

const overflow = (page: Page): Promise<number> =>
  page.evaluate(() => {
    const { documentElement } = (globalThis as any).document;
    return documentElement.scrollWidth - documentElement.clientWidth;
  });

withBrowser("the help pages", (openPage) => {
  test.each(Object.entries(LOOKS))(
    "%s: axe finds nothing, nothing is cut off, and no request is sent",
    async (look, preferences) => {
      const { page, complaints } = await openPage("", preferences);
      const frame = paneFrame(page);
      await frame.getByRole("tab", { name: "About" }).click();
      const wrong: string[] = [];
      for (const link of [/^Help: every/, /^The first ten minutes/]) {
        const [help] = await Promise.all([
          page.context().waitForEvent("page"),
          frame.getByRole("link", { name: link }).click(),
        ]);
        await help.waitForLoadState();
        const title = await help.title();
        for (const width of WIDTHS) {
          await help.setViewportSize({ width, height: 900 });
          await takePicture(help, `help ${title.split(": ")[1]} ${look} ${width}`.replaceAll(" ", "-"));
          if ((await overflow(help)) > 0) wrong.push(`${title} is too wide in ${width} px`);
          wrong.push(
            ...(await violations(help.mainFrame(), preferences)).map((one) => `${title}, ${width} px: ${one}`),
          );
        }
        await help.close();
      }
      expect(wrong).toEqual([]);
      expect(complaints).toEqual([]);
      await page.context().close();
    },
  );

  test("an address from Excel leads to its function, and the whole page prints", async () => {
    const { page, complaints } = await openPage("", LOOKS.light);
    await page.goto(`${process.env.CLAYLEDGER_PAGE}help.html#casagrande_lines`);
    const heading = page.getByRole("heading", { name: "CASAGRANDE_LINES", exact: true });
    expect((await heading.boundingBox())!.y).toBeLessThan(100);
    await page.emulateMedia({ media: "print" });
    await page.setViewportSize({ width: 720, height: 1000 });
    const pdf = await page.pdf({ format: "A4" });
    expect(pdf.subarray(0, 5).toString()).toBe("%PDF-");
    expect(await overflow(page)).toBeLessThanOrEqual(0);
    expect(complaints).toEqual([]);
    await page.context().close();
  });
});
