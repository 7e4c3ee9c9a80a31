/** Data validation: the limits of a rule and its messages, and the rule that covers a cell. */
import { faultOfFormula } from "../formulas";
import { invalidArgument } from "../refusal";
import { inside, intersection, overlap, type Box } from "./address";
import type { Rule, Sheet } from "./book";
import { syntaxFault } from "./entry";

/** Characters (Excel's data validation: message and its title, prompt, typed list). */
const LIMITS = { message: 225, title: 32, prompt: 255, list: 255 };

const TWO = ["Between", "NotBetween"];
const KINDS = ["wholeNumber", "decimal", "list", "date", "time", "textLength", "custom"];
const DAYS = 2_958_465;

type Options = Readonly<Record<string, unknown>>;

export function checkRule(rule: Options): void {
  const kinds = KINDS.filter((kind) => rule[kind] !== undefined && rule[kind] !== null);
  if (kinds.length !== 1) throw invalidArgument(`A rule is of one kind, not of ${kinds.length}.`);
  const [kind] = kinds;
  const options = rule[kind] as Options;
  if (kind === "list") return checkList(options);
  if (kind === "custom") {
    if (!String(options.formula).startsWith("=")) throw invalidArgument("The formula of a rule begins with =.");
    return checkFormula(String(options.formula));
  }
  const isTwo = TWO.includes(String(options.operator));
  const given = [options.formula1, options.formula2].filter((one) => one !== undefined && one !== null && one !== "");
  if (given.length < (isTwo ? 2 : 1))
    throw invalidArgument(`${String(options.operator)} needs ${isTwo ? "two bounds" : "a bound"}.`);
  const bounds = given.map((bound) => boundOf(kind, bound));
  if (options.operator === "Between" && bounds[0] !== undefined && bounds[1] !== undefined && bounds[0] > bounds[1])
    throw invalidArgument("The Maximum must be greater than or equal to the Minimum.");
}

/** A formula of a rule is read like that of a cell; Excel takes no constants in braces there (its own message, from memory). */
function checkFormula(formula: string): void {
  const isArray = formula.replace(/"(?:[^"]|"")*"/g, "").includes("{");
  const fault = isArray ? "a rule takes no constants in braces" : (syntaxFault(formula) ?? faultOfFormula(formula));
  if (fault) throw invalidArgument(`Excel does not accept the formula ${formula.slice(0, 80)}: ${fault}.`);
}

function checkList({ source }: Options): void {
  if (typeof source !== "string") return;
  if (source === "") throw invalidArgument("A list has at least one word.");
  if (source.startsWith("=")) return checkFormula(source);
  if (!source.startsWith("=") && source.length > LIMITS.list)
    throw invalidArgument(`A typed list takes at most ${LIMITS.list} characters, not ${source.length}.`);
}

/** A bound as a number, if it is not a formula. */
function boundOf(kind: string, bound: unknown): number | undefined {
  if (typeof bound === "string" && bound.startsWith("=")) {
    checkFormula(bound);
    return undefined;
  }
  if (kind === "date") {
    const day = typeof bound === "number" ? bound : dayOf(String(bound));
    if (!(day >= 0 && day <= DAYS + 1))
      throw invalidArgument(`A date from 1900-01-01 to 9999-12-31 is needed, not ${JSON.stringify(bound)}.`);
    return day;
  }
  if (kind === "time" && typeof bound === "string") return undefined;
  const number = typeof bound === "string" && bound.trim() !== "" ? Number(bound) : bound;
  if (typeof number !== "number" || !Number.isFinite(number))
    throw invalidArgument(`A bound is a number, not ${JSON.stringify(bound)}.`);
  if ((kind === "wholeNumber" || kind === "textLength") && !Number.isInteger(number))
    throw invalidArgument(`A bound of ${kind} is a whole number, not ${number}.`);
  return number;
}

const dayOf = (text: string): number =>
  /^\d{4}-\d{2}-\d{2}/.test(text) ? Date.parse(text) / 86_400_000 + 25_569 : NaN;

export function checkAlert(alert: Options): void {
  checkLength("message", alert.message, LIMITS.message);
  checkLength("title", alert.title, LIMITS.title);
}

export function checkPrompt(prompt: Options): void {
  checkLength("message", prompt.message, LIMITS.prompt);
  checkLength("title", prompt.title, LIMITS.title);
}

function checkLength(what: string, text: unknown, most: number): void {
  if (typeof text === "string" && text.length > most)
    throw invalidArgument(`The ${what} of a rule takes at most ${most} characters, not ${text.length}.`);
}

/** The parts of a box that are left when another box is cut out of it. */
function without(box: Box, cut: Box): Box[] {
  if (!overlap(box, cut)) return [box];
  const bottom = box.row + box.rows;
  const right = box.col + box.cols;
  const cutBottom = Math.min(bottom, cut.row + cut.rows);
  const cutRight = Math.min(right, cut.col + cut.cols);
  const top = Math.max(box.row, cut.row);
  const left = Math.max(box.col, cut.col);
  return [
    { ...box, rows: top - box.row },
    { ...box, row: cutBottom, rows: bottom - cutBottom },
    { row: top, rows: cutBottom - top, col: box.col, cols: left - box.col },
    { row: top, rows: cutBottom - top, col: cutRight, cols: right - cutRight },
  ].filter(({ rows, cols }) => rows > 0 && cols > 0);
}

export const ruleAt = (sheet: Sheet, row: number, col: number): Rule | undefined =>
  sheet.rules.find(({ box }) => inside(box, row, col));

/** Refuses a rule for cells of which some have another rule or message than others (office-js issue 2594). */
export function mustBeAlike(sheet: Sheet, box: Box): void {
  const met = sheet.rules.flatMap((one) => {
    const shared = intersection(one.box, box);
    return shared ? [{ cells: shared.rows * shared.cols, said: JSON.stringify({ ...one, box: undefined }) }] : [];
  });
  const covered = met.reduce((sum, { cells }) => sum + cells, 0);
  if (met.length > 0 && (covered < box.rows * box.cols || new Set(met.map(({ said }) => said)).size > 1))
    throw invalidArgument("Some of the cells have another rule: clear their rules first.");
}

/** Changes the rule of all cells of a box. Each cell has at most one rule: other rules are cut. */
export function setRule(sheet: Sheet, box: Box, change: Partial<Rule>): void {
  const before = ruleAt(sheet, box.row, box.col) ?? { box };
  sheet.rules = sheet.rules.flatMap((one) => without(one.box, box).map((rest) => ({ ...one, box: rest })));
  sheet.rules.push({ ...before, ...change, box });
}

export function clearRules(sheet: Sheet, box: Box): void {
  sheet.rules = sheet.rules.flatMap((one) => without(one.box, box).map((rest) => ({ ...one, box: rest })));
}

/** Whether a rule of numbers or dates accepts an entry, as Excel compares it (dates by their day numbers). */
export function admits(rule: Options, entry: number): boolean {
  const options = (rule.decimal ?? rule.wholeNumber ?? rule.date) as Options | undefined;
  if (!options) throw new Error(`no rule of numbers or dates: ${JSON.stringify(rule)}`);
  const bound = (value: unknown): number => (typeof value === "string" && rule.date ? dayOf(value) : Number(value));
  const [low, high] = [bound(options.formula1), bound(options.formula2)];
  const answers: Readonly<Record<string, boolean>> = {
    Between: entry >= low && entry <= high,
    NotBetween: entry < low || entry > high,
    EqualTo: entry === low,
    NotEqualTo: entry !== low,
    GreaterThan: entry > low,
    LessThan: entry < low,
    GreaterThanOrEqualTo: entry >= low,
    LessThanOrEqualTo: entry <= low,
  };
  return answers[String(options.operator)];
}
