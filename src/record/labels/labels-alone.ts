/** The labels of cells away from their place on the sheet, in the order of the sheet. */

/** Labels that say too little away from their place on the sheet. */
const ALONE: Readonly<Record<string, string>> = {
  laboratory: "Laboratory",
  sample_type: "Type of sample",
  sample_top: "Top of the sample",
  date_tested: "Date tested",
  date_checked: "Date checked",
  ring_mass: "Mass of the ring",
  specific_gravity_basis: "Specific gravity, measured or assumed",
  water_density: "Density of the water",
  inundation_strain: "Strain of the inundated load",
  field_recompression_from: "Branch that gives Cr of the field curve",
  field_meeting_stress: "Field curve meets the laboratory curve at",
  field_meeting_void_ratio: "Field curve meets the laboratory curve at void ratio",
  quality_class: "Sample quality, class by de / e0",
  quality_strain_class: "Sample quality, class by strain",
};

/**
 * The label of each field by its name. A label that begins with spaces continues the label above it: "Preconsolidation
 * stress, not less than". `inWords` puts a label into the language of the sheet.
 */
export function labelsAlone(
  fields: readonly { readonly name: string; readonly label: string }[],
  inWords: (label: string) => string = (label) => label,
): ReadonlyMap<string, string> {
  const labels = new Map<string, string>();
  let above = "";
  for (const { name, label } of fields) {
    const own = inWords(label).trim();
    const alone = ALONE[name];
    if (!label.startsWith("  ")) above = own;
    labels.set(name, alone !== undefined ? inWords(alone) : label.startsWith("  ") ? `${above}, ${own}` : own);
  }
  return labels;
}
