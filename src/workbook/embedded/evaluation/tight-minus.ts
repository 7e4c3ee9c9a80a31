/**
 * A sign before an operand. In Excel it comes before every other operator (Microsoft, "Calculation operators and precedence in Excel":
 * negation comes before percent signs, powers and products): -A1^2 is (-A1)^2, and 10^-3*5 is (10^-3)*5. In the engine it comes
 * behind powers and beside products. Typed formulas get the parentheses with which both mean the same; formulas of a file get those
 * that the engine would leave out.
 */
import { tokenize } from "@odoo/o-spreadsheet";

interface Token {
  readonly type: string;
  readonly value: string;
}

const OPERANDS = new Set(["NUMBER", "REFERENCE", "SYMBOL", "STRING"]);
/** Operators behind their operand. */
const POSTFIX = new Set(["%", "#"]);

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

/** True for a plus or minus at this place that is a sign, and neither an addition nor a subtraction. */
function isSign(tokens: readonly Token[], at: number): boolean {
  const token = tokens[at];
  if (token?.type !== "OPERATOR" || (token.value !== "-" && token.value !== "+")) return false;
  const last = tokens[before(tokens, at)];
  return (
    last === undefined || (["OPERATOR", "LEFT_PAREN", "ARG_SEPARATOR"].includes(last.type) && !POSTFIX.has(last.value))
  );
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

/** The place behind a number, a name, a function with its arguments, a group, or a sign with its operand. */
function simpleEnd(tokens: readonly Token[], from: number): number | undefined {
  const type = tokens[from]?.type;
  if (isSign(tokens, from)) return operandEnd(tokens, behind(tokens, from + 1));
  if (type === "LEFT_PAREN") return closed(tokens, from);
  if (type === undefined || !OPERANDS.has(type)) return undefined;
  const next = behind(tokens, from + 1);
  return tokens[next]?.type === "LEFT_PAREN" ? closed(tokens, next) : from + 1;
}

/** The place behind the operand that begins at a place, with its percent sign or the end of its range; undefined if none begins there. */
function operandEnd(tokens: readonly Token[], from: number): number | undefined {
  let end = simpleEnd(tokens, from);
  while (end !== undefined) {
    const next = behind(tokens, end);
    const value = tokens[next]?.value ?? "";
    if (POSTFIX.has(value)) end = next + 1;
    else if (value === ":") end = simpleEnd(tokens, behind(tokens, next + 1));
    else break;
  }
  return end;
}

const [OPEN, CLOSE]: readonly [Token, Token] = [
  { type: "LEFT_PAREN", value: "(" },
  { type: "RIGHT_PAREN", value: ")" },
];

const textOf = (tokens: readonly Token[]): string => tokens.map(({ value }) => value).join("");

/** The formula ("=...") in which every sign that the engine would read otherwise than Excel stands in parentheses with its operand. */
export function withTightMinus(formula: string): string {
  if (!/-.*\^|[/^]\s*[-+]/s.test(formula)) return formula;
  let tokens: readonly Token[] = tokenize(formula);
  // From the last sign to the first: of two signs, the second belongs to the operand of the first.
  for (let at = tokens.length - 1; at > 0; at--) {
    if (!isSign(tokens, at)) continue;
    const end = operandEnd(tokens, behind(tokens, at + 1));
    if (end === undefined) continue;
    const last = tokens[before(tokens, at)]?.value ?? "";
    const next = tokens[behind(tokens, end)]?.value ?? "";
    const isOther = (next === "^" && tokens[at]?.value === "-") || (/^[/^]$/.test(last) && /^[*/^]$/.test(next));
    if (isOther) tokens = [...tokens.slice(0, at), OPEN, ...tokens.slice(at, end), CLOSE, ...tokens.slice(end)];
  }
  return textOf(tokens);
}

/** Stands for the parentheses of a group while the engine spells a formula. */
const GROUP = "CLAYLEDGER.GROUP";

/** Whether only a sign and its operand stand between the parenthesis at a place and the one that closes it. */
const isSignAlone = (tokens: readonly Token[], at: number): boolean => {
  const end = operandEnd(tokens, behind(tokens, at + 1));
  return end !== undefined && behind(tokens, end) === closed(tokens, at) - 1;
};

/**
 * The formula with a function in place of each group behind a sign or with a sign at its beginning. When the engine spells a formula for
 * Excel, it leaves out the parentheses of -(A1^2) and of 10^(-A1*2), which Excel needs. Those of (-A1)^2 Excel does not need: -A1^2 is
 * saved as it was typed.
 */
export function withHeldGroups(formula: string): string {
  if (!/[-+]\s*\(|\(\s*[-+]/.test(formula)) return formula;
  const tokens: readonly Token[] = tokenize(formula);
  const isHeld = (at: number): boolean => {
    const first = behind(tokens, at + 1);
    const last = before(tokens, at);
    if (isSign(tokens, last)) return true;
    return isSign(tokens, first) && !OPERANDS.has(tokens[last]?.type ?? "") && !isSignAlone(tokens, at);
  };
  return textOf(
    tokens.map((token, at) => (token.type === "LEFT_PAREN" && isHeld(at) ? { ...token, value: `${GROUP}(` } : token)),
  );
}

/** The spelling of a formula that `withHeldGroups` gave, with its groups as groups. */
export const withoutHeldGroups = (spelling: string): string => spelling.replaceAll(GROUP, "");
