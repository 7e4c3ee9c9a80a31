/**
 * What the head of a data sheet says of its inputs, sentence by sentence as messages: the screens repeat it in their own
 * language. The texts are those of the formulas in `specification/impossible` and `specification/missing`, in the language of
 * the sheet.
 */
import { listed, say, templateOf, verbatim, type Message, type Value } from "../reduction/message";
import { languageNamed, type SheetLanguage } from "../specification/text/language";
import { wordsOf, type SheetWords } from "../specification/text/words";
import type { TestRecord } from "./record";

/** A sentence of the head, with the first cell that it names. */
export interface HeadSentence {
  readonly kind: "impossible" | "missing" | "running";
  readonly sentence: Message;
  /** The address of the cell, such as "N19". */
  readonly address?: string;
}

type Shape = (...holes: Value[]) => Message;

const LIMITS: readonly Shape[] = [
  (least, most) => say`a number greater than ${least} and not more than ${most}`,
  (least, most) => say`a number not less than ${least} and not more than ${most}`,
  (least) => say`a number greater than ${least}`,
  (least) => say`a number not less than ${least}`,
  (most) => say`a number not more than ${most}`,
  () => say`a number`,
  () => say`the number of a load`,
];

const WORDS: readonly Shape[] = [
  () => say`specific gravity`,
  () => say`diameter`,
  () => say`initial height`,
  () => say`ring mass`,
  () => say`ring + wet soil before`,
  () => say`ring + wet soil after`,
  () => say`ring + dry soil`,
  () => say`Ring + wet soil before`,
  () => say`Ring + wet soil after`,
  () => say`Ring + dry soil`,
  () => say`dial factor`,
  () => say`zero reading`,
  () => say`in-situ stress (for OCR, field curve and quality)`,
];

const THE_RING: Shape = () => say`the ring`;

/** The parts of a sentence that a screen words in its own language. */
const PARTS = [...LIMITS, ...WORDS, THE_RING];
/** The parts of a sentence about an impossible input; it quotes a label that is not English as the sheet has it. */
const partsOfImpossible = ({ language }: SheetWords): readonly Shape[] =>
  language === "en" ? PARTS : [...LIMITS, THE_RING];

const MISSING_ITEMS: readonly Shape[] = [
  (cell) => say`stresses of the loads, from ${cell}`,
  (load, row) => say`readings of load ${load}, in row ${row} and below`,
  (load, cell) => say`stress of load ${load}, ${cell}`,
  (words, cell) => say`${words}, ${cell}`,
];

const IMPOSSIBLE: readonly Shape[] = [
  (label, cell) => say`${label}, ${cell}: choose a word of its list.`,
  (label, cell, limits) => say`${label}, ${cell}: enter ${limits}.`,
  (label, cell, than, other) =>
    say`${label}, ${cell}, must be heavier than ${than}, ${other}, or as heavy: correct one of them.`,
  (label, cell, than, other) => say`${label}, ${cell}, must be heavier than ${than}, ${other}: correct one of them.`,
  (height, diameter, ring, dry, gravity) =>
    say`The solids alone would fill the ring: correct the height, ${height}, the diameter, ${diameter}, the masses, ${ring} and ${dry}, or the specific gravity, ${gravity}.`,
  (mass, cell, content) => say`The water content by ${mass}, ${cell}, is above ${content} %: correct it.`,
  (load, height, zero, factor, sense) =>
    say`Load ${load} gives no point of the curve: its height at the end is not above the height of solids: correct its last readings, the initial height, ${height}, the zero reading, ${zero}, the dial factor, ${factor}, or the sense of the readings, ${sense}.`,
  (load, table, stress, seating) =>
    say`Load ${load} gives no point of the curve: the table of deflection, from ${table} on, does not reach its stress, ${stress}, or the seating stress, ${seating}: correct the stress, or extend the table.`,
  (stresses, remark) => say`Loads, from ${stresses} on: ${remark}.`,
];

const RUNNING: readonly Shape[] = [() => say`The loads so far give no virgin line yet: read further loads.`];

const NUMBER = /^-?\d+(?:[.,]\d+)?$/;
const ADDRESS = /\b[A-Z]{1,3}[1-9]\d*\b/;

/** A pattern that matches this text alone. */
export const literally = (text: string): string => text.replace(/[.*+?^${}()|[\]\\]/g, "\\$&");

/** The holes of a template, {0}, {1}, ... */
const HOLE = /\{(\d)\}/;

/** The message of the first shape that the text has; its parts may have a shape of their own. */
function read(
  text: string,
  shapes: readonly Shape[],
  words: SheetWords,
  parts: readonly Shape[] = PARTS,
): Message | undefined {
  for (const shape of shapes) {
    const holes = Array.from({ length: shape.length }, () => verbatim(""));
    const english = templateOf(shape(...holes));
    // The texts between the holes, and the numbers of the holes, in turn.
    const pieces = (words.head[english] ?? english).split(HOLE);
    const pattern = pieces.map((part, index) => (index % 2 === 1 ? "(.+)" : literally(part))).join("");
    const found = new RegExp(`^${pattern}$`).exec(text)?.slice(1);
    if (!found) continue;
    const order = pieces.filter((_, index) => index % 2 === 1).map(Number);
    return shape(...holes.map((_, hole) => valueOf(found[order.indexOf(hole)] ?? "", words, parts)));
  }
  return undefined;
}

const valueOf = (text: string, words: SheetWords, parts: readonly Shape[]): Value =>
  NUMBER.test(text) ? { digits: text.replace(",", ".") } : (read(text, parts, words, parts) ?? verbatim(text));

/** A sentence that no shape has, such as one of a later version of the sheet, stays as the sheet shows it. */
const asMessage = (text: string, shapes: readonly Shape[], words: SheetWords, parts?: readonly Shape[]): Message =>
  read(text, shapes, words, parts) ?? say`${verbatim(text)}`;

const MISSING = "Missing: ";

/**
 * Between two sentences, and, in sheets in which the list of what is missing ends with a semicolon, before a sentence
 * that follows on the list.
 */
const BETWEEN = /(?<=\.) (?=\S|$)|(?<=; )(?=The |Die )/;

/**
 * The sentences of a text as the head of the sheet shows it, in the language of the sheet; none for a blank text.
 */
export function headSentences(text: string, language: SheetLanguage = "en"): HeadSentence[] {
  const words = wordsOf(language);
  const missing = words.head[MISSING] ?? MISSING;
  const sentences = text.split(BETWEEN).map((one) => one.trim());
  return sentences.filter(Boolean).map((one): HeadSentence => {
    const address = ADDRESS.exec(one)?.[0];
    if (one.startsWith(missing)) {
      const items = one
        .slice(missing.length)
        .split("; ")
        .map((item) => item.replace(/[;.]$/, "").trim());
      const sentence = say`Missing: ${listed(
        items.filter(Boolean).map((item) => asMessage(item, MISSING_ITEMS, words)),
        "; ",
      )}.`;
      return { kind: "missing", sentence, address };
    }
    const running = read(one, RUNNING, words);
    return running
      ? { kind: "running", sentence: running }
      : { kind: "impossible", sentence: asMessage(one, IMPOSSIBLE, words, partsOfImpossible(words)), address };
  });
}

/** What the head of a sheet says; nothing if the sheet is older than this line. */
export const headOf = ({ remarks, sheetLanguage }: Pick<TestRecord, "remarks" | "sheetLanguage">): HeadSentence[] =>
  headSentences(remarks.missing_in_full ?? "", languageNamed(sheetLanguage));

/** The impossible inputs, as the head of the sheet names them. */
export const impossibleInputs = (record: Pick<TestRecord, "remarks" | "sheetLanguage">): HeadSentence[] =>
  headOf(record).filter(({ kind }) => kind === "impossible");
