/** The moments of a workbook: texts that are equal at two times if nothing changed between them. */
import type { Model } from "../engine";
import { lastStep } from "./history";
import { changesBeside, filtersSet } from "./long-step";

/** Of all that a file of the workbook is made from, also while a step is being made. */
export const momentOf = (model: Model): string => `${lastStep(model)} ${changesBeside(model)}`;

/**
 * Of what a person would save: undo brings the moment before a step again, and a filter that is set is no step. Undefined as long
 * as nothing was done.
 */
export function workOf(model: Model): string | undefined {
  const [step, filters] = [lastStep(model), filtersSet(model)];
  return step === undefined && filters === 0 ? undefined : `${step} ${filters}`;
}
