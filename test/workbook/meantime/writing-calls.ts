/**
 * Every place of the pane and of the page of `npm start` at which a person makes the program write into a workbook, found in
 * the sources: a call of a method of the port that writes, or of a function that makes such a call further down.
 */
import { readdirSync, readFileSync } from "node:fs";
import { dirname, join, relative } from "node:path";
import ts from "typescript";
import type { WorkbookPort } from "../../../src/workbook/port";

type Method = Exclude<keyof WorkbookPort, "host" | "savesFiles">;

/** Whether a method of the port changes the workbook. The type names a method that is missing here. */
const WRITES: Readonly<Record<Method, boolean>> = {
  sheetNames: false,
  activeSheet: false,
  readSheets: false,
  findSheets: false,
  lookAt: false,
  countsFrom1904: false,
  calculate: true,
  insertSheet: true,
  selection: false,
  values: false,
  show: false,
  readContents: false,
  hidden: false,
  readNames: false,
  fillNames: true,
  writeCells: true,
  listNames: false,
  nameAll: true,
  reenterFormulas: true,
  insertFile: true,
  isProtected: false,
  protect: true,
  onChange: false,
  onSelect: false,
  noteWork: true,
  strikeWork: true,
  unfinishedWork: false,
};

const SOURCES = join(__dirname, "../../../src");

const filesOf = (folder: string): string[] =>
  readdirSync(folder, { withFileTypes: true, recursive: true })
    .filter((entry) => entry.isFile() && /\.tsx?$/.test(entry.name))
    .map((entry) => join(entry.parentPath, entry.name));

/** A function, or a value, declared at the top of a file: what it calls, by "file name" or "port method". */
interface Declared {
  readonly file: string;
  readonly name: string;
  readonly calls: ReadonlySet<string>;
}

/** The names that a file imports from other files of the sources, with "file name" of each. */
function importsOf(source: ts.SourceFile, file: string, files: ReadonlySet<string>): Map<string, string> {
  const imported = new Map<string, string>();
  for (const statement of source.statements) {
    if (!ts.isImportDeclaration(statement) || !ts.isStringLiteral(statement.moduleSpecifier)) continue;
    const path = join(dirname(file), statement.moduleSpecifier.text);
    const from = [path, `${path}.ts`, `${path}.tsx`, join(path, "index.ts")].find((one) => files.has(one));
    const bindings = statement.importClause?.namedBindings;
    if (!from || !bindings || !ts.isNamedImports(bindings)) continue;
    for (const { name, propertyName } of bindings.elements)
      imported.set(name.text, `${from} ${(propertyName ?? name).text}`);
  }
  return imported;
}

/** The names that a statement at the top of a file declares. */
const namesOf = (statement: ts.Statement): string[] =>
  ts.isVariableStatement(statement)
    ? statement.declarationList.declarations.map(({ name }) => name.getText())
    : ts.isFunctionDeclaration(statement) || ts.isClassDeclaration(statement)
      ? [statement.name?.text ?? ""]
      : [""];

function declaredIn(file: string, files: ReadonlySet<string>): Declared[] {
  const source = ts.createSourceFile(file, readFileSync(file, "utf8"), ts.ScriptTarget.Latest, true);
  const imported = importsOf(source, file, files);
  const own = new Set(source.statements.flatMap(namesOf));
  const callsIn = (statement: ts.Statement): Set<string> => {
    const calls = new Set<string>();
    const look = (node: ts.Node): void => {
      if (ts.isCallExpression(node)) {
        const { expression: called } = node;
        if (ts.isPropertyAccessExpression(called) && /\bport$/.test(called.expression.getText()))
          calls.add(`port ${called.name.text}`);
      }
      // A function is also called by another that it is given to.
      if (ts.isIdentifier(node) && !ts.isPropertyAccessExpression(node.parent))
        calls.add(imported.get(node.text) ?? (own.has(node.text) ? `${file} ${node.text}` : ""));
      ts.forEachChild(node, look);
    };
    look(statement);
    return calls;
  };
  return source.statements
    .filter((statement) => !ts.isImportDeclaration(statement))
    .flatMap((statement) => namesOf(statement).map((name) => ({ file, name, calls: callsIn(statement) })));
}

/** A component, a hook or a page: what a person works with, and not a function of the work itself. */
const isView = ({ file, name }: Declared): boolean =>
  file.endsWith(".tsx") || /^use[A-Z]/.test(name) || file.endsWith("host/index.ts");

/**
 * "screens/data-sheet/sheet-check.tsx mendCells", or "host/index.ts port.insertSheet" for a call of the port itself: every
 * function that writes, and that a component, a hook or the page calls.
 */
export function writingCalls(): string[] {
  const files = new Set([...filesOf(join(SOURCES, "pane")), ...filesOf(join(SOURCES, "host"))]);
  const all = [...files].flatMap((file) => declaredIn(file, files));
  const writing = new Set(Object.entries(WRITES).flatMap(([method, does]) => (does ? [`port ${method}`] : [])));
  for (let before = -1; before !== writing.size;) {
    before = writing.size;
    for (const one of all)
      if (!isView(one) && [...one.calls].some((call) => writing.has(call))) writing.add(`${one.file} ${one.name}`);
  }
  const shown = (call: string): string => call.replace(/^port /, "port.").replace(/^\S+ /, "");
  return all
    .filter(isView)
    .flatMap(({ file, calls }) =>
      [...calls].filter((call) => writing.has(call)).map((call) => `${relative(SOURCES, file)} ${shown(call)}`),
    )
    .filter((call, index, calls) => calls.indexOf(call) === index)
    .sort();
}
