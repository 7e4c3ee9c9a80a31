/** The methods of preconsolidation stress in the trade's words, for people; a formula's argument keeps the short name. */
import { say, type Message } from "../../message";

export const METHOD_WORDS = {
  casagrande: "Casagrande",
  work: "Work",
  bilog: "Bilogarithmic",
  intersection: "Intersection",
  pacheco_silva: "Pacheco Silva",
  janbu: "Janbu",
} as const;

/** The same as messages. */
export const METHOD_SAID: Readonly<Record<keyof typeof METHOD_WORDS, Message>> = {
  casagrande: say`Casagrande`,
  work: say`Work`,
  bilog: say`Bilogarithmic`,
  intersection: say`Intersection`,
  pacheco_silva: say`Pacheco Silva`,
  janbu: say`Janbu`,
};
