/** Makes a plot, and the reduced numbers, from a selected range and the choices of the person. */
import { nth } from "../../../reduction/numeric/lists";
import { given, then, type Outcome } from "../../../reduction/outcome";
import { convert, unitNamed, unitsOf, type UnitOf } from "../../../reduction/units";
import { coefficientOfConsolidation, remarksOnCv, T50, T90, type Drainage } from "../../../reduction/increment/cv";
import { decimalsOfLevels } from "../../../reduction/increment/level-decimals";
import { reduceIncrement, type Increment } from "../../../reduction/increment/reduce";
import { say, verbatim, type Message } from "../../../reduction/message";
import { compressionIndex, recompressionIndex, swellingIndex } from "../../../reduction/curve/indices";
import { testCurve, type Kind, type TestCurve } from "../../../reduction/curve/shape/points";
import { preconsolidation, type Preconsolidation } from "../../../reduction/curve/preconsolidation";
import type { MethodName } from "../../../reduction/curve/method-words";
import { compressionPlot } from "../../../plots/compression";
import type { PlotSpec } from "../../../plots/spec";
import { logTimePlot, rootTimePlot } from "../../../plots/time";
import { inWords } from "../../text/messages";
import { isClock, namedBy } from "./heading-words";
import { pairOf, unitOf, type Range } from "./selected-range";

/** Readings against the log or the root of time; or void ratio or strain against log stress. */
export type PlotKind = "log" | "root" | Kind;

export const isTimeCurve = (plot: PlotKind): plot is Exclude<PlotKind, Kind> => plot === "log" || plot === "root";

export const LENGTH_UNITS = ["mm", "cm", "in"] as const;

export interface Choices {
  readonly plot: PlotKind;
  /** The height of the specimen at mid-increment in `lengthUnit`, for cv. */
  readonly height?: number;
  readonly lengthUnit: (typeof LENGTH_UNITS)[number];
  readonly drainage: Drainage;
  readonly cvUnit: UnitOf<"cv">;
  readonly stressUnit: UnitOf<"stress">;
  /** The method whose construction of the preconsolidation stress is drawn. */
  readonly method: MethodName;
}

export const DEFAULT_CHOICES: Choices = {
  plot: "log",
  lengthUnit: "mm",
  drainage: "double",
  cvUnit: "m2/yr",
  stressUnit: "kPa",
  method: "casagrande",
};

export interface NumberRow {
  readonly name: string;
  readonly value: string;
  readonly unit: string;
}

export interface Drawn {
  readonly spec: PlotSpec;
  readonly numbers: readonly NumberRow[];
  /** The remarks of the construction on its numbers; missing if the construction refuses. */
  readonly remarks?: readonly Message[];
}

/** The plot that fits the headings; if the headings do not tell, it is the plot drawn before. */
export function guessPlot({ lines }: Range, before: PlotKind): PlotKind {
  const found = new Set(lines.map(({ heading }) => namedBy(heading)));
  const ofTime = isTimeCurve(before) ? before : "log";
  if (found.has("stress")) {
    if (found.has("e")) return found.has("strain") && before === "strain" ? "strain" : "e";
    if (found.has("strain")) return "strain";
    // The table of a load may repeat its stress beside the readings.
    if (found.has("time") && found.has("reading")) return ofTime;
    return isTimeCurve(before) ? "e" : before;
  }
  return found.has("time") ? ofTime : before;
}

/**
 * The two lines to start with: the lines whose headings fit (the last fitting one for the curve, and a time since loading
 * rather than a clock time), otherwise the first two.
 */
export function guessLines({ lines }: Range, plot: PlotKind): readonly [number, number] {
  const named = lines.map(({ heading }) => namedBy(heading));
  const ofTime = isTimeCurve(plot);
  const elapsed = lines.findIndex(({ heading }, i) => named[i] === "time" && !isClock(heading));
  const first = Math.max(0, ofTime && elapsed >= 0 ? elapsed : named.indexOf(ofTime ? "time" : "stress"));
  const behind = first + 1 < lines.length ? first + 1 : 0;
  if (!ofTime) {
    const last = named.lastIndexOf(plot);
    return [first, last >= 0 && last !== first ? last : behind];
  }
  const after = named.indexOf("reading", first + 1);
  const second = after >= 0 ? after : named.indexOf("reading");
  return [first, second >= 0 && second !== first ? second : behind];
}

/** The units of stress and length in the headings of two lines. */
export function guessUnits(first: string, second: string): Partial<Pick<Choices, "stressUnit" | "lengthUnit">> {
  const known = <U extends string>(heading: string, units: readonly U[]): U | undefined => {
    const name = unitNamed(unitOf(heading) ?? "", units);
    return units.find((unit) => unit === name);
  };
  const stressUnit = known(first, unitsOf("stress"));
  const lengthUnit = known(second, LENGTH_UNITS);
  return { ...(stressUnit && { stressUnit }), ...(lengthUnit && { lengthUnit }) };
}

/** The digits of a value with three or four significant figures, as is usual in a reduction. */
function shown(value: number): string {
  const size = Math.abs(value);
  if (size !== 0 && (size < 1e-4 || size >= 1e6)) return value.toExponential(2);
  return value.toFixed(Math.max(0, Math.min(5, 3 - Math.floor(Math.log10(size || 1)))));
}

const row = (name: string, value: number, unit: string): NumberRow => ({ name, value: shown(value), unit });

/** The levels and times of the construction, and cv if the height is known; no rows if the method refuses. */
function timeRows(
  { cleaned, logTime, rootTime }: Increment,
  plot: "log" | "root",
  readingUnit: string,
  { height, lengthUnit, drainage, cvUnit }: Choices,
): Pick<Drawn, "numbers" | "remarks"> {
  const decimals = decimalsOfLevels(cleaned);
  /** A level has the decimals of the readings and one more. */
  const level = (name: string, value: number): NumberRow =>
    decimals === undefined
      ? row(name, value, readingUnit)
      : { name, value: value.toFixed(decimals), unit: readingUnit };
  const cv = (T: number, time: number): Required<Pick<Drawn, "numbers" | "remarks">> => {
    if (height === undefined) return { numbers: [], remarks: [] };
    const found = coefficientOfConsolidation(T, time, convert(height, "length", lengthUnit, "mm"), drainage);
    return {
      numbers: [row("cv", convert(found, "cv", "mm2/min", cvUnit), cvUnit)],
      remarks: remarksOnCv(convert(found, "cv", "mm2/min", "m2/yr")),
    };
  };
  if (plot === "log") {
    if (!logTime.ok) return { numbers: [] };
    const { d0, d50, d100, t50, t100, tailSlope } = logTime.value;
    const ofCv = cv(T50, t50);
    return {
      numbers: [
        ...[level("d0", d0), level("d50", d50), level("d100", d100), row("t50", t50, "min"), row("t100", t100, "min")],
        ...ofCv.numbers,
        ...(tailSlope === undefined
          ? []
          : [row(inWords(say`tail slope`), tailSlope, inWords(say`${verbatim(readingUnit)}/cycle`))]),
      ],
      remarks: [...logTime.remarks, ...ofCv.remarks],
    };
  }
  if (!rootTime.ok) return { numbers: [] };
  const { d0, d90, d100, t90 } = rootTime.value;
  const ofCv = cv(T90, t90);
  return {
    numbers: [level("d0", d0), level("d90", d90), level("d100", d100), row("t90", t90, "min"), ...ofCv.numbers],
    remarks: [...rootTime.remarks, ...ofCv.remarks],
  };
}

/** The preconsolidation stress with its interval, and the indices of the test. */
function curveRows(test: TestCurve, reading: Outcome<Preconsolidation>, stressUnit: string): NumberRow[] {
  const rows: NumberRow[] = [];
  const add = (name: string, value: number, unit: string): unknown => rows.push(row(name, value, unit));
  if (reading.ok) {
    add("σ′p", reading.value.stress, stressUnit);
    add(inWords(say`σ′p, low`), reading.value.low, stressUnit);
    add(inWords(say`σ′p, high`), reading.value.high, stressUnit);
  }
  const [compression, recompression, swelling] =
    test.kind === "e" ? ["Cc", "Cr", "Cs"] : ["Cc / (1 + e0)", "Cr / (1 + e0)", "Cs / (1 + e0)"];
  for (const [name, index] of [
    [compression, compressionIndex(test)],
    [recompression, recompressionIndex(test)],
    [swelling, swellingIndex(test)],
  ] as const)
    if (index.ok) add(name, index.value.value, inWords(say`per log cycle`));
  return rows;
}

/** Draws and reduces two lines of a range by the choices of the person. */
export function drawRange(range: Range, first: number, second: number, choices: Choices): Outcome<Drawn> {
  return then(pairOf(range, first, second), ({ first: x, second: y }) => {
    const { plot, lengthUnit, stressUnit, method } = choices;
    if (plot === "e" || plot === "strain")
      return then(testCurve(x, y, plot), (test) => {
        const yieldReading = preconsolidation(test, { method });
        return then(compressionPlot(x, y, plot, { stressUnit, method, yieldReading, inWords }), (spec) =>
          given({
            spec,
            numbers: curveRows(test, yieldReading, stressUnit),
            remarks: yieldReading.ok ? spec.remarks : undefined,
          }),
        );
      });
    const { heading } = nth(range.lines, second);
    // Levels have the unit of the readings, even if the height has another unit.
    const readingUnit = unitOf(heading) ?? lengthUnit;
    const readingLabel = heading || inWords(say`Reading (${verbatim(readingUnit)})`);
    const increment = reduceIncrement(x, y);
    const draw = plot === "log" ? logTimePlot : rootTimePlot;
    return then(draw(x, y, { readingLabel, increment, inWords }), (spec) =>
      given({ spec, ...timeRows(increment, plot, readingUnit, choices) }),
    );
  });
}
