/**
 * A loader for webpack: writes an underscore behind each property with one of the given names, `status_` for `status`. The
 * minimizer leaves a property that a page of a browser has too, and shortens it under the other name.
 */
import ts from "typescript";

/** Whether a name in a module names a property, and whether it stands for its value as well: `{ status }`. */
function roleOf(node) {
  const { parent } = node;
  if (ts.isShorthandPropertyAssignment(parent)) return "both";
  if (ts.isBindingElement(parent) && ts.isObjectBindingPattern(parent.parent)) {
    if (parent.propertyName === node) return "property";
    return parent.name === node && !parent.propertyName && !parent.dotDotDotToken ? "both" : "other";
  }
  const isProperty =
    ts.isPropertyAccessExpression(parent) ||
    ts.isPropertyAssignment(parent) ||
    ts.isPropertyDeclaration(parent) ||
    ts.isMethodDeclaration(parent) ||
    ts.isAccessor(parent);
  return isProperty && parent.name === node ? "property" : "other";
}

export default function renameInner(code) {
  const { names } = this.getOptions();
  const inner = new Set(names);
  const file = ts.createSourceFile("module.js", code, ts.ScriptTarget.ES2022, true);
  const pieces = [];
  let done = 0;
  const visit = (node) => {
    if (ts.isIdentifier(node) && inner.has(node.text)) {
      const role = roleOf(node);
      if (role !== "other") {
        pieces.push(
          code.slice(done, node.getStart(file)),
          role === "both" ? `${node.text}_: ${node.text}` : `${node.text}_`,
        );
        done = node.end;
      }
    }
    ts.forEachChild(node, visit);
  };
  visit(file);
  return [...pieces, code.slice(done)].join("");
}
