/** The reviewer's questions as one table: each in words, and how it is answered. */
import { ANSWERING } from "./answering";
import type { Check, Question } from "./check";
import { byHandQuestions } from "./questions/by-hand";
import { classificationQuestions } from "./questions/classification";
import { constructionQuestions } from "./questions/constructions";
import { groundQuestions } from "./questions/ground";
import { loadQuestions } from "./questions/loads";
import { readingQuestions } from "./questions/readings";
import { recordQuestions } from "./questions/record";
import { sizeQuestions } from "./questions/sizes";
import { waterQuestions } from "./questions/water";
import { wettingQuestions } from "./questions/wetting";
import { yieldQuestions } from "./questions/yield";

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

export const CHECKS: readonly Check[] = ANSWERING.map((answering) => {
  const question = QUESTIONS[answering.id];
  if (!question) throw new Error(`${answering.id} has no question in words`);
  return { ...question, ...answering };
});
