/** Questions about the virgin line, the preconsolidation stress and the indices. */
import { nameOf } from "../../record/record";
import { say } from "../../reduction/message";
import { ask, cannotAsk, check, COMMON, gravest, pair, within, type Question } from "../check";
import { then } from "../../reduction/outcome";
import { inKpa } from "../../record/reduced/inputs";
import { nth } from "../../reduction/numeric/lists";
import { creepRatio, usualCreepRatio } from "../../reduction/curve/creep-ratio";
import { compressionIndex, STEEPEST_SOIL } from "../../reduction/curve/indices";
import { virginLineOf } from "../../reduction/curve/methods/reading";
import { asVoidRatio } from "./as-void-ratio";
import { picksOfCurve } from "../../record/picks";
import { virginLoads } from "./which-loads";

/** The questions in words; a function, so that the bundle of the worksheet functions leaves the words out. */
export const yieldQuestions = (): Readonly<Record<string, Question>> => ({
  Q44: {
    question: say`Does the virgin line have enough points, and reach far enough beyond yield?`,
    about: ["load_stress"],
    severity: "explain",
    basis: say`${COMMON}; the result depends on the greatest stress (J. Mar. Sci. Eng. 2026, 14(8), 740, from its abstract)`,
    units: { points: "points", reach: "times" },
  },
  Q45: {
    question: say`Does the preconsolidation stress lie between the loads that could show it?`,
    about: ["preconsolidation_stress"],
    severity: "stop",
    basis: COMMON,
  },
  Q46: {
    question: say`Do the methods agree on the preconsolidation stress?`,
    about: ["preconsolidation_stress"],
    severity: "explain",
    basis: COMMON,
    units: { explain: "ratio of the median", unreliable: "ratio of the median" },
  },
  Q47: {
    question: say`Does the curve have a bend, like that of an undisturbed specimen?`,
    about: ["recompression_index", "compression_index"],
    severity: "explain",
    basis: COMMON,
    units: { share: "ratio" },
  },
  Q48: {
    question: say`Are recompression and swelling index in proportion?`,
    about: ["recompression_index", "swelling_index"],
    severity: "explain",
    basis: COMMON,
    units: { explain_below: "Cr/Cc", explain_above: "Cr/Cc", times: "Cs against Cr" },
  },
  Q49: {
    question: say`Is the compression index that of a soil?`,
    about: ["compression_index"],
    severity: "explain",
    basis: COMMON,
    units: { explain_below: "Cc", explain_above: "Cc", ratio_above: "CR" },
  },
  Q50: {
    question: say`Is secondary compression in proportion to the slope of the curve under the same load?`,
    about: ["c_alpha", "compression_index"],
    severity: "explain",
    basis: say`Mesri & Castro 1987 (concept); limits from Terzaghi, Peck & Mesri 1996, from memory`,
    units: { explain_below: "", explain_above: "" },
  },
});

/** How each question is answered. */
export const YIELD_CHECKS = [
  check("Q44", { points: 3, reach: 4 }, (record, reduced, l) =>
    pair(
      then(reduced.curve, (test) => virginLineOf(test, picksOfCurve(record.picks))),
      reduced.preconsolidation,
      ({ curve, virgin }, { stress }) => {
        const greatest = Math.max(...curve.points.map((point) => point.stress));
        return gravest(
          [
            within(
              record,
              say`points on the virgin line`,
              virgin.to - virgin.from + 1,
              "number",
              { explain_below: l.points },
              say`more loads, or closer ones, make it certain`,
            ),
            within(
              record,
              say`the greatest stress over the preconsolidation stress`,
              greatest / stress,
              "number",
              { explain_below: l.reach },
              say`load further (eight times is the aim)`,
            ),
          ].map((answer) => ({ load: say`virgin line`, answer })),
        );
      },
    ),
  ),
  check("Q45", {}, (record, reduced) => {
    if (!reduced.curve.ok) return cannotAsk(reduced.curve.reason);
    const shown = record.results.preconsolidation_stress;
    if (shown === undefined && !reduced.preconsolidation.ok) return cannotAsk(reduced.preconsolidation.reason);
    const stress = shown ?? (reduced.preconsolidation.ok ? inKpa(record, reduced.preconsolidation.value.stress) : 0);
    const loads = reduced.loads.flatMap((load) => (load.firstLoading ? [load.record.stress!] : []));
    if (loads.length < 2) return cannotAsk(say`it needs two loads of first loading`);
    return within(
      record,
      say`preconsolidation stress`,
      stress,
      "stress",
      { stop_below: loads[1], stop_above: loads[loads.length - 1] },
      say`the test has no points on one side of it`,
    );
  }),
  check("Q46", { explain: 0.25, unreliable: 0.5 }, (record, reduced, l) =>
    ask(reduced.spread, ({ spread }) =>
      within(
        record,
        say`spread of the methods over their median`,
        spread,
        "percent",
        { explain_above: l.explain },
        spread > l.unreliable
          ? say`unreliable: do not report one number`
          : say`look at the curve, and at the points that each method used`,
      ),
    ),
  ),
  check("Q47", { share: 0.4 }, (record, reduced, l) =>
    ask(reduced.branches, ({ firstLoading }) =>
      pair(
        then(reduced.curve, (test) =>
          compressionIndex(test, { from: nth(firstLoading, 0).stress, to: nth(firstLoading, 1).stress }),
        ),
        reduced.compressionIndex,
        (first, Cc) =>
          within(
            record,
            say`slope of the first loads over that of the virgin line`,
            first.value / Cc.value,
            "ratio",
            { explain_above: l.share },
            say`the curve is rounded: disturbed, or already yielding under the first loads`,
          ),
      ),
    ),
  ),
  check("Q48", { explain_below: 0.02, explain_above: 0.25, times: 2 }, (record, reduced, l) =>
    pair(reduced.recompressionIndex, reduced.compressionIndex, (Cr, Cc) => {
      const share = within(
        record,
        say`Cr over Cc`,
        Cr.value / Cc.value,
        "ratio",
        l,
        say`look at where each slope was taken`,
      );
      const { swellingIndex: Cs } = reduced;
      if (!Cs.ok || Cr.value <= 0 || Cs.value.value <= 0) return share;
      const factor = Math.max(Cs.value.value / Cr.value, Cr.value / Cs.value.value);
      const swelling = within(
        record,
        say`the greater over the lesser of Cs and Cr`,
        factor,
        "ratio",
        { explain_above: l.times },
        say`unloading and reloading should be about as steep`,
      );
      return gravest([share, swelling].map((answer) => ({ load: say`indices`, answer })));
    }),
  ),
  check("Q49", { explain_below: 0.05, explain_above: 3, ratio_above: STEEPEST_SOIL }, (record, reduced, l) =>
    ask(reduced.compressionIndex, ({ value }) => {
      const Cc = asVoidRatio(reduced, value);
      const answers = [];
      if (Cc !== undefined)
        answers.push(
          within(
            record,
            say`compression index Cc`,
            Cc,
            "ratio",
            l,
            say`check the void ratios, and that it is per log cycle`,
          ),
        );
      const CR = reduced.specimen.ok && Cc !== undefined ? Cc / (1 + reduced.specimen.value.e0) : undefined;
      if (CR !== undefined)
        answers.push(
          within(
            record,
            say`compression ratio CR`,
            CR,
            "ratio",
            { explain_above: l.ratio_above },
            say`check the strains, and that it is per log cycle`,
          ),
        );
      return gravest(
        answers.map((answer) => ({ load: say`virgin line`, answer })),
        say`it needs void ratios, or the whole specimen`,
      );
    }),
  ),
  check("Q50", { explain_below: usualCreepRatio()[0], explain_above: usualCreepRatio()[1] }, (record, reduced, l) => {
    if (!reduced.preconsolidation.ok) return cannotAsk(reduced.preconsolidation.reason);
    if (!reduced.specimen.ok) return cannotAsk(reduced.specimen.reason);
    const { e0 } = reduced.specimen.value;
    const virgin = virginLoads(record, reduced);
    return gravest(
      virgin.flatMap((load) => {
        const before = reduced.loads[reduced.loads.indexOf(load) - 1];
        const alpha = load.record.results.c_alpha;
        if (alpha === undefined || !before?.voidRatio.ok || !load.voidRatio.ok) return [];
        // The slope from the load before on the branch to this load: the local slope of the curve where the creep was
        // measured.
        const slope =
          (before.voidRatio.value - load.voidRatio.value) / Math.log10(load.record.stress! / before.record.stress!);
        if (!(slope > 0)) return [];
        const answer = ask(creepRatio(alpha * (1 + e0), slope), ({ ratio }) =>
          within(
            record,
            say`C alpha over the slope of the curve`,
            ratio,
            "ratio",
            l,
            say`check that both are void ratio, at one stress, and that the tail is long enough`,
          ),
        );
        return [{ load: load.called, answer }];
      }),
      say`it needs C alpha of loads beyond the preconsolidation stress (${nameOf("c_alpha")})`,
    );
  }),
];
