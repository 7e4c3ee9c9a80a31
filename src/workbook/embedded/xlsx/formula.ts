/**
 * Formulas between Excel's file form and the engine's.
 *
 * A worksheet function of an add-in is stored as `_xldudf_CLAY_LOG_TIME(...)`, newer functions of Excel as `_xlfn.NAME(...)`,
 * a reference to a spill as `_xlfn.ANCHORARRAY(A1)`; a quote within a text is doubled where the engine has a backslash.
 */
import { tokenize } from "@odoo/o-spreadsheet";

export type Rename = (name: string) => string;

const REFERENCE = String.raw`(?:'(?:[^']|'')*'!|[\w.]+!)?\$?[A-Za-z]{1,3}\$?\d+`;
const ANCHOR = new RegExp(String.raw`_xlfn\.ANCHORARRAY\((${REFERENCE})\)`, "g");
const SINGLE = new RegExp(String.raw`_xlfn\.SINGLE\((${REFERENCE}(?::${REFERENCE})?)\)`, "g");
const SPILL = new RegExp(`(${REFERENCE})#`, "g");

/** Applies `change` to what stands outside texts and quoted sheet names, `inText` to each text with its quotes. */
function inCode(formula: string, change: (code: string) => string, inText: (text: string) => string): string {
  return formula.replace(/("(?:\\"|""|[^"])*")|('(?:''|[^'])*')|([^"']+)/g, (_, text, sheet, code) =>
    text !== undefined ? inText(text) : (sheet ?? change(code)),
  );
}

/** Each bare name (not a function, a reference or a text) put through `rename`; `formula` without "=". */
function renameIn(formula: string, rename: Rename): string {
  const tokens = tokenize(`=${formula}`).slice(1);
  return tokens
    .map(({ type, value }, i) => (type === "SYMBOL" && tokens[i + 1]?.type !== "LEFT_PAREN" ? rename(value) : value))
    .join("");
}

/** From the text of `<f>` to what the engine types after "=". */
export function fromFileFormula(formula: string, rename: Rename): string {
  const known = inCode(
    formula.replace(ANCHOR, "$1#").replace(SINGLE, "$1"),
    (code) => code.replace(/_xldudf_CLAY_(?=\w+\s*\()/gi, "CLAY.").replace(/_xlfn\.(?:_xlws\.)?/g, ""),
    (text) => `"${text.slice(1, -1).replaceAll('""', '\\"')}"`,
  );
  return renameIn(known, rename);
}

/** The texts within a formula. */
const textsOf = (formula: string): string[] =>
  tokenize(`=${formula}`)
    .filter(({ type }) => type === "STRING")
    .map(({ value }) => value.replaceAll('\\"', '""'));

/**
 * From an engine's formula (without "=") to the text of `<f>`. `exported` is the engine's own attempt, which knows the
 * `_xlfn.` functions and the arguments that Excel insists on, but takes texts such as "1/2" for dates: then it is not used.
 */
export function toFileFormula(formula: string, exported: string | undefined, rename: Rename): string {
  const isTrue = exported !== undefined && textsOf(exported).join() === textsOf(formula).join();
  return inCode(
    renameIn(isTrue ? exported : formula, rename).replace(SPILL, "_xlfn.ANCHORARRAY($1)"),
    (code) => code.replace(/\bCLAY\.(?=\w+\s*\()/gi, "_xldudf_CLAY_").replace(/#REF\b(?!!)/g, "#REF!"),
    (text) => text.replaceAll('\\"', '""'),
  );
}
