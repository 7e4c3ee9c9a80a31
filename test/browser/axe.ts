/**
 * Faults that axe finds in a document. Rules of colour (`cat.color` of axe: contrast, and links known by their colour alone) are asked
 * in every look. The other rules read the elements, and whether each is seen, lies off the page or scrolls: if all of this is as it was
 * when they were asked, in another look or width, their answer is the same, and they are not asked again.
 */
import { readFileSync } from "node:fs";
import type { Frame } from "playwright-core";
import type { Preferences } from "./started-page";

const AXE = readFileSync(require.resolve("axe-core/axe.min.js"), "utf8");

interface Fault {
  readonly id: string;
  readonly nodes: readonly { readonly html: string; readonly failureSummary: string }[];
}

/** The rules of axe, of colour or all, that were asked in the last run on a document; for the test of this module. */
export const rulesAsked = (frame: Frame): Promise<readonly string[]> =>
  frame.evaluate(() => (globalThis as any).clayledgerAxe.asked);

/**
 * Each fault with its element and reason. If the system forces colours, their contrast is ignored: axe then reads colours of the style
 * sheet that are not painted.
 */
export async function violations(frame: Frame, { forcedColors }: Preferences = {}): Promise<string[]> {
  if (!(await frame.evaluate(() => "axe" in globalThis))) await frame.evaluate(AXE);
  // Only the violations come out of the page: the whole answer has a line for each rule.
  const found: Fault[] = await frame.evaluate(async (isForced) => {
    const page = globalThis as any;
    const { axe, document } = page;
    /** What the rules read that are not of colour: the elements, and of each whether it is seen, lies off the page, or scrolls. */
    const seen = (): string => {
      // Custom properties are the colours of the look.
      const lines: string[] = [document.documentElement.outerHTML.replace(/--[\w-]+:[^;"}]*;?/g, "")];
      for (const one of document.querySelectorAll("body *")) {
        if (!one.checkVisibility({ visibilityProperty: true })) {
          lines.push("hidden");
          continue;
        }
        const { right, bottom, width, height } = one.getBoundingClientRect();
        const { overflow, position, clip, clipPath } = page.getComputedStyle(one);
        // axe calls a part scrollable if its content is more than 13 px larger.
        const sizes = [one.scrollWidth - one.clientWidth, one.scrollHeight - one.clientHeight];
        // What is transparent is still read by a screen reader.
        const isPainted = one.checkVisibility({ opacityProperty: true });
        const place = [
          isPainted,
          width > 0,
          height > 0,
          right > 0,
          bottom > 0,
          ...sizes.flatMap((more) => [more > 0, more > 13]),
        ];
        lines.push([...place, overflow, position, clip, clipPath, one.checked, one.value].join(" "));
      }
      return lines.join("\n");
    };
    const ofColour: string[] = axe.getRules(["cat.color"]).map((rule: any) => rule.ruleId);
    const memory = (page.clayledgerAxe ??= { answers: new Map(), asked: [] });
    // What axe finds right is not described, which takes half of its time.
    const run = async (options: object) =>
      (await axe.run(document, { resultTypes: ["violations"], ...options })).violations as Fault[];
    /**
     * Asks without what is inside hidden parts: nobody sees its colours, and axe reads the style of each element there, which takes
     * half of its time where several screens stand hidden.
     */
    const runWithoutHidden = async (options: object) => {
      const parts = new Set([...document.querySelectorAll("[hidden]")].filter((one: any) => !one.checkVisibility()));
      const { createTreeWalker } = document;
      for (const part of parts) Object.defineProperty(part, "childNodes", { value: [], configurable: true });
      document.createTreeWalker = (root: unknown, what: number) =>
        createTreeWalker.call(document, root, what, (node: any) => (parts.has(node.parentElement) ? 2 : 1));
      try {
        return await run(options);
      } finally {
        delete document.createTreeWalker;
        for (const part of parts) delete part.childNodes;
      }
    };
    const contrast = { "color-contrast": { enabled: !isForced } };
    const key = seen();
    const before: Fault[] | undefined = memory.answers.get(key);
    if (!before) {
      memory.asked = axe.getRules().map((rule: any) => rule.ruleId);
      const all = await run({ rules: contrast });
      memory.answers.set(
        key,
        all.filter(({ id }) => !ofColour.includes(id)),
      );
      return all;
    }
    memory.asked = ["link-in-text-block", ...(isForced ? [] : ["color-contrast"])];
    return [...before, ...(await runWithoutHidden({ runOnly: { type: "rule", values: memory.asked } }))];
  }, forcedColors === "active");
  return found.flatMap(({ id, nodes }) => nodes.map(({ html, failureSummary }) => `${id}: ${html} ${failureSummary}`));
}
