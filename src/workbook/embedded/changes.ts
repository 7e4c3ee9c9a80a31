/** Tells for each command of the engine what it changes, in the words of the port. */
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
  "MOVE_RANGES",
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
