/** Which data sheet the whole pane works on: the one in front, unless another one is pinned. */
import { DATA_SHEET_NAME } from "../../specification/load-table";
import type { FoundSheet } from "../../workbook/port";

export interface Choice {
  /** Id of the sheet; absent where the workbook has no data sheet. */
  readonly id?: string;
  readonly isPinned: boolean;
}

/** What the pane says of the current test. */
export interface CurrentTest extends Choice {
  /** Names of the data sheets in the order of their tabs; absent until the workbook has answered. */
  readonly tests?: readonly string[];
  /** The current test's sheet. */
  readonly sheet?: string;
  /** The sheet in front, where that is another one. */
  readonly other?: { readonly sheet: string; readonly isTest: boolean };
}

export const isTest = ({ has }: FoundSheet): boolean => has.includes(DATA_SHEET_NAME);

/** The pinned sheet while it is there; else the data sheet in front; else the one before; else the first. */
export function followed(before: Choice, sheets: readonly FoundSheet[]): Choice {
  const tests = sheets.filter(isTest);
  const isThere = tests.some(({ id }) => id === before.id);
  if (isThere && before.isPinned) return before;
  const front = tests.find(({ isActive }) => isActive);
  const id = front?.id ?? (isThere ? before.id : tests[0]?.id);
  return id === before.id && !before.isPinned ? before : { id, isPinned: false };
}

/** The sheet of that name as a person chooses it: pinned, unless it is in front and so is followed anyway. */
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
