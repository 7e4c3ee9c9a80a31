/** Coefficients of the loads of a test against stress: cv by both time methods, and C alpha. Loading and reloading only. */
import { loadSteps, putsLoadOn, type LoadStep } from "../reduction/curve/loads";
import type { TimeMethod } from "../reduction/increment/constructions/picks";
import { english, listed, listWord, say, verbatim, type Message } from "../reduction/message";
import { badInput, given, type Outcome } from "../reduction/outcome";
import { fromZero, padded, wholeDecades } from "./axes";
import { figures, markSeries, stressLabel, type StressMark } from "./compression";
import type { CoefficientName, PlotAxis, PlotSeries, PlotSpec, SeriesLabel } from "./spec";
import type { Cells } from "./time";
import type { InWords } from "./words";

/**
 * The loads that increase the stress, row by row: undefined if the row has no stress, takes load off, or leaves the
 * stress unchanged.
 */
function loadsPutOn(
  stresses: Cells,
  { before, yieldStress }: Pick<CoefficientPlotOptions, "before" | "yieldStress">,
): (LoadStep | undefined)[] {
  return loadSteps(stresses, { before, preconsolidationStress: yieldStress }).map((step) =>
    step && putsLoadOn(step) ? step : undefined,
  );
}

export interface CoefficientPlotOptions {
  /** "kPa"; the axis says it. */
  readonly stressUnit?: string;
  /** Stress before the first load, for instance the seating stress; 0 if omitted. */
  readonly before?: number;
  /** Preconsolidation stress: a line marks it, and loads below it are recompression. */
  readonly yieldStress?: number;
  /** The language of titles, axes and notes; English if omitted. */
  readonly inWords?: InWords;
}

type Point = readonly [stress: number, value: number];
type At = (load: LoadStep) => number;

/** (from + to) / 2 */
const mean: At = ({ from, to }) => (from + to) / 2;

/**
 * The values of the loads that increase the stress, in symbols of one shape: virgin loads filled, the others open.
 * Without a preconsolidation stress, first loading is filled and reloading open.
 */
function symbols(
  name: CoefficientName,
  shape: PlotSeries["shape"],
  loads: readonly (LoadStep | undefined)[],
  values: Cells,
  at: At,
  yieldStress: number | undefined,
): PlotSeries[] {
  const [kind, virgin, other] =
    yieldStress === undefined
      ? (["first loading", "first loading", "reloading"] as const)
      : (["virgin", "virgin", "not virgin"] as const);
  const points = (filled: boolean): Point[] =>
    loads.flatMap((load, row): Point[] => {
      const value = values[row];
      return load && value != null && value > 0 && (load.kind === kind) === filled ? [[at(load), value]] : [];
    });
  const both: readonly PlotSeries[] = [
    { label: `${name}, ${virgin}`, style: "points", symbol: "filled", shape, points: points(true) },
    { label: `${name}, ${other}`, style: "points", symbol: "open", shape, points: points(false) },
  ];
  return both.filter((series) => series.points.length > 0);
}

/** Values joined from load to load, with a new line after an unloading; a load without a value is skipped. */
function joined(label: SeriesLabel, loads: readonly (LoadStep | undefined)[], values: Cells, at: At): PlotSeries[] {
  let run: Point[] = [];
  const runs = [run];
  loads.forEach((load, row) => {
    const value = values[row];
    if (load && value != null && value > 0) run.push([at(load), value]);
    else if (!load && run.length) runs.push((run = []));
  });
  return runs.filter((points) => points.length > 1).map((points) => ({ label, style: "joined", points }));
}

/** The note on loads that increase the stress and have no value: "No cv by log time under 50, 100 kPa." */
function lacking(name: Message, loads: readonly (LoadStep | undefined)[], values: Cells, unit: string): Message[] {
  const under = loads.flatMap((load, row) => (load && !((values[row] ?? 0) > 0) ? [figures(load.to)] : []));
  return under.length ? [say`No ${name} under ${listed(under.map((digits) => ({ digits })))} ${verbatim(unit)}.`] : [];
}

const yieldMarks = (stress: number | undefined): StressMark[] =>
  stress === undefined ? [] : [{ label: "preconsolidation stress", letters: "σ′p", stress }];

const sorts = (yieldStress: number | undefined): Message =>
  yieldStress === undefined
    ? say`Filled: first loading; open: reloading.`
    : say`Filled: virgin loads, which begin at the greatest stress so far and not below the preconsolidation stress; open: other loads.`;

const NO_LOADS = say`no load that was put on has a value: choose the stresses of all loads, in test order, and the values beside them`;

export interface CvPlotOptions extends CoefficientPlotOptions {
  /** "m2/yr" */
  readonly cvUnit?: string;
  /** The method whose cv is reported, for all loads or row by row: a line joins these values. */
  readonly chosen?: TimeMethod | readonly (TimeMethod | undefined)[];
}

/**
 * cv by log time (circles) and by root time (triangles) against the mean stress of the load, both on log axes of whole
 * decades. Stresses of all loads in test order, unloading included, with cv beside them in one unit; a blank is null.
 * Refuses if no load that increases the stress has a cv.
 */
export function cvPlot(
  stresses: Cells,
  cvLogTime: Cells,
  cvRootTime: Cells,
  options: CvPlotOptions = {},
): Outcome<PlotSpec> {
  const { stressUnit = "kPa", cvUnit = "m2/yr", before, yieldStress, chosen, inWords = english } = options;
  const loads = loadsPutOn(stresses, { before, yieldStress });
  const drawn = [
    ...symbols("log time", "circle", loads, cvLogTime, mean, yieldStress),
    ...symbols("root time", "triangle", loads, cvRootTime, mean, yieldStress),
  ];
  if (drawn.length === 0) return badInput(NO_LOADS);
  const choiceOf = (row: number): TimeMethod | undefined => (typeof chosen === "object" ? chosen[row] : chosen);
  const carried = stresses.map((_, row) => {
    const choice = choiceOf(row);
    return choice === undefined ? null : ((choice === "root time" ? cvRootTime : cvLogTime)[row] ?? null);
  });
  const points = drawn.flatMap((series) => series.points);
  const x: PlotAxis = {
    label: inWords(say`Mean effective vertical stress of the load (${verbatim(stressUnit)}), log scale`),
    scale: "log",
    domain: wholeDecades([...points.map(([stress]) => stress), ...(yieldStress === undefined ? [] : [yieldStress])]),
    reversed: false,
  };
  const y: PlotAxis = {
    label: inWords(say`cv (${listWord(cvUnit)}), log scale`),
    scale: "log",
    domain: wholeDecades(points.map(([, cv]) => cv)),
    reversed: false,
  };
  const line = joined("cv reported", loads, carried, mean);
  return given({
    title: inWords(say`Coefficient of consolidation`),
    x,
    y,
    series: [...markSeries(yieldMarks(yieldStress), y, stressUnit), ...line, ...drawn],
    remarks: [],
    notes: [
      say`Circles: log time; triangles: root time. ${sorts(yieldStress)}`,
      ...(line.length ? [say`The line joins the cv reported.`] : []),
      ...lacking(say`cv by log time`, loads, cvLogTime, stressUnit),
      ...lacking(say`cv by root time`, loads, cvRootTime, stressUnit),
    ].map(inWords),
  });
}

export interface CAlphaPlotOptions extends CoefficientPlotOptions {
  /** Stress on an even axis, as is customary, or on whole decades. */
  readonly stressScale?: "linear" | "log";
  /** Whether C alpha is a change of strain or of void ratio, per log cycle of time; strain if omitted. */
  readonly basis?: "strain" | "e";
}

/**
 * C alpha from zero up, against the stress of the load. Stresses as for `cvPlot`. Refuses if no load that increases the
 * stress has a C alpha.
 */
export function cAlphaPlot(stresses: Cells, cAlphas: Cells, options: CAlphaPlotOptions = {}): Outcome<PlotSpec> {
  const {
    stressUnit = "kPa",
    before,
    yieldStress,
    stressScale = "linear",
    basis = "strain",
    inWords = english,
  } = options;
  const loads = loadsPutOn(stresses, { before, yieldStress });
  const under: At = (load) => load.to;
  const drawn = symbols("C alpha", "circle", loads, cAlphas, under, yieldStress);
  if (drawn.length === 0) return badInput(NO_LOADS);
  const points = drawn.flatMap((series) => series.points);
  const across = [...points.map(([stress]) => stress), ...(yieldStress === undefined ? [] : [yieldStress])];
  const x: PlotAxis = {
    label: inWords(stressLabel(stressUnit, stressScale === "log")),
    scale: stressScale,
    domain: stressScale === "log" ? wholeDecades(across) : fromZero(across),
    reversed: false,
  };
  const y: PlotAxis = {
    label: inWords(basis === "e" ? say`Cα (void ratio per log cycle of time)` : say`Cα (strain per log cycle of time)`),
    scale: "linear",
    domain: [0, padded(points.map(([, value]) => value).concat(0))[1]],
    reversed: false,
  };
  return given({
    title: inWords(say`Secondary compression`),
    x,
    y,
    series: [...markSeries(yieldMarks(yieldStress), y, stressUnit), ...joined("test", loads, cAlphas, under), ...drawn],
    remarks: [],
    notes: [sorts(yieldStress), ...lacking(say`C alpha`, loads, cAlphas, stressUnit)].map(inWords),
  });
}
