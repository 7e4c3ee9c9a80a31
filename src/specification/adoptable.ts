/** The quantities that the engineer may adopt, in the order of the rows of their table. */
import type { Measure } from "./measures";

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
