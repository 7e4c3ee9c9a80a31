/**
 * The study behind the limits of src/reduction/increment/signals.ts, which a person runs:
 *
 *   npx tsx test/study/signals.ts [curves of each scenario, 60 if left out]
 *
 * Every curve of the generator, and as many that go through one hardship after another without a gap (noise, creep, an early end,
 * a late first reading), is reduced by each method with the limits lifted, so that it answers whatever the readings say. For
 * each signal it prints, of the curves that no other limit refuses, how many cv are off by more than 15 %: where the limit
 * refuses, where it remarks, and where it says nothing. A limit parts good from bad where the first share is large and the last
 * one small. "-" is a zone in which no curve lies. Last come misfit and drift of curves of theory and of curves that are no
 * consolidation.
 */
import { T50, T90 } from "../../src/reduction/increment/cv";
import { logTime } from "../../src/reduction/increment/constructions/log-time";
import { cleanReadings } from "../../src/reduction/increment/readings";
import { rootTime } from "../../src/reduction/increment/constructions/root-time";
import {
  FIT_LIMITS,
  judge,
  LOG_TIME_LIMITS,
  ROOT_TIME_LIMITS,
  signalsOf,
  type Limits,
  type Signals,
} from "../../src/reduction/increment/signals";
import { fitTheory } from "../../src/reduction/increment/fit/theory-fit";
import { KINDS, noConsolidation } from "../generators/no-consolidation";
import { BY_HAND, degree, random, SCENARIOS, type TimeCurve } from "../generators/time-curves";
import { say } from "../../src/reduction/message";

const CURVES = Number(process.argv[2] ?? 60);
/** An answer is bad if its cv is off by more percent than this. */
const BAD = 15;

/** A record that no limit refuses. */
const GOOD: Signals = {
  steps: Infinity,
  primarySteps: Infinity,
  clearness: Infinity,
  steepness: Infinity,
  bend: Infinity,
  lastT: Infinity,
  firstU: 0,
  early: Infinity,
  misfit: 0,
  drift: 0,
};

interface Case {
  readonly signals: Signals;
  /** Error of cv in percent; infinite if the method gives none, or there is none to give. */
  readonly error: number;
}

const METHODS: Readonly<Record<string, Limits>> = {
  "log time": LOG_TIME_LIMITS,
  "root time": ROOT_TIME_LIMITS,
  fit: FIT_LIMITS,
};

/** Theory with creep on the hand schedule, dial of 0.001 mm; one hardship each, of any size from none to hopeless. */
function swept(seed: number): Omit<TimeCurve, "exact" | "readAt"> {
  const r = random(seed * 15_485_863);
  const hardship = r.pick(["noise", "creep", "end", "first"]);
  const t50 = r.logUniform(2, 20);
  const primary = r.logUniform(0.2, 1);
  const creep = hardship === "creep" ? r.logUniform(0.1, 1.5) : r.uniform(0.03, 0.12);
  const noise = hardship === "noise" ? primary * r.logUniform(0.004, 0.1) : 0.0007;
  const T = (t: number) => (0.19673075 * t) / t50;
  const last = hardship === "end" ? r.logUniform(0.3, 5) : Infinity;
  const first = hardship === "first" ? r.logUniform(0.005, 0.5) : 0;
  const times = BY_HAND.filter((t) => T(t) >= first && T(t) <= last);
  if (last < Infinity) times.push((last * t50) / 0.19673075);
  const at = (t: number) => primary * (degree(T(t)) + (creep / 3) * Math.log10(1 + (T(t) / 1.10135) ** 3));
  return {
    times,
    readings: times.map((t) => Math.round(1000 * (2 + at(t) + noise * r.normal())) / 1000),
    height: 20,
    truth: { t50, d0: 2, d100: 2 + primary, primary, cv: (0.19673075 * 100) / t50 },
  };
}

const SWEEP = { name: "sweep", make: swept };
const countOf = (name: string): number =>
  name === "logger at a steady rate" ? CURVES / 10 : name === SWEEP.name ? CURVES * SCENARIOS.length : CURVES;

const cases: Record<string, Case[]> = { "log time": [], "root time": [], fit: [] };
for (const { name, make } of [...SCENARIOS, SWEEP])
  for (let seed = 1; seed <= countOf(name); seed++) {
    const { times, readings, height, truth } = make(300_000 + seed);
    const cleaned = cleanReadings(times, readings);
    if (!cleaned.ok) continue;
    const fit = fitTheory(cleaned.value);
    if (!fit.ok) continue;
    const signals = signalsOf(cleaned.value, fit.value);
    const log = logTime(cleaned.value, fit.value, GOOD, {}, "aided");
    const root = rootTime(cleaned.value, fit.value, GOOD, {}, "aided");
    const rates = {
      "log time": log.ok ? T50 / log.value.t50 : NaN,
      "root time": root.ok ? T90 / root.value.t90 : NaN,
      fit: fit.value.rate,
    };
    for (const [method, rate] of Object.entries(rates)) {
      const error = 100 * Math.abs((rate * (height / 2) ** 2) / truth.cv - 1);
      cases[method].push({ signals, error: truth.primary > 0 && Number.isFinite(error) ? error : Infinity });
    }
  }

const share = (some: readonly Case[]): string =>
  some.length
    ? `${((100 * some.filter(({ error }) => error > BAD).length) / some.length).toFixed(0)} % of ${some.length}`
    : "-";

const SIGNALS = ["clearness", "steepness", "bend", "lastT", "firstU", "early"] as const;

for (const [method, limits] of Object.entries(METHODS)) {
  const lifted = (signal: (typeof SIGNALS)[number], { signals }: Case) =>
    judge({ ...signals, [signal]: GOOD[signal] }, limits, say``).refusal === undefined;
  const rows = SIGNALS.map((signal) => {
    const [refuse, remark] = limits[signal];
    const sense = signal === "firstU" ? -1 : 1;
    const beyond = (limit: number) => (one: Case) => sense * one.signals[signal] < sense * limit;
    const all = cases[method].filter((one) => lifted(signal, one));
    return {
      method,
      signal,
      limits: `${refuse} / ${remark}`,
      refused: share(all.filter(beyond(refuse))),
      remarked: share(all.filter((one) => !beyond(refuse)(one) && beyond(remark)(one))),
      neither: share(all.filter((one) => !beyond(remark)(one))),
    };
  });
  console.table(rows);
}

const answered = (method: string) =>
  cases[method].filter(({ signals }) => judge(signals, METHODS[method], say``).refusal === undefined);
for (const method of Object.keys(METHODS)) {
  const refused = cases[method].filter((one) => !answered(method).includes(one));
  console.log(`${method}: bad of those answered ${share(answered(method))}; of those refused ${share(refused)}`);
}

interface Curve {
  readonly times: readonly number[];
  readonly readings: readonly number[];
}

/** The 5th, 50th and 95th percentile of misfit (percent of primary) and drift. */
function misfits(name: string, curves: readonly Curve[]) {
  const found = curves.flatMap(({ times, readings }) => {
    const cleaned = cleanReadings(times, readings);
    const fit = cleaned.ok ? fitTheory(cleaned.value) : cleaned;
    return cleaned.ok && fit.ok ? [signalsOf(cleaned.value, fit.value)] : [];
  });
  const of = (read: (s: Signals) => number) => {
    const sorted = found.map(read).sort((a, b) => a - b);
    return [0.05, 0.5, 0.95].map((p) => sorted[Math.floor(p * sorted.length)].toFixed(2)).join("  ");
  };
  return { name, curves: found.length, "misfit, %": of(({ misfit }) => 100 * misfit), drift: of(({ drift }) => drift) };
}

const seeds = Array.from({ length: CURVES }, (_, i) => 300_001 + i);
const THEORY = [
  "logger of 0.001 mm",
  "dial of 0.0001 in",
  "dial of 0.01 mm",
  "much secondary compression",
  "slow for 24 h",
];
console.table([
  ...THEORY.map((name) => {
    const { make } = SCENARIOS.find((scenario) => scenario.name === name)!;
    return misfits(name, seeds.map(make));
  }),
  ...KINDS.map((kind) =>
    misfits(
      kind,
      seeds.map((seed) => noConsolidation(kind, seed)),
    ),
  ),
]);
