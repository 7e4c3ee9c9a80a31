/** What axe is asked for a second time: rules of colour in every look, the others if anything that they read has changed. */
import type { Page } from "playwright-core";
import { rulesAsked, violations } from "./axe";
import { LOOKS, setLook, withBrowser } from "./page";

const TEXT = `<!doctype html><html lang="en"><head><title>Example</title>
  <style>
    p { color: #000; background: #fff; }
    .shown { display: block; }
    @media (prefers-color-scheme: dark) { p { color: #777; background: #888; } .picture { display: block !important; }
      .clear { opacity: 0; } }
  </style></head><body><main><h1>Example</h1><p>Text</p>REST</main></body></html>`;

withBrowser("what axe is asked", (_, newContext) => {
  let page: Page;
  beforeAll(async () => {
    page = await (await newContext()).newPage();
  });
  afterAll(() => page.context().close());
  const faults = async (look: keyof typeof LOOKS): Promise<string[]> => {
    await setLook(page, LOOKS[look]);
    return (await violations(page.mainFrame(), LOOKS[look])).map((one) => one.split(":")[0]!);
  };

  test("the rules of colour of axe are contrast and links; contrast of level AAA is not asked", async () => {
    await page.setContent(TEXT.replace("REST", ""));
    expect(await faults("light")).toEqual([]);
    const ofColour = await page.evaluate(() =>
      (globalThis as any).axe._audit.rules
        .filter((rule: any) => rule.tags.includes("cat.color"))
        .map((rule: any) => [rule.id, rule.enabled]),
    );
    expect(ofColour.sort()).toEqual([
      ["color-contrast", true],
      ["color-contrast-enhanced", false],
      ["link-in-text-block", true],
    ]);
  });

  test("a fault of contrast in one look only is found, if the rules of colour alone are asked", async () => {
    expect(await faults("light")).toEqual([]);
    expect(await faults("dark")).toEqual(["color-contrast"]);
    expect(await rulesAsked(page.mainFrame())).toEqual(["link-in-text-block", "color-contrast"]);
    expect(await faults("high contrast")).toEqual([]);
    expect(await rulesAsked(page.mainFrame())).toEqual(["link-in-text-block"]);
  });

  test.each([
    ["seen", "picture"],
    ["transparent", "picture clear"],
  ])(
    "a %s picture without a text that only one look has is found there, because all rules are asked",
    async (_, kind) => {
      await page.setContent(TEXT.replace("REST", `<img class="${kind}" style="display: none" src="data:," />`));
      expect(await faults("light")).toEqual([]);
      expect(await faults("dark")).toEqual(["color-contrast", "image-alt"]);
      expect((await rulesAsked(page.mainFrame())).length).toBeGreaterThan(50);
    },
  );

  test("a part that scrolls in a narrow window only, and that no key reaches, is found there", async () => {
    const high = `<div style="height: 60px; overflow: auto">${"Many words. ".repeat(20)}</div>`;
    await page.setContent(TEXT.replace("REST", high));
    await page.setViewportSize({ width: 2400, height: 600 });
    expect(await faults("light")).toEqual([]);
    await page.setViewportSize({ width: 320, height: 600 });
    expect(await faults("light")).toEqual(["scrollable-region-focusable"]);
  });

  test("of parts that are marked as hidden, the rules of colour are asked where the style shows them all the same", async () => {
    const parts = (kind: string) => `<div hidden class="${kind}"><div><p>Text</p></div></div>`;
    for (const [kind, count] of [
      ["", 1],
      ["shown", 2],
    ] as const) {
      await page.setContent(TEXT.replace("REST", parts(kind)));
      expect(await faults("light")).toEqual([]);
      expect(await faults("dark")).toEqual(new Array(count).fill("color-contrast"));
      expect(await rulesAsked(page.mainFrame())).toEqual(["link-in-text-block", "color-contrast"]);
    }
  });

  test("a fault that is none of colour is told in every look", async () => {
    await page.setContent(TEXT.replace("REST", `<img src="data:," />`));
    expect(await faults("light")).toEqual(["image-alt"]);
    expect(await faults("high contrast")).toEqual(["image-alt"]);
    expect(await rulesAsked(page.mainFrame())).toEqual(["link-in-text-block"]);
  });
});
