/**
 * Additions to the engine, made before the first workbook: error codes, and many commands as one step.
 * Casts: the engine's types do not include the inner parts of its plugins, nor the plugins and commands that are added here.
 */
import { EvaluationError, Model, registries, UIPlugin } from "@odoo/o-spreadsheet";

import "./look/chart";
import "./look/front-view";
import "./look/header-places";
import "./look/merges";
import "./look/row-heights";
import "./look/used-colours";
import "./engine-words";
import "./evaluation/as-in-excel";
import "./evaluation/compiled";
import "./evaluation/export";
import "./evaluation/one-row-index";
import "./evaluation/plugin";
import "./evaluation/running-ranges";
import "./evaluation/tracked";
import "./named-ranges";
import "./notes";
import "./sheet-names";
import "./told-handlers";
import "./look/print";
import "./typing/rules";
import { whileLifted } from "./protection";

export { EvaluationError, Model };

/** A command of the engine: its type and the fields that the type needs. */
export interface Command {
  readonly type: string;
  readonly [key: string]: unknown;
}

/**
 * The types of the engine list every command in one union, which plain data cannot satisfy: they are loosened once,
 * here.
 */
export interface Dispatching {
  dispatch(type: string, payload?: object): { readonly isSuccessful: boolean; readonly reasons: readonly string[] };
}

export const BATCH = "CLAYLEDGER_BATCH";

/**
 * The commands and the refusals of the batch being carried out. The engine copies the payload of a command and keeps it with the step: the
 * 5,400 commands of a data sheet would be copied twice, and the payload cannot return refusals.
 */
let batch: readonly Command[] = [];
let refusals: string[] = [];

/** Dispatches a command and adds its refusal to the list. */
export function dispatchOne(to: Dispatching, { type, ...payload }: Command, refused: string[]): void {
  // An exception that is not caught would leave the engine in the middle of a command for ever.
  try {
    const { isSuccessful, reasons } = to.dispatch(type, payload);
    if (!isSuccessful) refused.push(`${type} (${reasons.join(", ")})`);
  } catch (error) {
    refused.push(`${type} (${String(error)})`);
  }
}

/** A cell that already holds its content is no refusal. */
export const withoutUseless = (refused: readonly string[]): string[] =>
  refused.filter((reason) => !reason.endsWith("(NoChanges)"));

/** Carries out a list of commands as one step of undo and one recalculation. */
class BatchPlugin extends UIPlugin {
  override handle(command: any): void {
    if (command.type !== BATCH) return;
    for (const one of batch) dispatchOne(this as unknown as Dispatching, one, refusals);
  }
}

/** Error codes of Excel; the engine would take them for plain text. */
const EXCEL_ERRORS = ["#VALUE!", "#REF!", "#NUM!", "#NULL!", "#BUSY!", "#CALC!"];

for (const code of EXCEL_ERRORS) registries.errorTypes.add(code);
registries.featurePluginRegistry.add("clayledger_batch", BatchPlugin as never);

/**
 * The data of a workbook as plain objects. The engine's own `exportData` packs similar cells together, and makes the
 * whole workbook a second time to check that: for a data sheet 0.17 s and not 0.03 s.
 */
export const plainData = (model: Model): object => ({
  ...(model as unknown as { _exportData(packed: boolean): object })._exportData(false),
  isNotSquishable: true,
});

/** Carries out the commands as one step, in protected cells too. Returns the refusals; empty if there were none. */
export function runBatch(model: Model, commands: readonly Command[]): string[] {
  refusals = [];
  batch = commands;
  const { isSuccessful, reasons } = whileLifted(() => (model as unknown as Dispatching).dispatch(BATCH));
  batch = [];
  return isSuccessful ? refusals : [`${BATCH} (${reasons.join(", ")})`];
}
