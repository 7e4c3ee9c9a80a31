/** The stages of wetting of a test, with the heights before and after each. */
import { loadSteps } from "../reduction/curve/loads";
import { say } from "../reduction/message";
import { nth } from "../reduction/numeric/lists";
import { given, notApplicable, then, type Outcome } from "../reduction/outcome";
import { wettingStrain } from "../reduction/wetting";
import { dialSense, loadCurve, type Cells } from "./load-curve";
import { nameOf, type TestRecord } from "./record";
import { reduced } from "./reduced-test";
import { inputs } from "./reduced/inputs";
import type { LoadReduced } from "./reduced/load";

export interface WettingStage {
  readonly load: LoadReduced;
  /** kPa */
  readonly stress: number;
  /** mm, at the end of the load before, and at the end of the stage. */
  readonly before: number;
  readonly after: number;
  /** mm: the height that the strain is divided by, as the sheet chooses it. */
  readonly reference: number;
  /** Ratio; positive for collapse, negative for swell. */
  readonly strain: number;
}

/**
 * The place of the stage among the loads, by the rule of the sheet: the first load marked as wetting; without one, the
 * first that is marked as inundated and keeps the stress of the load before. -1 without a stage.
 */
export function wettingAt({ loads, numbers }: TestRecord): number {
  const said = loads.findIndex(({ wetting }) => wetting);
  if (said >= 0) return said;
  const steps = loadSteps(
    loads.map(({ stress }) => stress ?? null),
    { before: numbers.seating_stress },
  );
  return loads.findIndex(({ inundated }, index) => inundated && steps[index]?.kind === "wetting");
}

/**
 * The places of all stages among the loads: every load marked as wetting, or marked as inundated under the stress of the
 * load before.
 */
export function wettingPlaces({ loads, numbers }: TestRecord): readonly number[] {
  const steps = loadSteps(
    loads.map(({ stress }) => stress ?? null),
    { before: numbers.seating_stress },
  );
  return loads.flatMap(({ wetting, inundated }, index) =>
    wetting || (inundated && steps[index]?.kind === "wetting") ? [index] : [],
  );
}

/**
 * The stage of wetting that a load is; without a load, the stage that the results of the sheet are of. Refuses a test
 * without a stage, and a load that is none.
 */
export function wettingStage(record: TestRecord, load?: number): Outcome<WettingStage> {
  if (load !== undefined) {
    const place = wettingPlaces(record).find((one) => nth(record.loads, one).number === load);
    return place === undefined
      ? notApplicable(say`load ${load} is no stage of wetting (${nameOf("load_mark")})`)
      : stageAt(record, place);
  }
  const at = wettingAt(record);
  return at < 0 ? notApplicable(say`no load is marked as wetting (${nameOf("load_mark")})`) : stageAt(record, at);
}

/** The stage of wetting at a place among the loads. Refuses a stage without readings before or under it. */
export function stageAt(record: TestRecord, at: number): Outcome<WettingStage> {
  const { loads } = reduced(record);
  const load = nth(loads, at);
  const heightBefore =
    at === 0 ? then(inputs(record, "initial_height"), (n) => given(n.initial_height)) : nth(loads, at - 1).height;
  return then(heightBefore, (before) =>
    then(load.height, (after) =>
      then(inputs(record, "initial_height"), ({ initial_height }) => {
        const reference = record.words.wetting_reference === "initial height" ? initial_height : before;
        return then(wettingStrain(before, after, reference), (strain) =>
          given({ load, stress: load.record.stress ?? 0, before, after, reference, strain }),
        );
      }),
    ),
  );
}

/** Strain per log cycle of time on the straight tail of a stage, as the sheet works it out; undefined without a tail. */
export function wettingRate(record: TestRecord, { load, reference }: WettingStage): number | undefined {
  const { dial_factor: factor } = record.numbers;
  const { tail_slope: slope } = load.record.results;
  return factor === undefined || slope === undefined ? undefined : (perDial(record) * slope * factor) / reference;
}

const perDial = (record: TestRecord): number => (dialSense(record) === "fall" ? -1 : 1);

/**
 * The strains of the stage reading by reading, in the rows of the sheet: they end with the strain of the stage, so that
 * the deflection of the apparatus, which does not change under the stress kept, takes no part.
 */
export function wettingStrains(
  record: TestRecord,
  { load, before, after, reference }: WettingStage,
): { readonly times: Cells; readonly strains: Cells } {
  const { times, readings } = loadCurve(load.record);
  const factor = perDial(record) * (record.numbers.dial_factor ?? NaN);
  const { end } = load;
  const strains = readings.map((reading) =>
    reading === null || !end.ok ? null : (before - after + (reading - end.value.reading) * factor) / reference,
  );
  return { times, strains };
}
