/**
 * The table of picks by hand has one row per change: the value before, the value after, the reason, the person and the
 * time. The last row of a load and a pick counts, so nothing is ever deleted; "automatic" returns to the value of the
 * construction.
 */
import {
  METHOD_PICK,
  PICK_NAMES,
  PICK_WORDS,
  PROCEDURE_PICK,
  standingRows,
  type PickedThing,
  type Picks,
  type PickRow,
  type TimeMethod,
} from "../reduction/increment/constructions/picks";
import { CURVE_PICK_NAMES, CURVE_PICK_WORDS, OF_CURVE, type CurvePicks } from "../reduction/curve/picks";
import { PROCEDURES, type Procedure } from "../reduction/increment/constructions/procedure";
import type { Column, Table } from "./field";

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

const LAST = "CLAY.LAST_PICK([pick_load],[pick_of],{pick_load},{pick_of},{pick_after})";

const COLUMNS: readonly Column[] = [
  {
    name: "pick_load",
    label: "Pick by hand: load",
    heading: ["Load", ""],
    measure: "pick",
    kind: "input",
    note: `Number of the load that the pick is of, or "${OF_CURVE}" for the compression curve of the whole test.`,
  },
  {
    name: "pick_of",
    label: "Pick by hand: of",
    heading: ["Pick", "of"],
    measure: "text",
    kind: "input",
    width: 19,
    choices: [
      ...PICK_NAMES.map((name) => PICK_WORDS[name]),
      METHOD_PICK,
      PROCEDURE_PICK,
      ...CURVE_PICK_NAMES.map((name) => CURVE_PICK_WORDS[name]),
    ],
    alsoReads: [...PICK_NAMES, ...CURVE_PICK_NAMES],
    note:
      "d0, d90, d100: readings. The straight part of the root-time plot, the tail and the tangent of the log-time plot: the times, in minutes, " +
      "from which and to which they are drawn; 4:1 pair at: the first time of the pair. cv by: the construction whose d100 and cv the load reports; procedure: how its constructions are made. " +
      "Of the curve, all as stresses: greatest curvature; the readings from which and to which the lines of recompression, of the virgin part and of the final unloading are drawn; the two points of the line through the loop.",
  },
  {
    name: "pick_before",
    label: "Pick by hand: value before",
    heading: ["Value", "before"],
    measure: "pick",
    kind: "input",
    note: "What stood there before the change, for the record; nothing is worked out from it.",
  },
  {
    name: "pick_after",
    label: "Pick by hand: new value",
    heading: ["New", "value"],
    measure: "pick",
    kind: "input",
    width: 11,
    note: 'The value picked; for "cv by": log time or root time; for procedure: aided or drawn. "automatic" goes back to what the constructions find. 0 counts as blank.',
  },
  { name: "pick_by", label: "Pick by hand: initials", heading: ["By", ""], measure: "text", kind: "input" },
  {
    name: "pick_when",
    label: "Pick by hand: when",
    heading: ["Date and", "time"],
    measure: "moment",
    kind: "input",
    width: 15.5,
  },
  {
    name: "pick_remark",
    label: "Pick by hand: remark",
    heading: ["Remark", ""],
    measure: "text",
    kind: "remark",
    width: 32,
    // The remark says that a row is unfinished, or whether this row counts; then it says what a reviewer will ask
    // for.
    formula:
      '=IF(AND([pick_load]="",[pick_of]="",[pick_after]=""),"",' +
      'IF(OR([pick_load]="",[pick_of]="",[pick_after]="",[pick_after]=0),"unfinished: not used",' +
      `IF(AND([pick_load]<>"${OF_CURVE}",IFERROR(MATCH([pick_load],{load_number},0),0)=0),"no such load: not used",` +
      `IFERROR(IF(${LAST}=IF([pick_after]="automatic","",[pick_after]),IF([pick_after]="automatic","automatic again","used"),"replaced further down")` +
      '&IF([pick_reason]="",", no reason","")&IF([pick_by]="",", no initials",""),"cannot be used"))))',
    note: "Whether this row counts, and what it lacks.",
  },
  {
    // This is the last column: a long reason continues over the cells to its right.
    name: "pick_reason",
    label: "Pick by hand: reason",
    heading: ["Reason", ""],
    measure: "text",
    kind: "input",
    width: 46,
    note: "Why the automatic value does not do: what on the plot speaks for this one.",
  },
];

/** The number of rows of the table; a printed page holds half of them. */
export const PICK_ROWS = 48;

export const PICK_TABLE: Table = { rows: PICK_ROWS, columns: COLUMNS };

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
