/** The state of the bench screen, and how each action of the person and each answer of the workbook changes it. */
import type { Message } from "../../../reduction/message";
import type { ProgressRule } from "../../../reduction/increment/progress";

/** A reading that this screen wrote; a person can undo it. */
export interface Entry {
  readonly load: number;
  /** The row of the two columns, counted from 1. */
  readonly row: number;
  readonly time: number;
  readonly reading: number;
  /** The content of the time cell before; "" if it was blank. */
  readonly timeBefore: number | "";
}

export interface Telling {
  readonly intent: "success" | "warning" | "error";
  readonly sentence: string;
}

export interface BenchState {
  /** The number of the load that the person chose; undefined for the load that is on the specimen. */
  readonly load?: number;
  /** The content of the field for the reading. */
  readonly typed: string;
  /** The doubt about the typed reading. A second press of the button writes the reading nevertheless. */
  readonly doubt?: Message;
  /** The row of the schedule, counted from 1, that the person chose for the next reading. */
  readonly row?: number;
  /**
   * True if the time of the clock is written. If it is undefined, the clock counts if it is far from the scheduled
   * time.
   */
  readonly byClock?: boolean;
  /** The entries; the last one comes first. */
  readonly entries: readonly Entry[];
  readonly telling?: Telling;
  readonly busy: boolean;
  /** The rule for the end of the load; undefined for the rule of the sheet. */
  readonly rule?: ProgressRule;
  /** The minutes of the rule "fixed", or the multiple of t100 of the rule "multiple". */
  readonly multiple: string;
}

export type BenchAct =
  | { readonly does: "choose load"; readonly load: number }
  | { readonly does: "type"; readonly typed: string }
  | { readonly does: "doubt"; readonly why: Message }
  | { readonly does: "choose row"; readonly row: number }
  | { readonly does: "time by clock"; readonly byClock: boolean }
  | { readonly does: "choose rule"; readonly rule: ProgressRule; readonly multiple: string }
  | { readonly does: "begin" }
  | { readonly does: "wrote"; readonly entry: Entry; readonly sentence: string }
  | { readonly does: "took back"; readonly entry: Entry; readonly sentence: string }
  | { readonly does: "started" }
  | { readonly does: "tell"; readonly telling: Telling };

export const START: BenchState = { typed: "", entries: [], busy: false, multiple: "" };

export function benchState(state: BenchState, act: BenchAct): BenchState {
  switch (act.does) {
    case "choose load":
      return { ...START, entries: state.entries, rule: state.rule, multiple: state.multiple, load: act.load };
    case "type":
      return { ...state, typed: act.typed, doubt: undefined, telling: undefined };
    case "doubt":
      return { ...state, doubt: act.why, telling: undefined };
    case "choose row":
      return { ...state, row: act.row, byClock: undefined, doubt: undefined, telling: undefined };
    case "time by clock":
      return { ...state, byClock: act.byClock };
    case "choose rule":
      return { ...state, rule: act.rule, multiple: act.multiple };
    case "begin":
      return { ...state, busy: true, telling: undefined };
    case "wrote":
      return {
        ...state,
        busy: false,
        typed: "",
        doubt: undefined,
        row: undefined,
        byClock: undefined,
        entries: [act.entry, ...state.entries],
        telling: { intent: "success", sentence: act.sentence },
      };
    case "took back":
      return {
        ...state,
        busy: false,
        // The person can now correct the typing error.
        typed: String(act.entry.reading),
        doubt: undefined,
        row: act.entry.row,
        entries: state.entries.filter((entry) => entry !== act.entry),
        telling: { intent: "success", sentence: act.sentence },
      };
    case "started":
      return { ...state, busy: false };
    case "tell":
      return { ...state, busy: false, telling: act.telling };
  }
}
