import {
  DEFAULT_CHOICES,
  drawRange,
  guessLines,
  guessPlot,
  guessUnits,
  type Choices,
} from "../../../../src/pane/screens/plots/range-drawing";
import { rangeOf, type Range } from "../../../../src/pane/screens/plots/selected-range";
import { LOG_TIME, ROOT_TIME } from "../../../../src/functions/increment";
import type { CellValue } from "../../../../src/workbook/port";
import { compressionCurve, timeCurve } from "../../../plots/curves";
import { english } from "../../../../src/reduction/message";
import { remarkIn } from "../../../../src/functions/answer";

const range = (headings: string[], ...columns: number[][]): Range => {
  const rows: CellValue[][] = columns[0].map((_, row) => columns.map((column) => column[row]));
  const found = rangeOf({ sheet: "Test", address: "A1:Z99", values: [headings, ...rows] });
  if (!found) throw new Error("no range");
  return found;
};
const { times, readings } = timeCurve;
const { stresses, voidRatios } = compressionCurve;

const drawn = (of: Range, choices: Partial<Choices>, first = 0, second = 1) => {
  const outcome = drawRange(of, first, second, { ...DEFAULT_CHOICES, ...choices });
  if (!outcome.ok) throw new Error(english(outcome.reason));
  return outcome.value;
};
const number = (of: ReturnType<typeof drawn>, name: string): number =>
  Number(of.numbers.find((row) => row.name === name)?.value);

describe("the meaning of headings", () => {
  const plotFor = (...headings: string[]) => guessPlot(range(headings, ...headings.map(() => [1, 2])), "log");
  test.each([
    [["Time (min)", "Dial"], "log"],
    [["Stress (kPa)", "Void ratio"], "e"],
    [["Stress (kPa)", "Strain"], "strain"],
    [["σ'v", "e"], "e"],
    [["a", "b"], "log"],
    [["Spannung (kN/m²)", "Porenzahl"], "e"],
    [["Spannung (kPa)", "Stauchung (-)"], "strain"],
    [["p' (kPa)", "e (-)"], "e"],
    [["sigma'v, kPa", "ΔH (mm)", "ε (%)"], "strain"],
    [["Load (kPa)", "e", "w (%)"], "e"],
    [["Laststufe", "Spannung", "Setzung (mm)", "Porenzahl"], "e"],
    [["t (min)", "Stress (kPa)", "Dial (div)"], "log"],
    [["Zeit in min", "Ablesung"], "log"],
  ])("%j", (headings, plot) => expect(plotFor(...headings)).toBe(plot));

  test.each([
    [["Zeit (min)", "Ablesung (mm)"], "log", [0, 1]],
    [["Datum", "Uhrzeit", "Zeit [min]", "Spannung", "Setzung [mm]"], "root", [2, 4]],
    [["t (min)", "√t", "dial", "ΔH"], "log", [0, 2]],
    [["Dial (div)", "t, min"], "log", [1, 0]],
    [["Clock time", "Messuhr"], "log", [0, 1]],
    [["Last", "cv (mm2/min)", "t (min)", "s (mm)"], "log", [2, 3]],
    [["cv", "s'v (kPa)", "s (mm)", "e"], "e", [1, 3]],
    [["Laststufe", "σ' (kPa)", "Setzung (mm)", "Stauchung", "Porenzahl"], "e", [1, 4]],
    [["e", "p' (kPa)"], "e", [1, 0]],
    [["Laststufe", "Druck in kN/m2", "bezogene Setzung (%)"], "strain", [1, 2]],
    [["No.", "sigma'v", "strain"], "strain", [1, 2]],
  ] as const)("%j in the plot %s: lines %j", (headings, plot, lines) => {
    const numbers = headings.map((_, column) => [1 + column, 2 + column]);
    expect(guessLines(range([...headings], ...numbers), plot)).toEqual(lines);
  });

  test("a time curve stays in the plot that was chosen for it", () => {
    expect(guessPlot(range(["Time", "Dial"], [0, 1], [1, 2]), "root")).toBe("root");
    expect(guessPlot(range(["Time", "Dial"], [0, 1], [1, 2]), "e")).toBe("log");
  });

  test("of a whole table, the column of stress and the last column of the kind drawn are taken", () => {
    const table = range(
      ["Load", "Stress", "Strain", "Void ratio at end", "Void ratio"],
      [1, 2],
      [1, 2],
      [1, 2],
      [1, 2],
      [1, 2],
    );
    expect(guessLines(table, "e")).toEqual([1, 4]);
    expect(guessLines(table, "strain")).toEqual([1, 2]);
    expect(guessLines(range(["a", "b", "c"], [1, 2], [1, 2], [1, 2]), "e")).toEqual([0, 1]);
  });

  test("units", () => {
    expect(guessUnits("Stress (tsf)", "Strain")).toEqual({ stressUnit: "tsf" });
    expect(guessUnits("Time (min)", "Dial (in)")).toEqual({ lengthUnit: "in" });
    expect(guessUnits("Time (min)", "Dial (div)")).toEqual({});
    expect(guessUnits("Druck in kN/m²", "Porenzahl")).toEqual({ stressUnit: "kN/m2" });
    expect(guessUnits("t (min)", "ΔH [inch]")).toEqual({ lengthUnit: "in" });
  });
});

describe("numbers beside the plot are those of the worksheet functions", () => {
  test.each([
    ["log", LOG_TIME, ["d0", "d50", "d100", "t50", "cv"]],
    ["root", ROOT_TIME, ["d0", "d90", "d100", "t90", "cv"]],
  ] as const)("%s of time", (plot, reduce, names) => {
    const shown = drawn(range(["Time (min)", "Dial (mm)"], times, readings), {
      plot,
      height: 0.75,
      lengthUnit: "in",
      drainage: "single",
      cvUnit: "ft2/day",
    });
    for (const name of names) {
      const [[cell]] = reduce([times], [readings], 0.75, name, "single", "ft2/day", "in");
      expect(number(shown, name) / cell).toBeCloseTo(1, 3);
    }
    const [[remark]] = reduce([times], [readings], 0.75, "remark", "single", "ft2/day", "in");
    expect(remarkIn("en", shown.remarks ?? [])).toBe(remark);
    expect(shown.numbers.find(({ name }) => name === "cv")?.unit).toBe("ft2/day");
    expect(shown.numbers.find(({ name }) => name === "d100")?.unit).toBe("mm");
  });

  test("levels have the decimals of the readings and one more, however large the readings are", () => {
    // The readings in whole divisions of 0.0001 of their unit, as a dial that stands beyond 12000.
    const divisions = readings.map((reading) => 12_000 + Math.round(reading * 10_000));
    for (const plot of ["log", "root"] as const) {
      const { numbers } = drawn(range(["Time (min)", "Dial (div)"], times, divisions), { plot });
      const levels = numbers.filter(({ name }) => /^d\d/.test(name));
      expect(levels).toHaveLength(3);
      for (const { value } of levels) expect(value).toMatch(/^\d{5}\.\d$/);
    }
  });

  test("cv needs the height", () => {
    expect(number(drawn(range(["", ""], times, readings), {}), "cv")).toBeNaN();
  });

  test("a whole test gives the yield stress within its interval, and the three indices", () => {
    const shown = drawn(range(["", ""], stresses, voidRatios), { plot: "e", stressUnit: "psf" });
    expect(number(shown, "σ′p, low")).toBeLessThanOrEqual(number(shown, "σ′p"));
    expect(number(shown, "σ′p, high")).toBeGreaterThanOrEqual(number(shown, "σ′p"));
    expect(number(shown, "Cc")).toBeCloseTo((0.818 - 0.534) / Math.log10(1600 / 200), 1);
    expect(number(shown, "Cr")).toBeGreaterThan(0);
    expect(number(shown, "Cs")).toBeGreaterThan(0);
    expect(shown.numbers[0].unit).toBe("psf");
    expect(shown.remarks).toEqual([]);
  });
});

test("the axis of the readings has their heading, or the chosen unit", () => {
  expect(drawn(range(["Time", "Dial (div)"], times, readings), {}).spec.y.label).toBe("Dial (div)");
  expect(drawn(range(["", ""], times, readings), { lengthUnit: "in" }).spec.y.label).toBe("Reading (in)");
});
