/** The loads of which a question is asked. */
import type { TestRecord } from "../../record/record";
import { say, type Message } from "../../reduction/message";
import { gravest, type Answer } from "../check";
import type { Reduced } from "../../record/reduced-test";
import { inKpa } from "../../record/reduced/inputs";
import type { LoadReduced } from "../../record/reduced/load";
import { loadSteps, type LoadKind } from "../../reduction/curve/loads";

type Case = { readonly load: Message; readonly answer: Answer };

const READINGS = say`it needs loads with readings (times_01, readings_01 and on)`;

/** Asks a question of each load that has readings. */
export const eachLoad = ({ loads }: Reduced, answer: (load: LoadReduced) => Answer | undefined): Answer => {
  const cases = loads
    .filter(({ record }) => record.readings.length > 0)
    .flatMap((load): Case[] => {
      const found = answer(load);
      return found ? [{ load: load.called, answer: found }] : [];
    });
  return gravest(cases, READINGS);
};

/** The loads that do this to the specimen; none without a preconsolidation stress. */
export function loadsOfKind(record: TestRecord, { preconsolidation, loads }: Reduced, kind: LoadKind): LoadReduced[] {
  if (!preconsolidation.ok) return [];
  const steps = loadSteps(
    loads.map((load) => load.record.stress ?? null),
    { before: record.numbers.seating_stress, preconsolidationStress: inKpa(record, preconsolidation.value.stress) },
  );
  return loads.filter((_, index) => steps[index]?.kind === kind);
}

/** The virgin loads of the test; none without a preconsolidation stress. */
export const virginLoads = (record: TestRecord, reduced: Reduced): LoadReduced[] =>
  loadsOfKind(record, reduced, "virgin");
