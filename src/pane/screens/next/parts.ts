/** The parts of a sheet in the order of the work, each with the required items that are missing in it. */
import { boxesByName } from "../../../checks/integrity";
import { asksForReport, requiredOf, type Lacking } from "../../../checks/lacking";
import type { TestRecord } from "../../../record/record";
import { SHEET_PARTS } from "../../../specification/parts";
import { languageNamed, type SheetLanguage } from "../../../specification/text/language";
import { titleIn, wordsOf } from "../../../specification/text/words";
import type { Box, SheetName } from "../../../workbook/port";

export interface PartOfSheet {
  /** The title on the sheet. */
  readonly title: string;
  /** The language of the sheet, and so of the title. */
  readonly language: SheetLanguage;
  /** The name of the first cell of the part; undefined if the sheet has none of its cells. */
  readonly first: string | undefined;
  readonly lacking: readonly Lacking[];
}

export interface RequiredOfSheet {
  readonly parts: readonly PartOfSheet[];
  /** The number of missing items and of required items in question Q63; undefined if the question cannot be asked. */
  readonly count?: { readonly missing: number; readonly asked: number };
}

/** Sorts by row, and within a row by column. */
const inOrder = (a: Box, b: Box): number => a.row - b.row || a.col - b.col;

export function partsOf(record: TestRecord, names: readonly SheetName[]): RequiredOfSheet {
  const boxes = boxesByName(names);
  const required = asksForReport(record) ? requiredOf(record) : undefined;
  const language = languageNamed(record.sheetLanguage);
  const words = wordsOf(language);
  const parts = SHEET_PARTS.map(({ title, names: own }): PartOfSheet => {
    const placed = own.flatMap((name) => {
      const box = boxes.get(name);
      return box ? [{ name, box }] : [];
    });
    const [first] = placed.sort((a, b) => inOrder(a.box, b.box));
    const lacking = required?.lacking.filter(({ names: [name] }) => own.includes(name)) ?? [];
    return { title: titleIn(words, title), language, first: first?.name, lacking };
  }).filter(({ first, lacking }) => first !== undefined || lacking.length > 0);
  return { parts, ...(required && { count: { missing: required.lacking.length, asked: required.asked } }) };
}
