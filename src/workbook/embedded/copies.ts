/**
 * A copied sheet. The engine's names belong to the workbook, so the formulas of a copy go on reading the sheet it was copied
 * from; with Excel's local names it would have its own. Here the copy is given its own.
 */
import { registries, UIPlugin } from "@odoo/o-spreadsheet";
import type { Command, Model } from "./engine";
import { freeNames, renameIn, type LocalNames } from "./names";

export interface SheetCopy {
  readonly from: string;
  readonly to: string;
}

/** Remembers which sheet was copied, until somebody asks. */
class CopiesPlugin extends UIPlugin {
  static override getters = ["takeSheetCopies"] as never;
  #copies: SheetCopy[] = [];

  takeSheetCopies(): SheetCopy[] {
    const taken = this.#copies;
    this.#copies = [];
    return taken;
  }

  override handle(command: any): void {
    if (command.type === "DUPLICATE_SHEET") this.#copies.push({ from: command.sheetId, to: command.sheetIdTo });
  }
}

registries.featurePluginRegistry.add("clayledger_copies", CopiesPlugin as never);

/** The sheets copied since the last question. */
export const takeCopies = (model: Model): SheetCopy[] =>
  (model.getters as unknown as { takeSheetCopies(): SheetCopy[] }).takeSheetCopies();

/** What gives a copy names of its own and has its formulas use them; `names` are those of the sheet it was copied from. */
export function ownNames(model: Model, { from, to }: SheetCopy, names: LocalNames) {
  const { getters } = model;
  const present = [...names].filter(([, called]) => getters.getNamedRange(called)?.range.sheetId === from);
  const taken = getters.getNamedRanges().map(({ name }) => name);
  const own = freeNames(
    present.map(([local]) => local),
    taken,
  );
  const renamed = new Map(present.map(([local, called]) => [called.toLowerCase(), own.get(local)!]));
  const commands: Command[] = present.map(([local, called]) => ({
    type: "CREATE_NAMED_RANGE",
    name: own.get(local),
    ranges: [{ _sheetId: to, _zone: getters.getNamedRange(called)!.range.zone }],
  }));
  for (const { id, isFormula } of Object.values(getters.getCells(to))) {
    if (!isFormula) continue;
    const position = getters.getCellPosition(id);
    const formula = getters.getCellText(position, { showFormula: true });
    const content = `=${renameIn(formula.slice(1), (name) => renamed.get(name.toLowerCase()) ?? name)}`;
    if (content !== formula) commands.push({ type: "UPDATE_CELL", ...position, content });
  }
  return { names: own as LocalNames, commands };
}
