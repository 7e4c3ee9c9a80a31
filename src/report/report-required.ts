/**
 * What a report of this test must show, as one table: the nineteen items of the standards' report clauses, each with the
 * cells that it comes from. From memory of ASTM D2435 and BS 1377-5 / ISO 17892-5 (water contents' source, apparatus
 * correction and deviations are also headings of AGS4's CONG): check against the edition that the contract names.
 */
import { called, type DataCells, type ReportedLoad } from "./report-source";

export interface Required {
  /** 1 to 19. */
  readonly item: number;
  readonly what: string;
  /** Cells that must hold something; of a list inside, one is enough. */
  readonly needs: readonly (string | readonly string[])[];
  /** Cells that are filled in only where the thing was measured or was there. */
  readonly whereMeasured?: readonly string[];
  /** Columns of which each load must have a number. */
  readonly ofLoads?: readonly string[];
  /** Columns of which a load has a number only where a construction or a thermometer gave one. */
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
    whereMeasured: ["atterberg_limits"],
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

/** Something that the report should show and cannot. */
export interface Missing {
  readonly item: number;
  /** Whether a report without it is unfinished; otherwise it is wanted only where it was measured. */
  readonly isRequired: boolean;
  /** What is missing, with the cell that it belongs in. */
  readonly sentence: string;
}

/** A cell that shows an error gives nothing to report. */
const isEmpty = (cells: DataCells, name: string, row = 0): boolean => {
  const value = cells.value(name, row);
  return value === "" || (typeof value === "string" && /^#[A-Z][A-Z0-9_/]*[!?]?$/i.test(value));
};

const loadsNamed = (loads: readonly ReportedLoad[]): string =>
  `${loads.length === 1 ? "load" : "loads"} ${loads.map(({ number }) => number).join(", ")}`;

/** What of the nineteen items is not there, in their order; `plots` are reasons why a plot could not be drawn. */
export function missingItems(
  cells: DataCells,
  loads: readonly ReportedLoad[],
  plots: readonly string[] = [],
): Missing[] {
  const found: Missing[] = [];
  for (const { item, needs, whereMeasured = [], ofLoads = [], ofSomeLoads = [] } of REQUIRED) {
    const add = (isRequired: boolean, sentence: string) => found.push({ item, isRequired, sentence });
    for (const need of needs) {
      const choices = typeof need === "string" ? [need] : need;
      if (choices.every((name) => isEmpty(cells, name)))
        add(true, choices.map((name) => called(cells, name)).join(", or "));
    }
    for (const name of whereMeasured)
      if (isEmpty(cells, name)) add(false, `${called(cells, name)}: only where it was measured or is known`);
    if (item === 12 && loads.length === 0) add(true, `loads: ${called(cells, "load_stress")}, holds none`);
    for (const name of [...ofLoads, ...ofSomeLoads]) {
      const without = loads.filter(({ row }) => isEmpty(cells, name, row));
      if (without.length === 0) continue;
      const cell = called(cells, name, without.length === 1 ? without[0].row : undefined);
      const optional = ofSomeLoads.includes(name);
      const why = optional ? `: ${WHY[name]}` : "";
      add(!optional, `${cell}, of ${loadsNamed(without)}${why}`);
    }
    if (item === 11) {
      const untimed = loads.filter(({ readings }) => readings === 0);
      if (untimed.length)
        add(true, `duration of ${loadsNamed(untimed)}: no readings were entered, so that none can be given`);
    }
    if (item === 15) for (const reason of plots) add(true, reason);
  }
  return found;
}

const WHY: Readonly<Record<string, string>> = {
  volume_compressibility: "wetting, or the specimen moved against the load; the remark on the load says which",
  cv_chosen: "nothing consolidated, or the construction chosen gave none; the remark on the load says why",
  c_alpha: "nothing consolidated, or no straight tail; the remark on the load says why",
  load_temperature: "no temperature was entered",
};
