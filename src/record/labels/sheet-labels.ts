/** The labels of cells in the language of their sheet, for lists and sentences that quote them. */
import { FIELDS_APART_FROM_READINGS } from "../../specification/fields";
import { LOAD_TABLE } from "../../specification/load-table";
import { REMARK_PARTS } from "../../specification/remarks";
import type { SheetLanguage } from "../../specification/text/language";
import { labelIn, wordsOf } from "../../specification/text/words";
import { labelOf } from "../cells";
import { labelsAlone } from "./labels-alone";

/** The number of a load and the workings are labels of the sheet, and no fields. */
const NO_FIELDS = [...LOAD_TABLE.columns.filter(({ kind }) => kind === "label"), ...REMARK_PARTS];

const made = new Map<SheetLanguage, ReadonlyMap<string, string>>();

function labelsIn(language: SheetLanguage): ReadonlyMap<string, string> {
  const words = wordsOf(language);
  const labels =
    made.get(language) ?? labelsAlone([...FIELDS_APART_FROM_READINGS, ...NO_FIELDS], (label) => labelIn(words, label));
  made.set(language, labels);
  return labels;
}

/** The label of a cell in a sentence about a sheet in this language, as `labelOf` gives it for an English sheet. */
export const labelOn = (language: SheetLanguage, name: string): string =>
  language === "en" ? labelOf(name) : (labelsIn(language).get(name) ?? labelIn(wordsOf(language), labelOf(name)));
