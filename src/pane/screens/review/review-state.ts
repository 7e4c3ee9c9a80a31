/** The state of the review screen, and how each action of the person and each answer of the workbook changes it. */
import type { MethodName } from "../../../reduction/curve/method-words";
import type { PickedThing, TimeMethod } from "../../../reduction/increment/constructions/picks";
import type { Draft } from "./picks/pick-changes";

/** The message about the last writing. */
export interface Telling {
  readonly intent: "success" | "warning" | "error";
  readonly sentence: string;
}

export interface ReviewState {
  /** The load under review, or the compression curve; undefined for the first load. */
  readonly thing?: PickedThing;
  /** Unsaved changes, by `draftKey`. */
  readonly drafts: Readonly<Record<string, Draft>>;
  /** The plot that the person chose for all loads; undefined for the plot of the construction whose cv counts. */
  readonly plot?: TimeMethod;
  /** The method whose plane the person chose for the compression curve; undefined for the method of the sheet. */
  readonly method?: MethodName;
  readonly telling?: Telling;
  /** True while the pane writes to the workbook. */
  readonly busy: boolean;
}

export type ReviewAct =
  | { readonly does: "go"; readonly thing: PickedThing }
  | { readonly does: "change"; readonly key: string; readonly draft: Draft }
  | { readonly does: "draw"; readonly plot: TimeMethod }
  | { readonly does: "draw method"; readonly method: MethodName }
  | { readonly does: "write" }
  | { readonly does: "tell"; readonly telling: Telling }
  /** The sheet was read again after the writing; the draft under `saved` is now on the sheet. */
  | { readonly does: "read again"; readonly saved?: string }
  | { readonly does: "fail"; readonly sentence: string };

export const START: ReviewState = { drafts: {}, busy: false };

/** The key of the draft of one load of one test, or of its compression curve. */
export const draftKey = (test: string | undefined, thing: PickedThing): string => `${test}\n${thing}`;

const without = (drafts: ReviewState["drafts"], key: string | undefined): ReviewState["drafts"] =>
  Object.fromEntries(Object.entries(drafts).filter(([one]) => one !== key));

export function reviewState(state: ReviewState, act: ReviewAct): ReviewState {
  switch (act.does) {
    case "go":
      return { ...state, thing: act.thing, telling: undefined };
    case "change":
      return { ...state, drafts: { ...state.drafts, [act.key]: act.draft }, telling: undefined };
    case "draw":
      return { ...state, plot: act.plot };
    case "draw method":
      return { ...state, method: act.method };
    case "write":
      return { ...state, busy: true, telling: undefined };
    case "tell":
      return { ...state, telling: act.telling };
    case "read again":
      return { ...state, busy: false, drafts: without(state.drafts, act.saved) };
    case "fail":
      return { ...state, busy: false, telling: { intent: "error", sentence: act.sentence } };
  }
}
