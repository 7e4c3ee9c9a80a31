/**
 * A third language, added in a copy of the sources as DEVELOPERS.md says: English with each text in brackets. What a person reads of
 * it outside of all brackets is English that no catalogue has.
 */
import { execFileSync } from "node:child_process";
import { cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";

const root = path.join(__dirname, "../..");

/** The folders of the language, and what each has. */
const FOLDERS: Readonly<Record<string, string>> = {
  "src/pane/text/nl/index.ts": `import { allInBrackets } from "../../../../test/help/made-up/brackets";
import { en } from "../en";
export const nl = allInBrackets(en);`,
  "src/pane/text/nl/host.ts": `import { allInBrackets } from "../../../../test/help/made-up/brackets";
import { host as en } from "../en/host";
export const host = allInBrackets(en);`,
  "src/pane/text/nl/engine.ts": `export const engine = {};`,
  "src/pane/text/nl/messages/index.ts": `import { tableOf } from "../../../../../test/help/made-up/brackets";
import { messages as de } from "../../de/messages";
export const messages = tableOf(de);`,
  "src/specification/text/nl/index.ts": `import { allInBrackets, tableOf } from "../../../../test/help/made-up/brackets";
import { de } from "../de";
import { en } from "../en";
const tables = ["titles", "labels", "notes", "formulas", "demo", "beside"] as const;
export const nl = { ...allInBrackets(en), language: "nl", ...Object.fromEntries(tables.map((name) => [name, tableOf(de[name])])) };`,
  // Words of one letter or two: a formula that compares words of every language has 8192 characters at most.
  "src/specification/text/nl/choices.ts": `import { choices as de } from "../de/choices";
export const choices = Object.fromEntries(Object.keys(de).map((english, index) => [english, "⟦" + index.toString(36) + "⟧"]));`,
};

/** What is added to the modules that list the languages. */
const ADDED: readonly (readonly [file: string, found: string | RegExp, becomes: string])[] = [
  ...["pane", "specification"].map(
    (part) => [`src/${part}/text/language.ts`, `["en", "de"]`, `["en", "de", "nl"]`] as const,
  ),
  ["src/pane/text/language.ts", `de: "de-DE"`, `de: "de-DE", nl: "en-US"`],
  [
    "src/pane/text/index.ts",
    /(import \{ )de( \} from "\.\/)de";([^]*)\{ en, de \}/,
    `$1de$2de"; $1nl$2nl";$3{ en, de, nl }`,
  ],
  [
    "src/pane/text/host.ts",
    /(import \{ host as )de( \} from "\.\/)de(\/host";)([^]*)\{ en, de \}/,
    `$1de$2de$3 $1nl$2nl$3$4{ en, de, nl }`,
  ],
  ["src/pane/text/host.ts", `de: deEngine`, `de: deEngine, nl: enEngine`],
  [
    "src/pane/text/messages.ts",
    /(import \{ messages as )de( \} from "\.\/)de(\/messages";)([^]*?)\{ de \}/,
    `$1de$2de$3 $1nl$2nl$3$4{ de, nl }`,
  ],
  ["src/specification/text/language.ts", `de: "Deutsch"`, `de: "Deutsch", nl: "⟦English⟧"`],
  [
    "src/specification/text/words.ts",
    /(import \{ )de( \} from "\.\/)de";([^]*)\{ en, de \}/,
    `$1de$2de"; $1nl$2nl";$3{ en, de, nl }`,
  ],
  [
    "src/specification/list-words.ts",
    /import \{ choices as german \}.*\n/,
    `$&import { choices as madeUp } from "./text/nl/choices";\n`,
  ],
  [
    "src/specification/list-words.ts",
    `de: new Map(Object.entries(german)),`,
    `$& nl: new Map(Object.entries(madeUp)),`,
  ],
  ["src/pane/text/en/screens/sheet.ts", /languages: \{/, `$& nl: "Dutch",`],
];

let folder: string;
let found: {
  readonly left: Record<string, string[]>;
  readonly seen: Record<string, number>;
  readonly ownLayout: { readonly laidOut: string[]; readonly without: string[] };
};

beforeAll(() => {
  folder = mkdtempSync(path.join(tmpdir(), "clayledger-language-"));
  for (const part of ["src", "test", "package.json", "tsconfig.json"])
    cpSync(path.join(root, part), path.join(folder, part), {
      recursive: true,
      filter: (file) => !/test\/(?:browser|published|ooxml)\b/.test(file),
    });
  symlinkSync(path.join(root, "node_modules"), path.join(folder, "node_modules"), "junction");
  for (const [file, text] of Object.entries(FOLDERS)) {
    mkdirSync(path.dirname(path.join(folder, file)), { recursive: true });
    writeFileSync(path.join(folder, file), text);
  }
  for (const [file, from, to] of ADDED) {
    const text = readFileSync(path.join(folder, file), "utf8");
    const changed = text.replace(from, to);
    if (changed === text) throw new Error(`${file} has no ${from}`);
    writeFileSync(path.join(folder, file), changed);
  }
  const run = path.join(folder, "test/help/made-up/left-in-english.ts");
  found = JSON.parse(
    execFileSync(process.execPath, ["--import", "tsx", run], { cwd: folder, encoding: "utf8", maxBuffer: 1e8 }),
  );
});

afterAll(() => rmSync(folder, { recursive: true, force: true }));

test("data sheet, report and every screen of the pane are read", () => {
  expect(Object.keys(found.seen)).toHaveLength(15);
  for (const [place, count] of Object.entries(found.seen)) expect([place, count > 20]).toEqual([place, true]);
});

test("no English is left outside of the catalogues", () =>
  expect(found.left).toEqual(Object.fromEntries(Object.keys(found.left).map((place) => [place, []]))));

test("on a firm's own layout every result gets its formula, with the workings without which it would be too long", () => {
  const { laidOut, without } = found.ownLayout;
  expect(without).toEqual([]);
  const expected = ["load_remark", "input_remark", "input_remark_numbers", "missing_in_full"];
  expect(expected.filter((name) => !laidOut.includes(name))).toEqual([]);
});
