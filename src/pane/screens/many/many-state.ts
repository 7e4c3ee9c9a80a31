/** The state of the part for many sheets at once. This module uses neither page nor workbook. */
import type { Picture, ManyDone } from "./many";

export type Kind = "reports" | "ags4" | "pictures";

export interface ManyState {
  readonly kind: Kind;
  /** The sheets that the person left out; a sheet that was added later is in. */
  readonly left: readonly string[];
  readonly plots: readonly Picture[];
  readonly format: "svg" | "png";
  readonly widthMm: number;
  /** The work in progress, with the share that is done. */
  readonly share?: number;
  readonly done?: ManyDone;
  readonly failure?: string;
}

export const AT_REST: ManyState = {
  kind: "reports",
  left: [],
  plots: ["compression", "cv"],
  format: "svg",
  widthMm: 160,
};

export type ManyAction =
  | { readonly do: "choose"; readonly change: Partial<Pick<ManyState, "kind" | "plots" | "format" | "widthMm">> }
  | { readonly do: "take"; readonly sheets: readonly string[]; readonly isIn: boolean }
  | { readonly do: "begin" }
  | { readonly do: "go on"; readonly share: number }
  | { readonly do: "end"; readonly done: ManyDone }
  | { readonly do: "fail"; readonly sentence: string };

/** The choices alone, without the course and the result of the last work. */
const choicesOf = ({ kind, left, plots, format, widthMm }: ManyState): ManyState => ({
  kind,
  left,
  plots,
  format,
  widthMm,
});

export function manyChanged(state: ManyState, action: ManyAction): ManyState {
  switch (action.do) {
    case "choose":
      return { ...choicesOf(state), ...action.change };
    case "take":
      return {
        ...choicesOf(state),
        left: action.isIn
          ? state.left.filter((sheet) => !action.sheets.includes(sheet))
          : [...new Set([...state.left, ...action.sheets])],
      };
    case "begin":
      return { ...choicesOf(state), share: 0 };
    case "go on":
      return state.share === undefined ? state : { ...state, share: action.share };
    case "end":
      return { ...choicesOf(state), done: action.done };
    case "fail":
      return { ...choicesOf(state), failure: action.sentence };
  }
}

/** The sheets that the work is done for, in the order of the workbook. */
export const taken = ({ left }: ManyState, sheets: readonly string[]): readonly string[] =>
  sheets.filter((sheet) => !left.includes(sheet));
