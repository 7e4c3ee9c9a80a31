/**
 * Every screen in the three looks, in both languages and in two widths: nothing wrong for people who cannot see or point,
 * or have little room. Each screen is visited once in each language, and looked at in all looks of that language.
 */
import type { Frame } from "playwright-core";
import {
  chooseLanguage,
  cutChoices,
  LOOKS,
  paneFrame,
  paneViolations,
  paneWidths,
  setLook,
  setPaneWidth,
  settled,
  takePicture,
  type HostPage,
} from "../page";

/** The least width that a pane of Excel can have, and a wide one. */
const WIDTHS = [320, 480];
/** Height in px of three lines of tabs; the row of the current test is below them. */
const MOST_TABS = 72;
const MOST_HEADER = 120;

type LookName = keyof typeof LOOKS;
const WALKS: readonly { readonly language: "en" | "de"; readonly looks: readonly LookName[] }[] = [
  { language: "en", looks: ["light", "high contrast"] },
  { language: "de", looks: ["dark"] },
];

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

/** What is wrong with the screen in front, in one look and width. */
async function faultsOf({ page }: HostPage, look: LookName, width: number): Promise<string[]> {
  const frame = paneFrame(page);
  const wrong = await paneViolations(page, LOOKS[look]);
  if (LOOKS[look].forcedColors) wrong.push(...(await ownColours(frame)));
  const { shown, content } = await paneWidths(page);
  expect(shown).toBe(width);
  if (content > shown) wrong.push(`${content} px wide`);
  const heightOf = (what: string) => frame.locator(what).evaluate((element) => element.clientHeight);
  const [list, header] = [await heightOf("[role=tablist]"), await heightOf("header")];
  if (list > MOST_TABS) wrong.push(`the tabs are ${list} px high`);
  if (header > MOST_HEADER) wrong.push(`the header is ${header} px high`);
  wrong.push(...(await cutChoices(frame)));
  wrong.push(...(await clippedTabs(frame)).map((clipped) => `${clipped} is wider than its tab`));
  return wrong;
}

/** Tests on a page with the demonstration, which stays as it is; the pane is German afterwards. */
export const everyLook = (host: () => HostPage): void =>
  describe.each(WALKS)("every screen, in $language", ({ language, looks }) => {
    beforeAll(() => chooseLanguage(host().page, language));
    afterAll(() => setLook(host().page, LOOKS.light));

    test("there are twelve screens, in the language that was chosen", async () => {
      const frame = paneFrame(host().page);
      expect(await frame.getByRole("tab").count()).toBe(12);
      expect(await frame.evaluate(() => (globalThis as any).document.documentElement.lang)).toBe(language);
    });

    test(`axe finds nothing, nothing is cut off and the tabs stand in three lines: ${looks.join(", ")}`, async () => {
      const { page } = host();
      const frame = paneFrame(page);
      const wrong: string[] = [];
      const tabs = await frame.getByRole("tab").allTextContents();
      for (const [index, tab] of tabs.entries()) {
        await frame.getByRole("tab").nth(index).click();
        for (const width of WIDTHS) {
          await setPaneWidth(page, width);
          for (const look of looks) {
            await setLook(page, LOOKS[look]);
            await settled(frame);
            const where = `${look} ${width} ${index + 1} ${tab}`;
            await takePicture(page, `walk ${where}`.replace(/[: ]+/g, "-"));
            wrong.push(...(await faultsOf(host(), look, width)).map((fault) => `${where}: ${fault}`));
          }
        }
      }
      expect(wrong).toEqual([]);
    });

    test("the page reports no error and sends no request elsewhere", () => expect(host().complaints).toEqual([]));
  });
