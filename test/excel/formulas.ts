/**
 * What Excel refuses in a formula beside its syntax: limits of "Excel specifications and limits" (Microsoft), and the
 * number of arguments of Excel's own functions, by the class Functions of the Office.js typings.
 */
import { boxOf } from "./book/address";
import { excelTypings } from "./typings";

/** Characters of a formula, and bytes of it as Excel keeps it. */
export const LONGEST_FORMULA = 8_192;
const MOST_BYTES = 16_384;
/** Characters of a text between quotes in a formula (Microsoft, "Text values in formulas are limited to 255 characters"). */
const LONGEST_TEXT = 255;
const MOST_ARGUMENTS = 255;
const DEEPEST = 64;

/** Functions that the typings do not have, or give fewer arguments than Excel needs (Microsoft's page of each). */
const OTHERS: Readonly<Record<string, readonly [least: number, most: number]>> = {
  ADDRESS: [2, 5],
  CELL: [1, 2],
  COLUMN: [0, 1],
  IF: [2, 3],
  IFERROR: [2, 2],
  INDEX: [2, 4],
  INDIRECT: [1, 2],
  OFFSET: [3, 5],
  ROW: [0, 1],
  SUMPRODUCT: [1, 255],
  TRANSPOSE: [1, 1],
};

let counts: Map<string, readonly [number, number]> | undefined;

/** The least and the most arguments of each function, by its name in capital letters. */
function countOf(name: string): readonly [number, number] | undefined {
  counts ??= new Map([
    ...Object.entries(excelTypings().shapes.Functions.members).flatMap(
      ([member, { calls }]): [string, readonly [number, number]][] =>
        calls
          ? [
              [
                member.replaceAll("_", ".").toUpperCase(),
                [
                  calls[0].parameters.filter(({ isOptional }) => !isOptional).length,
                  calls[0].parameters.some(({ isRest }) => isRest) ? MOST_ARGUMENTS : calls[0].parameters.length,
                ],
              ],
            ]
          : [],
    ),
    ...Object.entries(OTHERS),
  ]);
  return counts.get(name);
}

const TEXTS = /"((?:[^"]|"")*)"/g;
/** A function with its bracket, a bracket, a comma, or any other sign. */
const SIGNS = /([\p{L}_][\p{L}\p{N}_.]*)?\(|\)|,|[^\s]/gu;

interface Call {
  /** Undefined for a bracket that groups. */
  readonly name: string | undefined;
  commas: number;
  isEmpty: boolean;
}

function faultOfCall({ name, commas, isEmpty }: Call): string | undefined {
  if (name === undefined) return undefined;
  const given = isEmpty && commas === 0 ? 0 : commas + 1;
  if (given > MOST_ARGUMENTS) return `${name} has ${given} arguments, and takes ${MOST_ARGUMENTS}`;
  const [least, most] = countOf(name.toUpperCase().replace(/^_XLFN\.(_XLWS\.)?/, "")) ?? [0, MOST_ARGUMENTS];
  return given < least || given > most ? `${name} has ${given} arguments, and takes ${least} to ${most}` : undefined;
}

function faultOfCalls(bare: string): string | undefined {
  const open: Call[] = [];
  for (const [sign, name] of bare.matchAll(SIGNS)) {
    const within = open.at(-1);
    if (sign === ")") {
      const fault = within && faultOfCall(within);
      if (fault) return fault;
      open.pop();
    } else if (sign === ",") {
      if (within) within.commas += 1;
    } else {
      if (within) within.isEmpty = false;
      if (!sign.endsWith("(")) continue;
      open.push({ name, commas: 0, isEmpty: true });
      const depth = open.filter((one) => one.name !== undefined).length;
      if (depth > DEEPEST) return `${depth} functions stand within one another, and ${DEEPEST} may`;
    }
  }
  return undefined;
}

/** The parts of a formula, and the bytes of each as Excel keeps it ([MS-XLSB], 2.5.97, from memory). */
const PARTS: readonly (readonly [pattern: RegExp, bytes: number])[] = [
  // With a jump over each branch.
  [/(?<![\p{L}\p{N}_.])(?:IF|IFERROR|CHOOSE)\(/giu, 20],
  // A function of an add-in is a name that is called.
  [/(?:_xldudf_|CLAY\.)[\p{L}\p{N}_.]*\(/giu, 11],
  [/[\p{L}_][\p{L}\p{N}_.]*\(/giu, 4],
  [/(?:[\p{L}\p{N}_.]+!)?\$?\b[A-Z]{1,3}\$?\d+:\$?[A-Z]{1,3}\$?\d+\b/giu, 15],
  [/(?:[\p{L}\p{N}_.]+!)?\$?\b[A-Z]{1,3}\$?\d+\b/giu, 9],
  [/(?:[\p{L}\p{N}_.]+!)?[\p{L}_\\][\p{L}\p{N}_.]*/giu, 7],
  [/\d+\.\d*(?:E[-+]?\d+)?|\d{5,}/giu, 9],
  [/\d+/g, 3],
  [/\s+/g, 4],
  [/[^\s\0]/g, 1],
];

/** The bytes of a formula as Excel keeps it, about: two for each character of a text, and those of each other part. */
function bytesOfFormula(formula: string): number {
  const texts = [...formula.matchAll(TEXTS)].reduce((sum, [, text]) => sum + 3 + 2 * text.length, 0);
  let rest = formula.replace(TEXTS, "\0");
  return PARTS.reduce((sum, [pattern, bytes]) => {
    const found = rest.match(pattern)?.length ?? 0;
    rest = rest.replace(pattern, "\0");
    return sum + found * bytes;
  }, texts);
}

/** An error that ends in "!", or the name of a sheet without apostrophes. */
const BARE_SHEET = /#(?:REF|NULL|VALUE|NUM|DIV\/0)!|(?<![\p{L}\p{N}_.])([\p{L}\p{N}_.]+)!/gu;

/**
 * Names of sheets that need apostrophes: Excel takes a formula without them out of a file (Apache POI pull request 545, EPPlus issue 214). The
 * rules are those of XlsxWriter issue 1078: a digit or a point at the beginning, a cell (BH1), the beginning of a cell in the other style
 * (R1C1, RC12Test); TRUE and FALSE by Apache POI, SheetNameFormatter.
 */
export function faultOfSheets(formula: string): string | undefined {
  const code = formula.replace(/"(?:[^"]|"")*"|'(?:[^']|'')*'(?=!)/g, (part) => (part.startsWith('"') ? '""' : "s"));
  for (const [, name] of code.matchAll(BARE_SHEET))
    if (name !== undefined && (boxOf(name) || /^[\d.]|^(?:r|c|rc|true|false)$|^r\d|^r?c\d/i.test(name)))
      return `the sheet ${name} stands without apostrophes`;
  return undefined;
}

/** Why Excel refuses a formula ("=..." or as in a file); undefined if it takes it. */
export function faultOfFormula(formula: string): string | undefined {
  if (formula.length > LONGEST_FORMULA) return `it has ${formula.length} characters, and ${LONGEST_FORMULA} may`;
  // A name of a sheet in apostrophes may hold a quote, and a text may hold an apostrophe.
  const parts = formula.replace(/"(?:[^"]|"")*"|'(?:[^']|'')*'(?=!)/g, (part) => (part.startsWith('"') ? part : "s"));
  for (const [, text] of parts.matchAll(TEXTS)) {
    const { length } = text.replaceAll('""', '"');
    if (length > LONGEST_TEXT) return `a text between quotes has ${length} characters, and ${LONGEST_TEXT} may`;
  }
  const bytes = bytesOfFormula(parts);
  if (bytes > MOST_BYTES) return `it takes about ${bytes} bytes, and ${MOST_BYTES} may`;
  const ofSheets = faultOfSheets(formula);
  if (ofSheets) return ofSheets;
  return faultOfCalls(parts.replace(TEXTS, '""').replace(/\{[^{}]*\}|\[[^\]]*\]/g, "0"));
}
