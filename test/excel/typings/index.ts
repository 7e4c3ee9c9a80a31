/**
 * The typings, read once for each version of `@types/office-js`: the result is kept in node_modules/.cache, because the
 * parser needs a second for the file and every test file would wait for it.
 */
import fs from "fs";
import path from "path";
import { readTypings } from "./read";
import type { Member, Shape, Typings } from "./table";

/** Must be raised whenever the form of the result changes. */
const FORM = 1;

function load(): Typings {
  const home = path.dirname(require.resolve("@types/office-js/package.json"));
  const { version } = JSON.parse(fs.readFileSync(path.join(home, "package.json"), "utf8"));
  const folder = path.resolve(home, "../../.cache/clayledger");
  const kept = path.join(folder, `excel-${version}-${FORM}.json`);
  if (fs.existsSync(kept)) return JSON.parse(fs.readFileSync(kept, "utf8"));
  const read = readTypings(fs.readFileSync(path.join(home, "index.d.ts"), "utf8"));
  fs.mkdirSync(folder, { recursive: true });
  // Written to another file and then renamed, so that no worker reads half a file.
  const beside = `${kept}.${process.pid}`;
  fs.writeFileSync(beside, JSON.stringify(read));
  fs.renameSync(beside, kept);
  return read;
}

let typings: Typings | undefined;

export const excelTypings = (): Typings => (typings ??= load());

export function shapeOf(name: string): Shape {
  const shape = excelTypings().shapes[name];
  if (!shape) throw new Error(`the typings of Excel have no class or interface "${name}"`);
  return shape;
}

/** A member of a class or interface, its own or inherited. */
export function memberOf(name: string, member: string): Member | undefined {
  const shape = excelTypings().shapes[name];
  if (!shape) return undefined;
  if (Object.hasOwn(shape.members, member)) return shape.members[member];
  for (const base of shape.bases) {
    const found = memberOf(base, member);
    if (found) return found;
  }
  return undefined;
}
