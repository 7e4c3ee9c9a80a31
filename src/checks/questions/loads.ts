/** Questions about the loads: their sequence, units, continuity, correction for the apparatus, calibration, temperature. */
import { cellNamed, nameOf, type TestRecord } from "../../record/record";
import { firstOf, neighbours } from "../../reduction/numeric/lists";
import { axialStress } from "../../reduction/loading";
import { say, verbatim, digits, listed, type Message } from "../../reduction/message";
import { given, badInput, type Outcome } from "../../reduction/outcome";
import { convert, unitsOf } from "../../reduction/units";
import { agree, ask, cannotAsk, check, COMMON, figure, gravest, within, type Answer, type Question } from "../check";
import { calledInRow, rowAt, type Reduced } from "../../record/reduced-test";
import { inputs, inSheetStress } from "../../record/reduced/inputs";
import type { LoadReduced } from "../../record/reduced/load";

const percent = (ratio: number): Message => say`${digits(100 * ratio, 3)} %`;

/** Stresses calculated from hanger masses, kPa, beside the stresses that were typed. */
function leverStresses(record: TestRecord, { loads }: Reduced): Outcome<{ load: LoadReduced; lever: number }[]> {
  const needed = inputs(record, "lever_ratio", "diameter");
  if (!needed.ok) return needed;
  const found = loads.flatMap((load) => {
    const { hangerMass, stress } = load.record;
    if (hangerMass === undefined || stress === undefined) return [];
    const lever = axialStress(convert(hangerMass, "force", "kg", "N"), needed.value.diameter, needed.value.lever_ratio);
    return lever.ok ? [{ load, lever: lever.value }] : [];
  });
  return found.length ? given(found) : badInput(say`it needs the masses on the hanger (${nameOf("load_mass")})`);
}

/** The share of the loads that, times a factor, equal one of the other stresses within a tolerance. */
const meeting = (loads: readonly number[], others: readonly number[], factor: number, tolerance: number): number =>
  loads.filter((load) => others.some((other) => Math.abs((load * factor) / other - 1) <= tolerance)).length /
  loads.length;

/** A reason that is about a row of the curve, with the load of that row: the answer is found at its cells. */
function withLoadOfRow({ loads }: Reduced, reason: Message): Message {
  const load = loads.find(({ record }) => record.row === reason.row)?.record.number;
  return load === undefined ? reason : { ...reason, load };
}

/** The questions in words; a function, so that the bundle of the worksheet functions leaves the words out. */
export const loadQuestions = (): Readonly<Record<string, Question>> => ({
  Q17: {
    question: say`Do the stresses rise, fall and rise again as a test is loaded?`,
    about: ["load_stress"],
    severity: "stop",
    basis: COMMON,
    units: { least_unloading: "steps" },
  },
  Q18: {
    question: say`Does each load of first loading about double the stress?`,
    about: ["load_stress"],
    severity: "explain",
    basis: say`${COMMON}; ASTM D2435's usual load increment ratio is 1`,
    units: { explain_below: "", explain_above: "", note_below: "", note_above: "" },
  },
  Q19: {
    question: say`Is each stress the one that the masses on the hanger give?`,
    about: ["load_stress", "load_mass", "lever_ratio"],
    severity: "stop",
    basis: COMMON,
    units: { explain: "ratio", stop: "ratio" },
  },
  Q20: {
    question: say`Are all stresses in one unit?`,
    about: ["load_stress", "apparatus_stress"],
    severity: "stop",
    basis: say`arithmetic: ratios of stress units`,
    units: { tolerance: "ratio", enough: "share of loads", few: "share of loads" },
  },
  Q21: {
    question: say`Is the whole strain possible for a soil, and not in another unit?`,
    about: ["strain_end", "dial_factor"],
    severity: "explain",
    basis: COMMON,
    units: { explain_below: "ratio", explain_above: "ratio" },
  },
  Q22: {
    question: say`Does the specimen go on compressing as the load rises?`,
    about: ["corrected_deformation"],
    severity: "explain",
    basis: COMMON,
    units: { steps: "steps of the dial" },
  },
  Q40: {
    question: say`Is there a correction for the apparatus, and is it small against the deformation of the specimen?`,
    about: ["apparatus_deflection"],
    severity: "stop",
    basis: say`${COMMON}; ASTM D2435 asks for it above 0.1 % of the height, from memory`,
    units: { explain: "ratio", stop: "ratio" },
  },
  Q41: {
    question: say`Does the apparatus table reach every load, on its own branch?`,
    about: ["apparatus_stress", "load_stress"],
    severity: "explain",
    basis: COMMON,
  },
  Q42: {
    question: say`Were dial, frame, balance and deflection set in calibration throughout the test?`,
    about: ["dial_calibration_due", "frame_calibration_due", "balance_calibration_due", "deflection_set_due"],
    severity: "stop",
    basis: say`ISO/IEC 17025 (equipment), from memory; common practice`,
  },
  Q43: {
    question: say`Did the temperature stay steady?`,
    about: ["load_temperature"],
    severity: "explain",
    basis: say`ASTM D2435 and BS 1377-5: 4 C either way, from memory; common practice`,
    units: { drift: "C either way of the mean", explain_below: "C", explain_above: "C" },
  },
  Q74: {
    question: say`Was the deflection set made with the frame of the test?`,
    about: ["deflection_set_frame", "frame_number", "deflection_set"],
    severity: "stop",
    basis: COMMON,
  },
});

/** How each question is answered. */
export const LOAD_CHECKS = [
  check("Q17", { least_unloading: 2 }, (record, reduced, l) => {
    if (!reduced.curve.ok) return cannotAsk(withLoadOfRow(reduced, reduced.curve.reason));
    if (!reduced.branches.ok) {
      const sentence = withLoadOfRow(reduced, reduced.branches.reason);
      return reduced.branches.fault === "input" ? { status: "stop", sentence } : cannotAsk(sentence);
    }
    const { loops, firstLoading } = reduced.branches.value;
    if (loops.length === 0)
      return {
        status: "pass",
        sentence: say`the stress rises ${firstLoading.length} times and does not fall before the end of loading`,
      };
    return gravest(
      loops.map(({ unload }) => ({
        load: say`unloading from ${calledInRow(reduced, firstOf(unload).row)}`,
        answer: within(
          record,
          say`number of steps of unloading`,
          unload.length - 1,
          "number",
          { explain_below: l.least_unloading },
          say`is it a loop, or a stress typed wrongly?`,
        ),
      })),
    );
  }),
  check("Q18", { explain_below: 0.5, explain_above: 1.5, note_below: 0.9, note_above: 1.1 }, (record, reduced, l) =>
    gravest(
      neighbours(reduced.loads.filter(({ firstLoading }) => firstLoading)).map(([before, load]) => ({
        load: load.called,
        answer: within(
          record,
          say`load increment ratio`,
          load.record.stress! / before.record.stress! - 1,
          "number",
          l,
          say`small steps blur the time curve, large ones the bend of the compression curve`,
        ),
      })),
      say`it needs two loads (${nameOf("load_stress")})`,
    ),
  ),
  check("Q19", { explain: 0.01, stop: 0.05 }, (record, reduced, limits) =>
    ask(leverStresses(record, reduced), (pairs) =>
      gravest(
        pairs.map(({ load, lever }) => ({
          load: load.called,
          answer: agree(
            record,
            [
              figure(record, say`stress as typed`, load.record.stress!, "stress"),
              figure(record, say`stress by the lever`, lever, "stress"),
            ],
            { value: load.record.stress! / lever - 1, kind: "percent" },
            limits,
            say`check the masses, the lever ratio and the unit`,
          ),
        })),
      ),
    ),
  ),
  check("Q20", { tolerance: 0.02, enough: 0.8, few: 0.5 }, (record, reduced, l) => {
    const unit = record.words.stress_unit ?? "kPa";
    const loads = reduced.loads.flatMap(({ record: { stress } }) => (stress ? [inSheetStress(record, stress)] : []));
    const calibrated = record.deflections.flatMap(({ stress }) => (stress ? [inSheetStress(record, stress)] : []));
    if (loads.length < 4 || calibrated.length < 2)
      return cannotAsk(
        say`it needs four loads, and the stresses of the apparatus table (${nameOf("apparatus_stress")})`,
      );
    const asTyped = meeting(loads, calibrated, 1, l.tolerance);
    const other = unitsOf("stress").find((name) => {
      const factor = convert(1, "stress", name, unit);
      return (
        Math.abs(factor - 1) > 2 * l.tolerance &&
        asTyped < l.few &&
        [factor, 1 / factor].some((ratio) => meeting(loads, calibrated, ratio, l.tolerance) >= l.enough)
      );
    });
    const compared = [
      figure(record, say`loads that meet a stress of the apparatus table`, asTyped, "percent"),
      figure(record, say`enough`, l.few, "percent"),
    ] as const;
    return other
      ? {
          status: "stop",
          compared,
          sentence: say`the loads and the apparatus table agree only if one of them is in ${verbatim(other)}, not ${verbatim(unit)}: which?`,
        }
      : {
          status: "pass",
          compared,
          sentence: say`${percent(asTyped)} of the loads meet a stress of the apparatus table as typed; no other unit makes them agree`,
        };
  }),
  check("Q21", { explain_below: 0.0005, explain_above: 0.5 }, (record, reduced, l) => {
    const height = inputs(record, "initial_height");
    if (!height.ok) return cannotAsk(height.reason);
    // The strain is calculated here, because the reduction refuses a strain of 1 and more, which this question looks
    // for.
    const strains = reduced.loads.flatMap(({ corrected, called }) =>
      corrected.ok ? [{ called, eps: corrected.value / height.value.initial_height }] : [],
    );
    if (strains.length === 0) return cannotAsk(reasonOf(reduced.loads.map(({ corrected }) => corrected)));
    const { called, eps } = strains.reduce((best, one) => (Math.abs(one.eps) > Math.abs(best.eps) ? one : best));
    return within(
      record,
      say`the greatest strain (${called})`,
      Math.abs(eps),
      "percent",
      l,
      say`check the dial factor (25.4 between inches and mm) and the initial height`,
    );
  }),
  check("Q22", { steps: 2 }, (record, reduced, l) =>
    ask(reduced.resolution, (step) =>
      gravest(
        reduced.loads.flatMap((load, index) => {
          const before = reduced.loads[index - 1];
          const { jump } = load.increment;
          if (jump) {
            const row = rowAt(load.record, jump.time);
            return { load: load.called, answer: { status: "explain", sentence: jump.said, row } as const };
          }
          return load.unloading || !before?.corrected.ok || !load.corrected.ok
            ? []
            : {
                load: load.called,
                answer: within(
                  record,
                  say`compression under the load`,
                  load.corrected.value - before.corrected.value,
                  "length",
                  { explain_below: -l.steps * step },
                  say`it moved back under a greater load: a swell, a reset dial, or a wrong correction`,
                ),
              };
        }),
        say`it needs two loads with readings`,
      ),
    ),
  ),
  check("Q40", { explain: 0.1, stop: 0.3 }, (record, reduced, l) => {
    if (reduced.loads.every(({ deformation }) => !deformation.ok))
      return cannotAsk(reasonOf(reduced.loads.map(({ deformation }) => deformation)));
    if (record.deflections.every(({ stress }) => stress === undefined))
      return {
        status: "explain",
        compared: [
          figure(record, say`rows of the apparatus table`, 0, "number"),
          figure(record, say`rows needed`, 2, "number"),
        ],
        sentence: say`nothing is corrected for the apparatus: fill in ${cellNamed("apparatus_stress")} and its deflections, or say why not`,
      };
    const start: Pick<LoadReduced, "deformation" | "deflection"> = { deformation: given(0), deflection: given(0) };
    return gravest(
      reduced.loads.flatMap((load, index) => {
        const { deformation: d0, deflection: a0 } = reduced.loads[index - 1] ?? start;
        const { deformation: d1, deflection: a1 } = load;
        if (load.unloading || !d0.ok || !d1.ok || !a0.ok || !a1.ok || d1.value <= d0.value) return [];
        const share = within(
          record,
          say`share of the apparatus in the deformation of the load`,
          (a1.value - a0.value) / (d1.value - d0.value),
          "percent",
          { stop_above: l.stop, explain_above: l.explain },
          say`strain, e and stiffness of this load depend on the calibration`,
        );
        return [{ load: load.called, answer: share }];
      }),
      say`it needs a load with readings`,
    );
  }),
  check("Q41", {}, (record, reduced) => {
    const table = record.deflections.flatMap(({ stress }) => (stress === undefined ? [] : [stress]));
    if (table.length === 0) return cannotAsk(say`it needs the apparatus table (${nameOf("apparatus_stress")})`);
    const stressed = reduced.loads.filter(({ record: { stress } }) => stress !== undefined);
    if (stressed.length === 0) return cannotAsk(say`it needs the loads (${nameOf("load_stress")})`);
    const greatest = Math.max(...table);
    const least = Math.min(...table);
    const noUnloading = record.deflections.every(({ unloading }) => unloading === undefined);
    return gravest(
      stressed.map((load): { load: Message; answer: Answer } => {
        const { stress } = load.record;
        const limit = stress! > greatest ? greatest : least;
        const compared = [
          figure(record, say`stress`, stress!, "stress"),
          figure(record, say`end of the table`, limit, "stress"),
        ] as const;
        const answer: Answer = !load.deflection.ok
          ? { status: "explain", compared, sentence: load.deflection.reason }
          : load.unloading && noUnloading
            ? { status: "note", compared, sentence: say`unloading is corrected with the deflections of loading` }
            : { status: "pass", compared, sentence: say`the table reaches it` };
        return { load: load.called, answer };
      }),
    );
  }),
  check("Q42", {}, (record) => {
    const end = record.words.date_ended ?? record.words.date_started;
    const due = [
      "dial_calibration_due",
      "frame_calibration_due",
      "balance_calibration_due",
      "deflection_set_due",
    ] as const;
    const known = due.filter((name) => record.words[name] !== undefined);
    if (end === undefined) return cannotAsk(say`it needs ${cellNamed("date_ended")}`);
    if (known.length === 0) return cannotAsk(say`it needs ${listed(due.map(nameOf))}`);
    return gravest(
      known.map((name): { load: Message; answer: Answer } => {
        const date = record.words[name]!;
        const expired = date < end;
        return {
          load: say`${cellNamed(name)}`,
          answer: {
            status: expired ? "stop" : "pass",
            sentence: expired
              ? say`due on ${verbatim(date)}, before the test ended on ${verbatim(end)}`
              : say`due on ${verbatim(date)}, not before the test ended on ${verbatim(end)}`,
          },
        };
      }),
    );
  }),
  check("Q43", { drift: 4, explain_below: 15, explain_above: 28 }, (record, _reduced, l) => {
    const temperatures = record.loads.flatMap(({ temperature }) => (temperature === undefined ? [] : [temperature]));
    if (temperatures.length === 0)
      return cannotAsk(say`it needs the temperature of the loads (${nameOf("load_temperature")})`);
    const [low, high] = [Math.min(...temperatures), Math.max(...temperatures)];
    const mean = temperatures.reduce((sum, one) => sum + one, 0) / temperatures.length;
    return gravest(
      [
        within(
          record,
          say`the greatest difference of a load's temperature from the mean of the loads`,
          Math.max(high - mean, mean - low),
          "celsius",
          { explain_above: l.drift },
          say`cv and the dial reading changed with it`,
        ),
        within(
          record,
          say`lowest temperature`,
          low,
          "celsius",
          l,
          say`cv should be corrected to the reference temperature`,
        ),
        within(
          record,
          say`highest temperature`,
          high,
          "celsius",
          l,
          say`cv should be corrected to the reference temperature`,
        ),
      ].map((answer) => ({ load: say`temperature`, answer })),
    );
  }),
  check("Q74", {}, ({ words }) => {
    const { deflection_set_frame: ofSet, frame_number: ofTest, deflection_set: set } = words;
    if (ofSet === undefined || ofTest === undefined)
      return cannotAsk(say`it needs ${listed([cellNamed("deflection_set_frame"), cellNamed("frame_number")])}`);
    const called = verbatim(set ?? "");
    return ofSet.toLowerCase() === ofTest.toLowerCase()
      ? {
          status: "pass",
          sentence: say`the deflection set ${called} was made with the frame ${verbatim(ofTest)} of the test`,
        }
      : {
          status: "stop",
          sentence: say`the deflection set ${called} was made with the frame ${verbatim(ofSet)}, the test with the frame ${verbatim(ofTest)}: take a set of this frame`,
        };
  }),
];

/** The reason why none of the outcomes has a value. */
const reasonOf = (outcomes: readonly Outcome<unknown>[]): Message => {
  const refused = outcomes.find((outcome) => !outcome.ok);
  return refused && !refused.ok ? refused.reason : say`it needs loads with readings`;
};
