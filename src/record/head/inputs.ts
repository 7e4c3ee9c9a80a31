/** Inputs that cannot be, each by itself. */
import { listWord } from "../../reduction/message";
import { AUTOMATIC } from "../../reduction/increment/constructions/picks";
import type { Column, Field } from "../../specification/field";
import * as sentences from "../../specification/sentences/of-head";
import { CHECKED_INPUTS, limitsIn, type PickWords } from "../../specification/head/impossible";
import type { Limits } from "../../specification/measures";
import { SIZE_REMARK } from "../../specification/formulas";
import { isError } from "../../workbook/cell-error";
import type { CellValue } from "../../workbook/port";
import { type HeadSentence, Cells, quoted, fits, isSame, isOnList, lastRow } from "./cells";

function outOfLimits(cells: Cells, field: Pick<Field, "name" | "label">, limits: Limits, row?: number): HeadSentence {
  const sentence = sentences.enterNumber(quoted(field), cells.at(field.name, row), sentences.numberWithin(limits));
  return cells.impossible(sentence, field.name, row);
}

function ofNumber(cells: Cells, field: Field): HeadSentence[] {
  const value = cells.cell(field.name) ?? "";
  const limits = limitsIn(field);
  return value === "" || isError(value) || fits(value, limits) ? [] : [outOfLimits(cells, field, limits)];
}

/** A column names its lowest impossible cell alone. */
function ofColumn(cells: Cells, column: Column): HeadSentence[] {
  const limits = limitsIn(column);
  const isWrong = (value: CellValue): boolean => value !== "" && !isError(value) && !fits(value, limits);
  const row = lastRow(cells.column(column.name), isWrong);
  return row === undefined ? [] : [outOfLimits(cells, column, limits, row)];
}

function ofLoadNumber(cells: Cells): HeadSentence[] {
  const { ofLoad } = CHECKED_INPUTS;
  const value = cells.cell(ofLoad.name) ?? "";
  if (value === "" || cells.column("load_number").some((one) => isSame(one, String(value)))) return [];
  const sentence = sentences.enterNumber(quoted(ofLoad), cells.at(ofLoad.name), sentences.LOAD_NUMBER);
  return [cells.impossible(sentence, ofLoad.name)];
}

function ofWord(cells: Cells, field: Field): HeadSentence[] {
  const value = cells.cell(field.name) ?? "";
  if (value === "" || isError(value) || isOnList(value, field)) return [];
  return [cells.impossible(sentences.chooseWord(quoted(field), cells.at(field.name)), field.name)];
}

function ofPick(cells: Cells, { pick, words }: PickWords): HeadSentence[] {
  const of = cells.column("pick_of");
  const isWrong = (value: CellValue, index: number): boolean =>
    isSame(of[index] ?? "", pick) && !["", AUTOMATIC, ...words].some((word) => isSame(value, word));
  const row = lastRow(cells.column("pick_after"), isWrong);
  if (row === undefined) return [];
  const [one, other] = words;
  const at = cells.at("pick_after", row);
  const sentence = sentences.pickWord(listWord(pick), at, listWord(one), listWord(other), listWord(AUTOMATIC));
  return [cells.impossible(sentence, "pick_after", row)];
}

/** The entries that cannot be, each by itself. */
export function impossibleEntries(cells: Cells, sizes: readonly HeadSentence[]): HeadSentence[] {
  const { numbers, columns, words, picks, classes, cvColumns } = CHECKED_INPUTS;
  return [
    ...numbers.flatMap((field) => ofNumber(cells, field)),
    ...ofLoadNumber(cells),
    ...columns.flatMap((column) => ofColumn(cells, column)),
    ...words.flatMap((field) => ofWord(cells, field)),
    ...picks.flatMap((pick) => ofPick(cells, pick)),
    ...classes.flatMap((field) => ofNumber(cells, field)),
    ...cvColumns.flatMap((column) => ofColumn(cells, column)),
    ...(cells.cell(SIZE_REMARK) === undefined ? [] : sizes),
  ];
}
