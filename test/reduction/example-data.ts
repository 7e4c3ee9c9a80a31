/** Three printed records that the examples beside the functions of src/reduction may use. */
import { testCurve, type TestCurve } from "../../src/reduction/curve/shape/points";
import { reduceIncrement } from "../../src/reduction/increment/reduce";
import type { Outcome } from "../../src/reduction/outcome";
import curves from "../published/data/compression-curves.json";
import loads from "../published/data/time-curves.json";

const valueOf = <T>(outcome: Outcome<T>): T => {
  if (!outcome.ok) throw new Error("a printed record makes no curve");
  return outcome.value;
};

/** A French course's oedometer test: kPa and void ratio; e0 1.5. Source: frenchClay in the data. */
export const clay: TestCurve = valueOf(
  testCurve(curves.frenchClay.stress, curves.frenchClay.voidRatio, "e", curves.frenchClay.e0),
);

/** A test with one unload-reload loop and a last unloading, from Hong Kong lecture notes. Source: hongKong in the data. */
export const rebound: TestCurve = valueOf(testCurve(curves.hongKong.stress, curves.hongKong.voidRatio, "e"));

/** Das, Example 11.11: readings of a load in inches. Source: das11_11 in the data. */
export const load = reduceIncrement(loads.das11_11.minutes, loads.das11_11.inches);
