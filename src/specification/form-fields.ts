/** How the fields of the form are written down: texts, dates, numbers to type, results. */
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

/** Fields given row by row, as the work goes and the Tab key follows it, as the panels that stand side by side. */
export const panels = (...rows: readonly (readonly Field[])[]): readonly (readonly Field[])[] =>
  [0, 1, 2].map((panel) => rows.flatMap((row) => row[panel] ?? []));
