import type { HelpWords } from "../words";
import { firstMinutes } from "./first-minutes";
import { page } from "./page";

export const en: HelpWords = {
  notation: { separator: ",", decimal: ".", errors: {} },
  page,
  firstMinutes,
};
