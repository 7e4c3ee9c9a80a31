/** What the adapter adds to the engine before the first workbook is made: error codes, and many commands as one step. */
import { DEFAULT_LOCALE, EvaluationError, helpers, Model, registries, UIPlugin } from "@odoo/o-spreadsheet";

import "./chart";
import "./notes";
import "./print";
import { shownBySize } from "./formats";
import { whileLifted } from "./protection";
import { heldText } from "./xlsx/escapes";

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

/** What the batch under way was refused; the engine copies a command's payload, so it cannot carry this back. */
let refusals: string[] = [];

/** Carries out a list of commands as one step of undo and one recalculation. */
class BatchPlugin extends UIPlugin {
  override handle(command: any): void {
    if (command.type !== BATCH) return;
    for (const { type, ...payload } of command.commands as Command[]) {
      // An exception let through would leave the engine in the middle of a command for good.
      try {
        const { isSuccessful, reasons } = (this as unknown as Dispatching).dispatch(type, payload);
        if (!isSuccessful) refusals.push(`${type} (${reasons.join(", ")})`);
      } catch (error) {
        refusals.push(`${type} (${String(error)})`);
      }
    }
  }
}

interface Evaluated {
  readonly value: unknown;
  readonly format?: string;
}

const Evaluation = registries.coreViewsPluginRegistry.get("evaluation") as unknown as {
  new (...config: never[]): { getEvaluatedCell(position: unknown): Evaluated };
  readonly getters: readonly string[];
};

/** Shows numbers whose format follows their size; what is calculated and kept stays as it is. */
class BySizeEvaluation extends Evaluation {
  static override getters = Evaluation.getters;

  override getEvaluatedCell(position: unknown): Evaluated {
    const cell = super.getEvaluatedCell(position);
    const format = shownBySize(cell.format, cell.value);
    return format === undefined
      ? cell
      : ({
          ...cell,
          formattedValue: helpers.formatValue(cell.value as number, { format, locale: DEFAULT_LOCALE }),
        } as Evaluated);
  }
}

/** Leaves out of an .xlsx file the blank cells that a formula's range covers: the engine would write each of them. */
class BlanksPlugin extends UIPlugin {
  override exportForExcel(data: any): void {
    for (const { cells, cellValues } of data.sheets)
      for (const xc of Object.keys(cellValues ?? {})) if (cellValues[xc] == null && !cells[xc]) delete cellValues[xc];
  }
}

/** The error codes of Excel that the engine would otherwise take for plain text. */
const EXCEL_ERRORS = ["#VALUE!", "#REF!", "#NUM!", "#NULL!", "#BUSY!"];

/** Texts of an .xlsx file with the characters that XML cannot hold, which the engine would leave out. */
class TextsPlugin extends UIPlugin {
  override exportForExcel(data: any): void {
    holdTexts(data);
  }
}

/** Spells every text within as a file does, in its place. Data addresses of pictures hold nothing that needs it. */
function holdTexts(within: any): void {
  for (const [key, value] of Object.entries<unknown>(within))
    if (typeof value === "string") {
      if (!value.startsWith("data:")) within[key] = heldText(value);
    } else if (value !== null && typeof value === "object") holdTexts(value);
}

for (const code of EXCEL_ERRORS) registries.errorTypes.add(code);
registries.coreViewsPluginRegistry.replace("evaluation", BySizeEvaluation as never);
registries.featurePluginRegistry.add("clayledger_batch", BatchPlugin as never);
registries.featurePluginRegistry.add("clayledger_blanks", BlanksPlugin as never);
registries.featurePluginRegistry.add("clayledger_texts", TextsPlugin as never);

/** Carries out the commands as one step, protected cells too. Gives the refusals: none when all went well. */
export function runBatch(model: Model, commands: readonly Command[]): string[] {
  refusals = [];
  whileLifted(() => (model as unknown as Dispatching).dispatch(BATCH, { commands }));
  return refusals;
}
