/**
 * Suggests which of the two hand constructions gives cv, for a load whose reviewer has not chosen.
 *
 * If only one applies, it is suggested. If both apply, the one whose cv lies nearer to cv of the fit to theory, which
 * uses every reading. If the readings depart from theory, the fit cannot decide: then the one with fewer remarks of its
 * own, or log time if they have equally many. A study with known truth (test/generators) says how often this is the
 * nearer one.
 */
import { distinct, english, joined, partsOf, say, without, type Message } from "../message";
import { given, notApplicable, type Outcome } from "../outcome";
import { T50, T90 } from "./cv";
import type { TimeMethod } from "./constructions/picks";
import type { Increment } from "./reduce";
import { MISFIT } from "./signals";

/** The figures by which a reviewer compares the two constructions. */
export interface Suggestion {
  readonly method: TimeMethod;
  /**
   * Why this method: the other does not apply; the other lies further from the fit; the other has more remarks of its
   * own; or both have equally many.
   */
  readonly why: "the only one" | "nearer to the fit" | "fewer remarks" | "as many remarks";
  /** Why the other method does not apply, if it does not. */
  readonly otherRefusal?: Message;
  /** cv by root time over cv by log time, where both apply. */
  readonly ratio?: number;
  /** cv by each method over cv of the fit, where the fit decided. */
  readonly overFit?: Readonly<Record<TimeMethod, number>>;
  /** Whether cv by each method lies inside the 95 % interval of the fit. */
  readonly inInterval?: Readonly<Record<TimeMethod, boolean>>;
  /** The remarks of each method that the other does not have. */
  readonly remarks?: Readonly<Record<TimeMethod, readonly Message[]>>;
  /** Readings that the straight part of root time goes through. */
  readonly straightReadings?: number;
}

/**
 * Refuses where neither construction applies, with the reasons of both.
 * @example suggestMethod(load).value.method // "log time"
 */
export function suggestMethod({ cleaned, fit, logTime, rootTime }: Increment): Outcome<Suggestion> {
  if (!logTime.ok && !rootTime.ok)
    return english(logTime.reason) === english(rootTime.reason)
      ? logTime
      : notApplicable(
          say`neither construction applies: ${joined(distinct([logTime, rootTime].flatMap(({ reason }) => partsOf(reason))))}`,
        );
  if (!logTime.ok) return given({ method: "root time", why: "the only one", otherRefusal: logTime.reason });
  if (!rootTime.ok) return given({ method: "log time", why: "the only one", otherRefusal: rootTime.reason });

  const rates = { "log time": T50 / logTime.value.t50, "root time": T90 / rootTime.value.t90 };
  const { from, to } = rootTime.value.straight;
  const remarks = {
    "log time": without(logTime.remarks, rootTime.remarks),
    "root time": without(rootTime.remarks, logTime.remarks),
  };
  const shared = {
    ratio: rates["root time"] / rates["log time"],
    remarks,
    straightReadings: cleaned.ok
      ? cleaned.value.series.times.filter((time) => time >= from && time <= to).length
      : undefined,
  };
  // Where the readings do not follow the fit, the fit cannot judge the constructions.
  if (fit.ok && fit.value.misfit <= MISFIT * Math.abs(fit.value.primary)) {
    const { rate, rateLow, rateHigh } = fit.value;
    const each = <T>(of: (rate: number) => T) => ({
      "log time": of(rates["log time"]),
      "root time": of(rates["root time"]),
    });
    const off = each((one) => Math.abs(Math.log(one / rate)));
    return given({
      ...shared,
      method: off["log time"] <= off["root time"] ? "log time" : "root time",
      why: "nearer to the fit",
      overFit: each((one) => one / rate),
      inInterval: each((one) => one >= rateLow && one <= rateHigh),
    });
  }
  const more = remarks["log time"].length - remarks["root time"].length;
  return given({
    ...shared,
    method: more > 0 ? "root time" : "log time",
    why: more === 0 ? "as many remarks" : "fewer remarks",
  });
}
