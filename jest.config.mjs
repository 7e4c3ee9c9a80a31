/**
 * Four kinds of tests: `unit` in Node or jsdom, `built` on dist/functions.js, `files` with every written .xlsx, `browser` in Chromium.
 * `npm test` runs the tests of `unit` as `together` and `apart`, and those of `browser` as `pages`.
 */
import { readdirSync, readFileSync } from "node:fs";
import { apart, apartInBrowser, together, togetherInBrowser } from "./test/together/groups.mjs";

const transform = {
  "^.+\\.(t|j|mj)sx?$": [
    "@swc/jest",
    {
      jsc: {
        target: "es2022",
        parser: { syntax: "typescript", tsx: true },
        transform: { react: { runtime: "automatic" } },
      },
    },
  ],
};

/** Packages without CommonJS are transformed too. */
const transformIgnorePatterns = [
  "/node_modules/(?!(@observablehq|d3|d3-[a-z-]+|internmap|delaunator|robust-predicates|isoformat)/)",
];

/**
 * Jest runs tests in a context of its own, where every use of a global such as `Math` is slow. As parameters of every
 * module they are not: test/datasheet/demo.test.ts takes 33 s of processor time and not 53 s, and
 * test/reduction/curve/preconsolidation.test.ts 3 s and not 13 s. A module that declares one of these names itself does
 * not load: `Symbol` is left out for Fluent, `isNaN` for mathjs.
 */
const sandboxInjectedGlobals = [
  "Array",
  "ArrayBuffer",
  "BigInt",
  "Boolean",
  "Error",
  "Float64Array",
  "JSON",
  "Map",
  "Math",
  "Number",
  "Object",
  "Promise",
  "RangeError",
  "RegExp",
  "Set",
  "String",
  "TypeError",
  "Uint8Array",
  "WeakMap",
  "WeakSet",
];

const shared = {
  testEnvironment: "<rootDir>/test/environment.mjs",
  transform,
  transformIgnorePatterns,
  sandboxInjectedGlobals,
  setupFiles: ["<rootDir>/test/optimise-later.ts"],
  // The copies of the tree in which `npm run mutation` works.
  modulePathIgnorePatterns: ["<rootDir>/reports/"],
};

const unit = {
  ...shared,
  globalSetup: "<rootDir>/test/setup.ts",
  globalTeardown: "<rootDir>/test/teardown.ts",
};

const browser = {
  ...shared,
  globalSetup: "<rootDir>/test/browser/setup.ts",
  globalTeardown: "<rootDir>/test/browser/teardown.ts",
};

/** The modules of src/functions with functions for cells. */
const functionModules = readdirSync(new URL("src/functions", import.meta.url))
  .filter((file) => file.endsWith(".ts"))
  .filter((file) => /@customfunction/.test(readFileSync(new URL(`src/functions/${file}`, import.meta.url), "utf8")))
  .map((file) => file.slice(0, -".ts".length));

export default {
  // A test that hangs ends; no test is timed, and a machine with other work may be ten times as slow. No test file sets its own limit.
  testTimeout: 600_000,
  testSequencer: "<rootDir>/test/longest-first.mjs",
  projects: [
    {
      ...unit,
      displayName: "unit",
      testMatch: ["<rootDir>/test/**/*.test.ts"],
      testPathIgnorePatterns: [
        "/node_modules/",
        "<rootDir>/test/browser/",
        "<rootDir>/test/ooxml/files/",
        "<rootDir>/test/together/",
      ],
    },
    {
      ...unit,
      displayName: "together",
      testMatch: ["<rootDir>/test/together/*.test.ts"],
      globals: { TOGETHER: together },
    },
    {
      ...unit,
      displayName: "apart",
      testMatch: apart.map((file) => `<rootDir>/test/${file}`),
    },
    {
      ...unit,
      displayName: "built",
      testMatch: functionModules.map((name) => `<rootDir>/test/functions/${name}.test.ts`),
      moduleNameMapper: { [`/src/functions/(${functionModules.join("|")})$`]: "<rootDir>/test/functions/built.js" },
    },
    {
      ...shared,
      displayName: "files",
      testMatch: ["<rootDir>/test/ooxml/files/**/*.test.ts"],
      globalSetup: "<rootDir>/test/ooxml/files/setup.ts",
      globalTeardown: "<rootDir>/test/teardown.ts",
    },
    {
      ...browser,
      displayName: "browser",
      testMatch: ["<rootDir>/test/browser/**/*.test.ts"],
      testPathIgnorePatterns: ["/node_modules/", "<rootDir>/test/browser/together/"],
    },
    {
      ...browser,
      displayName: "pages",
      testMatch: [
        "<rootDir>/test/browser/together/*.test.ts",
        ...apartInBrowser.map((file) => `<rootDir>/test/browser/${file}`),
      ],
      globals: { TOGETHER: togetherInBrowser },
    },
  ],
};
