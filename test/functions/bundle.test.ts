/**
 * The files for Excel and for outside checks: dist/functions.js and dist/functions.json (`npm run build` makes them),
 * loaded without a page around them.
 */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { createContext, runInContext } from "node:vm";
import ts from "typescript";
import { LIMITS } from "../../src/checks/limits";
import { INNER_NAMES } from "../../src/functions/inner-names";
import { METHOD_NAMES } from "../../src/reduction/curve/method-words";
import type { Digits, Listed, Message, Verbatim } from "../../src/reduction/message";
import { UNITS } from "../../src/reduction/units";
import { FIELDS } from "../../src/specification/fields";

type WorksheetFunction = (...cells: unknown[]) => unknown;

interface Parameter {
  name: string;
  description?: string;
  dimensionality?: string;
  optional?: boolean;
}
interface Metadata {
  allowErrorForDataTypeAny?: boolean;
  allowCustomDataForDataTypeAny?: boolean;
  functions: {
    id: string;
    name: string;
    description?: string;
    helpUrl?: string;
    parameters: Parameter[];
    result: { dimensionality?: string };
  }[];
}

const dist = (file: string): string => readFileSync(join(__dirname, "../../dist", file), "utf8");
const code = dist("functions.js");
const metadata: Metadata = JSON.parse(dist("functions.json"));

/** Loads the bundle with CustomFunctions alone; reading any global of a page counts as touching it. */
function load(
  hosts: Record<string, unknown> = {},
  others: Record<string, unknown> = {},
): { functions: Map<string, WorksheetFunction>; touched: string[] } {
  const functions = new Map<string, WorksheetFunction>();
  const touched: string[] = [];
  const globals: Record<string, unknown> = {
    ...others,
    CustomFunctions: { associate: (id: string, fn: WorksheetFunction) => functions.set(id, fn), ...hosts },
  };
  for (const name of [
    "document",
    "window",
    "fetch",
    "XMLHttpRequest",
    "navigator",
    "location",
    "localStorage",
    "setTimeout",
  ])
    Object.defineProperty(globals, name, { get: () => void touched.push(name), configurable: true });
  runInContext(code, createContext(globals));
  return { functions, touched };
}

/** A host error like the one of CustomFunctions. */
class HostError extends Error {
  constructor(
    readonly code: string,
    message: string,
  ) {
    super(message);
  }
}
const hosts = { Error: HostError, ErrorCode: { invalidValue: "#VALUE!", notAvailable: "#N/A" } };
const bare = load();
const hosted = load(hosts);

const call = (fn: WorksheetFunction, ...cells: unknown[]): { value?: unknown; error?: HostError } => {
  try {
    return { value: fn(...cells) };
  } catch (error) {
    return { error: error as HostError };
  }
};
const everyCell = (value: unknown): unknown[] => (Array.isArray(value) ? value.flatMap(everyCell) : [value]);

test("a refusal gives its reason where the host has no global object", () => {
  const { functions } = load(hosts, { globalThis: undefined });
  expect(call(functions.get("WATER_CONTENT")!, 1, 2, 3).error).toEqual(
    call(hosted.functions.get("WATER_CONTENT")!, 1, 2, 3).error,
  );
});

test("loading touches no page and no network, with or without the host's error class", () => {
  expect(bare.touched).toEqual([]);
  expect(hosted.touched).toEqual([]);
});

/** Every name in the built file, and every text that could name a property. */
function namesIn(file: string): Set<string> {
  const names = new Set<string>();
  const collect = (node: ts.Node): void => {
    if (ts.isIdentifier(node) || ts.isStringLiteralLike(node)) names.add(node.text);
    ts.forEachChild(node, collect);
  };
  collect(ts.createSourceFile("functions.js", file, ts.ScriptTarget.ES2022));
  return names;
}

/** The properties of a message, which the translator of a page reads: the type checker knows all of them. */
const OF_MESSAGES: Readonly<Record<keyof (Digits & Listed & Message & Verbatim), true>> = {
  said: true,
  values: true,
  cause: true,
  load: true,
  row: true,
  digits: true,
  verbatim: true,
  cell: true,
  label: true,
  isListWord: true,
  listed: true,
  between: true,
};

test("the build shortens the names that only its own code uses, and none of a cell, a unit, a method, a limit, Excel or a message", () => {
  const built = namesIn(code);
  expect(INNER_NAMES.filter((name) => built.has(name))).toEqual([]);
  const outer = [
    ...FIELDS.map(({ name }) => name),
    ...Object.values(UNITS).flatMap((units) => Object.keys(units)),
    ...METHOD_NAMES,
    ...LIMITS.flatMap(({ name }) => name.split(".")),
  ];
  expect(outer.length).toBeGreaterThan(200);
  expect(outer.filter((name) => INNER_NAMES.includes(name))).toEqual([]);
  const shared = ["basicType", "basicValue", "numberFormat", "clayledgerTranslator", ...Object.keys(OF_MESSAGES)];
  expect(shared.filter((name) => !built.has(name))).toEqual([]);
});

test("the functions described are the functions registered", () => {
  const ids = metadata.functions.map(({ id }) => id).sort();
  expect(ids.length).toBeGreaterThan(14);
  expect([...bare.functions.keys()].sort()).toEqual(ids);
  expect([...hosted.functions.keys()].sort()).toEqual(ids);
});

/**
 * The names that Excel accepts for a function. Source: Microsoft, "Custom functions naming and localization"
 * (learn.microsoft.com/office/dev/add-ins/excel/custom-functions-naming): it starts with a letter, has at least three
 * characters of A to Z, 0 to 9, underscore and period, and is no reference to a cell (A1 to XFD1048576, R1C1 to
 * R1048576C16384). The length of at most 128 characters is custom-functions-metadata's own rule.
 */
test("Excel takes the name of every function", () => {
  const refusals = (id: string): string[] => [
    ...(/^[A-Z][A-Z0-9_.]{2,127}$/.test(id) ? [] : ["characters or length"]),
    ...(/^[A-Z]{1,3}\d{1,7}$|^R\d{1,7}C\d{1,5}$/.test(id) ? ["a cell"] : []),
  ];
  expect(["MV", "_MV", "1ST", "Mv_", "CV50", "R1C1"].filter((id) => refusals(id).length === 0)).toEqual([]);
  for (const { id } of metadata.functions) expect([id, refusals(id)]).toEqual([id, []]);
});

/**
 * Desktop Excel reads no list of functions of more than 1 MB, and gives no reason (OfficeDev/office-js issue 4808). A function takes at most
 * 255 arguments (Microsoft, "Excel specifications and limits"). Optional arguments come last (Microsoft, "Custom functions parameter
 * options"). Custom functions lead to help by https.
 */
test.each(["functions.json", "functions-de.json"])("Excel reads %s, and the arguments of each function", (file) => {
  const refusals = (text: string): string[] => [
    ...(Buffer.byteLength(text) < 1_000_000 ? [] : ["more than 1 MB"]),
    ...(JSON.parse(text) as Metadata).functions.flatMap(({ id, parameters, helpUrl = "" }) => [
      ...(parameters.length <= 255 ? [] : [`${id} has ${parameters.length} arguments`]),
      ...(parameters.some(({ optional }, index) => !optional && parameters[index - 1]?.optional)
        ? [`${id} has an optional argument before a required one`]
        : []),
      ...(/^https:\/\/[^ ]{1,247}$/.test(helpUrl) ? [] : [`the help of ${id} is at "${helpUrl}"`]),
    ]),
  ];
  const one = { id: "ONE", name: "ONE", result: {}, helpUrl: "https://example.org/#one" };
  const list = (change: object): string => JSON.stringify({ functions: [{ ...one, parameters: [], ...change }] });
  const [given, optional] = [{ name: "a" }, { name: "b", optional: true }];
  expect(refusals(list({ parameters: [given, optional] }))).toEqual([]);
  for (const [change, said] of [
    [{ description: "x".repeat(1_000_000) }, /1 MB/],
    [{ parameters: Array.from({ length: 256 }, () => given) }, /256 arguments/],
    [{ parameters: [optional, given] }, /optional argument before/],
    [{ helpUrl: "http://example.org" }, /help of ONE/],
  ] as const)
    expect(refusals(list(change)).join()).toMatch(said);
  expect(refusals(dist(file))).toEqual([]);
});

/**
 * `allowCustomDataForDataTypeAny` passes data types, errors among them. Beside it `allowErrorForDataTypeAny` adds
 * nothing, and both together end Excel LTSC 2021. Source: Microsoft's answer of 2024-05-07 in OfficeDev/office-js issue
 * 4385.
 */
test("cells with errors and with data objects reach the functions, by one flag alone", () => {
  const flags = Object.entries(metadata).filter(([key]) => key.startsWith("allow"));
  expect(flags).toEqual([["allowCustomDataForDataTypeAny", true]]);
});

describe.each(metadata.functions.map((fn) => [fn.id, fn] as const))(
  "%s",
  (id, { name, description, helpUrl, parameters, result }) => {
    const fn = hosted.functions.get(id)!;

    test("is described, parameter by parameter, on one line each", () => {
      expect(name).toBe(id);
      expect(id).toMatch(/^[A-Z][A-Z0-9_]*$/);
      expect(helpUrl).toMatch(/^https:\/\//);
      for (const text of [description, ...parameters.map((parameter) => parameter.description)]) {
        expect(text).toBeTruthy();
        expect(text).not.toMatch(/\n/);
        // Excel's function wizard cuts texts at 255 characters.
        expect([text, text!.length <= 255]).toEqual([text, true]);
      }
      const firstOptional = parameters.findIndex(({ optional }) => optional);
      if (firstOptional >= 0) expect(parameters.slice(firstOptional).every(({ optional }) => optional)).toBe(true);
    });

    const blanks = (blank: unknown): unknown[] =>
      parameters.map(({ dimensionality }) => (dimensionality === "matrix" ? [[blank], [blank], [blank]] : blank));
    const cases: [string, unknown[]][] = [
      ["nothing", []],
      ["blanks from the web", blanks(null)],
      ["empty text", blanks("")],
      ["blanks from the desktop", blanks(0)],
      ["text", blanks("abc")],
      ["error objects", blanks({ type: "Error", basicType: "Error", basicValue: "#REF!", errorType: "Ref" })],
      ["huge numbers", blanks(1e308)],
      ["tiny numbers", blanks(5e-324)],
      ["negative numbers", blanks(-1)],
      ["logical values", blanks(true)],
      [
        "blocks of cells",
        parameters.map(() => [
          [1, 2],
          [3, 4],
        ]),
      ],
    ];
    test.each(cases)("given %s, it returns a value, or an error that says why", (_, cells) => {
      const { value, error } = call(fn, ...cells);
      if (error) {
        expect(error).toBeInstanceOf(HostError);
        expect(["#VALUE!", "#N/A"]).toContain(error.code);
        expect(error.message.length).toBeGreaterThan(10);
        expect(error.message).not.toMatch(/failed inside|undefined|NaN|\[object/);
      } else {
        for (const cell of everyCell(value)) {
          expect(["number", "string", "boolean"]).toContain(typeof cell);
          if (typeof cell === "number") expect(Number.isFinite(cell)).toBe(true);
        }
        // A function that may spill always returns an array, the others never.
        expect(Array.isArray(value)).toBe(result.dimensionality === "matrix");
      }
    });

    test("blanks from the web and from the desktop give the same answers", () => {
      const web = call(fn, ...blanks(null));
      const desktop = call(fn, ...blanks(0));
      expect(web.value).toEqual(desktop.value);
      expect([web.error?.code, web.error?.message]).toEqual([desktop.error?.code, desktop.error?.message]);
    });

    test("without the host's error class the error still carries code and message", () => {
      const { error } = call(bare.functions.get(id)!, ...blanks("abc"));
      if (parameters.length) {
        expect(["#VALUE!", "#N/A"]).toContain(error?.code);
        expect(error?.message.length).toBeGreaterThan(10);
      }
    });
  },
);

test("a number that is infinite or NaN becomes an error", () => {
  // 1e308 g in a specimen of 1e-9 mm overflows any double.
  const { error } = call(hosted.functions.get("DENSITY")!, 1e308, 1e-9, 1e-9);
  expect([error?.code, error?.message]).toEqual([
    "#VALUE!",
    "CLAY.DENSITY finds no finite number for these cells: look for one that is far too large or too small",
  ]);
});

test("a sheet shows no negative zero", () => {
  const { value } = call(hosted.functions.get("DEFORMATION")!, [[5]], 5, -1);
  expect(Object.is((value as number[][])[0][0], 0)).toBe(true);
});
