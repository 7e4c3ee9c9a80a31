/**
 * The inputs that cannot be: numbers outside their limits, texts in the place of numbers, words that are not on the list of
 * their cell. The sheet names each with its cell and the remedy, and the results that need it stay blank.
 */
import { AUTOMATIC, METHOD_PICK, PROCEDURE_PICK, TIME_METHODS } from "../reduction/increment/constructions/picks";
import { PROCEDURES } from "../reduction/increment/constructions/procedure";
import { ADOPTED_TABLE } from "./results/adopted";
import { ADOPTED_CV_TABLE } from "./results/adopted-cv";
import { APPARATUS, DEFLECTION } from "./form/apparatus";
import { CHOICES } from "./form/choices";
import { CLASSIFICATION } from "./form/classification";
import { isTable, type Column, type Field, type Part } from "./field";
import { atLoad, CHOICE_REMARK, CURVE_GAP, INPUT_REMARK } from "./formulas";
import { everyWord, haveWord } from "./list-words";
import { LOAD_TABLE } from "./load-table";
import { MASSES, TINS } from "./form/masses";
import { isDate, limitsOf, numberWithin, type Limits } from "./measures";

/** Inputs that no result follows from. */
const UNUSED = new Set([
  ...["registered_diameter", "registered_height", "registered_ring_mass", "largest_particle"],
  ...["lever_ratio", "depth_unit", "specific_gravity_basis"],
]);

/** The present address of the cell with this name. */
export const addressOf = (name: string): string => `ADDRESS(ROW({${name}}),COLUMN({${name}}),4)`;

const limitsIn = ({ limits, measure }: Pick<Field, "limits" | "measure">): Limits =>
  (typeof limits === "object" ? limits : undefined) ?? limitsOf(measure);

/** The conditions on a number. */
const within = (value: string, { least, above, most }: Limits): string[] => [
  ...(least === undefined ? [] : [`${value}>${above ? "" : "="}${least}`]),
  ...(most === undefined ? [] : [`${value}<=${most}`]),
];

const isNumber = ({ measure }: Pick<Field, "measure">): boolean =>
  measure !== "text" && measure !== "pick" && !isDate(measure);

/** The sentence about one cell with a number; blank if the cell is blank or has such a number. */
function ofNumber(field: Field): string {
  const { name, label } = field;
  const limits = limitsIn(field);
  const fits = [`COUNT({${name}})=1`, ...within(`{${name}}`, limits)].join(",");
  return `IF(OR({${name}}="",AND(${fits})),"","${label.trim()}, "&${addressOf(name)}&": enter ${numberWithin(limits)}. ")`;
}

/** The sentence about the lowest cell of a column that is not blank and has no such number. */
function ofColumn(column: Column): string {
  const cells = `{${column.name}}`;
  const limits = limitsIn(column);
  const outside = within(cells, limits).map((one) => `(${one})`);
  // A formula of the register shows "" in the rows that its set does not have.
  const isText = column.takesFormula ? `ISTEXT(${cells})*(${cells}<>"")` : `ISTEXT(${cells})`;
  // The reader of saved files drops brackets that change nothing: they would not come back the same.
  const isWrong = outside.length > 0 ? `(${isText}+ISNUMBER(${cells})*(1-${outside.join("*")}))` : isText;
  const row = `SUMPRODUCT(MAX(${isWrong}*ROW(${cells})))`;
  return `IF(${row}=0,"","${column.label.trim()}, "&ADDRESS(${row},COLUMN(INDEX(${cells},1)),4)&": enter ${numberWithin(limits)}. ")`;
}

/** The sentence about a cell with a word of a list. */
function ofWord({ name, choices = [], label }: Field): string {
  const words = ["", ...choices.flatMap(everyWord)].map((choice) => `"${choice}"`).join(",");
  return `IF(ISNUMBER(MATCH({${name}}&"",{${words}},0)),"","${label.trim()}, "&${addressOf(name)}&": choose a word of its list. ")`;
}

/** The sentence about the lowest row of the table of picks that picks this with a word that is not on its list. */
function ofPick(pick: string, words: readonly string[]): string {
  const isKnown = haveWord('{pick_after}&""', "", AUTOMATIC, ...words);
  const row = `SUMPRODUCT(MAX((${haveWord("{pick_of}", pick)})*(1-(${isKnown}))*ROW({pick_after})))`;
  return `IF(IFERROR(${row},0)=0,"","Pick by hand of ${pick}, "&ADDRESS(${row},COLUMN(INDEX({pick_after},1)),4)&": enter ${words.join(" or ")}, or automatic. ")`;
}

const inputs = (parts: readonly Part[]): Field[] =>
  parts.flatMap((part) =>
    !isTable(part) && "kind" in part && part.kind === "input" && !UNUSED.has(part.name) ? [part] : [],
  );
const columnsOf = (...columns: readonly (readonly Column[])[]): Column[] =>
  columns.flat().filter((column) => column.kind === "input" && isNumber(column));

const LOAD_NUMBER = "c_alpha_load";
const ofLoadNumber = `IF(OR({${LOAD_NUMBER}}="",COUNTIF({load_number},{${LOAD_NUMBER}})>0),"","C alpha of load number, "&${addressOf(LOAD_NUMBER)}&": enter the number of a load. ")`;

const SINGLE = inputs([...MASSES.flat(), ...APPARATUS.flat(), ...CHOICES.flat()]);
/** The classification stands with the words, so that neither formula is too long for a cell. */
const CLASSES = inputs(CLASSIFICATION.flat()).filter(isNumber);
const NUMBERS = SINGLE.filter((field) => isNumber(field) && field.name !== LOAD_NUMBER);
const WORDS = SINGLE.filter(({ choices }) => choices !== undefined);
const COLUMNS = columnsOf(
  TINS.columns,
  DEFLECTION.columns,
  LOAD_TABLE.columns,
  ADOPTED_TABLE.columns,
  ADOPTED_CV_TABLE.columns,
);

const remark = (name: string, label: string, formula: string, note: string): Field => ({
  ...{ name, label, measure: "text", kind: "remark", formula, note },
});

/** The present address of the cell of a column in the row of the load with this number. */
export const addressAtLoad = (column: string, number: string): string =>
  `ADDRESS(ROW(${atLoad(column, number)}),COLUMN(${atLoad(column, number)}),4)`;

/** The present address of the first cell of a column. */
export const topOf = (name: string): string => `ADDRESS(ROW(INDEX({${name}},1)),COLUMN(INDEX({${name}},1)),4)`;

/** The last load that was read and gives no point of the curve; 0 if there is none. */
const WITHOUT_POINT =
  "IFERROR(SUMPRODUCT(MAX(ISNUMBER({end_reading})*(1-ISNUMBER({void_ratio_curve}))*{load_number})),0)";

const NO_POINT =
  `IF(COUNT(${atLoad("corrected_deformation", WITHOUT_POINT)})=1,` +
  `"its height at the end is not above the height of solids: correct its last readings, the initial height, "&${addressOf("initial_height")}&", the zero reading, "&${addressOf("zero_reading")}&", the dial factor, "&${addressOf("dial_factor")}&", or the sense of the readings, "&${addressOf("dial_sense")},` +
  `"the table of deflection, from "&${topOf("apparatus_stress")}&" on, does not reach its stress, "&${addressAtLoad("load_stress", WITHOUT_POINT)}&", or the seating stress, "&${addressOf("seating_stress")}&": correct the stress, or extend the table")`;

/** The remarks on what cannot be, for the page of remarks; the head of the sheet repeats them in one line. */
export const IMPOSSIBLE: readonly Field[] = [
  remark(
    INPUT_REMARK,
    "On the inputs",
    `=${[...NUMBERS.map(ofNumber), ofLoadNumber, ...COLUMNS.map(ofColumn)].join("&")}`,
    "Impossible numbers, each with its cell and what to enter. Results that need them stay blank.",
  ),
  remark(
    CHOICE_REMARK,
    "On the choices",
    `=${[...WORDS.map(ofWord), ofPick(METHOD_PICK, TIME_METHODS), ofPick(PROCEDURE_PICK, PROCEDURES), ...CLASSES.map(ofNumber)].join("&")}`,
    "Words that are not on the list of their cell, and impossible numbers of the classification. Results that need them stay blank.",
  ),
  remark(
    CURVE_GAP,
    "On the points",
    `=IF(COUNT({solids_height},{initial_height},{dial_factor},{zero_reading})<4,"",IF(OR({initial_height}<={solids_height},{dial_factor}<=0,${WITHOUT_POINT}=0),"","Load "&${WITHOUT_POINT}&" gives no point of the curve: "&${NO_POINT}&". "))`,
    "A load that was read and has no point on the curve, and why. The results of the curve stay blank until it has one.",
  ),
];
