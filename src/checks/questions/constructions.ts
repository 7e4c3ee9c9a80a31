/** Questions about the results of the constructions: d0, d100, cv and the compression that they measure. */
import { nameOf, type TestRecord } from "../../record/record";
import { say, verbatim, type Message } from "../../reduction/message";
import { given, then, type Outcome } from "../../reduction/outcome";
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
  type Question,
  type Figure,
} from "../check";
import { inKpa } from "../../record/reduced/inputs";
import { dialSense } from "../../record/load-curve";
import { levelShown } from "../../reduction/increment/level-decimals";
import type { CleanReadings } from "../../reduction/increment/readings";
import { neighbours } from "../../reduction/numeric/lists";
import { virginLoads, eachLoad, loadsOfKind } from "./which-loads";

/** The value that the sheet shows for a load, or the recalculated value if the sheet shows none. */
const shownOr = <T>(shown: number | undefined, found: Outcome<T>, read: (value: T) => number): Outcome<number> =>
  shown === undefined ? then(found, (value) => given(read(value))) : given(shown);

/** A level of the readings, which a sentence gives to their step and one digit more. */
const levelFigure = (record: TestRecord, what: Message, level: number, cleaned: Outcome<CleanReadings>): Figure => ({
  ...figure(record, what, level, "divisions"),
  ...(cleaned.ok && { inWords: levelShown(level, cleaned.value.step) }),
});

const onBoth = (d: "d0" | "d100"): Question => ({
  question: say`Do log time and root time agree on ${verbatim(d)}?`,
  about: [`log_${d}`, `root_${d}`],
  severity: "explain",
  basis: COMMON,
  units: { share: "ratio of primary compression" },
});

/** The questions in words; a function, so that the bundle of the worksheet functions leaves the words out. */
export const constructionQuestions = (): Readonly<Record<string, Question>> => ({
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

/** How each question is answered. */
export const CONSTRUCTION_CHECKS = [
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
