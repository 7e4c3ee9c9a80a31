import type { HelpWords } from "../words";
import { firstMinutes } from "./first-minutes";
import { page } from "./page";

export const de: HelpWords = {
  notation: { separator: ";", decimal: ",", errors: { "#VALUE!": "#WERT!", "#N/A": "#NV" } },
  page,
  firstMinutes,
};
