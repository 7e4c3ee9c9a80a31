/** What the tables of a register share: its units, and how its words and numbers are compared with those of a sheet. */
import type { CellValue } from "../workbook/port";

export const REGISTER_UNIT = "register_length_unit";
export const REGISTER_STRESS_UNIT = "register_stress_unit";

/** The content of a cell as a text without spaces around it. */
export const word = (cell: CellValue | undefined): string => String(cell ?? "").trim();

/** Compares numbers of equipment, ignoring case. */
export const same = (one: string, other: string): boolean => one.toLowerCase() === other.toLowerCase();

/** True if two texts are equal, or two numbers agree to the ten digits that a conversion of units keeps. */
export const agree = (held: CellValue, registered: CellValue): boolean =>
  typeof held === "number" && typeof registered === "number"
    ? Math.abs(held - registered) <= 1e-9 * Math.abs(registered)
    : word(held) === word(registered);
