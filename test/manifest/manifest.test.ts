import { execFileSync } from "child_process";
import fs from "fs";
import path from "path";
import { LANGUAGE_FOLDERS, languagesIn } from "../../src/help/languages";
import {
  BASE,
  danglingIds,
  insecureUrls,
  missingFiles,
  missingOverrides,
  missingSizes,
  ROOT,
  splitRuntime,
  valueOf,
  wrongCommands,
  wrongSizes,
  wrongVersion,
} from "./faults";

const read = (...parts: string[]): string => fs.readFileSync(path.join(ROOT, ...parts), "utf8");

const manifest = read("manifest.xml");

/** The manifest with one fault. */
function broken(what: string | RegExp, by: string): string {
  const changed = manifest.replace(what, by);
  if (changed === manifest) throw new Error(`nothing to break: ${what}`);
  return changed;
}

const complaints = (...texts: string[]): string[] =>
  JSON.parse(
    execFileSync(process.execPath, [path.join(__dirname, "validate.mjs")], {
      input: JSON.stringify(texts),
      encoding: "utf8",
    }),
  );

test("it is valid by Microsoft's schema, which does find a fault", () => {
  const [whole, ...faults] = complaints(
    manifest,
    broken("<Permissions>ReadWriteDocument</Permissions>", ""),
    broken('lifetime="long"', 'lifetime="for ever"'),
    broken(
      /<bt:String id="Open.Label" DefaultValue="[^"]*"/,
      `<bt:String id="Open.Label" DefaultValue="${"x".repeat(126)}"`,
    ),
    broken(/(id="Open.Description" DefaultValue=)"[^"]*"/, `$1"${"x".repeat(251)}"`),
    broken(/Functions\.Namespace/g, "Functions.Namespace.Of.All.Sheets"),
    broken(/<Id>[^<]*/, "<Id>clayledger"),
  );
  expect(whole).toBe("");
  const named = [
    /DefaultSettings|Permissions|VersionOverrides/,
    /lifetime/,
    /maxLength/,
    /maxLength/,
    /maxLength/,
    /Id/,
  ];
  expect(faults).toHaveLength(named.length);
  faults.forEach((fault, index) => expect(fault).toMatch(named[index]));
});

describe("faults that the schema does not find", () => {
  test.each([
    ["the version is one that Office takes", wrongVersion, broken(/<Version>[^<]*/, "<Version>0.9.0.0")],
    ["the version has four numbers", wrongVersion, broken(/<Version>[^<]*/, "<Version>1.9.0")],
    [
      "every part of the ribbon has an id of its own",
      wrongCommands,
      broken('id="Clayledger.Open"', 'id="Clayledger.Group"'),
    ],
    ["the tab is one of Excel's", wrongCommands, broken('"TabHome"', '"TabStart"')],
    ["every resid resolves", danglingIds, broken('resid="Open.Label"', 'resid="Open.Lable"')],
    ["no resource is unused", danglingIds, broken(/<Namespace resid="[^"]*" \/>/, "")],
    [
      "every address is https",
      insecureUrls,
      broken('"https://localhost:3000/functions.js"', '"http://localhost:3000/functions.js"'),
    ],
    ["every file is built or kept", missingFiles, broken("/functions.json", "/function.json")],
    [
      "every file of a language is built",
      missingFiles,
      broken('"https://localhost:3000/functions-de.json"', '"https://localhost:3000/functions-nl.json"'),
    ],
    [
      "every text has all the regions of a language",
      missingOverrides,
      broken(/\s*<bt:Override Locale="de-AT" Value="Clayledger öffnen" \/>/, ""),
    ],
    [
      "the namespace is the same everywhere",
      missingOverrides,
      broken(
        '"Functions.Namespace" DefaultValue="CLAY" />',
        '"Functions.Namespace" DefaultValue="CLAY"><bt:Override Locale="de-DE" Value="TON" /></bt:String>',
      ),
    ],
    ["every picture has its size", wrongSizes, broken('size="16" resid="Icon.16"', 'size="16" resid="Icon.32"')],
    ["the ribbon has the sizes it needs", missingSizes, broken('<bt:Image size="80" resid="Icon.80" />', "")],
    [
      "one runtime runs it all",
      splitRuntime,
      broken(/(<Page>\s*<SourceLocation resid=)"[^"]*"/, '$1"Functions.Script.Url"'),
    ],
  ])("%s", (_, faults, wrong) => {
    expect(faults(manifest)).toEqual([]);
    expect(faults(wrong)).not.toEqual([]);
  });
});

test("the namespace is CLAY, and the version is the package's with 1 added to its first number", () => {
  expect(valueOf(manifest, "Functions.Namespace")).toBe("CLAY");
  const { version } = JSON.parse(read("package.json"));
  const [first, ...others] = version.split(".");
  expect(manifest).toContain(`<Version>${Number(first) + 1}.${others.join(".")}.0</Version>`);
});

/** The regions of the languages that have texts of functions; Office has each with a display language or formats of its own. */
const REGIONS: Readonly<Record<string, readonly string[]>> = { de: ["de-DE", "de-AT", "de-CH"] };

test("every language of the functions has its overrides", () => {
  for (const language of languagesIn(LANGUAGE_FOLDERS))
    for (const region of REGIONS[language])
      expect(manifest).toContain(`<bt:Override Locale="${region}" Value="${BASE}functions-${language}.json" />`);
  expect(new Set(manifest.match(/(?<=Locale=")[^"]*/g))).toEqual(new Set(Object.values(REGIONS).flat()));
});

/**
 * Microsoft's validation service refused CustomFunctionsRuntime in March 2019 (OfficeDev/Excel-Custom-Functions, pull request 124), and SharedRuntime
 * in May 2020 (Office-Add-in-samples, issue 80). It takes both since: CustomFunctionsRuntime 1.1 with ExcelApi 1.8 in October 2020
 * (Office-Addin-Scripts, issue 332), SharedRuntime 1.1 in November 2024 (the same, issue 902). Microsoft's template requires
 * CustomFunctionsRuntime again (Excel-Custom-Functions, manifest.xml), and neither is among the sets that a manifest may not require
 * (learn.microsoft.com/javascript/api/manifest/set). CustomFunctionsRuntime 1.2 itself was not shown to the service.
 */
test("it requires what the adapter and the functions use", () => {
  const sets = Object.fromEntries(
    [...manifest.matchAll(/<Set Name="(\w+)" MinVersion="([\d.]+)"/g)].map(([, ...set]) => set),
  );
  expect(sets).toEqual({ ExcelApi: "1.9", SharedRuntime: "1.1", CustomFunctionsRuntime: "1.2" });
});

// It consists of ES modules, which jest cannot load: it runs as its own process. (Its command line would report its
// use.)
test("office-addin-manifest reads it", () => {
  const script = `require("office-addin-manifest").OfficeAddinManifest.readManifestFile("manifest.xml")
    .then((info) => process.stdout.write(JSON.stringify(info)))`;
  const info = JSON.parse(execFileSync(process.execPath, ["-e", script], { cwd: ROOT, encoding: "utf8" }));
  expect(info).toMatchObject({
    displayName: "Clayledger",
    providerName: "Clayledger contributors",
    officeAppType: "TaskPaneApp",
    permissions: "ReadWriteDocument",
    hosts: ["Workbook"],
    defaultSettings: { sourceLocation: `${BASE}taskpane.html` },
  });
});

describe("the built files (npm run build)", () => {
  test("the page of the runtime loads Microsoft's library, then the functions", () => {
    const scripts = [...read("dist/taskpane.html").matchAll(/<script[^>]*\ssrc="?([^"\s>]*)/g)].map(([, src]) => src);
    const library = scripts.indexOf("https://appsforoffice.microsoft.com/lib/1/hosted/office.js");
    expect(library).toBe(0);
    expect(scripts.indexOf("functions.js")).toBeGreaterThan(library);
  });

  test("functions.json declares each function once", () => {
    const { functions } = JSON.parse(read("dist/functions.json"));
    const ids: string[] = functions.map(({ id }: { id: string }) => id);
    expect(ids.length).toBeGreaterThan(0);
    expect(new Set(ids).size).toBe(ids.length);
  });

  test("the built manifest is this one, with the address it was built for", () => {
    const built = read("dist/manifest.xml");
    const address = built.match(/<SourceLocation DefaultValue="([^"]*)taskpane.html"/)![1];
    expect(built).toBe(manifest.replaceAll(BASE, address));
  });
});
