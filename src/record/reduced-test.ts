/**
 * A record reduced: every outcome that the questions need, calculated once per record by the functions that the sheet
 * uses. Curves are in the stress unit of the sheet, so that messages use that unit.
 */
import { branches, type Branches } from "../reduction/curve/shape/branches";
import { compressionIndex, recompressionIndex, swellingIndex, type Index } from "../reduction/curve/indices";
import { methodNamed, type MethodName } from "../reduction/curve/method-words";
import {
  preconsolidation,
  preconsolidationSpread,
  type Preconsolidation,
  type Spread,
} from "../reduction/curve/preconsolidation";
import type { SampleQuality } from "../reduction/curve/sample-quality";
import type { TestCurve } from "../reduction/curve/shape/points";
import type { DialJump } from "../reduction/increment/dial-jump";
import { say, type Message } from "../reduction/message";
import { badInput, given, then, type Outcome } from "../reduction/outcome";
import type { Specimen } from "../reduction/specimen";
import type { AdoptableName } from "../specification/results/adoptable";
import { indexInUse, stressInUse } from "./adopted";
import { picksOfCurve } from "./picks";
import type { LoadRecord, TestRecord } from "./record";
import { curveOf, qualityOf } from "./reduced/curve";
import { inputs, inSheetStress } from "./reduced/inputs";
import { reduceLoads, type LoadReduced } from "./reduced/load";
import { solidsHeightOf, specimenOf, trimmings } from "./reduced/specimen";

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
