/**
 * The inputs that cannot be: numbers outside their limits, texts in the place of numbers, words that are not on the list of
 * their cell. The sheet names each with its cell and the remedy, and the results that need it stay blank.
 */
import { english, verbatim, type Verbatim } from "../../reduction/message";
import { AUTOMATIC, METHOD_PICK, PROCEDURE_PICK, TIME_METHODS } from "../../reduction/increment/constructions/picks";
import { PROCEDURES } from "../../reduction/increment/constructions/procedure";
import { ADOPTED_TABLE } from "../results/adopted";
import { ADOPTED_CV_TABLE } from "../results/adopted-cv";
import { APPARATUS, DEFLECTION } from "../form/apparatus";
import { CHOICES } from "../form/choices";
import { CLASSIFICATION } from "../form/classification";
import { isTable, remarkPart, type Column, type Field, type Part, type RemarkPart } from "../field";
import { atLoad, CHOICE_REMARK, CURVE_GAP, CURVE_IS_WRONG, INPUT_REMARK, SIZE_REMARK } from "../formulas";
import { everyWord, haveWord } from "../list-words";
import { LOAD_TABLE } from "../load-table";
import { MASSES, TINS } from "../form/masses";
import { isDate, limitsOf, type Limits } from "../measures";
import { MOST_LOADS } from "../readings";
import {
  beyondTable,
  chooseWord,
  enterNumber,
  highestUnderGreatest,
  LOAD_NUMBER,
  noPoint,
  notAboveSolids,
  numberWithin,
  pickWord,
} from "../sentences/of-head";
import { SWELLED } from "../sentences/of-remarks";
import { live, toldExpression, toldSentence } from "../sentences/told-formula";

/** Inputs that no result follows from. */
const UNUSED = new Set([
  ...["registered_diameter", "registered_height", "registered_ring_mass", "largest_particle"],
  ...["lever_ratio", "depth_unit", "specific_gravity_basis"],
]);

/** Cells of texts, one behind the other. */
export const joined = (parts: readonly Pick<Field, "name">[]): string => parts.map(({ name }) => `{${name}}`).join("&");

/** The present address of the cell with this name. */
export const liveAt = (name: string): Verbatim => live(`ADDRESS(ROW({${name}}),COLUMN({${name}}),4)`);

/** The numbers that a field takes. */
export const limitsIn = ({ limits, measure }: Pick<Field, "limits" | "measure">): Limits =>
  (typeof limits === "object" ? limits : undefined) ?? limitsOf(measure);

/** The conditions on a number. */
export const within = (value: string, { least, above, most }: Limits): string[] => [
  ...(least === undefined ? [] : [`${value}>${above ? "" : "="}${least}`]),
  ...(most === undefined ? [] : [`${value}<=${most}`]),
];

export const isNumber = ({ measure }: Pick<Field, "measure">): boolean =>
  measure !== "text" && measure !== "pick" && !isDate(measure);

/** The sentence about one cell with a number; blank if the cell is blank or has such a number. */
function ofNumber(field: Field): string {
  const { name, label } = field;
  const limits = limitsIn(field);
  const fits = [`COUNT({${name}})=1`, ...within(`{${name}}`, limits)].join(",");
  return `IF(OR({${name}}="",AND(${fits})),"",${toldSentence(enterNumber(verbatim(label.trim()), liveAt(name), numberWithin(limits)))})`;
}

/** The row of the lowest cell of a column that is not blank and is wrong; 0 if there is none. */
export const lowestRow = (name: string, isWrong: string): string =>
  `SUMPRODUCT(MAX(({${name}}<>"")*${isWrong}*ROW({${name}})))`;

/** Of each cell of a column: 1 if it has no number within the limits. */
export const isOutside = (name: string, limits: Limits): string =>
  `(1-${[`ISNUMBER({${name}})`, ...within(`{${name}}`, limits).map((one) => `(${one})`)].join("*")})`;

/** The sentence about the lowest cell of a column that is not blank and has no such number. */
function ofColumn(column: Column): string {
  const cells = `{${column.name}}`;
  const limits = limitsIn(column);
  const row = lowestRow(column.name, isOutside(column.name, limits));
  const address = live(`ADDRESS(${row},COLUMN(INDEX(${cells},1)),4)`);
  return `IF(${row}=0,"",${toldSentence(enterNumber(verbatim(column.label.trim()), address, numberWithin(limits)))})`;
}

/** The sentence about a cell with a word of a list. */
function ofWord({ name, choices = [], label }: Field): string {
  const words = ["", ...choices.flatMap(everyWord)].map((choice) => `"${choice}"`).join(",");
  return `IF(ISNUMBER(MATCH({${name}}&"",{${words}},0)),"",${toldSentence(chooseWord(verbatim(label.trim()), liveAt(name)))})`;
}

/** A pick that takes one of two words. */
export interface PickWords {
  readonly pick: string;
  readonly words: readonly [string, string];
}

/** The sentence about the lowest row of the table of picks that picks this with a word that is not on its list. */
function ofPick({ pick, words }: PickWords): string {
  const isKnown = haveWord('{pick_after}&""', "", AUTOMATIC, ...words);
  const row = `SUMPRODUCT(MAX((${haveWord("{pick_of}", pick)})*(1-(${isKnown}))*ROW({pick_after})))`;
  const address = live(`ADDRESS(${row},COLUMN(INDEX({pick_after},1)),4)`);
  const [one, other] = words;
  return `IF(IFERROR(${row},0)=0,"",${toldSentence(pickWord(verbatim(pick), address, verbatim(one), verbatim(other), verbatim(AUTOMATIC)))})`;
}

const inputs = (parts: readonly Part[]): Field[] =>
  parts.flatMap((part) =>
    !isTable(part) && "kind" in part && part.kind === "input" && !UNUSED.has(part.name) ? [part] : [],
  );
const columnsOf = (...columns: readonly (readonly Column[])[]): Column[] =>
  columns.flat().filter((column) => column.kind === "input" && isNumber(column));

const OF_LOAD = { name: "c_alpha_load", label: "C alpha of load number" };
const ofLoadNumber = `IF(OR({${OF_LOAD.name}}="",COUNTIF({load_number},{${OF_LOAD.name}})>0),"",${toldSentence(enterNumber(verbatim(OF_LOAD.label), liveAt(OF_LOAD.name), LOAD_NUMBER))})`;

const SINGLE = inputs([...MASSES.flat(), ...APPARATUS.flat(), ...CHOICES.flat()]);
/** The classification stands with the words, so that neither formula is too long for a cell. */
const CLASSES = inputs(CLASSIFICATION.flat()).filter(isNumber);
const NUMBERS = SINGLE.filter((field) => isNumber(field) && field.name !== OF_LOAD.name);
const WORDS = SINGLE.filter(({ choices }) => choices !== undefined);
const PICKS: readonly PickWords[] = [
  { pick: METHOD_PICK, words: TIME_METHODS },
  { pick: PROCEDURE_PICK, words: PROCEDURES },
];
const COLUMNS = columnsOf(TINS.columns, DEFLECTION.columns, LOAD_TABLE.columns, ADOPTED_TABLE.columns);
/** The columns of adopted cv stand with the words too. */
const CV_COLUMNS = columnsOf(ADOPTED_CV_TABLE.columns);

/** The inputs that the sentences are about. */
export const CHECKED_INPUTS = {
  numbers: NUMBERS,
  columns: COLUMNS,
  words: WORDS,
  picks: PICKS,
  classes: CLASSES,
  cvColumns: CV_COLUMNS,
  ofLoad: OF_LOAD,
} as const;

const remark = (name: string, label: string, formula: string, note: string): Field => ({
  ...{ name, label, measure: "text", kind: "remark", formula, note },
});

/** The present address of the cell of a column in the row of the load with this number. */
export const stressAtLoad = (number: string): string =>
  `ADDRESS(ROW(${atLoad("load_stress", number)}),COLUMN(${atLoad("load_stress", number)}),4)`;

/** The present address of the first cell of a column. */
export const topOf = (name: string): string => `ADDRESS(ROW(INDEX({${name}},1)),COLUMN(INDEX({${name}},1)),4)`;

/** The last load that was read and gives no point of the curve; 0 if there is none. */
const WITHOUT_POINT =
  "IFERROR(SUMPRODUCT(MAX(ISNUMBER({end_reading})*(1-ISNUMBER({void_ratio_curve}))*{load_number})),0)";

const NO_POINT =
  `IF(COUNT(${atLoad("corrected_deformation", WITHOUT_POINT)})=1,` +
  `${toldExpression(english(notAboveSolids(liveAt("initial_height"), liveAt("zero_reading"), liveAt("dial_factor"), liveAt("dial_sense"))))},` +
  `${toldExpression(english(beyondTable(live(topOf("apparatus_stress")), live(stressAtLoad(WITHOUT_POINT)), liveAt("seating_stress"))))})`;

/** A number that no load has. */
export const NO_LOAD = MOST_LOADS + 1;

/** The number of the first load whose remark has this text, an expression; NO_LOAD if there is none. */
export const loadWith = (said: string): string =>
  `${NO_LOAD}-SUMPRODUCT(MAX(ISNUMBER(FIND(${said},{load_remark}))*(${NO_LOAD}-{load_number})))`;

/** A curve that cannot be used, because its greatest void ratio is that under the greatest stress. */
const OF_GREATEST = "INDEX({void_ratio_curve},MATCH(MAX({load_stress}),{load_stress},0))";
const FIRST_SWELLED = loadWith(toldExpression(english(SWELLED)));
const HIGHEST =
  `IFERROR(IF(AND(COUNT({void_ratio_curve})>2,${OF_GREATEST}=MAX({void_ratio_curve}),${FIRST_SWELLED}<${NO_LOAD}),` +
  `IF(${CURVE_IS_WRONG},${toldSentence(highestUnderGreatest(live(FIRST_SWELLED), liveAt("dial_sense")))},""),""),"")`;

const INPUT_PARTS = [
  remarkPart(
    INPUT_REMARK,
    "numbers",
    "On the inputs: single cells",
    [...NUMBERS.map(ofNumber), ofLoadNumber].join("&"),
  ),
  remarkPart(INPUT_REMARK, "columns", "On the inputs: columns", COLUMNS.map(ofColumn).join("&")),
];
const CHOICE_PARTS = [
  remarkPart(CHOICE_REMARK, "words", "On the choices: words", [...WORDS.map(ofWord), ...PICKS.map(ofPick)].join("&")),
  remarkPart(
    CHOICE_REMARK,
    "numbers",
    "On the choices: numbers",
    [...CLASSES.map(ofNumber), ...CV_COLUMNS.map(ofColumn)].join("&"),
  ),
];
export const IMPOSSIBLE_PARTS: readonly RemarkPart[] = [...INPUT_PARTS, ...CHOICE_PARTS];

/** The remarks on what cannot be, for the page of remarks; the head of the sheet repeats them in one line. */
export const IMPOSSIBLE: readonly Field[] = [
  remark(
    INPUT_REMARK,
    "On the inputs",
    `=${joined(INPUT_PARTS)}`,
    "Impossible numbers, each with its cell and what to enter. Results that need them stay blank.",
  ),
  remark(
    CHOICE_REMARK,
    "On the choices",
    `=${joined(CHOICE_PARTS)}&IFERROR({${SIZE_REMARK}},"")`,
    "Words that are not on the list of their cell, and impossible numbers of the classification and of the adopted cv. Results that need them stay blank.",
  ),
  remark(
    CURVE_GAP,
    "On the points",
    `=IF(COUNT({solids_height},{initial_height},{dial_factor},{zero_reading})<4,"",IF(OR({initial_height}<={solids_height},{dial_factor}<=0,${WITHOUT_POINT}=0),"",${toldSentence(noPoint(live(WITHOUT_POINT), live(NO_POINT)))}))&${HIGHEST}`,
    "A load that was read and has no point on the curve, or points that rise with the stress, and why. The results of the curve stay blank until that is corrected.",
  ),
];
