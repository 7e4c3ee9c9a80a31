/** Cells that are written over, with what the screen saw in them: nothing is written if somebody has changed one since. */
import { boxesByName } from "../../record/places";
import type { NamedValues } from "../../record/record";
import { isFormula } from "../../workbook/contents";
import { isIn } from "../../workbook/lists";
import type { CellContent, SheetName } from "../../workbook/port";

/** What a screen saw of a sheet. */
export interface SeenOfSheet {
  readonly names: readonly SheetName[];
  readonly values: NamedValues;
  /** The contents of some names: a formula shows another value whenever its inputs change. */
  readonly contents?: NamedValues;
}

export function asShown({ names, values, contents = {} }: SeenOfSheet, cells: readonly CellContent[]): CellContent[] {
  const boxes = [...boxesByName(names)];
  return cells.map((cell) => {
    const [name = "", box] = boxes.find(([of, place]) => (contents[of] ?? values[of]) && isIn(cell, place)) ?? [];
    const shown = box && (contents[name] ?? values[name])?.[cell.row - box.row]?.[cell.col - box.col];
    return shown === undefined || isFormula(shown) ? cell : { ...cell, shown };
  });
}
