/** The numbers of a record that a calculation needs, and its stresses in the unit of the sheet. */
import { digits, english, listed, say, verbatim, type Message } from "../../reduction/message";
import { badInput, given, type Outcome } from "../../reduction/outcome";
import { convert } from "../../reduction/units";
import { cellNamed, type LoadRecord, type NumberName, type TestRecord } from "../record";

/** Numbers of the record, or a refusal that names the cells to fill. */
export function inputs<const N extends NumberName>(record: TestRecord, ...names: N[]): Outcome<Record<N, number>> {
  const lacking = names.filter((name) => record.numbers[name] === undefined);
  if (lacking.length) return badInput(say`it needs ${listed(lacking.map(cellNamed))}`);
  // All of these numbers are present.
  return given(record.numbers as Record<N, number>);
}

/** A stress of the record in the unit of the sheet. */
export const inSheetStress = (record: TestRecord, kPa: number): number =>
  convert(kPa, "stress", "kPa", record.words.stress_unit ?? "kPa");

/** A stress in the unit of the sheet, in kPa. */
export const inKpa = (record: TestRecord, stress: number): number =>
  convert(stress, "stress", record.words.stress_unit ?? "kPa", "kPa");

/** A stress in kPa with the unit of the sheet, such as "50 kPa". */
export const stressCalled = (record: TestRecord, stress: number): Message =>
  say`${digits(inSheetStress(record, stress), 4)} ${verbatim(record.words.stress_unit ?? "kPa")}`;

/** The stress of a load with its unit, such as "50 kPa"; "" if the load has no stress. */
export const stressText = (record: TestRecord, { stress }: Pick<LoadRecord, "stress">): string =>
  stress === undefined ? "" : english(stressCalled(record, stress));
