/**
 * A record reduced: every outcome that the questions need, calculated once per record by the functions that the sheet
 * uses. Curves are in the stress unit of the sheet, so that messages use that unit.
 */
import { cellNamed, nameOf, type LoadRecord, type NumberName, type TestRecord } from "./record";
import { dialSense, loadColumn, incrementOfLoad, outcomeOf } from "./load-curve";
import { methodOfLoad, picksOfCurve } from "./picks";
import { rulesOf } from "../specification/versions";
import { branches, type Branches } from "../reduction/curve/shape/branches";
import { loadSteps } from "../reduction/curve/loads";
import { compressionIndex, recompressionIndex, swellingIndex, type Index } from "../reduction/curve/indices";
import { methodNamed, type MethodName } from "../reduction/curve/method-words";
import type { AdoptableName } from "../specification/results/adoptable";
import { indexInUse, stressInUse } from "./adopted";
import { testCurve, type TestCurve } from "../reduction/curve/shape/points";
import {
  preconsolidation,
  preconsolidationSpread,
  type Preconsolidation,
  type Spread,
} from "../reduction/curve/preconsolidation";
import { sampleQuality, type SampleQuality } from "../reduction/curve/sample-quality";
import { overconsolidationRatio } from "../reduction/curve/stress-history";
import { coefficientOfConsolidation, heightAtHalf, T50, T90, type Drainage } from "../reduction/increment/cv";
import type { DialJump } from "../reduction/increment/dial-jump";
import type { Increment } from "../reduction/increment/reduce";
import { apparatusDeflection, deformations, strain } from "../reduction/loading";
import { english, say, verbatim, digits, listed, type Message } from "../reduction/message";
import { firstOf, nth } from "../reduction/numeric/lists";
import { badInput, given, notApplicable, then, type Outcome } from "../reduction/outcome";
import { reduceSpecimen, solidsHeight, voidRatio, waterContent, type Specimen } from "../reduction/specimen";
import { saltCorrection, waterDensity, WATER_DENSITY } from "../reduction/water";
import { convert } from "../reduction/units";

export interface LoadReduced {
  readonly record: LoadRecord;
  /** "load 3 (50 kPa)" */
  readonly called: Message;
  /** True if the stress is less than under the load before. */
  readonly unloading: boolean;
  /** True if the stress is more than under every load before. */
  readonly firstLoading: boolean;
  /** The latest reading and its time. */
  readonly end: Outcome<{ readonly time: number; readonly reading: number }>;
  /** mm, cumulative from the zero reading, compression positive. */
  readonly deformation: Outcome<number>;
  /**
   * mm, as the version of the sheet deducts it: the deflection since the seating stress, or the whole value of the
   * table.
   */
  readonly deflection: Outcome<number>;
  readonly corrected: Outcome<number>;
  /** Strain at the end of the load. */
  readonly strain: Outcome<number>;
  readonly height: Outcome<number>;
  readonly voidRatio: Outcome<number>;
  /** Void ratio or strain of the compression curve: at d100 if the sheet says so and the load has a d100. */
  readonly curvePoint: Outcome<number>;
  readonly increment: Increment;
  /**
   * mm, at 50 % of consolidation by each construction, or the mean of the heights at both ends of the load, by the
   * version of the sheet.
   */
  readonly heightLogTime: Outcome<number>;
  readonly heightRootTime: Outcome<number>;
  /** m2/yr, with those heights. */
  readonly cvLogTime: Outcome<number>;
  readonly cvRootTime: Outcome<number>;
}

export interface Reduced {
  readonly solidsHeight: Outcome<number>;
  readonly waterContentTrimmings: Outcome<number>;
  /** With the final height from the readings, or the measured final height. */
  readonly specimen: Outcome<Specimen>;
  readonly finalHeight: Outcome<number>;
  readonly loads: readonly LoadReduced[];
  /** Finest step of the readings, mm. */
  readonly resolution: Outcome<number>;
  readonly curve: Outcome<TestCurve>;
  readonly branches: Outcome<Branches>;
  /** The stress in use: the adopted stress, otherwise the stress by the chosen method. The same rule holds for the indices below. */
  readonly preconsolidation: Outcome<Preconsolidation>;
  /** The stress by the chosen method, whatever was adopted. */
  readonly constructedStress: Outcome<Preconsolidation>;
  readonly spread: Outcome<Spread>;
  readonly compressionIndex: Outcome<Index>;
  readonly recompressionIndex: Outcome<Index>;
  readonly swellingIndex: Outcome<Index>;
  readonly quality: Outcome<SampleQuality>;
}

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

/** The name of the load in a row of the load table; a point of the curve has the row number. */
export const calledInRow = ({ loads }: Reduced, row: number): Message =>
  loads.find(({ record }) => record.row === row)?.called ?? say`row ${row}`;

/** The loads on whose readings the dial jumped while the load stood. */
export const jumpsIn = (record: TestRecord): { readonly load: LoadReduced; readonly jump: DialJump }[] =>
  reduced(record).loads.flatMap((load) => (load.increment.jump ? [{ load, jump: load.increment.jump }] : []));

/** The row of the first reading of a load at a time greater than 0 or after it, counted from 1. */
export const rowAt = ({ readings }: LoadRecord, from: number): number | undefined =>
  readings.find(({ time = 0 }) => time >= from)?.row;

/** The method whose preconsolidation stress the sheet reports; Casagrande's if none was chosen. */
export const yieldMethodOf = ({ words }: TestRecord): MethodName =>
  methodNamed(words.preconsolidation_method ?? "") ?? "casagrande";

const results = new WeakMap<TestRecord, Reduced>();

export function reduced(record: TestRecord): Reduced {
  let found = results.get(record);
  if (!found) results.set(record, (found = reduceRecord(record)));
  return found;
}

/** Calculates a value when it is first used. */
function lazy<T>(compute: () => T): () => T {
  let value: { readonly it: T } | undefined;
  return () => (value ??= { it: compute() }).it;
}

/** Height of solids, mm, from the dry mass less the salt of the pore water. */
function solidsHeightOf(record: TestRecord): Outcome<number> {
  const { test_temperature: temperature, pore_salt: saltContent, ring_and_wet_after: wetAfter } = record.numbers;
  const dryMass = then(inputs(record, "ring_and_dry", "ring_mass"), (n) => {
    const weighed = n.ring_and_dry - n.ring_mass;
    if (!(weighed > 0))
      return badInput(
        say`${cellNamed("ring_and_dry")} is ${n.ring_and_dry} g and ${cellNamed("ring_mass")} is ${n.ring_mass} g: the ring with dry soil must be heavier than the ring; correct one of them`,
      );
    return saltContent && wetAfter !== undefined
      ? then(saltCorrection(wetAfter - n.ring_mass, weighed, saltContent), ({ solids }) => given(solids))
      : given(weighed);
  });
  const water = temperature === undefined ? given(WATER_DENSITY) : waterDensity(temperature);
  return then(dryMass, (Md) =>
    then(inputs(record, "specific_gravity", "diameter"), (n) =>
      then(water, (rho) => solidsHeight(Md, n.specific_gravity, n.diameter, rho)),
    ),
  );
}

/** The states of the specimen, from its masses and its size; `finalHeight` is asked only if these are on the sheet. */
const specimenOf = (record: TestRecord, finalHeight: () => Outcome<number>): Outcome<Specimen> =>
  then(
    inputs(
      record,
      ...(["diameter", "initial_height", "ring_mass", "ring_and_wet_before"] as const),
      ...(["ring_and_wet_after", "ring_and_dry", "specific_gravity"] as const),
    ),
    (n) => {
      const height = finalHeight();
      return reduceSpecimen(
        {
          diameter: n.diameter,
          height: n.initial_height,
          ring: n.ring_mass,
          ringAndWetBefore: n.ring_and_wet_before,
          ringAndWetAfter: n.ring_and_wet_after,
          ringAndDry: n.ring_and_dry,
          Gs: n.specific_gravity,
          finalHeight: height.ok ? height.value : undefined,
          temperature: record.numbers.test_temperature,
          saltContent: record.numbers.pore_salt || undefined,
        },
        record.words.length_unit,
      );
    },
  );

function reduceRecord(record: TestRecord): Reduced {
  const Hs = solidsHeightOf(record);
  const loads = lazy(() => reduceLoads(record, Hs));
  const finalHeight = lazy(() => finalHeightOf(record, loads()));
  const specimen = lazy(() => specimenOf(record, finalHeight));
  const curve = lazy(() => curveOf(record, loads()));
  const ofCurve = <T>(read: (test: TestCurve) => Outcome<T>) => lazy(() => then(curve(), read));
  const method = yieldMethodOf(record);
  const picks = picksOfCurve(record.picks);
  const byMethod = ofCurve((test) => preconsolidation(test, { method, picks }));
  const { adopted = {} } = record;
  const yieldStress = lazy(() => {
    const stress = inSheetStress(record, adopted.preconsolidation_stress?.value ?? 0);
    return stressInUse(byMethod(), method, adopted.preconsolidation_stress, stress);
  });
  const index = (name: AdoptableName, read: (test: TestCurve) => Outcome<Index>) => {
    const constructed = ofCurve(read);
    return lazy(() => indexInUse(constructed(), adopted[name]));
  };
  const lazyParts = {
    solidsHeight: () => Hs,
    waterContentTrimmings: lazy(() => trimmings(record)),
    specimen,
    finalHeight,
    loads,
    resolution: lazy(() => resolutionOf(record, loads())),
    curve,
    branches: ofCurve(branches),
    preconsolidation: yieldStress,
    constructedStress: byMethod,
    spread: ofCurve((test) => preconsolidationSpread(test)),
    compressionIndex: index("compression_index", (test) => compressionIndex(test, undefined, picks)),
    recompressionIndex: index("recompression_index", (test) => recompressionIndex(test, undefined, picks)),
    swellingIndex: index("swelling_index", (test) => swellingIndex(test, undefined, picks)),
    quality: ofCurve((test) => qualityOf(record, test, yieldStress(), specimen())),
  };
  // Every part is defined on the next line.
  const parts = {} as Reduced;
  for (const [name, get] of Object.entries(lazyParts)) Object.defineProperty(parts, name, { get, enumerable: true });
  return parts;
}

function trimmings(record: TestRecord): Outcome<number> {
  const contents: number[] = [];
  for (const { mass, andWet, andDry } of record.tins) {
    if (andWet === undefined || andDry === undefined) continue;
    const w = waterContent(andWet, andDry, mass ?? 0);
    if (!w.ok) return w;
    contents.push(w.value);
  }
  return contents.length
    ? given(contents.reduce((sum, w) => sum + w, 0) / contents.length)
    : badInput(say`it needs a tin of trimmings (${listed(["tin_mass", "tin_and_wet", "tin_and_dry"].map(nameOf))})`);
}

/** A stress in kPa with the unit of the sheet, such as "50 kPa". */
export const stressCalled = (record: TestRecord, stress: number): Message =>
  say`${digits(inSheetStress(record, stress), 4)} ${verbatim(record.words.stress_unit ?? "kPa")}`;

/** The stress of a load with its unit, such as "50 kPa"; "" if the load has no stress. */
export const stressText = (record: TestRecord, { stress }: Pick<LoadRecord, "stress">): string =>
  stress === undefined ? "" : english(stressCalled(record, stress));

function reduceLoads(record: TestRecord, Hs: Outcome<number>): LoadReduced[] {
  const loads: LoadReduced[] = [];
  const steps = loadSteps(
    record.loads.map(({ stress }) => stress ?? null),
    { before: record.numbers.seating_stress },
  );
  const { knowsWetting, cvOfConsolidation } = rulesOf(record);
  let past = 0;
  let before = record.numbers.seating_stress ?? 0;
  let deflectionBefore: Outcome<number> = given(0);
  let heightBefore: Outcome<number> = then(inputs(record, "initial_height"), (n) => given(n.initial_height));
  for (const [index, load] of record.loads.entries()) {
    const { stress } = load;
    const kind = steps[index]?.kind;
    const wetting = knowsWetting && kind === "wetting";
    const unloading = knowsWetting ? kind === "unloading" : stress !== undefined && stress < before;
    const firstLoading = stress !== undefined && stress > past;
    const one = reduceLoad(record, load, {
      unloading,
      firstLoading,
      consolidates: !cvOfConsolidation || (!unloading && !wetting),
      deflection: wetting && deflectionBefore.ok ? deflectionBefore : undefined,
      heightBefore,
      Hs,
    });
    loads.push(one);
    deflectionBefore = one.deflection;
    if (stress !== undefined) {
      before = stress;
      past = Math.max(past, stress);
    }
    heightBefore = one.height;
  }
  return loads;
}

interface Step {
  readonly unloading: boolean;
  readonly firstLoading: boolean;
  /** Whether the sheet gives a cv of a load of this kind. */
  readonly consolidates: boolean;
  /** Deflection of the apparatus, if it is the same as under the load before. */
  readonly deflection?: Outcome<number>;
  /** mm, at the end of the load before. */
  readonly heightBefore: Outcome<number>;
  /** Height of solids, mm. */
  readonly Hs: Outcome<number>;
}

const NO_CONSOLIDATION = say`nothing consolidates on unloading, on wetting, or where the specimen swelled: there is no cv`;

/** From a reading of the load, in divisions, to deformation, height and void ratio; each step takes the one before. */
function stepsFromReading(
  record: TestRecord,
  { called, deflection }: Pick<LoadReduced, "called" | "deflection">,
  Hs: Outcome<number>,
) {
  return {
    toDeformation: (reading: number) =>
      then(inputs(record, "zero_reading", "dial_factor"), (n) =>
        rulesOf(record).zerosCount
          ? given((reading - n.zero_reading) * senseOf(record) * n.dial_factor)
          : then(deformations([reading], n.zero_reading, senseOf(record) * n.dial_factor), (found) => {
              const value = firstOf(found);
              return value === null
                ? badInput(say`${called} ends with a reading of zero, which counts as blank`)
                : given(value);
            }),
      ),
    correct: (measured: Outcome<number>) => then(measured, (d) => then(deflection, (a) => given(d - a))),
    toHeight: (corrected: Outcome<number>) =>
      then(corrected, (mm) => then(inputs(record, "initial_height"), (n) => given(n.initial_height - mm))),
    toVoidRatio: (height: Outcome<number>) => then(height, (H) => then(Hs, (solids) => voidRatio(H, solids))),
  };
}

/** The heights at 50 % of consolidation and cv by both constructions. */
function consolidationOf(
  record: TestRecord,
  { increment, end, height }: Pick<LoadReduced, "increment" | "end" | "height">,
  { consolidates, heightBefore }: Step,
): Pick<LoadReduced, "heightLogTime" | "heightRootTime" | "cvLogTime" | "cvRootTime"> {
  const middle = (marks: Outcome<{ readonly d0: number; readonly d100: number }>) =>
    then(marks, ({ d0, d100 }) =>
      then(height, (H1) =>
        rulesOf(record).heightAtHalf
          ? then(end, ({ reading }) =>
              then(inputs(record, "dial_factor"), ({ dial_factor }) =>
                given(heightAtHalf({ height: H1, reading }, { d0, d100 }, senseOf(record) * dial_factor)),
              ),
            )
          : then(heightBefore, (H0) => given((H0 + H1) / 2)),
      ),
    );
  const [heightLogTime, heightRootTime] = [middle(increment.logTime), middle(increment.rootTime)];
  const swelled =
    rulesOf(record).cvOfConsolidation && height.ok && heightBefore.ok && height.value > heightBefore.value;
  const cv = (T: number, time: Outcome<number>, H: Outcome<number>): Outcome<number> =>
    consolidates && !swelled
      ? then(time, (t) => then(H, (mm) => given(cvOf(T, t, mm, record))))
      : notApplicable(NO_CONSOLIDATION);
  const t50 = then(increment.logTime, (marks) => given(marks.t50));
  const t90 = then(increment.rootTime, (marks) => given(marks.t90));
  return {
    heightLogTime,
    heightRootTime,
    cvLogTime: cv(T50, t50, heightLogTime),
    cvRootTime: cv(T90, t90, heightRootTime),
  };
}

function reduceLoad(record: TestRecord, load: LoadRecord, step: Step): LoadReduced {
  const { unloading, firstLoading } = step;
  const called = {
    ...(load.stress === undefined
      ? say`load ${load.number}`
      : say`load ${load.number} (${stressCalled(record, load.stress)})`),
    load: load.number,
  };
  const end = endOf(load, called);
  // The deflection of the apparatus does not change while the load stays on.
  const deflection = step.deflection ?? deflectionOf(record, load, unloading, called);
  const { toDeformation, correct, toHeight, toVoidRatio } = stepsFromReading(record, { called, deflection }, step.Hs);
  const deformation = then(end, ({ reading }) => toDeformation(reading));
  const corrected = correct(deformation);
  const height = toHeight(corrected);
  const increment = incrementOfLoad(record, load);
  const chosen: Outcome<{ readonly d100: number }> = outcomeOf(increment, methodOfLoad(record, load.number));
  const atD100 = then(chosen, ({ d100 }) => toVoidRatio(toHeight(correct(toDeformation(d100)))));
  const atEnd = toVoidRatio(height);
  const recalculated = record.words.curve_from === "d100" && atD100.ok ? atD100 : atEnd;
  const asShown = load.results.void_ratio_curve;
  return {
    record: load,
    called,
    unloading,
    firstLoading,
    end,
    deformation,
    deflection,
    corrected,
    strain: then(corrected, (d) => then(inputs(record, "initial_height"), (n) => strain(d, n.initial_height))),
    height,
    voidRatio: atEnd,
    curvePoint: recalculated.ok || asShown === undefined ? recalculated : given(asShown),
    increment,
    ...consolidationOf(record, { increment, end, height }, step),
  };
}

const senseOf = (record: TestRecord): number => (dialSense(record) === "fall" ? -1 : 1);

const cvOf = (T: number, minutes: number, height: number, record: TestRecord): number =>
  convert(
    // The cell of the drainage accepts these two words only.
    coefficientOfConsolidation(T, minutes, height, (record.words.drainage ?? "double") as Drainage),
    "cv",
    "mm2/min",
    "m2/yr",
  );

/** The reading at the latest time that has one. */
function endOf({ readings }: LoadRecord, called: Message): LoadReduced["end"] {
  let end: { time: number; reading: number } | undefined;
  for (const { time, reading } of readings)
    if (time !== undefined && reading !== undefined && (!end || time > end.time)) end = { time, reading };
  return end ? given(end) : badInput(say`${called} has no reading`);
}

/**
 * The deflection of the apparatus: 0 without a calibration table; on unloading from the unloading column if the table
 * has one; less the deflection at the seating stress if the version of the sheet deducts it.
 */
function deflectionOf(record: TestRecord, load: LoadRecord, unloading: boolean, called: Message): Outcome<number> {
  const whole = wholeDeflection(record, load, unloading, called);
  return rulesOf(record).deflectionSinceSeating
    ? then(whole, (at) => then(seatingDeflection(record), (seating) => given(at - seating)))
    : whole;
}

/**
 * The deflection that the table gives on loading at the seating stress, where the zero reading was taken; 0 without a
 * table or a seating stress.
 */
export function seatingDeflection(record: TestRecord): Outcome<number> {
  const table = record.deflections.filter(({ stress }) => stress !== undefined);
  const { seating_stress: seating = 0 } = record.numbers;
  if (table.length === 0 || seating === 0) return given(0);
  const found = apparatusDeflection(
    inSheetStress(record, seating),
    table.map(({ stress }) => inSheetStress(record, stress!)),
    table.map(({ loading }) => loading ?? null),
  );
  return found.ok
    ? found
    : {
        ...found,
        reason: say`the deflection at the seating stress, which is deducted from that of each load: ${found.reason}; or enter a row for the seating stress, with deflection 0 where the blank test was zeroed under it`,
      };
}

function wholeDeflection(record: TestRecord, load: LoadRecord, unloading: boolean, called: Message): Outcome<number> {
  const table = record.deflections.filter(({ stress }) => stress !== undefined);
  if (table.length === 0) return given(0);
  if (load.stress === undefined) return badInput(say`${called} has no stress`);
  const branch = unloading && table.some((row) => row.unloading !== undefined) ? "unloading" : "loading";
  return apparatusDeflection(
    inSheetStress(record, load.stress),
    table.map(({ stress }) => inSheetStress(record, stress!)),
    table.map((row) => row[branch] ?? null),
  );
}

function finalHeightOf(record: TestRecord, loads: readonly LoadReduced[]): Outcome<number> {
  const last = [...loads].reverse().find(({ end }) => end.ok);
  if (last) return last.height;
  return then(inputs(record, "final_height_measured"), (n) => given(n.final_height_measured));
}

function resolutionOf(record: TestRecord, loads: readonly LoadReduced[]): Outcome<number> {
  return then(inputs(record, "dial_factor"), ({ dial_factor }) => {
    const steps = loads.flatMap(({ increment: { cleaned } }) =>
      cleaned.ok && cleaned.value.step > 0 ? [cleaned.value.step] : [],
    );
    return steps.length
      ? given(Math.min(...steps) * dial_factor)
      : badInput(say`it needs readings that show their step`);
  });
}

/** The value before the first load, if the methods of preconsolidation on the sheet get it. */
export const initialOf = (record: TestRecord, kind: TestCurve["kind"]): number | undefined =>
  kind === "e" && rulesOf(record).startsAtInitialVoidRatio ? record.results.void_ratio_initial : undefined;

/** Void ratio against stress; strain against stress if there is no void ratio. */
function curveOf(record: TestRecord, loads: readonly LoadReduced[]): Outcome<TestCurve> {
  if (!loads.some(({ record: { stress } }) => stress !== undefined))
    return badInput(say`it needs the loads (${nameOf("load_stress")})`);
  const kind = loads.some(({ curvePoint }) => curvePoint.ok) ? "e" : "strain";
  const values = loads.map(({ curvePoint, strain: eps }) => (kind === "e" ? curvePoint : eps));
  const lacking = values.find((value) => !value.ok);
  if (lacking && !lacking.ok && values.every((value) => !value.ok)) return lacking;
  const rows = loads.map((load) => load.record);
  return testCurve(
    loadColumn(rows, (i) => {
      const { stress } = nth(rows, i);
      return stress === undefined ? null : inSheetStress(record, stress);
    }),
    loadColumn(rows, (i) => {
      const value = nth(values, i);
      return value.ok ? value.value : null;
    }),
    kind,
    initialOf(record, kind),
  );
}

const qualityOf = (
  record: TestRecord,
  test: TestCurve,
  yieldStress: Outcome<Preconsolidation>,
  specimen: Outcome<Specimen>,
): Outcome<SampleQuality> =>
  then(inputs(record, "in_situ_stress"), ({ in_situ_stress }) => {
    const inSitu = inSheetStress(record, in_situ_stress);
    const ocr = then(yieldStress, ({ stress }) => overconsolidationRatio(stress, inSitu));
    return sampleQuality(test, inSitu, specimen.ok ? specimen.value.e0 : undefined, ocr.ok ? ocr.value : undefined);
  });
