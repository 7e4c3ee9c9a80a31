/** Where the cells stand that a question and its answer are about. */
import { cellAddress } from "../workbook/address";
import { loadSuffix } from "../specification/load-table";
import { cellCalled, RECORD_NAMES, type NamedValues } from "../record/record";
import type { SheetName } from "../workbook/port";
import { ABOUT } from "./questions/cells";
import { boxesByName, rowOfLoad } from "./integrity";
import type { Answered } from ".";

export interface CellPlace {
  /** "Ring (ring_mass)" */
  readonly called: string;
  readonly address: string;
}

/** Names in brackets that a sentence gives. */
const namesIn = (sentence: string): string[] =>
  [...sentence.matchAll(/\((\w+)\)/g)].map(([, name]) => name).filter((name) => RECORD_NAMES.includes(name));

/** The load that an answer is about: the first that it names. */
const loadIn = (sentence: string): number | undefined => {
  const [, number] = /\bload (\d+)\b/.exec(sentence) ?? [];
  return number === undefined ? undefined : Number(number);
};

/** The cells of a question, and those that its answer names; of columns, the cell of the load that the answer is about. */
export function cellsOf({ check, answer }: Answered, names: readonly SheetName[], values: NamedValues): CellPlace[] {
  const boxes = boxesByName(names);
  const load = loadIn(answer.sentence);
  const wanted = [...new Set([...(ABOUT[check.id] ?? []), ...namesIn(answer.sentence)])];
  return wanted.flatMap((name) => {
    const own = name === "times" || name === "readings" ? `${name}_${loadSuffix(load ?? 1)}` : name;
    const box = boxes.get(own);
    if (!box) return [];
    const row = box.rows > 1 && own === name && load !== undefined ? rowOfLoad(values, load) : 0;
    return [{ called: cellCalled(own), address: cellAddress(box.row + Math.min(row, box.rows - 1), box.col) }];
  });
}
