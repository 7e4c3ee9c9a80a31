/**
 * Compiled formulas hold what they have in common once. The engine compiles a formula for every name that it reads, though its code only
 * says which of the formula's names it wants; and it keeps an object for each word of each formula. With the names of 40 data sheets
 * these took 100 MB.
 * Casts: the engine's types do not tell what a compiled formula holds.
 */
import { CompiledFormula, functionCache } from "@odoo/o-spreadsheet";
import { lazily, type Execute } from "./branches";
import { watched } from "./lacking";
import { shareParts } from "./range-parts";
import { withoutLogTen } from "./log-ten";
import { withTightMinus } from "./tight-minus";
import { isUnread, unread, unreadText, withNames, type Unread } from "./unread";

/** The engine's code by its source. */
const bySource = new Map<string, Execute>();
/** What is evaluated in place of the engine's code. */
const evaluated = new WeakMap<Execute, Execute>();

const codeByFormula = functionCache as Record<string, Execute>;

/** One function for all code with the same source; the engine's own list of code then holds no other either. */
function sharedCode({ execute, normalizedFormula }: Compiled): Execute {
  const before = evaluated.get(execute);
  if (before) return before;
  const source = String(execute);
  const shared = bySource.get(source) ?? execute;
  bySource.set(source, shared);
  // The engine may have made the code of a formula that was copied from another page for words without their values.
  if (codeByFormula[normalizedFormula] === execute) codeByFormula[normalizedFormula] = shared;
  const lazy = evaluated.get(shared) ?? watched(lazily(shared, source));
  evaluated.set(shared, lazy);
  evaluated.set(lazy, lazy);
  return lazy;
}

interface Token {
  readonly type: string;
  readonly value: string;
}

interface Compiled {
  readonly isBadExpression: boolean;
  readonly normalizedFormula: string;
  readonly execute: Execute;
  readonly tokens: readonly Token[];
  readonly symbols: readonly string[];
  readonly rangeDependencies: readonly object[];
  readonly literalValues: { readonly numbers: readonly unknown[]; readonly strings: readonly unknown[] };
}

/** Words whose value the engine sets anew whenever it writes a formula as text. */
const CHANGING = new Set(["REFERENCE", "INVALID_REFERENCE", "NUMBER", "STRING"]);

/** At most so many entries: then a list begins anew, and what belongs to workbooks that are no longer open goes with it. */
const MOST_WORDS = 50_000;
const MOST_FORMS = 5_000;

/** Keeps `value` under a key, and gives what was kept there before if there is something. */
function firstKept<T>(list: Map<string, T>, most: number, key: string, value: T): T {
  const before = list.get(key);
  if (before !== undefined) return before;
  if (list.size >= most) list.clear();
  list.set(key, value);
  return value;
}

/** Words of formulas that never change, by their value. */
const words = new Map<string, Token>();

const sharedWord = (token: Token): Token =>
  CHANGING.has(token.type) ? token : firstKept(words, MOST_WORDS, `${token.type} ${token.value}`, token);

/** What formulas share that differ only in their references, numbers and texts; the engine shares the same between copies of a formula. */
type Form = Pick<Compiled, "tokens" | "symbols" | "normalizedFormula">;

/** By the text that the engine has for formulas with the same code, which may differ in capitals and in spaces. */
const forms = new Map<string, Form[]>();
let formsKept = 0;

const isSameWord = (one: Token, other: Token | undefined): boolean =>
  one.type === other?.type && (one.value === other.value || CHANGING.has(one.type));

const NONE: readonly never[] = Object.freeze([]);
/** The same list without the room that a growing list keeps free. */
const exact = <T>(list: readonly T[]): readonly T[] => (list.length === 0 ? NONE : list.slice());

function sharedForm({ tokens, symbols, normalizedFormula }: Compiled): Form {
  const alike = forms.get(normalizedFormula) ?? [];
  for (const form of alike)
    if (form.tokens.length === tokens.length && form.tokens.every((token, at) => isSameWord(token, tokens[at])))
      return form;
  const form = { tokens: tokens.map(sharedWord), symbols: exact(symbols), normalizedFormula };
  if (formsKept >= MOST_FORMS) forms.clear();
  formsKept = forms.size === 0 ? 1 : formsKept + 1;
  forms.set(normalizedFormula, [...(forms.get(normalizedFormula) ?? []), form]);
  return form;
}

/** The parts of a formula that can be shared or made smaller; a formula that cannot be read stays as it is. */
function small(formula: Compiled): Partial<Compiled> {
  if (formula.isBadExpression) return {};
  const { numbers, strings } = formula.literalValues;
  formula.rangeDependencies.forEach(shareParts);
  return {
    ...sharedForm(formula),
    execute: sharedCode(formula),
    literalValues: { numbers: exact(numbers), strings: exact(strings) },
  };
}

/** Compiles a formula of the engine, and makes it small. */
const compiledSmall = (compile: (...args: unknown[]) => CompiledFormula, ...args: unknown[]): CompiledFormula => {
  const formula = compile(...args);
  return Object.assign(formula, small(formula as unknown as Compiled));
};

const compileSerialized = CompiledFormula.CompileForSerializedFormula.bind(CompiledFormula) as Compile;
const compileText = CompiledFormula.Compile.bind(CompiledFormula) as Compile;
type Compile = (...args: unknown[]) => CompiledFormula;

CompiledFormula.CompileForSerializedFormula = (...args: unknown[]) => compiledSmall(compileSerialized, ...args);

interface Ranges {
  getRangeFromSheetXC(sheetId: string, reference: string): object;
}

/** A formula that was compiled, and its references as they are written. */
interface Known {
  readonly formula: Compiled;
  readonly references: readonly string[];
}

/**
 * Formulas by their text. The sheets of a workbook have formulas of the same text, and a file that is opened has those of the sheet that was
 * saved: compiling was a twelfth of the time in which a workbook is made. A formula that cannot be read is compiled each time: the function
 * that it lacks may come.
 */
const knownByText = new Map<string, Known>();
/** At most so many characters of text. */
const MOST_TEXT = 2_000_000;
let textKept = 0;

function compiledAnew(text: string, sheetId: string, getters: Ranges): CompiledFormula {
  const references: string[] = [];
  const noting: Ranges = {
    getRangeFromSheetXC: (id, reference) => {
      references.push(reference);
      return getters.getRangeFromSheetXC(id, reference);
    },
  };
  const made = compiledSmall(compileText, withTightMinus(withoutLogTen(text)), sheetId, noting);
  const formula = made as unknown as Compiled;
  if (formula.isBadExpression) return unread(made, text, sheetId, getters);
  textKept += text.length;
  if (textKept > MOST_TEXT) {
    knownByText.clear();
    textKept = text.length;
  }
  // The ranges of the formula belong to its workbook.
  knownByText.set(text, { formula: { ...formula, rangeDependencies: NONE }, references });
  return made;
}

CompiledFormula.Compile = (text: string, sheetId: string, getters: unknown) => {
  const ranges = getters as Ranges;
  const known = knownByText.get(text);
  if (!known) return compiledAnew(text, sheetId, ranges);
  const { formula, references } = known;
  return CompiledFormula.CopyWithDependencies(
    formula as never,
    sheetId,
    references.map((one) => shareParts(ranges.getRangeFromSheetXC(sheetId, one))) as never,
  );
};

interface Written extends Unread {
  readonly isBadExpression: boolean;
  getTokens(getters: unknown, options: unknown): readonly Token[];
}

/**
 * The text of a formula. The engine adds word to word, and the browser keeps such a text as all of its beginnings: the formulas of a file
 * took 140 MB with 40 data sheets.
 */
(CompiledFormula.prototype as unknown as { toFormulaString: unknown }).toFormulaString = function (
  this: Written,
  getters: unknown,
  options: unknown,
): string {
  if (this.isBadExpression) return unreadText(this, getters, options);
  return this.getTokens(getters, options)
    .map(({ type, value }) => (type === "SPACE" ? "" : value))
    .join("");
};

interface Adapted {
  adaptCompiledFormula(applyChange: unknown, rename: (name: string) => string): Compiled;
}

const prototype = CompiledFormula.prototype as unknown as Adapted;
const { adaptCompiledFormula } = prototype;
/** The engine would give a formula that it cannot read the text of its form. */
prototype.adaptCompiledFormula = function (this: Compiled, applyChange, rename) {
  const adapted = adaptCompiledFormula.call(this as never, applyChange, rename);
  if (!isUnread(adapted) || adapted === this) return adapted;
  return Object.assign(adapted, { normalizedFormula: withNames(this.normalizedFormula, rename) });
};
