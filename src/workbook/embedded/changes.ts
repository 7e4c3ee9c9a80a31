/** What each command of the engine changes: in the words of the port, and whether it leaves all values as they are. */
import type { Change } from "../port";
import { ADD_NAMES } from "./named-ranges";

const VALUES = [
  "UPDATE_CELL",
  "UPDATE_CELL_POSITION",
  "CLEAR_CELL",
  "CLEAR_CELLS",
  "DELETE_CONTENT",
  "ADD_COLUMNS_ROWS",
  "REMOVE_COLUMNS_ROWS",
  "HIDE_COLUMNS_ROWS",
  "UNHIDE_COLUMNS_ROWS",
  "GROUP_HEADERS",
  "UNGROUP_HEADERS",
  "FOLD_HEADER_GROUP",
  "UNFOLD_HEADER_GROUP",
  "FOLD_ALL_HEADER_GROUPS",
  "UNFOLD_ALL_HEADER_GROUPS",
  "FOLD_HEADER_GROUPS_IN_ZONE",
  "UNFOLD_HEADER_GROUPS_IN_ZONE",
  "ADD_MERGE",
  "REMOVE_MERGE",

  "UPDATE_TABLE",
  "UPDATE_FILTER",
  "UPDATE_LOCALE",
  // A value is read with the format of its cell.
  "SET_FORMATTING",
  "CLEAR_FORMATTING",
  "EVALUATE_CELLS",
  "UNDO",
  "REDO",
];

const SHEETS = [
  "CREATE_SHEET",
  "DELETE_SHEET",
  "DUPLICATE_SHEET",
  "MOVE_SHEET",
  "RENAME_SHEET",
  "HIDE_SHEET",
  "SHOW_SHEET",
  "CREATE_NAMED_RANGE",
  ADD_NAMES,
  "UPDATE_NAMED_RANGE",
  "DELETE_NAMED_RANGE",
  // A name disappears with the last of its rows.
  "REMOVE_COLUMNS_ROWS",
  "UNDO",
  "REDO",
];

const BY_COMMAND: ReadonlyMap<string, readonly Change[]> = new Map(
  [...new Set([...VALUES, ...SHEETS])].map((type) => [
    type,
    [...(VALUES.includes(type) ? ["values" as const] : []), ...(SHEETS.includes(type) ? ["sheets" as const] : [])],
  ]),
);

/** What a command of that type may change. No command tells that another sheet comes to the front. */
export const changesOf = (type: string): readonly Change[] => BY_COMMAND.get(type) ?? [];

/** Commands of the engine that change no value, and whose undoing changes none. */
export const WITHOUT_VALUES = new Set([
  ...["RESIZE_COLUMNS_ROWS", "SET_GRID_LINES_VISIBILITY", "FREEZE_COLUMNS", "FREEZE_ROWS", "UNFREEZE_COLUMNS"],
  ...["UNFREEZE_ROWS", "UNFREEZE_COLUMNS_ROWS", "COLOR_SHEET", "MOVE_SHEET", "HIDE_SHEET", "SHOW_SHEET", "LOCK_SHEET"],
  ...["UNLOCK_SHEET", "SET_BORDER", "SET_ZONE_BORDERS", "SET_BORDERS_ON_TARGET", "CREATE_FIGURE", "DELETE_FIGURE"],
  ...["UPDATE_FIGURE", "CREATE_IMAGE", "CREATE_CHART", "UPDATE_CHART", "DELETE_CHART", "ADD_DATA_VALIDATION_RULE"],
  ...["REMOVE_DATA_VALIDATION_RULE", "ADD_CONDITIONAL_FORMAT", "REMOVE_CONDITIONAL_FORMAT"],
  "CHANGE_CONDITIONAL_FORMAT_PRIORITY",
]);

/**
 * Whether no value changes by a command or by its undoing. The add-in's own commands are of charts, notes, print,
 * protection, rules and the lists of undo, besides that of names.
 */
export const isWithoutValues = (type: string): boolean =>
  WITHOUT_VALUES.has(type) || (type.startsWith("CLAYLEDGER_") && type !== ADD_NAMES);
