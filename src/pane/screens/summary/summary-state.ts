/** The state of the summary screen. This module uses neither page nor workbook. */
import type { SheetLanguage } from "../../../specification/text/language";
import type { Done, ProjectSheets } from "./project";

/** What a new summary is made with. */
export interface SummaryChoices {
  readonly system: "SI" | "US";
  readonly language: SheetLanguage;
}

export interface SummaryState extends Pick<SummaryChoices, "system"> {
  /** The summary that an update would change. */
  readonly summary?: string | undefined;
  /** The data sheets of the workbook. */
  readonly data: readonly string[];
  /** The work in progress, with the share that is done. */
  readonly course?: { readonly what: string; readonly share: number };
  readonly done?: Done;
  readonly failure?: string;
}

export const AT_REST: SummaryState = { system: "SI", data: [] };

export type SummaryAction =
  | ({ readonly do: "choose" } & Pick<SummaryChoices, "system">)
  | { readonly do: "know"; readonly sheets: ProjectSheets }
  | { readonly do: "begin"; readonly what: string }
  | { readonly do: "go on"; readonly share: number }
  | { readonly do: "end"; readonly done: Done; readonly sheets: ProjectSheets }
  | { readonly do: "fail"; readonly sentence: string };

export function summarised(state: SummaryState, action: SummaryAction): SummaryState {
  const { system, summary, data } = state;
  switch (action.do) {
    case "choose":
      return { ...state, system: action.system };
    case "know":
      return { ...state, ...action.sheets };
    case "begin":
      return { system, summary, data, course: { what: action.what, share: 0 } };
    case "go on":
      return state.course ? { ...state, course: { ...state.course, share: action.share } } : state;
    case "end":
      return { system, ...action.sheets, done: action.done };
    case "fail":
      return { system, summary, data, failure: action.sentence };
  }
}
