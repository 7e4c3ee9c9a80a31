/**
 * The study behind PROGRESS, which a person runs; its table is in DEVELOPERS.md:
 *
 *   npx tsx test/study/progress.ts [rule, "log time" if left out] [curves of each kind, 300 if left out] [part of a kind's name]
 *     [curves read until just before the end, 2000 if left out]
 *
 * Every kind of made curve is read until nine moments, and 2000 curves of each kind until 97 % of the true t100, where "over" is
 * nearest to being too soon. For each kind it prints
 *   answered  percent of the curves that get an answer,
 *   holds     percent of the answers whose range holds the true t100, that of the construction on the curve without noise,
 *   high      percent of the answers whose range has an upper limit,
 *   width     middle of the upper over the lower limit,
 *   over      percent of the curves that are said to be over,
 *   too soon  percent of the curves that are said to be over, at 97 % of the true t100 or at any of the moments before it.
 * Last come curves that are no consolidation, of which something else is read: how many are said to be over.
 */
import { progress } from "../../src/reduction/increment/progress";
import { reduceIncrement } from "../../src/reduction/increment/reduce";
import { endByLogTime, endByRootTime } from "../generators/end-of-primary";
import * as other from "../generators/no-consolidation";
import { CUTS, justBefore, KINDS, standing, type Cut } from "../generators/standing-loads";

const RULE = process.argv[2] === "root time" ? "root time" : "log time";
const CURVES = Number(process.argv[3] ?? 300);
/** The number of curves that are read until just before the end, and the share of the true t100 at which they end. */
const NEAR_CURVES = Math.max(CURVES, Number(process.argv[5] ?? 2000));
const ONLY = process.argv[4] ?? "";

const percent = (count: number, of: number): string => (of ? ((100 * count) / of).toFixed(of > 999 ? 1 : 0) : "-");
const middle = (values: number[]): string => {
  const sorted = values.sort((a, b) => a - b);
  return sorted.length ? (sorted[sorted.length >> 1] ?? 0).toFixed(2) : "-";
};

for (const { name, make } of KINDS.filter((kind) => kind.name.includes(ONLY))) {
  const counts = CUTS.map(() => ({ answered: 0, holds: 0, over: 0, widths: [] as number[] }));
  let tooSoon = 0;
  for (let seed = 1; seed <= NEAR_CURVES; seed++) {
    const curve = make(500_000 + seed);
    const truth = (RULE === "log time" ? endByLogTime(curve) : endByRootTime(curve)).t100;
    let soon = false;
    const read = (cut: Cut) => {
      const { times, readings } = standing(curve, cut);
      const outcome = progress(reduceIncrement(times, readings), RULE);
      if (!outcome.ok || !outcome.value.expected.ok) return undefined;
      const over = outcome.value.verdict === "over";
      if (over && (times[times.length - 1] ?? 0) < truth) soon = true;
      return { over, end: outcome.value.expected.value };
    };
    read(justBefore(truth, curve));
    CUTS.forEach((cut, i) => {
      const count = counts[i];
      const seen = seed > CURVES ? undefined : read(cut);
      if (!count || !seen) return;
      const { low = 0, high = Infinity } = seen.end;
      count.answered++;
      if (truth >= low && truth <= high) count.holds++;
      if (high < Infinity) count.widths.push(high / low);
      if (seen.over) count.over++;
    });
    if (soon) tooSoon++;
  }
  console.log(`\n${name}: too soon ${percent(tooSoon, NEAR_CURVES)} %`);
  console.table(
    Object.fromEntries(
      counts.map(({ answered, holds, over, widths }, i) => [
        CUTS[i]?.name,
        {
          answered: percent(answered, CURVES),
          holds: percent(holds, answered),
          high: percent(widths.length, answered),
          width: middle(widths),
          over: percent(over, CURVES),
        },
      ]),
    ),
  );
}

for (const kind of other.KINDS.filter((one) => one.includes(ONLY))) {
  const said: Record<string, number> = { refused: 0 };
  for (let seed = 1; seed <= Math.min(CURVES, 200); seed++) {
    const { times, readings } = other.noConsolidation(kind, seed);
    for (const share of [0.6, 0.75, 0.9]) {
      const count = Math.round(share * times.length);
      const outcome = progress(reduceIncrement(times.slice(0, count), readings.slice(0, count)), RULE);
      const word = outcome.ok ? outcome.value.verdict : "refused";
      said[word] = (said[word] ?? 0) + 1;
    }
  }
  console.log(`\n${kind}, read to 60, 75 and 90 % of the readings:`, JSON.stringify(said));
}
