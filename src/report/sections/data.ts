/** The parts of the report that repeat the data sheet: test and sample, specimen, results, table of loads. */
import { readingsName, timesName } from "../../specification/load-table";
import { LINE_FACTOR, T50, T90 } from "../../reduction/increment/cv";
import type { CellPlan } from "../../workbook/port";
import {
  FORMATS,
  formatIn,
  NOTHING,
  shownCell,
  shownFormula,
  twoFigures,
  typedFormat,
  unitCell,
  worked,
  type Shown,
} from "../page/cells";
import { THREE_FIGURES } from "../../workbook/number-format";
import { band, COLUMNS, gap, lettersFrom, paragraph, type Block } from "../page/page";
import type { DataCells, ReportedLoad } from "../page/source";

const HALF = COLUMNS / 2;
const LABEL_COLUMNS = 3;

/** A row with one or two items, each with its unit. */
function pair(cells: DataCells, ...shown: readonly (Shown | undefined)[]): Block {
  const placed = shown.flatMap((one, side) => (one ? [{ one, col: side * HALF }] : []));
  return {
    rows: 1,
    cells: placed.flatMap(({ one, col }): CellPlan[] => [
      { row: 0, col, kind: "label", value: one.label },
      shownCell(cells, one, 0, col + LABEL_COLUMNS),
      ...unitCell(cells, one.unit, 0, col + LABEL_COLUMNS + 1),
    ]),
    merges: placed.flatMap(({ one, col }) =>
      one.isDate ? [{ row: 0, col: col + LABEL_COLUMNS, rows: 1, cols: 2 }] : [],
    ),
  };
}

/** Items in pairs; a long text has a row of its own, and continues below if it must. */
function fields(cells: DataCells, shown: readonly Shown[]): Block[] {
  const blocks: Block[] = [];
  let waiting: Shown | undefined;
  for (const one of shown) {
    const text = one.isText && one.name !== undefined ? cells.text(one.name) : "";
    const col = LABEL_COLUMNS;
    if (text.length > lettersFrom(col, "result"))
      blocks.push(...paragraph(text, { col, lead: one.label, kind: "result" }));
    else if (text.length > lettersFrom(col, "result", HALF)) blocks.push(pair(cells, one));
    else if (waiting) {
      blocks.push(pair(cells, waiting, one));
      waiting = undefined;
    } else waiting = one;
  }
  return waiting ? [...blocks, pair(cells, waiting)] : blocks;
}

/** Two columns of items, side by side. */
const panels = (cells: DataCells, left: readonly Shown[], right: readonly Shown[]): Block[] =>
  Array.from({ length: Math.max(left.length, right.length) }, (_, i) => pair(cells, left[i], right[i]));

/** A heading that stays on one page with the first rows of its section. */
export const section = (title: string, body: readonly Block[], options = {}): Block[] =>
  body.length === 0 ? [] : [band(title, options), ...body, gap];

const text = (label: string, name: string): Shown => ({ label, name, isText: true });
const date = (label: string, name: string): Shown => ({
  label,
  name,
  format: FORMATS.date,
  isText: true,
  isDate: true,
});

/** Items that only newer data sheets have: shown if the sheet has them. */
const ifThere = (cells: DataCells, ...shown: readonly Shown[]): Shown[] =>
  shown.filter(({ name }) => name === undefined || cells.has(name));

export function identification(cells: DataCells): Block[] {
  const depth = formatIn(cells, "depth_unit");
  return section(
    "Identification",
    fields(cells, [
      text("Report no.", "report_number"),
      text("Laboratory", "laboratory"),
      text("Project", "project"),
      text("Job no.", "job_number"),
      text("Boring", "boring"),
      text("Sample", "sample"),
      ...ifThere(cells, text("Sample id", "sample_id")),
      text("Sample type", "sample_type"),
      text("Specimen", "specimen"),
      { label: "Depth of specimen", name: "depth", format: depth, unit: "depth_unit" },
      ...ifThere(cells, { label: "Top of sample", name: "sample_top", format: depth, unit: "depth_unit" }),
      ...ifThere(cells, text("Orientation", "specimen_orientation")),
      text("Soil", "soil_description"),
      text("Liquid, plastic limit", "atterberg_limits"),
      text("Condition", "condition"),
      text("Preparation", "preparation"),
      text("Standard, edition", "standard"),
      text("Load duration", "test_method"),
      date("Sampled", "sample_date"),
      date("Received", "date_received"),
      date("Test started", "date_started"),
      date("Test ended", "date_ended"),
    ]),
  );
}

export function specimen(cells: DataCells): Block[] {
  const length = formatIn(cells, "length_unit");
  const density = formatIn(cells, "density_unit");
  const [H0, Hf, dry, wf] = [
    cells.at("initial_height"),
    cells.at("final_height"),
    cells.at("dry_density_initial"),
    cells.at("water_content_final"),
  ];
  return section(
    "Specimen",
    panels(
      cells,
      [
        { label: "Diameter", name: "diameter", format: length, unit: "length_unit" },
        { label: "Initial height H0", name: "initial_height", format: length, unit: "length_unit" },
        { label: "Initial water content w0", name: "water_content_initial", format: FORMATS.water },
        { label: "  w of the trimmings", name: "water_content_trimmings", format: FORMATS.water },
        { label: "Initial bulk density", name: "density_initial", format: density, unit: "density_unit" },
        { label: "Initial dry density", name: "dry_density_initial", format: density, unit: "density_unit" },
        { label: "Initial void ratio e0", name: "void_ratio_initial", format: FORMATS.ratio },
        { label: "Initial saturation S0", name: "saturation_initial", format: FORMATS.saturation },
        { label: "Gs of solids", name: "specific_gravity", format: FORMATS.gravity },
        text("  measured or assumed", "specific_gravity_basis"),
      ],
      [
        { label: "Height of solids", name: "solids_height", format: length, unit: "length_unit" },
        { label: "Final height Hf", name: "final_height", format: length, unit: "length_unit" },
        { label: "Final water content wf", name: "water_content_final", format: FORMATS.water },
        { label: "Dry mass", name: "dry_mass", format: FORMATS.mass, unit: "g" },
        {
          label: "Final bulk density",
          formula: worked([dry, H0, Hf, wf], `${dry}*${H0}/${Hf}*(1+${wf})`),
          format: density,
          unit: "density_unit",
        },
        {
          label: "Final dry density",
          formula: worked([dry, H0, Hf], `${dry}*${H0}/${Hf}`),
          format: density,
          unit: "density_unit",
        },
        { label: "Final void ratio ef", name: "void_ratio_final", format: FORMATS.ratio },
        { label: "Final saturation Sf", name: "saturation_final", format: FORMATS.saturation },
        text("Ring number", "ring_number"),
        text("Drainage", "drainage"),
      ],
    ),
  );
}

/** The format of stresses, as the loads were typed. */
export const stressFormat = (cells: DataCells, loads: readonly ReportedLoad[]): string =>
  typedFormat(loads.flatMap(({ row }) => cells.number("load_stress", row) ?? []));

const count = (reference: string | undefined): string => (reference === undefined ? "0" : `COUNT(${reference})`);

/** A formula that gives one text if a column of the sheet holds any number, and another if not. */
const yesNo = (cells: DataCells, name: string, yes: string, no: string): string =>
  `=IF(${count(cells.column(name))}>0,"${yes}","${no}")`;

/** A row with a text from a live formula, which is never longer than the row. */
const told = (label: string, formula: string): Block => ({
  rows: 1,
  cells: [
    { row: 0, col: 0, kind: "label", value: label },
    { row: 0, col: LABEL_COLUMNS, kind: "result", align: "left", formula },
  ],
});

export function conduct(cells: DataCells, loads: readonly ReportedLoad[]): Block[] {
  const stress = stressFormat(cells, loads);
  return section("Conduct of the test", [
    ...panels(
      cells,
      [
        { label: "Seating stress", name: "seating_stress", format: stress, unit: "stress_unit" },
        { label: "Inundated under", name: "inundation_stress", format: stress, unit: "stress_unit" },
        text("Load frame", "frame_number"),
        text("Dial or transducer", "dial_number"),
      ],
      [
        { label: "Swelling pressure", name: "swelling_pressure", format: stress, unit: "stress_unit" },
        {
          label: "Strain of that load",
          name: "inundation_strain",
          format: FORMATS.strain,
          unit: "(- swell, + collapse)",
        },
        text("Balance", "balance_number"),
        text("Apparatus calibration", "calibration_date"),
      ],
    ),
    told(
      "Apparatus correction",
      yesNo(
        cells,
        "apparatus_stress",
        "yes: the deflection table of the data sheet is subtracted",
        "no: deformations are as measured",
      ),
    ),
    told(
      "Temperature correction",
      yesNo(
        cells,
        "cv_20",
        "no: cv is that of the test's temperature; cv at 20 deg C stands in a column of its own",
        "no: cv is that of the test's temperature, and no temperature was entered",
      ),
    ),
    told(
      "cv reported",
      cells.has("time_method")
        ? `=IF(${cells.at("time_method")}="root time","by root time (Taylor): T90 = ${T90}, line factor ${LINE_FACTOR}","by log time (Casagrande): T50 = ${T50}")&" unless a load's row says otherwise"`
        : '="the data sheet does not say which construction was chosen"',
    ),
    told(
      "Data sheet, made with",
      `=${["template_version", "addin_version"]
        .map((name, index) => {
          const reference = cells.at(name);
          const said = reference ? `IF(${reference}="","not stated",${reference})` : '"not stated"';
          return `"${index ? ", Clayledger " : "version "}"&${said}`;
        })
        .join("&")}`,
    ),
    told(
      "Compression curve from",
      cells.has("curve_from")
        ? `=IF(${cells.at("curve_from")}="d100","the end of primary (d100), or the end of the load where there is no d100","the end of each load")`
        : '="the data sheet does not say"',
    ),
  ]);
}

/** The number in two significant figures, as reported; the full number stands beside it. */
const reported = (reference: string | undefined): string | undefined =>
  reference && worked([reference], `ROUND(${reference},1-INT(LOG(ABS(${reference}),10)))`);

const INDICES = [
  ["Compression index Cc", "compression_index", "Cc"],
  ["Recompression index Cr", "recompression_index", "Cr"],
  ["Swelling index Cs", "swelling_index", "Cs"],
] as const;

export function results(cells: DataCells, loads: readonly ReportedLoad[]): Block[] {
  const stress = stressFormat(cells, loads);
  const yieldStress = cells.at("preconsolidation_stress");
  const value = cells.number("preconsolidation_stress");
  const format = twoFigures(value);
  const [stresses, curve] = [cells.column("load_stress"), cells.column("void_ratio_curve")];
  const unit = cells.has("stress_unit") ? `&" "&${cells.at("stress_unit")}` : "";
  const basis = (item: string): string | undefined =>
    stresses &&
    curve &&
    `=IFERROR(VLOOKUP("${item}",CLAY.COMPRESSION_INDICES(${stresses},${curve}),3,FALSE)${unit},"${NOTHING}")`;
  const rows: Block[] = [
    ...panels(
      cells,
      [
        { label: "Preconsolidation stress", formula: reported(yieldStress), format, unit: "stress_unit" },
        { label: "  as worked out", name: "preconsolidation_stress", format: decimals(value, 4), unit: "stress_unit" },
      ],
      [
        // With the decimals of the table under Interpretation, which shows the same two numbers.
        { label: "Points allow from", name: "preconsolidation_low", format: stress, unit: "stress_unit" },
        { label: "  to", name: "preconsolidation_high", format: stress, unit: "stress_unit" },
      ],
    ),
    {
      rows: 1,
      cells: [
        { row: 0, col: 0, kind: "label", value: "  technique" },
        {
          row: 0,
          col: LABEL_COLUMNS,
          kind: "result",
          value: "Casagrande's construction; for the other methods see Interpretation",
        },
      ],
    },
    ...panels(
      cells,
      [{ label: "In-situ stress", name: "in_situ_stress", format: stress, unit: "stress_unit" }],
      [{ label: "Overconsolidation ratio", name: "overconsolidation_ratio", format: "0.0" }],
    ),
    ...INDICES.map(([label, name, item]): Block => ({
      rows: 1,
      cells: [
        { row: 0, col: 0, kind: "label", value: label },
        shownCell(cells, { label, name, format: FORMATS.index }, 0, LABEL_COLUMNS),
        { row: 0, col: LABEL_COLUMNS + 1, kind: "unit", value: "by void ratio, from the" },
        shownCell(cells, { label, formula: basis(item), isText: true }, 0, LABEL_COLUMNS + 4),
      ],
    })),
    ...panels(
      cells,
      [
        {
          label: "C alpha, by strain",
          name: "c_alpha_chosen",
          format: twoFigures(cells.number("c_alpha_chosen")),
          unit: "per log cycle",
        },
      ],
      [{ label: "  of load", name: "c_alpha_load", format: "0" }],
    ),
    ...panels(
      cells,
      [{ label: "C alpha / Cc, by e", name: "c_alpha_ratio", format: FORMATS.index }],
      [text("Sample quality class", "quality_class")],
    ),
  ];
  return section("Results", rows);
}

const decimals = (value: number | undefined, figures: number): string =>
  value === undefined || value === 0
    ? "0.0"
    : `0.${"0".repeat(Math.max(1, figures - 1 - Math.floor(Math.log10(Math.abs(value)))))}`;

const LINE = "_".repeat(22);

export function signatures(cells: DataCells): Block[] {
  const signed = (label: string, name: string, on: string): Block => ({
    rows: 2,
    cells: [
      { row: 1, col: 0, kind: "label", value: label },
      shownCell(cells, text(label, name), 1, 2),
      { row: 1, col: 5, kind: "label", value: "Date" },
      shownCell(cells, date("Date", on), 1, 6),
      { row: 1, col: 8, kind: "label", value: "Signed" },
      { row: 1, col: 9, kind: "label", value: LINE },
    ],
    merges: [{ row: 1, col: 6, rows: 1, cols: 2 }],
    withNext: true,
  });
  return [
    band("Signatures"),
    signed("Tested by", "tested_by", "date_tested"),
    { ...signed("Checked by", "checked_by", "date_checked"), withNext: false },
    gap,
  ];
}

/** One column of a table of loads. */
export interface LoadColumn {
  readonly heading: readonly [string, string];
  readonly unit?: string;
  readonly format?: (row: number) => string | undefined;
  /** The formula of a load; undefined if the sheet has no cell for it. */
  readonly formula: (load: ReportedLoad) => string | number | undefined;
  readonly isText?: boolean;
}

/** Rows of loads in one part of a table: with its headings the part fits on a page of either paper. */
const MOST_ROWS = 36;

/**
 * A table with a row for each load, in several parts if it does not fit on a page. `names` are the names of its columns
 * on the report; those of a later part end in its number ("report_strain_2").
 */
export function loadTable(
  cells: DataCells,
  title: string,
  columns: readonly LoadColumn[],
  loads: readonly ReportedLoad[],
  names: Readonly<Record<string, number>>,
): Block[] {
  const alignOf = ({ isText }: LoadColumn) => (isText ? ("center" as const) : ("right" as const));
  const head = columns.flatMap((column, col): CellPlan[] => [
    ...column.heading.map((value, row): CellPlan => ({ row, col, kind: "heading", value, align: alignOf(column) })),
    ...unitCell(cells, column.unit, 2, col).map((cell) => ({ ...cell, align: alignOf(column) })),
  ]);
  for (let col = columns.length; col < COLUMNS; col++)
    head.push({ row: 0, col, kind: "heading" }, { row: 1, col, kind: "heading" });
  const first = 3;
  const rowOf = (load: ReportedLoad, row: number): CellPlan[] =>
    columns.map((column, col) => {
      const content = column.formula(load);
      const shown = typeof content === "number" ? { value: content } : { formula: content };
      return {
        ...shownCell(cells, { label: "", ...shown, format: column.format?.(load.row) }, row, col),
        align: alignOf(column),
      };
    });
  const parts = Array.from({ length: Math.ceil(loads.length / MOST_ROWS) }, (_, part) =>
    loads.slice(part * MOST_ROWS, (part + 1) * MOST_ROWS),
  );
  return parts.flatMap((part, number) => {
    const suffix = number === 0 ? "" : `_${number + 1}`;
    const boxes = Object.entries(names).map(([name, col]) => [
      name + suffix,
      { row: first, col, rows: part.length, cols: 1 },
    ]);
    return [
      band(number === 0 ? title : `${title}, continued`),
      {
        rows: first + part.length,
        cells: [...head, ...part.flatMap((load, index) => rowOf(load, first + index))],
        names: Object.fromEntries(boxes),
      },
    ];
  });
}

export const cell =
  (cells: DataCells, name: string) =>
  ({ row }: ReportedLoad): string | undefined => {
    const reference = cells.at(name, row);
    return reference && shownFormula(reference);
  };

export const always = (format: string) => () => format;
export const perLoad = (cells: DataCells, name: string) => (row: number) => twoFigures(cells.number(name, row));

/** Minutes from the first instant of the load to its last reading. */
function duration(cells: DataCells, { number }: ReportedLoad): string | undefined {
  const [times, readings] = [cells.column(timesName(number)), cells.column(readingsName(number))];
  return (
    times &&
    readings &&
    `=IFERROR(IF(COUNT(${readings})=0,"${NOTHING}",MAX(IF(ISNUMBER(${readings}),${times}))),"error")`
  );
}

/** The construction that gives cv of a load: the one picked for the load, or the one of the sheet. */
function methodOf(cells: DataCells, { row }: ReportedLoad): string | undefined {
  const chosen = cells.at("load_method", row) ?? cells.at("time_method");
  const cv = cells.at("cv_chosen", row);
  return chosen && cv && `=IFERROR(IF(${cv}="","${NOTHING}",IF(${chosen}="root time","root","log")),"error")`;
}

export function loadsOfTest(cells: DataCells, loads: readonly ReportedLoad[]): Block[] {
  const length = formatIn(cells, "length_unit", "0.000") === "0.00" ? "0.000" : "0.0000";
  const columns: LoadColumn[] = [
    { heading: ["Load", ""], formula: ({ number }) => number, format: always("0") },
    {
      heading: ["Stress", ""],
      unit: "stress_unit",
      formula: cell(cells, "load_stress"),
      format: always(stressFormat(cells, loads)),
    },
    { heading: ["Duration", ""], unit: "min", formula: (load) => duration(cells, load) },
    {
      heading: ["Temper-", "ature"],
      unit: "deg C",
      formula: cell(cells, "load_temperature"),
      format: always(FORMATS.temperature),
    },
    {
      heading: ["Deform.", "corrected"],
      unit: "length_unit",
      formula: cell(cells, "corrected_deformation"),
      format: always(length),
    },
    { heading: ["Strain", "at end"], formula: cell(cells, "strain_end"), format: always(FORMATS.strain) },
    { heading: ["e", "at end"], formula: cell(cells, "void_ratio_end"), format: always(FORMATS.ratio) },
    { heading: ["e", "at d100"], formula: cell(cells, "void_ratio_d100"), format: always(FORMATS.ratio) },
    {
      heading: ["mv", ""],
      unit: "mv_unit",
      formula: cell(cells, "volume_compressibility"),
      format: always(THREE_FIGURES),
    },
    { heading: ["cv", ""], unit: "cv_unit", formula: cell(cells, "cv_chosen"), format: always(THREE_FIGURES) },
    { heading: ["cv", "by"], formula: (load) => methodOf(cells, load), isText: true },
    { heading: ["C alpha", "strain"], formula: cell(cells, "c_alpha"), format: perLoad(cells, "c_alpha") },
  ];
  return [
    ...loadTable(cells, "Loads", columns, loads, {
      report_loads: 0,
      report_stress: 1,
      report_strain: 5,
      report_void_ratio: 6,
      report_cv: 9,
    }),
    ...paragraph(
      '-  nothing to show: unloading, or the construction or measurement gave none; the remarks on loads and the list of what is missing say why. "error": the cell of the data sheet shows one. cv and mv in three significant figures or more, C alpha in two. mv is strain of the load on its starting height over the increase of stress; C alpha is strain per log cycle of time on the initial height.',
      { kind: "note" },
    ),
    gap,
  ];
}

export function timesOfTest(cells: DataCells, loads: readonly ReportedLoad[]): Block[] {
  const columns: LoadColumn[] = [
    { heading: ["Load", ""], formula: ({ number }) => number, format: always("0") },
    {
      heading: ["Stress", ""],
      unit: "stress_unit",
      formula: cell(cells, "load_stress"),
      format: always(stressFormat(cells, loads)),
    },
    { heading: ["t50", "log time"], unit: "min", formula: cell(cells, "log_t50"), format: perLoad(cells, "log_t50") },
    {
      heading: ["t90", "root time"],
      unit: "min",
      formula: cell(cells, "root_t90"),
      format: perLoad(cells, "root_t90"),
    },
    {
      heading: ["cv by", "log time"],
      unit: "cv_unit",
      formula: cell(cells, "cv_log_time"),
      format: always(THREE_FIGURES),
    },
    {
      heading: ["cv by", "root time"],
      unit: "cv_unit",
      formula: cell(cells, "cv_root_time"),
      format: always(THREE_FIGURES),
    },
    {
      heading: ["cv at", "20 deg C"],
      unit: "cv_unit",
      formula: cell(cells, "cv_20"),
      format: always(THREE_FIGURES),
    },
    { heading: ["k", ""], unit: "conductivity_unit", formula: cell(cells, "conductivity"), format: always("0.0E+00") },
    { heading: ["Curve", "point at"], formula: cell(cells, "curve_point"), isText: true },
    { heading: ["Branch", ""], formula: cell(cells, "load_branch"), isText: true },
    { heading: ["Water", "added"], formula: cell(cells, "load_mark"), isText: true },
  ];
  return [
    ...loadTable(cells, "Time curves of the loads", columns, loads, {}),
    ...paragraph(
      "k is calculated from cv, mv and the unit weight of water; it is no substitute for a direct test. The two columns of cv by construction show the spread of interpretation.",
      { kind: "note" },
    ),
    gap,
  ];
}
