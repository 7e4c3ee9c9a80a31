/** The words that a host shows of a sheet whose plan has none of its own. */
import type { HostWords } from "./port";

export const ENGLISH_HOST_WORDS: HostWords = {
  page: "Page &P of &N",
  printed: "Printed",
  notNumber: "Not a number that fits",
  notDate: "Not a date",
  notListed: "Not in the list",
  chooseOne: "Choose one of:",
};
