/** Questions about the classification of the soil: whether it agrees with itself, and whether Cc is plausible for it. */
import { cellNamed, type TestRecord } from "../../record/record";
import { correlatedCc, CORRELATION_SPREAD } from "../../reduction/curve/correlations";
import { digits, listed, say, type Message } from "../../reduction/message";
import { inputs } from "../../record/reduced/inputs";
import type { NumberName } from "../../record/names";
import { ask, cannotAsk, check, COMMON, figure, gravest, within, type Answer, type Question } from "../check";
import { asVoidRatio } from "./as-void-ratio";

/** Compares a share or a limit with a greater one that it cannot exceed; gives no answer if one of them is blank. */
function ordered(record: TestRecord, greater: NumberName, less: NumberName): { load: Message; answer: Answer }[] {
  const [a, b] = [record.numbers[greater], record.numbers[less]];
  if (a === undefined || b === undefined) return [];
  const compared = [
    figure(record, say`${cellNamed(greater)}`, a, "percent"),
    figure(record, say`${cellNamed(less)}`, b, "percent"),
  ] as const;
  const said = say`${cellNamed(greater)} is ${digits(100 * a, 4)} %, ${cellNamed(less)} ${digits(100 * b, 4)} %`;
  return [
    {
      load: say`classification`,
      answer:
        a >= b
          ? { status: "pass", used: b / a, compared, sentence: said }
          : { status: "stop", compared, sentence: say`${said}: the two may be swapped, or one of them is mistyped` },
    },
  ];
}

/** The plasticity index from the typed limits; undefined if one of them is blank. */
const plasticityIndex = ({ numbers: { liquid_limit: LL, plastic_limit: PL } }: TestRecord): number | undefined =>
  LL === undefined || PL === undefined ? undefined : LL - PL;

/** The questions in words; a function, so that the bundle of the worksheet functions leaves the words out. */
export const classificationQuestions = (): Readonly<Record<string, Question>> => ({
  Q67: {
    question: say`Do limits, grading and water content agree with one another?`,
    about: ["liquid_limit", "plastic_limit", "water_content_initial", "clay_content", "fines_content"],
    severity: "stop",
    basis: COMMON,
    units: { explain_below: "", explain_above: "" },
  },
  Q68: {
    question: say`Is Cc plausible for this soil, by correlations with its classification?`,
    about: ["compression_index", "liquid_limit", "water_content_initial", "void_ratio_initial"],
    severity: "note",
    basis: say`the correlations named in the answer; their spread of 30 % is that of Terzaghi & Peck, from memory`,
    units: { spread: "ratio" },
  },
});

/** How each question is answered. */
export const CLASSIFICATION_CHECKS = [
  check("Q67", { explain_below: -0.5, explain_above: 3 }, (record, reduced, l) => {
    const PI = plasticityIndex(record);
    const PL = record.numbers.plastic_limit;
    const liquidity =
      PI === undefined || PL === undefined || PI <= 0 || !reduced.specimen.ok
        ? []
        : [
            {
              load: say`classification`,
              answer: within(
                record,
                say`the liquidity index`,
                (reduced.specimen.value.w0 - PL) / PI,
                "ratio",
                l,
                say`are limits and water content of the same soil?`,
              ),
            },
          ];
    return gravest(
      [
        ...ordered(record, "liquid_limit", "plastic_limit"),
        ...ordered(record, "fines_content", "clay_content"),
        ...liquidity,
      ],
      say`it needs ${cellNamed("liquid_limit")} and ${cellNamed("plastic_limit")}, or ${cellNamed("fines_content")} and ${cellNamed("clay_content")}`,
    );
  }),
  check("Q68", { spread: CORRELATION_SPREAD }, (record, reduced, l) =>
    ask(inputs(record, "liquid_limit", "specific_gravity"), ({ liquid_limit, specific_gravity }) =>
      ask(reduced.compressionIndex, ({ value }) => {
        const Cc = asVoidRatio(reduced, value);
        if (Cc === undefined) return cannotAsk(say`it needs the initial void ratio`);
        const specimen = reduced.specimen.ok ? reduced.specimen.value : undefined;
        const found = correlatedCc({
          liquidLimit: liquid_limit,
          plasticityIndex: plasticityIndex(record),
          specificGravity: specific_gravity,
          waterContent: specimen?.w0,
          voidRatio: specimen?.e0,
        });
        if (found.length === 0) return cannotAsk(say`no correlation gives a value above zero for this soil`);
        const all = found.map((one) => one.Cc);
        const answer = within(
          record,
          say`Cc`,
          Cc,
          "ratio",
          { note_below: Math.min(...all) * (1 - l.spread), note_above: Math.max(...all) * (1 + l.spread) },
          say`structure or sensitivity raises it, disturbance lowers it`,
        );
        const named = listed(found.map((one) => say`${digits(one.Cc, 3)} (${one.source})`));
        return { ...answer, sentence: say`${answer.sentence}; the correlations give ${named}` };
      }),
    ),
  ),
];
