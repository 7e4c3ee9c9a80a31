/** The reviewer's questions as one table: each in words, and how it is answered. */
import { ANSWERING } from "./answering";
import type { Answer, Answering, Question, Thresholds } from "./check";
import { byHandQuestions } from "./questions/by-hand";
import { classificationQuestions } from "./questions/classification";
import { constructionQuestions } from "./questions/constructions";
import { groundQuestions } from "./questions/ground";
import { loadQuestions } from "./questions/loads";
import { comparedMasses, type OtherTest } from "./questions/other-tests";
import { readingQuestions } from "./questions/readings";
import { recordQuestions } from "./questions/record";
import { sizeQuestions } from "./questions/sizes";
import { waterQuestions } from "./questions/water";
import { wettingQuestions } from "./questions/wetting";
import { yieldQuestions } from "./questions/yield";
import type { TestRecord } from "../record/record";

export interface Check extends Question, Answering {
  /** Answers the question; `others` are the other data sheets of the workbook, where they are known. */
  evaluate(record: TestRecord, thresholds?: Thresholds, others?: readonly OtherTest[]): Answer;
}

const QUESTIONS: Readonly<Record<string, Question>> = {
  ...waterQuestions(),
  ...sizeQuestions(),
  ...loadQuestions(),
  ...readingQuestions(),
  ...constructionQuestions(),
  ...yieldQuestions(),
  ...groundQuestions(),
  ...recordQuestions(),
  ...byHandQuestions(),
  ...classificationQuestions(),
  ...wettingQuestions(),
};

/** Q16 alone compares tests: without the data sheet of another specimen it gives the answer of one sheet. */
const withOthers = ({ evaluate, ...answering }: Answering): Pick<Check, "evaluate"> => ({
  evaluate: (record, thresholds, others = []) =>
    comparedMasses(record, others, thresholds?.["Q16.same"] ?? answering.limits.same!) ?? evaluate(record, thresholds),
});

export const CHECKS: readonly Check[] = ANSWERING.map((answering) => {
  const question = QUESTIONS[answering.id];
  if (!question) throw new Error(`${answering.id} has no question in words`);
  return { ...question, ...answering, ...(answering.id === "Q16" && withOthers(answering)) };
});
