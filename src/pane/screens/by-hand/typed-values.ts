/** What a person typed beside the results to compare them with, and how quantities and their values are said. */
import { type Pair, type Quantity } from "../../../book/comparison";
import { labelOnSheet } from "../../live/sheet-language";
import { text } from "../../text";
import { contentText, numberText } from "../../text/number";
import { typedNonZero } from "../../ui/typed-number";

const words = text.byHand;

/** What a person typed for a quantity; the tolerance in percent is missing if it is the usual one. */
export interface Typed {
  readonly key: string;
  readonly byHand: string;
  readonly percent?: string;
}

export const percentOf = (ratio: number): string => contentText(Number((100 * ratio).toPrecision(2)));

/** What a quantity is called on the sheet, with its load. */
export function named({ name, load }: Pick<Quantity, "name" | "load">): string {
  const label = labelOnSheet(name);
  return load === undefined ? label : `${label}, ${words.load(load)}`;
}
export const said = (value: number, { format, unit }: Quantity): string =>
  `${numberText(value, format)} ${unit}`.trim();

/** Whether the sheet shows a quantity in percent. Its value is a ratio. */
export const isInPercent = ({ format = "" }: Pick<Quantity, "format">): boolean => format.includes("%");

/** The value typed for a quantity, and half a unit of its last digit: "53.0 %" is the ratio 0.53, 0.0005 more or less. */
function valueTyped(quantity: Quantity, typed: string): { readonly value: number; readonly half: number } | undefined {
  const [, inPercent] = isInPercent(quantity) ? (/^(.*)%\s*$/.exec(typed) ?? []) : [];
  const number = inPercent ?? typed;
  const value = typedNonZero(number);
  const over = inPercent === undefined ? 1 : 100;
  return value === undefined ? undefined : { value: value / over, half: halfOfLastDigit(number) / over };
}

/** The tolerance that holds unless a person types another one, in words. */
export const usualTolerance = ({ reading, tolerance }: Pick<Quantity, "reading" | "tolerance">): string =>
  reading === "rounding" ? words.readings[reading] : `${words.readings[reading]}: ${percentOf(tolerance)} %`;

/** Half a unit of the last digit of a typed number, so far as it may have been rounded: 0.005 for "0.57", 0.5 for "57". */
function halfOfLastDigit(typed: string): number {
  const [digits = "", power = "0"] = typed.trim().toLowerCase().split("e");
  const decimals = /[.,](\d*)$/.exec(digits)?.[1]?.length ?? 0;
  return 0.5 * 10 ** (Number(power) - decimals);
}

/** Whether a text of a cell was typed as a value: "0.570", "53 %". */
export const isTypedValue = (content: string): boolean =>
  /^[-+]?[.,]?\d[\d.,]*(?:e[-+]?\d+)?\s*%?$/i.test(content.trim());

/** The pair of values in a line; undefined if the line has no value by hand yet. */
export function pairOf(quantity: Quantity, typed: Typed): Pair | undefined {
  const found = valueTyped(quantity, typed.byHand);
  if (found === undefined) return undefined;
  const { value: byHand, half } = found;
  const percent = typed.percent === undefined ? undefined : typedNonZero(typed.percent);
  // A value that is read off a drawing may differ by more than its rounding.
  const rounded = quantity.reading === "rounding" ? half / Math.abs(byHand) : 0;
  const usual = Math.max(quantity.tolerance, rounded);
  const tolerance = percent !== undefined && percent > 0 && percent < 100 ? percent / 100 : usual;
  return { quantity, byHand, tolerance };
}
