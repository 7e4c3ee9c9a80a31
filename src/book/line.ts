/** A formula with its numbers put in and its result, in one line: "e = (H - H_s) / H_s = (25.400 - 10.367) / 10.367 = 1.450". */
import { given, then, type Outcome } from "../reduction/outcome";
import { listWord, say, type Message, type Value } from "../reduction/message";
import { nth } from "../reduction/numeric/lists";
import { convertMeasured, ownUnit, type Argument, type Constant, type Formula, type Measured } from "./formulas";

export type Units = Readonly<Partial<Record<Measured, string>>>;

/** The source of a line: a formula by its id, and its numbers in the units given. */
export interface Worked {
  readonly formula: string;
  readonly values: readonly number[];
  readonly units: Units;
  readonly result: number;
}

/** Decimals to which a unit is shown; four significant digits for other units. */
const DECIMALS: Readonly<Record<string, number>> = {
  mm: 3,
  cm: 4,
  in: 4,
  m: 5,
  ft: 5,
  g: 2,
  min: 2,
  kPa: 1,
  psf: 1,
  psi: 2,
  tsf: 3,
  ksf: 3,
  "Mg/m3": 3,
  "g/cm3": 3,
  "kg/m3": 1,
  "kN/m3": 2,
  pcf: 1,
};
const RATIO_DECIMALS = 3;
/** A number that was typed may be shown with up to this many decimals more, if it then shows all its digits. */
const MORE = 3;
const SIGNIFICANT = 4;

const significant = (value: number): string => {
  const text = value.toPrecision(SIGNIFICANT);
  return /e/.test(text) ? Number(text).toExponential() : text;
};

/** Rounds to `decimals`; to four significant digits if `decimals` would leave fewer than three. */
function rounded(value: number, decimals: number | undefined): string {
  if (decimals === undefined || (value !== 0 && Math.abs(value) < 10 ** (2 - decimals))) return significant(value);
  return value.toFixed(decimals);
}

/** A number as put into a formula: all its digits if it was typed with few, rounded if it was calculated. */
function putIn(value: number, decimals: number | undefined): string {
  const least = decimals ?? 0;
  for (let more = least; more <= least + MORE; more++)
    if (Math.abs(Number(value.toFixed(more)) - value) <= 1e-12 * Math.abs(value)) return value.toFixed(more);
  return rounded(value, decimals);
}

/** A force given in a unit of mass is the weight of that mass. */
const lettered = (unit: string): string => (unit === "kg" ? "kgf" : unit);

/** A reading to so many decimals, without zeros at its end. */
const readingIn = (value: number, decimals: number): string => String(Number(value.toFixed(decimals)));

export interface Working {
  /** "(H - H_s) / H_s" with every symbol replaced by its number. */
  readonly numbers: string;
  readonly result: number;
  readonly unit: string;
  /** The whole line. */
  readonly text: string;
}

const unitOf = (measures: Measured, units: Units): string => units[measures] ?? ownUnit(measures);

/** The default of an argument in the units given; the formula states it in its own unit. */
export const fallbackIn = ({ measures, fallback }: Argument, units: Units): number | undefined =>
  measures && fallback !== undefined
    ? convertMeasured(fallback, measures, ownUnit(measures), unitOf(measures, units))
    : fallback;

/**
 * Puts numbers into a formula, in the units given; where none is given, in that of the formula. The numbers of a
 * result without a unit are shown without units, unless a unit was named. `decimalsOfReadings`: to how many decimals readings are shown. Refuses what
 * the reduction refuses.
 */
export function working(
  formula: Formula,
  values: readonly number[],
  units: Units,
  decimalsOfReadings = RATIO_DECIMALS,
): Outcome<Working> {
  const base = formula.arguments.map(({ measures }, index) => {
    const value = nth(values, index);
    return measures ? convertMeasured(value, measures, unitOf(measures, units), ownUnit(measures)) : value;
  });
  return then(formula.compute(...base), (value) => {
    const { result: measures, decimals, symbol, expression } = formula;
    const bare = !measures && Object.keys(units).length === 0;
    const unit = measures ? unitOf(measures, units) : "";
    const result = measures ? convertMeasured(value, measures, ownUnit(measures), unit) : value;

    const shown = new Map<string, { number: string; unit: string }>();
    formula.arguments.forEach((argument, index) => {
      const own = argument.measures ? unitOf(argument.measures, units) : "";
      const digits = argument.measures ? DECIMALS[own] : RATIO_DECIMALS;
      const value = nth(values, index);
      const number = argument.whole ? readingIn(value, decimalsOfReadings) : putIn(value, digits);
      shown.set(argument.symbol, { number, unit: bare ? "" : lettered(own) });
    });
    formula.constants?.forEach((constant: Constant) =>
      shown.set(constant.symbol, { number: String(constant.value), unit: constant.unit ?? "" }),
    );

    const numbers = expression.replace(/[A-Za-z_]\w*/g, (name, at: number) => {
      const put = shown.get(name);
      if (!put) return name;
      const text = put.unit ? `${put.number} ${put.unit}` : put.number;
      const before = expression.slice(0, at).trimEnd().slice(-1);
      const after = expression.slice(at + name.length).trimStart()[0];
      const held = before === "(" && after === ")";
      const loose = put.unit && (before === "/" || after === "^" || put.unit.includes("/"));
      return !held && (loose || put.number.startsWith("-")) ? `(${text})` : text;
    });
    // Of readings alone, the result is a reading.
    const answer = formula.arguments.every(({ whole }) => whole)
      ? readingIn(result, decimalsOfReadings)
      : rounded(result, measures ? DECIMALS[unit] : (decimals ?? RATIO_DECIMALS));
    const text = `${symbol} = ${expression} = ${numbers} = ${answer}${unit && ` ${unit}`}`;
    return given({ numbers, result, unit, text });
  });
}

/** A number with decimals, a unit that another language writes in another way, or a symbol whose index is a word: "M_wet". */
const WORDED = /\d+\.\d+|[a-z]+2?\/(?:yr|day)|M_[a-z]{3,}/g;

/**
 * The line of a formula as a message: its numbers are shown with the decimal sign of the language, a unit as the sheet
 * writes it, and a symbol such as M_wet with the index of the language; the rest is the same in every language.
 */
export const inNumbers = (text: string): Message => ({
  said: text.split(WORDED),
  values: (text.match(WORDED) ?? []).map((part): Value =>
    /^\d/.test(part) ? { digits: part } : /_/.test(part) ? say([part]) : listWord(part),
  ),
});
