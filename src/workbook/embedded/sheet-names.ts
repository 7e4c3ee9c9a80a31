/**
 * The names that a person gives to sheets follow Excel's rules, since the workbook is saved for Excel: the engine also takes longer names, colons
 * and "History", and cuts a long name only when it writes a file, where names of cells would then lead to no sheet.
 * Casts: the engine's types do not include the inner parts of its plugins.
 */
import { registries } from "@odoo/o-spreadsheet";
import { freeSheetName, isSheetName } from "../rules/sheet-names";

interface SheetPlugin {
  readonly getters: { getSheetIds(): readonly string[]; getSheetName(sheetId: string): string };
  allowDispatch(command: any): unknown;
  getDuplicateSheetName(name: string): string;
}

const Sheets = registries.corePluginRegistry.get("sheet") as unknown as {
  new (...config: never[]): SheetPlugin;
  readonly getters: readonly string[];
};

class NamedForExcel extends Sheets {
  static override getters = Sheets.getters;

  override allowDispatch(command: any): unknown {
    const result = super.allowDispatch(command);
    const isRefused = command.type === "RENAME_SHEET" && result === "Success" && !isSheetName(command.newName);
    // The engine's reason: it goes back to the field of the name, and its sentence is in `text/en/engine.ts` and the folders of other languages.
    return isRefused ? "ForbiddenCharactersInSheetName" : result;
  }

  override getDuplicateSheetName(name: string): string {
    const taken = this.getters.getSheetIds().map((sheetId) => this.getters.getSheetName(sheetId));
    return freeSheetName(super.getDuplicateSheetName(name), taken);
  }
}

registries.corePluginRegistry.replace("sheet", NamedForExcel as never);
