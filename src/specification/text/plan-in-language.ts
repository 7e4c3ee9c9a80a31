/** The plan of a sheet beside the data sheet in a language: titles, headings, labels, notes and texts of its formulas. */
import type { CellPlan, SheetPlan } from "../../workbook/port";
import { wordIn } from "../list-words";
import type { SheetLanguage } from "./language";
import { besideIn, choicesIn, formulaIn, labelIn, wordsOf, type SheetWords } from "./words";

/** A text that no table has is a value, such as a unit, and stays. */
const textIn = (words: SheetWords, text: string): string =>
  words.beside[text] ?? words.titles[text] ?? labelIn(words, text);

/** A unit as a sheet in the language writes it: "Skt" for "div". */
export const wordOfUnit = (words: SheetWords, unit: string): string => wordIn(words.language, textIn(words, unit));

const cellIn = (words: SheetWords, cell: CellPlan): CellPlan => ({
  ...cell,
  ...(cell.kind !== "input" &&
    typeof cell.value === "string" && {
      value: cell.kind === "unit" ? wordOfUnit(words, cell.value) : textIn(words, cell.value),
    }),
  ...choicesIn(words, cell),
  ...(cell.formula !== undefined && { formula: formulaIn(words, cell.formula) }),
});

export function planIn(language: SheetLanguage, plan: SheetPlan): SheetPlan {
  const words = wordsOf(language);
  if (language === "en")
    return {
      ...plan,
      cells: plan.cells.map((cell) =>
        cell.formula === undefined ? cell : { ...cell, formula: formulaIn(words, cell.formula) },
      ),
    };
  return {
    ...plan,
    name: besideIn(words, plan.name),
    cells: plan.cells.map((cell) => cellIn(words, cell)),
    hostWords: words.host,
  };
}
