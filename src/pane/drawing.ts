/** From a selected range and what the user chose to a plot and the numbers reduced from it. */
import { given, then, type Outcome } from "../reduction/outcome";
import { UNITS, type UnitOf } from "../reduction/units";
import type { Drainage } from "../reduction/increment/cv";
import type { Kind } from "../reduction/curve/points";
import { compressionPlot } from "../plots/compression";
import type { PlotSpec } from "../plots/spec";
import { logTimePlot, rootTimePlot } from "../plots/time";
import { pairOf, type Range } from "./selected-range";

/** Readings against the log or the root of time, or void ratio or strain against log stress. */
export type PlotKind = "log" | "root" | Kind;

export const isTimeCurve = (plot: PlotKind): boolean => plot === "log" || plot === "root";

export interface Choices {
  readonly plot: PlotKind;
  /** Specimen height at mid-increment, in `lengthUnit`, for cv. */
  readonly height?: number;
  readonly lengthUnit: "mm" | "cm" | "in";
  readonly drainage: Drainage;
  readonly cvUnit: UnitOf<"cv">;
  readonly stressUnit: UnitOf<"stress">;
}

export const DEFAULT_CHOICES: Choices = {
  plot: "log",
  lengthUnit: "mm",
  drainage: "double",
  cvUnit: "m2/yr",
  stressUnit: "kPa",
};

export interface NumberRow {
  readonly name: string;
  readonly value: string;
  readonly unit: string;
}

export interface Drawn {
  readonly spec: PlotSpec;
  readonly numbers: readonly NumberRow[];
  readonly remark: string;
  /** Why the method gives no number for these readings, where it does not. */
  readonly refused?: string;
}

/** The plot that the headings ask for, given the one drawn before; the same one where they say nothing. */
export function guessPlot({ lines }: Range, before: PlotKind): PlotKind {
  const [first, ...others] = lines.map(({ heading }) => heading);
  if (/stress|pressure|σ|sigma/i.test(first)) {
    if (/strain|%/i.test(others.join(" "))) return "strain";
    return /void/i.test(others.join(" ")) || isTimeCurve(before) ? "e" : before;
  }
  return /time|\bmin/i.test(first) && !isTimeCurve(before) ? "log" : before;
}

/** The unit of stress, or of length, that a heading names in brackets or after a comma. */
export function guessUnit({ lines }: Range): Partial<Pick<Choices, "stressUnit" | "lengthUnit">> {
  const words = (heading: string): string[] => heading.split(/[\s,()[\]]+/);
  const stressUnit = words(lines[0].heading).find((word) => word in UNITS.stress);
  const lengthUnit = words(lines[1].heading).find((word) => ["mm", "cm", "in"].includes(word));
  return {
    ...(stressUnit && { stressUnit: stressUnit as Choices["stressUnit"] }),
    ...(lengthUnit && { lengthUnit: lengthUnit as Choices["lengthUnit"] }),
  };
}

export function drawRange(range: Range, first: number, second: number, choices: Choices): Outcome<Drawn> {
  return then(pairOf(range, first, second), ({ first: x, second: y }) => {
    const { plot, stressUnit } = choices;
    const heading = range.lines[second].heading;
    const options = { readingLabel: heading || `Reading (${choices.lengthUnit})` };
    const drawn =
      plot === "e" || plot === "strain"
        ? compressionPlot(x, y, plot, { stressUnit })
        : (plot === "log" ? logTimePlot : rootTimePlot)(x, y, options);
    return then(drawn, (spec) => given<Drawn>({ spec, numbers: [], remark: "" }));
  });
}
