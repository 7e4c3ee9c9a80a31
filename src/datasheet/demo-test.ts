/**
 * An invented test on an invented soil: no real site, person or firm. This file calculates its readings from given soil
 * properties, so that the results of the sheet can be compared with these properties.
 *
 * Under each load, the apparatus deforms at once, and the specimen deforms a little at once, then by Terzaghi's theory,
 * then by creep along log time; the sum after 24 h is the value from the law of the soil. Lengths are in mm, stresses
 * in kPa, times in minutes.
 */
import { dayNumberOf } from "../workbook/day-number";
import { lastOf } from "../reduction/numeric/lists";
import { convert } from "../reduction/units";
import { HAND_TIMES } from "../specification/readings";
import type { System } from "../specification/measures";

/** The given soil properties. Void ratios are those after 24 h. */
export const TRUTH = {
  initialVoidRatio: 1.45,
  initialSaturation: 0.995,
  specificGravity: 2.72,
  preconsolidationStress: 120,
  compressionIndex: 0.56,
  recompressionIndex: 0.065,
  /** Cv in m2/yr: for first loading beyond the preconsolidation stress, and for loads below it. */
  cvVirgin: 1.4,
  cvRecompressed: 11,
  /** The ratio of C_alpha to the slope of the curve under the load. */
  creepRatio: 0.04,
  /** The width of the knee in log cycles of stress. */
  kneeWidth: 0.04,
} as const;

const DIAMETER = 63.5;
const HEIGHT = 25.4;
const RING = 74.36;
const SEATING = 5;
const MINUTES_A_YEAR = 365.25 * 24 * 60;

const AREA = (Math.PI * DIAMETER ** 2) / 400;
const DRY_MASS = (TRUTH.specificGravity * AREA * (HEIGHT / 10)) / (1 + TRUTH.initialVoidRatio);
const SOLIDS = HEIGHT / (1 + TRUTH.initialVoidRatio);

/** The fall of the void ratio from the seating stress in first loading: two slopes joined by a rounded knee. */
function firstLoading(stress: number): number {
  const { preconsolidationStress, compressionIndex: Cc, recompressionIndex: Cr, kneeWidth: w } = TRUTH;
  const beyond = (s: number) => w * Math.log1p(Math.exp(Math.log10(s / preconsolidationStress) / w));
  return Cr * Math.log10(stress / SEATING) + (Cc - Cr) * (beyond(stress) - beyond(SEATING));
}

/** The fall of the void ratio at a stress, if the largest stress so far was `past`; below `past`, the slope is Cr. */
const fall = (stress: number, past: number): number =>
  stress >= past ? firstLoading(stress) : firstLoading(past) - TRUTH.recompressionIndex * Math.log10(past / stress);

/**
 * The average degree of consolidation by Terzaghi for double drainage. For T of 0.05 or more, the sum of a hundred
 * terms is exact.
 */
function consolidated(T: number): number {
  if (T < 0.05) return Math.sqrt((4 * T) / Math.PI);
  let rest = 0;
  for (let m = 0; m < 100; m++) {
    const M = (Math.PI / 2) * (2 * m + 1);
    rest += (2 / M ** 2) * Math.exp(-(M ** 2) * T);
  }
  return 1 - rest;
}

/** A stress, the deflection on loading, and the deflection on unloading. */
type Deflection = readonly [stress: number, loading: number, unloading: number];

const DEFLECTIONS_SI: readonly Deflection[] = [
  [5, 0, 0.006],
  [12.5, 0.008, 0.013],
  [25, 0.014, 0.019],
  [50, 0.021, 0.026],
  [100, 0.029, 0.034],
  [200, 0.038, 0.044],
  [400, 0.048, 0.056],
  [800, 0.061, 0.07],
  [1600, 0.076, 0.086],
  [3200, 0.094, 0.104],
  [6400, 0.116, 0.116],
];

const DEFLECTIONS_US: readonly Deflection[] = [
  [0.0625, 0, 0.0003],
  [0.125, 0.0003, 0.0005],
  [0.25, 0.0006, 0.0008],
  [0.5, 0.0008, 0.001],
  [1, 0.0011, 0.0013],
  [2, 0.0015, 0.0017],
  [4, 0.0019, 0.0022],
  [8, 0.0024, 0.0027],
  [16, 0.003, 0.0034],
  [32, 0.0037, 0.0041],
  [64, 0.0046, 0.0046],
];

/** How a laboratory of either unit system loads and reads the specimen. */
const PRACTICE = {
  SI: {
    stressUnit: "kPa",
    lengthUnit: "mm",
    seating: 5,
    loads: [12.5, 25, 50, 100, 200, 400, 100, 25, 100, 400, 800, 1600, 3200, 800, 200, 50],
    dialFactor: 0.002,
    deflections: DEFLECTIONS_SI,
  },
  US: {
    stressUnit: "tsf",
    lengthUnit: "in",
    seating: 0.0625,
    loads: [0.125, 0.25, 0.5, 1, 2, 4, 1, 0.25, 1, 4, 8, 16, 32, 8, 2, 0.5],
    dialFactor: 0.0001,
    deflections: DEFLECTIONS_US,
  },
} as const;

const ZERO_READING = 400;

/**
 * The share of a load's deformation that comes at once. It is larger under the first loads (bedding) and in stiff soil.
 */
const IMMEDIATE = { bedding: 0.45, virgin: 0.04, recompressed: 0.25 };

/**
 * The factors by which the first two loads creep more than the others, so that their time curves bend less clearly, as
 * in practice.
 */
const BEDDING_CREEP = [2.2, 1.3];

const round = (value: number, step: number): number => Number((Math.round(value / step) * step).toFixed(10));

/**
 * The dial readings of every load at the times of the hand schedule, and the height of the specimen after the last
 * load.
 */
function measure(system: System): { readings: number[][]; finalHeight: number } {
  const practice = PRACTICE[system];
  const toMm = (length: number) => convert(length, "length", practice.lengthUnit, "mm");
  const readings: number[][] = [];
  let before = ZERO_READING;
  let deformation = 0;
  let previous = convert(practice.seating, "stress", practice.stressUnit, "kPa");
  let past = previous;
  for (const load of practice.loads) {
    const stress = convert(load, "stress", practice.stressUnit, "kPa");
    const [, loading, unloading] = practice.deflections.find(([at]) => at === load)!;
    const bedding = readings.length < BEDDING_CREEP.length;
    const virgin = stress > past && stress > TRUTH.preconsolidationStress;
    const target = SOLIDS * fall(stress, Math.max(past, stress));
    const step = target - deformation;
    const height = HEIGHT - deformation - step / 2;
    const cv = virgin ? TRUTH.cvVirgin : TRUTH.cvRecompressed;
    const factorPerMinute = cv / MINUTES_A_YEAR / (height / 2000) ** 2;
    const endOfPrimary = 1.1 / factorPerMinute;
    const creep = (t: number) => Math.log10(1 + t / endOfPrimary);
    const perCycle = (TRUTH.creepRatio * step) / Math.abs(Math.log10(stress / previous));
    const secondary = stress < previous ? 0 : (BEDDING_CREEP[readings.length] ?? 1) * perCycle;
    const total = step - secondary * creep(1440);
    const share = bedding ? IMMEDIATE.bedding : virgin ? IMMEDIATE.virgin : IMMEDIATE.recompressed;
    const atOnce = total * share;
    const at = (t: number) =>
      deformation + atOnce + (total - atOnce) * consolidated(factorPerMinute * t) + secondary * creep(t);
    const dial = (t: number) =>
      Math.round(ZERO_READING + (at(t) + toMm(stress > previous ? loading : unloading)) / toMm(practice.dialFactor));
    const series = HAND_TIMES.map((t) => (t === 0 ? before : dial(t)));
    readings.push(series);
    before = lastOf(series);
    deformation = target;
    past = Math.max(past, stress);
    previous = stress;
  }
  return { readings, finalHeight: HEIGHT - deformation };
}

/** The value of a date in a cell: days since 1899-12-30. */
const day = (iso: string): number => dayNumberOf(new Date(iso));

/** One invented test, as a person would write it down at the bench. */
export interface DemoTest {
  readonly loads: readonly number[];
  /** The readings of each load at the times of the hand schedule. */
  readonly readings: readonly (readonly number[])[];
  readonly cells: Readonly<Record<string, string | number>>;
  readonly columns: Readonly<Record<string, readonly (string | number | undefined)[]>>;
}

export function demoTest(system: System): DemoTest {
  const practice = PRACTICE[system];
  const { readings, finalHeight } = measure(system);
  const { specificGravity: Gs, initialVoidRatio: e0, initialSaturation: S0 } = TRUTH;
  const w0 = (S0 * e0) / Gs;
  const wf = (finalHeight / SOLIDS - 1) / Gs;
  const tins = [
    { number: "T14", tin: 21.35, wet: 48.62, w: w0 + 0.003 },
    { number: "T22", tin: 20.88, wet: 51.07, w: w0 - 0.004 },
    { number: "T31", tin: 21.52, wet: 46.9, w: w0 + 0.002 },
  ];
  const length = (mm: number) =>
    round(convert(mm, "length", "mm", practice.lengthUnit), practice.lengthUnit === "mm" ? 0.01 : 0.001);
  const started = day("2031-03-03");
  return {
    loads: practice.loads,
    readings,
    cells: {
      notice: "Invented demonstration: no real site, person or firm. The readings were calculated from a known soil.",
      project: "Example causeway (invented)",
      job_number: "DEMO-1",
      boring: "BH-X1",
      sample: "U7",
      sample_type: "UT",
      sample_top: system === "SI" ? 7 : 23,
      specimen: "a",
      depth: system === "SI" ? 7.3 : 24,
      soil_description: "Soft grey silty CLAY",
      group_symbol: "CH",
      liquid_limit: 0.62,
      plastic_limit: 0.28,
      fines_content: 0.97,
      clay_content: 0.48,
      organic_content: 0.02,
      sensitivity: 4,
      condition: "intact",
      preparation: "Trimmed into the ring, vertical axis",
      standard: "None (demonstration)",
      test_method: "24 h loads",
      report_number: "DEMO-1-01",
      date_started: started,
      date_ended: started + practice.loads.length,
      frame_number: "F-0",
      ring_number: "R-0",
      dial_number: "D-0",
      balance_number: "B-0",
      calibration_date: "invented",
      dial_factor: practice.dialFactor,
      zero_reading: ZERO_READING,
      seating_stress: practice.seating,
      diameter: length(DIAMETER),
      initial_height: length(HEIGHT),
      ring_mass: RING,
      ring_and_wet_before: round(RING + DRY_MASS * (1 + w0), 0.01),
      ring_and_wet_after: round(RING + DRY_MASS * (1 + wf), 0.01),
      ring_and_dry: round(RING + DRY_MASS, 0.01),
      specific_gravity: Gs,
      specific_gravity_basis: "measured",
      final_height_measured: length(finalHeight + 0.02),
      in_situ_stress: system === "SI" ? 62 : 0.65,
      c_alpha_load: 11,
      test_remarks: "Unloaded and reloaded after the sixth load; rebound in three steps at the end.",
    },
    columns: {
      tin_number: tins.map(({ number }) => number),
      tin_mass: tins.map(({ tin }) => tin),
      tin_and_wet: tins.map(({ wet }) => wet),
      tin_and_dry: tins.map(({ tin, wet, w }) => round(tin + (wet - tin) / (1 + w), 0.01)),
      apparatus_stress: practice.deflections.map(([stress]) => stress),
      apparatus_loading: practice.deflections.map(([, loading]) => loading),
      apparatus_unloading: practice.deflections.map(([, , unloading]) => unloading),
      load_stress: practice.loads,
      load_mark: ["inundated"],
      load_started: practice.loads.map((_, index) => started + index),
    },
  };
}
