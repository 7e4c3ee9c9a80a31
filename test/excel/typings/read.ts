/** Reads the namespace Excel of `@types/office-js` with TypeScript's own parser. */
import ts from "typescript";
import type { Call, Kind, Member, Requirement, Shape, Typings } from "./table";

type Mutable<T> = { -readonly [K in keyof T]: T[K] };

/**
 * The text of the typings without everything outside the namespace Excel: the parser then reads a third of the file.
 */
function excelPart(text: string): string {
  const start = text.indexOf("\ndeclare namespace Excel {");
  const end = text.indexOf("\n}\n", start);
  if (start < 0 || end < 0) throw new Error("the typings of office-js declare no namespace Excel");
  return text.slice(start, end + 3);
}

export function readTypings(text: string): Typings {
  const source = ts.createSourceFile("excel.d.ts", excelPart(text), ts.ScriptTarget.Latest, false);
  const shapes: Record<string, Shape> = {};
  const kinds: Record<string, Kind> = {};
  const visit = (node: ts.Node): void => {
    if (ts.isModuleDeclaration(node) && node.body) return ts.forEachChild(node.body, visit);
    if (ts.isClassDeclaration(node) || ts.isInterfaceDeclaration(node)) addShape(shapes, node, source);
    else if (ts.isEnumDeclaration(node)) kinds[node.name.text] = wordsOf(node);
    else if (ts.isTypeAliasDeclaration(node)) kinds[node.name.text] = kindOf(node.type, source);
  };
  ts.forEachChild(source, visit);
  return { shapes, kinds };
}

const wordsOf = (node: ts.EnumDeclaration): Kind => ({
  is: "words",
  words: node.members.flatMap(({ initializer }) =>
    initializer && ts.isStringLiteral(initializer) ? [initializer.text] : [],
  ),
});

function addShape(
  shapes: Record<string, Shape>,
  node: ts.ClassDeclaration | ts.InterfaceDeclaration,
  source: ts.SourceFile,
): void {
  const bases = (node.heritageClauses ?? []).flatMap(({ types }) =>
    types.map(({ expression }) => expression.getText(source).split(".").at(-1)!),
  );
  // An interface may be declared in several parts.
  const before = shapes[node.name!.text];
  shapes[node.name!.text] = {
    isClass: ts.isClassDeclaration(node),
    bases: [...(before?.bases ?? []), ...bases],
    members: { ...before?.members, ...membersOf(node.members, source) },
  };
}

function membersOf(
  nodes: readonly (ts.ClassElement | ts.TypeElement)[],
  source: ts.SourceFile,
): Record<string, Member> {
  const members: Record<string, Mutable<Member>> = {};
  for (const node of nodes) {
    if (!node.name) continue;
    const name = ts.isStringLiteral(node.name) ? node.name.text : node.name.getText(source);
    const comment = commentOf(node, source);
    const isReadonly = (ts.getCombinedModifierFlags(node as ts.Declaration) & ts.ModifierFlags.Readonly) !== 0;
    const member: Mutable<Member> = {
      isReadonly,
      isOptional: "questionToken" in node && node.questionToken !== undefined,
      isNotOnTheWeb: /not supported (?:in|on) Excel on the web/i.test(comment),
    };
    const needs = requirementOf(comment);
    if (needs) member.needs = needs;
    if (ts.isMethodDeclaration(node) || ts.isMethodSignature(node)) {
      const call = callOf(node, source);
      const calls = [...(members[name]?.calls ?? []), call];
      members[name] = { ...member, ...members[name], calls };
    } else if ((ts.isPropertyDeclaration(node) || ts.isPropertySignature(node)) && node.type) {
      member.kind = kindOf(node.type, source);
      members[name] = member;
    }
  }
  return members;
}

const callOf = (node: ts.MethodDeclaration | ts.MethodSignature, source: ts.SourceFile): Call => ({
  parameters: node.parameters.map((one) => ({
    name: one.name.getText(source),
    kind: one.type ? kindOf(one.type, source) : { is: "any" },
    isOptional: one.questionToken !== undefined,
    isRest: one.dotDotDotToken !== undefined,
  })),
  gives: node.type ? kindOf(node.type, source) : { is: "any" },
});

function commentOf(node: ts.Node, source: ts.SourceFile): string {
  const [first] = ts.getLeadingCommentRanges(source.text, node.pos)?.slice(-1) ?? [];
  return first ? source.text.slice(first.pos, first.end) : "";
}

function requirementOf(comment: string): Requirement | undefined {
  const [, set, version] = /\[Api set: (\w+) ([\d.]+)/.exec(comment) ?? [];
  if (set) return { set, version };
  return /\[Api set: (\w*BETA\w*|\w+ BETA)/i.test(comment) ? { set: "preview", version: "99" } : undefined;
}

function kindOf(node: ts.TypeNode, source: ts.SourceFile): Kind {
  switch (node.kind) {
    case ts.SyntaxKind.StringKeyword:
      return { is: "string" };
    case ts.SyntaxKind.NumberKeyword:
      return { is: "number" };
    case ts.SyntaxKind.BooleanKeyword:
      return { is: "boolean" };
    case ts.SyntaxKind.VoidKeyword:
    case ts.SyntaxKind.UndefinedKeyword:
      return { is: "void" };
  }
  if (ts.isParenthesizedTypeNode(node)) return kindOf(node.type, source);
  if (ts.isArrayTypeNode(node)) return { is: "list", of: kindOf(node.elementType, source) };
  if (ts.isUnionTypeNode(node)) return either(node.types.map((one) => kindOf(one, source)));
  if (ts.isLiteralTypeNode(node)) {
    if (ts.isStringLiteral(node.literal)) return { is: "words", words: [node.literal.text] };
    return { is: node.literal.kind === ts.SyntaxKind.NullKeyword ? "void" : "any" };
  }
  if (ts.isTypeLiteralNode(node)) return { is: "record", members: membersOf(node.members, source) };
  if (ts.isTypeReferenceNode(node)) {
    const name = node.typeName.getText(source).split(".").at(-1)!;
    const [argument] = node.typeArguments ?? [];
    if (name === "ClientResult") return { is: "answer", of: kindOf(argument, source) };
    if (name === "Array" || name === "ReadonlyArray") return { is: "list", of: kindOf(argument, source) };
    return { is: "named", name };
  }
  return { is: "any" };
}

/** One list of words in place of a union of many. */
function either(kinds: readonly Kind[]): Kind {
  const words = kinds.flatMap((kind) => (kind.is === "words" ? kind.words : []));
  const others = kinds.filter(({ is }) => is !== "words");
  const all: Kind[] = [...(words.length > 0 ? [{ is: "words" as const, words }] : []), ...others];
  return all.length === 1 ? all[0] : { is: "either", of: all };
}
