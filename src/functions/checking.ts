/** Worksheet functions for checking a hand calculation. */
import { listed, say, verbatim, type Message } from "../reduction/message";
import { limitReader } from "../checks/limit-words";
import { answersOf, unknownThresholds } from "../checks/answering";
import type { Answer, Figure } from "../checks/check";
import { compare } from "../book/agreement";
import { unitNamed } from "../reduction/units";
import { englishWord } from "../record/cells";
import { told } from "../record/told";
import { valueOf } from "./answer";
import {
  isNoWord,
  isOmitted,
  languageAsked,
  refuseCell,
  toCell,
  toChoice,
  toNumber,
  toOptionalPositive,
  toOptionalWord,
  toPair,
  toPositive,
} from "./cells";
import { FORMULA_UNITS, FORMULAS, type Formula, type Measured } from "../book/formulas";
import { toNamedValues } from "./named-values";
import { fallbackIn, inNumbers, working, type Units } from "../book/line";

/** Hand arithmetic with rounded steps agrees within this relative difference. Common practice, no source. */
const TOLERANCE = 0.01;

/**
 * Compares reduced values with values calculated by hand: difference, relative difference (to the hand value), and
 * "agrees" or "differs", one row for each pair.
 * @customfunction
 * @param reduced The value, or a column or row of values, that the worksheet gives.
 * @param by_hand The values by hand, in the same order; a row without one is left blank.
 * @param [tolerance] Greatest relative difference that still agrees, as a ratio; 0.01 (1 %) if left out.
 * @param [language] Language of the answer: "English" (default) or "Deutsch".
 * @returns Three cells for each pair.
 * @example =CLAY.COMPARE(1.4,1.38)
 * @example =CLAY.COMPARE(1.4,1.38,0.02)
 * @refuses =CLAY.COMPARE(1.4,1.38,2)
 * @source That 1 % is agreement is common practice, without a source.
 */
export function COMPARE(reduced: any[][], by_hand: any[][], tolerance?: any, language?: any): any[][] {
  const limit = toOptionalPositive(tolerance, say`the tolerance`) ?? TOLERANCE;
  if (limit >= 1) return refuseCell(say`the tolerance is ${limit}: enter it as a ratio, 0.05 for 5 %`);
  const [ours, theirs] = toPair(reduced, say`the reduced values`, by_hand, say`the values by hand`);
  if (theirs.every((value) => !value))
    return refuseCell(say`the value by hand is blank or zero: enter it, there is nothing to compare with`);
  const inLanguage = languageAsked(language);
  const [yes, no] = [told(say`agrees`, inLanguage), told(say`differs`, inLanguage)];
  return ours.map((value, index) => {
    const hand = theirs[index];
    if (!hand) return ["", "", ""];
    const { difference, relative, agrees } = compare(value ?? 0, hand, limit);
    return [difference, relative, agrees ? yes : no];
  });
}

const DRAINING_FACES: Readonly<Record<string, number>> = { double: 2, single: 1 };

/** The formula with the name that a person typed: "void_ratio", "Void ratio" or "VOID_RATIO". */
function toFormula(quantity: unknown): Formula {
  const names = listed(FORMULAS.map(({ id }) => verbatim(id)));
  const typed =
    toOptionalWord(quantity, say`the quantity`) ?? refuseCell(say`the quantity is blank: use one of ${names}`);
  const id = typed.toLowerCase().replace(/[\s-]+/g, "_");
  return (
    FORMULAS.find((formula) => formula.id === id) ??
    refuseCell(say`the quantity is "${verbatim(typed)}": use one of ${names}`)
  );
}

/** The measure of the formula that a typed unit belongs to, and the unit; undefined if the formula has none. */
function measuredBy(formula: Formula, typed: string): { measures: Measured; unit: string } | undefined {
  const all = [...formula.arguments.map(({ measures }) => measures), formula.result];
  for (const measures of all) {
    const unit = measures && unitNamed(typed, FORMULA_UNITS[measures]);
    if (measures && unit) return { measures, unit };
  }
  return undefined;
}

/** Whether a cell holds a unit or another word. A number stored as text is not a word: it is refused as a number. */
const isWord = (cell: unknown): boolean => {
  const value = Array.isArray(cell) ? cell.flat(2)[0] : cell;
  return typeof value === "string" && /^\s*(1\/)?[a-z]/i.test(value);
};

/**
 * A formula of the calculation book in one line. Numbers come in the order of the function of the same name; after them, in any order, units, "single" or "double" drainage, and "Deutsch" for a German line. Without units: mm, kPa, g, min, m2/yr.
 * @customfunction
 * @param quantity The result wanted: "void_ratio", "solids_height", "saturation", "strain", "cv_from_t50", "mv", "compression_index", "ocr" and others; a wrong name lists them all.
 * @param [value1] First number, as the function of that name takes it.
 * @param [value2] Second number.
 * @param [value3] Third number, or a unit.
 * @param [value4] Fourth number, or a unit.
 * @param [value5] Fifth number, or a unit.
 * @param [value6] A unit: "in", "tsf", "ft2/day" and so on.
 * @param [value7] A unit.
 * @param [value8] A unit.
 * @returns The line of text.
 * @example =CLAY.WORKING("void_ratio",22.3,10.367)
 * @example =CLAY.WORKING("cv_from_t50",9.12,22.3)
 * @refuses =CLAY.WORKING("void_ratio",22.3)
 * @source Those of the function of the same name.
 */
export function WORKING(
  quantity: any,
  value1?: any,
  value2?: any,
  value3?: any,
  value4?: any,
  value5?: any,
  value6?: any,
  value7?: any,
  value8?: any,
): any {
  const formula = toFormula(quantity);
  const cells = [value1, value2, value3, value4, value5, value6, value7, value8];
  const numbers: unknown[] = [];
  const units: Partial<Record<Measured, string>> = {};
  let faces: number | undefined;
  for (const cell of cells) {
    if (!isWord(cell)) {
      numbers.push(cell);
      continue;
    }
    const word = toOptionalWord(cell, say`the unit`)!;
    const known = englishWord(word).toLowerCase();
    const drains = formula.arguments.some(({ symbol }) => symbol === "n") && DRAINING_FACES[known];
    const found = measuredBy(formula, word);
    if (drains) faces = drains;
    else if (found) units[found.measures] = found.unit;
    else if (known !== "english")
      return refuseCell(
        say`"${verbatim(word)}" is no unit of anything in ${inNumbers(`${formula.id}: ${formula.symbol} = ${formula.expression}`)}`,
      );
  }
  // After the last number a blank cell is ignored, whether it comes as null or as 0.
  const blank = (cell: unknown) => isOmitted(cell) || (isNoWord(cell) && numbers.length > formula.arguments.length);
  while (numbers.length > 0 && blank(numbers[numbers.length - 1])) numbers.pop();
  const { text } = valueOf(working(formula, toValues(formula, numbers, { faces, units }), units));
  return told(inNumbers(text), languageAsked(...cells));
}

/**
 * The numbers of a formula from the cells given, in the units given; numbers omitted at the end get the default of the
 * formula, converted to these units.
 */
function toValues(
  formula: Formula,
  numbers: readonly unknown[],
  { faces, units }: { readonly faces: number | undefined; readonly units: Units },
): number[] {
  const id = verbatim(formula.id);
  const wanted = listed(
    formula.arguments.map(({ name, fallback }) => (fallback === undefined ? say([name]) : say`[${say([name])}]`)),
  );
  if (numbers.length > formula.arguments.length)
    return refuseCell(say`${id} takes ${formula.arguments.length} numbers: ${wanted}`);
  return formula.arguments.map((argument, index) => {
    const { symbol, signed } = argument;
    const name = say([argument.name]);
    const fallback = fallbackIn(argument, units);
    if (symbol === "n") {
      const typed = index < numbers.length ? toOptionalPositive(numbers[index], name) : undefined;
      const drains = faces ?? typed ?? fallback!;
      return drains === 1 || drains === 2
        ? drains
        : refuseCell(say`${name} is ${drains}: enter 1, 2, "single" or "double"`);
    }
    if (index >= numbers.length) return fallback ?? refuseCell(say`${name} is missing: ${id} needs ${wanted}`);
    if (fallback !== undefined && !signed) return toOptionalPositive(numbers[index], name) ?? fallback;
    return signed ? toNumber(numbers[index], name) : toPositive(numbers[index], name);
  });
}

/** Limits by name: "Q08.explain" and its value; further columns, such as who and why, are for the reader only. */
function toThresholds(argument: unknown): Record<string, number> {
  if (isNoWord(argument)) return {};
  const rows: unknown[][] = Array.isArray(argument) && Array.isArray(argument[0]) ? argument : [];
  const [first = []] = rows;
  if (first.length < 2) return refuseCell(say`the limits must be a range of names and values`);
  const limitNamed = limitReader();
  const limits: Record<string, number> = {};
  rows.forEach(([name, value], index) => {
    const word = toOptionalWord(name, say`the name in row ${index + 1} of the limits`);
    if (word === undefined || isOmitted(value)) return;
    limits[limitNamed(word)] = toCell(value, say`row ${index + 1} of the limits`) ?? 0;
  });
  const [unknown] = unknownThresholds(limits);
  return unknown === undefined
    ? limits
    : refuseCell(
        say`the limits name "${verbatim(unknown)}", which no question has: write Q08.explain for that of question Q08`,
      );
}

/**
 * The reviewer's questions asked of a test: for each its id, the answer (pass, note, explain, stop, cannot be asked),
 * the number found, the limit it was compared with, their unit, and a sentence. Only questions that the names cover are
 * asked.
 * @customfunction
 * @param named_values Rows of a name of the data sheet and, to its right, its value; a column of the sheet, such as load_stress, has its values one beside the other.
 * @param [limits] Rows of a limit, such as Q08.explain or as the sheet of limits calls it, and its value; columns beyond are not read.
 * @param [show] "all" (default), or "open" for the questions that were asked and do not pass.
 * @returns Six cells for each question.
 * @example =CLAY.CHECKS(N2:O8,,"open")
 * @refuses =CLAY.CHECKS(N2:N8)
 * @source Each question names its own; the Checks tab of the pane shows it.
 */
export function CHECKS(named_values: any[][], limits?: any[][], show?: any): any[][] {
  const wanted = toChoice(show, say`what to show`, ["all", "open"], "all");
  const { answered, unknown } = answersOf(toNamedValues(named_values), toThresholds(limits));
  const language = languageAsked(show);
  const cell = (figure: Figure | undefined) => (figure && Number.isFinite(figure.value) ? figure.value : "");
  const row = (id: string, status: Message, sentence: Message, compared?: Answer["compared"]) => [
    id,
    told(status, language),
    cell(compared?.[0]),
    cell(compared?.[1]),
    compared?.[0].unit ?? "",
    told(sentence, language),
  ];
  const rows = answered
    .filter(({ answer }) => wanted === "all" || !["pass", "cannot be asked"].includes(answer.status))
    .map(({ id, answer: { status, compared, sentence } }) => row(id, say([status]), sentence, compared));
  if (unknown.length)
    rows.push(row("", say`note`, say`names that no question reads: ${listed(unknown.map(verbatim))}`));
  return rows.length ? rows : [row("", say(["pass"]), say`every question that could be asked passes`)];
}
