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
  files: { folders: ["ooxml"] },
  host: { folders: ["help", "host", "manifest", "mutation"] },
  office: { folders: ["workbook/office"], isOnPage: true },
  excel: { folders: ["excel", "workbook"], isOnPage: true },
  screens: { folders: ["pane", "plots", "host"], isOnPage: true },
};

/** What a file that others must not meet in their modules contains; it runs apart. */
const ALONE =
  /jest\.(mock|doMock|resetModules|isolateModules|useFakeTimers|restoreAllMocks)\b|setLanguage\(|toMatchSnapshot|process\.env|registerFunctions\(|CustomFunctions: \{ associate|@jest-environment-options|\(0, eval\)/;

const filesOf = (folder) =>
  readdirSync(folder, { recursive: true })
    .map((file) => file.split(path.sep).join("/"))
    .filter((file) => file.endsWith(".test.ts"))
    .sort();

const files = filesOf(tests).filter((file) => !/^(browser|ooxml\/files|together)\//.test(file));

/**
 * The browser tests that run together: the files of a group ask for pages with the same preferences, and follow one another on one
 * page, which starts again for each. A file without a group runs apart.
 */
const GROUPS_IN_BROWSER = {
  "host-and-keys": ["host/copy-kept", "host/less-motion", "host/long-redo"],
  // The test of the policy comes first: on a page that has started before, the browser has some files already.
  "in-british-english": ["host/policy", "host/help", "screens/current-test"],
  layouts: [
    "firm-layout/firm-layout",
    "firm-layout/firm-layout-across",
    "host/decimal-mark",
    "host/former-workbook",
    "host/pane-reloaded",
    "host/refusals",
    "host/row-heights",
    "host/shared-browser",
    "host/text-is-text",
  ],
  "screens-of-curves": [
    "axe",
    "screens/adopt",
    "screens/bench",
    "screens/curve-review",
    "screens/curve-review-keys",
    "screens/plots",
    "screens/review",
    "screens/wetting",
  ],
  "screens-of-sheets": [
    "screens/checks",
    "screens/pane",
    "screens/read-again",
    "screens/readings",
    "screens/register",
    "screens/report",
    "screens/sheet-check",
    "screens/summary",
  ],
};
export const togetherInBrowser = Object.fromEntries(
  Object.entries(GROUPS_IN_BROWSER).map(([group, files]) => [group, files.map((file) => `${file}.test.ts`)]),
);
const grouped = Object.values(togetherInBrowser).flat();
export const apartInBrowser = filesOf(path.join(tests, "browser")).filter(
  (file) => !file.startsWith("together/") && !grouped.includes(file),
);

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
