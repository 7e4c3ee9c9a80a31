/** The messages of reductions, records and checks in German, by their English templates. */
import { answers } from "./answers";
import { book } from "./book";
import { checks } from "./checks/checks";
import { curve } from "./curve";
import { curveQuestions } from "./checks/curve-questions";
import { dataSheet } from "./data-sheet";
import { design } from "./design";
import { files } from "./files";
import { functions } from "./functions";
import { increment } from "./increment";
import { news } from "./news";
import { office } from "./office";
import { limits } from "./checks/limits";
import { masses } from "./masses";
import { plots } from "./plots";
import { questions } from "./checks/questions";
import { record } from "./record";
import { report } from "./report/report";
import { reportTexts } from "./report/report-texts";
import { sheetCheck } from "./checks/sheet-check";
import { specimen } from "./specimen";
import { wetting } from "./wetting";
import { workbook } from "./workbook";

export const messages: Readonly<Record<string, string>> = {
  ...answers,
  ...book,
  ...checks,
  ...curve,
  ...curveQuestions,
  ...dataSheet,
  ...design,
  ...files,
  ...functions,
  ...increment,
  ...news,
  ...office,
  ...limits,
  ...masses,
  ...plots,
  ...questions,
  ...record,
  ...report,
  ...reportTexts,
  ...sheetCheck,
  ...specimen,
  ...wetting,
  ...workbook,
};
