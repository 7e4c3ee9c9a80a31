/** Questions about sample quality, stress history, conductivity, and the movement on wetting and unloading. */
import { cellNamed, nameOf, type TestRecord } from "../../record/record";
import { say, verbatim, digits, type Message } from "../../reduction/message";
import {
  ask,
  cannotAsk,
  check,
  COMMON,
  figure,
  gravest,
  within,
  adoptedAnswer,
  pair,
  type Answer,
  type Question,
} from "../check";
import { calledInRow } from "../../record/reduced-test";
import { inputs, inKpa, inSheetStress } from "../../record/reduced/inputs";
import { compressedOnUnloading, MOST_ON_UNLOADING } from "../../reduction/curve/loads";
import { firstOf, nth } from "../../reduction/numeric/lists";
import {
  DISTURBED,
  isDisturbed,
  LUNNE,
  LUNNE_NAMES,
  MOST_SWELLING,
  STRAIN_CLASSES,
  SWELLED,
} from "../../reduction/curve/sample-quality";
import { tellOfWetting } from "./wetting";

/**
 * What a load that was taken off did to the void ratio, by the heights at the end of the load before it and of the load:
 * by the rule of the remark in the load table, a fall within creep passes.
 */
function ofUnloading(record: TestRecord, heights: readonly [number, number], initial: number, Hs: number): Answer {
  const [before, after] = heights;
  const compared = [
    figure(record, say`void ratio`, after / Hs - 1, "ratio"),
    figure(record, say`void ratio of the load before`, before / Hs - 1, "ratio"),
  ] as const;
  if (compressedOnUnloading(before - after, initial))
    return {
      status: "stop",
      compared,
      sentence: say`the void ratio falls as the load is taken off: check the readings and the correction`,
    };
  return {
    status: "pass",
    compared,
    sentence: say`the void ratio does not fall as the load is taken off, beyond creep (${digits(100 * MOST_ON_UNLOADING, 2)} % of the initial height)`,
  };
}

/** The questions in words; a function, so that the bundle of the worksheet functions leaves the words out. */
export const groundQuestions = (): Readonly<Record<string, Question>> => ({
  Q51: {
    question: say`Is the sample good enough, by its volume change up to the in-situ stress?`,
    about: ["quality_change", "in_situ_stress"],
    severity: "explain",
    basis: say`Lunne et al. 1997; Terzaghi, Peck & Mesri 1996 (SQD), limits as the reduction has them`,
    units: { change: "change of e over e0, OCR 1 to 2", strain: "ratio" },
  },
  Q52: {
    question: say`Is the overconsolidation ratio possible, and does it rest on an in-situ stress?`,
    about: ["overconsolidation_ratio", "in_situ_stress"],
    severity: "explain",
    basis: COMMON,
    units: { explain_below: "", explain_above: "" },
  },
  Q66: {
    question: say`Does an adopted preconsolidation stress lie within the range of the methods, or has it a reason?`,
    about: ["preconsolidation_stress", "adopted_value", "adopted_reason"],
    severity: "explain",
    basis: COMMON,
  },
  Q53: {
    question: say`Does the in-situ stress agree with the depth?`,
    about: ["in_situ_stress", "depth"],
    severity: "explain",
    basis: say`arithmetic: unit weights from buoyant soft soil to dense dry soil`,
    units: { explain_below: "kPa/m", explain_above: "kPa/m" },
  },
  Q54: {
    question: say`Is the conductivity from cv that of a clay?`,
    about: ["conductivity"],
    severity: "explain",
    basis: COMMON,
    units: { explain_below: "m/s", explain_above: "m/s" },
  },
  Q55: {
    question: say`Are all void ratios above zero, and does unloading open the soil?`,
    about: ["void_ratio_end"],
    severity: "stop",
    basis: say`logic`,
  },
  Q56: {
    question: say`Is swell on wetting reported?`,
    about: ["inundation_strain"],
    severity: "explain",
    basis: COMMON,
    units: { strain: "ratio" },
  },
  Q57: {
    question: say`Is rebound less than the compression before it?`,
    about: ["strain_end"],
    severity: "stop",
    basis: say`logic`,
  },
});

/** How each question is answered. */
export const GROUND_CHECKS = [
  check("Q51", { change: LUNNE["OCR 1 to 2"][1], strain: STRAIN_CLASSES.limits[1] }, (record, reduced, l) =>
    ask(reduced.quality, ({ change, strain, lunneClass, strainClass }) => {
      const ofLunne = lunneClass ? LUNNE_NAMES[lunneClass] : say`unknown`;
      const remedy = strainClass
        ? say`class ${ofLunne} (Lunne), ${verbatim(strainClass)} (SQD); ${DISTURBED}`
        : SWELLED;
      const bySQD = within(
        record,
        say`strain at the in-situ stress`,
        strain,
        "percent",
        { explain_below: -MOST_SWELLING, explain_above: l.strain },
        remedy,
      );
      if (change === undefined || lunneClass === undefined) return bySQD;
      const byLunne = within(
        record,
        say`change of void ratio over e0`,
        change,
        "ratio",
        { explain_above: l.change },
        remedy,
      );
      // The limits of Lunne et al. depend on the OCR: their class decides if it is the stricter one.
      return isDisturbed(lunneClass) && byLunne.status === "pass"
        ? { ...byLunne, status: "explain", sentence: say`${byLunne.sentence}; ${remedy}` }
        : byLunne;
    }),
  ),
  check("Q52", { explain_below: 0.9, explain_above: 20 }, (record, reduced, l) => {
    const typed = record.results.overconsolidation_ratio;
    const inSitu = record.numbers.in_situ_stress;
    if (typed !== undefined && inSitu === undefined)
      return {
        status: "explain",
        sentence: say`an OCR of ${digits(typed, 3)} stands on the sheet without an in-situ stress: fill in ${cellNamed("in_situ_stress")}`,
      };
    return pair(inputs(record, "in_situ_stress"), reduced.preconsolidation, (n, { stress }) =>
      within(
        record,
        say`OCR`,
        stress / inSheetStress(record, n.in_situ_stress),
        "ratio",
        l,
        say`disturbance, ground still consolidating, or a wrong in-situ stress (water table?)`,
      ),
    );
  }),
  check("Q66", {}, (record, reduced) => {
    const adopted = record.adopted?.preconsolidation_stress;
    if (!adopted)
      return {
        status: "pass",
        sentence: say`no preconsolidation stress is adopted: that of the method chosen is used`,
      };
    return ask(reduced.spread, ({ methods }) => {
      const stresses = methods.flatMap(({ result }) => (result.ok ? [inKpa(record, result.value.stress)] : []));
      const [least, most] = [Math.min(...stresses), Math.max(...stresses)];
      const unit = verbatim(record.words.stress_unit ?? "kPa");
      const shown = (kPa: number) => digits(inSheetStress(record, kPa), 4);
      const said = say`${shown(adopted.value)} ${unit} is adopted; the methods read ${shown(least)} to ${shown(most)} ${unit}`;
      return adoptedAnswer(said, adopted, [least, most], "adopted_reason");
    });
  }),
  check("Q53", { explain_below: 4, explain_above: 22 }, (record, _reduced, l) =>
    ask(inputs(record, "in_situ_stress", "depth"), ({ in_situ_stress, depth }) => {
      if (depth <= 0) return cannotAsk(say`${cellNamed("depth")} is not above zero`);
      return within(
        record,
        say`in-situ stress over depth, kPa/m`,
        in_situ_stress / depth,
        "number",
        l,
        say`check the depth, the water table and the units`,
      );
    }),
  ),
  check("Q54", { explain_below: 1e-12, explain_above: 1e-7 }, (record, reduced, l) =>
    gravest(
      reduced.loads.flatMap(({ called, record: { results } }) =>
        results.conductivity === undefined
          ? []
          : [
              {
                load: called,
                answer: within(
                  record,
                  say`k`,
                  results.conductivity,
                  "conductivity",
                  l,
                  say`check cv and mv, and their units`,
                ),
              },
            ],
      ),
      say`it needs k of a load (${nameOf("conductivity")})`,
    ),
  ),
  check("Q55", {}, (record, reduced) =>
    gravest(
      reduced.loads.flatMap(({ called, height, unloading }, index): { load: Message; answer: Answer }[] => {
        const Hs = reduced.solidsHeight;
        if (!height.ok || !Hs.ok) return [];
        // The void ratio is calculated here, because the reduction refuses a void ratio below zero.
        const e = (height.value - Hs.value) / Hs.value;
        const voids = within(
          record,
          say`void ratio`,
          e,
          "ratio",
          { stop_below: 0 },
          say`check the dry mass, the specific gravity and the readings`,
        );
        const before = reduced.loads[index - 1]?.height;
        const { initial_height: initial } = record.numbers;
        if (voids.status !== "pass" || !unloading || !before?.ok || initial === undefined)
          return [{ load: called, answer: voids }];
        return [{ load: called, answer: ofUnloading(record, [before.value, height.value], initial, Hs.value) }];
      }),
      say`it needs void ratios: readings, dry mass, specific gravity and diameter`,
    ),
  ),
  check("Q56", { strain: 0.01 }, (record, reduced, l) => {
    if (record.words.seating_mark)
      return cannotAsk(say`the water was added under the seating stress, before the zero of the deformations was read`);
    const index = reduced.loads.findIndex(({ record: { inundated } }) => inundated);
    if (index < 0) return cannotAsk(say`no load is marked as inundated (${nameOf("load_mark")})`);
    const load = nth(reduced.loads, index);
    const before = reduced.loads[index - 1];
    return ask(load.strain, (strain) => {
      const from = before?.strain.ok ? before.strain.value : 0;
      const constant = before?.record.stress !== undefined && before.record.stress === load.record.stress;
      // Compression under a new load is not collapse; compression under the stress of the load before is.
      const moved = constant ? Math.abs(strain - from) : Math.max(0, from - strain);
      const answer = within(
        record,
        constant ? say`strain on wetting (${load.called})` : say`swell on wetting (${load.called})`,
        moved,
        "percent",
        { explain_above: l.strain },
        say`say so in ${cellNamed("test_remarks")}`,
      );
      return tellOfWetting(record.words.test_remarks ?? "") && answer.status === "explain"
        ? { ...answer, status: "pass", sentence: say`${answer.sentence} (the remarks do)` }
        : answer;
    });
  }),
  check("Q57", {}, (record, reduced) =>
    ask(reduced.branches, ({ loops, finalUnloading, firstLoading }) => {
      const unloadings = [...loops.map(({ unload }) => unload), finalUnloading].filter((run) => run.length > 1);
      if (unloadings.length === 0) return cannotAsk(say`the test has no unloading`);
      const test = reduced.curve.ok ? reduced.curve.value : undefined;
      const start =
        test?.initial ??
        (reduced.specimen.ok && test?.kind === "e" ? reduced.specimen.value.e0 : firstOf(firstLoading).value);
      return gravest(
        unloadings.map((run) => {
          const kind = test?.kind === "strain" ? "percent" : "ratio";
          const swell = (from: number, to: number): number => (kind === "percent" ? from - to : to - from);
          const compressed = Math.max(0, swell(firstOf(run).value, start));
          const rebound = Math.max(...run.map(({ value }) => swell(firstOf(run).value, value)));
          return {
            load: say`unloading from ${calledInRow(reduced, firstOf(run).row)}`,
            answer: within(
              record,
              say`rebound`,
              rebound,
              kind,
              { stop_above: compressed },
              say`it is more than the specimen had been compressed: check the readings`,
            ),
          };
        }),
      );
    }),
  ),
];
