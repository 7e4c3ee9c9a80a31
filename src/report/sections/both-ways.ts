/** The constructions of each load of a record, aided and drawn. */
import { incrementOfLoad } from "../../record/load-curve";
import type { TestRecord } from "../../record/record";
import type { LogTime } from "../../reduction/increment/constructions/log-time";
import { decimalsOfLevels } from "../../reduction/increment/level-decimals";
import { PROCEDURES } from "../../reduction/increment/constructions/procedure";
import type { RootTime } from "../../reduction/increment/constructions/root-time";
import { firstOf } from "../../reduction/numeric/lists";
import type { Outcome } from "../../reduction/outcome";

/** Both constructions of a load, first aided, then drawn; undefined if a construction gives no result. */
export interface BothWays {
  readonly log: readonly (LogTime | undefined)[];
  readonly root: readonly (RootTime | undefined)[];
  /** The decimals of a level of the readings; undefined if the readings show no step. */
  readonly decimals: number | undefined;
}

const valueOf = <T>(outcome: Outcome<T>): T | undefined => (outcome.ok ? outcome.value : undefined);

/** The constructions of all loads with readings, by the number of the load. */
export function reducedLoads(record: TestRecord): ReadonlyMap<number, BothWays> {
  const read = record.loads.filter(({ readings }) => readings.length > 0);
  return new Map(
    read.map((load) => {
      const ways = PROCEDURES.map((procedure) => incrementOfLoad(record, load, { procedure }));
      // Both procedures clean the readings in the same way.
      const { cleaned } = firstOf(ways);
      return [
        load.number,
        {
          log: ways.map(({ logTime }) => valueOf(logTime)),
          root: ways.map(({ rootTime }) => valueOf(rootTime)),
          decimals: decimalsOfLevels(cleaned),
        },
      ];
    }),
  );
}
