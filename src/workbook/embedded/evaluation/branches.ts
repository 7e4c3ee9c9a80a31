/**
 * IF and IFERROR evaluate only the branch that they give, as in Excel. The engine evaluates every argument first: a changed
 * reading of a data sheet took three times as long, because remarks look over 2,000 readings only where something is wrong.
 * Casts: the engine's types do not tell what the code of a formula works with.
 */
import type { CompiledFormula } from "@odoo/o-spreadsheet";

export type Execute = CompiledFormula["execute"];
type Functions = Readonly<Record<string, (...args: unknown[]) => unknown>>;

/** Each stands for a branch that is not evaluated; the engine gives back the one that it chooses. */
const MARKS: readonly unknown[] = [{ value: 0 }, { value: 0 }];

const isOfManyCells = (argument: unknown): boolean =>
  Array.isArray(argument) && (argument.length !== 1 || (argument[0] as unknown[]).length !== 1);

/** What IF or IFERROR (`name`) gives for its first argument and its branches. */
function choose(functions: Functions, name: string, first: unknown, ...branches: (() => unknown)[]): unknown {
  // Every cell of a range chooses for itself.
  if (isOfManyCells(first)) return functions[name]?.(first, ...branches.map((branch) => branch()));
  const args = MARKS.slice(0, branches.length);
  const given = functions[name]?.(first, ...args);
  const chosen = args.indexOf(given);
  if (chosen < 0) return given;
  args[chosen] = branches[chosen]?.();
  return functions[name]?.(first, ...args);
}

/** A line of the engine's code: the variable that it sets, if it does not return, and the expression. */
const LINE = /^(?:const (_\d+) =|return) (.*);$/;
const VARIABLE = /(?<![\w.'])_\d+\b/g;
const CHOICE = /^ctx\['(IF|IFERROR)'\]\((_\d+),(.+)\)$/;

/**
 * The code of a formula as one expression, in which each branch stands in a function. The engine's code sets a variable for every part of the
 * formula and uses it once. Undefined if the code has another form.
 */
export function withBranches(code: string): string | undefined {
  const expressions = new Map<string, string>();
  const inlined = (text: string): string => text.replace(VARIABLE, (name) => expressions.get(name) ?? name);
  let whole: string | undefined;
  for (const line of code.trim().split("\n")) {
    const [, variable, expression] = LINE.exec(line.trim()) ?? [];
    if (expression === undefined || whole !== undefined) return undefined;
    const [, name, first, branches] = CHOICE.exec(expression) ?? [];
    const text =
      name && first && branches
        ? `choose(ctx, '${name}', ${[inlined(first), ...branches.split(",").map((one) => `() => (${inlined(one)})`)].join(", ")})`
        : inlined(expression);
    if (variable === undefined) whole = text;
    else expressions.set(variable, text);
  }
  return whole;
}

/** The code of a formula, from its source; of IF and IFERROR only the branch that they give is evaluated. */
export function lazily(execute: Execute, source: string): Execute {
  if (!/ctx\['IF(?:ERROR)?'\]/.test(source)) return execute;
  const code = withBranches(source.slice(source.indexOf("{") + 1, source.lastIndexOf("}")));
  return code === undefined
    ? execute
    : (new Function("choose", `return function (deps, ref, range, getSymbolValue, ctx) { return ${code}; };`)(
        choose,
      ) as Execute);
}
