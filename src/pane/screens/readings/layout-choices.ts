/**
 * The choices of the person about the columns of a file, which override what the file shows. This module uses no page.
 */
import { finished, offerLayout, type LayoutDraft } from "../../../exchange/logger/offer";
import type { Layout } from "../../../exchange/logger/layout";
import { typedNumber } from "../../ui/typed-number";

/** A layout that was used before, stored under the name of its apparatus. */
export interface Remembered {
  readonly apparatus: string;
  readonly layout: Layout;
}

/** The entries that a person types, as their fields contain them. */
export type TypedKey = "firstLine" | "lever" | "noReading";

export interface LayoutChoices {
  readonly touched: Partial<LayoutDraft>;
  readonly typed: Readonly<Partial<Record<TypedKey, string>>>;
  /** Undefined until the person names one; until then the field shows the frame of the data sheet. */
  readonly apparatus: string | undefined;
}
export const NO_CHOICES: LayoutChoices = { touched: {}, typed: {}, apparatus: undefined };

export type LayoutAction =
  | { readonly do: "set"; readonly change: Partial<LayoutDraft> }
  /** Another delimiter gives other columns: all other choices are dropped. */
  | { readonly do: "delimiter"; readonly delimiter: Layout["delimiter"] }
  | {
      readonly do: "column";
      readonly key: "time" | "reading" | "date" | "load" | "temperature";
      readonly col: number | null;
    }
  | { readonly do: "type"; readonly key: TypedKey; readonly text: string; readonly lines: number }
  | { readonly do: "apparatus"; readonly name: string }
  | { readonly do: "recall"; readonly remembered: Remembered | undefined; readonly lines: readonly string[] };

const NO_LOAD: Partial<LayoutDraft> = { loadKind: "stress", loadUnit: "" };
const LOAD_TO_ASK: Partial<LayoutDraft> = { loadKind: undefined, loadUnit: undefined };

/** The values of a text such as "-9999; 9.9E+37"; undefined if one of them is not a number. */
function numbersTyped(typed: string): number[] | undefined {
  const numbers = typed
    .split(/[;\s]+/)
    .filter(Boolean)
    .map((one) => typedNumber(one) ?? NaN);
  return numbers.every(Number.isFinite) ? numbers : undefined;
}

function typedValue(key: TypedKey, text: string, lines: number): Partial<LayoutDraft> {
  if (key === "noReading") return { noReading: numbersTyped(text) };
  const entered = typedNumber(text) ?? NaN;
  const isSound = key === "lever" ? entered > 0 : Number.isInteger(entered) && entered >= 1 && entered <= lines;
  return { [key]: isSound ? entered : undefined };
}

/**
 * The choices of an earlier file, as far as this file has their columns. The first line of readings is not taken from
 * the earlier file.
 */
function recalled({ layout }: Remembered, lines: readonly string[]): Partial<LayoutDraft> {
  const columns = offerLayout(lines, { ...layout, firstLine: undefined }).columns.length;
  const here = <T extends number | null>(col: T): T | undefined => (col === null || col < columns ? col : undefined);
  const rest: { -readonly [K in keyof Layout]?: Layout[K] } = { ...layout };
  delete rest.firstLine;
  return {
    ...rest,
    time: here(layout.time),
    reading: here(layout.reading),
    date: here(layout.date),
    load: here(layout.load),
  };
}

/** The choices after an action; `draft` is the layout before it. */
export function chosen(choices: LayoutChoices, action: LayoutAction, draft: LayoutDraft): LayoutChoices {
  const set = (change: Partial<LayoutDraft>): LayoutChoices => ({
    ...choices,
    touched: { ...choices.touched, ...change },
  });
  switch (action.do) {
    case "set":
      return set(action.change);
    case "delimiter":
      return { ...choices, touched: { delimiter: action.delimiter } };
    case "column": {
      const { key, col } = action;
      const asks = key !== "load" ? {} : col === null ? NO_LOAD : draft.load === null ? LOAD_TO_ASK : {};
      return set({ [key]: col, ...asks });
    }
    case "type": {
      const { key, text, lines } = action;
      return { ...set(typedValue(key, text, lines)), typed: { ...choices.typed, [key]: text } };
    }
    case "apparatus":
      return { ...choices, apparatus: action.name };
    case "recall":
      return {
        touched: action.remembered ? recalled(action.remembered, action.lines) : {},
        typed: {},
        apparatus: action.remembered?.apparatus,
      };
  }
}

export interface Offer {
  /** The names of the columns, "" if the file has none. */
  readonly columns: readonly string[];
  readonly draft: LayoutDraft;
  /** The complete layout, or the keys that the person must still choose. */
  readonly result: ReturnType<typeof finished>;
}

/** The layout that the file shows, overridden by the choices of the person. */
export function offerOf(lines: readonly string[], { touched }: LayoutChoices): Offer {
  const { delimiter, decimal, firstLine } = touched;
  const { columns, draft: shown } = offerLayout(lines, { delimiter, decimal, firstLine });
  const draft = { ...shown, ...touched };
  return { columns, draft, result: finished(draft) };
}
