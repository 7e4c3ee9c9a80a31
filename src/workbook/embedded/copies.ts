/**
 * Gives a copied sheet names of its own. In the engine names belong to the workbook, so the formulas of a copy would
 * still read the original sheet; in Excel, names are local and the copy has its own. Here the step that copies a sheet
 * also gives the copy its names.
 * Casts: the engine's types do not include the plugins, commands, getters and components that are added here.
 */
import { registries, UIPlugin } from "@odoo/o-spreadsheet";
import type { Command, Dispatching, Model } from "./engine";
import { addNames } from "./named-ranges";
import { freeNames, renameIn, type LocalNames } from "./names";
import { formulaAt } from "./typing/locale";
import { whileLifted } from "./protection";

export interface SheetCopy {
  readonly from: string;
  readonly to: string;
}

/** By the getters of a workbook: the function that gives the commands for a copy. */
const adopters = new WeakMap<object, (copy: SheetCopy) => readonly Command[]>();

/** Registers `adopt`, which gives the commands that change each copied sheet of the workbook. */
export const adoptCopies = (model: Model, adopt: (copy: SheetCopy) => readonly Command[]): void =>
  void adopters.set(model.getters, adopt);

class CopiesPlugin extends UIPlugin {
  override handle(command: any): void {
    if (command.type !== "DUPLICATE_SHEET") return;
    const commands = adopters.get(this.getters)?.({ from: command.sheetId, to: command.sheetIdTo }) ?? [];
    whileLifted(() => {
      for (const { type, ...payload } of commands) (this as unknown as Dispatching).dispatch(type, payload);
    });
  }
}

registries.featurePluginRegistry.add("clayledger_copies", CopiesPlugin as never);

/**
 * The commands that give a copy its own names and make its formulas use them; `names` are the names of the original
 * sheet.
 */
export function ownNames(model: Model, { from, to }: SheetCopy, names: LocalNames) {
  const { getters } = model;
  const present = [...names].filter(([, called]) => getters.getNamedRange(called)?.range.sheetId === from);
  const taken = getters.getNamedRanges().map(({ name }) => name);
  const own = freeNames(
    present.map(([local]) => local),
    taken,
  );
  const renamed = new Map(present.map(([local, called]) => [called.toLowerCase(), own.get(local)!]));
  const named = present.map(([local, called]) => ({
    name: own.get(local)!,
    zone: getters.getNamedRange(called)!.range.zone,
  }));
  const commands: Command[] = named.length > 0 ? [addNames(to, named)] : [];
  for (const { id, isFormula } of Object.values(getters.getCells(to))) {
    if (!isFormula) continue;
    const position = getters.getCellPosition(id);
    const formula = formulaAt(getters, position);
    const content = `=${renameIn(formula.slice(1), (name) => renamed.get(name.toLowerCase()) ?? name)}`;
    if (content !== formula) commands.push({ type: "UPDATE_CELL", ...position, content });
  }
  return { names: own as LocalNames, commands };
}
