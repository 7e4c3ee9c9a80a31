/** Questions about the water of the specimen: saturation, water contents, specific gravity, and the void ratio by water. */
import { cellNamed, type TestRecord } from "../../record/record";
import { GS } from "../../reduction/specimen";
import { say, fixed, type Message } from "../../reduction/message";
import { agree, ask, cannotAsk, check, COMMON, figure, shown, within, type Answer, type Question } from "../check";
import type { Reduced } from "../../record/reduced-test";
import { inputs } from "../../record/reduced/inputs";

const NO_FINAL_HEIGHT: Answer = cannotAsk(
  say`there is no final height: it needs readings, or the measured final height`,
);

/**
 * The water content is measured after dismantling, the void ratio under the last load. A specimen that is taken out
 * under more than its seating stress takes up water, so the two belong to different states. Common practice, no source.
 */
function outUnderLoad(record: TestRecord, { loads }: Reduced, share: number): Message | undefined {
  const stresses = loads.flatMap(({ record: { stress }, end }) => (stress !== undefined && end.ok ? [stress] : []));
  const last = stresses[stresses.length - 1] ?? 0;
  if (last <= share * Math.max(...stresses)) return undefined;
  const stress = shown(figure(record, say`last load`, last, "stress"));
  return say`the specimen was dismantled under ${stress} and takes up water when this load is taken off: the final water content belongs to a looser state`;
}

/** The questions in words; a function, so that the bundle of the worksheet functions leaves the words out. */
export const waterQuestions = (): Readonly<Record<string, Question>> => ({
  Q01: {
    question: say`Was the specimen saturated, and not more than saturated, before the test?`,
    about: ["saturation_initial", "ring_and_wet_before"],
    severity: "stop",
    basis: say`${COMMON} for intact soil from below the water table`,
    units: {
      note_below: "ratio",
      note_above: "ratio",
      explain_below: "ratio",
      explain_above: "ratio",
      stop_above: "ratio",
    },
  },
  Q02: {
    question: say`Does the final water content fill the final voids?`,
    about: ["saturation_final", "ring_and_wet_after"],
    severity: "explain",
    basis: COMMON,
    units: { explain_below: "ratio", explain_above: "ratio", under_load: "last stress over the greatest" },
  },
  Q03: {
    question: say`Is the specific gravity that of a soil?`,
    about: ["specific_gravity"],
    severity: "stop",
    basis: COMMON,
    units: { explain_below: "", explain_above: "", stop_below: "", stop_above: "" },
  },
  Q04: {
    question: say`Was the specific gravity measured?`,
    about: ["specific_gravity_basis"],
    severity: "note",
    basis: say`AGS4 dictionary 4.1.1: CONG_PDEN carries # where the particle density is assumed`,
    units: { doubt: "" },
  },
  Q05: {
    question: say`Do the trimmings give the same dry mass as the oven?`,
    about: ["dry_mass", "dry_mass_trimmings"],
    severity: "stop",
    basis: COMMON,
    units: { explain: "ratio", stop: "ratio" },
  },
  Q06: {
    question: say`Do the trimmings have the water content of the specimen?`,
    about: ["water_content_initial", "water_content_trimmings"],
    severity: "explain",
    basis: COMMON,
    units: { points: "ratio", relative: "ratio of w" },
  },
  Q07: {
    question: say`Do the readings and the final water content give the same final void ratio?`,
    about: ["void_ratio_final", "void_ratio_final_by_water"],
    severity: "stop",
    basis: COMMON,
    units: {
      explain: "e",
      explain_share: "ratio of e",
      stop: "e",
      stop_share: "ratio of e",
      under_load: "last stress over the greatest",
    },
  },
});

/** How each question is answered. */
export const WATER_CHECKS = [
  check(
    "Q01",
    { note_below: 0.95, note_above: 1.02, explain_below: 0.9, explain_above: 1.05, stop_above: 1.1 },
    (record, reduced, l) =>
      ask(reduced.specimen, ({ S0 }) =>
        within(
          record,
          say`initial saturation S0`,
          S0,
          "percent",
          l,
          say`check the height, the diameter, the masses and the specific gravity`,
        ),
      ),
  ),
  check("Q02", { explain_below: 0.95, explain_above: 1.05, under_load: 0.1 }, (record, reduced, l) =>
    ask(reduced.specimen, ({ Sf }) => {
      const loose = outUnderLoad(record, reduced, l.under_load);
      return Sf === undefined
        ? NO_FINAL_HEIGHT
        : within(
            record,
            say`final saturation Sf`,
            Sf,
            "percent",
            // Too much water is not a fault if the specimen was taken out under load.
            loose ? { explain_below: l.explain_below, note_above: l.explain_above } : l,
            Sf > l.explain_above && loose
              ? say`${loose}; unload to the seating stress before dismantling`
              : say`check the final height, and that free water was wiped off and no soil lost before weighing`,
          );
    }),
  ),
  check(
    "Q03",
    { explain_below: GS.low, explain_above: GS.high, stop_below: GS.least, stop_above: GS.most },
    (record, _reduced, l) =>
      ask(inputs(record, "specific_gravity"), ({ specific_gravity }) =>
        within(
          record,
          say`specific gravity`,
          specific_gravity,
          "ratio",
          l,
          say`confirm that it was measured on this soil, and its unit`,
        ),
      ),
  ),
  check("Q04", { doubt: 0.03 }, (record, reduced, l) => {
    const basis = record.words.specific_gravity_basis;
    if (basis === undefined) return cannotAsk(say`it needs ${cellNamed("specific_gravity_basis")}`);
    return ask(inputs(record, "specific_gravity"), ({ specific_gravity: Gs }): Answer => {
      const found = figure(record, say`specific gravity`, Gs, "ratio");
      if (basis === "measured") return { status: "pass", sentence: say`the specific gravity ${Gs} was measured` };
      const doubt = say`the specific gravity ${Gs} is assumed: say so wherever e or S is reported`;
      if (!reduced.specimen.ok) return { status: "note", sentence: doubt };
      const change = ((1 + reduced.specimen.value.e0) * l.doubt) / Gs;
      return {
        status: "note",
        compared: [found, figure(record, say`change of e0 for ${l.doubt} of specific gravity`, change, "ratio")],
        sentence: say`${doubt}; ${l.doubt} more or less of it moves e0 by ${fixed(change, 3)}`,
      };
    });
  }),
  check("Q05", { explain: 0.02, stop: 0.05 }, (record, reduced, limits) =>
    ask(reduced.waterContentTrimmings, (w) =>
      ask(inputs(record, "ring_mass", "ring_and_wet_before", "ring_and_dry"), (n) => {
        const oven = n.ring_and_dry - n.ring_mass;
        const trimmed = (n.ring_and_wet_before - n.ring_mass) / (1 + w);
        return agree(
          record,
          [
            figure(record, say`dry mass by the trimmings`, trimmed, "mass"),
            figure(record, say`dry mass by the oven`, oven, "mass"),
          ],
          { value: trimmed / oven - 1, kind: "percent" },
          limits,
          say`look at the weighings, and for soil lost before drying`,
        );
      }),
    ),
  ),
  check("Q06", { points: 0.02, relative: 0.05 }, (record, reduced, limits) =>
    ask(reduced.waterContentTrimmings, (w) =>
      ask(reduced.specimen, ({ w0 }) =>
        agree(
          record,
          [
            figure(record, say`water content of the trimmings`, w, "percent"),
            figure(record, say`water content of the specimen`, w0, "percent"),
          ],
          { value: w - w0, kind: "percent" },
          { explain: Math.min(limits.points, limits.relative * w0) },
          say`the trimmings may not stand for the specimen`,
        ),
      ),
    ),
  ),
  check(
    "Q07",
    { explain: 0.02, explain_share: 0.02, stop: 0.05, stop_share: 0.05, under_load: 0.1 },
    (record, reduced, l) =>
      ask(reduced.specimen, ({ ef, wf }) => {
        if (ef === undefined) return NO_FINAL_HEIGHT;
        const byWater = wf * record.numbers.specific_gravity!;
        const loose = outUnderLoad(record, reduced, l.under_load);
        return agree(
          record,
          [
            figure(record, say`final void ratio by water`, byWater, "ratio"),
            figure(record, say`final void ratio by height`, ef, "ratio"),
          ],
          { value: byWater - ef, kind: "ratio" },
          // More water than voids is not a fault if the specimen was taken out under load; less water is.
          byWater > ef && loose
            ? { explain: l.explain + l.explain_share * ef }
            : { explain: l.explain + l.explain_share * ef, stop: l.stop + l.stop_share * ef },
          byWater > ef && loose ? loose : say`look at masses, readings and blotting`,
        );
      }),
  ),
];
