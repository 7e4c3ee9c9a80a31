/** What the bench screen remembers, and what each act of the person or answer of the workbook makes of it. */
import type { Message } from "../../../reduction/message";
import type { ProgressRule } from "../../../reduction/increment/progress";

/** A reading that this screen wrote, so that it can be taken back. */
export interface Entry {
  readonly load: number;
  /** Row of the two columns, from 1. */
  readonly row: number;
  readonly time: number;
  readonly reading: number;
  /** What the cell of the time held before; "" where it was blank. */
  readonly timeBefore: number | "";
}

export interface Telling {
  readonly intent: "success" | "warning" | "error";
  readonly sentence: string;
}

export interface BenchState {
  /** Number of the load that was chosen; undefined: the one in the frame. */
  readonly load?: number;
  /** What stands in the field of the reading. */
  readonly typed: string;
  /** Why the typed reading is asked about; writing it again writes it. */
  readonly doubt?: Message;
  /** Row of the schedule, from 1, that the person chose for the next reading. */
  readonly row?: number;
  /** Whether the clock's own time is written; undefined: where it is far from the schedule. */
  readonly byClock?: boolean;
  /** The last one first. */
  readonly entries: readonly Entry[];
  readonly telling?: Telling;
  readonly busy: boolean;
  /** When the load may end; undefined: as the sheet has it. */
  readonly rule?: ProgressRule;
  /** Minutes of the rule "fixed", times t100 of the rule "multiple". */
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
        // The person corrects what was typed wrong.
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
