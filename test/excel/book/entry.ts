/** Turns a written value into a cell: Excel reads texts as if a person typed them, in en-US. */
import { faultOfFormula, LONGEST_FORMULA } from "../formulas";
import { invalidArgument, Refusal } from "../refusal";
import type { Cell, Value } from "./book";

/** The most characters and line feeds of a cell's text (Excel specifications and limits). */
const LONGEST_TEXT = 32_767;
const MOST_LINE_FEEDS = 253;

const ERRORS = [
  "#N/A",
  "#NAME?",
  "#VALUE!",
  "#REF!",
  "#DIV/0!",
  "#NUM!",
  "#NULL!",
  "#SPILL!",
  "#CALC!",
  "#BUSY!",
  "#GETTING_DATA",
];

const MONTHS = "jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec";
const DATE = new RegExp(
  `^(\\d{1,4}[/-]\\d{1,2}([/-]\\d{1,4})?|\\d{1,2}[ -](${MONTHS})[a-z]*([ -]\\d{2,4})?|(${MONTHS})[a-z]*[ -]\\d{1,4}(,? \\d{4})?)$`,
  "i",
);
const NUMBER = /^[+-]?[$]?(\d[\d,]*\.?\d*|\.\d+)(e[+-]?\d+)?%?$/i;

/**
 * A day number for a text that Excel reads as a date; it matters only that the text becomes a number, not which day it
 * is.
 */
function dayOf(text: string): number {
  const day = Date.parse(`${text}${/\d{4}/.test(text) ? "" : " 2026"}`);
  return Number.isNaN(day) ? 46_000 : Math.round(day / 86_400_000) + 25_569;
}

/** The cell after an entry; undefined if the entry empties it. */
export function entered(entry: unknown, format: string): Cell | undefined {
  if (entry === "" || entry === undefined) return undefined;
  if (typeof entry === "number" || typeof entry === "boolean") return { value: entry };
  if (typeof entry !== "string") throw invalidArgument(`A cell takes no ${JSON.stringify(entry)}.`);
  if (entry.length > LONGEST_TEXT && !entry.startsWith("="))
    throw invalidArgument(`A cell takes at most ${LONGEST_TEXT} characters, not ${entry.length}.`);
  if ((entry.match(/\n/g) ?? []).length > MOST_LINE_FEEDS)
    throw invalidArgument(`A cell takes at most ${MOST_LINE_FEEDS} line feeds.`);
  if (entry.startsWith("'")) return { value: entry.slice(1) };
  // A cell of text format keeps an entry as text, a formula too.
  if (format === "@") return { value: entry };
  if (entry.startsWith("=") && entry.length > 1) return { value: 0, formula: wellFormed(entry) };
  if (isBegun(entry)) return { value: 0, formula: wellFormed(`=${entry}`) };
  if (entry.startsWith("@")) throw invalidArgument(`"${entry}" is no formula that Excel accepts.`);
  return { ...read(entry) };
}

/**
 * Whether an entry begins a formula without "=" (typings, Range.values: "If the returned value starts with a plus,
 * minus, or equal sign, Excel interprets this value as a formula"). A number is none; from memory, a sign alone is text.
 */
const isBegun = (entry: string): boolean =>
  /^[+-]./s.test(entry) && !NUMBER.test(entry) && !/^[+-]?\d{1,2}:\d{2}/.test(entry);

function read(text: string): { value: Value; isError?: boolean } {
  if (ERRORS.includes(text.toUpperCase())) return { value: text.toUpperCase(), isError: true };
  if (/^(true|false)$/i.test(text)) return { value: /^t/i.test(text) };
  if (NUMBER.test(text)) {
    const number = Number(text.replace(/[$,%]/g, ""));
    if (Number.isFinite(number)) return { value: text.endsWith("%") ? number / 100 : number };
  }
  if (DATE.test(text)) return { value: dayOf(text) };
  if (/^\d{1,2}:\d{2}(:\d{2})?( ?[ap]m)?$/i.test(text)) return { value: 0.5 };
  return { value: text };
}

/** A formula as Excel stores it; refuses a formula that Excel does not accept. */
function wellFormed(formula: string): string {
  if (formula.length > LONGEST_FORMULA)
    throw new Refusal(
      "FormulaLengthExceedsLimit",
      `A formula takes at most ${LONGEST_FORMULA} characters, not ${formula.length}.`,
    );
  const fault = syntaxFault(formula) ?? faultOfFormula(formula);
  if (fault) throw invalidArgument(`Excel does not accept the formula ${formula.slice(0, 80)}: ${fault}.`);
  return formula;
}

/** Why Excel cannot read a formula. */
export function syntaxFault(formula: string): string | undefined {
  if ((formula.match(/"/g) ?? []).length % 2) return "a text does not end";
  // Texts and quoted sheet names may hold anything.
  const bare = formula.replace(/"(?:[^"]|"")*"/g, '""').replace(/'(?:[^']|'')*'(?=!)/g, "s");
  if (bare.includes("'")) return "a sheet's name does not end";
  const depth: string[] = [];
  for (const sign of bare) {
    if (sign === "(" || sign === "{") depth.push(sign);
    if (sign === ")" && depth.pop() !== "(") return "a bracket closes that was not opened";
    if (sign === "}" && depth.pop() !== "{") return "a bracket closes that was not opened";
    if (sign === ";" && !depth.includes("{")) return "arguments stand apart by a comma in en-US";
  }
  if (depth.length > 0) return "a bracket is not closed";
  const inBraces = [...bare.matchAll(/\{([^{}]*)\}/g)].map(([, content]) => content);
  if (inBraces.some((content) => /[A-Za-z]/.test(content.replace(/\b(TRUE|FALSE)\b|\de[+-]?\d|#[A-Z/0!?]+/gi, ""))))
    return "an array in braces holds constants only";
  if (/[+*/^&=<>,(-]$/.test(bare)) return "it ends too soon";
  if (/,,\)|^=[*/^&=<>,)]/.test(bare) && !/,,\)/.test(bare)) return "it begins with an operator";
  return undefined;
}

const LETTERS_OF_FORMATS = /[^0#?.,%/Ee+\-$():;*@_ yYmMdDhHsSaApPgGbB\u00A0€£¥'<>=!^&{}~]/;

/** Refuses a number format in en-US that Excel does not know. */
export function checkedFormat(format: unknown): string {
  if (typeof format !== "string") throw invalidArgument(`A number format is a text, not ${JSON.stringify(format)}.`);
  if (format === "") return "General";
  if (format.length > 255) throw invalidArgument("A number format takes at most 255 characters.");
  if (format.split(";").length > 4) throw invalidArgument(`The number format ${format} has more than four parts.`);
  const bare = format.replace(/"[^"]*"|\\.|_.|\*.|\[[^\]]*\]|General/gi, "").replace(/AM\/PM|A\/P/gi, "");
  if (/["[\]]/.test(bare) || LETTERS_OF_FORMATS.test(bare))
    throw invalidArgument(`Excel does not know the number format ${format}.`);
  // Digits cannot be combined with parts of a date, except fractions of a second.
  if (bare.split(";").some((part) => /[0#?]/.test(part.replace(/s\.0+/g, "")) && /[ymdhs]/i.test(part)))
    throw invalidArgument(`Excel does not know the number format ${format}.`);
  return format;
}
