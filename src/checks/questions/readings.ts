/** Questions about the readings of each load and their times: order, first readings, and how far they reach. */
import { cellNamed, nameOf, type TestRecord, type Reading } from "../../record/record";
import { say, digits } from "../../reduction/message";
import { agree, ask, cannotAsk, check, COMMON, figure, within, type Answer, type Question } from "../check";
import type { LoadReduced } from "../../record/reduced/load";
import { T50 } from "../../reduction/increment/cv";
import { T_END_OF_PRIMARY } from "../../reduction/increment/fit/terzaghi";
import { firstOf, lastOf, neighbours, nth } from "../../reduction/numeric/lists";
import type { EndRuleWords } from "../../specification/form/end-rules";
import { eachLoad } from "./which-loads";

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

/** Lengths of one turn of the hand of a dial, mm. */
const TURNS = [0.2, 1, 2.54];

/** The questions in words; a function, so that the bundle of the worksheet functions leaves the words out. */
export const readingQuestions = (): Readonly<Record<string, Question>> => ({
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

/** How each question is answered. */
export const READING_CHECKS = [
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
];
