/**
 * The names that a person gives to sheets follow Excel's rules, since the workbook is saved for Excel: the engine also takes longer names, colons
 * and "History", and cuts a long name only when it writes a file, where names of cells would then lead to no sheet.
 * A formula that was written before the sheet that it names is read again when a sheet gets that name: the engine does so only when
 * the workbook is opened, so that the cell kept its error, and showed a value in the saved file.
 * Casts: the engine's types do not include the inner parts of its plugins.
 */
import { registries } from "@odoo/o-spreadsheet";
import { freeSheetName, isSheetName } from "../rules/sheet-names";

interface Cell {
  readonly id: string;
  readonly isFormula: boolean;
  readonly compiledFormula: {
    readonly rangeDependencies: readonly { readonly invalidSheetName?: string }[];
    toFormulaString(getters: object): string;
  };
}

interface SheetPlugin {
  readonly getters: {
    getSheetIds(): readonly string[];
    getSheetName(sheetId: string): string;
    getSheetIdByName(name: string | undefined): string | undefined;
    getCells(sheetId: string): readonly Cell[];
    getCellPosition(cellId: string): { readonly sheetId: string; readonly col: number; readonly row: number };
  };
  dispatch(type: string, payload: object): unknown;
  allowDispatch(command: any): unknown;
  handle(command: any): void;
  getDuplicateSheetName(name: string): string;
}

const Sheets = registries.corePluginRegistry.get("sheet") as unknown as {
  new (...config: never[]): SheetPlugin;
  readonly getters: readonly string[];
};

/** Commands that give a sheet a name. */
const NAMING: ReadonlySet<string> = new Set(["CREATE_SHEET", "DUPLICATE_SHEET", "RENAME_SHEET"]);

class NamedForExcel extends Sheets {
  static override getters = Sheets.getters;

  override allowDispatch(command: any): unknown {
    const result = super.allowDispatch(command);
    const isRefused = command.type === "RENAME_SHEET" && result === "Success" && !isSheetName(command.newName);
    // The engine's reason: it goes back to the field of the name, and its sentence is in `text/en/engine.ts` and the folders of other languages.
    return isRefused ? "ForbiddenCharactersInSheetName" : result;
  }

  override handle(command: any): void {
    super.handle(command);
    if (NAMING.has(command.type)) this.#readAgain();
  }

  /** Reads the formulas again that named a sheet which is there now. */
  #readAgain(): void {
    const { getters } = this;
    for (const { id, isFormula, compiledFormula } of getters.getSheetIds().flatMap((one) => getters.getCells(one))) {
      if (!isFormula) continue;
      const isFound = compiledFormula.rangeDependencies.some(
        ({ invalidSheetName: name }) => name !== undefined && getters.getSheetIdByName(name) !== undefined,
      );
      const content = isFound && compiledFormula.toFormulaString(getters);
      if (content) this.dispatch("UPDATE_CELL", { ...getters.getCellPosition(id), content });
    }
  }

  override getDuplicateSheetName(name: string): string {
    const taken = this.getters.getSheetIds().map((sheetId) => this.getters.getSheetName(sheetId));
    return freeSheetName(super.getDuplicateSheetName(name), taken);
  }
}

registries.corePluginRegistry.replace("sheet", NamedForExcel as never);
