/**
 * The only module that knows conversion factors.
 *
 * Each unit of the trade is written as its size in SI units, from definitions that are exact: inch, pound and standard
 * gravity (international yard and pound agreement of 1959; 3rd General Conference on Weights and Measures, 1901), the
 * Julian year. The US ton per square foot is of 2000 pounds-force. test/reduction/units.test.ts compares every factor
 * with the definitions of mathjs.
 */
import { say, verbatim, listed } from "./message";
import { badInput, given, type Outcome } from "./outcome";

/** Metres. */
const INCH = 0.0254;
const FOOT = 12 * INCH;
/** m/s2, by definition. */
const STANDARD_GRAVITY = 9.80665;
/** Newtons: the weight of a kilogram, and of a pound of 0.45359237 kg, at standard gravity. */
const KGF = STANDARD_GRAVITY;
const LBF = 0.45359237 * STANDARD_GRAVITY;
/** Seconds; a year has 365.25 days. */
const MINUTE = 60;
const DAY = 86_400;
const YEAR = 365.25 * DAY;

/**
 * For each quantity, the names that a user may type, and the size of each unit in SI units (named beside the quantity).
 */
export const UNITS = {
  /** N/m2 */
  stress: {
    kPa: 1e3,
    MPa: 1e6,
    psf: LBF / FOOT ** 2,
    ksf: (1000 * LBF) / FOOT ** 2,
    tsf: (2000 * LBF) / FOOT ** 2,
    psi: LBF / INCH ** 2,
    "kgf/cm2": KGF * 1e4,
    bar: 1e5,
    "kN/m2": 1e3,
    "MN/m2": 1e6,
    "t/m2": 1000 * KGF,
  },
  /** m */
  length: { mm: 1e-3, cm: 1e-2, m: 1, in: INCH, ft: FOOT },
  /** m2/s */
  cv: {
    "m2/yr": 1 / YEAR,
    "mm2/min": 1e-6 / MINUTE,
    "cm2/s": 1e-4,
    "cm2/min": 1e-4 / MINUTE,
    "m2/s": 1,
    "in2/min": INCH ** 2 / MINUTE,
    "ft2/day": FOOT ** 2 / DAY,
    "ft2/yr": FOOT ** 2 / YEAR,
  },
  /**
   * N/m3. Mass densities are taken as weights per volume at standard gravity: 1 Mg/m3 is 9.80665 kN/m3 and 62.43 pcf.
   */
  density: {
    "Mg/m3": 1000 * STANDARD_GRAVITY,
    "g/cm3": 1000 * STANDARD_GRAVITY,
    "kg/m3": STANDARD_GRAVITY,
    "kN/m3": 1e3,
    pcf: LBF / FOOT ** 3,
  },
  /** m2/N */
  mv: {
    "m2/MN": 1e-6,
    "1/MPa": 1e-6,
    "m2/kN": 1e-3,
    "1/kPa": 1e-3,
    "ft2/ton": FOOT ** 2 / (2000 * LBF),
    "1/tsf": FOOT ** 2 / (2000 * LBF),
    "1/psf": FOOT ** 2 / LBF,
    "1/ksf": FOOT ** 2 / (1000 * LBF),
    "cm2/kgf": 1e-4 / KGF,
  },
  /** m/s */
  conductivity: {
    "m/s": 1,
    "cm/s": 1e-2,
    "m/yr": 1 / YEAR,
    "ft/day": FOOT / DAY,
    "ft/yr": FOOT / YEAR,
  },
  /** N. A mass is taken as its weight at standard gravity. */
  force: { N: 1, kN: 1e3, kg: KGF, lbf: LBF },
} as const satisfies Record<string, Record<string, number>>;

export type Quantity = keyof typeof UNITS;
export type UnitOf<Q extends Quantity> = keyof (typeof UNITS)[Q] & string;

function sizeOf(quantity: Quantity, name: string): number {
  // Widens the literal types of the table, so that any name may be looked up.
  const sizes: Readonly<Record<string, number>> = UNITS[quantity];
  const size = sizes[name];
  if (size === undefined) throw new RangeError(`"${name}" is no unit of ${quantity}`);
  return size;
}

/**
 * Converts a value of a quantity from one of its units to another.
 * @example convert(1, "stress", "tsf", "kPa") // 95.76
 */
export const convert = (value: number, quantity: Quantity, from: string, to: string): number =>
  from === to ? value : value * (sizeOf(quantity, from) / sizeOf(quantity, to));

/** Other spellings of units, and the spelling in the table. */
const SPELLINGS: readonly (readonly [RegExp, string])[] = [
  [/^(?:inch|inches|")$/i, "in"],
  [/^(?:foot|feet)$/i, "ft"],
  [/\/(?:years?|a)$/i, "/yr"],
  [/\/(?:sec|second)$/i, "/s"],
  [/\/minute$/i, "/min"],
  [/\/d$/i, "/day"],
  [/^kg\/cm2$/i, "kgf/cm2"],
  [/^lb[fs]?\/ft2$/i, "psf"],
  [/^lb[fs]?\/in2$/i, "psi"],
  [/^lb[fs]?\/ft3$/i, "pcf"],
  [/^lbs?$/i, "lbf"],
  [/^kgf$/i, "kg"],
];

/**
 * The spelling in the table of a unit that a person typed in any case, with spaces, as "mm²" or "mm^2" for "mm2", or in
 * another spelling ("m2/year", "inch"); undefined if it is none of `names`.
 * @example unitNamed("mm²", ["mm2", "cm2"]) // "mm2"
 * @example unitNamed("m²/year", ["m2/yr", "m2/s"]) // "m2/yr"
 */
export function unitNamed(typed: string, names: readonly string[]): string | undefined {
  const plain = typed.replace(/[\s^]/g, "").replaceAll("²", "2").replaceAll("³", "3");
  const spelt = SPELLINGS.reduce((text, [other, own]) => text.replace(other, own), plain);
  return (
    names.find((name) => name === plain) ??
    [plain, spelt].flatMap((text) => names.filter((name) => name.toLowerCase() === text.toLowerCase()))[0]
  );
}

/** TypeScript types Object.keys as strings; these are the names in the table above. */
const QUANTITIES = Object.keys(UNITS) as Quantity[];
/**
 * The units of a quantity, in the order of the table.
 * @example unitsOf("length") // ["mm", "cm", "m", "in", "ft"]
 */
export const unitsOf = <Q extends Quantity>(quantity: Q): UnitOf<Q>[] =>
  // Object.keys returns keys of type string; these are the keys of the quantity.
  Object.keys(UNITS[quantity]) as UnitOf<Q>[];

/**
 * Converts a value to another unit of the same quantity; refuses an unknown unit, and a unit of another quantity.
 * @example convertUnit(1, "in", "mm") // 25.4
 * @example convertUnit(1, "in", "kPa") // refused: "kPa" does not measure what "in" measures: convert it to one of mm, cm, m, in, ft
 */
export function convertUnit(value: number, from: string, to: string): Outcome<number> {
  const all = QUANTITIES.flatMap(unitsOf);
  const unknown = [from, to].find((name) => unitNamed(name, all) === undefined);
  if (unknown !== undefined)
    return badInput(say`the unit "${verbatim(unknown)}" is not known: use one of ${listed(all.map(verbatim))}`);
  for (const quantity of QUANTITIES) {
    const names = unitsOf(quantity);
    const [a, b] = [unitNamed(from, names), unitNamed(to, names)];
    if (a && b) return given(convert(value, quantity, a, b));
  }
  const alternatives = QUANTITIES.map(unitsOf).find((names) => unitNamed(from, names)) ?? all;
  return badInput(
    say`"${verbatim(to)}" does not measure what "${verbatim(from)}" measures: convert it to one of ${listed(alternatives.map(verbatim))}`,
  );
}
