/** The version of the data sheet, and the news of each version. */
import { say, type Message } from "../reduction/message";
import project from "../../package.json";

export const TEMPLATE_VERSION = 14;
export const ADD_IN_VERSION = project.version;

/** The news of a version: sentences, and the names that older sheets do not have. */
export interface News {
  readonly version: number;
  readonly sentences: readonly string[];
  readonly names: readonly string[];
}

export const NEWS: readonly News[] = [
  {
    version: 14,
    sentences: [
      "The remark on load 2 asks whether its stress was mistyped where it is more than 8 times that of load 1 and the next one is not above it; the remark on a load asks whether its moment was mistyped where the load above has the same. Both, and the head of the sheet, say so before there are readings.",
      "Where the constructions leave out the last reading of a load, its remark and the head of the sheet ask whether it was mistyped: the void ratio at the end of the load uses it.",
      "The head of the sheet asks about a zero reading that lies more than a tenth of the height from the first reading of load 1, and about a Cc that is rare outside peat; a specimen that swelled by more than 3 percent up to the in-situ stress has no class of quality.",
    ],
    names: [],
  },
  {
    version: 13,
    sentences: [
      "The fit to theory also takes account of creep that begins within primary, where the readings show it; the remark on a load says so where cv by log time and cv by the fit to theory differ by more than 13 percent.",
    ],
    names: [],
  },
  {
    version: 12,
    sentences: [
      "The longest remarks on the inputs are put together from parts, which stand above the workings at the right end of the sheet; the remarks are the same.",
      "Where the dial jumped during a load, the constructions are made on the readings less the jump, and the remark says so; d0 and d100, and picks of them, are readings of the dial before the jump.",
      "An unloading in which the specimen compressed gives no recompression or swelling index.",
      "The remark on a load says so where cv by root time and cv by the fit to theory differ by more than 13 percent.",
      "The remarks on the loads and on the curve do not end with a semicolon.",
      "The remark on a load asks whether a stress of more than 8 times that of the load before was mistyped, and so does the head of the sheet; where one of two stresses is out of order, it names the load above as well.",
      "The head of the sheet names the first load that was applied before the load above it; where a load was read beyond the next one, its remark asks whether a moment of loading lacks its time.",
      "The title of the sheet is shorter, so that a screen without Arial shows all of it.",
    ],
    names: [],
  },
  {
    version: 11,
    sentences: [
      "The remarks on the loads read what they need of the times and readings from columns of workings at the right end of the sheet; these columns are not printed.",
      "The remark on load 1 asks whether the seating stress is smaller, where the two are equal; times of a logger that begins within 12 s no longer count as times of day.",
      "The remark on a load asks whether a moment of loading is half a day off, where the load was read beyond the next one; the remark on the curve does not end with ok behind another remark.",
      "The footer of a printed page has two lines: the file and the page number, the sheet and the versions.",
      "On a German sheet, the sentence that refuses an entry among the readings names them in German.",
    ],
    names: [],
  },
  {
    version: 10,
    sentences: [
      "Where the dial factor is 1, the unit beside the readings is that of lengths; d0, d50, d90 and d100 of 100 and more show one decimal.",
      "The remark on the design values says so where the chosen method gives no preconsolidation stress, and no longer takes Casagrande's.",
      "The head of the sheet names a size, a deflection or a stress that no oedometer test has in the unit of its cell, and the void ratios stay blank; it also names one that few tests have, and the results follow from it.",
      "The head of the sheet names a cell of the picks by hand that cannot be used, a specimen that is higher than wide, and masses and sizes that give a bulk density that no soil has.",
      "The remark on the preconsolidation stress says so where it lies more than 5 percent outside the range that the points allow; where only the last load step is steeper, the steps before it that are nearly as steep belong to the virgin line as well.",
      "The head of the sheet names the first load whose times, stress or readings look like a slip: seconds, hours or times of day for minutes, an increment for a total stress, a specimen that swells under the greatest stress.",
      "The remark on a load says that a stress is not a number greater than 0, and does not end with ok behind another remark.",
    ],
    names: ["size_remark", "unusual_remark"],
  },
  {
    version: 9,
    sentences: [
      "The head of the sheet names the first load whose readings jump, because the dial was reset or touched.",
      "A remark that names a row of readings names its time as well.",
      "The head of the sheet names a date, a number or a word of a list that cannot be, also where no result follows from it.",
      "Every number has an upper limit: the head of the sheet names one that is beyond it, of the readings by load and row.",
      "A German sheet writes the units of time in German: m2/a, m/a, ft2/d; the English ones are read as well.",
      "Design values are given also where the constructions refuse the preconsolidation stress.",
      "On a sheet in inches d0, d50, d90 and d100 show five decimals where the readings are inches.",
    ],
    names: ["entry_remark"],
  },
  {
    version: 8,
    sentences: [
      "A German sheet calls design values Kennwerte.",
      "A German sheet asks who carried the test out and who checked it: Ausgeführt von, Geprüft von.",
      "On a German sheet the worksheet functions answer in German: remarks, reasons, classes and the table of methods; a formula asks with the German word, such as Bemerkung.",
      "The remark on the design values stays blank where a value that they need shows an error.",
    ],
    names: [],
  },
  {
    version: 7,
    sentences: [
      "A sheet says in which language its titles, labels, notes and the words of its lists are: English, or German if that is chosen; formulas and reading take the words of both.",
      "The table of picks by hand has 42 rows and prints on one page, below its headings.",
      "A remark names a load that has readings and no stress, and a load that was taken off while the specimen compressed or rose above its initial height; where a value of the curve does not fit the others, the head of the sheet says which.",
    ],
    names: ["sheet_language"],
  },
  {
    version: 6,
    sentences: [
      "A pick by hand may be of the compression curve: the stress, Cc, Cr, Cs and the field curve follow it.",
      "A load is marked as a stage of wetting; strain on wetting, free swell with its rate, collapse with its class, and the swelling pressure by the method chosen stand among the results.",
      "Values of the register are frozen with the day, or live formulas, as the sheet chooses.",
      "The sheet names a deflection set of the register, whose table, frame and due day come in like the other values.",
      "Liquid and plastic limit, fines, clay, organic content and sensitivity are numbers, from which plasticity index, liquidity index, activity and void index follow; the limits that an older sheet has as text stay readable.",
      "Results that follow from an input that cannot be stay blank; the line at the head of the sheet names the cell and what to enter, the first of them and how many more there are if they do not fit.",
      "cv may be adopted for ranges of stress (recompression, virgin, another), with reason, initials and day, beside what the loads give; the design values go on with it.",
      "Design values come from the laboratory curve or from the field curve, as chosen; where the field curve, the quality of the sample or a design value is refused, its cell stays blank and the remark gives the reason.",
      "Void ratio or strain is chosen once on the sheet, for the plots and for the report.",
      "The contract's rule for the end of a load is chosen: a fixed time, the end of primary by either construction, or a multiple of t100.",
    ],
    names: [
      "deflection_set",
      "deflection_set_frame",
      "deflection_set_due",
      "register_mode",
      "register_state",
      "wetting_reference",
      "swelling_method",
      "load_wetting_strain",
      "wetting_stages",
      "wetting_load",
      "wetting_stress",
      "wetting_height_before",
      "wetting_height_after",
      "wetting_strain",
      "wetting_swell",
      "wetting_rate",
      "collapse_potential",
      "collapse_index",
      "collapse_class",
      "swelling_pressure_used",
      "swelling_pressure_low",
      "swelling_pressure_high",
      "swelling_pressure_remark",
      "group_symbol",
      "liquid_limit",
      "plastic_limit",
      "fines_content",
      "clay_content",
      "organic_content",
      "sensitivity",
      "plasticity_index",
      "liquidity_index",
      "activity",
      "void_index",
      "intrinsic_void_ratio",
      "intrinsic_index",
      "input_remark",
      "choice_remark",
      "curve_gap",
      "missing_in_full",
      "load_end_rule",
      "load_end_number",
      "adopted_cv_from",
      "adopted_cv_to",
      "adopted_cv_low",
      "adopted_cv_high",
      "adopted_cv_constructed",
      "adopted_cv",
      "adopted_cv_source",
      "adopted_cv_by",
      "adopted_cv_day",
      "adopted_cv_reason",
      "cv_recompression",
      "cv_virgin",
      "cv_another",
      "design_cv_from",
      "design_curve",
      "curve_shown",
      "design_remark",
    ],
  },
  {
    version: 5,
    sentences: [
      "The form follows the work: ring, sizes and masses, trimmings, apparatus, choices, loads, readings; results and remarks stand on pages to the right of it, picks by hand to the right of the readings.",
      "Methods and picks are given in words (Pacheco Silva, straight part from); the short names of older sheets are understood as before.",
      "A line at the head of the sheet says what is missing or cannot be, and where; while a test is running, a method that does not apply yet leaves its cells blank.",
      "Values of a register of rings, frames, dials and balances say from which register they came, and on which day.",
      "The method of the preconsolidation stress is chosen; values may be adopted with reason, initials and day, beside what the constructions give, and what follows goes on with them.",
      "Design values stand beside the form: at the in-situ stress and over an increase of stress.",
    ],
    names: [
      "missing_inputs",
      "register_source",
      "next_load",
      "test_state",
      "preconsolidation_method",
      "adopted_constructed",
      "adopted_value",
      "adopted_source",
      "adopted_by",
      "adopted_day",
      "adopted_reason",
      "design_increase",
      "design_e_in_situ",
      "design_e_final",
      "design_mv",
      "design_modulus",
      "design_cr",
      "design_rr",
      "design_sr",
      "design_modulus_number",
      "design_cv",
      "design_k",
      "design_c_alpha",
      "design_from",
    ],
  },
  {
    version: 4,
    sentences: [
      "The apparatus deflection deducted at a load is that of the table less that at the seating stress, under which the zero reading was taken.",
      "cv is worked out with the height at 50 % of consolidation of its own construction, and no longer with the mean of the heights at the ends of the load.",
      "cv, k and C alpha are given only for loads that consolidate: not for unloading, for wetting, or for a load under which the specimen swelled.",
      "Pacheco Silva's construction begins at the initial void ratio; the field curve says which branch its Cr came from.",
      "The constructions are aided or drawn, as the test or a load has it; readings of 0 count, as of a transducer that is zeroed for each load.",
      "The temperature of the water and the salt of the pore water have cells; left blank, they change nothing.",
      "A load at the stress of the one before is a branch of its own, wetting; water added under the seating stress has a mark.",
    ],
    names: [
      "apparatus_deflection_seating",
      "height_middle_root",
      "seating_mark",
      "field_recompression_from",
      "time_procedure",
      "load_procedure",
      "test_temperature",
      "pore_salt",
      "water_density",
      "salt_mass",
      "water_content_initial_weighed",
      "water_content_final_weighed",
    ],
  },
  {
    version: 3,
    sentences: [
      "A table takes picks by hand with the value before, the value after, reason, initials and time; the time curves use the last one of each load.",
      "Each load has its own construction for d100 and cv.",
      "Sample ID, depth of the sample's top, how the specimen was cut, the ring register, the largest particle and deviations have cells.",
      "Remarks stand in full on a page of their own; the weighings follow the apparatus, so that the Tab key goes with the work; up to 48 loads.",
    ],
    names: [
      "pick_load",
      "pick_of",
      "pick_before",
      "pick_after",
      "pick_reason",
      "pick_by",
      "pick_when",
      "pick_remark",
      "load_method",
      "sample_id",
      "sample_top",
      "specimen_orientation",
      "registered_diameter",
      "registered_height",
      "registered_ring_mass",
      "largest_particle",
      "deviations",
      "remarks_on_loads",
      "methods_remark",
    ],
  },
  {
    version: 2,
    sentences: [
      "Laboratory, sample type, limits, dates of sampling and receipt, calibration dates and the lever ratio have cells.",
      "Each load has a temperature, and cv at 20 degrees Celsius.",
      "The field curve, the quality of the sample, the chosen C alpha with its ratio to Cc, and the load of inundation stand among the results.",
      "The unit of depth is chosen like the others; up to 2000 readings a load; cells that are not inputs are protected without a password.",
    ],
    names: [
      "laboratory",
      "sample_type",
      "atterberg_limits",
      "sample_date",
      "date_received",
      "lever_ratio",
      "frame_calibration_due",
      "dial_calibration_due",
      "balance_calibration_due",
      "load_temperature",
      "cv_20",
      "c_alpha_load",
      "c_alpha_chosen",
      "c_alpha_ratio",
      "field_factor",
      "field_compression_index",
      "field_recompression_index",
      "field_meeting_stress",
      "field_meeting_void_ratio",
      "field_remark",
      "quality_change",
      "quality_class",
      "quality_strain",
      "quality_strain_class",
      "quality_remark",
      "inundation_stress",
      "inundation_strain",
      "swelling_pressure",
      "addin_version",
    ],
  },
];

/**
 * The rules by which the formulas of a data sheet differ from those of older versions. Code that recalculates a sheet
 * follows the rules of the version of the sheet; a sheet without a version counts as the newest.
 */
export interface SheetRules {
  /**
   * The sheet deducts the deflection of the apparatus since the seating stress; up to version 3, the whole value of the
   * table.
   */
  readonly deflectionSinceSeating: boolean;
  /**
   * cv uses the height at 50 % of consolidation; up to version 3, the mean of the heights at the start and the end of
   * the load.
   */
  readonly heightAtHalf: boolean;
  /**
   * The methods of preconsolidation use e0; up to version 3, Pacheco Silva's method begins at the void ratio of the
   * first load.
   */
  readonly startsAtInitialVoidRatio: boolean;
  /** A reading of 0 is a reading; up to version 3, it counts as blank. */
  readonly zerosCount: boolean;
  /** The table of picks has rows of the compression curve; up to version 5, only of loads. */
  readonly curveIsPicked: boolean;
  /** The remark on a load speaks of its clock; up to version 5, it does not. */
  readonly clockIsAsked: boolean;
  /** The remark on a load speaks of compression while load is taken off; up to version 6, it does not. */
  readonly unloadingIsAsked: boolean;
  /** Only loads that consolidate have cv, k and C alpha; up to version 3, unloading has cv as well. */
  readonly cvOfConsolidation: boolean;
  /**
   * A load at the same stress as the load before is wetting; up to version 3, it is loading, or unloading if the stress
   * is slightly less.
   */
  readonly knowsWetting: boolean;
}

export function rulesOf({ version = TEMPLATE_VERSION }: { readonly version?: number }): SheetRules {
  const isOfVersion4 = version >= 4;
  return {
    deflectionSinceSeating: isOfVersion4,
    heightAtHalf: isOfVersion4,
    startsAtInitialVoidRatio: isOfVersion4,
    zerosCount: isOfVersion4,
    cvOfConsolidation: isOfVersion4,
    knowsWetting: isOfVersion4,
    curveIsPicked: version >= 6,
    clockIsAsked: version >= 6,
    unloadingIsAsked: version >= 7,
  };
}

/** A sentence of the news as a message; its translation stands beside those of other messages. */
export const newsAsMessage = (sentence: string): Message => say([sentence]);

/** The news of all versions after `version`. */
export const newsSince = (version: number): readonly News[] => NEWS.filter((news) => news.version > version);
