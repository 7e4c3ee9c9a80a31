/**
 * The first page: who and what, apparatus and units, masses and sizes, results. Sections stand one below the other,
 * each with up to three panels side by side.
 */
import { PROCEDURES } from "../reduction/increment/constructions/procedure";
import { METHOD_NAMES } from "../reduction/curve/preconsolidation";
import {
  CONDUCTIVITY_UNITS,
  CV_UNITS,
  DENSITY_UNITS,
  DEPTH_UNITS,
  LENGTH_UNITS,
  MV_UNITS,
  STRESS_UNITS,
} from "./unit-choices";
import { ANY_NUMBER, type Measure } from "./measures";
import { when, type Field, type Spill, type Table } from "./field";

const text = (name: string, label: string, note?: string, choices?: readonly string[]): Field => ({
  name,
  label,
  measure: "text",
  kind: "input",
  note,
  choices,
});

const date = (name: string, label: string): Field => ({ name, label, measure: "date", kind: "input" });

const input = (
  name: string,
  label: string,
  measure: Measure,
  note: string,
  more: Pick<Field, "choices" | "value" | "limits"> = {},
): Field => ({ name, label, measure, kind: "input", note, ...more });

const result = (name: string, label: string, measure: Measure, formula: string, note: string): Field => ({
  name,
  label,
  measure,
  kind: "result",
  formula,
  note,
});

/** Fields given row by row, as the work goes and the Tab key follows it, as the panels that stand side by side. */
const panels = (...rows: readonly (readonly Field[])[]): readonly (readonly Field[])[] =>
  [0, 1, 2].map((panel) => rows.flatMap((row) => row[panel] ?? []));

const IDENTIFICATION = panels(
  [text("project", "Project"), text("job_number", "Job no."), text("report_number", "Report no.")],
  [
    text("laboratory", "Lab."),
    text("boring", "Boring"),
    text("sample", "Sample", "The client's own reference, letter for letter: a changed one cannot be matched later."),
  ],
  [
    text("sample_type", "Type", "Tube, block, piston; as the client's own list has it."),
    text("specimen", "Specimen"),
    input("depth", "Depth", "depth", "Depth of the middle of the specimen below ground level."),
  ],
  [
    text("sample_id", "Sample ID", "The number under which the sample is kept and handed over with its data."),
    input("sample_top", "Top", "depth", "Depth of the top of the sample below ground level."),
    text("specimen_orientation", "Orientation", "How the specimen's axis stood in the ground.", [
      "vertical",
      "horizontal",
      "other: see remarks",
    ]),
  ],
  [
    { ...text("soil_description", "Soil"), lines: 2 },
    text("atterberg_limits", "Limits", "Liquid and plastic limit, where they were measured."),
    text("condition", "Condition", "State of the specimen before the test.", ["intact", "remoulded", "compacted"]),
  ],
  [
    { ...text("preparation", "Prepared", "Trimming, time from extrusion, anything patched or lost."), lines: 2 },
    text("standard", "Standard", "The standard and edition that the contract names."),
    text("test_method", "Load duration", "How long each load stays: a fixed time, or until primary has ended.", [
      "24 h loads",
      "to end of primary",
      "other: see remarks",
    ]),
  ],
  [date("sample_date", "Sampled"), date("date_received", "Received"), date("date_started", "Started")],
  [text("tested_by", "Tested by"), date("date_tested", "Date"), date("date_ended", "Ended")],
  [text("checked_by", "Checked by"), date("date_checked", "Date")],
);

const unit = (name: string, label: string, choices: readonly string[], value: Field["value"], note: string): Field =>
  input(name, `Unit of ${label}`, "text", `${note} ${NOT_CONVERTED}`, { choices, value });

const NOT_CONVERTED = "A change relabels the numbers that are typed in this unit; it does not convert them.";

const APPARATUS = panels(
  [
    unit("length_unit", "length", LENGTH_UNITS, { SI: "mm", US: "in" }, "Of sizes, dial factor and deflections."),
    unit(
      "stress_unit",
      "stress",
      STRESS_UNITS,
      { SI: "kPa", US: "tsf" },
      "The US tsf is the 2000 lbf ton per square foot.",
    ),
    unit("depth_unit", "depth", DEPTH_UNITS, { SI: "m", US: "ft" }, "Of the specimen's depth."),
  ],
  [
    unit(
      "density_unit",
      "density",
      DENSITY_UNITS,
      { SI: "Mg/m3", US: "pcf" },
      "kN/m3 and pcf are weights per volume at standard gravity.",
    ),
    unit("cv_unit", "cv", CV_UNITS, { SI: "m2/yr", US: "ft2/day" }, "The year is 365.25 days."),
    unit("mv_unit", "mv", MV_UNITS, { SI: "m2/MN", US: "ft2/ton" }, "Strain per unit of stress."),
  ],
  [
    unit("conductivity_unit", "k", CONDUCTIVITY_UNITS, { SI: "m/s", US: "ft/day" }, "Hydraulic conductivity."),
    text("ring_number", "Ring number"),
    input("drainage", "Drainage", "text", "Both faces drain in a fixed or floating ring with two porous disks.", {
      choices: ["double", "single"],
      value: "double",
    }),
  ],
  [
    input(
      "registered_diameter",
      "Ring register: diameter",
      "length",
      "What the ring register has for this ring; the measured one is typed below.",
    ),
    input("registered_height", "Ring register: height", "length", "Height of the ring in the register."),
    input("registered_ring_mass", "Ring register: mass", "mass", "Mass of the ring in the register, clean and dry."),
  ],
  [
    text("frame_number", "Load frame number"),
    input("lever_ratio", "Lever ratio", "ratio", "Of a lever frame, such as 10; blank for other frames.", {
      limits: { least: 0, above: true },
    }),
    date("frame_calibration_due", "Frame calibration due"),
  ],
  [
    text("dial_number", "Dial / transducer number"),
    input(
      "dial_factor",
      "Dial factor",
      "factor",
      "Length of one division, such as 0.002 mm or 0.0001 in; 1 where the logger already records lengths.",
    ),
    date("dial_calibration_due", "Dial calibration due"),
  ],
  [
    text("balance_number", "Balance number"),
    text("calibration_date", "Apparatus calibration", "Date and reference of the apparatus deflection calibration."),
    date("balance_calibration_due", "Balance calibration due"),
  ],
  [
    input(
      "dial_sense",
      "Readings on compression",
      "text",
      "Whether readings rise or fall when the specimen compresses.",
      { choices: ["rise", "fall"], value: "rise" },
    ),
    input("zero_reading", "Zero reading", "reading", "Dial reading under the seating stress, before the first load."),
    input(
      "seating_stress",
      "Seating stress",
      "stress",
      "Stress under which the zero reading was taken; blank counts as zero.",
    ),
  ],
);

const DRY_MASS = ["{ring_mass}", "{ring_and_dry}"];
/** Ring and dry soil without the salt that drying left there. */
const DRY = '{ring_and_dry}-IF({salt_mass}="",0,{salt_mass})';
const SOLIDS = [...DRY_MASS, "{specific_gravity}", "{diameter}"];

const MASSES = panels(
  [
    input("diameter", "Diameter", "length", "Mean inside diameter of the ring, measured, not nominal."),
    input("initial_height", "Initial height", "length", "Height of the specimen in the ring before seating."),
    input("ring_mass", "Ring", "mass", "Ring alone, clean and dry."),
  ],
  [
    input("ring_and_wet_before", "Ring + wet soil, before", "mass", "Trimmed specimen in its ring before the test."),
    input("ring_and_wet_after", "Ring + wet soil, after", "mass", "Dismantled quickly, free water blotted off."),
    input("ring_and_dry", "Ring + dry soil", "mass", "After oven drying to constant mass, with all soil kept."),
  ],
  [
    input(
      "specific_gravity",
      "Specific gravity of solids",
      "ratio",
      "Particle density over that of water, 1.000 Mg/m3.",
      {
        limits: { least: 1, most: 5 },
      },
    ),
    input("specific_gravity_basis", "  measured or assumed", "text", "An assumed value must be reported as such.", {
      choices: ["measured", "assumed"],
    }),
    input(
      "final_height_measured",
      "Final height, measured",
      "length",
      "Optional: a check on the height from the readings, and used in its place where there are none.",
    ),
  ],
  [
    result(
      "dry_mass",
      "Dry mass of soil",
      "mass",
      when(DRY_MASS, `${DRY}-{ring_mass}`),
      "Md = (ring + dry soil) - ring, less the salt of the pore water where its content is given.",
    ),
    result(
      "solids_height",
      "Height of solids",
      "length",
      when(
        SOLIDS,
        'CLAY.SOLIDS_HEIGHT({dry_mass},{specific_gravity},{diameter},{length_unit},IF({water_density}="",1,{water_density}))',
      ),
      "Hs = Md / (Gs rho_w A), A = pi D^2 / 4, rho_w = 1.000 g/cm3, or that of the temperature given.",
    ),
    input(
      "largest_particle",
      "Largest particle",
      "length",
      "Largest grain or inclusion found in the specimen after the test.",
    ),
  ],
  [
    input(
      "test_temperature",
      "Temperature of the water",
      "temperature",
      "Optional: of the water that the specific gravity is relative to, 20 as a rule. Left blank, water has 1.000 g/cm3.",
    ),
    result(
      "water_density",
      "  its density, g/cm3",
      "small",
      when(["{test_temperature}"], "CLAY.WATER_DENSITY({test_temperature})"),
      "By Kell (1975), from the temperature.",
    ),
    input(
      "pore_salt",
      "Salt of the pore water",
      "percent",
      "Optional: mass of salt over mass of pore water at the end of the test, 3.5 % in sea water. Drying leaves the salt with the soil: it is taken out of the dry mass.",
      { limits: { least: 0, most: 0.26 } },
    ),
  ],
  [
    result(
      "salt_mass",
      "Salt in the dry soil",
      "mass",
      when(
        ["{pore_salt}", ...DRY_MASS, "{ring_and_wet_after}"],
        'IF({pore_salt}=0,"",CLAY.SALT_CORRECTION({ring_and_wet_after},{ring_and_dry},{pore_salt},{ring_mass},"salt"))',
      ),
      "Pore water = (wet after - dry) / (1 - s), salt = pore water less (wet after - dry); IODP Proceedings 330, Table T9.",
    ),
    result(
      "water_content_initial_weighed",
      "w0 without correction for salt",
      "percent",
      when(
        ["{salt_mass}", "{ring_and_wet_before}"],
        "CLAY.WATER_CONTENT({ring_and_wet_before},{ring_and_dry},{ring_mass})",
      ),
      "As weighed: (wet mass before - dry mass) / dry mass, the salt in the dry mass.",
    ),
    result(
      "water_content_final_weighed",
      "wf without correction for salt",
      "percent",
      when(["{salt_mass}"], "CLAY.WATER_CONTENT({ring_and_wet_after},{ring_and_dry},{ring_mass})"),
      "As weighed: (wet mass after - dry mass) / dry mass, the salt in the dry mass.",
    ),
  ],
);

/** Two or three tins of trimmings; the mean is a second route to the water content. */
export const TINS: Table = {
  rows: 3,
  columns: [
    { name: "tin_number", label: "Tin number", heading: ["Tin", "number"], measure: "text", kind: "input" },
    {
      name: "tin_mass",
      label: "Tin",
      heading: ["Tin", ""],
      measure: "mass",
      kind: "input",
      note: "Empty tin, clean and dry.",
    },
    { name: "tin_and_wet", label: "Tin + wet trimmings", heading: ["Tin", "+ wet"], measure: "mass", kind: "input" },
    { name: "tin_and_dry", label: "Tin + dry trimmings", heading: ["Tin", "+ dry"], measure: "mass", kind: "input" },
    {
      name: "tin_water_content",
      label: "Water content of the tin",
      heading: ["Water", "content"],
      measure: "percent",
      kind: "result",
      formula: when(
        ["[tin_mass]", "[tin_and_wet]", "[tin_and_dry]"],
        "CLAY.WATER_CONTENT([tin_and_wet],[tin_and_dry],[tin_mass])",
      ),
      note: "w = (wet - dry) / (dry - tin).",
    },
  ],
};

/** A difference in as many digits as it is shown, so that what is as good as nothing does not show as -0.0; nothing is worked out from it. */
const rounded = (formula: string, digits: number): string => `ROUND(${formula},${digits})+0`;

const TRIMMINGS: readonly Field[] = [
  result(
    "water_content_trimmings",
    "Water content, trimmings",
    "percent",
    '=IF(COUNT({tin_water_content})=0,"",AVERAGE({tin_water_content}))',
    "Mean of the tins.",
  ),
  result(
    "dry_mass_trimmings",
    "Dry mass by the trimmings",
    "mass",
    when(
      ["{ring_mass}", "{ring_and_wet_before}", "{water_content_trimmings}"],
      "({ring_and_wet_before}-{ring_mass})/(1+{water_content_trimmings})",
    ),
    "Md = wet mass before / (1 + w of trimmings): a check on the oven-dry mass, not used in the reduction.",
  ),
  result(
    "dry_mass_difference",
    "  over the oven-dry mass",
    "percent",
    when(["{dry_mass}", "{dry_mass_trimmings}"], rounded("{dry_mass_trimmings}/{dry_mass}-1", 3)),
    "More than 2 % either way: look at the weighings (common practice, no source).",
  ),
];

/** The blank test on a metal disk: cumulative deflection of the frame, disks and papers. */
export const DEFLECTION: Table = {
  rows: 12,
  columns: [
    {
      name: "apparatus_stress",
      label: "Apparatus deflection: stress",
      heading: ["Apparatus", "stress"],
      measure: "stress",
      kind: "input",
      note: "Stresses of the blank test on a metal disk with the same disks and papers.",
    },
    {
      name: "apparatus_loading",
      label: "Apparatus deflection, loading",
      heading: ["Deflection", "loading"],
      measure: "length",
      kind: "input",
      note: "Cumulative deflection of the apparatus on loading. An empty table means no correction.",
      limits: ANY_NUMBER,
    },
    {
      name: "apparatus_unloading",
      label: "Apparatus deflection, unloading",
      heading: ["Deflection", "unloading"],
      measure: "length",
      kind: "input",
      note: "The same on unloading. Left empty, the loading column serves both.",
      limits: ANY_NUMBER,
    },
  ],
};

const SEATING_DEFLECTION: readonly Field[] = [
  result(
    "apparatus_deflection_seating",
    "Deflection at the seating stress",
    "length",
    '=IF(COUNT({apparatus_stress})=0,"",IF(OR({seating_stress}="",{seating_stress}=0),0,CLAY.APPARATUS_DEFLECTION({seating_stress},{apparatus_stress},{apparatus_loading})))',
    "Of the loading column, interpolated on log stress. The zero reading was taken under it, so that a load is corrected by the table's value less this one. 0 where the seating stress is blank or 0. #N/A where the table does not reach down to the seating stress: enter a row for that stress, with deflection 0 where the blank test was zeroed under it.",
  ),
];

/** A column of the load table at the load of a number, wherever its row has moved to. */
const atLoad = (column: string, number: string): string => `INDEX({${column}},MATCH(${number},{load_number},0))`;

/** The first load that the water came under. */
const INUNDATED = 'MATCH("inundated",{load_mark},0)';

const INUNDATION: readonly Field[] = [
  result(
    "inundation_stress",
    "Inundated under",
    "stress",
    `=IF({seating_mark}="inundated",IF({seating_stress}="","",{seating_stress}),IFERROR(IF(INDEX({load_stress},${INUNDATED})="","",INDEX({load_stress},${INUNDATED})),""))`,
    "Stress of the load that is marked as inundated, or the seating stress where that is marked.",
  ),
  result(
    "inundation_strain",
    "  strain of that load",
    "strain",
    `=IF({seating_mark}="inundated","",IFERROR(IF(INDEX({strain_end},${INUNDATED})="","",INDEX({strain_end},${INUNDATED})-IF(INDEX({load_number},${INUNDATED})=1,0,${atLoad("strain_end", `INDEX({load_number},${INUNDATED})-1`)})),""))`,
    "Strain at the end of the inundated load less that of the load before; negative where the specimen swelled. Inundate under a load of its own to see swell or collapse alone; blank where the water was added under the seating stress.",
  ),
  input(
    "swelling_pressure",
    "Swelling pressure",
    "stress",
    "Stress that held the height on inundation, where it was measured.",
  ),
];

const density = (mass: string, height: string) =>
  `CLAY.DENSITY(${mass},{diameter},${height},{length_unit},{density_unit})`;

const SPECIMEN_CALL =
  "CLAY.SPECIMEN({diameter},{initial_height},{ring_mass},{ring_and_wet_before},{ring_and_wet_after},{ring_and_dry},{specific_gravity},{final_height},{length_unit}";

/** A saturation by its formula, or, where the pore water has salt, by the whole specimen. */
const ofPoreWater = (formula: string, item: string): string =>
  `IF({salt_mass}="",${formula},${SPECIMEN_CALL},"${item}",{test_temperature},{pore_salt}))`;

const SPECIMEN_RESULTS: readonly Field[] = [
  result(
    "water_content_initial",
    "Water content, initial w0",
    "percent",
    when([...DRY_MASS, "{ring_and_wet_before}"], `CLAY.WATER_CONTENT({ring_and_wet_before},${DRY},{ring_mass})`),
    "w0 = (wet mass before - dry mass) / dry mass, of the specimen itself.",
  ),
  result(
    "water_content_final",
    "Water content, final wf",
    "percent",
    when([...DRY_MASS, "{ring_and_wet_after}"], `CLAY.WATER_CONTENT({ring_and_wet_after},${DRY},{ring_mass})`),
    "wf = (wet mass after - dry mass) / dry mass.",
  ),
  result(
    "density_initial",
    "Bulk density, initial",
    "density",
    when(
      ["{ring_mass}", "{ring_and_wet_before}", "{diameter}", "{initial_height}"],
      density("{ring_and_wet_before}-{ring_mass}", "{initial_height}"),
    ),
    "Wet mass before / (A H0).",
  ),
  result(
    "dry_density_initial",
    "Dry density, initial",
    "density",
    when(["{dry_mass}", "{diameter}", "{initial_height}"], density("{dry_mass}", "{initial_height}")),
    "Dry mass / (A H0).",
  ),
  result(
    "void_ratio_initial",
    "Void ratio, initial e0",
    "ratio",
    when(["{solids_height}", "{initial_height}"], "CLAY.VOID_RATIO({initial_height},{solids_height})"),
    "e0 = (H0 - Hs) / Hs.",
  ),
  result(
    "saturation_initial",
    "Saturation, initial S0",
    "percent",
    when(
      ["{water_content_initial}", "{void_ratio_initial}"],
      ofPoreWater("CLAY.SATURATION({water_content_initial},{specific_gravity},{void_ratio_initial})", "S0"),
    ),
    "S0 = w0 Gs / e0; where the pore water has salt, its greater density counts.",
  ),
  result(
    "final_height",
    "Final height",
    "length",
    `=IF(COUNT({end_reading})>0,${atLoad("height_end", "MAX(IF(ISNUMBER({end_reading}),{load_number}))")},IF({final_height_measured}="","",{final_height_measured}))`,
    "Initial height less the corrected deformation at the end of the last load; the measured height where there are no readings.",
  ),
  result(
    "void_ratio_final",
    "Void ratio, final ef",
    "ratio",
    when(["{solids_height}", "{final_height}"], "CLAY.VOID_RATIO({final_height},{solids_height})"),
    "ef = (Hf - Hs) / Hs, from the readings.",
  ),
  result(
    "void_ratio_final_by_water",
    "  by water, S = 100 %",
    "ratio",
    when(
      ["{water_content_final}", "{specific_gravity}"],
      // Of pore water with salt Sf ef is the same product with the greater density.
      'IF({salt_mass}="",{water_content_final}*{specific_gravity},IF({saturation_final}="","",{saturation_final}*{void_ratio_final}))',
    ),
    "ef = wf Gs where the specimen ends saturated: the second route, for comparison.",
  ),
  result(
    "saturation_final",
    "Saturation, final Sf",
    "percent",
    when(
      ["{water_content_final}", "{void_ratio_final}"],
      ofPoreWater("CLAY.SATURATION({water_content_final},{specific_gravity},{void_ratio_final})", "Sf"),
    ),
    "Sf = wf Gs / ef; where the pore water has salt, its greater density counts.",
  ),
];

/** A formula over the compression curve, blank until it has points. */
const ofCurve = (call: string) => `=IF(COUNT({void_ratio_curve})=0,"",CLAY.${call})`;
const CURVE = "{load_stress},{void_ratio_curve}";

const CHOICES: readonly Field[] = [
  input(
    "curve_from",
    "Curve drawn from",
    "text",
    "What the compression curve shows: void ratios at the end of each load, or at d100.",
    {
      choices: ["end of load", "d100"],
      value: "end of load",
    },
  ),
  input(
    "time_method",
    "d100 and cv by",
    "text",
    "The construction whose d100 and cv are reported and used further; both are shown.",
    {
      choices: ["log time", "root time"],
      value: "log time",
    },
  ),
  input(
    "time_procedure",
    "Constructions made",
    "text",
    "aided: theory helps to choose the readings and straightens a short tail. drawn: as a hand repeats them with a ruler, through raw readings. A load may have its own in the table of picks.",
    { choices: PROCEDURES, value: PROCEDURES[0] },
  ),
  input(
    "in_situ_stress",
    "In-situ effective stress",
    "stress",
    "Vertical effective stress in the ground at the depth of the specimen.",
  ),
  input("c_alpha_load", "C alpha of load number", "count", "Number of the load whose C alpha is reported.", {
    limits: (loads) => ({ least: 1, most: loads }),
  }),
  input(
    "field_factor",
    "Field curve meets at",
    "ratio",
    "Share of e0 at which the field curve meets the laboratory line: 0.42 by Schmertmann (1955); some use 0.40.",
    {
      value: 0.42,
      limits: { least: 0, above: true, most: 1 },
    },
  ),
];

const COMPRESSION_RESULTS: readonly Field[] = [
  result(
    "preconsolidation_stress",
    "Preconsolidation stress",
    "stress",
    ofCurve(`PRECONSOLIDATION(${CURVE},"casagrande","stress")`),
    "Casagrande's construction on the void ratio against log stress curve.",
  ),
  result(
    "preconsolidation_low",
    "  not less than",
    "stress",
    ofCurve(`PRECONSOLIDATION(${CURVE},"casagrande","low")`),
    "Lower end of the range that these points allow; the choice of method is not in it.",
  ),
  result(
    "preconsolidation_high",
    "  not more than",
    "stress",
    ofCurve(`PRECONSOLIDATION(${CURVE},"casagrande","high")`),
    "Upper end of the range that these points allow; the choice of method is not in it.",
  ),
  result(
    "overconsolidation_ratio",
    "Overconsolidation ratio",
    "ratio",
    when(["{preconsolidation_stress}", "{in_situ_stress}"], "CLAY.OCR({preconsolidation_stress},{in_situ_stress})"),
    "OCR = preconsolidation stress / in-situ effective stress.",
  ),
  result(
    "compression_index",
    "Compression index Cc",
    "ratio",
    ofCurve(`COMPRESSION_INDEX(${CURVE})`),
    "Fall of void ratio per log cycle of stress on the virgin line.",
  ),
  result(
    "recompression_index",
    "Recompression index Cr",
    "ratio",
    ofCurve(`RECOMPRESSION_INDEX(${CURVE})`),
    "The same on the reloading branch.",
  ),
  result(
    "swelling_index",
    "Swelling index Cs",
    "ratio",
    ofCurve(`SWELLING_INDEX(${CURVE})`),
    "Rise of void ratio per log cycle of stress on unloading.",
  ),
  result(
    "c_alpha_chosen",
    "C alpha-epsilon",
    "small",
    when(["{c_alpha_load}"], atLoad("c_alpha", "{c_alpha_load}")),
    "Strain per log cycle of time of the load chosen, on the initial height.",
  ),
  result(
    "c_alpha_ratio",
    "C alpha / Cc",
    "ratio",
    when(
      ["{c_alpha_chosen}", "{compression_index}", "{void_ratio_initial}"],
      'CLAY.C_ALPHA_RATIO({c_alpha_chosen}*(1+{void_ratio_initial}),{compression_index},"ratio")',
    ),
    "Both by void ratio: C alpha (1 + e0) / Cc. Cc is that of the virgin line, so choose a load on it.",
  ),
];

const IN_SITU = ["{in_situ_stress}", "{preconsolidation_stress}", "{void_ratio_initial}"];
const FIELD_CALL = `CLAY.FIELD_CURVE(${CURVE},{in_situ_stress},{preconsolidation_stress},IF({field_factor}="",0.42,{field_factor}),{void_ratio_initial})`;
const ofField = (row: string, column: number): string =>
  when(IN_SITU, `VLOOKUP("${row}",${FIELD_CALL},${column},FALSE)`);
const QUALITY_CALL = `CLAY.SAMPLE_QUALITY(${CURVE},{in_situ_stress},{preconsolidation_stress},{void_ratio_initial},"e"`;
const ofQuality = (item: string): string => when(IN_SITU, `${QUALITY_CALL},"${item}")`);
const MEETS = "meets the laboratory line";

const FIELD: readonly Field[] = [
  result(
    "field_compression_index",
    "Field curve, Cc",
    "ratio",
    ofField("Cc", 2),
    "Slope of Schmertmann's field curve beyond the preconsolidation stress.",
  ),
  result(
    "field_recompression_index",
    "Field curve, Cr",
    "ratio",
    ofField("Cr", 2),
    "Slope of the field curve from the in-situ stress to the preconsolidation stress; the next line says which branch it was read from.",
  ),
  result(
    "field_recompression_from",
    "  Cr of the field curve from",
    "text",
    ofField("Cr", 3),
    "The branch of the test that Cr was read from: a reload loop first; the rebound at the end only where there is no loop.",
  ),
  result(
    "field_meeting_stress",
    "  meets the lab. line at",
    "stress",
    ofField(MEETS, 2),
    "Stress where both curves meet.",
  ),
  result("field_meeting_void_ratio", "  at void ratio", "ratio", ofField(MEETS, 3), "The share of e0 chosen above."),
];

const QUALITY: readonly Field[] = [
  result(
    "quality_change",
    "Sample quality, de / e0",
    "ratio",
    ofQuality("de_e0"),
    "Change of void ratio on loading to the in-situ stress, over e0.",
  ),
  result(
    "quality_class",
    "  class by de / e0",
    "text",
    ofQuality("class"),
    "Lunne, Berre and Strandvik (1997), for overconsolidation ratios up to 4.",
  ),
  result(
    "quality_strain",
    "Strain at in-situ stress",
    "strain",
    ofQuality("strain"),
    "Volumetric strain on loading to the in-situ stress.",
  ),
  result(
    "quality_strain_class",
    "  class by strain",
    "text",
    ofQuality("strain_class"),
    "Specimen quality designation A (best) to E, after Andresen and Kolstad (1979).",
  ),
];

const CHECKS: readonly Field[] = [
  result(
    "final_height_difference",
    "Final height, measured - read",
    "length",
    when(["{final_height_measured}", "{final_height}"], rounded("{final_height_measured}-{final_height}", 4)),
    "More than 0.1 mm (0.004 in) either way: look at the readings and the zero (common practice, no source).",
  ),
  result(
    "void_ratio_final_difference",
    "Final void ratio, water - read",
    "ratio",
    when(
      ["{void_ratio_final}", "{void_ratio_final_by_water}"],
      rounded("{void_ratio_final_by_water}-{void_ratio_final}", 3),
    ),
    "More than 0.02 + 2 % of e either way: look at masses, readings and blotting (common practice, no source).",
  ),
  result(
    "water_content_difference",
    "Initial w, trimmings - specimen",
    "percent",
    when(
      ["{water_content_trimmings}", "{water_content_initial}"],
      rounded("{water_content_trimmings}-{water_content_initial}", 3),
    ),
    "More than 2 points either way: the trimmings may not stand for the specimen (common practice, no source).",
  ),
];

const SPREAD: Spill = {
  name: "preconsolidation_spread",
  label: "Preconsolidation stress by every method",
  formula: ofCurve(`PRECONSOLIDATION_SPREAD(${CURVE},"e",{void_ratio_initial})`),
  note: "One formula spills the table: every method's stress with the points it used, then median, spread and interval.",
  measure: "stress",
  spills: [...Array<Measure>(7).fill("stress"), "percent", "stress", "stress", "text", "text"],
};

/** Texts across the page of remarks. Each formula gives one value: Excel lets no array stand in merged cells. */
export const REMARKS: readonly Field[] = [
  {
    ...text("deviations", "Deviations", "Every departure from the standard, with the reason; none is said too."),
    lines: 3,
  },
  {
    ...text("test_remarks", "Test remarks", "Disturbance, shells, seams, anything else a reader must know."),
    lines: 3,
  },
  {
    name: "specimen_remark",
    label: "On the specimen",
    measure: "text",
    kind: "remark",
    formula: when(
      [...SOLIDS, "{initial_height}", "{ring_and_wet_before}", "{ring_and_wet_after}"],
      `VLOOKUP("remark",${SPECIMEN_CALL},"",{test_temperature},{pore_salt}),2,FALSE)`,
    ),
    note: "What the masses and sizes say of themselves.",
    lines: 2,
  },
  {
    name: "preconsolidation_remark",
    label: "On the curve",
    measure: "text",
    kind: "remark",
    formula:
      '=IF(COUNT({void_ratio_curve})=0,"",VLOOKUP("remark",CLAY.PRECONSOLIDATION({load_stress},{void_ratio_curve},"casagrande"),2,FALSE))',
    note: "What Casagrande's construction says of the curve.",
    lines: 2,
  },
  {
    name: "preconsolidation_verdict",
    label: "On every method",
    measure: "text",
    kind: "remark",
    formula: '=IF(COUNT({void_ratio_curve})=0,"",IFERROR(VLOOKUP("verdict",{preconsolidation_spread},2,FALSE),""))',
    note: "How far the methods agree.",
    lines: 2,
  },
  {
    name: "methods_remark",
    label: "On each method",
    measure: "text",
    kind: "remark",
    formula: `=IF(COUNT({void_ratio_curve})=0,"",IFERROR(${METHOD_NAMES.map(
      (method) => `"${method}: "&VLOOKUP("${method}",{preconsolidation_spread},3,FALSE)`,
    ).join('&"; "&')},""))`,
    note: "What each method used of the curve, or why it has no answer.",
    lines: 4,
  },
  {
    name: "field_remark",
    label: "On the field curve",
    measure: "text",
    kind: "remark",
    formula: ofField("remark", 2),
    note: "What the field curve says of itself.",
    lines: 2,
  },
  {
    name: "quality_remark",
    label: "On the sample",
    measure: "text",
    kind: "remark",
    formula: when(IN_SITU, `VLOOKUP("remark",${QUALITY_CALL}),2,FALSE)`),
    note: "What the quality of the sample says of itself.",
    lines: 2,
  },
  {
    name: "remarks_on_loads",
    label: "On the loads",
    measure: "text",
    kind: "remark",
    formula: '=IF(COUNT({end_reading})=0,"",CLAY.REMARKS_BY_LOAD({load_number},{load_remark}))',
    note: "What the reduction says of the loads, each remark once, with the loads that it is true of.",
    lines: 24,
  },
];

export const CAUTION =
  "Results support, and do not replace, the judgement of a licensed engineer or authorised signatory. Follow the standard " +
  "and edition that the contract names. Picks are interpretation: several answers can be defended.";

export type Part = Field | Table | Spill;

/** A panel is a list of fields and small tables, top to bottom. */
export interface Section {
  readonly title: string;
  /** How many columns of a panel the labels take; the rest holds values and units. */
  readonly labelColumns: number;
  /** How many columns a typed text takes. */
  readonly textColumns: number;
  readonly panels: readonly (readonly Part[])[];
  /** Whether it begins a printed page. */
  readonly newPage?: boolean;
}

export const SECTIONS: readonly Section[] = [
  { title: "Identification", labelColumns: 1, textColumns: 3, panels: IDENTIFICATION },
  { title: "Units, apparatus and dial", labelColumns: 3, textColumns: 1, panels: APPARATUS },
  { title: "Apparatus deflection", labelColumns: 3, textColumns: 1, panels: [[DEFLECTION], SEATING_DEFLECTION] },
  { title: "Masses and sizes", labelColumns: 3, textColumns: 1, panels: MASSES, newPage: true },
  { title: "Water content of trimmings", labelColumns: 3, textColumns: 1, panels: [[TINS], [], TRIMMINGS] },
  {
    title: "Results",
    labelColumns: 3,
    textColumns: 1,
    panels: [
      [...SPECIMEN_RESULTS, ...CHECKS, ...INUNDATION],
      [...CHOICES, ...COMPRESSION_RESULTS, ...FIELD],
      [SPREAD, ...QUALITY],
    ],
  },
];
