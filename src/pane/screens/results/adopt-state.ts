/** The state of the form that adopts a value, and what is wrong with what a person typed in it. */
import { typedNumber } from "../../ui/typed-number";
import { looksLikeFormula } from "../review/picks/pick-changes";
import type { Telling } from "../review/review-state";
import { isCv, type AdoptedName, type Adopting, type AdoptRow, type Range } from "./adopt-rows";

export type Entry = "value" | "from" | "to" | "reason" | "by";

/** A fault of an entry, by the word of its sentence. */
export interface Fault {
  readonly entry: Entry;
  readonly why:
    "not above 0" | "no stress" | "not above the lower" | "no initials" | "formula" | "outside" | "no range";
}

export interface AdoptState {
  readonly quantity: AdoptedName;
  readonly typed: Readonly<Record<Entry, string>>;
  readonly fault?: Fault;
  /** The question to the person, because something stands in the row. */
  readonly asking?: "replace" | "take back";
  readonly telling?: Telling;
}

export type AdoptAct =
  | { readonly does: "choose"; readonly quantity: AdoptedName }
  | { readonly does: "type"; readonly entry: Entry; readonly typed: string }
  | { readonly does: "refuse"; readonly fault: Fault }
  | { readonly does: "ask"; readonly about: "replace" | "take back" }
  | { readonly does: "keep" }
  | { readonly does: "write" }
  /** The value is on the sheet: the entries are emptied, the initials stay. */
  | { readonly does: "adopted"; readonly sentence: string }
  | { readonly does: "tell"; readonly telling: Telling };

const EMPTY = { value: "", from: "", to: "", reason: "" };

export const START: AdoptState = { quantity: "preconsolidation_stress", typed: { ...EMPTY, by: "" } };

export function adoptState({ quantity, typed, ...rest }: AdoptState, act: AdoptAct): AdoptState {
  switch (act.does) {
    case "choose":
      return { quantity: act.quantity, typed: { ...typed, ...EMPTY } };
    case "type":
      return { quantity, typed: { ...typed, [act.entry]: act.typed } };
    case "refuse":
      return { quantity, typed, fault: act.fault };
    case "ask":
      return { quantity, typed, asking: act.about };
    case "keep":
    case "write":
      return { quantity, typed };
    case "adopted":
      return {
        ...{ quantity, typed: { ...typed, ...EMPTY } },
        telling: { intent: "success", sentence: act.sentence },
      };
    case "tell":
      return { ...rest, quantity, typed, asking: undefined, telling: act.telling };
  }
}

const isPositive = (value: number | undefined): value is number => value !== undefined && value > 0;

/** What is wrong with the stresses of a cv: those typed count, otherwise those that the sheet uses now. */
function faultOfStresses({ low, high }: AdoptRow, from: number | undefined, to: number | undefined): Fault | undefined {
  if (from !== undefined && !isPositive(from)) return { entry: "from", why: "not above 0" };
  if (to !== undefined && !isPositive(to)) return { entry: "to", why: "not above 0" };
  const [lower, upper] = [from ?? low, to ?? high];
  if (lower === undefined) return { entry: "from", why: "no stress" };
  if (upper === undefined) return { entry: "to", why: "no stress" };
  return upper > lower ? undefined : { entry: "to", why: "not above the lower" };
}

/** The stresses that were typed and are numbers. */
export const typedStresses = ({ typed }: AdoptState): { readonly from?: number; readonly to?: number } => ({
  from: typedNumber(typed.from) || undefined,
  to: typedNumber(typed.to) || undefined,
});

/**
 * The adoption that was typed, or the fault of one entry. `range` is what the test gives: outside of it a reason is
 * required.
 */
export function adoptingOf(
  { quantity, typed }: AdoptState,
  row: AdoptRow,
  range: Range | undefined,
  day: number,
): { readonly adopting: Adopting } | { readonly fault: Fault } {
  const value = typedNumber(typed.value);
  if (!isPositive(value)) return { fault: { entry: "value", why: "not above 0" } };
  const stresses = isCv(quantity) ? { from: typedNumber(typed.from), to: typedNumber(typed.to) } : {};
  const fault = isCv(quantity) ? faultOfStresses(row, stresses.from, stresses.to) : undefined;
  if (fault) return { fault };
  const [reason, by] = [typed.reason.trim(), typed.by.trim()];
  if (reason === "" && !range) return { fault: { entry: "reason", why: "no range" } };
  if (reason === "" && range && (value < range[0] || value > range[1]))
    return { fault: { entry: "reason", why: "outside" } };
  if (looksLikeFormula(reason)) return { fault: { entry: "reason", why: "formula" } };
  if (by === "") return { fault: { entry: "by", why: "no initials" } };
  if (looksLikeFormula(by)) return { fault: { entry: "by", why: "formula" } };
  return { adopting: { value, ...stresses, reason, by, day } };
}
