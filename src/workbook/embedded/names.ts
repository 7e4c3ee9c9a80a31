/**
 * Names. The names of the port are local to a sheet, the names of the engine belong to the whole workbook. The first
 * sheet has its names unchanged; each later sheet gets one suffix for all its names ("ring_mass_2"). A name that the
 * engine would read as a cell ("t50") is changed as in Excel ("t50_").
 */

import { tokenize } from "@odoo/o-spreadsheet";
import { localName } from "../rules/names";

export type Rename = (name: string) => string;

/** The names of a sheet in the engine: local name to engine name. */
export type LocalNames = ReadonlyMap<string, string>;

/** The engine name of a sheet's name; upper and lower case do not matter. */
export function calledIn(names: LocalNames | undefined, name: string): string | undefined {
  const wanted = name.toLowerCase();
  return names?.get(name) ?? [...(names ?? [])].find(([local]) => local.toLowerCase() === wanted)?.[1];
}

/** Engine names for the local names of a sheet, with the first suffix that makes all of them free. */
export function freeNames(local: readonly string[], taken: readonly string[]): Map<string, string> {
  const used = new Set(taken.map((name) => name.toLowerCase()));
  for (let count = 1; ; count++) {
    const called = local.map((name) => [name, count === 1 ? localName(name) : `${name}_${count}`] as const);
    if (called.every(([, free]) => !used.has(free.toLowerCase()))) return new Map(called);
  }
}

const NAMED = /"(?:[^"]|"")*"|'(?:[^']|'')*'|\{([A-Za-z_][\w.]*)\}/g;

/**
 * Replaces each `{name}` outside texts and sheet names by the engine name; refuses a name that the plan does not
 * define.
 */
export function resolveNames(formula: string, names: LocalNames): string {
  return formula.replace(NAMED, (whole, name: string | undefined) => {
    if (name === undefined) return whole;
    const called = names.get(name);
    if (called === undefined) throw new Error(`the formula ${formula} refers to the unknown name ${name}`);
    return called;
  });
}

/** A formula in pieces: those at odd places are bare names. */
type Pieces = readonly string[];

function parted(formula: string): Pieces {
  const tokens = tokenize(`=${formula}`).slice(1);
  const pieces = [""];
  for (const [at, { type, value }] of tokens.entries())
    if (type === "SYMBOL" && tokens[at + 1]?.type !== "LEFT_PAREN") pieces.push(value, "");
    else pieces.push(`${pieces.pop()!}${value}`);
  return pieces;
}

/** Formulas that were parted: the data sheets of a file have the same ones, and parting them took a twentieth of the time to open a file. */
const known = new Map<string, Pieces>();
/** At most so many characters of formulas; then the list begins anew. */
const MOST_TEXT = 1_000_000;
let textKept = 0;

function piecesOf(formula: string): Pieces {
  const before = known.get(formula);
  if (before) return before;
  if (textKept + formula.length > MOST_TEXT) {
    known.clear();
    textKept = 0;
  }
  const pieces = parted(formula);
  known.set(formula, pieces);
  textKept += formula.length;
  return pieces;
}

/** The formula (without "=") with each bare name replaced by `rename`; functions, references and texts stay. */
export const renameIn = (formula: string, rename: Rename): string =>
  piecesOf(formula)
    .map((piece, at) => (at % 2 === 1 ? rename(piece) : piece))
    .join("");
