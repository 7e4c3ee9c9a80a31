/**
 * The test files that `npm test` runs together: the files of a group share one set of modules, and one run of Node that has
 * compiled them. Apart, each would load and warm up the engine of the embedded sheet, or the pane, again.
 */
import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";

const tests = path.resolve(import.meta.dirname, "..");

/** The folders of each group, and whether its files run on a page (jsdom). */
const GROUPS = {
  datasheet: { folders: ["datasheet"] },
  reports: { folders: ["report", "summary", "book", "specification", "record", "checks"] },
  embedded: { folders: ["workbook/embedded", "workbook"] },
  reduction: { folders: ["reduction", "published", "functions", "exchange", "plots"] },
  pane: { folders: ["pane"] },
  office: { folders: ["workbook/office"], isOnPage: true },
  screens: { folders: ["pane"], isOnPage: true },
};

/** What a file that others must not meet in their modules contains; it runs apart. */
const ALONE =
  /jest\.(mock|doMock|resetModules|isolateModules|useFakeTimers|restoreAllMocks)\b|setLanguage\(|toMatchSnapshot|process\.env|addFunction\(|registerFunctions\(|CustomFunctions: \{ associate|@jest-environment-options|\(0, eval\)/;

const files = readdirSync(tests, { recursive: true })
  .map((file) => file.split(path.sep).join("/"))
  .filter((file) => file.endsWith(".test.ts") && !/^(browser|ooxml\/files|together)\//.test(file))
  .sort();

const isWithin = (file, folders) => folders.some((folder) => file.startsWith(`${folder}/`));

/** The groups with their files, and the files that run apart. */
export const together = {};
export const apart = [];
for (const file of files) {
  const text = readFileSync(path.join(tests, file), "utf8");
  const isOnPage = text.includes("@jest-environment jsdom");
  // The group of the innermost folder.
  const [name] =
    Object.entries(GROUPS)
      .filter(([, group]) => isWithin(file, group.folders) && (group.isOnPage ?? false) === isOnPage)
      .sort(
        ([, a], [, b]) => Math.max(...b.folders.map((f) => f.length)) - Math.max(...a.folders.map((f) => f.length)),
      )[0] ?? [];
  if (name === undefined || ALONE.test(text)) apart.push(file);
  else (together[name] ??= []).push(file);
}
