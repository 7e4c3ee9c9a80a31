/** Each load reduced: from its last reading to deformation, height, void ratio and cv, the loads in the order of the test. */
import { loadSteps } from "../../reduction/curve/loads";
import { coefficientOfConsolidation, heightAtHalf, T50, T90, type Drainage } from "../../reduction/increment/cv";
import type { Increment } from "../../reduction/increment/reduce";
import { deformations, strain } from "../../reduction/loading";
import { say, type Message } from "../../reduction/message";
import { firstOf } from "../../reduction/numeric/lists";
import { badInput, given, notApplicable, then, type Outcome } from "../../reduction/outcome";
import { voidRatio } from "../../reduction/specimen";
import { convert } from "../../reduction/units";
import { rulesOf } from "../../specification/versions";
import { dialSense, incrementOfLoad, outcomeOf } from "../load-curve";
import { methodOfLoad } from "../picks";
import type { LoadRecord, TestRecord } from "../record";
import { deflectionOf } from "./deflection";
import { inputs, stressCalled } from "./inputs";

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

export function reduceLoads(record: TestRecord, Hs: Outcome<number>): LoadReduced[] {
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
