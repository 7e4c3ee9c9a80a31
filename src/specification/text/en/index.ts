/** English: the specification has the words. */
import { ENGLISH_HOST_WORDS } from "../../../workbook/host-words";
import { english } from "../../../reduction/message";
import { numberWithin } from "../../sentences/of-head";
import type { SheetWords } from "../words";

export const en: SheetWords = {
  language: "en",
  decimalSign: ".",
  titles: {},
  labels: {},
  notes: {},
  formulas: {},
  demo: {},
  beside: {},
  host: ENGLISH_HOST_WORDS,
  within: (limits) => english(numberWithin(limits)),
  enterNumber: (called, within) =>
    `${called}: enter ${within}, with this computer's own decimal sign (a text such as 12,5 or 12.5 kPa is no number).`,
  takenOff: "If the load was taken off, enter the stress of cap and disk.",
  enterDate: (called, isMoment) =>
    `${called}: enter a date${isMoment ? ", with the time if you like," : ""} of this computer's own form, from 1990 to 2099.`,
};
