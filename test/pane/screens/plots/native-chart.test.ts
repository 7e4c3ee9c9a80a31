import { readRecord } from "../../../../src/record/record";
import { speakOfSheet } from "../../../../src/pane/live/sheet-language";
import { DEFAULT_CHOICES } from "../../../../src/pane/screens/plots/range-drawing";
import { chartOfRange, chartOfSheet } from "../../../../src/pane/screens/plots/native-chart";
import { drawSheet, SHEET_CHOICES } from "../../../../src/pane/screens/plots/sheet-drawing";
import { rangeOf } from "../../../../src/pane/screens/plots/selected-range";
import { logTimePlot } from "../../../../src/plots/time";
import type { Outcome } from "../../../../src/reduction/outcome";
import type { CellValue, SheetName, SheetPlan } from "../../../../src/workbook/port";
import { timeCurve } from "../../../plots/curves";
import { inputsOfDemo } from "./plot-sheets";
import { english } from "../../../../src/reduction/message";
import { inEnglish } from "../../../in-english";

const valueOf = <T>(outcome: Outcome<T>): T => {
  if (!outcome.ok) throw new Error(english(outcome.reason));
  return outcome.value;
};
const formulasOf = ({ cells }: SheetPlan): string => cells.flatMap(({ formula }) => formula ?? []).join("\n");

describe("of a range", () => {
  const spec = valueOf(logTimePlot(timeCurve.times, timeCurve.readings, { readingLabel: "Dial (mm)" }));
  const rows = timeCurve.times.map((time, index): CellValue[] => [time, timeCurve.readings[index]]);
  const last = rows.length + 4;

  test("blocks selected together: the series refer to the cells below the headings, of both blocks", () => {
    const address = `B4:B${last},D4:D${last}`;
    const range = rangeOf({ sheet: "Log", address, values: [["Time (min)", "Dial (mm)"], ...rows] })!;
    const plan = valueOf(chartOfRange(range, 0, 1, DEFAULT_CHOICES, spec));
    const formulas = formulasOf(plan);
    expect(formulas).toContain(`$B$5:$B$${last}`);
    expect(formulas).toContain(`$D$5:$D$${last}`);
    expect(formulas).toContain("CLAY.LOG_TIME_LINES");
    expect(plan.charts).toHaveLength(1);
    expect(plan.charts![0].y).toMatchObject({ label: "Dial (mm)", reversed: true });
    expect(plan.charts![0].x).toMatchObject({ scale: "log", domain: spec.x.domain });
  });

  test("a range of rows is refused, with the remedy", () => {
    const [times, readings] = [0, 1].map((column) => rows.map((row) => row[column]));
    const range = rangeOf({ sheet: "Log", address: "B4:P5", values: [times, readings] })!;
    expect(inEnglish(chartOfRange(range, 0, 1, DEFAULT_CHOICES, spec))).toMatchObject({
      ok: false,
      reason: expect.stringContaining("Select the numbers in columns"),
    });
  });
});

describe("of a data sheet", () => {
  const stresses = inputsOfDemo().load_stress as number[];
  const named: Record<string, CellValue[]> = {
    ...inputsOfDemo(),
    void_ratio_end: stresses.map((stress) => 1.4 - 0.1 * Math.log10(stress)),
    void_ratio_d100: stresses.map((stress) => 1.41 - 0.1 * Math.log10(stress)),
  };
  named.void_ratio_curve = named.void_ratio_end;
  const columns = Object.keys(named);
  const names = columns.map((name, col): SheetName => ({ name, scope: "sheet", place: { row: 9, col, rows: named[name].length, cols: 1 } })); // prettier-ignore
  const values = Object.fromEntries(columns.map((name) => [name, named[name].map((value) => [value])]));
  const record = readRecord(values);
  const data = { sheet: "Test 7", names, values };
  const letters = (name: string): string => {
    const col = columns.indexOf(name);
    return col < 26 ? String.fromCharCode(65 + col) : String.fromCharCode(64 + Math.floor(col / 26), 65 + (col % 26));
  };

  test("points from the curve of the sheet come from its column, others from their own column", () => {
    const formulas = (at: "end" | "d100") => {
      const choices = { ...SHEET_CHOICES, at };
      return formulasOf(valueOf(chartOfSheet(data, record, choices, valueOf(drawSheet(record, choices)))));
    };
    expect(formulas("end")).toContain(`$${letters("void_ratio_curve")}$10`);
    expect(formulas("d100")).toContain(`$${letters("void_ratio_d100")}$10`);
    expect(formulas("d100")).not.toContain(`$${letters("void_ratio_curve")}$10`);
  });

  test("of a German sheet, every text of a chart is German, also of other points and of all loads", () => {
    const choices = { ...SHEET_CHOICES, at: "d100" } as const;
    const drawn = valueOf(drawSheet(record, choices));
    const textsOf = ({ name, charts }: SheetPlan) =>
      charts!.flatMap(({ title, x, y, series }) => [name, title, x.label, y.label, ...series.map((one) => one.name)]);
    const texts = () => [
      ...textsOf(valueOf(chartOfSheet(data, record, choices, drawn))),
      ...textsOf(valueOf(chartOfSheet(data, record, { ...SHEET_CHOICES, plot: "all" }, undefined))),
    ];
    const before = texts();
    speakOfSheet("de");
    const german = texts();
    speakOfSheet("en");
    expect(german).toHaveLength(before.length);
    // Symbols are the same in both languages.
    const left = german.filter((text, index) => text === before[index] && !/^(σ′p|[dt]\d+)$/.test(text));
    expect(left).toEqual([]);
  });

  test("the chart shows the load that is drawn, on the chosen axis", () => {
    const choices = { ...SHEET_CHOICES, plot: "time", axis: "root", load: 5 } as const;
    const formulas = formulasOf(valueOf(chartOfSheet(data, record, choices, undefined)));
    expect(formulas).toContain(`$${letters("readings_05")}$10`);
    expect(formulas).toContain("CLAY.ROOT_TIME_LINES");
    expect(formulas).not.toContain(`$${letters("readings_06")}$10`);
  });

  test("columns that the sheet does not have are named", () => {
    const choices = { ...SHEET_CHOICES, at: "d100" } as const;
    const fewer = { ...data, names: names.filter(({ name }) => name !== "void_ratio_d100") };
    expect(inEnglish(chartOfSheet(fewer, record, choices, valueOf(drawSheet(record, choices))))).toMatchObject({
      ok: false,
      reason: expect.stringContaining("void_ratio_d100"),
    });
  });
});
