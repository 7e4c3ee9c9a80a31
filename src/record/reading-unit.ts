/** The unit of the readings of a sheet: divisions of a dial, or lengths where one division is one unit of length. */
import { convert } from "../reduction/units";
import type { TestRecord } from "./record";

/**
 * The unit of length that the readings were typed in; undefined for divisions of a dial. A dial factor of 1 means that the
 * readings are lengths in the unit of the sheet: no dial has divisions of a whole millimetre or inch.
 */
export function lengthOfReadings({ numbers, words }: Pick<TestRecord, "numbers" | "words">): string | undefined {
  const { dial_factor: factor } = numbers;
  const unit = words.length_unit ?? "mm";
  // The record has the factor in mm, and a factor of 1 in may come back with an error of rounding.
  return factor !== undefined && Math.abs(convert(factor, "length", "mm", unit) - 1) < 1e-9 ? unit : undefined;
}
