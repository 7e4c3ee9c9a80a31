/**
 * The sheet without its loads, readings and picks. The form fills the left page, in the order of the work. The results
 * and the remarks have a page each to the right of it. Each section has up to three panels side by side.
 */
import type { Part } from "./field";
import { ADOPTED_TABLE } from "./results/adopted";
import { ADOPTED_CV_TABLE } from "./results/adopted-cv";
import { APPARATUS, DEFLECTION, DEFLECTION_SET, SEATING_DEFLECTION } from "./form/apparatus";
import { CHOICES } from "./form/choices";
import { CLASSIFICATION } from "./form/classification";
import { DESIGN } from "./results/design";
import { IDENTIFICATION } from "./form/identification";
import { MASSES, TINS, TRIMMINGS } from "./form/masses";
import { WETTING } from "./form/wetting";
import {
  CHECKS,
  COMPRESSION_RESULTS,
  FIELD,
  INUNDATION,
  QUALITY,
  SPECIMEN_RESULTS,
  SPREAD,
  STATE,
} from "./results/results";

export { MISSING } from "./head/missing";
export { REMARK_PARTS, REMARKS, TYPED_REMARKS } from "./remarks";

/** The two lines below the results. */
export const CAUTION = [
  "Results support, and do not replace, the judgement of a licensed engineer or authorised signatory. Follow the standard and edition that the",
  "contract names. Picks are interpretation: several answers can be defended.",
];

/** A section of the sheet. A panel is a list of fields and small tables from top to bottom. */
export interface Section {
  readonly title: string;
  /** The number of columns of a panel for the labels; the others hold values and units. */
  readonly labelColumns: number;
  /** The number of columns for a typed text. */
  readonly textColumns: number;
  readonly panels: readonly (readonly Part[])[];
  /** True if the section begins a printed page. */
  readonly newPage?: boolean;
  /** Title of the section of the form that it stands beside; if it is left out, it follows the section above it. */
  readonly beside?: string;
  /**
   * The panel in which a section of the form begins, counted from 0: the section stands below what the section above it
   * has in these panels, and beside the rest of that section.
   */
  readonly firstPanel?: number;
}

/** The inputs, in the order in which a test is made. */
export const FORM: readonly Section[] = [
  { title: "Identification", labelColumns: 2, textColumns: 3, panels: IDENTIFICATION },
  { title: "Ring, sizes and masses", labelColumns: 3, textColumns: 2, panels: MASSES },
  { title: "Water content of trimmings", labelColumns: 3, textColumns: 2, panels: [[TINS], [], TRIMMINGS] },
  { title: "Apparatus, dial and units", labelColumns: 3, textColumns: 2, panels: APPARATUS },
  {
    title: "Apparatus deflection",
    labelColumns: 3,
    textColumns: 2,
    panels: [[DEFLECTION], SEATING_DEFLECTION, DEFLECTION_SET],
    newPage: true,
  },
  { title: "Classification of the soil", labelColumns: 3, textColumns: 2, panels: CLASSIFICATION, firstPanel: 1 },
  { title: "Choices of the engineer", labelColumns: 3, textColumns: 2, panels: CHOICES },
  { title: "Adopted values", labelColumns: 3, textColumns: 2, panels: [[ADOPTED_TABLE, ADOPTED_CV_TABLE]] },
];

/** The results of the test as a whole, beside the form. */
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
  {
    title: "Design values: from the in-situ stress over the increase",
    labelColumns: 3,
    textColumns: 2,
    panels: DESIGN,
    beside: "Apparatus, dial and units",
  },
  { title: "Wetting", labelColumns: 3, textColumns: 2, panels: WETTING, beside: "Choices of the engineer" },
];

export const SECTIONS: readonly Section[] = [...FORM, ...RESULTS];
