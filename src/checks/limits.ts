/**
 * The limits of a firm, in cells of its workbook: a sheet that lists every limit with its default, the value of the
 * firm, who changed it and why. The first two columns of the sheet are the `limits` argument of CLAY.CHECKS.
 */
import { english, listWord, say, verbatim, type Message, type Value } from "../reduction/message";
import { cellAddress } from "../workbook/address";
import type { NamedValues } from "../record/record";
import type { SheetName, SheetPlan } from "../workbook/port";
import type { Thresholds } from "./check";
import { limitCalled, limitReader } from "./limit-words";
import { CHECKS } from "./table";
import type { SheetLanguage } from "../specification/text/language";
import { planIn } from "../specification/text/plan-in-language";
import { tableSheet, type TableColumn } from "../workbook/table-sheet";

export interface LimitRow {
  /** "Q05.explain" */
  readonly name: string;
  readonly question: Message;
  readonly value: number;
  readonly unit: string;
}

export const LIMITS: readonly LimitRow[] = CHECKS.flatMap(({ id, question, limits, units = {} }) =>
  Object.entries(limits).map(([name, value]) => ({ name: `${id}.${name}`, question, value, unit: units[name] ?? "" })),
);

const column = (name: string, heading: string, width: number, kind: TableColumn["kind"], more = {}): TableColumn => ({
  name,
  heading,
  width,
  kind,
  ...more,
});

/** The limit in force: the value of the firm if it is a number, otherwise the default. */
const IN_FORCE = (row: number): string =>
  `=IF(ISNUMBER(${cellAddress(row, 2)}),${cellAddress(row, 2)},${cellAddress(row, 3)})`;

const COLUMNS: readonly TableColumn[] = [
  column("limit_name", "Limit", 40, "label"),
  column("limit_in_force", "In force", 9, "result", { formula: IN_FORCE }),
  column("limit_value", "Yours", 9, "input"),
  column("limit_default", "Default", 9, "label"),
  column("limit_unit", "Unit", 32, "unit"),
  column("limit_question", "Of the question", 62, "label"),
  column("limit_by", "Changed by", 12, "input"),
  column("limit_why", "Why", 40, "input"),
  column("limit_since", "Since", 11, "input", { format: "yyyy-mm-dd" }),
];

export const LIMIT_NAMES: readonly string[] = COLUMNS.map(({ name }) => name);

/** A sheet with this name is a sheet of limits. */
export const LIMITS_SHEET_NAME = "limit_name";

/** The unit of a limit in words: "steps of the dial". A unit of the trade is the word of a list, as a sheet has it. */
export const limitUnit = (unit: string): Value => (/[a-z]{5}/.test(unit) ? say([unit]) : listWord(unit));

/** The plan of a sheet of limits in a language; `inWords` words the names of limits, units and questions in it. */
export const limitsSheet = (language: SheetLanguage = "en", inWords: (said: Value) => string = english): SheetPlan =>
  planIn(
    language,
    tableSheet({
      name: "Limits",
      title: "Limits of the reviewer's questions",
      notes: [
        "Enter your firm's limit under Yours, and who changed it, why and since when. A blank one leaves the default in force.",
        "In a cell: =CLAY.CHECKS(the named values, the columns Limit and In force of this sheet).",
      ],
      columns: COLUMNS,
      rows: LIMITS.map(({ name, question, value, unit }) => [
        inWords(limitCalled(name)),
        undefined,
        undefined,
        value,
        inWords(limitUnit(unit)),
        inWords(question),
      ]),
      whole: "limits",
      isProtected: true,
    }),
  );

export interface ChangedLimit extends LimitRow {
  readonly default: number;
  readonly by?: string;
  readonly why?: string;
  /** As the cell holds it: a day number, or text. */
  readonly since?: string | number;
}

export interface FirmLimits {
  readonly thresholds: Thresholds;
  readonly changed: readonly ChangedLimit[];
  /** Remarks on limits that could not be used, or that lack who and why; each names its cell. */
  readonly remarks: readonly Message[];
}

const NONE: FirmLimits = { thresholds: {}, changed: [], remarks: [] };

/**
 * Reads the limits of a sheet from its values by name; `names` gives the positions, so that a remark can name a cell. A
 * limit that nobody signed is used, with a remark; a limit that is not a number, or belongs to no question, is not
 * used, with a remark.
 */
export function readLimits(values: NamedValues, names: readonly SheetName[] = []): FirmLimits {
  const listed = values.limit_name;
  if (!listed) return NONE;
  const [place] = names.flatMap(({ name, place: at }) =>
    name.toLowerCase() === "limit_value" && at !== "lost" ? [at] : [],
  );
  const at = (row: number): Value =>
    place ? verbatim(cellAddress(place.row + row, place.col)) : say`row ${row + 1} of ${verbatim("limit_value")}`;
  const cell = (name: string, row: number) => {
    const value = values[name]?.[row]?.[0];
    return typeof value === "string" ? value.trim() : (value ?? "");
  };
  const limitNamed = limitReader();
  const thresholds: Record<string, number> = {};
  const changed: ChangedLimit[] = [];
  const remarks: Message[] = [];
  listed.forEach((_, row) => {
    const value = cell("limit_value", row);
    if (value === "") return;
    const name = limitNamed(String(cell("limit_name", row)));
    const limit = LIMITS.find((one) => one.name === name);
    if (!limit) {
      remarks.push(say`${at(row)} is a limit of “${verbatim(name)}”, which no question has: it is not used; clear it`);
      return;
    }
    if (typeof value !== "number") {
      remarks.push(
        say`${at(row)} holds “${verbatim(String(value))}” where the limit ${limitCalled(name)} is a number: the default ${limit.value} is in force; enter a number`,
      );
      return;
    }
    thresholds[name] = value;
    if (value === limit.value) return;
    const by = String(cell("limit_by", row));
    const why = String(cell("limit_why", row));
    const since = cell("limit_since", row);
    changed.push({
      ...limit,
      value,
      default: limit.value,
      ...(by ? { by } : {}),
      ...(why ? { why } : {}),
      ...(since !== "" && typeof since !== "boolean" ? { since } : {}),
    });
    if (by && why) return;
    const lacking = by ? say`why` : why ? say`who` : say`who and why`;
    remarks.push(say`${at(row)} changes “${limitCalled(name)}” from ${limit.value} to ${value}: enter ${lacking}`);
  });
  return { thresholds, changed, remarks };
}
