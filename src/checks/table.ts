/** The reviewer's questions as one table: each in words, and how it is answered. */
import { ANSWERING } from "./answering";
import type { Check, Question } from "./check";
import { byHandQuestions } from "./questions/by-hand";
import { curveQuestions } from "./questions/curve";
import { loadQuestions } from "./questions/loads";
import { recordQuestions } from "./questions/record";
import { specimenQuestions } from "./questions/specimen";
import { timeCurveQuestions } from "./questions/time-curves";
import { wettingQuestions } from "./questions/wetting";

import { classificationQuestions } from "./questions/classification";

const QUESTIONS: Readonly<Record<string, Question>> = {
  ...specimenQuestions(),
  ...loadQuestions(),
  ...timeCurveQuestions(),
  ...curveQuestions(),
  ...recordQuestions(),
  ...byHandQuestions(),
  ...classificationQuestions(),
  ...wettingQuestions(),
};

export const CHECKS: readonly Check[] = ANSWERING.map((answering) => {
  const question = QUESTIONS[answering.id];
  if (!question) throw new Error(`${answering.id} has no question in words`);
  return { ...question, ...answering };
});
