/**
 * Every function of src/reduction that other folders import has an example beside it, and each example gives the result
 * written beside it.
 */
import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import ts from "typescript";
import { english } from "../../src/reduction/message";
import * as data from "./example-data";

const SRC = path.join(__dirname, "../../src");
const REDUCTION = path.join(SRC, "reduction");

const parse = (file: string) => ts.createSourceFile(file, readFileSync(file, "utf8"), ts.ScriptTarget.Latest, true);

const sourcesOf = (folder: string): string[] =>
  readdirSync(folder, { recursive: true, encoding: "utf8" })
    .filter((file) => /\.tsx?$/.test(file) && !file.endsWith(".d.ts"))
    .map((file) => path.join(folder, file));

/** The functions that the rest of src imports from the reduction, without types: "file name". */
function takenElsewhere(): Set<string> {
  const taken = new Set<string>();
  for (const file of sourcesOf(SRC).filter((each) => !each.startsWith(REDUCTION)))
    for (const statement of parse(file).statements) {
      if (!ts.isImportDeclaration(statement) || !ts.isStringLiteral(statement.moduleSpecifier)) continue;
      const from = path.resolve(path.dirname(file), statement.moduleSpecifier.text);
      const names = statement.importClause?.namedBindings;
      if (!from.startsWith(REDUCTION) || !names || !ts.isNamedImports(names)) continue;
      for (const { propertyName, name } of names.elements) taken.add(`${from}.ts ${(propertyName ?? name).text}`);
    }
  return taken;
}

interface Documented {
  readonly file: string;
  readonly name: string;
  readonly examples: readonly string[];
}

const isFunction = (value?: ts.Expression): boolean =>
  value !== undefined && (ts.isArrowFunction(value) || ts.isFunctionExpression(value));

const nameOf = (statement: ts.Statement): string | undefined => {
  if (ts.isFunctionDeclaration(statement)) return statement.name?.text;
  if (!ts.isVariableStatement(statement)) return undefined;
  const [declared] = statement.declarationList.declarations;
  return declared && ts.isIdentifier(declared.name) && isFunction(declared.initializer)
    ? declared.name.text
    : undefined;
};

const textOf = (comment: ts.JSDocTag["comment"]): string =>
  (typeof comment === "string" ? comment : (ts.getTextOfJSDocComment(comment) ?? "")).trim();

const functionsOf = (file: string): Documented[] =>
  parse(file).statements.flatMap((statement) => {
    const name = nameOf(statement);
    const examples = ts
      .getJSDocTags(statement)
      .filter(({ tagName }) => tagName.text === "example")
      .map(({ comment }) => textOf(comment));
    return name === undefined ? [] : [{ file, name, examples }];
  });

const FUNCTIONS = sourcesOf(REDUCTION).flatMap(functionsOf);
const EXAMPLES = FUNCTIONS.flatMap(({ file, examples }) =>
  examples.map((example) => ({ file, name: path.relative(REDUCTION, file), example })),
);

/**
 * The names that an example may use: the records of example-data.ts, all exports of the reduction, and first of all
 * those of its own file.
 */
function scopeOf(file: string): Record<string, unknown> {
  const modules = [...new Set(FUNCTIONS.map((each) => each.file)), file].map((each) =>
    jest.requireActual<object>(each),
  );
  return Object.assign({}, ...modules, data) as Record<string, unknown>;
}

function evaluated(expression: string, scope: Record<string, unknown>): unknown {
  // The examples are text of this project; there is no other way to run them unchanged.
  const run = new Function(...Object.keys(scope), `"use strict"; return (${expression});`);
  return run(...Object.values(scope)) as unknown;
}

const isRecord = (value: unknown): value is Record<string, unknown> => typeof value === "object" && value !== null;

/** A result in the form of an example: the value of an Outcome, the text of a refusal or a message. */
function plain(result: unknown): unknown {
  if (Array.isArray(result) || ArrayBuffer.isView(result)) return [...(result as Iterable<unknown>)].map(plain);
  if (!isRecord(result)) return result;
  if (result.ok === true) return plain(result.value);
  if (result.ok === false) return `refused: ${english(result.reason as Parameters<typeof english>[0])}`;
  if ("said" in result || "digits" in result || "verbatim" in result || "listed" in result)
    return english(result as unknown as Parameters<typeof english>[0]);
  return Object.fromEntries(Object.entries(result).map(([key, value]) => [key, plain(value)]));
}

/** Half a unit of the last digit written. */
const halfDigit = (written: number): number => {
  const [digits = "", exponent = "0"] = String(written).split("e");
  return 0.5 * 10 ** (Number(exponent) - (digits.split(".")[1]?.length ?? 0));
};

/** Compares numbers to the digits written; of an object, only the fields written. */
function expectAgree(result: unknown, written: unknown): void {
  if (typeof written === "number" && typeof result === "number") {
    expect(Math.abs(result - written)).toBeLessThanOrEqual(halfDigit(written) * (1 + 1e-9));
    return;
  }
  if (!isRecord(written) || !isRecord(result)) {
    expect(result).toEqual(written);
    return;
  }
  if (Array.isArray(written)) expect(result).toHaveLength(written.length);
  for (const [key, value] of Object.entries(written)) expectAgree(result[key], value);
}

// In the sources that `npm run mutation` changes, some comments lie elsewhere.
const unlessChanged = "__stryker__" in globalThis ? test.skip : test;

unlessChanged("every function of the reduction that other folders import has an example", () => {
  const taken = takenElsewhere();
  const without = FUNCTIONS.filter(({ file, name, examples }) => taken.has(`${file} ${name}`) && !examples.length);
  expect(without.map(({ file, name }) => `${path.relative(REDUCTION, file)}: ${name}`)).toEqual([]);
});

test.each(EXAMPLES)("$name: $example", ({ file, example }) => {
  const [expression = "", written] = example.replace(/\s+/g, " ").split(" // ");
  if (written === undefined) throw new Error("an example ends with // and its result");
  const scope = scopeOf(file);
  const result = plain(evaluated(expression, scope));
  if (written.startsWith("refused: ")) expect(result).toBe(written);
  else expectAgree(result, evaluated(written, {}));
});
