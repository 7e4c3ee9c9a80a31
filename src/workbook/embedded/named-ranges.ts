/**
 * The names of a workbook in the engine, found without a search and added at once. With 40 data sheets these are 14,000 names: the
 * engine searches through all of them for each name that it looks up or adds, and keeps a list of all of them for undo with each added
 * name, 30 MB for a sheet.
 * Casts: the engine's types do not include the inner parts of its plugins.
 */
import { coreTypes, invalidateEvaluationCommands, registries } from "@odoo/o-spreadsheet";
import { nameFinder, type NamedRange } from "./evaluation/name-finder";
import type { Command } from "./engine";
import type { Zone } from "./zones";

/** Adds many names in one command. */
export const ADD_NAMES = "CLAYLEDGER_ADD_NAMES";

interface NamesPlugin {
  readonly namedRanges: readonly NamedRange[];
  readonly getters: any;
  readonly history: { update(path: "namedRanges", value: readonly NamedRange[]): void };
  allowDispatch(command: any): string | readonly string[];
  handle(command: any): void;
  checkValidNewNamedRangeName(name: string): string;
}

const NamedRanges = registries.corePluginRegistry.get("named_ranges") as unknown as {
  new (...config: never[]): NamesPlugin;
  readonly getters: readonly string[];
};

interface NewName {
  readonly name: string;
  readonly zone: Zone;
}

class FoundNamedRanges extends NamedRanges {
  static override getters = NamedRanges.getters;
  readonly #find = nameFinder(() => this.namedRanges);

  getNamedRange(name: string): NamedRange | undefined {
    return this.#find(name);
  }

  override allowDispatch(command: any): string | readonly string[] {
    if (command.type !== ADD_NAMES) return super.allowDispatch(command);
    const names = command.names as readonly NewName[];
    const isTwice = new Set(names.map(({ name }) => name.toLowerCase())).size < names.length;
    const refused = names.map(({ name }) => this.checkValidNewNamedRangeName(name)).filter((one) => one !== "Success");
    return isTwice ? "NamedRangeNameAlreadyExists" : refused.length > 0 ? refused : "Success";
  }

  override handle(command: any): void {
    if (command.type === "UPDATE_NAMED_RANGE") return this.#change(command);
    if (command.type !== ADD_NAMES) return super.handle(command);
    const added = (command.names as readonly NewName[]).map(({ name, zone }) => ({
      name,
      range: this.getters.getRangeFromRangeData({ _sheetId: command.sheetId, _zone: zone }),
    }));
    this.history.update("namedRanges", [...this.namedRanges, ...added]);
  }

  /** The engine would change the list itself; the finder of names takes a list that is the same for unchanged. */
  #change({ oldRangeName, newRangeName, ranges: [first] }: any): void {
    const before = this.getNamedRange(oldRangeName);
    const after = { name: newRangeName, range: this.getters.getRangeFromRangeData(first) };
    this.history.update(
      "namedRanges",
      this.namedRanges.map((one) => (one === before ? after : one)),
    );
  }
}

coreTypes.add(ADD_NAMES as never);
invalidateEvaluationCommands.add(ADD_NAMES as never);
// The engine asks for the inverse of a command in a shared session; no session is shared here.
registries.inverseCommandRegistry.add(ADD_NAMES, (command) => [command]);
registries.corePluginRegistry.replace("named_ranges", FoundNamedRanges as never);

/** The command that gives zones of a sheet their names. */
export const addNames = (sheetId: string, names: readonly NewName[]): Command => ({ type: ADD_NAMES, sheetId, names });
