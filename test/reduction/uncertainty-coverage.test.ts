/**
 * How often the intervals of cv by hand constructions hold the truth, on curves of known truth with noise and
 * instrument steps.
 */
import { coefficientOfConsolidation, T50, T90 } from "../../src/reduction/increment/cv";
import { reduceIncrement } from "../../src/reduction/increment/reduce";
import { cvUncertainty, timeUncertainty, type HandMethod } from "../../src/reduction/uncertainty";
import { SCENARIOS } from "../generators/time-curves";
import { english } from "../../src/reduction/message";

const SEEDS = Array.from({ length: 12 }, (_, i) => 9_000 + i);

const held: Record<HandMethod, boolean[]> = { "log time": [], "root time": [] };
/** Upper over lower end of each interval. */
const widths: Record<HandMethod, number[]> = { "log time": [], "root time": [] };

beforeAll(() => {
  for (const { name, expect: expected, make } of SCENARIOS) {
    if (name.startsWith("exact") || name === "logger at a steady rate") continue;
    for (const seed of SEEDS) {
      const { times, readings, height, truth } = make(seed);
      const { fit, logTime, rootTime } = reduceIncrement(times, readings);
      if (!fit.ok) continue;
      const judge = (method: HandMethod, factor: number, time: number): void => {
        const u = timeUncertainty(method, fit.value.rateLow, fit.value.rateHigh);
        if (!u.ok) return;
        const cv = cvUncertainty({
          timeFactor: factor,
          time: { value: time, u: u.value * time },
          height: { value: height },
          drainage: "double",
        });
        if (!cv.ok) throw new Error(english(cv.reason));
        expect(cv.value.value).toBeCloseTo(coefficientOfConsolidation(factor, time, height, "double"), 9);
        widths[method].push(cv.value.high / cv.value.low);
        held[method].push(truth.cv >= cv.value.low && truth.cv <= cv.value.high);
      };
      if (logTime.ok && expected.LOG_TIME.band) judge("log time", T50, logTime.value.t50);
      if (rootTime.ok && expected.ROOT_TIME.band) judge("root time", T90, rootTime.value.t90);
    }
  }
});

test.each(["log time", "root time"] as const)(
  "the interval of cv by %s holds the truth at least nine times in ten, and not always",
  (method) => {
    const share = held[method].filter(Boolean).length / held[method].length;
    expect(held[method].length).toBeGreaterThan(100);
    expect(share).toBeGreaterThan(0.9);
    expect(share).toBeLessThan(0.985);
  },
);

/**
 * An interval that holds the truth only because it is wide says nothing: the typical widths of the numerical study are
 * 4.6 % (dial of 0.0001 in) to 7 % of cv by the fit.
 */
test.each([
  ["log time", 1.15, 1.4],
  ["root time", 1.25, 1.9],
] as const)(
  "upper over lower end of the interval of cv by %s: median below %d, 95 in 100 below %d",
  (method, middle, most) => {
    const sorted = [...widths[method]].sort((a, b) => a - b);
    expect(sorted[Math.floor(0.5 * sorted.length)]).toBeLessThan(middle);
    expect(sorted[Math.floor(0.95 * sorted.length)]).toBeLessThan(most);
  },
);
