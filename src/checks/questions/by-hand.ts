/** Questions about what a person decided on the compression curve: picks of its lines, and adopted indices. */
import { CV_SAID, type AdoptedValue } from "../../record/adopted";
import { cellNamed, type TestRecord } from "../../record/record";
import { yieldMethodOf, type Reduced } from "../../record/reduced-test";
import type { Branches } from "../../reduction/curve/shape/branches";
import { preconsolidation } from "../../reduction/curve/preconsolidation";
import type { LoadPoint } from "../../reduction/curve/shape/points";
import { digits, say, type Message } from "../../reduction/message";
import { neighbours } from "../../reduction/numeric/lists";
import { then } from "../../reduction/outcome";
import { picksOfCurve } from "../../record/picks";
import { CV_RANGES, type AdoptableName } from "../../specification/results/adoptable";
import {
  adoptedAnswer,
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
} from "../check";

/** Slopes between neighbouring points of branches, by void ratio or strain per log cycle of stress, positive. */
const slopesOf = (branches: readonly (readonly LoadPoint[])[]): number[] =>
  branches.flatMap((points) =>
    neighbours(points).flatMap(([a, b]) =>
      a.stress === b.stress ? [] : [Math.abs((b.value - a.value) / Math.log10(b.stress / a.stress))],
    ),
  );

/** The slopes of the curve that an index may be held against, step by step. */
const BRANCHES_OF: Partial<Record<AdoptableName, (known: Branches, yieldStress: number) => number[]>> = {
  compression_index: ({ firstLoading }, yieldStress) =>
    slopesOf([firstLoading.filter(({ stress }) => stress >= yieldStress)]),
  recompression_index: ({ loops, finalUnloading }) =>
    slopesOf([...loops.flatMap(({ unload, reload }) => [unload, reload]), finalUnloading]),
  swelling_index: ({ loops, finalUnloading }) => slopesOf([...loops.map(({ unload }) => unload), finalUnloading]),
};

const QUANTITIES = [
  ["compression_index", say`Cc`],
  ["recompression_index", say`Cr`],
  ["swelling_index", say`Cs`],
  ["c_alpha_chosen", say`C alpha`],
] as const satisfies readonly (readonly [AdoptableName, Message])[];

/** What the test gives for an index, step by step or load by load; empty if it gives nothing to compare with. */
export function givenFor(
  name: AdoptableName,
  record: TestRecord,
  { curve, branches, preconsolidation: stress }: Reduced,
): number[] {
  if (name === "c_alpha_chosen") return record.loads.flatMap(({ results }) => results.c_alpha ?? []);
  const read = BRANCHES_OF[name];
  // An adopted index is of void ratio.
  return read && branches.ok && curve.ok && curve.value.kind === "e"
    ? read(branches.value, stress.ok ? stress.value.stress : 0)
    : [];
}

function answerFor(said: Message, adopted: AdoptedValue, given: readonly number[]): Answer {
  const shown = (one: number) => digits(one, 3);
  if (given.length === 0) return cannotAsk(say`the test gives no ${said} to compare with`);
  const [least, most] = [Math.min(...given), Math.max(...given)];
  const sentence = say`${shown(adopted.value)} is adopted; the steps of the test give ${shown(least)} to ${shown(most)}`;
  return adoptedAnswer(sentence, adopted, [least, most], "adopted_reason");
}

/** The cv of the loads that end above the stress `from`, and not above `to`. */
export const cvWithin = (
  loads: readonly { readonly stress?: number; readonly cv?: number }[],
  from: number,
  to: number,
): number[] => loads.flatMap(({ stress = 0, cv = [] }) => (stress > from && stress <= to ? cv : []));

/** An adopted cv against the cv of the loads that end within its range. */
function answerForCv(record: TestRecord, said: Message, adopted: AdoptedValue): Answer {
  const { value, from, to } = adopted;
  if (from === undefined || to === undefined || from >= to)
    return {
      status: "explain",
      sentence: say`a cv is adopted without a range of stress: enter the stresses in ${cellNamed("adopted_cv_from")} and ${cellNamed("adopted_cv_to")}`,
    };
  const given = cvWithin(
    record.loads.map(({ stress, results }) => ({ stress, cv: results.cv_chosen })),
    from,
    to,
  );
  const cv = (one: number) => shown(figure(record, said, one, "cv"));
  const [least, most] = [Math.min(...given), Math.max(...given)];
  const sentence =
    given.length === 0
      ? say`${cv(value)} is adopted, and no load that ends within the range has a cv`
      : say`${cv(value)} is adopted; the loads that end within the range give ${cv(least)} to ${cv(most)}`;
  return adoptedAnswer(sentence, adopted, [least, most], "adopted_cv_reason");
}

/** The questions in words; a function, so that the bundle of the worksheet functions leaves the words out. */
export const byHandQuestions = (): Readonly<Record<string, Question>> => ({
  Q69: {
    question: say`Do picks by hand of the compression curve leave the preconsolidation stress near that without them?`,
    about: ["preconsolidation_stress", "pick_of"],
    severity: "explain",
    basis: say`${COMMON}: two persons who draw the construction differ by up to 15 percent`,
    units: { explain: "ratio" },
  },
  Q70: {
    question: say`Does every adopted index lie within what the test gives step by step, or has it a reason?`,
    about: ["adopted_value", "adopted_reason"],
    severity: "explain",
    basis: COMMON,
    units: {},
  },
  Q73: {
    question: say`Does every adopted cv lie within the cv of the loads of its range, or has it a reason?`,
    about: ["adopted_cv", "adopted_cv_reason"],
    severity: "explain",
    basis: COMMON,
    units: {},
  },
});

/** How each question is answered. */
export const BY_HAND_CHECKS = [
  check("Q69", { explain: 0.15 }, (record, reduced, l) => {
    const picks = picksOfCurve(record.picks);
    if (Object.keys(picks).length === 0)
      return { status: "pass", sentence: say`nothing was picked by hand on the compression curve` };
    const method = yieldMethodOf(record);
    const read = then(reduced.curve, (test) => preconsolidation(test, { method, picks }));
    const without = then(reduced.curve, (test) => preconsolidation(test, { method }));
    return ask(read, ({ stress }) =>
      ask(without, ({ stress: automatic }) =>
        within(
          record,
          say`change of the preconsolidation stress by picks`,
          Math.abs(stress / automatic - 1),
          "number",
          { explain_above: l.explain },
          say`look at the lines in the review, and at the reasons of the picks`,
        ),
      ),
    );
  }),
  check("Q70", {}, (record, reduced) => {
    const answers = QUANTITIES.flatMap(([name, said]) => {
      const adopted = record.adopted?.[name];
      return adopted ? [{ load: said, answer: answerFor(said, adopted, givenFor(name, record, reduced)) }] : [];
    });
    if (answers.length === 0)
      return { status: "pass", sentence: say`no index is adopted: those of the constructions are used` };
    return gravest(answers, say`no index can be compared`);
  }),
  check("Q73", {}, (record) => {
    const answers = CV_RANGES.flatMap(({ name }) => {
      const adopted = record.adopted?.[name];
      return adopted ? [{ load: CV_SAID[name], answer: answerForCv(record, CV_SAID[name], adopted) }] : [];
    });
    return answers.length === 0
      ? { status: "pass", sentence: say`no cv is adopted: those of the loads are used` }
      : gravest(answers);
  }),
];
