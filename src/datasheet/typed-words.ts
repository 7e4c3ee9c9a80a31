/** Values for the inputs of a sheet, with the words of lists in the language of the sheet. */
import { hasWords } from "../record/cells";
import { wordIn } from "../specification/list-words";
import type { SheetLanguage } from "../specification/text/language";
import type { SheetValues } from "./fill-sheet";

/**
 * Values by name with the words of lists in the language of a sheet; every other value stays.
 * @example typedIn("de", { drainage: "double", project: "double" }) // { drainage: "beidseitig", project: "double" }
 */
export const typedIn = (language: SheetLanguage, values: SheetValues): SheetValues => {
  const worded = <T>(value: T): T | string => (typeof value === "string" ? wordIn(language, value) : value);
  return Object.fromEntries(
    Object.entries(values).map(([name, value]) => [
      name,
      !hasWords(name) ? value : Array.isArray(value) ? value.map(worded) : worded(value),
    ]),
  );
};
