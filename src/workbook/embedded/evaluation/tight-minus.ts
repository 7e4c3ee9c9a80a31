/**
 * A minus sign before a power: in Excel -A1^2 is (-A1)^2 (Microsoft, "Calculation operators and precedence in Excel": negation comes
 * before exponentiation), in the engine it is -(A1^2). The formula gets the parentheses, with which both mean the same.
 */
import { tokenize } from "@odoo/o-spreadsheet";

interface Token {
  readonly type: string;
  readonly value: string;
}

const OPERANDS = new Set(["NUMBER", "REFERENCE", "SYMBOL", "STRING"]);

const isSpace = (token: Token | undefined): boolean => token?.type === "SPACE";
const before = (tokens: readonly Token[], at: number): number => {
  let found = at - 1;
  while (isSpace(tokens[found])) found--;
  return found;
};
const behind = (tokens: readonly Token[], at: number): number => {
  let found = at;
  while (isSpace(tokens[found])) found++;
  return found;
};

/** True if a minus at this place is a sign, and no subtraction. */
function isSign(tokens: readonly Token[], at: number): boolean {
  const last = tokens[before(tokens, at)];
  return last === undefined || (["OPERATOR", "LEFT_PAREN", "ARG_SEPARATOR"].includes(last.type) && last.value !== "%");
}

/** The place behind the parenthesis that closes the one at a place. */
function closed(tokens: readonly Token[], from: number): number {
  let depth = 0;
  for (let at = from; at < tokens.length; at++) {
    if (tokens[at]?.type === "LEFT_PAREN") depth++;
    if (tokens[at]?.type === "RIGHT_PAREN" && --depth === 0) return at + 1;
  }
  return tokens.length;
}

/** The place behind the operand that begins at a place; undefined if none begins there. */
function operandEnd(tokens: readonly Token[], from: number): number | undefined {
  const type = tokens[from]?.type;
  if (type === "LEFT_PAREN") return closed(tokens, from);
  if (type === undefined || !OPERANDS.has(type)) return undefined;
  const next = behind(tokens, from + 1);
  return type === "SYMBOL" && tokens[next]?.type === "LEFT_PAREN" ? closed(tokens, next) : from + 1;
}

const PARENTHESES: readonly [Token, Token] = [
  { type: "LEFT_PAREN", value: "(" },
  { type: "RIGHT_PAREN", value: ")" },
];

/** The formula ("=...") in which every sign before a power stands in parentheses with what it negates. */
export function withTightMinus(formula: string): string {
  if (!/-.*\^/s.test(formula)) return formula;
  let tokens: readonly Token[] = tokenize(formula);
  // From the last sign to the first: of two signs, the second belongs to the operand of the first.
  for (let at = tokens.length - 1; at > 0; at--) {
    if (tokens[at]?.value !== "-" || tokens[at]?.type !== "OPERATOR" || !isSign(tokens, at)) continue;
    const end = operandEnd(tokens, behind(tokens, at + 1));
    if (end === undefined || tokens[behind(tokens, end)]?.value !== "^") continue;
    const [open, close] = PARENTHESES;
    tokens = [...tokens.slice(0, at), open, ...tokens.slice(at, end), close, ...tokens.slice(end)];
  }
  return tokens.map(({ value }) => value).join("");
}
