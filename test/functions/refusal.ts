import { CellError } from "../../src/functions/cells";

/**
 * The error that the cell of a function shows, as "#VALUE! message". Fails if the function returns a value, or throws
 * another error.
 */
export function refusal(compute: () => unknown): string {
  let value: unknown;
  try {
    value = compute();
  } catch (error) {
    if (error instanceof CellError) return `${error.code} ${error.message}`;
    throw error;
  }
  throw new Error(`gave ${JSON.stringify(value)} where a refusal was expected`);
}
