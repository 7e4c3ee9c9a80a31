/**
 * The sheet but for loads, readings and picks: the form down its left page, in the order of the work; beside it, a page to the
 * right each, what is worked out and what is remarked. Each section has up to three panels side by side.
 */
import type { Field, Spill, Table } from "./field";
import { APPARATUS, DEFLECTION, SEATING_DEFLECTION } from "./apparatus";
import { CHOICES } from "./choices";
import { IDENTIFICATION } from "./identification";
import { MASSES, TINS, TRIMMINGS } from "./masses";
import { CHECKS, COMPRESSION_RESULTS, FIELD, INUNDATION, QUALITY, SPECIMEN_RESULTS, SPREAD, STATE } from "./results";

export { MISSING } from "./missing";
export { REMARKS, TYPED_REMARKS } from "./remarks";

/** Two lines below the results. */
export const CAUTION = [
  "Results support, and do not replace, the judgement of a licensed engineer or authorised signatory. Follow the standard and edition that the",
  "contract names. Picks are interpretation: several answers can be defended.",
];

export type Part = Field | Table | Spill;

/** A panel is a list of fields and small tables, top to bottom. */
export interface Section {
  readonly title: string;
  /** How many columns of a panel the labels take; the rest holds values and units. */
  readonly labelColumns: number;
  /** How many columns a typed text takes. */
  readonly textColumns: number;
  readonly panels: readonly (readonly Part[])[];
  /** Whether it begins a printed page. */
  readonly newPage?: boolean;
}

/** What is typed, in the order in which a test is made. */
export const FORM: readonly Section[] = [
  { title: "Identification", labelColumns: 2, textColumns: 3, panels: IDENTIFICATION },
  { title: "Ring, sizes and masses", labelColumns: 3, textColumns: 2, panels: MASSES },
  { title: "Water content of trimmings", labelColumns: 3, textColumns: 2, panels: [[TINS], [], TRIMMINGS] },
  { title: "Apparatus, dial and units", labelColumns: 3, textColumns: 2, panels: APPARATUS },
  {
    title: "Apparatus deflection",
    labelColumns: 3,
    textColumns: 2,
    panels: [[DEFLECTION], SEATING_DEFLECTION],
    newPage: true,
  },
  { title: "Choices of the engineer", labelColumns: 3, textColumns: 2, panels: CHOICES },
];

/** What is worked out of the test as a whole, beside the form. */
export const RESULTS: readonly Section[] = [
  {
    title: "Results",
    labelColumns: 3,
    textColumns: 2,
    panels: [
      [...STATE, ...SPECIMEN_RESULTS, ...CHECKS, ...INUNDATION],
      [...COMPRESSION_RESULTS, ...FIELD],
      [SPREAD, ...QUALITY],
    ],
  },
];

export const SECTIONS: readonly Section[] = [...FORM, ...RESULTS];
