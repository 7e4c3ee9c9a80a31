/** Questions about the stage of wetting. */
import { nameOf } from "../../record/record";
import { stageAt, wettingPlaces, type WettingStage } from "../../record/wetting";
import type { TestRecord } from "../../record/record";
import { reduced } from "../../record/reduced-test";
import { SAME_LOAD } from "../../reduction/curve/loads";
import { listWord, say } from "../../reduction/message";
import { nth } from "../../reduction/numeric/lists";
import { agree, ask, cannotAsk, check, COMMON, figure, gravest, type Answer, type Question } from "../check";

/** Words of a remark that say which way the specimen moved; a person types them in English or in German. */
const SWELLED = /s(?:ch)?w[eo]ll|swole|heave|quellen\b|quellung|quoll|\bgehoben|\bhebung/i;
const COLLAPSED = /[ck]ollaps|kollab|sackt|sackung/i;
const WATER = /inundat|flood|wett|saturat|flutet|\b(?:ge|be)?wässer|wasserzugabe|sättig/i;

/** Whether remarks tell of the water, or of what the specimen did when it came. */
export const tellOfWetting = (remarks: string): boolean =>
  [SWELLED, COLLAPSED, WATER].some((words) => words.test(remarks));

/** The questions in words; a function, so that the bundle of the worksheet functions leaves the words out. */
export const wettingQuestions = (): Readonly<Record<string, Question>> => ({
  Q71: {
    question: say`Is the stress kept in the stage of wetting?`,
    about: ["load_stress", "load_mark"],
    severity: "stop",
    basis: say`logic`,
  },
  Q72: {
    question: say`Does the specimen move on wetting the way that is said of it?`,
    about: ["strain_end", "dial_sense", "swelling_pressure"],
    severity: "explain",
    basis: COMMON,
  },
});

/** Asks a question of each stage of wetting. */
const eachStage = (record: TestRecord, answer: (at: number) => Answer): Answer =>
  gravest(
    wettingPlaces(record).map((at) => ({ load: nth(reduced(record).loads, at).called, answer: answer(at) })),
    say`no load is marked as wetting (${nameOf("load_mark")})`,
  );

/** Whether the stress of a stage is that of the load before. */
function stressKept(record: TestRecord, at: number): Answer {
  const load = nth(record.loads, at);
  const before = at === 0 ? record.numbers.seating_stress : nth(record.loads, at - 1).stress;
  const { stress } = load;
  if (stress === undefined || before === undefined)
    return cannotAsk(
      say`it needs the stress of load ${load.number} and the one before it (${nameOf("load_stress")}, ${nameOf("seating_stress")})`,
    );
  return agree(
    record,
    [
      figure(record, say`the stress in the stage of wetting (load ${load.number})`, stress, "stress"),
      figure(record, say`the stress before it`, before, "stress"),
    ],
    { value: stress - before, kind: "stress" },
    { stop: SAME_LOAD * before },
    say`enter the stress that was kept, or take the mark "${listWord("wetting")}" off`,
  );
}

/** Whether the specimen moved the way that remarks and swelling pressure say. */
function wayOfMoving(record: TestRecord, { stress, strain }: WettingStage): Answer {
  const said = record.words.test_remarks ?? "";
  const [saysSwell, saysCollapse] = [SWELLED.test(said), COLLAPSED.test(said)];
  const pressure = record.numbers.swelling_pressure;
  const compared = [
    figure(record, say`strain on wetting`, strain, "percent"),
    figure(record, say`no movement`, 0, "percent"),
  ] as const;
  const asked = (reason: ReturnType<typeof say>): Answer => ({
    status: "explain",
    compared,
    sentence: say`${reason}: check the sign of the readings and whether they rise on compression (${nameOf("dial_sense")})`,
  });
  if (strain > 0 && saysSwell && !saysCollapse)
    return asked(say`the readings say that the specimen compressed on wetting, the remarks that it swelled`);
  if (strain < 0 && saysCollapse && !saysSwell)
    return asked(say`the readings say that the specimen swelled on wetting, the remarks that it collapsed`);
  if (pressure !== undefined && strain > 0 && stress < pressure)
    return asked(say`the specimen compressed on wetting under less than its swelling pressure`);
  if (pressure !== undefined && strain < 0 && stress > pressure)
    return asked(say`the specimen swelled on wetting under more than its swelling pressure`);
  return {
    status: "pass",
    compared,
    sentence:
      strain < 0
        ? say`the specimen swelled on wetting, and nothing says otherwise`
        : say`the specimen did not swell on wetting, and nothing says otherwise`,
  };
}

/** How each question is answered. */
export const WETTING_CHECKS = [
  check("Q71", {}, (record) => eachStage(record, (at) => stressKept(record, at))),
  check("Q72", {}, (record) =>
    eachStage(record, (at) => ask(stageAt(record, at), (stage) => wayOfMoving(record, stage))),
  ),
];
