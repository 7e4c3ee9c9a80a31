/**
 * The one place that knows a conversion factor.
 *
 * Each unit of the trade is written as a mathjs unit expression, so that its definition can be read: the US ton per
 * square foot is 2000 lbf/ft^2; the year is 365.25 days. The inch (25.4 mm), pound-force and standard gravity are
 * mathjs's own definitions, held against the SI and inch-pound definitions in test/published/units.test.ts.
 */
import { create, unitDependencies } from "mathjs";
import { badInput, given, type Outcome } from "./outcome";

const { unit } = create({ unitDependencies });

/** Per quantity, the names that a user may type and what each means. */
export const UNITS = {
  stress: {
    kPa: "1 kN/m^2",
    MPa: "1 MN/m^2",
    psf: "1 lbf/ft^2",
    ksf: "1000 lbf/ft^2",
    tsf: "2000 lbf/ft^2",
    psi: "1 lbf/in^2",
    "kgf/cm2": "1 kgf/cm^2",
    bar: "100 kN/m^2",
    "kN/m2": "1 kN/m^2",
    "MN/m2": "1 MN/m^2",
    "t/m2": "1000 kgf/m^2",
  },
  length: { mm: "1 mm", cm: "1 cm", m: "1 m", in: "1 inch", ft: "1 ft" },
  cv: {
    "m2/yr": "1 m^2/year",
    "mm2/min": "1 mm^2/minute",
    "cm2/s": "1 cm^2/s",
    "cm2/min": "1 cm^2/minute",
    "m2/s": "1 m^2/s",
    "in2/min": "1 inch^2/minute",
    "ft2/day": "1 ft^2/day",
    "ft2/yr": "1 ft^2/year",
  },
  /** Mass densities as weights per volume at standard gravity: 1 Mg/m3 is 9.80665 kN/m3 and 62.43 pcf. */
  density: {
    "Mg/m3": "9.80665 kN/m^3",
    "g/cm3": "9.80665 kN/m^3",
    "kg/m3": "9.80665 N/m^3",
    "kN/m3": "1 kN/m^3",
    pcf: "1 lbf/ft^3",
  },
  mv: {
    "m2/MN": "1 m^2/MN",
    "1/MPa": "1 m^2/MN",
    "m2/kN": "1 m^2/kN",
    "1/kPa": "1 m^2/kN",
    "ft2/ton": "0.0005 ft^2/lbf",
    "1/tsf": "0.0005 ft^2/lbf",
    "1/psf": "1 ft^2/lbf",
    "1/ksf": "0.001 ft^2/lbf",
    "cm2/kgf": "1 cm^2/kgf",
  },
  conductivity: {
    "m/s": "1 m/s",
    "cm/s": "1 cm/s",
    "m/yr": "1 m/year",
    "ft/day": "1 ft/day",
    "ft/yr": "1 ft/year",
  },
  /** A mass stands for its weight at standard gravity. */
  force: { N: "1 N", kN: "1 kN", kg: "1 kgf", lbf: "1 lbf" },
} as const satisfies Record<string, Record<string, string>>;

const SI: Record<keyof typeof UNITS, string> = {
  stress: "N/m^2",
  length: "m",
  cv: "m^2/s",
  density: "N/m^3",
  mv: "m^2/N",
  conductivity: "m/s",
  force: "N",
};

export type Quantity = keyof typeof UNITS;
export type UnitOf<Q extends Quantity> = keyof (typeof UNITS)[Q] & string;

const factors = new Map<string, number>();

/** How many `to` make one `from`; both must be units of the quantity. */
function factor(quantity: Quantity, from: string, to: string): number {
  const key = `${quantity} ${from} ${to}`;
  let value = factors.get(key);
  if (value === undefined) {
    const table: Record<string, string> = UNITS[quantity];
    value = unit(table[from]).toNumber(SI[quantity]) / unit(table[to]).toNumber(SI[quantity]);
    factors.set(key, value);
  }
  return value;
}

/** A value of the quantity, from one of its units to another. */
export const convert = (value: number, quantity: Quantity, from: string, to: string): number =>
  from === to ? value : value * factor(quantity, from, to);

/**
 * The table's own spelling of a unit that a person typed: any case, spaces, "mm²" or "mm^2" for "mm2"; undefined if it is
 * none of `names`.
 */
export function unitNamed(typed: string, names: readonly string[]): string | undefined {
  const plain = typed.replace(/[\s^]/g, "").replaceAll("²", "2").replaceAll("³", "3");
  return names.find((name) => name === plain) ?? names.find((name) => name.toLowerCase() === plain.toLowerCase());
}

const QUANTITIES = Object.keys(UNITS) as Quantity[];
export const unitsOf = (quantity: Quantity): string[] => Object.keys(UNITS[quantity]);

/** A value from one unit to another of the same quantity; refuses a unit that is not known, or of another quantity. */
export function convertUnit(value: number, from: string, to: string): Outcome<number> {
  const all = QUANTITIES.flatMap(unitsOf);
  const unknown = [from, to].find((name) => unitNamed(name, all) === undefined);
  if (unknown !== undefined) return badInput(`the unit "${unknown}" is not known: use one of ${all.join(", ")}`);
  for (const quantity of QUANTITIES) {
    const names = unitsOf(quantity);
    const [a, b] = [unitNamed(from, names), unitNamed(to, names)];
    if (a && b) return given(convert(value, quantity, a, b));
  }
  const alternatives = QUANTITIES.map(unitsOf).find((names) => unitNamed(from, names))!;
  return badInput(`"${to}" does not measure what "${from}" measures: convert it to one of ${alternatives.join(", ")}`);
}
