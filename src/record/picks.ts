/** The rows of the table of picks by hand as a record holds them, and what they say of a load or of the curve. */
import {
  METHOD_PICK,
  PICK_NAMES,
  PROCEDURE_PICK,
  standingRows,
  type PickedThing,
  type Picks,
  type PickRow,
  type TimeMethod,
} from "../reduction/increment/constructions/picks";
import { PROCEDURES, type Procedure } from "../reduction/increment/constructions/procedure";
import { CURVE_PICK_NAMES, OF_CURVE, type CurvePicks } from "../reduction/curve/picks";

/** A row of the table that is not blank, as a test record contains it. */
export interface RecordedPick extends PickRow {
  /** The row of the table, counted from 1. */
  readonly row: number;
  readonly before?: number | string;
  readonly reason?: string;
  readonly by?: string;
  /** As yyyy-mm-dd hh:mm, or as a person typed it. */
  readonly when?: string;
}

/** The names of the columns that a person types. */
export const PICK_COLUMNS: readonly string[] = [
  "pick_load",
  "pick_of",
  "pick_before",
  "pick_after",
  "pick_reason",
  "pick_by",
  "pick_when",
];

/**
 * The picks that count for the constructions of a load. A value that is no number is left out; the cell of the sheet
 * refuses it.
 */
export const picksOfLoad = (picks: readonly RecordedPick[], load: number): Picks => numbersOf(picks, load, PICK_NAMES);

/** The picks that count for the compression curve: stresses in the unit of the sheet. */
export const picksOfCurve = (picks: readonly RecordedPick[]): CurvePicks =>
  numbersOf(picks, OF_CURVE, CURVE_PICK_NAMES);

function numbersOf<N extends string>(
  picks: readonly RecordedPick[],
  of: PickedThing,
  names: readonly N[],
): Readonly<Partial<Record<N, number>>> {
  const standing = standingRows(picks, of);
  const values: Partial<Record<N, number>> = {};
  for (const name of names) {
    const after = standing.get(name)?.after;
    if (typeof after === "number") values[name] = after;
  }
  return values;
}

/**
 * The method whose d100 and cv the load reports: the last "cv by" of the load, otherwise the choice for the test,
 * otherwise log time.
 */
export function methodOfLoad(
  { picks, words }: { readonly picks: readonly RecordedPick[]; readonly words: { readonly time_method?: string } },
  load: number,
): TimeMethod {
  const picked = standingRows(picks, load).get(METHOD_PICK)?.after;
  return String(picked ?? words.time_method)
    .trim()
    .toLowerCase() === "root time"
    ? "root time"
    : "log time";
}

/**
 * The procedure of the constructions of a load: the last "procedure" of the load, otherwise the choice for the test,
 * otherwise aided.
 */
export function procedureOfLoad(
  { picks, words }: { readonly picks: readonly RecordedPick[]; readonly words: { readonly time_procedure?: string } },
  load: number,
): Procedure {
  const chosen = String(standingRows(picks, load).get(PROCEDURE_PICK)?.after ?? words.time_procedure)
    .trim()
    .toLowerCase();
  return PROCEDURES.find((procedure) => procedure === chosen) ?? "aided";
}
