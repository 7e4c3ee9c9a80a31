import { CellError } from "../../src/functions/cells";

/** The error that a function's cell shows, as "#VALUE! message". Fails if it gives a value, or throws anything else. */
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
