/** What the adapter adds to the engine before the first workbook is made: error codes, and many commands as one step. */
import { EvaluationError, Model, registries, UIPlugin } from "@odoo/o-spreadsheet";

export { EvaluationError, Model };

/** A command of the engine: its type and whatever that type needs. */
export interface Command {
  readonly type: string;
  readonly [key: string]: unknown;
}

/** The engine's typings list every command as one union, which plain data cannot meet: one loosening, here. */
export interface Dispatching {
  dispatch(type: string, payload?: object): { readonly isSuccessful: boolean; readonly reasons: readonly string[] };
}

const BATCH = "CLAYLEDGER_BATCH";

/** Carries out a list of commands as one step of undo and one recalculation, and counts those refused. */
class BatchPlugin extends UIPlugin {
  override handle(command: any): void {
    if (command.type !== BATCH) return;
    for (const { type, ...payload } of command.commands as Command[]) {
      const { isSuccessful, reasons } = (this as unknown as Dispatching).dispatch(type, payload);
      if (!isSuccessful) command.refused.push(`${type} (${reasons.join(", ")})`);
    }
  }
}

/** The error codes of Excel that the engine would otherwise take for plain text. */
const EXCEL_ERRORS = ["#VALUE!", "#REF!", "#NUM!", "#NULL!", "#BUSY!"];

for (const code of EXCEL_ERRORS) registries.errorTypes.add(code);
registries.featurePluginRegistry.add("clayledger_batch", BatchPlugin as never);

/** Carries out the commands as one step; if one is refused, all are undone. Gives the refusals, none when all went well. */
export function runBatch(model: Model, commands: readonly Command[]): string[] {
  const refused: string[] = [];
  (model as unknown as Dispatching).dispatch(BATCH, { commands, refused });
  return refused;
}
