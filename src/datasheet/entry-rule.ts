/** The rule for the cells of a field: which values a person may type, and the message about any other value. */
import type { Box, EntryRule } from "../workbook/port";
import type { Field } from "../specification/field";
import { DATE_LIMITS, isDate, limitsOf } from "../specification/measures";
import type { SheetWords } from "../specification/text/words";

/** Returns the rule of a field; undefined for texts and picks. `loads` is the number of loads of the sheet. */
export function entryRule(
  { label, measure, limits, isOfLoad = false }: Pick<Field, "label" | "measure" | "limits" | "isOfLoad">,
  box: Box,
  loads: number,
  words: SheetWords,
): EntryRule | undefined {
  const called = label.trim();
  if (measure === "text" || measure === "pick") return undefined;
  if (isDate(measure))
    return {
      box,
      kind: "date",
      ...DATE_LIMITS,
      message: words.enterDate(called, measure !== "date"),
    };
  const allowed = (typeof limits === "function" ? limits(loads) : limits) ?? limitsOf(measure);
  return {
    box,
    kind: "number",
    ...allowed,
    message: `${words.enterNumber(called, words.within(allowed))}${isOfLoad ? ` ${words.takenOff}` : ""}`,
  };
}
