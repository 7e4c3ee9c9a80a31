/**
 * Whether dist was built from the present inputs: a build asks this first, so that it does not build again what is up
 * to date.
 */
import { createHash } from "node:crypto";
import { existsSync, readdirSync, readFileSync, statSync, writeFileSync } from "node:fs";
import path from "node:path";

/** Inputs of a build, beside the packages that package-lock.json names. */
const INPUTS = [
  "src",
  "LICENSE",
  "manifest.xml",
  "package.json",
  "package-lock.json",
  "tsconfig.json",
  "webpack.config.js",
];
const STAMP = "built.json";

interface Stamp {
  readonly inputs: string;
  /** Size of each file of dist, in bytes. */
  readonly files: Readonly<Record<string, number>>;
}

/**
 * Every file of a folder and its subfolders, by its path within `root`, in a fixed order; for a file, the file itself.
 */
function filesOf(root: string, place: string): string[] {
  const full = path.join(root, place);
  if (!statSync(full).isDirectory()) return [place];
  return readdirSync(full)
    .sort()
    .flatMap((name) => filesOf(root, path.join(place, name)));
}

/** One hash of all inputs of a build; `settings` are the inputs that are not files. */
export function inputsOf(root: string, settings: readonly string[]): string {
  const hash = createHash("sha256");
  hash.update(JSON.stringify(settings));
  for (const file of INPUTS.flatMap((input) => filesOf(root, input))) {
    const content = readFileSync(path.join(root, file));
    hash.update(`\n${file} ${content.length}\n`).update(content);
  }
  return hash.digest("hex");
}

const sizes = (dist: string): Record<string, number> =>
  Object.fromEntries(
    filesOf(dist, ".")
      .filter((file) => file !== STAMP)
      .map((file) => [file.split(path.sep).join("/"), statSync(path.join(dist, file)).size]),
  );

/** Whether dist was built from these inputs, and each of its files exists with its size. */
export function isUpToDate(dist: string, inputs: string): boolean {
  const stamp = path.join(dist, STAMP);
  if (!existsSync(stamp)) return false;
  const built: Stamp = JSON.parse(readFileSync(stamp, "utf8"));
  if (built.inputs !== inputs) return false;
  const present = sizes(dist);
  return Object.entries(built.files).every(([file, size]) => present[file] === size);
}

/** Records the inputs from which dist was built. */
export function markBuilt(dist: string, inputs: string): void {
  const stamp: Stamp = { inputs, files: sizes(dist) };
  writeFileSync(path.join(dist, STAMP), JSON.stringify(stamp, null, 1));
}

/** Removes the record: from now on dist is unfinished. */
export const unmark = (dist: string): void => {
  if (existsSync(path.join(dist, STAMP)))
    writeFileSync(path.join(dist, STAMP), JSON.stringify({ inputs: "", files: {} }));
};
