/** Reads the JSDoc of the worksheet functions: functions.json and the help page are made from it. */
import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import ts from "typescript";

export interface Parameter {
  readonly name: string;
  readonly isOptional: boolean;
  readonly isRange: boolean;
  readonly text: string;
}

export interface FunctionHelp {
  readonly id: string;
  /** The file of the function, without its ending: functions of one file are one group. */
  readonly group: string;
  readonly description: string;
  readonly parameters: readonly Parameter[];
  readonly returns: string;
  /** Formulas on the example sheet that are shown with their results. */
  readonly examples: readonly string[];
  /** Formulas on the example sheet that are refused, and shown with the reason. */
  readonly refusals: readonly string[];
  /** The standards or papers that the function follows. */
  readonly sources: readonly string[];
  /** Names of drawings. */
  readonly pictures: readonly string[];
}

const oneLine = (comment: ts.JSDoc["comment"]): string =>
  (ts.getTextOfJSDocComment(comment) ?? "").replace(/\s+/g, " ").trim();

function helpOf(node: ts.FunctionDeclaration, group: string): FunctionHelp | undefined {
  const tags = ts.getJSDocTags(node);
  const texts = (name: string): string[] =>
    tags.filter(({ tagName }) => tagName.text === name).map(({ comment }) => oneLine(comment));
  if (!node.name || texts("customfunction").length === 0) return undefined;
  const isRange = (name: string): boolean =>
    node.parameters.find((parameter) => parameter.name.getText() === name)?.type?.getText() === "any[][]";
  return {
    id: node.name.text,
    group,
    description: ts
      .getJSDocCommentsAndTags(node)
      .filter(ts.isJSDoc)
      .map(({ comment }) => oneLine(comment))
      .join(" "),
    parameters: tags.filter(ts.isJSDocParameterTag).map(({ name, isBracketed, comment }) => ({
      name: name.getText(),
      isOptional: isBracketed,
      isRange: isRange(name.getText()),
      text: oneLine(comment),
    })),
    returns: texts("returns").join(" "),
    examples: texts("example"),
    refusals: texts("refuses"),
    sources: texts("source"),
    pictures: texts("picture"),
  };
}

/** The first comment of a file names the group: "Worksheet functions of the specimen: ..." gives "The specimen". */
export function titleOf(folder: string, group: string): string {
  const text = readFileSync(path.join(folder, `${group}.ts`), "utf8");
  const [, thing] = /^\/\*\* Worksheet functions (?:of|for) ([^.:]+)/.exec(text) ?? [];
  if (thing === undefined)
    throw new Error(`src/functions/${group}.ts: begin with "/** Worksheet functions of ...: ... */"`);
  return thing.charAt(0).toUpperCase() + thing.slice(1);
}

/** Every worksheet function in the files of a folder, in the order of each file. */
export function readFunctions(folder: string): FunctionHelp[] {
  return readdirSync(folder)
    .filter((file) => file.endsWith(".ts"))
    .sort()
    .flatMap((file) => {
      const text = readFileSync(path.join(folder, file), "utf8");
      const source = ts.createSourceFile(file, text, ts.ScriptTarget.Latest, true);
      return source.statements
        .filter(ts.isFunctionDeclaration)
        .flatMap((node) => helpOf(node, path.basename(file, ".ts")) ?? []);
    });
}
