/**
 * Formulas that the engine cannot read: with a function that it lacks, or with an operator that only Excel has. The engine keeps their text
 * alone: if rows were inserted, their references still led to the old cells, and Excel calculated with these. Here they have references as
 * other formulas have them. Every one answers with an error, and so does every formula that reads it (`lacking.ts`).
 * Casts: the engine's types do not tell what a compiled formula holds.
 */
import { EvaluationError, tokenize, type CompiledFormula } from "@odoo/o-spreadsheet";
import { wordFor } from "../engine-words";
import { unknownIn } from "../xlsx/opening/unknown-functions";
import type { Zone } from "../zones";
import type { Execute } from "./branches";
import type { Evaluator, Place } from "./engine-parts";
import { lacking } from "./lacking";

interface Token {
  readonly type: string;
  readonly value: string;
}

const CELL = /^(?:.*!)?\$?[A-Za-z]{1,3}\$?\d+$/s;
const COLUMN = /^(?:.*!)?\$?[A-Za-z]{1,3}$/s;
const ROW = /^(?:.*!)?\$?\d+$/s;
const KINDS = [CELL, COLUMN, ROW];

/** The place of the next token that is no space. */
function behind(tokens: readonly Token[], at: number): number {
  let next = at + 1;
  while (tokens[next]?.type === "SPACE") next++;
  return next;
}

/** The place behind the reference that begins at a place; undefined if none begins there. */
function referenceEnd(tokens: readonly Token[], at: number): number | undefined {
  const token = tokens[at];
  if (!token || !["REFERENCE", "SYMBOL", "NUMBER"].includes(token.type)) return undefined;
  const colon = behind(tokens, at);
  const end = behind(tokens, colon);
  const isRange =
    tokens[colon]?.value === ":" &&
    tokens[behind(tokens, end)]?.type !== "LEFT_PAREN" &&
    KINDS.some((kind) => kind.test(token.value) && kind.test(tokens[end]?.value ?? ""));
  if (isRange) return end + 1;
  // LOG10( looks like a cell.
  return token.type === "REFERENCE" && tokens[colon]?.type !== "LEFT_PAREN" ? at + 1 : undefined;
}

/** A formula ("=...") in parts: what stands between its references, and these. */
function partsOf(formula: string): { between: string[]; references: string[] } {
  const tokens: readonly Token[] = tokenize(formula);
  const between = [""];
  const references: string[] = [];
  for (let at = 0; at < tokens.length;) {
    const end = referenceEnd(tokens, at) ?? at;
    if (end > at) {
      references.push(tokens.slice(at, end).map(({ value }) => value).join("")); // prettier-ignore
      between.push("");
    } else between.push(`${between.pop() ?? ""}${tokens[at]?.value ?? ""}`);
    at = Math.max(end, at + 1);
  }
  return { between, references };
}

/** The code by what stands between the references, as JSON. */
const codes = new Map<string, Execute>();
/** All such code, also that which is no longer in the list. */
const made = new WeakSet<Execute>();
/** At most so many forms. */
const MOST_FORMS = 5_000;

/** Whether a formula was compiled here. */
export const isUnread = ({ execute }: { readonly execute: Execute }): boolean => made.has(execute);

/** The parts of a formula between its references; undefined for a text that `unread` has not written. */
const betweenOf = (key: string): readonly string[] | undefined =>
  key.startsWith("[") ? (JSON.parse(key) as readonly string[]) : undefined;

/** What stands between the references of a formula, as JSON, with its names changed by `rename`. */
export function withNames(key: string, rename: (name: string) => string): string {
  const between = betweenOf(key)?.map((part) => {
    const tokens: readonly Token[] = tokenize(part);
    return tokens
      .map(({ type, value }, at) =>
        type === "SYMBOL" && tokens[behind(tokens, at)]?.type !== "LEFT_PAREN" ? rename(value) : value,
      )
      .join("");
  });
  return between ? JSON.stringify(between) : key;
}

/** Whether two formulas are the same but for their references, and for names: these may have been renamed. */
const isSameForm = (one: string, other: string): boolean =>
  one === other || withNames(one, () => "a") === withNames(other, () => "a");

/** How the file has a formula that cannot be read. */
export interface Form {
  /** The cells that its answer fills, if these are several. */
  readonly fills?: Zone;
  /** Whether it is a formula of arrays. */
  readonly isArray: boolean;
}

/** A form, with what stands between the references of its formula. */
interface NotedForm extends Form {
  readonly of: string;
}

/**
 * By the evaluator, and by the id of the cell, which stays when the cell moves, and comes again with redo. After undo the id may be that
 * of another cell: a form holds only for the formula that it was noted of, wherever its references lead.
 */
const forms = new WeakMap<Evaluator, Map<string, NotedForm>>();

export function formsOf(evaluator: Evaluator): Map<string, NotedForm> {
  return forms.get(evaluator) ?? forms.set(evaluator, new Map<string, NotedForm>()).get(evaluator)!;
}

/** A cell, as far as it tells whether its formula can be read. */
export interface UnreadCell {
  readonly id: string;
  readonly compiledFormula?: { readonly normalizedFormula: string; readonly execute: Execute };
}

/** The form of the formula of a cell in its file; undefined if the formula can be read, or is none of a file. */
export function formOf(evaluator: Evaluator, { id, compiledFormula: formula }: UnreadCell): Form | undefined {
  const form = formula && isUnread(formula) ? formsOf(evaluator).get(id) : undefined;
  return form && formula && isSameForm(form.of, formula.normalizedFormula) ? form : undefined;
}

/** Notes how a file has the formula of a cell. */
export function noteForm(evaluator: Evaluator, { id, compiledFormula }: UnreadCell, { fills, isArray }: Form): void {
  if (compiledFormula) formsOf(evaluator).set(id, { ...(fills && { fills }), isArray, of: compiledFormula.normalizedFormula }); // prettier-ignore
}

/** What the engine gives to the code of a formula, and where the forms are added. */
export interface Context {
  readonly __originCellPosition?: Place;
  readonly getters: { getCell(place: Place): { readonly id: string } | undefined };
  forms?: ReadonlyMap<string, NotedForm>;
}

/** An error in each cell that the formula fills; `key` is what stands between its references. */
function filling(key: string, error: EvaluationError, { __originCellPosition: place, getters, forms: known }: Context) {
  const form = place && known?.size ? known.get(getters.getCell(place)?.id ?? "") : undefined;
  const fills = form && isSameForm(form.of, key) ? form.fills : undefined;
  if (!fills) return error;
  const column = new Array<EvaluationError>(fills.bottom - fills.top + 1).fill(error);
  return new Array<EvaluationError[]>(fills.right - fills.left + 1).fill(column);
}

/** The code of formulas with these parts; `error` is what the engine says of them. */
function codeOf(key: string, between: readonly string[], error: EvaluationError): Execute {
  const before = codes.get(key);
  if (before) return before;
  const unknown = unknownIn(between.join("A1"));
  // A function of the add-in that does not exist is missing in Excel too.
  const isMissing = unknown.length === 0 && /\bCLAY\.\w+\(/i.test(key);
  const [name = unknown[0]] = /(?<=")[^"]+(?="$)/.exec(error.message ?? "") ?? [];
  const answer = (): EvaluationError =>
    name === undefined || error.value !== "#NAME?"
      ? new EvaluationError(error.message, error.value)
      : new EvaluationError(wordFor('Unknown function: "%s"').replace("%s", name), error.value);
  const code = ((...[, , , , context]: readonly unknown[]) => {
    const known = context as Context;
    return isMissing ? answer() : filling(key, lacking(answer(), known), known);
  }) as Execute;
  if (codes.size >= MOST_FORMS) codes.clear();
  codes.set(key, code);
  made.add(code);
  return code;
}

interface Ranges {
  getRangeFromSheetXC(sheetId: string, reference: string): object;
}

interface Held {
  /** Here what stands between the references, as JSON. */
  readonly normalizedFormula: string;
  readonly rangeDependencies: readonly object[];
  readonly execute: Execute;
}

/** A compiled formula, as its text is made. */
export interface Unread extends Held {
  readonly sheetId: string;
}

/** Gives a formula that the engine could not compile its references. `text` is the formula with "=". */
export function unread(formula: CompiledFormula, text: string, sheetId: string, getters: Ranges): CompiledFormula {
  const held = formula as unknown as Held;
  const { between, references } = partsOf(text);
  const key = JSON.stringify(between);
  const error = (held.execute as unknown as () => EvaluationError)();
  const rangeDependencies = references.map((one) => getters.getRangeFromSheetXC(sheetId, one));
  const hasDependencies = references.length > 0;
  Object.assign(held, { execute: codeOf(key, between, error), normalizedFormula: key, rangeDependencies, hasDependencies }); // prettier-ignore
  return formula;
}

interface Getters {
  getRangeString(range: object, sheetId: string, options: unknown): string;
}

/** The text of a formula that cannot be read; it may be copied from another page, which has compiled it. */
export function unreadText(formula: Unread, getters: unknown, options: unknown): string {
  const { rangeDependencies, sheetId, normalizedFormula } = formula;
  const between = betweenOf(normalizedFormula);
  if (!between) return normalizedFormula;
  return between
    .map((part, at) => {
      const range = rangeDependencies[at];
      return range === undefined ? part : part + (getters as Getters).getRangeString(range, sheetId, options);
    })
    .join("");
}
