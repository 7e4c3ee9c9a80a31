/** The help page as it is built (npm run build), and the examples that it shows. */
import "../workbook/embedded/engine-in-node";
import { readFileSync } from "node:fs";
import path from "node:path";
import { evaluate, loadFunctions, type Result } from "../../src/help/evaluate";
import { exampleRows } from "../../src/help/example-sheet";
import { readFunctions } from "../../src/help/jsdoc";
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
beforeAll(async () => {
  functions = await loadFunctions();
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

describe.each(["help.html", "first-minutes.html"])("%s", (file) => {
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

test("every help address in functions.json leads to an anchor of the page, at the address of the manifest", () => {
  const base = /<SourceLocation DefaultValue="([^"]*)taskpane.html"/.exec(built("manifest.xml"))![1];
  const places = anchors(built("help.html"));
  for (const { id, helpUrl } of metadata.functions) {
    expect(helpUrl).toBe(`${base}help.html#${id.toLowerCase()}`);
    expect(places).toContain(id.toLowerCase());
  }
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
      expect(at(0, 0)).toMatchObject({ value: result.code, message: result.reason });
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
