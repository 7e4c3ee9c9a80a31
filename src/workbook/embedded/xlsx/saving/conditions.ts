/** Conditional formats, and formulas of rules of entry: the engine writes some of them as Excel does not read them, and Excel takes all of a sheet out of the file then. */
import { DEFAULT_LOCALE, helpers } from "@odoo/o-spreadsheet";
import { all } from "../../../file/xml";
import { finishedFormula } from "../formula";

/** Operators of conditional formats (ISO/IEC 29500-1, 18.18.15). */
const OPERATORS = new Set(
  "lessThan lessThanOrEqual equal notEqual greaterThanOrEqual greaterThan between notBetween containsText notContains beginsWith endsWith".split(
    " ",
  ),
);

/** A text between the quotes of a formula of Excel. */
export const doubled = (text: string): string => text.replaceAll('"', '""');
const inQuotes = (text: string): string => `"${doubled(text)}"`;

/** A number or a day as a plain number: Excel reads 12/31/2026 as divisions, and cannot read 1,234.5. Anything else stays. */
export const plainNumber = (value: string): string =>
  helpers.isNumber(value, DEFAULT_LOCALE) || helpers.isDateTime(value, DEFAULT_LOCALE)
    ? String(helpers.toNumber(value, DEFAULT_LOCALE))
    : value;

/** What the engine writes for a day such as "yesterday". */
const NAMED_DAY = /^(?:TODAY\(\)|EDATE\(TODAY\(\),)/;

/** A bound as a formula of Excel: a word stands in quotes, or Excel takes it for a name. */
function bound(written: string): string {
  if (written.startsWith("=")) return written.slice(1);
  if (NAMED_DAY.test(written) || /^(?:"(?:[^"]|"")*"|true|false)$/i.test(written)) return written;
  const number = plainNumber(written);
  return number === "" || Number.isFinite(Number(number)) ? number : inQuotes(written);
}

/** The formula of a conditional format. A quote in its text is doubled. */
function formulaOf(rule: Element, written: string): string {
  const text = rule.getAttribute("text");
  if (text !== null) return written.replaceAll(`"${text}"`, () => inQuotes(text));
  return rule.getAttribute("type") === "cellIs" ? bound(written) : written;
}

/**
 * The engine gives all conditional formats the same priority, some an operator that is none, and those for cells without a text the type of
 * those for cells that are not blank.
 */
export function patchConditions(document: Document): void {
  for (const [index, rule] of all(document, "cfRule").entries()) {
    rule.setAttribute("priority", String(index + 1));
    if (rule.getAttribute("type") === "notContainsBlanks" && rule.hasAttribute("text")) {
      rule.setAttribute("type", "notContainsText");
      rule.setAttribute("operator", "notContains");
    }
    if (!OPERATORS.has(rule.getAttribute("operator") ?? "")) rule.removeAttribute("operator");
    for (const one of all(rule, "formula")) one.textContent = formulaOf(rule, one.textContent ?? "");
  }
}

/** Functions and sheets in the formulas are named as Excel names them. */
export function patchFormulas(document: Document): void {
  for (const name of ["formula", "formula1", "formula2"])
    for (const one of all(document, name)) one.textContent = finishedFormula(one.textContent ?? "");
}
