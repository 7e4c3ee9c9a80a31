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

const parts = new Map<string, readonly [number, number]>();

/** "1.10" as [1, 10]; a property of Excel asks for a version at every use. */
function partsOf(version: string): readonly [number, number] {
  const known = parts.get(version);
  if (known) return known;
  const [major = 0, minor = 0] = version.split(".").map(Number);
  parts.set(version, [major, minor]);
  return [major, minor];
}

/** Whether version `a` is at least version `b`: "1.10" is later than "1.9". */
export function isAtLeast(a: string, b: string): boolean {
  const [a1, a2] = partsOf(a);
  const [b1, b2] = partsOf(b);
  return a1 > b1 || (a1 === b1 && a2 >= b2);
}
