/**
 * The picks by hand of a data sheet as the review screen works on them: what is saved in the sheet's table of picks, what the
 * person has changed since, and the cells that a change is written to. Nothing here touches a workbook.
 */
import { localDayNumber } from "../../../workbook/day-number";
import { methodOfLoad, PICK_COLUMNS, picksOfLoad, type RecordedPick } from "../../../specification/pick-table";
import { readRecord, type NamedValues } from "../../../record/record";
import {
  AUTOMATIC,
  METHOD_PICK,
  PICK_NAMES,
  PICK_WORDS,
  standingRows,
  type PickName,
  type Picks,
  type TimeMethod,
} from "../../../reduction/increment/constructions/picks";
import { firstOf } from "../../../reduction/numeric/lists";
import type { CellValue, NamedColumns } from "../../../workbook/port";

export type PickOf = PickName | typeof METHOD_PICK;

export interface PicksTable {
  readonly rows: readonly RecordedPick[];
  /** The last row with anything in it, from 1; 0 where there is none. */
  readonly lastUsed: number;
  /** How many rows the columns have: those of the shortest. */
  readonly capacity: number;
  /** Columns that the sheet has no name for; without any one of them nothing can be saved. */
  readonly missing: readonly string[];
}

/** From a sheet's values by name, as `WorkbookPort.readNames` gives them, of PICK_COLUMNS at least. */
export function tableOf(values: NamedValues): PicksTable {
  const byName = Object.fromEntries(PICK_COLUMNS.map((name) => [name, values[name] ?? []]));
  const columns = Object.values(byName);
  const used = columns.map((cells) =>
    cells.reduce((last, [cell], index) => (String(cell).trim() === "" ? last : index + 1), 0),
  );
  return {
    rows: readRecord(byName).picks,
    lastUsed: Math.max(...used),
    capacity: Math.min(...columns.map(({ length }) => length)),
    missing: PICK_COLUMNS.filter((name) => !values[name]),
  };
}

/** What the sheet's table says of one load. */
export interface Saved {
  readonly picks: Picks;
  /** The construction chosen for this load alone. */
  readonly method?: TimeMethod;
  /** Rows of the table that count for the load. */
  readonly standing: ReadonlySet<number>;
}

export function savedOf(rows: readonly RecordedPick[], load: number): Saved {
  const standing = standingRows(rows, load);
  return {
    picks: picksOfLoad(rows, load),
    method: standing.has(METHOD_PICK) ? methodOfLoad({ picks: rows, words: {} }, load) : undefined,
    standing: new Set([...standing.values()].map(({ row }) => row)),
  };
}

/** What the person has changed on one load and not saved: a value, or back to the automatic one. */
export type Draft = Readonly<
  Partial<Record<PickName, number | typeof AUTOMATIC> & Record<typeof METHOD_PICK, TimeMethod | typeof AUTOMATIC>>
>;

/** A draft with one pick changed; undefined, or what is saved already, leaves the pick as the sheet has it. */
export function withPick(draft: Draft, saved: Saved, of: PickOf, value: number | string | undefined): Draft {
  // Object.fromEntries is typed with any text as the name: these are names of the draft.
  const others = Object.fromEntries(Object.entries(draft).filter(([name]) => name !== of)) as Draft;
  const present = of === METHOD_PICK ? saved.method : saved.picks[of];
  return value === undefined || value === (present ?? AUTOMATIC) ? others : { ...others, [of]: value };
}

/** The picks that count once the draft is saved. */
export function picksWith(saved: Saved, draft: Draft): Picks {
  const picks: Partial<Record<PickName, number>> = { ...saved.picks };
  for (const name of PICK_NAMES) {
    const value = draft[name];
    if (value === AUTOMATIC) delete picks[name];
    else if (value !== undefined) picks[name] = value;
  }
  return picks;
}

/** The construction whose cv counts once the draft is saved; `ofTest` is that of the test as a whole. */
export function methodWith(saved: Saved, draft: Draft, ofTest: TimeMethod): TimeMethod {
  const chosen = draft[METHOD_PICK];
  return chosen === AUTOMATIC ? ofTest : (chosen ?? saved.method ?? ofTest);
}

export interface Change {
  readonly of: PickOf;
  /** The value that counts now, picked or automatic; "none" where the construction gave none. */
  readonly before: number | string;
  readonly after: number | string;
}

export const NONE = "none";

/** The changes of a draft, in the order of the table's names. `valueNow` gives what counts now. */
export const changesOf = (draft: Draft, valueNow: (of: PickOf) => number | string | undefined): Change[] =>
  ([...PICK_NAMES, METHOD_PICK] as const).flatMap((of) => {
    const after = draft[of];
    return after === undefined ? [] : [{ of, before: valueNow(of) ?? NONE, after }];
  });

/** A day number of the spreadsheet (days since 1899-12-30) with the local time of day, to the minute. */
export const dayNumber = (date: Date): number => localDayNumber(new Date(Math.round(date.getTime() / 60_000) * 60_000));

/** Free rows below the last one that holds anything: only there can a change be the last. */
export const freeRows = ({ lastUsed, capacity }: PicksTable): number => capacity - lastUsed;

/** The cells of changes to one load, below the last row that holds anything; `freeRows` must have room for them. */
export function cellsOfChanges(
  { lastUsed }: PicksTable,
  load: number,
  changes: readonly Change[],
  { reason, by, when }: { readonly reason: string; readonly by: string; readonly when: number },
): NamedColumns {
  const above = new Array<null>(lastUsed).fill(null);
  const column = (value: (change: Change) => CellValue) => [...above, ...changes.map(value)];
  return {
    pick_load: column(() => load),
    pick_of: column(({ of }) => (of === METHOD_PICK ? of : PICK_WORDS[of])),
    pick_before: column(({ before }) => before),
    pick_after: column(({ after }) => after),
    pick_reason: column(() => reason),
    pick_by: column(() => by),
    pick_when: column(() => when),
  };
}

/**
 * The last change of the table, which may be of several rows: those at the end that were saved together, for the same load by
 * the same person, at the same time and for the same reason, no pick twice. A row without initials stands alone.
 */
export function lastChange(rows: readonly RecordedPick[]): readonly RecordedPick[] {
  const last = rows.at(-1);
  if (!last) return [];
  const together = [last];
  for (const row of rows.slice(0, -1).reverse()) {
    const same = (["load", "by", "when", "reason"] as const).every((key) => row[key] === last[key]);
    const isNext = row.row === firstOf(together).row - 1 && !together.some(({ of }) => of === row.of);
    if (!last.by || !last.when || !same || !isNext) break;
    together.unshift(row);
  }
  return together;
}

/** The cells that clear rows of the table, from one to another, and leave every other as it is. */
export const cellsWithout = (from: number, to = from): NamedColumns =>
  Object.fromEntries(
    PICK_COLUMNS.map((name) => [
      name,
      [...new Array<null>(from - 1).fill(null), ...new Array<string>(to - from + 1).fill("")],
    ]),
  );

/** Whether two tables hold the same rows: what was shown is what will be changed. */
export const sameRows = (a: PicksTable, b: PicksTable): boolean => JSON.stringify(a.rows) === JSON.stringify(b.rows);

/** A text that a spreadsheet would take for a formula. */
export const looksLikeFormula = (text: string): boolean => /^[=+\-@]/.test(text.trim());
