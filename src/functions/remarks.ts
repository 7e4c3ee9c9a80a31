/** Worksheet functions of remarks: a remark that many loads share appears once. */
import { inRuns, say, verbatim } from "../reduction/message";
import { told } from "../record/told";
import { CellError, isNoWord, languageAsked, refuseCell, toCell, toOptionalWord } from "./cells";

const NOTHING_TO_SAY = "ok";
/** How a remedy or a count begins, which belongs to the remark before it. */
const REMEDIES = say`try|read|go on|correct|check|pick|there is|there are|the fit allows|the slope of the tail is not`;

/** Separates the remarks of a text in English or in the language with this tag. */
const betweenRemarks = (language: string): RegExp =>
  new RegExp(`;\\s+(?!(?:${told(REMEDIES, "en")}|${told(REMEDIES, language)})\\b)`);

/**
 * The text of a remark cell. An error of one load becomes text, so that the remarks of the other loads still appear.
 */
function remarkOf(cell: unknown, language: string): string {
  try {
    return toOptionalWord(cell, say`the remark`) ?? "";
  } catch (error) {
    if (error instanceof CellError)
      return told(say`there is an error in its row: look at the cells that show it`, language);
    throw error;
  }
}

const flat = (range: any): unknown[] => (Array.isArray(range) ? range.flat() : [range]);

/**
 * The remarks on many loads as one text, one line for each remark with the loads that have it, in the order of the loads.
 * @customfunction
 * @param loads Load numbers, one a row.
 * @param remarks Remarks on the loads, one a row; several remarks in one cell are separated by semicolons.
 * @param [language] Language of the text: "English" (default) or "Deutsch".
 * @returns The text, for a cell that breaks lines.
 * @example =CLAY.REMARKS_BY_LOAD(L2:L5,M2:M5)
 * @refuses =CLAY.REMARKS_BY_LOAD(L2:L5,M2:M4)
 * @source A rule of this add-in.
 */
export function REMARKS_BY_LOAD(loads: any[][], remarks: any[][], language?: any): any {
  const [numbers, texts] = [flat(loads), flat(remarks)];
  if (numbers.length !== texts.length)
    return refuseCell(
      say`there are ${numbers.length} load numbers and ${texts.length} remarks: choose the same rows of each`,
    );
  const inLanguage = languageAsked(language);
  const between = betweenRemarks(inLanguage);
  const said = new Map<string, number[]>();
  texts.forEach((text, index) => {
    const load = toCell(numbers[index], say`row ${index + 1} of the load numbers`);
    if (isNoWord(text) || !load) return;
    const all = new Set(remarkOf(text, inLanguage).replace(/;\s*$/, "").split(between));
    const parts = [...all].filter((part) => part !== NOTHING_TO_SAY || all.size === 1);
    for (const part of parts) said.set(part, [...(said.get(part) ?? []), load]);
  });
  const quiet = said.get(NOTHING_TO_SAY);
  said.delete(NOTHING_TO_SAY);
  const lines = [...said, ...(quiet ? [[NOTHING_TO_SAY, quiet] as const] : [])];
  return lines
    .map(([remark, of]) => {
      const message =
        of.length > 1 ? say`Loads ${inRuns(of)}: ${verbatim(remark)}` : say`Load ${inRuns(of)}: ${verbatim(remark)}`;
      return told(message, inLanguage);
    })
    .join("\n");
}
