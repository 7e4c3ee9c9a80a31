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

/** The value typed for a quantity: "53.0 %" is the ratio 0.53. */
function valueTyped(quantity: Quantity, typed: string): number | undefined {
  const [, inPercent] = isInPercent(quantity) ? (/^(.*)%\s*$/.exec(typed) ?? []) : [];
  const value = typedNonZero(inPercent ?? typed);
  return value !== undefined && inPercent !== undefined ? value / 100 : value;
}

/** The pair of values in a line; undefined if the line has no value by hand yet. */
export function pairOf(quantity: Quantity, typed: Typed): Pair | undefined {
  const byHand = valueTyped(quantity, typed.byHand);
  if (byHand === undefined) return undefined;
  const percent = typed.percent === undefined ? undefined : typedNonZero(typed.percent);
  const tolerance = percent !== undefined && percent > 0 && percent < 100 ? percent / 100 : quantity.tolerance;
  return { quantity, byHand, tolerance };
}
