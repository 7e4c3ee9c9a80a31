import type { CellValue } from "./port";

/**
 * Whether a value that a port gives is an error: "#N/A", "#VALUE!".
 * @example isError("#DIV/0!") // true
 */
export const isError = (value: CellValue | undefined): boolean =>
  typeof value === "string" && /^#[A-Z][A-Z0-9_/]*[!?]?$/i.test(value);

/**
 * Whether a value says that a function or a name of a formula is not known. The embedded sheet shows "#BAD_EXPR" for a name.
 * @example isUnknown("#NAME?") // true
 */
export const isUnknown = (value: unknown): boolean => value === "#NAME?" || value === "#BAD_EXPR";
