/**
 * The picks by hand of a data sheet for the review screen: the rows saved in the table of picks, the unsaved changes of
 * the person, and the cells for a change. This module does not use the workbook.
 */
import { localDayNumber } from "../../../../workbook/day-number";
import { methodOfLoad, PICK_COLUMNS, picksOfCurve, picksOfLoad, type RecordedPick } from "../../../../record/picks";
import { readRecord, type NamedValues } from "../../../../record/record";
import {
  AUTOMATIC,
  METHOD_PICK,
  PICK_NAMES,
  PICK_WORDS,
  standingRows,
  type PickedThing,
  type PickName,
  type TimeMethod,
} from "../../../../reduction/increment/constructions/picks";
import { CURVE_PICK_NAMES, CURVE_PICK_WORDS, OF_CURVE, type CurvePickName } from "../../../../reduction/curve/picks";
import { firstOf } from "../../../../reduction/numeric/lists";
import { wordIn } from "../../../../specification/list-words";
import { languageOf, type SheetLanguage } from "../../../../specification/text/language";
import type { CellValue, NamedColumns } from "../../../../workbook/port";

/** A pick with a number: of a time curve, or of the compression curve. */
export type NumberPick = PickName | CurvePickName;
export type NumberPicks = Readonly<Partial<Record<NumberPick, number>>>;
export type PickOf = NumberPick | typeof METHOD_PICK;

/** In the order of the table. */
const NUMBER_PICKS = [...PICK_NAMES, ...CURVE_PICK_NAMES] as const;
const WORDS: Readonly<Record<NumberPick, string>> = { ...PICK_WORDS, ...CURVE_PICK_WORDS };

export interface PicksTable {
  readonly rows: readonly RecordedPick[];
  /** The last row that is not blank, counted from 1; 0 if all rows are blank. */
  readonly lastUsed: number;
  /** The number of rows of the shortest column. */
  readonly capacity: number;
  /** Columns that have no name on the sheet. If one is missing, nothing can be saved. */
  readonly missing: readonly string[];
  /** The language of the words of the sheet. */
  readonly language: SheetLanguage;
}

/**
 * Reads the table from the values of a sheet by name, as `WorkbookPort.readNames` returns them; they must include
 * PICK_COLUMNS, and LANGUAGE_CELL unless the sheet is English.
 */
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
    language: languageOf(values),
  };
}

/** What the table of the sheet says about one load, or about the compression curve. */
export interface Saved {
  readonly picks: NumberPicks;
  /** The construction chosen for this load alone. */
  readonly method?: TimeMethod;
  /** The rows of the table that count for the load. */
  readonly standing: ReadonlySet<number>;
}

export function savedOf(rows: readonly RecordedPick[], load: PickedThing): Saved {
  const standing = standingRows(rows, load);
  return {
    picks: load === OF_CURVE ? picksOfCurve(rows) : picksOfLoad(rows, load),
    method: load !== OF_CURVE && standing.has(METHOD_PICK) ? methodOfLoad({ picks: rows, words: {} }, load) : undefined,
    standing: new Set([...standing.values()].map(({ row }) => row)),
  };
}

/** The unsaved changes of one load, or of the curve: each is a value, or the return to the automatic value. */
export type Draft = Readonly<
  Partial<Record<NumberPick, number | typeof AUTOMATIC> & Record<typeof METHOD_PICK, TimeMethod | typeof AUTOMATIC>>
>;

/** A draft with one pick changed. With undefined, or with the saved value, the pick stays as it is on the sheet. */
export function withPick(draft: Draft, saved: Saved, of: PickOf, value: number | string | undefined): Draft {
  // Object.fromEntries returns keys of type string; these keys are names of the draft.
  const others = Object.fromEntries(Object.entries(draft).filter(([name]) => name !== of)) as Draft;
  const present = of === METHOD_PICK ? saved.method : saved.picks[of];
  return value === undefined || value === (present ?? AUTOMATIC) ? others : { ...others, [of]: value };
}

/** The picks that count once the draft is saved. */
export function picksWith(saved: Saved, draft: Draft): NumberPicks {
  const picks: Partial<Record<NumberPick, number>> = { ...saved.picks };
  for (const name of NUMBER_PICKS) {
    const value = draft[name];
    if (value === AUTOMATIC) delete picks[name];
    else if (value !== undefined) picks[name] = value;
  }
  return picks;
}

/** The construction whose cv counts once the draft is saved; `ofTest` is the construction for the whole test. */
export function methodWith(saved: Saved, draft: Draft, ofTest: TimeMethod): TimeMethod {
  const chosen = draft[METHOD_PICK];
  return chosen === AUTOMATIC ? ofTest : (chosen ?? saved.method ?? ofTest);
}

export interface Change {
  readonly of: PickOf;
  /** The value that counts before the change, picked or automatic; "none" if the construction gave none. */
  readonly before: number | string;
  readonly after: number | string;
}

export const NONE = "none";

/**
 * The changes of a draft, in the order of the names in the table. `valueNow` returns the value that counts before the
 * change.
 */
export const changesOf = (draft: Draft, valueNow: (of: PickOf) => number | string | undefined): Change[] =>
  ([...NUMBER_PICKS, METHOD_PICK] as const).flatMap((of) => {
    const after = draft[of];
    return after === undefined ? [] : [{ of, before: valueNow(of) ?? NONE, after }];
  });

/** The day number of a date in a spreadsheet (days since 1899-12-30) in local time, rounded to the minute. */
export const dayNumber = (date: Date): number => localDayNumber(new Date(Math.round(date.getTime() / 60_000) * 60_000));

/**
 * The number of free rows below the last row that is not blank. A change must go there, because the last row counts.
 */
export const freeRows = ({ lastUsed, capacity }: PicksTable): number => capacity - lastUsed;

/**
 * The cells for the changes of one load or of the curve, in the language of the sheet, below the last row that is not blank. There must be at least as many
 * `freeRows`.
 */
export function cellsOfChanges(
  { lastUsed, language }: PicksTable,
  load: PickedThing,
  changes: readonly Change[],
  { reason, by, when }: { readonly reason: string; readonly by: string; readonly when: number },
): NamedColumns {
  const above = new Array<null>(lastUsed).fill(null);
  const column = (value: (change: Change) => CellValue) => [...above, ...changes.map(value)];
  const worded = (value: number | string): CellValue => (typeof value === "string" ? wordIn(language, value) : value);
  return {
    pick_load: column(() => worded(load)),
    pick_of: column(({ of }) => worded(of === METHOD_PICK ? of : WORDS[of])),
    pick_before: column(({ before }) => worded(before)),
    pick_after: column(({ after }) => worded(after)),
    pick_reason: column(() => reason),
    pick_by: column(() => by),
    pick_when: column(() => when),
  };
}

/**
 * The rows of the last change: the last rows that were saved together, for the same load, by the same person, at the
 * same time and for the same reason, each pick once. A row without initials or time is a change of its own.
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

/** The cells that clear the rows `from` to `to` of the table and leave all other rows as they are. */
export const cellsWithout = (from: number, to = from): NamedColumns =>
  Object.fromEntries(
    PICK_COLUMNS.map((name) => [
      name,
      [...new Array<null>(from - 1).fill(null), ...new Array<string>(to - from + 1).fill("")],
    ]),
  );

/** True if two tables have the same rows, so that a change applies to what the screen showed. */
export const sameRows = (a: PicksTable, b: PicksTable): boolean => JSON.stringify(a.rows) === JSON.stringify(b.rows);

/** True if a spreadsheet would read the text as a formula. */
export const looksLikeFormula = (text: string): boolean => /^[=+\-@]/.test(text.trim());
