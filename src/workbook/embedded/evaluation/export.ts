/**
 * The parts of an .xlsx file that the engine writes, without work that the add-in does not need.
 * Casts: the engine's types do not include the inner parts of its plugins.
 */
import { CompiledFormula, helpers, registries, type Model } from "@odoo/o-spreadsheet";
import { pause } from "../../in-slices";
import type { HeldCell, Place } from "./engine-parts";

/** True while a file is begun: the engine would evaluate all cells again, although nothing has changed. */
let isBeginning = false;
let pauses = false;

export const isBeginningFile = (): boolean => isBeginning;

/** Lets the page react between two sheets of a file, if the file is made with pauses. */
export const betweenSheets = async (): Promise<void> => {
  if (pauses) await pause();
};

/**
 * The parts of an .xlsx file as the engine writes them, with the present values. With pauses, the workbook may change before all sheets are
 * taken: then the parts are of no use.
 */
export async function exportFiles(model: Model, withPauses: boolean) {
  pauses = withPauses;
  isBeginning = true;
  let made: ReturnType<Model["exportXLSX"]>;
  try {
    // The engine evaluates before its first pause.
    made = model.exportXLSX();
  } finally {
    isBeginning = false;
  }
  return (await made).files;
}

/** The positions of all formulas of a sheet. */
export const formulaPlaces = (getters: any, sheetId: string): Place[] =>
  getters
    .getCells(sheetId)
    .filter(({ isFormula }: HeldCell) => isFormula)
    .map(({ id }: { id: string }) => getters.getCellPosition(id));

interface Formula {
  readonly isBadExpression: boolean;
  readonly tokens: readonly { readonly type: string; readonly value: string }[];
  areAllFunctionsExportableToExcel(): boolean;
}

const functions = registries.functionRegistry as unknown as {
  readonly content: Readonly<Record<string, { readonly isExported?: boolean } | undefined>>;
};

/**
 * Tells whether Excel knows every function of a formula. The engine would parse each formula again for this answer, which took a fifth of the
 * export's time; a function is a word before a parenthesis.
 */
(CompiledFormula.prototype as unknown as Formula).areAllFunctionsExportableToExcel = function (this: Formula) {
  if (this.isBadExpression) return false;
  const tokens = this.tokens.filter(({ type }) => type !== "SPACE");
  return tokens.every(
    ({ type, value }, index) =>
      type !== "SYMBOL" || tokens[index + 1]?.type !== "LEFT_PAREN" || isKnownToExcel(value.toUpperCase()),
  );
};

const isKnownToExcel = (name: string): boolean => functions.content[name]?.isExported === true;

interface LinkedSheet {
  readonly id: string;
  cells: Record<string, unknown>;
}

const ComputedStyle = registries.statefulUIPluginRegistry.get("cell_computed_style") as unknown as {
  new (...config: never[]): { readonly getters: any; exportForExcel(data: unknown): void };
  readonly getters: readonly string[];
};

/** The engine gives links a colour in a file. It would compute the style of every cell to find them; here it sees the links only. */
class LinksStyle extends ComputedStyle {
  static override getters = ComputedStyle.getters;

  override exportForExcel(data: { readonly sheets: readonly LinkedSheet[] }): void {
    const all = data.sheets.map(({ cells }) => cells);
    for (const sheet of data.sheets) {
      const isLink = (xc: string): boolean =>
        this.getters.getEvaluatedCell({ sheetId: sheet.id, ...helpers.toCartesian(xc) }).link !== undefined;
      sheet.cells = Object.fromEntries(Object.entries(sheet.cells).filter(([xc]) => isLink(xc)));
    }
    super.exportForExcel(data);
    data.sheets.forEach((sheet, index) => (sheet.cells = all[index]!));
  }
}

registries.statefulUIPluginRegistry.replace("cell_computed_style", LinksStyle as never);
