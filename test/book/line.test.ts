/**
 * The line of a calculation book. mathjs is the independent check that text and calculation agree: its parser evaluates
 * the expression of each formula with units, and the printed line too, and both must give the result of the reduction.
 */
import fc from "../properties";
import { all, create } from "mathjs";
import { WORKING } from "../../src/functions/checking";
import { FORMULA_UNITS, FORMULAS, type Measured } from "../../src/book/formulas";
import { working, type Units } from "../../src/book/line";
import { evaluateWithUnits, mathUnit } from "../../src/book/second-evaluation";
import { COMPRESSION_INDEX, VOLUME_COMPRESSIBILITY } from "../../src/functions/curve";
import { SETTLEMENT } from "../../src/functions/design";
import { CV_FROM_T50 } from "../../src/functions/increment";
import { STRESS } from "../../src/functions/loading";
import { DENSITY, SOLIDS_HEIGHT } from "../../src/functions/specimen";
import { refusal } from "../functions/refusal";
import { english } from "../../src/reduction/message";

const math = create(all);

/** Ranges of numbers for each kind of argument, so that no formula refuses them. */
const number = (min: number, max: number) => fc.nat(1_000_000).map((part) => min + ((max - min) * part) / 1_000_000);
/**
 * Two numbers in order, the greater at least 5 % greater: a difference of nearly equal numbers would be mostly
 * rounding.
 */
const sorted = (a: number, b: number): [number, number] => (a < b ? [a, 1.05 * b] : [b, 1.05 * a]);
const load = fc
  .tuple(number(1, 6000), number(1, 6000), number(0.2, 4), number(0.2, 4))
  .map(([s1, s2, e1, e2]) => [...sorted(s1, s2), ...sorted(e1, e2).reverse()] as number[]);
const RANDOM: Record<string, fc.Arbitrary<number[]>> = {
  water_content: fc.tuple(number(0, 30), number(1, 90), number(0.5, 90)).map(([t, d, w]) => [t + d + w, t + d, t]),
  solids_height: fc.tuple(number(1, 300), number(1.25, 4.45), number(30, 150), number(0.95, 1.25)),
  void_ratio: fc.tuple(number(1, 50), number(0.1, 30)).map(([Hs, voids]) => [Hs + voids, Hs]),
  void_ratio_at_strain: fc.tuple(number(-0.2, 0.25), number(0.5, 4)),
  saturation: fc.tuple(number(0.01, 5), number(1.2, 4.5), number(0.1, 10)),
  density: fc.tuple(number(1, 900), number(30, 150), number(5, 60)),
  unit_weight: fc.tuple(number(1, 900), number(30, 150), number(5, 60)),
  stress: fc.tuple(number(0.1, 1e4), number(30, 150), number(1, 12)),
  strain: fc.tuple(number(0.5, 8), number(10, 50), number(0, 0.3)),
  deformation: fc.tuple(
    number(0.5, 9000),
    number(-50, 9000),
    number(-0.01, 0.01).filter((f) => f !== 0),
  ),
  cv_from_t50: fc.tuple(number(0.01, 2000), number(5, 60), fc.constantFrom(1, 2)),
  cv_from_t90: fc.tuple(number(0.01, 2000), number(5, 60), fc.constantFrom(1, 2)),
  av: load,
  mv: load,
  mv_on_initial_height: fc.tuple(load, number(0.2, 5)).map(([values, e0]) => [...values, e0]),
  constrained_modulus: load,
  conductivity: fc.tuple(number(1e-3, 1e3), number(1e-3, 10)),
  compression_index: load,
  recompression_index: load,
  swelling_index: load.map(([s1, s2, e1, e2]) => [s2, s1, e2, e1]),
  ocr: fc.tuple(number(1, 5000), number(1, 5000)),
  c_alpha: fc
    .tuple(number(0, 1), number(1.1, 2), number(1, 1000), number(3, 100), number(10, 50))
    .map(([d1, d2, t1, factor, H0]) => [d1, d2, t1, t1 * factor, H0]),
};

const onLogStress = fc
  .tuple(number(1, 3000), number(1.1, 4), number(0, 1), number(-0.2, 2), number(-0.2, 2))
  .map(([s1, factor, share, y1, y2]) => [s1 * factor ** share, s1, s1 * factor, y1, y2]);
const two = (a: [number, number], b: [number, number]) => fc.tuple(number(...a), number(...b));
Object.assign(RANDOM, {
  dry_mass: two([0.5, 900], [100, 300]).map(([soil, ring]) => [soil + ring, ring]),
  dry_mass_by_trimmings: two([1, 900], [0.01, 5]),
  height_at_end: two([10, 60], [-1, 8]),
  corrected_deformation: two([1, 8], [0, 0.5]),
  height_at_reading: fc.tuple(
    number(15, 60),
    number(300, 900),
    number(1, 200),
    number(0.0001, 0.01),
    number(-0.05, 0.5),
  ),
  deflection_since_seating: two([0.05, 0.5], [0, 0.04]),
  height_middle: two([5, 60], [5, 60]),
  apparatus_deflection: onLogStress,
  void_ratio_at_stress: onLogStress,
  void_ratio_by_water: two([0.01, 5], [1.2, 4.5]),
  difference: two([1, 3], [-0.5, 0.5]),
  difference_of_heights: two([15, 30], [5, 12]),
  difference_of_masses: two([20, 300], [1, 10]),
  mean_of_two: two([0.01, 3], [0.01, 3]),
  mean_of_three: fc.tuple(number(0.01, 3), number(0.01, 3), number(0.01, 3)),
  d50: two([1, 900], [1, 900]),
  d100_from_d90: two([1, 400], [500, 900]),
  cv_at_20: two([0.001, 900], [0.5, 1.8]),
  c_alpha_from_tail: fc.tuple(number(1, 90), number(0.0001, 0.01), number(10, 50)),
  c_alpha_ratio: fc.tuple(number(0.001, 0.1), number(0.2, 4), number(0.05, 3)),
  change_of_void_ratio: two([1, 4], [0.2, 0.9]),
  strain_by_void_ratio: two([1, 4], [0.2, 0.9]),
  share_of_void_ratio: two([0.3, 0.6], [0.2, 4]),
  stress_on_line: fc.tuple(number(1, 3000), number(0.9, 1.2), number(0.3, 0.8), number(0.3, 2)),
});

Object.assign(RANDOM, {
  settlement: fc
    .tuple(number(1, 20), number(5, 300), number(5, 300), number(0.05, 0.95), number(0.1, 0.4), number(0.005, 0.09))
    .map(([H, stress, increase, part, CR, RR]) => [H, stress, increase, stress + part * increase, CR, RR]),
  settlement_recompression: fc.tuple(number(1, 20), number(5, 300), number(5, 300), number(0.005, 0.09)),
  settlement_virgin: fc.tuple(number(1, 20), number(5, 300), number(5, 300), number(0.05, 0.4)),
  wetting_strain: two([16, 25], [12, 15]),
  collapse: fc.tuple(number(16, 25), number(12, 15), number(20, 26)),
  void_index: fc.tuple(number(1.2, 3), number(0.4, 1.1), number(0.2, 1)),
  intrinsic_void_ratio: two([0.25, 1.6], [2.5, 2.8]),
  intrinsic_compression_index: two([0.25, 1.6], [2.5, 2.8]),
});

const close = (a: number, b: number, share: number) => {
  if (Math.abs(a - b) > share * Math.max(Math.abs(b), 1e-12)) throw new Error(`${a} is not ${b}`);
};

describe.each(FORMULAS.map((formula) => [formula.id, formula] as const))("%s", (id, formula) => {
  const unitsOfFormula = [...new Set([...formula.arguments.map(({ measures }) => measures), formula.result])].filter(
    (measures): measures is Measured => measures !== undefined,
  );
  const anyUnits: fc.Arbitrary<Units> = fc.record(
    Object.fromEntries(unitsOfFormula.map((measures) => [measures, fc.constantFrom(...FORMULA_UNITS[measures])])),
  );
  const line = (values: readonly number[], units: Units) => {
    const found = working(formula, values, units);
    if (!found.ok) throw new Error(english(found.reason));
    return found.value;
  };

  test("mathjs's parser, evaluating the expression with units, gives the value of the reduction", () => {
    fc.assert(
      fc.property(RANDOM[id], (values) => {
        const found = formula.compute(...values);
        if (!found.ok) throw new Error(english(found.reason));
        close(evaluateWithUnits(formula, values, {}), found.value, 1e-9);
        close(line(values, {}).result, found.value, 1e-12);
      }),
      { numRuns: 200 },
    );
  });

  test("any allowed units give the same value", () => {
    fc.assert(
      fc.property(RANDOM[id], anyUnits, (values, units) => {
        // The random numbers are in the units of the formula: convert them to the chosen units.
        const said = values.map((value, index) => {
          const { measures } = formula.arguments[index];
          if (!measures) return value;
          const [own, chosen] = [FORMULA_UNITS[measures][0], units[measures]!].map((unit) =>
            math.unit(mathUnit(measures, unit)),
          );
          return value * (math.divide(own, chosen) as unknown as number);
        });
        close(line(said, units).result, evaluateWithUnits(formula, said, units), 1e-9);
      }),
      { numRuns: 100 },
    );
  });

  test("mathjs's parser, reading the printed line, gives the printed result to its last digit", () => {
    fc.assert(
      fc.property(RANDOM[id], fc.boolean(), (random, named) => {
        // Numbers with few digits, as a person types them, so that the line prints all their digits.
        const values = random.map((value, index) => {
          const { measures, symbol } = formula.arguments[index];
          return Number(value.toFixed(symbol === "f" ? 4 : measures === "mass" || measures === "stress" ? 1 : 3));
        });
        const units: Units = named
          ? Object.fromEntries(unitsOfFormula.map((measures) => [measures, FORMULA_UNITS[measures][0]]))
          : {};
        const found = working(formula, values, units);
        if (!found.ok) return;
        const [, expression, numbers, answer] = found.value.text.split(" = ");
        expect(expression).toBe(formula.expression);
        const [, digits, unit] = /^(-?[\d.]+(?:e[+-]?\d+)?)(?: (.*))?$/.exec(answer)!;
        expect(unit ?? "").toBe(found.value.unit);
        const readable = numbers
          .replace(/m2\/yr/g, "m^2/year")
          .replace(/m2\/MN/g, "m^2/MN")
          .replace(/([A-Za-z])([23])\b/g, "$1^$2")
          .replace(/\bmin\b/g, "minute");
        const evaluated = math.evaluate(readable);
        const value = formula.result
          ? (math.divide(evaluated, math.unit(mathUnit(formula.result, found.value.unit))) as number)
          : Number(evaluated);
        const places = /e/.test(digits) ? undefined : (digits.split(".")[1] ?? "").length;
        const unitInLastPlace = places === undefined ? 1e-3 * Math.abs(value) : 10 ** -places;
        if (Math.abs(value - Number(digits)) > 0.5001 * unitInLastPlace)
          throw new Error(`${found.value.text}: the parser reads ${value}`);
      }),
      { numRuns: 100 },
    );
  });
});

test("every formula has random numbers here, and no two formulas share a name", () => {
  expect(FORMULAS.map(({ id }) => id).sort()).toEqual(Object.keys(RANDOM).sort());
});

describe("WORKING", () => {
  test("writes the line of a calculation book", () => {
    expect(WORKING("void_ratio", 25.4, 10.367)).toBe("e = (H - H_s) / H_s = (25.400 - 10.367) / 10.367 = 1.450");
    expect(WORKING("cv_from_t50", 0.95, 24.1)).toBe(
      "c_v = T_50 * (H / n)^2 / t_50 = 0.197 * (24.100 mm / 2)^2 / (0.95 min) = 15.84 m2/yr",
    );
    expect(WORKING("compression_index", 100, 200, 1.1, 0.95)).toBe(
      "C_c = (e_1 - e_2) / log10(sigma_2 / sigma_1) = (1.100 - 0.950) / log10(200.0 / 100.0) = 0.498",
    );
  });

  test("takes units and drainage after the numbers, in any order, and shows them", () => {
    expect(WORKING("cv_from_t50", 0.95, 0.949, "ft2/day", "in", "single")).toBe(
      "c_v = T_50 * (H / n)^2 / t_50 = 0.197 * (0.9490 in / 1)^2 / (0.95 min) = 1.868 ft2/day",
    );
    expect(WORKING("void_ratio", 1, 0.408, "in")).toBe(
      "e = (H - H_s) / H_s = (1.0000 in - 0.4080 in) / (0.4080 in) = 1.451",
    );
    expect(WORKING("stress", 12.5, 63.5, 10, "kg", "tsf")).toMatch(/10 \* 12.5 kgf .* = 4.042 tsf$/);
  });

  test("a water density that is left out is that of fresh water, in the unit named", () => {
    expect(WORKING("solids_height", 89.3, 2.72, 63.5, "kg/m3")).toBe(
      WORKING("solids_height", 89.3, 2.72, 63.5, 1000, "kg/m3"),
    );
    expect(WORKING("solids_height", 89.3, 2.72, 63.5, "kg/m3")).toMatch(/\* \(1000\.0 kg\/m3\) .* = 10\.367 mm$/);
    expect(WORKING("solids_height", 89.3, 2.72, 63.5, null, "g/cm3")).toMatch(/\* \(1\.000 g\/cm3\) .* = 10\.367 mm$/);
  });

  test("accepts names in any case, with spaces", () => {
    expect(WORKING("Void Ratio", 25.4, 10.367)).toBe(WORKING("VOID_RATIO", 25.4, 10.367));
  });

  test("gives the number of the function with the same name", () => {
    const answer = (line: string): number => Number(/= (-?[\d.e-]+)[^=]*$/.exec(line)![1]);
    expect(answer(WORKING("solids_height", 89.3, 2.72, 2.5, "in"))).toBeCloseTo(
      SOLIDS_HEIGHT(89.3, 2.72, 2.5, "in"),
      4,
    );
    expect(answer(WORKING("density", 136.67, 63.5, 25.4))).toBeCloseTo(DENSITY(136.67, 63.5, 25.4), 3);
    expect(answer(WORKING("stress", 40, 63.5, 10))).toBeCloseTo(STRESS(40, 63.5, "N", "kPa", "mm", 10), 1);
    expect(answer(WORKING("cv_from_t50", 0.95, 24.1))).toBeCloseTo(CV_FROM_T50(0.95, 24.1), 2);
    expect(answer(WORKING("mv", 100, 200, 1.1, 0.95))).toBeCloseTo(VOLUME_COMPRESSIBILITY(100, 200, 1.1, 0.95), 4);
    const [[Cc]] = [[COMPRESSION_INDEX([[100], [200]], [[1.1], [0.95]], 100, 200)].flat()];
    expect(answer(WORKING("compression_index", 100, 200, 1.1, 0.95))).toBeCloseTo(Cc as number, 3);
  });

  test("writes the settlement of a layer across the preconsolidation stress, or on one side of it", () => {
    expect(WORKING("settlement", 4, 100, 120, 150, 0.15, 0.025, "m")).toMatch(/= 0.11741 m$/);
    expect(SETTLEMENT(4, 100, 120, 150, 0.15, 0.025, "settlement").flat()[0]).toBeCloseTo(0.11741, 5);
    expect(WORKING("settlement_virgin", 4, 150, 70, 0.15, "m")).toMatch(/= 0.09980 m$/);
    for (const preconsolidation of [90, 230])
      expect(refusal(() => WORKING("settlement", 4, 100, 120, preconsolidation, 0.15, 0.025))).toMatch(
        /use settlement_recompression below it, settlement_virgin above/,
      );
  });

  test("ignores blank cells after the last number, from the web and from the desktop", () => {
    for (const nothing of [null, undefined, "", 0])
      expect(WORKING("void_ratio", 25.4, 10.367, nothing, nothing)).toBe(WORKING("void_ratio", 25.4, 10.367));
    expect(WORKING("strain", 1.27, 25.4, null)).toMatch(/\(1.270 - 0.000\) \/ 25.400 = 0.0500$/);
  });

  test("rounds only the numbers that it shows", () => {
    // 10.36735 is shown as 10.367, but the void ratio is calculated from 10.36735.
    expect(WORKING("void_ratio", 17.41, 10.367350001)).toMatch(/\(17.410 - 10.367\) \/ 10.367 = 0.679$/);
    expect(WORKING("void_ratio", 17.41012345, 10.36735678)).toMatch(/= 0.679$/);
  });

  test("refusals say which argument is missing, wrong or unknown", () => {
    expect(refusal(() => WORKING("void"))).toMatch(/the quantity is "void": use one of water_content, /);
    expect(refusal(() => WORKING(null))).toMatch(/the quantity is blank/);
    expect(refusal(() => WORKING("void_ratio", 25.4))).toMatch(
      /the height of solids is missing: void_ratio needs the height, the height of solids/,
    );
    expect(refusal(() => WORKING("void_ratio", 25.4, 10, 3))).toMatch(/takes 2 numbers/);
    expect(refusal(() => WORKING("void_ratio", 25.4, "10.367"))).toMatch(/stored as text/);
    expect(refusal(() => WORKING("void_ratio", 25.4, "#N/A"))).toMatch(/holds the error #N\/A/);
    expect(refusal(() => WORKING("void_ratio", 25.4, 10.367, "kPa"))).toMatch(
      /"kPa" is no unit of anything in void_ratio/,
    );
    expect(refusal(() => WORKING("void_ratio", 10, 25.4))).toMatch(/not above the height of solids/);
    expect(refusal(() => WORKING("void_ratio", 25.4, 0))).toMatch(/the height of solids is blank or zero/);
    expect(refusal(() => WORKING("cv_from_t50", 0.95, 24.1, 3))).toMatch(/number of draining faces is 3/);
    expect(refusal(() => WORKING("compression_index", 100, 200, 0.95, 1.1))).toMatch(
      /does not fall as the stress rises/,
    );
    expect(refusal(() => WORKING("deformation", 0, 400, 0.002))).toMatch(/counts as blank/);
    expect(refusal(() => WORKING("c_alpha", 1, 1.1, 100, 100, 25.4))).toMatch(/two times are the same/);
  });
});
