/** The quantities that the engineer may adopt, in the order of the rows of their table. */
import type { Measure } from "../measures";

interface Adoptable {
  /** The cell with the value in use. */
  readonly name: string;
  readonly label: string;
  readonly measure: Measure;
}

export const ADOPTABLE = [
  { name: "preconsolidation_stress", label: "Preconsolidation stress", measure: "stress" },
  { name: "compression_index", label: "Compression index Cc", measure: "ratio" },
  { name: "recompression_index", label: "Recompression index Cr", measure: "ratio" },
  { name: "swelling_index", label: "Swelling index Cs", measure: "ratio" },
  { name: "c_alpha_chosen", label: "C alpha-epsilon", measure: "small" },
] as const satisfies readonly Adoptable[];

export type AdoptableName = (typeof ADOPTABLE)[number]["name"];

/** The ranges of stress for which a cv may be adopted, in the order of the rows of their table. */
export const CV_RANGES = [
  { name: "cv_recompression", label: "cv, recompression", range: "recompression", measure: "cv" },
  { name: "cv_virgin", label: "cv, virgin", range: "virgin", measure: "cv" },
  { name: "cv_another", label: "cv, another range", range: "another range", measure: "cv" },
] as const satisfies readonly (Adoptable & { readonly range: string })[];

export type CvRangeName = (typeof CV_RANGES)[number]["name"];

/** Every quantity that may be adopted, of both tables. */
export const ALL_ADOPTABLE: readonly (Adoptable & { readonly name: AdoptableName | CvRangeName })[] = [
  ...ADOPTABLE,
  ...CV_RANGES,
];
