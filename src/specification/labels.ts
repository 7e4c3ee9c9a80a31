/** The labels of the cells of the sheet, for people; formulas use names instead. */
import { FIELDS, MORE_FIELDS } from "./fields";

/** Longer labels for cells whose label on the sheet is clear only together with the cell beside it. */
const ALONE: Readonly<Record<string, string>> = { date_tested: "Date tested", date_checked: "Date checked" };

/** A label that begins with spaces continues the label above it: "Preconsolidation stress, not less than". */
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
 * The label of a cell in a sentence. A name that the sheet does not have is returned with spaces instead of
 * underscores.
 * @example labelOf("preconsolidation_low") // "Preconsolidation stress, not less than"
 */
export const labelOf = (name: string): string => LABELS.get(name) ?? name.replaceAll("_", " ");
