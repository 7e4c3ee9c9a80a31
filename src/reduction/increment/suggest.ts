/**
 * Which of the two hand constructions is to give cv, where the person who reviews an increment has not chosen yet.
 *
 * Where only one applies it is that one. Where both do, the one whose cv lies nearer to that of the fit to theory, which
 * uses every reading; where the readings depart from theory, so that the fit is no judge, the one with fewer remarks of its
 * own, and log time if they have as many. A study with known truth (test/generators) says how often that is the nearer one.
 */
import { say, english, without, type Message } from "../message";
import { given, notApplicable, type Outcome } from "../outcome";
import { T50, T90 } from "./cv";
import type { TimeMethod } from "./constructions/picks";
import type { Increment } from "./reduce";
import { MISFIT } from "./signals";

/** What a reviewer wants to know of the two, as figures. */
export interface Suggestion {
  readonly method: TimeMethod;
  /** The other construction does not apply; it lies further from the fit; it has more remarks of its own; or as many. */
  readonly why: "the only one" | "nearer to the fit" | "fewer remarks" | "as many remarks";
  /** Why the other does not apply, where it does not. */
  readonly otherRefusal?: Message;
  /** cv by root time over cv by log time, where both apply. */
  readonly ratio?: number;
  /** cv by each over that of the fit, where the fit was the judge. */
  readonly overFit?: Readonly<Record<TimeMethod, number>>;
  /** Whether cv by each lies inside the 95 % interval of the fit's. */
  readonly inInterval?: Readonly<Record<TimeMethod, boolean>>;
  /** Remarks that one has and the other has not. */
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
      : notApplicable(say`neither construction applies: ${logTime.reason}; ${rootTime.reason}`);
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
  // A fit that the readings do not follow is no judge of the constructions.
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
