/** The top level of the project holds only files and folders of the project, and nothing that a trial left behind. */
import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";

const root = path.join(__dirname, "..");

const TOP_LEVEL: readonly string[] = [
  "DEVELOPERS.md",
  "LICENSE",
  "README.md",
  "eslint.config.mjs",
  "jest.config.mjs",
  "knip.json",
  "manifest.xml",
  "package-lock.json",
  "package.json",
  "src",
  "templates",
  "test",
  "tsconfig.json",
  "webpack.config.js",
];

test("every file and folder at the top level is one of the project's, or one that git ignores", () => {
  const ignored = readFileSync(path.join(root, ".gitignore"), "utf8")
    .split("\n")
    .map((line) => line.replaceAll("/", ""));
  const found = readdirSync(root).filter((name) => !name.startsWith(".") && !ignored.includes(name));
  expect(found.sort()).toEqual([...TOP_LEVEL].sort());
});
