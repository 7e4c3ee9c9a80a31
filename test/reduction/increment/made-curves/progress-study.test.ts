/**
 * Loads that are still on, with known truth. The goals are those of the study (test/study/progress.ts), on fewer
 * curves: the range holds the true t100 nine times in ten, and "over" comes too soon in less than one curve in a
 * hundred.
 */
import fc from "../../../properties";
import { END_RULES } from "../../../../src/reduction/increment/end-of-primary";
import {
  progress,
  type ExpectedEnd,
  type Progress,
  type ProgressRule,
} from "../../../../src/reduction/increment/progress";
import { reduceIncrement } from "../../../../src/reduction/increment/reduce";
import { endByLogTime, endByRootTime } from "../../../generators/end-of-primary";
import { CUTS, justBefore, KINDS, standing } from "../../../generators/standing-loads";
import { english } from "../../../../src/reduction/message";

const CURVES = 5;
const TRUTH = { "log time": endByLogTime, "root time": endByRootTime };

const endOf = ({ expected }: Progress): ExpectedEnd => {
  if (!expected.ok) throw new Error(english(expected.reason));
  return expected.value;
};

describe.each(END_RULES)(
  "%s, made curves read until U of 50 to 95 %%, T of 1.2, 2 and 4, and just before the end",
  (rule) => {
    interface Seen {
      readonly kind: string;
      readonly cut: string;
      readonly answered: boolean;
      readonly holds: boolean;
      readonly over: boolean;
      readonly tooSoon: boolean;
    }
    const seen: Seen[] = [];
    beforeAll(() => {
      for (const { name: kind, make } of KINDS)
        for (let seed = 1; seed <= CURVES; seed++) {
          const curve = make(40_000 + seed);
          const truth = TRUTH[rule](curve).t100;
          for (const cut of [...CUTS, justBefore(truth, curve)]) {
            const { times, readings } = standing(curve, cut);
            const outcome = progress(reduceIncrement(times, readings), rule);
            const end = outcome.ok && outcome.value.expected.ok ? outcome.value.expected.value : undefined;
            const over = outcome.ok && outcome.value.verdict === "over";
            seen.push({
              kind,
              cut: cut.name,
              answered: end !== undefined,
              holds: end !== undefined && truth >= (end.low ?? 0) && truth <= (end.high ?? Infinity),
              over,
              tooSoon: over && (times[times.length - 1] ?? 0) < truth,
            });
          }
        }
    });
    const share = (some: readonly Seen[], what: "answered" | "holds" | "over") =>
      some.filter((one) => one[what]).length / some.length;
    const at = (cut: string) => seen.filter((one) => one.cut === cut);

    test("the range holds the true t100, at every moment and in every kind", () => {
      const answered = seen.filter((one) => one.answered);
      for (const { name } of CUTS) expect(share(answered.filter(({ cut }) => cut === name), "holds")).toBeGreaterThan(0.9); // prettier-ignore
      for (const { name } of KINDS) expect(share(answered.filter(({ kind }) => kind === name), "holds")).toBeGreaterThan(0.9); // prettier-ignore
    });

    test('"over" does not come too soon', () => {
      expect(seen.filter(({ tooSoon }) => tooSoon).length / (CURVES * KINDS.length)).toBeLessThan(0.01);
    });

    test("answers and verdicts come as early as the readings allow", () => {
      expect(share(at("U 80"), "answered")).toBeGreaterThan(0.85);
      expect(share(at("T 4"), "answered")).toBe(1);
      expect(share(at(rule === "log time" ? "T 2" : "T 4"), "over")).toBeGreaterThan(0.9);
    });
  },
);

test("the range holds a second answer that fits nearly as well", () => {
  for (let seed = 1; seed <= 80; seed++) {
    const kind = KINDS[seed % KINDS.length];
    const cut = CUTS[seed % 3];
    if (!kind || !cut) throw new Error("no kind");
    const { times, readings: dial } = standing(kind.make(60_000 + seed), cut);
    const increment = reduceIncrement(times, dial);
    const outcome = progress(increment, "log time");
    if (!outcome.ok || !increment.theory.ok || increment.theory.value.otherRate === undefined) continue;
    const { rate, otherRate } = increment.theory.value;
    const { low = 0, high = Infinity, t100 } = endOf(outcome.value);
    // The second end by its rate alone; creep moves the crossing by a fifth at most.
    const other = (t100 * rate) / otherRate;
    expect([seed, other * 1.2 >= low && other / 1.2 <= high]).toEqual([seed, true]);
  }
});

describe("the same load, measured in another way", () => {
  const close = (a: number | undefined, b: number | undefined, factor = 1) =>
    a === undefined || b === undefined ? expect(a).toBe(b) : expect(a / (b * factor)).toBeCloseTo(1, 4);
  const times = ["t50", "t90", "t100", "low", "high"] as const;
  const kind = fc.constantFrom(
    ...KINDS.filter(({ name }) => /^(dial|logger of|large|slow|exact theory with)/.test(name)),
  );
  const load = fc
    .tuple(kind, fc.integer({ min: 1, max: 500 }), fc.constantFrom(...CUTS), fc.constantFrom(...END_RULES))
    .map(([{ make }, seed, cut, rule]) => ({ ...standing(make(seed), cut), rule }));
  const compare = (
    one: { times: number[]; readings: number[]; rule: ProgressRule },
    other: { times: number[]; readings: number[] },
    time: number,
    d100: (d: number) => number,
  ) => {
    const a = progress(reduceIncrement(one.times, one.readings), one.rule);
    const b = progress(reduceIncrement(other.times, other.readings), one.rule);
    expect(b.ok).toBe(a.ok);
    if (!a.ok || !b.ok) return;
    expect(b.value.verdict).toBe(a.value.verdict);
    const [first, second] = [endOf(a.value), endOf(b.value)];
    for (const t of times) close(second[t], first[t], time);
    expect(second.U).toBeCloseTo(first.U, 4);
    expect(Math.abs(second.d100 / d100(first.d100) - 1)).toBeLessThan(1e-4);
    expect(Math.abs(b.value.remaining - time * a.value.remaining)).toBeLessThan(1e-3 * time * first.t100);
  };
  const runs = { numRuns: 30 };

  test("in inches, or on a dial that stands higher or runs backwards, the answers agree", () => {
    fc.assert(
      fc.property(load, fc.constantFrom(1 / 25.4, -1, 10), fc.constantFrom(0, 20, 300), (one, factor, shift) => {
        const move = (d: number) => factor * d + Math.sign(factor) * shift;
        compare(one, { times: one.times, readings: one.readings.map(move) }, 1, move);
      }),
      runs,
    );
  });

  test("k times slower, every time is k times as long", () => {
    fc.assert(
      fc.property(load, fc.constantFrom(0.25, 2, 4), (one, k) => {
        const { theory } = reduceIncrement(one.times, one.readings);
        // The search for an error of the time zero works in seconds, not in shares of t50.
        fc.pre(!theory.ok || theory.value.timeZero === 0);
        const slower = one.times.map((t) => k * t);
        const again = reduceIncrement(slower, one.readings).theory;
        fc.pre(!again.ok || again.value.timeZero === 0);
        compare(one, { times: slower, readings: one.readings }, k, (d) => d);
      }),
      runs,
    );
  });
});
