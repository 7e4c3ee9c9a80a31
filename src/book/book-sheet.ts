/** The calculation book as a sheet of the workbook. */
import { boxesByName } from "../checks/integrity";
import { labelOn } from "../record/labels/sheet-labels";
import { english, type Value } from "../reduction/message";
import type { SheetLanguage } from "../specification/text/language";
import { planIn } from "../specification/text/plan-in-language";
import { besideIn, wordsOf } from "../specification/text/words";
import { boxAddress, quoted } from "../workbook/address";
import { partOfList } from "../workbook/lists";
import type { SheetName, SheetPlan } from "../workbook/port";
import { OWN, tableSheet } from "../workbook/table-sheet";
import type { Entry } from "./calculation-book";

/** The name that tells the sheet of a book. */
export const BOOK_MARK = "book_quantity";
/** Width of the column of formulas, in characters. */
const BOOK_WIDTH = 96;

/**
 * The book on a sheet of its own in the language of the data sheet: the lines are text, which `inWords` words, beside
 * them a reference to the number that the data sheet has now.
 */
export function bookSheet(
  sheet: string,
  entries: readonly Entry[],
  names: readonly SheetName[],
  language: SheetLanguage = "en",
  inWords: (said: Value) => string = english,
): SheetPlan {
  const boxes = boxesByName(names);
  const words = wordsOf(language);
  const texts = entries.map(({ said }) => inWords(said));
  const plan = tableSheet({
    name: "Calculation book",
    title: besideIn(words, "Calculation book of {0}", sheet),
    notes: [
      "The working is text, as the sheet stood when this was made; the last number follows the data sheet.",
      "Lines that come to more digits are rounded where they are shown, and nowhere else.",
    ],
    columns: [
      { name: BOOK_MARK, heading: "Quantity", width: 36, kind: "label" },
      { name: "book_load", heading: "Load", width: 6, kind: "label" },
      { name: "book_working", heading: "Working", width: BOOK_WIDTH, kind: "label", wrap: true },
      { name: "book_then", heading: "Then", width: 12, kind: "label", format: OWN },
      { name: "book_now", heading: "Now", width: 12, kind: "result", format: OWN },
      { name: "book_unit", heading: "Unit", width: 9, kind: "unit" },
    ],
    rows: entries.map(({ name, load, row, value, unit }, index) => {
      const box = boxes.get(name);
      const at = box && boxAddress(partOfList(box, row, 1));
      return [labelOn(language, name), load, texts[index], value, at && `=${quoted(sheet)}!${at}`, unit];
    }),
    formats: entries.map(({ format }) => format),
    lines: texts.map((text) => Math.ceil((1.05 * text.length) / BOOK_WIDTH)),
  });
  return planIn(language, plan);
}
