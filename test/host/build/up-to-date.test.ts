import { mkdirSync, mkdtempSync, rmSync, utimesSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { inputsOf, isUpToDate, markBuilt, unmark } from "../../../src/host/build/up-to-date";

let root: string;
let dist: string;
const write = (file: string, text: string) => writeFileSync(path.join(root, file), text);
const inputs = (...settings: string[]) => inputsOf(root, settings);

beforeEach(() => {
  root = mkdtempSync(path.join(tmpdir(), "clayledger-build-"));
  dist = path.join(root, "dist");
  for (const folder of ["src/pane", "dist/assets"]) mkdirSync(path.join(root, folder), { recursive: true });
  for (const file of [
    "LICENSE",
    "manifest.xml",
    "package.json",
    "package-lock.json",
    "tsconfig.json",
    "webpack.config.js",
  ])
    write(file, file);
  write("src/pane/index.tsx", "1");
  write("dist/pane.js", "built");
  write("dist/assets/icon.svg", "icon");
  markBuilt(dist, inputs());
});
afterEach(() => rmSync(root, { recursive: true }));

test("dist is up to date if nothing changed, whatever the dates of the files", () => {
  utimesSync(path.join(root, "src/pane/index.tsx"), new Date(), new Date());
  expect(isUpToDate(dist, inputs())).toBe(true);
});

test.each<[string, () => void]>([
  ["a source has other content of the same length", () => write("src/pane/index.tsx", "2")],
  ["a source is new", () => write("src/pane/more.ts", "")],
  ["a source is gone", () => rmSync(path.join(root, "src/pane/index.tsx"))],
  ["the packages are others", () => write("package-lock.json", "other")],
  ["a built file is gone", () => rmSync(path.join(dist, "assets/icon.svg"))],
  ["a built file was cut short", () => write("dist/pane.js", "bui")],
  ["dist is gone", () => rmSync(dist, { recursive: true })],
  ["a build began and did not end", () => unmark(dist)],
])("dist is not up to date where %s", (_, change) => {
  change();
  expect(isUpToDate(dist, inputs())).toBe(false);
});

test("the address and the mode for which dist is built are inputs", () => {
  expect(new Set([inputs(), inputs("production"), inputs("production", "https://addins.example.org/")]).size).toBe(3);
});
