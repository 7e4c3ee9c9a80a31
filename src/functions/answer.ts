/** Lays an Outcome out for the sheet, or throws the error that the cell shows. */
import type { ConstructionLine } from "../reduction/construction";
import { joined, say, verbatim, type Message } from "../reduction/message";
import { LANGUAGE_TAGS } from "../record/cell-rows";
import { told } from "../record/told";
import { firstOf, nth } from "../reduction/numeric/lists";
import { badInput, type Outcome, type Refusal } from "../reduction/outcome";
import { asText, CellError, isNoWord, languageAsked, means, toChoice } from "./cells";

/** One line of a spilled answer: its label (also the word for `item`), value, and unit or basis. */
export interface Item {
  readonly label: string;
  readonly value: number | Message | undefined;
  readonly unit: string | Message;
  /** Why there is no value, if `value` is undefined: a formula that asks for this item alone shows the refusal. */
  readonly missing?: Refusal | undefined;
}

/** A line of an answer. `missing` says why there is no value, if there is none: "cv needs the height". */
export const line = (label: string, value: Item["value"], unit: Item["unit"] = "", missing?: Refusal): Item => ({
  label,
  value,
  unit,
  missing,
});

/** The value of an outcome; a refusal becomes #VALUE! (input) or #N/A (method) with its reason. */
export function valueOf<T>(outcome: Outcome<T>): T {
  if (outcome.ok) return outcome.value;
  throw new CellError(outcome.fault === "input" ? "#VALUE!" : "#N/A", outcome.reason);
}

/**
 * The line of one value that has its own outcome. A refusal leaves the line blank; a formula that asks for the item
 * alone shows the reason.
 */
export const itemOf = (label: string, outcome: Outcome<number>, unit: Item["unit"]): Item =>
  outcome.ok ? line(label, outcome.value, unit) : line(label, undefined, unit, outcome);

/** What a cell of remarks shows: "ok", or the remarks one after another. */
const remarkOf = (remarks: readonly Message[]): Message => (remarks.length > 0 ? joined(remarks) : say`ok`);

/** A cell of remarks in the language with this tag. */
export const remarkIn = (language: string, remarks: readonly Message[]): string => told(remarkOf(remarks), language);

/** The remarks of an outcome; a refusal has none. */
export const remarksOf = <T>(outcome: Outcome<T>): readonly Message[] => (outcome.ok ? outcome.remarks : []);

/** A text in the language with this tag: a label, a unit or a basis. */
const textIn = (text: string | Message, language: string): string =>
  told(typeof text === "object" ? text : say([text]), language);

/** Whether the whole table is asked for: there is no item, or it names a language. "Deutsch" is the German word for "English". */
export const isTable = (item: unknown): boolean => isNoWord(item) || means(item, "english");

/** The label of which the item is the text in some language, as the whole table in that language shows it. */
const labelElsewhere = (labels: readonly string[], item: unknown): string | undefined =>
  labels.find((label) => LANGUAGE_TAGS.some((tag) => textIn(label, tag).toLowerCase() === asText(item).toLowerCase()));

/**
 * The whole table (label, value, unit; the last row is `remark`), or the one item that was asked for, as an array of
 * one cell: a function that may spill is declared `any[][]`, and Excel then always expects an array. In the table a
 * missing value is blank; an item asked for alone is an error with the reason: #N/A if the method does not apply,
 * otherwise #VALUE!. Texts are in the language of the word that asks for the item, or for the refusal; the labels and
 * units of the table are English unless the item is the name of another language, such as "Deutsch".
 */
export function answer(items: readonly Item[], remarks: readonly Message[], item: unknown, refusal?: unknown): any[][] {
  const language = languageAsked(item, refusal);
  const shown = (value: Item["value"]) => (typeof value === "object" ? told(value, language) : value);
  const all = [...items, line("remark", remarkOf(remarks))];
  const ofTable = languageAsked(item);
  if (isTable(item))
    return all.map(({ label, value, unit }) => [textIn(label, ofTable), shown(value) ?? "", textIn(unit, ofTable)]);
  const labels = all.map(({ label }) => label);
  const wanted = labelElsewhere(labels, item) ?? toChoice(item, say`the item`, labels, firstOf(labels));
  const found = nth(all, labels.indexOf(wanted));
  return [[shown(found.value) ?? valueOf(found.missing ?? badInput(say`${verbatim(wanted)} is not available`))]];
}

/** A line with its label, as a text or as a message. */
type Labelled = Pick<ConstructionLine, "points"> & { readonly label: string | Message };

/** The points of lines, each in a row with the label of its line in the language that is asked for. */
export const rowsOfLines = (lines: readonly Labelled[], language: unknown): any[][] =>
  lines.flatMap(({ label, points }) => {
    const own = textIn(label, languageAsked(language));
    return points.map(([x, y]) => [own, x, y]);
  });

/** A list of numbers as a column. */
export const column = (values: readonly number[]): number[][] => values.map((value) => [value]);

/** Lays a list out like the range it came from, a row for a row and otherwise a column; a missing value is blank. */
export function inShapeOf(range: unknown, values: readonly (number | null)[]): (number | string)[][] {
  const cells = values.map((value) => value ?? "");
  const rows = Array.isArray(range) && Array.isArray(range[0]) ? range.length : 1;
  return rows === 1 ? [cells] : cells.map((cell) => [cell]);
}

/**
 * What `lay` gives. If "words" are asked for, a refusal is told and not thrown: the table has the row `remark` with the
 * reason, and the other rows are blank; an item asked for alone is blank, and the remark is the reason. The reason is in
 * the language of these words.
 */
export function toldOrThrown(
  refusal: unknown,
  { item, rows = [] }: { readonly item?: unknown; readonly rows?: readonly string[] },
  lay: () => any[][],
): any[][] {
  if (toChoice(refusal, say`the refusal`, ["error", "words"], "error") === "error") return lay();
  try {
    return lay();
  } catch (error) {
    if (!(error instanceof CellError)) throw error;
    const reason = told(error.reason, languageAsked(item, refusal));
    return isTable(item)
      ? [...rows, "remark"].map((label) => [textIn(label, languageAsked(item)), label === "remark" ? reason : "", ""])
      : [[means(item, "remark") ? reason : ""]];
  }
}
