import { existsSync, readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import hooks from "eslint-plugin-react-hooks";
import ts from "typescript";
import tseslint from "typescript-eslint";

const WORKBOOK = ["reduction", "reduction/numeric", "workbook"];
const CORE = [...WORKBOOK, "workbook/file", "workbook/look", "workbook/rules"];
const RECORD = [...CORE, "specification", "record"];
const PANE = ["pane/text", "pane/ui", "pane/live"];
/**
 * Imports go one way: each folder of src with the other folders that it may import. A folder within a folder has its
 * own row.
 */
const MAY_IMPORT = {
  "reduction/numeric": [],
  reduction: ["reduction/numeric"],
  workbook: ["reduction", "reduction/numeric"],
  "workbook/file": WORKBOOK,
  "workbook/look": WORKBOOK,
  "workbook/rules": WORKBOOK,
  "workbook/office": CORE,
  "workbook/embedded": CORE,
  specification: CORE,
  record: [...CORE, "specification"],
  plots: ["reduction", "reduction/numeric"],
  datasheet: RECORD,
  exchange: RECORD,
  checks: RECORD,
  book: [...RECORD, "checks"],
  report: [...RECORD, "checks", "book", "plots"],
  summary: RECORD,
  functions: ["reduction", "reduction/numeric", "record", "checks", "book"],
  help: ["reduction", "reduction/numeric", "plots", "functions", "pane/text"],
  "pane/text": ["workbook", "workbook/look", "reduction", "reduction/numeric", "specification"],
  "pane/ui": ["reduction/numeric", "plots", "pane/text"],
  "pane/live": [...RECORD, "pane/text"],
  "pane/screens": [...RECORD, ...PANE, "plots", "datasheet", "exchange", "checks", "book", "report", "summary"],
  "pane/shell": [...PANE, "workbook", "workbook/office", "datasheet", "pane/screens"],
  host: [...CORE, "workbook/embedded", "datasheet", "plots", "pane/text", "pane/live"],
};

const FOLDERS = Object.keys(MAY_IMPORT);
const isWithin = (folder, parent) => folder.startsWith(`${parent}/`);
const without = readdirSync("src", { withFileTypes: true })
  .flatMap((one) => (one.isDirectory() ? [one.name] : []))
  .find((folder) => !FOLDERS.some((one) => one === folder || isWithin(one, folder)));
if (without)
  throw new Error(`src/${without} has no row in MAY_IMPORT: say in eslint.config.mjs which folders it may import`);

/** The innermost folder with a row that a file lies in; undefined if there is none. */
function folderOf(file) {
  const inSrc = path.relative("src", file).split(path.sep).join("/");
  return FOLDERS.filter((one) => isWithin(inSrc, one)).sort((a, b) => b.length - a.length)[0];
}

/** The file of the module that a file imports under a name. */
function fileOf(from, name) {
  const at = path.resolve(path.dirname(from), name);
  return [".ts", ".tsx"].map((ending) => at + ending).find((one) => existsSync(one)) ?? path.join(at, "index.ts");
}

/** Modules import only from the folders that their own may import. With import-x/no-restricted-paths the linter takes 7 s longer. */
const oneWay = {
  create: ({ filename, report }) => {
    const folder = folderOf(filename);
    const check = (node) => {
      if (typeof node?.value !== "string" || !node.value.startsWith(".")) return;
      const other = folderOf(fileOf(filename, node.value));
      if (other && other !== folder && !MAY_IMPORT[folder].includes(other))
        report({ node, message: `src/${folder} must not import src/${other}` });
    };
    return folder === undefined
      ? {}
      : {
          "ImportDeclaration, ExportNamedDeclaration, ExportAllDeclaration, ImportExpression": ({ source }) =>
            check(source),
          TSImportType: ({ source, argument }) => check(source ?? argument.literal),
          "CallExpression[callee.name='require'] > Literal": check,
        };
  },
};

/** Statements that name another module, as the formatter lays them out. The compiler reads only these: of whole files it takes 5 s. */
const STATEMENTS = /^(?:import|export)\b(?:[^;]*?\bfrom)? "[^"]+";/gm;
const LATER = /\bimport\((?:\/\*.*?\*\/\s*)?"(\.[^"]+)"\)/g;

/** The names of the modules beside it that a module imports, at its head or later; imports of types alone do not count. */
function namesIn(text) {
  const naming = (text.match(STATEMENTS) ?? []).join("\n");
  const { statements } = ts.createSourceFile("", naming, ts.ScriptTarget.Latest);
  const atHead = statements.flatMap(({ moduleSpecifier, importClause, isTypeOnly }) => {
    const named = importClause?.namedBindings?.elements;
    const onlyTypes = named?.length > 0 && !importClause.name && named.every((one) => one.isTypeOnly);
    const isType = isTypeOnly || importClause?.isTypeOnly || onlyTypes;
    return moduleSpecifier?.text.startsWith(".") && !isType ? [moduleSpecifier.text] : [];
  });
  return [...atHead, ...Array.from(text.matchAll(LATER), ([, name]) => name)];
}

/** The modules that each module imports, by their files. */
const IMPORTS = new Map();
function importsOf(file) {
  if (!IMPORTS.has(file)) {
    const files = namesIn(readFileSync(file, "utf8")).flatMap((name) => {
      const at = path.resolve(path.dirname(file), name);
      return [at, `${at}.ts`, `${at}.tsx`, path.join(at, "index.ts"), path.join(at, "index.tsx")];
    });
    IMPORTS.set(
      file,
      files.filter((one) => /\.tsx?$/.test(one) && existsSync(one)),
    );
  }
  return IMPORTS.get(file);
}

/** The modules from which a module can be reached again, by its file: those in a circle with it, and itself. */
const CIRCLES = new Map();

/** Finds the circles of a module and of all that it imports (Tarjan's strongly connected components). */
function findCircles(start) {
  const order = new Map();
  const lowest = new Map();
  const open = [];
  const visit = (file) => {
    order.set(file, order.size);
    lowest.set(file, order.get(file));
    open.push(file);
    for (const next of importsOf(file)) {
      if (!order.has(next) && !CIRCLES.has(next)) visit(next);
      if (!CIRCLES.has(next)) lowest.set(file, Math.min(lowest.get(file), lowest.get(next)));
    }
    if (lowest.get(file) !== order.get(file)) return;
    const circle = open.splice(open.indexOf(file));
    for (const one of circle) CIRCLES.set(one, circle);
  };
  if (!CIRCLES.has(start)) visit(start);
}

/** The way from a module back to itself over the modules that it imports, all of which lie in a circle with it. */
function wayBack(from, to) {
  const cameFrom = new Map([[from, undefined]]);
  for (const one of cameFrom.keys())
    for (const next of importsOf(one).filter((file) => CIRCLES.get(to).includes(file))) {
      if (next === to) {
        const way = [];
        for (let at = one; at; at = cameFrom.get(at)) way.unshift(at);
        return way;
      }
      if (!cameFrom.has(next)) cameFrom.set(next, one);
    }
  return undefined;
}

/** Modules do not import each other in a circle. With import-x/no-cycle the linter takes 25 s longer. */
const noCycle = {
  create: ({ filename, report }) => ({
    Program(node) {
      findCircles(filename);
      for (const module of importsOf(filename).filter((one) => CIRCLES.get(filename).includes(one))) {
        const way = wayBack(module, filename);
        const names = way?.map((one) => path.relative("src", one)).join(" -> ");
        if (way) report({ node, message: `this module is imported again by way of ${names}` });
      }
    },
  }),
};

/**
 * A cast says why: in a comment on its line, on the line before it or before its statement, or in the comment at the head of
 * the file ("Casts: ...").
 */
const castSaysWhy = {
  create: ({ sourceCode, report }) => {
    const comments = sourceCode.getAllComments();
    const commented = new Set(
      comments.flatMap(({ loc: { start, end } }) =>
        Array.from({ length: end.line - start.line + 1 }, (_, index) => start.line + index),
      ),
    );
    const isSaid = (line) => commented.has(line) || commented.has(line - 1);
    const isSaidAtHead = comments[0]?.loc.start.line === 1 && comments[0].value.includes("Casts: ");
    return {
      "TSAsExpression:not([typeAnnotation.typeName.name='const']), TSTypeAssertion"(node) {
        let whole = node;
        while (whole.parent && !/Statement$|Declaration$|PropertyDefinition/.test(whole.type)) whole = whole.parent;
        const lines = [whole, node, node.typeAnnotation].map(({ loc }) => loc.start.line);
        if (!isSaidAtHead && !lines.some(isSaid)) report({ node, message: "say in a comment why this cast holds" });
      },
    };
  },
};

export default tseslint.config(
  {
    files: ["src/**/*.{ts,tsx,mjs}"],
    languageOptions: { parser: tseslint.parser },
    plugins: { own: { rules: { "cast-says-why": castSaysWhy, "no-cycle": noCycle, "one-way": oneWay } } },
    rules: {
      "no-console": "error",
      eqeqeq: ["error", "always", { null: "ignore" }],
      "own/one-way": "error",
      "own/no-cycle": "error",
      "own/cast-says-why": "error",
      "max-lines-per-function": ["error", { max: 80, skipBlankLines: true, skipComments: true, IIFEs: true }],
      "max-params": ["error", 6],
    },
  },
  {
    // The parameters of a worksheet function are the arguments that a person writes in a cell, each in its place.
    files: ["src/functions/**"],
    rules: {
      "max-params": "off",
      "no-restricted-syntax": [
        "error",
        {
          selector:
            ":not(ExportNamedDeclaration) > FunctionDeclaration[params.length>6], ExportNamedDeclaration > FunctionDeclaration[id.name=/[a-z]/][params.length>6], ArrowFunctionExpression[params.length>6]",
          message: "more than 6 parameters: take one object",
        },
      ],
    },
  },
  {
    files: ["src/pane/**"],
    plugins: { "react-hooks": hooks },
    rules: { "react-hooks/rules-of-hooks": "error", "react-hooks/exhaustive-deps": "error" },
  },
  { files: ["src/host/serve.mjs"], rules: { "no-console": "off" } },
  {
    // A cast hides from the type checker a word that Excel does not know. Where no type can express it, the rule is
    // disabled for the line, with a comment that says why.
    files: ["src/workbook/office/**"],
    rules: {
      "no-restricted-syntax": [
        "error",
        {
          selector: "TSAsExpression:not([typeAnnotation.typeName.name='const']), TSTypeAssertion",
          message: "say it by a type of Excel's own (a typed record), not by a cast",
        },
      ],
    },
  },
);
