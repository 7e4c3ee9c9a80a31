/**
 * The worked demonstration: the blank sheet with the invented test written into its inputs. Every result is a formula.
 */
import type { SheetPlan } from "../workbook/port";
import { demoTest } from "./demo-test";
import { readingsName } from "../specification/readings";
import type { System } from "../specification/measures";
import type { SheetLanguage } from "../specification/text/language";
import { titleIn, wordsOf } from "../specification/text/words";
import { fillSheet } from "./fill-sheet";
import { blankSheet } from "./layout";
import { typedIn } from "./typed-words";

export function demoSheet(system: System, language: SheetLanguage = "en"): SheetPlan {
  const { readings, cells, columns } = demoTest(system);
  const series = Object.fromEntries(readings.map((values, index) => [readingsName(index + 1), values]));
  const words = wordsOf(language);
  return fillSheet(blankSheet(system, { name: titleIn(words, "Demonstration"), language }), {
    ...typedIn(language, { ...cells, ...columns }),
    ...words.demo,
    ...series,
  });
}
