/** The messages of reductions, records and checks in German, by their English templates. */
import { checks } from "./checks";
import { curve } from "./curve";
import { curveQuestions } from "./curve-questions";
import { design } from "./design";
import { increment } from "./increment";
import { plots } from "./plots";
import { questions } from "./questions";
import { record } from "./record";
import { report } from "./report";
import { reportTexts } from "./report-texts";
import { specimen } from "./specimen";
import { wetting } from "./wetting";

export const messages: Readonly<Record<string, string>> = {
  ...checks,
  ...curve,
  ...curveQuestions,
  ...design,
  ...increment,
  ...plots,
  ...questions,
  ...record,
  ...report,
  ...reportTexts,
  ...specimen,
  ...wetting,
};
