/** The rule for the cells of a field: which values a person may type, and the message about any other value. */
import type { Box, EntryRule } from "../workbook/port";
import type { Field } from "../specification/field";
import { DATE_LIMITS, limitsOf, type Limits } from "../specification/measures";

const range = ({ least, above, most }: Limits): string => {
  const from = least === undefined ? "" : above ? `greater than ${least}` : `not less than ${least}`;
  const to = most === undefined ? "" : `not more than ${most}`;
  const both = [from, to].filter(Boolean).join(" and ");
  return both && ` ${both}`;
};

/** Returns the rule of a field; undefined for texts and picks. `loads` is the number of loads of the sheet. */
export function entryRule(
  { label, measure, limits }: Pick<Field, "label" | "measure" | "limits">,
  box: Box,
  loads: number,
): EntryRule | undefined {
  const called = label.trim();
  if (measure === "text" || measure === "pick") return undefined;
  if (measure === "date" || measure === "moment")
    return {
      box,
      kind: "date",
      ...DATE_LIMITS,
      message: `${called}: enter a date${measure === "moment" ? ", with the time if you like," : ""} of this computer's own form, from 1990 to 2099.`,
    };
  const allowed = (typeof limits === "function" ? limits(loads) : limits) ?? limitsOf(measure);
  return {
    box,
    kind: "number",
    ...allowed,
    message: `${called}: enter a number${range(allowed)}, with this computer's own decimal sign (a text such as 12,5 or 12.5 kPa is no number).`,
  };
}
