/** LOG10 of formulas as LOG, whose base is 10 where none is given: the engine reads LOG10 as the cell in row 10 of column LOG. */
import { tokenize } from "@odoo/o-spreadsheet";

/** The formula ("=...") with LOG in place of each LOG10 that has an argument. */
export function withoutLogTen(formula: string): string {
  if (!/\bLOG10\s*\(/i.test(formula)) return formula;
  const tokens = tokenize(formula);
  return tokens
    .map(({ type, value }, at) => {
      const next = tokens.slice(at + 1).find((token) => token.type !== "SPACE");
      return type === "REFERENCE" && /^LOG10$/i.test(value) && next?.type === "LEFT_PAREN" ? "LOG" : value;
    })
    .join("");
}
