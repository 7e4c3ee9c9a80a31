/** What the screen of the register does to the workbook. Each returns the sentence that says what was done. */
import { registerSheet } from "../../../datasheet/register-sheet";
import { asTyped } from "../../../reduction/message";
import { languageNamed } from "../../../specification/text/language";
import { boxesByName } from "../../../record/places";
import type { Lookup } from "../../../record/register";
import { isIn } from "../../../workbook/lists";
import { WorkbookError, type CellContent, type Looked, type WorkbookPort } from "../../../workbook/port";
import type { Reading } from "../../live/workbook-store";
import { asShown } from "../as-shown";
import { text } from "../../text";
import { cellsToTake, type Mode } from "./cells-to-take";
import { cellsOfSet, type NewSet } from "./new-set";
import type { RegisterSource } from "./source";

const words = text.register;

/** Inserts a blank register in the units of the test and the language of its sheet. */
export async function insertRegister(port: WorkbookPort, reading: Reading | undefined): Promise<string> {
  const system = reading?.record.words.length_unit === "in" ? "US" : "SI";
  return words.inserted(await port.insertSheet(registerSheet(system, languageNamed(reading?.record.sheetLanguage))));
}

/**
 * Refuses to write cells, which are found by their places, if a name with one of them lies elsewhere by now or has other values than the
 * screen showed: somebody else has inserted a row or typed there.
 */
async function checkAsSeen(
  port: WorkbookPort,
  { sheet, values, names = [] }: Pick<Looked, "sheet" | "values" | "names">,
  cells: readonly CellContent[],
): Promise<void> {
  const written = [...boxesByName(names)].filter(([, box]) => cells.some((cell) => isIn(cell, box)));
  const [now] = await port.lookAt([{ sheet, values: written.map(([name]) => name), names: true }]);
  const places = boxesByName(now?.names ?? []);
  const isAsSeen = written.every(
    ([name, box]) =>
      JSON.stringify([places.get(name), now?.values[name]]) ===
      JSON.stringify([box, values[name] ?? now?.values[name]]),
  );
  if (!isAsSeen) throw new WorkbookError(asTyped(words.changedMeanwhile(sheet)));
}

/** Writes the chosen lines of a register to the data sheet, as values or as formulas that follow the register. */
export async function takeLines(
  port: WorkbookPort,
  reading: Reading,
  { source, lines, mode }: { readonly source: RegisterSource; readonly lines: readonly Lookup[]; readonly mode: Mode },
): Promise<string> {
  const cells = asShown({ names: reading.names, values: reading.values }, cellsToTake(reading, source, lines, mode));
  await checkAsSeen(port, reading, cells);
  await port.writeCells(reading.sheet, cells, true, reading.names);
  return mode === "live" ? words.takenLive(reading.sheet, lines.length) : words.taken(reading.sheet, lines.length);
}

/** Writes a new deflection set to the free rows of a register. */
export async function writeSet(port: WorkbookPort, register: Looked, set: NewSet): Promise<string> {
  const cells = cellsOfSet(register, set);
  if (typeof cells === "string") throw new WorkbookError(asTyped(words.set.refused[cells]));
  await checkAsSeen(port, register, cells);
  await port.writeCells(register.sheet, cells, false, register.names);
  return words.set.written(set.number.trim(), register.sheet, set.rows.length);
}
