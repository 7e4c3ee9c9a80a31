/**
 * What one step changes that cells are calculated from, collected command by command: the engine itself would evaluate every cell of the
 * workbook whenever a sheet or a name is added or a step is undone, which takes 0.1 s for each data sheet.
 */
import { isWithoutValues } from "../changes";
import { ADD_NAMES } from "../named-ranges";
import type { EngineCommand, SheetRange } from "./engine-parts";
import type { NamedRange } from "./name-finder";
import type { Zone } from "../zones";

const OF_NAMES = new Set(["CREATE_NAMED_RANGE", "DELETE_NAMED_RANGE", ADD_NAMES]);

/** Commands that move rows or columns of a sheet. */
const OF_LINES = new Set(["ADD_COLUMNS_ROWS", "REMOVE_COLUMNS_ROWS"]);

/** Commands that change the cells of their `target`. */
const OF_TARGETS = new Set(["CLEAR_CELLS", "DELETE_CONTENT", "SET_FORMATTING", "CLEAR_FORMATTING"]);

/** With more cells than this in one step, every cell is evaluated. */
const MOST_CELLS = 200_000;

const area = ({ left, right, top, bottom }: Zone): number => (right - left + 1) * (bottom - top + 1);

/** True if the command names a range anew, without another word for it: a formula keeps the old word in its text. */
const isMoveOfName = ({ type, oldRangeName, newRangeName }: EngineCommand): boolean =>
  type === "UPDATE_NAMED_RANGE" && oldRangeName === newRangeName;

export class Step {
  /** The sheets that were added, deleted, or brought back, and those whose rows or columns moved. */
  readonly sheets = new Set<string>();
  /**
   * The sheets that came back by undo or redo, or whose rows or columns moved: formulas of other sheets may read them.
   */
  readonly returned = new Set<string>();
  /** Cells that changed by undo or redo. */
  readonly cells: SheetRange[] = [];
  #count = 0;
  /** The sheets that were renamed. */
  readonly renamed = new Set<string>();
  /** True if names may be added, moved or deleted. */
  changesNames = false;
  #names: ReadonlyMap<string, NamedRange> = new Map();

  /** The names before the step, by their small letters. When undo is told, the workbook has its former names already. */
  get namesBefore(): ReadonlyMap<string, NamedRange> {
    return this.#names;
  }

  get isEmpty(): boolean {
    return this.sheets.size === 0 && this.renamed.size === 0 && this.cells.length === 0 && !this.changesNames;
  }

  clear(): void {
    this.sheets.clear();
    this.returned.clear();
    this.renamed.clear();
    this.cells.length = 0;
    this.#count = 0;
    this.changesNames = false;
  }

  /** Keeps the names of the workbook for the next step. The engine changes an entry of its list in place. */
  keepNames(names: readonly NamedRange[]): void {
    this.#names = new Map(names.map((one) => [one.name.toLowerCase(), { ...one }]));
  }

  /** Adds what the command changes. Returns false if only an evaluation of every cell can follow it. */
  adds(command: EngineCommand): boolean {
    const { type, sheetId, sheetIdTo } = command;
    if (type === "CREATE_SHEET" || type === "DELETE_SHEET") this.sheets.add(sheetId);
    else if (type === "DUPLICATE_SHEET") this.sheets.add(sheetIdTo);
    else if (type === "ADD_MERGE") return this.sheets.has(sheetId);
    else if (type === "RENAME_SHEET") this.renamed.add(sheetId);
    else if (OF_LINES.has(type)) {
      this.sheets.add(sheetId);
      this.returned.add(sheetId);
    } else if (type === "UNDO" || type === "REDO") return this.#returns(command.commands);
    else if (!OF_NAMES.has(type) && !isMoveOfName(command)) return false;
    // Names go with their sheet.
    this.changesNames = true;
    return true;
  }

  /** Adds what undo or redo of these commands changes. */
  #returns(commands: readonly EngineCommand[]): boolean {
    const ofSheets = new Set(commands.filter(({ type }) => /^(?:CREATE|DELETE|DUPLICATE)_SHEET$/.test(type)));
    for (const command of ofSheets) {
      this.adds(command);
      this.returned.add(command.type === "DUPLICATE_SHEET" ? command.sheetIdTo : command.sheetId);
    }
    return commands.every((command) => {
      const { type, sheetId, col, row } = command;
      if (ofSheets.has(command) || isWithoutValues(type)) return true;
      if (type !== "UPDATE_CELL" && type !== "CLEAR_CELL" && !OF_TARGETS.has(type)) return this.adds(command);
      if (this.sheets.has(sheetId)) return true;
      const target: readonly Zone[] = OF_TARGETS.has(type)
        ? command.target
        : [{ left: col, right: col, top: row, bottom: row }];
      for (const zone of target) this.#addCells(sheetId, zone);
      return this.#count <= MOST_CELLS;
    });
  }

  /** Cells below one another, as a column is written, become one range. */
  #addCells(sheetId: string, zone: Zone): void {
    this.#count += area(zone);
    const last = this.cells.at(-1);
    const { left, right, top, bottom } = zone;
    const isBelow =
      last?.sheetId === sheetId && last.zone.left === left && last.zone.right === right && last.zone.bottom + 1 === top;
    if (isBelow) this.cells.splice(-1, 1, { sheetId, zone: { ...last.zone, bottom } });
    else this.cells.push({ sheetId, zone });
  }
}
