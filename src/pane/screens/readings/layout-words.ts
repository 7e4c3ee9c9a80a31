/**
 * Describes the layout of a file in words for the sheet that keeps the file, in the language of the data sheet.
 */
import type { Layout } from "../../../exchange/logger/layout";
import type { SheetLanguage } from "../../../specification/text/language";
import { columnLetters } from "../../../workbook/address";
import { CATALOGUES } from "../../text";
import { readingText } from "../../text/number";
import type { LoadChoices } from "./stretches";

/** Lines with a name and a value each. */
export function layoutWords(layout: Layout, choices: LoadChoices, language: SheetLanguage): [string, string][] {
  const cellWords = CATALOGUES[language].readings;
  const column = (col: number, what: string): string => cellWords.inColumn(columnLetters(col), what);
  const date: [string, string][] =
    layout.date === null ? [] : [[cellWords.date, column(layout.date, cellWords.dateOrders[layout.dateOrder])]];
  const temperature: [string, string][] =
    layout.temperature == null ? [] : [[cellWords.temperature, column(layout.temperature, cellWords.celsius)]];
  const unit = layout.readingUnit === "div" ? cellWords.division : layout.readingUnit;
  return [
    [cellWords.delimiter, cellWords.delimiters[layout.delimiter]],
    [cellWords.decimal, cellWords.decimals[layout.decimal]],
    [cellWords.firstLine, String(layout.firstLine)],
    [cellWords.time, column(layout.time, cellWords.timeForms[layout.timeForm])],
    ...date,
    [cellWords.timesRun, cellWords.timesRuns[layout.timesRun]],
    [cellWords.reading, column(layout.reading, unit)],
    [cellWords.sense, cellWords.senses[layout.sense]],
    [
      cellWords.load,
      layout.load === null
        ? cellWords.noLoad
        : column(layout.load, `${cellWords.loadKinds[layout.loadKind]} ${layout.loadUnit}`.trim()),
    ],
    ...temperature,
    [cellWords.lever, readingText(layout.lever, language)],
    [cellWords.noReading, layout.noReading.map((one) => String(one).replace(".", layout.decimal)).join("; ")],
    [cellWords.way, cellWords.ways[choices.way]],
    [cellWords.rule, cellWords.rules[choices.rule]],
    [cellWords.thinning, cellWords.thinnings[choices.thinning]],
  ];
}
