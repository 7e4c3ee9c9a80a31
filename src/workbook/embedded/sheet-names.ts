/**
 * The names that a person gives to sheets follow Excel's rules, since the workbook is saved for Excel: the engine also takes longer names, colons
 * and "History", and cuts a long name only when it writes a file, where names of cells would then lead to no sheet.
 * A formula that was written before the sheet that it names is read again when a sheet gets that name: the engine does so only when
 * the workbook is opened, so that the cell kept its error, and showed a value in the saved file.
 * Casts: the engine's types do not include the inner parts of its plugins.
 */
import { registries } from "@odoo/o-spreadsheet";
import { freeSheetName, isSheetName } from "../rules/sheet-names";

/** A reference of a formula; one to a deleted cell or sheet has an `invalidXc`. */
interface Reference {
  readonly invalidSheetName?: string;
  readonly invalidXc?: string;
}

interface Cell {
  readonly id: string;
  readonly isFormula: boolean;
  readonly compiledFormula: {
    readonly rangeDependencies: readonly Reference[];
    toFormulaString(getters: object): string;
  };
}

interface SheetPlugin {
  readonly getters: {
    getSheetIds(): readonly string[];
    getSheetName(sheetId: string): string;
    getSheetIdByName(name: string): string | undefined;
    getRangeFromSheetXC(sheetId: string, reference: string): Reference;
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
  /** The sheets that formulas named and that were not there, since the workbook was opened. */
  readonly #missed = new Set<string>();

  constructor(...config: never[]) {
    super(...config);
    const { getters } = this;
    const read = getters.getRangeFromSheetXC;
    getters.getRangeFromSheetXC = (sheetId, reference) => {
      const found = read(sheetId, reference);
      if (found.invalidSheetName !== undefined) this.#missed.add(found.invalidSheetName);
      return found;
    };
  }

  override allowDispatch(command: any): unknown {
    const result = super.allowDispatch(command);
    const isRefused = command.type === "RENAME_SHEET" && result === "Success" && !isSheetName(command.newName);
    // The engine's reason: it goes back to the field of the name, and its sentence is in `text/en/engine.ts` and the folders of other languages.
    return isRefused ? "ForbiddenCharactersInSheetName" : result;
  }

  override handle(command: any): void {
    super.handle(command);
    const { type, sheetId, sheetIdTo } = command;
    if (NAMING.has(type)) this.#readAgain(type === "DUPLICATE_SHEET" ? sheetIdTo : sheetId);
  }

  /** Reads the formulas again that name this sheet and did not find it. */
  #readAgain(sheetId: string): void {
    const { getters } = this;
    const isFound = (name: string | undefined): boolean =>
      name !== undefined && getters.getSheetIdByName(name) === sheetId;
    // To go through the formulas of 40 data sheets takes longer than the rest of the step.
    if (![...this.#missed].some(isFound)) return;
    for (const { id, isFormula, compiledFormula } of getters.getSheetIds().flatMap((one) => getters.getCells(one))) {
      const read = isFormula ? compiledFormula.rangeDependencies : [];
      if (!read.some((one) => one.invalidXc === undefined && isFound(one.invalidSheetName))) continue;
      const content = compiledFormula.toFormulaString(getters);
      this.dispatch("UPDATE_CELL", { ...getters.getCellPosition(id), content });
    }
  }

  override getDuplicateSheetName(name: string): string {
    const taken = this.getters.getSheetIds().map((sheetId) => this.getters.getSheetName(sheetId));
    return freeSheetName(super.getDuplicateSheetName(name), taken);
  }
}

registries.corePluginRegistry.replace("sheet", NamedForExcel as never);
