/**
 * The nineteen items that the report clauses of the standards demand, each with the cells that contain it. From memory
 * of ASTM D2435 and BS 1377-5 / ISO 17892-5 (the source of the water contents, the correction for the apparatus and the
 * deviations are also headings in the group CONG of AGS4): check against the edition that the contract names.
 */

export interface Required {
  /** The number of the item, 1 to 19. */
  readonly item: number;
  readonly what: string;
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

export const REQUIRED: readonly Required[] = [
  {
    item: 1,
    what: "Laboratory, project, report number, dates, signatories",
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
  {
    item: 2,
    what: "Location, sample, depth, orientation, sample type",
    needs: ["boring", "sample", "depth", ["specimen_orientation", "preparation"], "sample_type"],
  },
  {
    item: 3,
    what: "Description or classification; limits where measured",
    needs: ["soil_description"],
    whereMeasured: [
      ["liquid_limit", "atterberg_limits"],
      ["plastic_limit", "atterberg_limits"],
    ],
  },
  { item: 4, what: "Condition and preparation", needs: ["condition", "preparation"] },
  {
    item: 5,
    what: "Specimen dimensions, ring, drainage",
    needs: ["diameter", "initial_height", "ring_number", "drainage"],
  },
  {
    item: 6,
    what: "Initial and final water content and their source",
    needs: ["water_content_initial", "water_content_final"],
    whereMeasured: ["water_content_trimmings"],
  },
  { item: 7, what: "Densities", needs: ["density_initial", "dry_density_initial"] },
  {
    item: 8,
    what: "Specific gravity of solids, measured or assumed",
    needs: ["specific_gravity", "specific_gravity_basis"],
  },
  {
    item: 9,
    what: "Void ratios and saturations, initial and final",
    needs: ["void_ratio_initial", "void_ratio_final", "saturation_initial", "saturation_final"],
  },
  {
    item: 10,
    what: "Inundation stress, swell or collapse, swelling pressure",
    needs: ["inundation_stress", "inundation_strain"],
    whereMeasured: ["swelling_pressure"],
  },
  { item: 11, what: "Method of loading and duration of each load", needs: ["test_method"] },
  {
    item: 12,
    what: "Table of loads",
    needs: [],
    ofLoads: ["load_stress", "corrected_deformation", "strain_end", "void_ratio_end"],
    ofSomeLoads: ["volume_compressibility", "cv_chosen", "c_alpha", "load_temperature"],
  },
  { item: 13, what: "cv method, temperature correction", needs: ["time_method"] },
  { item: 14, what: "Apparatus correction", needs: [], whereMeasured: ["calibration_date"] },
  { item: 15, what: "Plots: compression curve, time curves, cv against stress", needs: [] },
  {
    item: 16,
    what: "Preconsolidation stress with its technique; indices",
    needs: ["preconsolidation_stress", "compression_index"],
    whereMeasured: ["recompression_index", "swelling_index"],
  },
  { item: 17, what: "In-situ stress where known", needs: [], whereMeasured: ["in_situ_stress"] },
  {
    item: 18,
    what: "Deviations, disturbance and remarks",
    needs: [["deviations", "test_remarks"]],
  },
  { item: 19, what: "Standard and edition", needs: ["standard"] },
];
