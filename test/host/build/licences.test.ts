import { execFileSync } from "node:child_process";
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { componentsOf, INSIDE, licencesText, listOf, packageOf } from "../../../src/host/build/licences/components";

const root = path.join(__dirname, "../../..");
const dist = path.join(root, "dist");

describe("the packages of a bundle", () => {
  let modules: string;
  beforeAll(() => (modules = path.join(mkdtempSync(path.join(tmpdir(), "clayledger-licences-")), "node_modules")));
  afterAll(() => rmSync(path.dirname(modules), { recursive: true }));

  const install = (name: string, licence: unknown, files: Record<string, string> = { LICENSE: `text of ${name}` }) => {
    const folder = path.join(modules, name);
    mkdirSync(folder, { recursive: true });
    writeFileSync(path.join(folder, "package.json"), JSON.stringify({ name, version: "1.2.3", license: licence }));
    for (const [file, text] of Object.entries(files)) writeFileSync(path.join(folder, file), text);
    return folder;
  };

  test.each([
    ["/home/clayledger/src/pane/index.tsx", undefined],
    ["/home/clayledger/node_modules/react/index.js", "/home/clayledger/node_modules/react"],
    ["/home/clayledger/node_modules/@griffel/core/src/a.js", "/home/clayledger/node_modules/@griffel/core"],
    ["/clayledger/node_modules/a/node_modules/@b/c/d.js", "/clayledger/node_modules/a/node_modules/@b/c"],
    ["C:\\clayledger\\node_modules\\@b\\c\\d.js", "C:\\clayledger\\node_modules\\@b\\c"],
  ])("%s belongs to %s", (file, folder) => expect(packageOf(file)).toBe(folder));

  test("each is listed once, with every file that contains it, its licence and its notice", () => {
    const apache = install("units", "Apache-2.0", { LICENSE: "the licence", NOTICE: "the notice", "index.js": "" });
    const plain = install("@scope/plain", "MIT");
    const components = componentsOf([
      { folder: apache, file: "pane.js" },
      { folder: plain, file: "pane.js" },
      { folder: apache, file: "host.js" },
      { folder: apache, file: "pane.js" },
    ]);
    expect(components).toEqual([
      { name: "@scope/plain", version: "1.2.3", licence: "MIT", files: ["pane.js"], texts: ["text of @scope/plain"] },
      {
        name: "units",
        version: "1.2.3",
        licence: "Apache-2.0",
        files: ["host.js", "pane.js"],
        texts: ["the licence", "the notice"],
      },
    ]);
    const written = licencesText("our own", components);
    for (const text of ["our own", "text of @scope/plain", "the licence", "the notice"])
      expect(written.split(text)).toHaveLength(2);
    expect(listOf(written)).toMatch(/^units 1\.2\.3 +Apache-2\.0 +host\.js, pane\.js$/m);
    expect(listOf(written)).not.toContain("the licence");
  });

  test("a text that two packages share appears once, under the names of both", () => {
    const folders = ["one", "two"].map((name) => install(name, "ISC", { "LICENCE.md": "the same\r\ntext\n" }));
    const written = licencesText("our own", componentsOf(folders.map((folder) => ({ folder, file: "pane.js" }))));
    expect(written).toContain("one 1.2.3, two 1.2.3\n\nthe same\ntext\n");
    expect(written.split("the same")).toHaveLength(2);
  });

  test("a package copied into a published file of another package is listed with it", () => {
    const [[outer, [inner]]] = Object.entries(INSIDE) as [[string, [string]]];
    install(inner, "MIT");
    const components = componentsOf([{ folder: install(outer, "MIT"), file: "vendor/a.js" }]);
    expect(components.map(({ name, files }) => [name, files])).toEqual([
      [inner, ["vendor/a.js"]],
      [outer, ["vendor/a.js"]],
    ]);
  });

  test.each<[string, () => string, string, RegExp]>([
    ["without a text of its licence", () => install("silent", "MIT", {}), "pane.js", /silent comes without the text/],
    [
      "under a licence that asks for more than a notice",
      () => install("strict", "GPL-3.0-only"),
      "pane.js",
      /strict is under GPL-3\.0-only/,
    ],
    [
      "under the LGPL, if it is bundled",
      () => install("lesser", "LGPL-3.0-only"),
      "pane.js",
      /lesser is under LGPL-3\.0-only/,
    ],
    ["without the name of a licence", () => install("nameless", undefined), "pane.js", /does not name itself/],
  ])("one %s ends the build with a sentence", (_, folder, file, sentence) => {
    expect(() => componentsOf([{ folder: folder(), file }])).toThrow(sentence);
  });

  test("the LGPL is accepted for a file that is served as it was published", () => {
    const folder = install("replaceable", "LGPL-3.0-only");
    expect(componentsOf([{ folder, file: "vendor/replaceable.js" }])).toHaveLength(1);
  });
});

describe("dist as it is built (npm run build)", () => {
  const written = readFileSync(path.join(dist, "licences.txt"), "utf8");
  const list = listOf(written);

  test("every script, style sheet and font that is served is in the list", () => {
    const files = (readdirSync(dist, { recursive: true }) as string[])
      .map((file) => file.split(path.sep).join("/"))
      .filter((file) => /\.(?:js|css|woff2?|ttf|otf|eot)$/.test(file));
    expect(files.length).toBeGreaterThan(9);
    expect(files.filter((file) => !list.includes(file))).toEqual([]);
  });

  /** Words that the code of each package writes into a page or an error, and that the minimizer does not change. */
  test.each([
    ["react-dom", "https://reactjs.org/docs/error-decoder.html", "pane.js"],
    ["@griffel/core", "data-make-styles-bucket", "pane.js"],
    ["@observablehq/plot", "--plot-background", "host.js"],
    ["papaparse", "UndetectableDelimiter", "pane.js"],
    ["fflate", "invalid zip data", "host.js"],
    ["@kurkle/color", "@kurkle/color", "vendor/chart/chart.umd.min.js"],
  ])("%s is listed for the files that contain its code", (name, words, file) => {
    expect(readFileSync(path.join(dist, file), "utf8")).toContain(words);
    expect(list).toMatch(new RegExp(`^${name} \\d.*${file.replaceAll(".", "\\.")}`, "m"));
  });

  test.each([
    ["the OFL of the icons' font", "SIL OPEN FONT LICENSE Version 1.1"],
    ["the font's copyright", "Copyright Dave Gandy 2016"],
    ["the LGPL", "GNU LESSER GENERAL PUBLIC LICENSE"],
    ["the GPL, which the LGPL refers to", "GNU GENERAL PUBLIC LICENSE"],
    ["React's", "Copyright (c) Facebook, Inc. and its affiliates."],
    ["D3's", "Mike Bostock"],
    ["our own", readFileSync(path.join(root, "LICENSE"), "utf8").trim()],
  ])("the text has %s", (_, words) => expect(written).toContain(words));

  test("of the fonts only woff2 is served", () => {
    const fonts = (readdirSync(dist, { recursive: true }) as string[]).filter((file) =>
      /\.(?:woff2?|ttf|otf|eot)$/.test(file),
    );
    expect(fonts.map((font) => path.basename(font))).toEqual(["fontawesome-webfont.woff2"]);
  });

  test("npm run licences prints the list", () => {
    const printed = execFileSync(process.execPath, ["--import", "tsx", "src/host/build/licences/list.ts"], {
      cwd: root,
    });
    expect(printed.toString()).toBe(list);
  });
});
