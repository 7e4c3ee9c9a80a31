/**
 * Evaluates each formula of the calculation book a second time: the parser of mathjs reads the formula as printed and
 * calculates with the units of its numbers. The reduction takes no part, so that a formula, its function and its unit
 * conversions cannot all have the same error.
 */
import {
  addDependencies,
  create,
  divideDependencies,
  evaluateDependencies,
  log10Dependencies,
  multiplyDependencies,
  piDependencies,
  powDependencies,
  subtractDependencies,
  unaryMinusDependencies,
  unitDependencies,
  type Unit,
} from "mathjs";
import { FORMULAS, ownUnit, type Formula, type Measured } from "./formulas";
import type { Units, Worked } from "./line";
import { MATHJS_UNITS } from "./mathjs-units";

/** The parts of mathjs that the formulas need: the whole of mathjs is twice as large. */
const math = create({
  ...evaluateDependencies,
  ...unitDependencies,
  ...addDependencies,
  ...subtractDependencies,
  ...multiplyDependencies,
  ...divideDependencies,
  ...powDependencies,
  ...unaryMinusDependencies,
  ...log10Dependencies,
  ...piDependencies,
});

const MASS_DENSITIES: Readonly<Record<string, string>> = {
  "Mg/m3": "1 Mg/m^3",
  "g/cm3": "1 g/cm^3",
  "kg/m3": "1 kg/m^3",
};
const CONSTANT_UNITS: Readonly<Record<string, string>> = { "m/s^2": "1 m/s^2", "kN/m3": "1 kN/m^3" };

function constantUnit(unit: string): string {
  const found = CONSTANT_UNITS[unit];
  if (found === undefined) throw new Error(`${unit} is no unit of a constant`);
  return found;
}

/** A unit of a formula in the words of mathjs. */
export function mathUnit(measures: Measured, unit: string): string {
  if (measures === "mass") return "1 g";
  if (measures === "time") return "1 minute";
  const found =
    measures === "mass density"
      ? MASS_DENSITIES[unit]
      : MATHJS_UNITS[measures === "unit weight" ? "density" : measures][unit];
  if (found === undefined) throw new Error(`${unit} is no unit of ${measures}`);
  return found;
}

// The types of mathjs do not say that a number times a unit is a Unit.
const times = (value: number, unit: string): Unit => math.multiply(value, math.unit(unit)) as unknown as Unit;

/** Evaluates the expression of a formula with its numbers, in `units`, or in the units of the formula. */
export function evaluateWithUnits(formula: Formula, values: readonly number[], units: Units): number {
  const unitOf = (measures: Measured): string => mathUnit(measures, units[measures] ?? ownUnit(measures));
  const scope: Record<string, unknown> = {};
  formula.arguments.forEach(({ symbol, measures, fallback }, index) => {
    const value = values[index] ?? fallback;
    if (value !== undefined) scope[symbol] = measures ? times(value, unitOf(measures)) : value;
  });
  for (const { symbol, value, unit } of formula.constants ?? [])
    scope[symbol] = unit ? times(value, constantUnit(unit)) : value;
  const found = math.evaluate(formula.expression, scope);
  if (!formula.result) return Number(found);
  // The types of mathjs do not say that a quotient of two like units is a number.
  return math.divide(found, math.unit(unitOf(formula.result))) as number;
}

/** Two evaluations in floating point agree to this share. */
const ROUNDING = 1e-9;

/** The second evaluation of a line, and whether it agrees with the first. Throws if mathjs cannot read the formula. */
export function evaluateAgain({ formula, values, units, result }: Worked): {
  readonly value: number;
  readonly agrees: boolean;
} {
  const found = FORMULAS.find(({ id }) => id === formula);
  if (!found) throw new Error(`there is no formula ${formula}`);
  const value = evaluateWithUnits(found, values, units);
  return { value, agrees: Math.abs(value - result) <= ROUNDING * Math.max(Math.abs(value), Math.abs(result)) };
}
