/** Functions that define the fields of the form: texts, dates, number inputs and results. */
import type { Field } from "./field";
import type { Measure } from "./measures";

export const text = (name: string, label: string, note?: string, choices?: readonly string[]): Field => ({
  name,
  label,
  measure: "text",
  kind: "input",
  note,
  choices,
});

export const date = (name: string, label: string): Field => ({ name, label, measure: "date", kind: "input" });

export const input = (
  name: string,
  label: string,
  measure: Measure,
  note: string,
  more: Pick<Field, "choices" | "value" | "limits"> = {},
): Field => ({ name, label, measure, kind: "input", note, ...more });

export const result = (name: string, label: string, measure: Measure, formula: string, note: string): Field => ({
  name,
  label,
  measure,
  kind: "result",
  formula,
  note,
});

/**
 * Turns rows of fields into panels that stand side by side. The rows follow the order of the work and of the Tab key.
 */
export const panels = (...rows: readonly (readonly Field[])[]): readonly (readonly Field[])[] =>
  [0, 1, 2].map((panel) => rows.flatMap((row) => row[panel] ?? []));
