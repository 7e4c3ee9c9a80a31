/**
 * The entries from which no result follows, and that cannot be: a text in the place of a date or of a number, a number that no
 * such cell has, a word that is not on the list of its cell. The sheet names their cells; no result stays blank for them.
 */
import { OF_CURVE } from "../../reduction/curve/picks";
import { AUTOMATIC, METHOD_PICK, PROCEDURE_PICK } from "../../reduction/increment/constructions/picks";
import { english, type Message } from "../../reduction/message";
import { APPARATUS, DEFLECTION_SET, SEATING_DEFLECTION } from "../form/apparatus";
import { IDENTIFICATION } from "../form/identification";
import { MASSES } from "../form/masses";
import { isTable, remarkPart, type Column, type Field, type Part, type RemarkPart } from "../field";
import { ENTRY_REMARK } from "../formulas";
import { CHECKED_INPUTS, isNumber, isOutside, joined, limitsIn, lowestRow, within } from "./impossible";
import { everyWord, haveWord } from "../list-words";
import { LOAD_TABLE } from "../load-table";
import { DATE_LIMITS, isDate } from "../measures";
import { PICK_OF } from "../pick-choices";
import { ADOPTED_TABLE } from "../results/adopted";
import { ADOPTED_CV_TABLE } from "../results/adopted-cv";
import { chooseWords, enterDates, enterNumbers } from "../sentences/of-head";
import { inFormula } from "../sentences/told-formula";

const SINGLE: readonly Field[] = [...IDENTIFICATION, ...MASSES, ...APPARATUS, DEFLECTION_SET, SEATING_DEFLECTION]
  .flat()
  .filter((part: Part): part is Field => !isTable(part) && "kind" in part && part.kind === "input");
const COLUMNS: readonly Column[] = [
  ...LOAD_TABLE.columns,
  ...ADOPTED_TABLE.columns,
  ...ADOPTED_CV_TABLE.columns,
].filter(({ kind }) => kind === "input");
const ofResults = new Set([...CHECKED_INPUTS.numbers, ...CHECKED_INPUTS.words].map(({ name }) => name));
const others = SINGLE.filter(({ name }) => !ofResults.has(name));
const wordColumns = COLUMNS.filter(({ choices }) => choices !== undefined);

type Named = Pick<Field, "name" | "choices" | "measure" | "limits">;

/** The entries that the sentences are about. */
export const CHECKED_ENTRIES = {
  dates: others.filter(({ measure }) => isDate(measure)),
  dateColumns: COLUMNS.filter(({ measure }) => isDate(measure)),
  numbers: others.filter(isNumber),
  words: [
    ...others.filter(({ choices }) => choices !== undefined),
    ...wordColumns.flatMap(({ startInput, ...column }): Named[] => (startInput ? [{ ...column, ...startInput }] : [])),
  ],
  wordColumns,
} as const;

export const addressOf = (row: string, column: string): string => `" "&ADDRESS(${row},COLUMN(${column}),4)`;

/** The address of a cell behind a space; "" if the cell is blank or as it should be. */
const unless = (name: string, fits: string): string =>
  `IF(OR({${name}}="",${fits}),"",${addressOf(`ROW({${name}})`, `{${name}}`)})`;

/** The address of the lowest cell of a column that is not blank and is wrong. */
export function lowest(name: string, isWrong: string): string {
  const row = lowestRow(name, isWrong);
  return `IF(${row}=0,"",${addressOf(row, `INDEX({${name}},1)`)})`;
}

const ofNumber = ({ name, ...field }: Named): string =>
  unless(name, `AND(${[`COUNT({${name}})=1`, ...within(`{${name}}`, limitsIn(field))].join(",")})`);
const ofDate = ({ name }: Named): string =>
  unless(name, `AND(${[`COUNT({${name}})=1`, ...within(`{${name}}`, DATE_LIMITS)].join(",")})`);
const ofDates = ({ name }: Named): string => lowest(name, isOutside(name, DATE_LIMITS));
const ofWord = ({ name, choices = [] }: Named): string =>
  unless(
    name,
    `ISNUMBER(MATCH({${name}}&"",{${choices
      .flatMap(everyWord)
      .map((word) => `"${word}"`)
      .join(",")}},0))`,
  );
const ofWords = ({ name, choices = [] }: Named): string =>
  lowest(name, `(1-(${haveWord(`{${name}}&""`, ...choices)}))`);

/** A sentence with the addresses of several cells; "" if there is none. The text without addresses is taken out. */
export function listing(
  sentence: (cells: { readonly verbatim: string }) => Message,
  addresses: readonly string[],
): string {
  const [before = "", after = ""] = english(sentence({ verbatim: "\u0001" })).split(" \u0001");
  const cells = [inFormula(before), ...addresses, inFormula(`${after} `)].join("&");
  return `SUBSTITUTE(${cells},${inFormula(`${before}${after} `)},"")`;
}

/** Rows of the table of picks: a load that is not on the sheet, a value that is neither a number nor "automatic", a pick of no list. */
const NO_LOAD_PICKED = `(COUNTIF({load_number},{pick_load})=0)*(1-(${haveWord("{pick_load}", OF_CURVE)}))`;
const IS_OF_NUMBER = `(1-(${haveWord(`{${PICK_OF}}`, METHOD_PICK, PROCEDURE_PICK)}))`;
const NO_VALUE_PICKED = `(1-ISNUMBER({pick_after}))*(1-(${haveWord("{pick_after}", AUTOMATIC)}))*${IS_OF_NUMBER}`;
/** The row says itself that it cannot be used, and its load and its value can be: its pick is wrong. */
const NO_PICK = `({pick_remark}="cannot be used")*(1-${NO_VALUE_PICKED})*${IS_OF_NUMBER}`;

const { dates, dateColumns, numbers, words } = CHECKED_ENTRIES;

export const ENTRY_PARTS: readonly RemarkPart[] = [
  remarkPart(
    ENTRY_REMARK,
    "dates",
    "On other entries: dates",
    listing(enterDates, [...dates.map(ofDate), ...dateColumns.map(ofDates)]),
  ),
  remarkPart(
    ENTRY_REMARK,
    "numbers",
    "On other entries: numbers",
    listing(enterNumbers, [
      ...numbers.map(ofNumber),
      lowest("pick_load", NO_LOAD_PICKED),
      lowest("pick_after", NO_VALUE_PICKED),
    ]),
  ),
  remarkPart(
    ENTRY_REMARK,
    "words",
    "On other entries: words",
    listing(chooseWords, [...words.map(ofWord), ...wordColumns.map(ofWords), lowest(PICK_OF, NO_PICK)]),
  ),
];

/** The remark on these entries, for the page of remarks; the head of the sheet repeats it. */
export const ENTRIES: Field = {
  name: ENTRY_REMARK,
  label: "On other entries",
  measure: "text",
  kind: "remark",
  formula: `=${joined(ENTRY_PARTS)}`,
  note: "Dates, numbers and words that cannot be and that no result follows from, by their cells. No result stays blank for them.",
};
