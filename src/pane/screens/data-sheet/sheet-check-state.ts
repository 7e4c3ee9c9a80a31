/** What the sheet check shows: what was found of a sheet, what is under way, and the name that a person chose; no page and no workbook. */
import { FIELDS, type SheetCheck } from "../../../datasheet";

/** What was found of one sheet. */
export interface LookedAt {
  readonly sheet: string;
  readonly check: SheetCheck;
  readonly isProtected: boolean;
}

export interface Telling {
  readonly intent: "success" | "warning" | "error" | "info";
  readonly sentence: string;
}

export interface CheckState {
  readonly isBusy: boolean;
  readonly looked?: LookedAt;
  readonly telling?: Telling;
  /** The name that a person chose to attach. */
  readonly name: string;
  /** The name that leads to other cells already, and that is moved when the person says so once more. */
  readonly taken?: string;
}

export const NOTHING_LOOKED_AT: CheckState = { isBusy: false, name: FIELDS[0]?.name ?? "" };

export type CheckAction =
  | { readonly do: "begin"; readonly sentence: string }
  | { readonly do: "end"; readonly looked: LookedAt; readonly telling?: Telling }
  | { readonly do: "fail"; readonly sentence: string; readonly taken?: string }
  | { readonly do: "choose"; readonly name: string };

/** The state after one action. What was found before stands until something else is found. */
export function checked(state: CheckState, action: CheckAction): CheckState {
  switch (action.do) {
    case "begin":
      return { ...state, isBusy: true, telling: { intent: "info", sentence: action.sentence }, taken: undefined };
    case "end":
      return { ...state, isBusy: false, looked: action.looked, telling: action.telling };
    case "fail":
      return {
        ...state,
        isBusy: false,
        telling: { intent: "error", sentence: action.sentence },
        taken: action.taken,
      };
    case "choose":
      return { ...state, name: action.name, taken: undefined };
  }
}

/** Names that the check asks to attach to cells. */
export const missingNames = ({ looked }: CheckState): ReadonlySet<string> =>
  new Set(looked?.check.findings.flatMap(({ attach }) => attach ?? []));
