/**
 * The state of the sheet check: the findings, the work in progress, and the choices of the person. It uses neither page
 * nor workbook.
 */
import type { CellFinding } from "../../../checks/integrity";
import { ATTACHABLE, labelOf, type FirmLayout, type MissingName, type SheetCheck } from "../../../datasheet";
import { SHEET_LANGUAGES, type SheetLanguage } from "../../../specification/text/language";
import type { PlacedFormula } from "../../../specification/placed-formulas";
import type { SeenOfSheet } from "../as-shown";

/** The findings about one sheet. */
export interface LookedAt {
  readonly sheet: string;
  /** The language of its labels. */
  readonly language: SheetLanguage;
  /** The names by which the places of cells were found, and what the cells held. */
  readonly seen: SeenOfSheet;
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

/** Formulas for cells that contain something else; they are written if the person agrees. */
export interface Offer {
  readonly sheet: string;
  readonly cells: readonly PlacedFormula[];
  readonly seen: SeenOfSheet;
}

export interface CheckState {
  readonly isBusy: boolean;
  readonly looked?: LookedAt;
  readonly telling?: Telling;
  /** The name that the person chose to attach. */
  readonly name: string;
  /** The chosen name, if it refers to other cells already; it is moved if the person confirms. */
  readonly taken?: string;
  readonly offer?: Offer;
  /** The text that the person searches for among the names without cells. */
  readonly find: string;
  /** The number of the load in the first selected column, as typed. */
  readonly fromLoad: string;
}

/** The first name of the form of the data sheet. */
const FIRST_NAME = ATTACHABLE.find(({ name }) => name !== "load_number")?.name ?? "";

export const NOTHING_LOOKED_AT: CheckState = { isBusy: false, name: FIRST_NAME, find: "", fromLoad: "1" };

export type CheckAction =
  | { readonly do: "begin"; readonly sentence: string }
  | { readonly do: "end"; readonly looked: LookedAt; readonly telling?: Telling; readonly offer?: Offer }
  | { readonly do: "fail"; readonly sentence: string; readonly taken?: string }
  | { readonly do: "choose"; readonly name: string }
  | { readonly do: "find"; readonly text: string }
  | { readonly do: "from load"; readonly text: string };

/** The state after an action. Earlier findings stay until new ones arrive. */
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

/** Names that the check wants to attach to cells, or that the sheet has no cells for. */
export const missingNames = ({ looked }: Pick<CheckState, "looked">): ReadonlySet<string> =>
  new Set([
    ...(looked?.check.findings ?? []).flatMap(({ attach }) => attach ?? []),
    ...(looked?.layout.groups ?? []).flatMap(({ missing }) => missing.map(({ name }) => name)),
  ]);

/** True if the label in any language of sheets, or the name itself, contains the text that the person searches for. */
const isFound = ({ name }: MissingName, find: string): boolean =>
  [...SHEET_LANGUAGES.map((language) => labelOf(name, language)), name]
    .join(" ")
    .toLowerCase()
    .includes(find.trim().toLowerCase());

export interface ShownGroup {
  readonly title: string;
  readonly names: readonly MissingName[];
  readonly all: number;
}

/** The names without cells that match the search, in groups. */
export const shownGroups = ({ looked, find }: CheckState): readonly ShownGroup[] =>
  (looked?.layout.groups ?? []).flatMap(({ title, missing, present }) => {
    const names = missing.filter((one) => isFound(one, find));
    return names.length > 0 ? [{ title, names, all: missing.length + present }] : [];
  });

/** The number of the load that was typed; undefined if it is not a valid number. */
export function loadTyped({ fromLoad }: CheckState): number | undefined {
  const load = Number(fromLoad);
  return Number.isInteger(load) && load >= 1 ? load : undefined;
}
