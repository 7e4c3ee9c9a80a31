/**
 * Curves that rise and come to rest but are not consolidation: no construction and no fit may accept them without a
 * remark. 95 in 100 are refused or remarked by every method: of 200 seeds of each kind, and of 60 with the drawn
 * procedure.
 */
import { reduceIncrement } from "../../../../src/reduction/increment/reduce";
import { KINDS, noConsolidation } from "../../../generators/no-consolidation";
import { english, type Message } from "../../../../src/reduction/message";

const METHODS = ["logTime", "rootTime", "fit"] as const;

/** A remark that only states the readings that the lines were drawn through is not a warning. */
const isWarning = (remark: Message) => !/as drawn: /.test(english(remark));

describe.each(KINDS)("%s", (kind) => {
  test.each([
    ["aided", 200],
    ["drawn", 60],
  ] as const)("%s, %d seeds", (procedure, seeds) => {
    const passed = { logTime: 0, rootTime: 0, fit: 0 };
    for (let seed = 1; seed <= seeds; seed++) {
      const { times, readings } = noConsolidation(kind, seed);
      const increment = reduceIncrement(times, readings, {}, procedure);
      for (const method of METHODS) {
        const outcome = increment[method];
        if (outcome.ok && !outcome.remarks.some(isWarning)) passed[method]++;
      }
    }
    for (const method of METHODS) expect([method, passed[method] <= 0.05 * seeds]).toEqual([method, true]);
  });
});
