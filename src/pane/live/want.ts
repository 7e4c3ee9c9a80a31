/** What a screen wants to read besides the record of the current test. */
import { RECORD_NAMES } from "../../record/record";
import type { Asked, FoundSheet } from "../../workbook/port";

/** Other sheets of the workbook, recognized by a name that each of them has. */
export interface Beside {
  readonly mark: string;
  /** The names whose values are read from these sheets. */
  readonly names: readonly string[];
  /** True if the positions of the names are read too. */
  readonly places?: boolean;
}

export interface Want {
  /** The names whose contents are read. */
  readonly contents?: readonly string[];
  readonly hidden?: boolean;
  readonly beside?: readonly Beside[];
}

/** Only the record. */
export const RECORD: Want = {};

/** The names by which sheets of the workbook are recognized. */
export const marksOf = (wants: readonly Want[]): string[] => [
  ...new Set(wants.flatMap(({ beside = [] }) => beside.map(({ mark }) => mark))),
];

/** The union of what several screens want. */
export function together(wants: readonly Want[]): Want {
  const contents = [...new Set(wants.flatMap((want) => want.contents ?? []))];
  const beside = wants.flatMap((want) => want.beside ?? []);
  return {
    ...(contents.length > 0 && { contents }),
    ...(wants.some(({ hidden }) => hidden) && { hidden: true }),
    ...(beside.length > 0 && { beside: [...new Map(beside.map((one) => [one.mark, one])).values()] }),
  };
}

/** True if a reading made for `read` also satisfies `want`. */
export function covers(read: Want, want: Want): boolean {
  const marks = marksOf([read]);
  return (
    (want.contents ?? []).every((name) => read.contents?.includes(name)) &&
    (read.hidden || !want.hidden) === true &&
    marksOf([want]).every((mark) => marks.includes(mark))
  );
}

/** The requests to the workbook: the current test first, then each of the other sheets. */
export function asksFor(sheet: string, want: Want, sheets: readonly FoundSheet[]): Asked[] {
  const { contents, hidden, beside = [] } = want;
  const others = sheets.flatMap(({ sheet: name, has }): Asked[] => {
    const kinds = beside.filter(({ mark }) => has.includes(mark));
    if (kinds.length === 0 || name === sheet) return [];
    const names = [...new Set(kinds.flatMap((kind) => kind.names))];
    return [{ sheet: name, values: names, ...(kinds.some(({ places }) => places) && { names: true }) }];
  });
  return [{ sheet, values: RECORD_NAMES, names: true, contents, hidden }, ...others];
}
