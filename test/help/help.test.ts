/** The help page as it is built (npm run build), and the examples that it shows. */
import "../workbook/embedded/engine-in-node";
import { readFileSync } from "node:fs";
import path from "node:path";
import { createElement } from "react";
import { renderToStaticMarkup } from "react-dom/server";
import { CellError } from "../../src/functions/cells";
import { evaluate, loadFunctions, type Result } from "../../src/help/evaluate";
import { EXAMPLE_SHEET, exampleRows } from "../../src/help/example-sheet";
import { readFunctions } from "../../src/help/jsdoc";
import { inLanguage, LANGUAGE_FOLDERS, textsIn } from "../../src/help/languages";
import { cellIn, errorIn, formulaIn } from "../../src/help/notation";
import { HELP_WORDS } from "../../src/help/text";
import { translateAnswers } from "../../src/pane/live/sheet-language";
import { CATALOGUES } from "../../src/pane/text";
import { fileIn, LANGUAGES, setLanguage, type Language } from "../../src/pane/text/language";
import { translateBy } from "../../src/record/told";
import { english, say, verbatim } from "../../src/reduction/message";
import { Model } from "../../src/workbook/embedded/engine";
import { registerRealFunctions } from "../workbook/embedded/real-functions";

const root = path.join(__dirname, "../..");
const built = (file: string): string => readFileSync(path.join(root, "dist", file), "utf8");
const help = readFunctions(path.join(root, "src/functions"));
const metadata: { functions: { id: string; helpUrl: string; parameters: { name: string }[] }[] } = JSON.parse(
  built("functions.json"),
);
const anchors = (html: string): string[] => [...html.matchAll(/ id="([^"]*)"/g)].map(([, id]) => id);

const examples = help.flatMap((one) => [...one.examples, ...one.refusals].map((formula) => ({ formula, one })));
const results = new Map<string, Result>();
let functions: Awaited<ReturnType<typeof loadFunctions>>;

/** What the functions of dist/functions.js refuse, by the formulas; they refuse in the language of the pane. */
function refusedByBuilt(language: Language): ReadonlyMap<string, Result> {
  class HostError extends CellError {
    constructor(code: CellError["code"], message: string) {
      super(code, say`${verbatim(message)}`);
    }
  }
  const made = new Map<string, (...cells: any[]) => unknown>();
  const associate = (id: string, compute: (...cells: any[]) => unknown): void => void made.set(id, compute);
  Object.assign(globalThis, { CustomFunctions: { associate, Error: HostError } });
  jest.isolateModules(() => jest.requireActual("../../dist/functions.js"));
  translateAnswers();
  setLanguage(language);
  try {
    return new Map(
      help.flatMap((one) => one.refusals.map((formula) => [formula, evaluate(formula, one, made)] as const)),
    );
  } finally {
    setLanguage("en");
    translateBy(undefined);
  }
}
let refusedIn: Readonly<Record<string, ReadonlyMap<string, Result>>>;

beforeAll(async () => {
  functions = await loadFunctions();
  refusedIn = Object.fromEntries(LANGUAGES.map((language) => [language, refusedByBuilt(language)]));
  for (const { formula, one } of examples) results.set(formula, evaluate(formula, one, functions));
  // The functions register once when they are loaded: the sheet loads them again.
  jest.resetModules();
  await registerRealFunctions({ blankAs: null });
});

describe("the JSDoc of the functions", () => {
  test("describes exactly the functions and arguments that functions.json declares", () => {
    const told = help.map(({ id, parameters }) => [id, parameters.map(({ name }) => name)]);
    const declared = metadata.functions.map(({ id, parameters }) => [id, parameters.map(({ name }) => name)]);
    expect(new Map(told as [string, string[]][])).toEqual(new Map(declared as [string, string[]][]));
  });

  test.each(help.map((one) => [one.id, one] as const))("%s has an example, a refusal and a source", (_, one) => {
    expect(one.examples.length).toBeGreaterThan(0);
    expect(one.refusals.length).toBeGreaterThan(0);
    expect(one.sources.length).toBeGreaterThan(0);
  });
});

const PAGES = ["help.html", "first-minutes.html"].flatMap((page) =>
  LANGUAGES.map((language) => fileIn(page, language)),
);

describe.each(PAGES)("%s", (file) => {
  const html = built(file);

  test("works without a script and sends no request", () => {
    expect(html).not.toMatch(/<script|javascript:|\son\w+="/i);
    const asked = [...html.matchAll(/\s(?:src|href)="([^"]*)"/g)].map(([, address]) => address);
    expect(asked.filter((address) => !/^(#|data:|[\w-]+\.html(#|$))/.test(address))).toEqual([]);
    expect(html).not.toMatch(/url\((?!#)|@import/);
  });

  test("has each anchor once, and every link within it or to the other page leads to one", () => {
    expect(anchors(html)).toEqual([...new Set(anchors(html))]);
    for (const [, page, anchor] of html.matchAll(/href="([\w-]*(?:\.html)?)#([^"]*)"/g))
      expect([anchor, anchors(page ? built(page) : html)]).toEqual([anchor, expect.arrayContaining([anchor])]);
  });
});

test.each(LANGUAGES)(
  "%s: every help address of the functions leads to an anchor of the page in the language",
  (language) => {
    const base = /<SourceLocation DefaultValue="([^"]*)taskpane.html"/.exec(built("manifest.xml"))![1];
    const page = fileIn("help.html", language);
    const places = anchors(built(page));
    const { functions: described }: typeof metadata = JSON.parse(built(fileIn("functions.json", language)));
    expect(described.length).toBe(metadata.functions.length);
    for (const { id, helpUrl } of described) {
      expect(helpUrl).toBe(`${base}${page}#${id.toLowerCase()}`);
      expect(places).toContain(id.toLowerCase());
    }
  },
);

const escaped = (text: string): string => renderToStaticMarkup(createElement("p", null, text)).slice(3, -4);

describe.each(LANGUAGES)("the help in %s", (language) => {
  const html = built(fileIn("help.html", language));
  const words = HELP_WORDS[language];

  test("has the cautions of the pane, and the description of every function with those of its arguments", () => {
    const texts = textsIn(LANGUAGE_FOLDERS, language);
    for (const caution of CATALOGUES[language].about.cautions) expect(html).toContain(escaped(caution));
    for (const { description, parameters, returns, sources } of help.map((one) => inLanguage(texts, one))) {
      for (const text of [description, returns, ...sources, ...parameters.map((one) => one.text)])
        expect(html).toContain(escaped(text));
      for (const { name } of parameters) expect(html).toContain(`<dt><code>${name}</code>`);
    }
  });

  test("shows every example as Excel in the language takes it, and names every column of the example sheet", () => {
    for (const { formula } of examples) expect(html).toContain(`<code>${escaped(formulaIn(words.notation, formula))}`);
    for (const { heading } of EXAMPLE_SHEET)
      expect(html).toContain(`>${language === "en" ? heading : words.page.sheet.columns[heading]}</th>`);
  });
});

test.each(LANGUAGES)("the help in %s shows each refusal as the cell says it, and in no other words", (language) => {
  const html = built(fileIn("help.html", language));
  const { notation } = HELP_WORDS[language];
  const refused = [...refusedIn[language]];
  expect(refused.length).toBeGreaterThanOrEqual(help.length);
  const wrong = refused.filter(([formula, result]) => {
    if (!("code" in result)) return true;
    const said = `<strong>${errorIn(notation, result.code)}</strong> ${escaped(english(result.reason))}`;
    return !html.includes(`<p><code>${escaped(formulaIn(notation, formula))}</code></p><p>${said}</p></div>`);
  });
  expect(wrong).toEqual([]);
});

test("a German pane refuses in German: no sentence is the English one", () => {
  const said = (language: Language, formula: string): string => {
    const result = refusedIn[language].get(formula);
    return result && "code" in result ? english(result.reason) : "";
  };
  expect([...refusedIn.de.keys()].filter((formula) => said("de", formula) === said("en", formula))).toEqual([]);
});

test("German formulas and numbers have semicolons and decimal commas; texts in quotation marks stay", () => {
  const { notation } = HELP_WORDS.de;
  expect(formulaIn(notation, '=CLAY.STRAIN(4.014,"25,4",A2:B3)')).toBe('=CLAY.STRAIN(4,014;"25,4";A2:B3)');
  expect(formulaIn(HELP_WORDS.en.notation, '=CLAY.STRAIN(4.014,"25,4")')).toBe('=CLAY.STRAIN(4.014,"25,4")');
  expect(cellIn(notation, 0.336273456)).toBe("0,336273");
  expect(cellIn(notation, "e = 1.45")).toBe("e = 1.45");
  expect([errorIn(notation, "#N/A"), errorIn(notation, "#DIV/0!")]).toEqual(["#NV", "#DIV/0!"]);
});

/**
 * The open-source sheet calculates the same formulas on the same cells: it has its own parser, and calls the built
 * functions. 1e-9 allows for another order of additions.
 */
describe("the examples, calculated by a sheet that is not ours", () => {
  const letter = (column: number): string => String.fromCharCode(65 + column);
  const cells: Record<string, string> = {};
  exampleRows().forEach((row, index) =>
    row.forEach((cell, column) => {
      if (cell !== null) cells[`${letter(column)}${index + 1}`] = String(cell);
    }),
  );
  test.each(examples.map(({ formula }) => formula))("%s", (formula) => {
    const model = new Model({
      sheets: [
        { id: "s", name: "S", cells },
        { id: "t", name: "T", rowNumber: 400, cells: { A1: formula.replace(/(?<=[(,])[A-Z]\d+/g, "S!$&") } },
      ],
    } as never);
    const at = (row: number, col: number) => model.getters.getEvaluatedCell({ sheetId: "t", row, col });
    const result = results.get(formula)!;
    if ("code" in result) {
      expect(at(0, 0)).toMatchObject({ value: result.code, message: english(result.reason) });
      return;
    }
    result.rows.forEach((row, index) =>
      row.forEach((cell, column) => {
        const { value } = at(index, column);
        if (typeof cell === "number") expect(Math.abs(Number(value) - cell)).toBeLessThanOrEqual(1e-9 * Math.abs(cell));
        else expect(value ?? "").toBe(cell);
      }),
    );
  });
});

test.each([
  ["LOG_TIME(1)", /no formula of one worksheet function/],
  ["=SUM(A1)", /no formula of one worksheet function/],
  ["=CLAY.WATER_CONTENT(1,2,3,4)", /more arguments than the function/],
  ["=CLAY.WATER_CONTENT(1,A2+1)", /is no number, text or range/],
  ["=CLAY.NOTHING(1)", /no such function/],
])("%s is not an example", (formula, reason) => {
  const waterContent = help.find(({ id }) => id === "WATER_CONTENT")!;
  expect(() => evaluate(formula, waterContent, functions)).toThrow(reason);
});
