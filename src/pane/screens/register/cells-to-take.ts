/** The cells of a data sheet that take values of a register: constants with the day, or formulas that follow it. */
import { boxesByName } from "../../../record/places";
import {
  ALWAYS_CONSTANT,
  EQUIPMENT,
  liveFormula,
  liveState,
  NUMBER_CELLS,
  type Lookup,
} from "../../../record/register";
import { liveTable, type DeflectionColumns } from "../../../record/register-sets";
import { FROZEN_STATE, type REGISTER_MODES } from "../../../specification/form/apparatus";
import { wordIn } from "../../../specification/list-words";
import { languageNamed } from "../../../specification/text/language";
import { formulaIn, wordsOf } from "../../../specification/text/words";
import { isoDay, localDayNumber } from "../../../workbook/day-number";
import type { CellContent, CellValue } from "../../../workbook/port";
import type { Reading } from "../../live/workbook-store";
import { saidSource, type RegisterSource } from "./source";

export type Mode = (typeof REGISTER_MODES)[number];

/** How a sheet has the values of the register; undefined if it has no cell for the choice. */
export const modeOf = ({ record }: Reading): Mode | undefined =>
  record.missing.includes("register_mode") ? undefined : record.words.register_mode === "live" ? "live" : "frozen";

/** The cells to write: constants or formulas, the choice, and where the values come from. */
export function cellsToTake(
  reading: Reading,
  source: RegisterSource,
  lines: readonly Lookup[],
  mode: Mode,
): CellContent[] {
  const boxes = boxesByName(reading.names);
  const language = languageNamed(reading.record.sheetLanguage);
  const day = isoDay(localDayNumber(new Date()));
  const kinds = EQUIPMENT.filter((kind) => boxes.has(NUMBER_CELLS[kind]));
  const at = (name: string, content: { formula: string } | { value: CellValue }, row = 0): CellContent[] => {
    const box = boxes.get(name);
    const isThere = box && row < box.rows && !reading.record.missing.includes(name);
    return isThere ? [{ row: box.row + row, col: box.col, ...content }] : [];
  };
  const inTable = (table: DeflectionColumns): CellContent[] =>
    mode === "live"
      ? Object.entries(liveTable(source.called, table)).flatMap(([name, formulas]) =>
          formulas.flatMap((formula, row) => at(name, { formula }, row)),
        )
      : Object.entries(table).flatMap(([name, values]) => values.flatMap((value, row) => at(name, { value }, row)));
  return [
    ...lines.flatMap((line) =>
      line.table
        ? inTable(line.table)
        : at(
            line.cell,
            mode === "live" && line.cell !== ALWAYS_CONSTANT
              ? { formula: liveFormula(source.called, line, line.registered) }
              : { value: line.registered },
          ),
    ),
    ...at("register_mode", { value: wordIn(language, mode) }),
    ...at("register_source", { value: saidSource(source, day) }),
    ...at("register_state", {
      formula: mode === "live" ? formulaIn(wordsOf(language), liveState(source.called, kinds)) : FROZEN_STATE,
    }),
  ];
}
