import type { CellValue } from "./port";

/**
 * Whether a value that a port gives is an error: "#N/A", "#VALUE!".
 * @example isError("#DIV/0!") // true
 */
export const isError = (value: CellValue | undefined): boolean =>
  typeof value === "string" && /^#[A-Z][A-Z0-9_/]*[!?]?$/i.test(value);
