/** What people call the cells of the sheet, without the names that formulas have for them. */
import { FIELDS, MORE_FIELDS } from "./fields";

/** Labels that stand beside another cell on the sheet, and say too little on their own. */
const ALONE: Readonly<Record<string, string>> = { date_tested: "Date tested", date_checked: "Date checked" };

/** A label that begins with spaces belongs to the one above it: "Preconsolidation stress, not less than". */
const LABELS: ReadonlyMap<string, string> = (() => {
  const labels = new Map<string, string>();
  let above = "";
  for (const { name, label } of [...FIELDS, ...MORE_FIELDS]) {
    const own = label.trim();
    if (!label.startsWith("  ")) above = own;
    labels.set(name, ALONE[name] ?? (label.startsWith("  ") ? `${above}, ${own}` : own));
  }
  return labels;
})();

/**
 * The label of a cell as a sentence can use it; a name that the sheet does not know, with spaces for its underscores.
 * @example labelOf("preconsolidation_low") // "Preconsolidation stress, not less than"
 */
export const labelOf = (name: string): string => LABELS.get(name) ?? name.replaceAll("_", " ");
