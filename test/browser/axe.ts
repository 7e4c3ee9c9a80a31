/**
 * Faults that axe finds in a document. Rules of colour (`cat.color` of axe: contrast, and links known by their colour alone) are asked
 * in every look. The other rules read the elements, what is seen of them and where they stand: if all of this is as it was when they
 * were last asked, their answer is too, and they are not asked again.
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
    /** What the rules read that are not of colour: a line for each element. */
    const seen = (): string => {
      const lines: string[] = [document.documentElement.outerHTML];
      for (const one of document.querySelectorAll("*")) {
        const { x, y, width, height } = one.getBoundingClientRect();
        const style = page.getComputedStyle(one);
        const looks = [style.display, style.visibility, style.opacity, style.overflow, style.position, style.clip];
        const rest = [style.clipPath, style.pointerEvents, one.scrollWidth, one.scrollHeight, one.checked, one.value];
        lines.push([x, y, width, height, ...looks, ...rest].join(" "));
      }
      return lines.join("\n");
    };
    const ofColour: string[] = axe.getRules(["cat.color"]).map((rule: any) => rule.ruleId);
    const memory = (page.clayledgerAxe ??= { answers: new Map(), asked: [] });
    // What axe finds right is not described, which takes half of its time.
    const run = async (options: object) =>
      (await axe.run(document, { resultTypes: ["violations"], ...options })).violations as Fault[];
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
    return [...before, ...(await run({ runOnly: { type: "rule", values: memory.asked } }))];
  }, forcedColors === "active");
  return found.flatMap(({ id, nodes }) => nodes.map(({ html, failureSummary }) => `${id}: ${html} ${failureSummary}`));
}
