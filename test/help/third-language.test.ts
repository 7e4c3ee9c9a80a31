/** The list of DEVELOPERS.md, "How to add a language", against the sources: a made-up language is added, in memory only. */
import { existsSync, readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import ts from "typescript";

const root = path.join(__dirname, "../..");
const read = (file: string): string => readFileSync(path.join(root, file), "utf8");

const [, list] = /\n## How to add a language\n([\s\S]*?)\n## /.exec(read("DEVELOPERS.md"))!;
const named = [...list.matchAll(/`((?:src|test)\/[^`]+|manifest\.xml)`/g)].map(([, file]) => file);

const sources = (readdirSync(path.join(root, "src"), { recursive: true }) as string[])
  .map((file) => `src/${file.split(path.sep).join("/")}`)
  .sort();

/** Folders that hold the texts of one language. */
const folders = sources.filter((file) => /\/de$/.test(file));

/** The modules that list the languages: outside of the folders of the languages. */
const tables = sources.filter(
  (file) =>
    /\.tsx?$/.test(file) &&
    !/\/(?:de|en)\//.test(file) &&
    /from "\.[^"]*\/de(?:\/[^"]*)?"|LANGUAGES = \[|language: "de"/.test(read(file)),
);

test("the list names every folder of a language and every module that lists the languages, and nothing else", () => {
  expect(folders.length).toBeGreaterThan(0);
  expect(named.filter((file) => /\/nl$/.test(file)).sort()).toEqual(folders.map((file) => file.replace(/de$/, "nl")));
  expect(named.filter((file) => file.startsWith("src/") && /\.tsx?$/.test(file)).sort()).toEqual(tables);
});

test("every file that the list names exists", () => {
  expect(named.filter((file) => !/\/nl$/.test(file) && !existsSync(path.join(root, file)))).toEqual([]);
});

/** What the type checker says of modules when both lists of languages have one more. */
function complaintsWith(language: string, modules: readonly string[]): readonly ts.Diagnostic[] {
  const settings = path.join(root, "src/tsconfig.json");
  const { config } = ts.readConfigFile(settings, ts.sys.readFile);
  const { options } = ts.parseJsonConfigFileContent(config, ts.sys, path.dirname(settings));
  const host = ts.createCompilerHost({ ...options, noEmit: true });
  const { readFile, getSourceFile } = host;
  const changed = (file: string): string | undefined =>
    /src\/(?:pane|specification)\/text\/language\.ts$/.test(file)
      ? readFile(file)!.replace(/LANGUAGES = \[("en", "de")\]/, `LANGUAGES = [$1, "${language}"]`)
      : undefined;
  host.getSourceFile = (file, ...rest) => {
    const text = changed(file);
    return text === undefined ? getSourceFile(file, ...rest) : ts.createSourceFile(file, text, ts.ScriptTarget.Latest);
  };
  const program = ts.createProgram(
    modules.map((file) => path.join(root, file)),
    { ...options, noEmit: true },
    host,
  );
  return modules.flatMap((file) => program.getSemanticDiagnostics(program.getSourceFile(path.join(root, file))!));
}

test("the type checker names the tables that lack the language", () => {
  const checked = tables.filter((file) => /\btext\//.test(file));
  const complaints = complaintsWith("nl", checked);
  const complaining = new Set(
    complaints.map(({ file }) => path.relative(root, file!.fileName).split(path.sep).join("/")),
  );
  // messages.ts needs no entry: a message without a translation stays English.
  expect([...complaining].sort()).toEqual(checked.filter((file) => file !== "src/pane/text/messages.ts"));
  for (const { messageText } of complaints)
    expect(ts.flattenDiagnosticMessageText(messageText, "\n")).toContain("Property 'nl' is missing");
});
