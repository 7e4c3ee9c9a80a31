/** The constructions of each load of a record, made the other way than those in use. */
import { incrementOfLoad } from "../../record/load-curve";
import { procedureOfLoad } from "../../record/picks";
import type { TestRecord } from "../../record/record";
import type { LogTime } from "../../reduction/increment/constructions/log-time";
import { decimalsOfLevels } from "../../reduction/increment/level-decimals";
import type { RootTime } from "../../reduction/increment/constructions/root-time";
import type { Outcome } from "../../reduction/outcome";

/** Both constructions of a load, drawn where those in use are aided, and aided where they are drawn; undefined if one gives no result. */
export interface OtherWay {
  readonly log: LogTime | undefined;
  readonly root: RootTime | undefined;
  /** The decimals of a level of the readings; undefined if the readings show no step. */
  readonly decimals: number | undefined;
}

const valueOf = <T>(outcome: Outcome<T>): T | undefined => (outcome.ok ? outcome.value : undefined);

/** The constructions of all loads with readings, by the number of the load. */
export function otherWays(record: TestRecord): ReadonlyMap<number, OtherWay> {
  const read = record.loads.filter(({ readings }) => readings.length > 0);
  return new Map(
    read.map((load) => {
      const procedure = procedureOfLoad(record, load.number) === "aided" ? "drawn" : "aided";
      const { cleaned, logTime, rootTime } = incrementOfLoad(record, load, { procedure });
      return [load.number, { log: valueOf(logTime), root: valueOf(rootTime), decimals: decimalsOfLevels(cleaned) }];
    }),
  );
}
