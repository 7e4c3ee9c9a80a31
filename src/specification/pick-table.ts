/**
 * The table of picks by hand has one row per change: the value before, the value after, the reason, the person and the
 * time. The last row of a load and a pick counts, so nothing is ever deleted; "automatic" returns to the value of the
 * construction.
 */
import { OF_CURVE } from "../reduction/curve/picks";
import { AUTOMATIC } from "../reduction/increment/constructions/picks";
import type { Column, Table } from "./field";
import { isWord } from "./list-words";
import { OLD_PICK_CHOICES, PICK_CHOICES, PICK_OF } from "./pick-choices";

const LAST = "CLAY.LAST_PICK([pick_load],[pick_of],{pick_load},{pick_of},{pick_after})";
const IS_AUTOMATIC = isWord("[pick_after]", AUTOMATIC);

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
    name: PICK_OF,
    label: "Pick by hand: of",
    heading: ["Pick", "of"],
    measure: "text",
    kind: "input",
    width: 19,
    choices: PICK_CHOICES,
    alsoReads: OLD_PICK_CHOICES,
    note:
      "d0, d90, d100: readings. The straight part of the root-time plot, the tail and the tangent of the log-time plot: the times, in minutes, " +
      "from which and to which they are drawn; 4:1 pair at: the first time of the pair. cv by: the construction whose d100 and cv the load reports; procedure: how its constructions are made. " +
      "For the compression curve, as stresses: greatest curvature; the readings from which and to which the lines of recompression, of the virgin part and of the final unloading are drawn; the two points of the line through the loop.",
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
      `IF(AND(NOT(${isWord("[pick_load]", OF_CURVE)}),IFERROR(MATCH([pick_load],{load_number},0),0)=0),"no such load: not used",` +
      `IFERROR(IF(${LAST}=IF(${IS_AUTOMATIC},"",[pick_after]),IF(${IS_AUTOMATIC},"automatic again","used"),"replaced further down")` +
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
    note: "Why the automatic value is not used: what the plot shows.",
  },
];

/**
 * The number of rows of the table. With its headings it fits on one printed page, at the scale that the form has on A4:
 * a second page would have no headings.
 */
const PICK_ROWS = 42;

export const PICK_TABLE: Table = { rows: PICK_ROWS, columns: COLUMNS };
