/**
 * The names of the methods of preconsolidation stress in words for people. The argument of a formula keeps the short
 * name.
 */
import { say, type Message } from "../../message";

export const METHOD_WORDS = {
  casagrande: "Casagrande",
  work: "Work",
  bilog: "Bilogarithmic",
  intersection: "Intersection",
  pacheco_silva: "Pacheco Silva",
  janbu: "Janbu",
} as const;

/** These names as messages. */
export const METHOD_SAID: Readonly<Record<keyof typeof METHOD_WORDS, Message>> = {
  casagrande: say`Casagrande`,
  work: say`Work`,
  bilog: say`Bilogarithmic`,
  intersection: say`Intersection`,
  pacheco_silva: say`Pacheco Silva`,
  janbu: say`Janbu`,
};
