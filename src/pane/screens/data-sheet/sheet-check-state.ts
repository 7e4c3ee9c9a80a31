/** What the sheet check shows: what was found of a sheet, what is under way, and what a person chose; no page and no workbook. */
import type { CellFinding } from "../../../checks/integrity";
import { ATTACHABLE, type FirmLayout, type MissingName, type SheetCheck } from "../../../datasheet";
import type { PlacedFormula } from "../../../specification/placed-formulas";

/** What was found of one sheet. */
export interface LookedAt {
  readonly sheet: string;
  readonly check: SheetCheck;
  /** Formulas that are missing or changed. */
  readonly formulas: readonly CellFinding[];
  readonly layout: FirmLayout;
  readonly isProtected: boolean;
}

export interface Telling {
  readonly intent: "success" | "warning" | "error" | "info";
  readonly sentence: string;
}

/** Formulas for cells that hold something else: they are written when the person says so. */
export interface Offer {
  readonly sheet: string;
  readonly cells: readonly PlacedFormula[];
}

export interface CheckState {
  readonly isBusy: boolean;
  readonly looked?: LookedAt;
  readonly telling?: Telling;
  /** The name that a person chose to attach. */
  readonly name: string;
  /** The name that leads to other cells already, and that is moved when the person says so once more. */
  readonly taken?: string;
  readonly offer?: Offer;
  /** What a person looks for among the names without cells. */
  readonly find: string;
  /** As typed: the load that the first selected column belongs to. */
  readonly fromLoad: string;
}

/** The first name of the data sheet's form. */
const FIRST_NAME = ATTACHABLE.find(({ name }) => name !== "load_number")?.name ?? "";

export const NOTHING_LOOKED_AT: CheckState = { isBusy: false, name: FIRST_NAME, find: "", fromLoad: "1" };

export type CheckAction =
  | { readonly do: "begin"; readonly sentence: string }
  | { readonly do: "end"; readonly looked: LookedAt; readonly telling?: Telling; readonly offer?: Offer }
  | { readonly do: "fail"; readonly sentence: string; readonly taken?: string }
  | { readonly do: "choose"; readonly name: string }
  | { readonly do: "find"; readonly text: string }
  | { readonly do: "from load"; readonly text: string };

/** The state after one action. What was found before stands until something else is found. */
export function checked(state: CheckState, action: CheckAction): CheckState {
  switch (action.do) {
    case "begin":
      return {
        ...state,
        isBusy: true,
        telling: { intent: "info", sentence: action.sentence },
        ...{ taken: undefined, offer: undefined },
      };
    case "end":
      return { ...state, isBusy: false, looked: action.looked, telling: action.telling, offer: action.offer };
    case "fail":
      return {
        ...state,
        isBusy: false,
        telling: { intent: "error", sentence: action.sentence },
        taken: action.taken,
      };
    case "choose":
      return { ...state, name: action.name, taken: undefined, offer: undefined };
    case "find":
      return { ...state, find: action.text };
    case "from load":
      return { ...state, fromLoad: action.text };
  }
}

/** Names that the check asks to attach to cells, or that the sheet has no cells for. */
export const missingNames = ({ looked }: CheckState): ReadonlySet<string> =>
  new Set([
    ...(looked?.check.findings ?? []).flatMap(({ attach }) => attach ?? []),
    ...(looked?.layout.groups ?? []).flatMap(({ missing }) => missing.map(({ name }) => name)),
  ]);

/** Whether a name is what a person looks for: by its label, or by the name itself. */
const isFound = ({ name, label }: MissingName, find: string): boolean =>
  `${label} ${name}`.toLowerCase().includes(find.trim().toLowerCase());

export interface ShownGroup {
  readonly title: string;
  readonly names: readonly MissingName[];
  readonly all: number;
}

/** Names without cells, group by group, as far as they are looked for. */
export const shownGroups = ({ looked, find }: CheckState): readonly ShownGroup[] =>
  (looked?.layout.groups ?? []).flatMap(({ title, missing, present }) => {
    const names = missing.filter((one) => isFound(one, find));
    return names.length > 0 ? [{ title, names, all: missing.length + present }] : [];
  });

/** The number of a load, where one was typed. */
export function loadTyped({ fromLoad }: CheckState): number | undefined {
  const load = Number(fromLoad);
  return Number.isInteger(load) && load >= 1 ? load : undefined;
}
