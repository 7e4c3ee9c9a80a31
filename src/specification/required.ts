/**
 * The nineteen items that the report clauses of the standards demand, each with the cells that contain it. From memory
 * of ASTM D2435 and BS 1377-5 / ISO 17892-5 (the source of the water contents, the correction for the apparatus and the
 * deviations are also headings in the group CONG of AGS4): check against the edition that the contract names.
 */

export interface Required {
  /** The number of the item, 1 to 19. */
  readonly item: number;
  /** The cells that must be filled. Of an inner list, one filled cell is enough. */
  readonly needs: readonly (string | readonly string[])[];
  /**
   * Cells that are filled only if the thing was measured or was present. Of an inner list, one filled cell is enough; the
   * first of them that the sheet has is asked for.
   */
  readonly whereMeasured?: readonly (string | readonly string[])[];
  /** Columns that must have a number for each load. */
  readonly ofLoads?: readonly string[];
  /** Columns that have a number only for loads for which a construction or a thermometer gave one. */
  readonly ofSomeLoads?: readonly string[];
}

/**
 * Required results that follow from the mark of a person, with the cells for that mark: the first of them that the sheet has
 * is the one to fill in. The mark of inundation stands in the row of the stress under which the specimen was inundated.
 */
const FILLED_IN: Readonly<Record<string, readonly string[]>> = { inundation_stress: ["seating_mark", "load_mark"] };

/** The cell to fill in where a required cell is blank; undefined if that is the cell itself. `has` knows the cells of the sheet. */
export const filledIn = (name: string, has: (cell: string) => boolean): string | undefined =>
  FILLED_IN[name]?.find(has);

export const REQUIRED: readonly Required[] = [
  // Laboratory, project, report number, dates, signatories
  {
    item: 1,
    needs: [
      "laboratory",
      "project",
      "report_number",
      "date_started",
      "date_ended",
      "tested_by",
      "date_tested",
      "checked_by",
      "date_checked",
    ],
  },
  // Location, sample, depth, orientation, sample type. The orientation may be stated with the preparation, which item 4 asks for.
  { item: 2, needs: ["boring", "sample", "depth", "sample_type"] },
  // Description or classification; limits where measured
  {
    item: 3,
    needs: ["soil_description"],
    whereMeasured: [
      ["liquid_limit", "atterberg_limits"],
      ["plastic_limit", "atterberg_limits"],
    ],
  },
  // Condition and preparation
  { item: 4, needs: ["condition", "preparation"] },
  // Specimen dimensions, ring, drainage
  {
    item: 5,
    needs: ["diameter", "initial_height", "ring_number", "drainage"],
  },
  // Initial and final water content and their source
  {
    item: 6,
    needs: ["water_content_initial", "water_content_final"],
    whereMeasured: ["water_content_trimmings"],
  },
  // Densities
  { item: 7, needs: ["density_initial", "dry_density_initial"] },
  // Specific gravity of solids, measured or assumed
  {
    item: 8,
    needs: ["specific_gravity", "specific_gravity_basis"],
  },
  // Void ratios and saturations, initial and final
  {
    item: 9,
    needs: ["void_ratio_initial", "void_ratio_final", "saturation_initial", "saturation_final"],
  },
  // Inundation stress, swell or collapse, swelling pressure
  {
    item: 10,
    // Under the seating stress, before the first load, no strain was measured.
    needs: ["inundation_stress", ["inundation_strain", "seating_mark"]],
    whereMeasured: ["swelling_pressure"],
  },
  // Method of loading and duration of each load
  { item: 11, needs: ["test_method"] },
  // Table of loads
  {
    item: 12,
    needs: [],
    ofLoads: ["load_stress", "corrected_deformation", "strain_end", "void_ratio_end"],
    ofSomeLoads: ["volume_compressibility", "cv_chosen", "c_alpha", "load_temperature"],
  },
  // cv method, temperature correction
  { item: 13, needs: ["time_method"] },
  // Apparatus correction
  { item: 14, needs: [], whereMeasured: ["calibration_date"] },
  // Plots: compression curve, time curves, cv against stress
  { item: 15, needs: [] },
  // Preconsolidation stress with its technique; indices
  {
    item: 16,
    needs: ["preconsolidation_stress", "compression_index"],
    whereMeasured: ["recompression_index", "swelling_index"],
  },
  // In-situ stress where known
  { item: 17, needs: [], whereMeasured: ["in_situ_stress"] },
  // Deviations, disturbance and remarks
  {
    item: 18,
    needs: [["deviations", "test_remarks"]],
  },
  // Standard and edition
  { item: 19, needs: ["standard"] },
];
