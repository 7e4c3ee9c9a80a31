/**
 * An issue of a report: every value of the data sheet as it was on the day, beside the live numbers of the report, with the
 * initials of who locked it and the SHA-256 of the readings. The values are constants and never change.
 */
import { MOST_LOADS, readingsOf } from "../specification/readings";
import { boxesByName } from "../record/places";
import type { NamedValues } from "../record/record";
import { addressInList } from "../workbook/lists";
import type { Box, CellPlan, CellValue, SheetName } from "../workbook/port";
import { say, verbatim } from "../reduction/message";
import { sameNumber } from "../reduction/numeric/same-number";
import { paragraph, type Block } from "./page/page";
import type { DataCells, IssueMark } from "./page/source";

export type { IssueMark } from "./page/source";

/** The cells of a locked report that say what the issue is; a report without them is not locked. */
export const ISSUE_HASH = "issue_sha256";
export const ISSUE_VALUES_HASH = "issue_values_sha256";
export const ISSUE_NAMES = ["issue_number", "issue_day", "issue_by", ISSUE_HASH, ISSUE_VALUES_HASH] as const;
/** The columns of the locked values: the name of each, its row of a column from 1, its cell, and the value. */
export const ISSUE_COLUMNS = ["issue_name", "issue_row", "issue_cell", "issue_value"] as const;

/** A value of a data sheet, as an issue keeps it. */
export interface Kept {
  readonly name: string;
  /** Row of a column, from 1. */
  readonly row: number;
  readonly cell: string;
  readonly value: CellValue;
}

/** A value that is not what the issue kept. */
export interface Changed extends Omit<Kept, "value"> {
  readonly from: CellValue;
  readonly to: CellValue;
}

const READINGS: readonly string[] = Array.from({ length: MOST_LOADS }, (_, index) => readingsOf(index + 1))
  .flat()
  .map(({ name }) => name);

const isBlank = (value: CellValue | undefined): boolean => value === undefined || value === "";

/** The column without the blanks below its last value. */
function filled(rows: NamedValues[string] = []): CellValue[] {
  const column = rows.map(([value]) => value ?? "");
  let length = column.length;
  while (length > 0 && isBlank(column[length - 1])) length -= 1;
  return column.slice(0, length);
}

/** The times and readings of all loads as one text, in a fixed order, to be hashed. */
export const readingsText = (values: NamedValues): string =>
  JSON.stringify(
    READINGS.flatMap((name) => {
      const column = filled(values[name]);
      return column.length > 0 ? [[name, column]] : [];
    }),
  );

/** Every value of the sheet that is not blank. */
export function kept(values: NamedValues, names: readonly SheetName[]): Kept[] {
  const boxes = boxesByName(names);
  return Object.keys(values).flatMap((name): Kept[] => {
    const box = boxes.get(name.toLowerCase());
    if (!box) return [];
    return filled(values[name]).flatMap((value, index) =>
      isBlank(value) ? [] : [{ name, row: index + 1, cell: addressInList(box, index), value }],
    );
  });
}

/** Excel keeps 15 digits of a number that is written into a cell. */
const DIGITS = 15;
const asWritten = (value: CellValue): CellValue =>
  typeof value === "number" ? Number(value.toPrecision(DIGITS)) : value;

/** The values that an issue keeps, as Excel keeps them. */
export const lockedValues = (values: NamedValues, names: readonly SheetName[]): Kept[] =>
  kept(values, names).map((one) => ({ ...one, value: asWritten(one.value) }));

/** What an issue says of itself, and its locked values, as one text to be hashed: a change of either changes it. */
export const issueText = ({ number, day, by, hash }: IssueMark, locked: readonly Kept[]): string =>
  JSON.stringify([
    number,
    day,
    by,
    hash,
    locked.map(({ name, row, cell, value }) => [name, row, cell, asWritten(value)]),
  ]);

/** Numbers that a new calculation may give in the last digits count as equal. */
const isSame = (one: CellValue, other: CellValue): boolean =>
  typeof one === "number" && typeof other === "number" ? sameNumber(one, other) : String(one) === String(other);

const keyOf = ({ name, row }: Pick<Kept, "name" | "row">): string => `${name.toLowerCase()} ${row}`;

/** Every value that changed between the issue and now, in the order of the sheet; a blank is "". */
export function changesSince(issue: readonly Kept[], now: readonly Kept[]): Changed[] {
  const before = new Map(issue.map((one) => [keyOf(one), one]));
  const after = new Map(now.map((one) => [keyOf(one), one]));
  const changed = issue.flatMap((one): Changed[] => {
    const present = after.get(keyOf(one));
    const to = present?.value ?? "";
    if (isSame(one.value, to)) return [];
    return [{ name: one.name, row: one.row, cell: present?.cell ?? one.cell, from: one.value, to }];
  });
  const added = now.flatMap((one): Changed[] =>
    before.has(keyOf(one)) ? [] : [{ name: one.name, row: one.row, cell: one.cell, from: "", to: one.value }],
  );
  return [...changed, ...added];
}

/** The values of an issue as its report holds them. */
export function keptIn(values: NamedValues): Kept[] {
  const [names, rows, cells, kinds] = ISSUE_COLUMNS.map((column) => values[column] ?? []);
  return (names ?? []).flatMap(([name], index): Kept[] => {
    const [row, cell, value] = [rows, cells, kinds].map((column) => column?.[index]?.[0] ?? "");
    return name === undefined || name === ""
      ? []
      : [{ name: String(name), row: Number(row), cell: String(cell), value: value ?? "" }];
  });
}

export interface IssueBlock {
  readonly cells: readonly CellPlan[];
  readonly names: Readonly<Record<string, Box>>;
  readonly rows: number;
  /** The column to the right of the block. */
  readonly right: number;
}

/** The rows above the locked values: what the issue is, and the headings. */
const HEAD = 6;

/** The block of an issue beside the pages of its report. */
export function issueBlock({ source: { values, names }, words }: DataCells, mark: IssueMark, left: number): IssueBlock {
  const all = lockedValues(values, names);
  const said = [
    [say`Issue`, mark.number],
    [say`Locked on`, mark.day],
    [say`Locked by`, mark.by],
    [say`SHA-256 of the readings`, mark.hash],
    [say`SHA-256 of the locked values`, mark.valuesHash ?? ""],
  ] as const;
  const text = (row: number, col: number, value: CellValue): CellPlan => ({
    row,
    col,
    kind: "label",
    value,
    // A text stays the text that it was.
    ...(typeof value === "string" && { format: "@" }),
  });
  const headings = [say`Name`, say`Row`, say`Cell`, say`Locked value`];
  const one = (row: number): Box => ({ row, col: left + 1, rows: 1, cols: 1 });
  return {
    cells: [
      ...said.flatMap(([label, value], row) => [text(row, left, words(label)), text(row, left + 1, value)]),
      ...headings.map((heading, index): CellPlan => ({
        ...{ row: HEAD - 1, col: left + index, kind: "heading" },
        value: words(heading),
      })),
      ...all.flatMap(({ name, row, cell, value }, index) =>
        [name, row, cell, value].map((content, col) => text(HEAD + index, left + col, content)),
      ),
    ],
    names: {
      ...Object.fromEntries(ISSUE_NAMES.map((name, row) => [name, one(row)])),
      ...Object.fromEntries(
        ISSUE_COLUMNS.map((name, index) => [name, { row: HEAD, col: left + index, rows: all.length, cols: 1 }]),
      ),
    },
    rows: HEAD + all.length,
    right: left + ISSUE_COLUMNS.length,
  };
}

/** The line of an issue on the first page. */
export const issueLine = (cells: DataCells, { number, day, by, hash }: IssueMark): Block[] =>
  paragraph(
    cells.words(
      say`Issue ${number}, locked on ${verbatim(day)} by ${verbatim(by)}. Its values stand beside the pages, and do not change. SHA-256 of the readings: ${verbatim(hash)}`,
    ),
    { kind: "note" },
  );
