/** Excel's rules for names of cells; the embedded sheet follows them, since its workbooks are saved for Excel. */
import { say, verbatim, type Message } from "../../reduction/message";
import { columnNumber } from "../address";

/** The numbers of the last column and row of a sheet, counted from 1. */
export const LAST_COLUMN = 16_384;
export const LAST_ROW = 1_048_576;

export function looksLikeCell(name: string): boolean {
  if (/^(r\d*)?(c\d*)?$/i.test(name)) return true;
  const [, letters, digits] = /^([a-z]{1,3})(\d{1,7})$/i.exec(name) ?? [];
  return (
    letters !== undefined && columnNumber(letters) < LAST_COLUMN && Number(digits) >= 1 && Number(digits) <= LAST_ROW
  );
}

/**
 * The name in Excel for a name of a plan: the same, or with an underscore if Excel would read it as a cell ("t50",
 * "r1c1").
 */
export const localName = (name: string): string => (looksLikeCell(name) ? `${name}_` : name);

/** The name of a plan for a name in Excel: "t50_" becomes t50. */
export const planName = (name: string): string =>
  name.endsWith("_") && looksLikeCell(name.slice(0, -1)) ? name.slice(0, -1) : name;

const LONGEST_NAME = 255;

/** Why cells cannot have this name; undefined if they can. */
export function faultOfName(name: string): Message | undefined {
  if (name === "") return say`a name of cells has no letters`;
  if (name.length > LONGEST_NAME)
    return say`the name "${verbatim(name.slice(0, 20))}..." has ${name.length} characters, and ${LONGEST_NAME} at most are taken`;
  if (!/^[\p{L}_][\p{L}\p{N}_.]*$/u.test(name) || /^(true|false)$/i.test(name))
    return say`the name "${verbatim(name)}" is none for cells: it begins with a letter, and holds letters, digits, "_" and "." only`;
  return undefined;
}
