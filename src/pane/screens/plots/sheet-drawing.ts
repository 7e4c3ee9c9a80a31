/**
 * Makes a plot from the record of a data sheet and the choices of the person. It shows the sheet's own results in the
 * sheet's units.
 */
import { stressInWords } from "../load-stress";
import { reduced } from "../../../record/reduced-test";
import { initialOf } from "../../../record/reduced/curve";
import { inputs, inSheetStress } from "../../../record/reduced/inputs";
import type { LoadReduced } from "../../../record/reduced/load";
import { dialSense, incrementOfLoad, loadColumn, loadCurve, loadsRead } from "../../../record/load-curve";
import { methodOfLoad, picksOfCurve, type RecordedPick } from "../../../record/picks";
import { lengthOfReadings } from "../../../record/reading-unit";
import type { LoadRecord, TestRecord } from "../../../record/record";
import type { LoadResultName } from "../../../record/names";
import { cAlphaPlot, cvPlot } from "../../../plots/coefficients";
import { compressionPlot, type StressMark } from "../../../plots/compression";
import type { PlotSpec } from "../../../plots/spec";
import { fieldCurvePlot } from "../../../plots/field";
import { swellPlot } from "../../../plots/swell";
import { wettingAt, wettingPlaces, wettingRate, wettingStage, wettingStrains } from "../../../record/wetting";
import { intrinsicPlot } from "../../../plots/intrinsic";
import { logTimePlot, rootTimePlot } from "../../../plots/time";
import { testCurve, type Kind } from "../../../reduction/curve/shape/points";
import { preconsolidation } from "../../../reduction/curve/preconsolidation";
import type { MethodName } from "../../../reduction/curve/method-words";
import { PICK_NAMES, standingRows, type PickName } from "../../../reduction/increment/constructions/picks";
import { asTyped, listed, say, verbatim } from "../../../reduction/message";
import { nth } from "../../../reduction/numeric/lists";
import { badInput, given, then, type Outcome } from "../../../reduction/outcome";
import { convert } from "../../../reduction/units";
import { text } from "../../text";
import { inWords } from "../../text/messages";

export interface SheetChoices {
  readonly plot: "compression" | "field" | "intrinsic" | "time" | "cv" | "cAlpha" | "swell" | "all";
  /** The ordinate of the compression curve; if it is left out, as the sheet says. */
  readonly value?: Kind;
  /** The end of the load or d100, for the points of the compression curve; if it is left out, as the sheet says. */
  readonly at?: "end" | "d100";
  readonly method: MethodName;
  readonly axis: "log" | "root";
  /** The number of the load whose time curve is drawn; if it is left out, the first load with readings. */
  readonly load?: number;
  /** The load of the stage of wetting that is drawn; if it is left out, the stage that the results of the sheet are of. */
  readonly stage?: number;
  readonly stressScale: "linear" | "log";
}

export const SHEET_CHOICES: SheetChoices = {
  plot: "compression",
  method: "casagrande",
  axis: "log",
  stressScale: "linear",
};

/** The points of the curve on the sheet itself. */
export const pointsOf = ({ words }: TestRecord): "end" | "d100" => (words.curve_from === "d100" ? "d100" : "end");

/** What the sheet shows the curve in: void ratio or strain. */
export const kindOf = ({ words }: TestRecord): Kind => (words.curve_shown === "strain" ? "strain" : "e");

/** A number of a load as the sheet shows it, or calculated here if the sheet has no such cell. */
function shownOr(
  record: TestRecord,
  name: LoadResultName,
  again: (load: LoadReduced) => Outcome<number>,
): (number | null)[] {
  return record.loads.map(({ results }, index) => {
    const shown = results[name];
    if (shown !== undefined || !record.missing.includes(name)) return shown ?? null;
    const found = again(nth(reduced(record).loads, index));
    return found.ok ? found.value : null;
  });
}

const stresses = (record: TestRecord): (number | null)[] =>
  record.loads.map(({ stress }) => (stress === undefined ? null : inSheetStress(record, stress)));

const yieldOf = (record: TestRecord): number | undefined => {
  const { preconsolidation_stress: stress } = record.results;
  return stress === undefined ? undefined : inSheetStress(record, stress);
};

const notAt: Outcome<number> = badInput(say`the sheet has no such point`);

function compression(
  record: TestRecord,
  { value = kindOf(record), method, at = pointsOf(record) }: SheetChoices,
): Outcome<PlotSpec> {
  const [endName, primaryName] =
    value === "e" ? (["void_ratio_end", "void_ratio_d100"] as const) : (["strain_end", "strain_d100"] as const);
  const ends = shownOr(record, endName, (load) => (value === "e" ? load.voidRatio : load.strain));
  const primaries = shownOr(record, primaryName, () => notAt);
  const isStandIn = (index: number): boolean => at === "d100" && primaries[index] === null && ends[index] !== null;
  const values = loadColumn(record.loads, (index) => (at === "d100" ? (primaries[index] ?? ends[index]) : ends[index]));
  const inOrder = stresses(record);
  const across = loadColumn(record.loads, (index) => inOrder[index]);
  const stressUnit = record.words.stress_unit;
  const initial = initialOf(record, value);
  return then(testCurve(across, values, value, initial), (test) => {
    const reading = preconsolidation(test, { method, picks: picksOfCurve(record.picks) });
    const { in_situ_stress } = record.numbers;
    const ofSheet = yieldOf(record);
    const isDrawn = reading.ok && ofSheet !== undefined && Math.abs(reading.value.stress / ofSheet - 1) < 0.005;
    const marks: StressMark[] = [
      ...(in_situ_stress === undefined
        ? []
        : [{ label: "in-situ stress" as const, letters: "σ′v0", stress: inSheetStress(record, in_situ_stress) }]),
      ...(ofSheet === undefined || isDrawn
        ? []
        : [
            {
              label: "preconsolidation stress of the sheet" as const,
              letters: inWords(say`σ′p of the sheet`),
              stress: ofSheet,
            },
          ]),
    ];
    return then(
      compressionPlot(across, values, value, { stressUnit, method, yieldReading: reading, marks, initial, inWords }),
      (spec) => {
        const standIns = record.loads.filter((_, index) => isStandIn(index)).map(({ number }) => number);
        const note =
          at !== "d100"
            ? say`Points at the end of each load.`
            : standIns.length === 0
              ? say`Points at d100 of each load.`
              : say`Points at d100 of each load; at the end of load ${listed(standIns)}, which has no d100.`;
        return given({ ...spec, notes: [inWords(note), ...spec.notes] });
      },
    );
  });
}

function cv(record: TestRecord): Outcome<PlotSpec> {
  const { cv_unit: unit = "m2/yr", stress_unit: stressUnit } = record.words;
  const inUnit = (values: (number | null)[]) =>
    values.map((value) => (value === null ? null : convert(value, "cv", "m2/yr", unit)));
  return cvPlot(
    stresses(record),
    inUnit(shownOr(record, "cv_log_time", ({ cvLogTime }) => cvLogTime)),
    inUnit(shownOr(record, "cv_root_time", ({ cvRootTime }) => cvRootTime)),
    {
      stressUnit,
      cvUnit: unit,
      ...ofTest(record),
      chosen: record.loads.map(({ number }) => methodOfLoad(record, number)),
      inWords,
    },
  );
}

const ofTest = (record: TestRecord) => ({
  before:
    record.numbers.seating_stress === undefined ? undefined : inSheetStress(record, record.numbers.seating_stress),
  yieldStress: yieldOf(record),
});

const cAlpha = (record: TestRecord, { stressScale }: SheetChoices): Outcome<PlotSpec> =>
  cAlphaPlot(
    stresses(record),
    record.loads.map(({ results }) => results.c_alpha ?? null),
    { stressUnit: record.words.stress_unit, ...ofTest(record), stressScale, inWords },
  );

/** The field curve with the points of the sheet's own curve. Refuses, with the cell, if the in-situ stress is missing. */
const field = (record: TestRecord): Outcome<PlotSpec> =>
  then(inputs(record, "in_situ_stress"), ({ in_situ_stress: inSitu }) =>
    then(reduced(record).curve, (test) =>
      then(reduced(record).specimen, ({ e0 }) =>
        fieldCurvePlot(
          loadColumn(test.points, (index) => nth(test.points, index).stress),
          loadColumn(test.points, (index) => nth(test.points, index).value),
          {
            stressUnit: record.words.stress_unit,
            inSituStress: inSheetStress(record, inSitu),
            initialVoidRatio: e0,
            preconsolidationStress: yieldOf(record),
            factor: record.numbers.field_factor,
            picks: picksOfCurve(record.picks),
            recompressionIndex: record.adopted?.recompression_index?.value,
            inWords,
          },
        ),
      ),
    ),
  );

/** The loads that are stages of wetting. */
export const stagesOf = (record: TestRecord): LoadRecord[] =>
  wettingPlaces(record).map((place) => nth(record.loads, place));

/** The stage that is drawn, where there are several; undefined where the one stage of the test is drawn. */
export function stageDrawn(record: TestRecord, { stage }: SheetChoices): LoadRecord | undefined {
  const stages = stagesOf(record);
  if (stages.length < 2) return undefined;
  return stages.find(({ number }) => number === stage) ?? record.loads[wettingAt(record)];
}

/** The stage of wetting against time. Refuses, with the cell, a test without such a stage. */
function swell(record: TestRecord, choices: SheetChoices): Outcome<PlotSpec> {
  const load = stageDrawn(record, choices)?.number;
  return then(wettingStage(record, load), (stage) => {
    const { times, strains } = wettingStrains(record, stage);
    return swellPlot(times, strains, {
      rate: wettingRate(record, stage),
      stress: stressInWords(record, stage.load.record),
      load,
      inWords,
    });
  });
}

/** The void index of the sheet's own curve. Refuses, with the cell, if the liquid limit is missing. */
const voidIndex = (record: TestRecord): Outcome<PlotSpec> =>
  then(inputs(record, "liquid_limit", "specific_gravity"), ({ liquid_limit, specific_gravity }) =>
    then(reduced(record).curve, (test) =>
      then(reduced(record).specimen, ({ e0 }) =>
        intrinsicPlot(
          loadColumn(test.points, (index) => nth(test.points, index).stress),
          loadColumn(test.points, (index) => nth(test.points, index).value),
          {
            stressUnit: record.words.stress_unit,
            liquidLimit: liquid_limit,
            specificGravity: specific_gravity,
            initialVoidRatio: e0,
            inSituStress:
              record.numbers.in_situ_stress === undefined
                ? undefined
                : inSheetStress(record, record.numbers.in_situ_stress),
            inWords,
          },
        ),
      ),
    ),
  );

const isPickName = (of: string): of is PickName => PICK_NAMES.some((name) => name === of);

/** The picks by hand that count for a load, with their rows in the table of picks. */
export const picksOf = ({ picks }: TestRecord, load: number): [PickName, RecordedPick][] =>
  [...standingRows(picks, load)].flatMap(([of, row]): [PickName, RecordedPick][] =>
    isPickName(of) ? [[of, row]] : [],
  );

/** The time curve of a load, with its construction by the picks by hand. */
export function timeCurve(record: TestRecord, load: LoadRecord, axis: "log" | "root"): Outcome<PlotSpec> {
  const { times, readings } = loadCurve(load);
  const increment = incrementOfLoad(record, load);
  const draw = axis === "log" ? logTimePlot : rootTimePlot;
  const sense = dialSense(record);
  const length = lengthOfReadings(record);
  const readingLabel = inWords(length === undefined ? say`Reading (div)` : say`Reading (${verbatim(length)})`);
  const against = axis === "log" ? say`log of time` : say`root of time`;
  const title =
    load.stress === undefined
      ? say`Load ${load.number}, ${against}`
      : say`Load ${load.number} (${verbatim(stressInWords(record, load))}), ${against}`;
  return then(draw(times, readings, { readingLabel, increment, sense, inWords }), (spec) =>
    given({ ...spec, title: inWords(title) }),
  );
}

/** The load whose time curve is drawn. */
export const loadDrawn = (record: TestRecord, { load }: SheetChoices): LoadRecord | undefined => {
  const loads = loadsRead(record);
  return loads.find(({ number }) => number === load) ?? loads[0];
};

/** Draws the plot, or refuses and says what to fill in. */
export function drawSheet(record: TestRecord, choices: SheetChoices): Outcome<PlotSpec> {
  if (choices.plot === "compression") return compression(record, choices);
  if (choices.plot === "cv") return cv(record);
  if (choices.plot === "field") return field(record);
  if (choices.plot === "swell") return swell(record, choices);
  if (choices.plot === "intrinsic") return voidIndex(record);
  if (choices.plot === "cAlpha") return cAlpha(record, choices);
  const load = loadDrawn(record, choices);
  return load
    ? timeCurve(record, load, choices.axis)
    : badInput(asTyped(`${text.plot.noReadingsTitle} ${text.plot.noReadings}`));
}

export interface SmallPlot {
  readonly load: LoadRecord;
  readonly isUnloading: boolean;
  readonly drawn: Outcome<PlotSpec>;
}

/** The time curves of all loads over the same span of time, so that they can be compared. */
export function smallPlots(record: TestRecord, axis: "log" | "root"): SmallPlot[] {
  const plots = loadsRead(record).map((load) => ({
    load,
    isUnloading: load.words.load_branch === "unloading",
    drawn: timeCurve(record, load, axis),
  }));
  const domains = plots.flatMap(({ drawn }) => (drawn.ok ? [drawn.value.x.domain] : []));
  const domain = [Math.min(...domains.map(([low]) => low)), Math.max(...domains.map(([, high]) => high))] as const;
  return plots.map((plot) => ({
    ...plot,
    drawn: then(plot.drawn, (spec) => given({ ...spec, x: { ...spec.x, domain } })),
  }));
}
