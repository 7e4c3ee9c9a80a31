/** What the tables of a register share: its units, and how its words and numbers are compared with those of a sheet. */
import { sameNumber } from "../reduction/numeric/same-number";
import type { CellValue } from "../workbook/port";

export const REGISTER_UNIT = "register_length_unit";
export const REGISTER_STRESS_UNIT = "register_stress_unit";

/** The content of a cell as a text without spaces around it. */
export const word = (cell: CellValue | undefined): string => String(cell ?? "").trim();

/** Compares numbers of equipment, ignoring case. */
export const same = (one: string, other: string): boolean => one.toLowerCase() === other.toLowerCase();

/** True if two texts are equal, or two numbers differ by rounding only, as after a conversion of units. */
export const agree = (held: CellValue, registered: CellValue): boolean =>
  typeof held === "number" && typeof registered === "number"
    ? sameNumber(held, registered)
    : word(held) === word(registered);
