/** What a screen wants to know beside the record of the current test. */
import { RECORD_NAMES } from "../../record/record";
import type { Asked, FoundSheet } from "../../workbook/port";

/** Other sheets of the workbook, known by a name that each of them has. */
export interface Beside {
  readonly mark: string;
  /** Names whose values are read of them. */
  readonly names: readonly string[];
  /** Asks where their names stand, too. */
  readonly places?: boolean;
}

export interface Want {
  /** Names whose contents are read. */
  readonly contents?: readonly string[];
  readonly hidden?: boolean;
  readonly beside?: readonly Beside[];
}

/** The record, and no more. */
export const RECORD: Want = {};

/** Names that a sheet of the workbook is looked for by. */
export const marksOf = (wants: readonly Want[]): string[] => [
  ...new Set(wants.flatMap(({ beside = [] }) => beside.map(({ mark }) => mark))),
];

/** All that several screens want. */
export function together(wants: readonly Want[]): Want {
  const contents = [...new Set(wants.flatMap((want) => want.contents ?? []))];
  const beside = wants.flatMap((want) => want.beside ?? []);
  return {
    ...(contents.length > 0 && { contents }),
    ...(wants.some(({ hidden }) => hidden) && { hidden: true }),
    ...(beside.length > 0 && { beside: [...new Map(beside.map((one) => [one.mark, one])).values()] }),
  };
}

/** Whether what was read for one want will do for another. */
export function covers(read: Want, want: Want): boolean {
  const marks = marksOf([read]);
  return (
    (want.contents ?? []).every((name) => read.contents?.includes(name)) &&
    (read.hidden || !want.hidden) === true &&
    marksOf([want]).every((mark) => marks.includes(mark))
  );
}

/** What is asked of the workbook: of the current test first, then of each sheet beside it. */
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
