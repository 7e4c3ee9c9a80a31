/** German. */
import type { Limits } from "../../measures";
import type { SheetWords } from "../words";
import { beside } from "./beside";
import { demo } from "./demo";
import { formulas } from "./formulas";
import { labels } from "./labels";
import { notes } from "./notes";
import { titles } from "./titles";

const inDigits = (value: number): string => String(value).replace(".", ",");

/** "Zahl über 0 bis 60" */
function within({ least, above, most }: Limits): string {
  if (least === undefined) return most === undefined ? "Zahl" : `Zahl bis ${inDigits(most)}`;
  const from = inDigits(least);
  if (most === undefined) return above ? `Zahl über ${from}` : `Zahl nicht unter ${from}`;
  return `Zahl ${above ? "über" : "von"} ${from} bis ${inDigits(most)}`;
}

export const de: SheetWords = {
  language: "de",
  decimalSign: ",",
  titles,
  labels,
  notes,
  formulas,
  demo,
  beside,
  host: {
    page: "Seite &P von &N",
    printed: "Gedruckt",
    notNumber: "Keine passende Zahl",
    notDate: "Kein Datum",
    notListed: "Nicht in der Liste",
    chooseOne: "Eines von diesen wählen:",
  },
  within,
  enterNumber: (called, allowed) =>
    `${called}: ${allowed} eingeben, mit dem Dezimalzeichen dieses Rechners (ein Text wie 12,5 kPa ist keine Zahl).`,
  takenOff: "Wurde die Last abgenommen, die Spannung von Kopfplatte und Filterstein eingeben.",
  enterDate: (called, isMoment) =>
    `${called}: ein Datum${isMoment ? ", auch mit Uhrzeit," : ""} in der Form dieses Rechners eingeben, von 1990 bis 2099.`,
};
