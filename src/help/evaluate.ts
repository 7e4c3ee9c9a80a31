/** Calculates the examples of the help page with the worksheet functions of the add-in. */
import { CellError } from "../functions/cells";
import type { Message } from "../reduction/message";
import { firstOf, nth } from "../reduction/numeric/lists";
import { exampleRows, type Cell } from "./example-sheet";
import type { FunctionHelp } from "./jsdoc";

type WorksheetFunction = (...cells: any[]) => unknown;

export type Result =
  { readonly rows: readonly (readonly Cell[])[] } | { readonly code: string; readonly reason: Message };

/** Calculates a formula of one worksheet function on the example sheet. */
export type Calculate = (formula: string) => Result;

/** The worksheet functions, registered as in Excel. */
export async function loadFunctions(): Promise<ReadonlyMap<string, WorksheetFunction>> {
  const functions = new Map<string, WorksheetFunction>();
  Object.assign(globalThis, {
    CustomFunctions: { associate: (id: string, compute: WorksheetFunction) => void functions.set(id, compute) },
  });
  await import("../functions");
  return functions;
}

const FORMULA = /^=CLAY\.(\w+)\((.*)\)$/;
/** The arguments of a formula without functions in its arguments; a comma within a text belongs to the text. */
const ARGUMENT = /("(?:[^"]|"")*"|[^,"]*)(?:,|$)/g;
const RANGE = /^([A-Z])(\d+)(?::([A-Z])(\d+))?$/;

const columnOf = (letter: string): number => letter.charCodeAt(0) - "A".charCodeAt(0);

/** An argument as Excel passes it: a range as rows, a single cell as its value, an omitted argument as null. */
function argumentOf(text: string, formula: string): unknown {
  if (text === "") return null;
  if (text.startsWith('"')) return text.slice(1, -1).replaceAll('""', '"');
  const range = RANGE.exec(text);
  if (range) {
    const [left, top] = [nth(range, 1), nth(range, 2)];
    const [right = left, bottom = top] = range.slice(3);
    const rows = exampleRows()
      .slice(Number(top) - 1, Number(bottom))
      .map((row) => row.slice(columnOf(left), columnOf(right) + 1));
    const alone = aloneIn(rows);
    return alone === undefined ? rows : alone;
  }
  const number = Number(text);
  if (!Number.isFinite(number)) throw new Error(`${formula}: "${text}" is no number, text or range`);
  return number;
}

/** The value if the rows consist of a single cell; otherwise undefined. */
export const aloneIn = <T>(rows: readonly (readonly T[])[]): T | undefined =>
  rows.length === 1 && firstOf(rows).length === 1 ? firstOf(firstOf(rows)) : undefined;

/** The name of the function in a formula, and its arguments as text. */
function partsOf(formula: string): { readonly id: string; readonly written: string } {
  const [, id, written] = FORMULA.exec(formula) ?? [];
  if (id === undefined || written === undefined)
    throw new Error(`${formula} is no formula of one worksheet function: write =CLAY.NAME(...)`);
  return { id, written };
}

/** The function that a formula calls. */
export const calledBy = (formula: string): string => partsOf(formula).id;

/**
 * Calculates a formula of one worksheet function on the example sheet: the spilled cells, or the reason of the refusal.
 */
export function evaluate(
  formula: string,
  { parameters }: Pick<FunctionHelp, "parameters">,
  functions: ReadonlyMap<string, WorksheetFunction>,
): Result {
  const { id, written } = partsOf(formula);
  const compute = functions.get(id);
  if (!compute) throw new Error(`${formula}: there is no such function`);
  const texts = [...written.matchAll(ARGUMENT)].map((found) => nth(found, 1).trim());
  const given = texts.slice(0, Math.max(1, texts.length - 1));
  if (given.length > parameters.length) throw new Error(`${formula} has more arguments than the function`);
  const cells = parameters.map(({ isRange }, index) => {
    const cell = argumentOf(given[index] ?? "", formula);
    return isRange && cell !== null && !Array.isArray(cell) ? [[cell]] : cell;
  });
  try {
    const value = compute(...cells);
    // A value that is not a list of rows is a single cell.
    return { rows: Array.isArray(value) ? value : [[value as Cell]] };
  } catch (error) {
    if (error instanceof CellError) return { code: error.code, reason: error.reason };
    throw error;
  }
}
