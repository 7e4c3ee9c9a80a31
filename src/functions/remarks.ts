/** Worksheet functions of remarks: a remark that many loads share appears once. */
import { english, inRuns } from "../reduction/message";
import { CellError, isNoWord, refuseCell, toCell, toOptionalWord } from "./cells";

const NOTHING_TO_SAY = "ok";
/** Separates the remarks of a text; a part that begins as a remedy or a count does belongs to the remark before it. */
const PARTS = /;\s+(?!(?:try|read|go on|correct|check|pick|there (?:is|are)|the fit allows|tail_slope is) )/;

/**
 * The text of a remark cell. An error of one load becomes text, so that the remarks of the other loads still appear.
 */
function remarkOf(cell: unknown): string {
  try {
    return toOptionalWord(cell, "the remark") ?? "";
  } catch (error) {
    if (error instanceof CellError) return "there is an error in its row: look at the cells that show it";
    throw error;
  }
}

const flat = (range: any): unknown[] => (Array.isArray(range) ? range.flat() : [range]);

/**
 * The remarks on many loads as one text, one line for each remark with the loads that have it, in the order of the loads.
 * @customfunction
 * @param loads Load numbers, one a row.
 * @param remarks Remarks on the loads, one a row; several remarks in one cell are separated by semicolons.
 * @returns The text, for a cell that breaks lines.
 * @example =CLAY.REMARKS_BY_LOAD(L2:L5,M2:M5)
 * @refuses =CLAY.REMARKS_BY_LOAD(L2:L5,M2:M4)
 * @source A rule of this add-in.
 */
export function REMARKS_BY_LOAD(loads: any[][], remarks: any[][]): any {
  const [numbers, texts] = [flat(loads), flat(remarks)];
  if (numbers.length !== texts.length)
    return refuseCell(
      `there are ${numbers.length} load numbers and ${texts.length} remarks: choose the same rows of each`,
    );
  const said = new Map<string, number[]>();
  texts.forEach((text, index) => {
    const load = toCell(numbers[index], `row ${index + 1} of the load numbers`);
    if (isNoWord(text) || !load) return;
    const all = new Set(remarkOf(text).replace(/;\s*$/, "").split(PARTS));
    const parts = [...all].filter((part) => part !== NOTHING_TO_SAY || all.size === 1);
    for (const part of parts) said.set(part, [...(said.get(part) ?? []), load]);
  });
  const quiet = said.get(NOTHING_TO_SAY);
  said.delete(NOTHING_TO_SAY);
  const lines = [...said, ...(quiet ? [[NOTHING_TO_SAY, quiet] as const] : [])];
  return lines
    .map(([remark, of]) => `${of.length > 1 ? "Loads" : "Load"} ${english(inRuns(of))}: ${remark}`)
    .join("\n");
}
