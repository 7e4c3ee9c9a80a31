/**
 * A sentence as a value: a template and the values for its places. `english` puts it into words for cells and reports;
 * the pane puts it into its own language, from a catalogue whose keys are the templates.
 */
import { nth } from "./numeric/lists";
import { runsOf } from "./numeric/runs";

/** A number as the sentence shows it, in digits with a decimal point. */
export interface Digits {
  readonly digits: string;
}

/**
 * Text that every language repeats unchanged: a unit, a symbol, a date, the name of a cell or the content of a cell.
 */
export interface Verbatim {
  readonly verbatim: string;
  /** The name of the cell of the data sheet that the text stands for. */
  readonly cell?: string;
  /** What people call that cell, if the text has its name for formulas as well. */
  readonly label?: string;
  /** True if the text is the English word of a list: a sheet in another language has its own. */
  readonly isListWord?: true;
}

/** Several values, with a punctuation mark between them. */
export interface Listed {
  readonly listed: readonly Value[];
  readonly between: ", " | "; ";
}

/** A bare number is shown with all its digits. */
export type Value = number | Digits | Verbatim | Listed | Message;

export interface Message {
  /** The English text before, between and after the values. */
  readonly said: readonly string[];
  readonly values: readonly Value[];
  /** For a refusal that begins with the name of the method: the text after that name. */
  readonly cause?: Message;
  /** Number of the load that the message names. */
  readonly load?: number;
  /** The row of the compression curve that the message is about, counted from 1. */
  readonly row?: number;
}

/**
 * Makes a message from a template and its values.
 * @example say`row ${2} is left out` // "row 2 is left out"
 */
export const say = (said: readonly string[], ...values: Value[]): Message => ({ said, values });

/**
 * A text that every language repeats unchanged.
 * @example say`the stress is in ${verbatim("kPa")}` // "the stress is in kPa"
 */
export const verbatim = (text: string): Verbatim => ({ verbatim: text });

/**
 * A word of a list of the data sheet, by its English word.
 * @example say`take the mark "${listWord("wetting")}" off` // 'take the mark "wetting" off'
 */
export const listWord = (text: string): Verbatim => ({ verbatim: text, isListWord: true });

/**
 * A number to the given count of significant digits, without trailing zeros.
 * @example digits(0.0123456, 3) // "0.0123"
 */
export const digits = (value: number, significant: number): Digits => ({
  digits: String(Number(value.toPrecision(significant))),
});

/**
 * A number to the given count of decimals.
 * @example fixed(1.5, 2) // "1.50"
 */
export const fixed = (value: number, decimals: number): Digits => ({ digits: value.toFixed(decimals) });

/**
 * Several values in one place of a message.
 * @example listed([2, 5, 7]) // "2, 5, 7"
 */
export const listed = (values: readonly Value[], between: Listed["between"] = ", "): Listed => ({
  listed: values,
  between,
});

/**
 * A text without values, such as a typed word, as a message that no language translates.
 * @example asTyped("blue clay") // "blue clay"
 */
export const asTyped = (text: string): Message => say`${verbatim(text)}`;

/**
 * One message with the given messages one after the other.
 * @example joined([say`row 2 is left out`, say`row 5 is left out`]) // "row 2 is left out; row 5 is left out"
 */
export const joined = (messages: readonly Message[]): Message => say`${listed(messages, "; ")}`;

/**
 * The messages that `joined` made one message of; any other message alone.
 * @example partsOf(joined([say`row 2 is left out`, say`row 5 is left out`])) // ["row 2 is left out", "row 5 is left out"]
 */
export function partsOf(message: Message): readonly Message[] {
  const [all] = message.values;
  const isJoined = !message.said.join("") && typeof all === "object" && "listed" in all;
  // `joined` lists messages alone.
  return isJoined ? (all.listed as readonly Message[]) : [message];
}

/**
 * The template of a message, the key of the catalogues: "row {0} is left out".
 * @example templateOf(say`row ${2} is left out`) // "row {0} is left out"
 */
export const templateOf = ({ said }: Pick<Message, "said">): string =>
  said.reduce((text, part, index) => `${text}{${index - 1}}${part}`);

/**
 * The message in English.
 * @example english(say`row ${2} is left out`) // "row 2 is left out"
 */
export function english(value: Value): string {
  if (typeof value === "number") return String(value);
  if ("digits" in value) return value.digits;
  if ("verbatim" in value) return value.verbatim;
  if ("listed" in value) return value.listed.map(english).join(value.between);
  return value.said.reduce((text, part, index) => text + english(nth(value.values, index - 1)) + part);
}

/** A table of messages as texts in English, by the same names. Object.fromEntries types the names as strings. */
export const englishOf = <N extends string>(table: Readonly<Record<N, Message>>): Readonly<Record<N, string>> =>
  Object.fromEntries(Object.entries<Message>(table).map(([name, message]) => [name, english(message)])) as Record<
    N,
    string
  >;

/**
 * The messages of a list, each once.
 * @example distinct([say`low`, say`high`, say`low`]) // ["low", "high"]
 */
export function distinct(messages: readonly Message[]): Message[] {
  const texts = new Set<string>();
  return messages.filter((message) => {
    const text = english(message);
    return !texts.has(text) && texts.add(text);
  });
}

/** The messages of a list that another list does not hold. */
export function without(messages: readonly Message[], others: readonly Message[]): Message[] {
  const texts = new Set(others.map(english));
  return messages.filter((message) => !texts.has(english(message)));
}

/**
 * The message with another message in the place of one of its parts, wherever the part stands in it. The part is found
 * as the value that was put in, not by its text.
 */
export function replaced(message: Message, part: Message, by: Message): Message {
  const inside = (value: Value): Value => {
    if (value === part) return by;
    return typeof value === "object" && "said" in value ? replaced(value, part, by) : value;
  };
  const values = message.values.map(inside);
  // A message without the part stays the same value, so that another part can still be found in it.
  if (values.every((value, index) => value === message.values[index])) return message;
  return message.cause ? { ...message, values, cause: replaced(message.cause, part, by) } : { ...message, values };
}

/**
 * The cells and the loads that a message names, each once, in the order of its values.
 * @example namedIn({ ...say`load 3: row 2 is left out`, load: 3 }) // { cells: [], loads: [3] }
 */
export function namedIn(message: Message): { readonly cells: readonly string[]; readonly loads: readonly number[] } {
  const cells = new Set<string>();
  const loads = new Set<number>();
  const look = (value: Value): void => {
    if (typeof value === "number" || "digits" in value) return;
    if ("verbatim" in value) {
      if (value.cell !== undefined) cells.add(value.cell);
    } else if ("listed" in value) value.listed.forEach(look);
    else {
      if (value.load !== undefined) loads.add(value.load);
      value.values.forEach(look);
    }
  };
  look(message);
  return { cells: [...cells], loads: [...loads] };
}

/**
 * Whole numbers in rising order for a sentence, three neighbours or more as a run: "1, 2, 5 to 9".
 * @example inRuns([1, 2, 5, 6, 7]) // "1, 2, 5 to 7"
 */
export const inRuns = (numbers: readonly number[]): Listed =>
  listed(
    runsOf(numbers).flatMap<number | Message>(([from, to]) =>
      to > from + 1 ? [say`${from} to ${to}`] : to > from ? [from, to] : [from],
    ),
  );
