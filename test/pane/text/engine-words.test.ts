/** The German words of the embedded sheet, compared with the texts in the sheet's own code. */
import { readFileSync } from "node:fs";
import path from "node:path";
import { engine } from "../../../src/pane/text/de/engine";

const DIST = path.join(__dirname, "../../../node_modules/@odoo/o-spreadsheet/dist");
const code = readFileSync(path.join(DIST, "o_spreadsheet.esm.js"), "utf8");
const templates = readFileSync(path.join(DIST, "o_spreadsheet.xml"), "utf8").replace(/<!--[^]*?-->/g, "");

/** A text between quotes in code. */
const QUOTED = /_t\(\s*("(?:[^"\\]|\\.)*"|'(?:[^'\\]|\\.)*')/g;

/** The text that a quoted text of code stands for. */
const unquoted = (quoted: string): string =>
  quoted.slice(1, -1).replace(/\\(?:x([0-9A-Fa-f]{2})|(.))/g, (_, hex, sign) => {
    if (hex) return String.fromCharCode(parseInt(hex, 16));
    return sign === "n" ? "\n" : sign;
  });

/** The texts of the code, by the file of the sheet's developers that has them. */
const inCode = code.split(/^\/\/#region /m).flatMap((region) => {
  const [file] = region.split("\n", 1);
  return [...region.matchAll(QUOTED)].map(([, quoted]) => ({ file: file!, text: unquoted(quoted!) }));
});

const decoded = (text: string): string =>
  text
    .replace(/&quot;/g, '"')
    .replace(/&amp;/g, "&")
    .replace(/&#xA0;/g, " ")
    .replace(/\s+/g, " ")
    .trim();

/** The texts of the templates: between tags, in attributes of elements, and in attributes of components that are translated. */
const inTemplates = [
  ...[...templates.matchAll(/>([^<>]+)</g)].map(([, text]) => text!),
  ...[...templates.matchAll(/<[a-z][\w-]*(?:\s+[\w.:-]+="[^"]*")+/g)].flatMap(([tag]) =>
    [...tag.matchAll(/\s(?:title|placeholder|label|alt)="([^"]*)"/g)].map(([, text]) => text!),
  ),
  ...[...templates.matchAll(/\.translate="([^"]*)"/g)].map(([, text]) => text!),
].map(decoded);

/** The library of functions has its descriptions in English only, and so have the errors of functions for finance and databases. */
const ofLibrary = (file: string): boolean => /^src\/functions\/(?:module|helper)_/.test(file);

/** Texts that German has too: functions, and the name by which the engine calls a formula that stands at a place. */
const SAME = ["SUM", "AVERAGE", "COUNT", "MAX", "MIN", "%s (positional)"];

/** What a sentence has places for: "%s", "%(name)s" and the name of the function. */
const placesOf = (text: string): string[] => (text.match(/%s|%\(\w+\)s|\[\[\w+\]\]/g) ?? []).sort();

test("each text of the sheet's menus, side panels, questions and errors has a German one", () => {
  const texts = [...inCode.filter(({ file }) => !ofLibrary(file)).map(({ text }) => text), ...inTemplates];
  expect(texts.length).toBeGreaterThan(900);
  const left = texts.filter((text) => /\p{L}{2}/u.test(text) && !SAME.includes(text) && !(text in engine));
  expect([...new Set(left)]).toEqual([]);
});

test("each German text has the English one of the sheet, or of the page", () => {
  const OWN = /wordFor\("([^"]*)"|wordFor\('([^']*)'/g;
  const folder = path.join(__dirname, "../../../src/workbook/embedded/evaluation");
  const ours = ["as-in-excel", "lacking", "array-functions", "aggregate", "more-functions", "unread"].flatMap((name) =>
    [...readFileSync(path.join(folder, `${name}.ts`), "utf8").matchAll(OWN)].map(([, text, other]) => text ?? other),
  );
  const known = new Set([...inCode.map(({ text }) => text), ...inTemplates, ...ours]);
  expect(Object.keys(engine).filter((english) => !known.has(english))).toEqual([]);
});

test("each German text has places for the same values as the English one", () => {
  const differing = Object.entries(engine).filter(
    ([english, german]) => String(placesOf(english)) !== String(placesOf(german)),
  );
  expect(differing).toEqual([]);
});
