/** Values of formulas for the strict stand-in for Excel: the values of the same sheet in the embedded engine. */
import "../embedded/engine-in-node";
import { copyOf } from "../../excel/book/book";
import type { Evaluator } from "../../excel/book/evaluation";
import type { EmbeddedPort } from "../../../src/workbook/embedded";
import type { CellValue } from "../../../src/workbook/port";

// jsdom has no structuredClone.
globalThis.structuredClone ??= copyOf;

/** The errors of the engine, in the spelling of Excel. */
const ERRORS: Readonly<Record<string, string>> = {
  "#ERROR": "#VALUE!",
  "#REF": "#REF!",
  "#BAD_EXPR": "#NAME?",
  "#CYCLE": "#REF!",
};

/** Nothing changes the engine meanwhile: each cell is asked once, and not again after every write to the stand-in. */
export function shownBy(engine: EmbeddedPort): Evaluator {
  const known = new Map<string, ReturnType<Evaluator>>();
  return (_, { sheet, row, col }) => {
    const key = `${sheet} ${row} ${col}`;
    if (!known.has(key)) known.set(key, shownAt(engine, sheet, row, col));
    return known.get(key);
  };
}

function shownAt({ workbook: { model } }: EmbeddedPort, sheet: string, row: number, col: number) {
  const { getters } = model;
  const sheetId = getters.getSheetIdByName(sheet);
  if (!sheetId) return undefined;
  const value = (at: { row: number; col: number }): CellValue => {
    const shown = (getters.getEvaluatedCell({ sheetId, ...at }).value ?? "") as CellValue;
    return ERRORS[String(shown)] ?? shown;
  };
  const zone = getters.getSpreadZone({ sheetId, row, col });
  if (!zone || (zone.top === zone.bottom && zone.left === zone.right)) return value({ row, col });
  return Array.from({ length: zone.bottom - zone.top + 1 }, (_line, r) =>
    Array.from({ length: zone.right - zone.left + 1 }, (_cell, c) => value({ row: row + r, col: col + c })),
  );
}
