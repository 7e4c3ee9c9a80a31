/** Names in the formulas of a plan, as Excel calls them. */
import { localName, looksLikeCell } from "../names";

export { LAST_COLUMN, LAST_ROW, localName } from "../names";

/** A plan's formula with every `{name}` outside texts and sheets' names put in; refuses a name that the plan does not have. */
export const withLocalNames = (formula: string, names: Readonly<Record<string, unknown>>): string =>
  formula.replace(/"(?:[^"]|"")*"|'(?:[^']|'')*'|\{([A-Za-z_]\w*)\}/g, (whole, name: string | undefined) => {
    if (name === undefined) return whole;
    if (!Object.hasOwn(names, name)) throw new Error(`the formula ${formula} refers to {${name}}, which has no cells`);
    return localName(name);
  });

/** A cell's formula with names as the plan calls them: "t50_" is t50 again; texts and sheets' names stay. */
export const withPlanNames = (formula: string): string =>
  formula.replace(
    /"(?:[^"]|"")*"|'(?:[^']|'')*'|(?<![\w.!])([A-Za-z]\w*)_(?![\w.(!])/g,
    (whole, name: string | undefined) => (name !== undefined && looksLikeCell(name) ? name : whole),
  );
