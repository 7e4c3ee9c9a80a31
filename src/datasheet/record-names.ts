/**
 * The names of the data sheet as types, so that whoever uses a record cannot misspell one. A test holds them against the
 * specification.
 */

/** Typed numbers, one cell each. */
export const NUMBERS = [
  "depth",
  "dial_factor",
  "zero_reading",
  "seating_stress",
  "diameter",
  "initial_height",
  "ring_mass",
  "ring_and_wet_before",
  "ring_and_wet_after",
  "ring_and_dry",
  "specific_gravity",
  "final_height_measured",
  "in_situ_stress",
  "swelling_pressure",
  "lever_ratio",
  "c_alpha_load",
  "field_factor",
] as const;

/** Typed words and dates, one cell each. */
export const WORDS = [
  "project",
  "job_number",
  "boring",
  "sample",
  "specimen",
  "soil_description",
  "condition",
  "preparation",
  "standard",
  "test_method",
  "report_number",
  "date_started",
  "date_ended",
  "tested_by",
  "date_tested",
  "checked_by",
  "date_checked",
  "frame_number",
  "ring_number",
  "dial_number",
  "balance_number",
  "calibration_date",
  "drainage",
  "dial_sense",
  "length_unit",
  "stress_unit",
  "cv_unit",
  "density_unit",
  "mv_unit",
  "conductivity_unit",
  "specific_gravity_basis",
  "curve_from",
  "time_method",
  "test_remarks",
  "laboratory",
  "sample_type",
  "atterberg_limits",
  "sample_date",
  "date_received",
  "depth_unit",
  "dial_calibration_due",
  "frame_calibration_due",
  "balance_calibration_due",
] as const;

/** Numbers that the sheet works out, one cell each. */
export const RESULTS = [
  "dry_mass",
  "solids_height",
  "water_content_trimmings",
  "dry_mass_trimmings",
  "dry_mass_difference",
  "water_content_initial",
  "water_content_final",
  "density_initial",
  "dry_density_initial",
  "void_ratio_initial",
  "saturation_initial",
  "final_height",
  "void_ratio_final",
  "void_ratio_final_by_water",
  "saturation_final",
  "preconsolidation_stress",
  "preconsolidation_low",
  "preconsolidation_high",
  "overconsolidation_ratio",
  "compression_index",
  "recompression_index",
  "swelling_index",
  "final_height_difference",
  "void_ratio_final_difference",
  "water_content_difference",
  "c_alpha_chosen",
  "c_alpha_ratio",
  "field_compression_index",
  "field_recompression_index",
  "field_meeting_stress",
  "field_meeting_void_ratio",
  "quality_change",
  "quality_strain",
  "inundation_stress",
  "inundation_strain",
] as const;

export const REMARKS = [
  "specimen_remark",
  "preconsolidation_remark",
  "preconsolidation_verdict",
  "field_remark",
  "quality_remark",
  "quality_class",
  "quality_strain_class",
] as const;

/** Numbers that the sheet works out for each load. */
export const LOAD_RESULTS = [
  "end_reading",
  "deformation",
  "apparatus_deflection",
  "corrected_deformation",
  "strain_end",
  "height_end",
  "void_ratio_end",
  "deformation_d100",
  "strain_d100",
  "void_ratio_d100",
  "void_ratio_curve",
  "height_middle",
  "cv_log_time",
  "cv_root_time",
  "cv_chosen",
  "volume_compressibility",
  "conductivity",
  "c_alpha",
  "log_d0",
  "log_d50",
  "log_d100",
  "log_t50",
  "log_t100",
  "root_d0",
  "root_d90",
  "root_d100",
  "root_t90",
  "tail_slope",
  "cv_20",
] as const;

export const LOAD_WORDS = ["load_branch", "curve_point", "load_remark", "time_remark"] as const;

export type NumberName = (typeof NUMBERS)[number] | (typeof EXTRA_NUMBERS)[number];
export type WordName = (typeof WORDS)[number] | (typeof EXTRA_WORDS)[number];
export type ResultName = (typeof RESULTS)[number];
export type RemarkName = (typeof REMARKS)[number];
export type LoadResultName = (typeof LOAD_RESULTS)[number];
export type LoadWordName = (typeof LOAD_WORDS)[number];

/** Numbers, and words or dates, that a firm may add to its sheet; a blank sheet has no cell for them, and none is missed. */
export const EXTRA_NUMBERS = [
  "registered_diameter",
  "registered_height",
  "registered_ring_mass",
  "largest_particle",
  "sample_top",
] as const;
export const EXTRA_WORDS = ["sample_id"] as const;
