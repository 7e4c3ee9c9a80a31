/** Whether dist is still what its inputs give: asked before a build, so that what is up to date is not built again. */
import { createHash } from "node:crypto";
import { existsSync, readdirSync, readFileSync, statSync, writeFileSync } from "node:fs";
import path from "node:path";

/** What a build reads, beside the packages that package-lock.json names. */
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

/** Every file of a folder and its folders, by its path within `root`, in a settled order; a file is itself. */
function filesOf(root: string, place: string): string[] {
  const full = path.join(root, place);
  if (!statSync(full).isDirectory()) return [place];
  return readdirSync(full)
    .sort()
    .flatMap((name) => filesOf(root, path.join(place, name)));
}

/** One hash of all that a build depends on; `settings` are those that come from outside of the files. */
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

/** Whether dist was built from these inputs, and each of its files is there in its size. */
export function isUpToDate(dist: string, inputs: string): boolean {
  const stamp = path.join(dist, STAMP);
  if (!existsSync(stamp)) return false;
  const built: Stamp = JSON.parse(readFileSync(stamp, "utf8"));
  if (built.inputs !== inputs) return false;
  const present = sizes(dist);
  return Object.entries(built.files).every(([file, size]) => present[file] === size);
}

/** Notes down what dist was built from. */
export function markBuilt(dist: string, inputs: string): void {
  const stamp: Stamp = { inputs, files: sizes(dist) };
  writeFileSync(path.join(dist, STAMP), JSON.stringify(stamp, null, 1));
}

/** Forgets it: what is in dist from here on is unfinished. */
export const unmark = (dist: string): void => {
  if (existsSync(path.join(dist, STAMP)))
    writeFileSync(path.join(dist, STAMP), JSON.stringify({ inputs: "", files: {} }));
};
