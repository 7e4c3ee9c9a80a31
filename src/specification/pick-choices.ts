/** What a person chooses in the table of picks by hand. */
import { CURVE_PICK_NAMES, CURVE_PICK_WORDS } from "../reduction/curve/picks";
import { METHOD_PICK, PICK_NAMES, PICK_WORDS, PROCEDURE_PICK } from "../reduction/increment/constructions/picks";

/** The cell with the name of the pick. */
export const PICK_OF = "pick_of";

export const PICK_CHOICES: readonly string[] = [
  ...PICK_NAMES.map((name) => PICK_WORDS[name]),
  METHOD_PICK,
  PROCEDURE_PICK,
  ...CURVE_PICK_NAMES.map((name) => CURVE_PICK_WORDS[name]),
];

/** The short names that sheets of an older version have instead of these words. */
export const OLD_PICK_CHOICES: readonly string[] = [...PICK_NAMES, ...CURVE_PICK_NAMES];
