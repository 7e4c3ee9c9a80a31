/**
 * The formulas of the trade as a calculation book prints them. Each has one definition: symbols, units, an expression
 * that reads as text and can be evaluated, and the function of the reduction that calculates it. A test evaluates the
 * expression with units by an independent parser and compares it with that function.
 */
import {
  coefficientOfCompressibility,
  conductivity,
  constrainedModulus,
  volumeCompressibility,
  WATER_UNIT_WEIGHT,
} from "../reduction/curve/stiffness";
import { compressionIndex } from "../reduction/curve/indices";
import { intrinsic } from "../reduction/curve/intrinsic";
import { testCurve } from "../reduction/curve/shape/points";
import { overconsolidationRatio } from "../reduction/curve/stress-history";
import { coefficientOfConsolidation, T50, T90 } from "../reduction/increment/cv";
import { creepRatio } from "../reduction/curve/creep-ratio";
import { apparatusDeflection, axialStress, deformations, strain } from "../reduction/loading";
import { firstOf } from "../reduction/numeric/lists";
import { straightLine } from "../reduction/numeric/straight-line";
import { say } from "../reduction/message";
import { badInput, given, notApplicable, then, type Outcome } from "../reduction/outcome";
import { density, saturation, solidsHeight, voidRatio, voidRatioAtStrain, waterContent } from "../reduction/specimen";
import { WATER_DENSITY } from "../reduction/water";
import { settlement } from "../reduction/settlement";
import { convert, unitsOf, type Quantity } from "../reduction/units";
import { collapse, wettingStrain } from "../reduction/wetting";

/** What a number of a formula measures, if it has a unit. */
export type Measured = Exclude<Quantity, "density"> | "mass" | "time" | "mass density" | "unit weight";

/** The units in which each measure may be given; `compute` takes the first. */
export const FORMULA_UNITS: Readonly<Record<Measured, readonly string[]>> = {
  length: unitsOf("length"),
  stress: unitsOf("stress"),
  cv: unitsOf("cv"),
  mv: unitsOf("mv"),
  conductivity: unitsOf("conductivity"),
  force: unitsOf("force"),
  mass: ["g"],
  time: ["min"],
  "mass density": ["Mg/m3", "g/cm3", "kg/m3"],
  "unit weight": ["kN/m3", "pcf"],
};

/** The unit that `compute` takes and returns. */
export const ownUnit = (measures: Measured): string => firstOf(FORMULA_UNITS[measures]);

/** Converts a value of a formula from one unit to another. */
export const convertMeasured = (value: number, of: Measured, from: string, to: string): number =>
  of === "mass" || of === "time"
    ? value
    : convert(value, of === "mass density" || of === "unit weight" ? "density" : of, from, to);

export interface Argument {
  readonly symbol: string;
  /** "the height of solids" */
  readonly name: string;
  readonly measures?: Measured;
  /** The value if the argument is omitted; only the last arguments may be. */
  readonly fallback?: number;
  /** Whether the value may be zero or negative; otherwise a blank cell is refused. */
  readonly signed?: boolean;
  /** Whether the value is a count or a reading: a whole number is shown without decimals. */
  readonly whole?: boolean;
}

export interface Constant {
  readonly symbol: string;
  readonly value: number;
  /** As printed: "m/s^2". */
  readonly unit?: string;
}

export interface Formula {
  readonly id: string;
  readonly symbol: string;
  readonly arguments: readonly Argument[];
  readonly constants?: readonly Constant[];
  readonly expression: string;
  readonly result?: Measured;
  /** Decimals of a result without a unit. */
  readonly decimals?: number;
  /** Calculates by the reduction; arguments and result in the first of their units. */
  readonly compute: (...values: number[]) => Outcome<number>;
}

const length = (symbol: string, name: string, more: Partial<Argument> = {}): Argument => ({
  symbol,
  name,
  measures: "length",
  ...more,
});
const mass = (symbol: string, name: string, more: Partial<Argument> = {}): Argument => ({
  symbol,
  name,
  measures: "mass",
  ...more,
});
const stressOf = (symbol: string, name: string): Argument => ({ symbol, name, measures: "stress" });
const time = (symbol: string, name: string): Argument => ({ symbol, name, measures: "time" });
const ratio = (symbol: string, name: string, more: Partial<Argument> = {}): Argument => ({ symbol, name, ...more });

const LOAD: readonly Argument[] = [
  stressOf("sigma_1", "the stress before the load"),
  stressOf("sigma_2", "the stress of the load"),
  ratio("e_1", "the void ratio before the load"),
  ratio("e_2", "the void ratio under the load"),
];
const load = (sigma_1: number, sigma_2: number, e_1: number, e_2: number, e_0?: number) =>
  ({ stress: [sigma_1, sigma_2], value: [e_1, e_2], kind: "e", initialVoidRatio: e_0 }) as const;

const perKpaToMv = (perKpa: Outcome<number>): Outcome<number> =>
  then(perKpa, (value) => given(convert(value, "mv", "1/kPa", ownUnit("mv"))));

/** Height of the specimen at the middle of the load, and the number of faces that drain. */
const DRAINED: readonly Argument[] = [
  length("H", "the height at the middle of the load"),
  ratio("n", "the number of draining faces", { fallback: 2, whole: true }),
];
const cvBy = (T: number) => (t: number, H: number, n: number) =>
  given(convert(coefficientOfConsolidation(T, t, H, n === 1 ? "single" : "double"), "cv", "mm2/min", ownUnit("cv")));

/** Slope between two points of one branch, positive. */
const slope = (sigma_1: number, sigma_2: number, e_1: number, e_2: number): Outcome<number> => {
  if ((e_1 - e_2) * (sigma_2 - sigma_1) < 0)
    return notApplicable(say`the void ratio does not fall as the stress rises: check the order of the two points`);
  const [from, to] = sigma_1 < sigma_2 ? [sigma_1, sigma_2] : [sigma_2, sigma_1];
  const values = sigma_1 < sigma_2 ? [e_1, e_2] : [e_2, e_1];
  return then(testCurve([from, to], values, "e"), (test) =>
    then(compressionIndex(test, { from, to }), ({ value }) => given(value)),
  );
};

/** The arguments of a linear interpolation between two points on log of stress. */
const onLogStress = (unit: "length" | "ratio"): readonly Argument[] => {
  const value = unit === "length" ? length : ratio;
  return [
    stressOf("sigma", "the stress"),
    stressOf("sigma_1", "the stress below"),
    stressOf("sigma_2", "the stress above"),
    value("y_1", "the value at the stress below", { signed: true }),
    value("y_2", "the value at the stress above", { signed: true }),
  ];
};

/** The arguments of a layer: thickness, in-situ stress and increase. */
const LAYER: readonly Argument[] = [
  length("H", "the thickness"),
  stressOf("sigma_v0", "the in-situ stress"),
  stressOf("dsigma", "the increase"),
];

/** Settlement of a layer whose increase lies on one side of the preconsolidation stress. */
const onOneSide =
  (ratios: "recompression" | "virgin") => (H: number, sigma_v0: number, dsigma: number, slope: number) =>
    then(
      settlement({
        thickness: H,
        inSituStress: sigma_v0,
        increase: dsigma,
        preconsolidationStress: ratios === "virgin" ? sigma_v0 : sigma_v0 + dsigma,
        compressionRatio: ratios === "virgin" ? slope : 0,
        recompressionRatio: ratios === "virgin" ? 0 : slope,
      }),
      (found) => given(found.settlement),
    );

const LIQUID_LIMIT: readonly Argument[] = [ratio("w_L", "the liquid limit"), ratio("G_s", "the specific gravity")];

const SHARE_AT_T90 = 0.9;

export const FORMULAS: readonly Formula[] = [
  {
    id: "water_content",
    symbol: "w",
    arguments: [
      mass("M_wet", "the wet mass"),
      mass("M_dry", "the dry mass"),
      mass("M_tare", "the tare", { fallback: 0, signed: true }),
    ],
    expression: "(M_wet - M_dry) / (M_dry - M_tare)",
    decimals: 4,
    compute: waterContent,
  },
  {
    id: "solids_height",
    symbol: "H_s",
    arguments: [
      mass("M_d", "the dry mass"),
      ratio("G_s", "the specific gravity"),
      length("D", "the diameter"),
      { symbol: "rho_w", name: "the water density", measures: "mass density", fallback: WATER_DENSITY },
    ],
    expression: "M_d / (G_s * rho_w * pi * D^2 / 4)",
    result: "length",
    compute: solidsHeight,
  },
  {
    id: "void_ratio",
    symbol: "e",
    arguments: [length("H", "the height"), length("H_s", "the height of solids")],
    expression: "(H - H_s) / H_s",
    compute: voidRatio,
  },
  {
    id: "void_ratio_at_strain",
    symbol: "e",
    arguments: [ratio("eps", "the strain", { signed: true }), ratio("e_0", "the initial void ratio")],
    expression: "e_0 - eps * (1 + e_0)",
    compute: voidRatioAtStrain,
  },
  {
    id: "saturation",
    symbol: "S",
    arguments: [ratio("w", "the water content"), ratio("G_s", "the specific gravity"), ratio("e", "the void ratio")],
    expression: "w * G_s / e",
    compute: saturation,
  },
  {
    id: "density",
    symbol: "rho",
    arguments: [mass("M", "the mass"), length("D", "the diameter"), length("H", "the height")],
    expression: "M / (pi * D^2 / 4 * H)",
    result: "mass density",
    compute: density,
  },
  {
    id: "unit_weight",
    symbol: "gamma",
    arguments: [mass("M", "the mass"), length("D", "the diameter"), length("H", "the height")],
    constants: [{ symbol: "g", value: 9.80665, unit: "m/s^2" }],
    expression: "M * g / (pi * D^2 / 4 * H)",
    result: "unit weight",
    compute: (M, D, H) => then(density(M, D, H), (rho) => given(convert(rho, "density", "Mg/m3", "kN/m3"))),
  },
  {
    id: "stress",
    symbol: "sigma",
    arguments: [
      { symbol: "F", name: "the force", measures: "force" },
      length("D", "the diameter"),
      ratio("L", "the lever ratio", { fallback: 1, whole: true }),
    ],
    expression: "L * F / (pi * D^2 / 4)",
    result: "stress",
    // The first unit of force is the newton, as axialStress takes it.
    compute: axialStress,
  },
  {
    id: "strain",
    symbol: "eps",
    arguments: [
      length("d", "the deformation", { signed: true }),
      length("H_0", "the initial height"),
      length("d_a", "the apparatus deflection", { fallback: 0, signed: true }),
    ],
    expression: "(d - d_a) / H_0",
    decimals: 4,
    compute: strain,
  },
  {
    id: "deformation",
    symbol: "d",
    arguments: [
      ratio("R", "the reading", { signed: true, whole: true }),
      ratio("R_0", "the zero reading", { signed: true, whole: true }),
      length("f", "the dial factor", { signed: true }),
    ],
    expression: "(R - R_0) * f",
    result: "length",
    compute: (R, R_0, f) =>
      then(deformations([R], R_0, f), (found) => {
        const d = firstOf(found);
        return d === null
          ? badInput(say`the reading is zero, which counts as blank in a column of readings`)
          : given(d);
      }),
  },
  {
    id: "cv_from_t50",
    symbol: "c_v",
    arguments: [time("t_50", "t50"), ...DRAINED],
    constants: [{ symbol: "T_50", value: T50 }],
    expression: "T_50 * (H / n)^2 / t_50",
    result: "cv",
    compute: cvBy(T50),
  },
  {
    id: "cv_from_t90",
    symbol: "c_v",
    arguments: [time("t_90", "t90"), ...DRAINED],
    constants: [{ symbol: "T_90", value: T90 }],
    expression: "T_90 * (H / n)^2 / t_90",
    result: "cv",
    compute: cvBy(T90),
  },
  {
    id: "av",
    symbol: "a_v",
    arguments: LOAD,
    expression: "(e_1 - e_2) / (sigma_2 - sigma_1)",
    result: "mv",
    compute: (s_1, s_2, e_1, e_2) => perKpaToMv(coefficientOfCompressibility(load(s_1, s_2, e_1, e_2))),
  },
  {
    id: "mv",
    symbol: "m_v",
    arguments: LOAD,
    expression: "(e_1 - e_2) / (1 + e_1) / (sigma_2 - sigma_1)",
    result: "mv",
    compute: (s_1, s_2, e_1, e_2) => perKpaToMv(volumeCompressibility(load(s_1, s_2, e_1, e_2), "start")),
  },
  {
    id: "mv_on_initial_height",
    symbol: "m_v",
    arguments: [...LOAD, ratio("e_0", "the initial void ratio")],
    expression: "(e_1 - e_2) / (1 + e_0) / (sigma_2 - sigma_1)",
    result: "mv",
    compute: (s_1, s_2, e_1, e_2, e_0) => perKpaToMv(volumeCompressibility(load(s_1, s_2, e_1, e_2, e_0), "initial")),
  },
  {
    id: "constrained_modulus",
    symbol: "M",
    arguments: LOAD,
    expression: "(sigma_2 - sigma_1) * (1 + e_1) / (e_1 - e_2)",
    result: "stress",
    compute: (s_1, s_2, e_1, e_2) => constrainedModulus(load(s_1, s_2, e_1, e_2), "start"),
  },
  {
    id: "conductivity",
    symbol: "k",
    arguments: [
      { symbol: "c_v", name: "cv", measures: "cv" },
      { symbol: "m_v", name: "mv", measures: "mv" },
    ],
    constants: [{ symbol: "gamma_w", value: WATER_UNIT_WEIGHT, unit: "kN/m3" }],
    expression: "c_v * m_v * gamma_w",
    result: "conductivity",
    compute: (cv, mv) =>
      given(conductivity(convert(cv, "cv", ownUnit("cv"), "m2/s"), convert(mv, "mv", ownUnit("mv"), "m2/kN"))),
  },
  ...(
    [
      ["compression_index", "C_c"],
      ["recompression_index", "C_r"],
      ["swelling_index", "C_s"],
    ] as const
  ).map(([id, symbol]): Formula => ({
    id,
    symbol,
    arguments: LOAD,
    expression: "(e_1 - e_2) / log10(sigma_2 / sigma_1)",
    compute: slope,
  })),
  {
    id: "ocr",
    symbol: "OCR",
    arguments: [stressOf("sigma_p", "the preconsolidation stress"), stressOf("sigma_v0", "the in-situ stress")],
    expression: "sigma_p / sigma_v0",
    decimals: 2,
    compute: overconsolidationRatio,
  },
  {
    id: "c_alpha",
    symbol: "C_alpha",
    arguments: [
      length("d_1", "the deformation at t1", { signed: true }),
      length("d_2", "the deformation at t2", { signed: true }),
      time("t_1", "t1"),
      time("t_2", "t2"),
      length("H_0", "the initial height"),
    ],
    expression: "(d_2 - d_1) / H_0 / log10(t_2 / t_1)",
    decimals: 5,
    compute: (d_1, d_2, t_1, t_2, H_0) =>
      t_1 === t_2
        ? badInput(say`the two times are the same: give two different ones`)
        : strain(straightLine([Math.log10(t_1), Math.log10(t_2)], [d_1, d_2], [1, 1]).slope, H_0),
  },
  {
    id: "dry_mass",
    symbol: "M_d",
    arguments: [mass("M_all", "the mass with the ring"), mass("M_ring", "the mass of the ring")],
    expression: "M_all - M_ring",
    result: "mass",
    compute: (M_all, M_ring) => given(M_all - M_ring),
  },
  {
    id: "dry_mass_by_trimmings",
    symbol: "M_d",
    arguments: [mass("M_wet", "the wet mass"), ratio("w", "the water content of the trimmings")],
    expression: "M_wet / (1 + w)",
    result: "mass",
    compute: (M_wet, w) => given(M_wet / (1 + w)),
  },
  {
    id: "height_at_end",
    symbol: "H",
    arguments: [length("H_0", "the initial height"), length("d", "the corrected deformation", { signed: true })],
    expression: "H_0 - d",
    result: "length",
    compute: (H_0, d) => given(H_0 - d),
  },
  {
    id: "corrected_deformation",
    symbol: "d_c",
    arguments: [
      length("d", "the deformation", { signed: true }),
      length("d_a", "the apparatus deflection", { signed: true }),
    ],
    expression: "d - d_a",
    result: "length",
    compute: (d, d_a) => given(d - d_a),
  },
  {
    id: "height_middle",
    symbol: "H",
    arguments: [length("H_1", "the height before the load"), length("H_2", "the height at its end")],
    expression: "(H_1 + H_2) / 2",
    result: "length",
    compute: (H_1, H_2) => given((H_1 + H_2) / 2),
  },
  {
    id: "height_at_reading",
    symbol: "H",
    arguments: [
      length("H_0", "the initial height"),
      ratio("R", "the reading", { signed: true, whole: true }),
      ratio("R_0", "the zero reading", { signed: true, whole: true }),
      length("f", "the dial factor", { signed: true }),
      length("d_a", "the apparatus deflection", { signed: true }),
    ],
    expression: "H_0 - ((R - R_0) * f - d_a)",
    result: "length",
    compute: (H_0, R, R_0, f, d_a) => given(H_0 - ((R - R_0) * f - d_a)),
  },
  {
    id: "deflection_since_seating",
    symbol: "d_a",
    arguments: [
      length("y", "the deflection at the load", { signed: true }),
      length("y_s", "the deflection at the seating stress", { signed: true }),
    ],
    expression: "y - y_s",
    result: "length",
    compute: (y, y_s) => given(y - y_s),
  },
  {
    id: "apparatus_deflection",
    symbol: "d_a",
    arguments: onLogStress("length"),
    expression: "y_1 + (y_2 - y_1) * log10(sigma / sigma_1) / log10(sigma_2 / sigma_1)",
    result: "length",
    compute: (sigma, sigma_1, sigma_2, y_1, y_2) => apparatusDeflection(sigma, [sigma_1, sigma_2], [y_1, y_2]),
  },
  {
    id: "void_ratio_at_stress",
    symbol: "e",
    arguments: onLogStress("ratio"),
    expression: "y_1 + (y_2 - y_1) * log10(sigma / sigma_1) / log10(sigma_2 / sigma_1)",
    compute: (sigma, sigma_1, sigma_2, y_1, y_2) => apparatusDeflection(sigma, [sigma_1, sigma_2], [y_1, y_2]),
  },
  {
    id: "void_ratio_by_water",
    symbol: "e",
    arguments: [ratio("w", "the water content"), ratio("G_s", "the specific gravity")],
    expression: "w * G_s",
    compute: (w, G_s) => given(w * G_s),
  },
  {
    id: "difference",
    symbol: "Delta",
    arguments: [ratio("a", "the first", { signed: true }), ratio("b", "the second", { signed: true })],
    expression: "a - b",
    decimals: 4,
    compute: (a, b) => given(a - b),
  },
  {
    id: "difference_of_heights",
    symbol: "Delta",
    arguments: [length("H_1", "the first height"), length("H_2", "the second height")],
    expression: "H_1 - H_2",
    result: "length",
    compute: (H_1, H_2) => given(H_1 - H_2),
  },
  {
    id: "difference_of_masses",
    symbol: "Delta",
    arguments: [mass("M_1", "the first mass"), mass("M_2", "the second mass")],
    expression: "M_1 / M_2 - 1",
    decimals: 4,
    compute: (M_1, M_2) => given(M_1 / M_2 - 1),
  },
  {
    id: "mean_of_two",
    symbol: "w",
    arguments: [ratio("w_1", "the first"), ratio("w_2", "the second")],
    expression: "(w_1 + w_2) / 2",
    decimals: 4,
    compute: (a, b) => given((a + b) / 2),
  },
  {
    id: "mean_of_three",
    symbol: "w",
    arguments: [ratio("w_1", "the first"), ratio("w_2", "the second"), ratio("w_3", "the third")],
    expression: "(w_1 + w_2 + w_3) / 3",
    decimals: 4,
    compute: (a, b, c) => given((a + b + c) / 3),
  },
  {
    id: "d50",
    symbol: "d_50",
    arguments: [ratio("d_0", "d0", { signed: true }), ratio("d_100", "d100", { signed: true })],
    expression: "(d_0 + d_100) / 2",
    compute: (d_0, d_100) => given((d_0 + d_100) / 2),
  },
  {
    id: "d100_from_d90",
    symbol: "d_100",
    arguments: [ratio("d_0", "d0", { signed: true }), ratio("d_90", "d90", { signed: true })],
    constants: [{ symbol: "U", value: SHARE_AT_T90 }],
    expression: "d_0 + (d_90 - d_0) / U",
    compute: (d_0, d_90) => given(d_0 + (d_90 - d_0) / SHARE_AT_T90),
  },
  {
    id: "cv_at_20",
    symbol: "c_v20",
    arguments: [{ symbol: "c_v", name: "cv", measures: "cv" }, ratio("f_T", "the temperature factor")],
    expression: "c_v * f_T",
    result: "cv",
    compute: (cv, f) => given(cv * f),
  },
  {
    id: "c_alpha_from_tail",
    symbol: "C_alpha",
    arguments: [
      ratio("m", "the readings per log cycle of the tail", { signed: true }),
      length("f", "the dial factor"),
      length("H_0", "the initial height"),
    ],
    expression: "m * f / H_0",
    decimals: 5,
    compute: (m, f, H_0) => strain(m * f, H_0),
  },
  {
    id: "c_alpha_ratio",
    symbol: "r",
    arguments: [
      ratio("C_alpha", "C alpha by strain"),
      ratio("e_0", "the initial void ratio"),
      ratio("C_c", "the compression index"),
    ],
    expression: "C_alpha * (1 + e_0) / C_c",
    compute: (C_alpha, e_0, C_c) => then(creepRatio(C_alpha * (1 + e_0), C_c), ({ ratio: value }) => given(value)),
  },
  {
    id: "change_of_void_ratio",
    symbol: "q",
    arguments: [ratio("e_0", "the initial void ratio"), ratio("e", "the void ratio at the in-situ stress")],
    expression: "(e_0 - e) / e_0",
    compute: (e_0, e) => given((e_0 - e) / e_0),
  },
  {
    id: "strain_by_void_ratio",
    symbol: "eps",
    arguments: [ratio("e_0", "the initial void ratio"), ratio("e", "the void ratio at the in-situ stress")],
    expression: "(e_0 - e) / (1 + e_0)",
    decimals: 4,
    compute: (e_0, e) => given((e_0 - e) / (1 + e_0)),
  },
  {
    id: "share_of_void_ratio",
    symbol: "e",
    arguments: [ratio("F", "the share"), ratio("e_0", "the initial void ratio")],
    expression: "F * e_0",
    compute: (F, e_0) => given(F * e_0),
  },
  {
    id: "stress_on_line",
    symbol: "sigma",
    arguments: [
      stressOf("sigma_1", "the stress of a point of the line"),
      ratio("e_1", "its void ratio"),
      ratio("e", "the void ratio"),
      ratio("C_c", "the slope of the line"),
    ],
    expression: "sigma_1 * 10^((e_1 - e) / C_c)",
    result: "stress",
    compute: (sigma_1, e_1, e, C_c) => given(sigma_1 * 10 ** ((e_1 - e) / C_c)),
  },
  {
    id: "settlement",
    symbol: "S",
    arguments: [
      ...LAYER,
      stressOf("sigma_p", "the preconsolidation stress"),
      ratio("CR", "the compression ratio"),
      ratio("RR", "the recompression ratio"),
    ],
    expression: "H * (RR * log10(sigma_p / sigma_v0) + CR * log10((sigma_v0 + dsigma) / sigma_p))",
    result: "length",
    compute: (H, sigma_v0, dsigma, sigma_p, CR, RR) =>
      sigma_p < sigma_v0 || sigma_p > sigma_v0 + dsigma
        ? notApplicable(
            say`the increase does not pass the preconsolidation stress: use settlement_recompression below it, settlement_virgin above`,
          )
        : then(
            settlement({
              thickness: H,
              inSituStress: sigma_v0,
              increase: dsigma,
              preconsolidationStress: sigma_p,
              compressionRatio: CR,
              recompressionRatio: RR,
            }),
            (found) => given(found.settlement),
          ),
  },
  {
    id: "settlement_recompression",
    symbol: "S",
    arguments: [...LAYER, ratio("RR", "the recompression ratio")],
    expression: "H * RR * log10((sigma_v0 + dsigma) / sigma_v0)",
    result: "length",
    compute: onOneSide("recompression"),
  },
  {
    id: "settlement_virgin",
    symbol: "S",
    arguments: [...LAYER, ratio("CR", "the compression ratio")],
    expression: "H * CR * log10((sigma_v0 + dsigma) / sigma_v0)",
    result: "length",
    compute: onOneSide("virgin"),
  },
  {
    id: "wetting_strain",
    symbol: "eps_w",
    arguments: [length("H_1", "the height before wetting"), length("H_2", "the height after wetting")],
    expression: "(H_1 - H_2) / H_1",
    decimals: 4,
    compute: (H_1, H_2) => wettingStrain(H_1, H_2),
  },
  {
    id: "collapse",
    symbol: "I_c",
    arguments: [
      length("H_1", "the height before wetting"),
      length("H_2", "the height after wetting"),
      length("H_0", "the initial height"),
    ],
    expression: "(H_1 - H_2) / H_0",
    decimals: 4,
    compute: (H_1, H_2, H_0) => then(collapse(H_1, H_2, H_0), ({ potential }) => given(potential)),
  },
  {
    id: "void_index",
    symbol: "I_v",
    arguments: [
      ratio("e", "the void ratio"),
      ratio("e_100", "the intrinsic void ratio at 100 kPa"),
      ratio("C_c", "the intrinsic compression index"),
    ],
    expression: "(e - e_100) / C_c",
    compute: (e, e_100, C_c) => given((e - e_100) / C_c),
  },
  {
    id: "intrinsic_void_ratio",
    symbol: "e_100",
    arguments: LIQUID_LIMIT,
    expression: "0.109 + 0.679 * (w_L * G_s) - 0.089 * (w_L * G_s)^2 + 0.016 * (w_L * G_s)^3",
    compute: (w_L, G_s) => then(intrinsic(w_L, G_s), ({ e100 }) => given(e100)),
  },
  {
    id: "intrinsic_compression_index",
    symbol: "C_c",
    arguments: LIQUID_LIMIT,
    expression: "0.256 * w_L * G_s - 0.04",
    compute: (w_L, G_s) => then(intrinsic(w_L, G_s), ({ Cc }) => given(Cc)),
  },
];
