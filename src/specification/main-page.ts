/**
 * The first page: who and what, apparatus and units, masses and sizes, results. Sections stand one below the other,
 * each with up to three panels side by side.
 */
import type { Field, Spill, Table } from "./field";
import { APPARATUS, DEFLECTION, SEATING_DEFLECTION } from "./apparatus";
import { CHOICES } from "./choices";
import { IDENTIFICATION } from "./identification";
import { MASSES, TINS, TRIMMINGS } from "./masses";
import { CHECKS, COMPRESSION_RESULTS, FIELD, INUNDATION, QUALITY, SPECIMEN_RESULTS, SPREAD } from "./results";

export { REMARKS } from "./remarks";

export const CAUTION =
  "Results support, and do not replace, the judgement of a licensed engineer or authorised signatory. Follow the standard " +
  "and edition that the contract names. Picks are interpretation: several answers can be defended.";

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

export const SECTIONS: readonly Section[] = [
  { title: "Identification", labelColumns: 1, textColumns: 3, panels: IDENTIFICATION },
  { title: "Units, apparatus and dial", labelColumns: 3, textColumns: 1, panels: APPARATUS },
  { title: "Apparatus deflection", labelColumns: 3, textColumns: 1, panels: [[DEFLECTION], SEATING_DEFLECTION] },
  { title: "Masses and sizes", labelColumns: 3, textColumns: 1, panels: MASSES, newPage: true },
  { title: "Water content of trimmings", labelColumns: 3, textColumns: 1, panels: [[TINS], [], TRIMMINGS] },
  {
    title: "Results",
    labelColumns: 3,
    textColumns: 1,
    panels: [
      [...SPECIMEN_RESULTS, ...CHECKS, ...INUNDATION],
      [...CHOICES, ...COMPRESSION_RESULTS, ...FIELD],
      [SPREAD, ...QUALITY],
    ],
  },
];
