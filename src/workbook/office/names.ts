/** Converts names in formulas between a plan and Excel. */
import { localName, looksLikeCell } from "../rules/names";

export { LAST_COLUMN, LAST_ROW, localName } from "../rules/names";

/**
 * The formula of a plan with the Excel name for every `{name}` outside texts and sheet names; refuses a name that the
 * plan does not have.
 */
export const withLocalNames = (formula: string, names: Readonly<Record<string, unknown>>): string =>
  formula.replace(/"(?:[^"]|"")*"|'(?:[^']|'')*'|\{([A-Za-z_]\w*)\}/g, (whole, name: string | undefined) => {
    if (name === undefined) return whole;
    if (!Object.hasOwn(names, name)) throw new Error(`the formula ${formula} refers to {${name}}, which has no cells`);
    return localName(name);
  });

/** The formula of a cell with the names of the plan: "t50_" becomes t50; texts and sheet names stay. */
export const withPlanNames = (formula: string): string =>
  formula.replace(
    /"(?:[^"]|"")*"|'(?:[^']|'')*'|(?<![\w.!])([A-Za-z]\w*)_(?![\w.(!])/g,
    (whole, name: string | undefined) => (name !== undefined && looksLikeCell(name) ? name : whole),
  );
