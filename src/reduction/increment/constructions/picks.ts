/**
 * Picks by hand: values that replace the automatic choices of the constructions. Readings in the reading unit, times in
 * minutes.
 */
import { englishOf, listed, listWord, say, type Message, type Verbatim } from "../../message";
import { badInput, given, type Outcome } from "../../outcome";
import { CURVE_PICK_NAMES, CURVE_PICK_SAID, CURVE_PICK_WORDS, OF_CURVE } from "../../curve/picks";

export const PICK_NAMES = [
  "d0",
  "d100",
  "d90",
  "straight_from",
  "straight_to",
  "tail_from",
  "tail_to",
  "pair_at",
  "tangent_from",
  "tangent_to",
] as const;
export type PickName = (typeof PICK_NAMES)[number];
export type Picks = Readonly<Partial<Record<PickName, number>>>;

/** The names of the picks as messages. */
const PICK_SAID: Readonly<Record<PickName, Message>> = {
  d0: say`d0`,
  d100: say`d100`,
  d90: say`d90`,
  straight_from: say`straight part from`,
  straight_to: say`straight part to`,
  tail_from: say`tail from`,
  tail_to: say`tail to`,
  pair_at: say`4:1 pair at`,
  tangent_from: say`tangent from`,
  tangent_to: say`tangent to`,
};

/**
 * The names of the picks in words for people. Code that reads a table of picks accepts both these words and the short
 * names.
 */
export const PICK_WORDS = englishOf(PICK_SAID);

/** The picks of loads and of the compression curve. */
const ALL_WORDS: Readonly<Record<string, string>> = { ...PICK_WORDS, ...CURVE_PICK_WORDS };
const ALL_SAID: ReadonlyMap<string, Message> = new Map(Object.entries({ ...PICK_SAID, ...CURVE_PICK_SAID }));

/**
 * The words of a pick as a message, by its short name; any other name is a word of the list of picks ("cv by"), or a text
 * that is returned unchanged.
 * @example pickSaid("tangent_from") // "tangent from"
 * @example pickSaid("virgin_to") // "virgin to"
 * @example pickSaid("constructor") // "constructor"
 */
export const pickSaid = (of: string): Message | Verbatim => ALL_SAID.get(of) ?? listWord(of);

/**
 * The short name of a pick from its words; any other text is returned in lower case.
 * @example pickNamed("Tangent from") // "tangent_from"
 * @example pickNamed("Greatest curvature") // "greatest_curvature"
 */
export function pickNamed(text: string): string {
  const word = text.trim().toLowerCase();
  return [...PICK_NAMES, ...CURVE_PICK_NAMES].find((name) => ALL_WORDS[name] === word) ?? word;
}

/** The remark that names the picks by hand among the names that a method uses; none if nothing was picked. */
export function pickRemarks<N extends string>(
  picks: Readonly<Partial<Record<N, number>>>,
  names: readonly N[],
): Message[] {
  const used = names.filter((name) => picks[name] !== undefined);
  return used.length
    ? [say`picked by hand: ${listed(used.map((name) => say`${pickSaid(name)} = ${picks[name] ?? 0}`))}`]
    : [];
}

const SPANS = { straight: say`straight span`, tail: say`tail span`, tangent: say`tangent span` };

/** Refuses spans of time that run backwards, and times before the load. */
export function checkPicks(picks: Picks): Outcome<Picks> {
  if ((picks.pair_at ?? 0) < 0) return badInput(say`the picked 4:1 pair has a negative time: give minutes`);
  for (const span of ["straight", "tail", "tangent"] as const) {
    const from = picks[`${span}_from`];
    const to = picks[`${span}_to`];
    if ((from ?? 0) < 0 || (to ?? 0) < 0)
      return badInput(say`the picked ${SPANS[span]} has a negative time: give minutes`);
    if (from !== undefined && to !== undefined && from >= to)
      return badInput(
        say`the picked ${PICK_SAID[`${span}_from`]} (${from} min) must come before ${PICK_SAID[`${span}_to`]} (${to} min)`,
      );
  }
  return given(picks);
}

/** The pick whose value is one of TIME_METHODS: the method whose d100 and cv a load reports. */
export const METHOD_PICK = "cv by";
export const TIME_METHODS = ["log time", "root time"] as const;
export type TimeMethod = (typeof TIME_METHODS)[number];
/** The pick whose value is one of PROCEDURES: how a person wants the constructions of a load drawn. */
export const PROCEDURE_PICK = "procedure";
/** The value that cancels an earlier pick. */
export const AUTOMATIC = "automatic";

/** What a pick is of: a load by its number, or the compression curve. */
export type PickedThing = number | typeof OF_CURVE;

/** One row of a table of picks by hand: the value that a load, or the curve, gets in place of the automatic value. */
export interface PickRow {
  readonly load?: PickedThing;
  readonly of?: string;
  readonly after?: number | string;
}

const word = (value: number | string | undefined): string =>
  String(value ?? "")
    .trim()
    .toLowerCase();

/**
 * The rows that count for a load or the curve, by the short name of the pick: the last row of each pick. A row that says "automatic"
 * cancels the earlier rows of its pick; a row without a value (blank or 0) is unfinished and does not count.
 * @example [...standingRows([{ load: 3, of: "d0", after: 12 }, { load: 3, of: "d0", after: 13 }], 3).values()] // [{ load: 3, of: "d0",
 *   after: 13 }]
 */
export function standingRows<T extends PickRow>(rows: readonly T[], load: PickedThing): Map<string, T> {
  const standing = new Map<string, T>();
  for (const row of rows) {
    const [of, after] = [pickNamed(row.of ?? ""), word(row.after)];
    if (row.load !== load || of === "" || of === "0" || after === "" || after === "0") continue;
    standing.delete(of);
    if (after !== AUTOMATIC) standing.set(of, row);
  }
  return standing;
}
