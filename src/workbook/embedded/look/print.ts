/**
 * The print layout of a sheet, which the engine does not have: it follows the sheet through undo and moved rows, and is
 * written to the file.
 * Casts: the engine's types do not include the plugins, commands, getters and components that are added here.
 */
import { CorePlugin, coreTypes, registries } from "@odoo/o-spreadsheet";
import { footerText } from "../../look/footer";
import type { SheetPlan } from "../../port";
import { isLandscape } from "../../look/paper";
import { toZone, type Zone } from "../zones";

const SET_PRINT = "CLAYLEDGER_SET_PRINT";

export interface PrintLayout {
  readonly pages: readonly Zone[];
  readonly paper: "A4" | "Letter";
  readonly landscape: boolean;
  /** In the spelling of the file: "&L&F  |  &A&CPage &P of &N". */
  readonly footer: string;
}

interface Kept extends Omit<PrintLayout, "pages"> {
  readonly sheetId: string;
  readonly pages: readonly { readonly zone: Zone }[];
}

class PrintPlugin extends CorePlugin {
  static override getters = ["getPrintLayout"] as never;
  readonly kept: readonly Kept[] = [];

  getPrintLayout(sheetId: string): PrintLayout | undefined {
    const found = this.kept.find((one) => one.sheetId === sheetId);
    return found && { ...found, pages: found.pages.map(({ zone }) => zone) };
  }

  override adaptRanges({ applyChange }: any): void {
    if (this.kept.length === 0) return;
    this.#keep(
      this.kept.map((one) => ({
        ...one,
        pages: one.pages.flatMap((page) => {
          const { changeType, range } = applyChange(page);
          return changeType === "REMOVE" ? [] : changeType === "NONE" ? [page] : [range];
        }),
      })),
    );
  }

  override handle(command: any): void {
    if (command.type === SET_PRINT) this.#set(command.sheetId, command.layout);
    if (command.type === "DUPLICATE_SHEET") {
      const layout = this.getPrintLayout(command.sheetId);
      if (layout) this.#set(command.sheetIdTo, layout);
    }
    if (command.type === "DELETE_SHEET") this.#keep(this.kept.filter(({ sheetId }) => sheetId !== command.sheetId));
  }

  override import(data: any): void {
    for (const { id, printLayout } of data.sheets) if (printLayout) this.#set(id, printLayout);
  }

  override export(data: any): void {
    for (const sheet of data.sheets) sheet.printLayout = this.getPrintLayout(sheet.id);
  }

  #set(sheetId: string, { pages, paper, landscape, footer }: PrintLayout): void {
    const ranges = pages.map((zone) => this.getters.getRangeFromZone(sheetId, zone));
    const rest = this.kept.filter((one) => one.sheetId !== sheetId);
    this.#keep([...rest, { sheetId, paper, landscape, footer, pages: ranges as never }]);
  }

  #keep(kept: readonly Kept[]): void {
    (this.history as any).update("kept", kept);
  }
}

coreTypes.add(SET_PRINT as never);
// The engine asks for the inverse of a command in a shared session; no session is shared here.
registries.inverseCommandRegistry.add(SET_PRINT, (command) => [command]);
registries.corePluginRegistry.add("clayledger_print", PrintPlugin as never);

/** The command that sets the print layout of a sheet. */
export const setPrint = (sheetId: string, layout: PrintLayout) => ({ type: SET_PRINT, sheetId, layout });

export const printOf = (model: { readonly getters: unknown }, sheetId: string): PrintLayout | undefined =>
  (model.getters as { getPrintLayout(sheetId: string): PrintLayout | undefined }).getPrintLayout(sheetId);

/** The print layout of a plan: wide pages in landscape; file, sheet, page number and versions in the footer. */
export function layoutOf(plan: SheetPlan): PrintLayout | undefined {
  const { pages = [], paper = "A4", columnWidths } = plan;
  if (pages.length === 0) return undefined;
  return {
    pages: Array.from(pages, toZone),
    paper,
    landscape: isLandscape(pages, columnWidths),
    footer: footerText(plan),
  };
}
