/** Calculates the examples of the help page with the worksheet functions of the add-in. */
import { CellError } from "../functions/cells";
import { exampleRows, type Cell } from "./example-sheet";
import type { FunctionHelp } from "./jsdoc";

type WorksheetFunction = (...cells: any[]) => unknown;

export type Result =
  { readonly rows: readonly (readonly Cell[])[] } | { readonly code: string; readonly reason: string };

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
    const [, left, top, right = left, bottom = top] = range;
    const rows = exampleRows()
      .slice(Number(top) - 1, Number(bottom))
      .map((row) => row.slice(columnOf(left), columnOf(right) + 1));
    return rows.length === 1 && rows[0].length === 1 ? rows[0][0] : rows;
  }
  const number = Number(text);
  if (!Number.isFinite(number)) throw new Error(`${formula}: "${text}" is no number, text or range`);
  return number;
}

/** The function that a formula calls. */
export function calledBy(formula: string): string {
  const id = FORMULA.exec(formula)?.[1];
  if (id === undefined) throw new Error(`${formula} is no formula of one worksheet function: write =CLAY.NAME(...)`);
  return id;
}

/**
 * Calculates a formula of one worksheet function on the example sheet: the spilled cells, or the reason of the refusal.
 */
export function evaluate(
  formula: string,
  { parameters }: Pick<FunctionHelp, "parameters">,
  functions: ReadonlyMap<string, WorksheetFunction>,
): Result {
  const compute = functions.get(calledBy(formula));
  if (!compute) throw new Error(`${formula}: there is no such function`);
  const texts = [...FORMULA.exec(formula)![2].matchAll(ARGUMENT)].map(([, text]) => text.trim());
  const given = texts.slice(0, Math.max(1, texts.length - 1));
  if (given.length > parameters.length) throw new Error(`${formula} has more arguments than the function`);
  const cells = parameters.map(({ isRange }, index) => {
    const cell = argumentOf(given[index] ?? "", formula);
    return isRange && cell !== null && !Array.isArray(cell) ? [[cell]] : cell;
  });
  try {
    const value = compute(...cells);
    return { rows: Array.isArray(value) ? value : [[value as Cell]] };
  } catch (error) {
    if (error instanceof CellError) return { code: error.code, reason: error.message };
    throw error;
  }
}
