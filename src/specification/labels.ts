/** The labels of the cells of the sheet, for people; formulas use names instead. */
import { FIELDS, MORE_FIELDS } from "./fields";

/** Labels that say too little away from their place on the sheet. */
const ALONE: Readonly<Record<string, string>> = {
  laboratory: "Laboratory",
  sample_type: "Type of sample",
  sample_top: "Top of the sample",
  atterberg_limits: "Atterberg limits",
  date_tested: "Date tested",
  date_checked: "Date checked",
  ring_mass: "Mass of the ring",
  specific_gravity_basis: "Specific gravity, measured or assumed",
  water_density: "Density of the water",
};

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
export const labelOf = (name: string): string => LABELS.get(name) ?? ALONE[name] ?? name.replaceAll("_", " ");
