/** The help pages, opened from the pane, in every look and width, and printed. */
import type { Page } from "playwright-core";
import { eventually, LOOKS, paneFrame, setLook, takePicture, violations, withBrowser, type HostPage } from "../page";

const WIDTHS = [320, 900];

const overflow = (page: Page): Promise<number> =>
  page.evaluate(() => {
    const { documentElement } = (globalThis as any).document;
    return documentElement.scrollWidth - documentElement.clientWidth;
  });

/** What is wrong with a page in every look: it is wider than the window at a width, or axe finds something. */
async function faultsOf(help: Page, called: string, { axeAt = WIDTHS, widths = WIDTHS } = {}): Promise<string[]> {
  const wrong: string[] = [];
  for (const [look, options] of Object.entries(LOOKS)) {
    await setLook(help, options);
    for (const width of widths) {
      const where = `${called} ${look} ${width}`;
      await help.setViewportSize({ width, height: 900 });
      await takePicture(help, where.replaceAll(" ", "-"));
      if ((await overflow(help)) > 0) wrong.push(`${where}: too wide`);
      const found = axeAt.includes(width) ? await violations(help.mainFrame(), options) : [];
      wrong.push(...found.map((one) => `${where}: ${one}`));
    }
  }
  return wrong;
}

withBrowser("the help pages", (openPage) => {
  let host: HostPage;
  beforeAll(async () => {
    host = await openPage("", { locale: "en-GB" });
    await paneFrame(host.page).getByRole("tab", { name: "About" }).click();
  });
  afterEach(() => expect(host.complaints).toEqual([]));

  test.each([/^Help: every/, /^The first ten minutes/])(
    "%s: axe finds nothing in any look, nothing is cut off, and no request is sent",
    async (link) => {
      const [help] = await Promise.all([
        host.page.context().waitForEvent("page"),
        paneFrame(host.page).getByRole("link", { name: link }).click(),
      ]);
      await help.waitForLoadState();
      const title = await help.title();
      expect(await faultsOf(help, `help ${title.split(": ")[1]}`)).toEqual([]);
      await help.close();
    },
  );

  test.each(["help-de.html", "first-minutes-de.html"])(
    "%s, which the English page leads to: the same, and at the widths of a laptop and of a narrow window",
    async (file) => {
      const { page } = host;
      const help = await page.context().newPage();
      await help.goto(`${process.env.CLAYLEDGER_PAGE}${file.replace("-de", "")}`);
      await help.getByRole("link", { name: "Deutsch" }).click();
      await help.waitForURL(`**/${file}`);
      // axe looks at one width: the parts are those of the English page, and it takes seconds each time.
      const called = file.replace(".html", "");
      expect(await faultsOf(help, called, { axeAt: [320], widths: [320, 480, 1440] })).toEqual([]);
      await help.getByRole("link", { name: "English" }).click();
      await help.waitForURL(`**/${file.replace("-de", "")}`);
      await help.close();
    },
  );

  test("an address from Excel leads to its function, and the whole page prints", async () => {
    const { page } = host;
    await page.goto(`${process.env.CLAYLEDGER_PAGE}help.html#casagrande_lines`);
    const heading = page.getByRole("heading", { name: "CASAGRANDE_LINES", exact: true });
    await eventually(async () => (await heading.boundingBox())!.y < 100);
    await page.emulateMedia({ media: "print" });
    await page.setViewportSize({ width: 720, height: 1000 });
    const pdf = await page.pdf({ format: "A4" });
    expect(pdf.subarray(0, 5).toString()).toBe("%PDF-");
    expect(await overflow(page)).toBeLessThanOrEqual(0);
  });
});
