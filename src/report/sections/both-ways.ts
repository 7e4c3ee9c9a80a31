/** The constructions of each load of a record, made aided and drawn. */
import { loadCurve } from "../../record/load-curve";
import type { TestRecord } from "../../record/record";
import type { LogTime } from "../../reduction/increment/constructions/log-time";
import type { RootTime } from "../../reduction/increment/constructions/root-time";
import { PROCEDURES } from "../../reduction/increment/constructions/procedure";
import { reduceIncrement } from "../../reduction/increment/reduce";
import type { Outcome } from "../../reduction/outcome";
import { picksOfLoad } from "../../specification/pick-table";
import { rulesOf } from "../../specification/versions";

/** Of each construction, what the aided way gives and what the drawn one gives; undefined where a way gives none. */
export interface BothWays {
  readonly log: readonly (LogTime | undefined)[];
  readonly root: readonly (RootTime | undefined)[];
}

const valueOf = <T>(outcome: Outcome<T>): T | undefined => (outcome.ok ? outcome.value : undefined);

/** By the number of the load; loads without readings are left out. */
export function reducedLoads(record: TestRecord): ReadonlyMap<number, BothWays> {
  return new Map(
    record.loads
      .filter(({ readings }) => readings.length > 0)
      .map((load) => {
        const { times, readings } = loadCurve(load);
        const picks = picksOfLoad(record.picks, load.number);
        const ways = PROCEDURES.map((way) => reduceIncrement(times, readings, picks, way, rulesOf(record).zerosCount));
        return [
          load.number,
          { log: ways.map(({ logTime }) => valueOf(logTime)), root: ways.map(({ rootTime }) => valueOf(rootTime)) },
        ];
      }),
  );
}
