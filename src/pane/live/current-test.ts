/** Decides which data sheet the pane works on: the active sheet, unless a person pinned another one. */
import { DATA_SHEET_NAME } from "../../specification/readings";
import type { FoundSheet } from "../../workbook/port";

export interface Choice {
  /** The id of the sheet; missing if the workbook has no data sheet. */
  readonly id?: string;
  readonly isPinned: boolean;
}

/** What the pane shows about the current test. */
export interface CurrentTest extends Choice {
  /** The names of the data sheets in the order of their tabs; missing until the workbook has answered. */
  readonly tests?: readonly string[];
  /** The sheet of the current test. */
  readonly sheet?: string;
  /** The active sheet, if it is not the sheet of the current test. */
  readonly other?: { readonly sheet: string; readonly isTest: boolean };
}

export const isTest = ({ has }: FoundSheet): boolean => has.includes(DATA_SHEET_NAME);

/**
 * Returns the pinned sheet while it exists; otherwise the active sheet if it is a data sheet; otherwise the sheet
 * chosen before; otherwise the first data sheet.
 */
export function followed(before: Choice, sheets: readonly FoundSheet[]): Choice {
  const tests = sheets.filter(isTest);
  const isThere = tests.some(({ id }) => id === before.id);
  if (isThere && before.isPinned) return before;
  const front = tests.find(({ isActive }) => isActive);
  const id = front?.id ?? (isThere ? before.id : tests[0]?.id);
  return id === before.id && !before.isPinned ? before : { id, isPinned: false };
}

/**
 * The choice of the sheet with this name by a person. The sheet is pinned unless it is the active sheet, which is
 * followed anyway.
 */
export function chosen(name: string, before: Choice, sheets: readonly FoundSheet[]): Choice {
  const found = sheets.find((one) => one.sheet === name && isTest(one));
  return found ? { id: found.id, isPinned: !found.isActive } : before;
}

export function currentTest({ id, isPinned }: Choice, sheets: readonly FoundSheet[]): CurrentTest {
  const front = sheets.find(({ isActive }) => isActive);
  return {
    id,
    isPinned,
    tests: sheets.filter(isTest).map(({ sheet }) => sheet),
    sheet: sheets.find((one) => one.id === id)?.sheet,
    ...(id !== undefined && front && front.id !== id && { other: { sheet: front.sheet, isTest: isTest(front) } }),
  };
}
