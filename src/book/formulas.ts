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
  /** Whether the value is a count or a reading: it is shown with the decimals of readings, without zeros at its end. */
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

// The arguments that stand in several formulas.
const DIAMETER = length("D", "the diameter");
const HEIGHT = length("H", "the height");
const INITIAL_HEIGHT = length("H_0", "the initial height");
const DEFORMATION = length("d", "the deformation", { signed: true });
const DEFLECTION = length("d_a", "the apparatus deflection", { signed: true });
const DIAL_FACTOR = length("f", "the dial factor", { signed: true });
const readingOf = (symbol: string, name: string): Argument => ratio(symbol, name, { signed: true, whole: true });
const READING = readingOf("R", "the reading");
const ZERO_READING = readingOf("R_0", "the zero reading");
const MASS = mass("M", "the mass");
const WET_MASS = mass("M_wet", "the wet mass");
const SPECIFIC_GRAVITY = ratio("G_s", "the specific gravity");
const WATER_CONTENT = ratio("w", "the water content");
const VOID_RATIO = ratio("e", "the void ratio");
const INITIAL_VOID_RATIO = ratio("e_0", "the initial void ratio");
const VOID_RATIO_IN_SITU = ratio("e", "the void ratio at the in-situ stress");
const IN_SITU_STRESS = stressOf("sigma_v0", "the in-situ stress");
const PRECONSOLIDATION_STRESS = stressOf("sigma_p", "the preconsolidation stress");
const COMPRESSION_RATIO = ratio("CR", "the compression ratio");
const RECOMPRESSION_RATIO = ratio("RR", "the recompression ratio");
const D0 = readingOf("d_0", "d0");
const CV: Argument = { symbol: "c_v", name: "cv", measures: "cv" };
const HEIGHTS_ON_WETTING = [length("H_1", "the height before wetting"), length("H_2", "the height after wetting")];

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
const LAYER: readonly Argument[] = [length("H", "the thickness"), IN_SITU_STRESS, stressOf("dsigma", "the increase")];

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

const LIQUID_LIMIT: readonly Argument[] = [ratio("w_L", "the liquid limit"), SPECIFIC_GRAVITY];

const SHARE_AT_T90 = 0.9;

/** A formula from its line as a book prints it: "e = (H - H_s) / H_s". */
function formula(
  id: string,
  line: string,
  args: readonly Argument[],
  compute: Formula["compute"],
  more: Pick<Formula, "result" | "decimals" | "constants"> = {},
): Formula {
  const [symbol = "", expression = ""] = line.split(" = ");
  return { id, symbol, expression, arguments: args, compute, ...more };
}

export const FORMULAS: readonly Formula[] = [
  formula(
    "water_content",
    "w = (M_wet - M_dry) / (M_dry - M_tare)",
    [WET_MASS, mass("M_dry", "the dry mass"), mass("M_tare", "the tare", { fallback: 0, signed: true })],
    waterContent,
    { decimals: 4 },
  ),
  formula(
    "solids_height",
    "H_s = M_d / (G_s * rho_w * pi * D^2 / 4)",
    [
      mass("M_d", "the dry mass"),
      SPECIFIC_GRAVITY,
      DIAMETER,
      { symbol: "rho_w", name: "the water density", measures: "mass density", fallback: WATER_DENSITY },
    ],
    solidsHeight,
    { result: "length" },
  ),
  formula("void_ratio", "e = (H - H_s) / H_s", [HEIGHT, length("H_s", "the height of solids")], voidRatio),
  formula(
    "void_ratio_at_strain",
    "e = e_0 - eps * (1 + e_0)",
    [ratio("eps", "the strain", { signed: true }), INITIAL_VOID_RATIO],
    voidRatioAtStrain,
  ),
  formula("saturation", "S = w * G_s / e", [WATER_CONTENT, SPECIFIC_GRAVITY, VOID_RATIO], saturation),
  formula("density", "rho = M / (pi * D^2 / 4 * H)", [MASS, DIAMETER, HEIGHT], density, { result: "mass density" }),
  formula(
    "unit_weight",
    "gamma = M * g / (pi * D^2 / 4 * H)",
    [MASS, DIAMETER, HEIGHT],
    (M, D, H) => then(density(M, D, H), (rho) => given(convert(rho, "density", "Mg/m3", "kN/m3"))),
    { result: "unit weight", constants: [{ symbol: "g", value: 9.80665, unit: "m/s^2" }] },
  ),
  // The first unit of force is the newton, as axialStress takes it.
  formula(
    "stress",
    "sigma = L * F / (pi * D^2 / 4)",
    [
      { symbol: "F", name: "the force", measures: "force" },
      DIAMETER,
      ratio("L", "the lever ratio", { fallback: 1, whole: true }),
    ],
    axialStress,
    { result: "stress" },
  ),
  formula(
    "strain",
    "eps = (d - d_a) / H_0",
    [DEFORMATION, INITIAL_HEIGHT, length("d_a", "the apparatus deflection", { fallback: 0, signed: true })],
    strain,
    { decimals: 4 },
  ),
  formula(
    "deformation",
    "d = (R - R_0) * f",
    [READING, ZERO_READING, DIAL_FACTOR],
    (R, R_0, f) =>
      then(deformations([R], R_0, f), (found) => {
        const d = firstOf(found);
        return d === null
          ? badInput(say`the reading is zero, which counts as blank in a column of readings`)
          : given(d);
      }),
    { result: "length" },
  ),
  formula("cv_from_t50", "c_v = T_50 * (H / n)^2 / t_50", [time("t_50", "t50"), ...DRAINED], cvBy(T50), {
    result: "cv",
    constants: [{ symbol: "T_50", value: T50 }],
  }),
  formula("cv_from_t90", "c_v = T_90 * (H / n)^2 / t_90", [time("t_90", "t90"), ...DRAINED], cvBy(T90), {
    result: "cv",
    constants: [{ symbol: "T_90", value: T90 }],
  }),
  formula(
    "av",
    "a_v = (e_1 - e_2) / (sigma_2 - sigma_1)",
    LOAD,
    (s_1, s_2, e_1, e_2) => perKpaToMv(coefficientOfCompressibility(load(s_1, s_2, e_1, e_2))),
    { result: "mv" },
  ),
  formula(
    "mv",
    "m_v = (e_1 - e_2) / (1 + e_1) / (sigma_2 - sigma_1)",
    LOAD,
    (s_1, s_2, e_1, e_2) => perKpaToMv(volumeCompressibility(load(s_1, s_2, e_1, e_2), "start")),
    { result: "mv" },
  ),
  formula(
    "mv_on_initial_height",
    "m_v = (e_1 - e_2) / (1 + e_0) / (sigma_2 - sigma_1)",
    [...LOAD, INITIAL_VOID_RATIO],
    (s_1, s_2, e_1, e_2, e_0) => perKpaToMv(volumeCompressibility(load(s_1, s_2, e_1, e_2, e_0), "initial")),
    { result: "mv" },
  ),
  formula(
    "constrained_modulus",
    "M = (sigma_2 - sigma_1) * (1 + e_1) / (e_1 - e_2)",
    LOAD,
    (s_1, s_2, e_1, e_2) => constrainedModulus(load(s_1, s_2, e_1, e_2), "start"),
    { result: "stress" },
  ),
  formula(
    "conductivity",
    "k = c_v * m_v * gamma_w",
    [CV, { symbol: "m_v", name: "mv", measures: "mv" }],
    (cv, mv) =>
      given(conductivity(convert(cv, "cv", ownUnit("cv"), "m2/s"), convert(mv, "mv", ownUnit("mv"), "m2/kN"))),
    { result: "conductivity", constants: [{ symbol: "gamma_w", value: WATER_UNIT_WEIGHT, unit: "kN/m3" }] },
  ),
  ...(
    [
      ["compression_index", "C_c"],
      ["recompression_index", "C_r"],
      ["swelling_index", "C_s"],
    ] as const
  ).map(([id, symbol]) => formula(id, `${symbol} = (e_1 - e_2) / log10(sigma_2 / sigma_1)`, LOAD, slope)),
  formula("ocr", "OCR = sigma_p / sigma_v0", [PRECONSOLIDATION_STRESS, IN_SITU_STRESS], overconsolidationRatio, {
    decimals: 2,
  }),
  formula(
    "c_alpha",
    "C_alpha = (d_2 - d_1) / H_0 / log10(t_2 / t_1)",
    [
      length("d_1", "the deformation at t1", { signed: true }),
      length("d_2", "the deformation at t2", { signed: true }),
      time("t_1", "t1"),
      time("t_2", "t2"),
      INITIAL_HEIGHT,
    ],
    (d_1, d_2, t_1, t_2, H_0) =>
      t_1 === t_2
        ? badInput(say`the two times are the same: give two different ones`)
        : strain(straightLine([Math.log10(t_1), Math.log10(t_2)], [d_1, d_2], [1, 1]).slope, H_0),
    { decimals: 5 },
  ),
  formula(
    "dry_mass",
    "M_d = M_all - M_ring",
    [mass("M_all", "the mass with the ring"), mass("M_ring", "the mass of the ring")],
    (M_all, M_ring) => given(M_all - M_ring),
    { result: "mass" },
  ),
  formula(
    "dry_mass_by_trimmings",
    "M_d = M_wet / (1 + w)",
    [WET_MASS, ratio("w", "the water content of the trimmings")],
    (M_wet, w) => given(M_wet / (1 + w)),
    { result: "mass" },
  ),
  formula(
    "height_at_end",
    "H = H_0 - d",
    [INITIAL_HEIGHT, length("d", "the corrected deformation", { signed: true })],
    (H_0, d) => given(H_0 - d),
    { result: "length" },
  ),
  formula("corrected_deformation", "d_c = d - d_a", [DEFORMATION, DEFLECTION], (d, d_a) => given(d - d_a), {
    result: "length",
  }),
  formula(
    "height_middle",
    "H = (H_1 + H_2) / 2",
    [length("H_1", "the height before the load"), length("H_2", "the height at its end")],
    (H_1, H_2) => given((H_1 + H_2) / 2),
    { result: "length" },
  ),
  formula(
    "height_at_reading",
    "H = H_0 - ((R - R_0) * f - d_a)",
    [INITIAL_HEIGHT, READING, ZERO_READING, DIAL_FACTOR, DEFLECTION],
    (H_0, R, R_0, f, d_a) => given(H_0 - ((R - R_0) * f - d_a)),
    { result: "length" },
  ),
  formula(
    "deflection_since_seating",
    "d_a = y - y_s",
    [
      length("y", "the deflection at the load", { signed: true }),
      length("y_s", "the deflection at the seating stress", { signed: true }),
    ],
    (y, y_s) => given(y - y_s),
    { result: "length" },
  ),
  formula(
    "apparatus_deflection",
    "d_a = y_1 + (y_2 - y_1) * log10(sigma / sigma_1) / log10(sigma_2 / sigma_1)",
    onLogStress("length"),
    (sigma, sigma_1, sigma_2, y_1, y_2) => apparatusDeflection(sigma, [sigma_1, sigma_2], [y_1, y_2]),
    { result: "length" },
  ),
  formula(
    "void_ratio_at_stress",
    "e = y_1 + (y_2 - y_1) * log10(sigma / sigma_1) / log10(sigma_2 / sigma_1)",
    onLogStress("ratio"),
    (sigma, sigma_1, sigma_2, y_1, y_2) => apparatusDeflection(sigma, [sigma_1, sigma_2], [y_1, y_2]),
  ),
  formula("void_ratio_by_water", "e = w * G_s", [WATER_CONTENT, SPECIFIC_GRAVITY], (w, G_s) => given(w * G_s)),
  formula(
    "difference",
    "Delta = a - b",
    [ratio("a", "the first", { signed: true }), ratio("b", "the second", { signed: true })],
    (a, b) => given(a - b),
    { decimals: 4 },
  ),
  formula(
    "difference_of_heights",
    "Delta = H_1 - H_2",
    [length("H_1", "the first height"), length("H_2", "the second height")],
    (H_1, H_2) => given(H_1 - H_2),
    { result: "length" },
  ),
  formula(
    "difference_of_masses",
    "Delta = M_1 / M_2 - 1",
    [mass("M_1", "the first mass"), mass("M_2", "the second mass")],
    (M_1, M_2) => given(M_1 / M_2 - 1),
    { decimals: 4 },
  ),
  formula(
    "mean_of_two",
    "w = (w_1 + w_2) / 2",
    [ratio("w_1", "the first"), ratio("w_2", "the second")],
    (a, b) => given((a + b) / 2),
    { decimals: 4 },
  ),
  formula(
    "mean_of_three",
    "w = (w_1 + w_2 + w_3) / 3",
    [ratio("w_1", "the first"), ratio("w_2", "the second"), ratio("w_3", "the third")],
    (a, b, c) => given((a + b + c) / 3),
    { decimals: 4 },
  ),
  formula("d50", "d_50 = (d_0 + d_100) / 2", [D0, readingOf("d_100", "d100")], (d_0, d_100) =>
    given((d_0 + d_100) / 2),
  ),
  formula(
    "d100_from_d90",
    "d_100 = d_0 + (d_90 - d_0) / U",
    [D0, readingOf("d_90", "d90")],
    (d_0, d_90) => given(d_0 + (d_90 - d_0) / SHARE_AT_T90),
    { constants: [{ symbol: "U", value: SHARE_AT_T90 }] },
  ),
  formula("cv_at_20", "c_v20 = c_v * f_T", [CV, ratio("f_T", "the temperature factor")], (cv, f) => given(cv * f), {
    result: "cv",
  }),
  formula(
    "c_alpha_from_tail",
    "C_alpha = m * f / H_0",
    [
      ratio("m", "the readings per log cycle of the tail", { signed: true }),
      length("f", "the dial factor"),
      INITIAL_HEIGHT,
    ],
    (m, f, H_0) => strain(m * f, H_0),
    { decimals: 5 },
  ),
  formula(
    "c_alpha_ratio",
    "r = C_alpha * (1 + e_0) / C_c",
    [ratio("C_alpha", "C alpha by strain"), INITIAL_VOID_RATIO, ratio("C_c", "the compression index")],
    (C_alpha, e_0, C_c) => then(creepRatio(C_alpha * (1 + e_0), C_c), ({ ratio: value }) => given(value)),
  ),
  formula("change_of_void_ratio", "q = (e_0 - e) / e_0", [INITIAL_VOID_RATIO, VOID_RATIO_IN_SITU], (e_0, e) =>
    given((e_0 - e) / e_0),
  ),
  formula(
    "strain_by_void_ratio",
    "eps = (e_0 - e) / (1 + e_0)",
    [INITIAL_VOID_RATIO, VOID_RATIO_IN_SITU],
    (e_0, e) => given((e_0 - e) / (1 + e_0)),
    { decimals: 4 },
  ),
  formula("share_of_void_ratio", "e = F * e_0", [ratio("F", "the share"), INITIAL_VOID_RATIO], (F, e_0) =>
    given(F * e_0),
  ),
  formula(
    "stress_on_line",
    "sigma = sigma_1 * 10^((e_1 - e) / C_c)",
    [
      stressOf("sigma_1", "the stress of a point of the line"),
      ratio("e_1", "its void ratio"),
      VOID_RATIO,
      ratio("C_c", "the slope of the line"),
    ],
    (sigma_1, e_1, e, C_c) => given(sigma_1 * 10 ** ((e_1 - e) / C_c)),
    { result: "stress" },
  ),
  formula(
    "settlement",
    "S = H * (RR * log10(sigma_p / sigma_v0) + CR * log10((sigma_v0 + dsigma) / sigma_p))",
    [...LAYER, PRECONSOLIDATION_STRESS, COMPRESSION_RATIO, RECOMPRESSION_RATIO],
    (H, sigma_v0, dsigma, sigma_p, CR, RR) =>
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
    { result: "length" },
  ),
  formula(
    "settlement_recompression",
    "S = H * RR * log10((sigma_v0 + dsigma) / sigma_v0)",
    [...LAYER, RECOMPRESSION_RATIO],
    onOneSide("recompression"),
    { result: "length" },
  ),
  formula(
    "settlement_virgin",
    "S = H * CR * log10((sigma_v0 + dsigma) / sigma_v0)",
    [...LAYER, COMPRESSION_RATIO],
    onOneSide("virgin"),
    { result: "length" },
  ),
  formula("wetting_strain", "eps_w = (H_1 - H_2) / H_1", HEIGHTS_ON_WETTING, wettingStrain, {
    decimals: 4,
  }),
  formula(
    "collapse",
    "I_c = (H_1 - H_2) / H_0",
    [...HEIGHTS_ON_WETTING, INITIAL_HEIGHT],
    (H_1, H_2, H_0) => then(collapse(H_1, H_2, H_0), ({ potential }) => given(potential)),
    { decimals: 4 },
  ),
  formula(
    "void_index",
    "I_v = (e - e_100) / C_c",
    [
      VOID_RATIO,
      ratio("e_100", "the intrinsic void ratio at 100 kPa"),
      ratio("C_c", "the intrinsic compression index"),
    ],
    (e, e_100, C_c) => given((e - e_100) / C_c),
  ),
  formula(
    "intrinsic_void_ratio",
    "e_100 = 0.109 + 0.679 * (w_L * G_s) - 0.089 * (w_L * G_s)^2 + 0.016 * (w_L * G_s)^3",
    LIQUID_LIMIT,
    (w_L, G_s) => then(intrinsic(w_L, G_s), ({ e100 }) => given(e100)),
  ),
  formula("intrinsic_compression_index", "C_c = 0.256 * w_L * G_s - 0.04", LIQUID_LIMIT, (w_L, G_s) =>
    then(intrinsic(w_L, G_s), ({ Cc }) => given(Cc)),
  ),
];
