/** How each method of preconsolidation stress is drawn, and who published it. */
import { asTyped, say, type Message } from "../reduction/message";
import type { MethodName } from "../reduction/curve/method-words";

export interface MethodPlot {
  /**
   * The quantity over the stress, if the method is drawn in a plane of its own; otherwise it is drawn on the compression
   * curve.
   */
  readonly quantity?: Message;
  /** Whether the axis of stress is logarithmic. */
  readonly logarithmic: boolean;
  readonly source: string;
}

export const METHOD_PLOTS: Readonly<Record<MethodName, MethodPlot>> = {
  casagrande: { logarithmic: true, source: "Casagrande (1936)" },
  work: { quantity: say`Work per unit volume`, logarithmic: false, source: "Becker et al. (1987)" },
  // A function is the same in every language.
  bilog: { quantity: asTyped("ln(1 + e)"), logarithmic: true, source: "Butterfield (1979), Oikawa (1987)" },
  intersection: { logarithmic: true, source: "common practice" },
  pacheco_silva: { logarithmic: true, source: "Pacheco Silva (1970)" },
  janbu: { quantity: say`Constrained modulus`, logarithmic: false, source: "Janbu (1969)" },
};
