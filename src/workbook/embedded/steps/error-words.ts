/** What the errors of a workbook say, in the language of the page. */
import type { Model } from "../engine";
import { evaluationOf } from "../evaluation/plugin";
import { isBusy, stepEnd } from "./long-step";

/** Puts what the errors of a workbook say into the language that the page has now, once no step is being made. */
export async function wordErrorsAgain(model: Model): Promise<void> {
  while (isBusy(model)) await stepEnd(model);
  evaluationOf(model).evaluateErrors();
}
