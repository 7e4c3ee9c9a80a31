/** Finds the cells that a question and its answer are about. */
import { namedIn } from "../reduction/message";
import { addressInList, lengthOf } from "../workbook/lists";
import { loadOfReadings, readingsName, timesName } from "../specification/readings";
import { filledIn } from "../specification/required";
import type { NamedValues } from "../record/record";
import { labelOn } from "../record/labels/sheet-labels";
import { languageOf } from "../specification/text/language";
import type { SheetName } from "../workbook/port";
import { boxesByName, rowOfLoad } from "./integrity";
import type { Answered } from ".";

export interface CellPlace {
  /** "Ring" */
  readonly called: string;
  readonly address: string;
}

/** The question about the cells that a report requires. */
const MISSING_CELLS = "Q63";

/**
 * The cells of a question, and the cells that its answer names; for a column, the cell of the first load that the
 * answer names; for times and readings, the row that the answer is about, otherwise the first.
 */
export function cellsOf({ check, answer }: Answered, names: readonly SheetName[], values: NamedValues): CellPlace[] {
  const boxes = boxesByName(names);
  const named = namedIn(answer.sentence);
  const [load] = named.loads;
  const isOfMissing = check.id === MISSING_CELLS;
  const ownName = (name: string): string => {
    if (name === "times") return timesName(load ?? 1);
    if (name === "readings") return readingsName(load ?? 1);
    return isOfMissing ? (filledIn(name, (cell) => boxes.has(cell)) ?? name) : name;
  };
  const wanted = new Set([...check.about, ...named.cells].map(ownName));
  return [...wanted].flatMap((own) => {
    const box = boxes.get(own);
    if (!box) return [];
    const row = loadOfReadings(own)
      ? (answer.row ?? 1) - 1
      : lengthOf(box) > 1 && load !== undefined
        ? rowOfLoad(values, load)
        : 0;
    return [
      { called: labelOn(languageOf(values), own), address: addressInList(box, Math.min(row, lengthOf(box) - 1)) },
    ];
  });
}
