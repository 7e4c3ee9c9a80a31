/** Questions about the readings of each load and the results of the constructions. */
import { dialSense } from "../../record/load-curve";
import { cellNamed, nameOf, type Reading, type TestRecord } from "../../record/record";
import { loadSteps, type LoadKind } from "../../reduction/curve/loads";
import { T50 } from "../../reduction/increment/cv";
import { levelShown } from "../../reduction/increment/level-decimals";
import type { CleanReadings } from "../../reduction/increment/readings";
import { T_END_OF_PRIMARY } from "../../reduction/increment/fit/terzaghi";
import { say, verbatim, digits, type Message } from "../../reduction/message";
import { firstOf, lastOf, neighbours, nth } from "../../reduction/numeric/lists";
import { given, then, type Outcome } from "../../reduction/outcome";
import type { EndRuleWords } from "../../specification/form/end-rules";
import {
  agree,
  ask,
  cannotAsk,
  check,
  COMMON,
  figure,
  gravest,
  shown,
  within,
  type Answer,
  type Figure,
  type Question,
} from "../check";
import { inKpa, type LoadReduced, type Reduced } from "../../record/reduced-test";

type Case = { readonly load: Message; readonly answer: Answer };

const READINGS = say`it needs loads with readings (times_01, readings_01 and on)`;

/** Asks a question of each load that has readings. */
const eachLoad = ({ loads }: Reduced, answer: (load: LoadReduced) => Answer | undefined): Answer => {
  const cases = loads
    .filter(({ record }) => record.readings.length > 0)
    .flatMap((load): Case[] => {
      const found = answer(load);
      return found ? [{ load: load.called, answer: found }] : [];
    });
  return gravest(cases, READINGS);
};

interface Read {
  readonly row: number;
  readonly time: number;
  readonly reading: number;
}
const whole = (readings: readonly Reading[]): Read[] =>
  readings.filter((one): one is Read => one.time !== undefined && one.reading !== undefined);

/** t50 in minutes, by the log-time construction or, if that refuses, by the fit to theory. */
function halfTime({ increment: { logTime, fit } }: LoadReduced): number | undefined {
  if (logTime.ok) return logTime.value.t50;
  return fit.ok ? T50 / fit.value.rate : undefined;
}

/** t100 in minutes, by the log-time construction or, if that refuses, by the fit to theory. */
function endOfPrimary({ increment: { logTime, fit } }: LoadReduced): number | undefined {
  if (logTime.ok) return logTime.value.t100;
  return fit.ok ? T_END_OF_PRIMARY / fit.value.rate : undefined;
}

/** The rules by which a load ends with primary, so that it shows no tail. */
const TO_THE_END_OF_PRIMARY: readonly EndRuleWords[] = ["t100 by log time", "t100 by root time"];

/** The cell that says that each load stays until primary has ended, so that no tail is needed; undefined if none does. */
function endOfPrimaryIn({ words }: TestRecord): "load_end_rule" | "test_method" | undefined {
  const rule = words.load_end_rule;
  if (rule !== undefined) return TO_THE_END_OF_PRIMARY.some((one) => one === rule) ? "load_end_rule" : undefined;
  return words.test_method === "to end of primary" ? "test_method" : undefined;
}

const noTime = ({ increment: { fit } }: LoadReduced): Answer =>
  cannotAsk(fit.ok ? say`the readings give no time` : fit.reason);

/** The value that the sheet shows for a load, or the recalculated value if the sheet shows none. */
const shownOr = <T>(shown: number | undefined, found: Outcome<T>, read: (value: T) => number): Outcome<number> =>
  shown === undefined ? then(found, (value) => given(read(value))) : given(shown);

/** A level of the readings, which a sentence gives to their step and one digit more. */
const levelFigure = (record: TestRecord, what: Message, level: number, cleaned: Outcome<CleanReadings>): Figure => ({
  ...figure(record, what, level, "divisions"),
  ...(cleaned.ok && { inWords: levelShown(level, cleaned.value.step) }),
});

/** Lengths of one turn of the hand of a dial, mm. */
const TURNS = [0.2, 1, 2.54];

const onBoth = (d: "d0" | "d100"): Question => ({
  question: say`Do log time and root time agree on ${verbatim(d)}?`,
  about: [`log_${d}`, `root_${d}`],
  severity: "explain",
  basis: COMMON,
  units: { share: "ratio of primary compression" },
});

/** The readings and their times: order, first readings, and how far they reach. */
const readingQuestions = (): Readonly<Record<string, Question>> => ({
  Q23: {
    question: say`Do the readings of each load move in one direction?`,
    about: ["readings"],
    severity: "explain",
    basis: COMMON,
    units: { steps: "steps of the dial" },
  },
  Q24: {
    question: say`Does each load begin at the reading at which the one before ended?`,
    about: ["readings"],
    severity: "explain",
    basis: COMMON,
    units: { steps: "steps of the dial" },
  },
  Q25: {
    question: say`Do the times of each load begin at 0 and grow?`,
    about: ["times"],
    severity: "stop",
    basis: say`logic`,
  },
  Q26: {
    question: say`Are all times in minutes?`,
    about: ["times"],
    severity: "explain",
    basis: COMMON,
    units: { stretch: "", shrink: "" },
  },
  Q27: {
    question: say`Was the first reading early enough?`,
    about: ["times"],
    severity: "explain",
    basis: COMMON,
    units: { latest: "min", share: "ratio of t50" },
  },
  Q28: {
    question: say`Are there enough readings before t50?`,
    about: ["log_t50"],
    severity: "stop",
    basis: COMMON,
    units: { readings: "readings" },
  },
  Q29: {
    question: say`Do t90 and t100 lie within the readings?`,
    about: ["root_t90", "log_d100"],
    severity: "stop",
    basis: say`logic`,
  },
  Q30: {
    question: say`Did each load stay until primary consolidation was over?`,
    about: ["log_t100"],
    severity: "stop",
    basis: say`${COMMON}; loads that stay to the end of primary: ASTM D2435, method B, from memory`,
    units: { stop: "times t100", explain: "times t100, loads of a fixed time" },
  },
  Q31: {
    question: say`Is the tail long enough for the coefficient of secondary compression?`,
    about: ["tail_slope"],
    severity: "explain",
    basis: COMMON,
    units: { cycles: "log cycles" },
  },
});

/** The results of the constructions: d0, d100, cv and the compression that they measure. */
const constructionQuestions = (): Readonly<Record<string, Question>> => ({
  Q32: onBoth("d0"),
  Q33: onBoth("d100"),
  Q34: {
    question: say`Do log time and root time agree on cv?`,
    about: ["cv_log_time", "cv_root_time"],
    severity: "stop",
    basis: say`${COMMON}; root time is usually the higher (Sridharan et al. 1987; Al-Zoubi 2008, from their abstracts)`,
    units: { explain: "times", stop: "times" },
  },
  Q35: {
    question: say`Does cv change gradually from load to load of first loading?`,
    about: ["cv_log_time"],
    severity: "explain",
    basis: COMMON,
    units: { times: "times" },
  },
  Q36: {
    question: say`Is cv that of a soil?`,
    about: ["cv_chosen"],
    severity: "stop",
    basis: COMMON,
    units: { explain_below: "m2/yr", explain_above: "m2/yr", stop_below: "m2/yr", stop_above: "m2/yr" },
  },
  Q37: {
    question: say`Is primary compression large against the resolution of the dial?`,
    about: ["log_d0", "log_d100"],
    severity: "explain",
    basis: say`arithmetic: half a step of 20 is 10 % of cv`,
    units: { steps: "steps of the dial" },
  },
  Q38: {
    question: say`Is the initial compression small?`,
    about: ["log_d0"],
    severity: "explain",
    basis: COMMON,
    units: { share: "ratio of the load's compression" },
  },
  Q39: {
    question: say`Was the specimen saturated where cv is reported?`,
    about: ["saturation_initial", "cv_chosen"],
    severity: "explain",
    basis: say`ASTM D2435, scope: cv applies to saturated soil`,
    units: { saturation: "ratio" },
  },
  Q75: {
    question: say`Does each load stay on one side of the preconsolidation stress?`,
    about: ["cv_log_time", "cv_root_time", "preconsolidation_stress"],
    severity: "note",
    basis: COMMON,
  },
});

/** The questions in words; a function, so that the bundle of the worksheet functions leaves the words out. */
export const timeCurveQuestions = (): Readonly<Record<string, Question>> => ({
  ...readingQuestions(),
  ...constructionQuestions(),
});

/** How each question is answered. */
export const TIME_CURVE_CHECKS = [
  check("Q23", { steps: 3 }, (record, reduced, l) => {
    const factor = record.numbers.dial_factor;
    return eachLoad(reduced, ({ record: { readings }, increment: { cleaned, jump } }) => {
      if (!cleaned.ok) return cannotAsk(cleaned.reason);
      // Q22 tells of a dial that was reset: the readings after it go on in their own direction.
      if (jump) return undefined;
      const read = whole(readings);
      if (read.length < 3) return cannotAsk(say`the load has fewer than 3 readings`);
      const sense = Math.sign(lastOf(read).reading - firstOf(read).reading) || 1;
      const backs = neighbours(read).map(([before, one]) => ({
        ...one,
        back: sense * (before.reading - one.reading),
      }));
      const worst = backs.reduce((a, b) => (b.back > a.back ? b : a));
      const limit = l.steps * cleaned.value.step;
      // The reading before the step back is the wrong one if the others go one way without it, and do not without the other.
      const at = backs.indexOf(worst);
      const [earlier = NaN, before = NaN, after = NaN] = [-1, 0, 2].map((step) => read[at + step]?.reading);
      const isAhead = sense * (earlier - worst.reading) <= limit && sense * (before - after) > limit;
      const { row, time } = isAhead ? nth(read, at) : worst;
      const isTurn =
        factor !== undefined && TURNS.some((length) => Math.abs(worst.back * factor - length) < 0.05 * length);
      const answer = within(
        record,
        say`the greatest step back`,
        Math.max(0, worst.back),
        "divisions",
        { explain_above: limit },
        isTurn && !isAhead
          ? say`row ${row} of the readings (${digits(time, 4)} min) goes back against the movement (one turn of the dial's hand): check it`
          : say`row ${row} of the readings (${digits(time, 4)} min) goes against the movement of the others: check it`,
      );
      return { ...answer, row };
    });
  }),
  check("Q24", { steps: 2 }, (record, reduced, l) => {
    let before = record.numbers.zero_reading;
    return eachLoad(reduced, ({ record: { readings }, end, increment: { cleaned } }) => {
      const start = readings.find(({ time, reading }) => time === 0 && reading !== undefined)?.reading;
      const ended = before;
      before = end.ok ? end.value.reading : undefined;
      if (start === undefined) return cannotAsk(say`the load has no reading at time 0`);
      if (ended === undefined)
        return cannotAsk(say`the reading before the load is not known (${nameOf("zero_reading")})`);
      const step = cleaned.ok && cleaned.value.step > 0 ? cleaned.value.step : 1;
      return agree(
        record,
        [
          figure(record, say`reading at time 0`, start, "divisions"),
          figure(record, say`reading before the load`, ended, "divisions"),
        ],
        { value: start - ended, kind: "divisions" },
        { explain: l.steps * step },
        say`the dial was reset, or the zero was taken with the load on`,
      );
    });
  }),
  check("Q25", {}, (record, reduced) =>
    eachLoad(reduced, ({ record: { readings } }): Answer => {
      const timed = readings.filter((one): one is Reading & { time: number } => one.time !== undefined);
      const untimed = readings.find(({ time }) => time === undefined);
      if (untimed)
        return { status: "stop", row: untimed.row, sentence: say`row ${untimed.row} has a reading and no time` };
      const early = timed.find(({ time }) => time < 0);
      if (early)
        return {
          status: "stop",
          row: early.row,
          compared: [
            figure(record, say`time in row ${early.row}`, early.time, "minutes"),
            figure(record, say`moment of loading`, 0, "minutes"),
          ],
          sentence: say`row ${early.row} is at ${digits(early.time, 6)} min, before the load: correct or clear it`,
        };
      const back = neighbours(timed).find(([before, { time }]) => time <= before.time);
      if (back) {
        const [before, one] = back;
        return {
          status: "stop",
          compared: [
            figure(record, say`time in row ${one.row}`, one.time, "minutes"),
            figure(record, say`time in the row before`, before.time, "minutes"),
          ],
          row: one.row,
          sentence: say`row ${one.row} is at ${digits(one.time, 6)} min, not after the ${digits(before.time, 6)} min of the row before`,
        };
      }
      const first = firstOf(timed);
      const compared = [
        figure(record, say`first time`, first.time, "minutes"),
        figure(record, say`expected`, 0, "minutes"),
      ] as const;
      return first.time === 0
        ? { status: "pass", compared, sentence: say`the times begin at 0 and grow` }
        : {
            status: "explain",
            compared,
            sentence: say`the first reading is at ${first.time} min: the reading before the load is missing`,
          };
    }),
  ),
  check("Q26", { stretch: 30, shrink: 1 / 3 }, (record, reduced, l) =>
    eachLoad(reduced, ({ record: { readings } }) => {
      const times = whole(readings).map(({ time }) => time);
      const steps = neighbours(times).map(([before, time]) => time - before);
      const ratios = neighbours(steps).map(([before, step]) => step / before);
      if (ratios.length === 0 || steps.some((step) => step <= 0))
        return cannotAsk(say`it needs three readings in order of time`);
      const worst = ratios.reduce((a, b) => (Math.abs(Math.log(b)) > Math.abs(Math.log(a)) ? b : a));
      return within(
        record,
        say`the greatest change from one step of time to the next`,
        worst,
        "ratio",
        { explain_below: l.shrink, explain_above: l.stretch },
        say`are some times in seconds, hours or days?`,
      );
    }),
  ),
  check("Q27", { latest: 0.25, share: 0.25 }, (record, reduced, l) =>
    eachLoad(reduced, (load) => {
      const first = whole(load.record.readings).find(({ time }) => time > 0);
      if (!first) return cannotAsk(say`the load has no reading after time 0`);
      const t50 = halfTime(load);
      return within(
        record,
        say`the first reading`,
        first.time,
        "minutes",
        { explain_above: Math.min(l.latest, t50 === undefined ? Infinity : l.share * t50) },
        say`the beginning of the curve is not seen: read earlier`,
      );
    }),
  ),
  check("Q28", { readings: 3 }, (record, reduced, l) =>
    eachLoad(reduced, (load) => {
      if (load.unloading) return undefined;
      const t50 = halfTime(load);
      if (t50 === undefined) return noTime(load);
      const times = whole(load.record.readings)
        .map(({ time }) => time)
        .filter((time) => time > 0);
      const before = times.filter((time) => time < t50).length;
      return within(
        record,
        say`readings before t50 (${digits(t50, 3)} min)`,
        before,
        "number",
        { stop_below: 1, explain_below: l.readings },
        before === 0
          ? say`half of it was over before the first reading: cv cannot be found`
          : say`cv rests on few readings`,
      );
    }),
  ),
  check("Q29", {}, (record, reduced) =>
    eachLoad(reduced, ({ record: { results }, increment: { logTime, rootTime }, end }) => {
      const t100 = results.log_t100 ?? (logTime.ok ? logTime.value.t100 : undefined);
      const t90 = results.root_t90 ?? (rootTime.ok ? rootTime.value.t90 : undefined);
      const times = [t100, t90].filter((time): time is number => time !== undefined);
      if (times.length === 0) return cannotAsk(say`the load has neither t90 nor t100`);
      return ask(end, ({ time }) =>
        within(
          record,
          say`the later of t90 and t100`,
          Math.max(...times),
          "minutes",
          { stop_above: time },
          say`it lies beyond the last reading: it was not measured`,
        ),
      );
    }),
  ),
  check("Q30", { stop: 1, explain: 3 }, (record, reduced, l) =>
    eachLoad(reduced, (load) => {
      if (load.unloading) return undefined;
      const t100 = endOfPrimary(load);
      if (t100 === undefined) return noTime(load);
      return ask(load.end, ({ time }) =>
        within(
          record,
          say`the last reading over t100 (${digits(t100, 3)} min)`,
          time / t100,
          "number",
          endOfPrimaryIn(record) ? { stop_below: l.stop } : { stop_below: l.stop, explain_below: l.explain },
          time < l.stop * t100
            ? say`the load was changed before primary was over`
            : say`the load was changed too early to show its tail`,
        ),
      );
    }),
  ),
  check("Q31", { cycles: 0.5 }, (record, reduced, l) =>
    eachLoad(reduced, (load) => {
      if (load.unloading) return undefined;
      // A load that ends with primary has no tail, and no C alpha to question.
      const ruled = endOfPrimaryIn(record);
      if (ruled && load.record.results.c_alpha === undefined)
        return cannotAsk(
          say`the loads stay to the end of primary (${cellNamed(ruled)}): no C alpha is given, and no tail is due`,
        );
      const t100 = endOfPrimary(load);
      if (t100 === undefined) return noTime(load);
      return ask(load.end, ({ time }) =>
        within(
          record,
          say`the tail beyond t100, in log cycles`,
          Math.log10(time / t100),
          "number",
          { explain_below: l.cycles },
          say`do not rely on C alpha of this load`,
        ),
      );
    }),
  ),
  ...(["d0", "d100"] as const).map((d) =>
    check(d === "d0" ? "Q32" : "Q33", { share: d === "d0" ? 0.1 : 0.15 }, (record, reduced, l) =>
      eachLoad(reduced, ({ record: { results }, increment: { cleaned, logTime, rootTime } }) => {
        const from = shownOr(results.log_d0, logTime, ({ d0 }) => d0);
        const to = shownOr(results.log_d100, logTime, ({ d100 }) => d100);
        return ask(
          shownOr(results[`log_${d}`], logTime, (log) => log[d]),
          (byLog) =>
            ask(
              shownOr(results[`root_${d}`], rootTime, (root) => root[d]),
              (byRoot) =>
                ask(from, (d0) =>
                  ask(to, (d100) =>
                    agree(
                      record,
                      [
                        levelFigure(record, say`${verbatim(d)} by log time`, byLog, cleaned),
                        levelFigure(record, say`${verbatim(d)} by root time`, byRoot, cleaned),
                      ],
                      { value: (byLog - byRoot) / (d100 - d0), kind: "percent", of: say`of primary compression` },
                      { explain: l.share },
                      say`look at both plots`,
                    ),
                  ),
                ),
            ),
        );
      }),
    ),
  ),
  check("Q34", { explain: 2, stop: 3 }, (record, reduced, l) =>
    eachLoad(reduced, ({ record: { results }, cvLogTime, cvRootTime }) =>
      ask(shownOr(results.cv_log_time, cvLogTime, Number), (byLog) =>
        ask(shownOr(results.cv_root_time, cvRootTime, Number), (byRoot): Answer => {
          const answer = within(
            record,
            say`the greater over the lesser cv`,
            Math.max(byRoot / byLog, byLog / byRoot),
            "number",
            { stop_above: l.stop, explain_above: l.explain },
            say`rely on neither without looking at the plots`,
          );
          const compared = [
            figure(record, say`cv by root time`, byRoot, "cv"),
            figure(record, say`cv by log time`, byLog, "cv"),
          ] as const;
          return { ...answer, compared };
        }),
      ),
    ),
  ),
  check("Q35", { times: 5 }, (record, reduced, l) => {
    const virgin = virginLoads(record, reduced);
    const cvs = virgin.flatMap((load) => {
      const cv = load.cvLogTime.ok ? load.cvLogTime : load.cvRootTime;
      return cv.ok ? [{ load, cv: cv.value }] : [];
    });
    return gravest(
      neighbours(cvs).map(([before, { load, cv }]) => {
        const factor = Math.max(cv / before.cv, before.cv / cv);
        const answer = within(
          record,
          say`cv over that of the load before, or the reverse`,
          factor,
          "number",
          { explain_above: l.times },
          say`look at both time curves`,
        );
        return { load: load.called, answer };
      }),
      say`it needs cv of two loads beyond the preconsolidation stress`,
    );
  }),
  check("Q36", { explain_below: 0.01, explain_above: 200, stop_below: 0.001, stop_above: 1000 }, (record, reduced, l) =>
    eachLoad(reduced, ({ cvLogTime, cvRootTime }) =>
      ask(cvLogTime.ok ? cvLogTime : cvRootTime, (cv) =>
        within(record, say`cv`, cv, "cv", l, say`check the units of time and height`),
      ),
    ),
  ),
  check("Q37", { steps: 20 }, (record, reduced, l) =>
    eachLoad(reduced, ({ increment: { cleaned, fit } }) =>
      ask(cleaned, ({ step, travel }) =>
        step > 0
          ? within(
              record,
              fit.ok ? say`primary compression in steps of the dial` : say`the whole movement in steps of the dial`,
              Math.abs(fit.ok ? fit.value.primary : travel) / step,
              "number",
              { explain_below: l.steps },
              say`cv of this load is lost in the resolution`,
            )
          : cannotAsk(say`the readings show no step`),
      ),
    ),
  ),
  check("Q38", { share: 0.2 }, (record, reduced, l) => {
    const factor = record.numbers.dial_factor;
    let deflectionBefore = 0;
    return eachLoad(reduced, (load) => {
      const deflection: number = load.deflection.ok ? load.deflection.value : deflectionBefore;
      const apparatus = deflection - deflectionBefore;
      deflectionBefore = deflection;
      if (load.unloading) return undefined;
      const { cleaned, fit } = load.increment;
      return ask(cleaned, ({ zeroReading }) =>
        ask(load.end, ({ reading }) => {
          if (zeroReading === undefined) return cannotAsk(say`the load has no reading at time 0`);
          if (!fit.ok) return cannotAsk(fit.reason);
          if (!factor) return cannotAsk(say`it needs Dial factor (${nameOf("dial_factor")})`);
          const sense = dialSense(record) === "fall" ? -1 : 1;
          const total = sense * (reading - zeroReading) * factor - apparatus;
          if (total <= 0) return cannotAsk(say`the specimen did not compress under the load`);
          const atOnce = sense * (fit.value.d0 - zeroReading) * factor - apparatus;
          return within(
            record,
            say`share of compression at once, less the apparatus`,
            atOnce / total,
            "percent",
            { explain_above: l.share },
            say`gas in the pores, bedding, or a stiff soil: look at the first readings`,
          );
        }),
      );
    });
  }),
  check("Q39", { saturation: 0.95 }, (record, reduced, l) => {
    const reported = reduced.loads.some(({ cvLogTime, cvRootTime }) => cvLogTime.ok || cvRootTime.ok);
    if (!reported) return cannotAsk(say`no cv is reported`);
    return ask(reduced.specimen, ({ S0 }) =>
      within(
        record,
        say`initial saturation S0`,
        S0,
        "percent",
        { explain_below: l.saturation },
        say`cv is valid only if water filled the voids later: say so, or leave cv out`,
      ),
    );
  }),
  check("Q75", {}, (record, reduced) =>
    ask(reduced.preconsolidation, ({ stress: yieldStress }) => {
      const [load] = loadsOfKind(record, reduced, "across yield").filter((one) => one.record.readings.length > 0);
      if (!load) return { status: "pass", sentence: say`no load with readings passes it` };
      const limit = figure(record, say`preconsolidation stress`, inKpa(record, yieldStress), "stress");
      return {
        status: "note",
        compared: [figure(record, say`stress`, load.record.stress!, "stress"), limit],
        sentence: say`${load.called} passes ${shown(limit)}: cv and d100 are averages over both sides; take those of the loads before and after it`,
      };
    }),
  ),
];

/** The loads that do this to the specimen; none without a preconsolidation stress. */
function loadsOfKind(record: TestRecord, { preconsolidation, loads }: Reduced, kind: LoadKind): LoadReduced[] {
  if (!preconsolidation.ok) return [];
  const steps = loadSteps(
    loads.map((load) => load.record.stress ?? null),
    { before: record.numbers.seating_stress, preconsolidationStress: inKpa(record, preconsolidation.value.stress) },
  );
  return loads.filter((_, index) => steps[index]?.kind === kind);
}

/** The virgin loads of the test; none without a preconsolidation stress. */
export const virginLoads = (record: TestRecord, reduced: Reduced): LoadReduced[] =>
  loadsOfKind(record, reduced, "virgin");
