/** The rule for the cells of a field: which values a person may type, and the message about any other value. */
import type { Box, EntryRule } from "../workbook/port";
import type { Field } from "../specification/field";
import { DATE_LIMITS, isDate, limitsOf, numberWithin } from "../specification/measures";

/** Returns the rule of a field; undefined for texts and picks. `loads` is the number of loads of the sheet. */
export function entryRule(
  { label, measure, limits }: Pick<Field, "label" | "measure" | "limits">,
  box: Box,
  loads: number,
): EntryRule | undefined {
  const called = label.trim();
  if (measure === "text" || measure === "pick") return undefined;
  if (isDate(measure))
    return {
      box,
      kind: "date",
      ...DATE_LIMITS,
      message: `${called}: enter a date${measure !== "date" ? ", with the time if you like," : ""} of this computer's own form, from 1990 to 2099.`,
    };
  const allowed = (typeof limits === "function" ? limits(loads) : limits) ?? limitsOf(measure);
  return {
    box,
    kind: "number",
    ...allowed,
    message: `${called}: enter ${numberWithin(allowed)}, with this computer's own decimal sign (a text such as 12,5 or 12.5 kPa is no number).`,
  };
}
