/** The frame, the dial, the balance, the units, and the deflection of the apparatus. */
import type { Field, Table } from "../field";
import { date, input, panels, result, text } from "../form-fields";
import { eitherSign, MOST, positive } from "../measures";
import {
  CONDUCTIVITY_UNITS,
  CV_UNITS,
  DENSITY_UNITS,
  DEPTH_UNITS,
  LENGTH_UNITS,
  MV_UNITS,
  STRESS_UNITS,
} from "./unit-choices";

const unit = (name: string, label: string, choices: readonly string[], value: Field["value"], note: string): Field =>
  input(name, `Unit of ${label}`, "text", `${note} ${NOT_CONVERTED}`, { choices, value });

const NOT_CONVERTED = "A change relabels the numbers that are typed in this unit; it does not convert them.";

export const APPARATUS = panels(
  [
    text("frame_number", "Load frame number"),
    input("lever_ratio", "Lever ratio", "ratio", "Of a lever frame, such as 10; blank for other frames.", {
      limits: positive(MOST.ratio),
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
  [
    input("drainage", "Drainage", "text", "Both faces drain in a fixed or floating ring with two porous disks.", {
      choices: ["double", "single"],
      value: "double",
    }),
    unit("length_unit", "length", LENGTH_UNITS, { SI: "mm", US: "in" }, "Of sizes, dial factor and deflections."),
    unit(
      "stress_unit",
      "stress",
      STRESS_UNITS,
      { SI: "kPa", US: "tsf" },
      "The US tsf is the 2000 lbf ton per square foot.",
    ),
  ],
  [
    unit("depth_unit", "depth", DEPTH_UNITS, { SI: "m", US: "ft" }, "Of the specimen's depth."),
    unit(
      "density_unit",
      "density",
      DENSITY_UNITS,
      { SI: "Mg/m3", US: "pcf" },
      "kN/m3 and pcf are weights per volume at standard gravity.",
    ),
    unit("cv_unit", "cv", CV_UNITS, { SI: "m2/yr", US: "ft2/day" }, "The year is 365.25 days."),
  ],
  [
    unit("mv_unit", "mv", MV_UNITS, { SI: "m2/MN", US: "ft2/ton" }, "Strain per unit of stress."),
    unit("conductivity_unit", "k", CONDUCTIVITY_UNITS, { SI: "m/s", US: "ft/day" }, "Hydraulic conductivity."),
    text(
      "register_source",
      "From the register",
      "The register whose values stand here, and the day on which they were taken; left blank, they were typed.",
    ),
  ],
);

/** Whether values of the register are constants with the day, or formulas that follow the register. */
export const REGISTER_MODES = ["frozen", "live"] as const;

/** The table of the blank test on a metal disk: the cumulative deflection of the frame, disks and papers. */
export const DEFLECTION: Table = {
  rows: 12,
  columns: [
    {
      name: "apparatus_stress",
      label: "Apparatus deflection: stress",
      heading: ["Stress", ""],
      measure: "stress",
      kind: "input",
      takesFormula: true,
      note: "Stresses of the blank test on a metal disk with the same disks and papers.",
    },
    {
      name: "apparatus_loading",
      label: "Apparatus deflection, loading",
      heading: ["On", "loading"],
      measure: "length",
      kind: "input",
      takesFormula: true,
      note: "Cumulative deflection of the apparatus on loading. An empty table means no correction.",
      limits: eitherSign(MOST.length),
    },
    {
      name: "apparatus_unloading",
      label: "Apparatus deflection, unloading",
      heading: ["On", "unloading"],
      measure: "length",
      kind: "input",
      takesFormula: true,
      note: "Cumulative deflection of the apparatus on unloading. Where it is empty, the loading column serves both.",
      limits: eitherSign(MOST.length),
    },
  ],
};

/** The set of the register that the table comes from. */
export const DEFLECTION_SET: readonly Field[] = [
  text(
    "deflection_set",
    "Deflection set",
    "Number of the set in the register, for the frame, disks and papers of this test.",
  ),
  {
    ...text(
      "deflection_set_frame",
      "  frame of the set",
      "The load frame that the set was made with: it is compared with that of the test.",
    ),
    takesFormula: true,
  },
  date("deflection_set_due", "  calibration due"),
];

/** Frozen values follow no register, so nothing is told. */
export const FROZEN_STATE = '=""';

export const SEATING_DEFLECTION: readonly Field[] = [
  input(
    "register_mode",
    "Values of the register",
    "text",
    "frozen: as they were on the day they were taken. live: formulas that follow the register; a number that it does not have keeps the value that stood here.",
    { choices: REGISTER_MODES, value: REGISTER_MODES[0] },
  ),
  {
    name: "register_state",
    label: "What the register lacks",
    measure: "text",
    kind: "remark",
    formula: FROZEN_STATE,
    note: "Live values only: the numbers that the register does not have; their values stay as they were when they were taken.",
  },
  result(
    "apparatus_deflection_seating",
    "Deflection at seating stress",
    "length",
    '=IF(COUNT({apparatus_stress})=0,"",IF(OR({seating_stress}="",{seating_stress}=0),0,IFERROR(CLAY.APPARATUS_DEFLECTION({seating_stress},{apparatus_stress},{apparatus_loading}),"")))',
    "Interpolated in the loading column on log stress. The zero reading was taken under it, so that a load is corrected by the table's value less this one. 0 where the seating stress is blank or 0. Blank where the table does not reach down to the seating stress: enter a row for that stress, with deflection 0 where the blank test was zeroed under it.",
  ),
];
