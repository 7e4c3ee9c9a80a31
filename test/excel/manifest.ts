/** The requirement sets that manifest.xml declares: Excel does not load the add-in if it lacks one. */
import fs from "fs";
import path from "path";

const text = fs.readFileSync(path.resolve(__dirname, "../../manifest.xml"), "utf8");
const part = /<Requirements>[\s\S]*?<\/Requirements>/.exec(text)?.[0] ?? "";

export const DECLARED: Readonly<Record<string, string>> = Object.fromEntries(
  [...part.matchAll(/<Set\s+([^>]*)\/>/g)].map(([, attributes]) => [
    /Name="([^"]+)"/.exec(attributes)![1],
    /MinVersion="([^"]+)"/.exec(attributes)?.[1] ?? "1.1",
  ]),
);

/** Whether version `a` is at least version `b`: "1.10" is later than "1.9". */
export function isAtLeast(a: string, b: string): boolean {
  const [a1 = 0, a2 = 0] = a.split(".").map(Number);
  const [b1 = 0, b2 = 0] = b.split(".").map(Number);
  return a1 > b1 || (a1 === b1 && a2 >= b2);
}
