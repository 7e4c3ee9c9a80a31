/**
 * The parts of a reviewer's question: one row of data with its limits, and an answer that shows the two numbers that
 * were compared, never only a colour.
 */
import type { AdoptedValue } from "../record/adopted";
import { lengthOfReadings } from "../record/reading-unit";
import { cellNamed, RECORD_UNITS, type TestRecord } from "../record/record";
import {
  say,
  listWord,
  verbatim,
  digits,
  asTyped,
  inRuns,
  joined,
  english,
  type Digits,
  type Message,
} from "../reduction/message";
import { firstOf } from "../reduction/numeric/lists";
import type { Outcome } from "../reduction/outcome";
import { convert } from "../reduction/units";
import { unitCellOf } from "../specification/measures";
import { reduced, type Reduced } from "../record/reduced-test";

export type Severity = "stop" | "explain" | "note";
/** "pass": as it should be. "stop", "explain", "note": what the reviewer must do. */
export type Status = "pass" | Severity | "cannot be asked";

/** A number for display: its name, value and unit. */
export interface Figure {
  readonly what: Message;
  readonly value: number;
  readonly unit: string;
  /** The value in a sentence, where its significant digits do not say how finely it was read. */
  readonly inWords?: Digits;
}

export interface Answer {
  readonly status: Status;
  /** For a pass: the used share of the allowed range, 1 at the limit. Used to choose among loads. */
  readonly used?: number;
  /** The number found, and the number compared with it: another number of the test, or the limit. */
  readonly compared?: readonly [found: Figure, against: Figure];
  /** The sentence names its loads and cells as values: see `namedIn`. */
  readonly sentence: Message;
  /** The row of the load's times and readings that the sentence is about, counted from 1. */
  readonly row?: number;
}

/** Limits that a firm has changed, by "Q05.explain". */
export type Thresholds = Readonly<Record<string, number>>;

/** A question in words. */
export interface Question {
  /** The question in plain words; "yes" means that all is well. */
  readonly question: Message;
  /** Names of the cells that the question looks at; a column stands for the load that the answer names. */
  readonly about: readonly string[];
  /** The gravest answer that the question can give. */
  readonly severity: Severity;
  /** The standard or paper behind the question, or "common practice". */
  readonly basis: Message;
  /** The unit of each limit; "" for a pure number. */
  readonly units?: Readonly<Record<string, string>>;
}

/** How a question is answered. */
export interface Answering {
  readonly id: string;
  readonly limits: Readonly<Record<string, number>>;
  /** Answers the question from one sheet. */
  evaluate(record: TestRecord, thresholds?: Thresholds): Answer;
}

/** Answers a question from a record, what it reduces to, and the limits. */
type Asking<L extends string> = (record: TestRecord, reduced: Reduced, limits: Readonly<Record<L, number>>) => Answer;

/** Makes a row of the table. Its default limits apply unless a firm has changed them. */
export function check<const L extends Readonly<Record<string, number>>>(
  id: string,
  usual: L,
  evaluate: Asking<keyof L & string>,
): Answering {
  return {
    id,
    limits: usual,
    evaluate(record, thresholds = {}) {
      // Object.fromEntries returns keys of type string; these keys are the names of the limits of the row.
      const limits = Object.fromEntries(
        Object.entries(usual).map(([name, value]) => [name, thresholds[`${id}.${name}`] ?? value]),
      ) as Record<keyof L & string, number>;
      return evaluate(record, reduced(record), limits);
    },
  };
}

export const COMMON = say`common practice`;

export const cannotAsk = (reason: Message): Answer => ({ status: "cannot be asked", sentence: reason });

/** The answer to an outcome with a value; for a refusal, why the question cannot be asked. */
export const ask = <T>(outcome: Outcome<T>, answer: (value: T) => Answer): Answer =>
  outcome.ok ? answer(outcome.value) : cannotAsk(outcome.reason);

/** The same for two outcomes. */
export const pair = <A, B>(a: Outcome<A>, b: Outcome<B>, answer: (a: A, b: B) => Answer): Answer =>
  ask(a, (first) => ask(b, (second) => answer(first, second)));

// --- Figures -------------------------------------------------------------------------------------------------------

/**
 * How a number is shown. A number with a quantity comes in the unit of the record and is shown in the unit of the
 * sheet.
 */
export type Kind = "percent" | "ratio" | "number" | "mass" | "minutes" | "celsius" | "divisions" | Shown;
type Shown = "length" | "stress" | "cv" | "density" | "conductivity";

const PLAIN = {
  percent: "%",
  ratio: "",
  number: "",
  mass: "g",
  minutes: "min",
  celsius: "C",
  divisions: "div",
} as const;
/** Measures that are shown in the unit of the sheet. */
const CONVERTED: readonly string[] = ["length", "stress", "cv", "density", "conductivity"] satisfies Shown[];
const isShown = (kind: Kind): kind is Shown => CONVERTED.includes(kind);

/** A number of the record as a figure in the unit of its sheet. */
export function figure(record: TestRecord, what: Message, value: number, kind: Kind): Figure {
  const length = kind === "divisions" ? lengthOfReadings(record) : undefined;
  if (length !== undefined) return { what, value, unit: length, inWords: digits(value, READ) };
  if (!isShown(kind)) return { what, value: kind === "percent" ? 100 * value : value, unit: PLAIN[kind] };
  const { quantity, to } = RECORD_UNITS[kind];
  const cell = unitCellOf(kind);
  const unit = (cell && record.words[cell]) ?? to;
  return { what, value: convert(value, quantity, to, unit), unit };
}

/** Significant digits of a figure; a reading is shown as it was read, and has up to 7. */
const SHOWN = 4;
const READ = 7;

/** "99.52 %" */
export function shown({ value, unit, inWords }: Figure): Message {
  const isReading = unit === PLAIN.divisions;
  const number = inWords ?? digits(value, isReading ? READ : SHOWN);
  return unit ? say`${number} ${isReading ? say`div` : listWord(unit)}` : say`${number}`;
}

// --- Ways of comparing ---------------------------------------------------------------------------------------------

const LEVELS = ["stop", "explain", "note"] as const;

/** The ends of the range in which a number passes at each level; either end may be open. */
type Ends = Readonly<Partial<Record<`${Severity}_${"below" | "above"}`, number>>>;

const endsAt = (level: Severity, ends: Ends) => [ends[`${level}_below`], ends[`${level}_above`]] as const;

/**
 * Compares a number with ranges, the gravest level first. `remedy` ends the sentence of a number that does not pass.
 */
export function within(
  record: TestRecord,
  what: Message,
  value: number,
  kind: Kind,
  ends: Ends,
  remedy: Message,
): Answer {
  const found = figure(record, what, value, kind);
  for (const level of LEVELS) {
    const [low, high] = endsAt(level, ends);
    const isBelow = low !== undefined && value < low;
    const limit = isBelow ? low : high !== undefined && value > high ? high : undefined;
    if (limit === undefined) continue;
    const against = figure(record, say`limit`, limit, kind);
    const sentence = isBelow
      ? say`${what} is ${shown(found)}, below ${shown(against)}: ${remedy}`
      : say`${what} is ${shown(found)}, above ${shown(against)}: ${remedy}`;
    return { status: level, compared: [found, against], sentence };
  }
  const asked = (["explain", "stop"] as const).find((level) => endsAt(level, ends).some((end) => end !== undefined));
  const [low, high] = endsAt(asked ?? "note", ends);
  const limits = [low, high].flatMap((end) => (end === undefined ? [] : [figure(record, say`limit`, end, kind)]));
  const nearest = limits.reduce((best, end) =>
    Math.abs(end.value - found.value) < Math.abs(best.value - found.value) ? end : best,
  );
  const [end, other] = [firstOf(limits), limits[1]];
  const range = other
    ? say`within ${shown(end)} to ${shown(other)}`
    : low === undefined
      ? say`not above ${shown(end)}`
      : say`not below ${shown(end)}`;
  const room = Math.abs(found.value - nearest.value) / Math.max(Math.abs(nearest.value), Number.MIN_VALUE);
  const used = 1 / (1 + room);
  return { status: "pass", used, compared: [found, nearest], sentence: say`${what} is ${shown(found)}, ${range}` };
}

/**
 * Compares two numbers that should agree. The limits are limits of `difference`, which is shown in its own kind; `of`
 * says what a percentage is a part of, where it is not a part of the second number.
 */
export function agree(
  record: TestRecord,
  [a, b]: readonly [Figure, Figure],
  difference: { readonly value: number; readonly kind: Kind; readonly of?: Message },
  limits: { readonly explain?: number; readonly stop?: number },
  remedy: Message,
): Answer {
  const size = figure(record, say`difference`, Math.abs(difference.value), difference.kind);
  const level = (["stop", "explain"] as const).find(
    (one) => limits[one] !== undefined && Math.abs(difference.value) > limits[one],
  );
  const limit = limits[level ?? (limits.explain === undefined ? "stop" : "explain")]!;
  const most = shown(figure(record, say`limit`, limit, difference.kind));
  const by = difference.of ? say`${shown(size)} ${difference.of}` : shown(size);
  const pair = say`${a.what} is ${shown(a)}, ${b.what} ${shown(b)}: they differ by ${by}`;
  return level
    ? { status: level, compared: [a, b], sentence: say`${pair}, more than ${most}; ${remedy}` }
    : {
        status: "pass",
        used: Math.abs(difference.value) / limit,
        compared: [a, b],
        sentence: say`${pair}, not more than ${most}`,
      };
}

/** A value that a person adopted: within the range of the test it passes, and outside it with a reason, whose cell is named. */
export const adoptedAnswer = (
  sentence: Message,
  { value, reason }: AdoptedValue,
  [least, most]: readonly [number, number],
  reasonCell: string,
): Answer =>
  value >= least && value <= most
    ? { status: "pass", sentence }
    : reason
      ? { status: "pass", sentence: say`${sentence}; the reason: ${verbatim(reason)}` }
      : { status: "explain", sentence: say`${sentence}: give the reason in ${cellNamed(reasonCell)}` };

const GRAVITY: readonly Status[] = ["stop", "explain", "note", "pass"];

/** From this many further loads on, an answer names them by their numbers alone. */
const MANY = 3;

/**
 * One answer for several loads: the gravest, of the first load that has it, followed by the other loads that are as
 * grave. If all loads pass, the one nearest to its limit.
 */
export function gravest(
  cases: readonly { readonly load: Message; readonly answer: Answer }[],
  nothing = asTyped(""),
): Answer {
  const asked = cases.filter(({ answer }) => answer.status !== "cannot be asked");
  if (asked.length === 0) return cases[0]?.answer ?? cannotAsk(nothing);
  const status = GRAVITY.find((one) => asked.some(({ answer }) => answer.status === one))!;
  const same = asked.filter(({ answer }) => answer.status === status);
  if (status === "pass") {
    const nearest = same.reduce((best, one) => ((one.answer.used ?? 0) > (best.answer.used ?? 0) ? one : best));
    return { ...nearest.answer, sentence: say`${nearest.load}: ${nearest.answer.sentence}` };
  }
  const first = firstOf(same);
  const others = same.slice(1);
  const numbers = others.flatMap(({ load }) => load.load ?? []);
  const areManyLoads = others.length >= MANY && new Set(numbers).size === others.length;
  const more = areManyLoads
    ? [say`also loads ${inRuns(numbers)}`]
    : others.map(({ load, answer }) => (english(load) === english(first.load) ? answer.sentence : say`also ${load}`));
  return { ...first.answer, sentence: joined([say`${first.load}: ${first.answer.sentence}`, ...more]) };
}
