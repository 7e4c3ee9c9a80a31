/** Entries from which no result follows, and that cannot be. */
import { CURVE_PICK_NAMES, OF_CURVE } from "../../reduction/curve/picks";
import {
  AUTOMATIC,
  METHOD_PICK,
  PICK_NAMES,
  pickNamed,
  PROCEDURE_PICK,
} from "../../reduction/increment/constructions/picks";
import type { Field } from "../../specification/field";
import * as sentences from "../../specification/sentences/of-head";
import { CHECKED_ENTRIES } from "../../specification/head/entries";
import { limitsIn } from "../../specification/head/impossible";
import { DATE_LIMITS } from "../../specification/measures";
import { isError } from "../../workbook/cell-error";
import type { CellValue } from "../../workbook/port";
import { englishWord } from "../cells";
import {
  type HeadSentence,
  type NamedCell,
  isNumber,
  Cells,
  fits,
  isSame,
  isOnList,
  lastRow,
  tellsUnusual,
  listing,
} from "./cells";

/** The cells of these fields that are not blank and that do not fit, one after the other. */
function notFitting<F extends Pick<Field, "name">>(
  cells: Cells,
  fields: readonly F[],
  isRight: (value: CellValue, field: F) => boolean,
): NamedCell[] {
  return fields.flatMap((field) => {
    const isWrong = (value: CellValue): boolean => value !== "" && !isError(value) && !isRight(value, field);
    const row = lastRow(cells.column(field.name), isWrong);
    return row === undefined ? [] : [cells.named(field.name, row)];
  });
}

/** The cells of a row of the table of picks. */
interface PickCells {
  readonly load: CellValue;
  readonly of: CellValue;
  readonly after: CellValue;
}

/**
 * The cells of the table of picks that cannot be used: those that need a number, and those that need a word of a list. A column
 * names its lowest cell. Sheets up to version 9 have no sentence for them.
 */
function picksNotFitting(cells: Cells): readonly [numbers: NamedCell[], words: NamedCell[]] {
  if (!tellsUnusual(cells)) return [[], []];
  const columns = { load: cells.column("pick_load"), of: cells.column("pick_of"), after: cells.column("pick_after") };
  const numbers = cells.column("load_number");
  const isLoad = (value: CellValue): boolean =>
    isSame(value, OF_CURVE) || numbers.some((load) => isSame(load, String(value)));
  const isOfWords = (of: CellValue): boolean => [METHOD_PICK, PROCEDURE_PICK].some((pick) => isSame(of, pick));
  const isValue = (value: CellValue, of: CellValue): boolean =>
    isNumber(value) || isSame(value, AUTOMATIC) || isOfWords(of);
  const isPick = (of: CellValue, load: CellValue): boolean => {
    const names: readonly string[] = isSame(load, OF_CURVE) ? CURVE_PICK_NAMES : PICK_NAMES;
    return names.includes(pickNamed(englishWord(String(of))));
  };
  const lowest = (name: string, column: readonly CellValue[], isWrong: (row: PickCells) => boolean): NamedCell[] => {
    const row = lastRow(column, (value, index) => {
      const [load = "", of = "", after = ""] = [columns.load[index], columns.of[index], columns.after[index]];
      return value !== "" && !isError(value) && isWrong({ load, of, after });
    });
    return row === undefined ? [] : [cells.named(name, row)];
  };
  // A row that is unfinished says that itself.
  const isFinished = ({ load, of, after }: PickCells): boolean =>
    load !== "" && of !== "" && after !== "" && after !== 0;
  return [
    [
      ...lowest("pick_load", columns.load, ({ load }) => !isLoad(load)),
      ...lowest("pick_after", columns.after, ({ of, after }) => !isValue(after, of)),
    ],
    lowest("pick_of", columns.of, (row) => {
      const { load, of, after } = row;
      return isFinished(row) && isLoad(load) && isValue(after, of) && !isOfWords(of) && !isPick(of, load);
    }),
  ];
}

/** The entries from which no result follows, and that cannot be; a column names its lowest cell. */
export function otherEntries(cells: Cells): HeadSentence[] {
  const { dates, dateColumns, numbers, words, wordColumns } = CHECKED_ENTRIES;
  const [numbersPicked, wordsPicked] = picksNotFitting(cells);
  const datesAmiss = notFitting(cells, [...dates, ...dateColumns], (value) => fits(value, DATE_LIMITS));
  const numbersAmiss = notFitting(cells, numbers, (value, field) => fits(value, limitsIn(field)));
  const wordsAmiss = notFitting(cells, [...words, ...wordColumns], isOnList);
  return [
    ...listing("entry", sentences.enterDates, datesAmiss),
    ...listing("entry", sentences.enterNumbers, [...numbersAmiss, ...numbersPicked]),
    ...listing("entry", sentences.chooseWords, [...wordsAmiss, ...wordsPicked]),
  ];
}
