/**
 * Converts formulas between the form of an Excel file and the form of the engine.
 *
 * A worksheet function of an add-in is stored as `_xldudf_CLAY_LOG_TIME(...)`, newer functions of Excel as
 * `_xlfn.NAME(...)`, a reference to a spill as `_xlfn.ANCHORARRAY(A1)`. A text in the engine cannot hold a quote, so
 * "a""b" is read as ("a"&CHAR(34)&"b"); a backslash before a quote is part of the text.
 */
import { tokenize } from "@odoo/o-spreadsheet";
import { withPresentNames } from "../../renamed-functions";
import { quoted } from "../../address";
import { looksLikeCell } from "../../rules/names";
import { renameIn, type Rename } from "../names";
import { withFilePrefixes } from "./newer-functions";

const REFERENCE = String.raw`(?:'(?:[^']|'')*'!|[\w.]+!)?\$?[A-Za-z]{1,3}\$?\d+`;
const ANCHOR = new RegExp(String.raw`_xlfn\.ANCHORARRAY\((${REFERENCE})\)`, "g");
const SINGLE = new RegExp(String.raw`_xlfn\.SINGLE\((${REFERENCE}(?::${REFERENCE})?)\)`, "g");
const SPILL = new RegExp(`(${REFERENCE})#`, "g");

/** Texts, quoted sheet names, and the code between them, where a text is spelled as `aText`. */
const partsWith = (aText: string): RegExp => new RegExp(`(${aText})|('(?:''|[^'])*')|([^"']+)`, "g");

/** The spelling of texts in a file, and in the engine. */
const IN_FILE = partsWith(String.raw`"(?:""|[^"])*"`);
const IN_ENGINE = partsWith(String.raw`"(?:\\"|[^"])*"`);

/** Applies `change` to the parts outside texts and quoted sheet names, and `inText` to each text with its quotes. */
function inCode(
  formula: string,
  spelling: RegExp,
  change: (code: string) => string,
  inText: (text: string) => string,
): string {
  return formula.replace(spelling, (_, text, sheet, code) =>
    text !== undefined ? inText(text) : (sheet ?? change(code)),
  );
}

const OUR_FUNCTION = /\bCLAY\.(?=\w+\s*\()/gi;

/** An error that ends like the name of a sheet, or the name of a sheet without apostrophes. */
const BARE_SHEET = /#(?:REF|NULL|VALUE|NUM|DIV\/0)!|(?<![\p{L}\p{N}_.\]:])([\p{L}\p{N}_.]+)!/gu;

/**
 * Whether Excel needs apostrophes around the name of a sheet in letters, digits, "_" and "." (XlsxWriter issue 1078: it begins with a digit
 * or a point, is a cell such as BH1, or begins like a cell of the other style, such as R1C1 or RC12Test; TRUE and FALSE: Apache POI,
 * SheetNameFormatter). Without them Excel takes the formula out of the file (Apache POI, pull request 545).
 */
const needsApostrophes = (name: string): boolean =>
  !/^[\p{L}_]/u.test(name) || looksLikeCell(name) || /^(?:R?C?\d|(?:true|false)$)/i.test(name);

/** The engine writes such a name without them. */
const withApostrophes = (code: string): string =>
  code.replace(BARE_SHEET, (whole, name: string | undefined) =>
    name !== undefined && needsApostrophes(name) ? `${quoted(name)}!` : whole,
  );

/** A lost reference is "#REF" in the engine and "#REF!" in Excel. */
const withLost = (code: string): string => code.replace(/#REF\b(?!!)/g, "#REF!");

/** The code of a formula with the names of functions, sheets and lost references as Excel has them in a file. */
const withFileNames = (code: string): string =>
  withApostrophes(withLost(withFilePrefixes(code.replace(OUR_FUNCTION, "_xldudf_CLAY_"))));

/** A formula as the engine writes it for Excel beside cells, with the prefixes of functions and the apostrophes that it lacks. */
export const finishedFormula = (formula: string): string => inCode(formula, IN_FILE, withFileNames, (text) => text);

/**
 * From the text of `<f>` to the text that the engine has after "=". Of error constants the engine knows only #REF, and
 * NA() replaces #N/A.
 */
export function fromFileFormula(formula: string, rename: Rename): string {
  const known = inCode(
    formula.replace(ANCHOR, "$1#").replace(SINGLE, "$1"),
    IN_FILE,
    (code) =>
      withPresentNames(code)
        .replace(/_xlfn\.(?:_xlws\.)?/g, "")
        .replace(/#REF!/g, "#REF")
        .replace(/#N\/A/g, "NA()"),
    (text) => {
      const pieces = text.slice(1, -1).split('""');
      return pieces.length === 1 ? text : `(${pieces.map((piece) => `"${piece}"`).join("&CHAR(34)&")})`;
    },
  );
  return renameIn(known, rename);
}

/** The texts in a formula. */
const textsOf = (formula: string): string =>
  tokenize(`=${formula}`)
    .filter(({ type }) => type === "STRING")
    .map(({ value }) => value)
    .join();

/** The formula with `_xlfn.` before the functions that have this prefix in `exported`. */
function withPrefixes(formula: string, exported: string): string {
  const newer = new Set([...exported.matchAll(/_xlfn\.([\w.]+)\(/g)].map(([, name]) => name));
  return inCode(
    formula,
    IN_ENGINE,
    (code) => code.replace(/[\w.]+(?=\()/g, (name) => (newer.has(name.toUpperCase()) ? `_xlfn.${name}` : name)),
    (text) => text,
  );
}

/**
 * From a formula of the engine (without "=") to the text of `<f>`. `exported` is the export of the engine: it knows the
 * `_xlfn.` functions and the arguments that Excel requires, but takes a text such as "1/2" for a date. If it does, only
 * its prefixes are used.
 */
export function toFileFormula(formula: string, exported: string | undefined, rename: Rename): string {
  const base =
    exported === undefined
      ? formula
      : textsOf(exported) === textsOf(formula)
        ? exported
        : withPrefixes(formula, exported);
  return inCode(renameIn(base, rename).replace(SPILL, "_xlfn.ANCHORARRAY($1)"), IN_ENGINE, withFileNames, (text) =>
    text.replaceAll('\\"', '\\""'),
  );
}
